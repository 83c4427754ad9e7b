#include "ledger/shares.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "ledger/books.hpp"

namespace waxtab {

namespace {

__extension__ using Wide = __int128;   // products of two masses in nanograms do not fit 64 bits
constexpr std::int64_t gram = 1'000'000'000;

std::int64_t total_of(const std::vector<Mass>& weights) {
    std::int64_t sum = 0;
    for (const Mass w : weights) sum += w.ng;
    return sum;
}

/// Where the whole grams left over by rounding down go: to the largest remainders.
void hand_out(std::vector<Mass>& parts, const std::vector<Wide>& remainders, std::int64_t grams) {
    std::vector<std::size_t> order(parts.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return remainders[a] > remainders[b]; });
    for (std::size_t i = 0; grams > 0; --grams, i = (i + 1) % order.size()) parts[order[i]].ng += gram;
}

double kg(Mass m) { return m.kilograms(); }

/// The spread of the claims about their values, kilograms squared.
struct Spread {
    double sum = 0, up2 = 0, down2 = 0;
};

double up(const Claim& c) { return kg(c.honey.high - c.honey.value); }
double down(const Claim& c) { return kg(c.honey.value - c.honey.low); }

Spread spread_of(const std::vector<Claim>& claims) {
    Spread s;
    for (const Claim& c : claims) {
        s.sum += kg(c.honey.value);
        s.up2 += up(c) * up(c);
        s.down2 += down(c) * down(c);
    }
    return s;
}

/// Both at once, by roots and products only, which are the same bits on every machine.
double distance(double a, double b) { return std::sqrt(a * a + b * b); }

/// A part of a whole; all of it when there is nothing else.
double fraction(double part, double others) { return part + others > 0 ? part / (part + others) : 1; }

/// Range of a share f = e / (e + others): how far f goes when the claim itself goes to its bound, and when the
/// others together do, taken as independent.
MassRange share_range(const MassRange& total, Mass value, const Claim& c, const Spread& s) {
    if (s.sum <= 0) return {{}, value, total.high};
    const double own = kg(c.honey.value), others = std::max(0.0, s.sum - own), f = fraction(own, others);
    const double others_up = std::sqrt(std::max(0.0, s.up2 - up(c) * up(c)));
    const double others_down = std::min(others, std::sqrt(std::max(0.0, s.down2 - down(c) * down(c))));
    const double rise = distance(fraction(kg(c.honey.high), others) - f, fraction(own, others - others_down) - f);
    const double fall = distance(f - fraction(kg(c.honey.low), others), f - fraction(own, others + others_up));
    const Mass low = Mass::from_kilograms(std::max(0.0, f - fall) * kg(total.low));
    const Mass high = Mass::from_kilograms(std::min(1.0, f + rise) * kg(total.high));
    return {std::min(low, value), value, std::clamp(high, value, total.high)};
}

LotShare share_from(const Claim& c, MassRange honey) {
    honey.weighed = honey.low == honey.high;
    return {c.hive, honey, c.takings, c.because};
}

bool exact(const std::vector<Claim>& claims, const MassRange& total) {
    return total.low == total.high && std::all_of(claims.begin(), claims.end(), [](const Claim& c) {
        return c.honey.low == c.honey.high && c.honey.value.ng > 0;
    });
}

}  // namespace

std::vector<Mass> split(Mass total, const std::vector<Mass>& weights) {
    std::vector<Mass> parts(weights.size());
    if (weights.empty()) return parts;
    const std::int64_t sum = total_of(weights);
    if (sum == 0) return split(total, std::vector<Mass>(weights.size(), Mass{1}));
    const std::int64_t grams = total.ng / gram;
    std::vector<Wide> remainders(weights.size());
    std::int64_t given = 0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        const Wide product = Wide{grams} * weights[i].ng;
        const auto whole = static_cast<std::int64_t>(product / sum);
        remainders[i] = product % sum;
        parts[i].ng = whole * gram;
        given += whole;
    }
    hand_out(parts, remainders, grams - given);
    const auto largest = std::max_element(parts.begin(), parts.end());
    largest->ng += total.ng % gram;
    return parts;
}

std::vector<LotShare> share_out(const MassRange& total, const std::vector<Claim>& claims) {
    std::vector<Mass> weights;
    for (const Claim& c : claims) weights.push_back(c.honey.value);
    const std::vector<Mass> values = split(total.value, weights);
    const Spread spread = spread_of(claims);
    const bool all_known = exact(claims, total);
    std::vector<LotShare> shares;
    for (std::size_t i = 0; i < claims.size(); ++i) {
        if (claims.size() == 1) shares.push_back(share_from(claims[i], total));
        else if (all_known) shares.push_back(share_from(claims[i], exactly(values[i])));
        else shares.push_back(share_from(claims[i], share_range(total, values[i], claims[i], spread)));
    }
    return shares;
}

std::vector<LotShare> shares_of(const std::vector<Claim>& claims) {
    std::vector<LotShare> shares;
    for (const Claim& c : claims) shares.push_back(share_from(c, c.honey));
    return shares;
}

void merge_shares(std::vector<LotShare>& into, const std::vector<LotShare>& more) {
    for (const LotShare& m : more) {
        const auto same = std::find_if(into.begin(), into.end(), [&](const LotShare& s) { return s.hive == m.hive; });
        if (same == into.end()) {
            into.push_back(m);
            continue;
        }
        same->honey = same->honey + m.honey;
        same->takings.insert(same->takings.end(), m.takings.begin(), m.takings.end());
        add_once(same->because, m.because);
    }
    const auto place = [](const LotShare& s) { return static_cast<std::uint32_t>(s.hive); };  // no_hive sorts last
    std::stable_sort(into.begin(), into.end(),
                     [&](const LotShare& a, const LotShare& b) { return place(a) < place(b); });
}

std::vector<LotShare> portion(const std::vector<LotShare>& shares, Mass part) {
    std::vector<Mass> weights;
    for (const LotShare& s : shares) weights.push_back(s.honey.value);
    const std::vector<Mass> values = split(part, weights);
    const double whole = kg(sum(shares).value);
    const double factor = whole > 0 ? kg(part) / whole : 0;
    std::vector<LotShare> out = shares;
    for (std::size_t i = 0; i < out.size(); ++i) {
        MassRange& honey = out[i].honey;
        const bool known = honey.low == honey.high;
        const Mass low = Mass::from_kilograms(kg(honey.low) * factor), high = Mass::from_kilograms(kg(honey.high) * factor);
        honey = known ? exactly(values[i])
                      : MassRange{std::min(low, values[i]), values[i], std::clamp(high, values[i], part), false};
    }
    return out;
}

MassRange sum(const std::vector<LotShare>& shares) {
    MassRange total = exactly({});
    for (const LotShare& s : shares) total = total + s.honey;
    return total;
}

}  // namespace waxtab
