#include "report/yields.hpp"

#include <map>
#include <tuple>

namespace waxtab {

namespace {

using Key = std::tuple<int, YardId, HiveId>;

Key key_of(const History& history, HiveId hive, Day day) {
    const int season = static_cast<int>(date::year_month_day{day}.year());
    const YardId yard = hive < 0 ? no_yard : history.hives[static_cast<std::size_t>(hive)].yard_on(day);
    return {season, yard, hive};
}

void count_boxes(Yield& yield, const Taking& taking) {
    yield.supers += taking.box != no_box;
    yield.frames += taking.frames;
}

/// The row of a key; a new one starts as weighed, holding nothing.
Yield& row(std::map<Key, Yield>& rows, const Key& key) {
    const auto [it, is_new] = rows.try_emplace(key);
    Yield& yield = it->second;
    if (is_new) {
        std::tie(yield.season, yield.yard, yield.hive) = key;
        yield.honey.weighed = true;
    }
    return yield;
}

}  // namespace

MassRange sum_of(const MassRange& a, const MassRange& b) {
    return {a.low + b.low, a.value + b.value, a.high + b.high, a.weighed && b.weighed};
}

MassRange honey_of(const History& history, const Estimates& estimates, std::size_t taking) {
    const Taking& t = history.takings[taking];
    if (t.net) return {*t.net, *t.net, *t.net, true};
    if (taking >= estimates.takings.size()) return {};
    const Range& kg = estimates.takings[taking].kg;
    return {Mass::from_kilograms(kg.low), Mass::from_kilograms(kg.value), Mass::from_kilograms(kg.high), false};
}

std::vector<Yield> yields_of(const History& history, const Estimates& estimates, const Ledger& ledger) {
    std::map<Key, Yield> rows;
    for (const Lot& lot : ledger.lots) {
        for (const LotShare& share : lot.shares) {
            const Day day = share.takings.empty() ? lot.extracted : history.takings[share.takings.back()].day;
            Yield& yield = row(rows, key_of(history, share.hive, day));
            yield.honey = sum_of(yield.honey, share.honey);
            for (const std::size_t taking : share.takings) count_boxes(yield, history.takings[taking]);
        }
    }
    for (const std::size_t taking : ledger.waiting) {
        const Taking& t = history.takings[taking];
        Yield& yield = row(rows, key_of(history, t.hive, t.day));
        yield.honey = sum_of(yield.honey, honey_of(history, estimates, taking));
        count_boxes(yield, t);
    }
    std::vector<Yield> yields;
    for (const auto& [key, yield] : rows) yields.push_back(yield);
    return yields;
}

bool lists(const Selection& selection, const Yield& yield) {
    if (!selection.has_hive(yield.hive) || !selection.has_yard(yield.yard)) return false;
    const auto year = [](const std::optional<Day>& day, int none) {
        return day ? static_cast<int>(date::year_month_day{*day}.year()) : none;
    };
    return year(selection.since, yield.season) <= yield.season && yield.season <= year(selection.until, yield.season);
}

}  // namespace waxtab
