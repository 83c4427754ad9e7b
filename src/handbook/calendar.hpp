#pragma once
#include <optional>

#include "handbook/range.hpp"

namespace waxtab::handbook {

// ---- development --------------------------------------------------------------------------

enum class Caste { queen, worker, drone };

/// Days from the laying of the egg. Low and high are the values other tables print.
struct Development {
    Range hatches, sealed, emerges;
};
/// Source: Queensland Department of Primary Industries (P. Greer), at academickids.com, "Honeybee life cycle";
/// bounds: Southport BKA "Numbers", nemnba.org, homeofthebusybee.com, americasbeekeeper.com. No university
/// table was seen.
constexpr Development development(Caste caste) {
    switch (caste) {
        case Caste::queen: return {{3, 3, 3}, {7.5, 8, 9}, {15, 16, 17}};
        case Caste::worker: return {{3, 3, 3}, {8, 9, 9}, {19, 21, 22}};
        case Caste::drone: return {{3, 3, 3}, {9.5, 10, 10}, {23, 24, 25}};
    }
    return {};
}
/// Days from the egg to a drone fit to mate. Source: sevenoaksbeekeepers.org.uk.
inline constexpr int drone_mates_from_day = 38;
/// Days from the egg to a worker in the field, about six weeks. Source: homeofthebusybee.com (day 41); NW
/// Arkansas Beekeepers, "Supering".
inline constexpr int worker_forages_from_day = 41;

// ---- a new queen --------------------------------------------------------------------------

/// What was noted, from which the days are counted (day 0).
enum class QueenStart {
    cell_with_egg,      ///< a queen cell found with an egg in it
    charged_cell,       ///< found charged; egg or larva not said
    open_cell,          ///< found open with a larva
    sealed_cell_found,  ///< found sealed: it may have been sealed for 0 to 8 days
    cell_sealed,        ///< the sealing itself falls on the day
    prime_swarm_left,   ///< swarms tend to go at sealing
    virgin_emerged,
    queenless_split,    ///< with eggs and young larvae
    split_eggs_only,    ///< with eggs but no larvae
    swarm_hived,        ///< a swarm with its old, laying queen
};

/// Days from the start: possible from, usual from and to, and from when it is overdue.
struct Window {
    int earliest = 0, usual_from = 0, usual_to = 0, overdue = 0;
    friend constexpr bool operator==(const Window&, const Window&) = default;
};

/// When the virgin emerges; nothing for a hived swarm. Sources: development(queen); a sealed cell stays sealed
/// 7-8 days (Trunch BK; rawartisanhoney); a split starts from a larva of about one day, eggs take 3-4 days more.
constexpr std::optional<Window> emergence(QueenStart start) {
    switch (start) {
        case QueenStart::cell_with_egg: return Window{12, 13, 16, 18};
        case QueenStart::charged_cell: return Window{7, 8, 16, 18};
        case QueenStart::open_cell: return Window{7, 8, 13, 15};
        case QueenStart::sealed_cell_found: return Window{0, 0, 8, 10};
        case QueenStart::cell_sealed: return Window{7, 8, 8, 10};
        case QueenStart::prime_swarm_left: return Window{7, 8, 8, 10};
        case QueenStart::virgin_emerged: return Window{0, 0, 0, 1};
        case QueenStart::queenless_split: return Window{11, 12, 12, 14};
        case QueenStart::split_eggs_only: return Window{14, 15, 16, 18};
        case QueenStart::swarm_hived: return std::nullopt;
    }
    return std::nullopt;
}

/// First mating flights: 4 days after emergence at the earliest (Bee Craft, 20 June 2018), usually 5-7 (Norfolk
/// Beekeepers; Trunch BK; BBKA), up to 3 weeks in bad weather (Bee Craft). Nothing for a hived swarm.
constexpr std::optional<Window> first_flights(QueenStart start) {
    const auto out = emergence(start);
    if (!out) return std::nullopt;
    return Window{out->usual_from + 4, out->usual_from + 5, out->usual_to + 7, out->usual_to + 21};
}

/// First eggs: 6 days after emergence at the earliest (4 to the flight, 2 to the eggs), usually 14-21 (Trunch BK).
/// Overdue is the day for a test frame of eggs, day 30 from a sealed cell (from memory): a virgin not mated within
/// 3-4 weeks of emergence is likely to lay drones only (Breconshire BKA, Sept 2025), so six weeks is too long to
/// wait. A hived swarm: as soon as there is comb, late from day 10 (from memory).
constexpr Window first_eggs(QueenStart start) {
    const auto out = emergence(start);
    if (!out) return {0, 1, 5, 10};
    return {out->usual_from + 6, out->usual_from + 14, out->usual_to + 21, out->usual_to + 22};
}

/// Days from the start during which the hive is best left shut, a virgin emerging, flying or mating: from the
/// usual emergence to the usual first eggs. Nothing for a hived swarm. Source: Bee Craft, 20 June 2018.
struct Quiet {
    int from = 0, to = 0;
};
constexpr std::optional<Quiet> quiet_time(QueenStart start) {
    const auto out = emergence(start);
    if (!out) return std::nullopt;
    return Quiet{out->usual_from, out->usual_to + 14};
}

// ---- what is seen tells when a queen last laid --------------------------------------------

enum class BroodSeen { eggs, open_no_eggs, only_sealed, none };

/// Days since the last egg was laid.
struct LaidAgo {
    int at_least = 0;
    std::optional<int> at_most;
};
/// Worker brood. Source: worked out from development(worker); Trunch BK says the same of a swarmed hive. Eggs may
/// also be laying workers': look for several in a cell and for drone brood in worker cells.
constexpr LaidAgo last_laid(BroodSeen seen) {
    switch (seen) {
        case BroodSeen::eggs: return {0, 3};
        case BroodSeen::open_no_eggs: return {3, 9};
        case BroodSeen::only_sealed: return {9, 21};
        case BroodSeen::none: return {21, std::nullopt};
    }
    return {};
}
/// Sealed drone brood is gone so many days after the last egg; 21-24 days is the grey zone of "no brood".
inline constexpr int all_brood_gone_day = 24;

/// Days without any open brood from which laying workers are to be feared. Sources: bmdooney.com (21 days and
/// more queenless); brood scent holds workers back: Breconshire BKA, Sept 2025, after C. Butler. Loose figures.
inline constexpr int laying_workers_from_days = 21;

/// A swarmed colony is without young brood for nearly so many days. Source: Mississippi State University P3382.
inline constexpr int swarm_brood_break_days = 21;

}  // namespace waxtab::handbook
