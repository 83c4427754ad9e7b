// What is in the shed, as far as the keeper said.
#include "build_journal.hpp"
#include "replay_checked.hpp"

using namespace waxtab;
using namespace waxtab::testing;
using Codes = std::vector<std::string>;

namespace {


Fact& shed(BuildJournal& b, std::string_view date, int count, Comb comb) {
    Fact& f = b.fact(date, Kind::shed);
    f.count = count, f.comb = comb;
    return f;
}

int in_shed(const History& h, Comb comb) {
    int n = 0;
    for (const ShedRow& row : h.shed)
        if (row.what == "super" && row.comb == comb) n += row.count;
    return n;
}

int gear_in_shed(const History& h, std::string_view what) {
    for (const ShedRow& row : h.shed)
        if (row.what == what) return row.count;
    return -1;
}

}  // namespace

TEST_CASE("supers put on come out of the shed", "[history][shed]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood()});
    shed(b, "2026-04-10", 6, Comb::drawn);
    shed(b, "2026-04-10", 4, Comb::foundation);
    b.fact("2026-05-01", Kind::super_on, h).count = 2;                      // comb unsaid: drawn first
    b.fact("2026-05-02", Kind::super_on, h).comb = Comb::foundation;
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    CHECK(history.shed_said);
    CHECK(in_shed(history, Comb::drawn) == 4);
    CHECK(in_shed(history, Comb::foundation) == 3);
}

TEST_CASE("more than the shed has is said once, till the shed is counted again", "[history][shed]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood()});
    shed(b, "2026-04-10", 1, Comb::drawn);
    b.fact("2026-05-01", Kind::super_on, h);          // line 3
    b.fact("2026-05-02", Kind::super_on, h);
    b.fact("2026-05-03", Kind::super_on, h);
    shed(b, "2026-05-04", 0, Comb::drawn);
    b.fact("2026-05-05", Kind::super_on, h);
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(found(history) == Codes{"warning shed-short", "warning shed-short"});
    CHECK(history.diagnostics[0].title == "'h1 super-on' takes 1 medium super from the shed, where none is left");
    CHECK(cited(journal, history.diagnostics[0]) == std::vector<int>{3});
}

TEST_CASE("a shed nobody spoke of is never short", "[history][shed]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super()});
    b.fact("2026-05-01", Kind::super_off, h, sole()).manner = "empty";
    b.fact("2026-05-02", Kind::super_on, h).count = 3;
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    CHECK_FALSE(history.shed_said);
    CHECK(in_shed(history, Comb::drawn) == 0);
}

TEST_CASE("boxes come back: empty ones drawn, extracted ones wet", "[history][shed]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super(), super("A")});
    shed(b, "2026-04-10", 0, Comb::drawn);
    b.fact("2026-06-01", Kind::super_off, h, top()).value = kilograms("20");
    b.fact("2026-06-01", Kind::super_off, h, sole()).manner = "empty";
    const Journal before = b.journal();
    CHECK(in_shed(replay_checked(before, later), Comb::drawn) == 1);
    CHECK(in_shed(replay_checked(before, later), Comb::wet) == 0);
    b.fact("2026-06-02", Kind::extracted);
    CHECK(in_shed(replay_checked(b.journal(), later), Comb::wet) == 1);
    b.fact("2026-06-03", Kind::super_on, h, label("A"));
    const History history = replay_checked(b.journal(), later);
    CHECK(in_shed(history, Comb::wet) == 0);
    CHECK(box_at(history, history.supers_on(h)[0]).comb == Comb::wet);
}

TEST_CASE("foundation comes back as comb once it is drawn", "[history][shed]") {
    for (const int drawn : {30, 80}) {
        BuildJournal b;
        const HiveId h = b.hive("h1", {brood()});
        b.fact("2026-05-01", Kind::super_on, h).comb = Comb::foundation;
        b.share("2026-05-20", Kind::drawn, h, sole(), drawn);
        b.fact("2026-06-01", Kind::super_off, h, sole()).manner = "empty";
        const History history = replay_checked(b.journal(), later);
        CHECK(in_shed(history, drawn > 50 ? Comb::drawn : Comb::foundation) == 1);
    }
}

TEST_CASE("a count of the shed includes what came back by itself", "[history][shed]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super()});
    b.fact("2026-06-01", Kind::super_off, h, sole()).value = kilograms("20");
    b.fact("2026-06-02", Kind::extracted);
    shed(b, "2026-06-10", 5, Comb::drawn);
    const History history = replay_checked(b.journal(), later);
    CHECK(in_shed(history, Comb::drawn) == 5);
    CHECK(in_shed(history, Comb::wet) == 0);
}

TEST_CASE("changes to the shed", "[history][shed]") {
    BuildJournal b;
    shed(b, "2026-04-10", 5, Comb::drawn);
    Fact& in = b.fact("2026-04-11", Kind::shed_in);
    in.count = 3, in.comb = Comb::drawn;
    Fact& out = b.fact("2026-04-12", Kind::shed_out);
    out.count = 2, out.comb = Comb::drawn;
    CHECK(in_shed(replay_checked(b.journal(), later), Comb::drawn) == 6);
    Fact& more = b.fact("2026-04-13", Kind::shed_out);
    more.count = 7, more.comb = Comb::drawn;
    const History history = replay_checked(b.journal(), later);
    CHECK(found(history) == Codes{"warning shed-short"});
    CHECK(in_shed(history, Comb::drawn) == 0);
}

TEST_CASE("excluders and boards are counted once their number was said", "[history][shed]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super()});
    const HiveId other = b.hive("h2", {brood(), super()});
    Fact& f = b.fact("2026-04-10", Kind::shed);
    f.count = 1, f.detail = "excluder";
    b.fact("2026-05-01", Kind::excluder_on, h);
    b.fact("2026-05-01", Kind::escape_on, h);
    CHECK(gear_in_shed(replay_checked(b.journal(), later), "excluder") == 0);
    b.fact("2026-05-02", Kind::excluder_on, other);
    b.fact("2026-05-03", Kind::excluder_off, h);
    const History history = replay_checked(b.journal(), later);
    CHECK(found(history) == Codes{"warning shed-short"});
    CHECK(gear_in_shed(history, "excluder") == 1);
    CHECK(gear_in_shed(history, "escape board") == -1);
}

TEST_CASE("an escape board goes under the box named, else under all supers", "[history][gear]") {
    for (const bool named : {true, false}) {
        BuildJournal b;
        const HiveId h = b.hive("h1", {brood(), excluder(), super("A"), super("B")});
        b.fact("2026-07-26", Kind::escape_on, h, named ? label("B") : BoxChoice{});
        const History history = replay_checked(b.journal(), later);
        const std::vector<Standing>& stack = hive_at(history, h).stack;
        CHECK(stack[named ? 3 : 2].what == StackPart::What::escape);
        CHECK(history.diagnostics.empty());
    }
}

TEST_CASE("upper entrances and feeders stand in the stack", "[history][gear]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood()});
    b.fact("2026-04-01", Kind::feeder_on, h);
    b.fact("2026-04-02", Kind::entrance_on, h);
    b.fact("2026-05-01", Kind::super_on, h);
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    const std::vector<Standing>& stack = hive_at(history, h).stack;
    REQUIRE(stack.size() == 4);
    CHECK(stack[1].what == StackPart::What::box);     // the super goes below the feeder
    CHECK(stack[2].what == StackPart::What::feeder);
    CHECK(stack[2].since == day("2026-04-01"));
    CHECK(stack[3].what == StackPart::What::upper_entrance);
}

namespace {

Fact& frozen(BuildJournal& b, std::string_view date, int count, Comb comb) {
    Fact& f = b.fact(date, Kind::combs_frozen);
    f.count = count, f.comb = comb;
    return f;
}

const ShedRow& shed_row(const History& h, Comb comb) {
    for (const ShedRow& row : h.shed)
        if (row.what == "super" && row.comb == comb) return row;
    FAIL("no such row in the shed");
    return h.shed.front();
}

}  // namespace

TEST_CASE("frozen supers stay frozen till others are counted among them", "[history][shed]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood()});
    shed(b, "2026-08-10", 6, Comb::drawn);
    frozen(b, "2026-08-11", 4, Comb::drawn);
    CHECK(shed_row(replay_checked(b.journal(), day("2026-08-11")), Comb::drawn).frozen == 4);
    frozen(b, "2026-08-12", 1, Comb::drawn);                               // one more
    b.fact("2026-08-13", Kind::super_on, h).comb = Comb::drawn;            // taken as the one that was not
    b.fact("2026-08-14", Kind::super_on, h).comb = Comb::drawn;
    Fact& back = b.fact("2026-08-15", Kind::shed_in);
    back.count = 3, back.comb = Comb::drawn;
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    CHECK(shed_row(history, Comb::drawn).count == 7);
    CHECK(shed_row(history, Comb::drawn).frozen == 4);
    CHECK(shed_row(history, Comb::drawn).frozen_facts.size() == 2);
}

TEST_CASE("freezing tells of supers nobody counted", "[history][shed]") {
    BuildJournal b;
    b.hive("h1", {brood()});
    frozen(b, "2026-08-11", 6, Comb::unsaid);
    frozen(b, "2026-08-12", 2, Comb::wet);
    frozen(b, "2026-08-13", -1, Comb::unsaid);                             // all of them again
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    CHECK(shed_row(history, Comb::drawn).frozen == 6);
    CHECK(shed_row(history, Comb::wet).frozen == 2);
}

TEST_CASE("a labelled box is frozen in the shed, not on its hive", "[history][shed]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("B4"), super("B5")});
    Fact& off = b.fact("2026-08-01", Kind::super_off, h);
    off.box = label("B4"), off.manner = "empty", off.detail = "shed";
    b.fact("2026-08-02", Kind::combs_frozen).box = label("b4");
    b.fact("2026-08-02", Kind::combs_frozen).box = label("B5");
    const History history = replay_checked(b.journal(), later);
    REQUIRE(found(history) == Codes{"warning no-such-super"});
    CHECK(history.diagnostics[0].title.find("but it stands on h1") != std::string::npos);
    CHECK(shed_row(history, Comb::drawn).frozen == 1);
}

TEST_CASE("the year of its comb stays with a box", "[history][shed]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("B4"), super("B5")});
    const HiveId other = b.hive("h2", {brood()});
    const auto drawn_in = [&](std::string_view date, HiveId hive, BoxChoice box, int year) {
        Fact& f = b.fact(date, Kind::comb_year, hive);
        f.box = std::move(box), f.count = year;
    };
    drawn_in("2026-05-01", h, all(), 2023);
    drawn_in("2026-05-02", h, top(), 2024);
    drawn_in("2026-05-03", no_hive, label("B4"), 2019);
    drawn_in("2026-05-03", no_hive, label("X9"), 2019);
    drawn_in("2026-05-03", h, BoxChoice{BoxChoice::By::sole, Role::brood, 0, {}}, 2021);
    Fact& moved = b.fact("2026-06-01", Kind::super_moved, h);
    moved.box = label("B4"), moved.other = other;
    const History history = replay_checked(b.journal(), later);
    REQUIRE(found(history) == Codes{"error no-such-super"});
    CHECK(history.boxes[static_cast<std::size_t>(history.supers_on(other).at(0))].comb_year == 2019);
    CHECK(history.boxes[static_cast<std::size_t>(history.supers_on(h).at(0))].comb_year == 2024);
    CHECK(history.boxes[static_cast<std::size_t>(history.brood_boxes_on(h).at(0))].comb_year == 2021);
}
