// Chances, read from ranges that are meant to hold eight times in ten.
#include "advice/chance.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "estimate/gaussian.hpp"

namespace waxtab {
double chance_above(const Range& range, double mark) {
    const double half = mark <= range.value ? range.value - range.low : range.high - range.value;
    if (half <= 0) return mark <= range.value ? 1 : 0;
    return normal_cdf(z80 * (range.value - mark) / half);
}

std::optional<double> chance_ripe_by(const SuperEstimate& super, Day on, Day by) {
    if (!super.ripe_likely) return std::nullopt;
    const auto ahead = [&](Day day) { return static_cast<double>(days_between(on, day)); };
    const double likely = ahead(*super.ripe_likely);
    // A late day that is not foreseen lies beyond all that are.
    const double late = super.ripe_late ? ahead(*super.ripe_late) : forecast_days + 1;
    const Range days{std::min(likely, super.ripe_early ? ahead(*super.ripe_early) : likely), likely, std::max(likely, late)};
    // A day is whole: what is likely on a day is so by its evening.
    return 1 - chance_above(days, ahead(by) + 0.5);
}

bool room_known(const HiveView& hive) {
    if (!hive.estimate || hive.estimate->shortfall_sd.empty()) return false;
    return std::all_of(hive.supers.begin(), hive.supers.end(),
                       [](const SuperView& s) { return s.since || (s.estimate && s.estimate->last_seen); });
}

Horizon season_horizon(const Context& context) {
    const int left = context.season_days_left();
    Horizon h;
    h.days = std::min(left, forecast_days);
    h.day = context.on + date::days{h.days};
    const std::string_view end = context.settings().season_said ? "the end of your season" : "the usual end of a season";
    h.words = fmt::format("{}, {}", iso(h.day), left <= forecast_days ? end : "as far ahead as is foreseen");
    return h;
}

void keep_chance(Advice& a, std::string_view that, double chance, std::optional<Day> by, HiveId hive, BoxId box) {
    a.chances.push_back({std::string(that), chance, by, hive, box});
}

}  // namespace waxtab
