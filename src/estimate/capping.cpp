#include "estimate/capping.hpp"

#include <algorithm>
#include <cmath>

namespace waxtab {

CappingLag::CappingLag() {
    // About ten days, wide: between the two published figures.
    for (std::size_t i = 0; i < capping_lags.size(); ++i) {
        const double off = std::log(capping_lags[i] / 10) / 0.5;
        log_weight_[i] = -0.5 * off * off;
    }
}

void CappingLag::learn(const std::array<double, capping_lags.size()>& score) {
    for (std::size_t i = 0; i < score.size(); ++i) log_weight_[i] += score[i];
    const double top = *std::max_element(log_weight_.begin(), log_weight_.end());
    // A lag is never ruled out for good: readings of one super are not independent.
    for (double& w : log_weight_) w = std::max(w - top, -12.0);
}

double CappingLag::weight(std::size_t i) const {
    double total = 0;
    for (double w : log_weight_) total += std::exp(w);
    return std::exp(log_weight_[i]) / total;
}

double CappingLag::mean() const {
    double sum = 0;
    for (std::size_t i = 0; i < capping_lags.size(); ++i) sum += weight(i) * capping_lags[i];
    return sum;
}

Capping Capping::empty() {
    Capping c;
    c.by_lag_.fill({0, 1e-4});
    return c;
}

Capping Capping::unknown() {
    Capping c;
    c.by_lag_.fill({0.25, 0.09});
    return c;
}

void Capping::advance(double days, double before, double after, double filled_sd) {
    for (std::size_t i = 0; i < capping_lags.size(); ++i) {
        const double kept = std::exp(-days / capping_lags[i]);
        const double slope = (after - before) / days, lag = capping_lags[i];
        // Exact for a share filled that moves in a straight line over the step.
        Moments& c = by_lag_[i];
        c.mean = kept * c.mean + (1 - kept) * (before - slope * lag) + slope * days;
        c.mean = std::clamp(c.mean, 0.0, std::max(after, 0.0));
        const double pulled = (1 - kept) * filled_sd;
        c.var = kept * kept * c.var + pulled * pulled + 0.05 * 0.05 * days / 7 * (1 - kept);
    }
}

void Capping::observe(double share, double sd, CappingLag& lag) {
    std::array<double, capping_lags.size()> score{};
    for (std::size_t i = 0; i < capping_lags.size(); ++i) {
        Moments& c = by_lag_[i];
        // The lag explains only in part: 6 % of the comb is left to the bees.
        const double total = c.var + sd * sd + 0.06 * 0.06, error = share - c.mean;
        score[i] = -0.5 * (std::log(total) + error * error / total);
        c.mean = std::clamp(c.mean + (c.var + 0.06 * 0.06) / total * error, 0.0, 1.0);
        c.var = (c.var + 0.06 * 0.06) * sd * sd / total;
    }
    lag.learn(score);
}

Moments Capping::share(const CappingLag& lag) const {
    Moments out;
    for (std::size_t i = 0; i < capping_lags.size(); ++i) out.mean += lag.weight(i) * by_lag_[i].mean;
    for (std::size_t i = 0; i < capping_lags.size(); ++i) {
        const double off = by_lag_[i].mean - out.mean;
        out.var += lag.weight(i) * (by_lag_[i].var + off * off);
    }
    return out;
}

}  // namespace waxtab
