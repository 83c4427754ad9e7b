#include "estimate/keeper.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace waxtab {
namespace {

double bow(double s) { return 4 * s * (1 - s); }

/// A keeper's "half full" is right to about 4 % before anything is known: a guess.
constexpr double lean_sd = 0.04;

}  // namespace

Keeper::Keeper(double spread) : mean_(1, 0), cov_(Eigen::Matrix2d::Zero()) {
    cov_(0, 0) = spread * spread;
    cov_(1, 1) = lean_sd * lean_sd;
}

void Keeper::learn(const Weighing& weighing) {
    Eigen::Vector2d z(0, 0);
    double var = weighing.kg.var;
    for (const Weighing::Part& part : weighing.parts) {
        const double s = std::clamp(by_eye(part.share.mean), 0.0, 1.0);
        z += part.capacity * Eigen::Vector2d(s, bow(s));
        const double slope = mean_(0) + mean_(1) * 4 * (1 - 2 * s);
        var += part.capacity * part.capacity * (slope * slope * part.share.var + box_scatter * box_scatter * s * s);
    }
    const Eigen::Vector2d pz = cov_ * z;
    const double total = z.dot(pz) + var;
    mean_ += pz * ((weighing.kg.mean - z.dot(mean_)) / total);
    cov_ -= pz * pz.transpose() / total;
    weighings_ += static_cast<int>(weighing.parts.size());
}

double Keeper::straightened(double share) const {
    return std::clamp(share + mean_(1) / std::max(mean_(0), 0.2) * bow(share), 0.0, 1.0);
}

double Keeper::by_eye(double share) const {
    double s = share;
    for (int i = 0; i < 3; ++i) s = std::clamp(share - mean_(1) / std::max(mean_(0), 0.2) * bow(s), 0.0, 1.0);
    return s;
}

double Keeper::full_sd() const { return std::sqrt(cov_(0, 0)); }

KeeperCalibration Keeper::calibration() const {
    KeeperCalibration out;
    out.weighings = weighings_;
    const double sd = full_sd();
    const auto permille = [](double x) { return std::round(1000 * x) / 1000; };
    out.full_factor = {permille(mean_(0) - z80 * sd), permille(mean_(0)), permille(mean_(0) + z80 * sd)};
    if (weighings_ == 0) return out;
    const auto percent = [](double x) { return static_cast<int>(std::lround(100 * x)); };
    out.words = fmt::format("a super you call full has held {}% of the usual figure for its kind ({}-{}%), "
                            "one you call half full {}% of a full one; {} weighing{}",
                            percent(mean_(0)), percent(out.full_factor.low), percent(out.full_factor.high),
                            percent(straightened(0.5)), weighings_, weighings_ == 1 ? "" : "s");
    return out;
}

}  // namespace waxtab
