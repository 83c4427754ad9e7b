#include "ledger/price.hpp"
#include "report/json.hpp"
#include "report/records.hpp"

namespace waxtab {

namespace {

/// A field that is not noted is null.
Json field_json(std::string_view words) { return words == not_noted ? Json(nullptr) : words_json(words); }

Json medicine_json(const Journal& journal, const MedicineRecord& r, const std::vector<HiveId>& hives, const Style& style) {
    Json json;
    json["substance"] = field_json(r.substance);
    json["method"] = words_json(r.method);
    json["first"] = iso(r.first);
    json["last"] = day_json(r.last);
    json["days"] = r.days ? Json(*r.days) : Json(nullptr);
    json["quantity"] = field_json(r.quantity);
    json["batch"] = field_json(r.batch);
    json["supplier"] = field_json(r.supplier);
    json["withdrawal"] = field_json(r.withdrawal);
    json["hives"] = names_json(journal, hives);
    json["missing"] = r.missing;
    if (style.refs) json["at"] = at_json(journal, r.facts);
    return json;
}

Json feed_json(const Journal& journal, const FeedRecord& r, const std::vector<HiveId>& hives, const Style& style) {
    Json json;
    json["day"] = iso(r.day);
    json["what"] = r.what;
    json["amount"] = field_json(r.amount);
    json["origin"] = field_json(r.origin);
    json["hives"] = names_json(journal, hives);
    json["missing"] = r.missing;
    if (style.refs) json["at"] = at_json(journal, r.facts);
    return json;
}

Json disease_json(const Journal& journal, const DiseaseRecord& r, const std::vector<HiveId>& hives, const Style& style) {
    Json json;
    json["day"] = iso(r.day);
    json["what"] = r.what;
    json["how"] = words_json(r.how);
    json["hives"] = names_json(journal, hives);
    if (style.refs) json["at"] = at_json(journal, r.facts);
    return json;
}

Json trade_json(const Journal& journal, const TradeRecord& r, const Style& style) {
    Json json;
    json["day"] = iso(r.day);
    json["lot"] = r.lot;
    json["way"] = r.in ? "in" : "out";
    json["who"] = field_json(r.who);
    json["business"] = r.business;
    json["jars"] = r.jars;
    json["size"] = r.jars > 0 ? mass_json(r.size, style) : Json(nullptr);
    json["honey"] = mass_json(r.honey, style);
    json["price"] = words_json(price_of(journal, journal.facts[r.fact]));
    if (style.refs) json["at"] = at_json(journal, {r.fact});
    return json;
}

}  // namespace

std::string records_json(const Journal& journal, const History& history, const Records& records, const Selection& selection,
                         const Style& style) {
    const auto hives = [&](const auto& r, Day day) { return listed_hives(selection, history, r.hives, day); };
    const bool all = selection.hives.empty() && selection.yards.empty();
    Json json;
    json["on"] = iso(history.on);
    json["unit"] = unit_name(style);
    for (const auto name : {"medicines", "feeds", "diseases", "trade"}) json[name] = Json::array();
    for (const MedicineRecord& r : records.medicines)
        if (const auto of = hives(r, r.first); selection.has_day(r.first) && !of.empty())
            json["medicines"].push_back(medicine_json(journal, r, of, style));
    for (const FeedRecord& r : records.feeds)
        if (const auto of = hives(r, r.day); selection.has_day(r.day) && (all || !of.empty()))
            json["feeds"].push_back(feed_json(journal, r, of, style));
    for (const DiseaseRecord& r : records.diseases)
        if (const auto of = hives(r, r.day); selection.has_day(r.day) && (all || !of.empty()))
            json["diseases"].push_back(disease_json(journal, r, of, style));
    for (const TradeRecord& r : records.trade)
        if (all && selection.has_day(r.day)) json["trade"].push_back(trade_json(journal, r, style));
    return document(json);
}

}  // namespace waxtab
