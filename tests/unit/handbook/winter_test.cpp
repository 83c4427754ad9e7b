#include "handbook/winter.hpp"

#include <catch2/catch.hpp>

using namespace waxtab::handbook;

// honeybeesuite.com: south 40 lb, middle 60 lb, north 80-90 lb.
TEST_CASE("winter stores by climate", "[handbook][winter]") {
    CHECK(winter_stores("mild")->kg.typical == Approx(40 * kg_per_lb).margin(0.5));
    CHECK(winter_stores("middle")->kg.high == Approx(60 * kg_per_lb).margin(0.5));
    CHECK(winter_stores("cold")->kg.typical == Approx(80 * kg_per_lb).margin(0.5));
    CHECK(winter_stores("cold")->kg.high == Approx(90 * kg_per_lb).margin(0.5));
    CHECK_FALSE(winter_stores("tropical"));
    CHECK_FALSE(winter_stores(""));
    // BBKA News 216 (2013) 20 kg and the National Bee Unit's 25 kg lie within the middle row.
    CHECK(winter_stores("middle")->kg.low <= 20);
    CHECK(winter_stores("middle")->kg.high >= 25);
    double last = 0;
    for (const auto& row : winter_stores_table) {
        CHECK(row.kg.low < row.kg.typical);
        CHECK(row.kg.typical < row.kg.high);
        CHECK(row.kg.typical > last);
        last = row.kg.typical;
    }
}

// Ontario (farms.com): single 70 lb, double 100 lb; Canadian Association of Professional Apiculturists: 95 and
// 135 lb; West Plains BA: 130 lb.
TEST_CASE("gross weights and named amounts", "[handbook][winter]") {
    const double lb[] = {70, 100, 95, 135, 130};
    for (std::size_t i = 0; i < gross_weights.size(); ++i) {
        INFO(gross_weights[i].hive);
        CHECK(gross_weights[i].kg == Approx(lb[i] * kg_per_lb).margin(0.2));
    }
    for (const auto& named : stores_named) {
        INFO(named.where);
        CHECK(named.low_kg <= named.high_kg);
        CHECK(named.low_kg >= 10);
        CHECK(named.high_kg <= 41);
        CHECK_FALSE(named.source.empty());
    }
}

// End of September to 15 October: two weeks apart.
TEST_CASE("feeding is finished between late September and mid-October", "[handbook][winter]") {
    for (const auto& row : feeding_ends) {
        const int day_of_autumn = (row.month - 9) * 30 + row.day;
        CHECK(day_of_autumn >= 30);
        CHECK(day_of_autumn <= 45);
    }
}

// After Curth (Hohenheim 1981): a litre of 1:1, 3:2 and 2:1 syrup gives 0.56, 0.86 and 1.00 kg of stores.
TEST_CASE("stores from syrup", "[handbook][winter]") {
    CHECK(stores_from_syrup(1, Syrup::thin) == Approx(0.56).margin(0.005));
    CHECK(stores_from_syrup(1, Syrup::three_to_two) == Approx(0.86).margin(0.005));
    CHECK(stores_from_syrup(1, Syrup::thick) == Approx(1.00).margin(0.005));
    CHECK(stores_from_sugar(10, Syrup::thin) == Approx(9.0));
    CHECK(sugar_for_stores(11.2, Syrup::thick) == Approx(10.0));
    CHECK(sugar_for_stores(-3, Syrup::thick) == 0.0);
    // Sugar and water by volume: 1 kg sugar takes up 0.63 l, so 1:1 is 1 kg in about 1.6 l.
    CHECK(syrup(Syrup::thin).sugar_kg_per_litre == Approx(1 / 1.63).epsilon(0.03));
    CHECK(syrup(Syrup::thick).sugar_kg_per_litre == Approx(2 / 2.26).epsilon(0.03));
}

// HOneyBee Online Studies 2017-2019: 31 g a day, November to February; BV Alb-Lautertal 40-50 g a day.
TEST_CASE("winter use", "[handbook][winter]") {
    CHECK(winter_use_kg_per_month.low == Approx(0.031 * 30).margin(0.05));
    CHECK(winter_use_kg_per_month.high == Approx(0.050 * 30).margin(0.05));
    CHECK(brooding_use_kg_per_month.typical == 3.0);
    CHECK(brooding_use_kg_per_month.high == Approx(30.4 / 7).margin(0.1));
}
