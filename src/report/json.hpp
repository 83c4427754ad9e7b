#pragma once
#include <cmath>
#include <string>

#include <nlohmann/json.hpp>

#include "estimate/estimate.hpp"
#include "ledger/ledger.hpp"
#include "report/style.hpp"

// The pieces the JSON reports share. Only their own units include this: the library behind it is heavy.

namespace waxtab {

using Json = nlohmann::ordered_json;

/// On one line, ASCII only, so that nothing a journal holds can act on a terminal.
inline std::string one_line(const Json& json) {
    return json.dump(-1, ' ', true, Json::error_handler_t::replace);
}

/// A whole report as one document, indented, with a line end.
inline std::string document(const Json& json) {
    return json.dump(2, ' ', true, Json::error_handler_t::replace) + '\n';
}

/// A number rounded to `places` decimals, an integer where it is one, null where it is not finite.
inline Json rounded(double value, int places) {
    if (!std::isfinite(value)) return nullptr;
    const double scale = std::pow(10.0, places);
    const double whole = std::round(value * scale);
    if (std::fmod(whole, scale) == 0.0) return static_cast<std::int64_t>(whole / scale);
    return whole / scale;
}

/// `{"low": ..., "value": ..., "high": ...}`; a bound that is not finite is null.
inline Json range_json(const Range& range, double scale, int places) {
    Json json;
    json["low"] = rounded(range.low * scale, places);
    json["value"] = rounded(range.value * scale, places);
    json["high"] = rounded(range.high * scale, places);
    return json;
}

/// How many of the style's unit of mass one kilogram is.
inline double units_in_kg(const Style& style) {
    return style.mass == MassUnit::pound ? 1.0 / 0.45359237 : 1.0;  // exact, international pound of 1959
}

inline Json mass_json(Mass mass, const Style& style) { return rounded(mass.kilograms() * units_in_kg(style), 3); }

inline Json mass_json(const MassRange& mass, const Style& style) {
    Json json;
    json["low"] = mass_json(mass.low, style);
    json["value"] = mass_json(mass.value, style);
    json["high"] = mass_json(mass.high, style);
    json["weighed"] = mass.weighed;
    return json;
}

inline Json day_json(const std::optional<Day>& day) { return day ? Json(iso(*day)) : Json(nullptr); }

inline Json words_json(std::string_view words) { return words.empty() ? Json(nullptr) : Json(words); }

/// Hives by name, in the order given.
inline Json names_json(const Journal& journal, const std::vector<HiveId>& hives) {
    Json json = Json::array();
    for (const HiveId hive : hives) json.push_back(journal.hive_name(hive));
    return json;
}

/// `file:line` of each fact, as a list.
inline Json at_json(const Journal& journal, const std::vector<FactId>& facts) {
    Json json = Json::array();
    for (const FactId fact : facts)
        if (fact != set_up_fact) json.push_back(journal.sources.at(journal.facts[fact].span));
    return json;
}

inline std::string_view unit_name(const Style& style) { return style.mass == MassUnit::pound ? "lb" : "kg"; }

}  // namespace waxtab
