#include <fmt/format.h>

#include "report/page_parts.hpp"
#include "report/phrases.hpp"
#include "report/timeline.hpp"

namespace waxtab {

namespace {

std::string gain_html(Page& page, const HiveHistory& hive) {
    const HiveEstimate* estimate = page.in.estimates.hive(hive.hive);
    if (!estimate) return {};
    if (page.in.history.supers_on(hive.hive).empty()) return "<p>No super on.</p>\n";
    if (!page.judged(hive.hive)) return "<p>Nothing noted of it yet: no estimate of its supers.</p>\n";
    std::string out = fmt::format("<p>Gains {}{}; room for {}: {}.", estimate->no_room ? "at least " : "",
                                  rate_text(estimate->kg_per_day, page.in.style), kg_text(estimate->room_kg, page.in.style),
                                  days_text(estimate->days_of_room));
    if (!estimate->from_own_visits) out += " Too few visits of its own, so judged by its yard and the time of year.";
    return out + page.refs(*estimate) + "</p>\n";
}

std::string visits_html(Page& page, const HiveHistory& hive) {
    constexpr std::size_t most = 3;
    std::string rows;
    std::size_t shown = 0;
    for (auto day = hive.visits.rbegin(); day != hive.visits.rend() && shown < most; ++day, ++shown) {
        std::vector<std::string> words;
        std::vector<FactId> facts;
        for (const Event& event : hive.events) {
            if (event.fact == set_up_fact || event.day != *day) continue;
            words.push_back(bdi(words_of(page.in.journal, page.in.journal.facts[event.fact], false)));
            facts.push_back(event.fact);
        }
        rows += fmt::format("<dt>{}</dt><dd>{}{}</dd>\n", iso(*day), fmt::format("{}", fmt::join(words, ", ")), page.refs(facts));
    }
    return rows.empty() ? std::string("<p>No visit noted yet.</p>\n") : "<h4>Last visits</h4>\n<dl class=\"facts\">\n" + rows + "</dl>\n";
}

std::string aliases(const Page& page, HiveId hive) {
    std::string out;
    for (const std::string& alias : page.in.journal.hives[static_cast<std::size_t>(hive)].aliases) out += ", also " + bdi(alias);
    return out;
}

std::string hive_article(Page& page, const HiveHistory& hive) {
    const std::string name = bdi(page.in.journal.hive_name(hive.hive)) + aliases(page, hive.hive);
    return fmt::format("<article id=\"hive-{0}\" aria-labelledby=\"hive-{0}-h\"><h4 id=\"hive-{0}-h\">{1}</h4>\n"
                       "<p class=\"sub\">kept {2}</p>\n<div class=\"plate\"><div>{3}</div><div>{4}{5}{6}</div></div></article>\n",
                       hive.hive, name, html(life_text(page.in.journal, hive)), stack_drawing(page, hive), gain_html(page, hive),
                       filling_chart(page, hive), visits_html(page, hive));
}

/// Says when the estimates of the past are not all drawn.
std::string past_words(const Page& page) {
    const std::size_t all = visit_days_this_season(page.in.history).size();
    const std::size_t drawn = page.in.past.size();
    if (drawn >= all) return {};
    if (drawn == 0) return "<p class=\"sub\">What was estimated on earlier days is not drawn here.</p>\n";
    return fmt::format("<p class=\"sub\">What was estimated on earlier days is drawn for the last {} of {} days with visits this season: "
                       "the journal is long.</p>\n", drawn, all);
}

/// What the scale has shown of the keeper's eye.
std::string eye_html(Page& page) {
    const KeeperCalibration& keeper = page.in.estimates.keeper;
    if (keeper.words.empty()) return {};
    return fmt::format("<p id=\"eye\">Your eye: {}.{}</p>\n", html(keeper.words), page.refs(keeper.because));
}

}  // namespace

std::string hives_section(Page& page) {
    std::string out;
    for (YardId yard = no_yard; yard < static_cast<YardId>(page.in.journal.yards.size()); ++yard) {
        std::string hives;
        for (const HiveHistory& hive : page.in.history.hives)
            if (hive.alive && hive.yard_on(page.in.history.on) == yard) hives += hive_article(page, hive);
        if (!hives.empty()) out += fmt::format("<h3>{}</h3>\n", page.yard(yard)) + hives;
    }
    if (out.empty()) out = "<p>No living hive.</p>\n";
    const std::string defs = "<svg width=\"0\" height=\"0\" style=\"position:absolute\" aria-hidden=\"true\" focusable=\"false\"><defs>" +
                             shared_months(page.in) + frame_patterns(page) + "</defs></svg>\n";
    return "<section id=\"hives\" class=\"after-sheets\" aria-labelledby=\"hives-h\"><h2 id=\"hives-h\">Each hive</h2>\n" +
           eye_html(page) + drawing_key() + past_words(page) + defs + out + "</section>\n";
}

std::string flow_section(Page& page) {
    std::string out;
    for (std::size_t yard = 0; yard < page.in.journal.yards.size(); ++yard) {
        out += fmt::format("<h3>{}</h3>\n", bdi(page.in.journal.yards[yard].name));
        for (const YardEstimate& estimate : page.in.estimates.yards)
            if (estimate.yard == static_cast<YardId>(yard))
                out += fmt::format("<p>Its mean hive gains {}; usual at this time of year {}.{}</p>\n",
                                   rate_text(estimate.kg_per_day, page.in.style),
                                   rate_text(estimate.usual_kg_per_day, page.in.style), page.refs(estimate.because));
        out += flow_chart(page, static_cast<YardId>(yard));
    }
    if (out.empty()) return out;
    return "<section id=\"flow\" aria-labelledby=\"flow-h\"><h2 id=\"flow-h\">Flow, bloom and weather</h2>\n"
           "<p class=\"sub\">Above, the flow as noted; crosses, the temperature on visits; below, what was in bloom, dashed "
           "while in bud, beginning or ending.</p>\n" + out + "</section>\n";
}

}  // namespace waxtab
