// A notifiable disease suspected: nothing moves.
#include <algorithm>

#include <fmt/format.h>

#include "advice/disease.hpp"

namespace waxtab {
namespace {

/// Diseases and pests that have to be reported in most countries; which, the keeper's law says.
constexpr std::string_view notifiable[] = {"foulbrood", "foul brood", "afb", "efb", "tropilaelaps", "small hive beetle"};

bool names_one(std::string_view text) {
    return std::any_of(std::begin(notifiable), std::end(notifiable), [&](std::string_view n) { return mentions(text, n); });
}

bool is_disease(const Fact& f) {
    if (f.manner == "none") return false;
    return f.kind == Kind::disease && (names_one(f.detail) || names_one(f.text));
}

/// An inspector's finding, as keepers note it.
bool lifts(const Fact& f) {
    if (f.kind == Kind::disease && f.manner == "none") return true;
    return f.kind == Kind::remark && (mentions(f.text, "all clear") || mentions(f.text, "standstill lifted"));
}

}  // namespace

std::optional<Seen> suspected_disease(const YardView& yard) {
    std::optional<Seen> found, lifted;
    const auto walk = [&](const std::vector<Seen>& facts) {
        for (const Seen& s : facts) {
            if (is_disease(*s.it) && (!found || s.fact > found->fact)) found = s;
            if (lifts(*s.it) && (!lifted || s.fact > lifted->fact)) lifted = s;
        }
    };
    walk(yard.facts);
    for (const HiveView* h : yard.hives) walk(h->facts);
    if (!found || days_between(found->day, yard.all->on) > 365) return std::nullopt;
    return lifted && lifted->fact > found->fact ? std::nullopt : found;
}

namespace {

Advices stand_still(const YardView& yard) {
    const auto seen = suspected_disease(yard);
    if (!seen) return {};
    const std::string name = seen->it->detail.empty() ? seen->it->text : std::string(seen->it->detail);
    Advice a = advise_to(Act::stand_still, Rank::disease,
                         fmt::format("call the bee inspector; nothing moves from or to {}", yard.id < 0 ? "the yard" : yard.all->journal.yard_name(yard.id)));
    a.by = yard.all->on;
    how_sure(a, seen->it->manner == "confirmed" ? Sureness::certain : Sureness::likely, "a suspicion is enough");
    a.reasons.push_back(fmt::format("{} {} at {} on {}", name, seen->it->manner.empty() ? "noted" : seen->it->manner,
                                    seen->it->hive < 0 ? "the yard" : yard.all->journal.hive_name(seen->it->hive), iso(seen->day)));
    a.reasons.push_back("no frames, supers, colonies or tools in or out until the inspector says so; your law decides");
    a.reasons.push_back("advice to move boxes or frames here is held back");
    because(a, seen->fact);
    return {a};
}

/// Days after a death for which its boxes are asked about; own judgement.
constexpr int dead_out_days = 21;

bool boxes_standing(const HiveHistory& h) {
    return std::any_of(h.stack.begin(), h.stack.end(), [](const Standing& s) { return s.box != no_box; });
}

Advices dead_out(const Context& c) {
    Advices out;
    for (const HiveHistory& h : c.history.hives) {
        if (h.alive || !h.ended || h.end_fact == set_up_fact || c.journal.facts[h.end_fact].kind != Kind::hive_dead) continue;
        if (days_between(*h.ended, c.on) > dead_out_days || !boxes_standing(h)) continue;
        Advice a = advise_to(Act::note, Rank::disease, "shut it up tight; find out why it died before its combs go anywhere");
        a.hive = h.hive;
        a.yard = h.yard_on(c.on);
        a.by = *h.ended + date::days{2};
        how_sure(a, Sureness::likely, "");
        a.reasons.push_back(fmt::format("dead since {}, its boxes still stand there: robbers carry honey off, and disease with it", iso(*h.ended)));
        because(a, h.end_fact);
        out.push_back(std::move(a));
    }
    return out;
}

}  // namespace

std::vector<Rule> disease_rules() {
    return {
        {{"dead-out", "A dead hive is shut against robbers; its combs go nowhere before the cause is known.", "common practice, no source", "Disease"},
         &dead_out},
        {{"notifiable-disease", "Foulbrood or another notifiable disease suspected: all advice that moves frames, supers or colonies from "
                                "or to that yard stops; call the inspector.",
          "local law on notifiable bee diseases", "Disease"},
         &stand_still},
    };
}

}  // namespace waxtab
