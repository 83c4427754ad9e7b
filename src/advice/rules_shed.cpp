// Empty supers in the shed, and old comb.
#include <algorithm>

#include <fmt/format.h>

#include "advice/rule.hpp"
#include "advice/shed_share.hpp"
#include "handbook/combs.hpp"

namespace waxtab {
namespace {

/// Days after the season in which moths still fly; own judgement.
constexpr int moth_days = 60;
/// Days before the season's end from which a super in the shed is not likely to go on any more; own judgement.
constexpr int stored_days = 42;
/// Days after freezing in which what comes next is said; own judgement.
constexpr int after_freezing_days = 7;

bool warm_half(const Context& c) {
    return c.phase() == Phase::during || (c.phase() == Phase::after && c.days_after_season() <= moth_days);
}

bool holds_comb(const ShedRow& row) {
    return !row.box_kind.empty() && row.count > 0 && (row.comb == Comb::drawn || row.comb == Comb::wet || row.comb == Comb::mixed);
}

/// Comb in the shed, wet and other; `frozen` of them.
struct ShedCombs {
    int drawn = 0, wet = 0, frozen = 0;
    std::vector<FactId> facts;
};

ShedCombs combs_in_shed(const Context& c) {
    ShedCombs out;
    for (const ShedRow& row : c.history.shed) {
        if (!holds_comb(row)) continue;
        out.frozen += row.frozen;
        const int open = row.count - row.frozen;
        if (open <= 0) continue;
        (row.comb == Comb::wet ? out.wet : out.drawn) += open;
        out.facts.insert(out.facts.end(), row.facts.begin(), row.facts.end());
    }
    return out;
}

std::string cold_words() {
    const auto& f = handbook::freezings;
    return fmt::format("freezing kills moth: over {} hours at {} C, {} hours at {} C; comb that held brood first", decimal(f.front().hours),
                       decimal(f.front().celsius), decimal(f.back().hours), decimal(f.back().celsius));
}

/// In spring drawn supers are about to go on; what is left in the shed by then is stored.
bool stored_for_long(const Context& c) { return c.phase() != Phase::during || c.season_days_left() <= stored_days; }

std::string moth_words(const ShedCombs& combs) {
    const std::string_view clean = "have the wet supers cleaned, or shut them tight";
    if (combs.drawn == 0) return std::string(clean);
    return combs.wet > 0 ? fmt::format("{}; guard drawn comb against moth", clean) : "guard the drawn supers in the shed against moth";
}

Advices moth(const Context& c) {
    if (!warm_half(c)) return {};
    ShedCombs combs = combs_in_shed(c);
    if (!stored_for_long(c)) combs.drawn = 0;
    if (combs.drawn + combs.wet == 0) return {};
    Advice a = advise_to(Act::shed, Rank::rest, moth_words(combs));
    how_sure(a, Sureness::possible, "");
    std::vector<std::string> open;
    if (combs.drawn > 0) open.push_back(counted(combs.drawn, "drawn super"));
    if (combs.wet > 0) open.push_back(counted(combs.wet, "wet super"));
    a.reasons.push_back(fmt::format("in the shed: {}{}", listed(open), combs.frozen > 0 ? fmt::format("; {} more frozen", combs.frozen) : ""));
    a.reasons.push_back(cold_words() + "; else an airy, cold, light place");
    because(a, combs.facts);
    return {a};
}

/// The row's last freezing when it is a few days old at most.
const Fact* just_frozen(const Context& c, const ShedRow& row) {
    if (row.frozen_facts.empty() || row.frozen <= 0) return nullptr;
    const Fact& f = c.journal.facts[row.frozen_facts.back()];
    return days_between(f.happened, c.on) <= after_freezing_days ? &f : nullptr;
}

Advices frozen(const Context& c) {
    if (!warm_half(c)) return {};
    Advice a = advise_to(Act::shed, Rank::rest, "shut the frozen supers tight before moths reach them, once thawed and dry");
    int dry = 0, wet = 0;
    for (const ShedRow& row : c.history.shed) {
        const Fact* f = just_frozen(c, row);
        if (!f) continue;
        (row.comb == Comb::wet ? wet : dry) += row.frozen;
        because(a, row.frozen_facts.back());
        a.by = std::max(a.by.value_or(f->happened), f->happened + date::days{after_freezing_days});
    }
    if (dry + wet == 0) return {};
    if (dry == 0) a.what = "keep the wet supers in the freezer, or give them to strong colonies to clean";
    how_sure(a, Sureness::likely, "");
    if (dry > 0) a.reasons.push_back(fmt::format("{} frozen: cold kills what is in them, and keeps no moth out afterwards", counted(dry, "super")));
    if (wet > 0) a.reasons.push_back(fmt::format("{} frozen wet: comb that is not dry moulds when it is shut in", counted(wet, "super")));
    return {a};
}

// ---- enough supers ----------------------------------------------------------------------------

/// Supers of one kind and comb that are asked for.
struct Asked {
    std::string box_kind;
    Comb comb = Comb::drawn;
    int wanted = 0;
    std::vector<ShedClaim> claims;
    std::vector<Advice*> pieces;
};

const HiveView* view_of(const Context& c, HiveId hive) {
    const auto at = std::find_if(c.hives.begin(), c.hives.end(), [&](const HiveView& h) { return h.id == hive; });
    return at == c.hives.end() ? nullptr : &*at;
}

std::vector<Asked> supers_asked(const Context& c, Advices& all) {
    std::vector<Asked> out;
    for (Advice& a : all) {
        const HiveView* hive = a.act == Act::add_super ? view_of(c, a.hive) : nullptr;
        if (!hive) continue;
        auto at = std::find_if(out.begin(), out.end(), [&](const Asked& o) { return o.box_kind == a.box_kind && o.comb == a.comb; });
        if (at == out.end()) at = out.insert(out.end(), Asked{a.box_kind, a.comb, 0, {}, {}});
        at->wanted += a.count;
        at->claims.push_back(claim_of(*hive, a.count, hive->days_to_next_visit()));
        at->pieces.push_back(&a);
    }
    return out;
}

/// `the shed has none`, `the shed has 2 of the 4 asked for`.
std::string shed_has(const Asked& asked, int in_shed) {
    if (in_shed == 0) return asked.wanted == 1 ? "the shed has none" : fmt::format("the shed has none of the {} asked for", asked.wanted);
    return fmt::format("the shed has {} of the {} asked for", in_shed, asked.wanted);
}

/// Tells those that get fewer than they want.
void tell_the_short(const Asked& asked, int in_shed) {
    for (Advice* piece : asked.pieces)
        for (const ShedClaim& claim : asked.claims) {
            if (claim.hive != piece->hive || claim.gets == claim.wanted()) continue;
            piece->also.emplace_back("shed-short");
            piece->reasons.push_back(shed_has(asked, in_shed) +
                                     (in_shed == 0 ? "" : claim.gets == 0 ? ": none is left for it" : fmt::format(": {} for it", claim.gets)));
        }
}

Advice get_more(const Context& c, const Asked& asked, int in_shed, std::vector<FactId> lines) {
    Advice a = advise_to(Act::shed, Rank::room, fmt::format("get {} more super{} ({}, {}): {}", asked.wanted - in_shed,
                                                            asked.wanted - in_shed == 1 ? "" : "s", asked.box_kind, comb_word(asked.comb), shed_has(asked, in_shed)));
    how_sure(a, Sureness::certain, "by what is noted of the shed");
    a.reasons.push_back(shared_words(c.journal, asked.claims));
    if (asked.comb == Comb::drawn)
        if (const int sheets = supers_in_shed(c.history, asked.box_kind, Comb::foundation, lines))
            a.reasons.push_back(fmt::format("{} of foundation {} in the shed too", sheets, sheets == 1 ? "is" : "are"));
    for (const Advice* piece : asked.pieces)
        if (piece->by && (!a.by || *piece->by < *a.by)) a.by = piece->by;
    because(a, lines);
    return a;
}

Advices shed_short(const Context& c, Advices& all) {
    if (!c.history.shed_said) return {};
    Advices out;
    for (Asked& asked : supers_asked(c, all)) {
        std::vector<FactId> lines;
        const int in_shed = supers_in_shed(c.history, asked.box_kind, asked.comb, lines);
        if (asked.wanted <= in_shed) continue;
        share_out(asked.claims, in_shed);
        out.push_back(get_more(c, asked, in_shed, lines));
        tell_the_short(asked, in_shed);
    }
    return out;
}

// ---- old comb -------------------------------------------------------------------------------

int year_of(Day day) { return static_cast<int>(date::year_month_day{day}.year()); }

bool held_brood(const Box& box) {
    return box.role == Role::brood || std::any_of(box.sightings.begin(), box.sightings.end(), [](const BoxSighting& s) {
               return s.what == BoxSighting::What::brood && s.amount > 0;
           });
}

std::string box_name(const HiveView& hive, const Box& box) {
    if (!box.label.empty()) return fmt::format("box \"{}\"", box.label);
    if (box.role == Role::brood) return hive.brood_boxes == 1 ? "the brood box" : "a brood box";
    for (const SuperView& s : hive.supers)
        if (s.box->id == box.id) return super_name(hive, s);
    return "a super";
}

/// Old comb goes in spring, when bees draw new; before the season and in its first weeks.
bool time_to_renew(const Context& c) {
    return c.phase() == Phase::before || (c.phase() == Phase::during && !c.late());
}

Advices comb_age(const HiveView& hive) {
    if (!time_to_renew(*hive.all)) return {};
    Advice a = advise_to(Act::note, Rank::rest, "");
    std::vector<std::string> names;
    for (const Standing& s : hive.history->stack) {
        if (s.box == no_box) continue;
        const Box& box = hive.all->history.boxes[static_cast<std::size_t>(s.box)];
        if (box.comb_year == 0 || !held_brood(box)) continue;
        const int age = year_of(hive.on()) - box.comb_year;
        if (age < handbook::brood_comb_years) continue;
        names.push_back(box_name(hive, box));
        a.reasons.push_back(fmt::format("{}: comb drawn in {}, {} years old; comb that held brood is renewed after 3 to 4", names.back(),
                                        box.comb_year, age));
        a.boxes.push_back(box.id);
        because(a, box.comb_year_fact);
    }
    if (names.empty()) return {};
    a.what = fmt::format("renew the comb of {}, a few frames at a time", listed(names));
    how_sure(a, Sureness::possible, "practice differs: 3 to 4 years, 5, or never");
    return {a};
}

}  // namespace

std::vector<Rule> shed_rules() {
    return {
        {{"shed-moth", "Supers of comb in the shed are guarded against moth while it is warm, wet ones cleaned or shut tight; frozen ones "
                       "are left out.",
          "COLOSS BEEBOOK, wax moth, sec. 5.8.1 (after Charriere and Imdorf, 1999); common practice for the rest", "Shed"},
         &moth},
        {{"shed-frozen", "Frozen supers are shut tight once thawed and dry; wet ones stay frozen or go to strong colonies.",
          "COLOSS BEEBOOK, wax moth, sec. 5.8.1", "Shed"},
         &frozen},
        {{"shed-short", "Where more supers are asked for than the shed holds, they go first where room is likeliest to run out; who goes "
                        "without and how many are short is said.",
          "the shed as noted; the order is own judgement", "Shed"},
         &shed_short},
        {{"comb-age", "Comb that held brood is renewed after 3 to 4 years, where its year was noted; honey comb is not asked about.",
          "University of Minnesota Bee Squad (backyardbeekeeping.iamcountryside.com); E. Jaycox as told at beekeep.info", "Shed"},
         &comb_age},
    };
}

}  // namespace waxtab
