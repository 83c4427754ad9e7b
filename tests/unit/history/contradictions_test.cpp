// What cannot be, each with the line it contradicts.
#include "build_journal.hpp"
#include "replay_checked.hpp"

using namespace waxtab;
using namespace waxtab::testing;
using Codes = std::vector<std::string>;
using Lines = std::vector<int>;

TEST_CASE("looking at a super that is not there", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h3", {brood(), super()});
    b.fact("2026-05-01", Kind::super_on, h);                       // line 2
    b.share("2026-06-01", Kind::full, h, number(3), 50);
    b.share("2026-06-08", Kind::full, h, number(3), 60);           // the same echo is not reported again
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes{"error no-such-super"});
    const Diagnostic& d = history.diagnostics[0];
    CHECK(d.title == "h3 has no 'super 3': 2 supers are on");
    CHECK(cited(journal, d) == Lines{2});
    CHECK(d.related[0].text == "the boxes of h3 last changed here");
    CHECK_FALSE(d.hint.empty());
}

TEST_CASE("an echo is reported again once the stack has changed", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h3", {brood()});
    b.share("2026-06-01", Kind::full, h, sole(), 50);
    b.fact("2026-06-02", Kind::super_on, h);
    b.fact("2026-06-03", Kind::super_off, h, sole()).manner = "empty";
    b.share("2026-06-08", Kind::full, h, sole(), 60);
    const History history = replay_checked(b.journal(), later);
    CHECK(found(history) == Codes{"error no-such-super", "error no-such-super"});
}

TEST_CASE("taking off what is not on cites the line that took it off", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h3", {brood(), super()});
    b.fact("2026-05-01", Kind::super_off, h, sole());              // line 2
    b.fact("2026-06-01", Kind::super_off, h, sole());
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes{"error not-on"});
    CHECK(history.diagnostics[0].title == "'super' cannot be taken off h3: no supers are on");
    CHECK(cited(journal, history.diagnostics[0]) == Lines{2});
    CHECK(history.takings.size() == 1);
}

TEST_CASE("taking off what never was on cites the set-up", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h3", {brood()});
    b.fact("2026-06-01", Kind::super_off, h, sole());
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes{"error not-on"});
    CHECK(cited(journal, history.diagnostics[0]) == Lines{1});
    CHECK(history.diagnostics[0].related[0].text == "h3 was set up here");
}

TEST_CASE("two are taken where one is on: the one goes", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h3", {brood(), super()});
    b.fact("2026-06-01", Kind::super_off, h).count = 2;
    const History history = replay_checked(b.journal(), later);
    CHECK(found(history) == Codes{"error not-on"});
    CHECK(history.supers_on(h).empty());
    CHECK(history.takings.size() == 1);
}

TEST_CASE("'the super' of two is asked, with both listed", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h3", {brood(), super("A"), super()});
    b.share("2026-06-01", Kind::full, h, sole(), 50);
    b.fact("2026-06-01", Kind::super_off, h, sole());
    b.share("2026-06-02", Kind::full, h, {}, 50);
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes{"error which-super", "error which-super", "error which-super"});
    CHECK(history.diagnostics[0].title == "'super' of h3 could be any of 2");
    CHECK(history.diagnostics[0].related[0].text == "super 1: medium, 10 frames, \"A\"");
    CHECK(history.supers_on(h).size() == 2);
}

TEST_CASE("a labelled box elsewhere is pointed to", "[history][contradiction][label]") {
    BuildJournal b;
    const HiveId h1 = b.hive("h1", {brood(), super("A")});         // line 1
    const HiveId h2 = b.hive("h2", {brood(), super("B")});
    b.fact("2026-05-01", Kind::super_off, h2, label("B")).manner = "empty";   // line 3
    b.share("2026-06-01", Kind::full, h2, label("A"), 50);
    b.share("2026-06-01", Kind::full, h2, label("B"), 50);
    b.share("2026-06-01", Kind::full, h2, label("Z"), 50);
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes(3, "error no-such-super"));
    CHECK(cited(journal, history.diagnostics[0]) == Lines{1});
    CHECK(history.diagnostics[0].hint == "if it was moved, write that line first: `h1 super \"A\" moved to h2`");
    CHECK(cited(journal, history.diagnostics[1]) == Lines{3});
    CHECK(history.diagnostics[2].hint.find("no box of that label is known") == 0);
    CHECK(history.supers_on(h1).size() == 1);
}

TEST_CASE("a label is on one box at a time", "[history][contradiction][label]") {
    BuildJournal b;
    const HiveId h1 = b.hive("h1", {brood(), super("A")});
    const HiveId h2 = b.hive("h2", {brood(), super()});
    b.fact("2026-05-01", Kind::super_on, h2, label("A"));
    b.fact("2026-05-02", Kind::super_on, h1, label("A"));          // it is on already: nothing goes on
    b.fact("2026-05-03", Kind::box_labelled, h2, bottom()).text = "A";
    const History history = replay_checked(b.journal(), later);
    CHECK(found(history) == Codes(3, "error label-twice"));
    CHECK(history.supers_on(h1).size() == 1);
    CHECK(history.supers_on(h2).size() == 2);
    // Each hive's own is found by its label afterwards.
    b.share("2026-06-01", Kind::full, h2, label("A"), 50);
    b.share("2026-06-01", Kind::full, h1, label("A"), 60);
    CHECK(found(replay_checked(b.journal(), later)) == Codes(3, "error label-twice"));
}

TEST_CASE("a hive that has ended is written about", "[history][contradiction]") {
    const auto after = [](Kind end, Kind kind) {
        BuildJournal b;
        const HiveId h = b.hive("h2", {brood(), super()});
        const HiveId other = b.hive("h4", {brood()});
        Fact& f = b.fact("2026-05-01", end, h);                    // line 3
        if (end == Kind::hive_united) f.other = other;
        b.fact("2026-06-01", kind, h);
        b.fact("2026-06-01", Kind::temper, h);                     // one message a visit
        const Journal journal = b.journal();
        const History history = replay_checked(journal, later);
        REQUIRE(found(history) == Codes{"error hive-gone"});
        CHECK(cited(journal, history.diagnostics[0]) == Lines{3});
        CHECK_FALSE(hive_at(history, h).alive);
        return history.diagnostics[0].title;
    };
    CHECK(after(Kind::hive_dead, Kind::feed) == "'h2 feed' is noted for h2, which died on 2026-05-01");
    CHECK(after(Kind::hive_sold, Kind::inspected) == "'h2 inspected' is noted for h2, which was sold on 2026-05-01");
    CHECK(after(Kind::hive_united, Kind::super_on) == "'h2 super-on' is noted for h2, which was united with h4 on 2026-05-01");
    CHECK(after(Kind::hive_ended, Kind::queen) == "'h2 queen' is noted for h2, which was given up on 2026-05-01");
}

TEST_CASE("what was seen when the end was noted, and clearing up after it, are no contradiction", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h2", {brood(), excluder(), super()});
    b.fact("2026-05-01", Kind::hive_dead, h);
    b.fact("2026-05-01", Kind::stores, h).detail = "plenty";
    b.fact("2026-05-20", Kind::super_off, h, sole()).manner = "empty";
    b.fact("2026-05-20", Kind::excluder_off, h);
    b.fact("2026-05-20", Kind::brood_box_off, h);
    b.fact("2026-06-20", Kind::remark, h);
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    CHECK(hive_at(history, h).stack.empty());
}

TEST_CASE("a hive is written about before it is there", "[history][contradiction]") {
    BuildJournal b;
    b.hive("h1", {brood()});
    const HiveId s1 = b.later_hive("s1");
    b.fact("2026-05-01", Kind::feed, s1);
    b.fact("2026-05-16", Kind::swarm_hived, s1);                   // line 3
    b.fact("2026-05-17", Kind::feed, s1);
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes{"error hive-not-yet"});
    CHECK(cited(journal, history.diagnostics[0]) == Lines{3});
    CHECK(hive_at(history, s1).feedings.size() == 1);
}

TEST_CASE("a new hive by the name of a living one", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h1 = b.hive("h1", {brood()});
    const HiveId h2 = b.hive("h2", {brood()});
    b.fact("2026-05-01", Kind::inspected, h2);
    b.fact("2026-05-16", Kind::hive_split, h1).other = h2;
    b.fact("2026-05-17", Kind::hive_united, h1).other = h1;
    const History history = replay_checked(b.journal(), later);
    CHECK(found(history) == Codes{"error already-living", "error with-itself"});
    CHECK(hive_at(history, h1).alive);
}

TEST_CASE("gear that is on already, or not on", "[history][contradiction][gear]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), excluder(), super()});   // line 1
    b.fact("2026-05-01", Kind::excluder_on, h);
    b.fact("2026-05-02", Kind::excluder_off, h);                   // line 3
    b.fact("2026-05-03", Kind::excluder_off, h);
    b.fact("2026-05-04", Kind::escape_off, h);
    b.fact("2026-05-05", Kind::feeder_off, h);
    b.fact("2026-05-06", Kind::entrance_off, h);
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes{"warning gear-twice", "error not-on", "error not-on", "warning not-on", "warning not-on"});
    CHECK(cited(journal, history.diagnostics[0]) == Lines{1});
    CHECK(cited(journal, history.diagnostics[1]) == Lines{3});
    CHECK(history.diagnostics[1].related[0].text == "it was taken off here");
    CHECK(cited(journal, history.diagnostics[2]) == Lines{1});
}

TEST_CASE("'top' and 'bottom' of one visit are the same super", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h5", {brood(), super()});
    b.share("2026-06-01", Kind::full, h, top(), 50);
    b.share("2026-06-01", Kind::full, h, bottom(), 90);
    b.share("2026-06-08", Kind::full, h, bottom(), 95);
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes{"warning same-super"});
    CHECK(cited(journal, history.diagnostics[0]) == Lines{2, 1});
    const std::vector<BoxSighting>& seen = box_at(history, history.supers_on(h)[0]).sightings;
    REQUIRE(seen.size() == 2);   // the reading of a box that is not there is not given to the other
    CHECK(seen[0].amount == 500);
}

TEST_CASE("swapping or reversing what is one box", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h5", {brood(), super()});
    Fact& f = b.fact("2026-06-01", Kind::boxes_swapped, h, top());
    f.box2 = bottom();
    b.fact("2026-06-01", Kind::brood_reversed, h);
    const History history = replay_checked(b.journal(), later);
    CHECK(found(history) == Codes{"warning same-super", "error no-such-super"});
}

TEST_CASE("a treatment that is not in comes out", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h5", {brood()});
    b.fact("2026-08-01", Kind::treatment_on, h).detail = "thymol";   // line 2
    b.fact("2026-08-20", Kind::treatment_off, h).detail = "thymol";
    b.fact("2026-09-01", Kind::treatment_off, h).detail = "thymol";
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes{"error treatment-not-on"});
    CHECK(cited(journal, history.diagnostics[0]) == Lines{2});
    CHECK(history.diagnostics[0].title == "no thymol is in h5 to take out");
}

TEST_CASE("every message has something to write instead", "[history][contradiction]") {
    BuildJournal b;
    const HiveId h = b.hive("h5", {brood(), super(), super()});
    b.share("2026-06-01", Kind::full, h, sole(), 50);
    b.share("2026-06-01", Kind::full, h, number(4), 50);
    b.fact("2026-06-02", Kind::super_off, h, label("Q"));
    b.fact("2026-06-02", Kind::excluder_off, h);
    b.fact("2026-06-02", Kind::super_count, h).count = 7;
    b.fact("2026-06-02", Kind::treatment_off, h);
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.size() == 6);
    for (const Diagnostic& d : history.diagnostics) {
        INFO(d.title);
        CHECK_FALSE(d.hint.empty());
        CHECK(d.span.known());
        CHECK_FALSE(d.title.ends_with('.'));
        CHECK((d.title[0] < 'A' || d.title[0] > 'Z'));
    }
}
