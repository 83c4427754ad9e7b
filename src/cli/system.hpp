#pragma once
#include "quantity/quantity.hpp"

namespace waxtab {

/// The keeper's own calendar day now, read from the machine's clock and time zone.
Day local_today();

/// Standard output is a terminal, and neither NO_COLOR nor a terminal without colours speaks against it.
bool may_colour();

/// Standard error is a terminal that can erase a line.
bool may_show_progress();

}  // namespace waxtab
