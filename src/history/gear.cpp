#include <algorithm>

#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

using What = StackPart::What;

std::string_view name_of(What gear) {
    switch (gear) {
        case What::excluder: return "excluder";
        case What::escape: return "escape board";
        case What::feeder: return "feeder";
        default: return "upper entrance";
    }
}

std::vector<Standing>::iterator standing(std::vector<Standing>& stack, What gear) {
    return std::find_if(stack.begin(), stack.end(), [&](const Standing& s) { return s.what == gear; });
}

/// One of each is enough: a second is reported and not put on.
void gear_on(Replay& r, Step& s, What gear, std::size_t at) {
    std::vector<Standing>& stack = r.hive(s.fact.hive).stack;
    const auto there = standing(stack, gear);
    if (there != stack.end()) return report_gear_twice(r, s, s.fact.hive, name_of(gear), *there);
    stack.insert(stack.begin() + static_cast<std::ptrdiff_t>(at), Standing{gear, no_box, s.day(), s.id});
    gear_from_shed(r, s, name_of(gear));
}

bool gear_off(Replay& r, Step& s, What gear) {
    std::vector<Standing>& stack = r.hive(s.fact.hive).stack;
    const auto there = standing(stack, gear);
    if (there == stack.end()) return false;
    stack.erase(there);
    gear_into_shed(r, s, name_of(gear));
    return true;
}

std::size_t top_of(const Replay& r, HiveId hive) { return r.hive(hive).stack.size(); }

/// The last feed is what came off with the feeder; a feeder put on before it came off too.
bool close_feedings(const Replay& r, HiveHistory& hive, Day day) {
    if (hive.feedings.empty() || hive.feedings.back().to) return false;
    hive.feedings.back().to = day;
    for (Feeding& f : hive.feedings)
        if (!f.to && f.fact != set_up_fact && r.fact(f.fact).kind == Kind::feeder_on) f.to = day;
    return true;
}

}  // namespace

void excluder_on(Replay& r, Step& s) { gear_on(r, s, What::excluder, place_for(r, s.fact.hive, Role::brood, Placing::over)); }

void excluder_off(Replay& r, Step& s) {
    if (!gear_off(r, s, What::excluder)) report_gear_not_on(r, s, s.fact.hive, "excluder", Severity::error);
}

/// Under the box named, else under all supers.
void escape_on(Replay& r, Step& s) {
    const HiveId hive = s.fact.hive;
    std::size_t at = place_for(r, hive, Role::super, Placing::under);
    if (s.fact.box.by != BoxChoice::By::unsaid) {
        const std::vector<BoxId> above = named_boxes(r, s, hive, s.fact.box, false);
        if (above.empty()) return;
        at = place_of(r, hive, above.front());
    }
    gear_on(r, s, What::escape, at);
}

void escape_off(Replay& r, Step& s) {
    if (!gear_off(r, s, What::escape)) report_gear_not_on(r, s, s.fact.hive, "escape board", Severity::error);
}

void entrance_on(Replay& r, Step& s) { gear_on(r, s, What::upper_entrance, top_of(r, s.fact.hive)); }

void entrance_off(Replay& r, Step& s) {
    if (!gear_off(r, s, What::upper_entrance)) report_gear_not_on(r, s, s.fact.hive, "upper entrance", Severity::warning);
}

void feeder_on(Replay& r, Step& s) {
    gear_on(r, s, What::feeder, top_of(r, s.fact.hive));
    HiveHistory& hive = r.hive(s.fact.hive);
    const bool fed = !hive.feedings.empty() && !hive.feedings.back().to;
    if (!fed) hive.feedings.push_back({s.day(), std::nullopt, s.id});
}

/// A feed stands for the feeder it was given in, so a feeder nobody noted may come off after one.
void feeder_off(Replay& r, Step& s) {
    const bool fed = close_feedings(r, r.hive(s.fact.hive), s.day());
    if (!gear_off(r, s, What::feeder) && !fed) report_gear_not_on(r, s, s.fact.hive, "feeder", Severity::warning);
}

}  // namespace waxtab::replaying
