#include "estimate/gaussian.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace waxtab {
namespace {

constexpr double sqrt_half = 0.7071067811865476;
constexpr double inv_sqrt_two_pi = 0.3989422804014327;

/// density / distribution at z; by its continued fraction far to the left, where both vanish.
double inverse_mills(double z) {
    if (z > -8) return normal_density(z) / normal_cdf(z);
    return -z - 1 / z + 2 / (z * z * z);
}

}  // namespace

double normal_density(double z) { return inv_sqrt_two_pi * std::exp(-0.5 * z * z); }
double normal_cdf(double z) { return 0.5 * std::erfc(-z * sqrt_half); }

double normal_quantile(double p) {
    // Bisection: slow but exact to the last bits and the same everywhere.
    double low = -9, high = 9;
    for (int i = 0; i < 60; ++i) {
        const double mid = 0.5 * (low + high);
        (normal_cdf(mid) < p ? low : high) = mid;
    }
    return 0.5 * (low + high);
}

Moments above(Moments x, double bound, double soft) {
    const double s = std::sqrt(x.var + soft * soft);
    if (s <= 0) return {std::max(x.mean, bound), 0};
    const double z = (x.mean - bound) / s;
    const double ratio = inverse_mills(z);
    const double shrink = std::clamp(ratio * (ratio + z), 0.0, 1.0);
    return {x.mean + x.var / s * ratio, std::max(x.var * (1 - x.var / (s * s) * shrink), 1e-4 * x.var)};
}

Moments below(Moments x, double bound, double soft) {
    const Moments mirrored = above({-x.mean, x.var}, -bound, soft);
    return {-mirrored.mean, mirrored.var};
}

Moments equivalent_reading(Moments prior, Moments posterior) {
    const double gained = prior.var - posterior.var;
    if (gained <= 1e-9 * prior.var) return {prior.mean, std::numeric_limits<double>::infinity()};
    return {prior.mean + (posterior.mean - prior.mean) * prior.var / gained, prior.var * posterior.var / gained};
}

Rectified capped_at(Moments x, double cap) {
    const double sd = std::sqrt(std::max(x.var, 0.0));
    if (sd < 1e-9) return {x.mean <= cap ? 1.0 : 0.0, x.mean <= cap ? 0.0 : cap, 0};
    const double z = (cap - x.mean) / sd;
    const double slope = normal_cdf(z), density = normal_density(z);
    // About the cap: E[min(X-cap, 0)] and E[min(X-cap, 0)^2].
    const double d = x.mean - cap;
    const double first = d * slope - sd * density;
    const double second = (d * d + x.var) * slope - d * sd * density;
    const double var = std::max(second - first * first, 0.0);
    return {slope, cap + first - slope * x.mean, std::max(var - slope * slope * x.var, 0.0)};
}

Rectified floored_at(Moments x, double floor) {
    const Rectified mirrored = capped_at({-x.mean, x.var}, -floor);
    return {mirrored.slope, -mirrored.offset, mirrored.rest};
}

}  // namespace waxtab
