// Mite counts: when they are due, what is above the keeper's threshold, and the count after a treatment.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "advice/mites.hpp"
#include "advice/rule.hpp"
#include "handbook/varroa.hpp"

namespace waxtab {

std::optional<MiteRate> mite_rate(const Seen& seen) {
    const Fact& f = *seen.it;
    if (f.kind != Kind::mites || f.detail == "drop") return std::nullopt;
    if (f.value.dimension == Dimension::share)
        return MiteRate{seen.day, static_cast<double>(f.value.amount) / 10.0, seen.fact};
    if (f.count < 0 || f.value.dimension != Dimension::count || f.value.amount <= 0) return std::nullopt;
    return MiteRate{seen.day, *handbook::mites_per_100(f.count, static_cast<double>(f.value.amount) / 1000.0), seen.fact};
}

namespace {

std::optional<MiteRate> last_rate(const HiveView& hive, int days) {
    for (auto s = hive.facts.rbegin(); s != hive.facts.rend(); ++s) {
        if (days_between(s->day, hive.on()) > days) break;
        if (const auto rate = mite_rate(*s)) return rate;
    }
    return std::nullopt;
}

const Treating* last_treating(const HiveView& hive) {
    return hive.history->treatings.empty() ? nullptr : &hive.history->treatings.back();
}

/// A count moves by chance alone: in 8 samples of 10 by less than 1.28 times its root (Poisson).
std::string sample_words(const Fact& f) {
    if (f.count < 0 || f.value.dimension != Dimension::count || f.value.amount <= 0) return "counted";
    const double bees = static_cast<double>(f.value.amount) / 1000.0, chance = 1.28 * std::sqrt(static_cast<double>(f.count));
    const auto rate = [&](double mites) { return decimal(*handbook::mites_per_100(std::max(0.0, mites), bees)); };
    return fmt::format("{} in {:.0f} bees counted (by chance alone {} to {} per 100)", counted(f.count, "mite"), bees, rate(f.count - chance),
                       rate(f.count + chance));
}

Advices above_threshold(const HiveView& hive) {
    const auto rate = last_rate(hive, 30);
    if (!rate) return {};
    const double threshold = hive.settings().mite_threshold_permille / 10.0;
    const Treating* t = last_treating(hive);
    if (rate->per_100 < threshold || (t && t->from >= rate->day)) return {};
    Advice a = advise_to(Act::treat, Rank::rest, "treat against mites, or call in advice");
    a.by = hive.next_visit();
    how_sure(a, Sureness::likely, fmt::format("{} mites per 100 bees, {} threshold {}", decimal(rate->per_100),
                                              hive.settings().mite_threshold_said ? "your" : "the usual", decimal(threshold)));
    a.reasons.push_back(fmt::format("{} on {}, nothing noted against them since", sample_words(hive.journal().facts[rate->fact]), iso(rate->day)));
    if (hive.all->late()) a.reasons.push_back("before the winter bees are raised many act on less (from memory)");
    if (!hive.supers.empty())
        a.reasons.push_back(fmt::format("{} on: which substances allow that, if any, stands on the label",
                                        counted(static_cast<int>(hive.supers.size()), "super")));
    because(a, rate->fact);
    return {a};
}

/// Days after a treatment's end at which a count tells whether it worked; common practice, no source.
constexpr int recount_from = 7, recount_to = 21, recount_drop = 30;

bool wants_recount(const HiveView& hive) {
    const Treating* t = last_treating(hive);
    if (!t || !t->to || hive.brood_boxes == 0) return false;
    const int since = days_between(*t->to, hive.on());
    return since >= recount_from && since <= recount_drop && !hive.last(since - 1, Kind::mites);
}

Advices recount(const YardView& yard) {
    const Context& c = *yard.all;
    if (c.days_after_season() > 75) return {};
    Advice a = advise_to(Act::count_mites, Rank::rest, "count mites again: did the treatment work?");
    const Treating* last = nullptr;
    for (const HiveView* h : yard.hives) {
        if (!wants_recount(*h)) continue;
        a.hives.push_back(h->id);
        const Treating* t = last_treating(*h);
        because(a, t->fact);
        if (!last || *t->to > *last->to) last = t;
    }
    if (!last) return {};
    a.by = std::max(c.on, *last->to + date::days{recount_to});
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back(fmt::format("{} ended {}, no count noted since at {}", last->substance.empty() ? "the treatment" : last->substance,
                                    ago(*last->to, c.on), hive_names(yard, a.hives)));
    return {a};
}

/// In the months before and while the winter bees are raised, July to September in the north, every 30 days; else every
/// 60 in the honey season.
int count_gap(const Context& c) {
    const bool winter_bees = c.northern_month() >= 7 && c.northern_month() <= 9;
    if (c.phase() == Phase::during) return winter_bees ? 30 : 60;
    return c.phase() == Phase::after && winter_bees ? 30 : 0;
}

/// The hive's first note; the day itself when there is none.
Day notes_begin(const HiveView& hive) { return hive.facts.empty() ? hive.on() : hive.facts.front().day; }

/// Without a count in so many days, or none since the notes begin, where those are younger.
std::string no_count_words(const YardView& yard, const std::vector<HiveId>& hives, int gap) {
    Day first = yard.all->on;
    for (const HiveView* h : yard.hives)
        if (std::find(hives.begin(), hives.end(), h->id) != hives.end()) first = std::min(first, notes_begin(*h));
    if (days_between(first, yard.all->on) >= gap) return fmt::format("no count in {} at {}", counted(gap, "day"), hive_names(yard, hives));
    return fmt::format("no count at {} since the notes begin on {}", hive_names(yard, hives), iso(first));
}

/// Notes of fewer days than this do not tell that no count was made before, unless the winter bees are next.
constexpr int notes_too_young = 30;

Advices count_due(const YardView& yard) {
    const Context& c = *yard.all;
    const int gap = count_gap(c);
    if (gap == 0 || !yard.last_visit || days_between(*yard.last_visit, c.on) > 60) return {};
    Advice a = advise_to(Act::count_mites, Rank::rest, "count mites");
    for (const HiveView* h : yard.hives) {
        const Treating* t = last_treating(*h);
        const bool treated = t && (!t->to || days_between(*t->to, c.on) < 30);
        const bool young = gap > notes_too_young && days_between(notes_begin(*h), c.on) < notes_too_young;
        if (!treated && !young && !h->last(gap, Kind::mites)) a.hives.push_back(h->id);
    }
    if (a.hives.empty()) return {};
    a.by = yard.hives.front()->next_visit();
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back(no_count_words(yard, a.hives, gap));
    if (gap == 30) a.reasons.push_back("the winter bees are raised next");
    return {a};
}

}  // namespace

std::vector<Rule> mite_rules() {
    return {
        {{"mites-above-threshold", "A count above the threshold you set asks for a treatment; which one, label and law say.",
          "3 per 100 bees in use at USDA-ARS and by clubs; the setting is yours", "Mites"},
         &above_threshold},
        {{"mites-recount", "After a treatment the mites are counted again.", "common practice, no source", "Mites"},
         &recount},
        {{"mites-count-due", "Mites are counted through the season, more often before the winter bees are raised.",
          "common practice, no source; a threshold by season: Mississippi State University Extension", "Mites"},
         &count_due},
    };
}

}  // namespace waxtab
