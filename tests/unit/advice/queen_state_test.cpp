// What notes on queen, eggs and cells add up to.
#include "advice/queen_state.hpp"

#include <catch2/catch.hpp>

using namespace waxtab;
using handbook::QueenStart;

namespace {

/// Hand-made facts of hive 0, in the order given.
class Notes {
public:
    Notes& note(int day, Kind kind, std::string_view detail = "", int count = -1) {
        Fact f;
        f.kind = kind;
        f.hive = 0;
        f.happened = f.noted = Day{date::days{20000 + day}};
        f.detail = detail;
        f.count = count;
        facts_.push_back(f);
        return *this;
    }
    Notes& by(std::string_view manner) { return facts_.back().manner = manner, *this; }
    Notes& into(HiveId other) { return facts_.back().other = other, *this; }
    QueenState walk(int on, HiveId hive = 0) const {
        std::vector<Seen> seen;
        for (std::size_t i = 0; i < facts_.size(); ++i) seen.push_back({static_cast<FactId>(i), facts_[i].happened, &facts_[i]});
        return walk_queen(hive, seen, Day{date::days{20000 + on}});
    }

private:
    std::vector<Fact> facts_;
};

}  // namespace

TEST_CASE("a sealed cell found without the queen starts the clock at the sighting", "[advice][queen]") {
    const auto s = Notes().note(0, Kind::queen_cells, "sealed", 2).walk(3);
    REQUIRE(s.clock);
    CHECK(s.clock->start == QueenStart::sealed_cell_found);
    CHECK_FALSE(s.cells->queen_there);
}

TEST_CASE("with the queen or eggs there cells start no clock", "[advice][queen]") {
    CHECK_FALSE(Notes().note(0, Kind::queen, "seen").note(0, Kind::queen_cells, "open", 3).walk(1).clock);
    // Eggs of the same visit, written after the cells.
    CHECK_FALSE(Notes().note(0, Kind::queen_cells, "open", 3).note(0, Kind::eggs, "seen").walk(1).clock);
    // Eggs of four days before prove nothing for today: they have hatched (development tables).
    CHECK(Notes().note(0, Kind::eggs, "seen").note(4, Kind::queen_cells, "open", 3).walk(5).clock);
}

TEST_CASE("the clock outlives the cells", "[advice][queen]") {
    const auto s = Notes().note(0, Kind::queen_cells, "sealed", 1).note(9, Kind::queen_cells, "", 0).walk(10);
    CHECK(s.clock);
    CHECK_FALSE(s.cells);
}

TEST_CASE("eggs end the clock only once new ones are possible", "[advice][queen]") {
    // 14 days after the prime swarm at the earliest: 8 to emergence, 6 to the first eggs.
    CHECK(Notes().note(0, Kind::swarmed).note(2, Kind::eggs, "seen").walk(15).clock);
    CHECK_FALSE(Notes().note(0, Kind::swarmed).note(14, Kind::eggs, "seen").walk(15).clock);
}

TEST_CASE("larvae and brood end it when they cannot be the old queen's", "[advice][queen]") {
    CHECK(Notes().note(0, Kind::queen_cells, "sealed", 1).note(7, Kind::larvae, "seen").walk(12).clock);
    CHECK_FALSE(Notes().note(0, Kind::queen_cells, "sealed", 1).note(12, Kind::larvae, "seen").walk(12).clock);
}

TEST_CASE("supersedure cells start no clock", "[advice][queen]") {
    CHECK_FALSE(Notes().note(0, Kind::queen_cells, "", 2).by("supersedure").walk(3).clock);
}

TEST_CASE("an old queen that left with the split leaves the mother hive to raise one", "[advice][queen]") {
    const Notes n = Notes().note(0, Kind::eggs, "seen").note(0, Kind::hive_split, "old queen").into(1);
    CHECK(n.walk(1, 0).clock->start == QueenStart::queenless_split);
    CHECK_FALSE(n.walk(1, 1).clock);
    CHECK(n.walk(1, 1).queen);
}

TEST_CASE("a split that does not say leaves both halves open until eggs or queen are seen", "[advice][queen]") {
    const Notes n = Notes().note(0, Kind::hive_split).into(1);
    CHECK(n.walk(1, 0).split_unknown);
    CHECK(n.walk(1, 1).split_unknown);
    CHECK_FALSE(Notes().note(0, Kind::hive_split).into(1).note(5, Kind::eggs, "seen").walk(6, 0).split_unknown);
}

TEST_CASE("eggs while the queen is said to be gone are no proof", "[advice][queen]") {
    const auto s = Notes().note(0, Kind::queen, "absent").note(20, Kind::eggs, "seen").walk(21);
    CHECK(s.absent);
    CHECK(s.eggs);
}

TEST_CASE("a clock without news is dropped in the end", "[advice][queen]") {
    CHECK_FALSE(Notes().note(0, Kind::swarmed).walk(200).clock);
}
