#pragma once
#include <optional>

#include "advice/rule.hpp"

namespace waxtab {

/// The last note of a notifiable disease at the yard within a year, unless an all-clear was noted since.
std::optional<Seen> suspected_disease(const YardView& yard);

}  // namespace waxtab
