#include <fmt/format.h>

#include "history/citing.hpp"
#include "history/contradictions.hpp"

namespace waxtab::replaying {
namespace {

/// How a hive came to its end: `died on 2026-04-15`.
std::string end_in_words(const Replay& r, const HiveHistory& h) {
    const std::string day = iso(*h.ended);
    switch (r.fact(h.end_fact).kind) {
        case Kind::hive_sold: return "was sold on " + day;
        case Kind::hive_united: return fmt::format("was united with {} on {}", r.name(h.united_into), day);
        case Kind::hive_dead: return "died on " + day;
        default: return "was given up on " + day;
    }
}

/// One message a visit is enough for a hive that cannot be visited.
bool first_of_day(std::optional<Day>& reported, Day day) {
    if (reported == day) return false;
    reported = day;
    return true;
}

}  // namespace

void report_hive_gone(Replay& r, const Step& s, HiveId hive) {
    if (!first_of_day(r.state(hive).life_reported, s.day())) return;
    const HiveHistory& h = r.hive(hive);
    report(r, s, Severity::error, "hive-gone",
           fmt::format("{} is noted for {}, which {}", quoted(r, s.fact), r.name(hive), end_in_words(r, h)),
           "if another hive is meant, write its name; if this one lives on, correct the earlier line",
           {cite(r, hive, h.end_fact, fmt::format("the end of {} was noted here", r.name(hive)), {})});
}

void report_hive_not_yet(Replay& r, const Step& s, HiveId hive) {
    HiveState& state = r.state(hive);
    if (!first_of_day(state.life_reported, s.day())) return;
    const std::string name = r.name(hive);
    report(r, s, Severity::error, "hive-not-yet",
           fmt::format("{} is noted for {}, which only comes into being on {}", quoted(r, s.fact), name,
                       iso(r.fact(state.birth_fact).happened)),
           fmt::format("correct the date of one of the two lines, or set the hive up: `hive {} at ...: deep`", name),
           {cite(r, hive, state.birth_fact, fmt::format("{} comes into being here", name), {})});
}

void report_already_living(Replay& r, const Step& s, HiveId hive) {
    const std::string name = r.name(hive);
    report(r, s, Severity::error, "already-living",
           fmt::format("{} makes a new hive {}, but {} has bees already", quoted(r, s.fact), name, name),
           "give the new hive a name of its own; bees put to a living hive are written `united with`",
           {cite(r, hive, r.state(hive).birth_fact, fmt::format("{} came into being here", name), fmt::format("{} was set up here", name))});
}

void report_with_itself(Replay& r, const Step& s, HiveId hive) {
    report(r, s, Severity::error, "with-itself", fmt::format("{} names {} twice", quoted(r, s.fact), r.name(hive)),
           "write the two hives: `h5 united with h4`, `h5 top super moved to h6`");
}

void report_already_there(Replay& r, const Step& s, HiveId hive) {
    const std::string name = r.name(hive);
    report(r, s, Severity::warning, "already-there",
           fmt::format("{} stands at {} already", name, r.journal.yard_name(s.fact.yard)),
           "check the name of the yard and the date of the move",
           {cite(r, hive, r.state(hive).yard_fact, fmt::format("{} was brought there here", name), fmt::format("{} was set up here", name))});
}

void report_treatment_not_on(Replay& r, const Step& s, HiveId hive, const std::string& substance) {
    const std::string name = r.name(hive);
    const std::string what = substance.empty() ? "treatment" : substance;
    const std::vector<Treating>& all = r.hive(hive).treatings;
    FactId last = set_up_fact;
    for (auto t = all.rbegin(); t != all.rend() && last == set_up_fact; ++t)
        if (substance.empty() || t->substance == substance) last = t->fact;
    const std::string line = substance.empty() ? std::string{"thymol"} : substance;
    report(r, s, Severity::error, "treatment-not-on", fmt::format("no {} is in {} to take out", what, name),
           fmt::format("if it was put in, write that line on its day: `{} {} in`", name, line),
           {last == set_up_fact ? Related{} : cite(r, hive, last, "the last one was noted here", {})});
}

void report_frozen_on_hive(Replay& r, const Step& s, BoxId box) {
    const BoxStay& stay = r.box(box).stays.back();
    report(r, s, Severity::warning, "no-such-super",
           fmt::format("{} freezes '{}', but it stands on {}", quoted(r, s.fact), r.box(box).label, r.name(stay.hive)),
           fmt::format("if it came off, write that first: `{} super \"{}\" off to shed`", r.name(stay.hive), r.box(box).label),
           {cite(r, stay.hive, stay.on_fact, "it was put on here", {})});
}

void report_shed_short(Replay& r, const Step& s, const ShedRow& row, int wanted) {
    std::string what = row.what == "super" || row.what == "brood box" ? row.box_kind + " " + row.what : row.what;
    what += wanted == 1 ? "" : what.ends_with("x") ? "es" : "s";
    const std::string left = row.count == 0 ? "none is" : row.count == 1 ? "1 is" : fmt::format("{} are", row.count);
    report(r, s, Severity::warning, "shed-short",
           fmt::format("{} takes {} {} from the shed, where {} left", quoted(r, s.fact), wanted, what, left),
           "if more came into the shed, write how many are there now: `shed: 6 supers drawn`",
           {row.facts.empty() ? Related{} : cite(r, no_hive, row.facts.back(), "the shed last changed here", {})});
}

}  // namespace waxtab::replaying
