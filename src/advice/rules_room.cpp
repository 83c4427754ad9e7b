// When no more supers go on, and where those that are on will do: with the chance of it, hive by hive.
#include <algorithm>

#include <fmt/format.h>

#include "advice/chance.hpp"
#include "advice/disease.hpp"
#include "advice/supers.hpp"

namespace waxtab {
namespace {

/// A hive and a chance worked out for it.
struct Judged { const HiveView* hive; double chance; };

/// So many hives are spoken of one by one; of the others the least chance is said.
constexpr std::size_t most_hives = 6;

void least_first(std::vector<Judged>& hives) {
    std::stable_sort(hives.begin(), hives.end(), [](const Judged& a, const Judged& b) { return a.chance < b.chance; });
}

/// `9 in 10`, or for several hives `8 in 10 or more at each`.
std::string odds_of(const std::vector<Judged>& least_first_of) {
    const std::string least = odds(least_first_of.front().chance);
    return least == odds(least_first_of.back().chance) ? least : least + " or more at each";
}

/// The last of the lines an estimate rests on.
void newest_because(Advice& a, const HiveView& hive) {
    const auto& facts = hive.estimate->because;
    if (!facts.empty()) because(a, *std::max_element(facts.begin(), facts.end()));
}

std::vector<HiveId> ids_of(const std::vector<Judged>& hives, const YardView& yard) {
    std::vector<HiveId> ids;
    for (const HiveView* h : yard.hives)
        if (std::any_of(hives.begin(), hives.end(), [&](const Judged& j) { return j.hive == h; })) ids.push_back(h->id);
    return ids;
}

std::string names_of(const YardView& yard, const std::vector<const HiveView*>& hives) {
    std::vector<HiveId> ids;
    for (const HiveView* h : hives) ids.push_back(h->id);
    return hive_names(yard, ids);
}

/// The hives of a piece of advice for its one line: their number where their names would fill it, and then they are
/// named among the reasons.
std::string hives_in_line(Advice& a, const YardView& yard) {
    constexpr std::size_t widest = 80;
    std::string names = hive_names(yard, a.hives);
    if (names.size() <= widest) return names;
    a.reasons.push_back("the hives: " + names);
    return counted(static_cast<int>(a.hives.size()), "hive");
}

/// Says where no chance can be given, and why.
void without_chance(Advice& a, const YardView& yard, const std::vector<const HiveView*>& hives) {
    if (hives.empty()) return;
    a.reasons.push_back(fmt::format("nothing tells how full the supers at {} are: no chance is given", names_of(yard, hives)));
}

// ---- no more ------------------------------------------------------------------------------

std::string why_no_more(const HiveView& hive) {
    const Flow& flow = hive.flow();
    if (flow.fading()) return "the flow is noted as " + std::string(flow.state == Flow::State::ending ? "ending"
                                                  : flow.state == Flow::State::over ? "over" : "none") + " on " + iso(flow.day);
    return fmt::format("{} of your honey season are left and no good flow is noted",
                       counted(hive.all->season_days_left(), "day"));
}

/// By room alone one would go on, but the flow refuses it.
bool held_back(const HiveView& hive) {
    if (hive.supers.empty() || !flow_refuses_super(hive) || strips_in(hive)) return false;
    const double risk = hive.settings().accepted_risk_percent / 100.0;
    const double mark = hive.settings().super_at_full_percent / 100.0;
    const bool asked = hive.chance_full(hive.days_to_next_visit()) > risk || hive.emptiest_full() >= mark;
    return asked && (!crowded(hive) || season_closed(hive));
}

/// The chance that a super put on now would not be filled by then.
double not_filled(const HiveView& hive, const Horizon& until) {
    return 1 - hive.estimate->chance_full_within(until.days, one_more_kg(hive));
}

void say_no_more(Advice& a, const std::vector<Judged>& hives, const Horizon& until) {
    how_sure(a, sure_of(hives.front().chance), fmt::format("{} that a super put on now would not be filled by {}", odds_of(hives), until.words));
    for (std::size_t i = 0; i < hives.size(); ++i) {
        const HiveView& h = *hives[i].hive;
        const double lasts = 1 - h.chance_full(until.days);
        keep_chance(a, "a super put on now is not filled", hives[i].chance, until.day, h.id);
        keep_chance(a, "room lasts", lasts, until.day, h.id);
        newest_because(a, h);
        if (i == most_hives) a.reasons.push_back(fmt::format("at others {} or more that it would not be filled", odds(hives[i].chance)));
        if (i >= most_hives) continue;
        a.reasons.push_back(fmt::format("{}: {} that it would not be filled, {} that the room there lasts as long; {}", h.journal().hive_name(h.id),
                                        odds(hives[i].chance), odds(lasts), room_words(h)));
    }
}

Advices no_more(const YardView& yard) {
    const Context& c = *yard.all;
    if (c.phase() != Phase::during) return {};
    const Horizon until = season_horizon(c);
    Advice a = advise_to(Act::no_super, Rank::room, "put no more supers on");
    std::vector<Judged> judged;
    std::vector<const HiveView*> unknown;
    for (const HiveView* h : yard.hives) {
        if (!held_back(*h)) continue;
        a.hives.push_back(h->id);
        if (room_known(*h)) judged.push_back({h, not_filled(*h, until)});
        else unknown.push_back(h);
    }
    if (a.hives.empty()) return {};
    a.what += fmt::format(" at {}", hives_in_line(a, yard));
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back(why_no_more(*yard.hives.front()));
    least_first(judged);
    if (!judged.empty()) say_no_more(a, judged, until);
    without_chance(a, yard, unknown);
    a.reasons.push_back("in a weak flow colonies with more empty comb stored less, not more");
    if (yard.flow.fact) because(a, *yard.flow.fact);
    return {a};
}

// ---- room lasts ---------------------------------------------------------------------------

/// Its supers stay as they are: nothing asks for one more, for fewer or for the honey.
bool left_as_it_is(const HiveView& hive) {
    return !hive.supers.empty() && !hive.escape && !strips_in(hive) && !ripe_on(hive) && !held_back(hive) && !super_asked(hive);
}

/// Other advice asks for its supers, or for something before which they come off.
bool told_otherwise(const HiveView& hive, const Advices& others) {
    static constexpr Act acts[] = {Act::add_super, Act::take_honey, Act::take_empty, Act::clear, Act::supers_off, Act::feed, Act::treat};
    return std::any_of(others.begin(), others.end(),
                       [&](const Advice& o) { return o.hive == hive.id && std::find(std::begin(acts), std::end(acts), o.act) != std::end(acts); });
}

/// So far room is as good as sure: such hives are named together, with the least sure of them.
bool as_good_as_sure(const Judged& j) { return odds(j.chance) == odds(1); }

std::string sure_words(const YardView& yard, const std::vector<Judged>& sure) {
    const HiveView& least = *sure.front().hive;
    return fmt::format("{}: {} that room lasts; at {}, the least sure, {}", hive_names(yard, ids_of(sure, yard)), odds(1),
                       yard.all->journal.hive_name(least.id), room_words(least));
}

/// Least chance first; all that are as good as sure in one.
void say_lasts(Advice& a, const YardView& yard, const std::vector<Judged>& hives, Day until) {
    std::vector<Judged> sure;
    for (std::size_t i = 0; i < hives.size(); ++i) {
        const HiveView& h = *hives[i].hive;
        keep_chance(a, "room lasts", hives[i].chance, until, h.id);
        if (i < most_hives) newest_because(a, h);
        if (as_good_as_sure(hives[i])) sure.push_back(hives[i]);
        else if (i < most_hives)
            a.reasons.push_back(fmt::format("{}: {} that room lasts; {}", h.journal().hive_name(h.id), odds(hives[i].chance), room_words(h)));
        else if (i == most_hives) a.reasons.push_back(fmt::format("at others {} or more", odds(hives[i].chance)));
    }
    if (sure.size() == 1) a.reasons.push_back(fmt::format("{}: {} that room lasts; {}", yard.all->journal.hive_name(sure.front().hive->id), odds(1),
                                                          room_words(*sure.front().hive)));
    if (sure.size() > 1) a.reasons.push_back(sure_words(yard, sure));
}

}  // namespace

std::optional<Lasting> say_room_lasts(Advice& a, const YardView& yard, const Advices& others) {
    std::vector<Judged> judged;
    std::vector<const HiveView*> unknown;
    for (const HiveView* h : yard.hives) {
        if (!left_as_it_is(*h) || told_otherwise(*h, others)) continue;
        if (room_known(*h)) judged.push_back({h, 1 - h->chance_full(h->days_to_next_visit())});
        else unknown.push_back(h);
    }
    without_chance(a, yard, unknown);
    if (judged.empty()) return std::nullopt;
    least_first(judged);
    const Day until = yard.all->on + date::days{yard.hives.front()->days_to_next_visit()};
    say_lasts(a, yard, judged, until);
    return Lasting{ids_of(judged, yard), judged.front().chance, fmt::format("{} that room lasts until {}", odds_of(judged), iso(until))};
}

bool in_gap(const YardView& yard) {
    const bool none = yard.flow.state == Flow::State::over || yard.flow.state == Flow::State::none;
    return none && yard.all->phase() == Phase::during && !yard.all->late();
}

namespace {

/// Where nothing tells how full any of them are; not before anyone was there.
Advices look_first(Advice a, const YardView& yard) {
    if (a.reasons.empty() || !yard.last_visit) return {};
    a.what = "look into the supers of which nothing was noted";
    a.by = yard.hives.front()->next_visit();
    how_sure(a, Sureness::possible, "");
    return {a};
}

Advices room_lasts_at(const YardView& yard, const Advices& others) {
    // In a gap the same is said of the gap.
    if (yard.all->phase() != Phase::during || in_gap(yard) || suspected_disease(yard)) return {};
    Advice a = advise_to(Act::note, Rank::rest, "");
    a.yard = yard.id;
    const auto lasting = say_room_lasts(a, yard, others);
    if (!lasting) return look_first(a, yard);
    if (lasting->hives.size() == 1) {
        // What is said below of one hive needs no name and no odds there.
        const auto hive = std::find_if(yard.hives.begin(), yard.hives.end(), [&](const HiveView* h) { return h->id == lasting->hives.front(); });
        a.hive = (*hive)->id;
        a.what = (*hive)->supers.size() == 1 ? "leave its super as it is: room lasts" : "leave its supers as they are: room lasts";
        a.reasons.back() = room_words(**hive);
    } else {
        a.hives = lasting->hives;
        a.what = fmt::format("leave {} with the supers they have: room lasts", hives_in_line(a, yard));
    }
    how_sure(a, sure_of(lasting->least), lasting->words);
    return {a};
}

Advices room_lasts(const Context& c, Advices& all) {
    Advices out;
    for (const YardView& yard : c.yards)
        for (Advice& a : room_lasts_at(yard, all)) out.push_back(std::move(a));
    return out;
}

}  // namespace

std::vector<Rule> room_rules() {
    return {
        {{"no-more-supers", "Nothing is added when the flow is ending, over or none, or late in the season when it is weak, or "
                            "unknown and not seen in the hive's own supers.",
          "Mississippi State University Extension P3382; \"Regulated nectar harvesting by the honeybee\" (J. Apic. Res.); "
          "G. S. Demuth, USDA Farmers' Bulletin 503 (1912)", "Supers"},
         &no_more},
        {{"room-lasts", "Supers are left as they are where the chance that room runs out before the next visit is within the risk you accept.",
          "the same as room-runs-out; the risk is your setting", "Supers"},
         &room_lasts},
    };
}

}  // namespace waxtab
