#include <algorithm>

#include <fmt/format.h>

#include "advice/breeding.hpp"
#include "diagnostics/render.hpp"
#include "report/page_parts.hpp"
#include "report/phrases.hpp"

namespace waxtab {

namespace {

/// Of sums over many hives so many lines are named; the rest stands with the hives.
constexpr std::size_t most_yield_lines = 8;

/// A hatched bar as long as its share of the most.
std::string bar(double value, double most) {
    const double width = most > 0 ? std::clamp(90.0 * value / most, 0.0, 90.0) : 0.0;
    return fmt::format("<svg width=\"92\" height=\"11\" viewBox=\"0 0 92 11\" aria-hidden=\"true\">"
                       "<rect x=\".5\" y=\"1\" width=\"{}\" height=\"9\" class=\"line\" style=\"fill:url(#honey)\"/></svg>", xy(width));
}

std::vector<FactId> facts_of(const SeasonYield& row) {
    std::vector<FactId> facts;
    for (const Harvest& part : row.parts) facts.insert(facts.end(), part.because.begin(), part.because.end());
    return facts;
}

/// The facts behind a sum over hives: those of its hives in its season, of its yard where it is of one.
std::vector<FactId> facts_of(const Yields& yields, const YieldRow& row) {
    std::vector<FactId> facts;
    for (const SeasonYield& hive : yields.hives)
        for (const Harvest& part : hive.parts)
            if (hive.year == row.year && (row.yard == no_yard || part.yard == row.yard))
                facts.insert(facts.end(), part.because.begin(), part.because.end());
    return facts;
}

std::string yields_table(Page& page, const Yields& yields, std::string_view caption, std::string_view head,
                         const std::vector<YieldRow>& list, int here) {
    double most = 0;
    for (const YieldRow& row : list) most = std::max(most, row.honey.value.kilograms());
    const bool yards = head != "season";
    const auto mass = [&](const auto& m) { return mass_text(m, page.in.style); };
    std::string rows;
    for (const YieldRow& row : list) {
        const std::string where = row.year == here ? fmt::format("#hives-{}", row.year) : fmt::format("seasons/{}.html", row.year);
        rows += cells(yards ? fmt::format("{}, {}", page.yard(row.yard), row.year) : fmt::format("{}", row.year),
                      {mass(row.honey) + bar(row.honey.value.kilograms(), most), mass(row.per_harvested),
                       fmt::format("{} of {}", row.harvested.size(), row.living.size()),
                       fmt::format("{}, {}, {}", mass(row.least), mass(row.median), mass(row.most)),
                       page.refs(facts_of(yields, row), most_yield_lines, where)});
    }
    if (rows.empty()) return rows;
    return wide_table(caption, {head, "honey", "a hive that gave", "hives that gave, of all", "least, middle, most", "lines"}, rows);
}

std::string standing_table(Page& page) {
    std::string rows;
    for (const HiveEstimate& e : page.in.estimates.hives) {
        if (!page.judged(e.hive)) continue;
        rows += cells(page.hive(e.hive), {page.yard(page.yard_of(e.hive)), rate_text(e.kg_per_day, page.in.style),
                                          kg_text(e.room_kg, page.in.style), days_text(e.days_of_room), page.refs(e)});
    }
    return rows.empty() ? rows : wide_table("Hives with supers on, now", {"hive", "yard", "gains", "room", "lasts", "lines"}, rows);
}

std::string temper_words(const ColonyFigures& c) {
    if (c.calm + c.lively + c.defensive + c.stings == 0) return "not noted";
    std::vector<std::string> words;
    if (c.calm > 0) words.push_back(fmt::format("calm {}", counted(c.calm, "time")));
    if (c.lively > 0) words.push_back(fmt::format("lively {}", counted(c.lively, "time")));
    if (c.defensive > 0) words.push_back(fmt::format("defensive {}", counted(c.defensive, "time")));
    if (c.stings > 0) words.push_back(counted(c.stings, "sting"));
    return fmt::format("{}", fmt::join(words, ", "));
}

std::string mites_words(const ColonyFigures& c) {
    if (c.mites.empty()) return "no rate";
    return fmt::format("{:.1f} per 100 bees on {}", c.mites.back().per_100, iso(c.mites.back().day));
}

std::string honey_words(const Page& page, const ColonyFigures& c) {
    if (!c.honey) return "none taken yet";
    return fmt::format("{}; middle of {} at its yard {}", mass_text(*c.honey, page.in.style), counted(c.yard_hives, "hive"),
                       mass_text(c.yard_median, page.in.style));
}

std::string swarm_words(const ColonyFigures& c) {
    return c.swarm_score ? fmt::format("{:.0f} of 4: {}", *c.swarm_score, bdi(c.swarm_words)) : std::string("never looked for cells");
}

/// Whether anything at all was noted to judge a living colony by.
bool has_figures(const Page& page, const ColonyFigures& c) {
    return page.in.history.hives[static_cast<std::size_t>(c.hive)].alive &&
           (c.honey || c.swarm_score || !c.mites.empty() || c.calm + c.lively + c.defensive + c.stings > 0);
}

std::string problem_html(Page& page, const Diagnostic& d) {
    std::string out = fmt::format("<li><strong>{}</strong>: {}", name_of(d.severity), bdi(d.title));
    out += page.ref(d.span);
    if (d.span.known()) out += fmt::format("<br><q>{}</q>", bdi(page.in.journal.sources.text(d.span)));
    if (!d.hint.empty()) out += fmt::format("<br><span class=\"sub\">{}</span>", bdi(d.hint));
    for (const Related& related : d.related)
        out += fmt::format("<br><span class=\"sub\">{}</span>{}", bdi(related.text), page.ref(related.span));
    return out + "</li>\n";
}

}  // namespace

std::string wide_table(std::string_view caption, const std::vector<std::string_view>& heads, std::string_view rows) {
    std::string out = fmt::format("<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"{0}\"><table><caption>{0}</caption>"
                                  "<thead><tr>", html(caption));
    for (const std::string_view head : heads) out += fmt::format("<th scope=\"col\">{}</th>", html(head));
    return out + "</tr></thead><tbody>\n" + std::string(rows) + "</tbody></table></div>\n";
}

std::string cells(std::string_view head, const std::vector<std::string>& data) {
    std::string out = fmt::format("<tr><th scope=\"row\">{}</th>", head);
    for (const std::string& cell : data) out += "<td>" + cell + "</td>";
    return out + "</tr>\n";
}

std::string hives_table(Page& page, const Yields& yields, int year) {
    double most = 0;
    for (const SeasonYield& row : yields.hives)
        if (row.year == year) most = std::max(most, row.honey.value.kilograms());
    std::string rows;
    for (const SeasonYield& row : yields.hives) {
        if (row.year != year) continue;
        rows += cells(page.hive(row.hive),
                      {page.yard(row.yard), mass_text(row.honey, page.in.style) + bar(row.honey.value.kilograms(), most),
                       counted(row.supers, "super"), page.refs(facts_of(row))});
    }
    if (rows.empty()) return rows;
    return fmt::format("<div id=\"hives-{}\">", year) +
           wide_table(fmt::format("Hives, {}", year), {"hive", "yard", "honey", "in", "lines"}, rows) + "</div>\n";
}

std::string yards_table(Page& page, const Yields& yields, const std::vector<YieldRow>& rows, int here) {
    return yields_table(page, yields, "Yards", "yard and season", rows, here);
}

std::string compare_section(Page& page) {
    const Yields all = yields(page.in.journal, page.in.history, page.in.ledger);
    const int year = static_cast<int>(date::year_month_day(page.in.history.on).year());
    const std::string out = standing_table(page) + hives_table(page, all, year) + yards_table(page, all, all.yards, year) +
                            yields_table(page, all, "Seasons", "season", all.seasons, year);
    if (out.empty()) return out;
    return "<section id=\"side\" aria-labelledby=\"side-h\"><h2 id=\"side-h\">Side by side</h2>\n" + out + "</section>\n";
}

std::string breeding_section(Page& page) {
    std::string rows;
    for (const ColonyFigures& c : breeding(page.in.journal, page.in.history, page.in.ledger))
        if (has_figures(page, c))
            rows += cells(page.hive(c.hive), {html(honey_words(page, c)), temper_words(c), swarm_words(c), mites_words(c),
                                              c.mother.empty() ? std::string("not noted") : bdi(c.mother), page.refs(c.because)});
    if (rows.empty()) return rows;
    return "<section id=\"breeding\" aria-labelledby=\"breeding-h\"><h2 id=\"breeding-h\">Colonies to breed from</h2>\n"
           "<p>Figures side by side, not a mark: which weighs more is for you to say. Colonies of which nothing was noted are left out. "
           "Swarming after the 4-point scale of the COLOSS BEEBOOK (4: no cells; 1: swarmed).</p>\n" +
           wide_table("This season's figures", {"colony", "honey", "temper as noted", "swarming", "mites", "mother", "lines"}, rows) +
           "</section>\n";
}

std::string problems_section(Page& page) {
    constexpr std::size_t most = 200;
    std::string items;
    for (std::size_t i = 0; i < std::min(most, page.in.diagnostics.size()); ++i) items += problem_html(page, page.in.diagnostics[i]);
    if (page.in.diagnostics.size() > most)
        items += fmt::format("<li>and {} more; <code>waxtab check</code> shows all</li>\n", page.in.diagnostics.size() - most);
    return "<section id=\"problems\" aria-labelledby=\"problems-h\"><h2 id=\"problems-h\">Problems in the journal</h2>\n" +
           (items.empty() ? std::string("<p>None.</p>\n") : "<ul>\n" + items + "</ul>\n") + "</section>\n";
}

}  // namespace waxtab
