#include <algorithm>

#include <fmt/format.h>

#include "report/bring.hpp"
#include "report/page_parts.hpp"
#include "report/phrases.hpp"
#include "report/timeline.hpp"

namespace waxtab {

namespace {

/// Of sums over many hives so many lines are named.
constexpr std::size_t most_bring_lines = 6;

std::string due_words(Day by, Day on) {
    const int days = days_between(on, by);
    if (days == 0) return "by today";
    if (days == 1) return fmt::format("by tomorrow, {}", iso(by));
    if (days > 0) return fmt::format("by {}, in {}", iso(by), counted(days, "day"));
    return fmt::format("was due by {}, {} ago", iso(by), counted(-days, "day"));
}

std::string sure_words(const Advice& piece) {
    static constexpr std::string_view words[] = {"certain", "likely", "possible"};
    return piece.sureness_words.empty() ? std::string(words[static_cast<std::size_t>(piece.sureness)]) : piece.sureness_words;
}

/// So many lines stand beside a piece of advice; more would bury what to do, and all of them stand below.
constexpr std::size_t most_beside = 9;

std::string reasons_html(Page& page, const Advice& piece) {
    const std::string id = fmt::format("why-{}", &piece - page.in.advice.data());
    const std::string all = page.refs(piece.because), beside = page.refs(piece.because, most_beside, "#" + id);
    std::string items;
    for (const std::string& reason : piece.reasons) items += "<li>" + bdi(reason) + "</li>";
    for (const std::string& over : piece.over) items += "<li>goes before: " + bdi(over) + "</li>";
    items += fmt::format("<li>rule {}: {}</li>", html(piece.rule), html(piece.source));
    if (all != beside) items += "<li>all lines:" + all + "</li>";
    return fmt::format("{}<details{}><summary>why</summary><ul>{}</ul></details>",
                       beside.empty() ? page.ref(set_up_fact, piece.hive) : beside, all == beside ? "" : fmt::format(" id=\"{}\"", id), items);
}

std::string piece_html(Page& page, const Advice& piece) {
    std::string out = "<li>";
    if (piece.hive != no_hive) out += page.hive(piece.hive) + ": ";
    out += "<strong>" + bdi(piece.what) + "</strong>";
    if (piece.by) out += fmt::format(" <span class=\"due\">{}</span>", due_words(*piece.by, page.in.history.on));
    out += fmt::format(" <span class=\"sub\">{}</span>", html(sure_words(piece)));
    return out + reasons_html(page, piece) + "</li>\n";
}

YardId place_of(const Page& page, const Advice& piece) {
    return piece.hive != no_hive ? page.yard_of(piece.hive) : piece.yard;
}

using Pieces = std::vector<const Advice*>;

/// Advice of one place: what is due within the visit interval, and the rest.
struct PlacePieces {
    YardId yard = no_yard;
    Pieces soon, later;
};

/// Places in the order their advice first comes, which is by urgency.
std::vector<PlacePieces> by_place(const Page& page) {
    std::vector<PlacePieces> places;
    const Day soon = page.in.history.on + date::days{page.in.journal.settings.visit_interval_days};
    for (const Advice& piece : page.in.advice) {
        if (piece.act == Act::todo) continue;
        const YardId yard = place_of(page, piece);
        auto at = std::find_if(places.begin(), places.end(), [&](const PlacePieces& p) { return p.yard == yard; });
        if (at == places.end()) {
            places.emplace_back();
            at = places.end() - 1;
            at->yard = yard;
        }
        (piece.by && *piece.by <= soon ? at->soon : at->later).push_back(&piece);
    }
    return places;
}

std::string list_html(Page& page, const Pieces& pieces) {
    std::string out = "<ul>\n";
    for (const Advice* piece : pieces) out += piece_html(page, *piece);
    return out + "</ul>\n";
}

std::string place_html(Page& page, const PlacePieces& place) {
    std::string out = fmt::format("<h3>{}</h3>\n", place.yard == no_yard ? std::string("For no yard alone") : page.yard(place.yard));
    if (!place.soon.empty()) out += list_html(page, place.soon);
    else if (place.yard != no_yard) out += "<p>Nothing due this week.</p>\n";
    if (place.later.empty()) return out;
    return out + fmt::format("<details class=\"also\"><summary>later, or without a date: {}</summary>\n{}</details>\n", place.later.size(),
                             list_html(page, place.later));
}

std::string todos_html(Page& page) {
    std::string out;
    for (const Advice& piece : page.in.advice) {
        if (piece.act != Act::todo) continue;
        std::string_view what = piece.what;
        if (what.starts_with("your to-do: ")) what.remove_prefix(std::string_view("your to-do: ").size());
        const std::string whose = piece.hive != no_hive ? page.hive(piece.hive) + ": " : std::string{};
        out += "<li>" + whose + bdi(what) + page.refs(piece.because) + "</li>\n";
    }
    return out.empty() ? out : "<h3>Your own to-dos</h3>\n<ul>\n" + out + "</ul>\n";
}

/// A caution, said once for all hives it is meant for.
struct Cautioned {
    std::string words;
    std::vector<HiveId> hives;
    std::vector<FactId> because;
};

std::string cautions_html(Page& page) {
    std::vector<Cautioned> all;
    for (const Advice& piece : page.in.advice)
        for (const std::string& caution : piece.cautions) {
            auto at = std::find_if(all.begin(), all.end(), [&](const Cautioned& c) { return c.words == caution; });
            if (at == all.end()) at = all.insert(all.end(), {caution, {}, {}});
            at->because.insert(at->because.end(), piece.because.begin(), piece.because.end());
            if (piece.hive != no_hive && std::find(at->hives.begin(), at->hives.end(), piece.hive) == at->hives.end())
                at->hives.push_back(piece.hive);
        }
    std::string out;
    for (const Cautioned& c : all) {
        std::vector<std::string> names;
        for (const HiveId hive : c.hives) names.push_back(page.hive(hive));
        out += fmt::format("<li>{}{}{}{}</li>\n", fmt::join(names, ", "), names.empty() ? "" : ": ", bdi(c.words), page.refs(c.because));
    }
    return out.empty() ? out : "<div class=\"care\"><h3>Take care</h3>\n<ul>\n" + out + "</ul></div>\n";
}

/// A part of a sheet that stays whole on one leaf.
std::string sheet_row(std::string_view part) { return fmt::format("<div class=\"sheet-row\">{}</div>\n", part); }

/// What stands on a hive, shortly: `2 brood boxes, excluder, 3 supers`.
std::string standing_words(const Page& page, HiveId hive) {
    const History& history = page.in.history;
    const auto brood = static_cast<std::int64_t>(history.brood_boxes_on(hive).size());
    const auto supers = static_cast<std::int64_t>(history.supers_on(hive).size());
    std::vector<std::string> words;
    if (brood > 0) words.push_back(counted(brood, "brood box", "brood boxes"));
    for (const Standing& part : history.hives[static_cast<std::size_t>(hive)].stack)
        if (part.box == no_box) words.push_back(standing_text(page.in.journal, history, part));
    if (supers > 0) words.push_back(counted(supers, "super"));
    return fmt::format("{}", fmt::join(words, ", "));
}

std::string stop_html(Page& page, const Stop& stop) {
    std::string out = fmt::format("<strong>{}</strong>{}", page.hive(stop.hive),
                                  stop.by ? fmt::format(" <span class=\"due\">by {}</span>", iso(*stop.by)) : std::string{});
    out += fmt::format(" <span class=\"sub\">{}</span><ul>", standing_words(page, stop.hive));
    for (const std::size_t i : stop.advice) {
        const Advice& piece = page.in.advice[i];
        if (piece.act != Act::todo) out += "<li>" + bdi(piece.what) + page.refs(piece.because) + "</li>";
    }
    if (const std::string ahead = ahead_words(stop); !ahead.empty()) {
        const HiveEstimate* estimate = page.in.estimates.hive(stop.hive);
        out += "<li>" + ahead +
               (estimate ? page.refs(*estimate) : std::string{}) + "</li>";
    }
    const std::string_view line = "<div class=\"write\"></div>";
    return sheet_row(fmt::format("<div class=\"hive\">{}</ul>{}{}{}</div>", out, line, line, line));
}

std::string todo_items(Page& page, const std::vector<FactId>& todos) {
    std::string out;
    for (const FactId fact : todos) out += "<li>" + bdi(todo_words(page.in.journal, fact)) + page.ref(fact, no_hive) + "</li>\n";
    return out;
}

std::string load_items(Page& page, const YardRound& yard) {
    std::string out;
    for (const std::string& remark : yard.remarks) out += "<li>" + bdi(remark) + "</li>\n";
    for (const LoadLine& line : load_lines(page.in.journal, yard, page.in.style))
        out += "<li>" + bdi(line.words) + page.refs(line.because) + "</li>\n";
    return out;
}

std::string yard_sheet(Page& page, const YardRound& yard) {
    std::string out = fmt::format("<section class=\"sheet\" aria-label=\"sheet for {}\"><div class=\"sheet-head\">"
                                  "<h3>Take it to the yard: {}, {}</h3></div>\n<div class=\"sheet-body\">\n",
                                  html(page.in.journal.yard_name(yard.yard)), page.yard(yard.yard), iso(yard.day));
    const std::string items = load_items(page, yard) + todo_items(page, yard.todos);
    std::string first = items.empty() ? items : "<ul>\n" + items + "</ul>\n";
    first += "<p class=\"sub\">weather, flow, in bloom:</p><div class=\"write\"></div>\n";
    if (yard.hives.empty()) first += "<p>No hive needs opening, as far as the journal tells.</p><div class=\"write\"></div>\n";
    out += sheet_row("<div>" + first + "</div>");
    for (const Stop& stop : yard.hives) out += stop_html(page, stop);
    return out + "</div></section>\n";
}

/// Who goes first where the shed is short.
std::string shares_html(Page& page) {
    std::string out;
    for (const ShedCheck& row : page.in.round.shed)
        if (const std::string words = short_words(page.in.journal, row); !words.empty())
            out += "<li>" + bdi(words) + page.refs(row.because, most_bring_lines, "#bring") + "</li>\n";
    return out.empty() ? out : "<ul>\n" + out + "</ul>\n";
}

std::string shed_html(Page& page) {
    std::string rows;
    for (const ShedCheck& row : page.in.round.shed)
        rows += fmt::format("<tr><th scope=\"row\">{}</th><td class=\"n\">{}</td><td class=\"n\">{}</td>"
                            "<td class=\"n\">{}</td><td class=\"n\">{}</td><td>{}</td></tr>\n",
                            bdi(row.what), row.wanted, row.reserve, row.in_shed ? fmt::format("{}", *row.in_shed) : "not said",
                            row.short_by > 0 ? fmt::format("<strong>{}</strong>", row.short_by) : "none",
                            page.refs(row.because, most_bring_lines, "#bring"));
    if (rows.empty()) return rows;
    return "<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"against the shed\"><table>"
           "<caption>Against the shed</caption><thead><tr>"
           "<th scope=\"col\">what</th><th scope=\"col\" class=\"n\">wanted</th><th scope=\"col\" class=\"n\">in case</th>"
           "<th scope=\"col\" class=\"n\">in the shed</th><th scope=\"col\" class=\"n\">short</th>"
           "<th scope=\"col\">lines</th></tr></thead><tbody>\n" + rows + "</tbody></table></div>\n" + shares_html(page);
}

}  // namespace

std::string week_section(Page& page) {
    std::string out = "<section id=\"week\" aria-labelledby=\"week-h\"><h2 id=\"week-h\">This week, yard by yard</h2>\n";
    const std::vector<PlacePieces> places = by_place(page);
    for (const PlacePieces& place : places) out += place_html(page, place);
    if (places.empty()) out += "<p>Nothing to do, as far as the journal tells.</p>\n";
    return out + todos_html(page) + cautions_html(page) + "</section>\n";
}

std::string bring_section(Page& page) {
    const Round round = listed(page.in.round, page.in.advice, {});
    std::string out = fmt::format("<section id=\"bring\" aria-labelledby=\"bring-h\"><h2 id=\"bring-h\">What to bring</h2>\n"
                                  "<p>For the round from {} to {}.</p>\n", iso(round.from), iso(round.to));
    if (round.yards.empty()) out += "<p>No yard is due for a visit.</p>\n";
    for (const YardRound& yard : round.yards) {
        const std::string items = load_items(page, yard);
        const auto hives = static_cast<std::int64_t>(yard.hives.size());
        out += fmt::format("<h3>{}, {}</h3>\n<p>{} to open.</p>\n", page.yard(yard.yard), iso(yard.day),
                           hives == 0 ? std::string("No hive") : counted(hives, "hive"));
        out += items.empty() ? std::string("<p>Nothing to load.</p>\n") : "<ul>\n" + items + "</ul>\n";
    }
    return out + shed_html(page) + "</section>\n";
}

std::string yard_sheets(Page& page) {
    std::string out;
    for (const YardRound& yard : listed(page.in.round, page.in.advice, {}).yards) out += yard_sheet(page, yard);
    if (out.empty()) return out;
    return "<section id=\"sheets\" aria-labelledby=\"sheets-h\"><div class=\"sheets-head\"><h2 id=\"sheets-h\">Sheets for the yard</h2>\n"
           "<p class=\"sub\">Printed, each yard begins a page of its own, with room to write at every hive.</p></div>\n" + out +
           "</section>\n";
}

}  // namespace waxtab
