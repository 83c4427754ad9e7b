#include "report/advise.hpp"

#include <algorithm>
#include <cstdlib>

#include <fmt/format.h>

#include "report/phrases.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

constexpr std::string_view where_sources_are = "Where a rule comes from: 'waxtab rules NAME', or here with --sources.";

std::string where_text(const Journal& journal, const History& history, const Advice& advice) {
    if (advice.hive != no_hive) {
        const YardId yard = advice.yard != no_yard
                                ? advice.yard
                                : history.hives[static_cast<std::size_t>(advice.hive)].yard_on(history.on);
        const std::string at = yard == no_yard ? std::string{} : " at " + printable(journal.yard_name(yard));
        return printable(journal.hive_name(advice.hive)) + at + ": ";
    }
    return advice.yard == no_yard ? std::string{} : fmt::format("yard {}: ", printable(journal.yard_name(advice.yard)));
}

std::string by_text(Day by, Day on) {
    const int days = days_between(on, by);
    if (days == 0) return fmt::format("by {}, today", iso(by));
    if (days == 1) return fmt::format("by {}, tomorrow", iso(by));
    if (days > 0) return fmt::format("by {}, in {}", iso(by), counted(days, "day"));
    return fmt::format("was due by {}, {} ago", iso(by), counted(-days, "day"));
}

/// Words that stand on one line below a piece of advice.
struct Quoted {
    std::string place;          ///< `file:line`, or the day where there are no references
    std::vector<std::string> words;
    std::vector<FactId> facts;
};

void quote(std::vector<Quoted>& lines, const std::string& place, std::string words, FactId fact) {
    if (words.empty()) return;
    auto line = std::find_if(lines.begin(), lines.end(), [&](const Quoted& q) { return q.place == place; });
    if (line == lines.end()) line = lines.insert(lines.end(), {place, {}, {}});
    line->facts.push_back(fact);
    if (std::find(line->words.begin(), line->words.end(), words) == line->words.end())
        line->words.push_back(std::move(words));
}

/// More lines than that are not all quoted: the first two and the last five are, of those between the places are named.
constexpr std::size_t most_quoted = 8;

/// Leaves one empty line in place of those between; gives the words for them.
std::string cut_between(const Journal& journal, std::vector<Quoted>& lines, const Style& style) {
    if (lines.size() <= most_quoted) return {};
    const auto from = lines.begin() + 2, to = lines.end() - 5;
    std::vector<FactId> facts;
    for (auto line = from; line != to; ++line) facts.insert(facts.end(), line->facts.begin(), line->facts.end());
    const std::string words = fmt::format("and {} lines more: {}", to - from, refs_text(journal, facts, style));
    *from = Quoted{};
    lines.erase(from + 1, to);
    return paragraph(words, "      ", "       ");
}

/// The journal's own words with their places.
std::string quoted_lines(const Journal& journal, const Advice& advice, const Style& style) {
    std::vector<Quoted> lines;
    for (const FactId fact : advice.because) {
        const Span span = fact != set_up_fact  ? journal.facts[fact].span
                          : advice.hive >= 0 ? journal.hives[static_cast<std::size_t>(advice.hive)].span
                                               : Span{};
        if (!span.known()) continue;
        quote(lines, ref_text(journal, fact, advice.hive, style), '"' + printable(journal.sources.text(span)) + '"', fact);
    }
    const std::string between = cut_between(journal, lines, style);
    std::string out;
    for (const Quoted& line : lines)
        if (line.place.empty()) out += between;
        else out += with_ref(fmt::format("{}", fmt::join(line.words, ", ")), "      ", "       ", line.place);
    return out;
}

/// Without references what was understood, by day: the same however the journal is written.
std::string fact_lines(const Journal& journal, const Advice& advice) {
    std::vector<Quoted> lines;
    for (const FactId fact : advice.because)
        if (fact != set_up_fact)
            quote(lines, iso(journal.facts[fact].happened), words_of(journal, journal.facts[fact], advice.hive == no_hive), fact);
    std::string out;
    for (const Quoted& line : lines)
        out += paragraph(fmt::format("{}", fmt::join(line.words, ", ")), fmt::format("      {}  ", line.place), "        ");
    return out;
}

std::string because_lines(const Journal& journal, const Advice& advice, const Style& style) {
    return style.refs ? quoted_lines(journal, advice, style) : fact_lines(journal, advice);
}

std::string piece_text(const Journal& journal, const History& history, const Advice& advice, const Style& style) {
    std::string out = paragraph(where_text(journal, history, advice) + printable(advice.what), "  ", inner_indent);
    const std::string sure = advice.sureness_words.empty() ? std::string(name_of(advice.sureness))
                                                           : printable(advice.sureness_words);
    out += paragraph(advice.by ? by_text(*advice.by, history.on) + "; " + sure : sure, inner_indent, inner_indent);
    for (const std::string& reason : advice.reasons) out += paragraph(printable(reason), "    - ", "      ");
    out += because_lines(journal, advice, style);
    for (const std::string& over : advice.over) out += paragraph("goes before: " + printable(over), inner_indent, "      ");
    std::vector<std::string> rules{advice.rule};
    rules.insert(rules.end(), advice.also.begin(), advice.also.end());
    return out + paragraph(fmt::format("{}: {}", rules.size() == 1 ? "rule" : "rules", fmt::join(rules, ", ")), inner_indent, "      ");
}

/// How soon a piece of advice is due; also the heading it stands under.
enum class Urgency { now, soon, later, undated };

Urgency urgency_of(const Journal& journal, const Advice& advice, Day on) {
    if (!advice.by) return Urgency::undated;
    const int days = days_between(on, *advice.by);
    if (days <= 0) return Urgency::now;
    return days <= journal.settings.visit_interval_days ? Urgency::soon : Urgency::later;
}

std::string urgency_heading(Urgency urgency, int interval) {
    switch (urgency) {
        case Urgency::now: return "Due now";
        case Urgency::soon: return fmt::format("Within {}", counted(interval, "day"));
        case Urgency::later: return "Later";
        case Urgency::undated: break;
    }
    return "Without a date";
}

using Pieces = std::vector<const Advice*>;

std::string pieces_text(const Journal& journal, const History& history, const Pieces& pieces, const Style& style) {
    std::string out;
    for (const Urgency urgency : {Urgency::now, Urgency::soon, Urgency::later, Urgency::undated}) {
        bool headed = false;
        for (const Advice* piece : pieces) {
            if (piece->act == Act::todo || urgency_of(journal, *piece, history.on) != urgency) continue;
            if (!headed) out += '\n' + heading(urgency_heading(urgency, journal.settings.visit_interval_days), style);
            headed = true;
            out += '\n' + piece_text(journal, history, *piece, style);
        }
    }
    return out;
}

std::string todos_text(const Journal& journal, const History& history, const Pieces& pieces, const Style& style) {
    std::string out;
    for (const Advice* piece : pieces) {
        if (piece->act != Act::todo) continue;
        std::string_view what = piece->what;
        if (what.starts_with("your to-do: ")) what.remove_prefix(std::string_view("your to-do: ").size());
        const std::string due = piece->by ? " (" + by_text(*piece->by, history.on) + ")" : std::string{};
        out += with_ref(where_text(journal, history, *piece) + printable(what) + due, "  - ", "    ",
                        refs_text(journal, piece->because, style));
    }
    return out.empty() ? out : '\n' + heading("Your own to-dos", style) + '\n' + out;
}

/// A list of lines under a heading, each said once, in order of first use.
std::string once_each(std::string_view title, const std::vector<std::string>& lines, const Style& style) {
    std::string out;
    for (auto it = lines.begin(); it != lines.end(); ++it)
        if (!it->empty() && std::find(lines.begin(), it, *it) == it) out += paragraph(printable(*it), "  - ", "    ");
    return out.empty() ? out : '\n' + heading(title, style) + '\n' + out;
}

/// Each caution once, with the hives it is meant for.
std::string cautions_text(const Journal& journal, const Pieces& pieces, const Style& style) {
    std::vector<std::pair<std::string, std::vector<std::string>>> said;
    for (const Advice* piece : pieces)
        for (const std::string& caution : piece->cautions) {
            auto at = std::find_if(said.begin(), said.end(), [&](const auto& s) { return s.first == caution; });
            if (at == said.end()) at = said.insert(said.end(), {caution, {}});
            const std::string hive{journal.hive_name(piece->hive)};
            if (!hive.empty() && std::find(at->second.begin(), at->second.end(), hive) == at->second.end()) at->second.push_back(hive);
        }
    std::vector<std::string> lines;
    for (const auto& [words, hives] : said) lines.push_back(hives.empty() ? words : fmt::format("{}: {}", fmt::join(hives, ", "), words));
    return once_each("Take care", lines, style);
}

std::string sources_text(const Pieces& pieces, const Style& style) {
    std::vector<std::string> lines;
    for (const Advice* piece : pieces) {
        std::vector<std::string> names{piece->rule};
        names.insert(names.end(), piece->also.begin(), piece->also.end());
        for (const std::string& name : names) {
            if (piece->act == Act::todo || name.empty()) continue;
            std::string_view source = name == piece->rule ? std::string_view(piece->source) : std::string_view{};
            for (const RuleEntry& entry : rules())
                if (source.empty() && entry.name == name) source = entry.source;
            lines.push_back(fmt::format("{}: {}", name, source));
        }
    }
    return once_each("Where the rules come from", lines, style);
}

}  // namespace

std::string_view name_of(Sureness sureness) {
    if (sureness == Sureness::certain) return "certain";
    return sureness == Sureness::likely ? "likely" : "possible";
}

bool lists(const Selection& selection, const History& history, const Advice& advice) {
    if (advice.hive != no_hive) return lists(selection, history, advice.hive, history.on);
    const bool named = std::any_of(advice.hives.begin(), advice.hives.end(), [&](HiveId id) { return selection.has_hive(id); });
    return selection.has_yard(advice.yard) && (selection.hives.empty() || named);
}

std::string advise_text(const Journal& journal, const History& history, const std::vector<Advice>& advice,
                        const Selection& selection, const Style& style, bool sources) {
    Pieces pieces;
    for (const Advice& piece : advice)
        if (lists(selection, history, piece)) pieces.push_back(&piece);
    if (pieces.empty()) return fmt::format("Nothing to do on {}, as far as the journal tells.\n", iso(history.on));
    return heading("Advice for " + iso(history.on), style) + pieces_text(journal, history, pieces, style) +
           todos_text(journal, history, pieces, style) + cautions_text(journal, pieces, style) +
           (sources ? sources_text(pieces, style) : '\n' + paragraph(where_sources_are, "", ""));
}

}  // namespace waxtab
