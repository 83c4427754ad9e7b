#pragma once
#include <vector>

#include "ledger/ledger.hpp"
#include "report/style.hpp"

namespace waxtab {

/// Honey one hive gave in one season in one yard, extracted or still waiting.
struct Yield {
    int season = 0;             ///< calendar year in which it came off
    YardId yard = no_yard;      ///< where the hive stood when it came off
    HiveId hive = no_hive;
    MassRange honey;
    int supers = 0;
    int frames = 0;             ///< frames taken singly
    std::vector<FactId> because;
};

/// The ledger's harvests that are listed, summed in order of season, yard and hive.
std::vector<Yield> yields_of(const Ledger& ledger, const Selection& selection);

/// Honey in a taking: weighed net, else estimated.
MassRange honey_of(const History& history, const Estimates& estimates, std::size_t taking);

/// Adds values and bounds; weighed only when both are.
MassRange sum_of(const MassRange& a, const MassRange& b);

}  // namespace waxtab
