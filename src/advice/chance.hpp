#pragma once
#include <optional>
#include <string>

#include "advice/rule.hpp"

namespace waxtab {

/// Chance that a value with this 80 % range lies above `mark`, 0..1. One chance in ten lies below the range, one above
/// it and half below its value; on either side of it the value is taken as normal.
double chance_above(const Range& range, double mark);

/// Chance that a super is fit to take by `by`, by its capping alone, as foreseen on `on`; none where no such day is.
std::optional<double> chance_ripe_by(const SuperEstimate& super, Day on, Day by);

/// Something tells how much room there is: every super was looked at, or is known to have gone on since the notes
/// began. Else no chance is given.
bool room_known(const HiveView& hive);

/// The day up to which room is foreseen: the end of the season, or as far ahead as gains are foreseen.
struct Horizon {
    int days = 0;
    Day day{};
    std::string words;      ///< `2026-08-31, the end of your season`
};
Horizon season_horizon(const Context& context);

/// Likely from one in two.
inline Sureness sure_of(double chance) { return chance >= 0.5 ? Sureness::likely : Sureness::possible; }

/// Keeps a figure for programs beside the words: `that` it may come true by `by`.
void keep_chance(Advice& a, std::string_view that, double chance, std::optional<Day> by, HiveId hive, BoxId box = no_box);

}  // namespace waxtab
