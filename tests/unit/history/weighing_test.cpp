// Weighings find their boxes; extraction empties them.
#include "build_journal.hpp"
#include "replay_checked.hpp"

using namespace waxtab;
using namespace waxtab::testing;
using Codes = std::vector<std::string>;

namespace {


Fact& weigh(BuildJournal& b, std::string_view date, HiveId h, BoxChoice box, std::string_view kg, std::string_view detail) {
    Fact& f = b.fact(date, Kind::box_weight, h, std::move(box));
    f.value = kilograms(kg), f.detail = detail;
    return f;
}

}  // namespace

// COLOSS BEEBOOK, Standard methods for rearing and selection of queens, J. Apic. Res. 52(1), 2013, 3.3.1: supers are
// weighed before and after extraction and the difference is the harvest, to 100 g.
TEST_CASE("net honey is the super before less the super after", "[history][weighing]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A"), super("B"), super("C")});
    b.fact("2026-07-01", Kind::super_off, h, label("A")).value = kilograms("21.8");
    b.fact("2026-07-01", Kind::super_off, h, label("B"));
    weigh(b, "2026-07-01", h, label("C"), "19.4", "before");
    b.fact("2026-07-02", Kind::super_off, h, label("C"));
    weigh(b, "2026-07-02", no_hive, label("B"), "20.1", "before");
    b.fact("2026-07-03", Kind::extracted).lot = "L";
    weigh(b, "2026-07-03", h, label("A"), "6", "after");
    weigh(b, "2026-07-03", no_hive, label("B"), "5.9", "after");
    weigh(b, "2026-07-03", h, label("C"), "6.1", "");
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    REQUIRE(history.takings.size() == 3);
    CHECK(history.takings[0].net == Mass::grams(15800));
    CHECK(history.takings[1].net == Mass::grams(14200));
    CHECK(history.takings[2].net == Mass::grams(13300));
    CHECK(history.takings[0].weighings == std::vector<FactId>{0, 6});
    CHECK(history.takings[2].weighings == std::vector<FactId>{2, 8});
}

TEST_CASE("a weight said to be of honey is net", "[history][weighing]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super()});
    Fact& f = b.fact("2026-07-01", Kind::super_off, h, sole());
    f.value = kilograms("14"), f.manner = "honey";
    const History history = replay_checked(b.journal(), later);
    CHECK(history.takings[0].net == Mass::grams(14000));
    CHECK_FALSE(history.takings[0].gross);
}

TEST_CASE("one weight for several supers is shared so that it adds up", "[history][weighing]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super(), super(), super()});
    b.fact("2026-07-01", Kind::super_off, h, all()).value = kilograms("50");
    const History history = replay_checked(b.journal(), later);
    CHECK(found(history) == Codes{"note weight-shared"});
    Mass sum;
    for (const Taking& t : history.takings) sum += t.gross.value();
    CHECK(sum == Mass::grams(50000));
    CHECK(history.takings[1].gross == Mass{16'666'666'666'666});
}

TEST_CASE("without a label the one super that came off is meant, of several it is asked", "[history][weighing]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super(), super(), super()});
    b.fact("2026-07-01", Kind::super_off, h, top()).value = kilograms("22");
    weigh(b, "2026-07-02", h, {}, "6", "after");
    b.fact("2026-07-08", Kind::super_off, h).count = 2;
    weigh(b, "2026-07-09", h, sole(), "6", "after");
    const History history = replay_checked(b.journal(), later);
    CHECK(history.takings[0].net == Mass::grams(16000));
    CHECK(found(history) == Codes{"error which-super"});
}

TEST_CASE("weighing a super that stands is a sighting", "[history][weighing]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super()});
    weigh(b, "2026-07-01", h, top(), "21", "");
    const History history = replay_checked(b.journal(), later);
    const Box& box = box_at(history, history.supers_on(h)[0]);
    REQUIRE(box.sightings.size() == 1);
    CHECK(box.sightings[0].what == BoxSighting::What::gross_weight);
    CHECK(box.sightings[0].amount == Mass::grams(21000).ng);
    CHECK(history.takings.empty());
    CHECK(hive_at(history, h).visits.size() == 1);
}

TEST_CASE("weights that cannot be", "[history][weighing][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A"), super("B")});
    b.fact("2026-07-01", Kind::super_off, h, label("A")).value = kilograms("6");   // line 2
    weigh(b, "2026-07-03", h, label("A"), "21", "after");
    weigh(b, "2026-07-03", h, label("B"), "6", "after");
    weigh(b, "2026-07-03", h, label("Z"), "6", "after");
    weigh(b, "2026-07-03", no_hive, label("Y"), "6", "after");
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes{"error heavier-after", "warning not-taken-off", "error no-such-super", "error no-such-super"});
    CHECK(history.diagnostics[0].title == "21.0 kg after extracting is not less than the 6.0 kg before");
    CHECK(cited(journal, history.diagnostics[0]) == std::vector<int>{2});
    CHECK_FALSE(history.takings[0].net);
}

TEST_CASE("extraction empties what waits, of the hives named", "[history][extraction]") {
    BuildJournal b;
    const HiveId h1 = b.hive("h1", {brood(), super("A")});
    const HiveId h2 = b.hive("h2", {brood(), super()});
    b.fact("2026-07-01", Kind::super_off, h1, sole()).value = kilograms("21");
    b.fact("2026-07-01", Kind::super_off, h2, sole()).value = kilograms("20");
    Fact& first = b.fact("2026-07-02", Kind::extracted);
    first.hives = {h1};
    b.fact("2026-07-05", Kind::extracted).yard = no_yard;
    b.fact("2026-07-06", Kind::super_on, h1, label("A")).comb = Comb::wet;
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    CHECK(history.takings[0].extracted == 2);
    CHECK(history.takings[1].extracted == 3);
    CHECK(box_at(history, history.takings[0].box).emptied == std::vector<Day>{day("2026-07-02")});
    CHECK(history.honey_facts == std::vector<FactId>{2, 3});
    CHECK(hive_at(history, h1).events.size() == 3);
    CHECK(hive_at(history, h2).events.size() == 2);
    // One wet super is in the shed, the other one is on again.
    REQUIRE(history.shed.size() == 1);
    CHECK(history.shed[0].comb == Comb::wet);
    CHECK(history.shed[0].count == 1);
}

TEST_CASE("so many supers extracted are those that waited longest; empty ones never wait", "[history][extraction]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A"), super("B"), super("C")});
    b.fact("2026-07-01", Kind::super_off, h, label("A")).manner = "empty";
    b.fact("2026-07-02", Kind::super_off, h, label("B")).value = kilograms("20");
    b.fact("2026-07-03", Kind::super_off, h, label("C")).value = kilograms("20");
    b.fact("2026-07-04", Kind::extracted).count = 1;
    const History history = replay_checked(b.journal(), later);
    CHECK_FALSE(history.takings[0].extracted);
    CHECK(history.takings[1].extracted);
    CHECK_FALSE(history.takings[2].extracted);
}

TEST_CASE("what comes off on the day of the extraction belongs to it, whichever was written first", "[history][extraction]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A"), super("B"), super("C"), super("D")});
    b.fact("2026-07-01", Kind::extracted).lot = "L";                                       // 0
    b.fact("2026-07-01", Kind::super_off, h, label("A")).value = kilograms("20");
    b.fact("2026-07-08", Kind::extracted).lot = "M";                                       // 2
    b.fact("2026-07-08", Kind::super_off, h, label("B")).value = kilograms("20");
    b.fact("2026-07-08", Kind::extracted).lot = "N";                                       // 4
    Fact& timed = b.fact("2026-07-15", Kind::extracted);                                   // 5
    timed.minute = 600;
    Fact& later_that_day = b.fact("2026-07-15", Kind::super_off, h, label("C"));
    later_that_day.minute = 660;
    Fact& back = b.fact("2026-07-20", Kind::super_off, h, label("D"));
    back.noted = day("2026-07-30");
    b.fact("2026-07-22", Kind::extracted).lot = "O";                                       // 8
    const History history = replay_checked(b.journal(), later);
    REQUIRE(history.takings.size() == 4);
    CHECK(history.takings[0].extracted == 0);
    CHECK(history.takings[1].extracted == 4);   // another extraction followed it
    CHECK(history.takings[2].extracted == 8);   // it came off after the first one of that day
    CHECK_FALSE(history.takings[3].extracted);  // noted only after the lot was made
}

TEST_CASE("an extraction written at a yard is of that yard's supers", "[history][extraction]") {
    BuildJournal b;
    const YardId orchard = b.yard("orchard");
    const HiveId h1 = b.hive("h1", {brood(), super("A")});
    const HiveId h2 = b.hive("h2", {brood(), super("B")});
    b.fact("2026-06-01", Kind::hive_moved, h2).yard = orchard;
    b.fact("2026-07-01", Kind::super_off, h1, sole());
    b.fact("2026-07-01", Kind::super_off, h2, sole());
    b.fact("2026-07-02", Kind::extracted).yard = orchard;
    const History history = replay_checked(b.journal(), later);
    CHECK_FALSE(history.takings[0].extracted);
    CHECK(history.takings[1].extracted);
}

TEST_CASE("comb honey is packed, not extracted", "[history][extraction]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A"), super("C", 0, Comb::cut_comb)});
    b.fact("2026-07-02", Kind::super_off, h, all());
    b.fact("2026-07-04", Kind::extracted);
    b.fact("2026-07-05", Kind::combs_packed).count = 28;
    const History history = replay_checked(b.journal(), later);
    CHECK(history.takings[0].extracted == 1);
    CHECK(history.takings[1].extracted == 2);
    CHECK(history.honey_facts.size() == 2);
}

TEST_CASE("readings from before the extraction are not repeated after it", "[history][extraction]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A")});
    b.share("2026-07-01", Kind::full, h, sole(), 100);
    b.fact("2026-07-02", Kind::super_off, h, sole());
    b.fact("2026-07-03", Kind::extracted);
    b.fact("2026-07-04", Kind::super_on, h, label("A")).comb = Comb::wet;
    b.fact("2026-07-11", Kind::no_change, h, sole());
    b.fact("2026-07-12", Kind::super_off, h, sole());
    const History history = replay_checked(b.journal(), later);
    CHECK(found(history) == Codes{"note nothing-to-repeat"});
    CHECK_FALSE(history.takings[1].harvest);
}
