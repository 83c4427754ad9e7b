#include "estimate/estimate.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <fmt/format.h>

#include "estimate/arithmetic.hpp"
#include "estimate/learn.hpp"
#include "estimate/outlook.hpp"
#include "estimate/pass.hpp"
#include "estimate/ranges.hpp"

namespace waxtab {
namespace {

constexpr double never = std::numeric_limits<double>::infinity();

std::vector<FactId> latest(std::vector<FactId> facts, std::size_t count) {
    std::sort(facts.begin(), facts.end());
    facts.erase(std::unique(facts.begin(), facts.end()), facts.end());
    if (facts.size() > count) facts.erase(facts.begin(), facts.end() - static_cast<std::ptrdiff_t>(count));
    return facts;
}

/// Reads the end of a pass out as estimates.
class ReadOut {
public:
    ReadOut(const Journal& journal, const History& history, const Pass& pass)
        : journal_(journal), history_(history), pass_(pass) {}

    Estimates all() {
        out_.on = history_.on;
        for (const HiveHistory& hive : history_.hives)
            if (hive.alive) one_hive(hive);
        takings();
        yards();
        out_.keeper = pass_.keeper().calibration();
        out_.keeper.because = latest(pass_.weighed_by(), pass_.weighed_by().size());
        out_.capping_lag_days = to_thousandth(pass_.lag().mean());
        return std::move(out_);
    }

private:
    void one_hive(const HiveHistory& history) {
        const HiveTrack& hive = pass_.hive(history.hive);
        if (hive.number < 0) return unknown_hive(history);
        const Gaussian local = pass_.yard(hive.yard)->field->local(hive.number);
        const Gains gains = gains_ahead(outlook(hive.yard), local);
        HiveEstimate e = rates(history.hive, hive, local, gains);
        out_.hives.push_back(e);
        int place = 0;
        for (BoxId box : history_.supers_on(history.hive)) {
            const auto found = std::find_if(hive.supers.begin(), hive.supers.end(), [&](const SuperTrack& s) { return s.box == box; });
            ++place;
            if (found != hive.supers.end()) one_super(history.hive, hive, static_cast<std::size_t>(found - hive.supers.begin()), place, local, gains);
        }
    }

    /// A hive no fact speaks of yet: the usual for the time of year.
    void unknown_hive(const HiveHistory& history) {
        const Parameters& p = pass_.parameters(history_.on);
        const double sd = std::sqrt(sq(flow_sd(p, journal_.settings, history_.on)) + sq(p.hive_sd) + sq(p.level_sd));
        HiveEstimate e;
        e.hive = history.hive;
        e.kg_per_day = rounded(rate_range({normal_flow(p, journal_.settings, history_.on), sq(sd)}, 1));
        e.days_of_room = {never, never, never};
        out_.hives.push_back(e);
    }

    const Outlook& outlook(YardId yard) {
        const auto found = outlooks_.find(yard);
        if (found != outlooks_.end()) return found->second;
        return outlooks_.emplace(yard, Outlook(pass_.parameters(history_.on), journal_.settings, history_.on, forecast_days,
                                               pass_.yard(yard)->field->shared().mean(at_flow))).first->second;
    }

    /// Kilograms that find room by the keeper's full. Comb still to be drawn counts half: bees must build it first.
    static double usable(const SuperTrack& s) { return s.capacity.kg * (s.drawn + 0.5 * (1 - s.drawn)); }

    HiveEstimate rates(HiveId id, const HiveTrack& hive, const Gaussian& local, const Gains& gains) {
        HiveEstimate e;
        e.hive = id;
        const double f = pass_.keeper().full();
        const int a = shared_size + at_strength;
        const double rate = local.mean(at_flow) + local.mean(a);
        const double var = local.cov(at_flow, at_flow) + local.cov(a, a) + 2 * local.cov(at_flow, a);
        e.kg_per_day = rounded(rate_range({rate, std::max(var, 0.0)}, f));
        double room = 0;
        e.no_room = !hive.supers.empty();
        for (const SuperTrack& s : hive.supers) {
            room += usable(s);
            e.no_room = e.no_room && s.said_full;
        }
        const Range left = cut_range({room - gains.honey, sq(gains.honey_sd)}, 0, std::max(room, 0.0));
        e.room_kg = rounded(scaled(left, f));
        e.room_mean = to_thousandth(f * std::max(0.0, room - gains.honey));
        e.room_sd = to_thousandth(f * gains.honey_sd);
        for (std::size_t i = 0; i < gains.mean.size(); ++i) {
            e.gain_mean.push_back(to_thousandth(f * gains.mean[i]));
            e.gain_sd.push_back(to_thousandth(f * gains.sd[i]));
            e.shortfall_sd.push_back(std::max(0.001, to_thousandth(f * gains.with_honey_sd[i])));
        }
        if (hive.supers.empty()) e.room_kg = {}, e.room_mean = e.room_sd = 0, e.shortfall_sd.clear();
        e.days_of_room = days_of_room(e);
        e.from_own_visits = hive.gain_seen && days_between(*hive.gain_seen, history_.on) <= 30;
        because_of(e, hive);
        return e;
    }

    static Range days_of_room(const HiveEstimate& e) {
        const auto reached = [&](double chance) {
            double before = 0;
            for (int days = 0; days <= forecast_days; ++days) {
                const double now = e.chance_full_within(days);
                if (now >= chance) return days == 0 ? 0.0 : days - (now - chance) / std::max(now - before, 1e-9);
                before = now;
            }
            return never;
        };
        return rounded({reached(0.1), reached(0.5), reached(0.9)});
    }

    void because_of(HiveEstimate& e, const HiveTrack& hive) {
        std::vector<FactId> facts = latest(hive.because, 4);
        for (const SuperTrack& s : hive.supers) {
            const auto seen = latest(s.because, 3);
            facts.insert(facts.end(), seen.begin(), seen.end());
        }
        const auto flow = latest(pass_.yard(hive.yard)->because, 2);
        facts.insert(facts.end(), flow.begin(), flow.end());
        e.because = latest(std::move(facts), 12);
    }

    void one_super(HiveId id, const HiveTrack& hive, std::size_t k, int place, const Gaussian& local, const Gains& gains) {
        const SuperTrack& s = hive.supers[k];
        const int at = shared_size + first_super + static_cast<int>(k);
        const Moments held{local.mean(at), local.cov(at, at)};
        const double cap = s.capacity.kg;
        SuperEstimate e;
        e.box = s.box;
        e.hive = id;
        e.place = place;
        e.full = rounded(scaled(cut_range(held, 0, cap), 1 / cap));
        const Moments capped = s.capping.share(pass_.lag());
        e.capped = rounded(cut_range(capped, 0, 1));
        e.capped.value = std::min(e.capped.value, e.full.value);
        e.capped.high = std::min(e.capped.high, std::max(e.full.high, e.capped.value));
        e.capped.low = std::min(e.capped.low, e.capped.value);
        const double undrawn = s.drawn >= 1 ? 0 : 0.08;
        e.drawn = rounded(cut_range({s.drawn, sq(undrawn)}, 0, 1));
        e.kg = rounded(kilograms(held, cap, pass_.keeper()));
        e.capacity_kg = rounded(full_kilograms(cap, pass_.keeper()));
        e.fell_from = s.fell_from;
        e.last_seen = s.last_seen;
        e.because = latest(s.because, 6);
        ripe(e, hive, k, local, gains, capped);
        out_.supers.push_back(std::move(e));
    }

    /// First day on which enough of what is filled is capped, with capping `lag` days behind storing.
    std::optional<Day> ripe_day(double filled, double capped, double lag, const std::vector<double>& gain, double part) const {
        const double wanted = journal_.settings.ripe_at_capped_percent / 100.0;
        double before = 0;
        for (std::size_t day = 0; day <= gain.size(); ++day) {
            // A super not yet three parts full is not called ripe for a few capped combs.
            if (filled >= 0.15 && capped >= wanted * std::max(filled, std::min(0.6, filled + 0.3))) return history_.on + date::days{static_cast<int>(day)};
            if (day == gain.size()) break;
            filled = std::clamp(filled + part * (gain[day] - before), 0.0, 1.0);
            before = gain[day];
            capped += (filled - capped) / lag;
        }
        return std::nullopt;
    }

    void ripe(SuperEstimate& e, const HiveTrack& hive, std::size_t k, const Gaussian& local, const Gains& gains, Moments capped) {
        std::vector<double> held(hive.supers.size());
        for (std::size_t i = 0; i < held.size(); ++i) held[i] = local.mean(shared_size + first_super + static_cast<int>(i));
        const double part = shares_of_gain(std::max(gains.mean[9], 0.0), hive.slots(), held)[k] / hive.supers[k].capacity.kg;
        const double lag = pass_.lag().mean(), sd = std::sqrt(capped.var);
        const auto capped_by = [&](double z) { return std::clamp(capped.mean + z * sd, 0.0, 1.0); };
        e.ripe_likely = ripe_day(e.full.value, capped_by(0), lag, gains.mean, part);
        e.ripe_early = ripe_day(e.full.value, capped_by(z80), 0.75 * lag, gains.mean, part);
        e.ripe_late = ripe_day(e.full.value, capped_by(-z80), 1.35 * lag, gains.mean, part);
        if (e.ripe_likely && (!e.ripe_early || *e.ripe_early > *e.ripe_likely)) e.ripe_early = e.ripe_likely;
        if (e.ripe_likely && e.ripe_late && *e.ripe_late < *e.ripe_likely) e.ripe_late = e.ripe_likely;
    }

    void takings() {
        std::map<YardId, std::vector<Moments>> smoothed;
        for (const auto& [index, taken] : pass_.taken())
            if (taken.mark >= 0 && !smoothed.contains(taken.yard)) smoothed[taken.yard] = pass_.yard(taken.yard)->field->smoothed();
        for (std::size_t i = 0; i < history_.takings.size(); ++i) {
            TakingEstimate e;
            e.taking = i;
            const auto found = pass_.taken().find(i);
            if (found != pass_.taken().end()) {
                const TakenTrack& taken = found->second;
                const Moments held = taken.mark >= 0 ? smoothed[taken.yard][static_cast<std::size_t>(taken.mark)] : taken.held;
                e.kg = kilograms(held, taken.capacity, pass_.keeper());
                e.kg_then = kilograms(taken.held_then, taken.capacity, taken.keeper_then.value_or(pass_.keeper()));
                e.because = latest(taken.because, 6);
            }
            const Taking& taking = history_.takings[i];
            e.because.insert(e.because.end(), taking.weighings.begin(), taking.weighings.end());
            e.because = latest(std::move(e.because), 8);
            e.kg = rounded(by_scale(e.kg, taking));
            e.kg_then = rounded(by_scale(e.kg_then, as_it_came_off(taking)));
            out_.takings.push_back(std::move(e));
        }
    }

    /// The taking with only those weights that were noted by the day it was noted.
    Taking as_it_came_off(Taking taking) const {
        if (taking.fact == set_up_fact) return taking;
        const Day noted = journal_.facts[taking.fact].noted;
        for (FactId fact : taking.weighings) {
            if (fact == set_up_fact || journal_.facts[fact].noted <= noted) continue;
            taking.net.reset();
            const Measure& weight = journal_.facts[fact].value;
            if (taking.gross && weight.amount == taking.gross->ng) taking.gross.reset();
        }
        return taking;
    }

    /// A weight outranks the eye; without a tare the two are weighed against each other.
    Range by_scale(Range eye, const Taking& taking) const {
        if (taking.net) return {taking.net->kilograms(), taking.net->kilograms(), taking.net->kilograms()};
        if (!taking.gross || taking.box == no_box) return eye;
        const Capacity box = capacity_of(journal_, history_.boxes[static_cast<std::size_t>(taking.box)]);
        const double scale = taking.gross->kilograms() - box.tare_kg, scale_var = sq(0.1) + sq(box.tare_sd);
        const double eye_var = sq(std::max((eye.high - eye.low) / (2 * z80), 0.1));
        const double weight = eye.high > 0 ? eye_var / (eye_var + scale_var) : 1;
        const double kg = eye.value + weight * (scale - eye.value), sd = std::sqrt(weight * scale_var);
        return {std::max(0.0, kg - z80 * sd), std::max(0.0, kg), std::max(0.0, kg + z80 * sd)};
    }

    void yards() {
        for (std::size_t y = 0; y < journal_.yards.size(); ++y) {
            const YardTrack* yard = pass_.yard(static_cast<YardId>(y));
            if (yard == nullptr || yard->hives.empty()) continue;
            const Gaussian g = yard->field->shared();
            const Parameters& p = pass_.parameters(history_.on);
            const double f = pass_.keeper().full(), usual = normal_flow(p, journal_.settings, history_.on) + g.mean(at_level);
            YardEstimate e;
            e.yard = static_cast<YardId>(y);
            e.kg_per_day = rounded(rate_range({g.mean(at_flow), g.cov(at_flow, at_flow)}, f));
            e.usual_kg_per_day = rounded(rate_range({usual, g.cov(at_level, at_level)}, f));
            e.because = latest(yard->because, 6);
            out_.yards.push_back(std::move(e));
        }
    }

    const Journal& journal_;
    const History& history_;
    const Pass& pass_;
    std::map<YardId, Outlook> outlooks_;
    Estimates out_;
};

}  // namespace

double HiveEstimate::chance_full_within(int days) const { return chance_full_within(days, 0); }

double HiveEstimate::chance_full_within(int days, double added_room_kg) const {
    if (shortfall_sd.empty() || gain_mean.empty()) return 0;
    const double room = room_mean + added_room_kg;
    double chance = no_room && added_room_kg <= 0 ? 1 : normal_cdf(-room / std::max(room_sd, 0.01));
    const std::size_t until = std::min(static_cast<std::size_t>(std::max(days, 0)), gain_mean.size());
    for (std::size_t i = 0; i < until; ++i)
        chance = std::max(chance, normal_cdf((gain_mean[i] - room) / shortfall_sd[i]));
    return to_thousandth(chance);
}

const SuperEstimate* Estimates::super(BoxId box) const {
    const auto found = std::find_if(supers.begin(), supers.end(), [&](const SuperEstimate& s) { return s.box == box; });
    return found == supers.end() ? nullptr : &*found;
}

const HiveEstimate* Estimates::hive(HiveId id) const {
    const auto found = std::find_if(hives.begin(), hives.end(), [&](const HiveEstimate& h) { return h.hive == id; });
    return found == hives.end() ? nullptr : &*found;
}

Estimates estimate(const Journal& journal, const History& history) {
    const Learned learned = learn(journal, history);
    Pass pass(journal, history, learned.schedule);
    pass.run();
    Estimates out = ReadOut(journal, history, pass).all();
    out.settings = learned.words;
    return out;
}

}  // namespace waxtab
