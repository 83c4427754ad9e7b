#include "estimate/readings.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <utility>

#include "estimate/arithmetic.hpp"

namespace waxtab {
namespace {

constexpr double sqrt_twelve = 3.4641016151377544;

/// The step in which the share was most likely rounded.
double rounding(const Measure& m) {
    if (m.unit == Unit::of_frames && m.of > 0) return m.amount % 1000 == 0 ? 0.5 / m.of : 1.0 / m.of;
    if (m.unit == Unit::fraction) return 0.15;
    if (m.amount % 100 == 0) return 0.10;
    return m.amount % 50 == 0 ? 0.05 : 0.02;
}

using Row = std::pair<std::string_view, Moments>;

Moments find(const auto& rows, std::string_view word) {
    for (const Row& row : rows)
        if (row.first == word) return row.second;
    return {};
}


constexpr std::array flow_words{
    Row{"none", {-0.10, sq(0.4)}},  Row{"over", {-0.05, sq(0.4)}},     Row{"ending", {0.2, sq(0.5)}},
    Row{"light", {0.35, sq(0.5)}},  Row{"starting", {0.6, sq(0.6)}},   Row{"on", {0.9, sq(0.8)}},
    Row{"medium", {0.9, sq(0.7)}},  Row{"heavy", {1.8, sq(1.0)}},
    Row{"good", {1.8, sq(1.0)}},
};
constexpr std::array bloom_words{
    Row{"start", {0.5, sq(1.0)}}, Row{"on", {0.7, sq(1.0)}}, Row{"peak", {1.0, sq(1.0)}},
    Row{"ending", {0.2, sq(0.9)}}, Row{"end", {0.0, sq(0.9)}},
};
constexpr std::array strength_words{
    Row{"strong", {0.20, sq(0.4)}}, Row{"fair", {0.0, sq(0.4)}}, Row{"weak", {-0.25, sq(0.4)}},
};

bool has(std::string_view text, std::string_view word) { return text.find(word) != std::string_view::npos; }

}  // namespace

ShareReading share_reading(const Parameters& p, const Journal& journal, const BoxSighting& sighting) {
    const Measure& m = sighting.fact < journal.facts.size() ? journal.facts[sighting.fact].value : Measure{};
    ShareReading r;
    r.share = std::clamp(static_cast<double>(sighting.amount) / 1000, 0.0, 1.0);
    const bool at_end = sighting.amount <= 20 || sighting.amount >= 970;
    const double wider = (m.unit == Unit::of_frames ? 0.85 : 1.0) * (m.about ? 1.3 : 1.0) * (sighting.repeated ? 1.3 : 1.0);
    const double written = static_cast<double>(sighting.high - sighting.low) / 1000;
    double step = m.said() ? rounding(m) : 0.10;
    r.says_full = sighting.amount >= 970;
    if (!r.says_full && written > 0) {
        if (sighting.high >= 1000 && sighting.low == sighting.amount) r.side = ShareReading::Side::at_least;
        else if (sighting.low <= 0 && sighting.high == sighting.amount) r.side = ShareReading::Side::at_most;
        else step = std::max(step, written);
    }
    r.eye = wider * p.eye;
    r.rounding = step / sqrt_twelve;
    r.sd = std::hypot(wider * (at_end ? p.eye_at_ends : p.eye), r.rounding);
    return r;
}

Moments flow_evidence(const Fact& fact) {
    if (fact.kind == Kind::flow) return find(flow_words, fact.detail);
    if (fact.kind == Kind::bloom) return find(bloom_words, fact.detail);
    if (fact.kind == Kind::temperature && fact.value.said() && fact.value.amount < 12'000) return {0.0, sq(0.8)};
    static constexpr std::array<std::string_view, 5> keeps_in = {"rain", "showers", "drizzle", "cold", "cool"};
    if (fact.kind == Kind::weather && std::any_of(keeps_in.begin(), keeps_in.end(), [&](std::string_view w) { return has(fact.text, w); })) return {0.1, sq(0.9)};
    return {};
}

Moments strength_evidence(const Fact& fact) {
    return fact.kind == Kind::strength ? find(strength_words, fact.detail) : Moments{};
}

}  // namespace waxtab
