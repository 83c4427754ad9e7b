// Queens followed through splits, swarms, unions and introductions.
#include "build_journal.hpp"
#include "history/queens.hpp"
#include "replay_checked.hpp"

using namespace waxtab;
using namespace waxtab::testing;

namespace {


struct Followed { Journal journal; History history; Queens queens; };

Followed follow(const BuildJournal& b) {
    Followed f;
    f.journal = b.journal();
    f.history = replay(f.journal, later);
    f.queens = queens_of(f.journal, f.history);
    return f;
}

const Queen& queen(const Followed& f, const Reign* r) { return f.queens.queens[static_cast<std::size_t>(r->queen)]; }

}  // namespace

TEST_CASE("a marked queen goes with a split, and on with a union", "[history][queens]") {
    BuildJournal b;
    const HiveId h1 = b.hive("h1", {brood()}), h2 = b.hive("h2", {brood()}), n = b.later_hive("n1");
    Fact& marked = b.fact("2026-04-01", Kind::queen_marked, h1);
    marked.detail = "white", marked.count = 2025;
    Fact& split = b.fact("2026-05-01", Kind::hive_split, h1);
    split.other = n, split.detail = "old queen";
    b.fact("2026-08-01", Kind::queen, h2).detail = "absent";
    Fact& united = b.fact("2026-08-02", Kind::hive_united, n);
    united.other = h2;
    const Followed f = follow(b);
    const auto in_h1 = f.queens.of(h1), in_n = f.queens.of(n), in_h2 = f.queens.of(h2);
    REQUIRE(in_h1.size() == 2);
    REQUIRE(in_n.size() == 1);
    REQUIRE(in_h2.size() == 2);
    CHECK(in_n[0]->queen == in_h1[0]->queen);
    CHECK(in_h2[1]->queen == in_h1[0]->queen);
    CHECK(queen(f, in_h2[1]).colour == "white");
    CHECK(queen(f, in_h2[1]).year == 2025);
    CHECK(in_h1[0]->to == day("2026-05-01"));
    CHECK(in_h1[1]->came == "raised after the split");
    CHECK(queen(f, in_h1[1]).raised_in == h1);
    CHECK(f.queens.next(*in_h1[0])->hive == n);
    CHECK(f.queens.before(*in_h2[1])->hive == n);
    CHECK_FALSE(f.queens.next(*in_h2[1]));
}

TEST_CASE("the old queen goes with the prime swarm, a virgin with a cast", "[history][queens]") {
    BuildJournal b;
    const HiveId h1 = b.hive("h1", {brood()}), s1 = b.later_hive("s1"), s2 = b.later_hive("s2"), s3 = b.later_hive("s3");
    b.fact("2026-05-10", Kind::swarmed, h1).detail = "prime";
    const auto hived = [&](std::string_view date, HiveId swarm, std::string_view what, HiveId from) {
        Fact& f = b.fact(date, Kind::swarm_hived, swarm);
        f.detail = what, f.other = from;
    };
    hived("2026-05-11", s1, "", h1);
    hived("2026-05-20", s2, "cast", h1);
    hived("2026-06-01", s3, "", no_hive);
    const Followed f = follow(b);
    REQUIRE(f.queens.of(h1).size() == 2);
    CHECK(f.queens.of(s1)[0]->queen == f.queens.of(h1)[0]->queen);
    CHECK(f.queens.of(s2)[0]->queen != f.queens.of(h1)[1]->queen);
    CHECK(queen(f, f.queens.of(s2)[0]).raised_in == h1);
    CHECK(queen(f, f.queens.of(s3)[0]).raised_in == no_hive);
    CHECK(f.queens.of(h1)[0]->went == "left with the swarm");
}

TEST_CASE("queens lost, introduced and superseded", "[history][queens]") {
    BuildJournal b;
    const HiveId h1 = b.hive("h1", {brood()}), quiet = b.hive("h2", {brood()});
    b.fact("2026-06-01", Kind::queen, h1).detail = "absent";
    Fact& in = b.fact("2026-06-08", Kind::queen_introduced, h1);
    in.detail = "yellow", in.text = "the breeder";
    b.fact("2026-08-20", Kind::queen, h1).detail = "superseded";
    b.fact("2026-08-30", Kind::queen, h1).detail = "virgin";      // the same
    b.fact("2026-06-01", Kind::queen, quiet).detail = "seen";
    const Followed f = follow(b);
    const auto in_h1 = f.queens.of(h1);
    REQUIRE(in_h1.size() == 3);
    CHECK(in_h1[0]->to == day("2026-06-01"));
    CHECK(in_h1[1]->from == day("2026-06-08"));
    CHECK(queen(f, in_h1[1]).mother == "the breeder");
    CHECK(in_h1[1]->went == "superseded");
    CHECK_FALSE(in_h1[2]->to);
    CHECK(f.queens.worth_telling(h1));
    CHECK_FALSE(f.queens.worth_telling(quiet));
}
