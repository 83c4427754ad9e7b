#include "ledger/yields.hpp"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <tuple>

#include "ledger/books.hpp"
#include "ledger/colonies.hpp"

namespace waxtab {

namespace {

int year_of(Day d) { return static_cast<int>(date::year_month_day{d}.year()); }

std::vector<Harvest> within(const Ledger& ledger, Day since, Day until) {
    std::vector<Harvest> out;
    for (const Harvest& h : ledger.harvests)
        if (h.hive != no_hive && h.day >= since && h.day <= until) out.push_back(h);
    return out;
}

/// Where most of the honey came off; the first such yard on a tie.
YardId main_yard(const std::vector<Harvest>& parts) {
    std::map<YardId, Mass> by_yard;
    for (const Harvest& h : parts) by_yard[h.yard] += h.honey.value;
    YardId best = no_yard;
    Mass most{-1};
    for (const auto& [yard, mass] : by_yard)
        if (mass > most) best = yard, most = mass;
    return best;
}

std::vector<SeasonYield> by_hive(const std::vector<Harvest>& harvests) {
    std::map<std::pair<int, HiveId>, SeasonYield> rows;
    for (const Harvest& h : harvests) {
        SeasonYield& row = rows[{year_of(h.day), h.hive}];
        row.honey = row.parts.empty() ? h.honey : row.honey + h.honey;
        row.hive = h.hive;
        row.year = year_of(h.day);
        row.supers += h.supers;
        row.frames += h.frames;
        row.parts.push_back(h);
    }
    std::vector<SeasonYield> out;
    for (auto& [key, row] : rows) {
        std::stable_sort(row.parts.begin(), row.parts.end(), [](const Harvest& a, const Harvest& b) { return a.day < b.day; });
        row.yard = main_yard(row.parts);
        out.push_back(std::move(row));
    }
    return out;
}

/// Days of the season of a year as the settings have it.
struct Season { Day from{}, to{}; };

Season season_of(const Settings& s, int year) {
    const auto day = [&](int month, int d) {
        return Day{date::year{year} / date::month{static_cast<unsigned>(month)} / date::day{static_cast<unsigned>(d)}};
    };
    return {day(s.season_from_month, s.season_from_day), day(s.season_to_month, s.season_to_day)};
}

bool stood_at(const HiveHistory& h, YardId yard, const Season& season) {
    if ((h.born && *h.born > season.to) || (h.ended && *h.ended < season.from)) return false;
    if (yard == no_yard || h.yards.empty()) return true;
    const Day from = h.born ? std::max(*h.born, season.from) : season.from;
    const Day to = h.ended ? std::min(*h.ended, season.to) : season.to;
    if (h.yard_on(from) == yard || h.yard_on(to) == yard) return true;
    return std::any_of(h.yards.begin(), h.yards.end(), [&](const auto& moved) {
        return moved.second == yard && moved.first >= from && moved.first <= to;
    });
}

/// Hives with a harvest are living ones even when they stood there outside the season's dates.
std::vector<HiveId> living(const History& history, YardId yard, const Season& season, const std::vector<HiveId>& harvested) {
    std::vector<HiveId> out;
    for (const HiveHistory& h : history.hives) {
        const bool counted = std::find(harvested.begin(), harvested.end(), h.hive) != harvested.end();
        if (counted || stood_at(h, yard, season)) out.push_back(h.hive);
    }
    return out;
}

Mass divided(Mass total, std::size_t by) {
    if (by == 0) return {};
    return Mass::grams(total.whole_grams() / static_cast<std::int64_t>(by));
}

void spread(YieldRow& row, std::vector<Mass> each) {
    if (each.empty()) return;
    std::sort(each.begin(), each.end());
    const std::size_t n = each.size(), mid = n / 2;
    row.least = each.front();
    row.most = each.back();
    row.median = n % 2 == 1 ? each[mid] : Mass{(each[mid - 1].ng + each[mid].ng) / 2};
}

/// Of one lot: what these parts gave. When all of the lot is known hive by hive, its own range bounds them too: they
/// are what the others did not give.
MassRange part_of_lot(const Ledger& ledger, const std::string& name, const std::vector<const Harvest*>& parts) {
    MassRange in = exactly({}), all = exactly({});
    for (const Harvest* h : parts) in = in + h->honey;
    for (const Harvest& h : ledger.harvests)
        if (h.lot == name) all = all + h.honey;
    const Lot* lot = name.empty() ? nullptr : ledger.lot(name);
    if (!lot || all.value != lot->harvested.value) return in;
    const Mass others_low = all.low - in.low, others_high = all.high - in.high;
    in.low = std::max(in.low, lot->harvested.low - others_high);
    in.high = std::min(in.high, lot->harvested.high - others_low);
    in.weighed = in.weighed || (in.low == in.value && in.high == in.value && lot->harvested.weighed);
    return in;
}

MassRange sum_of(const Ledger& ledger, const std::vector<const Harvest*>& parts) {
    std::map<std::string, std::vector<const Harvest*>> by_lot;
    for (const Harvest* h : parts) by_lot[h->lot].push_back(h);
    MassRange sum = exactly({});
    for (const auto& [name, of_lot] : by_lot) sum = sum + part_of_lot(ledger, name, of_lot);
    return sum;
}

YieldRow row_of(const Journal& journal, const History& history, const Ledger& ledger, YardId yard, int year,
                const std::vector<const Harvest*>& parts) {
    YieldRow row;
    row.yard = yard;
    row.year = year;
    row.honey = sum_of(ledger, parts);
    std::map<HiveId, Mass> each;
    for (const Harvest* h : parts) {
        row.supers += h->supers;
        row.frames += h->frames;
        each[h->hive] += h->honey.value;
    }
    std::vector<Mass> values;
    for (const auto& [hive, mass] : each) {
        row.harvested.push_back(hive);
        values.push_back(mass);
    }
    row.living = living(history, yard, season_of(journal.settings, year), row.harvested);
    row.per_harvested = divided(row.honey.value, row.harvested.size());
    row.per_living = divided(row.honey.value, row.living.size());
    spread(row, std::move(values));
    return row;
}

std::vector<YieldRow> rows_by(const Journal& journal, const History& history, const Ledger& ledger, const std::vector<Harvest>& harvests,
                              bool by_yard) {
    std::map<std::pair<int, YardId>, std::vector<const Harvest*>> groups;
    for (const Harvest& h : harvests) groups[{year_of(h.day), by_yard ? h.yard : no_yard}].push_back(&h);
    std::vector<YieldRow> rows;
    for (const auto& [key, parts] : groups) rows.push_back(row_of(journal, history, ledger, key.second, key.first, parts));
    return rows;
}

}  // namespace

SeasonYield at_yard(const SeasonYield& whole, YardId yard) {
    SeasonYield out;
    out.hive = whole.hive;
    out.year = whole.year;
    out.yard = yard;
    out.honey = exactly({});
    for (const Harvest& h : whole.parts) {
        if (h.yard != yard) continue;
        out.honey = out.parts.empty() ? h.honey : out.honey + h.honey;
        out.supers += h.supers;
        out.frames += h.frames;
        out.parts.push_back(h);
    }
    return out;
}

Yields yields(const Journal& journal, const History& history, const Ledger& ledger, Day since, Day until) {
    const std::vector<Harvest> harvests = within(ledger, since, until);
    Yields y;
    y.hives = by_hive(harvests);
    y.yards = rows_by(journal, history, ledger, harvests, true);
    y.seasons = rows_by(journal, history, ledger, harvests, false);
    y.colonies = colonies_of(history, y.hives);
    return y;
}

Yields yields(const Journal& journal, const History& history, const Ledger& ledger) {
    return yields(journal, history, ledger, Day::min(), ledger.on);
}

}  // namespace waxtab
