#include "ledger/trace.hpp"
#include "report/harvest.hpp"
#include "report/lot_json.hpp"
#include "report/phrases.hpp"

namespace waxtab {

namespace {

Json fact_json(const Journal& journal, FactId id, const Style& style) {
    Json json;
    json["date"] = iso(journal.facts[id].happened);
    json["kind"] = name_of(journal.facts[id].kind);
    json["words"] = words_of(journal, journal.facts[id], true);
    if (style.refs) json["at"] = journal.sources.at(journal.facts[id].span);
    return json;
}

Json facts_json(const Journal& journal, const std::vector<FactId>& facts, const Style& style) {
    Json json = Json::array();
    for (const FactId id : facts) json.push_back(fact_json(journal, id, style));
    return json;
}

Json source_json(const Journal& journal, const History& history, const Estimates& estimates, const TracedSource& source,
                 const Style& style) {
    Json json;
    json["lot"] = source.lot;
    json["hive"] = words_json(journal.hive_name(source.hive));
    json["opening"] = source.opening;
    json["bought_from"] = words_json(source.bought_from);
    json["honey"] = mass_json(source.honey, style);
    json["takings"] = Json::array();
    for (const TracedTaking& traced : source.takings) {
        Json taking = taking_json(journal, history, estimates, traced.taking, style);
        taking["on"] = day_json(traced.on);
        json["takings"].push_back(std::move(taking));
    }
    json["feeds"] = facts_json(journal, source.feeds, style);
    json["possible_feeds"] = facts_json(journal, source.possible_feeds, style);
    json["treatments"] = facts_json(journal, source.treatments, style);
    return json;
}

}  // namespace

std::string trace_json(const Journal& journal, const History& history, const Estimates& estimates,
                       const Ledger& ledger, std::string_view name, const Style& style) {
    const Trace way = trace(journal, history, ledger, name);
    const Lot* lot = ledger.lot(name);
    if (!way.found || !lot) return {};
    Json json = lot_json(journal, *lot, Selection{}, style);
    json["made_of"] = way.made_of;
    json["went_into"] = way.went_into;
    json["sources"] = Json::array();
    for (const TracedSource& source : way.sources)
        json["sources"].push_back(source_json(journal, history, estimates, source, style));
    json["recall"] = Json::array();
    for (const RecallRow& row : way.recall) {
        Json going = going_json(journal, row.going, style);
        going["lot"] = row.lot;
        going["possible"] = row.possible;
        json["recall"].push_back(std::move(going));
    }
    return document(json);
}

}  // namespace waxtab
