// The round to load.
#include "advice/bring.hpp"

#include <algorithm>

#include <catch2/catch.hpp>

#include "mentor.hpp"

using namespace waxtab;

namespace {

Round round_of(const Advised& a, const std::string& from, const std::string& to) {
    return bring(a.journal, a.history, a.estimates, a.advice, *day_from_iso(from), *day_from_iso(to));
}

const YardRound* yard_of(const Advised& a, const Round& r, const std::string& name) {
    for (const YardRound& y : r.yards)
        if (a.journal.yard_name(y.yard) == name) return &y;
    return nullptr;
}

const std::string two_yards =
    "units kg\nshed: 1 super drawn\n"
    "hive h3 at mill: deep, excluder, super drawn9\nhive h4 at mill: deep, excluder, super drawn9\nhive h5 at home: deep, excluder, super drawn9\n";
const std::string heavy =
    "2026-06-01 mill\nflow heavy\nh3 top 40% full\nh4 top 45% full\n2026-06-01 home\nflow heavy\nh5 top 5% full\n"
    "2026-06-08 mill\nflow heavy\nh3 top 95% full\nh4 top 97% full\n2026-06-08 home\nflow light\nh5 top 10% full\n";

}  // namespace

TEST_CASE("supers are loaded by kind and comb and set against the shed", "[advice][bring]") {
    const Advised a = advised(two_yards + heavy, "2026-06-08");
    INFO(listing(a));
    const Round r = round_of(a, "2026-06-09", "2026-06-16");
    const YardRound* mill_round = yard_of(a, r, "mill");
    REQUIRE(mill_round);
    REQUIRE(mill_round->supers.size() == 1);
    CHECK(mill_round->supers[0].comb == Comb::drawn);
    CHECK(mill_round->supers[0].count >= 2);
    CHECK(mill_round->supers[0].hives.size() == 2);
    CHECK(mill_round->hives.size() == 2);
    REQUIRE(r.shed.size() >= 1);
    CHECK(r.shed[0].in_shed == 1);
    CHECK(r.shed[0].short_by == r.shed[0].wanted - 1);
}

TEST_CASE("an unsaid shed is unknown, not empty", "[advice][bring]") {
    const Advised a = advised("units kg\nhive h3 at mill: deep, excluder, super drawn9\n2026-06-01 mill\nflow heavy\nh3 top 40% full\n"
                              "2026-06-08 mill\nflow heavy\nh3 top 95% full\n", "2026-06-08");
    const Round r = round_of(a, "2026-06-09", "2026-06-16");
    REQUIRE(r.shed.size() == 1);
    CHECK_FALSE(r.shed[0].in_shed);
    CHECK(r.shed[0].short_by == 0);
}

TEST_CASE("ripe supers want escape boards and tubs, strips come out, to-dos come along", "[advice][bring]") {
    const Advised a = advised("units kg\nhive h3 at mill: deep, excluder, super drawn9\nhive h4 at mill: deep, excluder\n"
                              "2026-05-01\nopening stock 24 x 454 g jars\nfilled 6 x 454 g\n"
                              "2026-06-20 mill\nh4 amitraz strips in, 28 days\n"
                              "2026-07-10 mill\nh3 top full, top fully capped\ntodo take the long ladder\n", "2026-07-10");
    INFO(listing(a));
    const Round r = round_of(a, "2026-07-11", "2026-07-18");
    const YardRound* y = yard_of(a, r, "mill");
    REQUIRE(y);
    CHECK(y->escape_boards == 1);
    CHECK(y->honey.supers == 1);
    CHECK(y->honey.kg.value > 5);
    CHECK(y->honey.tubs >= 1);
    CHECK(y->honey.jar_size == Mass::grams(454));
    CHECK(y->honey.jars > 10);
    REQUIRE(y->strips.size() == 1);
    CHECK(y->strips[0].substance == "amitraz");
    CHECK(iso(*y->strips[0].due) == "2026-07-18");
    CHECK(y->todos.size() == 1);
}

TEST_CASE("a yard under suspicion comes last, with nothing to bring", "[advice][bring]") {
    const Advised a = advised(two_yards + heavy + "2026-06-08 mill\nh3 foulbrood suspected\n", "2026-06-08");
    const Round r = round_of(a, "2026-06-09", "2026-06-16");
    REQUIRE(r.yards.size() == 2);
    CHECK(a.journal.yard_name(r.yards.back().yard) == "mill");
    CHECK(r.yards.back().supers.empty());
    CHECK(r.yards.back().remarks.size() >= 1);
    if (!r.yards.back().hives.empty()) CHECK(a.journal.hive_name(r.yards.back().hives.back().hive) != "h4");
}

TEST_CASE("a yard just visited and quiet is left out", "[advice][bring]") {
    const Advised a = advised(two_yards + "2026-06-08 home\nflow light\nh5 top 10% full, eggs seen\n", "2026-06-08");
    const Round r = round_of(a, "2026-06-09", "2026-06-10");
    CHECK_FALSE(yard_of(a, r, "home"));
}
