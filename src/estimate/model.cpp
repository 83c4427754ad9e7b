#include "estimate/model.hpp"

#include <algorithm>
#include <cmath>

namespace waxtab {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

/// A reverting process of memory `days` and stationary variance 1 over a step of length t:
/// what is left of a departure, its sum over the step, and the covariance of (value, sum).
struct Reverting {
    double kept, summed, value_var, cross, sum_var;
};

Reverting reverting(double days, double t) {
    const double kept = std::exp(-t / days);
    const double lost = 1 - kept;
    // The textbook form of the last cancels badly for short steps.
    const double x = t / days;
    const double tail = x < 0.02 ? 2 * x * x * x / 3 * (1 - 0.75 * x) : 2 * x - 3 + 4 * kept - kept * kept;
    return {kept, days * lost, 1 - kept * kept, days * lost * lost, days * days * tail};
}

int day_of_year(Day day, int& year_length) {
    const date::year_month_day ymd{day};
    const Day start = date::sys_days{ymd.year() / 1 / 1};
    year_length = ymd.year().is_leap() ? 366 : 365;
    return days_between(start, day);
}

int calendar_day(int month, int day_of_month) {
    static constexpr std::array<int, 12> before{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
    return before[static_cast<std::size_t>(std::clamp(month, 1, 12) - 1)] + day_of_month - 1;
}

/// Shares by weight among the supers that still take something; false when none does.
bool spread(double& left, const std::vector<double>& weight, std::vector<double>& room, std::vector<double>& given) {
    double total = 0;
    for (std::size_t i = 0; i < room.size(); ++i) total += room[i] > 0 ? weight[i] : 0;
    if (total <= 0) return false;
    const double now = left;
    for (std::size_t i = 0; i < room.size(); ++i) {
        if (room[i] <= 0) continue;
        const double part = std::min(room[i], now * weight[i] / total);
        given[i] += part;
        room[i] -= part;
        left -= part;
    }
    return true;
}

std::vector<double> shares_of_loss(double loss, const std::vector<double>& held) {
    double total = 0;
    for (double h : held) total += std::max(h, 0.0);
    std::vector<double> shares(held.size(), 0.0);
    if (total <= 0) return shares;
    const double reachable = std::min(1.0, total / std::max(loss, 1e-9));
    for (std::size_t i = 0; i < held.size(); ++i) shares[i] = reachable * std::max(held[i], 0.0) / total;
    return shares;
}

/// How much of the flow's s.d. is about at this flow: `calm` in a dearth, all of it at 0.6 kg/day, up to 1.3 of it above.
double liveliness(const Parameters& p, double flow) {
    const double part = std::clamp(flow / 0.6, 0.0, 1.5);
    return part < 1 ? p.calm + (1 - p.calm) * part : 1 + 0.6 * (part - 1);
}

}  // namespace

double season_height(const Settings& settings, Day day) {
    int length = 365;
    const int now = day_of_year(day, length);
    const int from = calendar_day(settings.season_from_month, settings.season_from_day);
    const int to = calendar_day(settings.season_to_month, settings.season_to_day);
    const int span = (to - from + length) % length;
    const int since = (now - from + length) % length;
    if (span == 0 || since >= span) return 0;
    return std::sqrt(std::max(0.0, std::sin(3.141592653589793 * since / span)));
}

double normal_flow(const Parameters& p, const Settings& settings, Day day) {
    return p.normal_dearth + (p.normal_peak - p.normal_dearth) * season_height(settings, day);
}

double flow_sd(const Parameters& p, const Settings& settings, Day day) {
    return p.flow_sd * (0.25 + 0.75 * season_height(settings, day));
}

Step shared_step(const Parameters& p, const Settings& settings, Day from, double days, double flow_now) {
    const Day middle = from + date::days{static_cast<int>(days / 2)};
    const double mu = normal_flow(p, settings, middle), sd = flow_sd(p, settings, middle) * liveliness(p, flow_now);
    const Reverting flow = reverting(p.flow_days, days), level = reverting(p.level_days, days);
    Step s{MatrixXd::Zero(shared_size, shared_size), VectorXd::Zero(shared_size),
           MatrixXd::Zero(shared_size, shared_size)};
    s.T(at_flow, at_flow) = flow.kept;
    s.T(at_flow, at_level) = 1 - flow.kept;
    s.c(at_flow) = (1 - flow.kept) * mu;
    s.T(at_level, at_level) = level.kept;
    s.T(at_intake, at_flow) = flow.summed;
    s.T(at_intake, at_level) = days - flow.summed;
    s.c(at_intake) = (days - flow.summed) * mu;
    const double v = sd * sd;
    s.Q(at_flow, at_flow) = v * flow.value_var;
    s.Q(at_flow, at_intake) = s.Q(at_intake, at_flow) = v * flow.cross;
    s.Q(at_intake, at_intake) = v * flow.sum_var;
    s.Q(at_level, at_level) = p.level_sd * p.level_sd * level.value_var;
    return s;
}

std::vector<double> shares_of_gain(double gain, const std::vector<SuperSlot>& supers, const std::vector<double>& held) {
    if (gain < 0) return shares_of_loss(-gain, held);
    const std::size_t n = supers.size();
    std::vector<double> weight(n), room(n), given(n, 0.0);
    for (std::size_t i = 0; i < n; ++i) {
        room[i] = std::max(0.0, supers[i].capacity - std::max(held[i], 0.0));
        weight[i] = supers[i].appeal * (room[i] + 0.1 * supers[i].capacity);
    }
    double left = std::max(gain, 0.5);
    const double asked = left;
    while (left > 1e-9 * asked && spread(left, weight, room, given)) {}
    double total = 0;
    for (const SuperSlot& s : supers) total += s.capacity;
    // What finds no room is carried by all alike: the gain there would have been.
    for (std::size_t i = 0; i < n; ++i) given[i] = (given[i] + left * supers[i].capacity / total) / asked;
    return given;
}

namespace {

/// Nearly empty supers have no share in a loss. Where a loss is likely but a gain possible, its shares count as far as
/// it is, so that a super is not held to be empty whatever is seen in it. `shares`: those of the gain as expected.
std::vector<double> shares_if_it_gains(std::vector<double> shares, double gain, double var, const std::vector<SuperSlot>& supers,
                                       const std::vector<double>& held) {
    if (gain >= 0 || var <= 0) return shares;
    const double possible = std::erfc(-gain / std::sqrt(2 * var));   // twice the chance of a gain: 1 where it is even
    const std::vector<double> gaining = shares_of_gain(0, supers, held);
    for (std::size_t i = 0; i < shares.size(); ++i) shares[i] += possible * (gaining[i] - shares[i]);
    return shares;
}

}  // namespace

Step hive_step(const Parameters& p, double days, const Gaussian& local, const std::vector<SuperSlot>& supers,
               bool weighed) {
    const int own = first_super + static_cast<int>(supers.size());
    const Reverting strength = reverting(p.hive_days, days);
    const double gain = local.mean(at_intake) + strength.summed * local.mean(shared_size + at_strength);
    std::vector<double> held(supers.size());
    for (std::size_t i = 0; i < held.size(); ++i) held[i] = local.mean(shared_size + first_super + static_cast<int>(i));
    // Which super takes it is uncertain even when the hive's gain is known: the total is untouched.
    const int a = shared_size + at_strength;
    const double v = p.hive_sd * p.hive_sd, wobble = p.wobble * p.wobble * days;
    const double gain_var = local.cov(at_intake, at_intake) + 2 * strength.summed * local.cov(at_intake, a) +
                            strength.summed * strength.summed * local.cov(a, a) + v * strength.sum_var + wobble;
    const std::vector<double> expected = shares_of_gain(gain, supers, held);
    const std::vector<double> share = shares_if_it_gains(expected, gain, gain_var, supers, held);

    Step s{MatrixXd::Zero(own, shared_size + own), VectorXd::Zero(own), MatrixXd::Zero(own, own)};
    s.T(at_strength, shared_size + at_strength) = strength.kept;
    s.Q(at_strength, at_strength) = v * strength.value_var;
    s.T(at_base, shared_size + at_base) = 1;
    // Bees, brood and stores below the supers come and go: about 1 kg in a month and a half.
    s.Q(at_base, at_base) = weighed ? 0.15 * 0.15 * days : 0;
    VectorXd part = VectorXd::Zero(own);
    if (weighed && supers.empty()) part(at_base) = 1;
    for (std::size_t i = 0; i < share.size(); ++i) {
        const int r = first_super + static_cast<int>(i);
        part(r) = share[i];
        s.c(r) = (expected[i] - share[i]) * gain;   // what is expected stays; only what may be learned differs
    }
    for (int r = at_base; r < own; ++r) {
        if (r >= first_super) s.T(r, shared_size + r) = 1;
        s.T(r, at_intake) += part(r);
        s.T(r, shared_size + at_strength) += part(r) * strength.summed;
        s.Q(at_strength, r) += v * part(r) * strength.cross;
        s.Q(r, at_strength) = s.Q(at_strength, r);
    }
    s.Q.bottomRightCorner(own - 1, own - 1) += (v * strength.sum_var + wobble) * part.tail(own - 1) * part.tail(own - 1).transpose();
    const double moved = p.split * (gain * gain + gain_var);
    for (int i = first_super; i < own; ++i) {
        for (int j = first_super; j < own; ++j) s.Q(i, j) += moved * part(i) * ((i == j ? 1.0 : 0.0) - part(j));
        // Keeps every variance above nothing.
        s.Q(i, i) += 1e-6 * days;
    }
    return s;
}

Gaussian ahead(const Parameters& p, const Settings& settings, Gaussian local, const std::vector<SuperSlot>& supers,
               bool weighed, Day from, int days, int stride) {
    const int own = static_cast<int>(local.mean.size()) - shared_size, all = shared_size + own;
    while (days > 0) {
        const int step = std::min(days, stride);
        const Step g = shared_step(p, settings, from, step, local.mean(at_flow));
        MatrixXd T = MatrixXd::Identity(all, all), Q = MatrixXd::Zero(all, all);
        VectorXd c = VectorXd::Zero(all);
        T.topLeftCorner(shared_size, shared_size) = g.T;
        Q.topLeftCorner(shared_size, shared_size) = g.Q;
        c.head(shared_size) = g.c;
        local = {T * local.mean + c, T * local.cov * T.transpose() + Q};
        const Step h = hive_step(p, step, local, supers, weighed);
        T.setIdentity();
        T.bottomRows(own) = h.T;
        Q.setZero();
        Q.bottomRightCorner(own, own) = h.Q;
        c.setZero();
        c.tail(own) = h.c;
        local = {T * local.mean + c, T * local.cov * T.transpose() + Q};
        from += date::days{step};
        days -= step;
    }
    return local;
}

}  // namespace waxtab
