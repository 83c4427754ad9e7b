#include "report/bring.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "advice/words.hpp"
#include "report/phrases.hpp"
#include "report/table.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

std::string hive_names(const Journal& journal, const std::vector<HiveId>& hives) {
    std::vector<std::string> names;
    for (const HiveId hive : hives) names.push_back(printable(journal.hive_name(hive)));
    return listed(names);
}

LoadLine super_line(const Journal& journal, const SuperLoad& load) {
    const std::string what = printable(box_words(load.box_kind, load.comb));
    std::string text = fmt::format("{} x {}", load.count + load.reserve, what);
    if (load.count > 0) text += " for " + hive_names(journal, load.hives);
    if (load.reserve > 0)
        text += fmt::format("{} in case {} {} at the high end of the range",
                            load.count > 0 ? fmt::format("; {} of them", load.reserve) : std::string(","),
                            hive_names(journal, load.reserve_hives), load.reserve_hives.size() > 1 ? "gain" : "gains");
    return {std::move(text), load.because};
}

LoadLine strip_line(const Journal& journal, const StripLoad& strip) {
    std::string text = fmt::format("take out: {} from {}, in since {}", printable(strip.substance),
                                   printable(journal.hive_name(strip.hive)), iso(strip.from));
    if (strip.due) text += fmt::format(", meant to come out {}", iso(*strip.due));
    return {std::move(text), {strip.fact}};
}

LoadLine feed_line(const Journal& journal, const FeedLoad& feed, const Style& style) {
    std::string text = fmt::format("feed for {}: {}", printable(journal.hive_name(feed.hive)), printable(feed.what));
    if (feed.stores_kg) text += "; stores wanted " + kg_text(*feed.stores_kg, style);
    return {std::move(text), feed.because};
}

LoadLine honey_line(const HoneyLoad& honey, const Style& style) {
    std::string text = fmt::format("room for {} with {} of honey; {} of {} to catch it", waxtab::counted(honey.supers, "super"),
                                   kg_text(honey.kg, style), waxtab::counted(honey.tubs, "tub"),
                                   text_of(Mass::from_kilograms(HoneyLoad::tub_kg), style.mass, 0));
    if (honey.jars > 0)
        text += fmt::format("; it fills about {} of {}", waxtab::counted(honey.jars, "jar"), jar_text(honey.jar_size));
    return {std::move(text), honey.because};
}

bool only_todos(const Stop& stop, const std::vector<Advice>& advice) {
    return std::all_of(stop.advice.begin(), stop.advice.end(), [&](std::size_t i) { return advice[i].act == Act::todo; });
}

std::string stop_text(const Journal& journal, const Stop& stop, const std::vector<Advice>& advice, const Style& style) {
    const std::string name = printable(journal.hive_name(stop.hive));
    std::string out = paragraph(stop.by ? fmt::format("{}, by {}", name, iso(*stop.by)) : name, "    ", "      ");
    for (const std::size_t i : stop.advice)
        if (advice[i].act != Act::todo)
            out += with_ref(printable(advice[i].what), "      - ", "        ", refs_text(journal, advice[i].because, style));
    if (const std::string ahead = ahead_words(stop); !ahead.empty()) out += paragraph(ahead, "      - ", "        ");
    return out;
}

std::string todos_text(const Journal& journal, const std::vector<FactId>& todos, std::string_view indent, const Style& style) {
    std::string out;
    for (const FactId fact : todos)
        out += with_ref(todo_words(journal, fact), std::string(indent) + "- ", std::string(indent) + "  ",
                        ref_text(journal, fact, no_hive, style));
    return out;
}

std::string yard_name(const Journal& journal, YardId yard) {
    return yard == no_yard ? std::string("no yard named") : printable(journal.yard_name(yard));
}

std::string yard_text(const Journal& journal, const YardRound& yard, const std::vector<Advice>& advice, const Style& style) {
    std::string out = '\n' + heading(fmt::format("Yard {}, {}, {} to open", yard_name(journal, yard.yard), iso(yard.day),
                                                 waxtab::counted(static_cast<std::int64_t>(yard.hives.size()), "hive")), style);
    for (const std::string& remark : yard.remarks) out += paragraph(printable(remark), "  ", "    ");
    const std::vector<LoadLine> loads = load_lines(journal, yard, style);
    if (!loads.empty()) out += "  load\n";
    for (const LoadLine& line : loads) out += with_ref(line.words, "    - ", "      ", refs_text(journal, line.because, style));
    if (!yard.hives.empty()) out += "  open, in this order\n";
    for (const Stop& stop : yard.hives) out += stop_text(journal, stop, advice, style);
    if (yard.todos.empty()) return out;
    return out + "  your to-dos\n" + todos_text(journal, yard.todos, "    ", style);
}

std::string shed_text(const Journal& journal, const Round& round, const Style& style) {
    Table table;
    table.column("");
    for (const auto head : {"wanted", "in case", "in the shed", "short"}) table.column(head, Table::Align::right);
    for (const ShedCheck& row : round.shed)
        table.row({printable(row.what), fmt::format("{}", row.wanted), row.reserve > 0 ? fmt::format("{}", row.reserve) : "",
                   row.in_shed ? fmt::format("{}", *row.in_shed) : "not said",
                   row.short_by > 0 ? fmt::format("{}", row.short_by) : ""});
    if (table.empty()) return {};
    std::string out = '\n' + heading("Against the shed", style) + '\n' + table.text(2);
    for (const ShedCheck& row : round.shed)
        if (const std::string words = short_words(journal, row); !words.empty())
            out += with_ref(words, "  - ", "    ", refs_text(journal, row.because, style));
    return out;
}

}  // namespace

std::string ahead_words(const Stop& stop) {
    if (!stop.chance_ahead) return {};
    return fmt::format("put a super on: {} that room runs out before the round after", odds(*stop.chance_ahead));
}

std::vector<LoadLine> load_lines(const Journal& journal, const YardRound& yard, const Style& style) {
    std::vector<LoadLine> lines;
    for (const SuperLoad& load : yard.supers) lines.push_back(super_line(journal, load));
    if (yard.escape_boards > 0) lines.push_back({waxtab::counted(yard.escape_boards, "escape board"), yard.boards_because});
    for (const FeedLoad& feed : yard.feed) lines.push_back(feed_line(journal, feed, style));
    for (const StripLoad& strip : yard.strips) lines.push_back(strip_line(journal, strip));
    if (yard.honey.supers > 0) lines.push_back(honey_line(yard.honey, style));
    return lines;
}

std::string short_words(const Journal& journal, const ShedCheck& row) {
    if (row.short_by == 0 || row.claims.empty()) return {};
    return fmt::format("{} short of {}: {}", row.short_by, printable(row.what), printable(shared_words(journal, row.claims)));
}

std::string todo_words(const Journal& journal, FactId fact) {
    const Fact& todo = journal.facts[fact];
    const std::string text = printable(todo.text);
    return todo.hive == no_hive ? text : fmt::format("{}: {}", printable(journal.hive_name(todo.hive)), text);
}

Round listed(const Round& round, const std::vector<Advice>& advice, const Selection& selection) {
    Round out = round;
    std::erase_if(out.yards, [&](const YardRound& yard) { return !selection.has_yard(yard.yard); });
    for (YardRound& yard : out.yards)
        std::erase_if(yard.hives, [&](const Stop& stop) {
            return !selection.has_hive(stop.hive) || (stop.supers == 0 && only_todos(stop, advice));
        });
    if (!selection.hives.empty()) std::erase_if(out.yards, [](const YardRound& yard) { return yard.hives.empty(); });
    return out;
}

std::string bring_text(const Journal& journal, const Round& whole, const std::vector<Advice>& advice,
                       const Selection& selection, const Style& style) {
    const Round round = listed(whole, advice, selection);
    const std::string days = round.from == round.to ? iso(round.from) : fmt::format("{} to {}", iso(round.from), iso(round.to));
    if (round.yards.empty() && round.todos.empty()) return fmt::format("No yard is due for a visit, {}.\n", days);
    std::string out = heading("What to bring, round of " + days, style);
    for (const YardRound& yard : round.yards) out += yard_text(journal, yard, advice, style);
    if (!selection.hives.empty() || !selection.yards.empty()) return out;
    out += shed_text(journal, round, style);
    if (round.todos.empty()) return out;
    return out + '\n' + heading("Your to-dos, no yard named", style) + '\n' + todos_text(journal, round.todos, "  ", style);
}

}  // namespace waxtab
