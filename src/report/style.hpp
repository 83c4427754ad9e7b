#pragma once
#include <optional>
#include <string>
#include <vector>

#include "facts/journal.hpp"
#include "history/history.hpp"

namespace waxtab {

/// How a report is printed; never what it says.
struct Style {
    MassUnit mass = MassUnit::kilogram;
    bool refs = true;       ///< name journal lines as file:line
    bool colour = false;    ///< headings in bold
};

/// What a report lists. It never changes what counts: estimates and sums rest on the whole journal.
struct Selection {
    std::vector<HiveId> hives;          ///< empty: all
    std::vector<YardId> yards;          ///< empty: all
    std::optional<Day> since, until;    ///< both included

    bool has_hive(HiveId hive) const;
    bool has_yard(YardId yard) const;
    bool has_day(Day day) const { return (!since || *since <= day) && (!until || day <= *until); }
    /// True when nothing is left out.
    bool everything() const { return hives.empty() && yards.empty() && !since && !until; }
};

/// True when a hive is listed: named itself, and standing in a listed yard on `day`.
bool lists(const Selection& selection, const History& history, HiveId hive, Day day);
/// True when a fact is listed, by its own hives, yard and day.
bool lists(const Selection& selection, const Fact& fact);

/// A heading line, bold when in colour, with its line end.
std::string heading(std::string_view text, const Style& style);

}  // namespace waxtab
