#include "ledger/colonies.hpp"

#include <map>
#include <numeric>
#include <set>

#include "ledger/books.hpp"

namespace waxtab {

namespace {

bool in_year(const std::optional<Day>& day, int year) {
    return day && static_cast<int>(date::year_month_day{*day}.year()) == year;
}

/// Which hive stands for the group a hive is in: the first in journal order.
class Groups {
public:
    explicit Groups(std::size_t n) : first_(n) { std::iota(first_.begin(), first_.end(), std::size_t{0}); }
    std::size_t of(std::size_t i) const {
        while (first_[i] != i) i = first_[i];
        return i;
    }
    void join(std::size_t a, std::size_t b) {
        const std::size_t x = of(a), y = of(b);
        first_[std::max(x, y)] = std::min(x, y);
    }

private:
    std::vector<std::size_t> first_;
};

Groups groups_in(const History& history, int year) {
    Groups groups{history.hives.size()};
    const auto known = [&](HiveId h) { return h >= 0 && static_cast<std::size_t>(h) < history.hives.size(); };
    for (std::size_t i = 0; i < history.hives.size(); ++i) {
        const HiveHistory& h = history.hives[i];
        if (known(h.mother) && in_year(h.born, year)) groups.join(i, static_cast<std::size_t>(h.mother));
        if (known(h.united_into) && in_year(h.ended, year)) groups.join(i, static_cast<std::size_t>(h.united_into));
    }
    return groups;
}

std::vector<HiveId> members(const History& history, const Groups& groups, std::size_t first) {
    std::vector<HiveId> out;
    for (std::size_t i = 0; i < history.hives.size(); ++i)
        if (groups.of(i) == first) out.push_back(static_cast<HiveId>(i));
    return out;
}

}  // namespace

std::vector<ColonyYield> colonies_of(const History& history, const std::vector<SeasonYield>& hives) {
    std::set<int> years;
    for (const SeasonYield& h : hives) years.insert(h.year);
    std::vector<ColonyYield> out;
    for (const int year : years) {
        const Groups groups = groups_in(history, year);
        std::map<std::size_t, ColonyYield> rows;
        for (const SeasonYield& h : hives) {
            if (h.year != year || static_cast<std::size_t>(h.hive) >= history.hives.size()) continue;
            const auto [at, fresh] = rows.try_emplace(groups.of(static_cast<std::size_t>(h.hive)));
            at->second.honey = fresh ? h.honey : at->second.honey + h.honey;
        }
        for (auto& [first, row] : rows) {
            row.year = year;
            row.hives = members(history, groups, first);
            if (row.hives.size() > 1) out.push_back(std::move(row));
        }
    }
    return out;
}

}  // namespace waxtab
