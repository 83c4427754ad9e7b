#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
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
    const auto of_honey = [](const Item& i) { return (i.is("shed") && !i.is("stores")) || i.is("jar") || i.is("honey") || i.is("in"); };   // in shed: 2 supers
    return !head.empty() && head.size() <= 4 && std::none_of(head.begin(), head.end(), of_honey) && (std::all_of(head.begin(), head.end(), fits) || head.front().what == What::box) && std::any_of(head.begin(), head.end(), [&](const Item& i) { return i.what == What::box || tells(i); });
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

/// `Queens: 1, 4 and 5 seen, 2 to 4 not seen`: where hives are called by number, a number or a list of them at the start
/// of what is told. True when there is one.
bool LineReader::hives_by_number(Items& items, std::size_t from) const {
    std::int64_t last_called = 0;   // the highest number a hive is called by; one not set up yet may be the next
    for (const auto& hive : journal_.hives)
        if (!hive.name.empty() && hive.name.size() < 5 && hive.name.find_first_not_of("0123456789") == std::string::npos) last_called = std::max<std::int64_t>(last_called, std::stoi(hive.name));
    const auto called = [&](std::size_t i) {
        const bool whole = i < items.size() && bare_number(items[i]) && is_whole(items[i].value) && items[i].text != "word" && items[i].value.amount > 0;
        return whole && last_called > 0 && items[i].value.amount / 1000 <= last_called + 5;
    };
    const auto at = [](std::size_t i) { return static_cast<std::ptrdiff_t>(i); };
    bool any = false;
    for (std::size_t i = from; i < items.size(); ++i) {
        if (!called(i) || (i != from && items[i - 1].what != What::stop)) continue;
        Item list;
        list.what = What::hives, list.begin = items[i].begin;
        std::size_t end = i;
        for (; called(end); end += 2) {
            const bool range = end + 1 < items.size() && (surface(items[end + 1]) == "to" || surface(items[end + 1]) == "thru") && called(end + 2);
            const std::int64_t first = items[end].value.amount / 1000, last = range ? items[end + 2].value.amount / 1000 : first;
            for (std::int64_t n = first; n <= last && last - first < 200; ++n)
                if (const HiveId hive = lexicon_.hive(std::to_string(n)); hive != no_hive) list.hives.push_back(hive);
                else list.unknown_hives.push_back(std::to_string(n));
            if (range) end += 2;
            if (end + 1 >= items.size() || !parts(items[end + 1]) || !called(end + 2)) break;
        }
        const std::size_t told = end + 1;
        if (told >= items.size() || parts(items[told]) || (any || from == 0 ? countable(items[told]) : may_count(items, end))) continue;
        list.end = items[end].end;
        items.erase(items.begin() + at(i) + 1, items.begin() + at(told));
        items[i] = std::move(list);
        any = true;
    }
    return any;
}

/// The words told of one hive with the topic, in the order in which they read; empty when in none.
Items LineReader::told_with_topic(const Items& topic, const Items& told) {
    const Items head = said_before(topic, told.front().begin);
    const Items after = said_before(topic, told.back().end);
    Items within = joined({told.front()}, said_before(topic, told.front().end));   // both supers off 24 kg
    within.insert(within.end(), told.begin() + 1, told.end());
    std::array<Items, 3> ways = {joined(head, told), joined(told, after), within};
    if (told.size() == 1 && told.front().has(Class::negation) && topic.front().is("queen")) {   // Queens: 1 seen, 2 not
        Item seen = told.front();
        seen.words = {table_word("seen", Class::state)}, seen.begin = seen.end;
        ways[0].push_back(seen);
    }
    const bool two_told = std::any_of(told.begin(), told.end(), [](const Item& i) { return i.is("and") || i.is("with"); });   // seen and laying
    const Items* longer = nullptr;   // reads, but as more than one fact
    for (const Items& way : ways) {
        const std::optional<Solution> read = only_way(way);
        if (read && read->candidates.size() == 1) return way;
        if (read && two_told && !longer) longer = &way;
    }
    return longer ? *longer : Items{};
}

/// `Seams: h1 8, h3 7`: reads the sentence hive by hive, each with the topic. True when that reads at every hive.
bool LineReader::topic_of_each(Items& items) {
    const auto colon = std::find_if(items.begin(), items.end(), [](const Item& i) { return stop(i, ":"); });
    if (colon != items.end()) {
        const auto amount = [](const Item& i) { return i.what == What::value && (i.value.dimension == Dimension::volume || i.value.dimension == Dimension::mass); };
        const auto given = [](const Item& i) { return i.is("added") || i.is("fed"); };
        const bool feed = colon == items.begin() + 1 && std::none_of(colon, items.end(), given) && (surface(items.front()) == "feed" || surface(items.front()) == "feeding");
        if (feed && std::any_of(colon, items.end(), amount)) return keep_asked(span(items), "fed already, or still to do?", "write `fed`, or `todo feed`"), true;
        static constexpr std::array<std::string_view, 8> says_nothing = {"fill", "level", "levels", "status", "check", "count", "counts", "score"};
        topic_.assign(items.begin(), colon);
        if (topic_.size() == 1 && topic_.front().is("cell")) topic_.front().words = {table_word("queen cell", Class::thing)};
        std::erase_if(topic_, [&](const Item& i) { return std::find(says_nothing.begin(), says_nothing.end(), surface(i)) != says_nothing.end(); });
    }
    const bool of_one = headed_ && !head_.several();
    if (colon == items.end() && !topic_.empty() && !of_one) hives_by_number(items, 0);
    const bool goes_on = colon == items.end() && !items.empty() && is_hives(items.front());   // Queens: h1 seen. h2 not seen
    if (of_one && colon != items.end() && topic_.size() == 1 && topic_.front().is("queen cell")) {   // h3 cells: 4 open, 2 sealed
        const auto end = std::find_if(colon + 1, items.end(), [](const Item& i) { return i.what == What::stop; });
        const Items way = colon + 1 == end ? Items{} : told_with_topic(topic_, {colon + 1, end});
        if (!way.empty()) items = joined(way, {end, items.end()});
    }
    if (of_one || (colon == items.end() && !goes_on) || !is_topic(topic_)) return topic_.clear(), false;
    const std::size_t from = goes_on ? 0 : static_cast<std::size_t>(colon - items.begin()) + 1;
    if (from >= items.size()) return false;
    const bool by_number = !goes_on && hives_by_number(items, from);
    if (!goes_on && !by_number && !headed_) numbers_after_topic(items, from);
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
        if (first.empty()) return false;
        const bool of_its_own = std::any_of(first.begin(), first.end(), [](const Item& i) { return i.has(Class::thing) || i.has(Class::done); }) && only_way(first);
        Items way = of_its_own ? first : told_with_topic(topic_, first);
        if (way.empty() && !by_number && !only_way(first)) return false;
        if (way.empty()) way = first;
        said.push_back(joined(joined({group.front()}, way), rest));
    }
    const Items topic = topic_;
    for (Items& one : said) topic_.clear(), sentence(std::move(one));
    topic_ = topic;
    return true;
}

}  // namespace waxtab
