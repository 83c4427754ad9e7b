#pragma once
#include <string_view>

namespace waxtab::handbook {

/// A figure with the bounds it may lie between, low <= typical <= high, in the unit its user names.
struct Range {
    double low = 0, typical = 0, high = 0;
    friend constexpr bool operator==(const Range&, const Range&) = default;
};

/// The range times a factor; the factor must not be negative.
constexpr Range scaled(Range r, double factor) {
    return {r.low * factor, r.typical * factor, r.high * factor};
}

/// How a figure is marked that many beekeepers use and nobody is known to have published.
inline constexpr std::string_view common_practice = "common practice, no source";
/// How a figure is marked that was written down from memory and awaits checking.
inline constexpr std::string_view from_memory = "from memory";

/// Kilograms in a pound, exact by definition (international yard and pound agreement, 1959).
inline constexpr double kg_per_lb = 0.45359237;

}  // namespace waxtab::handbook
