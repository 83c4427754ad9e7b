#pragma once
#include "handbook/range.hpp"

namespace waxtab::handbook {

/// Clean cappings wax in kg per 100 kg of honey. Source: Bienen & Natur, July 2019.
inline constexpr Range cappings_wax_kg_per_100_kg{1.0, 1.25, 1.5};
/// Clean cappings wax, kg, to expect from so many kg of honey (>= 0). Source: as above.
constexpr Range cappings_wax_kg(double honey_kg) { return scaled(cappings_wax_kg_per_100_kg, honey_kg / 100); }

/// Share of the crop that clings to the cappings until they have drained: 10 % or more. Source: a drum-heater
/// maker's manual; the upper bound is from memory.
inline constexpr Range honey_in_cappings_share{0.08, 0.10, 0.15};

/// kg of honey left in one extracted frame. Typical: 1 lb 4 oz in a super of eleven (G. Cooper, Weybridge
/// Beekeepers, Nov 2022), one weighing; bounds from memory.
inline constexpr Range left_in_wet_frame_kg{0.03, 0.052, 0.08};
/// kg of honey left in so many wet frames (>= 0); a weighing before and after extracting counts it as not
/// harvested. Source: as above.
constexpr Range left_in_wet_combs_kg(int frames) { return scaled(left_in_wet_frame_kg, frames); }

/// kg of honey bees eat for a kilogram of wax, not settled: 6 (NSBKA), over 7 (A Practical Manual of Beekeeping,
/// p. 56), 10 (web).
inline constexpr Range honey_per_kg_wax{6, 7, 10};

/// cm2 of comb built from a gram of wax. Source: S. Bogdanov, beeswax monograph.
inline constexpr double comb_cm2_per_g_wax = 20;

}  // namespace waxtab::handbook
