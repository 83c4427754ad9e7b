// Excluders, upper entrances and the lower one.
#include <fmt/format.h>

#include "advice/harvest.hpp"
#include "advice/supers.hpp"

namespace waxtab {
namespace {

Advices out_for_winter(const HiveView& hive) {
    // A season that ends in summer is no winter yet.
    const int month = hive.all->northern_month();
    if (hive.all->phase() != Phase::after || (month > 2 && month < 9) || !hive.excluder || hive.supers.empty()) return {};
    Advice a = advise_to(Act::excluder, Rank::rest, "take the excluder out before winter");
    a.by = hive.next_visit();
    how_sure(a, Sureness::certain, "");
    a.reasons.push_back(fmt::format("{} on after your season: the cluster moves up and would leave the queen below",
                                    counted(static_cast<int>(hive.supers.size()), "super")));
    for (const Standing& s : hive.history->stack)
        if (s.what == StackPart::What::excluder) because(a, s.fact);
    because(a, hive.supers.back().on_fact);
    return {a};
}

Advices brood_above(const HiveView& hive) {
    const auto brood = brood_in_super(hive);
    if (!hive.excluder || !brood) return {};
    Advice a = advise_to(Act::excluder, Rank::room, "look over the excluder for a bent wire, and where the queen is");
    a.by = hive.next_visit();
    how_sure(a, Sureness::possible, "several explanations");
    a.reasons.push_back(fmt::format("brood or eggs in a super on {} with the excluder on", iso(brood->day)));
    a.reasons.push_back("a small queen passed it, a wire is bent, she was above when it went on, or workers or a second queen lay there");
    a.reasons.push_back("a queen cell above it can emerge; drones hatched above it are trapped: give them a way out");
    because(a, brood->fact);
    return {a};
}

bool asks_for_room(const HiveView& hive) { return crowded(hive).has_value() || hive.flow().state == Flow::State::heavy ||
                                                  hive.flow().state == Flow::State::on; }

Advices bait(const HiveView& hive) {
    if (!hive.excluder || hive.supers.size() != 1 || !asks_for_room(hive)) return {};
    const SuperView& s = hive.supers.front();
    if (!s.built_comb() || !s.estimate || !s.estimate->last_seen || s.full() > 0.05 || !s.since) return {};
    if (days_between(*s.since, *s.estimate->last_seen) < 7) return {};
    Advice a = advise_to(Act::excluder, Rank::room, "bait the super: a frame of honey or brood above the excluder, or the excluder out "
                                                    "until they work it");
    a.by = hive.next_visit();
    how_sure(a, Sureness::possible, "bees may be slow to pass an excluder");
    a.reasons.push_back(fmt::format("{} untouched on {}, {} days after it went on", super_name(hive, s), iso(*s.estimate->last_seen),
                                    days_between(*s.since, *s.estimate->last_seen)));
    because(a, s.estimate->because);
    because(a, s.on_fact);
    return {a};
}

bool robbing(const Fact& f) {
    return f.kind == Kind::pest && f.manner != "none" &&
           (mentions(f.detail, "robb") || mentions(f.text, "robb") || mentions(f.detail, "wasp") || mentions(f.text, "wasp"));
}

Advices reduce_entrance(const YardView& yard) {
    Advice a = advise_to(Act::entrance, Rank::rest, "reduce the entrances, shut upper ones, leave nothing sweet about");
    std::optional<Seen> newest;
    for (const HiveView* h : yard.hives) {
        const auto seen = h->last(10, robbing);
        if (!seen) continue;
        a.hives.push_back(h->id);
        because(a, seen->fact);
        if (!newest || seen->day > newest->day) newest = seen;
    }
    if (!newest) return {};
    a.by = yard.all->on;
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back(fmt::format("robbers or wasps noted on {} at {}; open hives only for minutes", iso(newest->day),
                                    hive_names(yard, a.hives)));
    return {a};
}

Advices shut_upper(const HiveView& hive) {
    if (!hive.upper_entrance || hive.all->phase() == Phase::before) return {};
    const bool useless = hive.supers.empty() || hive.all->phase() == Phase::after;
    const bool dearth = hive.flow().state == Flow::State::over || hive.flow().state == Flow::State::none;
    if (!useless && !dearth) return {};
    Advice a = advise_to(Act::entrance, Rank::rest, "shut the upper entrance");
    a.by = hive.next_visit();
    how_sure(a, Sureness::possible, "");
    a.reasons.push_back(useless ? "no super needs it now, robbers do" : fmt::format("no flow on {}: one entrance is easier to guard",
                                                                                  iso(hive.flow().day)));
    because(a, hive.upper_entrance->fact);
    return {a};
}

}  // namespace

std::vector<Rule> excluder_rules() {
    return {
        {{"excluder-winter", "No excluder stays in a hive that keeps a super for winter.", "club page on wintering (published); basis "
          "common practice", "Excluder and entrances"},
         &out_for_winter},
        {{"brood-above-excluder", "Eggs or brood above an excluder have several explanations; none is taken as the truth.",
          "J. Bromenshenk, BEE-L (Oct 2001); oxfordbees.com; bent wires: common practice, no source", "Excluder and entrances"},
         &brood_above},
        {{"bait", "A drawn super left untouched over an excluder is baited.", "betterbee.com; T. Sebestyen, Bee Culture",
          "Excluder and entrances"},
         &bait},
        {{"reduce-entrance", "Robbers or wasps: a smaller entrance, minutes only, no honey exposed.",
          "factdirectory.com and others: weak", "Excluder and entrances"},
         &reduce_entrance},
        {{"upper-entrance", "Upper entrances help foragers reach the supers; without supers or flow they are shut.",
          "common practice, no source; travel stain: Imirie, Pink Pages (May 2002)", "Excluder and entrances"},
         &shut_upper},
    };
}

}  // namespace waxtab
