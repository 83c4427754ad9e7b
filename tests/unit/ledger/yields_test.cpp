#include <catch2/catch.hpp>

#include "honey_book.hpp"
#include "ledger/yields.hpp"

using namespace waxtab;
using waxtab::testing::HoneyBook;

namespace {


/// Three hives at the mill and one at home; h3 gives nothing.
HoneyBook apiary() {
    HoneyBook b;
    const YardId mill = b.yard("mill"), home = b.yard("home");
    for (const char* name : {"h1", "h2", "h3"}) b.hive(name, mill);
    b.hive("k1", home);
    b.super_off_net("2026-06-20", 0, 10);
    b.super_off_net("2026-07-20", 0, 14);
    b.super_off_net("2026-07-20", 1, 18);
    b.super_off_net("2026-07-20", 3, 30);
    b.honey("2026-07-21", Kind::extracted, "A");
    return b;
}

}  // namespace

TEST_CASE("yields per hive, yard and season say which hives they are divided by", "[ledger]") {
    HoneyBook b = apiary();
    const Ledger l = b.account("2026-09-01");
    const Yields y = yields(b.journal, b.history, l);
    REQUIRE(y.hives.size() == 3);
    CHECK(y.hives[0].honey.value == kg(24));
    CHECK(y.hives[0].supers == 2);
    REQUIRE(y.yards.size() == 2);
    const YieldRow& mill = y.yards[0];
    CHECK(mill.honey.value == kg(42));
    CHECK(mill.harvested == std::vector<HiveId>{0, 1});
    CHECK(mill.living == std::vector<HiveId>{0, 1, 2});
    CHECK(mill.per_harvested == kg(21));
    CHECK(mill.per_living == kg(14));
    CHECK(mill.least == kg(18));
    CHECK(mill.median == kg(21));
    CHECK(mill.most == kg(24));
    REQUIRE(y.seasons.size() == 1);
    CHECK(y.seasons[0].honey.value == kg(72));
    CHECK(y.seasons[0].median == kg(24));
    CHECK(y.seasons[0].living.size() == 4);
}

TEST_CASE("harvests are summed but kept by date", "[ledger]") {
    // Source: "harvests summed but reported separately by date", COLOSS BEEBOOK, J. Apic. Res. 52(1), 2013, 3.3.1.
    HoneyBook b;
    b.hive("h1", b.yard("mill"));
    b.super_off_net("2026-06-20", 0, 10);
    b.honey("2026-06-21", Kind::extracted, "A");
    b.super_off_net("2026-07-20", 0, 14);
    b.honey("2026-07-21", Kind::extracted, "B");
    b.super_off_net("2026-08-20", 0, 5);
    const Ledger l = b.account("2026-09-01");
    const Yields y = yields(b.journal, b.history, l);
    REQUIRE(y.hives.at(0).parts.size() == 3);
    CHECK(y.hives[0].parts[0].day == on("2026-06-20"));
    CHECK(y.hives[0].parts[1].lot == "B");
    CHECK(y.hives[0].parts[2].lot.empty());
    CHECK(y.hives[0].honey.value == kg(29));
    SECTION("between two days") {
        const Yields july = yields(b.journal, b.history, l, on("2026-07-01"), on("2026-07-31"));
        CHECK(july.hives.at(0).honey.value == kg(14));
    }
}

TEST_CASE("a hive that died before the season or came after it is not counted as living", "[ledger]") {
    HoneyBook b = apiary();
    b.history.hives[1].ended = on("2026-08-01");
    b.history.hives[2].ended = on("2026-03-01");
    const Yields y = yields(b.journal, b.history, b.account("2026-09-01"));
    CHECK(y.yards[0].living == std::vector<HiveId>{0, 1});
}

TEST_CASE("a hive moved during the season is counted where its honey came off", "[ledger]") {
    HoneyBook b = apiary();
    b.history.hives[0].yards = {{Day{}, 0}, {on("2026-07-01"), 1}};
    const Yields y = yields(b.journal, b.history, b.account("2026-09-01"));
    CHECK(y.hives[0].yard == 1);
    CHECK(y.yards[0].living == std::vector<HiveId>{0, 1, 2});
    CHECK(y.yards[1].harvested == std::vector<HiveId>{0, 3});
}

TEST_CASE("hives split or united in a season are one colony as well", "[ledger]") {
    HoneyBook b = apiary();
    SECTION("none were") { CHECK(yields(b.journal, b.history, b.account("2026-09-01")).colonies.empty()); }
    SECTION("h3 split from h1, k1 united into h3") {
        b.history.hives[2].mother = 0;
        b.history.hives[2].born = on("2026-05-10");
        b.history.hives[3].united_into = 2;
        b.history.hives[3].ended = on("2026-08-10");
        const Yields y = yields(b.journal, b.history, b.account("2026-09-01"));
        REQUIRE(y.colonies.size() == 1);
        CHECK(y.colonies[0].hives == std::vector<HiveId>{0, 2, 3});
        CHECK(y.colonies[0].honey.value == kg(54));
    }
    SECTION("a split of the year before no longer counts") {
        b.history.hives[2].mother = 0;
        b.history.hives[2].born = on("2025-05-10");
        CHECK(yields(b.journal, b.history, b.account("2026-09-01")).colonies.empty());
    }
}

// Arithmetic: what is known of a whole is known of its parts together; 60 kg weighed, the hives' own parts estimated.
TEST_CASE("whole lots of weighed honey have no range, and a yard's part is what the others did not give", "[ledger]") {
    HoneyBook b;
    const YardId mill = b.yard("mill"), home = b.yard("home");
    for (const char* name : {"h1", "h2"}) b.hive(name, mill);
    b.hive("k1", home);
    b.super_off("2026-07-20", 0, {12, 15, 18});
    b.super_off("2026-07-20", 1, {16, 20, 24});
    b.super_off("2026-07-20", 2, {22, 25, 28});
    b.kg("2026-07-21", Kind::extracted, "60", "A");
    const Yields y = yields(b.journal, b.history, b.account("2026-09-01"));
    REQUIRE(y.seasons.size() == 1);
    CHECK(y.seasons[0].honey.value == kg(60));
    CHECK(y.seasons[0].honey.low == kg(60));
    CHECK(y.seasons[0].honey.high == kg(60));
    REQUIRE(y.yards.size() == 2);
    const MassRange& at_mill = y.yards[0].honey;
    const MassRange& at_home = y.yards[1].honey;
    CHECK(at_mill.value + at_home.value == kg(60));
    CHECK(at_mill.low + at_home.high == kg(60));
    CHECK(at_mill.high + at_home.low == kg(60));
    CHECK(at_mill.low < at_mill.value);
}

TEST_CASE("a hive that moved is listed at each yard with what came off there", "[ledger]") {
    HoneyBook b;
    const YardId mill = b.yard("mill"), heath = b.yard("heath");
    b.hive("h1", mill);
    b.super_off_net("2026-06-20", 0, 10);
    b.honey("2026-06-21", Kind::extracted, "A");
    b.history.hives[0].yards.emplace_back(on("2026-08-01"), heath);
    b.super_off_net("2026-08-20", 0, 14);
    b.honey("2026-08-21", Kind::extracted, "B");
    const Yields y = yields(b.journal, b.history, b.account("2026-09-01"));
    REQUIRE(y.hives.size() == 1);
    CHECK(y.hives[0].honey.value == kg(24));
    CHECK(at_yard(y.hives[0], mill).honey.value == kg(10));
    CHECK(at_yard(y.hives[0], heath).honey.value == kg(14));
    CHECK(at_yard(y.hives[0], heath).supers == 1);
    CHECK(at_yard(y.hives[0], no_yard).parts.empty());
}
