#include "handbook/jars.hpp"

#include <vector>

#include <catch2/catch.hpp>

using namespace waxtab::handbook;

// Directive 76/211/EEC, Annex I 2.4.
TEST_CASE("tolerable negative error", "[handbook][jars]") {
    const double table[][2] = {{5, 0.45},   {42, 3.78},   {50, 4.5},   {57, 4.5},   {100, 4.5},  {113, 5.085},
                               {125, 5.625}, {200, 9},    {227, 9},    {250, 9},    {300, 9},    {340, 10.2},
                               {454, 13.62}, {500, 15},   {750, 15},   {1000, 15}};
    for (const auto& row : table) {
        INFO(row[0]);
        REQUIRE(tolerable_negative_error(row[0]));
        CHECK(*tolerable_negative_error(row[0]) == Approx(row[1]));
    }
    CHECK_FALSE(tolerable_negative_error(4.9));
    CHECK_FALSE(tolerable_negative_error(1001));
    // No jumps where the rule changes.
    for (double edge : {50.0, 100.0, 200.0, 300.0, 500.0})
        CHECK(*tolerable_negative_error(edge) == Approx(*tolerable_negative_error(edge + 1e-6)).margin(1e-5));
}

// The packers' three rules, tradingstandards.gov.uk.
TEST_CASE("three packers' rules", "[handbook][jars]") {
    std::vector<double> jars(40, 455.0);
    CHECK(check_batch(454, jars)->ok());
    jars[0] = 454 - 20;  // short by more than 13.62, less than twice that: one in forty may be
    CHECK(check_batch(454, jars)->ok());
    jars[1] = 454 - 20;
    jars[2] = 500;
    CHECK_FALSE(check_batch(454, jars)->few_short);
    CHECK(check_batch(454, jars)->none_twice);
    CHECK(check_batch(454, jars)->mean_ok);
    jars[1] = 455;
    jars[0] = 454 - 28;
    CHECK_FALSE(check_batch(454, jars)->none_twice);
    CHECK_FALSE(check_batch(454, std::vector<double>(40, 453.9))->mean_ok);
    CHECK_FALSE(check_batch(454, {}));
    CHECK_FALSE(check_batch(5000, jars));
}

// 3 jars up to 50, 5 for 50-100, 7-8 above (Trading Standards text at beekeepingforum.co.uk).
TEST_CASE("jars to weigh", "[handbook][jars]") {
    CHECK(check_sample(2) == 2);
    CHECK(check_sample(50) == 3);
    CHECK(check_sample(51) == 5);
    CHECK(check_sample(101) == 8);
    CHECK(check_sample(0) == 0);
    CHECK(check_sample(-1) == 0);
}

// Torbay branch, Devon BKA: 2 mm to 50 g, 3 to 200 g, 4 to 1 kg, 6 above; sizes 57, 113, 227, 340, 454 g.
TEST_CASE("label figures and jar sizes", "[handbook][jars]") {
    CHECK(figure_height_mm(42) == 2);
    CHECK(figure_height_mm(57) == 3);
    CHECK(figure_height_mm(227) == 4);
    CHECK(figure_height_mm(1000) == 4);
    CHECK(figure_height_mm(2268) == 6);
    CHECK_FALSE(figure_height_mm(0));
    for (double grams : {57.0, 113.0, 227.0, 340.0, 454.0}) {
        INFO(grams);
        bool found = false;
        for (const JarSize& size : jar_sizes) found = found || size.grams == grams;
        CHECK(found);
    }
    // Ounces as named: a pound is 453.59 g.
    CHECK(jar_sizes[5].grams == Approx(453.59).margin(0.5));
    CHECK(jar_sizes[6].grams == Approx(2 * 453.59).margin(0.5));
    CHECK(jar_sizes[7].grams == Approx(5 * 453.59).margin(0.5));
}

// Directive 2011/91/EU with the exceptions of its summary.
TEST_CASE("lot mark", "[handbook][jars]") {
    CHECK(lot_mark_needed({}));
    CHECK_FALSE(lot_mark_needed({.best_before_with_day = true}));
    CHECK_FALSE(lot_mark_needed({.largest_side_cm2 = 9.9}));
    CHECK(lot_mark_needed({.largest_side_cm2 = 10}));
    CHECK_FALSE(lot_mark_needed({.packed_at_sale = true}));
    CHECK_FALSE(lot_mark_needed({.bulk_to_packer = true}));
    for (const LabelRule& rule : lot_rules) CHECK_FALSE(rule.source.empty());
}

TEST_CASE("infant caution", "[handbook][jars]") {
    CHECK(infant_caution.says.find("twelve months") != std::string_view::npos);
    CHECK(infant_months == 12);
}
