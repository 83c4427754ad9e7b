#include "handbook/density.hpp"

#include <cmath>

#include <catch2/catch.hpp>

using namespace waxtab::handbook;

// "Density of Honey", Bee Culture: a gallon of honey weighs between 11.6343 and 12.057138 lb; the article
// takes water at 8.34 lb.
TEST_CASE("gallon limits of the trade", "[handbook][density]") {
    CHECK(*specific_gravity(21.0) * 8.34 == Approx(11.6343).margin(1e-6));
    CHECK(*specific_gravity(13.0) * 8.34 == Approx(12.057138).margin(1e-6));
}

// Same article: five US gallons are taken as 60 lb.
TEST_CASE("twelve pounds to the US gallon", "[handbook][density]") {
    for (double water = 13.0; water <= 18.6; water += 0.2) {
        INFO(water);
        CHECK(std::abs(*lb_per_us_gallon(water) - 12.0) < 0.02 * 12.0);
    }
    CHECK(*lb_per_us_gallon(17.0) == Approx(11.860).margin(0.0015));
    CHECK(lb_per_us_gallon_per_kg_per_l == Approx(8.34540).margin(1e-5));
}

// 1.423 at 17 %: Sweeteners, table 5.7; 1.417 at 18 %: a beekeepers' page (beeclubpellas, 2009).
TEST_CASE("specific gravity at printed water contents", "[handbook][density]") {
    CHECK(*specific_gravity(17.0) == Approx(1.423).margin(0.001));
    CHECK(*specific_gravity(18.0) == Approx(1.417).margin(0.0005));
    CHECK(*specific_gravity(20.0) == Approx(1.402).margin(0.001));
    CHECK(*specific_gravity(17.5) == Approx(1.4204).margin(1e-9));
    CHECK(*density_kg_per_l(18.0) == Approx(1.4146).margin(0.0001));
}

TEST_CASE("wetter honey is lighter, faster and faster", "[handbook][density]") {
    double last_slope = 0;
    for (std::size_t i = 1; i < gravity_table.size(); ++i) {
        const double slope = (gravity_table[i].specific_gravity - gravity_table[i - 1].specific_gravity) /
                             (gravity_table[i].water_percent - gravity_table[i - 1].water_percent);
        INFO(gravity_table[i].water_percent);
        CHECK(slope < -0.005);
        CHECK(slope > -0.008);
        CHECK(slope <= last_slope + 1e-9);
        last_slope = slope;
    }
}

TEST_CASE("density only inside the table", "[handbook][density]") {
    CHECK_FALSE(density_kg_per_l(12.9));
    CHECK_FALSE(density_kg_per_l(21.1));
    CHECK_FALSE(density_kg_per_l(std::nan("")));
    CHECK_FALSE(honey_kg(-1.0, 17.0));
    CHECK_FALSE(honey_kg(1.0, 30.0));
}

TEST_CASE("litres to kilograms with a range", "[handbook][density]") {
    CHECK(honey_kg(10).low == Approx(10 * *density_kg_per_l(21.0)).epsilon(0.0001));
    CHECK(honey_kg(10).typical == Approx(10 * *density_kg_per_l(17.2)).epsilon(0.0002));
    CHECK(honey_kg(10).high == Approx(10 * *density_kg_per_l(13.0)).epsilon(0.0001));
    const auto known = honey_kg(3.785411784, 17.0);
    REQUIRE(known);
    CHECK(known->typical / kg_per_lb == Approx(11.860).margin(0.0015));
    CHECK(known->low < known->typical);
    CHECK(known->high / known->low == Approx(1.01).margin(0.001));
}
