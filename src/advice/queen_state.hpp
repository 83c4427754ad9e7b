#pragma once
#include <optional>
#include <vector>

#include "advice/seen.hpp"
#include "handbook/calendar.hpp"

namespace waxtab {

/// A new queen is under way: what was noted, from which the days count.
struct QueenClock {
    handbook::QueenStart start = handbook::QueenStart::sealed_cell_found;
    Day day{};
    FactId fact = set_up_fact;

    Day at(int days) const { return day + date::days{days}; }
};

/// Queen cells standing in a hive as last noted.
struct CellsSeen {
    Day day{};
    std::vector<FactId> facts;
    int count = -1;             ///< -1: some
    bool roughly = false;       ///< the count was left open
    bool one() const { return count == 1 && !roughly; }
    bool sealed = false;
    bool only_cups = false;     ///< charged cups, no cells yet
    bool supersedure = false;
    bool queen_there = false;   ///< queen or eggs seen within three days before
};

/// What the notes on queen, eggs and cells add up to. Made by walking a hive's facts in order.
struct QueenState {
    std::optional<QueenClock> clock;        ///< unset once the new queen lays
    std::optional<CellsSeen> cells;
    std::optional<Seen> queen;              ///< queen last seen, or said to be right or laying
    std::optional<Seen> eggs;               ///< eggs or brood in all stages last seen
    std::optional<Seen> no_eggs;            ///< last "no eggs", no eggs since
    std::optional<Seen> open_brood;         ///< larvae or eggs last seen
    std::optional<Seen> no_open_brood;      ///< first of the notes of no open brood since the last open brood
    std::optional<Seen> absent;             ///< queen said to be gone, not seen since
    std::optional<Seen> failing;            ///< "failing" or "drone layer", no new queen since
    std::optional<Seen> laying_workers;
    std::optional<Seen> swarmed;            ///< last swarm that left
    std::optional<Day> sealed_before_swarm; ///< sealed cells were noted on that day, before it left
    std::optional<Seen> queen_left;         ///< split: the queen went to the other half; no proof of a new one since
    bool left_with_cells = false;           ///< queen cells were noted before she left with the split
    std::optional<Seen> cells_removed;      ///< all cells taken down, no proof of a laying queen since
    std::optional<Seen> split_unknown;      ///< split without saying where the queen went, no proof since
    bool clipped = false;
};

/// Walks the facts of `hive`, oldest first, up to `on`. A clock that ran out long ago is dropped: the keeper
/// stopped noting.
QueenState walk_queen(HiveId hive, const std::vector<Seen>& facts, Day on);

}  // namespace waxtab
