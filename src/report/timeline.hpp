#pragma once
#include <string>

#include "report/style.hpp"

namespace waxtab {

/// Yard by yard what was noted of the yard, then hive by hive what is stacked on it on `history.on`, drawn as
/// it stands with the floor at the bottom, since when, and what happened day by day.
std::string timeline_text(const Journal& journal, const History& history, const Selection& selection,
                          const Style& style);

/// The same as one JSON document: `on`, `yards`, `hives` with `stack` from the floor up and `events`.
std::string timeline_json(const Journal& journal, const History& history, const Selection& selection,
                          const Style& style);

/// What a thing standing in a stack is: `excluder`, or the words of its box.
std::string standing_text(const Journal& journal, const History& history, const Standing& standing);

/// A hive the timeline lists: one that is chosen, or is or was alive.
bool in_timeline(const Selection& selection, const History& history, const HiveHistory& hive);

/// How a hive came and went, in words: `from the start`, `since 2026-05-20, from h1`, `dead 2026-08-02`.
std::string life_text(const Journal& journal, const HiveHistory& hive);

}  // namespace waxtab
