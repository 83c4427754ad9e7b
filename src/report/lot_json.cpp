#include "report/lot_json.hpp"

#include "report/lot_parts.hpp"

namespace waxtab {

namespace {

Json share_json(const Journal& journal, const LotShare& share, const Style& style) {
    Json json;
    json["hive"] = words_json(journal.hive_name(share.hive));
    json["honey"] = mass_json(share.honey, style);
    if (style.refs) json["at"] = at_json(journal, share.because);
    return json;
}

Json jars_json(const Journal& journal, const JarRow& row, const Style& style) {
    Json json;
    json["size"] = mass_json(row.size, style);
    json["comb"] = row.comb;
    json["filled"] = row.filled;
    json["adjusted"] = row.adjusted;
    json["beyond"] = row.beyond;
    json["out"] = row.out;
    json["spoiled"] = row.spoiled;
    json["left"] = row.left;
    if (style.refs) json["at"] = at_json(journal, row.because);
    return json;
}

void add_masses(Json& json, const Lot& lot, const Style& style) {
    json["drained"] = mass_json(lot.drained, style);
    json["blended_in"] = mass_json(lot.blended_in, style);
    json["blended_out"] = mass_json(lot.blended_out, style);
    json["opening"] = mass_json(lot.opening, style);
    json["bought"] = mass_json(lot.bought, style);
    json["harvested"] = mass_json(lot.harvested, style);
    json["beyond"] = mass_json(lot.beyond, style);
    json["adjusted"] = mass_json(lot.adjusted, style);
    json["spoiled"] = mass_json(lot.spoiled, style);
    json["put_in_jars"] = mass_json(lot.in_jars, style);
    json["bulk_gone"] = mass_json(lot.bulk_gone, style);
    json["bulk"] = mass_json(lot.bulk, style);
}

}  // namespace

Json taking_json(const Journal& journal, const History& history, const Estimates& estimates, std::size_t i,
                 const Style& style) {
    const Taking& taking = history.takings[i];
    Json json;
    json["hive"] = words_json(journal.hive_name(taking.hive));
    json["date"] = iso(taking.day);
    if (taking.box != no_box) {
        const Box& box = history.boxes[static_cast<std::size_t>(taking.box)];
        json["box_kind"] = box.kind;
        json["label"] = words_json(box.label);
    }
    json["frames"] = taking.frames;
    json["honey"] = mass_json(honey_of(history, estimates, i), style);
    if (style.refs) {
        std::vector<FactId> because{taking.fact};
        because.insert(because.end(), taking.weighings.begin(), taking.weighings.end());
        json["at"] = at_json(journal, because);
    }
    return json;
}

Json going_json(const Journal& journal, const Going& going, const Style& style) {
    Json json;
    json["date"] = iso(going.day);
    json["jars"] = going.jars;
    json["size"] = mass_json(going.size, style);
    json["honey"] = mass_json(going.honey, style);
    json["how"] = words_json(going.how);
    json["to"] = words_json(going.to);
    json["business"] = going.business;
    if (going.lot_assumed) json["lot_assumed"] = true;
    if (!going.may_be.empty()) json["may_be"] = going.may_be;
    if (style.refs) json["at"] = at_json(journal, {going.fact});
    return json;
}

Json lot_json(const Journal& journal, const Lot& lot, const Selection& selection, const Style& style) {
    Json json;
    json["lot"] = lot.name;
    json["name_made"] = lot.name_made;
    json["extracted"] = iso(lot.extracted);
    json["weight"] = mass_json(lot.weight, style);
    json["moisture"] = lot.moisture_permille ? rounded(static_cast<double>(*lot.moisture_permille) / 10.0, 1) : Json(nullptr);
    json["fermenting"] = lot.fermenting;
    json["best_before"] = words_json(lot.best_before);
    json["bought_from"] = words_json(lot.bought_from);
    json["blended_from"] = lot.blended_from;
    json["shares"] = Json::array();
    for (const LotShare& share : lot.shares)
        if (selection.has_hive(share.hive)) json["shares"].push_back(share_json(journal, share, style));
    json["jars"] = Json::array();
    for (const JarRow& row : lot.jars) json["jars"].push_back(jars_json(journal, row, style));
    json["gone_out"] = Json::array();
    for (const Going& going : lot.goings)
        if (selection.has_day(going.day)) json["gone_out"].push_back(going_json(journal, going, style));
    add_masses(json, lot, style);
    if (style.refs) json["at"] = at_json(journal, lot.because);
    return json;
}

}  // namespace waxtab
