// Boxes going on and off, moving about, and keeping their identity.
#include "build_journal.hpp"
#include "replay_checked.hpp"

using namespace waxtab;
using namespace waxtab::testing;
using Codes = std::vector<std::string>;

TEST_CASE("a set-up stack holds from before the first dated fact", "[history][stack]") {
    BuildJournal b;
    const HiveId h3 = b.hive("h3", {brood(), excluder(), super("B4", 9, Comb::drawn)});
    const Journal journal = b.journal();
    const History h = replay_checked(journal, later);
    REQUIRE(h.supers_on(h3).size() == 1);
    REQUIRE(h.brood_boxes_on(h3).size() == 1);
    const Box& s = box_at(h, h.supers_on(h3).front());
    CHECK(s.label == "B4");
    CHECK(frames_of(journal, s) == 9);
    CHECK_FALSE(s.comb_assumed);
    REQUIRE(s.stays.size() == 1);
    CHECK_FALSE(s.stays[0].from);
    CHECK(s.stays[0].on_fact == set_up_fact);
    CHECK(hive_at(h, h3).stack[1].what == StackPart::What::excluder);
    CHECK(hive_at(h, h3).alive);
    CHECK(box_at(h, h.brood_boxes_on(h3).front()).comb_assumed);
}

TEST_CASE("a super goes on over, under and between", "[history][stack]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), excluder(), super("A"), super("B")});
    b.fact("2026-06-01", Kind::super_on, h, label("O")).placing = Placing::over;
    b.fact("2026-06-02", Kind::super_on, h, label("U")).placing = Placing::under;
    b.fact("2026-06-03", Kind::super_on, h, label("M")).placing = Placing::between;
    const History history = replay_checked(b.journal(), later);
    std::string order;
    for (const BoxId id : history.supers_on(h)) order += box_at(history, id).label;
    CHECK(order == "UMABO");
    CHECK(hive_at(history, h).stack[1].what == StackPart::What::excluder);
}

TEST_CASE("where a super goes is the keeper's setting when it is not said", "[history][stack]") {
    for (const Placing setting : {Placing::over, Placing::under}) {
        BuildJournal b;
        b.settings().new_supers = setting;
        const HiveId h = b.hive("h1", {brood(), excluder(), super("A")});
        b.fact("2026-06-01", Kind::super_on, h, label("N"));
        const History history = replay_checked(b.journal(), later);
        const BoxId where = setting == Placing::over ? history.supers_on(h).back() : history.supers_on(h).front();
        CHECK(box_at(history, where).label == "N");
    }
}

TEST_CASE("several supers at once are several boxes", "[history][stack]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood()});
    Fact& f = b.fact("2026-06-01", Kind::super_on, h);
    f.count = 2, f.frames = 9, f.comb = Comb::foundation;
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    REQUIRE(history.supers_on(h).size() == 2);
    for (const BoxId id : history.supers_on(h)) {
        CHECK(box_at(history, id).comb == Comb::foundation);
        CHECK(frames_of(journal, box_at(history, id)) == 9);
        CHECK(box_at(history, id).kind == "medium");
        CHECK(box_at(history, id).kind_assumed);
    }
    CHECK(hive_at(history, h).events.back().boxes.size() == 2);
    CHECK(hive_at(history, h).events.back().box == no_box);
}

TEST_CASE("a super taken off keeps its story; its stay closes", "[history][stack]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super()});
    b.share("2026-06-01", Kind::full, h, sole(), 90);
    b.fact("2026-06-08", Kind::super_off, h, sole()).value = kilograms("22");
    const History history = replay_checked(b.journal(), later);
    CHECK(history.supers_on(h).empty());
    REQUIRE(history.takings.size() == 1);
    const Taking& t = history.takings[0];
    CHECK(t.harvest);
    CHECK(t.gross == Mass::grams(22000));
    CHECK_FALSE(t.net);
    const BoxStay& stay = box_at(history, t.box).stays.back();
    CHECK(stay.to == day("2026-06-08"));
    CHECK(stay.off_fact == 1);
}

TEST_CASE("which boxes come off: top, bottom, a number, a label, the top two, all", "[history][stack]") {
    const auto left = [](BoxChoice choice, int count = -1) {
        BuildJournal b;
        const HiveId h = b.hive("h1", {brood(), super("A"), super("B"), super("C")});
        b.fact("2026-06-08", Kind::super_off, h, std::move(choice)).count = count;
        const History history = replay_checked(b.journal(), later);
        CHECK(history.diagnostics.empty());
        std::string labels;
        for (const BoxId id : history.supers_on(h)) labels += box_at(history, id).label;
        return labels;
    };
    CHECK(left(top()) == "AB");
    CHECK(left(bottom()) == "BC");
    CHECK(left(by(BoxChoice::By::middle)) == "AC");
    CHECK(left(number(2)) == "AC");
    CHECK(left(label("b")) == "AC");
    CHECK(left(all()).empty());
    CHECK(left(sole(), 2) == "A");
    CHECK(left({}, 3).empty());
}

TEST_CASE("what was never filled is no harvest", "[history][stack]") {
    const auto harvest = [](auto&& write) {
        BuildJournal b;
        const HiveId h = b.hive("h1", {brood()});
        write(b, h);
        const History history = replay_checked(b.journal(), later);
        REQUIRE(history.takings.size() == 1);
        return history.takings[0].harvest;
    };
    CHECK(harvest([](BuildJournal& b, HiveId h) { b.fact("2026-05-01", Kind::super_on, h); b.fact("2026-06-08", Kind::super_off, h, sole()); }));
    CHECK_FALSE(harvest([](BuildJournal& b, HiveId h) {
        b.fact("2026-05-01", Kind::super_on, h);
        b.fact("2026-06-08", Kind::super_off, h, sole()).manner = "empty";
    }));
    CHECK_FALSE(harvest([](BuildJournal& b, HiveId h) {
        b.fact("2026-05-01", Kind::super_on, h);
        b.share("2026-06-01", Kind::full, h, sole(), 5);
        b.fact("2026-06-08", Kind::super_off, h, sole());
    }));
    CHECK_FALSE(harvest([](BuildJournal& b, HiveId h) {
        b.fact("2026-05-01", Kind::super_on, h);
        b.fact("2026-06-08", Kind::super_off, h, sole()).detail = "shed";
    }));
    // A wet super is licked dry in days.
    CHECK_FALSE(harvest([](BuildJournal& b, HiveId h) {
        b.fact("2026-05-01", Kind::super_on, h).comb = Comb::wet;
        b.fact("2026-05-06", Kind::super_off, h, sole());
    }));
    CHECK(harvest([](BuildJournal& b, HiveId h) {
        b.fact("2026-05-01", Kind::super_on, h);
        b.share("2026-06-01", Kind::full, h, sole(), 5);
        b.fact("2026-06-08", Kind::super_off, h, sole()).value = kilograms("9");
    }));
    // Said after the taking, on the same line of the book.
    CHECK_FALSE(harvest([](BuildJournal& b, HiveId h) {
        b.fact("2026-05-01", Kind::super_on, h);
        b.fact("2026-06-08", Kind::super_off, h, sole());
        b.share("2026-06-08", Kind::full, h, sole(), 0);
    }));
}

TEST_CASE("boxes keep their identity when swapped, lifted and moved to another hive", "[history][stack]") {
    BuildJournal b;
    const HiveId h1 = b.hive("h1", {brood(), super("A"), super("B"), super("C")});
    const HiveId h2 = b.hive("h2", {brood(), super("D")});
    Fact& swap = b.fact("2026-06-01", Kind::boxes_swapped, h1, top());
    swap.box2 = bottom();                                                       // C B A
    b.fact("2026-06-02", Kind::super_lifted, h1, top()).placing = Placing::under;   // A C B
    Fact& move = b.fact("2026-06-03", Kind::super_moved, h1, label("C"));
    move.other = h2, move.placing = Placing::under;
    const History h = replay_checked(b.journal(), later);
    CHECK(h.diagnostics.empty());
    const auto order = [&](HiveId id) {
        std::string labels;
        for (const BoxId box : h.supers_on(id)) labels += box_at(h, box).label;
        return labels;
    };
    CHECK(order(h1) == "AB");
    CHECK(order(h2) == "CD");
    const Box& c = box_at(h, h.supers_on(h2).front());
    REQUIRE(c.stays.size() == 2);
    CHECK(c.stays[0].hive == h1);
    CHECK(c.stays[0].to == day("2026-06-03"));
    CHECK(c.stays[1].hive == h2);
    CHECK(hive_at(h, h2).events.size() == 1);
    CHECK(hive_at(h, h2).events[0].box == c.id);
    CHECK(hive_at(h, h1).visits.size() == 3);
}

TEST_CASE("reading the top after a swap is a reading of the other box", "[history][stack]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A"), super("B")});
    b.share("2026-06-01", Kind::full, h, top(), 80);
    Fact& swap = b.fact("2026-06-01", Kind::boxes_swapped, h, top());
    swap.box2 = bottom();
    b.share("2026-06-08", Kind::full, h, top(), 30);
    const History history = replay_checked(b.journal(), later);
    CHECK(box_at(history, history.supers_on(h)[0]).sightings.back().amount == 800);
    CHECK(box_at(history, history.supers_on(h)[1]).sightings.back().amount == 300);
    CHECK(box_at(history, history.supers_on(h)[1]).label == "A");
}

TEST_CASE("brood boxes go below the excluder, and change places", "[history][stack]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), excluder(), super()});
    b.fact("2026-05-01", Kind::brood_box_on, h);
    b.fact("2026-05-08", Kind::brood_reversed, h);
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    const std::vector<Standing>& stack = hive_at(history, h).stack;
    REQUIRE(stack.size() == 4);
    CHECK(stack[2].what == StackPart::What::excluder);
    CHECK(stack[0].fact == 0);                 // the new one is below now
    CHECK(stack[1].fact == set_up_fact);
    CHECK(history.brood_boxes_on(h).size() == 2);
}

TEST_CASE("of brood boxes that are alike the upper one comes off; of unlike ones it is asked", "[history][stack]") {
    for (const char* second : {"deep", "shallow"}) {
        BuildJournal b;
        const HiveId h = b.hive("h1", {brood("deep"), brood(second)});
        b.fact("2026-09-01", Kind::brood_box_off, h).count = 1;
        const History history = replay_checked(b.journal(), later);
        const bool alike = std::string(second) == "deep";
        CHECK(history.brood_boxes_on(h).size() == (alike ? 1 : 2));
        CHECK(found(history) == (alike ? Codes{} : Codes{"error which-super"}));
    }
}

TEST_CASE("a label follows its box through the shed", "[history][stack][label]") {
    BuildJournal b;
    const HiveId h1 = b.hive("h1", {brood(), super()});
    const HiveId h2 = b.hive("h2", {brood()});
    b.fact("2026-05-01", Kind::box_labelled, h1, sole()).text = "B4";
    b.fact("2026-05-20", Kind::super_off, h1, label("B4")).manner = "empty";
    b.fact("2026-06-01", Kind::super_on, h2, label("b4"));
    const History h = replay_checked(b.journal(), later);
    CHECK(h.diagnostics.empty());
    REQUIRE(h.supers_on(h2).size() == 1);
    const Box& box = box_at(h, h.supers_on(h2)[0]);
    CHECK(box.label == "B4");
    REQUIRE(box.stays.size() == 2);
    CHECK(box.stays[0].hive == h1);
    CHECK(h.boxes.size() == 3);
}

TEST_CASE("without a label a box becomes one of its kind in the shed", "[history][stack][label]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super()});
    b.fact("2026-05-20", Kind::super_off, h, sole()).manner = "empty";
    b.fact("2026-06-01", Kind::super_on, h);
    const History history = replay_checked(b.journal(), later);
    CHECK(history.boxes.size() == 3);
    CHECK(box_at(history, history.supers_on(h)[0]).stays.size() == 1);
}

TEST_CASE("a labelled super put back soon went back with its honey", "[history][stack][label]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A")});
    b.share("2026-06-01", Kind::full, h, sole(), 60);
    b.fact("2026-06-02", Kind::super_off, h, label("A"));
    b.fact("2026-06-03", Kind::super_on, h, label("A"));
    const History history = replay_checked(b.journal(), later);
    CHECK(history.takings[0].returned == day("2026-06-03"));
    CHECK_FALSE(history.takings[0].harvest);
    CHECK(box_at(history, history.takings[0].box).emptied.empty());
}

TEST_CASE("a labelled super that comes back wet was emptied, though nobody wrote the extraction", "[history][stack][label]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A")});
    b.fact("2026-06-02", Kind::super_off, h, label("A")).value = kilograms("21");
    b.fact("2026-06-04", Kind::super_on, h, label("A")).comb = Comb::wet;
    const History history = replay_checked(b.journal(), later);
    CHECK(history.takings[0].harvest);
    CHECK_FALSE(history.takings[0].returned);
    const Box& box = box_at(history, history.takings[0].box);
    CHECK(box.emptied == std::vector<Day>{day("2026-06-04")});
    CHECK(box.comb == Comb::wet);
}

TEST_CASE("frames taken are a taking of their own", "[history][stack]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super("A", 9)});
    Fact& f = b.fact("2026-06-02", Kind::frames_off, h);
    f.value = frames("4"), f.second = kilograms("7.8");
    b.fact("2026-06-03", Kind::frames_off, h, label("A")).value = frames("11");
    const History history = replay_checked(b.journal(), later);
    REQUIRE(history.takings.size() == 1);
    CHECK(history.takings[0].frames == 4);
    CHECK(history.takings[0].box == no_box);
    CHECK(history.takings[0].gross == Mass::grams(7800));
    CHECK(found(history) == Codes{"error too-many-frames"});
}

TEST_CASE("only what was noted and has happened by the day counts", "[history][noted]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood()});
    Fact& late = b.fact("2026-06-12", Kind::super_on, h);
    late.noted = day("2026-06-15");
    const Journal journal = b.journal();
    CHECK(replay_checked(journal, day("2026-06-14")).supers_on(h).empty());
    const History after = replay_checked(journal, day("2026-06-15"));
    REQUIRE(after.supers_on(h).size() == 1);
    CHECK(box_at(after, after.supers_on(h)[0]).stays[0].from == day("2026-06-12"));
}

TEST_CASE("a claim of how many are on is checked, not obeyed", "[history][stack]") {
    BuildJournal b;
    const HiveId h = b.hive("h1", {brood(), super()});
    b.fact("2026-06-01", Kind::super_count, h).count = 1;
    b.fact("2026-06-08", Kind::super_count, h).count = 2;
    b.fact("2026-06-15", Kind::super_count, h).count = 2;   // the same again is not said again
    b.fact("2026-06-15", Kind::brood_box_count, h).count = 2;
    const Journal journal = b.journal();
    const History history = replay_checked(journal, later);
    CHECK(history.supers_on(h).size() == 1);
    CHECK(found(history) == Codes{"warning count-differs", "warning count-differs"});
    CHECK(cited(journal, history.diagnostics[0]) == std::vector<int>{1});
    CHECK(history.diagnostics[0].title == "'h1 super-count' says 2 supers, but by the journal h1 has 1 super on");
}

TEST_CASE("of several supers the one of the comb that is told comes off", "[history][stack]") {
    BuildJournal b;
    const HiveId h = b.hive("h5", {brood(), super("C", 0, Comb::cut_comb), super("D", 0, Comb::drawn)});
    b.fact("2026-07-27", Kind::super_off, h, sole()).comb = Comb::cut_comb;
    const History history = replay_checked(b.journal(), later);
    CHECK(history.diagnostics.empty());
    CHECK(box_at(history, history.takings.at(0).box).label == "C");
    CHECK(history.supers_on(h).size() == 1);
}
