#pragma once
#include <optional>
#include <string>
#include <vector>

#include "history/history.hpp"

namespace waxtab {

/// So many forecasts are wanted before they say anything; own judgement.
inline constexpr int few_forecasts = 20;

/// How forecasts of one horizon held against what was then written.
struct HindsightRow {
    int from_days = 0, to_days = 0;     ///< days between the two visits, both included
    int forecasts = 0;
    /// Of them, where a line through the last two visits could be drawn.
    int with_line = 0;
    double inside_80 = 0;               ///< share of readings inside the 80 % range, 0..1
    double error_kg = 0, error_share = 0;   ///< mean absolute error, kilograms and share of a super
    double bias_share = 0;              ///< mean of foretold less read; positive: foretold too much
    double no_change_share = 0;         ///< mean absolute error of "as at the last visit"
    /// Mean absolute errors of the line and of the forecast where there is a line.
    double line_share = 0, error_with_line_share = 0;
};

/// A super that came to nothing, or a hive that came to its last room.
struct HindsightCase {
    HiveId hive = no_hive;
    BoxId box = no_box;
    Day day{};                          ///< found full; or taken off, or last seen, empty
    FactId because = 0;
    /// The highest chance of running out foretold at the visit before; for empty supers at the visit it was put on.
    double chance = 0;
};

/// How good past estimates were on this journal.
struct Hindsight {
    std::vector<HindsightRow> rows;     ///< 1-8, 9-12, 13-18, more days; rows without a forecast are left out
    HindsightRow all;
    /// Hives found with every super full: room had run out.
    std::vector<HindsightCase> ran_out;
    /// Supers put on of which less than a twentieth was ever filled, by the end of their stay or three weeks.
    std::vector<HindsightCase> stayed_empty;
    int supers_put_on = 0;
    /// Of the hives that ran out, those where the chance stood above the accepted risk at the visit before.
    int ran_out_foretold = 0;
    bool too_little = true;             ///< fewer than `few_forecasts`: nothing to judge by
};

/// At every past visit: what would have been foretold of the next from what was noted by then, against what was
/// then written. Looks at visits up to `on`. Pure.
Hindsight hindsight(const Journal& journal, Day on);

/// The same from a history already replayed to `history.on`.
Hindsight hindsight(const Journal& journal, const History& history);

}  // namespace waxtab
