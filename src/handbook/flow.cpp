#include "handbook/flow.hpp"

#include <algorithm>
#include <numeric>

namespace waxtab::handbook {

FlowState flow_state(std::span<const double> daily_kg) {
    const auto last = [&](std::size_t n) { return daily_kg.last(n); };
    if (daily_kg.size() >= flow_on_days) {
        const auto days = last(flow_on_days);
        if (std::all_of(days.begin(), days.end(), [](double kg) { return kg >= flow_on_kg_per_day; }))
            return FlowState::on;
    }
    if (daily_kg.size() >= flow_off_days) {
        const auto week = last(flow_off_days);
        if (std::accumulate(week.begin(), week.end(), 0.0) <= 0.0) return FlowState::off;
    }
    return FlowState::unclear;
}

std::optional<Range> daily_gain(std::string_view word) {
    if (word == "none" || word == "over")
        return Range{-dearth_loss_kg_per_day.high, -dearth_loss_kg_per_day.typical, -dearth_loss_kg_per_day.low};
    if (word == "light" || word == "starting" || word == "ending") return light_flow_kg_per_day;
    if (word == "medium" || word == "on") return Range{0.5, 1.0, 2.0};
    if (word == "heavy" || word == "good") return Range{good_flow_kg_per_day.low, 2.0, exceptional_kg_per_day};
    return std::nullopt;
}

}  // namespace waxtab::handbook
