#include "report/timeline.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "history/queens.hpp"
#include "report/phrases.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

constexpr std::string_view stack_indent = "      ";
constexpr std::string_view day_indent = "              ";

std::string_view gear_text(StackPart::What what) {
    switch (what) {
        case StackPart::What::excluder: return "excluder";
        case StackPart::What::escape: return "escape board";
        case StackPart::What::feeder: return "feeder";
        case StackPart::What::upper_entrance: return "upper entrance";
        case StackPart::What::box: break;
    }
    return {};
}

std::string since_text(const std::optional<Day>& since) { return since ? "since " + iso(*since) : "from the start"; }

/// Gear is drawn as a thin line between boxes.
std::string drawn(const Journal& journal, const History& history, const Standing& standing) {
    const std::string words = standing_text(journal, history, standing);
    return standing.box == no_box ? fmt::format("----- {} -----", words) : words;
}

std::string stack_text(const Journal& journal, const History& history, const HiveHistory& hive, const Style& style) {
    if (!hive.alive) return {};
    if (hive.stack.empty()) return std::string(stack_indent) + "nothing is known of its boxes\n";
    std::size_t width = 0;
    for (const Standing& standing : hive.stack) width = std::max(width, display_width(drawn(journal, history, standing)));
    std::string out;
    for (auto it = hive.stack.rbegin(); it != hive.stack.rend(); ++it) {
        const std::string row = pad_right(drawn(journal, history, *it), std::min<std::size_t>(width, 40));
        // Padding inside the row must survive the wrapping of a paragraph, so the row is its first line's indent.
        out += with_ref(since_text(it->since), fmt::format("{}{}  ", stack_indent, row), stack_indent,
                        ref_text(journal, it->fact, hive.hive, style));
    }
    return out + std::string(stack_indent) + "===== floor =====\n";
}

/// Facts of one day that are told together: those of one line, all of them without references.
struct Told {
    Day day{};
    Span at;
    std::vector<std::string> words;
    std::vector<std::string> assumed;
    std::string ref;
};

bool same_line(const Journal& journal, Span a, Span b) {
    return a.known() && b.known() && a.file == b.file &&
           journal.sources[a.file].place(a.begin).line == journal.sources[b.file].place(b.begin).line;
}

void tell(const Journal& journal, FactId id, std::vector<Told>& told, const Style& style) {
    const Fact& fact = journal.facts[id];
    // Without references it must not show how the days are spread over lines and files.
    const bool apart = style.refs && !told.empty() && !same_line(journal, told.back().at, fact.span);
    if (told.empty() || told.back().day != fact.happened || apart)
        told.push_back({fact.happened, fact.span, {}, {}, ref_text(journal, id, no_hive, style)});
    Told& last = told.back();
    std::string words = words_of(journal, fact, false);
    if (std::find(last.words.begin(), last.words.end(), words) != last.words.end()) return;
    last.words.push_back(std::move(words));
    // What was assumed for a reading stands in `lines`; here it would drown the story.
    if (!is_event(fact.kind)) return;
    for (const std::string& assumed : assumptions(journal, fact))
        if (std::find(last.assumed.begin(), last.assumed.end(), assumed) == last.assumed.end())
            last.assumed.push_back(assumed);
}

std::string told_text(const std::vector<Told>& told) {
    std::string out;
    for (std::size_t i = 0; i < told.size(); ++i) {
        const Told& t = told[i];
        const bool new_day = i == 0 || told[i - 1].day != t.day;
        const std::string first = new_day ? fmt::format("  {}  ", iso(t.day)) : std::string(day_indent);
        out += with_ref(fmt::format("{}", fmt::join(t.words, ", ")), first, day_indent, t.ref);
        if (t.assumed.empty()) continue;
        out += paragraph(printable(fmt::format("assumed: {}", fmt::join(t.assumed, "; "))),
                         std::string(day_indent) + "  ", std::string(day_indent) + "  ");
    }
    return out;
}

std::string events_text(const Journal& journal, const HiveHistory& hive, const Selection& selection, const Style& style) {
    std::vector<Told> told;
    for (const Event& event : hive.events)
        if (event.fact != set_up_fact && selection.has_day(event.day)) tell(journal, event.fact, told, style);
    return told_text(told);
}

std::string aliases_text(const HiveDecl& hive) {
    std::vector<std::string> names;
    for (const std::string& alias : hive.aliases) names.push_back(printable(alias));
    return names.empty() ? std::string{} : fmt::format(", also {}", fmt::join(names, ", "));
}

std::string queen_name(const Queen& queen) {
    std::string text = "queen";
    if (!queen.colour.empty()) text += ", marked " + printable(queen.colour);
    if (queen.year > 0) text += fmt::format(", of {}", queen.year);
    if (queen.clipped) text += ", clipped";
    if (!queen.mother.empty()) text += ", from " + printable(queen.mother);
    return text;
}

/// Which queens the hive had: what is known of each, from when to when, whence and whither.
std::string queens_text(const Journal& journal, const Queens& queens, HiveId hive, const Style& style) {
    if (!queens.worth_telling(hive)) return {};
    std::string out;
    for (const Reign* r : queens.of(hive)) {
        const Reign *before = queens.before(*r), *next = queens.next(*r);
        std::string text = queen_name(queens.queens[static_cast<std::size_t>(r->queen)]) + ": " + since_text(r->from);
        if (!r->came.empty()) text += fmt::format(", {}", r->came);
        if (before && before->hive != hive) text += " from " + printable(journal.hive_name(before->hive));
        if (r->to) text += fmt::format("; to {}, {}", iso(*r->to), r->went);
        if (next && next->hive != hive) text += ", then in " + printable(journal.hive_name(next->hive));
        std::vector<FactId> facts;
        for (const FactId f : {r->from_fact, r->to_fact})
            if (f != set_up_fact) facts.push_back(f);
        out += with_ref(text, "  ", "    ", refs_text(journal, facts, style));
    }
    return out;
}

std::string hive_text(const Journal& journal, const History& history, const Queens& queens, const HiveHistory& hive,
                      const Selection& selection, const Style& style) {
    const HiveDecl& decl = journal.hives[static_cast<std::size_t>(hive.hive)];
    const std::string_view yard = journal.yard_name(hive.yard_on(history.on));
    std::string out = heading(printable(decl.name) + aliases_text(decl) +
                              (yard.empty() ? std::string{} : " at " + printable(yard)), style);
    out += paragraph(life_text(journal, hive), "  ", "  ") + queens_text(journal, queens, hive.hive, style);
    const std::string stack = stack_text(journal, history, hive, style);
    if (!stack.empty()) out += '\n' + stack;
    const std::string events = events_text(journal, hive, selection, style);
    if (!events.empty()) out += '\n' + events;
    return out;
}

std::string yard_text(const Journal& journal, const History& history, std::size_t yard, const Selection& selection,
                      const Style& style) {
    std::vector<Told> told;
    for (const FactId id : history.yard_facts[yard])
        if (selection.has_day(journal.facts[id].happened)) tell(journal, id, told, style);
    const std::string text = told_text(told);
    return text.empty() ? text : heading("Yard " + printable(journal.yards[yard].name), style) + '\n' + text;
}

}  // namespace

std::string standing_text(const Journal& journal, const History& history, const Standing& standing) {
    if (standing.box == no_box) return std::string(gear_text(standing.what));
    return box_text(journal, history.boxes[static_cast<std::size_t>(standing.box)]);
}

std::string life_text(const Journal& journal, const HiveHistory& hive) {
    if (!hive.alive && !hive.ended) return "not yet in being";
    std::string text = since_text(hive.born);
    if (hive.mother != no_hive) text += fmt::format(", from {}", printable(journal.hive_name(hive.mother)));
    if (hive.alive) return text;
    const std::string day = hive.ended ? iso(*hive.ended) : std::string{};
    if (hive.united_into != no_hive)
        return fmt::format("{}, united with {} {}", text, printable(journal.hive_name(hive.united_into)), day);
    if (hive.end_fact == set_up_fact) return fmt::format("{}, ended {}", text, day);
    const Kind kind = journal.facts[hive.end_fact].kind;
    const std::string_view how = kind == Kind::hive_dead ? "dead" : kind == Kind::hive_sold ? "sold" : "ended";
    return fmt::format("{}, {} {}", text, how, day);
}

bool in_timeline(const Selection& selection, const History& history, const HiveHistory& hive) {
    const bool not_yet = !hive.alive && !hive.ended;
    return lists(selection, history, hive.hive, history.on) && !(not_yet && selection.hives.empty());
}

std::string timeline_text(const Journal& journal, const History& history, const Selection& selection,
                          const Style& style) {
    std::string out;
    const auto add = [&](const std::string& block) {
        if (!block.empty()) out += (out.empty() ? "" : "\n") + block;
    };
    for (std::size_t yard = 0; yard < history.yard_facts.size(); ++yard)
        if (selection.has_yard(static_cast<YardId>(yard)) && selection.hives.empty())
            add(yard_text(journal, history, yard, selection, style));
    const Queens queens = queens_of(journal, history);
    for (const HiveHistory& hive : history.hives)
        if (in_timeline(selection, history, hive)) add(hive_text(journal, history, queens, hive, selection, style));
    return out.empty() ? "No hive to show.\n" : out;
}

}  // namespace waxtab
