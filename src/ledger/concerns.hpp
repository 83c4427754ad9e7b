#pragma once
#include <vector>

#include "history/history.hpp"

namespace waxtab {

/// Feeds and treatments of one taking.
struct Concerns {
    std::vector<FactId> feeds, treatments;
};

/// Feeds and treatments on the hives while the super stood there, since it was last emptied. For frames taken
/// out of a box unknown: since the start of the year. Feeding without an end counts on its first day only.
Concerns concerns_of(const History& history, const Taking& taking);
/// Both together, for several takings, each fact once.
std::vector<FactId> concerns_of(const History& history, const std::vector<std::size_t>& takings);

}  // namespace waxtab
