#pragma once
#include <string>

#include "report/style.hpp"
#include "estimate/estimate.hpp"

namespace waxtab {

/// Yard by yard and hive by hive, on the day of the estimates: filling rate, room and days of room, then every
/// super from the top down: how full, how capped, honey in it, what it holds, when it was last seen, each with
/// its 80 % range, and the journal lines all that rests on.
std::string supers_text(const Journal& journal, const History& history, const Estimates& estimates,
                        const Selection& selection, const Style& style);

/// The same as one JSON document: `on`, `hives` with `supers` from the brood up. Shares in percent.
std::string supers_json(const Journal& journal, const History& history, const Estimates& estimates,
                        const Selection& selection, const Style& style);

}  // namespace waxtab
