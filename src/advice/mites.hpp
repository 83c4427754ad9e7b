#pragma once
#include <optional>

#include "advice/breeding.hpp"
#include "advice/seen.hpp"

namespace waxtab {

/// Mites per 100 bees of a wash or roll; nothing for a drop or a sample without its size.
std::optional<MiteRate> mite_rate(const Seen& seen);

}  // namespace waxtab
