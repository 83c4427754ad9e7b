#include "estimate/ranges.hpp"

#include <algorithm>
#include <cmath>

#include "estimate/arithmetic.hpp"

namespace waxtab {
namespace {


/// Above any rate a hive has.
constexpr double any_rate = 1000;

}  // namespace

double to_thousandth(double x) { return std::isfinite(x) ? std::round(1000 * x) / 1000 : x; }

Range rounded(Range r) { return {to_thousandth(r.low), to_thousandth(r.value), to_thousandth(r.high)}; }
Range scaled(Range r, double by) { return {r.low * by, r.value * by, r.high * by}; }
Range normal_range(double mean, double sd) { return {mean - z80 * sd, mean, mean + z80 * sd}; }

Range cut_range(Moments x, double low, double high) {
    const Rectified top = capped_at(x, high);
    const Moments under{top.slope * x.mean + top.offset, top.slope * top.slope * x.var + top.rest};
    const Rectified bottom = floored_at(under, low);
    const double sd = std::sqrt(std::max(x.var, 0.0));
    Range r;
    r.value = std::clamp(bottom.slope * under.mean + bottom.offset, low, high);
    r.low = std::min(std::clamp(x.mean - z80 * sd, low, high), r.value);
    r.high = std::max(std::clamp(x.mean + z80 * sd, low, high), r.value);
    return r;
}

Range full_kilograms(double capacity, const Keeper& keeper) {
    const double f = keeper.full();
    return scaled(normal_range(f, std::sqrt(sq(keeper.full_sd()) + sq(box_scatter * f))), capacity);
}

Range kilograms(Moments held, double capacity, const Keeper& keeper) {
    const Range nominal = cut_range(held, 0, capacity);
    const double f = keeper.full();
    const double rest = sq(nominal.value) * (sq(keeper.full_sd()) + sq(box_scatter * f));
    const auto side = [&](double half) { return std::sqrt(sq(half * f) + sq(z80) * rest); };
    const double kg = f * nominal.value, most = full_kilograms(capacity, keeper).high;
    return {std::max(0.0, kg - side(nominal.value - nominal.low)), kg, std::min(most, kg + side(nominal.high - nominal.value))};
}

Range rate_range(Moments rate, double full_factor) {
    const Moments kg{rate.mean * full_factor, rate.var * sq(full_factor)};
    return cut_range(kg, -most_used_kg_per_day, any_rate);
}

}  // namespace waxtab
