#include "facts/chunk_boxes.hpp"

#include <algorithm>

#include "facts/chunk.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// Words that pick a box of the stack: top, second, both, super 2, the medium.
namespace waxtab {

using grammar::Class;
using What = Item::What;

bool is_count(const Item& i) { return i.what == What::value && i.value.dimension == Dimension::count; }

bool times_sign(const Item& i) { return i.what == What::unknown && i.text == "x"; }

namespace {

using Items = std::vector<Item>;

void make_box(Item& item, BoxChoice choice) {
    item.what = What::box;
    item.box = std::move(choice);
    item.words.clear();
}

/// Which box a word such as top or both picks.
std::optional<BoxChoice> choice_of(const Item& which) {
    if (which.is("top")) return BoxChoice{BoxChoice::By::top, Role::super, 0, {}};
    if (which.is("bottom")) return BoxChoice{BoxChoice::By::bottom, Role::super, 0, {}};
    if (which.is("middle")) return BoxChoice{BoxChoice::By::middle, Role::super, 0, {}};
    if (which.is("both") || which.is("all")) return BoxChoice{BoxChoice::By::all, Role::super, 0, {}};
    const grammar::Word* w = which.word(Class::which);
    const int n = which.text == "ordinal" ? which.count : w && w->number > 0 ? w->number : 0;
    if (n > 0 && n < 30) return BoxChoice{BoxChoice::By::number, Role::super, static_cast<std::uint8_t>(n), {}};
    return {};
}

bool picks(const Item& i) { return i.what == What::term && (i.has(Class::which) || i.text == "ordinal"); }

bool adds(const Items& items) {
    return std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::sign || i.is("added") || i.is("on") || i.is("undersupered") || i.is("topsupered"); });
}

/// Says how full, how far capped or drawn.
bool tells_state(const Item& i) {
    return (i.what == What::value && i.value.dimension == Dimension::share) || i.what == What::slash || (i.what == What::term && !i.counted && (i.has(Class::amount) || i.is("capped") || i.is("uncapped") || i.is("none capped")));
}

}  // namespace

void thirds(Items& items) {
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        if (!items[i].is("a third") || !is_super(items[i + 1])) continue;
        items[i].words = {table_word("third", Class::which)};
    }
}

void sign_and_ordinal(Items& items) {
    for (std::size_t i = 0; i + 2 < items.size(); ++i) {
        const bool adds = items[i].what == What::sign && items[i].text == "+" && picks(items[i + 1]) && (is_super(items[i + 2]) || is_super_kind(items[i + 2]));
        if (adds && choice_of(items[i + 1]).value_or(BoxChoice{}).by == BoxChoice::By::number) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    }
}

void beside_a_box(Items& items) {
    const auto place = [](const Item& i) {   // over, above; under, below, beneath
        const std::size_t written = i.end - i.begin;
        return i.has(Class::placing) && ((i.is("over") && written <= 5) || (i.is("under") && (written == 5 || written == 7 || written == 10)));
    };
    const auto first = [](const Item& i) { return picks(i) && choice_of(i).value_or(BoxChoice{}).number == 1; };
    const auto how_it_is = [](const Item& i) { return (i.has(Class::combing) || i.is("full") || i.is("capped") || i.is("old")) && !i.counted; };
    const auto noun = [](const Item& i) { return (is_super(i) && !i.counted) || (i.has(Class::count) && i.word(Class::count)->number == 1); };
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        if (!place(items[i])) continue;
        std::size_t end = i + 1, said = 0;
        const auto beside = [&](std::size_t k) { return items[k].begin <= items[k - 1].end + 1; };   // not of `underneath, foundation`
        for (; end < items.size() && beside(end) && (items[end].idle() || first(items[end]) || how_it_is(items[end]) || noun(items[end])); ++end) said += !items[end].idle();
        const bool which = items[i + 1].idle() || first(items[i + 1]) || noun(items[end - 1]);
        if (said > 0 && which && (end == items.size() || items[end].what == What::stop)) absorb(items, i, i + 1, end - i - 1);
    }
}

void comb_after_super(Items& items) {
    for (std::size_t i = 0; i + 2 < items.size(); ++i) {
        const bool comb = picks(items[i]) && items[i + 1].has(Class::combing) && !items[i + 1].counted && is_super(items[i + 2]);
        if (!comb || !adds(items) || choice_of(items[i]).value_or(BoxChoice{}).by != BoxChoice::By::number) continue;
        items[i + 2].begin = items[i + 1].begin;
        items[i + 1].begin = items[i + 1].end = items[i + 2].end;
        std::swap(items[i + 1], items[i + 2]);
    }
}

void kinds_as_supers(Items& items) {
    const auto has = [&](std::string_view term) { return std::any_of(items.begin(), items.end(), [&](const Item& i) { return i.is(term); }); };
    const bool frames = has("frame") && (has("drawn") || has("capped"));   // medium 4 frames drawn
    const bool told = frames || std::any_of(items.begin(), items.end(), tells_state);
    const bool noun = std::any_of(items.begin(), items.end(), [](const Item& i) { return is_super(i) || i.what == What::box; });
    const bool adding = adds(items);
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (items[i].what != What::term || items[i].counted || !is_super_kind(items[i])) continue;
        const bool picked = i > 0 && picks(items[i - 1]) && !adding;   // both shallows, the top medium
        if ((told && !noun && !adding && (i == 0 || !is_count(items[i - 1]))) || picked) {
            const bool placed = std::any_of(items.begin(), items.end(), [](const Item& k) { return k.has(Class::placing); });   // second mediums on top: what they are
            if (const grammar::Word* w = table_word("super", Class::thing)) items[i].words = {w};
            if (!placed) items[i].box_kind.clear();
        }
        // a second medium put on: the kind says what it is, the ordinal only that there is one already
        const bool numbered = i > 0 && picks(items[i - 1]) && !items[i - 1].is("top") && !items[i - 1].is("bottom") && !items[i - 1].is("both") && !items[i - 1].is("all");
        if (adding && numbered && (i + 1 >= items.size() || !is_super(items[i + 1]))) items[i - 1].loose = true, items[i - 1].words = {}, items[i - 1].text.clear();
    }
}

void the_last_one(Items& items) {
    for (std::size_t i = 0; i + 1 < items.size(); ++i)
        if (items[i].what == What::unknown && items[i].text == "last" && (is_super(items[i + 1]) || is_super_kind(items[i + 1]))) pass_over(items[i]);
}

void deeps_as_brood(Items& items, std::string_view super_kind) {
    const auto noun = [](const Item& i) { return is_super(i) || i.is("brood box") || i.what == What::box || i.is("nuc"); };
    if (!adds(items) || std::any_of(items.begin(), items.end(), noun)) return;
    for (std::size_t i = 0; i < items.size(); ++i) {
        Item& deep = items[i];
        if (deep.what != What::term || deep.counted || deep.box_kind != "deep" || super_kind == "deep") continue;
        deep.words = {table_word("brood box", Class::thing)};
        deep.box_kind.clear();
        if (i > 0 && picks(items[i - 1])) items[i - 1].loose = true, items[i - 1].words.clear(), items[i - 1].text.clear();
    }
}

void boxes(Items& items) {
    const bool of_brood = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("brood") || i.is("egg") || i.is("brood in all stages"); });
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        if (!picks(items[i])) continue;
        const auto choice = choice_of(items[i]);
        if (!choice) continue;
        std::size_t next = i + 1;
        // all three supers: three of them
        if (choice->by == BoxChoice::By::all && is_count(items[next]) && next + 1 < items.size() && is_super(items[next + 1])) {
            items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
            continue;
        }
        // top 2 supers
        if (is_count(items[next]) && next + 1 < items.size() && (is_super(items[next + 1]) || is_super_kind(items[next + 1])) && choice->by == BoxChoice::By::top) {
            const auto n = static_cast<std::uint8_t>(items[next].value.amount / 1000);
            make_box(items[i], {BoxChoice::By::top_n, Role::super, n, {}});
            absorb(items, i, i + 1, 2);
            continue;
        }
        // top two off
        if (is_count(items[next]) && next + 1 < items.size() && (items[next + 1].is("off") || items[next + 1].is("taken off")) && choice->by == BoxChoice::By::top && items[next].value.amount < 10'000) {
            make_box(items[i], {BoxChoice::By::top_n, Role::super, static_cast<std::uint8_t>(items[next].value.amount / 1000), {}});
            absorb(items, i, i + 1, 1);
            continue;
        }
        // top and bottom supers
        if (next + 1 < items.size() && items[next].has(Class::link) && picks(items[next + 1])) {
            const auto second = choice_of(items[next + 1]);
            const bool noun = next + 2 < items.size() && (is_super(items[next + 2]) || items[next + 2].is("brood box"));
            if (second && second->by != choice->by) {
                const bool brood = noun && items[next + 2].is("brood box");
                make_box(items[i], *choice);
                items[i].box2 = *second;
                if (brood) items[i].box.role = items[i].box2.role = Role::brood;
                absorb(items, i, i + 1, noun ? 3 : 2);
            }
            continue;
        }
        while (next + 1 < items.size() && (items[next].has(Class::filler) || (items[next].has(Class::box_kind) && (is_super(items[next + 1]) )))) ++next;
        if (is_super(items[next]) && !(of_brood && !items[next].is("super"))) {
            make_box(items[i], *choice);
            for (std::size_t k = i + 1; k <= next; ++k)
                if (!items[k].box_kind.empty()) items[i].box_kind = items[k].box_kind;
            if (choice->by == BoxChoice::By::number) items[i].text = "ordinal";
            absorb(items, i, i + 1, next - i);
        } else if (items[next].is("brood box")) {
            items[next].begin = items[i].begin;
            items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
        }
    }
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        if (!is_super(items[i]) || items[i].counted) continue;
        const Item& next = items[i + 1];
        const bool followed = i + 2 < items.size() && (countable(items[i + 2]) || times_sign(items[i + 2]));
        const bool bare = is_count(next) && next.value.unit == Unit::piece && is_whole(next.value) && !followed;
        if (bare && next.value.amount > 0 && next.value.amount < 10'000) {
            const auto n = static_cast<std::uint8_t>(next.value.amount / 1000);
            make_box(items[i], {BoxChoice::By::number, Role::super, n, {}});
            absorb(items, i, i + 1, 1);
            // supers 1 and 2
            const bool second = i + 2 < items.size() && items[i + 1].is("and") && is_count(items[i + 2]) && items[i + 2].value.unit == Unit::piece && items[i + 2].value.amount < 10'000 &&
                                !(i + 3 < items.size() && countable(items[i + 3]));
            if (!second) continue;
            items[i].box2 = {BoxChoice::By::number, Role::super, static_cast<std::uint8_t>(items[i + 2].value.amount / 1000), {}};
            absorb(items, i, i + 1, 2);
        } else if (next.what == What::quoted) {
            make_box(items[i], {BoxChoice::By::label, Role::super, 0, next.text});
            absorb(items, i, i + 1, 1);
        }
    }
}

void boxes_without_noun(Items& items) {
    if (std::any_of(items.begin(), items.end(), [](const Item& i) { return is_super(i) || i.what == What::box || i.is("brood box") || i.is("queen cell") || i.is("cup") || i.is("brood"); })) return;
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        if (!picks(items[i])) continue;
        std::size_t next = i + 1;
        while (next + 1 < items.size() && items[next].has(Class::filler)) ++next;
        const bool frames = next + 1 < items.size() && is_count(items[next]) && items[next + 1].is("frame") && next > i + 1;
        const bool weighs = items[next].is("weighed") && std::any_of(items.begin(), items.end(), is_mass);   // first weighs 15 kg
        if (!tells_state(items[next]) && !frames && !weighs) continue;
        if (items[i].is("all") && items[next].is("capped")) continue;
        if (const auto choice = choice_of(items[i])) make_box(items[i], *choice);
    }
}

}  // namespace waxtab
