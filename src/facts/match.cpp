#include "facts/match.hpp"

#include <algorithm>
#include <array>

#include "facts/chunk.hpp"
#include "handbook/boxes.hpp"

namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

enum Slot : int {
    SHARE, AMOUNT, N, FRAMES, MASS, VOLUME, TEMP, DAYS, INDEX, NUMBER, RATIO, SAMPLE, NOFM, BOX, BOX2, KIND, SUPERKIND, COMB, PLACE,
    FROM, TO, INTO, WITH, HIVE, TO_YARD, LABEL, COLOUR, PLANT, SUBSTANCE, METHOD, FOOD, PEST, DISEASE, WEATHER, LOT, LOTS, INTO_LOT,
    JARS, SCORE, DATE, DUE, FULLNESS, SPECIAL, ORDINAL_SUPER, BOXPAIR, PAINTED, BROODKIND, NTH, slot_count
};

constexpr std::array<std::string_view, slot_count> slot_names = {
    "SHARE", "AMOUNT", "N", "FRAMES", "MASS", "VOLUME", "TEMP", "DAYS", "INDEX", "NUMBER", "RATIO", "SAMPLE", "NOFM", "BOX", "BOX2",
    "KIND", "SUPERKIND", "COMB", "PLACE", "FROM", "TO", "INTO", "WITH", "HIVE", "TO_YARD", "LABEL", "COLOUR", "PLANT", "SUBSTANCE",
    "METHOD", "FOOD", "PEST", "DISEASE", "WEATHER", "LOT", "LOTS", "INTO_LOT", "JARS", "SCORE", "DATE", "DUE", "FULLNESS", "SPECIAL", "ORDINAL_SUPER", "BOXPAIR", "PAINTED", "BROODKIND", "NTH"};

int slot_of(std::string_view name) {
    const auto found = std::find(slot_names.begin(), slot_names.end(), name);
    return found == slot_names.end() ? -1 : static_cast<int>(found - slot_names.begin());
}

bool value_of(const Item& i, Dimension d) { return i.what == What::value && i.value.dimension == d; }
bool bare_number(const Item& i) { return value_of(i, Dimension::count) && i.value.unit == Unit::piece; }

bool is_super_kind(const Item& i) {
    if (i.box_kind.empty()) return false;
    const auto* kind = handbook::box_kind(i.box_kind);
    return kind && kind->role == handbook::BoxRole::super;
}

bool is_brood_kind(const Item& i) {
    if (i.box_kind.empty()) return false;
    const auto* kind = handbook::box_kind(i.box_kind);
    return kind && kind->role == handbook::BoxRole::brood;
}

bool whole_share(const Item& i) { return i.what == What::slash && i.m > 0 && i.n <= i.m && i.m <= 40; }

bool is_box(const Item& i) {
    return i.what == What::box || (i.what == What::term && (i.is("top") || i.is("bottom") || i.is("middle")) && !i.counted);
}

bool special_comb(const Item& i) {
    return i.what == What::term && (i.is("cut comb") || i.is("sections") || i.is("strips"));
}

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
        case N: return bare_number(i) && i.text != "nth";
        case FRAMES: return term && i.counted && i.is("frame");
        case MASS: return value_of(i, Dimension::mass);
        case VOLUME: return value_of(i, Dimension::volume);
        case TEMP: return value_of(i, Dimension::temperature);
        case DAYS: return value_of(i, Dimension::duration);
        case INDEX: return value_of(i, Dimension::index);
        case NUMBER: case SCORE: return bare_number(i) && i.text != "nth";
        case RATIO: return i.what == What::ratio || (i.what == What::slash && i.n >= 1 && i.n <= 2 && i.m <= 2 && i.m >= 1);
        case SAMPLE: return i.what == What::slash && i.m >= 50;
        case NOFM: return whole_share(i) || (value_of(i, Dimension::share) && i.value.unit == Unit::of_frames);
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
        case BROODKIND: return term && is_brood_kind(i);
        case NTH: return i.what == What::value && i.text == "nth";
        case FULLNESS: return term && i.has(Class::amount) && !i.counted;
        default: return false;
    }
}

std::vector<std::string> split(std::string_view text, char at) {
    std::vector<std::string> parts;
    for (std::size_t begin = 0; begin <= text.size();) {
        const std::size_t end = std::min(text.find(at, begin), text.size());
        if (end > begin) parts.emplace_back(text.substr(begin, end - begin));
        begin = end + 1;
    }
    return parts;
}

/// Static text for a term, so that facts can point to it.
std::string_view fixed(std::string_view term) {
    static constexpr std::array<std::string_view, 40> details = {
        "seen", "none", "all stages", "brood", "eggs", "honey", "packed", "crowded", "backfilled", "roomy", "bearding", "strong", "weak",
        "good", "poor", "calm", "lively", "defensive", "plenty", "fair", "light", "coming in", "not seen", "right", "absent", "virgin",
        "laying", "not laying", "new", "failing", "drone layer", "laying workers", "emerged", "superseded", "charged", "dry", "open",
        "sealed", "torn down", "shook out"};
    static constexpr std::array<std::string_view, 33> more = {
        "swarm", "supersedure", "emergency", "cast", "prime", "yes", "no", "before", "after", "net", "suspected", "confirmed", "heavy",
        "medium", "on", "starting", "ending", "over", "start", "peak", "bud", "end", "sold", "given", "own use", "spoiled", "excluder",
        "escape board", "shed", "old queen", "empty", "gain", "loss"};
    for (const auto& list : {std::pair{details.data(), details.size()}, std::pair{more.data(), more.size()}})
        for (std::size_t k = 0; k < list.second; ++k)
            if (list.first[k] == term) return list.first[k];
    for (const grammar::Word& w : grammar::words)
        if (w.term == term) return w.term;
    return {};
}

std::string shape_of(const std::vector<Item>& items) {
    std::string shape;
    for (const Item& i : items) {
        shape += static_cast<char>('a' + static_cast<int>(i.what));
        shape += static_cast<char>('0' + static_cast<int>(i.role));
        if (i.counted) shape += '#';
        if (i.loose) shape += '~';
        switch (i.what) {
            case What::term:
                for (const grammar::Word* w : i.words) shape += w->term, shape += '|';
                shape += i.box_kind;
                if (i.what == What::term && i.is("under box")) shape += static_cast<char>('A' + static_cast<int>(i.box.by));
                break;
            case What::value: shape += i.text == "nth" ? "nth" : ""; shape += static_cast<char>('A' + static_cast<int>(i.value.dimension)); shape += static_cast<char>('A' + static_cast<int>(i.value.unit)); break;
            case What::slash: case What::ratio: shape += whole_share(i) ? 'w' : i.m >= 50 ? 's' : i.m <= 2 && i.n <= 2 ? 'r' : 'o'; break;
            case What::box: shape += static_cast<char>('A' + static_cast<int>(i.box.role)); shape += i.box2.by == BoxChoice::By::unsaid ? '1' : '2'; break;
            case What::sign: case What::stop: case What::unknown: shape += i.text; break;
            case What::lot: shape += i.lots.size() == 1 ? '1' : 'n'; break;
            default: break;
        }
        shape += ' ';
    }
    return shape;
}

}  // namespace

bool same_content(const Fact& a, const Fact& b) {
    return a.kind == b.kind && a.hive == b.hive && a.other == b.other && a.yard == b.yard && a.box == b.box && a.box2 == b.box2 &&
           a.placing == b.placing && a.comb == b.comb && a.frames == b.frames && a.count == b.count && a.value == b.value &&
           a.second == b.second && a.detail == b.detail && a.manner == b.manner && a.box_kind == b.box_kind && a.text == b.text &&
           a.lot == b.lot && a.hives == b.hives && a.lots == b.lots;
}

Matcher::Element Matcher::compile_element(std::string_view text) {
    Element element;
    if (text.ends_with('?')) element.optional = true, text.remove_suffix(1);
    if (text.ends_with('+') && text.size() > 1) element.several = true, text.remove_suffix(1);
    for (std::string part : split(text, '|')) {
        Alternative alternative;
        if (part.starts_with('@')) element.text = true, part.erase(0, 1);
        while (part.ends_with('#')) ++alternative.counted, part.pop_back();
        alternative.slot = slot_of(part);
        if (alternative.slot < 0) {
            std::replace(part.begin(), part.end(), '_', ' ');
            alternative.term = part;
        }
        element.any.push_back(alternative);
    }
    return element;
}

Matcher::Row Matcher::compile(const grammar::ReadingRow& row) {
    Row out;
    for (const std::string& part : split(row.pattern, ' ')) out.elements.push_back(compile_element(part));
    for (const std::string& part : split(row.fields, ' ')) {
        const std::size_t equals = part.find('=');
        std::string value = equals == part.npos ? std::string{} : part.substr(equals + 1);
        std::replace(value.begin(), value.end(), '_', ' ');
        out.fields.emplace_back(part.substr(0, equals), value);
    }
    return out;
}

Matcher::Matcher() {
    for (const grammar::ReadingRow& row : grammar::reading_rows) rows_.push_back(compile(row));
}

bool Matcher::accepts(const Alternative& a, const Item& item) const {
    if (a.slot >= 0) {
        if (item.counted && a.slot != FRAMES && a.slot != COMB && a.counted == 0) return false;
        if (a.counted == 2 && !item.counted) return false;
        return slot_accepts(a.slot, item);
    }
    if (item.counted ? a.counted == 0 : a.counted == 2) return false;
    if (a.term == "+" || a.term == "-") return item.what == What::sign && item.text == a.term;
    if (a.term == "over state") return item.what == What::term && item.is("over");
    if (a.term == "super" && item.is("box")) return item.what == What::term;
    return item.what == What::term && item.is(a.term);
}

bool Matcher::accepts(const Element& element, const Item& item) const {
    return std::any_of(element.any.begin(), element.any.end(), [&](const Alternative& a) { return accepts(a, item); });
}

bool Matcher::plausible(const Row& row, const std::vector<Item>& items) const {
    for (const Element& e : row.elements)
        if (!e.optional && std::none_of(items.begin(), items.end(), [&](const Item& i) { return accepts(e, i); })) return false;
    bool text = std::any_of(row.elements.begin(), row.elements.end(), [](const Element& e) { return e.text; });
    for (const Item& i : items)
        if (!i.idle() && !text && std::none_of(row.elements.begin(), row.elements.end(), [&](const Element& e) { return accepts(e, i); }))
            return false;
    return true;
}

void Matcher::search(const Row& row, const std::vector<Item>& items, std::size_t at, unsigned used, Assignment& so_far,
                     std::vector<Assignment>& found) const {
    if (at == items.size()) {
        for (std::size_t e = 0; e < row.elements.size(); ++e)
            if (!row.elements[e].optional && !(used >> e & 1u)) return;
        found.push_back(so_far);
        return;
    }
    const Item& item = items[at];
    for (std::size_t e = 0; e < row.elements.size(); ++e) {
        const Element& element = row.elements[e];
        if (((used >> e & 1u) && !element.several) || !accepts(element, item)) continue;
        so_far[at] = static_cast<int>(e);
        if (!element.text) {
            search(row, items, at + 1, used | 1u << e, so_far, found);
            continue;
        }
        // The free words after the preposition: up to the next amount, hive or lot, at least one.
        std::size_t end = at + 1;
        const bool numbered = item.is("batch");
        while (end < items.size() && !items[end].counted && !items[end].loose && ((numbered && bare_number(items[end])) || (items[end].what == What::hives && item.is("renamed")) || items[end].what == What::term || items[end].what == What::unknown || items[end].what == What::quoted ||
                                      items[end].what == What::yard)) ++end;
        // The longest run that leaves the rest readable.
        const std::size_t before = found.size();
        for (; end > at + 1 && found.size() == before; --end) {
            std::fill(so_far.begin() + static_cast<std::ptrdiff_t>(at), so_far.begin() + static_cast<std::ptrdiff_t>(end), static_cast<int>(e));
            search(row, items, end, used | 1u << e, so_far, found);
        }
    }
    so_far[at] = -1;
    if (item.idle()) search(row, items, at + 1, used, so_far, found);
}

std::vector<Matcher::Found> Matcher::match(const std::vector<Item>& items) const {
    std::vector<Found> found;
    for (std::size_t r = 0; r < rows_.size(); ++r) {
        if (!plausible(rows_[r], items)) continue;
        std::vector<Assignment> ways;
        Assignment so_far(items.size(), -1);
        search(rows_[r], items, 0, 0, so_far, ways);
        for (Assignment& way : ways) found.push_back({r, std::move(way)});
    }
    return found;
}

namespace {

/// 1/2, 2/3, 3/4 are as vague as the words; 7/10 counts frames.
Measure share_of_slash(const Item& item) {
    if (item.m > 4) return share_of(static_cast<std::int64_t>(item.n) * 1000, item.m, Unit::of_frames);
    Measure m = share_of(static_cast<std::int64_t>(item.n) * 1000, item.m, Unit::fraction);
    m.of = 0;
    for (const grammar::Word& w : grammar::words)
        if (w.klass == Class::amount && w.number == m.amount && w.term != "nearly" && w.term != "mostly") m.low = w.low, m.high = w.high;
    return m;
}

/// Fills the fact from one item that went to a slot.
struct Filler {
    Candidate& c;
    const ItemContext& context;
    bool second_box = false;

    void count_of(const Item& item, const std::string& into) {
        if (!item.counted) return;
        if (into == "value") {
            c.fact.value = item.count_value;
            c.fact.value.unit = item.is("seam") ? Unit::seam : Unit::frame;
        } else {
            c.fact.count = item.count;
        }
    }
    void share(const Item& item) {
        c.fact.value = item.what == What::slash ? share_of_slash(item) : item.value;
        if (item.about && !c.fact.value.about) {
            c.fact.value.about = true;
            c.fact.value.low = std::max<std::int64_t>(0, c.fact.value.amount - 100);
            c.fact.value.high = std::min<std::int64_t>(1000, c.fact.value.amount + 100);
        }
    }
    void amount(const Item& item) {
        const grammar::Word* w = item.word(Class::amount);
        c.fact.value = {Dimension::share, Unit::fraction, w->number, w->low, w->high, 0, false};
        if (item.about) c.fact.value.about = true;
    }
    void frames(const Item& item) {
        Fact& f = c.fact;
        if (f.kind == Kind::super_on || f.kind == Kind::brood_box_on) f.frames = static_cast<std::int16_t>(item.count);
        else if (f.kind == Kind::frames_moved || f.kind == Kind::hive_split || f.kind == Kind::nuc_made) f.count = item.count;
        else f.value = item.count_value, f.value.unit = Unit::frame;
    }
    void box(const Item& item) {
        BoxChoice choice = item.box;
        if (item.what == What::term)
            choice = {item.is("top") ? BoxChoice::By::top : item.is("bottom") ? BoxChoice::By::bottom : BoxChoice::By::middle, Role::super, 0, {}};
        if (item.what == What::quoted) choice = {BoxChoice::By::label, Role::super, 0, item.text};
        if (second_box) c.fact.box2 = choice;
        else c.fact.box = choice;
        if (item.box2.by != BoxChoice::By::unsaid) c.fact.box2 = item.box2;
        second_box = true;
    }
    void comb(const Item& item) {
        c.fact.comb = comb_of(item);
        if (item.counted) c.fact.frames = static_cast<std::int16_t>(item.count);
    }
    void place(const Item& item) {
        const bool under = item.is("under") || item.is("bottom") || item.is("under box");
        c.fact.placing = item.is("between") ? Placing::between : under ? Placing::under : Placing::over;
    }
    void hives(const Item& item, bool new_hive) {
        if (item.hives.empty()) return;
        (new_hive ? c.fact.hive : c.fact.other) = item.hives.front();
        c.hive_named = c.hive_named || new_hive;
    }
    void food(const Item& item) { c.fact.detail = item.word(Class::food)->term; }
    void ratio(const Item& item) {
        const bool thin = item.n == 1 && item.m == 1;
        c.fact.manner = thin ? "1:1" : item.n == 2 && item.m == 1 ? "2:1" : item.n == 3 && item.m == 2 ? "3:2" : item.n == 1 && item.m == 2 ? "1:2" : "";
    }
    void jars(const Item& item) {
        c.fact.count = item.count;
        c.fact.value = item.value;
    }
    void fill(int slot, const Item& item, const std::string& count_into);
};

void Filler::fill(int slot, const Item& item, const std::string& count_into) {
    Fact& f = c.fact;
    if (item.unit_assumed) f.assumed |= assumed_unit;
    switch (slot) {
        case SHARE: case NOFM: share(item); break;
        case AMOUNT: case FULLNESS:
            if (f.kind == Kind::super_off || f.kind == Kind::super_moved) f.manner = item.is("empty") ? "empty" : "full";
            else amount(item);
            break;
        case N: case SCORE:
            if (f.kind == Kind::brood || f.kind == Kind::stores || f.kind == Kind::temper || f.kind == Kind::bees || f.kind == Kind::eggs || f.kind == Kind::larvae) f.value = item.value;
            else f.count = static_cast<int>(item.value.amount / 1000);
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
        case PLANT: f.text = item.word(Class::plant)->term; break;
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
        case DUE: f.second = measure(std::to_string(days_between(context.noted, item.day)), Unit::day).value_or(Measure{}); break;
        case SPECIAL:
            if (f.kind == Kind::super_on || f.kind == Kind::shed) comb(item), f.frames = 0, count_of(item, count_into);
            else if (f.kind != Kind::combs_packed) f.comb = comb_of(item), f.box = f.box.by == BoxChoice::By::unsaid ? BoxChoice{BoxChoice::By::sole, Role::super, 0, {}} : f.box;
            break;
        default: break;
    }
}

/// What the row's fields add once all slots are filled.
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
    else if (name == "comb") f.comb = Comb::wet;
    else if (name == "empty") f.value = {Dimension::share, Unit::fraction, 0, 0, 20, 0, false};
    else if (name == "assume") f.assumed |= assumed_full;
    else if (name == "all_but") f.value.of = -1;
    else if (name == "inverse") {
        f.value = {f.value.dimension, f.value.unit == Unit::of_frames ? Unit::percent : f.value.unit, 1000 - f.value.amount, 1000 - f.value.high, 1000 - f.value.low, 0, f.value.about};
    } else if (name == "box") f.box = {BoxChoice::By::all, Role::super, 0, {}};
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
    else if (name == "brood") c.after_brood = true;
    else if (name == "food") c.beside_food = true;
}

bool reads_one_super(Kind kind) {
    return kind == Kind::full || kind == Kind::capped || kind == Kind::drawn || kind == Kind::shakes_out || kind == Kind::box_weight ||
           kind == Kind::no_change || kind == Kind::super_off || kind == Kind::super_lifted || kind == Kind::super_moved ||
           kind == Kind::box_labelled || kind == Kind::super_brood;
}

/// Tidies what slots alone cannot settle.
void finish(Candidate& c, const std::vector<Item>& items) {
    Fact& f = c.fact;
    if (f.value.of == -1) f.count = -1;
    const bool spoke_of_super = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::term && (i.is("super") || i.is("box")); });
    if (reads_one_super(f.kind) && f.box.by == BoxChoice::By::unsaid && spoke_of_super) {
        f.box = {f.count > 1 ? BoxChoice::By::top_n : BoxChoice::By::sole, Role::super, 0, {}};
        if (f.box.by == BoxChoice::By::top_n) f.box.number = static_cast<std::uint8_t>(std::min(f.count, 250));
    }
    if (f.kind == Kind::escape_on)
        for (const Item& i : items)
            if (i.is("under box") && f.box.by == BoxChoice::By::unsaid) f.box = i.box;
    if (f.kind == Kind::super_off && f.manner == "net") f.manner = "honey";
    if (c.after_cells && f.kind == Kind::cells_left && !f.detail.empty()) f.count = f.count < 0 && f.value.said() ? static_cast<int>(f.value.amount / 1000) : f.count;
    if ((f.kind == Kind::cells_removed || f.kind == Kind::cells_left || f.kind == Kind::queen_cells) && f.detail.empty())
        for (const Item& i : items) f.detail = i.is("open cell") ? "open" : i.is("sealed cell") ? "sealed" : f.detail;
    if (f.kind == Kind::feed) {
        if (f.detail.empty() || f.detail == "feed") f.detail = f.value.dimension == Dimension::volume || !f.manner.empty() ? "syrup" : f.detail;
        if (f.detail == "syrup" && f.manner == "1:1") f.detail = "thin syrup", f.manner = {};
        if (f.detail == "syrup" && f.manner == "2:1") f.detail = "thick syrup", f.manner = {};
        if (f.detail == "syrup" && f.manner == "3:2") f.detail = "syrup 3:2", f.manner = {};
    }
    if (f.kind == Kind::super_count || f.kind == Kind::brood_box_count) f.box = {};
    for (const Item& i : items) {
        if (i.is("to shed") && (f.kind == Kind::super_off || f.kind == Kind::hive_ended)) f.detail = f.kind == Kind::super_off ? "shed" : f.detail;
        if (i.is("old queen")) f.detail = "old queen";
    }
    if (f.kind == Kind::boxes_swapped && std::pair{f.box2.by, f.box2.number} < std::pair{f.box.by, f.box.number}) std::swap(f.box, f.box2);
    if (f.value.of == -1)
        for (const Item& i : items)
            if (i.is("outside frames")) f.value = i.counted ? i.count_value : measure("2", Unit::frame).value(), f.value.unit = Unit::frame, f.value.of = -1;
    if (f.value.of == -1 && f.value.dimension == Dimension::count) f.value.unit = Unit::frame;
    if (f.kind == Kind::moisture && f.value.dimension == Dimension::count)
        f.value = {Dimension::share, Unit::percent, f.value.amount / 100, f.value.low / 100, f.value.high / 100, 0, f.value.about};
    if (f.kind == Kind::honey_index && f.value.dimension == Dimension::count)
        f.value = {Dimension::index, Unit::refractive_index, f.value.amount * 100, f.value.low * 100, f.value.high * 100, 0, false};
}

}  // namespace

Candidate Matcher::build(const Found& found, const std::vector<Item>& items, std::string_view file_text, const ItemContext& context) const {
    const Row& row = rows_[found.row];
    Candidate c;
    c.row = found.row;
    c.fact.kind = grammar::reading_rows[found.row].kind;
    std::string count_into = "count";
    for (const auto& [name, value] : row.fields)
        if (name == "n:value") count_into = "value";
    Filler filler{c, context};
    for (std::size_t e = 0; e < row.elements.size(); ++e) {
        const Element& element = row.elements[e];
        std::uint32_t text_begin = 0, text_end = 0;
        bool first = true;
        for (std::size_t i = 0; i < items.size(); ++i) {
            if (found.assignment[i] != static_cast<int>(e)) continue;
            if (element.text) {
                if (first) text_begin = items[i].end;
                else text_end = items[i].end;
                first = false;
                continue;
            }
            for (const Alternative& a : element.any) {
                if (!accepts(a, items[i])) continue;
                if (a.slot >= 0) filler.fill(a.slot, items[i], count_into);
                else if (a.counted > 0) filler.count_of(items[i], count_into);
                break;
            }
        }
        if (element.text && text_end > text_begin) {
            std::string_view text = file_text.substr(text_begin, text_end - text_begin);
            while (text.starts_with(' ')) text.remove_prefix(1);
            c.fact.text = std::string(text);
            if (c.fact.text.starts_with('"') && c.fact.text.ends_with('"') && c.fact.text.size() > 1) std::erase(c.fact.text, '"');
        }
    }
    for (const auto& [name, value] : row.fields) apply_field(c, name, value);
    finish(c, items);
    // moved super from h5 to h6: the giver named, the line's hive unsaid
    for (const auto& [name, value] : row.fields) {
        if (name != "give") continue;
        for (const Item& i : items) {
            if (i.what != What::hives || i.hives.empty()) continue;
            if (i.role == Item::Role::from) c.fact.hive = i.hives.front(), c.hive_named = true;
            if (i.role == Item::Role::to) c.fact.other = i.hives.front();
        }
    }
    return c;
}

std::vector<Candidate> Matcher::read(const std::vector<Item>& items, std::string_view file_text, const ItemContext& context) {
    std::vector<Candidate> out;
    if (items.empty() || items.size() > 16) return out;
    const std::string shape = shape_of(items);
    auto known = shapes_.find(shape);
    if (known == shapes_.end()) known = shapes_.emplace(shape, match(items)).first;
    for (const Found& found : known->second) {
        Candidate c = build(found, items, file_text, context);
        // Only honey comes from several hives at once; else one of them would be lost.
        const bool several = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::hives && i.role != Item::Role::none && i.hives.size() > 1; });
        if (several && c.fact.kind != Kind::extracted) continue;
        const bool seen = std::any_of(out.begin(), out.end(), [&](const Candidate& o) { return same_content(o.fact, c.fact) && o.after_cells == c.after_cells; });
        if (!seen) out.push_back(std::move(c));
    }
    // After `treated with` stands any name; a known substance is that substance.
    const auto treated = [](const Candidate& c) { return c.fact.kind == Kind::treatment && !c.fact.detail.empty(); };
    if (std::any_of(out.begin(), out.end(), treated)) std::erase_if(out, [](const Candidate& c) { return c.fact.kind == Kind::treatment && c.fact.detail.empty(); });
    return out;
}

}  // namespace waxtab
