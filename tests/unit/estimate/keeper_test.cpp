#include <catch2/catch.hpp>

#include <cmath>

#include "estimate/estimate.hpp"
#include "estimate/keeper.hpp"
#include "kept_season.hpp"

using namespace waxtab;

namespace {

/// Mean ratio of estimated to true kilograms of later supers, by a keeper whose full is `factor` of the handbook's,
/// after `weighed` extraction weights.
double later_ratio(double factor, int weighed, std::uint64_t seed) {
    season::Dice dice(seed);
    Notebook book(16);
    const YardId yard = book.yard("mill");
    Day day = date::sys_days{date::year{2026} / 6 / 1};
    double ratio = 0;
    constexpr int later = 20;
    for (int i = 0; i < weighed + later; ++i) {
        const HiveId hive = book.hive("h" + std::to_string(i), yard);
        const BoxId box = book.super_on(hive, day);
        const double share = dice.between(0.5, 1.0);
        book.full(box, day + date::days{20}, season::eye(dice, share));
        const double kg = 16 * factor * share * (1 + 0.05 * dice.normal());
        const std::size_t taking = book.take_off(box, day + date::days{20}, i < weighed ? kg : -1);
        if (i < weighed) continue;
        const Estimates e = estimate(book.journal, book.stand_on(day + date::days{20}));
        ratio += e.takings[taking].kg.value / kg / later;
    }
    return ratio;
}

}  // namespace

TEST_CASE("ten weights teach what a keeper's full holds", "[estimate][figures][keeper]") {
    double all = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const double ratio = later_ratio(0.8, 10, seed);
        CHECK(ratio == Approx(1).margin(0.12));
        all += ratio / 12;
    }
    INFO("estimated to true after ten weights: " << all);
    CHECK(all == Approx(1).margin(0.05));
    CHECK(later_ratio(0.8, 0, 3) > 1.15);
}

TEST_CASE("a lean eye is straightened", "[estimate][keeper]") {
    // Calls 50 % what is really 40 % of a full super, and so on along a bow.
    Keeper keeper(0.12);
    for (int i = 0; i < 30; ++i) {
        const double eye = 0.3 + 0.02 * i, really = eye - 0.1 * 4 * eye * (1 - eye);
        keeper.learn({{{16, {keeper.straightened(eye), 0.001}}}, {16 * really, 0.04}});
    }
    CHECK(keeper.straightened(0.5) == Approx(0.41).margin(0.02));
    CHECK(keeper.full() == Approx(1).margin(0.05));
    CHECK(keeper.by_eye(keeper.straightened(0.6)) == Approx(0.6).margin(0.01));
    CHECK(keeper.calibration().words.find("30 weighings") != std::string::npos);
}

TEST_CASE("a lot weighed together teaches too", "[estimate][keeper]") {
    Keeper one(0.12), lot(0.12);
    const Weighing::Part part{16, {0.9, 0.004}};
    for (int i = 0; i < 4; ++i) one.learn({{part}, {0.9 * 0.8 * 16, 0.04}});
    lot.learn({{part, part, part, part}, {4 * 0.9 * 0.8 * 16, 0.16}});
    CHECK(lot.full() == Approx(one.full()).margin(0.02));
    CHECK(lot.weighings() == 4);
}
