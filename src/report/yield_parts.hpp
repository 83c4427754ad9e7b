#pragma once
#include <string>

#include "ledger/yields.hpp"
#include "report/style.hpp"

namespace waxtab {

/// The yields that came off on listed days.
Yields yields_of(const Journal& journal, const History& history, const Ledger& ledger, const Selection& selection);

/// Yields by season and yard with their hives: sums, what they come to a hive, and which hives they are divided
/// by. Empty when nothing is listed.
std::string yields_text(const Journal& journal, const Yields& yields, const Selection& selection, const Style& style);

}  // namespace waxtab
