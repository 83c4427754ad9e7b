#include "report/harvest.hpp"
#include "report/lot_json.hpp"
#include "report/yield_parts.hpp"

namespace waxtab {

namespace {

Json hive_yield_json(const Journal& journal, const SeasonYield& row, const Style& style) {
    Json json;
    json["season"] = row.year;
    json["yard"] = words_json(journal.yard_name(row.yard));
    json["hive"] = words_json(journal.hive_name(row.hive));
    json["honey"] = mass_json(row.honey, style);
    json["supers"] = row.supers;
    json["frames"] = row.frames;
    std::vector<FactId> because;
    for (const Harvest& part : row.parts) because.insert(because.end(), part.because.begin(), part.because.end());
    if (style.refs) json["at"] = at_json(journal, because);
    return json;
}

Json yard_yield_json(const Journal& journal, const YieldRow& row, const Style& style) {
    Json json;
    json["season"] = row.year;
    json["yard"] = words_json(journal.yard_name(row.yard));
    json["honey"] = mass_json(row.honey, style);
    json["supers"] = row.supers;
    json["frames"] = row.frames;
    json["harvested"] = names_json(journal, row.harvested);
    json["living"] = names_json(journal, row.living);
    json["per_harvested"] = mass_json(row.per_harvested, style);
    json["per_living"] = mass_json(row.per_living, style);
    json["median"] = mass_json(row.median, style);
    return json;
}

void add_yields(Json& json, const Journal& journal, const Yields& yields, const Selection& selection, const Style& style) {
    json["yields"] = Json::array();
    for (const SeasonYield& row : yields.hives)
        if (selection.has_hive(row.hive) && selection.has_yard(row.yard))
            json["yields"].push_back(hive_yield_json(journal, row, style));
    json["yards"] = Json::array();
    for (const YieldRow& row : yields.yards)
        if (selection.has_yard(row.yard) && selection.hives.empty())
            json["yards"].push_back(yard_yield_json(journal, row, style));
}

Json sums_json(const Ledger& ledger, const Style& style) {
    Json json;
    json["opening"] = mass_json(ledger.opening, style);
    json["bought"] = mass_json(ledger.bought, style);
    json["extracted"] = mass_json(ledger.extracted, style);
    json["jarred"] = mass_json(ledger.jarred, style);
    json["gone"] = mass_json(ledger.gone, style);
    json["spoiled"] = mass_json(ledger.spoiled, style);
    json["left_in_jars"] = mass_json(ledger.left_in_jars, style);
    json["left_in_bulk"] = mass_json(ledger.left_in_bulk, style);
    json["drained"] = mass_json(ledger.drained, style);
    json["beyond"] = mass_json(ledger.beyond, style);
    json["adjusted"] = mass_json(ledger.adjusted, style);
    json["wax"] = mass_json(ledger.wax, style);
    json["waiting"] = mass_json(ledger.waiting_honey, style);
    return json;
}

}  // namespace

std::string harvest_json(const Journal& journal, const History& history, const Estimates& estimates,
                         const Ledger& ledger, const Selection& selection, const Style& style) {
    Json json;
    json["on"] = iso(ledger.on);
    json["unit"] = unit_name(style);
    json["lots"] = Json::array();
    for (const Lot& lot : ledger.lots)
        if (lists(selection, history, lot)) json["lots"].push_back(lot_json(journal, lot, selection, style));
    add_yields(json, journal, yields_of(journal, history, ledger, selection), selection, style);
    json["waiting"] = Json::array();
    for (const std::size_t i : ledger.waiting)
        if (lists(selection, history, history.takings[i].hive, history.takings[i].day))
            json["waiting"].push_back(taking_json(journal, history, estimates, i, style));
    json["sums"] = sums_json(ledger, style);
    return document(json);
}

}  // namespace waxtab
