// What is added to advice of other rules: which comb, how many, where, and the cautions.
#include <algorithm>

#include <fmt/format.h>

#include "advice/chance.hpp"
#include "advice/supers.hpp"
#include "handbook/lifting.hpp"

namespace waxtab {
namespace {

// ---- which comb ---------------------------------------------------------------------------

int in_shed(const Context& c, std::initializer_list<Comb> combs) {
    int n = 0;
    for (const ShedRow& row : c.history.shed)
        for (Comb comb : combs)
            if (!row.box_kind.empty() && row.comb == comb) n += std::max(0, row.count);
    return n;
}

bool only_foundation_left(const Context& c) {
    return c.history.shed_said && in_shed(c, {Comb::drawn, Comb::wet, Comb::mixed, Comb::unsaid}) == 0 &&
           in_shed(c, {Comb::foundation, Comb::strips}) > 0;
}

/// Comb-honey hives go on with comb honey.
std::optional<Comb> comb_honey_on(const HiveView& hive) {
    for (const SuperView& s : hive.supers)
        if (s.comb_honey()) return s.box->comb;
    return std::nullopt;
}

bool which_comb(const HiveView& hive, Advice& a) {
    if (a.act != Act::add_super) return false;
    a.box_kind = hive.supers.empty() ? hive.settings().super_kind : hive.supers.back().box->kind;
    if (const auto comb = comb_honey_on(hive)) {
        a.comb = *comb;
        return false;
    }
    a.comb = only_foundation_left(*hive.all) ? Comb::foundation : Comb::drawn;
    if (a.comb == Comb::foundation) a.reasons.push_back("the shed holds no drawn super");
    return a.comb == Comb::foundation;
}

// ---- how many -----------------------------------------------------------------------------

/// Days between visits from which "several days away" holds.
constexpr int long_gap_days = 5;
/// Days for which a flow noted as heavy is taken as heavy still; own judgement.
constexpr int heavy_note_days = 10;

/// A strong enough hive with drawn comb to come, and the next visit several days away.
bool could_use_two(const HiveView& hive, const Advice& a) {
    if (a.act != Act::add_super || hive.settings().visit_interval_days < long_gap_days || a.comb != Comb::drawn) return false;
    if (hive.last(30, Kind::strength, {"weak"}) || hive.last(21, Kind::swarmed) || hive.supers.empty()) return false;
    return a.sureness != Sureness::possible;
}

/// The chance that room runs out before the next visit with one more like the top super on; none where room is unknown.
std::optional<double> chance_with_one_more(const HiveView& hive) {
    const SuperEstimate* top = hive.supers.back().estimate;
    if (!top || !room_known(hive)) return std::nullopt;
    return hive.estimate->chance_full_within(hive.days_to_next_visit(), top->capacity_kg.value);
}

/// Says that chance, and why it asks for two when it does.
void say_one_more(const HiveView& hive, Advice& a, double chance, bool too_high) {
    const Day until = hive.on() + date::days{hive.days_to_next_visit()};
    keep_chance(a, "room runs out with one more", chance, until, hive.id);
    a.reasons.push_back(fmt::format("with one more, {}{} that room runs out before {}{}", too_high ? "still " : "", odds(chance), iso(until),
                                    too_high ? ": two at once" : ""));
}

/// A flow noted as heavy a few days ago.
bool heavy_lately(const HiveView& hive) {
    return hive.flow().state == Flow::State::heavy && days_between(hive.flow().day, hive.on()) <= heavy_note_days;
}

bool two_at_once(const HiveView& hive, Advice& a) {
    if (!could_use_two(hive, a)) return false;
    const auto chance = chance_with_one_more(hive);
    const bool too_high = a.rule == "room-runs-out" && chance && *chance > hive.settings().accepted_risk_percent / 100.0;
    const bool heavy = heavy_lately(hive);
    if (!too_high && !heavy) return false;
    a.count = 2;
    if (chance) say_one_more(hive, a, *chance, too_high);
    if (!heavy) return true;
    a.reasons.push_back(fmt::format("heavy flow on {} and {} between visits: two at once; look again within 7 days, a "
                                    "medium has filled in 8",
                                    iso(hive.flow().day), counted(hive.settings().visit_interval_days, "day")));
    because(a, *hive.flow().fact);
    return true;
}

// ---- where --------------------------------------------------------------------------------

/// Bees work drawn comb in a super: only then does foundation draw them up.
bool drawn_and_occupied(const HiveView& hive) {
    return std::any_of(hive.supers.begin(), hive.supers.end(),
                       [](const SuperView& s) { return s.drawn() >= 0.5 && s.full() >= 0.1; });
}

double heaviest_kg(const HiveView& hive) {
    double kg = 0;
    for (const SuperView& s : hive.supers)
        if (const auto gross = hive.all->gross_kg(s)) kg = std::max(kg, gross->value);
    return kg;
}

struct Place { std::string_view where; std::string reason; };

Place place_first(const HiveView& hive, const Advice& a) {
    const bool undrawn = a.comb == Comb::foundation || a.comb == Comb::strips;
    if (!hive.excluder) return {"over the brood", ""};
    if (!undrawn) return {"over the excluder", ""};
    return {"over the brood with the excluder out until they draw it",
            "bees may refuse to pass an excluder into undrawn foundation; put it back with the queen below, or bait with a "
            "drawn comb"};
}

/// A virgin is emerging, flying or mating now.
bool virgin_time(const HiveView& hive) {
    const auto& clock = hive.queen.clock;
    const auto quiet = clock ? handbook::quiet_time(clock->start) : std::nullopt;
    return quiet && hive.on() >= clock->at(quiet->from) && hive.on() < clock->at(quiet->to);
}

Place place_next(const HiveView& hive, const Advice& a) {
    const bool undrawn = a.comb == Comb::foundation || a.comb == Comb::strips;
    const bool comb_honey = a.comb == Comb::cut_comb || a.comb == Comb::sections;
    const bool ending = hive.flow().fading() || hive.all->late();
    if (virgin_time(hive)) return {"on top", "a new queen is due: the brood nest stays shut"};
    if (ending) return {"on top", "late in the flow the empty one goes on top: used only if needed"};
    if (undrawn && !drawn_and_occupied(hive))
        return {"on top", "no drawn super with bees at work is on, so foundation gains nothing next to the brood"};
    if (heaviest_kg(hive) > hive.settings().lift_limit_kg) return {"on top", "nothing heavy has to be lifted for it"};
    if (undrawn) return {"under, next to the brood", "foundation is drawn there: bees already work drawn comb above it"};
    if (comb_honey) return {"under, next to the brood", "comb honey keeps whiter cappings when the new one goes under"};
    if (!hive.settings().new_supers_said)
        return {"on top or under the one that is on", "no difference in honey was measured; under eases the crowd, top is lighter work"};
    const bool under = hive.settings().new_supers == Placing::under;
    return {under ? "under, next to the brood" : "on top", "your setting; no difference in honey was measured"};
}

bool placing(const HiveView& hive, Advice& a) {
    if (a.act != Act::add_super) return false;
    const Place p = hive.supers.empty() ? place_first(hive, a) : place_next(hive, a);
    word_super(a, p.where);
    if (!p.reason.empty()) a.reasons.push_back(p.reason);
    return !p.reason.empty();
}

// ---- after strips -------------------------------------------------------------------------

bool after_strips(const HiveView& hive, Advice& a) {
    if (a.act != Act::add_super) return false;
    const Treating* last = nullptr;
    for (const Treating& t : hive.history->treatings)
        if (t.to && days_between(*t.to, hive.on()) <= 14) last = &t;
    if (!last) return false;
    a.reasons.push_back(fmt::format("{} ended {}: the label may ask for a wait before honey supers (14 days were asked for "
                                    "amitraz strips in a US authorisation of 2012)",
                                    last->substance.empty() ? "a treatment" : last->substance, ago(*last->to, hive.on())));
    because(a, last->fact);
    return true;
}

// ---- cautions -----------------------------------------------------------------------------

bool lifts_supers(const Advice& a) {
    return a.act == Act::take_honey || a.act == Act::clear ||
           (a.act == Act::add_super && mentions(a.what, "under"));
}

bool lifting(const HiveView& hive, Advice& a) {
    if (!lifts_supers(a)) return false;
    const SuperView* heaviest = nullptr;
    Range most;
    for (const SuperView& s : hive.supers) {
        const auto gross = hive.all->gross_kg(s);
        if (!gross || gross->value <= most.value) continue;
        if (!a.boxes.empty() && std::find(a.boxes.begin(), a.boxes.end(), s.box->id) == a.boxes.end()) continue;
        heaviest = &s;
        most = *gross;
    }
    const int limit = hive.settings().lift_limit_kg;
    if (!heaviest || most.high <= limit) return false;
    const MassUnit unit = hive.settings().mass;
    a.cautions.push_back(fmt::format("{} weighs {}; your lifting limit is {}, less when twisting: two people, or frame by frame",
                               super_name(hive, *heaviest), kg_words(most, unit), text_of(Mass::from_kilograms(limit), unit, 0)));
    return true;
}

bool wants_it_open(Act act) {
    switch (act) {
        case Act::add_super:
        case Act::take_honey:
        case Act::take_empty:
        case Act::clear:
        case Act::open:
        case Act::split:
        case Act::give_frame:
        case Act::unite:
        case Act::excluder: return true;
        default: return false;
    }
}

bool stings(const HiveView& hive, Advice& a) {
    if (!wants_it_open(a.act)) return false;
    const auto temper = hive.last(60, Kind::temper);
    if (!temper || temper->it->detail != "defensive") return false;
    a.cautions.push_back(fmt::format("defensive on {}: veil, gloves, smoke, not alone; trouble breathing after a sting is an "
                               "emergency call", iso(temper->day)));
    because(a, temper->fact);
    return true;
}

bool treatment_care(const HiveView&, Advice& a) {
    if (!is_one_of(a.rule, {"mites-above-threshold", "treatment-with-supers", "strips-out", "treatment-too-warm"})) return false;
    a.cautions.push_back("the product's label and your law decide; gloves, and what else the label asks for");
    return true;
}

}  // namespace

std::vector<Rule> amend_rules() {
    return {
        {{"which-comb", "Drawn comb is taken at once and goes first; foundation only when the shed holds no drawn super.",
          "common practice, no source", "How many supers, of what and where"},
         &which_comb},
        {{"two-at-once", "Two supers go on where one more leaves the chance of running out above the risk you accept, and in a heavy "
                         "flow with the next visit several days away; foundation and comb honey one at a time.",
          "Winston, Apiculture, as excerpted by Surrey Bee Club; one at a time: wvbeekeeper.blogspot.com (2009), Demuth, USDA "
          "Farmers' Bulletin 503", "How many supers, of what and where"},
         &two_at_once},
        {{"placing", "Over or under makes no measured difference in honey; foundation goes next to the brood only where bees work "
                     "drawn comb above it, comb honey under, the empty one on top when lifting matters or the flow ends.",
          "Berry and Delaplane, Am. Bee J. 140(5), 2000, as told by D. Caron; Imirie, Pink Pages (May 2002); C. de Bruyn, quoted at "
          "beelistener.co.uk; Winston via Surrey Bee Club; How to Keep Bees (1905)", "How many supers, of what and where"},
         &placing},
        {{"after-strips", "A super put on soon after a treatment: the label may ask for a wait.",
          "EPA memo of 10 Dec 2012 and beekeepers' news of 24 Oct 2012 (amitraz strips, USA); the label decides",
          "How many supers, of what and where"},
         &after_strips},
        {{"lifting", "A caution where a super is estimated heavier than your lifting limit, by kilograms, not by the name of the box.",
          "HSE guideline filter (25 kg, 16 kg) and NIOSH (23 kg); less when twisting", "Cautions"},
         &lifting},
        {{"stings", "A caution where a hive was noted as defensive.",
          "common practice, no source; UK national health wording on anaphylaxis", "Cautions"},
         &stings},
        {{"treatment-care", "Advice about a treatment defers to label and law.", "US EPA advisory (Jan 2024); national labels",
          "Cautions"},
         &treatment_care},
    };
}

}  // namespace waxtab
