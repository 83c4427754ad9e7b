#include <catch2/catch.hpp>

#include "ledger/price.hpp"

using namespace waxtab;

namespace {

std::string price(const std::string& line) {
    const Journal journal = read_journal({{"a.hive", line}}, *day_from_iso("2026-08-01"));
    Fact whole;
    whole.span = {0, 0, static_cast<std::uint32_t>(line.size())};
    return price_of(journal, whole);
}

}  // namespace

TEST_CASE("prices are shown as they were written", "[ledger]") {
    CHECK(price("sold 6 x 454 g lot A to the deli at 6.50 each") == "6.50 each");
    CHECK(price("sold 3 x 454 g lot A for 24 GBP, cash") == "24 GBP");
    CHECK(price("sold 3 x 454 g lot A at \xc2\xa3" "6.50. More wanted") == "\xc2\xa3" "6.50");
    CHECK(price("sold 6 x 454 g lot A at the gate").empty());
    CHECK(price("sold 6 x 454 g lot A for the church fair").empty());
    CHECK(price("").empty());
}
