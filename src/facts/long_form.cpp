// Facts written back as the notation writes them. Every form here is one the table of readings reads
// to the same fact; a test holds the two together.
#include <fmt/format.h>

#include "facts/long_form.hpp"
#include "facts/phrases.hpp"

namespace waxtab {

namespace {

std::string full_words(const Fact& f) {
    Words w;
    w(short_box(f));
    if (f.value.of == -1) return std::move(w("all but")(number_text(f.value))(f.value.amount == 1000 ? "frame" : "frames")("full")).text();
    if (f.value.unit == Unit::fraction && f.value.amount == 1000) return std::move(w(f.value.about ? "about" : "")("full")).text();
    if (f.value.unit == Unit::fraction && f.value.amount == 900) return std::move(w(f.value.about ? "about" : "")("nearly full")).text();
    w(share_words(f.value));
    const bool word = f.value.unit == Unit::fraction;
    return std::move((f.assumed & assumed_full) || word ? w : w("full")).text();
}

std::string state_words(const Fact& f, std::string_view state) {
    Words w;
    w(short_box(f));
    if (f.value.of == -1) return std::move(w("all but")(number_text(f.value))(f.value.amount == 1000 ? "frame" : "frames")(state)).text();
    if (state == "capped" && f.value.unit == Unit::fraction && f.value.amount == 0) return std::move(w("uncapped")).text();
    if (state == "capped" && f.value.unit == Unit::fraction && f.value.amount == 100 && f.value.low == 20) return std::move(w("starting to cap")).text();
    if (state == "drawn" && f.value.unit == Unit::fraction && f.value.amount == 0) return std::move(w("not drawn")).text();
    return std::move(w(share_words(f.value))(state)).text();
}

std::string off_words(const Fact& f) {
    Words w;
    w("-");
    if (f.comb == Comb::wet) w(f.count > 0 ? plural(f.count, "wet super") : f.box.by == BoxChoice::By::all ? "wet supers" : "wet super");
    else w(f.count > 0 && (f.box.by == BoxChoice::By::sole || f.box.by == BoxChoice::By::top_n || f.box.by == BoxChoice::By::unsaid)
          ? (f.box_kind.empty() ? plural(f.count, "super") : plural(f.count, f.box_kind))
          : f.box.by == BoxChoice::By::sole && !telling_comb(f.comb).empty() ? short_box(f)
          : f.box.by == BoxChoice::By::unsaid ? std::string(f.box_kind.empty() ? "super" : f.box_kind) : box_words(f.box));
    if (f.value.said()) w(text_of(f.value));
    if (f.manner == "honey") w("net");
    else w(f.manner);
    if (f.detail == "shed") w("to shed");
    return std::move(w).text();
}

std::string on_words(const Fact& f, std::string_view noun) {
    Words w;
    w("+");
    w(f.count > 0 ? plural(f.count, noun) : std::string(noun))(f.box_kind)(comb_words(f))(place_words(f.placing));
    if (f.box.by == BoxChoice::By::label) w(quoted(f.box.label));
    return std::move(w).text();
}

/// `US gallons (as set up)`: which gallon a volume is taken as, and why.
std::string gallon_words(const Settings& s) {
    return std::string(s.gallon_meant() == Unit::imperial_gallon ? "imperial" : "US") + (s.gallon == Unit::none ? " gallons (not said)" : " gallons (as set up)");
}

/// The sign of a volume whose gallon was not said.
std::string_view short_sign(Unit unit) {
    if (unit == Unit::us_pint || unit == Unit::imperial_pint) return " pt";
    return unit == Unit::us_quart || unit == Unit::imperial_quart ? " qt" : " gal";
}

std::string feed_words(const Fact& f) {
    Words w;
    w("fed");
    if (f.value.said()) w((f.assumed & assumed_unit) ? number_text(f.value) + std::string(short_sign(f.value.unit)) : text_of(f.value));
    if (f.detail == "syrup 3:2") w("syrup")("3:2");
    else w(f.detail);
    return std::move(w(f.manner)(free_words("from", f.text))).text();
}

/// How many as written: `4`, `4-5`, `about 10`.
std::string many_words(const Fact& f) { return f.count_range.said() ? text_of(f.count_range) : std::to_string(f.count); }

std::string many_of(const Fact& f, std::string_view noun) { return f.count_range.said() ? fmt::format("{} {}s", many_words(f), noun) : plural(f.count, noun); }

std::string cells_words(const Fact& f) {
    if (f.count == 0) return "no queen cells";
    Words w;
    if (f.count > 0) w(many_words(f));
    const bool many = !is_one(f);
    if (!f.manner.empty()) {
        w(f.manner)(many ? "cells" : "cell");
        if (f.detail == "sealed") w("capped");
        else if (!f.detail.empty()) w(f.detail);
        return std::move(w).text();
    }
    if (f.detail == "open" || f.detail == "sealed" || f.detail == "charged") return std::move(w(f.detail)(many ? "queen cells" : "queen cell")).text();
    return std::move(w(many ? "queen cells" : "queen cell")(f.detail)).text();
}

std::string mites_words(const Fact& f) {
    Words w;
    w(f.detail);
    if (f.value.dimension == Dimension::share) return std::move(w("mites")(text_of(f.value))).text();
    if (f.count >= 0 && f.value.said()) return std::move(w(fmt::format("{}/{}", f.count, number_text(f.value)))(f.detail.empty() ? "mites" : "")).text();
    if (f.count == 0) w("no mites");
    else w(many_of(f, "mite"));
    if (f.second.said()) w("in")(text_of(f.second));
    return std::move(w).text();
}

std::string queen_words(const Fact& f) {
    static constexpr std::pair<std::string_view, std::string_view> forms[] = {
        {"seen", "queen seen"}, {"not seen", "queen not seen"}, {"right", "queenright"}, {"absent", "queenless"}, {"virgin", "virgin seen"},
        {"laying", "queen laying"}, {"not laying", "not laying"}, {"new", "new queen seen"}, {"failing", "queen failing"},
        {"drone layer", "drone layer"}, {"laying workers", "laying workers"}, {"emerged", "queen emerged"}, {"superseded", "superseded"}};
    if (f.detail == "laying" && f.text == "new") return "new queen laying";
    if (f.detail == "virgin" && f.count > 1) return fmt::format("{} virgins seen", f.count);
    for (const auto& [detail, form] : forms)
        if (f.detail == detail) return std::move(Words{}(form)(f.text)).text();
    return "queen";
}

std::string flow_words(const Fact& f) {
    static constexpr std::pair<std::string_view, std::string_view> forms[] = {{"none", "no flow"}, {"heavy", "flow heavy"}, {"good", "flow good"}, {"light", "flow light"},
        {"medium", "flow fair"}, {"on", "flow on"}, {"starting", "flow beginning"}, {"ending", "flow ending"}, {"over", "flow over"}};
    for (const auto& [detail, form] : forms)
        if (f.detail == detail) return std::move(Words{}(form)(f.text)).text();
    return "flow on";
}

std::string bloom_words(const Fact& f) {
    static constexpr std::pair<std::string_view, std::string_view> forms[] = {{"on", "in bloom"}, {"start", "just opening"}, {"peak", "at its peak"},
        {"bud", "in bud"}, {"not yet", "not in flower yet"}, {"ending", "nearly over"}, {"end", "over"}};
    for (const auto& [detail, form] : forms)
        if (f.detail == detail) return std::move(Words{}(f.text)(form)).text();
    return f.text;
}

std::string amount(const Fact& f, std::string_view noun) { return fmt::format("{} {}", count_text(f.value), noun); }

std::string stores_words(const Fact& f) {
    if (f.value.said()) return f.value.dimension == Dimension::mass ? "stores " + text_of(f.value) : amount(f, f.value.amount == 1000 ? "frame of stores" : "frames of stores");
    if (f.detail == "none") return "starving";
    if (f.detail == "plenty") return "plenty of stores";
    return "stores " + std::string(f.detail);
}

std::string moved_frames(const Journal& j, const Fact& f) {
    Words w;
    w("moved");
    const std::string n = f.count > 0 ? std::to_string(f.count) : std::string{};
    if (f.detail == "brood") w(n)(f.count == 1 ? "frame of brood" : "frames of brood");
    else w(n)(f.count == 1 ? "frame of" : "frames of")(f.detail);
    return std::move(w("to")(hive_words(j, f.other))).text();
}

/// What went into a nucleus: `3 frames of brood and 1 frame of stores`, or only how many frames.
std::string frames_given(const Fact& f) {
    const auto frames = [](const Measure& m, std::string_view of) { return m.said() ? fmt::format("{} {} {}", number_text(m), m.amount == 1000 ? "frame" : "frames", of) : std::string{}; };
    const std::string brood = frames(f.value, "of brood"), stores = frames(f.second, "of stores");
    if (brood.empty() && stores.empty()) return f.count > 0 ? plural(f.count, "frame") : "";
    return brood + (brood.empty() || stores.empty() ? "" : " and ") + stores;
}

std::string treatment_words(const Fact& f, std::string_view way) {
    Words w;
    if (way.empty()) {
        w("treated")(f.detail.empty() ? free_words("with", f.text) : std::string(f.detail));
        if (f.value.said()) w(text_of(f.value));
        if (f.count > 0 && f.second.said()) w(fmt::format("{} of {}", ordinal(f.count), number_text(f.second)));
        if (!f.detail.empty()) w(free_words("batch", f.text));
        return std::move(w).text();
    }
    w(f.detail);
    if (f.manner == "treatment") w(f.manner);
    else if (f.count > 0 || f.detail.empty()) w(f.count > 0 ? plural(f.count, f.manner.empty() ? "strip" : f.manner) : std::string("strips"));
    w(way);
    if (f.second.said()) w("for")(text_of(f.second));
    w(free_words("batch", f.text));
    return std::move(w).text();
}

/// `eggs on 3 frames`
std::string on_frames(const Fact& f, std::string_view what) {
    return fmt::format("{} on {} {}", what, count_text(f.value), f.value.amount == 1000 ? "frame" : "frames");
}

/// Boxes of the stack.
std::string said_of_boxes(const Journal& j, const Fact& f) {
    const std::string other = f.other == no_hive ? std::string{} : hive_words(j, f.other);
    switch (f.kind) {
        case Kind::super_on: return on_words(f, "super");
        case Kind::super_off: return off_words(f);
        case Kind::brood_box_on: return on_words(f, "brood box");
        case Kind::brood_box_off: return words("-", "brood box");
        case Kind::excluder_on: return "excluder on";
        case Kind::excluder_off: return "excluder off";
        case Kind::escape_on: return words("escape board on", f.box.by == BoxChoice::By::unsaid ? "" : "under " + box_words(f.box));
        case Kind::escape_off: return "escape board off";
        case Kind::entrance_on: return "upper entrance opened";
        case Kind::entrance_off: return "upper entrance closed";
        case Kind::feeder_on: return "feeder on";
        case Kind::feeder_off: return "feeder off";
        case Kind::boxes_swapped: return words("swapped", box_words(f.box), "and", box_words(f.box2));
        case Kind::brood_reversed: return "reversed brood boxes";
        case Kind::super_lifted: return words("moved", box_words(f.box), place_words(f.placing));
        case Kind::super_moved: return words("moved", box_words(f.box), "to", other, place_words(f.placing), f.manner);
        case Kind::frames_moved: return moved_frames(j, f);
        case Kind::frames_off: return words("took", f.value.said() ? number_text(f.value) : "", f.value.amount == 1000 ? "frame of" : "frames of", "honey", f.second.said() ? text_of(f.second) : "", box_words(f.box));
        case Kind::box_labelled: return words(box_words(f.box), "labelled", quoted(f.text));
        case Kind::super_count: return f.count == 0 ? "no supers" : plural(f.count, "super");
        case Kind::brood_box_count: return f.count == 1 ? "1 brood box" : fmt::format("{} brood boxes", f.count);
        default: return {};
    }
}

/// The life of hives.
std::string said_of_lives(const Journal& j, const Fact& f) {
    const std::string other = f.other == no_hive ? std::string{} : hive_words(j, f.other);
    switch (f.kind) {
        case Kind::hive_moved: return words("moved to", j.yard_name(f.yard));
        case Kind::hive_renamed: return words("renamed", quoted(f.text));
        case Kind::hive_sold: return words("sold", free_words(f.at_place ? "at" : "to", f.text));
        case Kind::hive_dead: return "dead";
        case Kind::hive_ended: return words("shook out", f.other == no_hive ? "" : "in front of", other);
        case Kind::hive_united: return words("united with", other, f.detail.empty() ? "" : "over newspaper");
        case Kind::hive_split: return words("split into", other, frames_given(f), f.detail == "old queen" ? "old queen" : "");
        case Kind::nuc_made: return words("made a nuc into", other, frames_given(f), f.detail == "old queen" ? "old queen" : "");
        case Kind::swarm_hived: return words("swarm hived as", hive_words(j, f.hive), f.value.said() ? text_of(f.value) : "", free_words(f.manner.empty() ? "in" : f.manner, f.text));
        case Kind::hive_bought: return words("bought hive", j.hive_name(f.hive), free_words("from", f.text));
        case Kind::swarmed: return f.detail == "cast" ? "cast swarmed" : "swarmed";
        default: return {};
    }
}

/// How full, how heavy.
std::string said_of_fill(const Fact& f) {
    switch (f.kind) {
        case Kind::full: return full_words(f);
        case Kind::capped: return state_words(f, "capped");
        case Kind::drawn: return state_words(f, "drawn");
        case Kind::shakes_out: return words(short_box(f), f.detail == "yes" ? "nectar shakes out" : "does not shake out");
        case Kind::no_change: return words(short_box(f), "no change");
        case Kind::hive_weight: return words("weighs", text_of(f.value));
        case Kind::box_weight: return f.detail.empty() ? words(box_words(f.box), "weighs", text_of(f.value)) : words(box_words(f.box), text_of(f.value), f.detail);
        case Kind::weight_change: return words(f.detail == "loss" ? "lost" : "gained", text_of(f.value), f.text.empty() ? "" : "since " + f.text);
        default: return {};
    }
}

/// The colony.
std::string said_of_colony(const Fact& f) {
    switch (f.kind) {
        case Kind::bees: return f.value.unit == Unit::seam ? amount(f, f.value.amount == 1000 ? "seam" : "seams") : amount(f, "frames of bees");
        case Kind::brood:
            if (f.detail == "none") return "no brood";
            if (f.detail == "all stages") return f.value.said() ? "BIAS on " + count_text(f.value) : "brood in all stages";
            return amount(f, "frames of brood");
        case Kind::eggs: return f.detail == "none" ? "no eggs" : f.value.said() ? on_frames(f, "eggs") : "eggs seen";
        case Kind::larvae: return f.detail == "none" ? "no larvae" : f.value.said() ? on_frames(f, "larvae") : "larvae seen";
        case Kind::sealed_brood: return f.detail == "none" ? "no sealed brood" : f.value.said() ? "sealed brood on " + count_text(f.value) + " frames" : "sealed brood seen";
        case Kind::pattern: return words("pattern", f.detail);
        case Kind::crowding: return f.detail == "packed" ? "brood box packed" : f.detail == "backfilled" ? "brood nest backfilled" : std::string(f.detail);
        case Kind::strength: return std::string(f.detail);
        case Kind::temper: return f.value.said() ? "temper " + number_text(f.value) : "temper " + std::string(f.detail);
        case Kind::stings: return plural(f.count, "sting");
        case Kind::stores: return stores_words(f);
        case Kind::pollen: return f.detail == "none" ? "no pollen" : f.detail == "plenty" ? "plenty of pollen" : words("pollen coming in", f.text);
        case Kind::super_brood: return f.box.by == BoxChoice::By::unsaid ? "brood above the excluder" : words("brood in", box_words(f.box));
        default: return {};
    }
}

/// Queen and cells.
std::string said_of_queen(const Journal& j, const Fact& f) {
    const std::string other = f.other == no_hive ? std::string{} : hive_words(j, f.other);
    switch (f.kind) {
        case Kind::queen: return queen_words(f);
        case Kind::queen_marked: return words("queen marked", f.detail, f.count > 0 ? std::to_string(f.count) : "");
        case Kind::queen_clipped: return "queen clipped";
        case Kind::queen_introduced: return words("requeened", f.detail, f.manner, free_words("from", f.text));
        case Kind::queen_mother: return words("mother", other);
        case Kind::cups: return f.count == 0 ? "no queen cups" : f.detail == "charged" ? many_of(f, "charged cup") : words(many_of(f, "queen cup"), f.detail);
        case Kind::queen_cells: return cells_words(f);
        case Kind::cells_removed: return words("knocked down", f.count > 0 ? many_words(f) : "", f.detail, is_one(f) ? "queen cell" : "queen cells");
        case Kind::cells_left: return words("left", f.count >= 0 ? many_words(f) : "", f.detail, is_one(f) ? "queen cell" : "queen cells");
        default: return {};
    }
}

/// Feed, treatments, ills, the yard.
std::string said_of_care(const Fact& f) {
    switch (f.kind) {
        case Kind::feed: return feed_words(f);
        case Kind::feeder_state: return words("feeder", share_words(f.value));
        case Kind::treatment: return treatment_words(f, "");
        case Kind::treatment_on: return treatment_words(f, "in");
        case Kind::treatment_off: return treatment_words(f, "out");
        case Kind::mites: return mites_words(f);
        case Kind::pest: return words(f.manner == "none" ? "no" : "", f.detail, f.value.said() ? count_text(f.value) : "");
        case Kind::disease: return f.value.said() ? on_frames(f, f.detail) : words(f.manner == "none" ? "no" : "", f.detail, f.manner == "none" ? "" : f.manner);
        case Kind::inspected: return "inspected";
        case Kind::weather: return f.text;
        case Kind::temperature: return (f.assumed & assumed_unit) ? number_text(f.value) + " degrees" : text_of(f.value);
        case Kind::flow: return flow_words(f);
        case Kind::bloom: return bloom_words(f);
        default: return {};
    }
}

/// Honey.
std::string said_of_honey(const Journal& j, const Fact& f) {
    switch (f.kind) {
        case Kind::opening_stock: return words("opening stock", jars_words(f), lot_words(f));
        case Kind::bought_in: return words("bought in", jars_words(f), f.count < 0 ? "honey" : "", lot_words(f), free_words("from", f.text));
        case Kind::extracted: {
            Words w;
            w("extracted");
            if (f.value.said()) w(text_of(f.value));
            w(f.text);
            if (f.count > 0) w(plural(f.count, "super"));
            w(lot_words(f));
            for (std::size_t i = 0; i < f.hives.size(); ++i) w(i ? "" : "from")(hive_words(j, f.hives[i]));
            return std::move(w).text();
        }
        case Kind::moisture: return words("moisture", text_of(f.value), box_words(f.box), lot_words(f));
        case Kind::honey_index: return words("refractive index", number_text(f.value), f.second.said() ? "at " + text_of(f.second) : "", box_words(f.box), lot_words(f));
        case Kind::drained: return words("drained", text_of(f.value), lot_words(f));
        case Kind::blended: {
            Words w;
            w(f.lots.size() == 1 ? "blended lot" : "blended lots");
            for (std::size_t i = 0; i < f.lots.size(); ++i) w(i ? "and" : "")(f.lots[i]);
            w("into lot")(f.lot);
            if (f.value.said()) w(text_of(f.value));
            return std::move(w).text();
        }
        case Kind::bulk_moved: return words("moved", text_of(f.value), lot_words(f), free_words("to", f.text));
        case Kind::jars: return words("filled", jars_words(f), lot_words(f));
        case Kind::combs_packed: return words(plural(f.count, comb_noun(f)), "packed", f.value.said() ? text_of(f.value) : "", lot_words(f));
        case Kind::gone_out: {
            const std::string_view verb = f.detail == "given" ? "gave away" : f.detail == "own use" ? "kept" : f.detail == "spoiled" ? "spoiled" : "sold";
            return words(verb, f.manner == "comb" ? plural(f.count, comb_noun(f)) : jars_words(f), lot_words(f), free_words(f.at_place ? "at" : "to", f.text), f.manner == "business" ? "business" : "");
        }
        case Kind::come_back: return words("returned", jars_words(f), lot_words(f), free_words("from", f.text));
        case Kind::stocktake: return words("stocktake", jars_words(f), lot_words(f));
        case Kind::wax: return words(text_of(f.value), "wax");
        case Kind::best_before: return words("best before", f.text, lot_words(f));
        case Kind::fermenting: return words(lot_words(f), "fermenting");
        case Kind::sections_done: return words("sections", text_of(f.value), "filled");
        default: return {};
    }
}

/// The shed, and words.
std::string said_of_rest(const Fact& f) {
    switch (f.kind) {
        case Kind::shed: return words("shed:", f.detail.empty() ? plural(f.count, "super") : plural(f.count, f.detail), f.box_kind, comb_words(f));
        case Kind::shed_in: return words("+", plural(f.count, "super"), f.box_kind, comb_words(f), "to shed");
        case Kind::shed_out: return words("-", plural(f.count, "super"), f.box_kind, comb_words(f), "from shed");
        case Kind::combs_frozen: return words("froze", f.box.by == BoxChoice::By::label ? box_words(f.box) : plural(f.count, "super"), f.box_kind, comb_words(f), f.second.said() ? "for " + text_of(f.second) : "");
        case Kind::comb_year: return words(box_words(f.box), "comb drawn in", std::to_string(f.count));
        case Kind::todo: return "todo " + quoted(f.text);
        case Kind::remark: return quoted(f.text);
        default: return {};
    }
}

/// What a fact of one hive, yard or lot says, without the hive.
std::string said(const Journal& j, const Fact& f) {
    if (f.kind < Kind::hive_moved) return said_of_boxes(j, f);
    if (f.kind < Kind::full) return said_of_lives(j, f);
    if (f.kind < Kind::bees) return said_of_fill(f);
    if (f.kind < Kind::queen) return said_of_colony(f);
    if (f.kind < Kind::feed) return said_of_queen(j, f);
    if (f.kind < Kind::opening_stock) return said_of_care(f);
    if (f.kind < Kind::shed) return said_of_honey(j, f);
    return said_of_rest(f);
}

}  // namespace

std::string hive_words(const Journal& journal, HiveId hive) {
    const std::string name(journal.hive_name(hive));
    return name.find_first_not_of("0123456789") == name.npos ? "hive " + name : name;
}

std::string short_form(const Journal& journal, const Fact& fact) {
    std::string text;
    const bool own_name = fact.kind == Kind::swarm_hived || fact.kind == Kind::hive_bought;
    if (fact.hive != no_hive && !own_name) text = hive_words(journal, fact.hive) + ' ';
    text += said(journal, fact);
    if (own_name && fact.other != no_hive) text += " from " + hive_words(journal, fact.other);
    return text;
}

std::string long_form(const Journal& journal, const Fact& fact) {
    if (fact.noted == Day{}) return short_form(journal, fact);
    std::string text = iso(fact.noted);
    if (fact.minute >= 0) text += fmt::format(" {:02}:{:02}", fact.minute / 60, fact.minute % 60);
    // A move names the yard it goes to; the heading's yard is the hive's own until then.
    if (fact.yard != no_yard && fact.kind != Kind::hive_moved) text += ' ' + std::string(journal.yard_name(fact.yard));
    text += ' ' + short_form(journal, fact);
    if (fact.happened != fact.noted) text += " on " + iso(fact.happened);
    return text;
}

std::vector<std::string> assumptions(const Journal& journal, const Fact& fact) {
    std::vector<std::string> out;
    const Settings& s = journal.settings;
    if (fact.assumed & assumed_box_kind) out.push_back((fact.kind == Kind::brood_box_on ? s.brood_kind : s.super_kind) + " (box kind not said)");
    if (fact.assumed & assumed_comb) out.push_back("drawn comb (not said)");
    if (fact.assumed & assumed_placing) out.push_back(s.new_supers == Placing::under ? "under (place not said)" : "on top (place not said)");
    if (fact.assumed & assumed_fob) out.push_back("frames of bees (FOB: a few write it for brood)");
    if ((fact.assumed & assumed_each) && fact.count < 1) out.push_back("one each (number not said)");
    if (fact.assumed & assumed_order) out.push_back(fact.kind == Kind::super_off ? "in the order written, from the top" : "in the order written, from the brood up");
    if (fact.assumed & assumed_full) out.push_back("how full (not said of what)");
    if (fact.assumed & assumed_unit) out.push_back(fact.kind == Kind::temperature ? (fact.value.unit == Unit::fahrenheit ? "Fahrenheit (not said)" : "Celsius (not said)") : gallon_words(s));
    return out;
}

}  // namespace waxtab
