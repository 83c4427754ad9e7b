#include "advice/words.hpp"
#include "report/bring.hpp"
#include "report/json.hpp"

namespace waxtab {

namespace {

Json stop_json(const Journal& journal, const Stop& stop, const std::vector<Advice>& advice, const Style& style) {
    Json json;
    json["hive"] = journal.hive_name(stop.hive);
    json["by"] = day_json(stop.by);
    json["supers"] = stop.supers;
    json["do"] = Json::array();
    for (const std::size_t i : stop.advice) {
        Json piece;
        piece["what"] = advice[i].what;
        piece["by"] = day_json(advice[i].by);
        piece["rule"] = words_json(advice[i].rule);
        if (style.refs) piece["at"] = at_json(journal, advice[i].because);
        json["do"].push_back(std::move(piece));
    }
    return json;
}

Json super_json(const Journal& journal, const SuperLoad& load, const Style& style) {
    Json json;
    json["box_kind"] = words_json(load.box_kind);
    json["comb"] = words_json(comb_word(load.comb));
    json["wanted"] = load.count;
    json["in_case"] = load.reserve;
    json["for"] = names_json(journal, load.hives);
    json["in_case_for"] = names_json(journal, load.reserve_hives);
    if (style.refs) json["at"] = at_json(journal, load.because);
    return json;
}

Json strip_json(const Journal& journal, const StripLoad& strip, const Style& style) {
    Json json;
    json["hive"] = journal.hive_name(strip.hive);
    json["substance"] = words_json(strip.substance);
    json["from"] = iso(strip.from);
    json["due"] = day_json(strip.due);
    if (style.refs) json["at"] = at_json(journal, {strip.fact});
    return json;
}

Json feed_json(const Journal& journal, const FeedLoad& feed, const Style& style) {
    Json json;
    json["hive"] = journal.hive_name(feed.hive);
    json["what"] = feed.what;
    json["stores"] = feed.stores_kg ? range_json(*feed.stores_kg, units_in_kg(style), 2) : Json(nullptr);
    if (style.refs) json["at"] = at_json(journal, feed.because);
    return json;
}

Json honey_json(const Journal& journal, const HoneyLoad& honey, const Style& style) {
    Json json;
    json["supers"] = honey.supers;
    json["honey"] = range_json(honey.kg, units_in_kg(style), 2);
    json["unit"] = unit_name(style);
    json["tubs"] = honey.tubs;
    json["jars"] = honey.jars;
    json["jar_size"] = honey.jars > 0 ? mass_json(honey.jar_size, style) : Json(nullptr);
    if (style.refs) json["at"] = at_json(journal, honey.because);
    return json;
}

Json todos_json(const Journal& journal, const std::vector<FactId>& todos, const Style& style) {
    Json list = Json::array();
    for (const FactId fact : todos) {
        Json json;
        json["hive"] = words_json(journal.hive_name(journal.facts[fact].hive));
        json["text"] = journal.facts[fact].text;
        if (style.refs) json["at"] = journal.sources.at(journal.facts[fact].span);
        list.push_back(std::move(json));
    }
    return list;
}

Json yard_json(const Journal& journal, const YardRound& yard, const std::vector<Advice>& advice, const Style& style) {
    Json json;
    json["yard"] = words_json(journal.yard_name(yard.yard));
    json["day"] = iso(yard.day);
    json["hives"] = Json::array();
    for (const Stop& stop : yard.hives) json["hives"].push_back(stop_json(journal, stop, advice, style));
    json["supers"] = Json::array();
    for (const SuperLoad& load : yard.supers) json["supers"].push_back(super_json(journal, load, style));
    json["escape_boards"] = yard.escape_boards;
    json["strips"] = Json::array();
    for (const StripLoad& strip : yard.strips) json["strips"].push_back(strip_json(journal, strip, style));
    json["feed"] = Json::array();
    for (const FeedLoad& feed : yard.feed) json["feed"].push_back(feed_json(journal, feed, style));
    json["honey"] = honey_json(journal, yard.honey, style);
    json["todos"] = todos_json(journal, yard.todos, style);
    json["remarks"] = yard.remarks;
    return json;
}

/// A hive's share of too few supers, in the order of being served; `percent`: that room runs out without the first.
Json claim_json(const Journal& journal, const ShedClaim& claim) {
    Json json;
    json["hive"] = journal.hive_name(claim.hive);
    json["wanted"] = claim.wanted();
    json["gets"] = claim.gets;
    json["percent"] = claim.known ? rounded(claim.chances.front() * 100, 0) : Json(nullptr);
    json["crowded"] = claim.crowded;
    return json;
}

Json shed_json(const Journal& journal, const ShedCheck& row, const Style& style) {
    Json json;
    json["what"] = row.what;
    json["wanted"] = row.wanted;
    json["in_case"] = row.reserve;
    json["in_shed"] = row.in_shed ? Json(*row.in_shed) : Json(nullptr);
    json["short"] = row.short_by;
    json["shares"] = Json::array();
    if (row.short_by > 0)
        for (const ShedClaim& claim : row.claims) json["shares"].push_back(claim_json(journal, claim));
    if (style.refs) json["at"] = at_json(journal, row.because);
    return json;
}

}  // namespace

std::string bring_json(const Journal& journal, const Round& whole, const std::vector<Advice>& advice,
                       const Selection& selection, const Style& style) {
    const Round round = listed(whole, advice, selection);
    Json json;
    json["from"] = iso(round.from);
    json["to"] = iso(round.to);
    json["yards"] = Json::array();
    for (const YardRound& yard : round.yards) json["yards"].push_back(yard_json(journal, yard, advice, style));
    json["shed"] = Json::array();
    json["todos"] = Json::array();
    if (!selection.hives.empty() || !selection.yards.empty()) return document(json);
    for (const ShedCheck& row : round.shed) json["shed"].push_back(shed_json(journal, row, style));
    json["todos"] = todos_json(journal, round.todos, style);
    return document(json);
}

}  // namespace waxtab
