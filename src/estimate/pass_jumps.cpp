// What changes a hive all at once: swarms, feed, boxes, and honey that went without a note.
#include <algorithm>
#include <cmath>

#include "estimate/arithmetic.hpp"
#include "estimate/pass.hpp"
#include "estimate/ranges.hpp"

namespace waxtab {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

/// A fall of so many standard deviations below what bees can have left is no misjudged share any more.
constexpr double sure_fall = 3;
/// The most a strong hive gains in a day of heavy flow, kg; above, something was put on or fed. A guess on the high side.
constexpr double most_gained_kg_per_day = 8;
/// What a hive loses or gains at once without anything being amiss, kg: a swarm, a shower, a scale moved.
constexpr double unremarkable_kg = 3;
/// Syrup weighs about so much a litre: two parts of sugar to one of water 1.33, one to one 1.23 (sucrose tables).
constexpr double syrup_kg_per_litre = 1.28;

}  // namespace

void Pass::shift_own(HiveTrack& hive, int k, double by, double sd) {
    const int own = first_super + static_cast<int>(hive.supers.size());
    Step step{MatrixXd::Zero(own, shared_size + own), VectorXd::Zero(own), MatrixXd::Zero(own, own)};
    for (int r = 0; r < own; ++r) step.T(r, shared_size + r) = 1;
    step.c(k) = by;
    step.Q(k, k) = sq(sd);
    field_of(hive).step_hive(hive.number, step);
}

void Pass::shift_strength(HiveTrack& hive, double by, double sd) { shift_own(hive, at_strength, by, sd); }

void Pass::shift_base(HiveTrack& hive, double by, double sd) {
    if (hive.weighed) shift_own(hive, at_base, by, sd);
}

void Pass::fed(HiveTrack& hive, const Fact& fact) {
    const double amount = static_cast<double>(fact.value.amount) * 1e-12;
    const double kg = fact.value.dimension == Dimension::mass ? amount : fact.value.dimension == Dimension::volume ? syrup_kg_per_litre * 1000 * amount : 0;
    // Some of it is eaten, some stands in the feeder for days.
    shift_base(hive, 0.8 * kg, 0.3 * kg);
}

/// `sd`: error of the reading, a share. A full super's honey is cut to what it holds only in the evening, so its spread is
/// taken from the reading.
void Pass::keep_reading(HiveTrack& hive, std::size_t k, double sd, Day day) {
    const Gaussian local = field_of(hive).local(hive.number);
    const int at = shared_size + first_super + static_cast<int>(k);
    const double cap = hive.supers[k].capacity.kg;
    hive.supers[k].read = Moments{std::clamp(local.mean(at), 0.0, cap), std::min(local.cov(at, at), sq(sd * cap))};
    hive.supers[k].read_on = day;
}

/// A look that finds far less than bees can have left tells that honey went unnoted, or that one of the looks was wrong. Then
/// what is there is taken from it, and next to nothing of the flow.
bool Pass::allow_for_loss(HiveTrack& hive, std::size_t k, double share, double sd, Day day) {
    SuperTrack& super = hive.supers[k];
    super.fell_from.reset();
    if (!super.read || day <= super.read_on) return false;
    const double cap = super.capacity.kg;
    const double fall = super.read->mean - most_used_kg_per_day * days_between(super.read_on, day) - share * cap;
    if (fall < sure_fall * std::sqrt(super.read->var + sq(sd * cap))) return false;
    super.fell_from = std::clamp(super.read->mean / cap, 0.0, 1.0);
    super.capping = Capping::unknown();
    const Gaussian local = field_of(hive).local(hive.number);
    const int at = first_super + static_cast<int>(k);
    shift_own(hive, at, share * cap - local.mean(shared_size + at), cap);
    return true;
}

/// Kilograms by which a second look of the day is off from what the first one left to expect; 0 where the eye's error explains it.
double Pass::off_from_look_of_day(const HiveTrack& hive, std::size_t k, double share, double sd, Day day) {
    const SuperTrack& super = hive.supers[k];
    if (!super.read || super.read_on != day) return 0;
    const Gaussian local = field_of(hive).local(hive.number);
    const int at = shared_size + first_super + static_cast<int>(k);
    const double cap = super.capacity.kg, off = std::abs(share * cap - local.mean(at));
    return off > sure_fall * std::sqrt(local.cov(at, at) + sq(sd * cap)) ? off : 0;
}

/// A weight no gain or use explains tells of boxes, feed or robbing that were not noted, not of the flow.
void Pass::allow_for_change(HiveTrack& hive, const VectorXd& z, double kg, Day day) {
    if (!hive.weighed_on) return;
    const Gaussian local = field_of(hive).local(hive.number);
    const int days = std::max(days_between(*hive.weighed_on, day), 0);
    const double rate = std::max(0.0, local.mean(at_flow) + local.mean(shared_size + at_strength));
    const double off = kg - z.dot(local.mean);
    const bool fell = -off > rate * days + most_used_kg_per_day * days + unremarkable_kg;
    const bool rose = off > most_gained_kg_per_day * days + unremarkable_kg;
    if (fell || rose) shift_own(hive, at_base, off, std::abs(off));
}

}  // namespace waxtab
