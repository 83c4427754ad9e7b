#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "history/history.hpp"

namespace waxtab {

/// So many forecasts are wanted before they say anything; own judgement.
inline constexpr int few_forecasts = 20;

struct Judged;

/// What the readings say of the ranges: as they should be as far as can be told, too narrow, too wide; `open` where
/// fewer than `few_days` days have forecasts.
enum class RangesHeld : std::uint8_t { open, well, narrow, wide };

/// So many days with forecasts are wanted before ranges are called anything; own judgement.
inline constexpr int few_days = 6;

/// How forecasts of one horizon held against what was then written.
struct HindsightRow {
    int from_days = 0, to_days = 0;     ///< days between the two visits, both included
    int forecasts = 0;
    /// Of them, where a line through the last two visits could be drawn.
    int with_line = 0;
    /// Shares of readings inside the 80 % and the 50 % range, 0..1. A rounded reading counts in part, as Stretch::inside says,
    /// so that ranges that are right come to 0.8 and 0.5.
    double inside_80 = 0, inside_50 = 0;
    double error_kg = 0, error_share = 0;   ///< mean absolute error, kilograms and share of a super
    double bias_share = 0;              ///< mean of foretold less read; positive: foretold too much
    double no_change_share = 0;         ///< mean absolute error of "as at the last visit"
    /// Mean absolute errors of the line and of the forecast where there is a line.
    double line_share = 0, error_with_line_share = 0;
    /// By `inside_80`: called wrong where it lies further from 0.8 than 0.05 and than 2.6 of its standard errors (99 of a
    /// hundred), the forecasts made on one day taken as one, since hives of a day err together.
    RangesHeld ranges = RangesHeld::open;
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
    std::vector<HindsightRow> rows;     ///< 1-8, 9-12, 13-18, 19-60 days; rows without a forecast are left out
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

/// Sums up the forecasts that reach `from_days` to `to_days` ahead, both included. Readings that are bounds ("at least") are
/// left out. Pure.
HindsightRow sum_up(const std::vector<Judged>& judged, int from_days, int to_days);

/// At every past visit: what would have been foretold of the next from what was noted by then, against what was
/// then written. Looks at visits up to `on`. Pure.
Hindsight hindsight(const Journal& journal, Day on);

/// The same from a history already replayed to `history.on`.
Hindsight hindsight(const Journal& journal, const History& history);

}  // namespace waxtab
