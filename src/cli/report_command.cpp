#include "cli/report_command.hpp"

#include "cli/report_folder.hpp"
#include "report/page.hpp"

namespace waxtab {

std::string write_report(const Options& options, const Whole& w, Progress& progress) {
    progress.step("looking back");
    const std::vector<Estimates> past = smoothed_past(w.journal, w.history, days_to_look_back(w.journal, w.history));
    progress.step("drawing");
    const std::vector<Advice> advice = advise(w.journal, w.history, w.estimates, w.ledger);
    const Day until = w.history.on + date::days{w.journal.settings.visit_interval_days};
    const Round round = bring(w.journal, w.history, w.estimates, advice, w.history.on, until);
    const Diagnostics diagnostics = w.diagnostics();
    const Style style{options.units.value_or(w.journal.settings.mass), !options.no_refs, false};
    const std::vector<ReportFile> files =
        report_files({w.journal, w.history, w.estimates, w.ledger, advice, round, diagnostics, past, style});
    if (options.only_if_changed && holds_report(options.out, files)) return {};
    return put_report(options.out, files);
}

}  // namespace waxtab
