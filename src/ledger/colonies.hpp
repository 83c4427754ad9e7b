#pragma once
#include <vector>

#include "ledger/yields.hpp"

namespace waxtab {

/// Hives that shared bees in a season, by splits, swarms and unions of that year, and what they gave together.
/// Only groups of several hives of which one at least had a harvest; by year, then first hive.
std::vector<ColonyYield> colonies_of(const History& history, const std::vector<SeasonYield>& hives);

}  // namespace waxtab
