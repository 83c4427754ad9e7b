#pragma once
#include "report/json.hpp"

namespace waxtab {

/// A lot: its weight, shares, jars, what went out and what is left.
Json lot_json(const Journal& journal, const Lot& lot, const Selection& selection, const Style& style);
/// A super or frames taken off, with the honey in it.
Json taking_json(const Journal& journal, const History& history, const Estimates& estimates, std::size_t taking,
                 const Style& style);
/// Honey or jars leaving.
Json going_json(const Journal& journal, const Going& going, const Style& style);

}  // namespace waxtab
