#pragma once
#include <array>
#include <vector>

#include "estimate/gaussian.hpp"
#include "facts/settings.hpp"

namespace waxtab {

/// The numbers of the model. Kilograms are of honey as it fills comb, days are calendar days.
/// None is published; they are engineering guesses held against open hive-scale data
/// (HOBOS, EFSA MUST-B, USDA Santa Rita) for their order of magnitude.
struct Parameters {
    /// Yard flow about its normal: s.d. at the height of the season (kg/day) and days of memory.
    double flow_sd = 0.7, flow_days = 12;
    /// Share of that s.d. that is left when there is no flow. Then a yard's gain is what its bees use, 0.1 to 0.3 kg a day
    /// (see normal_dearth), which moves by about 0.1 kg/day with brood, heat and showers: a fifth at the most.
    double calm = 0.2;
    /// A hive against its yard: s.d. (kg/day) and days of memory.
    double hive_sd = 0.35, hive_days = 30;
    /// The yard's normal against the usual: s.d. (kg/day) and days of memory.
    double level_sd = 0.40, level_days = 60;
    /// Normal flow at the height of the season and in a dearth, kg/day. Height: so that a season from April to
    /// August brings the 23.5 kg a colony of USDA NASS, Honey (2024 crop); own arithmetic. Dearth: 0.1-0.3 used a
    /// day on summer days without gain (HOBOS and Flakkebjerg hives); less of it shows in supers.
    double normal_peak = 0.22, normal_dearth = -0.08;
    /// Wobble of a hive's stores, kg per square root of a day.
    double wobble = 0.20;
    /// Spread of how a hive's gain is shared among its supers: 0 exactly by room, 1 all to one.
    double split = 0.15;
    /// Error of a share of a super judged by eye, s.d. 8 to 10 %: +-10 to 15 % at most is common belief,
    /// no source gives a figure; half a section of eight on the estimation grid is 6 %.
    double eye = 0.08;
    /// The same where a super is called empty or full: there an eye errs to one side only, so that little shows of it.
    double eye_at_ends = 0.08;
};

/// The yard's part of the state: flow, its level against the usual (kg/day) and the flow added up
/// over the step just taken (kg).
inline constexpr int at_flow = 0, at_level = 1, at_intake = 2, shared_size = 3;

/// Where a day stands in the honey season: 0 outside it, 1 at its height.
double season_height(const Settings& settings, Day day);
/// What a yard's mean hive usually gains at this time of year, kg/day.
double normal_flow(const Parameters& p, const Settings& settings, Day day);
/// Stationary s.d. of the flow about its normal at this time of year, kg/day.
double flow_sd(const Parameters& p, const Settings& settings, Day day);

/// x' = T x + c + noise of covariance Q.
struct Step {
    Eigen::MatrixXd T;
    Eigen::VectorXd c;
    Eigen::MatrixXd Q;
};

/// The yard's state over `days` days from `from`. Flow reverts to normal plus level (an
/// Ornstein-Uhlenbeck process, integrated exactly with the season held at the step's middle). `flow_now` is
/// the flow believed at the start: the higher, the more may change.
Step shared_step(const Parameters& p, const Settings& settings, Day from, double days, double flow_now);

/// A super as the step of its hive needs it.
struct SuperSlot {
    double capacity = 0;    ///< kilograms, the eye's full
    double appeal = 1;      ///< how readily bees fill it, 1 for drawn comb
};

/// Order of a hive's own state: strength (kg/day against its yard), base (kilograms of the hive
/// without the honey in its supers; kept at 0 for hives never weighed), then one entry a super.
inline constexpr int at_strength = 0, at_base = 1, first_super = 2;

/// The shares of a hive's gain that go to each super, summing to 1 (less when there is nothing to
/// lose): by room when gaining, until full, then the rest to the others; by content when losing.
std::vector<double> shares_of_gain(double gain, const std::vector<SuperSlot>& supers, const std::vector<double>& held);

/// The hive's own state over a step, as a map from (shared state after the step, own state before).
Step hive_step(const Parameters& p, double days, const Gaussian& local, const std::vector<SuperSlot>& supers,
               bool weighed);

/// The same two steps applied to one hive by itself: (shared, own) `days` ahead. Steps of at most `stride` days.
Gaussian ahead(const Parameters& p, const Settings& settings, Gaussian local, const std::vector<SuperSlot>& supers,
               bool weighed, Day from, int days, int stride = 5);

}  // namespace waxtab
