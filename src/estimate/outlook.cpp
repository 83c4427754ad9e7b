#include "estimate/outlook.hpp"

#include <cmath>

namespace waxtab {

using Eigen::MatrixXd;
using Eigen::VectorXd;

Outlook::Outlook(const Parameters& p, const Settings& settings, Day from, int days, double flow_now) : p_(p) {
    for (int i = 0; i < days; ++i) {
        steps_.push_back(shared_step(p, settings, from + date::days{i}, 1, flow_now));
        const Step& step = steps_.back();
        // The level is left out: it moves too slowly to matter to how lively the flow is.
        flow_now = step.T(at_flow, at_flow) * flow_now + step.c(at_flow);
    }
}

Gains gains_ahead(const Outlook& outlook, const Gaussian& local) {
    // Shared state, strength, gain so far, honey now.
    constexpr int strength = shared_size, gain = shared_size + 1, honey = shared_size + 2, size = shared_size + 3;
    const Parameters& p = outlook.parameters();
    const int own = static_cast<int>(local.mean.size()) - shared_size;
    MatrixXd pick = MatrixXd::Zero(size, shared_size + own);
    pick.topLeftCorner(strength + 1, strength + 1).setIdentity();
    for (int i = first_super; i < own; ++i) pick(honey, shared_size + i) = 1;
    VectorXd mean = pick * local.mean;
    MatrixXd cov = pick * local.cov * pick.transpose();

    Gains out;
    out.honey = mean(honey);
    out.honey_sd = std::sqrt(std::max(cov(honey, honey), 0.0));
    const double kept = std::exp(-1 / p.hive_days), summed = p.hive_days * (1 - kept);
    MatrixXd T = MatrixXd::Identity(size, size), Q = MatrixXd::Zero(size, size);
    VectorXd c = VectorXd::Zero(size);
    T(strength, strength) = kept;
    T(gain, strength) = summed;
    Q(strength, strength) = p.hive_sd * p.hive_sd * (1 - kept * kept);
    for (const Step& step : outlook.steps()) {
        T.topLeftCorner(shared_size, shared_size) = step.T;
        T.row(gain).head(shared_size) = step.T.row(at_intake);
        Q.topLeftCorner(shared_size, shared_size) = step.Q;
        Q.row(gain).head(shared_size) = step.Q.row(at_intake);
        Q.col(gain).head(shared_size) = step.Q.col(at_intake);
        Q(gain, gain) = step.Q(at_intake, at_intake) + p.wobble * p.wobble;
        c.head(shared_size) = step.c;
        c(gain) = step.c(at_intake);
        mean = (T * mean + c).eval();
        cov = (T * cov * T.transpose() + Q).eval();
        out.mean.push_back(mean(gain));
        out.sd.push_back(std::sqrt(std::max(cov(gain, gain), 0.0)));
        out.with_honey_sd.push_back(std::sqrt(std::max(cov(gain, gain) + cov(honey, honey) + 2 * cov(gain, honey), 1e-9)));
    }
    return out;
}

}  // namespace waxtab
