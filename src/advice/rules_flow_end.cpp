// The end of a flow, a gap between flows, and the end of the season.
#include <algorithm>

#include <fmt/format.h>

#include "advice/chance.hpp"
#include "advice/harvest.hpp"
#include "advice/supers.hpp"
#include "handbook/flow.hpp"

namespace waxtab {
namespace {

bool flow_ended(const Flow& f) { return f.state == Flow::State::over || f.state == Flow::State::none; }

bool untouched(const SuperView& s) {
    return s.estimate && s.estimate->last_seen && s.full() < 0.1 && s.estimate->full.high < 0.3;
}

std::string stores_first(const HiveView& hive, Advice& a) {
    const auto stores = hive.last(14, Kind::stores);
    if (!stores) return "look at the stores in the brood box before anything comes off";
    because(a, stores->fact);
    return fmt::format("stores in the brood box noted as {} on {}", stores->it->detail.empty() ? "seen" : stores->it->detail,
                       iso(stores->day));
}

/// What is left has to take in what still comes: how likely it does.
void how_sure_without(Advice& a, const HiveView& hive, const std::vector<const SuperView*>& taken) {
    if (hive.all->phase() != Phase::during) return how_sure(a, Sureness::likely, "your season is over");
    if (!room_known(hive)) return how_sure(a, Sureness::likely, "nothing tells how full the others are, so no chance is given");
    double room_kg = 0;
    for (const SuperView* s : taken) room_kg += s->estimate->capacity_kg.value - s->estimate->kg.value;
    const Horizon until = season_horizon(*hive.all);
    const double lasts = 1 - hive.estimate->chance_full_within(until.days, -room_kg);
    how_sure(a, sure_of(lasts), fmt::format("{} that the room left without {} lasts until {}", odds(lasts), taken.size() == 1 ? "it" : "them",
                                       until.words));
    keep_chance(a, "room lasts without them", lasts, until.day, hive.id);
    a.reasons.push_back(room_words(hive) + ", all supers counted");
}

Advices consolidate(const HiveView& hive) {
    if (!hive.all->late() || hive.supers.empty() || hive.all->days_after_season() > 30) return {};
    const bool ending = hive.flow().fading() || hive.all->phase() == Phase::after;
    std::vector<const SuperView*> empty;
    for (const SuperView& s : hive.supers)
        if (untouched(s)) empty.push_back(&s);
    if (!ending || empty.empty()) return {};
    // Nectar already in the others still wants some room to ripen in.
    const bool keep_one = empty.size() == hive.supers.size() && hive.all->phase() == Phase::during;
    if (keep_one) empty.erase(empty.begin());
    if (empty.empty()) return {};
    Advice a = advise_to(Act::take_empty, Rank::rest, fmt::format("take {} off, leave room for nectar to ripen",
                                                                  empty.size() == 1 ? super_name(hive, *empty.front()) + ", untouched,"
                                                                                    : fmt::format("{} untouched supers", empty.size())));
    a.by = hive.next_visit();
    how_sure_without(a, hive, empty);
    a.reasons.push_back("the flow ends and a shrinking colony cannot patrol empty comb against moth and beetle");
    a.reasons.push_back(stores_first(hive, a));
    for (const SuperView* s : empty) {
        a.boxes.push_back(s->box->id);
        because(a, s->estimate->because);
    }
    if (hive.flow().fact) because(a, *hive.flow().fact);
    return {a};
}

bool half_done(const SuperView& s) { return s.full() >= 0.1 && s.full() < 0.7 && s.capped() < 0.67; }

Advices sort_unfinished(const YardView& yard) {
    const Context& c = *yard.all;
    if (!c.late() || c.phase() != Phase::during || !yard.flow.fading()) return {};
    Advice a = advise_to(Act::take_empty, Rank::rest, "give unfinished supers to the hives most likely to finish them");
    for (const HiveView* h : yard.hives)
        if (std::any_of(h->supers.begin(), h->supers.end(), half_done)) a.hives.push_back(h->id);
    if (a.hives.size() < 2) return {};
    how_sure(a, Sureness::possible, "");
    a.reasons.push_back(fmt::format("half-done supers at {} with the flow ending; healthy hives only", hive_names(yard, a.hives)));
    because(a, *yard.flow.fact);
    return {a};
}

Advices gap_not_end(const YardView& yard) {
    const Context& c = *yard.all;
    if (!in_gap(yard)) return {};
    const bool supers = std::any_of(yard.hives.begin(), yard.hives.end(), [](const HiveView* h) { return !h->supers.empty(); });
    if (!supers) return {};
    Advice a = advise_to(Act::note, Rank::rest, "leave the supers on, look at the stores in the brood boxes: a gap, not the season's end");
    a.by = yard.hives.front()->next_visit();
    how_sure(a, Sureness::possible, fmt::format("{} of your honey season are left", counted(c.season_days_left(), "day")));
    a.reasons.push_back(fmt::format("flow noted as {} on {}", yard.flow.state == Flow::State::over ? "over" : "none", iso(yard.flow.day)));
    if (!c.settings().season_said)
        a.reasons.push_back("your season's dates are not set, the usual ones are taken: write `season 1 April to 31 August` with yours");
    a.reasons.push_back(fmt::format("full supers do not prove that the brood nest holds stores; without a flow a hive uses {}",
                                    kg_words({0.1, 0.2, 0.3}, c.settings().mass, " a day")));
    say_room_lasts(a, yard, {});
    because(a, *yard.flow.fact);
    return {a};
}

std::optional<Day> flow_over_on(const HiveView& hive) {
    if (flow_ended(hive.flow())) return hive.flow().day;
    return std::nullopt;
}

Advices season_over(const HiveView& hive) {
    if (hive.all->phase() != Phase::after || hive.supers.empty() || hive.all->days_after_season() > 45) return {};
    // Untouched ones and those that are ripe have advice of their own.
    const auto settled = [&](const SuperView& s) { return untouched(s) || ripeness(hive, s).verdict == Ripeness::Verdict::ripe; };
    if (std::all_of(hive.supers.begin(), hive.supers.end(), settled)) return {};
    Advice a = advise_to(Act::take_empty, Rank::rest, "decide about the supers still on: off for honey now, or left as winter stores");
    a.by = hive.next_visit();
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back(fmt::format("your honey season ended {} ago; robbing makes it harder by the week",
                                    counted(hive.all->days_after_season(), "day")));
    if (const auto over = flow_over_on(hive))
        a.reasons.push_back(fmt::format("flow over on {}: honey is finished 3-7 days later", iso(*over)));
    for (const SuperView& s : hive.supers) a.boxes.push_back(s.box->id), because(a, s.on_fact);
    return {a};
}

}  // namespace

std::vector<Rule> flow_end_rules() {
    return {
        {{"take-untouched", "At the end of the flow untouched supers come off, some room to ripen nectar stays, and the brood box's "
                            "stores are looked at first.",
          "G. S. Demuth, USDA Farmers' Bulletin 503 (1912); Mississippi State University Extension P3382; stores: "
          "basicbeekeeping, lesson 119", "End of the flow"},
         &consolidate},
        {{"sort-unfinished", "Unfinished supers go to the colonies most likely to finish them.",
          "G. S. Demuth, USDA Farmers' Bulletin 503 (1912)", "End of the flow"},
         &sort_unfinished},
        {{"gap-not-end", "A gap between flows is not the season's end: supers stay on, the brood box's stores are looked at.",
          "season dates are yours; basicbeekeeping, lesson 119; use: HOneyBee Online Studies and Flakkebjerg scale hives",
          "End of the flow"},
         &gap_not_end},
        {{"season-over", "Supers still on after the season: off promptly, or left as stores on purpose.",
          "G. S. Demuth, USDA Farmers' Bulletin 503 (1912); 3-7 days: Die Honigmacher", "End of the flow"},
         &season_over},
    };
}

}  // namespace waxtab
