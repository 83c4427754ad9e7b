#include "estimate/hindsight.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <fmt/format.h>

#include "estimate/judged.hpp"
#include "estimate/learn.hpp"
#include "estimate/outlook.hpp"

namespace waxtab {
namespace {

/// Stretches of days [happened, noted) on which a fact had happened but was not yet written down.
std::vector<std::pair<Day, Day>> unwritten(const Journal& journal, Day on) {
    std::vector<std::pair<Day, Day>> out;
    for (const Fact& fact : journal.facts)
        if (fact.noted > fact.happened && fact.happened <= on) out.emplace_back(fact.happened, fact.noted);
    return out;
}

bool within_any(const std::vector<std::pair<Day, Day>>& spans, Day day) {
    return std::any_of(spans.begin(), spans.end(), [&](const auto& s) { return s.first <= day && day < s.second; });
}

std::vector<Judged> pass_over(const Journal& journal, const History& history, const Schedule& schedule, std::vector<VisitTrack>* visits) {
    Pass::Options options;
    options.keep_visits = true;
    Pass pass(journal, history, schedule, options);
    pass.run();
    if (visits != nullptr) *visits = pass.visits();
    return judged_forecasts(pass, journal);
}

/// Sums up forecasts of one horizon.
class Tally {
public:
    explicit Tally(int from, int to) { row_.from_days = from, row_.to_days = to; }

    bool takes(const Judged& j) const {
        return j.side == ShareReading::Side::about && j.horizon() >= row_.from_days && j.horizon() <= row_.to_days;
    }

    /// `stretch` is that of `j`, which takes long to work out.
    void add(const Judged& j, const Stretch& stretch) {
        if (!takes(j)) return;
        const double error = j.expected() - j.read;
        ++row_.forecasts;
        const double inside = stretch.inside(0.8);
        row_.inside_80 += inside, row_.inside_50 += stretch.inside(0.5);
        Made& made = made_[j.made];
        ++made.forecasts, made.inside += inside;
        row_.error_share += std::abs(error);
        row_.error_kg += std::abs(error) * j.capacity_kg;
        row_.bias_share += error;
        row_.no_change_share += std::abs(j.no_change - j.read);
        if (!j.line) return;
        ++row_.with_line;
        row_.line_share += std::abs(*j.line - j.read);
        row_.error_with_line_share += std::abs(error);
    }

    HindsightRow row() const {
        HindsightRow r = row_;
        r.ranges = ranges();
        const auto mean = [](double& sum, int n) { sum = n > 0 ? std::round(1000 * sum / n) / 1000 : 0; };
        for (double* sum : {&r.inside_80, &r.inside_50, &r.error_kg, &r.error_share, &r.bias_share, &r.no_change_share}) mean(*sum, r.forecasts);
        mean(r.line_share, r.with_line);
        mean(r.error_with_line_share, r.with_line);
        return r;
    }

private:
    /// The forecasts of one day, and how many of their readings lay inside the 80 % range.
    struct Made { int forecasts = 0; double inside = 0; };

    RangesHeld ranges() const {
        if (made_.size() < few_days) return RangesHeld::open;
        const double held = row_.inside_80 / row_.forecasts, days = static_cast<double>(made_.size());
        double squares = 0;
        for (const auto& [day, made] : made_) squares += std::pow(made.inside - held * made.forecasts, 2);
        const double error = std::sqrt(squares * days / (days - 1)) / row_.forecasts;
        if (std::abs(held - 0.8) <= std::max(0.05, 2.6 * error)) return RangesHeld::well;
        return held < 0.8 ? RangesHeld::narrow : RangesHeld::wide;
    }

    HindsightRow row_;
    std::map<Day, Made> made_;
};

class Looker {
public:
    Looker(const Journal& journal, const History& history) : journal_(journal), history_(history) {}

    Hindsight look() {
        const Schedule schedule = learn(journal_, history_).schedule;
        const std::vector<Judged> judged = forecasts(schedule);
        rows(judged);
        room();
        empty_supers();
        return std::move(out_);
    }

private:
    /// One pass serves all visits but those on days when something had happened that was not yet written:
    /// those are passed over again from what was written by then.
    std::vector<Judged> forecasts(const Schedule& schedule) {
        std::vector<Judged> all = pass_over(journal_, history_, schedule, &visits_);
        const auto spans = unwritten(journal_, history_.on);
        std::set<Day> again;
        for (const Judged& j : all)
            if (within_any(spans, j.made)) again.insert(j.made);
        for (Day day : again) redo(all, day, schedule);
        return all;
    }

    void redo(std::vector<Judged>& all, Day day, const Schedule& schedule) {
        const History then = replay(journal_, day);
        std::vector<VisitTrack> visits;
        pass_over(journal_, then, schedule, &visits);
        std::map<HiveId, const VisitTrack*> evening;
        for (const VisitTrack& visit : visits)
            if (visit.day == day) evening[visit.hive] = &visit;
        std::erase_if(all, [&](Judged& j) {
            if (j.made != day) return false;
            const auto found = evening.find(j.hive);
            return found == evening.end() || !again(j, *found->second);
        });
    }

    bool again(Judged& j, const VisitTrack& from) const {
        const auto at = std::find(from.after.begin(), from.after.end(), j.box);
        if (at == from.after.end()) return false;
        const std::size_t k = static_cast<std::size_t>(at - from.after.begin());
        const int i = shared_size + first_super + static_cast<int>(k);
        const double cap = from.slots[k].capacity;
        const Gaussian then = ahead(from.parameters, journal_.settings, from.local, from.slots, from.weighed, j.made, j.horizon());
        j.share = {then.mean(i) / cap, then.cov(i, i) / (cap * cap)};
        return true;
    }

    void rows(const std::vector<Judged>& judged) {
        Tally all(1, 60);
        std::vector<Tally> bands{Tally(1, 8), Tally(9, 12), Tally(13, 18), Tally(19, 60)};
        for (const Judged& j : judged) {
            if (!all.takes(j)) continue;
            const Stretch stretch = j.stretch();
            all.add(j, stretch);
            for (Tally& band : bands) band.add(j, stretch);
        }
        out_.all = all.row();
        for (const Tally& band : bands)
            if (band.row().forecasts > 0) out_.rows.push_back(band.row());
        out_.too_little = out_.all.forecasts < few_forecasts;
    }

    static double chance_within(const VisitTrack& visit, const Settings& settings, int days) {
        if (days < 1 || visit.slots.empty()) return 0;
        const Gains gains = gains_ahead(Outlook(visit.parameters, settings, visit.day, days, visit.local.mean(at_flow)), visit.local);
        double room = -gains.honey, chance = 0;
        for (std::size_t i = 0; i < visit.slots.size(); ++i) room += visit.slots[i].capacity * (0.5 + 0.5 * visit.drawn[i]);
        for (std::size_t i = 0; i < gains.mean.size(); ++i)
            chance = std::max(chance, normal_cdf((gains.mean[i] - room) / gains.with_honey_sd[i]));
        return std::round(1000 * chance) / 1000;
    }

    /// Visits at which every super that stood on the hive was called full.
    void room() {
        std::map<HiveId, const VisitTrack*> last;
        const double accepted = journal_.settings.accepted_risk_percent / 100.0;
        for (const VisitTrack& visit : visits_) {
            std::set<BoxId> full;
            FactId because = 0;
            for (const VisitReading& r : visit.readings)
                if (r.reading.says_full) full.insert(r.box), because = r.fact;
            const bool out = !visit.before.empty() && full.size() == visit.before.size();
            const auto before = last.find(visit.hive);
            if (out && before != last.end() && before->second->after == visit.before) {
                HindsightCase c{visit.hive, visit.before.back(), visit.day, because, 0};
                c.chance = chance_within(*before->second, journal_.settings, days_between(before->second->day, visit.day));
                out_.ran_out_foretold += c.chance > accepted ? 1 : 0;
                out_.ran_out.push_back(c);
            }
            last[visit.hive] = &visit;
        }
    }

    void empty_supers() {
        for (const Box& box : history_.boxes) {
            if (box.role != Role::super) continue;
            for (const BoxStay& stay : box.stays)
                if (stay.from && stay.on_fact != set_up_fact) empty_super(box, stay);
        }
    }

    void empty_super(const Box& box, const BoxStay& stay) {
        ++out_.supers_put_on;
        std::int64_t most = 0;
        const BoxSighting* last = nullptr;
        for (const BoxSighting& s : box.sightings) {
            if (s.day <= *stay.from || (stay.to && s.day > *stay.to)) continue;
            if (s.what == BoxSighting::What::full || s.what == BoxSighting::What::capped) most = std::max(most, s.amount), last = &s;
        }
        if (last == nullptr || most >= 50 || (!stay.to && days_between(*stay.from, last->day) < 21)) return;
        out_.stayed_empty.push_back({stay.hive, box.id, stay.to ? *stay.to : last->day, last->fact, chance_when(stay)});
    }

    /// The chance the hive stood at on the day the super was put on, before it was.
    double chance_when(const BoxStay& stay) const {
        const VisitTrack* before = nullptr;
        for (const VisitTrack& visit : visits_)
            if (visit.hive == stay.hive && visit.day < *stay.from) before = &visit;
        return before == nullptr ? 0 : chance_within(*before, journal_.settings, days_between(before->day, *stay.from) + journal_.settings.visit_interval_days);
    }

    const Journal& journal_;
    const History& history_;
    std::vector<VisitTrack> visits_;
    Hindsight out_;
};

}  // namespace

HindsightRow sum_up(const std::vector<Judged>& judged, int from_days, int to_days) {
    Tally tally(from_days, to_days);
    for (const Judged& j : judged)
        if (tally.takes(j)) tally.add(j, j.stretch());
    return tally.row();
}

Hindsight hindsight(const Journal& journal, const History& history) { return Looker(journal, history).look(); }

Hindsight hindsight(const Journal& journal, Day on) { return hindsight(journal, replay(journal, on)); }

}  // namespace waxtab
