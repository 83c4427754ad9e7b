#include <catch2/catch.hpp>

#include <random>

#include "honey_book.hpp"
#include "ledger/records.hpp"
#include "ledger/trace.hpp"
#include "ledger/yields.hpp"

using namespace waxtab;
using waxtab::testing::HoneyBook;

namespace {

/// Honey years of keepers who do everything, often wrongly: more out than in, lots that do not exist, sizes
/// left out. The books must close all the same.
class Season {
public:
    explicit Season(std::uint32_t seed) : random_(seed) {
        const YardId mill = book.yard("mill"), home = book.yard("home");
        const int n = pick(1, 8);
        for (int i = 0; i < n; ++i) book.hive("h" + std::to_string(i), chance(50) ? mill : home);
    }

    void run() {
        const int days = pick(10, 60);
        for (int i = 0; i < days; ++i) {
            day_ += date::days{pick(0, 4)};
            step();
        }
    }

    HoneyBook book;
    Day last() const { return day_; }

private:
    int pick(int low, int high) { return std::uniform_int_distribution<int>{low, high}(random_); }
    bool chance(int percents) { return pick(1, 100) <= percents; }
    std::string today() const { return iso(day_); }
    std::string lot() {
        constexpr const char* names[] = {"", "A", "b", "C", "D", "nowhere"};
        return names[chance(10) ? 5 : pick(0, 4)];
    }
    std::string grams() {
        constexpr const char* sizes[] = {"454", "227", "500", "340.194", ""};
        return sizes[chance(8) ? 4 : pick(0, 3)];
    }
    /// An amount in one of several units, so that sums are not of round grams.
    Measure amount() {
        const Unit unit = chance(40) ? Unit::pound : chance(20) ? Unit::litre : chance(10) ? Unit::us_gallon : Unit::kilogram;
        return measure(std::to_string(pick(1, 60)) + "." + std::to_string(pick(0, 99)), unit).value();
    }
    HiveId hive() { return pick(0, static_cast<int>(book.journal.hives.size()) - 1); }

    void step() {
        const int what = pick(1, 100);
        if (what <= 25) super_off();
        else if (what <= 45) extract();
        else if (what <= 60) book.jars(today(), Kind::jars, pick(0, 60), grams(), lot());
        else if (what <= 78) out();
        else extra(what);
    }

    void super_off() {
        const double kg = pick(0, 180) / 10.0;
        const Comb comb = chance(15) ? Comb::sections : chance(10) ? Comb::cut_comb : Comb::drawn;
        if (chance(30)) {
            book.super_off_net(today(), hive(), kg);
            return;
        }
        Taking& t = book.super_off(today(), hive(), {kg * pick(0, 100) / 100.0, kg, kg * pick(100, 180) / 100.0}, comb);
        t.harvest = chance(90);
        if (chance(10)) t.frames = pick(1, 9), t.box = no_box;
    }

    void extract() {
        Fact& f = book.honey(today(), chance(85) ? Kind::extracted : Kind::combs_packed, lot());
        if (chance(75)) f.value = amount();
        if (f.kind == Kind::combs_packed || chance(20)) f.count = pick(1, 30);
        if (chance(40)) f.hives = {hive()};
        if (chance(20)) f.hives.push_back(hive());
        if (chance(30)) f.yard = pick(0, 1);
    }

    void out() {
        constexpr std::string_view how[] = {"sold", "given", "own use", "spoiled"};
        const Kind kind = chance(75) ? Kind::gone_out : chance(60) ? Kind::come_back : Kind::stocktake;
        const bool jars = chance(70);
        Fact& f = book.jars(today(), kind, jars ? pick(0, 40) : -1, jars ? grams() : "", lot());
        if (!jars) f.value = amount();
        if (kind == Kind::gone_out) f.detail = how[pick(0, 3)];
        if (chance(10)) f.manner = "comb";
        f.text = chance(50) ? "shop" : "";
    }

    void extra(int what) {
        if (what <= 84) {
            Fact& f = book.honey(today(), Kind::blended, lot());
            f.lots = {lot(), lot()};
            if (chance(30)) f.value = amount();
        } else if (what <= 88) {
            book.honey(today(), Kind::moisture, lot()).value = percent(pick(140, 240) / 10.0);
        } else if (what <= 92) {
            book.honey(today(), Kind::drained, lot()).value = amount();
        } else if (what <= 96) {
            const bool jars = chance(50);
            Fact& f = book.jars(today(), chance(50) ? Kind::opening_stock : Kind::bought_in, jars ? pick(1, 30) : -1, jars ? grams() : "", lot());
            if (!jars) f.value = amount();
        } else if (what <= 98) {
            book.honey(today(), Kind::fermenting, lot());
        } else {
            book.honey(today(), Kind::wax).value = amount();
        }
    }

    std::mt19937 random_;
    Day day_ = day_from_iso("2026-04-01").value();
};

Mass sum_of_yields(const Yields& y) {
    Mass sum{};
    for (const SeasonYield& h : y.hives) sum += h.honey.value;
    return sum;
}

}  // namespace

TEST_CASE("the books of any season close to the last nanogram, and to the gram as shown", "[ledger]") {
    for (std::uint32_t seed = 1; seed <= 400; ++seed) {
        INFO("season " << seed);
        Season season{seed};
        season.run();
        const Ledger l = season.book.account(iso(season.last()));
        for (const Lot& lot : l.lots) {
            std::int64_t grams = 0;
            for (const LotShare& s : lot.shares) grams += s.honey.value.whole_grams();
            // Pounds and gallons put several sub-gram remainders into one lot, one for each extraction.
            CHECK(std::abs(grams - lot.weight.value.whole_grams()) <= static_cast<std::int64_t>(lot.because.size()));
            const Trace t = trace(season.book.journal, season.book.history, l, lot.name);
            CHECK(t.found);
        }
        const Yields y = yields(season.book.journal, season.book.history, l);
        Mass hives{};
        for (const HiveYield& h : l.hives) hives += h.honey.value;
        CHECK(sum_of_yields(y) == hives);
        Mass yards{};
        for (const YieldRow& r : y.yards) yards += r.honey.value;
        CHECK(yards == hives);
        records(season.book.journal, season.book.history, l);
    }
}

TEST_CASE("what comes later never moves the shares of lots already extracted", "[ledger]") {
    for (std::uint32_t seed = 1; seed <= 60; ++seed) {
        INFO("season " << seed);
        Season season{seed};
        season.run();
        const Ledger end = season.book.account(iso(season.last()));
        // Stand on an earlier day: only the honey facts and takings of by then.
        HoneyBook early = season.book;
        const Day then = day_from_iso("2026-04-01").value() + (season.last() - day_from_iso("2026-04-01").value()) / 2;
        std::erase_if(early.history.honey_facts, [&](FactId f) { return early.journal.facts[f].happened > then; });
        std::erase_if(early.history.takings, [&](const Taking& t) { return t.day > then; });
        early.estimates.takings.resize(early.history.takings.size());
        const Ledger before = early.account(iso(then));
        for (const Harvest& h : before.harvests) {
            if (h.lot.empty()) continue;
            const bool same = std::any_of(end.harvests.begin(), end.harvests.end(), [&](const Harvest& e) {
                return e.lot == h.lot && e.hive == h.hive && e.because == h.because && e.honey.value == h.honey.value &&
                       e.honey.low == h.honey.low && e.honey.high == h.honey.high;
            });
            CHECK(same);
        }
    }
}
