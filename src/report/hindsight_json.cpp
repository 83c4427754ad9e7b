#include "report/hindsight.hpp"
#include "report/json.hpp"

namespace waxtab {

namespace {

/// What the keeper is told of the ranges, as one word.
std::string_view ranges_name(RangesHeld held) {
    switch (held) {
        case RangesHeld::open: return "open";
        case RangesHeld::well: return "well";
        case RangesHeld::narrow: return "narrow";
        case RangesHeld::wide: return "wide";
    }
    return {};
}

Json row_json(const HindsightRow& row, const Style& style) {
    Json json;
    json["from_days"] = row.from_days;
    json["to_days"] = row.to_days;
    json["forecasts"] = row.forecasts;
    json["inside_80"] = rounded(row.inside_80 * 100, 1);
    json["inside_50"] = rounded(row.inside_50 * 100, 1);
    json["ranges"] = ranges_name(row.ranges);
    json["error"] = rounded(row.error_kg * units_in_kg(style), 2);
    json["error_share"] = rounded(row.error_share * 100, 1);
    json["bias_share"] = rounded(row.bias_share * 100, 1);
    json["no_change_share"] = rounded(row.no_change_share * 100, 1);
    json["with_line"] = row.with_line;
    json["line_share"] = rounded(row.line_share * 100, 1);
    json["error_with_line_share"] = rounded(row.error_with_line_share * 100, 1);
    return json;
}

Json cases_json(const Journal& journal, const std::vector<HindsightCase>& cases, const Selection& selection,
                const Style& style) {
    Json list = Json::array();
    for (const HindsightCase& c : cases) {
        if (!selection.has_hive(c.hive) || !selection.has_day(c.day)) continue;
        Json json;
        json["hive"] = words_json(journal.hive_name(c.hive));
        json["date"] = iso(c.day);
        json["chance"] = rounded(c.chance * 100, 1);
        if (style.refs) json["at"] = at_json(journal, {c.because});
        list.push_back(std::move(json));
    }
    return list;
}

}  // namespace

std::string hindsight_json(const Journal& journal, const Hindsight& hindsight, Day on, const Selection& selection,
                           const Style& style) {
    Json json;
    json["on"] = iso(on);
    json["unit"] = unit_name(style);
    json["too_little"] = hindsight.too_little;
    json["words"] = words_json(hindsight_words(hindsight, style));
    json["rows"] = Json::array();
    for (const HindsightRow& row : hindsight.rows) json["rows"].push_back(row_json(row, style));
    json["all"] = row_json(hindsight.all, style);
    json["ran_out"] = cases_json(journal, hindsight.ran_out, selection, style);
    json["stayed_empty"] = cases_json(journal, hindsight.stayed_empty, selection, style);
    json["supers_put_on"] = hindsight.supers_put_on;
    json["ran_out_foretold"] = hindsight.ran_out_foretold;
    return document(json);
}

}  // namespace waxtab
