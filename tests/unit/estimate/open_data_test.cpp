// Forecasts on real hives. Daily weights of 12 hives in an Arizona yard (Holst & Meikle, Insects 2018, 9(4), 176,
// doi:10.3390/insects9040176) and of one Danish hive (EFSA MUST-B field data, Zenodo record 4953762), turned into
// supers of 16 kg looked at every 7, 10 and 14 days by an eye with 8 % error that writes in tens.
#include <catch2/catch.hpp>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>

#include "estimate/learn.hpp"
#include "forecast_score.hpp"
#include "kept_season.hpp"

using namespace waxtab;

namespace {

using Gains = std::map<Day, double>;
using Yard = std::map<std::string, Gains>;

std::vector<std::vector<std::string>> rows_of(const std::string& path) {
    std::vector<std::vector<std::string>> rows;
    std::ifstream in(path);
    std::string line, cell;
    std::getline(in, line);
    while (std::getline(in, line)) {
        std::stringstream s(line);
        rows.emplace_back();
        while (std::getline(s, cell, ',')) rows.back().push_back(cell);
    }
    return rows;
}

/// Daily gains. Days the authors leave out, and steps of more than 3 kg (boxes, feed), count as no gain.
Yard gains_of(const std::string& weights, const std::string& notes, std::optional<Day> until) {
    std::set<std::pair<std::string, Day>> out;
    if (!notes.empty())
        for (const auto& row : rows_of(notes)) out.emplace(row[2], *day_from_iso(row[0]));
    std::map<std::string, std::map<Day, double>> kg;
    for (const auto& row : rows_of(weights)) kg[row[1]][*day_from_iso(row[0])] = std::strtod(row[2].c_str(), nullptr);
    Yard yard;
    for (const auto& [hive, days] : kg)
        for (const auto& [day, weight] : days) {
            if (until && day > *until) continue;
            const auto next = days.find(day + date::days{1});
            const double gain = next == days.end() ? 0 : next->second - weight;
            const bool left_out = std::abs(gain) > 3 || out.count({hive, day}) || out.count({"all", day});
            yard[hive][day] = left_out ? 0 : gain;
        }
    return yard;
}

struct Hive { HiveId id = no_hive; std::vector<season::Super> supers; const Gains* gains = nullptr; };

constexpr double full_kg = 16;

void live(Hive& hive, double gain) {
    double held = 0;
    for (const season::Super& s : hive.supers) held += s.kg;
    if (gain < 0)
        for (season::Super& s : hive.supers) s.kg = std::max(0.0, s.kg + (held > 0 ? gain * s.kg / held : 0));
    while (gain > 1e-9) {
        double pulls = 0, left = 0;
        for (const season::Super& s : hive.supers) pulls += s.kg < full_kg - 1e-9 ? s.pull : 0;
        if (pulls <= 0) return;
        for (season::Super& s : hive.supers) {
            if (s.kg >= full_kg - 1e-9) continue;
            const double part = gain * s.pull / pulls, fits = std::min(part, full_kg - s.kg);
            s.kg += fits, left += part - fits;
        }
        gain = left;
    }
}

void look(Notebook& book, Hive& hive, Day day, season::Dice& dice) {
    double sum = 0;
    for (const season::Super& s : hive.supers) {
        const int percent = season::eye(dice, s.kg / full_kg);
        book.full(s.tag, day, percent);
        sum += percent;
    }
    if (sum / static_cast<double>(hive.supers.size()) < 65 || hive.supers.size() >= 6) return;
    season::Super more;
    more.tag = book.super_on(hive.id, day), more.pull = dice.between(0.5, 1.5);
    hive.supers.push_back(more);
}

/// Forecasts that held, less eight in ten of all, by fortnight: what they share makes them fewer than are counted.
class Fortnights {
public:
    void add(const std::string& yard, Day read, bool held) {
        sums_[{yard, static_cast<int>(read.time_since_epoch().count()) / 14}].push_back(held ? 1 : 0);
        ++n_, held_ += held ? 1 : 0;
    }

    /// How many independent forecasts would make the share that held as uncertain as it is: the variance of its mean from sums
    /// over all forecasts and hives of a fortnight and yard, and their correlation with the next fortnight
    /// (Newey & West, Econometrica 55, 1987, one lag).
    double independent() const {
        const double share = held_ / n_;
        const auto excess = [&](const std::vector<int>& x) {
            double sum = 0;
            for (int v : x) sum += v - share;
            return sum;
        };
        double var = 0;
        for (const auto& [key, x] : sums_) {
            var += excess(x) * excess(x);
            const auto next = sums_.find({key.first, key.second + 1});
            if (next != sums_.end()) var += excess(x) * excess(next->second);
        }
        return share * (1 - share) * n_ * n_ / var;
    }

private:
    std::map<std::pair<std::string, int>, std::vector<int>> sums_;
    double n_ = 0, held_ = 0;
};

/// In one pass over the hives: looking again at the same days with another throw of the eye adds nothing about bees.
double independent_in(const std::vector<Fortnights>& passes) {
    double sum = 0;
    for (const Fortnights& pass : passes) sum += pass.independent();
    return sum / static_cast<double>(passes.size());
}

/// The yard looked at every `gap` days from day `start` on, by one throw of the eye's error.
void judge(const Yard& yard, int gap, int start, std::uint64_t seed, ForecastScore& score, season::Dice& pit, Fortnights& fortnights) {
    season::Dice dice(seed);
    Notebook book(full_kg);
    const YardId at = book.yard("yard");
    std::vector<Hive> hives;
    Day first = yard.begin()->second.begin()->first, last = first;
    for (const auto& [name, gains] : yard) {
        Hive h{book.hive(name, at), {}, &gains};
        season::Super s;
        s.kg = 6, s.tag = book.super_from_before(h.id);
        h.supers.push_back(s);
        hives.push_back(h);
        last = std::max(last, gains.rbegin()->first);
    }
    for (Day day = first; day <= last; day += date::days{1})
        for (Hive& h : hives) {
            if (days_between(first, day) % gap == start % gap) look(book, h, day, dice);
            const auto gain = h.gains->find(day);
            live(h, gain == h.gains->end() ? 0 : gain->second);
        }
    book.stand_on(last);
    Pass::Options options;
    options.keep_visits = true;
    Pass pass(book.journal, book.history, learn(book.journal, book.history).schedule, options);
    pass.run();
    for (const Judged& j : judged_forecasts(pass, book.journal)) {
        const double before = score.in_80;
        score.add(j, pit);
        fortnights.add(yard.begin()->first, j.made + date::days{j.horizon()}, score.in_80 > before);
    }
}

std::optional<std::string> folder() {
    const char* set = std::getenv("WAXTAB_OPEN_DATA");
    if (set == nullptr || !std::ifstream(std::string(set) + "/usda_santarita_2014_daily.csv")) return std::nullopt;
    return std::string(set);
}

/// Half the width of the range in which 99 % of observed shares of `n` independent forecasts fall.
double binomial_99(double n) { return 2.5758 * std::sqrt(0.8 * 0.2 / n); }

void show(const std::string& name, const ForecastScore& s, double independent) {
    std::printf("%-24s %6d forecasts worth %.0f independent, 80 %% range %.1f %%, error %.3f of a super, %.2f of the line's, %.2f of no change, "
                "interval score %.3f (line %.3f, no change %.3f)\n",
                name.c_str(), s.n, independent, 100 * s.cover_80(), s.error / s.n, s.to_line(), s.to_no_change(), s.interval_mean(),
                ForecastScore::best_constant(s.off_line), ForecastScore::best_constant(s.off_no_change));
}

void run(int throws, bool print) {
    const auto data = folder();
    if (!data) {
        WARN("skipped: open hive weights (WAXTAB_OPEN_DATA is not set or has no files)");
        return;
    }
    const std::vector<std::pair<std::string, Yard>> yards{
        {"Santa Rita", gains_of(*data + "/usda_santarita_2014_daily.csv", *data + "/usda_santarita_2014_daynotes.csv", {})},
        {"Flakkebjerg", gains_of(*data + "/efsa_mustb_flakkebjerg_daily.csv", "", day_from_iso("2019-10-15"))}};
    ForecastScore all;
    std::vector<Fortnights> passes(static_cast<std::size_t>(throws));
    season::Dice pit(5);
    for (const auto& named : yards)
        for (const int gap : {7, 10, 14}) {
            ForecastScore here;
            std::vector<Fortnights> apart(passes.size());
            for (int i = 0; i < throws; ++i) {
                const auto judge_into = [&](ForecastScore& score, std::vector<Fortnights>& by_pass) {
                    judge(named.second, gap, 3 * i, static_cast<std::uint64_t>(100 * gap + i), score, pit, by_pass[static_cast<std::size_t>(i)]);
                };
                judge_into(here, apart);
                judge_into(all, passes);
            }
            if (print) show(named.first + ", " + std::to_string(gap) + " days", here, independent_in(apart));
        }
    const double independent = independent_in(passes);
    if (print) show("pooled", all, independent);
    CHECK(all.to_line() <= 0.85);
    CHECK(all.to_no_change() <= 1.05);
    CHECK(all.interval_mean() < ForecastScore::best_constant(all.off_line));
    CHECK(all.interval_mean() < ForecastScore::best_constant(all.off_no_change));
    INFO("80 % range held in " << all.cover_80() << " of " << all.n << " forecasts worth " << independent << " independent ones");
    CHECK(independent > 2 * (31 + 21 + 15));
    CHECK(independent < all.n / throws);
    CHECK(std::abs(all.cover_80() - 0.8) <= binomial_99(independent));
}

}  // namespace

TEST_CASE("forecasts on open hive weights", "[estimate][open]") { run(2, false); }

TEST_CASE("the table of open hive weights", "[.slow][open]") { run(10, true); }
