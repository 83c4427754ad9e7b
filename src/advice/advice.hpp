#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "estimate/estimate.hpp"
#include "ledger/ledger.hpp"

namespace waxtab {

/// Order in which advice that contradicts is settled: the lower wins.
enum class Rank : std::uint8_t { disease, law_and_food, swarm, room, rest };

/// How sure a piece of advice is.
enum class Sureness : std::uint8_t { certain, likely, possible };

/// One piece of advice.
struct Advice {
    HiveId hive = no_hive;      ///< no_hive: for a yard or the keeper
    YardId yard = no_yard;
    std::string what;           ///< imperative, one line: `put a super on, under the one that is on`
    std::optional<Day> by;      ///< last good day
    Sureness sureness = Sureness::likely;
    std::string sureness_words; ///< `likely: 7 in 10 that room runs out before 2026-06-10`
    std::string rule;           ///< stable rule name, such as `room-runs-out`
    std::string source;         ///< the rule's source, or `common practice, no source`
    std::vector<std::string> reasons;   ///< plain sentences with numbers and units
    std::vector<FactId> because;        ///< the journal lines
    std::vector<std::string> over;      ///< advice it outranks, in words
    std::string caution;        ///< the usual caution, empty when none
    Rank rank = Rank::rest;
};

/// What to do at which hive, most urgent first.
std::vector<Advice> advise(const Journal& journal, const History& history, const Estimates& estimates,
                           const Ledger& ledger);

/// One rule, as the manual lists it.
struct RuleEntry {
    std::string_view name;      ///< stable: `first-super`
    std::string_view says;      ///< one sentence
    std::string_view source;
};
const std::vector<RuleEntry>& rules();

}  // namespace waxtab
