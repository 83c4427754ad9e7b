#include "estimate/pass.hpp"

#include <algorithm>
#include <cmath>

namespace waxtab {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;
using What = TapeEntry::What;

/// Before anything is seen: normal flow, with the spread of a yard nobody knows.
Gaussian first_shared(const Parameters& p, const Settings& settings, Day day) {
    Gaussian g{VectorXd::Zero(shared_size), MatrixXd::Zero(shared_size, shared_size)};
    g.mean(at_flow) = normal_flow(p, settings, day);
    const double sd = flow_sd(p, settings, day), level = p.level_sd * p.level_sd;
    g.cov(at_flow, at_flow) = sd * sd + level;
    g.cov(at_level, at_level) = level;
    g.cov(at_flow, at_level) = g.cov(at_level, at_flow) = level;
    g.cov(at_intake, at_intake) = 1e-6;
    return g;
}

/// Relative spread of what a keeper's full super holds: that of the usual kind's figure, and a tenth for what
/// keepers call full.
double spread_of(const Journal& journal) {
    Box usual;
    usual.kind = journal.settings.super_kind;
    return std::hypot(capacity_of(journal, usual).spread, 0.10);
}

}  // namespace

std::vector<SuperSlot> HiveTrack::slots() const {
    std::vector<SuperSlot> out;
    for (const SuperTrack& s : supers) out.push_back(s.slot());
    return out;
}

Pass::Pass(const Journal& journal, const History& history, Schedule schedule, Options options)
    : journal_(journal), history_(history), schedule_(std::move(schedule)), options_(options),
      hives_(journal.hives.size()), takings_of_(history.boxes.size()), keeper_(spread_of(journal)),
      last_visit_(journal.hives.size()) {
    for (std::size_t i = 0; i < history.takings.size(); ++i)
        if (history.takings[i].box != no_box) takings_of_[static_cast<std::size_t>(history.takings[i].box)].push_back(i);
    for (const HiveHistory& hive : history.hives)
        for (const Event& event : hive.events)
            if (event.fact != set_up_fact && journal.facts[event.fact].kind == Kind::hive_weight) track(hive.hive).weighed = true;
}

const YardTrack* Pass::yard(YardId id) const {
    const auto found = yards_.find(id);
    return found == yards_.end() ? nullptr : &found->second;
}

const Parameters& Pass::parameters(Day day) const {
    const auto later = std::upper_bound(schedule_.begin(), schedule_.end(), day,
                                        [](Day d, const auto& entry) { return d < entry.first; });
    return later == schedule_.begin() ? schedule_.front().second : std::prev(later)->second;
}

YardTrack& Pass::yard_of(YardId id, Day day) {
    YardTrack& yard = yards_[id];
    if (!yard.field) {
        const Gaussian g = first_shared(parameters(day), journal_.settings, day);
        yard.field = most_hives_[id] > joint_hives ? star_field(g) : joint_field(g);
        yard.at = day;
    }
    return yard;
}

void Pass::run() {
    const std::vector<TapeEntry> tape = tape_of(journal_, history_);
    std::map<YardId, int> now;
    std::vector<YardId> where(hives_.size(), no_yard - 1);
    for (const TapeEntry& e : tape) {
        if (e.what != What::arrive && e.what != What::end) continue;
        YardId& at = where[static_cast<std::size_t>(e.hive)];
        if (at != no_yard - 1) --now[at];
        at = e.what == What::arrive ? e.yard : no_yard - 1;
        if (e.what == What::arrive) most_hives_[at] = std::max(most_hives_[at], ++now[at]);
    }
    auto back = options_.look_back.begin();
    for (std::size_t i = 0; i < tape.size(); ++i) {
        for (; back != options_.look_back.end() && *back < tape[i].day; ++back) remember(*back);
        take(tape[i]);
        if (i + 1 == tape.size() || tape[i + 1].day != tape[i].day) close_day();
    }
    for (; back != options_.look_back.end() && *back <= history_.on; ++back) remember(*back);
    for (auto& [id, yard] : yards_) advance(yard, history_.on);
}

void Pass::advance(YardTrack& yard, Day to) {
    while (yard.at < to) {
        bool supered = false;
        for (HiveId id : yard.hives) supered = supered || !track(id).supers.empty();
        const int days = std::min(days_between(yard.at, to), supered ? 7 : 30);
        const Parameters& p = parameters(yard.at);
        yard.field->step_shared(shared_step(p, journal_.settings, yard.at, days, yard.field->shared().mean(at_flow)));
        for (HiveId id : yard.hives) step_hive(yard, id, p, days);
        yard.at += date::days{days};
    }
}

void Pass::step_hive(YardTrack& yard, HiveId id, const Parameters& p, double days) {
    HiveTrack& hive = track(id);
    const Gaussian local = yard.field->local(hive.number);
    const Step step = waxtab::hive_step(p, days, local, hive.slots(), hive.weighed);
    const VectorXd after = step.T * local.mean + step.c;
    yard.field->step_hive(hive.number, step);
    for (std::size_t k = 0; k < hive.supers.size(); ++k) {
        SuperTrack& s = hive.supers[k];
        const int at = first_super + static_cast<int>(k);
        const double was = std::clamp(local.mean(shared_size + at) / s.capacity.kg, 0.0, 1.0);
        const double is = std::clamp(after(at) / s.capacity.kg, 0.0, 1.0);
        const double sd = std::sqrt(local.cov(shared_size + at, shared_size + at) + step.Q(at, at)) / s.capacity.kg;
        s.capping.advance(days, was, is, std::min(sd, 0.3));
        // Drawing keeps a little ahead of storing; never noted, never undone.
        s.drawn = std::max(s.drawn, std::min(1.0, is * 1.15));
    }
}

void Pass::take(const TapeEntry& e) {
    if (e.hive != no_hive && track(e.hive).number >= 0) advance(yards_.at(track(e.hive).yard), e.day);
    switch (e.what) {
        case What::arrive: return arrive(e);
        case What::end: return leave(e.hive);
        case What::box_on: return box_on(e);
        case What::box_off: return box_off(e);
        case What::sighting: return sighting(e);
        case What::frames_off: return frames_off(e);
        case What::hive_fact: return hive_fact(e);
        case What::yard_fact: return yard_fact(e);
        case What::extracted: return extracted(e);
        case What::weighed: return weighed(e);
    }
}

void Pass::touch(HiveId id) {
    if (std::find(touched_.begin(), touched_.end(), id) != touched_.end()) return;
    touched_.push_back(id);
    if (!options_.keep_visits) return;
    VisitTrack visit;
    visit.hive = id;
    for (const SuperTrack& s : track(id).supers) visit.before.push_back(s.box);
    today_.push_back(std::move(visit));
}

void Pass::close_day() {
    for (HiveId id : touched_)
        if (track(id).number >= 0) rectify(track(id));
    for (VisitTrack& visit : today_) {
        const HiveTrack& hive = track(visit.hive);
        if (hive.number < 0) continue;
        const YardTrack& yard = yards_.at(hive.yard);
        visit.day = yard.at;
        visit.yard = hive.yard;
        visit.slots = hive.slots();
        for (const SuperTrack& s : hive.supers) visit.after.push_back(s.box), visit.drawn.push_back(s.drawn);
        visit.local = yard.field->local(hive.number);
        visit.weighed = hive.weighed;
        visit.parameters = parameters(visit.day);
        visit.full_factor = keeper_.full();
        visits_.push_back(std::move(visit));
    }
    if (options_.keep_likelihood && !touched_.empty()) {
        double sum = 0;
        Day day{};
        for (const auto& [id, yard] : yards_) sum += yard.field->log_likelihood(), day = std::max(day, yard.at);
        likelihood_.emplace_back(day, sum);
    }
    for (HiveId id : touched_)
        if (track(id).number >= 0) last_visit_[static_cast<std::size_t>(id)] = yards_.at(track(id).yard).at;
    touched_.clear();
    today_.clear();
}

void Pass::remember(Day day) {
    for (auto& [id, yard] : yards_) {
        advance(yard, day);
        for (HiveId hive : yard.hives) remember(yard, id, hive);
    }
}

void Pass::remember(YardTrack& yard, YardId id, HiveId hive) {
    const HiveTrack& t = track(hive);
    const Gaussian local = yard.field->local(t.number);
    PastTrack past{hive, id, yard.at, {}, {}, -1};
    VectorXd all = VectorXd::Zero(local.mean.size());
    for (std::size_t k = 0; k < t.supers.size(); ++k) {
        const int own = first_super + static_cast<int>(k), at = shared_size + own;
        past.supers.push_back({t.supers[k].box, t.supers[k].capacity.kg, {local.mean(at), local.cov(at, at)}, yard.field->mark(t.number, own)});
        all(at) = 1;
    }
    past.held = {all.dot(local.mean), all.dot(local.cov * all)};
    past.mark = yard.field->mark(t.number, all);
    past_.push_back(std::move(past));
}

void Pass::rectify(HiveTrack& hive) {
    Field& field = field_of(hive);
    const int own = first_super + static_cast<int>(hive.supers.size());
    for (int k = first_super; k < own; ++k) {
        const double cap = hive.supers[static_cast<std::size_t>(k - first_super)].capacity.kg;
        const Gaussian local = field.local(hive.number);
        const Moments held{local.mean(shared_size + k), local.cov(shared_size + k, shared_size + k)};
        const double sd = std::sqrt(std::max(held.var, 1e-12));
        // A fresh, surely empty super is left alone: cutting it again and again would fill it.
        const bool low = held.mean < 0.5 * sd && (sd > 0.03 * cap || held.mean < -0.02 * cap);
        if (!low && normal_cdf((held.mean - cap) / sd) < 0.02) continue;
        const Rectified cut = low ? floored_at(held, 0) : capped_at(held, cap);
        Step step{MatrixXd::Zero(own, shared_size + own), VectorXd::Zero(own), MatrixXd::Zero(own, own)};
        for (int r = 0; r < own; ++r) step.T(r, shared_size + r) = 1;
        step.T(k, shared_size + k) = cut.slope;
        step.c(k) = cut.offset;
        step.Q(k, k) = std::max(cut.rest, 1e-6);
        field.step_hive(hive.number, step);
    }
}

}  // namespace waxtab
