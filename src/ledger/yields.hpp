#pragma once
#include <string>
#include <vector>

#include "ledger/ledger.hpp"

namespace waxtab {

/// Honey of a yard, a season or all, with which hives it is divided by.
struct YieldRow {
    YardId yard = no_yard;              ///< no_yard: all yards
    int year = 0;                       ///< of the taking off; 0: all years
    MassRange honey;                    ///< exact where whole lots of weighed honey are in it
    std::vector<HiveId> harvested;      ///< hives with a harvest here, journal order
    std::vector<HiveId> living;         ///< hives that stood here on any day of the season
    Mass per_harvested, per_living;     ///< value divided by their number, to the gram; 0 without hives
    Mass least, median, most;           ///< among the hives with a harvest
    int supers = 0, frames = 0;
};

/// One hive in one season.
struct SeasonYield {
    HiveId hive = no_hive;
    YardId yard = no_yard;              ///< where most of it came off
    int year = 0;
    MassRange honey;
    int supers = 0, frames = 0;
    std::vector<Harvest> parts;         ///< by date, as they came off
};

/// What of a hive's season came off at one yard; no parts when nothing did.
SeasonYield at_yard(const SeasonYield& whole, YardId yard);

/// Hives that were one colony in part of a season: split from, swarmed from, or united with each other.
struct ColonyYield {
    int year = 0;
    std::vector<HiveId> hives;          ///< journal order; the eldest first is not implied
    MassRange honey;
};

/// Honey per hive, yard and season, and by colony where hives were split or united.
struct Yields {
    std::vector<SeasonYield> hives;     ///< by year, then journal order
    std::vector<YieldRow> yards;        ///< by year, then yard
    std::vector<YieldRow> seasons;      ///< by year, all yards
    std::vector<ColonyYield> colonies;  ///< only groups of several hives with a harvest among them
};

/// Yields of all that came off from `since` to `until`, both included. Honey not traced to a hive is left out.
Yields yields(const Journal& journal, const History& history, const Ledger& ledger, Day since, Day until);
/// As above over the whole journal.
Yields yields(const Journal& journal, const History& history, const Ledger& ledger);

}  // namespace waxtab
