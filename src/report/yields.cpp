#include "report/yields.hpp"

#include <map>
#include <tuple>

namespace waxtab {

namespace {

using Key = std::tuple<int, YardId, HiveId>;

Key key_of(const Harvest& harvest) {
    return {static_cast<int>(date::year_month_day{harvest.day}.year()), harvest.yard, harvest.hive};
}

bool is_listed(const Selection& selection, const Harvest& harvest) {
    return selection.has_hive(harvest.hive) && selection.has_yard(harvest.yard) && selection.has_day(harvest.day);
}

void add(Yield& yield, const Harvest& harvest) {
    yield.honey = sum_of(yield.honey, harvest.honey);
    yield.supers += harvest.supers;
    yield.frames += harvest.frames;
    yield.because.insert(yield.because.end(), harvest.because.begin(), harvest.because.end());
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

std::vector<Yield> yields_of(const Ledger& ledger, const Selection& selection) {
    std::map<Key, Yield> rows;
    for (const Harvest& harvest : ledger.harvests) {
        if (!is_listed(selection, harvest)) continue;
        const auto [it, is_new] = rows.try_emplace(key_of(harvest));
        // A sum of nothing is exact: it becomes an estimate with the first estimated part.
        if (is_new) it->second.honey.weighed = true;
        add(it->second, harvest);
    }
    std::vector<Yield> yields;
    for (auto& [key, yield] : rows) {
        std::tie(yield.season, yield.yard, yield.hive) = key;
        yields.push_back(std::move(yield));
    }
    return yields;
}

}  // namespace waxtab
