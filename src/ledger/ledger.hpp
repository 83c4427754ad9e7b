#pragma once
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "estimate/estimate.hpp"

namespace waxtab {

/// A mass with the range it may lie in; equal bounds when weighed.
struct MassRange {
    Mass low, value, high;
    bool weighed = false;
};

/// What one hive gave to one lot.
struct LotShare {
    HiveId hive = no_hive;
    MassRange honey;            ///< values of a lot's shares sum exactly to the lot's weight
    std::vector<std::size_t> takings;  ///< indices into History::takings
    std::vector<FactId> because;
};

struct JarRow { Mass size; int filled = 0; int out = 0; int left = 0; std::vector<FactId> because; };

/// Honey or jars leaving (or coming back).
struct Going { Day day{}; FactId fact = 0; int jars = 0; Mass size; Mass honey; std::string_view how; std::string to; };

struct Lot {
    std::string name;           ///< as written, else made from the day of extraction: `2026-07-12`
    bool name_made = false;
    Day extracted{};
    MassRange weight;           ///< measured at extraction, else the sum of net or estimated takings
    std::vector<LotShare> shares;
    std::vector<std::size_t> takings;
    std::optional<std::int64_t> moisture_permille;   ///< last reading, temperature-corrected
    std::vector<FactId> moisture_facts;
    bool fermenting = false;
    std::vector<JarRow> jars;
    std::vector<Going> goings;
    Mass bulk;                  ///< left in bulk
    Mass drained, blended_in, blended_out, bulk_gone, in_jars;
    std::vector<std::string> blended_from;
    /// Feeds and treatments that overlapped the supers of this lot.
    std::vector<FactId> concerns;
    std::vector<FactId> because;
};

/// Honey taken off per hive.
struct HiveYield { HiveId hive = no_hive; MassRange honey; int supers = 0; int frames = 0; std::vector<FactId> because; };

/// Where every kilogram went, as of a day.
struct Ledger {
    Day on{};
    std::vector<Lot> lots;              ///< in order of extraction
    std::vector<HiveYield> hives;       ///< hives with a harvest, journal order
    std::vector<std::size_t> waiting;   ///< takings not yet extracted
    MassRange waiting_honey;
    Mass wax;
    /// Opening stock, bought in, out, left: totals over all lots, closing exactly.
    Mass opening, bought, extracted, jarred, gone, spoiled, left_in_jars, left_in_bulk;
    /// More jars than honey, an unknown lot and the like.
    Diagnostics diagnostics;
};

Ledger account(const Journal& journal, const History& history, const Estimates& estimates);

}  // namespace waxtab
