#include <catch2/catch.hpp>

#include <cmath>

#include "estimate/hindsight.hpp"
#include "estimate/judged.hpp"
#include "estimate/learn.hpp"
#include "kept_season.hpp"

using namespace waxtab;

namespace {

Day may(int day) { return date::sys_days{date::year{2026} / 5 / 1} + date::days{day - 1}; }

/// Forecasts of some invented seasons, whose ranges hold (coverage_test.cpp).
std::vector<Judged> forecasts_of(int seasons) {
    std::vector<Judged> out;
    for (int i = 0; i < seasons; ++i) {
        KeptSeason season(static_cast<std::uint64_t>(1000 + i), {});
        season.run(add_at(0.65));
        Pass::Options options;
        options.keep_visits = true;
        Pass pass(season.book.journal, season.book.history, learn(season.book.journal, season.book.history).schedule, options);
        pass.run();
        for (const Judged& j : judged_forecasts(pass, season.book.journal)) out.push_back(j);
    }
    return out;
}

/// The same with ranges `by` times as wide; what rounding does stays as it is.
std::vector<Judged> widened(std::vector<Judged> judged, double by) {
    for (Judged& j : judged) {
        const double rounding = std::sqrt(j.eye_sd * j.eye_sd - j.eye_alone * j.eye_alone);
        j.share.var *= by * by, j.eye_alone *= by;
        j.eye_sd = std::hypot(j.eye_alone, rounding);
    }
    return judged;
}

}  // namespace

TEST_CASE("hindsight shows 80 and 50 of a hundred where ranges hold, and says when they are too narrow or too wide", "[estimate][figures][hindsight]") {
    const std::vector<Judged> judged = forecasts_of(20);
    const HindsightRow row = sum_up(judged, 1, 60);
    CHECK(row.forecasts > 2000);
    INFO("80 %: " << row.inside_80 << ", 50 %: " << row.inside_50);
    CHECK(std::abs(row.inside_80 - 0.8) < 0.04);
    CHECK(std::abs(row.inside_50 - 0.5) < 0.05);
    CHECK(row.ranges == RangesHeld::well);
    const HindsightRow narrow = sum_up(widened(judged, 0.5), 1, 60), wide = sum_up(widened(judged, 2), 1, 60);
    CHECK(narrow.inside_80 < 0.7);
    CHECK(narrow.ranges == RangesHeld::narrow);
    CHECK(wide.inside_80 > 0.84);
    CHECK(wide.ranges == RangesHeld::wide);
    CHECK(sum_up({judged.begin(), judged.begin() + 10}, 1, 60).ranges == RangesHeld::open);
}

TEST_CASE("a rounded reading counts by the part of its step that lies in the range", "[estimate][hindsight]") {
    // A forecast of half full, give or take a tenth, looked at by an exact eye that writes in tens: normal distribution, any table.
    Judged j;
    j.share = {0.5, 0.01}, j.eye_alone = 1e-4, j.eye_sd = std::hypot(1e-4, 0.1 / std::sqrt(12.0));
    j.read = 0.5;
    CHECK(j.stretch().low == Approx(0.3085).margin(0.01));
    CHECK(j.stretch().high == Approx(0.6915).margin(0.01));
    CHECK(j.stretch().inside(0.8) == 1);
    CHECK(j.stretch().inside(0.5) == 1);
    // Written as 40 %: from 0.0668 to 0.3085 of the probability foretold.
    j.read = 0.4;
    CHECK(j.stretch().inside(0.5) == Approx((0.3085 - 0.25) / (0.3085 - 0.0668)).margin(0.02));
    CHECK(j.stretch().inside(0.8) == Approx((0.3085 - 0.1) / (0.3085 - 0.0668)).margin(0.02));
    j.read = 0, j.read_full = false;
    CHECK(j.stretch().low == 0);
    j.read = 1, j.read_full = true;
    CHECK(j.stretch().high == 1);
}

TEST_CASE("hindsight says when there is too little", "[estimate][hindsight]") {
    Notebook book;
    const HiveId h = book.hive("h1", book.yard("mill"));
    const BoxId s = book.super_on(h, may(1));
    book.full(s, may(8), 20);
    book.full(s, may(15), 40);
    const Hindsight look = hindsight(book.journal, book.stand_on(may(15)));
    CHECK(look.too_little);
    // One of the visit of 8 May, for 15 May; none for the day the super was put on, which was no visit with a reading.
    CHECK(look.all.forecasts == 2);
}

TEST_CASE("hindsight over a season: ranges, errors and the rules of thumb", "[estimate][hindsight]") {
    KeptSeason season(4711, {});
    season.run(add_at(0.65));
    const Hindsight look = hindsight(season.book.journal, season.book.history);
    CHECK_FALSE(look.too_little);
    REQUIRE(look.rows.size() >= 3);
    int sum = 0;
    for (const HindsightRow& row : look.rows) sum += row.forecasts;
    CHECK(sum == look.all.forecasts);
    CHECK(look.all.error_share < look.all.no_change_share);
    CHECK(look.all.error_with_line_share < look.all.line_share);
    CHECK(look.all.error_kg == Approx(16 * look.all.error_share).epsilon(0.02));
    CHECK(look.supers_put_on == season.put_on);
}

TEST_CASE("what is foretold does not change when more is written later", "[estimate][hindsight]") {
    KeptSeason season(12, {});
    season.run(add_at(0.65));
    const Day half = season.first + date::days{80};
    History until = season.book.history;
    until.on = half;
    // The history as it stood at half time: later stays, readings and takings had not been written.
    for (Box& box : until.boxes) {
        std::erase_if(box.stays, [&](const BoxStay& s) { return s.from && *s.from > half; });
        std::erase_if(box.sightings, [&](const BoxSighting& s) { return s.day > half; });
    }
    for (HiveHistory& hive : until.hives) {
        std::erase_if(hive.events, [&](const Event& e) { return e.day > half; });
        std::erase_if(hive.visits, [&](Day d) { return d > half; });
    }
    const Hindsight early = hindsight(season.book.journal, until), late = hindsight(season.book.journal, season.book.history);
    CHECK(early.all.forecasts > 20);
    CHECK(early.all.forecasts < late.all.forecasts);
    // The first row of cases is about the same visits: their chances stand as they stood.
    REQUIRE(early.ran_out.size() <= late.ran_out.size());
    for (std::size_t i = 0; i < early.ran_out.size(); ++i) CHECK(early.ran_out[i].chance == late.ran_out[i].chance);
}

TEST_CASE("hives that ran out of room and supers that stayed empty", "[estimate][hindsight]") {
    Notebook book;
    const YardId y = book.yard("mill");
    const HiveId a = book.hive("a", y), b = book.hive("b", y);
    const BoxId filled = book.super_on(a, may(1)), empty = book.super_on(b, may(1));
    book.full(filled, may(8), 80);
    book.full(empty, may(8), 0);
    const FactId full = book.full(filled, may(15), 100);
    book.full(empty, may(15), 0);
    book.full(empty, may(29), 0);
    const Hindsight look = hindsight(book.journal, book.stand_on(may(30)));
    REQUIRE(look.ran_out.size() == 1);
    CHECK(look.ran_out[0].hive == a);
    CHECK(look.ran_out[0].because == full);
    CHECK(look.ran_out[0].chance > 0.2);
    CHECK(look.ran_out_foretold == 1);
    REQUIRE(look.stayed_empty.size() == 1);
    CHECK(look.stayed_empty[0].box == empty);
    CHECK(look.supers_put_on == 2);
}

TEST_CASE("what was written down later does not enter earlier forecasts", "[estimate][hindsight]") {
    const std::string start = "year 2026\nyard mill\nhive h1 at mill: deep, excluder, super drawn9\n"
                              "2026-06-01 mill\nh1 super 1 20% full\n2026-06-08 mill\nh1 super 1 60% full\n"
                              "2026-06-20 mill\nh1 super 1 90% full\n";
    const Day on = may(1) + date::days{60};
    // Put on when the second reading was taken, written down at the third.
    const Journal without = read_journal({{"a.hive", start}}, on);
    const Journal late = read_journal({{"a.hive", start + "on 8 June h1 +super drawn9\n"}}, on);
    const Journal at_once = read_journal({{"a.hive", start + "2026-06-08 mill\nh1 +super drawn9\n"}}, on);
    const Hindsight a = hindsight(without, on), b = hindsight(late, on), c = hindsight(at_once, on);
    REQUIRE(a.all.forecasts == 2);
    REQUIRE(b.all.forecasts == 2);
    CHECK(b.all.error_share == a.all.error_share);
    CHECK(c.all.error_share != a.all.error_share);
}
