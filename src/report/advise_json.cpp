#include <algorithm>

#include <fmt/format.h>

#include "report/advise.hpp"
#include "report/json.hpp"
#include "report/phrases.hpp"

namespace waxtab {

namespace {

Json because_json(const Journal& journal, const Advice& advice, const Style& style) {
    Json list = Json::array();
    for (const FactId fact : advice.because) {
        if (fact == set_up_fact) continue;
        Json json;
        if (style.refs) json["at"] = journal.sources.at(journal.facts[fact].span);
        json["date"] = iso(journal.facts[fact].happened);
        json["words"] = style.refs ? std::string(journal.sources.text(journal.facts[fact].span))
                                   : words_of(journal, journal.facts[fact], true);
        list.push_back(std::move(json));
    }
    return list;
}

/// Place of a super on its hive, counted from the brood up; null where the chance is of no one super.
Json place_json(const History& history, const Chance& chance) {
    if (chance.box == no_box || chance.hive == no_hive) return nullptr;
    const std::vector<BoxId> supers = history.supers_on(chance.hive);
    const auto at = std::find(supers.begin(), supers.end(), chance.box);
    return at == supers.end() ? Json(nullptr) : Json(at - supers.begin() + 1);
}

Json chances_json(const Journal& journal, const History& history, const Advice& advice) {
    Json list = Json::array();
    for (const Chance& chance : advice.chances) {
        Json json;
        json["hive"] = words_json(journal.hive_name(chance.hive));
        json["super"] = place_json(history, chance);
        json["that"] = chance.that;
        json["percent"] = rounded(chance.value * 100, 0);
        json["by"] = day_json(chance.by);
        list.push_back(std::move(json));
    }
    return list;
}

Json piece_json(const Journal& journal, const History& history, const Advice& advice, const Style& style) {
    Json json;
    json["hive"] = words_json(journal.hive_name(advice.hive));
    json["yard"] = words_json(journal.yard_name(advice.yard));
    json["what"] = advice.what;
    json["by"] = day_json(advice.by);
    json["todo"] = advice.act == Act::todo;
    json["sureness"] = name_of(advice.sureness);
    json["sureness_words"] = words_json(advice.sureness_words);
    json["chances"] = chances_json(journal, history, advice);
    json["rule"] = words_json(advice.rule);
    json["also"] = advice.also;
    json["source"] = words_json(advice.source);
    json["reasons"] = advice.reasons;
    json["because"] = because_json(journal, advice, style);
    json["over"] = advice.over;
    json["caution"] = words_json(fmt::format("{}", fmt::join(advice.cautions, "; ")));
    if (advice.count > 0) json["supers"] = advice.count;
    if (!advice.box_kind.empty()) json["box_kind"] = advice.box_kind;
    return json;
}

}  // namespace

std::string advise_json(const Journal& journal, const History& history, const std::vector<Advice>& advice,
                        const Selection& selection, const Style& style) {
    Json json;
    json["on"] = iso(history.on);
    json["advice"] = Json::array();
    for (const Advice& piece : advice)
        if (lists(selection, history, piece)) json["advice"].push_back(piece_json(journal, history, piece, style));
    return document(json);
}

}  // namespace waxtab
