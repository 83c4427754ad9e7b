#pragma once
#include <string>

#include "facts/journal.hpp"

namespace waxtab {

/// The price in the keeper's words of a line, as `6.50 each` or `24 GBP`; empty when none was written. Prices are shown,
/// never reckoned with.
std::string price_of(const Journal& journal, const Fact& fact);

}  // namespace waxtab
