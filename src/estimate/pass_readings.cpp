#include <algorithm>
#include <cmath>

#include "estimate/arithmetic.hpp"
#include "estimate/pass.hpp"

namespace waxtab {
namespace {

using Eigen::VectorXd;
using Sighted = BoxSighting::What;
using Side = ShareReading::Side;

/// A super is called full when it is as good as full: 95 %, give or take 4.
constexpr double full_from = 0.95, full_soft = 0.04;

VectorXd on_super(const HiveTrack& hive, std::size_t k) {
    VectorXd z = VectorXd::Zero(shared_size + first_super + static_cast<int>(hive.supers.size()));
    z(shared_size + first_super + static_cast<int>(k)) = 1;
    return z;
}

}  // namespace

void Pass::sighting(const TapeEntry& e) {
    if (e.hive == no_hive) return seen_away(e);
    HiveTrack& hive = track(e.hive);
    const auto found = std::find_if(hive.supers.begin(), hive.supers.end(), [&](const SuperTrack& s) { return s.box == e.box; });
    if (hive.number < 0 || found == hive.supers.end()) return seen_away(e);
    touch(e.hive);
    const std::size_t k = at(static_cast<int>(found - hive.supers.begin()));
    const BoxSighting& s = history_.boxes[at(e.box)].sightings[e.index];
    SuperTrack& super = *found;
    if (s.what == Sighted::full || s.what == Sighted::capped || s.what == Sighted::drawn || s.what == Sighted::gross_weight) {
        super.last_seen = s.day;
        super.because.push_back(s.fact);
    }
    switch (s.what) {
        case Sighted::full: return share_seen(hive, k, s);
        case Sighted::capped: return capped_seen(hive, k, s);
        case Sighted::gross_weight: return gross_seen(hive, k, s);
        case Sighted::drawn:
            super.drawn = std::clamp(static_cast<double>(s.amount) / 1000, 0.0, 1.0);
            // Comb that is not drawn holds nothing.
            if (super.drawn < 0.9)
                field_of(hive).observe_side(hive.number, on_super(hive, k), (super.drawn + 0.05) * super.capacity.kg, 0.08 * super.capacity.kg, -1);
            return;
        case Sighted::shakes_out: case Sighted::brood: case Sighted::moisture: return;
    }
}

bool Pass::others_full(const HiveTrack& hive, std::size_t k, Day day) const {
    const Gaussian local = yards_.at(hive.yard).field->local(hive.number);
    for (std::size_t i = 0; i < hive.supers.size(); ++i) {
        if (i == k) continue;
        const SuperTrack& other = hive.supers[i];
        bool read = false, full = false;
        for (const BoxSighting& s : history_.boxes[at(other.box)].sightings)
            if (s.day == day && s.what == Sighted::full) read = true, full = s.amount >= 970;
        const double share = local.mean(shared_size + first_super + static_cast<int>(i)) / other.capacity.kg;
        if (read ? !full : share < 0.93) return false;
    }
    return true;
}

void Pass::share_seen(HiveTrack& hive, std::size_t k, const BoxSighting& s) {
    SuperTrack& super = hive.supers[k];
    ShareReading r = share_reading(parameters(s.day), journal_, s);
    for (VisitTrack& visit : today_)
        if (&track(visit.hive) == &hive) visit.readings.push_back({super.box, r, s.fact});
    r.share = keeper_.straightened(r.share);
    const double cap = super.capacity.kg;
    if (r.side != Side::at_least) allow_for_loss(hive, k, r.share, r.sd, s.day);
    const double off = off_from_look_of_day(hive, k, r.share, r.sd, s.day);
    if (r.says_full) {
        full_seen(hive, k, r, s);
    } else if (r.side != Side::about) {
        field_of(hive).observe_side(hive.number, on_super(hive, k), r.share * cap, r.sd * cap, r.side == Side::at_least ? 1 : -1);
    } else {
        field_of(hive).observe(hive.number, on_super(hive, k), r.share * cap, sq(r.sd * cap));
        if (super.readings > 0 || super.start_known) hive.gain_seen = s.day;
    }
    // Two looks that cannot both be right: it may hold what either says.
    if (off > 0) shift_own(hive, first_super + static_cast<int>(k), 0, 0.5 * off);
    super.said_full = r.says_full;
    super.drawn = std::max(super.drawn, std::min(1.0, r.share));
    ++super.readings;
    keep_reading(hive, k, r.sd, s.day);
}

void Pass::full_seen(HiveTrack& hive, std::size_t k, const ShareReading& r, const BoxSighting& s) {
    const double cap = hive.supers[k].capacity.kg;
    Field& field = field_of(hive);
    if (others_full(hive, k, s.day)) {
        // No room anywhere: there may have been any amount more to store.
        field.observe_side(hive.number, on_super(hive, k), full_from * cap, full_soft * cap, +1);
    } else {
        field.observe(hive.number, on_super(hive, k), 0.98 * cap, sq(0.7 * r.sd * cap));
        hive.gain_seen = s.day;
    }
}

void Pass::capped_seen(HiveTrack& hive, std::size_t k, const BoxSighting& s) {
    SuperTrack& super = hive.supers[k];
    const ShareReading r = share_reading(parameters(s.day), journal_, s);
    super.capping.observe(r.share, r.sd, lag_);
    // What is capped is filled; how much more is, it does not say.
    const double cap = super.capacity.kg;
    field_of(hive).observe_side(hive.number, on_super(hive, k), (r.says_full ? 0.95 : r.share) * cap, r.sd * cap, +1);
    super.drawn = std::max(super.drawn, r.share);
    ++super.readings;
}

void Pass::gross_seen(HiveTrack& hive, std::size_t k, const BoxSighting& s) {
    if (s.detail == "after") return;
    const SuperTrack& super = hive.supers[k];
    const double f = keeper_.full(), honey = static_cast<double>(s.amount) * 1e-12 - super.capacity.tare_kg;
    const double var = sq(0.3) + sq(super.capacity.tare_sd) + sq(honey * keeper_.full_sd() / f) + sq(box_scatter * honey);
    const double cap = super.capacity.kg;
    allow_for_loss(hive, k, honey / f / cap, std::sqrt(var) / f / cap, s.day);
    field_of(hive).observe(hive.number, on_super(hive, k), honey / f, var / (f * f));
    if (super.readings > 0 || super.start_known) hive.gain_seen = s.day;
    ++hive.supers[k].readings;
    keep_reading(hive, k, std::sqrt(var) / f / cap, s.day);
}

/// A super looked at after it came off tells what it held.
void Pass::seen_away(const TapeEntry& e) {
    const auto found = away_.find(e.box);
    if (found == away_.end()) return;
    Away& away = found->second;
    const BoxSighting& s = history_.boxes[at(e.box)].sightings[e.index];
    if (s.what != Sighted::full || days_between(away.since, s.day) > 14) return;
    const ShareReading r = share_reading(parameters(s.day), journal_, s);
    const double cap = away.track.capacity.kg, var = sq(r.sd * cap);
    const double gain = away.held.var / (away.held.var + var);
    away.held.mean += gain * (keeper_.straightened(r.share) * cap - away.held.mean);
    away.held.var *= 1 - gain;
    if (!away.taking) return;
    TakenTrack& taken = taken_[*away.taking];
    taken.held = away.held;
    if (s.day == away.since) taken.held_then = away.held;
    taken.mark = -1;
    taken.judged = true;
    taken.because.push_back(s.fact);
}

void Pass::yard_fact(const TapeEntry& e) {
    const Moments evidence = flow_evidence(journal_.facts[e.index]);
    if (evidence.var <= 0) return;
    YardTrack& yard = yard_of(e.yard, e.day);
    advance(yard, e.day);
    VectorXd z = VectorXd::Zero(shared_size);
    z(at_flow) = 1;
    yard.field->count_readings(false);
    yard.field->observe_shared(z, evidence.mean, evidence.var);
    yard.field->count_readings(true);
    yard.because.push_back(static_cast<FactId>(e.index));
}

void Pass::hive_fact(const TapeEntry& e) {
    HiveTrack& hive = track(e.hive);
    if (hive.number < 0) return;
    const Fact& fact = journal_.facts[e.index];
    const std::size_t known = hive.because.size();
    const auto note = [&] { hive.because.push_back(static_cast<FactId>(e.index)); };
    if (fact.kind == Kind::hive_weight) hive_weight(hive, fact), note();
    if (fact.kind == Kind::weight_change) weight_change(hive, fact, e.day), note();
    // Half the bees gone, or twice as many: what that does to the rate is a guess, wide enough to be corrected.
    if (fact.kind == Kind::swarmed) shift_strength(hive, -0.3, 0.25), shift_base(hive, -2.5, 1.5), note();
    if (fact.kind == Kind::feed) fed(hive, fact);
    if (divides(fact.kind)) shift_strength(hive, e.hive == fact.hive ? -0.15 : -0.3, 0.25), note();
    if (fact.kind == Kind::hive_united && e.hive == fact.other) shift_strength(hive, 0.15, 0.25), note();
    if (fact.kind == Kind::brood_box_on) shift_base(hive, 9, 2);
    if (fact.kind == Kind::brood_box_off) shift_base(hive, -12, 4);
    VectorXd z = VectorXd::Zero(shared_size + first_super + static_cast<int>(hive.supers.size()));
    const Moments strength = strength_evidence(fact), flow = flow_evidence(fact);
    const Moments evidence = strength.var > 0 ? strength : flow;
    if (evidence.var > 0) {
        z(strength.var > 0 ? shared_size + at_strength : at_flow) = 1;
        Field& field = field_of(hive);
        field.count_readings(false);
        field.observe(hive.number, z, evidence.mean, evidence.var);
        field.count_readings(true);
        note();
    }
    if (hive.because.size() > known) touch(e.hive);
}

void Pass::hive_weight(HiveTrack& hive, const Fact& fact) {
    if (fact.value.dimension != Dimension::mass) return;
    VectorXd z = VectorXd::Zero(shared_size + first_super + static_cast<int>(hive.supers.size()));
    z(shared_size + at_base) = 1;
    double kg = static_cast<double>(fact.value.amount) * 1e-12;
    for (std::size_t k = 0; k < hive.supers.size(); ++k) {
        z(shared_size + first_super + static_cast<int>(k)) = keeper_.full();
        kg -= hive.supers[k].capacity.tare_kg;
    }
    allow_for_change(hive, z, kg, fact.happened);
    field_of(hive).observe(hive.number, z, kg, sq(0.3));
    hive.gain_seen = hive.weighed_on = fact.happened;
}

void Pass::weight_change(HiveTrack& hive, const Fact& fact, Day day) {
    const auto& last = last_visit_[at(fact.hive)];
    const int days = last ? days_between(*last, day) : 0;
    if (days < 1 || fact.value.dimension != Dimension::mass) return;
    VectorXd z = VectorXd::Zero(shared_size + first_super + static_cast<int>(hive.supers.size()));
    z(at_flow) = z(shared_size + at_strength) = 1;
    const double kg = static_cast<double>(fact.value.amount) * 1e-12 * (fact.detail == "loss" ? -1 : 1);
    // The mean rate since the last look stands in for today's: wrong by about a third of what it may change.
    field_of(hive).observe(hive.number, z, kg / keeper_.full() / days, sq(0.5 / days) + sq(0.3));
}

}  // namespace waxtab
