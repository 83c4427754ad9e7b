#include "facts/small_words.hpp"
#include "facts/slots.hpp"

#include <algorithm>
#include <array>

namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

using Items = std::vector<Item>;

bool drops_before_hives(const Item& i) {
    return i.is("on") || i.is("at") || i.is("in") || i.is("off") || i.is("of") || i.is("from") || i.is("to");
}

/// `oxalic acid trickled on h3`: given at once, so that nothing of it stays in or on.
bool given_at_once(const Items& items) {
    return std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("oxalic acid"); }) && std::none_of(items.begin(), items.end(), is_strip);
}

/// The clause tells what was seen, so that `on h3` says where and not that something was put on.
bool looked_at(const Items& items) {
    return std::any_of(items.begin(), items.end(), [](const Item& i) {
        return (i.what == What::value && i.value.dimension == Dimension::share) || (i.what == What::term && (i.is("seen") || i.is("laying") || i.is("virgin") || i.has(Class::amount) || i.has(Class::method) || i.has(Class::pest) || i.has(Class::disease)));
    });
}

}  // namespace

bool goes_on_or_in(const Item& i) {
    static constexpr std::array<std::string_view, 13> things = {"nths", "super", "box", "brood box", "excluder", "escape board", "feeder", "strip", "pad", "tray", "patty", "upper entrance", "queen"};
    return i.what == What::box || i.what == What::unknown || !i.box_kind.empty() || i.has(Class::combing) || i.has(Class::food) || i.has(Class::substance) ||
           std::any_of(things.begin(), things.end(), [&](std::string_view t) { return i.is(t); });
}

namespace {

bool one_more(const Item& article) { return article.end - article.begin <= 2; }   // a, an

void rename(Item& item, std::string_view term, Class klass) {
    item.words.clear();
    if (const grammar::Word* w = table_word(term, klass)) item.words.push_back(w);
}

}  // namespace

const grammar::Word* table_word(std::string_view term, Class klass) {
    const auto found = std::find_if(std::begin(grammar::words), std::end(grammar::words),
                                    [&](const grammar::Word& w) { return w.term == term && w.klass == klass; });
    return found == std::end(grammar::words) ? nullptr : &*found;
}

void absorb(Items& items, std::size_t into, std::size_t from, std::size_t n) {
    for (std::size_t k = from; k < from + n; ++k) {
        items[into].begin = std::min(items[into].begin, items[k].begin);
        items[into].end = std::max(items[into].end, items[k].end);
    }
    items.erase(items.begin() + static_cast<std::ptrdiff_t>(from), items.begin() + static_cast<std::ptrdiff_t>(from + n));
}

void pass_over(Item& item) {
    item.what = What::term;
    item.words.clear();
    item.loose = item.aside = true;
}

bool counted_in_frames(const Item& i) {
    static constexpr std::array<std::string_view, 9> terms = {"brood", "bees", "egg", "stores", "larva", "brood in all stages", "sealed brood", "honey", "drawn"};
    return std::any_of(terms.begin(), terms.end(), [&](std::string_view t) { return i.is(t); });
}

bool is_super(const Item& item) { return item.what == What::term && (item.is("super") || item.is("box")); }

bool is_strip(const Item& item) { return item.is("strip") || item.is("pad") || item.is("tray"); }

void by_the_way(Items& items) {
    const auto small = [](const Item& i) { return i.what == What::term && (i.is("on") || i.is("off") || i.is("in") || i.is("out") || i.is("at") || i.is("to") || i.is("over") || i.is("across")); };
    const bool verb = std::any_of(items.begin(), items.end(), [&](const Item& i) { return i.what == What::sign || (i.has(Class::done) && !small(i) && !i.is("weighed")); });
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (!small(items[i])) continue;
        const bool before_time = i + 1 < items.size() && items[i + 1].what == What::value && (items[i + 1].value.dimension == Dimension::duration || items[i + 1].value.dimension == Dimension::temperature);
        const bool done = items[i].has(Class::done);
        if (before_time || (verb && done)) items[i].loose = true;
    }
}

void roles(Items& items) {
    const auto has_done = [&](std::size_t but) {
        for (std::size_t k = 0; k < items.size(); ++k)
            if (k != but && (items[k].has(Class::done) || items[k].what == What::sign)) return true;
        return false;
    };
    // into new hive 11: what is said by the way goes first
    for (std::size_t i = 1; i + 1 < items.size(); ++i)
        if (items[i].has(Class::filler) && items[i].words.size() == 1 && items[i + 1].what == What::hives && items[i - 1].has(Class::preposition))
            items.erase(items.begin() + static_cast<std::ptrdiff_t>(i--));
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        // into a nuc, calling it hive 7
        std::size_t after = i + 1;
        while (after + 1 < items.size() && items[after].has(Class::filler)) ++after;
        if (items[i].is("into") && (items[after].is("into") || items[after].is("calling it"))) {
            items.erase(items.begin() + static_cast<std::ptrdiff_t>(i), items.begin() + static_cast<std::ptrdiff_t>(after));
            if (i + 1 >= items.size()) break;
        }
        // to the orchard
        const bool article = items[i + 1].has(Class::filler) && items[i + 1].end - items[i + 1].begin == 3 && i + 2 < items.size() && items[i + 2].what == What::yard;
        if (article && (items[i].is("to") || items[i].is("from"))) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 1);
        Item& next = items[i + 1];
        if (next.what == What::lot && (items[i].is("from") || items[i].is("to") || items[i].is("in") || items[i].is("calling it"))) {
            absorb(items, i + 1, i, 1);
            continue;
        }
        if (next.what == What::lot && items[i].is("into")) {
            next.role = Item::Role::into;
            absorb(items, i + 1, i, 1);
            continue;
        }
        const bool place = next.what == What::hives || next.what == What::yard || next.what == What::new_name;
        if (!place) continue;
        if (items[i].is("from") && items[i].has(Class::done) && !has_done(i)) {   // strips out of h3
            std::erase_if(items[i].words, [](const grammar::Word* w) { return w->klass != Class::done; });
            continue;
        }
        if (items[i].is("from")) next.role = Item::Role::from;
        else if (items[i].is("into") || items[i].is("calling it")) next.role = Item::Role::into;
        else if (items[i].is("to")) next.role = Item::Role::to;
        else if (items[i].is("with")) next.role = Item::Role::with;
        else if (items[i].is("new") && next.what == What::hives) next.role = Item::Role::into;
        else {
            const bool nothing_put = (items[i].is("in") || items[i].is("on")) && std::none_of(items.begin(), items.end(), goes_on_or_in);
            if ((items[i].is("on") || items[i].is("in")) && given_at_once(items)) rename(items[i], "at", Class::preposition);
            const bool seen_there = (looked_at(items) || std::any_of(items.begin(), items.end(), [](const Item& k) { return k.is("clipped") || k.is("marked"); })) && !items[i].is("off");   // full super off h1: it came off
            if (drops_before_hives(items[i]) && (items[i].is("at") || has_done(i) || seen_there || nothing_put)) items[i].loose = true;
            continue;
        }
        next.begin = items[i].begin;
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
    }
}

void pairs(Items& items) {
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        std::size_t next = i + 1;
        while (next + 1 < items.size() && items[next].has(Class::filler) && items[next].words.size() == 1) ++next;
        const auto join = [&](std::string_view term) {
            rename(items[i], term, Class::state);
            absorb(items, i, i + 1, next - i);
        };
        if (items[i].is("to") && items[next].is("shed")) join("to shed");
        else if (items[i].is("from") && items[next].is("shed")) join("from shed");
        else if (items[i].is("over") && items[i].has(Class::placing) && next == i + 2 && one_more(items[i + 1]) && items[next].is("excluder") && !items[next].counted) {
            rename(items[i], "under", Class::placing);   // super on above an excluder: both put on
            rename(items[i + 1], "and", Class::link);
        }
        else if (items[i].is("over") && items[i].has(Class::placing) && items[next].is("excluder") && !items[next].counted) {
            rename(items[i], "under", Class::placing);
            absorb(items, i, i + 1, next - i);
        }
        else if (items[i].has(Class::negation) && items[next].is("excluder") && !items[next].counted) join("no excluder");
        else if (items[i].is("under") && (items[next].is("both") || items[next].is("all")) && next + 1 == items.size()) {   // clearer board under both
            join("under box");
            items[i].box = {BoxChoice::By::all, Role::super, 0, {}};
        }
        else if (items[i].is("under") && (items[next].what == What::box || is_super(items[next]) || is_super_kind(items[next]))) {
            const BoxChoice below = items[next].what == What::box ? items[next].box : BoxChoice{BoxChoice::By::sole, Role::super, 0, {}};
            join("under box");
            items[i].box = below;
        }
    }
}

}  // namespace waxtab
