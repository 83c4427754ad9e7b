#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "ledger/ledger.hpp"

namespace waxtab {

/// A super or frames on the way into a lot.
struct TracedTaking {
    std::size_t taking = 0;         ///< index into History::takings
    HiveId hive = no_hive;
    std::optional<Day> on;          ///< the super went on; none: not known, or frames
    Day off{};
    FactId fact = 0;
};

/// What of a lot's honey came from one hive through one first lot.
struct TracedSource {
    std::string lot;                ///< the lot the honey was extracted into, stood in at the start, or was bought as
    HiveId hive = no_hive;
    MassRange honey;                ///< the hive's share in that first lot, before blending
    std::vector<TracedTaking> takings;
    std::vector<FactId> feeds, treatments;   ///< overlapping the supers' stays
    std::vector<FactId> possible_feeds;      ///< shortly before a super went on: syrup may have been carried up
    std::string bought_from;
    bool opening = false;
};

/// Jars or bulk of a lot, or of a lot it was blended into, that left the house.
struct RecallRow {
    std::string lot;
    Going going;
    bool possible = false;          ///< the lot was not said; it may have been this one
};

/// A lot's way back to hives and forward to whoever got it.
struct Trace {
    bool found = false;
    std::string lot;
    std::vector<std::string> made_of;     ///< the lot and all that was blended into it, oldest first
    std::vector<std::string> went_into;   ///< the lot and all it was blended into
    std::vector<Blending> blendings;      ///< the blendings on the way back
    std::vector<TracedSource> sources;
    std::vector<RecallRow> recall;        ///< in order of day; come back rows among them
    Mass left_in_jars, left_in_bulk;      ///< still in the house, over `went_into`
};

/// Follows a lot both ways. `found` is false for a lot the ledger does not know.
Trace trace(const Journal& journal, const History& history, const Ledger& ledger, std::string_view lot);

}  // namespace waxtab
