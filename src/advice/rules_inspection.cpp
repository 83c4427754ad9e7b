// When a hive is due to be opened.
#include <fmt/format.h>

#include "advice/rule.hpp"
#include "handbook/swarm.hpp"

namespace waxtab {
namespace {

/// Any look every so many days in the season, by the strictest rule seen: Florida's compliance agreement.
constexpr int monthly = 31;

bool at_risk(const HiveView& hive) {
    if (hive.queen.cells && days_between(hive.queen.cells->day, hive.on()) <= 14) return true;
    if (hive.queen.cells_removed && days_between(hive.queen.cells_removed->day, hive.on()) <= 14) return true;
    return hive.last(14, Kind::crowding, {"packed", "backfilled", "crowded"}).has_value();
}

int gap_allowed(const HiveView& hive) {
    if (!hive.all->swarm_season()) return monthly;
    if (hive.queen.clipped) return handbook::inspection_days_clipped;
    return at_risk(hive) ? handbook::inspection_days_high_risk : handbook::inspection_days;
}

/// A visit that looked at the colony, not just at supers or the scale.
bool looks_inside(const Fact& f) {
    switch (f.kind) {
        case Kind::brood: case Kind::eggs: case Kind::larvae: case Kind::sealed_brood: case Kind::queen: case Kind::cups:
        case Kind::queen_cells: case Kind::inspected: case Kind::crowding: case Kind::bees: case Kind::pattern: case Kind::stores:
        case Kind::queen_marked: case Kind::queen_clipped: case Kind::cells_removed: case Kind::cells_left: case Kind::hive_split:
        case Kind::nuc_made: case Kind::swarm_hived: case Kind::hive_bought: case Kind::queen_introduced: case Kind::frames_moved:
            return true;
        default: return false;
    }
}

bool virgin_due(const HiveView& hive) { return hive.queen.clock.has_value(); }

Advices due(const HiveView& hive) {
    if (hive.all->phase() == Phase::after || virgin_due(hive)) return {};
    if (hive.all->phase() == Phase::before && !hive.all->swarm_season()) return {};
    const auto looked = hive.last(100000, [](const Fact& f) { return looks_inside(f); });
    if (!looked) return {};
    const int allowed = gap_allowed(hive);
    const int gap = days_between(looked->day, hive.on());
    if (gap < allowed) return {};
    Advice a = advise_to(Act::open, Rank::rest, "inspect it");
    a.by = looked->day + date::days{allowed};
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back(fmt::format("last looked into {}; every {} {}", ago(looked->day, hive.on()), counted(allowed, "day"),
                                    !hive.all->swarm_season()      ? "at least in the season"
                                    : hive.queen.clipped           ? "with a clipped queen in your swarm season"
                                    : allowed == handbook::inspection_days ? "in your swarm season"
                                                                           : "in your swarm season with cells or crowding noted"));
    because(a, looked->fact);
    return {a};
}

}  // namespace

std::vector<Rule> inspection_rules() {
    return {
        {{"inspection-due", "In your swarm season every 7 days, 5 where cells or crowding were noted, 10 with a clipped queen, else "
                            "monthly; silent while a new queen is due.",
          "BBKA, \"May\" (I. Campbell); Trunch Beekeepers; clipped: from memory; monthly: Florida compliance agreement (ch. 586.10 "
          "F.S.)", "Inspections"},
         &due},
    };
}

}  // namespace waxtab
