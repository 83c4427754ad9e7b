#pragma once
#include <vector>

#include "ledger/ledger.hpp"
#include "report/style.hpp"

namespace waxtab {

/// Honey one hive gave in one season in one yard: its shares of lots, and what still waits to be extracted.
struct Yield {
    int season = 0;             ///< calendar year of the taking
    YardId yard = no_yard;      ///< where the hive stood when it was taken
    HiveId hive = no_hive;
    MassRange honey;
    int supers = 0;
    int frames = 0;             ///< frames taken singly
};

/// In order of season, yard and hive; the values of all rows sum exactly to lots and waiting honey.
std::vector<Yield> yields_of(const History& history, const Estimates& estimates,
                             const Ledger& ledger);

/// Honey in a taking: weighed net, else estimated.
MassRange honey_of(const History& history, const Estimates& estimates, std::size_t taking);

/// A row that is listed; days restrict by their year.
bool lists(const Selection& selection, const Yield& yield);

/// Adds values and bounds; weighed only when both are.
MassRange sum_of(const MassRange& a, const MassRange& b);

}  // namespace waxtab
