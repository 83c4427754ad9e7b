#include "report/style.hpp"

#include <algorithm>

namespace waxtab {

namespace {

template <class T>
bool holds(const std::vector<T>& list, T value) {
    return std::find(list.begin(), list.end(), value) != list.end();
}

bool names_listed_hive(const Selection& selection, const Fact& fact) {
    if (selection.hives.empty()) return true;
    if (holds(selection.hives, fact.hive) || holds(selection.hives, fact.other)) return true;
    return std::any_of(fact.hives.begin(), fact.hives.end(), [&](HiveId id) { return holds(selection.hives, id); });
}

}  // namespace

bool Selection::has_hive(HiveId hive) const { return hives.empty() || holds(hives, hive); }
bool Selection::has_yard(YardId yard) const { return yards.empty() || holds(yards, yard); }

bool lists(const Selection& selection, const History& history, HiveId hive, Day day) {
    return selection.has_hive(hive) &&
           (selection.yards.empty() || selection.has_yard(history.hives[static_cast<std::size_t>(hive)].yard_on(day)));
}

bool lists(const Selection& selection, const Fact& fact) {
    return selection.has_day(fact.happened) && selection.has_yard(fact.yard) && names_listed_hive(selection, fact);
}

std::string heading(std::string_view text, const Style& style) {
    return style.colour ? "\x1b[1m" + std::string(text) + "\x1b[0m\n" : std::string(text) + '\n';
}

}  // namespace waxtab
