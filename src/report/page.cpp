#include "report/page.hpp"

#include <algorithm>
#include <set>

#include <fmt/format.h>

#include "diagnostics/render.hpp"
#include "report/advise.hpp"
#include "report/bring.hpp"
#include "report/calendar.hpp"
#include "report/harvest.hpp"
#include "report/page_parts.hpp"
#include "report/phrases.hpp"
#include "report/supers.hpp"
#include "report/timeline.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

std::string head_html(const ReportInput& in) {
    std::size_t alive = 0;
    for (const HiveHistory& hive : in.history.hives) alive += hive.alive;
    const Tally count = tally(in.diagnostics);
    return fmt::format("<header><h1>Hives on {}</h1>\n<p class=\"sub\">{} in {}. {} and {} in the journal. Everything here was worked out "
                       "from the journal alone; small numbers lead to its lines.</p></header>\n",
                       iso(in.history.on), counted(static_cast<std::int64_t>(alive), "living hive"),
                       counted(static_cast<std::int64_t>(in.journal.yards.size()), "yard"), counted(count.errors, "error"),
                       counted(count.warnings, "warning"));
}

/// Links to the sections there are.
std::string contents_html(std::string_view body) {
    static constexpr std::pair<std::string_view, std::string_view> all[] = {
        {"week", "this week"}, {"bring", "what to bring"}, {"sheets", "sheets for the yard"}, {"hives", "each hive"},
        {"flow", "flow and bloom"}, {"ledger", "where the honey went"}, {"side", "side by side"},
        {"breeding", "colonies to breed from"}, {"problems", "problems"}, {"lines", "journal lines"}};
    std::string out;
    for (const auto& [id, words] : all)
        if (body.find(fmt::format("<section id=\"{}\"", id)) != body.npos)
            out += fmt::format("<li><a href=\"#{}\">{}</a></li>\n", id, words);
    return "<nav aria-label=\"contents\"><ul>\n" + out + "</ul></nav>\n";
}

std::string care_html() {
    return "<footer><p class=\"care\">Lift with care: a full deep is a load for two. Treatments and what may be sold are for the product "
           "label, local law and your vet or bee inspector to say. No honey for infants under twelve months. Who is allergic to stings "
           "does not work alone.</p></footer>\n";
}

}  // namespace

std::string report_page(const ReportInput& input) {
    Page page(input);
    std::string body = week_section(page) + bring_section(page) + yard_sheets(page) + hives_section(page) + flow_section(page) +
                       ledger_section(page) + compare_section(page) + breeding_section(page) + problems_section(page);
    body += page.cited_lines();
    return page_document("Hives on " + iso(input.history.on),
                         head_html(input) + contents_html(body) + "<main>\n" + body + "</main>\n" + care_html());
}

/// Lines beyond the page broken at blanks. Only the first line of a problem can be so long.
std::string within_page(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(line.size() + 1, text.size()));
        out += display_width(line) <= page_width ? std::string(line) + '\n' : paragraph(line, "", "        ");
    }
    return out;
}

std::string report_text(const ReportInput& in) {
    const Selection all;
    std::string out = advise_text(in.journal, in.history, in.advice, all, in.style) + '\n' +
                      bring_text(in.journal, in.round, in.advice, all, in.style) + '\n' +
                      supers_text(in.journal, in.history, in.estimates, all, in.style) + '\n' +
                      harvest_text(in.journal, in.history, in.estimates, in.ledger, all, in.style) + '\n';
    out += heading("Problems in the journal", in.style);
    for (const Diagnostic& d : in.diagnostics) out += '\n' + within_page(render(in.journal.sources, d, false));
    return in.diagnostics.empty() ? out + "none\n" : out;
}

std::vector<ReportFile> report_files(const ReportInput& in) {
    const auto events = calendar_events(in.journal, in.history, in.estimates, in.ledger, in.advice, in.style);
    std::vector<ReportFile> files{{"report.html", report_page(in)},
                                  {"report.txt", report_text(in)},
                                  {"visits.ics", calendar_file(events, in.history.on)}};
    for (const Lot& lot : in.ledger.lots) files.push_back({"lots/" + lot_file(in.ledger, lot), lot_page(in, lot)});
    for (const int year : older_seasons(in)) files.push_back({fmt::format("seasons/{}.html", year), season_page(in, year)});
    return files;
}

std::vector<Day> visit_days_this_season(const History& history) {
    const auto year = date::year_month_day{history.on}.year();
    std::set<Day> days;
    for (const HiveHistory& hive : history.hives)
        for (const Day day : hive.visits)
            if (date::year_month_day{day}.year() == year && day < history.on) days.insert(day);
    return {days.begin(), days.end()};
}

std::vector<Day> days_to_look_back(const Journal& journal, const History& history) {
    // Every day looked back to remembers every super of every hive: so much is kept for the smoother, and no more.
    constexpr std::size_t readings = 2'000'000, most_days = 30;
    const std::size_t most = std::min(most_days, readings / std::max<std::size_t>(journal.facts.size(), 1));
    std::vector<Day> days = visit_days_this_season(history);
    if (days.size() > most) days.erase(days.begin(), days.end() - static_cast<std::ptrdiff_t>(most));
    return days;
}

}  // namespace waxtab
