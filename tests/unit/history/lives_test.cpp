// Hives that come into being, move, and end.
#include "build_journal.hpp"
#include "history/feed_span.hpp"
#include "replay_checked.hpp"

using namespace waxtab;
using namespace waxtab::testing;

TEST_CASE("a swarm hived starts with one brood box of the usual kind", "[history][life]") {
    BuildJournal b;
    const HiveId h4 = b.hive("h4", {brood()});
    const HiveId s1 = b.later_hive("s1");
    b.fact("2026-05-16", Kind::swarmed, h4);
    b.fact("2026-05-16", Kind::swarm_hived, s1).other = h4;
    const Journal journal = b.journal();
    const History before = replay_checked(journal, day("2026-05-15"));
    CHECK_FALSE(hive_at(before, s1).alive);
    CHECK_FALSE(hive_at(before, s1).born);
    CHECK(hive_at(before, s1).stack.empty());
    const History h = replay_checked(journal, later);
    CHECK(h.diagnostics.empty());
    const HiveHistory& swarm = hive_at(h, s1);
    CHECK(swarm.alive);
    CHECK(swarm.born == day("2026-05-16"));
    CHECK(swarm.mother == h4);
    REQUIRE(h.brood_boxes_on(s1).size() == 1);
    const Box& box = box_at(h, h.brood_boxes_on(s1)[0]);
    CHECK(box.kind == "deep");
    CHECK(box.kind_assumed);
    CHECK(box.stays[0].from == day("2026-05-16"));
    CHECK(swarm.yard_on(day("2026-06-01")) == 0);
    CHECK(swarm.events.size() == 1);
    CHECK(hive_at(h, h4).events.size() == 2);
}

TEST_CASE("the brood boxes of a new hive as told the same day", "[history][life]") {
    BuildJournal b;
    const HiveId s1 = b.later_hive("s1");
    b.fact("2026-05-16", Kind::swarm_hived, s1);
    b.fact("2026-05-16", Kind::brood_box_count, s1).count = 2;
    const History h = replay_checked(b.journal(), later);
    CHECK(h.diagnostics.empty());
    CHECK(h.brood_boxes_on(s1).size() == 2);
}

TEST_CASE("splits and nucs have a mother; bought hives have none", "[history][life]") {
    BuildJournal b;
    const HiveId h3 = b.hive("h3", {brood(), brood()});
    const HiveId h11 = b.later_hive("h11");
    const HiveId n1 = b.later_hive("n1");
    const HiveId h12 = b.later_hive("h12");
    b.fact("2026-05-10", Kind::hive_split, h3).other = h11;
    b.fact("2026-05-11", Kind::nuc_made, h3).other = n1;
    b.fact("2026-05-12", Kind::hive_bought, h12);
    const History h = replay_checked(b.journal(), later);
    CHECK(h.diagnostics.empty());
    CHECK(hive_at(h, h11).mother == h3);
    CHECK(hive_at(h, n1).mother == h3);
    CHECK(hive_at(h, h12).mother == no_hive);
    for (const HiveId id : {h11, n1, h12}) CHECK(h.brood_boxes_on(id).size() == 1);
    CHECK(h.brood_boxes_on(h3).size() == 2);
    CHECK(hive_at(h, h11).visits == std::vector<Day>{day("2026-05-10")});
}

TEST_CASE("a hive set up for a swarm to come keeps its stack", "[history][life]") {
    BuildJournal b;
    const HiveId s1 = b.hive("s1", {brood("deep"), brood("deep")});
    b.fact("2026-05-16", Kind::swarm_hived, s1);
    const Journal journal = b.journal();
    CHECK_FALSE(hive_at(replay_checked(journal, day("2026-05-01")), s1).alive);
    const History h = replay_checked(journal, later);
    CHECK(h.diagnostics.empty());
    CHECK(hive_at(h, s1).alive);
    CHECK(h.brood_boxes_on(s1).size() == 2);
}

TEST_CASE("a hive stands where it was moved to", "[history][life]") {
    BuildJournal b;
    const YardId orchard = b.yard("orchard");
    const HiveId h = b.hive("h4", {brood()});
    b.fact("2026-05-23", Kind::hive_moved, h).yard = orchard;
    b.fact("2026-06-23", Kind::hive_moved, h).yard = orchard;
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    CHECK(hive_at(history, h).yard_on(day("2026-05-22")) == 0);
    CHECK(hive_at(history, h).yard_on(day("2026-05-23")) == orchard);
    REQUIRE(found(history) == std::vector<std::string>{"warning already-there"});
    CHECK(cited(journal, history.diagnostics[0]) == std::vector<int>{2});
}

TEST_CASE("united: the boxes stand on the other hive, the same boxes", "[history][life]") {
    BuildJournal b;
    const HiveId h8 = b.hive("h8", {brood(), excluder(), super("X")});
    const HiveId h4 = b.hive("h4", {brood(), excluder(), super("Y")});
    b.fact("2026-08-09", Kind::hive_united, h8).other = h4;
    b.share("2026-08-16", Kind::full, h4, label("X"), 40);
    const History h = replay_checked(b.journal(), later);
    CHECK(h.diagnostics.empty());
    CHECK(hive_at(h, h8).united_into == h4);
    CHECK(hive_at(h, h8).ended == day("2026-08-09"));
    CHECK(hive_at(h, h8).stack.empty());
    CHECK(h.brood_boxes_on(h4).size() == 2);
    REQUIRE(h.supers_on(h4).size() == 2);
    CHECK(box_at(h, h.supers_on(h4)[1]).label == "X");
    CHECK(box_at(h, h.supers_on(h4)[1]).stays.size() == 2);
    CHECK(hive_at(h, h4).events.front().boxes.size() == 2);
}

TEST_CASE("sold with its boxes; dead with its boxes standing; given up with boxes to the shed", "[history][life]") {
    BuildJournal b;
    const HiveId sold = b.hive("h1", {brood(), super("A")});
    const HiveId dead = b.hive("h2", {brood(), super("B")});
    const HiveId ended = b.hive("h3", {brood(), super("C")});
    b.fact("2026-08-09", Kind::hive_sold, sold);
    b.fact("2026-08-09", Kind::hive_dead, dead);
    Fact& f = b.fact("2026-08-09", Kind::hive_ended, ended);
    f.detail = "shook out", f.manner = "shed";
    const History h = replay_checked(b.journal(), later);
    CHECK(hive_at(h, sold).stack.empty());
    CHECK(hive_at(h, dead).stack.size() == 2);
    CHECK(hive_at(h, ended).stack.empty());
    for (const HiveId id : {sold, dead, ended}) CHECK_FALSE(hive_at(h, id).alive);
    int boxes = 0;
    for (const ShedRow& row : h.shed) boxes += row.count;
    CHECK(boxes == 2);
    CHECK(h.takings.empty());
}

TEST_CASE("new bees in a dead hive's boxes", "[history][life]") {
    BuildJournal b;
    const HiveId h = b.hive("h2", {brood(), super()});
    b.fact("2026-04-01", Kind::hive_dead, h);
    b.fact("2026-05-16", Kind::swarm_hived, h);
    b.fact("2026-05-20", Kind::feed, h);
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    CHECK(hive_at(history, h).alive);
    CHECK_FALSE(hive_at(history, h).ended);
    CHECK(hive_at(history, h).born == day("2026-05-16"));
    CHECK(hive_at(history, h).stack.size() == 2);
}

TEST_CASE("visits are days at the hive; what is written at home is none", "[history][life]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A")});
    b.fact("2026-06-01", Kind::temper, h);
    b.fact("2026-06-01", Kind::bees, h);
    b.fact("2026-06-03", Kind::todo, h);
    b.fact("2026-06-04", Kind::remark, h);
    b.fact("2026-06-08", Kind::super_off, h, sole()).value = kilograms("21");
    Fact& w = b.fact("2026-06-10", Kind::box_weight, h, label("A"));
    w.value = kilograms("6"), w.detail = "after";
    const History history = replay_checked(b.journal(), later);
    CHECK(hive_at(history, h).visits == std::vector<Day>{day("2026-06-01"), day("2026-06-08")});
    CHECK(hive_at(history, h).events.size() == 6);
    CHECK(history.todos.size() == 1);
}

TEST_CASE("facts of the yard and of the honey are kept apart, in order", "[history][elsewhere]") {
    BuildJournal b;
    const YardId orchard = b.yard("orchard");
    b.fact("2026-06-01", Kind::flow).detail = "heavy";
    b.fact("2026-06-01", Kind::temperature);
    b.fact("2026-06-02", Kind::bloom).yard = orchard;
    b.fact("2026-06-03", Kind::jars).count = 40;
    b.fact("2026-06-04", Kind::moisture).lot = "A";
    const History h = replay_checked(b.journal(), later);
    CHECK(h.yard_facts[0] == std::vector<FactId>{0, 1});
    CHECK(h.yard_facts[1] == std::vector<FactId>{2});
    CHECK(h.honey_facts == std::vector<FactId>{3, 4});
}

TEST_CASE("feeding lasts till the feeder is off or empty; the next feed ends none", "[history][care]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood()});
    b.fact("2026-04-01", Kind::feeder_on, h);
    b.fact("2026-04-01", Kind::feed, h).detail = "syrup";
    b.fact("2026-04-08", Kind::feed, h).detail = "syrup";
    b.fact("2026-04-12", Kind::feeder_state, h).detail = "empty";
    b.fact("2026-04-20", Kind::feed, h).detail = "syrup";
    b.fact("2026-04-26", Kind::feeder_off, h);
    b.fact("2026-09-01", Kind::feed, h).detail = "fondant";
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    const std::vector<Feeding>& f = hive_at(history, h).feedings;
    REQUIRE(f.size() == 4);
    CHECK(f[0].fact == 1);
    CHECK_FALSE(f[0].to);
    CHECK(f[1].to == day("2026-04-12"));
    CHECK(f[2].to == day("2026-04-26"));
    CHECK_FALSE(f[3].to);
}

// Common practice, no source: a fortnight for moving stores; see feed_span.hpp.
TEST_CASE("how long a feed counts", "[history][care]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood()});
    b.fact("2026-03-10", Kind::feed, h).detail = "syrup";
    b.fact("2026-04-20", Kind::feed, h).detail = "syrup";
    b.fact("2026-04-26", Kind::feeder_off, h);
    b.fact("2026-05-01", Kind::feed, h).detail = "syrup";
    b.fact("2026-08-01", Kind::feeder_off, h);           // far too late to tell when that one was gone
    b.fact("2026-09-01", Kind::feeder_on, h);
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    const std::vector<Feeding>& f = hive_at(history, h).feedings;
    REQUIRE(f.size() == 4);
    const auto span = [&](std::size_t i) { return span_of(journal, f[i], day("2026-10-01")); };
    CHECK(span(0).sure == day("2026-03-10"));
    CHECK(span(0).possible == day("2026-03-24"));
    CHECK(span(1).sure == day("2026-04-26"));
    CHECK(span(1).possible == day("2026-05-10"));
    CHECK(span(2).sure == day("2026-05-01"));
    CHECK(span(3).sure == day("2026-09-01"));
    CHECK(span(3).possible == day("2026-10-01"));
    // The amount is known: gone in a week, though the feeder came off later.
    BuildJournal said;
    const HiveId fed = said.hive("h1", {brood()});
    Fact& portion = said.fact("2026-04-11", Kind::feed, fed);
    portion.detail = "syrup", portion.value = measure("2", Unit::litre).value();
    said.fact("2026-04-25", Kind::feeder_off, fed);
    const Journal two_litres = said.journal();
    CHECK(span_of(two_litres, hive_at(replay_checked(two_litres, later), fed).feedings[0], later).sure == day("2026-04-18"));
}

TEST_CASE("a feeder nobody noted may come off after a feed", "[history][care]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood()});
    b.fact("2026-04-20", Kind::feed, h).detail = "syrup";
    b.fact("2026-04-26", Kind::feeder_off, h);
    CHECK(replay_checked(b.journal(), later).diagnostics.empty());
}

TEST_CASE("treatments are in from on to off; one given once lasts a day", "[history][care]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood()});
    Fact& on = b.fact("2026-08-01", Kind::treatment_on, h);
    on.detail = "amitraz", on.second = Measure{Dimension::duration, Unit::day, 42, 42, 42, 0, false};
    b.fact("2026-08-02", Kind::treatment_on, h).detail = "thymol";
    b.fact("2026-09-12", Kind::treatment_off, h).detail = "amitraz";
    b.fact("2026-12-20", Kind::treatment, h).detail = "oxalic acid";
    const History history = replay_checked(b.journal(), later);
    const std::vector<Treating>& t = hive_at(history, h).treatings;
    REQUIRE(t.size() == 3);
    CHECK(t[0].to == day("2026-09-12"));
    CHECK(t[0].meant_days == 42);
    CHECK(t[0].substance == "amitraz");
    CHECK_FALSE(t[1].to);
    CHECK(t[2].from == t[2].to);
}

TEST_CASE("an end takes treatments and feeds with it", "[history][care]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood()});
    b.fact("2026-08-01", Kind::treatment_on, h).detail = "thymol";
    b.fact("2026-08-01", Kind::feed, h);
    b.fact("2026-08-10", Kind::hive_dead, h);
    const History history = replay_checked(b.journal(), later);
    CHECK(hive_at(history, h).treatings[0].to == day("2026-08-10"));
    CHECK(hive_at(history, h).feedings[0].to == day("2026-08-10"));
}
