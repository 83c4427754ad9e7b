#include <algorithm>
#include <array>

#include "facts/slots.hpp"

// What the items of a reading fill its fact with.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

/// Static text for a term, so that facts can point to it.
std::string_view fixed(std::string_view term) {
    static constexpr std::array<std::string_view, 40> details = {
        "seen", "none", "all stages", "brood", "eggs", "honey", "packed", "crowded", "backfilled", "roomy", "bearding", "strong", "weak",
        "good", "poor", "calm", "lively", "defensive", "plenty", "fair", "light", "coming in", "not seen", "right", "absent", "virgin",
        "laying", "not laying", "new", "failing", "drone layer", "laying workers", "emerged", "superseded", "charged", "dry", "open",
        "sealed", "torn down", "shook out"};
    static constexpr std::array<std::string_view, 35> more = {"comb", 
        "swarm", "supersedure", "emergency", "cast", "prime", "yes", "no", "before", "after", "net", "suspected", "confirmed", "heavy",
        "medium", "on", "starting", "ending", "over", "start", "peak", "bud", "not yet", "end", "sold", "given", "own use", "spoiled", "excluder",
        "escape board", "shed", "old queen", "empty", "gain", "loss"};
    for (const auto& list : {std::pair{details.data(), details.size()}, std::pair{more.data(), more.size()}})
        for (std::size_t k = 0; k < list.second; ++k)
            if (list.first[k] == term) return list.first[k];
    for (const grammar::Word& w : grammar::words)
        if (w.term == term) return w.term;
    return {};
}

/// 1/2, 2/3, 3/4 are as vague as the words; 7/10 counts frames.
Measure share_of_slash(const Item& item) {
    if (item.m > 4) return share_of(static_cast<std::int64_t>(item.n) * 1000, item.m, Unit::of_frames);
    Measure m = share_of(static_cast<std::int64_t>(item.n) * 1000, item.m, Unit::fraction);
    m.of = 0;
    for (const grammar::Word& w : grammar::words)
        if (w.klass == Class::amount && w.number == m.amount && w.term != "nearly" && w.term != "mostly") m.low = w.low, m.high = w.high;
    return m;
}

/// What is looked at and counted by the eye: the number may be left open.
bool counts_roughly(Kind kind) {
    return kind == Kind::queen_cells || kind == Kind::cells_removed || kind == Kind::cells_left || kind == Kind::cups || kind == Kind::mites;
}

bool reads_one_super(Kind kind) {
    return kind == Kind::full || kind == Kind::capped || kind == Kind::drawn || kind == Kind::shakes_out || kind == Kind::box_weight ||
           kind == Kind::no_change || kind == Kind::super_off || kind == Kind::super_lifted || kind == Kind::super_moved ||
           kind == Kind::box_labelled || kind == Kind::super_brood;
}

}  // namespace

/// The number of whole things in `m`; marks the reading where it is not whole, or left open and not kept so.
int Filler::whole_number(const Measure& m) {
    const bool open = m.low != m.high, whole_ends = open && m.low % 1000 == 0 && (m.about || m.high % 1000 == 0 || m.high == INT64_MAX);
    if (open && counts_roughly(c.fact.kind)) c.fact.count_range = m;
    c.in_part = c.in_part || (open ? !c.fact.count_range.said() || !(whole_ends || m.about) : m.amount % 1000 != 0);
    return static_cast<int>((m.amount + 500) / 1000);
}

void Filler::count_of(const Item& item, const std::string& into) {
    if (!item.counted) return;
    if (c.fact.kind == Kind::pest) {
        c.fact.value = item.count_value;
    } else if (into == "value") {
        if (c.fact.value.said() && (item.is("box") || item.is("brood box"))) return;   // 10 frames of brood in 2 boxes
        c.fact.value = item.count_value;
        c.fact.value.unit = item.is("seam") ? Unit::seam : Unit::frame;
    } else {
        // 3 frames of brood and 1 of stores into the nuc: 4 frames
        const bool divided = divides(c.fact.kind);
        const int many = whole_number(item.count_value);
        c.fact.count = many + (divided && c.fact.count > 0 ? c.fact.count : 0);
        if (!divided || !(item.is("frames of brood") || item.is("frames of stores"))) return;
        Measure& frames = item.is("frames of brood") ? c.fact.value : c.fact.second;
        frames = item.count_value, frames.unit = Unit::frame;
    }
}

void Filler::share(const Item& item) {
    c.fact.value = item.what == What::slash ? share_of_slash(item) : item.value;
    if (item.about && !c.fact.value.about) {
        c.fact.value.about = true;
        c.fact.value.low = std::max<std::int64_t>(0, c.fact.value.amount - 100);
        c.fact.value.high = std::min<std::int64_t>(1000, c.fact.value.amount + 100);
    }
}

void Filler::amount(const Item& item) {
    const grammar::Word* w = item.word(Class::amount);
    c.fact.value = {Dimension::share, Unit::fraction, w->number, w->low, w->high, 0, false};
    if (item.about) c.fact.value.about = true;
}

void Filler::frames(const Item& item) {
    Fact& f = c.fact;
    if (f.kind == Kind::super_on || f.kind == Kind::brood_box_on) f.frames = static_cast<std::int16_t>(whole_number(item.count_value));
    else if (f.kind == Kind::frames_moved || divides(f.kind)) f.count = whole_number(item.count_value);
    else f.value = item.count_value, f.value.unit = Unit::frame;
}

void Filler::box(const Item& item) {
    BoxChoice choice = item.box;
    if (item.what == What::term)
        choice = {item.is("top") ? BoxChoice::By::top : item.is("bottom") ? BoxChoice::By::bottom : BoxChoice::By::middle, Role::super, 0, {}};
    if (item.what == What::quoted) choice = {BoxChoice::By::label, Role::super, 0, item.text};
    if (second_box) c.fact.box2 = choice;
    else c.fact.box = choice;
    if (item.box2.by != BoxChoice::By::unsaid) c.fact.box2 = item.box2;
    second_box = true;
}

void Filler::comb(const Item& item) {
    c.fact.comb = comb_of(item);
    if (item.counted) c.fact.frames = static_cast<std::int16_t>(whole_number(item.count_value));
}

void Filler::place(const Item& item) {
    const bool under = item.is("under") || item.is("bottom") || item.is("under box");
    c.fact.placing = item.is("between") ? Placing::between : under ? Placing::under : Placing::over;
}

void Filler::hives(const Item& item, bool new_hive) {
    if (item.hives.empty()) return;
    (new_hive ? c.fact.hive : c.fact.other) = item.hives.front();
    c.hive_named = c.hive_named || new_hive;
}

void Filler::food(const Item& item) { c.fact.detail = item.word(Class::food)->term; }

void Filler::ratio(const Item& item) {
    const bool thin = item.n == 1 && item.m == 1;
    c.fact.manner = thin ? "1:1" : item.n == 2 && item.m == 1 ? "2:1" : item.n == 3 && item.m == 2 ? "3:2" : item.n == 1 && item.m == 2 ? "1:2" : "";
}

void Filler::jars(const Item& item) {
    c.fact.count = item.count;
    c.fact.value = item.value;
}

void Filler::fill(int slot, const Item& item, const std::string& count_into) {
    Fact& f = c.fact;
    if (item.unit_assumed) f.assumed |= assumed_unit;
    switch (slot) {
        case SHARE: share(item); break;
        case NOFM: f.value = measure(std::to_string((item.value.amount * item.value.of + 500) / 1000), Unit::frame).value_or(Measure{}); break;   // brood on 9 of 11 frames
        case AMOUNT: case FULLNESS:
            if (f.kind == Kind::super_off || f.kind == Kind::super_moved) f.manner = item.word(Class::amount)->term;
            else amount(item);
            break;
        case N: case SCORE:
            if (f.kind == Kind::pest) { f.value = item.value; break; }
            if (f.kind == Kind::brood || f.kind == Kind::stores || f.kind == Kind::temper || f.kind == Kind::bees || f.kind == Kind::eggs || f.kind == Kind::larvae || f.kind == Kind::sealed_brood) f.value = item.value;
            else f.count = whole_number(item.value);
            if (f.value.said() && f.kind != Kind::temper) f.value.unit = Unit::frame;
            break;
        case FRAMES: frames(item); break;
        case MASS: (f.kind == Kind::frames_off ? f.second : f.value) = item.value; break;
        case VOLUME: f.value = item.value; break;
        case TEMP: (f.kind == Kind::honey_index ? f.second : f.value) = item.value; break;
        case DAYS: f.second = item.value; break;
        case INDEX: f.value = item.value; break;
        case NUMBER:
            f.value = f.kind == Kind::honey_index ? measure(item.text, Unit::refractive_index).value_or(item.value) : item.value;
            break;
        case RATIO: ratio(item); break;
        case SAMPLE:
            f.count = item.n;
            f.value = measure(std::to_string(item.m), Unit::piece).value();
            break;
        case BOX: case BOX2: case BOXPAIR: box(item); break;
        case KIND: f.box_kind = item.box_kind; break;
        case SUPERKIND: f.box_kind = item.box_kind; count_of(item, count_into); break;
        case COMB:
            comb(item);
            if (f.kind == Kind::shed && item.counted) f.frames = 0, f.count = item.count;
            break;
        case PLACE: place(item); break;
        case FROM:
            if (f.kind == Kind::extracted) f.hives = item.hives;
            else hives(item, false);
            break;
        case TO: case WITH: case HIVE: hives(item, false); break;
        case INTO: hives(item, f.kind == Kind::swarm_hived); break;
        case TO_YARD: f.yard = item.yard; break;
        case LABEL: case PAINTED:
            if (f.kind == Kind::box_labelled) f.text = item.text;
            else if (item.what == What::box) f.box = item.box;
            else f.box = {BoxChoice::By::label, Role::super, 0, item.text};
            break;
        case COLOUR: f.detail = f.kind == Kind::queen ? f.detail : item.word(Class::colour)->term;
            if (f.kind == Kind::queen || f.kind == Kind::pollen) f.text = item.word(Class::colour)->term;
            break;
        case PLANT: f.text = item.text.empty() ? std::string(item.word(Class::plant)->term) : item.text; break;
        case ORDINAL_SUPER: case NTH_SUPER:
            if (!item.box_kind.empty()) f.box_kind = item.box_kind;   // 2nd medium super on
            break;
        case SUBSTANCE: f.detail = item.word(Class::substance)->term; break;
        case METHOD: f.detail = f.kind == Kind::mites ? item.word(Class::method)->term : f.detail; break;
        case FOOD: food(item); break;
        case PEST: f.detail = item.word(Class::pest)->term; break;
        case DISEASE: f.detail = item.word(Class::disease)->term; break;
        case WEATHER: f.text += (f.text.empty() ? "" : " ") + std::string(item.word(Class::weather)->term); break;
        case LOT: f.lot = item.lots.front(); break;
        case LOTS: f.lots = item.lots; break;
        case INTO_LOT: f.lot = item.lots.front(); break;
        case JARS: jars(item); break;
        case NTH: f.count = item.count, f.second = item.value; break;
        case DATE: f.text = iso(item.day); break;
        case DUE: f.second = days_to(context.noted, item.day); break;
        case SPECIAL:
            if (f.kind == Kind::super_on || f.kind == Kind::shed) comb(item), f.frames = 0, count_of(item, count_into);
            else if (f.kind != Kind::combs_packed) f.comb = comb_of(item), f.box = f.box.by == BoxChoice::By::unsaid ? BoxChoice{BoxChoice::By::sole, Role::super, 0, {}} : f.box;
            break;
        default: break;
    }
}

void apply_field(Candidate& c, const std::string& name, const std::string& value) {
    Fact& f = c.fact;
    if (name == "detail") f.detail = fixed(value);
    else if (name == "manner") f.manner = fixed(value);
    else if (name == "count" && !value.empty()) f.count = std::stoi(value);
    else if (name == "share") {
        const int amount = std::stoi(value);
        const int low = amount == 1000 ? 950 : amount == 0 ? 0 : amount / 5, high = amount == 0 ? 20 : amount == 1000 ? 1000 : amount * 5 / 2;
        f.value = {Dimension::share, Unit::fraction, amount, low, high, 0, false};
    } else if (name == "placing") f.placing = value == "under" ? Placing::under : Placing::over;
    else if (name == "comb") f.comb = value == "strips" ? Comb::strips : Comb::wet;
    else if (name == "empty") f.value = {Dimension::share, Unit::fraction, 0, 0, 20, 0, false};
    else if (name == "assume") f.assumed |= assumed_full;
    else if (name == "all_but") f.value.of = -1;
    else if (name == "inverse") {
        f.value = {f.value.dimension, f.value.unit == Unit::of_frames ? Unit::percent : f.value.unit, 1000 - f.value.amount, 1000 - f.value.high, 1000 - f.value.low, 0, f.value.about};
    } else if (name == "box") f.box = {value == "top" ? BoxChoice::By::top : value == "bottom" ? BoxChoice::By::bottom : BoxChoice::By::all, Role::super, 0, {}};
    else if (name == "days") f.second = measure(value, Unit::day).value_or(Measure{});
    else if (name == "boxes") {
        f.box = {BoxChoice::By::top, Role::super, 0, {}};
        f.box2 = {BoxChoice::By::bottom, Role::super, 0, {}};
    } else if (name == "swap" || name == "give") c.swap = name == "swap" || c.swap;
    else if (name == "yard") c.about_yard = true;
    else if (name == "honey") c.about_honey = true;
    else if (name == "shed") c.about_shed = true;
    else if (name == "carry") c.carries_box = true;
    else if (name == "cells") c.after_cells = true;
    else if (name == "cups") c.after_cups = true;
    else if (name == "lot") c.after_lot = true;
    else if (name == "jarred") c.after_jars = true;
    else if (name == "brood") c.after_brood = true;
    else if (name == "food") c.beside_food = true;
}

void finish(Candidate& c, const std::vector<Item>& items) {
    Fact& f = c.fact;
    if (f.value.of == -1) f.count = -1;
    const bool spoke_of_super = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::term && (i.is("super") || i.is("box")); });
    const bool still_on = f.kind == Kind::remark && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("still on") || i.is("bees"); });
    if ((reads_one_super(f.kind) || still_on) && f.box.by == BoxChoice::By::unsaid && spoke_of_super) {
        f.box = {f.count > 1 ? BoxChoice::By::top_n : BoxChoice::By::sole, Role::super, 0, {}};
        if (f.box.by == BoxChoice::By::top_n) f.box.number = static_cast<std::uint8_t>(std::min(f.count, 250));
    }
    if (f.kind == Kind::escape_on)
        for (const Item& i : items)
            if (i.is("under box") && f.box.by == BoxChoice::By::unsaid) f.box = i.box;
    if (f.kind == Kind::treatment_on || f.kind == Kind::treatment_off)
        for (const Item& i : items)
            if (i.is("pad") || i.is("tray")) f.manner = i.is("pad") ? "pad" : "tray";
    if (f.kind == Kind::hive_united && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("newspaper"); })) f.detail = fixed("newspaper");
    if (f.kind == Kind::super_off && f.manner == "net") f.manner = "honey";
    // thirds off: the third super of each
    for (const Item& i : items)
        if (f.kind == Kind::super_off && i.is("nths")) f.box = {BoxChoice::By::number, Role::super, static_cast<std::uint8_t>(i.word(Class::thing)->number), {}};
    if (f.kind == Kind::queen && f.detail == "laying" && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("new queen") || i.is("has new queen"); })) f.text = "new";
    if (f.kind == Kind::queen && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("unmarked"); })) f.text = "unmarked";
    if (c.after_cells && f.kind == Kind::cells_left && !f.detail.empty()) f.count = f.count < 0 && f.value.said() ? static_cast<int>(f.value.amount / 1000) : f.count;
    if ((f.kind == Kind::cells_removed || f.kind == Kind::cells_left || f.kind == Kind::queen_cells) && f.detail.empty())
        for (const Item& i : items) f.detail = i.is("open cell") ? "open" : i.is("sealed cell") ? "sealed" : f.detail;
    if (f.kind == Kind::feed) {
        if (f.detail.empty() || f.detail == "feed") f.detail = f.value.dimension == Dimension::volume || !f.manner.empty() ? "syrup" : f.detail;
        if (f.detail == "syrup" && f.manner == "1:1") f.detail = "thin syrup", f.manner = {};
        if (f.detail == "syrup" && f.manner == "2:1") f.detail = "thick syrup", f.manner = {};
        if (f.detail == "syrup" && f.manner == "3:2") f.detail = "syrup 3:2", f.manner = {};
    }
    if (f.kind == Kind::combs_packed || f.manner == "comb")
        f.comb = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("piece"); }) ? Comb::cut_comb : Comb::sections;
    if (f.kind == Kind::comb_year && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("brood box"); })) f.box = {BoxChoice::By::sole, Role::brood, 0, {}};
    if (f.kind == Kind::super_count || f.kind == Kind::brood_box_count) f.box = {};
    for (const Item& i : items) {
        if (i.is("to shed") && (f.kind == Kind::super_off || f.kind == Kind::hive_ended)) f.detail = f.kind == Kind::super_off ? "shed" : f.detail;
        const bool to_one = std::any_of(items.begin(), items.end(), [](const Item& k) { return k.is("to"); });   // sold to Ann at the shop
        if (i.is("at") && !to_one && (f.kind == Kind::gone_out || f.kind == Kind::hive_sold) && !f.text.empty()) f.at_place = true;   // sold at the gate
        if (i.is("business") && f.kind == Kind::gone_out) f.manner = "business";
        const bool goes_along = i.is("old queen") || (i.is("queen") && !i.is("new queen"));
        if (goes_along && divides(f.kind)) f.detail = "old queen";
    }
    if (f.kind == Kind::boxes_swapped && std::pair{f.box2.by, f.box2.number} < std::pair{f.box.by, f.box.number}) std::swap(f.box, f.box2);
    if (f.value.of == -1)
        for (const Item& i : items)
            if (i.is("outside frames")) f.value = i.counted ? i.count_value : measure("2", Unit::frame).value(), f.value.unit = Unit::frame, f.value.of = -1;
    if (f.value.of == -1 && f.value.dimension == Dimension::count) f.value.unit = Unit::frame;
    if (f.kind == Kind::moisture && f.value.dimension == Dimension::count)
        f.value = {Dimension::share, Unit::percent, f.value.amount / 100, f.value.low / 100, f.value.high / 100, 0, f.value.about};
    // About 18 %: a refractometer is read to half a point (common practice, no source).
    if (f.kind == Kind::moisture && f.value.about) f.value.low = f.value.amount - 5, f.value.high = f.value.amount + 5;
    if (f.kind == Kind::honey_index && f.value.dimension == Dimension::count)
        f.value = {Dimension::index, Unit::refractive_index, f.value.amount * 100, f.value.low * 100, f.value.high * 100, 0, false};
}

}  // namespace waxtab
