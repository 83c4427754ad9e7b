#pragma once
#include <string>
#include <vector>

#include "advice/bring.hpp"
#include "report/style.hpp"

namespace waxtab {

/// What to put on the truck, yard by yard in the order to drive: hives to open and what for, supers by kind and
/// comb with those to take in case, escape boards, feed, strips to take out, what the honey coming home needs,
/// to-dos; then all of it against the shed. `advice` is what the round was planned from.
std::string bring_text(const Journal& journal, const Round& round, const std::vector<Advice>& advice,
                       const Selection& selection, const Style& style);

/// The same as one JSON document: `from`, `to`, `yards`, `shed`, `todos`.
std::string bring_json(const Journal& journal, const Round& round, const std::vector<Advice>& advice,
                       const Selection& selection, const Style& style);

/// One thing to load or to do at a yard, with the journal lines behind it.
struct LoadLine {
    std::string words;
    std::vector<FactId> because;
};

/// Why supers go on at a stop where no advice asks for them yet; empty where none do.
std::string ahead_words(const Stop& stop);

/// What a yard's round wants loaded, in words, supers first.
std::vector<LoadLine> load_lines(const Journal& journal, const YardRound& yard, const Style& style);

/// Who goes first and who without where the shed is short of supers; empty where it is not.
std::string short_words(const Journal& journal, const ShedCheck& row);

/// A to-do as the keeper wrote it, with its hive.
std::string todo_words(const Journal& journal, FactId fact);

/// What of a round is listed: its yards and hives by the selection. Hives with nothing but a to-do are left out,
/// the yard's to-dos name them.
Round listed(const Round& round, const std::vector<Advice>& advice, const Selection& selection);

}  // namespace waxtab
