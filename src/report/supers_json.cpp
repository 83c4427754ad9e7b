#include "report/json.hpp"
#include "report/phrases.hpp"
#include "report/supers.hpp"

namespace waxtab {

namespace {

Json super_json(const Journal& journal, const History& history, const SuperEstimate& s, const Style& style) {
    const Box& box = history.boxes[static_cast<std::size_t>(s.box)];
    Json json;
    json["place"] = s.place;
    json["label"] = words_json(box.label);
    json["kind"] = box.kind;
    json["kind_assumed"] = box.kind_assumed;
    json["frames"] = frames_of(journal, box);
    json["comb"] = words_json(comb_text(box.comb));
    json["comb_assumed"] = box.comb_assumed;
    json["full"] = range_json(s.full, 100, 1);
    json["capped"] = range_json(s.capped, 100, 1);
    json["drawn"] = range_json(s.drawn, 100, 1);
    json["honey"] = range_json(s.kg, units_in_kg(style), 2);
    json["holds"] = range_json(s.capacity_kg, units_in_kg(style), 2);
    json["fell_from"] = s.fell_from ? rounded(*s.fell_from * 100, 1) : Json(nullptr);
    json["seen"] = day_json(s.last_seen);
    json["ripe_early"] = day_json(s.ripe_early);
    json["ripe_likely"] = day_json(s.ripe_likely);
    json["ripe_late"] = day_json(s.ripe_late);
    if (style.refs) json["at"] = at_json(journal, s.because);
    return json;
}

Json hive_json(const Journal& journal, const History& history, const Estimates& estimates, HiveId id, const Style& style) {
    Json json;
    json["hive"] = journal.hive_name(id);
    json["yard"] = words_json(journal.yard_name(history.hives[static_cast<std::size_t>(id)].yard_on(estimates.on)));
    if (const HiveEstimate* hive = estimates.hive(id)) {
        json["gain_a_day"] = range_json(hive->kg_per_day, units_in_kg(style), 2);
        json["room"] = range_json(hive->room_kg, units_in_kg(style), 2);
        json["days_of_room"] = range_json(hive->days_of_room, 1, 1);
        json["from_own_visits"] = hive->from_own_visits;
        json["no_room"] = hive->no_room;
        if (style.refs) json["at"] = at_json(journal, hive->because);
    }
    json["supers"] = Json::array();
    for (const SuperEstimate& s : estimates.supers)
        if (s.hive == id) json["supers"].push_back(super_json(journal, history, s, style));
    return json;
}

}  // namespace

std::string supers_json(const Journal& journal, const History& history, const Estimates& estimates,
                        const Selection& selection, const Style& style) {
    Json json;
    json["on"] = iso(estimates.on);
    json["unit"] = unit_name(style);
    json["hives"] = Json::array();
    for (const HiveHistory& hive : history.hives)
        if (hive.alive && lists(selection, history, hive.hive, estimates.on))
            json["hives"].push_back(hive_json(journal, history, estimates, hive.hive, style));
    json["keeper"] = words_json(estimates.keeper.words);
    if (style.refs) json["keeper_at"] = at_json(journal, estimates.keeper.because);
    return document(json);
}

}  // namespace waxtab
