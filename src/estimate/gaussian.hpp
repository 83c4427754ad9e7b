#pragma once
#include <Eigen/Dense>

namespace waxtab {

/// Means and covariance of some quantities taken as jointly normal.
struct Gaussian {
    Eigen::VectorXd mean;
    Eigen::MatrixXd cov;
};

/// Mean and variance of one quantity.
struct Moments {
    double mean = 0, var = 0;
};

/// Standard normal density, distribution and quantile (p in (0,1)).
double normal_density(double z);
double normal_cdf(double z);
double normal_quantile(double p);

/// Half-width of an 80 % range in standard deviations.
inline constexpr double z80 = 1.2815515655446004;
/// Half-width of a 50 % range in standard deviations.
inline constexpr double z50 = 0.6744897501960817;

/// Moments of X ~ (m, v) known to lie above `bound`, where the bound itself was read with error `soft` (s.d.).
/// Source: moments of the truncated normal, Johnson, Kotz & Balakrishnan, Continuous Univariate Distributions, 10.1.
Moments above(Moments x, double bound, double soft);
/// As `above`, known to lie below.
Moments below(Moments x, double bound, double soft);

/// The reading of a quantity that would take `prior` to `posterior`: its value and error variance.
/// `var` is infinite when the two agree.
Moments equivalent_reading(Moments prior, Moments posterior);

/// min(X, cap) of a normal X as a line in X: slope, offset and the variance the line leaves out.
/// Slope and offset keep mean and covariances with everything else (Stein's lemma).
struct Rectified {
    double slope = 1, offset = 0, rest = 0;
};
Rectified capped_at(Moments x, double cap);
Rectified floored_at(Moments x, double floor);

}  // namespace waxtab
