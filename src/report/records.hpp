#pragma once
#include <string>

#include "ledger/records.hpp"
#include "report/style.hpp"

namespace waxtab {

/// The books law asks for, each under its heading: medicines, feed, disease, honey bought and sold; an empty one says so.
std::string records_text(const Journal& journal, const History& history, const Records& records, const Selection& selection,
                         const Style& style);

/// The same as one JSON document: `on`, `medicines`, `feeds`, `diseases`, `trade`.
std::string records_json(const Journal& journal, const History& history, const Records& records, const Selection& selection,
                         const Style& style);

/// Hives of a record that are listed.
std::vector<HiveId> listed_hives(const Selection& selection, const History& history, const std::vector<HiveId>& hives, Day day);

}  // namespace waxtab
