#pragma once
#include <string>
#include <vector>

#include "estimate/estimate.hpp"
#include "estimate/gaussian.hpp"

namespace waxtab {

/// Supers both judged by eye and weighed, one or several together.
struct Weighing {
    struct Part { double capacity = 0; Moments share; };   ///< handbook's kilograms, share of full by eye
    std::vector<Part> parts;
    Moments kg;                 ///< weighed, with its error
};

/// What is known of the keeper's eye: how many of the handbook's kilograms their "full" is, and how far
/// their "half" leans. A super they call s full holds capacity (full s + lean 4 s (1-s)). Both are normal
/// and learned by linear regression from weighings, starting from the spread of the handbook's figures.
class Keeper {
public:
    /// `spread`: relative s.d. of the handbook's full figure.
    explicit Keeper(double spread);

    void learn(const Weighing& weighing);

    /// The share of their own full that a super they call `share` full really is.
    double straightened(double share) const;
    /// The share they would have called a super that really is `share` of their full.
    double by_eye(double share) const;
    double full() const { return mean_(0); }
    double full_sd() const;
    int weighings() const { return weighings_; }
    KeeperCalibration calibration() const;

private:
    Eigen::Vector2d mean_;
    Eigen::Matrix2d cov_;
    int weighings_ = 0;
};

/// Two supers called equally full differ by so much (relative s.d.): comb, frames, cappings. A guess.
inline constexpr double box_scatter = 0.06;

}  // namespace waxtab
