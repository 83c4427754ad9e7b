#include <algorithm>
#include <map>
#include <optional>

#include <fmt/format.h>

#include "report/lines.hpp"
#include "report/phrases.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

constexpr std::string_view under = "            ";
constexpr std::string_view under_more = "                ";

/// The fact as the long form, its day only where it is not the day it was noted.
std::string fact_words(const Journal& journal, const Fact& fact) {
    return fact.happened == fact.noted ? words_of(journal, fact, true) : printable(long_form(journal, fact));
}

std::string fact_line(const Journal& journal, const Fact& fact) {
    std::string out = paragraph(fact_words(journal, fact), under, under_more);
    for (const std::string& assumed : assumptions(journal, fact))
        out += paragraph("assumed: " + printable(assumed), under_more, under_more);
    return out;
}

bool is_todo(const Fact& fact) { return fact.kind == Kind::todo; }
bool is_flagged(const Fact& fact) { return fact.detail == "flagged"; }

bool has(const Journal& journal, const Reading& reading, bool (*is)(const Fact&)) {
    return std::any_of(reading.facts.begin(), reading.facts.end(), [&](std::uint32_t id) { return is(journal.facts[id]); });
}

/// The words that name an outcome that is not plain facts; empty for those.
std::string_view outcome_words(const Journal& journal, const Reading& reading) {
    switch (reading.outcome) {
        case Reading::Outcome::facts: return {};
        case Reading::Outcome::heading: return "day";
        case Reading::Outcome::set_up: return "set-up";
        case Reading::Outcome::remark: return has(journal, reading, is_flagged) ? "not understood, kept as a remark" : "remark";
        case Reading::Outcome::todo: return "to do";
        case Reading::Outcome::put_out: return has(journal, reading, is_todo) ? "to do" : "remark, no event";
        case Reading::Outcome::ambiguous: return "two readings, kept as a remark";
    }
    return {};
}

std::string lower(std::string_view text) {
    std::string out(text);
    for (char& c : out)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return out;
}

/// Where the words `name` end in `text` for the last time, 0 where they do not stand in it. A name that begins the text is the date.
std::size_t last_end(std::string_view text, std::string_view name) {
    const auto edge = [&](std::size_t at) { return at >= text.size() || std::string_view(" \t,.:").find(text[at]) != text.npos; };
    if (name.empty()) return 0;
    for (std::size_t at = text.rfind(name); at != text.npos && at > 0; at = text.rfind(name, at - 1))
        if (edge(at - 1) && edge(at + name.size())) return at + name.size();
    return 0;
}

/// The yard a heading names: the last named, and of several names that end there the longest.
YardId named_yard(const Journal& journal, const Reading& heading) {
    const std::string text = lower(journal.sources.text(heading.span));
    YardId best = no_yard;
    std::pair<std::size_t, std::size_t> furthest{0, 0};
    const auto take = [&](std::size_t yard, std::string_view name) {
        const std::pair at{last_end(text, lower(name)), name.size()};
        if (at.first > 0 && at > furthest) best = static_cast<YardId>(yard), furthest = at;
    };
    for (std::size_t yard = 0; yard < journal.yards.size(); ++yard) {
        take(yard, journal.yards[yard].name);
        for (const std::string& alias : journal.yards[yard].aliases) take(yard, alias);
    }
    return best;
}

/// The day of a heading, as the facts below it have it, with the yard it names or else the one they all agree on.
std::string heading_words(const Journal& journal, const Reading& heading) {
    constexpr std::string_view days[] = {"Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"};
    const auto at = static_cast<std::size_t>(&heading - journal.readings.data());
    bool lines_without_day = false;
    std::optional<Day> noted;
    std::optional<YardId> stands;   // of all facts below, where they agree
    for (std::size_t i = at + 1; i < journal.readings.size(); ++i) {
        const Reading& below = journal.readings[i];
        if (below.span.file != heading.span.file || below.outcome == Reading::Outcome::heading) break;
        if (below.outcome == Reading::Outcome::set_up) continue;
        if (below.facts.empty()) lines_without_day = true;
        for (const std::uint32_t f : below.facts) {
            const Fact& fact = journal.facts[f];
            if (!noted) noted = fact.noted;
            if (fact.kind == Kind::hive_moved) continue;   // its yard is the new one
            stands = !stands || *stands == fact.yard ? fact.yard : no_yard;
        }
    }
    if (noted) {
        const YardId named = named_yard(journal, heading);
        const YardId at_yard = named == no_yard ? stands.value_or(no_yard) : named;
        const std::string yard = at_yard == no_yard ? std::string{} : " at " + printable(journal.yard_name(at_yard));
        return fmt::format("day: {} {}{}", days[date::weekday{*noted}.c_encoding()], iso(*noted), yard);
    }
    return lines_without_day ? "day not known: the lines below are kept as remarks" : "day";
}

/// What was kept: a to-do without the word that calls it one, else the words as written.
std::string kept_words(const Journal& journal, const Reading& reading) {
    const bool one = reading.facts.size() == 1;
    if (one && journal.facts[reading.facts.front()].kind == Kind::todo) return printable(journal.facts[reading.facts.front()].text);
    return printable(journal.sources.text(reading.span));
}

std::string reading_line(const Journal& journal, const Reading& reading) {
    std::string out;
    if (reading.outcome == Reading::Outcome::facts) {
        for (const std::uint32_t id : reading.facts) out += fact_line(journal, journal.facts[id]);
        return out;
    }
    if (reading.outcome == Reading::Outcome::heading) return paragraph(heading_words(journal, reading), under, under_more);
    std::string words(outcome_words(journal, reading));
    if (reading.outcome != Reading::Outcome::set_up) words += ": " + kept_words(journal, reading);
    // A to-do that calls itself one needs no further reason.
    if (!reading.because.empty() && !reading.because.starts_with("to"))
        words += fmt::format("  (because of '{}')", printable(reading.because));
    return paragraph(words, under, under_more);
}

/// A line may be shown when nothing is left out, or when a fact of it is listed.
bool shows(const Journal& journal, Day on, const Selection& selection, const std::vector<const Reading*>& readings) {
    if (selection.everything()) return true;
    for (const Reading* reading : readings)
        for (const std::uint32_t id : reading->facts)
            if (journal.facts[id].noted <= on && lists(selection, journal.facts[id])) return true;
    return false;
}

bool blank_or_comment(std::string_view line) {
    const std::size_t first = line.find_first_not_of(" \t");
    return first == line.npos || line[first] == '#';
}

std::string written_line(const Source& source, std::uint32_t line) {
    const std::string text = printable(expand_tabs(source.line(line)));
    const std::size_t indent = text.find_first_not_of(' ');
    if (indent == text.npos) return fmt::format("{:>5} |\n", line);
    const std::string blanks(std::min(indent, page_width / 2), ' ');
    return paragraph(text, fmt::format("{:>5} | {}", line, blanks), "      | " + blanks);
}

using ReadingsByLine = std::map<std::uint32_t, std::vector<const Reading*>>;

/// What stands under a line that gave no reading.
std::string unread_line(const Journal& journal, std::string_view line) {
    if (blank_or_comment(line)) return {};
    std::string_view name = line.substr(line.find_first_not_of(" \t"));
    name = name.substr(0, name.find_last_not_of(" \t:.") + 1);
    if (journal.hive(name) != no_hive) return fmt::format("{}hive: {}\n", under, printable(name));
    // h4 h5; h4, h5 and h6
    std::size_t hives = 0, words = 0;
    for (std::size_t at = 0; at < name.size();) {
        const std::size_t end = std::min(name.find_first_of(" ,&", at), name.size());
        const std::string_view word = name.substr(at, end - at);
        if (!word.empty() && word != "and") ++words, hives += journal.hive(word) != no_hive;
        at = end + 1;
    }
    if (words > 1 && hives == words) return fmt::format("{}hives: {}\n", under, printable(name));
    return std::string(under) + "nothing understood\n";
}

std::string file_text(const Journal& journal, std::uint32_t file, ReadingsByLine& by_line, Day on,
                      const Selection& selection) {
    const Source& source = journal.sources[file];
    std::string out;
    for (std::uint32_t line = 1; line <= source.line_count(); ++line) {
        const auto& readings = by_line[line];
        if (!shows(journal, on, selection, readings)) continue;
        out += written_line(source, line);
        for (const Reading* reading : readings) out += reading_line(journal, *reading);
        if (readings.empty()) out += unread_line(journal, source.line(line));
    }
    return out;
}

}  // namespace

std::string read_back(const Journal& journal, Day on, const Selection& selection, const Style& style) {
    std::vector<ReadingsByLine> by_file(journal.sources.size());
    for (const Reading& reading : journal.readings) {
        if (!reading.span.known()) continue;
        const std::uint32_t line = journal.sources[reading.span.file].place(reading.span.begin).line;
        by_file[reading.span.file][line].push_back(&reading);
    }
    std::string out;
    for (std::uint32_t file = 0; file < journal.sources.size(); ++file) {
        const std::string text = file_text(journal, file, by_file[file], on, selection);
        if (text.empty()) continue;
        if (!out.empty()) out += '\n';
        if (style.refs) out += heading(printable(journal.sources[file].name()), style);
        out += text;
    }
    return out;
}

}  // namespace waxtab
