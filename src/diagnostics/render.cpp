#include "diagnostics/render.hpp"

#include <algorithm>
#include <tuple>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

/// Escape sequences of the terminal, or nothing at all.
struct Ink {
    bool on;
    std::string_view bold() const { return on ? "\x1b[1m" : ""; }
    std::string_view off() const { return on ? "\x1b[0m" : ""; }
    std::string_view of(Severity severity) const {
        if (!on) return "";
        if (severity == Severity::error) return "\x1b[1;31m";
        return severity == Severity::warning ? "\x1b[1;35m" : "\x1b[1;36m";
    }
};

/// A source line ready to print, and the columns of it that the span takes.
struct Excerpt {
    std::string text;
    std::size_t begin = 0, width = 1;
};

/// Text of a journal as it may be printed: tabs expanded first, since they are control characters too.
std::string shown(std::string_view text, std::size_t from) { return printable(expand_tabs(text, from)); }

/// The span cut to the line it begins in.
Excerpt excerpt_of(const Source& source, Span span, std::uint32_t line) {
    const std::string_view text = source.line(line);
    const std::size_t start = source.line_start(line);
    const std::size_t begin = std::min<std::size_t>(span.begin - start, text.size());
    const std::size_t end = std::clamp<std::size_t>(span.end > start ? span.end - start : 0, begin, text.size());
    Excerpt excerpt;
    excerpt.text = shown(text.substr(0, begin), 0);
    excerpt.begin = display_width(excerpt.text);
    const std::string inside = shown(text.substr(begin, end - begin), excerpt.begin);
    excerpt.width = std::max<std::size_t>(display_width(inside), 1);
    excerpt.text += inside;
    excerpt.text += shown(text.substr(end), display_width(excerpt.text));
    return excerpt;
}

/// Cuts a long line to a window of `width` columns around the span, with `...` where something is left out.
void cut_to(Excerpt& excerpt, std::size_t width) {
    constexpr std::string_view dots = "...";
    const std::size_t before = width / 3;
    if (display_width(excerpt.text) <= width) return;
    if (excerpt.begin + excerpt.width + dots.size() > width && excerpt.begin > before) {
        const std::size_t gone = bytes_within(excerpt.text, excerpt.begin - before);
        const std::size_t columns = display_width(std::string_view(excerpt.text).substr(0, gone));
        excerpt.text.replace(0, gone, dots);
        excerpt.begin = excerpt.begin - columns + dots.size();
    }
    if (display_width(excerpt.text) <= width) return;
    excerpt.text.resize(bytes_within(excerpt.text, width - dots.size()));
    const std::size_t end = std::max(display_width(excerpt.text), excerpt.begin + 1);
    excerpt.width = std::min(excerpt.width, end - excerpt.begin);
    excerpt.text += dots;
}

constexpr std::size_t gutter_width = 7;

std::string underlined(const Source& source, Span span, const std::string& label, std::string_view ink,
                       std::string_view off) {
    const std::uint32_t line = source.place(span.begin).line;
    if (line > source.line_count()) return {};
    Excerpt excerpt = excerpt_of(source, span, line);
    cut_to(excerpt, page_width - gutter_width - 1);
    std::string out = fmt::format("{:>5} | {}\n", line, excerpt.text);
    const std::string marks = fmt::format("      | {:{}}{}{}{}", "", excerpt.begin, ink,
                                          std::string(excerpt.width, '^'), off);
    const std::string words = printable(label);
    if (words.empty()) return out + marks + '\n';
    const std::size_t at = gutter_width + 1 + excerpt.begin + excerpt.width;
    if (at + 1 + display_width(words) <= page_width) return out + marks + ' ' + words + '\n';
    return out + marks + '\n' + paragraph(words, "      | ", "      | ");
}

std::string place_of(const Sources& sources, Span span) {
    if (!span.known()) return "waxtab";
    const LineColumn at = sources[span.file].place(span.begin);
    return fmt::format("{}:{}:{}", printable(sources[span.file].name()), at.line, at.column);
}

std::string head(const Sources& sources, Span span, Severity severity, std::string_view title,
                 std::string_view code, Ink ink) {
    const std::string tag = code.empty() ? std::string{} : fmt::format(" [{}]", code);
    return fmt::format("{}{}:{} {}{}:{} {}{}\n", ink.bold(), place_of(sources, span), ink.off(), ink.of(severity),
                       name_of(severity), ink.off(), printable(title), tag);
}

std::string body(const Sources& sources, Span span, const std::string& label, Severity severity, Ink ink) {
    if (!span.known()) return {};
    return underlined(sources[span.file], span, label, ink.of(severity), ink.off());
}

nlohmann::ordered_json place_json(const Sources& sources, Span span) {
    nlohmann::ordered_json json;
    if (!span.known()) return json;
    const Source& source = sources[span.file];
    const LineColumn at = source.place(span.begin), end = source.place(span.end);
    json["file"] = source.name();
    json["line"] = at.line;
    json["column"] = at.column;
    json["end_column"] = end.line == at.line ? end.column : at.column + 1;
    return json;
}

}  // namespace

std::string_view name_of(Severity severity) {
    if (severity == Severity::error) return "error";
    return severity == Severity::warning ? "warning" : "note";
}

std::string render(const Sources& sources, const Diagnostic& d, bool colour) {
    const Ink ink{colour};
    std::string out = head(sources, d.span, d.severity, d.title, d.code, ink);
    out += body(sources, d.span, d.label, d.severity, ink);
    if (!d.hint.empty()) out += paragraph(printable(d.hint), "      = hint: ", "              ");
    for (const Related& other : d.related) {
        out += head(sources, other.span, Severity::note, other.text, "", ink);
        out += body(sources, other.span, "", Severity::note, ink);
    }
    return out;
}

std::string render_json(const Sources& sources, const Diagnostic& d) {
    nlohmann::ordered_json json = place_json(sources, d.span);
    json["severity"] = name_of(d.severity);
    json["code"] = d.code;
    json["title"] = d.title;
    if (!d.label.empty()) json["label"] = d.label;
    if (!d.hint.empty()) json["hint"] = d.hint;
    for (const Related& other : d.related) {
        nlohmann::ordered_json related = place_json(sources, other.span);
        related["text"] = other.text;
        json["related"].push_back(std::move(related));
    }
    return json.dump(-1, ' ', true, nlohmann::ordered_json::error_handler_t::replace);
}

void sort_for_reading(Diagnostics& diagnostics) {
    const auto key = [](const Diagnostic& d) { return std::tuple(d.span.file + 1u, d.span.begin, d.span.end); };
    std::stable_sort(diagnostics.begin(), diagnostics.end(),
                     [&](const Diagnostic& a, const Diagnostic& b) { return key(a) < key(b); });
    const auto same = [&](const Diagnostic& a, const Diagnostic& b) {
        return a.span == b.span && a.code == b.code && a.title == b.title;
    };
    diagnostics.erase(std::unique(diagnostics.begin(), diagnostics.end(), same), diagnostics.end());
}

Tally tally(const Diagnostics& diagnostics) {
    Tally count;
    for (const Diagnostic& d : diagnostics) {
        count.errors += d.severity == Severity::error;
        count.warnings += d.severity == Severity::warning;
    }
    return count;
}

}  // namespace waxtab
