#include "facts/slots.hpp"

#include <algorithm>
#include <array>

#include "handbook/boxes.hpp"

namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

constexpr std::array<std::string_view, slot_count> slot_names = {
    "SHARE", "AMOUNT", "N", "FRAMES", "MASS", "VOLUME", "TEMP", "DAYS", "INDEX", "NUMBER", "RATIO", "SAMPLE", "NOFM", "BOX", "BOX2",
    "KIND", "SUPERKIND", "COMB", "PLACE", "FROM", "TO", "INTO", "WITH", "HIVE", "TO_YARD", "LABEL", "COLOUR", "PLANT", "SUBSTANCE",
    "METHOD", "FOOD", "PEST", "DISEASE", "WEATHER", "LOT", "LOTS", "INTO_LOT", "JARS", "SCORE", "DATE", "DUE", "FULLNESS", "SPECIAL", "ORDINAL_SUPER", "NTH_SUPER", "ORDINAL", "BOXPAIR", "PAINTED", "BROODKIND", "NTH"};

bool value_of(const Item& i, Dimension d) { return i.what == What::value && i.value.dimension == d; }

bool is_brood_kind(const Item& i) {
    if (i.box_kind.empty()) return false;
    const auto* kind = handbook::box_kind(i.box_kind);
    return kind && kind->role == handbook::BoxRole::brood;
}

bool is_box(const Item& i) {
    return i.what == What::box || (i.what == What::term && (i.is("top") || i.is("bottom") || i.is("middle")) && !i.counted);
}

bool special_comb(const Item& i) {
    return i.what == What::term && (i.is("cut comb") || i.is("sections") || i.is("strips"));
}

}  // namespace

int slot_of(std::string_view name) {
    const auto found = std::find(slot_names.begin(), slot_names.end(), name);
    return found == slot_names.end() ? -1 : static_cast<int>(found - slot_names.begin());
}

bool is_super_kind(const Item& i) {
    if (i.box_kind.empty()) return false;
    const auto* kind = handbook::box_kind(i.box_kind);
    return kind && kind->role == handbook::BoxRole::super;
}

bool is_mass(const Item& i) { return value_of(i, Dimension::mass); }

Measure days_to(Day from, Day to) { return measure(std::to_string(days_between(from, to)), Unit::day).value_or(Measure{}); }

bool bare_number(const Item& i) { return value_of(i, Dimension::count) && i.value.unit == Unit::piece && i.text != "nth"; }

bool whole_share(const Item& i) { return i.what == What::slash && i.m > 0 && i.n <= i.m && i.m <= 40; }

Comb comb_of(const Item& item) {
    static constexpr std::pair<std::string_view, Comb> combs[] = {{"drawn", Comb::drawn}, {"foundation", Comb::foundation}, {"wet", Comb::wet},
        {"strips", Comb::strips}, {"cut comb", Comb::cut_comb}, {"sections", Comb::sections}, {"mixed", Comb::mixed}};
    const grammar::Word* w = item.word(Class::combing);
    for (const auto& [term, comb] : combs)
        if (w && term == w->term) return comb;
    return Comb::unsaid;
}

bool slot_accepts(int slot, const Item& i) {
    const bool term = i.what == What::term;
    const bool hives = i.what == What::hives;
    switch (slot) {
        case SHARE: return value_of(i, Dimension::share) || whole_share(i);
        case AMOUNT: return term && i.has(Class::amount) && !i.counted;
        case N: return bare_number(i);
        case FRAMES: return term && i.counted && i.is("frame");
        case MASS: return is_mass(i);
        case VOLUME: return value_of(i, Dimension::volume);
        case TEMP: return value_of(i, Dimension::temperature);
        case DAYS: return value_of(i, Dimension::duration);
        case INDEX: return value_of(i, Dimension::index);
        case NUMBER: case SCORE: return bare_number(i);
        case RATIO: return i.what == What::ratio || (i.what == What::slash && i.n >= 1 && i.n <= 2 && i.m <= 2 && i.m >= 1);
        case SAMPLE: return i.what == What::slash && i.m >= 50;
        case NOFM: return value_of(i, Dimension::share) && i.value.unit == Unit::of_frames;
        case BOX: case BOX2: return (is_box(i) && i.box2.by == BoxChoice::By::unsaid) || i.what == What::quoted;
        case KIND: return !i.box_kind.empty() && !i.counted;
        case SUPERKIND: return is_super_kind(i);
        case COMB: return term && i.has(Class::combing);
        case PLACE: return term && (i.has(Class::placing) || i.is("top") || i.is("bottom") ||
                                    (i.is("under box") && (i.box.by != BoxChoice::By::top && i.box.by != BoxChoice::By::top_n)));
        case FROM: return hives && i.role == Item::Role::from;
        case TO: return hives && i.role == Item::Role::to;
        case INTO: return hives && (i.role == Item::Role::into || i.role == Item::Role::to);
        case WITH: return hives && i.role == Item::Role::with;
        case HIVE: return hives && i.role == Item::Role::none;
        case TO_YARD: return i.what == What::yard && i.role == Item::Role::to;
        case LABEL: return i.what == What::quoted;
        case COLOUR: return term && i.has(Class::colour);
        case PLANT: return term && i.has(Class::plant);
        case SUBSTANCE: return term && i.has(Class::substance);
        case METHOD: return term && i.has(Class::method);
        case FOOD: return term && i.has(Class::food);
        case PEST: return term && i.has(Class::pest);
        case DISEASE: return term && i.has(Class::disease);
        case WEATHER: return term && i.has(Class::weather);
        case LOT: return i.what == What::lot && i.role == Item::Role::none && i.lots.size() == 1;
        case LOTS: return i.what == What::lot && i.role == Item::Role::none;
        case INTO_LOT: return i.what == What::lot && i.role == Item::Role::into;
        case JARS: return i.what == What::jars;
        case DATE: return i.what == What::day;
        case DUE: return i.what == What::day && i.text == "due";
        case SPECIAL: return special_comb(i);
        case BOXPAIR: return i.what == What::box && i.box2.by != BoxChoice::By::unsaid;
        case PAINTED:
            return (i.what == What::quoted && i.text.size() <= 6 && i.text.find(' ') == std::string::npos) ||
                   (i.what == What::box && i.box.by == BoxChoice::By::label);
        case ORDINAL_SUPER: return i.what == What::box && i.box.by == BoxChoice::By::number;
        case NTH_SUPER: return i.what == What::box && i.box.by == BoxChoice::By::number && i.text == "ordinal";
        case ORDINAL: return term && (i.text == "ordinal" || (i.word(Class::which) && i.word(Class::which)->number > 0));
        case BROODKIND: return term && is_brood_kind(i);
        case NTH: return i.what == What::value && i.text == "nth";
        case FULLNESS: return term && i.has(Class::amount) && !i.counted;
        default: return false;
    }
}

}  // namespace waxtab
