#include "handbook/moisture.hpp"

#include <cmath>
#include <limits>
#include <vector>

#include <catch2/catch.hpp>

using namespace waxtab::handbook;

// Rows as printed in S. Bogdanov, Book of Honey ch. 4 (2011), after Chataway.
TEST_CASE("refractive index table gives the printed rows", "[handbook][moisture]") {
    const double printed[][2] = {{1.5044, 13.0}, {1.4992, 15.0}, {1.4951, 16.6}, {1.4940, 17.0}, {1.4915, 18.0},
                                 {1.4900, 18.6}, {1.4865, 20.0}, {1.4840, 21.0}, {1.4790, 23.0}, {1.4740, 25.0}};
    for (const auto& row : printed) {
        INFO(row[0]);
        REQUIRE(water_percent(row[0]));
        CHECK(*water_percent(row[0]) == Approx(row[1]).margin(1e-9));
    }
}

TEST_CASE("refractive index table runs evenly", "[handbook][moisture]") {
    REQUIRE(index_table.size() == 61);
    for (std::size_t i = 1; i < index_table.size(); ++i) {
        INFO(i);
        CHECK(index_table[i].water_percent - index_table[i - 1].water_percent == Approx(0.2).margin(1e-9));
        const double step = index_table[i - 1].index - index_table[i].index;
        CHECK(step > 0.00049);
        CHECK(step < 0.00061);
    }
}

// Wedmore (1955) fitted Chataway's figures; the table's own rounding is 0.04 points.
TEST_CASE("table and Wedmore's formula agree within 0.03 points", "[handbook][moisture]") {
    for (const IndexRow& row : index_table) {
        INFO(row.index);
        REQUIRE(water_percent_wedmore(row.index));
        CHECK(std::abs(*water_percent_wedmore(row.index) - row.water_percent) <= 0.03);
    }
    for (double index = 1.4741; index < 1.5044; index += 0.00013) {
        INFO(index);
        REQUIRE(water_percent(index));
        CHECK(std::abs(*water_percent(index) - *water_percent_wedmore(index)) <= 0.03);
    }
    CHECK(*water_percent_wedmore(1.4900) == Approx(18.59).margin(0.005));
}

TEST_CASE("water is interpolated between rows", "[handbook][moisture]") {
    CHECK(*water_percent(1.49025) == Approx(18.5).margin(1e-6));
    CHECK(*water_percent(1.4943) == Approx(16.9).margin(1e-6));
}

TEST_CASE("no water content outside 13-25 %", "[handbook][moisture]") {
    CHECK_FALSE(water_percent(1.5045));
    CHECK_FALSE(water_percent(1.4739));
    CHECK_FALSE(water_percent(1.3330));
    CHECK_FALSE(water_percent(std::numeric_limits<double>::quiet_NaN()));
    CHECK_FALSE(water_percent_wedmore(1.5060));
    CHECK_FALSE(water_percent_wedmore(1.4700));
    CHECK_FALSE(water_percent_wedmore(1.0));
}

// Bogdanov (2011): 0.00023 per degree, added above 20 C; about 0.09 points of water a degree.
TEST_CASE("a warm sample reads too wet and is corrected", "[handbook][moisture]") {
    CHECK(index_at_20(1.4900, 20) == Approx(1.4900));
    CHECK(index_at_20(1.4900, 25) == Approx(1.49115));
    CHECK(index_at_20(1.4900, 15) == Approx(1.48885));
    CHECK(*water_percent(1.4900, 20) == Approx(18.6));
    CHECK(*water_percent(1.4900, 30) == Approx(18.6 - 0.92).margin(0.01));
    CHECK(*water_percent(1.4900, 10) == Approx(18.6 + 0.92).margin(0.01));
    CHECK_FALSE(water_percent(1.4900, 90));
    CHECK_FALSE(water_percent(1.4900, 4));
}

// Lochhead's scheme as in A Practical Manual of Beekeeping, table 2.
TEST_CASE("fermentation bands", "[handbook][moisture]") {
    CHECK(fermentation(17.0) == Fermentation::safe);
    CHECK(fermentation(17.1) == Fermentation::safe_under_1000);
    CHECK(fermentation(18.0) == Fermentation::safe_under_1000);
    CHECK(fermentation(18.1) == Fermentation::safe_under_10);
    CHECK(fermentation(19.0) == Fermentation::safe_under_10);
    CHECK(fermentation(20.0) == Fermentation::safe_under_1);
    CHECK(fermentation(20.1) == Fermentation::always_in_danger);
    CHECK(words(Fermentation::safe_under_10) == "safe if there are fewer than 10 yeasts per gram");
}

static std::vector<bool> met(double water, bool heather) {
    std::vector<bool> out;
    for (const LimitAnswer& a : limit_answers(water, heather)) {
        REQUIRE(a.limit);
        CHECK_FALSE(a.limit->source.empty());
        out.push_back(a.met);
    }
    return out;
}

// Directive 2001/110/EC: 20, heather 23; 50 FR 15861: A and B 18.6, C 20; German and Czech jar 18
// (German heather 21.4); safe for a year below 17.1.
TEST_CASE("four limits give four answers", "[handbook][moisture]") {
    using V = std::vector<bool>;
    CHECK(met(17.0, false) == V{true, true, true, true});
    CHECK(met(17.1, false) == V{true, true, true, false});
    CHECK(met(18.0, false) == V{true, true, true, false});
    CHECK(met(18.6, false) == V{true, true, false, false});
    CHECK(met(20.0, false) == V{true, true, false, false});
    CHECK(met(20.1, false) == V{false, false, false, false});
    CHECK(met(21.4, true) == V{true, false, true, false});
    CHECK(met(23.0, true) == V{true, false, false, false});
    CHECK(met(23.1, true) == V{false, false, false, false});
    CHECK(limit_answers(18.6, false)[1].limit->name == "US grade A or B");
    CHECK(limit_answers(18.7, false)[1].limit->name == "US grade C");
    CHECK(limit_answers(22.0, true)[0].limit->percent == 23.0);
}

// Pearson square from dairying (gifsq.com): 40 % cream and 1.5 % milk to 3.5 %: 5.19 kg and 94.81 kg.
TEST_CASE("blending keeps the mass balance", "[handbook][moisture]") {
    const auto milk = kg_to_reach(5.19, 40.0, 3.5, 1.5);
    REQUIRE(milk);
    CHECK(*milk == Approx(94.81).epsilon(0.001));
    const Portion dairy[] = {{5.19, 40.0}, {94.81, 1.5}};
    CHECK(*blend_percent(dairy) == Approx(3.5).margin(0.005));

    const Portion honey[] = {{40, 19.2}, {60, 16.8}};
    CHECK(*blend_percent(honey) == Approx(17.76));
    CHECK(*kg_to_reach(40, 19.2, 18.0, 16.8) == Approx(40.0));
    CHECK(*kg_to_reach(40, 18.0, 18.0, 16.8) == 0.0);
}

TEST_CASE("impossible blends give nothing", "[handbook][moisture]") {
    CHECK_FALSE(kg_to_reach(40, 19.2, 18.0, 18.0));
    CHECK_FALSE(kg_to_reach(40, 19.2, 18.0, 18.4));
    CHECK_FALSE(kg_to_reach(40, 17.0, 18.0, 16.8));
    CHECK_FALSE(kg_to_reach(-1, 19.2, 18.0, 16.8));
    CHECK_FALSE(blend_percent({}));
    const Portion wrong[] = {{-1, 18.0}, {5, 17.0}};
    CHECK_FALSE(blend_percent(wrong));
}
