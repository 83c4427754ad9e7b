#include "report/phrases.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include <fmt/format.h>

#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

constexpr double kg_per_pound = 0.45359237;  // exact, international pound of 1959

double in_unit(double kg, const Style& style) { return style.mass == MassUnit::pound ? kg / kg_per_pound : kg; }
std::string_view sign_of(const Style& style) { return style.mass == MassUnit::pound ? "lb" : "kg"; }

/// One decimal, never `-0.0`.
std::string one_decimal(double value) {
    const double tenths = std::round(value * 10.0);
    return fmt::format("{:.1f}", tenths == 0.0 ? 0.0 : tenths / 10.0);
}

/// `low-high`, with `to` between when a bound is negative and a hyphen would mislead.
std::string bounds(const std::string& low, const std::string& high) {
    const bool negative = low.starts_with('-') || high.starts_with('-');
    return low + (negative ? " to " : "-") + high;
}

std::string ranged(double low, double value, double high, std::string_view sign) {
    return fmt::format("{} {} ({})", one_decimal(value), sign, bounds(one_decimal(low), one_decimal(high)));
}

std::size_t last_line_width(std::string_view text) {
    const std::size_t line_end = text.rfind('\n');
    return display_width(text.substr(line_end == text.npos ? 0 : line_end + 1));
}

/// Cuts `prefix` and the blank after it off the front of `text`, if it stands there.
void cut_front(std::string_view& text, std::string_view prefix) {
    if (prefix.empty() || !text.starts_with(prefix)) return;
    const std::string_view rest = text.substr(prefix.size());
    if (rest.empty() || rest.front() == ' ') text = rest.substr(rest.empty() ? 0 : 1);
}

}  // namespace

std::string kg_text(const Range& kg, const Style& style) {
    return ranged(in_unit(kg.low, style), in_unit(kg.value, style), in_unit(kg.high, style), sign_of(style));
}

std::string mass_text(Mass mass, const Style& style) { return text_of(mass, style.mass, 2); }

std::string mass_text(const MassRange& mass, const Style& style) {
    std::string text = mass_text(mass.value, style);
    if (mass.weighed || mass.low == mass.high) return text;
    return text + fmt::format(" ({})", bounds(number_text(mass.low, style.mass), number_text(mass.high, style.mass)));
}

std::string share_text(const Range& share) {
    const auto whole = [](double x) { return static_cast<long>(std::lround(x * 100.0)); };
    if (whole(share.low) == whole(share.high)) return fmt::format("{}%", whole(share.value));
    return fmt::format("{}% ({}-{})", whole(share.value), whole(share.low), whole(share.high));
}

std::string days_text(const Range& days) {
    // Further ahead nothing is foreseen: flows end before.
    constexpr double far = forecast_days;
    const auto whole = [](double x) { return static_cast<long>(std::floor(std::max(x, 0.0))); };
    if (days.low > far) return fmt::format("more than {:.0f} days", far);
    if (days.value > far) return fmt::format("likely to outlast the flow ({} or more)", counted(whole(days.low), "day"));
    const bool none = whole(days.value) == 0;
    if (none && days.high > far) return "it may run out today";
    if (none && whole(days.high) == 0) return "less than a day";
    const std::string value = none ? "less than a day" : counted(whole(days.value), "day");
    if (days.high > far) return fmt::format("{} ({} or more)", value, whole(days.low));
    return fmt::format("{} ({}-{})", value, whole(days.low), whole(days.high));
}

std::string rate_text(const Range& kg_per_day, const Style& style) {
    return fmt::format("{} {} a day ({})", one_decimal(in_unit(kg_per_day.value, style)), sign_of(style),
                       bounds(one_decimal(in_unit(kg_per_day.low, style)), one_decimal(in_unit(kg_per_day.high, style))));
}

std::string counted(std::int64_t n, std::string_view one, std::string_view many) {
    if (n == 1) return fmt::format("{} {}", n, one);
    return many.empty() ? fmt::format("{} {}s", n, one) : fmt::format("{} {}", n, many);
}

std::string_view comb_text(Comb comb) {
    switch (comb) {
        case Comb::drawn: return "drawn";
        case Comb::foundation: return "foundation";
        case Comb::wet: return "wet";
        case Comb::strips: return "starter strips";
        case Comb::cut_comb: return "cut comb";
        case Comb::sections: return "sections";
        case Comb::mixed: return "mixed comb";
        case Comb::unsaid: break;
    }
    return {};
}

std::string box_text(const Journal& journal, const Box& box) {
    std::string text = box.role == Role::brood ? "brood box" : "super";
    text += ", " + printable(box.kind);
    text += fmt::format(", {}", counted(frames_of(journal, box), "frame"));
    const std::string_view comb = comb_text(box.comb);
    if (box.role == Role::super && !comb.empty()) text += fmt::format(", {}", comb);
    if (!box.label.empty()) text += fmt::format(", \"{}\"", printable(box.label));
    return text;
}

std::string ref_text(const Journal& journal, FactId fact, HiveId hive, const Style& style) {
    if (!style.refs) return {};
    if (fact != set_up_fact) return printable(journal.sources.at(journal.facts[fact].span));
    return hive < 0 ? std::string{} : printable(journal.sources.at(journal.hives[static_cast<std::size_t>(hive)].span));
}

/// The lines of one file; in several pieces where they would fill more than a line of the page.
void add_refs(std::vector<std::string>& refs, const std::string& file, const std::vector<std::uint32_t>& lines) {
    constexpr std::size_t widest = 60;
    std::string ref;
    for (const std::uint32_t line : lines) {
        const std::string number = fmt::format("{}", line);
        if (!ref.empty() && display_width(ref) + 1 + number.size() > widest) refs.push_back(std::exchange(ref, {}));
        ref += ref.empty() ? fmt::format("{}:{}", file, number) : "," + number;
    }
    if (!ref.empty()) refs.push_back(ref);
}

std::string refs_text(const Journal& journal, const std::vector<FactId>& facts, const Style& style) {
    if (!style.refs) return {};
    // Lines of one file stand together: `mill.hive:7,9`.
    std::vector<std::pair<std::uint32_t, std::vector<std::uint32_t>>> by_file;
    for (const FactId fact : facts) {
        if (fact == set_up_fact || !journal.facts[fact].span.known()) continue;
        const Span span = journal.facts[fact].span;
        const std::uint32_t line = journal.sources[span.file].place(span.begin).line;
        auto file = std::find_if(by_file.begin(), by_file.end(), [&](const auto& f) { return f.first == span.file; });
        if (file == by_file.end()) file = by_file.insert(by_file.end(), {span.file, {}});
        if (std::find(file->second.begin(), file->second.end(), line) == file->second.end()) file->second.push_back(line);
    }
    std::vector<std::string> refs;
    for (auto& [file, lines] : by_file) {
        std::sort(lines.begin(), lines.end());
        add_refs(refs, printable(journal.sources[file].name()), lines);
    }
    return fmt::format("{}", fmt::join(refs, " "));
}

std::string words_of(const Journal& journal, const Fact& fact, bool with_hive) {
    const std::string form = short_form(journal, fact);
    std::string_view text = form;
    if (!with_hive) cut_front(text, journal.hive_name(fact.hive));
    return printable(text);
}

std::string with_ref(std::string_view left, std::string_view first, std::string_view rest, std::string_view ref) {
    if (ref.empty()) return paragraph(left, first, rest);
    constexpr std::size_t widest_beside = 34;  // a longer reference would squeeze the words beside it
    const std::size_t place = display_width(ref) + 2;
    std::string out = paragraph(left, first, rest);
    out.pop_back();
    if (last_line_width(out) + place > page_width && place <= widest_beside) {
        out = paragraph(left, first, rest, page_width - place);
        out.pop_back();
    }
    const std::size_t taken = last_line_width(out);
    if (place > page_width) return out + '\n' + paragraph(ref, std::string(rest) + "  ", std::string(rest) + "  ");
    if (taken + place > page_width) return out + '\n' + pad_left(ref, page_width) + '\n';
    return out + pad_left(ref, page_width - taken) + '\n';
}

}  // namespace waxtab
