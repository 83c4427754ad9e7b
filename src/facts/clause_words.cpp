#include "facts/clause_words.hpp"

#include <algorithm>
#include <array>

#include "facts/slots.hpp"

namespace waxtab {

using grammar::Class;
using What = Item::What;

bool stop(const Item& i, std::string_view text) { return i.what == What::stop && i.text == text; }

bool eventful(const std::vector<Item>& items) {
    return std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::sign || i.has(Class::done); });
}

std::vector<Item> part_of(const std::vector<Item>& items, std::size_t from, std::size_t to) {
    return {items.begin() + static_cast<std::ptrdiff_t>(from), items.begin() + static_cast<std::ptrdiff_t>(to)};
}

void break_clause(std::vector<std::vector<Item>>& clauses, std::size_t c, std::size_t end, std::size_t next) {
    std::vector<Item> rest = part_of(clauses[c], next, clauses[c].size());
    clauses[c].resize(end);
    clauses.insert(clauses.begin() + static_cast<std::ptrdiff_t>(c) + 1, std::move(rest));
}

bool measured_of_lot(Kind kind) { return kind == Kind::moisture || kind == Kind::honey_index || kind == Kind::drained; }

bool goes_on(Kind kind) {
    switch (kind) {
        case Kind::super_on: case Kind::super_off: case Kind::brood_box_on: case Kind::frames_off: case Kind::hive_split: case Kind::nuc_made:
        case Kind::swarm_hived: case Kind::queen_introduced: case Kind::extracted: case Kind::gone_out: case Kind::jars: case Kind::combs_packed:
        case Kind::feed: case Kind::treatment: case Kind::treatment_on: case Kind::mites: case Kind::super_moved: case Kind::frames_moved:
        case Kind::cups: case Kind::bought_in: case Kind::opening_stock: case Kind::moisture: case Kind::honey_index: case Kind::come_back: case Kind::stocktake:
            return true;
        default: return false;
    }
}

bool comes_of_hives(Kind kind) {
    return kind == Kind::extracted || kind == Kind::moisture || kind == Kind::honey_index || kind == Kind::drained || kind == Kind::combs_packed || kind == Kind::sections_done;
}

bool still_on(const Fact& fact) { return fact.kind == Kind::remark && fact.box.by != BoxChoice::By::unsaid; }

bool on_or_off(const Item& i) { return i.is("on") || i.is("off") || i.is("in") || i.is("out"); }

bool holds_number(const Item& i) {
    return i.what == What::value || i.what == What::slash || i.what == What::jars || i.counted || i.has(Class::count);
}

bool soft(Kind kind) {
    return kind == Kind::full || kind == Kind::capped || kind == Kind::drawn || kind == Kind::bees || kind == Kind::brood || kind == Kind::stores ||
           kind == Kind::hive_weight || kind == Kind::box_weight || kind == Kind::strength;
}

bool needs_hive(const Candidate& c) {
    return !c.about_yard && !c.about_honey && !c.about_shed;
}

bool takes_box_from_before(Kind kind) {
    return kind == Kind::full || kind == Kind::capped || kind == Kind::drawn || kind == Kind::shakes_out || kind == Kind::no_change;
}

std::vector<Item> without_hives(std::vector<Item> items) {
    const auto named = std::count_if(items.begin(), items.end(), [](const Item& k) { return k.what == What::hives; });
    if (named > 1) {
        // Only the hives the line is about: the ones without a preposition.
        for (std::size_t i = 0; i < items.size(); ++i) {
            const bool led = i > 0 && (items[i - 1].has(Class::preposition) || items[i - 1].is("new") || items[i - 1].is("with"));
            if (items[i].what != What::hives || led) continue;
            items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
            return items;
        }
    }
    for (std::size_t i = 0; i < items.size();) {
        const bool before = i + 1 < items.size() && items[i + 1].what == What::hives && (items[i].is("from") || items[i].is("to") || items[i].is("on") || items[i].is("in") || items[i].is("off") || items[i].is("at"));
        const bool verb = std::count_if(items.begin(), items.end(), [](const Item& k) { return k.has(Class::done); }) > 1;
        if (items[i].what == What::hives || (before && (!items[i].has(Class::done) || verb))) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
        else ++i;
    }
    return items;
}

bool tells_how_it_is(const Item& i) {
    static constexpr std::array<std::string_view, 15> states = {"strong", "weak", "calm", "lively", "defensive", "queenright", "queenless", "roomy", "crowded", "bearding", "backfilled", "starving",
        "drone layer", "queen seen", "queen not seen"};
    return i.what == What::term && !i.counted && std::any_of(states.begin(), states.end(), [&](std::string_view s) { return i.is(s); });
}

bool one_does(const std::string& verb) {
    static constexpr std::array<std::string_view, 9> verbs = {"is", "was", "has", "had", "looks", "seems", "needs", "got", "feels"};
    return std::find(verbs.begin(), verbs.end(), verb) != verbs.end();
}

Item of_the_unit(Item number, const Item& last) {
    if (!bare_number(number) || last.what != What::value || last.value.unit == Unit::piece) return number;
    number.value = measure(number.text, last.value.unit).value_or(number.value);
    return number;
}

std::vector<Measure> masses_in(const std::vector<Item>& items) {
    std::vector<Measure> masses;
    for (const Item& i : items)
        if (is_mass(i)) masses.push_back(i.value);
    return masses;
}

bool of_frames(const Fact& f) { return (f.kind == Kind::brood || f.kind == Kind::stores || f.kind == Kind::bees) && f.value.said(); }

bool seen_of_colony(Kind kind) {
    return (kind >= Kind::bees && kind <= Kind::strength) || kind == Kind::temper || kind == Kind::stores || kind == Kind::queen || kind == Kind::queen_marked || kind == Kind::queen_clipped;
}

bool is_hives(const Item& i) { return i.what == What::hives; }

bool any_hive(const std::vector<Item>& items) { return std::any_of(items.begin(), items.end(), is_hives); }

bool is_frames(const Item& i) { return i.is("frame") || i.is("frames of brood") || i.is("frames of stores"); }

bool is_split(const Item& i) { return i.is("split") || i.is("nuc made"); }

bool is_syrup(std::string_view food) { return food.empty() || food.ends_with("syrup"); }

/// Tells something: no name of a hive, and no small word between others.
static bool tells(const Item& i) { return !i.idle() && !i.has(Class::link) && !i.has(Class::preposition) && !is_hives(i) && i.what != What::stop; }

bool run_together(const std::vector<Item>& items) {
    const auto parts = [](const Item& i) { return i.is("and") || i.what == What::stop; };
    for (auto first = std::find_if(items.begin(), items.end(), is_hives); first != items.end();) {
        const auto second = std::find_if(first + 1, items.end(), is_hives);
        if (second != items.end() && std::none_of(first, second, parts) && std::any_of(first, second, tells)) return true;
        first = second;
    }
    return false;
}

bool told_apart(const std::vector<Item>& items) {
    const auto hive = [](const Item& i) { return i.what == What::hives && i.role == Item::Role::none; };
    const auto says = [](const Item& i) { return tells(i) && !on_or_off(i); };
    const auto first = std::find_if(items.begin(), items.end(), hive), second = first == items.end() ? first : std::find_if(first + 1, items.end(), hive);
    const bool linked = std::any_of(first, second, [](const Item& i) { return i.is("and"); });
    return second != items.end() && linked && std::any_of(first, second, says) && (std::any_of(items.begin(), first, says) || std::any_of(second, items.end(), says));
}

bool sentence_end(const Item& i) { return i.what == What::stop && (i.text == "." || i.text == ";" || i.text == "!"); }

bool tells_of_jars(const Fact& fact) { return fact.kind == Kind::jars || (fact.kind == Kind::gone_out && fact.count > 0); }

}  // namespace waxtab
