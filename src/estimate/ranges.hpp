#pragma once
#include "estimate/estimate.hpp"
#include "estimate/gaussian.hpp"
#include "estimate/keeper.hpp"

namespace waxtab {

/// Estimates are given out to a thousandth, so that the last bits of a machine never show.
double to_thousandth(double x);
Range rounded(Range r);

Range scaled(Range r, double by);
/// The 80 % range of a normal.
Range normal_range(double mean, double sd);
/// The 80 % range of a normal cut to [low, high], its middle the mean after cutting.
Range cut_range(Moments x, double low, double high);

/// Kilograms a super of so much by the keeper's full holds when full.
Range full_kilograms(double capacity, const Keeper& keeper);
/// Kilograms of honey from what a super holds by the keeper's full; never above what it may hold.
Range kilograms(Moments held, double capacity, const Keeper& keeper);

/// Kilograms a day from a rate by the keeper's full. No colony uses up more than half a kilogram a day: a guess,
/// twice what hives on scales lose in a summer dearth.
Range rate_range(Moments rate, double full_factor);
inline constexpr double most_used_kg_per_day = 0.5;

}  // namespace waxtab
