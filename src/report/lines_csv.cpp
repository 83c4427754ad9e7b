#include <fmt/format.h>

#include "report/fields.hpp"
#include "report/lines.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

/// Spreadsheets run text that begins like this.
bool like_a_formula(std::string_view text) { return !text.empty() && std::string_view("=+-@").find(text[0]) != text.npos; }

std::string csv_quoted(std::string_view words) {
    std::string text = printable(words);
    if (like_a_formula(text)) text.insert(0, 1, '\'');
    if (text.find_first_of(",\"") == text.npos) return text;
    std::string out = "\"";
    for (const char c : text) out.append(c == '"' ? 2 : 1, c);
    return out + '"';
}

std::string cell(const Field& field) {
    if (const auto* words = std::get_if<std::string>(&field.value)) return csv_quoted(*words);
    if (const auto* number = std::get_if<Number>(&field.value)) return number->text;
    if (const auto* list = std::get_if<std::vector<std::string>>(&field.value))
        return csv_quoted(fmt::format("{}", fmt::join(*list, "; ")));
    return {};
}

template <class Text>
std::string record(const std::vector<Field>& fields, const Style& style, Text text) {
    std::vector<std::string> cells;
    for (const Field& field : fields)
        if (style.refs || field.name != "at") cells.push_back(text(field));
    return fmt::format("{}\r\n", fmt::join(cells, ","));
}

}  // namespace

std::string lines_csv(const Journal& journal, Day on, const Selection& selection, const Style& style) {
    std::string out = record(fields_of(journal, Fact{}, style), style, [](const Field& f) { return std::string(f.name); });
    for (const FactId id : listed_facts(journal, on, selection))
        out += record(fields_of(journal, journal.facts[id], style), style, cell);
    return out;
}

}  // namespace waxtab
