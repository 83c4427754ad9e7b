#include <algorithm>
#include <set>

#include <fmt/format.h>

#include "advice/breeding.hpp"
#include "diagnostics/render.hpp"
#include "ledger/yields.hpp"
#include "report/page_parts.hpp"
#include "report/phrases.hpp"

namespace waxtab {

namespace {

/// A table that scrolls on its own where the screen is narrow.
std::string wide_table(std::string_view caption, const std::vector<std::string_view>& heads, std::string_view rows) {
    std::string out = fmt::format("<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"{0}\"><table><caption>{0}</caption><thead><tr>", html(caption));
    for (const std::string_view head : heads) out += fmt::format("<th scope=\"col\">{}</th>", html(head));
    return out + "</tr></thead><tbody>\n" + std::string(rows) + "</tbody></table></div>\n";
}

std::string cells(std::string_view head, const std::vector<std::string>& data) {
    std::string out = fmt::format("<tr><th scope=\"row\">{}</th>", head);
    for (const std::string& cell : data) out += "<td>" + cell + "</td>";
    return out + "</tr>\n";
}

/// A hatched bar as long as its share of the most.
std::string bar(double value, double most) {
    const double width = most > 0 ? std::clamp(90.0 * value / most, 0.0, 90.0) : 0.0;
    return fmt::format("<svg width=\"92\" height=\"11\" viewBox=\"0 0 92 11\" aria-hidden=\"true\"><rect x=\".5\" y=\"1\" width=\"{}\" height=\"9\" class=\"line\" style=\"fill:url(#honey)\"/></svg>", xy(width));
}

std::vector<FactId> facts_of(const SeasonYield& row) {
    std::vector<FactId> facts;
    for (const Harvest& part : row.parts) facts.insert(facts.end(), part.because.begin(), part.because.end());
    return facts;
}

std::string hives_table(Page& page, const Yields& yields, int year) {
    double most = 0;
    for (const SeasonYield& row : yields.hives)
        if (row.year == year) most = std::max(most, row.honey.value.kilograms());
    std::string rows;
    for (const SeasonYield& row : yields.hives)
        if (row.year == year)
            rows += cells(page.hive(row.hive), {page.yard(row.yard), mass_text(row.honey, page.in.style) + bar(row.honey.value.kilograms(), most),
                                                counted(row.supers, "super"), page.refs(facts_of(row))});
    return rows.empty() ? rows : wide_table(fmt::format("Hives, {}", year), {"hive", "yard", "honey", "in", "lines"}, rows);
}

std::string yield_cells(const Page& page, const std::string& head, const YieldRow& row, double most) {
    return cells(head, {mass_text(row.honey, page.in.style) + bar(row.honey.value.kilograms(), most), mass_text(row.per_harvested, page.in.style),
                        fmt::format("{} of {}", row.harvested.size(), row.living.size()),
                        fmt::format("{}, {}, {}", mass_text(row.least, page.in.style), mass_text(row.median, page.in.style), mass_text(row.most, page.in.style))});
}

std::string yields_table(const Page& page, std::string_view caption, std::string_view head, const std::vector<YieldRow>& list, bool yards) {
    double most = 0;
    for (const YieldRow& row : list) most = std::max(most, row.honey.value.kilograms());
    std::string rows;
    for (const YieldRow& row : list)
        rows += yield_cells(page, yards ? fmt::format("{}, {}", page.yard(row.yard), row.year) : fmt::format("{}", row.year), row, most);
    return rows.empty() ? rows : wide_table(caption, {head, "honey", "a hive that gave", "hives that gave, of all", "least, middle, most"}, rows);
}

std::string standing_table(Page& page) {
    std::string rows;
    for (const HiveEstimate& e : page.in.estimates.hives) {
        if (page.in.history.supers_on(e.hive).empty()) continue;
        rows += cells(page.hive(e.hive), {page.yard(page.yard_of(e.hive)), rate_text(e.kg_per_day, page.in.style), kg_text(e.room_kg, page.in.style),
                                          days_text(e.days_of_room), page.refs(e.because)});
    }
    return rows.empty() ? rows : wide_table("Hives with supers on, now", {"hive", "yard", "gains", "room", "lasts", "lines"}, rows);
}

int year_of(Day day) { return static_cast<int>(date::year_month_day{day}.year()); }

/// Lots of a season; `up` leads from this page to the folder the lots' pages lie in.
std::string lots_table(Page& page, int year, std::string_view up) {
    std::string rows;
    for (const Lot& lot : page.in.ledger.lots) {
        if (year_of(lot.extracted) != year) continue;
        const std::string water = lot.moisture_permille ? fmt::format("{:.1f}%", static_cast<double>(*lot.moisture_permille) / 10.0) : std::string("not read");
        rows += cells(fmt::format("<a href=\"{}lots/{}\">{}</a>", up, lot_file(page.in.ledger, lot), bdi(lot.name)),
                      {iso(lot.extracted), mass_text(lot.weight, page.in.style), water + (lot.fermenting ? ", fermenting" : ""), mass_text(lot.left_in_jars(), page.in.style),
                       mass_text(lot.bulk, page.in.style), page.refs(lot.because)});
    }
    return rows.empty() ? rows : wide_table(fmt::format("Lots, {}", year), {"lot", "from", "honey", "moisture", "left in jars", "left in bulk", "lines"}, rows);
}

std::string shares_html(Page& page, int year) {
    std::string out;
    for (const Lot& lot : page.in.ledger.lots) {
        if (year_of(lot.extracted) != year) continue;
        std::string items;
        for (const LotShare& share : lot.shares)
            items += fmt::format("<li>{}: {}{}</li>\n", share.hive == no_hive ? std::string("no hive named") : page.hive(share.hive),
                                 mass_text(share.honey, page.in.style), page.refs(share.because));
        for (const Going& going : lot.goings)
            items += fmt::format("<li>{}: {}, {}{}{}</li>\n", iso(going.day), mass_text(going.honey, page.in.style), html(going.how),
                                 going.to.empty() ? std::string{} : (going.how == "come back" ? " from " : " to ") + bdi(going.to), page.ref(going.fact, no_hive));
        if (!items.empty()) out += fmt::format("<details><summary>lot {}: where it came from and went</summary><ul>\n{}</ul></details>\n", bdi(lot.name), items);
    }
    return out;
}

std::string sums_html(const Page& page) {
    const Ledger& l = page.in.ledger;
    std::string out;
    const auto add = [&](std::string_view words, Mass mass, bool always) {
        if (always || mass.ng != 0) out += fmt::format("<dt>{}</dt><dd>{}</dd>\n", words, mass_text(mass, page.in.style));
    };
    add("there at the start", l.opening, false);
    add("bought in", l.bought, false);
    add("extracted", l.extracted, true);
    add("drained from cappings", l.drained, false);
    add("booked by stocktakes", l.adjusted, false);
    add("gone out", l.gone, true);
    add("spoiled", l.spoiled, false);
    add("left in jars and combs", l.left_in_jars, true);
    add("left in bulk", l.left_in_bulk, true);
    return "<dl class=\"facts\">\n" + out + "</dl>\n";
}

std::string temper_words(const ColonyFigures& c) {
    if (c.calm + c.lively + c.defensive + c.stings == 0) return "not noted";
    std::string out = fmt::format("calm {}, lively {}, defensive {}", c.calm, c.lively, c.defensive);
    return c.stings > 0 ? out + ", " + counted(c.stings, "sting") : out;
}

std::string mites_words(const ColonyFigures& c) {
    if (c.mites.empty()) return "no rate";
    return fmt::format("{:.1f} per 100 bees on {}", c.mites.back().per_100, iso(c.mites.back().day));
}

std::string honey_words(const Page& page, const ColonyFigures& c) {
    if (!c.honey) return "none taken yet";
    return fmt::format("{}; middle of {} at its yard {}", mass_text(*c.honey, page.in.style), counted(c.yard_hives, "hive"), mass_text(c.yard_median, page.in.style));
}

std::string problem_html(Page& page, const Diagnostic& d) {
    std::string out = fmt::format("<li><strong>{}</strong>: {}", name_of(d.severity), bdi(d.title));
    out += page.ref(d.span);
    if (d.span.known()) out += fmt::format("<br><q>{}</q>", bdi(page.in.journal.sources.text(d.span)));
    if (!d.hint.empty()) out += fmt::format("<br><span class=\"sub\">{}</span>", bdi(d.hint));
    for (const Related& related : d.related) out += fmt::format("<br><span class=\"sub\">{}</span>{}", bdi(related.text), page.ref(related.span));
    return out + "</li>\n";
}

}  // namespace

std::vector<int> older_seasons(const ReportInput& in) {
    std::set<int> years;
    for (const Lot& lot : in.ledger.lots) years.insert(year_of(lot.extracted));
    for (const Harvest& harvest : in.ledger.harvests) years.insert(year_of(harvest.day));
    years.erase(year_of(in.history.on));
    return {years.begin(), years.end()};
}

std::string season_page(const ReportInput& input, int year) {
    Page page(input);
    const Yields all = yields(input.journal, input.history, input.ledger);
    std::vector<YieldRow> yards;
    for (const YieldRow& row : all.yards)
        if (row.year == year) yards.push_back(row);
    std::string body = fmt::format("<header><p class=\"sub\"><a href=\"../report.html\">the whole report</a></p><h1>Season {}</h1></header>\n<main>\n", year);
    body += "<h2>Honey</h2>\n" + yields_table(page, "Yards", "yard and season", yards, true) + hives_table(page, all, year) + lots_table(page, year, "../") + shares_html(page, year);
    body += page.cited_lines() + "</main>\n";
    // Hives are drawn on the report's page only.
    for (std::size_t at = 0; (at = body.find("href=\"#hive-", at)) != body.npos;) body.insert(at + 6, "../report.html");
    return page_document(fmt::format("Season {}", year), body);
}

std::string ledger_section(Page& page) {
    if (page.in.ledger.lots.empty() && page.in.ledger.waiting.empty()) return {};
    const int year = year_of(page.in.history.on);
    std::string out = ledger_drawing(page) + sums_html(page) + lots_table(page, year, "") + shares_html(page, year);
    std::string older;
    for (const int season : older_seasons(page.in)) older += fmt::format(" <a href=\"seasons/{0}.html\">{0}</a>", season);
    if (!older.empty()) out += "<p>Hives and lots of older seasons:" + older + "</p>\n";
    if (!page.in.ledger.waiting.empty())
        out += fmt::format("<p>Waiting to be extracted: {} in {}.</p>\n", mass_text(page.in.ledger.waiting_honey, page.in.style),
                           counted(static_cast<std::int64_t>(page.in.ledger.waiting.size()), "super"));
    return "<section id=\"ledger\" aria-labelledby=\"ledger-h\"><h2 id=\"ledger-h\">Where the honey went</h2>\n" + out + "</section>\n";
}

std::string compare_section(Page& page) {
    const Yields all = yields(page.in.journal, page.in.history, page.in.ledger);
    const int year = year_of(page.in.history.on);
    const std::string out = standing_table(page) + hives_table(page, all, year) + yields_table(page, "Yards", "yard and season", all.yards, true) +
                            yields_table(page, "Seasons", "season", all.seasons, false);
    if (out.empty()) return out;
    return "<section id=\"side\" aria-labelledby=\"side-h\"><h2 id=\"side-h\">Side by side</h2>\n" + out + "</section>\n";
}

std::string breeding_section(Page& page) {
    std::string rows;
    for (const ColonyFigures& c : breeding(page.in.journal, page.in.history, page.in.ledger)) {
        const std::string swarm = c.swarm_score ? fmt::format("{:.0f} of 4: {}", *c.swarm_score, bdi(c.swarm_words)) : std::string("cells never noted on");
        rows += cells(page.hive(c.hive), {html(honey_words(page, c)), temper_words(c), swarm, mites_words(c), c.mother.empty() ? std::string("not noted") : bdi(c.mother), page.refs(c.because)});
    }
    if (rows.empty()) return rows;
    return "<section id=\"breeding\" aria-labelledby=\"breeding-h\"><h2 id=\"breeding-h\">Colonies to breed from</h2>\n"
           "<p>Figures side by side, not a mark: which weighs more is for you to say. Swarming after the 4-point scale of the COLOSS BEEBOOK "
           "(4: no cells; 1: swarmed).</p>\n" +
           wide_table("This season's figures", {"colony", "honey", "temper as noted", "swarming", "mites", "mother", "lines"}, rows) + "</section>\n";
}

std::string problems_section(Page& page) {
    constexpr std::size_t most = 200;
    std::string items;
    for (std::size_t i = 0; i < std::min(most, page.in.diagnostics.size()); ++i) items += problem_html(page, page.in.diagnostics[i]);
    if (page.in.diagnostics.size() > most) items += fmt::format("<li>and {} more; <code>waxtab check</code> shows all</li>\n", page.in.diagnostics.size() - most);
    return "<section id=\"problems\" aria-labelledby=\"problems-h\"><h2 id=\"problems-h\">Problems in the journal</h2>\n" +
           (items.empty() ? std::string("<p>None.</p>\n") : "<ul>\n" + items + "</ul>\n") + "</section>\n";
}

}  // namespace waxtab
