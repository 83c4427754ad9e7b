#pragma once
#include <string>
#include <string_view>

#include "ledger/ledger.hpp"
#include "report/style.hpp"

namespace waxtab {

/// The honey ledger on `ledger.on`: lots with the hives they came from, jars, what went out and what is left;
/// yields by season, yard and hive; supers waiting to be extracted; and the sums of it all.
std::string harvest_text(const Journal& journal, const History& history, const Estimates& estimates,
                         const Ledger& ledger, const Selection& selection, const Style& style);

/// The same as one JSON document: `on`, `lots`, `yields`, `waiting`, `sums`.
std::string harvest_json(const Journal& journal, const History& history, const Estimates& estimates,
                         const Ledger& ledger, const Selection& selection, const Style& style);

/// The way of one lot, box by box: back through blends to hives and days, with the feeds and treatments that met
/// its supers, and forward to jars and buyers. `lot` is the name of a lot of the ledger.
std::string trace_text(const Journal& journal, const History& history, const Estimates& estimates,
                       const Ledger& ledger, std::string_view lot, const Style& style);
std::string trace_json(const Journal& journal, const History& history, const Estimates& estimates,
                       const Ledger& ledger, std::string_view lot, const Style& style);

/// A lot that is listed: extracted on a listed day, from a listed hive or yard.
bool lists(const Selection& selection, const History& history, const Lot& lot);

}  // namespace waxtab
