#include "handbook/flow.hpp"

#include <vector>

#include <catch2/catch.hpp>

using namespace waxtab::handbook;

static FlowState state(std::vector<double> days) { return flow_state(days); }

// Working rule from the Bad Schwartau scale hive (HOneyBee Online Studies, 2017-2019).
TEST_CASE("flow on and off by daily weights", "[handbook][flow]") {
    CHECK(state({0.5, 0.5, 0.5}) == FlowState::on);
    CHECK(state({-1, -1, 0.6, 1.2, 0.5}) == FlowState::on);
    CHECK(state({0.5, 0.49, 0.5}) == FlowState::unclear);
    CHECK(state({2.0, 2.0}) == FlowState::unclear);
    CHECK(state({}) == FlowState::unclear);
    CHECK(state({-0.1, -0.2, 0.3, -0.1, -0.2, 0.1, 0.1}) == FlowState::off);
    CHECK(state({0, 0, 0, 0, 0, 0, 0}) == FlowState::off);
    CHECK(state({-0.2, -0.2, -0.2, -0.2, -0.2, -0.2}) == FlowState::unclear);
    CHECK(state({0.1, 0.2, 0.1, 0.3, 0.1, 0.2, 0.1}) == FlowState::unclear);
    // Only the last week counts.
    CHECK(state({9, 9, 9, -0.1, -0.1, -0.1, -0.1, -0.1, -0.1, -0.1}) == FlowState::off);
}

// Nectar 20-60 % sugar, honey at 18 % water; J. Exp. Biol. 212:429 (2009): 0.75 g evaporated from 20 to 82 %.
TEST_CASE("honey from nectar", "[handbook][flow]") {
    const double sugar[] = {0.20, 0.25, 0.30, 0.40, 0.50, 0.60};
    const double honey[] = {0.244, 0.305, 0.366, 0.488, 0.610, 0.732};
    for (int i = 0; i < 6; ++i) {
        INFO(sugar[i]);
        CHECK(*honey_per_kg_nectar(sugar[i], 0.18) == Approx(honey[i]).margin(0.0005));
    }
    CHECK(1 - *honey_per_kg_nectar(0.20, 0.18) == Approx(0.75).margin(0.01));
    CHECK_FALSE(honey_per_kg_nectar(0.0, 0.18));
    CHECK_FALSE(honey_per_kg_nectar(1.2, 0.18));
    CHECK_FALSE(honey_per_kg_nectar(0.9, 0.18));
    CHECK_FALSE(honey_per_kg_nectar(0.3, 1.0));
    // D. Caron (2021): 50-80 % water in nectar, so honey needs a half to a third of the room.
    CHECK(1 / *honey_per_kg_nectar(0.35, 0.18) > nectar_room_factor.low);
    CHECK(1 / *honey_per_kg_nectar(0.35, 0.18) < nectar_room_factor.high);
}

// Flakkebjerg (Zenodo 4953762): 30 % of the day's rise gone by morning.
TEST_CASE("overnight loss", "[handbook][flow]") {
    const Range kept = kept_overnight(2.0);
    CHECK(kept.typical == Approx(1.4));
    CHECK(kept.low < kept.typical);
    CHECK(kept.high == Approx(1.5));
}

// Bad Schwartau: July 2017 -0.18, August 2018 -0.10; May 2018 +1.18 kg a day; Warner Nature Center 12 lb a day.
TEST_CASE("plausible daily gains by word", "[handbook][flow]") {
    CHECK(daily_gain("none")->low <= -0.18);
    CHECK(daily_gain("none")->high >= -0.10);
    CHECK(daily_gain("none")->high < 0);
    CHECK(daily_gain("medium")->low < 0.94);
    CHECK(daily_gain("medium")->high > 1.18);
    CHECK(daily_gain("heavy")->high == 5.0);
    CHECK(daily_gain("over") == daily_gain("none"));
    CHECK_FALSE(daily_gain("torrential"));
    CHECK(daily_gain("light")->typical < daily_gain("medium")->typical);
    CHECK(daily_gain("medium")->typical < daily_gain("heavy")->typical);
    CHECK(12 * kg_per_lb > exceptional_kg_per_day);
    CHECK(12 * kg_per_lb < suspect_kg_per_day);
    CHECK(40 * kg_per_lb / 8 < good_flow_kg_per_day.high);
}
