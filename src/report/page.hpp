#pragma once
#include <string>
#include <vector>

#include "advice/bring.hpp"
#include "report/style.hpp"

namespace waxtab {

/// Everything a report is made from, all as of one day.
struct ReportInput {
    const Journal& journal;
    const History& history;
    const Estimates& estimates;
    const Ledger& ledger;
    const std::vector<Advice>& advice;
    const Round& round;                     ///< planned from `advice`
    const Diagnostics& diagnostics;         ///< of all stages, in reading order
    const std::vector<Estimates>& past;     ///< what was estimated on earlier days, ascending; may be empty
    Style style;
};

/// One file of a report, its name relative to the report's folder, with `/` between.
struct ReportFile {
    std::string name;
    std::string bytes;
};

/// The report's files: `report.html`, `report.txt`, `visits.ics`, one page a lot in `lots/` and one an older season
/// in `seasons/`.
std::vector<ReportFile> report_files(const ReportInput& input);

/// The page: one HTML document that needs no network and no script.
std::string report_page(const ReportInput& input);

/// The report as text.
std::string report_text(const ReportInput& input);

/// A page about one lot, for whoever must show where honey came from and went.
std::string lot_page(const ReportInput& input, const Lot& lot);

/// The file name of a lot's page: letters, digits and hyphens, no two lots the same.
std::string lot_file(const Ledger& ledger, const Lot& lot);

/// Days with visits before the day stood on, in its year, ascending.
std::vector<Day> visit_days_this_season(const History& history);

/// Those of them on which a look back at the estimates is drawn: the latest, thirty at most, and fewer in journals so
/// long that each look back takes long.
std::vector<Day> days_to_look_back(const Journal& journal, const History& history);

}  // namespace waxtab
