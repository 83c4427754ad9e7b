// Whatever is written, in any order: the replay goes on and its histories stay sound.
#include <random>

#include "build_journal.hpp"
#include "replay_checked.hpp"

using namespace waxtab;
using namespace waxtab::testing;

namespace {

/// Nonsense that reads like facts.
class Scribbler {
public:
    explicit Scribbler(std::uint32_t seed) : random_(seed) {
        hives_ = {b_.hive("h1", {brood(), excluder(), super("A"), super()}), b_.hive("h2", {brood(), brood(), super("B", 9)}),
                  b_.hive("h3", {brood()}), b_.later_hive("s1"), b_.later_hive("n1")};
        orchard_ = b_.yard("orchard");
    }
    Journal journal(int facts) {
        Day at = day("2026-04-01");
        for (int i = 0; i < facts; ++i) {
            at += date::days{below(3)};
            scribble(iso(at));
        }
        return b_.journal();
    }

private:
    int below(int n) { return static_cast<int>(random_() % static_cast<std::uint32_t>(n)); }
    HiveId some_hive() { return hives_[static_cast<std::size_t>(below(static_cast<int>(hives_.size())))]; }
    template <class T, std::size_t n>
    T one_of(const T (&list)[n]) { return list[below(static_cast<int>(n))]; }

    BoxChoice choice() {
        BoxChoice c{static_cast<BoxChoice::By>(below(9)), below(6) ? Role::super : Role::brood, static_cast<std::uint8_t>(below(4)), {}};
        static const char* const labels[] = {"A", "B", "C", "d"};
        if (c.by == BoxChoice::By::label) c.label = one_of(labels);
        return c;
    }
    Measure amount() {
        switch (below(4)) {
            case 0: return percent(below(101));
            case 1: return frames(std::to_string(below(12)));
            case 2: return share_of(below(9) * 1000, 8 + below(3), Unit::of_frames);
            default: return kilograms(std::to_string(1 + below(30)));
        }
    }
    void scribble(const std::string& date) {
        static const Kind often[] = {Kind::super_on, Kind::super_off, Kind::full, Kind::capped, Kind::box_weight, Kind::extracted,
                                     Kind::super_moved, Kind::boxes_swapped, Kind::super_lifted, Kind::box_labelled};
        static const std::string_view details[] = {"", "before", "after", "shed", "empty", "sections"};
        const Kind kind = below(2) ? one_of(often) : static_cast<Kind>(below(kind_count));
        Fact& f = b_.fact(date, kind, below(12) ? some_hive() : no_hive);
        f.box = choice(), f.box2 = choice();
        f.other = below(3) ? some_hive() : no_hive;
        f.yard = below(2) ? orchard_ : 0;
        f.count = below(5) - 1;
        f.comb = static_cast<Comb>(below(8));
        f.placing = static_cast<Placing>(below(4));
        f.value = amount(), f.second = amount();
        f.detail = one_of(details), f.manner = one_of(details);
        f.text = below(3) ? "" : "C";
        if (below(4) == 0) f.hives = {some_hive(), some_hive()};
    }

    std::mt19937 random_;
    BuildJournal b_;
    std::vector<HiveId> hives_;
    YardId orchard_ = 0;
};

}  // namespace

TEST_CASE("histories stay sound whatever is written", "[history][random]") {
    for (std::uint32_t seed = 1; seed <= 400; ++seed) {
        INFO("seed " << seed);
        Scribbler scribbler(seed);
        const Journal journal = scribbler.journal(120);
        const History whole = replay_checked(journal, day("2027-12-31"));
        const History half = replay_checked(journal, day("2026-05-20"));
        for (const Diagnostic& d : whole.diagnostics) {
            CHECK_FALSE(d.title.empty());
            CHECK_FALSE(d.hint.empty());
        }
        CHECK(half.takings.size() <= whole.takings.size());
    }
}
