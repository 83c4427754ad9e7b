#include "report/fields.hpp"
#include "report/json.hpp"
#include "report/lines.hpp"

namespace waxtab {

namespace {

/// The names every object has.
bool always_there(std::string_view name, const Style& style) {
    constexpr std::string_view names[] = {"date", "noted", "yard", "hive", "kind", "box", "value", "unit"};
    for (const std::string_view n : names)
        if (n == name) return true;
    return name == "at" && style.refs;
}

/// A decimal text as a JSON number, an integer where it is one.
Json number_json(const std::string& text) {
    return Json::parse(text, nullptr, false);
}

Json value_json(const Field& field) {
    if (const auto* words = std::get_if<std::string>(&field.value)) return *words;
    if (const auto* number = std::get_if<Number>(&field.value)) return number_json(number->text);
    if (const auto* list = std::get_if<std::vector<std::string>>(&field.value)) return *list;
    return nullptr;
}

}  // namespace

std::string lines_json(const Journal& journal, Day on, const Selection& selection, const Style& style) {
    std::string out;
    for (const FactId id : listed_facts(journal, on, selection)) {
        Json json;
        for (const Field& field : fields_of(journal, journal.facts[id], style))
            if (!field.empty() || always_there(field.name, style)) json[std::string(field.name)] = value_json(field);
        out += one_line(json) + '\n';
    }
    return out;
}

}  // namespace waxtab
