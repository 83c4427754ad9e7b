#include "cli/answer.hpp"

#include <algorithm>
#include <map>

#include <fmt/format.h>

#include "advice/advice.hpp"
#include "diagnostics/render.hpp"
#include "report/advise.hpp"
#include "report/bring.hpp"
#include "report/harvest.hpp"
#include "report/hindsight.hpp"
#include "report/lines.hpp"
#include "report/phrases.hpp"
#include "report/records.hpp"
#include "report/supers.hpp"
#include "report/timeline.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

std::string unknown_name(std::string_view what, const std::string& name, const std::vector<std::string>& known) {
    const std::string near = nearest(name, known);
    if (!near.empty()) return fmt::format("the journal has no {} '{}'; did you mean '{}'?", what, name, near);
    if (known.empty()) return fmt::format("the journal has no {} '{}', nor any other", what, name);
    const auto shown = static_cast<std::ptrdiff_t>(std::min<std::size_t>(known.size(), 12));
    const std::vector<std::string> some(known.begin(), known.begin() + shown);
    return fmt::format("the journal has no {} '{}'; it has {}{}", what, name, fmt::join(some, ", "),
                       some.size() < known.size() ? " and others" : "");
}

template <class Declared>
std::vector<std::string> names_of(const std::vector<Declared>& declared) {
    std::vector<std::string> names;
    for (const Declared& one : declared) {
        names.push_back(one.name);
        names.insert(names.end(), one.aliases.begin(), one.aliases.end());
    }
    return names;
}

/// Looks the names up; the words of refusal are empty when all are known.
std::string select(const Options& options, const Journal& journal, Selection& selection) {
    for (const std::string& name : options.hives) {
        selection.hives.push_back(journal.hive(name));
        if (selection.hives.back() == no_hive) return unknown_name("hive", name, names_of(journal.hives));
    }
    for (const std::string& name : options.yards) {
        selection.yards.push_back(journal.yard(name));
        if (selection.yards.back() == no_yard) return unknown_name("yard", name, names_of(journal.yards));
    }
    selection.since = options.since;
    selection.until = options.until;
    return {};
}

Style style_of(const Options& options, const Journal& journal, bool colour) {
    // Machines get kilograms whatever the journal's own unit, so that scripts work on every journal.
    const bool machine = options.json || options.csv;
    const MassUnit usual = machine ? MassUnit::kilogram : journal.settings.mass;
    return {options.units.value_or(usual), !options.no_refs, colour && !machine};
}

std::string lines_answer(const Options& options, const Whole& w, const Selection& selection, const Style& style) {
    if (options.json) return lines_json(w.journal, w.history.on, selection, style);
    if (options.csv) return lines_csv(w.journal, w.history.on, selection, style);
    if (options.read_back) return read_back(w.journal, w.history.on, selection, style);
    return lines_text(w.journal, w.history.on, selection, style);
}

Answer harvest_answer(const Options& options, const Whole& w, const Selection& selection, const Style& style) {
    if (options.lot.empty()) {
        const auto report = options.json ? harvest_json : harvest_text;
        return {report(w.journal, w.history, w.estimates, w.ledger, selection, style), {}};
    }
    if (w.ledger.lot(options.lot)) {
        const auto report = options.json ? trace_json : trace_text;
        return {report(w.journal, w.history, w.estimates, w.ledger, options.lot, style), {}};
    }
    std::vector<std::string> names;
    for (const Lot& lot : w.ledger.lots) names.push_back(lot.name);
    return {{}, unknown_name("lot", options.lot, names)};
}

std::string advise_answer(const Options& options, const Whole& w, const Selection& selection, const Style& style) {
    const std::vector<Advice> advice = advise(w.journal, w.history, w.estimates, w.ledger);
    return options.json ? advise_json(w.journal, w.history, advice, selection, style)
                        : advise_text(w.journal, w.history, advice, selection, style, options.sources);
}

std::string records_answer(const Options& options, const Whole& w, const Selection& selection, const Style& style) {
    const Records kept = records(w.journal, w.history, w.ledger);
    return (options.json ? records_json : records_text)(w.journal, w.history, kept, selection, style);
}

std::string bring_answer(const Options& options, const Whole& w, const Selection& selection, const Style& style) {
    const std::vector<Advice> advice = advise(w.journal, w.history, w.estimates, w.ledger);
    const Day from = w.history.on;
    const Day usual = from + date::days{w.journal.settings.visit_interval_days};
    const Day to = std::max(from, options.until.value_or(usual));
    const Round round = bring(w.journal, w.history, w.estimates, advice, from, to);
    return (options.json ? bring_json : bring_text)(w.journal, round, advice, selection, style);
}

std::string hindsight_answer(const Options& options, const Whole& w, const Selection& selection, const Style& style) {
    const Hindsight looked_back = hindsight(w.journal, w.history);
    return (options.json ? hindsight_json : hindsight_text)(w.journal, looked_back, w.history.on, selection, style);
}

std::string summary(const Whole& whole, const Tally& count) {
    const std::string files = counted(static_cast<std::int64_t>(whole.journal.sources.size()), "file");
    if (count.errors + count.warnings > 0)
        return fmt::format("{}, {} in {}\n", counted(count.errors, "error"), counted(count.warnings, "warning"), files);
    return fmt::format("fine: {} about {} in {}\n", counted(static_cast<std::int64_t>(whole.journal.facts.size()), "fact"),
                       counted(static_cast<std::int64_t>(whole.journal.hives.size()), "hive"), files);
}

/// Standing on an early day, every later heading is after it: said once a file, with how many more there are.
void fold_later_headings(Diagnostics& diagnostics) {
    std::map<std::uint32_t, int> more;
    std::erase_if(diagnostics, [&](const Diagnostic& d) { return d.code == "after-today" && more[d.span.file]++ > 0; });
    for (Diagnostic& d : diagnostics) {
        if (d.code != "after-today" || more[d.span.file] < 2) continue;
        d.label = fmt::format("and {} later", counted(more[d.span.file] - 1, "heading"));
    }
}

}  // namespace

Diagnostics Whole::diagnostics() const {
    Diagnostics all = journal.diagnostics;
    all.insert(all.end(), history.diagnostics.begin(), history.diagnostics.end());
    all.insert(all.end(), ledger.diagnostics.begin(), ledger.diagnostics.end());
    sort_for_reading(all);
    fold_later_headings(all);
    return all;
}

std::unique_ptr<Whole> whole_of(std::vector<JournalFile> files, Day on) {
    auto whole = std::make_unique<Whole>();
    whole->journal = read_journal(std::move(files), on);
    whole->history = replay(whole->journal, on);
    whole->estimates = estimate(whole->journal, whole->history);
    whole->ledger = account(whole->journal, whole->history, whole->estimates);
    return whole;
}

Answer answer(const Options& options, const Whole& whole, bool colour) {
    Selection selection;
    const std::string refusal = select(options, whole.journal, selection);
    if (!refusal.empty()) return {{}, refusal};
    const Style style = style_of(options, whole.journal, colour);
    switch (options.command) {
        case Command::lines: return {lines_answer(options, whole, selection, style), {}};
        case Command::timeline:
            return {(options.json ? timeline_json : timeline_text)(whole.journal, whole.history, selection, style), {}};
        case Command::supers:
            return {(options.json ? supers_json : supers_text)(whole.journal, whole.history, whole.estimates, selection,
                                                               style), {}};
        case Command::advise: return {advise_answer(options, whole, selection, style), {}};
        case Command::harvest: return harvest_answer(options, whole, selection, style);
        case Command::bring: return {bring_answer(options, whole, selection, style), {}};
        case Command::records: return {records_answer(options, whole, selection, style), {}};
        case Command::hindsight: return {hindsight_answer(options, whole, selection, style), {}};
        case Command::check:
        case Command::report:
        case Command::words:
        case Command::rules: break;
    }
    return {};
}

std::string check_text(const Options& options, const Whole& whole, const Diagnostics& diagnostics, bool colour) {
    std::string out;
    for (const Diagnostic& d : diagnostics)
        out += options.json ? render_json(whole.journal.sources, d) + '\n' : render(whole.journal.sources, d, colour);
    return options.json ? out : out + summary(whole, tally(diagnostics));
}

}  // namespace waxtab
