#include "history/queens.hpp"
#include "report/json.hpp"
#include "report/phrases.hpp"
#include "report/timeline.hpp"

namespace waxtab {

namespace {

Json event_json(const Journal& journal, FactId id, const Style& style) {
    const Fact& fact = journal.facts[id];
    Json json;
    json["date"] = iso(fact.happened);
    json["kind"] = name_of(fact.kind);
    json["words"] = words_of(journal, fact, false);
    const auto assumed = assumptions(journal, fact);
    if (!assumed.empty()) json["assumed"] = assumed;
    if (style.refs) json["at"] = journal.sources.at(fact.span);
    return json;
}

Json standing_json(const Journal& journal, const History& history, const Standing& standing, HiveId hive,
                   const Style& style) {
    Json json;
    json["what"] = standing_text(journal, history, standing);
    if (standing.box != no_box) {
        const Box& box = history.boxes[static_cast<std::size_t>(standing.box)];
        json["role"] = box.role == Role::brood ? "brood" : "super";
        json["kind"] = box.kind;
        json["frames"] = frames_of(journal, box);
        json["comb"] = words_json(comb_text(box.comb));
        json["label"] = words_json(box.label);
    }
    json["since"] = day_json(standing.since);
    if (style.refs) json["at"] = words_json(ref_text(journal, standing.fact, hive, style));
    return json;
}

Json queens_json(const Journal& journal, const Queens& queens, HiveId hive, const Style& style) {
    Json json = Json::array();
    for (const Reign* r : queens.of(hive)) {
        const Queen& queen = queens.queens[static_cast<std::size_t>(r->queen)];
        const Reign *before = queens.before(*r), *next = queens.next(*r);
        Json one;
        one["colour"] = words_json(queen.colour);
        one["year"] = queen.year > 0 ? Json(queen.year) : Json(nullptr);
        one["clipped"] = queen.clipped;
        one["mother"] = words_json(queen.mother);
        one["from"] = day_json(r->from);
        one["came"] = words_json(r->came);
        one["came_from"] = before ? words_json(journal.hive_name(before->hive)) : Json(nullptr);
        one["to"] = day_json(r->to);
        one["went"] = words_json(r->went);
        one["went_to"] = next ? words_json(journal.hive_name(next->hive)) : Json(nullptr);
        if (style.refs) one["at"] = at_json(journal, {r->from_fact, r->to_fact});
        json.push_back(std::move(one));
    }
    return json;
}

Json hive_json(const Journal& journal, const History& history, const Queens& queens, const HiveHistory& hive,
               const Selection& selection, const Style& style) {
    Json json;
    json["hive"] = journal.hive_name(hive.hive);
    json["also"] = journal.hives[static_cast<std::size_t>(hive.hive)].aliases;
    json["yard"] = words_json(journal.yard_name(hive.yard_on(history.on)));
    json["alive"] = hive.alive;
    json["born"] = day_json(hive.born);
    json["ended"] = day_json(hive.ended);
    json["mother"] = words_json(journal.hive_name(hive.mother));
    json["united_into"] = words_json(journal.hive_name(hive.united_into));
    json["queens"] = queens_json(journal, queens, hive.hive, style);
    json["stack"] = Json::array();
    for (const Standing& standing : hive.stack)
        json["stack"].push_back(standing_json(journal, history, standing, hive.hive, style));
    json["events"] = Json::array();
    for (const Event& event : hive.events)
        if (event.fact != set_up_fact && selection.has_day(event.day))
            json["events"].push_back(event_json(journal, event.fact, style));
    return json;
}

Json yard_json(const Journal& journal, const History& history, std::size_t yard, const Selection& selection,
               const Style& style) {
    Json json;
    json["yard"] = journal.yards[yard].name;
    json["events"] = Json::array();
    for (const FactId id : history.yard_facts[yard])
        if (selection.has_day(journal.facts[id].happened)) json["events"].push_back(event_json(journal, id, style));
    return json;
}

}  // namespace

std::string timeline_json(const Journal& journal, const History& history, const Selection& selection,
                          const Style& style) {
    Json json;
    json["on"] = iso(history.on);
    json["yards"] = Json::array();
    for (std::size_t yard = 0; yard < history.yard_facts.size(); ++yard)
        if (selection.has_yard(static_cast<YardId>(yard)))
            json["yards"].push_back(yard_json(journal, history, yard, selection, style));
    json["hives"] = Json::array();
    const Queens queens = queens_of(journal, history);
    for (const HiveHistory& hive : history.hives)
        if (in_timeline(selection, history, hive))
            json["hives"].push_back(hive_json(journal, history, queens, hive, selection, style));
    return document(json);
}

}  // namespace waxtab
