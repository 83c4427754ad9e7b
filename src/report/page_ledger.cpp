#include <algorithm>
#include <functional>
#include <set>

#include <fmt/format.h>

#include "report/page_parts.hpp"
#include "report/phrases.hpp"

namespace waxtab {

namespace {

/// Of a sum over many lots so many lines are named; the rest stands with the lots.
constexpr std::size_t most_lot_lines = 12;

int year_of(Day day) { return static_cast<int>(date::year_month_day{day}.year()); }

void append(std::vector<FactId>& to, const std::vector<FactId>& facts) { to.insert(to.end(), facts.begin(), facts.end()); }

std::string moisture_words(const Lot& lot) {
    std::string out = lot.moisture_permille ? fmt::format("{:.1f}%", static_cast<double>(*lot.moisture_permille) / 10.0) : "not read";
    return lot.fermenting ? out + ", fermenting" : out;
}

/// Everything that was noted of a lot's honey and jars.
std::vector<FactId> facts_of(const Lot& lot) {
    std::vector<FactId> facts = lot.because;
    append(facts, lot.moisture_facts);
    append(facts, lot.fermenting_facts);
    for (const JarRow& jars : lot.jars) append(facts, jars.because);
    for (const Going& going : lot.goings) facts.push_back(going.fact);
    return facts;
}

/// Lots of a season; `up` leads from this page to the folder the lots' pages lie in.
std::string lots_table(Page& page, int year, std::string_view up) {
    const auto mass = [&](const auto& m) { return mass_text(m, page.in.style); };
    std::string rows;
    for (const Lot& lot : page.in.ledger.lots) {
        if (year_of(lot.extracted) != year) continue;
        const std::string its_page = fmt::format("{}lots/{}", up, lot_file(page.in.ledger, lot));
        rows += cells(fmt::format("<a href=\"{}\">{}</a>", its_page, bdi(lot.name)),
                      {iso(lot.extracted), mass(lot.weight), moisture_words(lot), mass(lot.left_in_jars()), mass(lot.bulk),
                       page.refs(facts_of(lot), most_lot_lines, its_page)});
    }
    if (rows.empty()) return rows;
    return wide_table(fmt::format("Lots, {}", year), {"lot", "from", "honey", "moisture", "left in jars", "left in bulk", "lines"}, rows);
}

std::string going_item(Page& page, const Going& going) {
    return fmt::format("<li>{}: {}, {}{}{}</li>\n", iso(going.day), mass_text(going.honey, page.in.style), html(going.how),
                       going.to.empty() ? std::string{} : fmt::format(" {} {}", way_of(going), bdi(going.to)), page.ref(going.fact, no_hive));
}

std::string shares_html(Page& page, int year) {
    std::string out;
    for (const Lot& lot : page.in.ledger.lots) {
        if (year_of(lot.extracted) != year) continue;
        std::string items;
        for (const LotShare& share : lot.shares) {
            const std::vector<FactId>& because = share.because.empty() ? lot.because : share.because;
            items += fmt::format("<li>{}: {}{}</li>\n", share.hive == no_hive ? std::string("no hive named") : page.hive(share.hive),
                                 mass_text(share.honey, page.in.style), page.refs(because));
        }
        for (const Going& going : lot.goings) items += going_item(page, going);
        if (!items.empty())
            out += fmt::format("<details class=\"also\"><summary>lot {}: where it came from and went</summary><ul>\n{}</ul></details>\n",
                               bdi(lot.name), items);
    }
    return out;
}

/// One sum of the ledger: which lots it adds up.
struct Sum {
    std::string_view words;
    Mass mass;
    bool always;
    std::function<bool(const Lot&)> counts;
};

std::vector<Sum> sums_of(const Ledger& l) {
    const auto any = [](const Mass& mass) { return mass.ng != 0; };
    const auto spoils = [=](const Lot& lot) { return any(lot.spoiled) || any(lot.jars_spoiled()); };
    return {
        {"there at the start", l.opening, false, [=](const Lot& lot) { return any(lot.opening); }},
        {"bought in", l.bought, false, [=](const Lot& lot) { return any(lot.bought); }},
        {"extracted", l.extracted, true, [=](const Lot& lot) { return any(lot.harvested.value); }},
        {"drained from cappings", l.drained, false, [=](const Lot& lot) { return any(lot.drained); }},
        {"booked by stocktakes", l.adjusted, false, [=](const Lot& lot) { return any(lot.adjusted) || any(lot.jars_adjusted()); }},
        {"more than the books had", l.beyond, false, [=](const Lot& lot) { return any(lot.beyond) || any(lot.jars_beyond()); }},
        {"gone out", l.gone, true, [](const Lot& lot) { return !lot.goings.empty(); }},
        {"spoiled", l.spoiled, false, spoils},
        {"left in jars and combs", l.left_in_jars, true, [=](const Lot& lot) { return any(lot.left_in_jars()); }},
        {"left in bulk", l.left_in_bulk, true, [=](const Lot& lot) { return any(lot.bulk); }},
    };
}

std::string sums_html(Page& page) {
    std::string out;
    for (const Sum& sum : sums_of(page.in.ledger)) {
        if (!sum.always && sum.mass.ng == 0) continue;
        std::vector<FactId> facts;
        for (const Lot& lot : page.in.ledger.lots)
            if (sum.counts(lot)) append(facts, sum.words == "extracted" ? lot.because : facts_of(lot));
        const std::string refs = page.refs(facts, most_lot_lines, "#ledger-lots");
        out += fmt::format("<dt>{}</dt><dd>{}{}</dd>\n", sum.words, mass_text(sum.mass, page.in.style),
                           refs.empty() ? std::string(" <a class=\"ref\" href=\"#ledger-lots\">lots</a>") : refs);
    }
    return "<dl class=\"facts\">\n" + out + "</dl>\n";
}

std::string waiting_html(Page& page) {
    const Ledger& ledger = page.in.ledger;
    if (ledger.waiting.empty()) return {};
    std::vector<FactId> facts;
    for (const std::size_t i : ledger.waiting)
        if (page.in.history.takings[i].fact != set_up_fact) facts.push_back(page.in.history.takings[i].fact);
    return fmt::format("<p>Waiting to be extracted: {} in {}.{}</p>\n", mass_text(ledger.waiting_honey, page.in.style),
                       counted(static_cast<std::int64_t>(ledger.waiting.size()), "super"), page.refs(facts, most_lot_lines, "report.txt"));
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
    std::string body = fmt::format("<header><p class=\"sub\"><a href=\"../report.html\">the whole report</a></p><h1>Season {}</h1>"
                                   "</header>\n<main>\n<h2>Honey</h2>\n", year);
    body += yards_table(page, all, yards, year) + hives_table(page, all, year) + lots_table(page, year, "../") + shares_html(page, year);
    body += page.cited_lines() + "</main>\n";
    // Hives are drawn on the report's page only.
    for (std::size_t at = 0; (at = body.find("href=\"#hive-", at)) != body.npos;) body.insert(at + 6, "../report.html");
    return page_document(fmt::format("Season {}", year), body);
}

std::string ledger_section(Page& page) {
    if (page.in.ledger.lots.empty() && page.in.ledger.waiting.empty()) return {};
    const int year = year_of(page.in.history.on);
    std::string out = ledger_drawing(page) + sums_html(page) + waiting_html(page);
    out += "<div id=\"ledger-lots\">\n" + lots_table(page, year, "") + shares_html(page, year);
    std::string older;
    for (const int season : older_seasons(page.in)) older += fmt::format(" <a href=\"seasons/{0}.html\">{0}</a>", season);
    if (!older.empty()) out += "<p>Hives and lots of older seasons:" + older + "</p>\n";
    return "<section id=\"ledger\" aria-labelledby=\"ledger-h\"><h2 id=\"ledger-h\">Where the honey went</h2>\n" + out +
           "</div></section>\n";
}

}  // namespace waxtab
