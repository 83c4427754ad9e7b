#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include "facts/clause_words.hpp"
#include "facts/small_words.hpp"

// A topic said once, and what it was at each hive after it: `Queen cells: h3 4 open, h4 none`.
namespace waxtab {

using grammar::Class;
using What = Item::What;
using Items = std::vector<Item>;

namespace {

/// Words of the trade that tell what the hives after them are told of. A wish is none: `Feed: h1 2 L` may be still to do.
bool is_topic(const Items& head) {
    const auto fits = [](const Item& i) { return i.what == What::term && !i.has(Class::plan) && !i.has(Class::condition) && !i.has(Class::doubt) && !i.has(Class::order) && !i.has(Class::negation); };
    const auto tells = [](const Item& i) { return i.has(Class::thing) || i.has(Class::method) || i.has(Class::state) || i.has(Class::done); };
    return !head.empty() && head.size() <= 4 && (std::all_of(head.begin(), head.end(), fits) || head.front().what == What::box) && std::any_of(head.begin(), head.end(), [&](const Item& i) { return i.what == What::box || tells(i); });
}

/// The words at no width of their own, at `place`: said before.
Items said_before(Items words, std::uint32_t place) {
    for (Item& i : words) i.begin = i.end = place;
    return words;
}

Items joined(Items first, const Items& second) {
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

bool parts(const Item& i) { return i.what == What::stop || i.is("and"); }

}  // namespace

/// `Strong: 1, 3 and 6`: bare numbers, two or more, that are hives one and all.
void LineReader::numbers_after_topic(Items& items, std::size_t from) const {
    Item list;
    list.what = What::hives;
    for (std::size_t i = from; i < items.size(); ++i) {
        if (parts(items[i])) continue;
        const HiveId hive = hive_numbered(items[i]);
        if (hive == no_hive) return;
        list.hives.push_back(hive);
    }
    if (list.hives.size() < 2) return;
    list.begin = items[from].begin, list.end = items.back().end;
    items.erase(items.begin() + static_cast<std::ptrdiff_t>(from), items.end());
    items.push_back(std::move(list));
}

/// The words told of one hive with the topic, in the order in which they read; empty when in none.
Items LineReader::told_with_topic(const Items& topic, const Items& told) {
    const Items head = said_before(topic, told.front().begin);
    const Items after = said_before(topic, told.back().end);
    Items within = joined({told.front()}, said_before(topic, told.front().end));   // both supers off 24 kg
    within.insert(within.end(), told.begin() + 1, told.end());
    const std::array<Items, 3> ways = {joined(head, told), joined(told, after), within};
    for (const Items& way : ways)
        if (reads_as_one(way)) return way;
    for (const Items& way : ways)
        if (only_way(way)) return way;
    return {};
}

/// `Seams: h1 8, h3 7`: reads the sentence hive by hive, each with the topic. True when that reads at every hive.
bool LineReader::topic_of_each(Items& items) {
    const auto colon = std::find_if(items.begin(), items.end(), [](const Item& i) { return stop(i, ":"); });
    if (colon != items.end()) {
        const auto amount = [](const Item& i) { return i.what == What::value && (i.value.dimension == Dimension::volume || i.value.dimension == Dimension::mass); };
        const bool feed = colon == items.begin() + 1 && (surface(items.front()) == "feed" || surface(items.front()) == "feeding");
        if (feed && std::any_of(colon, items.end(), amount)) return keep_asked(span(items), "fed already, or still to do?", "write `fed`, or `todo feed`"), true;
        static constexpr std::array<std::string_view, 8> says_nothing = {"fill", "level", "levels", "status", "check", "count", "counts", "score"};
        topic_.assign(items.begin(), colon);
        std::erase_if(topic_, [&](const Item& i) { return std::find(says_nothing.begin(), says_nothing.end(), surface(i)) != says_nothing.end(); });
    }
    const bool goes_on = colon == items.end() && !items.empty() && is_hives(items.front());   // Queens: h1 seen. h2 not seen
    if (headed_ || (colon == items.end() && !goes_on) || !is_topic(topic_)) return topic_.clear(), false;
    const std::size_t from = goes_on ? 0 : static_cast<std::size_t>(colon - items.begin()) + 1;
    if (from >= items.size()) return false;
    if (!goes_on) numbers_after_topic(items, from);
    std::vector<Items> groups;
    for (std::size_t i = from; i < items.size(); ++i) {
        const bool begins = items[i].what == What::hives && items[i].role == Item::Role::none && (i == from || parts(items[i - 1]));
        if (begins) groups.emplace_back();
        if (groups.empty()) return false;
        groups.back().push_back(items[i]);
    }
    std::vector<Items> said;
    for (Items& group : groups) {
        while (group.size() > 1 && parts(group.back())) group.pop_back();
        const Items told = part_of(group, 1, group.size());
        const auto end = std::find_if(told.begin(), told.end(), [](const Item& i) { return i.what == What::stop || i.is("but"); });
        const Items first(told.begin(), end), rest(end, told.end());
        if (first.empty() || (&group == &groups.back() && !rest.empty() && !goes_on)) return false;
        const bool of_its_own = std::any_of(first.begin(), first.end(), [](const Item& i) { return i.has(Class::thing) || i.has(Class::done); }) && only_way(first);
        Items way = of_its_own ? first : told_with_topic(topic_, first);
        if (way.empty() && !only_way(first)) return false;
        if (way.empty()) way = first;
        said.push_back(joined(joined({group.front()}, way), rest));
    }
    const Items topic = topic_;
    for (Items& one : said) topic_.clear(), sentence(std::move(one));
    topic_ = topic;
    return true;
}

}  // namespace waxtab
