#pragma once
#include <array>
#include <string_view>

namespace waxtab::handbook {

/// The most a guideline lets one person lift in the best case: close to the body, about waist height, good grip,
/// now and then, without twisting. Guidelines, not limits in law.
struct LiftGuideline {
    std::string_view name;
    double kg = 0;
    std::string_view source;
};
inline constexpr std::array<LiftGuideline, 3> lift_guidelines{{
    {"Britain, men", 25, "HSE manual handling guideline (figures as summarised by pennyhydraulics.com)"},
    {"Britain, women", 16, "HSE manual handling guideline (figures as summarised by pennyhydraulics.com)"},
    {"USA", 23, "OSHA on the NIOSH lifting recommendations (51 lb)"},
}};

/// Share taken off for twisting: 10 % beyond 45 degrees, 20 % beyond 90. Source: HSE leaflet text reproduced at
/// watmos.simplyhas.com. Degrees >= 0.
constexpr double twist_reduction(double degrees) { return degrees > 90 ? 0.20 : degrees > 45 ? 0.10 : 0.0; }

/// Share taken off for lifting often: 30 % at one or two lifts a minute, 50 % at 5-8, 80 % above 12 (same leaflet).
/// The rates between are not given; the heavier neighbour is taken. Lifts per minute >= 0.
constexpr double rate_reduction(double lifts_per_minute) {
    if (lifts_per_minute > 8) return 0.80;
    if (lifts_per_minute > 2) return 0.50;
    return lifts_per_minute >= 1 ? 0.30 : 0.0;
}

/// Guideline weight in kg after both reductions, one applied to what the other leaves (from memory).
constexpr double guideline_kg(double best_case_kg, double twist_degrees, double lifts_per_minute) {
    return best_case_kg * (1 - twist_reduction(twist_degrees)) * (1 - rate_reduction(lifts_per_minute));
}

/// kg at arm's length above the shoulder, men. Source: HSE guideline, as lift_guidelines.
inline constexpr double above_shoulder_kg = 5;

}  // namespace waxtab::handbook
