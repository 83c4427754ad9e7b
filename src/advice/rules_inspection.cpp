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

/// The brood nest was opened and looked at.
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

/// Bees washed or rolled are shaken off brood combs, and strips hang between them: the nest was open, and that is a
/// look by law, though not one for queen cells.
bool opens_nest(const Fact& f) {
    if (f.kind == Kind::mites) return !is_one_of(f.detail, {"drop", ""});
    return looks_inside(f) || f.kind == Kind::treatment_on || f.kind == Kind::treatment_off || f.kind == Kind::larvae;
}

/// Supers were looked into, or the brood nest.
bool opens_hive(const Fact& f) {
    switch (f.kind) {
        case Kind::full: case Kind::capped: case Kind::drawn: case Kind::shakes_out: case Kind::super_on: case Kind::super_off:
        case Kind::frames_off: case Kind::super_brood: case Kind::no_change:
            return true;
        default: return opens_nest(f);
    }
}

bool virgin_due(const HiveView& hive) { return hive.queen.clock.has_value(); }

std::string_view why_so_often(const HiveView& hive, int allowed) {
    if (!hive.all->swarm_season()) return "at least in the season";
    if (hive.queen.clipped) return "with a clipped queen in your swarm season";
    return allowed == handbook::inspection_days ? "in your swarm season" : "in your swarm season with cells or crowding noted";
}

/// Visits of this many days without a word of the brood nest are asked about; own judgement.
constexpr int unlooked_days = 14;

/// Something was opened since, but not to look for queen cells.
std::optional<Seen> looked_since(const HiveView& hive, const Seen& looked) {
    auto other = hive.last(days_between(looked.day, hive.on()), opens_hive);
    if (other && other->day > looked.day) return other;
    return std::nullopt;
}

/// A hive that is visited and of whose brood nest nothing was ever noted.
Advices never_looked(const HiveView& hive) {
    const auto opened = hive.last(unlooked_days, opens_hive);
    if (!hive.all->swarm_season() || !opened) return {};
    const Day first = hive.history->visits.front();
    if (days_between(first, hive.on()) < unlooked_days) return {};
    Advice a = advise_to(Act::open, Rank::rest, "look into the brood nest, or note that you did");
    a.by = hive.next_visit();
    how_sure(a, Sureness::possible, "nothing was ever noted of it");
    a.reasons.push_back(fmt::format("visited since {}, last opened on {}; queen cells show only in the brood nest", iso(first), iso(opened->day)));
    because(a, opened->fact);
    return {a};
}

Advices due(const HiveView& hive) {
    if (hive.all->phase() == Phase::after || virgin_due(hive)) return {};
    if (hive.all->phase() == Phase::before && !hive.all->swarm_season()) return {};
    const bool swarming = hive.all->swarm_season();
    const auto looked = hive.last(all_days, swarming ? looks_inside : opens_hive);
    if (!looked) return never_looked(hive);
    const int allowed = gap_allowed(hive);
    if (days_between(looked->day, hive.on()) < allowed) return {};
    Advice a = advise_to(Act::open, Rank::rest, swarming ? "inspect the brood nest" : "inspect it");
    a.by = looked->day + date::days{allowed};
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back(fmt::format("{} last looked into {}; every {} {}", swarming ? "brood nest" : "hive", ago(looked->day, hive.on()),
                                    counted(allowed, "day"), why_so_often(hive, allowed)));
    if (const auto since = looked_since(hive, *looked)) {
        a.reasons.push_back(fmt::format("noted since, on {}: supers or a count of mites, which tell nothing of queen cells", iso(since->day)));
        because(a, since->fact);
    }
    because(a, looked->fact);
    return {a};
}

}  // namespace

std::vector<Rule> inspection_rules() {
    return {
        {{"inspection-due", "In your swarm season every 7 days, 5 where cells or crowding were noted, 10 with a clipped queen, else "
                            "monthly; then a look into the brood nest counts, else any opening; silent while a new queen is due.",
          "BBKA, \"May\" (I. Campbell); Trunch Beekeepers; clipped: from memory; monthly: Florida compliance agreement (ch. 586.10 "
          "F.S.)", "Inspections"},
         &due},
    };
}

}  // namespace waxtab
