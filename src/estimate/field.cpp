#include "estimate/field.hpp"

#include <algorithm>
#include <cmath>

namespace waxtab {

void Field::score(double error, double var) {
    constexpr double log_two_pi = 1.8378770664093453;
    if (counting_) log_likelihood_ -= 0.5 * (log_two_pi + std::log(var) + error * error / var);
}

void Field::observe_side(int hive, const Eigen::VectorXd& z, double bound, double soft, int side) {
    const Gaussian now = local(hive);
    const Moments prior{z.dot(now.mean), z.dot(now.cov * z)};
    const double distance = side * (prior.mean - bound) / std::sqrt(prior.var + soft * soft);
    if (counting_) log_likelihood_ += std::log(std::max(normal_cdf(distance), 1e-12));
    const Moments known = side > 0 ? above(prior, bound, soft) : below(prior, bound, soft);
    const Moments reading = equivalent_reading(prior, known);
    if (!std::isfinite(reading.var)) return;
    const bool counting = counting_;
    counting_ = false;
    observe(hive, z, reading.mean, reading.var);
    counting_ = counting;
}

int Field::mark(int hive, int k) {
    Eigen::VectorXd z = Eigen::VectorXd::Zero(local(hive).mean.size());
    z(shared_size + k) = 1;
    return mark(hive, z);
}

}  // namespace waxtab
