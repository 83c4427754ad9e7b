#include "report/page_parts.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "text/utf8.hpp"

namespace waxtab {

std::string html(std::string_view text) {
    std::string out;
    for (const char c : printable(text)) {
        switch (c) {
            case '&': out += "&amp;"; break;
            case '<': out += "&lt;"; break;
            case '>': out += "&gt;"; break;
            case '"': out += "&quot;"; break;
            case '\'': out += "&#39;"; break;
            default: out += c;
        }
    }
    return out;
}

std::string bdi(std::string_view text) { return "<bdi>" + html(text) + "</bdi>"; }

std::string shortened(std::string_view text, std::size_t characters) {
    std::size_t at = 0, last = 0;
    for (std::size_t n = 0; at < text.size(); ++n) {
        if (n + 1 == characters) last = at;
        if (n == characters) return std::string(text.substr(0, last)) + "\u2026";
        next_character(text, at);
    }
    return std::string(text);
}

namespace {

bool digit(char c) { return c >= '0' && c <= '9'; }

/// The days and ranges of one stretch of text between tags.
class Unbroken {
public:
    explicit Unbroken(std::string_view text) : text_(text) {}

    std::string text() {
        for (std::size_t i = 0; i < text_.size();) i += day(i) ? 10 : weight(i) ? 1 : range(i);
        return std::move(out_);
    }

private:
    /// `2026-06-03`, as long as nothing longer is written there.
    bool day(std::size_t at) {
        const std::string_view word = text_.substr(at, 10);
        if (word.size() < 10 || (at > 0 && (digit(text_[at - 1]) || text_[at - 1] == '-'))) return false;
        if (at + 10 < text_.size() && digit(text_[at + 10])) return false;
        if (!day_from_iso(std::string(word))) return false;
        out_.append("<time>").append(word).append("</time>");
        return true;
    }

    /// The blank of `8.2 kg`.
    bool weight(std::size_t at) {
        if (at == 0 || text_[at] != ' ' || !digit(text_[at - 1])) return false;
        const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || digit(c) || static_cast<unsigned char>(c) >= 0x80; };
        const auto end = std::find_if_not(text_.begin() + static_cast<std::ptrdiff_t>(at) + 1, text_.end(), letter);
        const std::string_view unit = text_.substr(at + 1, static_cast<std::size_t>(end - text_.begin()) - at - 1);
        if (unit != "kg" && unit != "g" && unit != "lb" && unit != "oz") return false;
        out_ += "\u00a0";
        return true;
    }

    /// Where the numbers of a range end that begins with the bracket at `at`; npos where none does.
    std::size_t range_end(std::size_t at) const {
        constexpr std::string_view numbers = "0123456789.-", to = " to ";
        if (text_[at] != '(') return text_.npos;
        std::size_t close = text_.find_first_not_of(numbers, at + 1);
        if (close > at + 1 && close != text_.npos && text_.substr(close, to.size()) == to) close = text_.find_first_not_of(numbers, close + to.size());
        return close != text_.npos && (text_[close] == ')' || text_[close] == '%') ? close : text_.npos;
    }

    /// `(6.9-9.6)`: a word joiner after the hyphen; `(-0.2 to 1.3)`: blanks that do not break; anything else by the character.
    std::size_t range(std::size_t at) {
        out_ += text_[at];
        const std::size_t close = range_end(at);
        if (close == text_.npos) return 1;
        for (std::size_t i = at + 1; i < close; ++i) {
            if (text_[i] == ' ') out_ += "\u00a0";
            else out_ += text_[i];
            if (text_[i] == '-') out_ += "\u2060";
        }
        return close - at;
    }

    std::string_view text_;
    std::string out_;
};

/// What is left as it is: drawings, the lines of the journal, and any other tag.
std::string_view left_alone(std::string_view markup) {
    const std::string_view close = markup.starts_with("<svg") ? "</svg>" : markup.starts_with("<dl class=\"lines\"") ? "</dl>" : ">";
    return markup.substr(0, std::min(markup.find(close), markup.size() - close.size()) + close.size());
}

}  // namespace

std::string unbroken(std::string_view markup) {
    std::string out;
    while (!markup.empty()) {
        const bool tag = markup.front() == '<';
        const std::string_view piece = tag ? left_alone(markup) : markup.substr(0, markup.find('<'));
        out += tag ? std::string(piece) : Unbroken(piece).text();
        markup.remove_prefix(piece.size());
    }
    return out;
}

std::string xy(double value) {
    const long tenths = std::lround(value * 10.0);
    return tenths % 10 == 0 ? fmt::format("{}", tenths / 10) : fmt::format("{:.1f}", static_cast<double>(tenths) / 10.0);
}

std::string Page::line_link(std::uint32_t file, std::uint32_t line, bool with_name) {
    cited_[file].insert(line);
    const std::string name = with_name ? html(in.journal.sources[file].name()) + ":" : std::string{};
    return fmt::format("<a href=\"#l{}-{}\">{}{}</a>", file, line, name, line);
}

std::map<std::uint32_t, std::set<std::uint32_t>> Page::lines_of(const std::vector<FactId>& facts) const {
    std::map<std::uint32_t, std::set<std::uint32_t>> lines;
    for (const FactId fact : facts) {
        if (fact == set_up_fact || !in.journal.facts[fact].span.known()) continue;
        const Span span = in.journal.facts[fact].span;
        lines[span.file].insert(in.journal.sources[span.file].place(span.begin).line);
    }
    return lines;
}

std::string Page::refs(const std::vector<FactId>& facts) { return refs(facts, facts.size(), {}); }

std::string Page::refs(const std::vector<FactId>& facts, std::size_t most, std::string_view where) {
    if (!in.style.refs) return {};
    std::string out;
    std::size_t shown = 0, more = 0;
    for (const auto& [file, numbers] : lines_of(facts)) {
        bool first = true;
        for (const std::uint32_t line : numbers) {
            if (shown == most && ++more > 0) continue;
            out += (first ? (out.empty() ? "" : " ") : ", ") + line_link(file, line, first);
            first = false;
            ++shown;
        }
    }
    if (more > 0) out += fmt::format(" <a href=\"{}\">and {} more</a>", html(where), more);
    return out.empty() ? out : " <span class=\"ref\">" + out + "</span>";
}

std::string Page::frame_pattern_name(int frames, bool foundation) { return fmt::format("{}{}", foundation ? "d" : "f", frames); }

std::string Page::frame_pattern(int frames, bool foundation) {
    frame_patterns_.insert({frames, foundation});
    return frame_pattern_name(frames, foundation);
}

std::string Page::refs(const HiveEstimate& estimate) {
    const std::string lines = refs(estimate.because);
    return lines.empty() ? ref(set_up_fact, estimate.hive) : lines;
}

bool Page::judged(HiveId hive) const {
    return std::any_of(in.estimates.supers.begin(), in.estimates.supers.end(), [&](const SuperEstimate& s) { return s.hive == hive; });
}

std::string Page::ref(Span span) {
    if (!in.style.refs || !span.known()) return {};
    return " <span class=\"ref\">" + line_link(span.file, in.journal.sources[span.file].place(span.begin).line, true) + "</span>";
}

std::string Page::ref(FactId fact, HiveId hive) {
    if (fact != set_up_fact) return ref(in.journal.facts[fact].span);
    return hive < 0 ? std::string{} : ref(in.journal.hives[static_cast<std::size_t>(hive)].span);
}

std::string Page::hive(HiveId hive) const {
    if (hive == no_hive) return {};
    const std::string name = bdi(in.journal.hive_name(hive));
    if (!in.history.hives[static_cast<std::size_t>(hive)].alive) return name;
    return fmt::format("<a href=\"#hive-{}\">{}</a>", hive, name);
}

std::string Page::yard(YardId yard) const {
    return yard == no_yard ? std::string("no yard named") : bdi(in.journal.yard_name(yard));
}

YardId Page::yard_of(HiveId hive) const {
    return hive == no_hive ? no_yard : in.history.hives[static_cast<std::size_t>(hive)].yard_on(in.history.on);
}

std::string Page::cited_lines() const {
    std::string out;
    for (const auto& [file, lines] : cited_) {
        const Source& source = in.journal.sources[file];
        out += fmt::format("<h3>{}</h3>\n<dl class=\"lines\">\n", bdi(source.name()));
        for (const std::uint32_t line : lines)
            out += fmt::format("<div id=\"l{}-{}\"><dt>{}</dt><dd>{}</dd></div>\n", file, line, line, html(source.line(line)));
        out += "</dl>\n";
    }
    if (out.empty()) return out;
    return "<section id=\"lines\" aria-labelledby=\"lines-h\"><h2 id=\"lines-h\">The lines of the journal behind it</h2>\n" + out +
           "</section>\n";
}

}  // namespace waxtab
