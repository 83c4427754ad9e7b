// What is seen of a box, on the right box, with the range the words leave.
#include "build_journal.hpp"
#include "replay_checked.hpp"

using namespace waxtab;
using namespace waxtab::testing;
using Codes = std::vector<std::string>;
using What = BoxSighting::What;

namespace {


Measure of_frames(int n, int m) { return share_of(n * 1000, m, Unit::of_frames); }

}  // namespace

TEST_CASE("a share is kept with its range", "[history][reading]") {
    BuildJournal b;
    const HiveId h = b.hive("h3", {brood(), super()});
    Fact& f = b.share("2026-06-01", Kind::full, h, sole(), 75);
    f.value.low = 700, f.value.high = 800;
    b.share("2026-06-01", Kind::capped, h, {}, 40);
    b.fact("2026-06-01", Kind::shakes_out, h, {}).detail = "no";
    b.fact("2026-06-01", Kind::super_brood, h, sole()).detail = "brood";
    const History history = replay_checked(b.journal(), later);
    const Box& box = box_at(history, history.supers_on(h)[0]);
    REQUIRE(box.sightings.size() == 4);
    CHECK(box.sightings[0].what == What::full);
    CHECK(box.sightings[0].amount == 750);
    CHECK(box.sightings[0].low == 700);
    CHECK(box.sightings[0].high == 800);
    CHECK(box.sightings[1].what == What::capped);
    CHECK(box.sightings[2].amount == 0);
    CHECK(box.sightings[3].what == What::brood);
    CHECK(hive_at(history, h).events[0].box == box.id);
}

TEST_CASE("all supers means each", "[history][reading]") {
    BuildJournal b;
    const HiveId h = b.hive("h3", {brood(), super(), super()});
    b.share("2026-06-01", Kind::capped, h, all(), 100);
    const History history = replay_checked(b.journal(), later);
    for (const BoxId id : history.supers_on(h)) CHECK(box_at(history, id).sightings.size() == 1);
}

TEST_CASE("frames become a share of the frames the box has", "[history][reading]") {
    BuildJournal b;
    const HiveId h = b.hive("h3", {brood(), super({}, 9)});
    b.fact("2026-06-01", Kind::full, h, sole()).value = frames("4.5");
    b.fact("2026-06-02", Kind::drawn, h, sole()).value = frames("9");
    Fact& but = b.fact("2026-06-03", Kind::capped, h, sole());
    but.value = frames("2"), but.value.of = -1;
    Fact& sides = b.fact("2026-06-04", Kind::full, h, sole());
    sides.value = frames("9"), sides.value.unit = Unit::side;
    const History history = replay_checked(b.journal(), later);
    const std::vector<BoxSighting>& s = box_at(history, history.supers_on(h)[0]).sightings;
    REQUIRE(s.size() == 4);
    CHECK(s[0].amount == 500);
    CHECK(s[1].amount == 1000);
    CHECK(s[2].amount == 778);   // all but 2 of 9
    CHECK(s[3].amount == 500);   // 9 of 18 sides
    CHECK(history.diagnostics.empty());
}

TEST_CASE("frames that the box has not", "[history][reading]") {
    BuildJournal b;
    const HiveId h = b.hive("h3", {brood(), super({}, 9)});   // line 1
    b.fact("2026-06-01", Kind::full, h, sole()).value = of_frames(4, 10);
    b.fact("2026-06-02", Kind::full, h, sole()).value = of_frames(10, 10);
    b.fact("2026-06-03", Kind::capped, h, sole()).value = frames("11");
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes{"warning frames-differ", "error too-many-frames", "error too-many-frames"});
    CHECK(cited(journal, history.diagnostics[2]) == std::vector<int>{1});
    CHECK(history.diagnostics[2].title.find("is more than the 9 frames of this super") != std::string::npos);
    const std::vector<BoxSighting>& s = box_at(history, history.supers_on(h)[0]).sightings;
    REQUIRE(s.size() == 1);
    CHECK(s[0].amount == 400);
}

TEST_CASE("more capped than full is taken as a share of the honey, and said", "[history][reading]") {
    for (const bool full_first : {true, false}) {
        BuildJournal b;
        const HiveId h = b.hive("h3", {brood(), super()});
        if (full_first) b.share("2026-06-01", Kind::full, h, sole(), 50);
        b.share("2026-06-01", Kind::capped, h, sole(), 70);
        if (!full_first) b.share("2026-06-01", Kind::full, h, sole(), 50);
        const History history = replay_checked(b.journal(), later);
        CHECK(found(history) == Codes{"note capped-over-full"});
        for (const BoxSighting& s : box_at(history, history.supers_on(h)[0]).sightings)
            if (s.what == What::capped) CHECK(s.amount == 350);
    }
}

TEST_CASE("two looks into one super on one day that cannot both be right are told with both lines", "[history][reading]") {
    const auto looked_twice = [](int first, int second) {
        BuildJournal b;
        const HiveId h = b.hive("h3", {brood(), super()});   // line 1
        b.share("2026-06-01", Kind::full, h, sole(), first);
        b.share("2026-06-01", Kind::full, h, sole(), second);
        return b.journal();
    };
    const Journal far = looked_twice(80, 20), near = looked_twice(60, 40);
    const History history = replay_checked(far, later);
    REQUIRE(found(history) == Codes{"warning looks-differ"});
    CHECK(cited(far, history.diagnostics[0]) == std::vector<int>{2});
    CHECK(box_at(history, history.supers_on(0)[0]).sightings.size() == 2);
    CHECK(found(replay_checked(near, later)).empty());
}

TEST_CASE("a super that was emptied or gave frames between two looks", "[history][reading]") {
    BuildJournal b;
    const HiveId h = b.hive("h3", {brood(), super()});
    b.share("2026-06-01", Kind::full, h, sole(), 80);
    b.fact("2026-06-01", Kind::frames_off, h, sole()).value = frames("5");
    b.share("2026-06-01", Kind::full, h, sole(), 20);
    for (const std::string& code : found(replay_checked(b.journal(), later))) CHECK(code.find("looks-differ") == std::string::npos);
}

TEST_CASE("no change repeats the last readings as repeated", "[history][reading]") {
    BuildJournal b;
    const HiveId h = b.hive("h7", {brood(), super()});
    b.share("2026-06-01", Kind::full, h, sole(), 60);
    b.share("2026-06-01", Kind::capped, h, sole(), 20);
    b.fact("2026-06-08", Kind::no_change, h, sole());
    b.fact("2026-06-15", Kind::no_change, h);
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    const std::vector<BoxSighting>& s = box_at(history, history.supers_on(h)[0]).sightings;
    REQUIRE(s.size() == 6);
    for (std::size_t i = 2; i < 6; ++i) CHECK(s[i].repeated);
    CHECK(s[5].day == day("2026-06-15"));
    CHECK(s[5].amount == 200);
}

TEST_CASE("no change where nothing was seen says so; a hive without supers is left alone", "[history][reading]") {
    BuildJournal b;
    const HiveId h = b.hive("h7", {brood(), super()});
    const HiveId bare = b.hive("h8", {brood()});
    b.fact("2026-06-08", Kind::no_change, h, sole());
    b.fact("2026-06-08", Kind::no_change, bare);
    b.fact("2026-06-08", Kind::no_change, bare, sole());
    const History history = replay_checked(b.journal(), later);
    CHECK(found(history) == Codes{"note nothing-to-repeat", "error no-such-super"});
}

TEST_CASE("readings of a super that came off that day are of that super", "[history][reading]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A")});
    b.fact("2026-06-08", Kind::super_off, h, sole()).value = kilograms("14");
    b.share("2026-06-08", Kind::capped, h, {}, 20);
    b.share("2026-06-08", Kind::full, h, label("A"), 60);
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    CHECK(box_at(history, history.takings[0].box).sightings.size() == 2);
    CHECK(history.takings[0].harvest);
}

TEST_CASE("a swarm draws its comb in the brood box", "[history][reading]") {
    BuildJournal b;
    const HiveId s1 = b.later_hive("s1");
    b.fact("2026-05-16", Kind::swarm_hived, s1);
    b.fact("2026-06-06", Kind::drawn, s1).value = frames("7");
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    CHECK(box_at(history, history.brood_boxes_on(s1)[0]).sightings[0].amount == 700);
}

TEST_CASE("sections by number and count", "[history][reading]") {
    BuildJournal b;
    const HiveId h = b.hive("k1", {brood(), super({}, 0, Comb::sections), super({}, 0, Comb::drawn)});
    b.fact("2026-08-12", Kind::sections_done, h).value = of_frames(8, 32);
    b.fact("2026-08-19", Kind::capped, h, bottom()).value = frames("10");
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    const std::vector<BoxSighting>& s = box_at(history, history.supers_on(h)[0]).sightings;
    REQUIRE(s.size() == 2);
    CHECK(s[0].amount == 250);
    CHECK(s[1].amount == 313);   // 10 of the 32 told before
}

TEST_CASE("the comb told picks the super of that comb", "[history][reading]") {
    BuildJournal b;
    const HiveId h = b.hive("h5", {brood(), super({}, 0, Comb::cut_comb), super({}, 0, Comb::drawn)});
    b.share("2026-07-26", Kind::capped, h, sole(), 90).comb = Comb::cut_comb;
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    CHECK(box_at(history, history.supers_on(h)[0]).sightings.size() == 1);
}

TEST_CASE("moisture of a super is the super's; of a lot, the honey's", "[history][reading]") {
    BuildJournal b;
    const HiveId h = b.hive("h5", {brood(), super()});
    b.fact("2026-07-26", Kind::moisture, h, sole()).value = Measure{Dimension::share, Unit::percent, 178, 178, 178, 0, false};
    // 17.0 % at 20 C reads 1.4940: S. Bogdanov, Book of Honey ch. 4 (2009), after Chataway (1932).
    Fact& index = b.fact("2026-07-27", Kind::honey_index, h, sole());
    index.value = Measure{Dimension::index, Unit::refractive_index, 149400, 149400, 149400, 0, false};
    b.fact("2026-07-28", Kind::moisture).lot = "A";
    const History history = replay_checked(b.journal(), later);
    const std::vector<BoxSighting>& s = box_at(history, history.supers_on(h)[0]).sightings;
    REQUIRE(s.size() == 2);
    CHECK(s[0].what == What::moisture);
    CHECK(s[0].amount == 178);
    CHECK(std::abs(s[1].amount - 170) <= 1);
    CHECK(history.honey_facts == std::vector<FactId>{2});
}
