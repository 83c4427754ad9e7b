#include <algorithm>
#include <cmath>

#include "estimate/arithmetic.hpp"
#include "estimate/pass.hpp"

namespace waxtab {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

}  // namespace

void Pass::arrive(const TapeEntry& e) {
    HiveTrack& hive = track(e.hive);
    Gaussian own{VectorXd::Zero(first_super), MatrixXd::Zero(first_super, first_super)};
    own.cov(at_strength, at_strength) = sq(parameters(e.day).hive_sd);
    // A hive with its brood box and stores, before it was ever weighed: 30 kg, give or take 20.
    own.mean(at_base) = hive.weighed ? 30 : 0;
    own.cov(at_base, at_base) = hive.weighed ? 400 : 1e-6;
    if (hive.number >= 0) {
        const Gaussian local = field_of(hive).local(hive.number);
        const int n = static_cast<int>(local.mean.size()) - shared_size;
        own = {local.mean.tail(n), local.cov.bottomRightCorner(n, n)};
        std::vector<SuperTrack> supers = std::move(hive.supers);
        leave(e.hive);
        hive.supers = std::move(supers);
    }
    YardTrack& yard = yard_of(e.yard, e.day);
    advance(yard, e.day);
    hive.yard = e.yard;
    hive.number = yard.field->insert(own);
    yard.hives.push_back(e.hive);
}

void Pass::leave(HiveId id) {
    HiveTrack& hive = track(id);
    if (hive.number < 0) return;
    YardTrack& yard = yards_.at(hive.yard);
    yard.field->erase(hive.number);
    std::erase(yard.hives, id);
    hive.number = -1;
    hive.supers.clear();
}

Moments Pass::start_of(const TapeEntry& e, SuperTrack& super) {
    const Box& box = history_.boxes[at(e.box)];
    const double cap = super.capacity.kg;
    super.start_known = true;
    const auto away = away_.find(e.box);
    if (away != away_.end()) {
        const Day since = away->second.since;
        bool emptied = away->second.harvested;
        for (Day day : box.emptied) emptied = emptied || (since <= day && day <= e.day);
        if (!emptied) {
            super = away->second.track;
            return {away->second.held.mean, away->second.held.var + sq(0.02 * cap)};
        }
        super.drawn = 1;
    } else if (!box.stays[e.index].from) {
        // On since before the first note: anything from empty to nearly full, and no rate from it.
        super.start_known = false;
        super.capping = Capping::unknown();
        super.drawn = super.drawn < 1 ? 0.5 : 1;
        return {0.35 * cap, sq(0.35 * cap)};
    }
    const bool wet = box.comb == Comb::wet || away != away_.end();
    return {wet ? 0.02 * cap : 0.0, sq(0.02 * cap)};
}

void Pass::box_on(const TapeEntry& e) {
    HiveTrack& hive = track(e.hive);
    if (hive.number < 0) return;
    touch(e.hive);
    const Box& box = history_.boxes[at(e.box)];
    SuperTrack super;
    super.box = e.box;
    super.capacity = capacity_of(journal_, box);
    super.drawn = box.comb == Comb::foundation || box.comb == Comb::strips ? 0 : box.comb == Comb::mixed ? 0.5 : 1;
    const Moments start = start_of(e, super);
    away_.erase(e.box);
    const BoxStay& stay = box.stays[e.index];
    if (stay.on_fact != set_up_fact) super.because.push_back(stay.on_fact);
    field_of(hive).append(hive.number, start);
    hive.supers.push_back(std::move(super));
}

void Pass::box_off(const TapeEntry& e) {
    HiveTrack& hive = track(e.hive);
    const auto found = std::find_if(hive.supers.begin(), hive.supers.end(), [&](const SuperTrack& s) { return s.box == e.box; });
    if (hive.number < 0 || found == hive.supers.end()) return;
    touch(e.hive);
    const int k = first_super + static_cast<int>(found - hive.supers.begin());
    Field& field = field_of(hive);
    const Gaussian local = field.local(hive.number);
    const double cap = found->capacity.kg;
    Away away{e.day, {local.mean(shared_size + k), local.cov(shared_size + k, shared_size + k)}, *found, false, std::nullopt};
    for (std::size_t index : takings_of_[at(e.box)]) {
        const Taking& taking = history_.takings[index];
        if (taking.day != e.day || taking.hive != e.hive) continue;
        TakenTrack& taken = taken_[index];
        taken.yard = hive.yard;
        taken.capacity = cap;
        taken.held = taken.held_then = away.held;
        taken.keeper_then = keeper_;
        taken.because = found->because;
        taken.judged = found->readings > 0 && found->last_seen && days_between(*found->last_seen, e.day) <= 21;
        taken.mark = field.mark(hive.number, k);
        away.taking = index;
        away.harvested = taking.harvest && !taking.returned;
    }
    field.drop(hive.number, k);
    hive.supers.erase(found);
    away_[e.box] = std::move(away);
}

void Pass::frames_off(const TapeEntry& e) {
    HiveTrack& hive = track(e.hive);
    if (hive.number < 0 || hive.supers.empty()) return;
    touch(e.hive);
    std::size_t k = 0;
    const Gaussian local = field_of(hive).local(hive.number);
    const auto share = [&](std::size_t i) {
        return local.mean(shared_size + first_super + static_cast<int>(i)) / hive.supers[i].capacity.kg;
    };
    for (std::size_t i = 0; i < hive.supers.size(); ++i)
        if (e.box != no_box ? hive.supers[i].box == e.box : share(i) > share(k)) k = i;
    const SuperTrack& super = hive.supers[k];
    const int frames = std::max(frames_of(journal_, history_.boxes[at(super.box)]), 1);
    const Taking& taking = history_.takings[e.index];
    const double each = super.capacity.kg / frames;
    const double count = std::clamp(taking.frames, 1, frames);
    // Frames are chosen for being full: nine tenths, give or take one.
    TakenTrack& taken = taken_[e.index];
    const Moments held{0.9 * each * count, sq(0.1 * each * count)};
    taken = {hive.yard, -1, each * count, held, false, false, super.because, held, keeper_};
    const int own = first_super + static_cast<int>(hive.supers.size()), at_k = first_super + static_cast<int>(k);
    Step step{MatrixXd::Zero(own, shared_size + own), VectorXd::Zero(own), MatrixXd::Zero(own, own)};
    for (int r = 0; r < own; ++r) step.T(r, shared_size + r) = 1;
    step.c(at_k) = -std::min(taken.held.mean, std::max(local.mean(shared_size + at_k), 0.0));
    step.Q(at_k, at_k) = taken.held.var;
    field_of(hive).step_hive(hive.number, step);
}

Weighing::Part Pass::part_of(const TakenTrack& taken) const {
    return {taken.capacity, {taken.held.mean / taken.capacity, taken.held.var / sq(taken.capacity)}};
}

void Pass::weighed(const TapeEntry& e) {
    const auto found = taken_.find(e.index);
    const Taking& taking = history_.takings[e.index];
    if (found == taken_.end() || !found->second.judged || taking.box == no_box) return;
    Weighing weighing{{part_of(found->second)}, {}};
    if (taking.net) {
        weighing.kg = {taking.net->kilograms(), sq(0.2)};
    } else {
        const Capacity box = capacity_of(journal_, history_.boxes[at(taking.box)]);
        const double tare = taking.tare ? taking.tare->kilograms() : box.tare_kg;
        weighing.kg = {taking.gross->kilograms() - tare, sq(0.3) + (taking.tare ? 0 : sq(box.tare_sd))};
    }
    found->second.in_lot = true;
    keeper_.learn(weighing);
    weighed_by_.insert(weighed_by_.end(), taking.weighings.begin(), taking.weighings.end());
}

void Pass::extracted(const TapeEntry& e) {
    const Fact& fact = journal_.facts[e.index];
    if (fact.value.dimension != Dimension::mass) return;
    std::vector<std::size_t> members;
    Weighing weighing;
    bool judged = true;
    for (auto& [index, taken] : taken_) {
        const Taking& taking = history_.takings[index];
        if (taking.extracted != static_cast<FactId>(e.index) || taken.in_lot) continue;
        members.push_back(index);
        judged = judged && taken.judged && taking.box != no_box;
        weighing.parts.push_back(part_of(taken));
    }
    for (std::size_t index : members) taken_[index].in_lot = true;
    const bool counted = fact.count <= 0 || fact.count == static_cast<int>(members.size());
    if (members.empty() || !judged || !counted) return;
    const double kg = static_cast<double>(fact.value.amount) * 1e-12;
    // Extracting leaves some behind in cappings and on the comb.
    weighing.kg = {kg, sq(0.02 * kg + 0.2)};
    keeper_.learn(weighing);
    weighed_by_.push_back(static_cast<FactId>(e.index));
}

}  // namespace waxtab
