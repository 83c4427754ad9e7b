#pragma once
#include <vector>

#include "ledger/ledger.hpp"

namespace waxtab {

/// Feeds and treatments of one taking.
struct Concerns {
    std::vector<FactId> feeds, treatments;
    std::vector<FactId> possible_feeds;     ///< over, as far as is known, before the super went on, but not long before
};

/// Of a lot: through the supers of its shares, blended in or not; a feed sure for one super is not listed as possible.
/// Of a taking: feeds and treatments on the hives while the super stood there, since it was last emptied. For frames taken
/// out of a box unknown: since the start of the year. How long a feed counts: see span_of.
Concerns concerns_of(const Journal& journal, const History& history, const Taking& taking);
Concerns concerns_of(const Journal& journal, const History& history, const Lot& lot);
/// All together, for several takings, each fact once.
std::vector<FactId> concerns_of(const Journal& journal, const History& history, const std::vector<std::size_t>& takings);

}  // namespace waxtab
