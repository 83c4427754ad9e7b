#pragma once
#include <array>
#include <optional>
#include <string_view>

#include "handbook/range.hpp"

namespace waxtab::handbook {

/// A figure rules start from until the keeper sets another. None of the fill marks comes from an experiment.
struct Threshold {
    std::string_view name;      ///< stable, as a setting is named
    double value = 0;
    std::string_view unit;
    std::string_view source;
};

// ---- room -----------------------------------------------------------------------------------
// One margin only: either the trigger is early or the capacity is counted low, never both.

/// Share full at which the next super is due, drawn comb. In print: "first honey in" to "80 % of the frames".
inline constexpr Threshold super_at_full{"super at full", 70, "%",
        "rule of thumb, half to 80% in clubs and trade texts (countryfields.ca; beehivehero.com)"};
/// Share drawn at which the next super is due, foundation. In print: 90 % (wvbeekeeper.blogspot.com, June 2009).
inline constexpr Threshold super_at_drawn{"super at drawn", 85, "%",
        "rule of thumb, 80-90% (wvbeekeeper.blogspot.com, 2009)"};
/// Share of a full super to count on when planning how many: 35 of 50 lb. Not together with an early trigger.
inline constexpr Threshold planning_capacity{"planning capacity", 70, "%",
        "M. Winston, Apiculture, as excerpted by Surrey Bee Club"};
/// Frames of brood at which the first super goes on, before the main flow.
inline constexpr Threshold first_super_brood{"first super at brood", 5, "frames",
        "Norfolk Beekeepers, \"Adding supers\" (5-6)"};
/// The same with two brood boxes: 8 of the 10 frames of a box; the figure is for brood and stores, its use here our own.
inline constexpr Threshold first_super_brood_two{"first super at brood, two boxes", 8, "frames",
        "wisconsinpollinators.com (8 of 10), for two boxes: own judgement"};
/// Share of the brood frames drawn and in use at which the first super goes on.
inline constexpr Threshold first_super_drawn{"first super at brood frames in use", 80, "%",
        "thebeesupply.com; wisconsinpollinators.com (8 of 10)"};
/// Days after which a new super in a strong flow is looked at again: a medium has filled in eight.
inline constexpr Threshold look_again{"look again in a strong flow", 7, "days",
        "Warner Nature Center scale hive, 2016 (40 lb in 8 days)"};

// ---- ripeness ---------------------------------------------------------------------------------
// A moisture reading outranks capping; one reading is one frame.

inline constexpr Threshold ripe_two_thirds{"ripe at capped, lower", 200.0 / 3, "%",
        "Die Honigmacher, course 3; Bienen & Natur; Brno veterinary faculty (2014)"};
inline constexpr Threshold ripe_three_quarters{"ripe at capped", 75, "%",
        "C. Collison, Harvesting & Packing Honey; A Practical Manual of Beekeeping"};

// ---- taking and extracting ----------------------------------------------------------------------

inline constexpr Threshold escape_from{"escape board, back from", 24, "hours", from_memory};
inline constexpr Threshold escape_to{"escape board, back by", 48, "hours", from_memory};
inline constexpr Threshold extract_from{"extract within, better", 3, "days",
        "bee-health.extension.org (within 3-4 days)"};
inline constexpr Threshold extract_to{"extract within", 4, "days",
        "bee-health.extension.org (within 3-4 days)"};
/// Days in the honey house after which small hive beetle larvae are likely.
inline constexpr Threshold beetle_days{"small hive beetle after", 5, "days",
        "Pettis and Feldlaufer, USDA-ARS, The Speedy Bee (2000)"};
/// Relative humidity below which beetle eggs do not hatch.
inline constexpr Threshold beetle_humidity{"beetle eggs do not hatch below", 50, "% RH",
        "Pettis and Feldlaufer, USDA-ARS, The Speedy Bee (2000)"};
/// Relative humidity above which honey cannot dry below 18 %.
inline constexpr Threshold drying_humidity{"no drying below 18% above", 55, "% RH", "egloff.eu"};

// ---- looking in -----------------------------------------------------------------------------------

inline constexpr Threshold open_briefly{"open only briefly below", 15, "C",
        "beekeepinginsider.com and trade texts"};
inline constexpr Threshold open_never{"keep shut below", 10, "C", "beekeepinginsider.com and trade texts"};
/// Finest step of a share seen on one comb side: half an eighth.
inline constexpr Threshold side_step{"step of an estimate by eye", 6.25, "%",
        "Bargen et al., Julius-Kuehn-Archiv (Liebefeld grid)"};
/// Error of the fill of a whole super judged by eye, either way: a guess, since no source gives a percentage.
inline constexpr Range super_by_eye_error_percent{10, 12.5, 15};
/// Bees on a fully covered Langstroth deep comb: average occupied (Simpson, 1969), both sides in one layer
/// (Kauffeld), full (Burgett and Burikam, 1985; the number from memory).
inline constexpr Range bees_per_deep_frame{1400, 1900, 2430};

/// All of the above that are thresholds, for lists.
inline constexpr std::array<Threshold, 19> thresholds{
    super_at_full, super_at_drawn, planning_capacity, first_super_brood, first_super_brood_two, first_super_drawn, look_again,
    ripe_two_thirds, ripe_three_quarters, escape_from, escape_to, extract_from, extract_to, beetle_days,
    beetle_humidity, drying_humidity, open_briefly, open_never, side_step};

/// The threshold of this name; nothing when there is none.
constexpr std::optional<Threshold> threshold(std::string_view name) {
    for (const Threshold& t : thresholds)
        if (t.name == name) return t;
    return std::nullopt;
}

}  // namespace waxtab::handbook
