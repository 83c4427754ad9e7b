#include <catch2/catch.hpp>

#include "account_checked.hpp"
#include "ledger/shares.hpp"

using namespace waxtab;

namespace {

MassRange range(double low, double value, double high) { return {kg(low), kg(value), kg(high), false}; }
MassRange weighed(double v) { return {kg(v), kg(v), kg(v), true}; }
Claim claim(HiveId hive, MassRange honey) { return {hive, honey, {}, {}}; }

}  // namespace

TEST_CASE("a mass splits to the last nanogram, in whole grams but for one part", "[ledger]") {
    const Mass total{29'300'000'000'123};
    const auto parts = split(total, {kg(16.4), kg(13.9), kg(0.1)});
    std::int64_t sum = 0, uneven = 0;
    for (const Mass p : parts) sum += p.ng, uneven += p.ng % 1'000'000'000 != 0;
    CHECK(sum == total.ng);
    CHECK(uneven == 1);
}

TEST_CASE("shown to the gram, the parts add up to the total as shown", "[ledger]") {
    const Mass pounds_82 = {82 * std::int64_t{453'592'370'000}};
    const auto parts = split(pounds_82, {kg(1), kg(1), kg(1)});
    CHECK(parts[0].whole_grams() + parts[1].whole_grams() + parts[2].whole_grams() == pounds_82.whole_grams());
}

TEST_CASE("the largest remainder gets the odd gram, the first on a tie", "[ledger]") {
    const auto parts = split(Mass::grams(10), {kg(1), kg(1), kg(1)});
    CHECK(parts == std::vector<Mass>{Mass::grams(4), Mass::grams(3), Mass::grams(3)});
    CHECK(split(Mass::grams(10), {kg(2), kg(1)}) == std::vector<Mass>{Mass::grams(7), Mass::grams(3)});
}

TEST_CASE("nothing known of anyone: equal parts", "[ledger]") {
    CHECK(split(Mass::grams(9), {{}, {}, {}}) == std::vector<Mass>{Mass::grams(3), Mass::grams(3), Mass::grams(3)});
    CHECK(split(Mass::grams(9), {}).empty());
}

TEST_CASE("weighed supers share a weighed lot without a range, scaled to it", "[ledger]") {
    const auto shares = share_out(weighed(29.3), {claim(0, weighed(16.4)), claim(1, weighed(13.9))});
    CHECK(sum(shares).value == kg(29.3));
    CHECK(shares[0].honey.weighed);
    // 16.4 of 30.3 kg net, 1 kg of it left in combs and cappings.
    CHECK(shares[0].honey.value == kg(15.859));
}

TEST_CASE("estimated supers share a weighed lot with a range that holds the value and stays within the lot", "[ledger]") {
    const auto shares = share_out(weighed(40), {claim(0, range(8, 12, 16)), claim(1, range(20, 24, 26)), claim(2, range(0, 1, 9))});
    CHECK(sum(shares).value == kg(40));
    for (const LotShare& s : shares) {
        CHECK(s.honey.low <= s.honey.value);
        CHECK(s.honey.value <= s.honey.high);
        CHECK(s.honey.low.ng >= 0);
        CHECK(s.honey.high <= kg(40));
        CHECK_FALSE(s.honey.weighed);
    }
}

TEST_CASE("a weighed lot narrows what an estimate left open", "[ledger]") {
    // Both may be a quarter off; the sum is known, so each can only be off against the other.
    const auto shares = share_out(weighed(30), {claim(0, range(15, 20, 25)), claim(1, range(7.5, 10, 12.5))});
    CHECK((shares[0].honey.high - shares[0].honey.low) < kg(8));
}

TEST_CASE("one hive's honey is all of the lot, exactly", "[ledger]") {
    const auto shares = share_out(weighed(14.1), {claim(3, range(9, 12, 17))});
    CHECK(shares.at(0).honey.low == kg(14.1));
    CHECK(shares.at(0).honey.high == kg(14.1));
    CHECK(shares.at(0).honey.weighed);
}

TEST_CASE("a lot that was weighed roughly hands its range on", "[ledger]") {
    const auto shares = share_out(range(27, 30, 33), {claim(0, weighed(10)), claim(1, weighed(20))});
    CHECK(shares[0].honey.low <= kg(9));
    CHECK(shares[0].honey.high >= kg(11));
    CHECK(sum(shares).value == kg(30));
}

TEST_CASE("shares of one hive from several extractions are one share, hives in journal order, unknown last", "[ledger]") {
    std::vector<LotShare> all;
    merge_shares(all, {{no_hive, weighed(2), {}, {}}, {4, weighed(3), {7}, {1}}});
    merge_shares(all, {{1, weighed(5), {}, {}}, {4, weighed(1), {8}, {1, 2}}});
    REQUIRE(all.size() == 3);
    CHECK(all[0].hive == 1);
    CHECK(all[1].hive == 4);
    CHECK(all[1].honey.value == kg(4));
    CHECK(all[1].takings == std::vector<std::size_t>{7, 8});
    CHECK(all[1].because == std::vector<FactId>{1, 2});
    CHECK(all[2].hive == no_hive);
}

TEST_CASE("a portion of a lot carries its shares in proportion", "[ledger]") {
    const std::vector<LotShare> lot{{0, weighed(30), {}, {}}, {1, range(8, 10, 12), {}, {}}};
    const auto part = portion(lot, kg(20));
    CHECK(part[0].honey.value == kg(15));
    CHECK(part[0].honey.low == kg(15));
    CHECK(part[1].honey.value == kg(5));
    CHECK(part[1].honey.low == kg(4));
    CHECK(part[1].honey.high == kg(6));
}
