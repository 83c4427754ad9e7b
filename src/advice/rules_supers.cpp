// When a super goes on. Room is judged once: by the chance that it runs out, with the
// keeper's accepted risk as the only margin; the rule of thumb stands in where that chance cannot be known.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "advice/chance.hpp"
#include "advice/harvest.hpp"
#include "advice/supers.hpp"
#include "handbook/flow.hpp"
#include "handbook/thresholds.hpp"

namespace waxtab {

namespace {

/// Its own supers show a flow, noted or not: nine chances in ten that it gains what a flow brings.
bool seen_gaining(const HiveView& hive) {
    return hive.estimate && hive.estimate->from_own_visits && hive.estimate->kg_per_day.low >= handbook::flow_on_kg_per_day;
}

}  // namespace

bool flow_refuses_super(const HiveView& hive) {
    const Flow& flow = hive.flow();
    if (flow.fading()) return true;
    if (!hive.all->late()) return false;
    return flow.state == Flow::State::light || (flow.state == Flow::State::unknown && !seen_gaining(hive));
}

std::optional<Seen> crowded(const HiveView& hive) {
    const auto seen = hive.last(14, Kind::crowding);
    if (!seen || !is_one_of(seen->it->detail, {"packed", "backfilled", "crowded"})) return std::nullopt;
    if (hive.super_put_on_since(seen->day)) return std::nullopt;
    return seen;
}

bool season_closed(const HiveView& hive) { return hive.all->late() && flow_refuses_super(hive); }

bool strips_in(const HiveView& hive) {
    return std::any_of(hive.history->treatings.begin(), hive.history->treatings.end(), [](const Treating& t) { return !t.to; });
}

bool ripe_on(const HiveView& hive) {
    return std::any_of(hive.supers.begin(), hive.supers.end(), [&](const SuperView& s) { return ripeness(hive, s).verdict == Ripeness::Verdict::ripe; });
}

double one_more_kg(const HiveView& hive) {
    const SuperEstimate* top = hive.supers.empty() ? nullptr : hive.supers.back().estimate;
    return top ? top->capacity_kg.value : 0;
}

std::string room_words(const HiveView& hive) {
    const HiveEstimate& e = *hive.estimate;
    const MassUnit unit = hive.settings().mass;
    return fmt::format("room for {}; gaining {}", kg_words(e.room_kg, unit, " of honey"), kg_words(e.kg_per_day, unit, " a day"));
}

Advice add_super() {
    Advice a = advise_to(Act::add_super, Rank::room, "put a super on");
    a.count = 1;
    return a;
}

void word_super(Advice& a, std::string_view place) {
    const std::string boxes = a.count == 1 ? "a super" : fmt::format("{} supers", a.count);
    const std::string_view comb = comb_word(a.comb);
    a.what = fmt::format("put {} on{}{}{}", boxes, comb.empty() ? "" : fmt::format(" ({})", comb),
                         place.empty() ? "" : ", ", place);
}

namespace {

/// A nucleus needs no super; over an escape board one would be out of reach, and the supers come off in a day or two.
bool may_need_super(const HiveView& hive) {
    return !hive.escape && !hive.journal().hives[static_cast<std::size_t>(hive.id)].nucleus && hive.brood_boxes > 0;
}

// ---- first super --------------------------------------------------------------------------

/// The 5-6 frames are of one brood box; with two, as many as make one box nearly full.
double brood_wanted(const HiveView& hive) {
    return hive.brood_boxes > 1 ? handbook::first_super_brood_two.value : handbook::first_super_brood.value;
}

std::optional<Seen> brood_frames(const HiveView& hive) {
    const auto wanted = static_cast<std::int64_t>(brood_wanted(hive)) * 1000;
    return hive.last(21, [wanted](const Fact& f) {
        return f.kind == Kind::brood && f.value.dimension == Dimension::count && f.value.amount >= wanted;
    });
}

/// Bees and brood have left since: what was seen before no longer holds.
bool shrunk_since(const HiveView& hive, const Seen& seen) {
    const auto left = hive.last(days_between(seen.day, hive.on()), [&](const Fact& f) {
        return f.kind == Kind::swarmed || (divides(f.kind) && f.hive == hive.id);
    });
    return left && left->fact > seen.fact;
}

std::optional<Seen> frames_in_use(const HiveView& hive) {
    const double wanted = hive.brood_frames_in_boxes() * handbook::first_super_drawn.value / 100;
    return hive.last(21, [wanted](const Fact& f) {
        return f.kind == Kind::bees && wanted > 0 && f.value.dimension == Dimension::count &&
               static_cast<double>(f.value.amount) / 1000.0 >= wanted;
    });
}

std::optional<Seen> brood_comb_drawn(const HiveView& hive) {
    return hive.last(21, [](const Fact& f) {
        return f.kind == Kind::drawn && f.box.role == Role::brood &&
               f.value.amount >= static_cast<std::int64_t>(handbook::first_super_drawn.value) * 10;
    });
}

bool near_season(const Context& c) {
    if (c.phase() == Phase::during) return true;
    return c.phase() == Phase::before && !c.facts.empty();
}

std::string first_super_reason(const HiveView& hive, const Seen& s) {
    if (s.it->kind == Kind::brood)
        return fmt::format("{} of brood on {}; a first super goes on at {}", text_of(s.it->value), iso(s.day),
                           hive.brood_boxes > 1 ? "8 in two brood boxes" : "5-6");
    if (s.it->kind == Kind::drawn)
        return fmt::format("brood comb {} drawn on {}; a first super goes on at 80%", text_of(s.it->value), iso(s.day));
    return fmt::format("bees on {} of {} brood frames on {}; a first super goes on at 8 of 10", text_of(s.it->value),
                       hive.brood_frames_in_boxes(), iso(s.day));
}

Advices first_super(const HiveView& hive) {
    if (!hive.supers.empty() || !may_need_super(hive) || !near_season(*hive.all)) return {};
    if (flow_refuses_super(hive)) return {};
    auto sign = brood_frames(hive);
    if (!sign) sign = frames_in_use(hive);
    if (!sign) sign = brood_comb_drawn(hive);
    if (!sign || shrunk_since(hive, *sign)) return {};
    Advice a = add_super();
    const Flow& flow = hive.flow();
    a.by = flow.running() ? hive.on() : hive.next_visit();
    how_sure(a, Sureness::likely, flow.running() ? "a flow is noted" : "before the main flow, no flow noted yet");
    a.reasons.push_back(first_super_reason(hive, *sign));
    because(a, sign->fact);
    if (flow.running()) because(a, *flow.fact);
    return {a};
}

// ---- crowding -----------------------------------------------------------------------------

bool room_above(const HiveView& hive) {
    return std::any_of(hive.supers.begin(), hive.supers.end(),
                       [](const SuperView& s) { return s.drawn() >= 0.5 && s.full() < 0.5; });
}

Advices crowding(const HiveView& hive) {
    const auto seen = crowded(hive);
    if (!seen || !may_need_super(hive) || room_above(hive) || season_closed(hive)) return {};
    Advice a = add_super();
    a.by = hive.on();
    how_sure(a, Sureness::likely, "crowding alone is enough, whatever the flow");
    a.reasons.push_back(fmt::format("brood nest {} on {}", seen->it->detail, iso(seen->day)));
    if (hive.supers.empty()) a.reasons.push_back("no super is on");
    else a.reasons.push_back(fmt::format("the emptiest super is about {:.0f}% full", hive.emptiest_full() * 100));
    because(a, seen->fact);
    return {a};
}

// ---- room ---------------------------------------------------------------------------------

/// Last day until which the risk stays accepted; today at the latest when it is passed already.
Day last_good_day(const HiveView& hive, int within, double risk) {
    int days = 0;
    while (days < within && hive.chance_full(days + 1) <= risk) ++days;
    return hive.on() + date::days{days};
}

/// The day a super was last looked at.
std::optional<Day> last_look(const HiveView& hive) {
    std::optional<Day> last;
    for (const SuperView& s : hive.supers)
        if (s.estimate && s.estimate->last_seen) last = std::max(last.value_or(*s.estimate->last_seen), *s.estimate->last_seen);
    return last;
}

bool looked_at_lately(const HiveView& hive) {
    const auto look = last_look(hive);
    return look && days_between(*look, hive.on()) <= look_days;
}

std::string not_looked_words(const HiveView& hive) {
    if (const auto look = last_look(hive)) return fmt::format("last looked at {}", ago(*look, hive.on()));
    const auto& since = hive.supers.back().since;
    return since ? fmt::format("nothing noted of {} since it went on, {}", super_name(hive, hive.supers.back()), ago(*since, hive.on()))
                 : std::string("nothing was ever noted of what is in them");
}

Advice look_at_supers(const HiveView& hive) {
    const bool one = hive.supers.size() == 1;
    Advice a = advise_to(Act::note, Rank::room, one ? "look at the super, and have another at hand" : "look at the supers, and have another at hand");
    a.by = hive.next_visit();
    return a;
}

Advices room_runs_out(const HiveView& hive) {
    if (hive.supers.empty() || !hive.estimate || !may_need_super(hive) || flow_refuses_super(hive) || strips_in(hive)) return {};
    const int days = hive.days_to_next_visit();
    const double chance = hive.chance_full(days);
    const double risk = hive.settings().accepted_risk_percent / 100.0;
    if (chance <= risk) return {};
    const bool looked = looked_at_lately(hive);
    Advice a = looked ? add_super() : look_at_supers(hive);
    if (looked) a.by = last_good_day(hive, days, risk);
    const Day until = hive.on() + date::days{days};
    if (room_known(hive)) {
        how_sure(a, looked ? sure_of(chance) : Sureness::possible, fmt::format("{} that room runs out before {}", odds(chance), iso(until)));
        keep_chance(a, "room runs out", chance, until, hive.id);
        a.reasons.push_back(room_words(hive));
    } else {
        how_sure(a, Sureness::possible, "nothing tells how full they are, so no chance is given");
    }
    if (!hive.estimate->from_own_visits)
        a.reasons.push_back("its own notes give no rate: neighbours and the usual for the time stand in");
    if (!looked) a.reasons.push_back(not_looked_words(hive));
    else if (ripe_on(hive)) a.reasons.push_back("what is ripe makes room too when it comes off");
    because(a, hive.estimate->because);
    return {a};
}

Advices fill_mark(const HiveView& hive) {
    if (hive.supers.empty() || !may_need_super(hive) || flow_refuses_super(hive)) return {};
    if ((hive.estimate && hive.estimate->from_own_visits) || !looked_at_lately(hive)) return {};
    const double mark = hive.settings().super_at_full_percent / 100.0;
    if (hive.emptiest_full() < mark) return {};
    Advice a = add_super();
    a.by = hive.next_visit();
    how_sure(a, Sureness::possible, "a rule of thumb; no rate is known, so no chance is given");
    a.reasons.push_back(fmt::format("every super on is at least {:.0f}% full; the mark is {}% (yours to set)",
                                    hive.emptiest_full() * 100, hive.settings().super_at_full_percent));
    for (const SuperView& s : hive.supers)
        if (s.estimate) because(a, s.estimate->because);
    return {a};
}

Advices foundation_drawn(const HiveView& hive) {
    if (hive.supers.empty() || !may_need_super(hive) || flow_refuses_super(hive) || !looked_at_lately(hive)) return {};
    const double mark = hive.settings().super_at_drawn_percent / 100.0;
    for (const SuperView& s : hive.supers)
        if (s.built_comb() || !s.estimate || s.drawn() < mark || s.full() < 0.1) return {};
    Advice a = add_super();
    a.by = hive.next_visit();
    how_sure(a, Sureness::possible, "a rule of thumb for foundation");
    const SuperView& top = hive.supers.back();
    a.reasons.push_back(fmt::format("{} went on as foundation and is {} drawn; the mark is {}% (yours to set)",
                                    super_name(hive, top), share_words(top.estimate->drawn),
                                    hive.settings().super_at_drawn_percent));
    because(a, top.estimate->because);
    return {a};
}

// ---- full is not the end of the flow --------------------------------------------------------

struct Weights { Seen from, to; double kg_per_day = 0; };

std::optional<Weights> last_two_weights(const HiveView& hive) {
    std::optional<Seen> newest;
    for (auto s = hive.facts.rbegin(); s != hive.facts.rend(); ++s) {
        if (s->it->kind != Kind::hive_weight || s->it->value.dimension != Dimension::mass) continue;
        if (!newest) { newest = *s; continue; }
        const int days = days_between(s->day, newest->day);
        if (days <= 0) continue;
        const double kg = static_cast<double>(newest->it->value.amount - s->it->value.amount) * 1e-12;
        return Weights{*s, *newest, kg / days};
    }
    return std::nullopt;
}

Advices full_is_no_room(const HiveView& hive) {
    if (hive.supers.empty() || !hive.estimate || !may_need_super(hive) || !hive.estimate->no_room || hive.all->phase() != Phase::during) return {};
    const auto weights = last_two_weights(hive);
    if (!weights || days_between(weights->to.day, hive.on()) > 7) return {};
    if (weights->kg_per_day >= handbook::flow_on_kg_per_day) return {};
    Advice a = add_super();
    a.by = hive.on();
    how_sure(a, Sureness::possible, "no gain means no room or no nectar; the supers were full");
    const MassUnit unit = hive.settings().mass;
    a.reasons.push_back(fmt::format("{} a day between {} and {}, with the supers noted full",
                                    text_of(Mass::from_kilograms(weights->kg_per_day), unit, 1), iso(weights->from.day), iso(weights->to.day)));
    because(a, weights->from.fact);
    because(a, weights->to.fact);
    because(a, hive.estimate->because);
    return {a};
}

}  // namespace

bool super_asked(const HiveView& hive) {
    for (const HiveRule rule : {crowding, room_runs_out, fill_mark, foundation_drawn, full_is_no_room})
        if (!rule(hive).empty()) return true;
    return false;
}

std::vector<Rule> super_rules() {
    return {
        {{"first-super", "The first super goes on at 5-6 frames of brood (8 in two brood boxes), or when 80% of the brood frames are drawn and in "
                         "use, before the main flow.",
          "Norfolk Beekeepers, \"Adding supers\"; NW Arkansas Beekeepers, \"Supering\"; wisconsinpollinators.com (8 of 10)",
          "Supers"},
         &first_super},
        {{"crowded", "A packed or backfilled brood nest asks for room before any flow is noted.",
          "common practice, no source; backfilling as a sign: betterbee.com", "Supers"},
         &crowding},
        {{"room-runs-out", "A super goes on when the chance that room runs out before the next visit is above the risk you "
                           "accept; that risk is the only margin. Supers not looked at for two weeks are "
                           "looked at first.",
          "mechanism: Rinderer and Baxter, J. Econ. Entomol. 71 (1978); Winston, Apiculture, as excerpted by Surrey Bee Club; "
          "the risk is your setting", "Supers"},
         &room_runs_out},
        {{"fill-mark", "Where no filling rate is known, a super goes on when those that are on reach your mark (70% full).",
          handbook::super_at_full.source, "Supers"},
         &fill_mark},
        {{"foundation-mark", "On foundation the next super goes on when the one before is nearly drawn (85%).",
          handbook::super_at_drawn.source, "Supers"},
         &foundation_drawn},
        {{"full-is-no-room", "No gain on the scale while the supers are full means no room, not that the flow is over.",
          "scale hive of the Warner Nature Center, Minnesota, 2016 (naturesnectar.blogspot.com)", "Supers"},
         &full_is_no_room},
    };
}

}  // namespace waxtab
