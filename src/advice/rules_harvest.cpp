// Honey off: when a super is ripe, when it is not, and the days of clearing and extracting.
#include "advice/harvest.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "advice/chance.hpp"
#include "handbook/thresholds.hpp"

namespace waxtab {
namespace {

/// Readings older than this no longer speak for the honey as it is; own judgement.
constexpr int moisture_days = 10;
constexpr int shake_days = 7;
/// Frames to read before a super is called fit by moisture alone; common practice.
constexpr int frames_to_read = 3;

std::vector<const BoxSighting*> recent(const HiveView& hive, const Box& box, BoxSighting::What what, int days) {
    std::vector<const BoxSighting*> out;
    for (const BoxSighting& s : box.sightings)
        if (s.what == what && days_between(s.day, hive.on()) <= days) out.push_back(&s);
    return out;
}

Ripeness by_moisture(const HiveView& hive, const SuperView& super, const std::vector<const BoxSighting*>& readings) {
    Ripeness r;
    const int limit = hive.settings().moisture_limit_permille;
    std::int64_t wettest = 0;
    for (const BoxSighting* s : readings) {
        wettest = std::max(wettest, s->amount);
        r.facts.push_back(s->fact);
    }
    const int n = static_cast<int>(readings.size());
    if (wettest > limit) {
        r.verdict = Ripeness::Verdict::wet;
        r.words = fmt::format("{} measured, limit {}: moisture outranks capping", permille_words(wettest), permille_words(limit));
        return r;
    }
    const bool capped = super.capped() * 100 >= hive.settings().ripe_at_capped_percent;
    const bool enough = n >= frames_to_read || capped;
    r.verdict = enough ? Ripeness::Verdict::ripe : Ripeness::Verdict::measure;
    r.words = fmt::format("{} measured at the most, limit {}, {}", permille_words(wettest), permille_words(limit),
                          n == 1 ? std::string("one reading, and one reading is one frame") : counted(n, "reading"));
    return r;
}

bool shaken(const HiveView& hive, const Box& box, bool falls, Ripeness& r) {
    const auto shakes = recent(hive, box, BoxSighting::What::shakes_out, shake_days);
    if (shakes.empty() || (shakes.back()->amount != 0) != falls) return false;
    r.facts.push_back(shakes.back()->fact);
    return true;
}

/// Comb honey is eaten with its caps: it has to be sealed, not just ripe. "Fully capped" by eye is estimated at
/// a little less than all of it.
constexpr double sealed_share = 0.9;

double capped_wanted(const HiveView& hive, const SuperView& super) {
    return super.comb_honey() ? sealed_share : hive.settings().ripe_at_capped_percent / 100.0;
}

/// Of a super that is nearly full the mark is of what it holds: empty comb is never capped. One that is less full has
/// to have as much capped as if it were, so that it is left to fill.
constexpr double nearly_full = 0.85;

double holding(const SuperView& super) { return super.full() >= nearly_full ? super.full() : 1; }

Ripeness by_capping(const HiveView& hive, const SuperView& super) {
    Ripeness r;
    if (!super.estimate) return r;
    r.facts = super.estimate->because;
    const bool dry = shaken(hive, *super.box, false, r);
    const double wanted = capped_wanted(hive, super);
    const bool between = dry && !super.comb_honey() && super.capped() * 100 >= handbook::ripe_two_thirds.value;
    const double mark = between ? handbook::ripe_two_thirds.value / 100.0 : wanted;
    const double part = super.comb_honey() ? 1 : holding(super);
    r.words = fmt::format("capped {}, mark {:.0f}%{}{}", share_words(super.estimate->capped), mark * 100,
                          part < 0.995 ? fmt::format(" of the {:.0f}% that are full", part * 100) : "", dry ? ", no nectar falls when shaken" : "");
    r.chance = chance_above(super.estimate->capped, mark * part);
    if (super.capped() < wanted * part && !between) return r;
    r.verdict = Ripeness::Verdict::ripe;
    r.sureness = sure_of(*r.chance);
    return r;
}

}  // namespace

Ripeness ripeness(const HiveView& hive, const SuperView& super) {
    const auto readings = recent(hive, *super.box, BoxSighting::What::moisture, moisture_days);
    if (!readings.empty()) return by_moisture(hive, super, readings);
    Ripeness r;
    if (shaken(hive, *super.box, true, r)) {
        r.verdict = Ripeness::Verdict::shakes;
        r.words = "nectar falls when a comb is shaken";
        return r;
    }
    return by_capping(hive, super);
}

std::optional<Seen> brood_in_super(const HiveView& hive) {
    return hive.last(24, [](const Fact& f) { return f.kind == Kind::super_brood && f.detail != "none"; });
}

bool cleared_by_keeper(const HiveView& hive, Day since) {
    return std::any_of(hive.facts.begin(), hive.facts.end(), [&](const Seen& s) {
        return s.day >= since && s.it->kind == Kind::remark && mentions(s.it->text, "cleared");
    });
}

bool stood_within(const Box& box, HiveId hive, Day from, Day to) {
    return std::any_of(box.stays.begin(), box.stays.end(), [&](const BoxStay& s) {
        return s.hive == hive && (!s.from || *s.from <= to) && (!s.to || *s.to >= from);
    });
}

namespace {

// ---- take and leave -------------------------------------------------------------------------

bool brood_rules_out(const HiveView& hive, const SuperView& super) {
    const auto brood = brood_in_super(hive);
    if (!brood) return false;
    for (const BoxSighting& s : super.box->sightings)
        if (s.what == BoxSighting::What::brood && s.fact == brood->fact) return true;
    return hive.supers.size() == 1 || super.place == 1;
}

/// No super is called fit that nobody looked into lately, however full it is likely to be.
bool looked_into(const HiveView& hive, const SuperView& s) {
    return s.estimate && s.estimate->last_seen && days_between(*s.estimate->last_seen, hive.on()) <= look_days;
}

Advice take(const HiveView& hive, const SuperView& s, const Ripeness& r) {
    Advice a = advise_to(Act::take_honey, Rank::rest, fmt::format("take {} off for honey", super_name(hive, s)));
    a.boxes.push_back(s.box->id);
    a.by = std::max(hive.next_visit(), hive.on());
    how_sure(a, r.sureness, r.chance ? fmt::format("{} that it is fit, {}", odds(*r.chance), r.words) : r.words);
    if (r.chance) keep_chance(a, "fit to take", *r.chance, hive.on(), hive.id, s.box->id);
    const MassUnit unit = hive.settings().mass;
    a.reasons.push_back(fmt::format("{} holds {}", super_name(hive, s), kg_words(s.estimate->kg, unit, " of honey")));
    because(a, r.facts);
    return a;
}

/// Of several supers each says how sure it is, and all of them how sure the least of them is.
void say_each(Advices& taken) {
    if (taken.size() < 2) return;
    const auto chance = [](const Advice& a) { return a.chances.empty() ? 1.0 : a.chances.front().value; };
    const auto least = std::min_element(taken.begin(), taken.end(), [&](const Advice& a, const Advice& b) { return chance(a) < chance(b); });
    const Sureness sureness = least->sureness;
    const std::string words = least->chances.empty() ? "by the readings" : odds(chance(*least)) + " or more at each that it is fit";
    for (Advice& a : taken) {
        a.reasons.front() += "; " + figures_of(a);
        how_sure(a, sureness, words);
    }
}

Advices take_when_ripe(const HiveView& hive) {
    Advices out;
    for (const SuperView& s : hive.supers) {
        const Ripeness r = ripeness(hive, s);
        if (r.verdict != Ripeness::Verdict::ripe || !looked_into(hive, s) || s.full() < 0.3 || s.comb_honey()) continue;
        if (brood_rules_out(hive, s)) continue;
        out.push_back(take(hive, s, r));
    }
    if (out.empty()) return out;
    say_each(out);
    out.front().reasons.push_back("several frames, outer ones too, before it is called fit; early in the day, not on a good flow day");
    if (hive.all->late()) out.front().reasons.push_back("look at the stores in the brood box first: full supers do not prove it holds any");
    return out;
}

Advices comb_honey(const HiveView& hive) {
    Advices out;
    for (const SuperView& s : hive.supers) {
        const Ripeness r = ripeness(hive, s);
        if (!s.comb_honey() || r.verdict != Ripeness::Verdict::ripe || !looked_into(hive, s) || brood_rules_out(hive, s)) continue;
        if (s.capped() < sealed_share) continue;
        Advice a = take(hive, s, r);
        a.reasons.push_back("comb honey: sealed and without brood, off before the cappings are walked dirty");
        out.push_back(std::move(a));
    }
    return out;
}

Advices measure_more(const HiveView& hive) {
    Advices out;
    for (const SuperView& s : hive.supers) {
        const Ripeness r = ripeness(hive, s);
        if (r.verdict != Ripeness::Verdict::measure) continue;
        Advice a = advise_to(Act::note, Rank::rest,
                             fmt::format("measure {} or more frames of {}, outer ones too", frames_to_read, super_name(hive, s)));
        a.boxes.push_back(s.box->id);
        a.by = hive.next_visit();
        how_sure(a, Sureness::likely, "");
        a.reasons.push_back(r.words + (s.estimate ? "; capped " + share_words(s.estimate->capped) : ""));
        because(a, r.facts);
        out.push_back(std::move(a));
    }
    return out;
}

Advices too_wet(const HiveView& hive) {
    Advices out;
    for (const SuperView& s : hive.supers) {
        const Ripeness r = ripeness(hive, s);
        if (r.verdict != Ripeness::Verdict::wet && r.verdict != Ripeness::Verdict::shakes) continue;
        Advice a = advise_to(Act::leave_super, Rank::law_and_food, fmt::format("leave {} on: not ripe", super_name(hive, s)));
        a.boxes.push_back(s.box->id);
        how_sure(a, r.verdict == Ripeness::Verdict::wet ? Sureness::certain : Sureness::likely, r.words);
        a.reasons.push_back(s.estimate ? fmt::format("capped {} all the same", share_words(s.estimate->capped)) : "not fit to take");
        because(a, r.facts);
        out.push_back(std::move(a));
    }
    return out;
}

/// `3 in 10 by 2026-07-17, about 2026-07-20 (2026-07-16 to 2026-07-26)`.
std::string ripe_words(const HiveView& hive, const SuperView& s, Advice& a) {
    // The days foreseen are those of the mark; comb honey has to be sealed.
    if (s.comb_honey()) return "when it will be sealed is not foreseen, so no chance is given";
    const SuperEstimate& e = *s.estimate;
    const Day by = hive.on() + date::days{hive.days_to_next_visit()};
    const auto chance = chance_ripe_by(e, hive.on(), by);
    if (!chance) return "no ripe day is foreseen yet, so no chance is given";
    keep_chance(a, "fit to take", *chance, by, hive.id, s.box->id);
    return fmt::format("{} that it is by {}; by capping about {} ({} to {})", odds(*chance), iso(by), iso(*e.ripe_likely),
                       e.ripe_early ? iso(*e.ripe_early) : "?", e.ripe_late ? iso(*e.ripe_late) : "later");
}

/// How sure it is that it is not fit, and when it will be.
std::string not_fit_words(const HiveView& hive, const SuperView& s, const Ripeness& r, Advice& a) {
    const double not_yet = 1 - r.chance.value_or(0);
    keep_chance(a, "not fit to take", not_yet, hive.on(), hive.id, s.box->id);
    return fmt::format("{} that it is not fit yet, {}", odds(not_yet), ripe_words(hive, s, a));
}

Advices leave_on(const HiveView& hive) {
    if (hive.all->phase() != Phase::during) return {};
    Advice a = advise_to(Act::leave_super, Rank::rest, "");
    std::vector<std::string> names;
    std::string words, ripe;
    for (const SuperView& s : hive.supers) {
        if (!s.estimate || s.full() < nearly_full) continue;
        const Ripeness r = ripeness(hive, s);
        if (r.verdict != Ripeness::Verdict::unripe) continue;
        names.push_back(super_name(hive, s));
        words = r.words, ripe = not_fit_words(hive, s, r, a);
        a.boxes.push_back(s.box->id);
        a.reasons.push_back(fmt::format("{}: {}; {}", names.back(), r.words, ripe));
        because(a, r.facts);
    }
    if (names.empty()) return {};
    a.what = fmt::format("leave {} on: full, not capped enough", listed(names));
    const bool one = names.size() == 1;   // then what is named above needs no name here
    how_sure(a, Sureness::likely, one ? ripe : "by the capping");
    if (one) a.reasons = {words + "; a moisture reading would outrank it"};
    else a.reasons.push_back("a moisture reading would outrank it");
    return {a};
}

Advices brood_in_super_rule(const HiveView& hive) {
    const auto brood = brood_in_super(hive);
    if (!brood || hive.supers.empty()) return {};
    Advice a = advise_to(Act::leave_super, Rank::law_and_food, "take no honey from a super with brood or eggs");
    for (const SuperView& s : hive.supers)
        if (brood_rules_out(hive, s)) a.boxes.push_back(s.box->id);
    how_sure(a, Sureness::certain, "");
    a.reasons.push_back(fmt::format("brood in a super noted on {}; worker brood needs 21 days to leave, drones 24", iso(brood->day)));
    because(a, brood->fact);
    return {a};
}

// ---- clearing and after -----------------------------------------------------------------------

/// Boards and takings older than this were dealt with without a note; own judgement.
constexpr int waiting_days = 30;

/// A super stands above the board; the stack runs from the floor up.
bool super_above_board(const HiveView& hive) {
    bool above = false;
    for (const Standing& s : hive.history->stack) {
        if (above && s.box != no_box) return true;
        if (s.what == StackPart::What::escape) above = true;
    }
    return false;
}

Advices board_left_on(const HiveView& hive) {
    Advice a = advise_to(Act::note, Rank::rest, "take the escape board off, or note that it is off");
    a.by = hive.next_visit();
    how_sure(a, Sureness::certain, "");
    a.reasons.push_back("no super stands above it any more");
    because(a, hive.escape->fact);
    return {a};
}

Advices clearing_board(const HiveView& hive) {
    if (!hive.escape) return {};
    const Day on = hive.escape->since.value_or(hive.on());
    if (days_between(on, hive.on()) > waiting_days) return {};
    if (!super_above_board(hive)) return board_left_on(hive);
    Advice a = advise_to(Act::clear, Rank::rest, "come back for the supers above the escape board");
    a.by = on + date::days{2};
    how_sure(a, Sureness::likely, "24-48 hours clear most supers");
    a.reasons.push_back(fmt::format("escape board on since {}{}", iso(on), hive.on() > *a.by ? ": longer, and bees find a way back" : ""));
    a.reasons.push_back("boxes above it bee-tight, no brood above it: bees do not leave brood");
    if (const auto brood = brood_in_super(hive)) {
        a.reasons.push_back(fmt::format("brood in a super was noted on {}", iso(brood->day)));
        because(a, brood->fact);
    }
    because(a, hive.escape->fact);
    return {a};
}

/// Honey that sets in the comb within days; the names are common ones, no source for a full list.
bool sets_in_comb(const Context& c, YardId yard, FactId& fact) {
    for (const Seen& s : c.yard(yard).facts) {
        if (!is_one_of(name_of(s.it->kind), {"bloom", "flow"}) || days_between(s.day, c.on) > 60) continue;
        for (std::string_view plant : {"rape", "canola", "ivy"})
            if (mentions(s.it->text, plant)) return fact = s.fact, true;
    }
    return false;
}

Advices extract_soon(const Context& c) {
    if (c.ledger.waiting.empty()) return {};
    const Taking* first = nullptr;
    Advice a = advise_to(Act::extract, Rank::rest, "");
    for (std::size_t i : c.ledger.waiting) {
        if (i >= c.history.takings.size()) continue;
        const Taking& t = c.history.takings[i];
        if (days_between(t.day, c.on) > waiting_days) continue;
        if (!first || t.day < first->day) first = &t;
        if (std::find(a.hives.begin(), a.hives.end(), t.hive) == a.hives.end()) a.hives.push_back(t.hive);
        because(a, t.fact);
    }
    if (!first) return {};
    a.what = fmt::format("extract what was taken off since {}", iso(first->day));
    a.by = first->day + date::days{static_cast<int>(handbook::extract_to.value)};
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back("within 3-4 days: wax moth and, where it lives, small hive beetle; else below 0 C");
    FactId plant = set_up_fact;
    const YardId yard = c.history.hives[static_cast<std::size_t>(first->hive)].yard_on(first->day);
    if (sets_in_comb(c, yard, plant)) {
        a.reasons.push_back("rape or ivy was in bloom: such honey sets in the comb and cannot wait");
        because(a, plant);
    }
    return {a};
}

}  // namespace

std::vector<Rule> harvest_rules() {
    return {
        {{"take-when-ripe", "A super comes off when enough of it is capped (2/3 with a dry shake, else your mark, 3/4) or several "
                            "frames measure below your moisture limit.",
          "Die Honigmacher, course 3 (2/3); C. Collison, Harvesting & Packing Honey (3/4); timing: Die Honigmacher", "Harvest"},
         &take_when_ripe},
        {{"comb-honey", "Comb honey comes off sealed and without brood.",
          "honey regulations (Directive 2001/110/EC, from memory); Demuth, USDA Farmers' Bulletin 503 (1912)", "Harvest"},
         &comb_honey},
        {{"measure-more-frames", "One moisture reading is one frame: several frames, outer ones too, before a super is called fit.",
          "apiary report on wet frames under cappings (blog.exometeofraiture.net, 2019); common practice for the number", "Harvest"},
         &measure_more},
        {{"not-ripe", "A moisture reading above the limit, or nectar that falls when shaken, keeps a super on however much is capped.",
          "Bienen & Natur; melkonyan.de (capped comb above 18%); shake: Somerset BKA, Die Honigmacher", "Harvest"},
         &too_wet},
        {{"leave-on", "A full super that is not capped enough stays on.",
          "bee-health.extension.org, \"Removing Surplus Honey\"; Die Honigmacher", "Harvest"},
         &leave_on},
        {{"brood-in-super", "No honey is taken from a super with brood or eggs in it.", "honey regulations (Directive 2001/110/EC, from memory)",
          "Harvest"},
         &brood_in_super_rule},
        {{"escape-board", "Above an escape board come back within 24-48 hours, boxes bee-tight, no brood above; with nothing above, it comes off.", "from memory",
          "Harvest"},
         &clearing_board},
        {{"extract-soon", "Extract within 3-4 days of taking off; rape and ivy honey set in the comb and cannot wait.",
          "bee-health.extension.org, \"Removing Surplus Honey\"; Pettis and Feldlaufer, USDA-ARS (2000); setting: from memory",
          "Harvest"},
         &extract_soon},
    };
}

}  // namespace waxtab
