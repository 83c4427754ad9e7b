#pragma once
#include <cstddef>

namespace waxtab {

/// The square.
constexpr double sq(double x) { return x * x; }

/// A place in a list, from a number that is not negative.
constexpr std::size_t at(int i) { return static_cast<std::size_t>(i); }

}  // namespace waxtab
