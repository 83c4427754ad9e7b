#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

std::string substance_of(const Fact& f) { return f.detail.empty() ? f.text : std::string(f.detail); }

std::optional<int> days_meant(const Fact& f) {
    if (f.second.dimension != Dimension::duration) return std::nullopt;
    return static_cast<int>(f.second.amount);
}

Feeding* open_feeding(HiveHistory& hive) {
    return !hive.feedings.empty() && !hive.feedings.back().to ? &hive.feedings.back() : nullptr;
}

}  // namespace

/// The next feed does not tell when the one before was gone; a feeder that was put on gets its feed.
void feed(Replay& r, Step& s) {
    HiveHistory& hive = r.hive(s.fact.hive);
    Feeding* open = open_feeding(hive);
    if (open && r.fact(open->fact).kind == Kind::feeder_on && open->from == s.day()) {
        open->fact = s.id;
        return;
    }
    hive.feedings.push_back({s.day(), std::nullopt, s.id});
}

void feeder_state(Replay& r, Step& s) {
    if (s.fact.detail != "empty") return;
    if (Feeding* open = open_feeding(r.hive(s.fact.hive))) open->to = s.day();
}

void treatment(Replay& r, Step& s) {
    r.hive(s.fact.hive).treatings.push_back({s.day(), s.day(), s.id, substance_of(s.fact), days_meant(s.fact)});
}

void treatment_on(Replay& r, Step& s) {
    r.hive(s.fact.hive).treatings.push_back({s.day(), std::nullopt, s.id, substance_of(s.fact), days_meant(s.fact)});
}

/// All doses of the substance come out; all that is in, when none is named.
void treatment_off(Replay& r, Step& s) {
    const std::string substance = substance_of(s.fact);
    bool any = false;
    for (Treating& t : r.hive(s.fact.hive).treatings) {
        if (t.to || (!substance.empty() && !t.substance.empty() && t.substance != substance)) continue;
        t.to = s.day();
        any = true;
    }
    if (!any) report_treatment_not_on(r, s, s.fact.hive, substance);
}

}  // namespace waxtab::replaying
