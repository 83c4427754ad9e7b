// The smallest journal that says all of a visit.
#include <catch2/catch.hpp>

#include "said.hpp"

using namespace waxtab;

TEST_CASE("a small journal, its facts and what it leaves unsaid", "[facts]") {
    const Journal j = read_journal({{"a.hive", "units kg\nhive h3 at mill: deep, excluder, super drawn9\n\n2026-06-03 mill\n24C sunny, flow heavy, white clover\nh3 top 70% capped\n+super h3 drawn9\n"}},
                                   date::sys_days{date::year{2026} / 11 / 25});
    CHECK(j.diagnostics.empty());
    CHECK(test::said(j) == "24C | sunny | flow heavy | white clover in bloom | h3 top 70% capped | h3 +super drawn9");
    REQUIRE(j.hives.size() == 1);
    CHECK(j.hives[0].stack.size() == 3);
    CHECK(j.hives[0].stack[2].frames == 9);
    CHECK(j.hives[0].stack[2].assumed_kind);
    CHECK(assumptions(j, j.facts.back()) == std::vector<std::string>{"medium (box kind not said)", "on top (place not said)"});
    CHECK(long_form(j, j.facts[4]) == "2026-06-03 mill h3 top 70% capped");
}
