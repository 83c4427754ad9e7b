#include <catch2/catch.hpp>

#include "honey_book.hpp"

using namespace waxtab;
using waxtab::testing::HoneyBook;

namespace {

using Codes = std::vector<std::string>;

}  // namespace

TEST_CASE("takings wait until an extraction takes them", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    b.super_off("2026-07-10", h1, {10, 12, 14});
    b.super_off("2026-07-10", h2, {16, 18, 20});
    SECTION("still waiting") {
        const Ledger l = b.account("2026-07-11");
        CHECK(l.waiting == std::vector<std::size_t>{0, 1});
        CHECK(l.waiting_honey.value == kg(30));
        CHECK(l.waiting_honey.low == kg(26));
        REQUIRE(l.hives.size() == 2);
        CHECK(l.hives[1].honey.value == kg(18));
    }
    SECTION("extracted and weighed: shared in proportion") {
        b.kg("2026-07-12", Kind::extracted, "27", "A");
        const Ledger l = b.account("2026-07-12");
        CHECK(l.waiting.empty());
        REQUIRE(l.lots.size() == 1);
        CHECK(l.lots[0].name == "A");
        CHECK_FALSE(l.lots[0].name_made);
        CHECK(l.lots[0].weight.value == kg(27));
        CHECK(l.lots[0].weight.weighed);
        CHECK(l.lots[0].shares[0].honey.value == kg(10.8));
        CHECK(l.lots[0].shares[1].honey.value == kg(16.2));
        CHECK(l.lots[0].bulk == kg(27));
        CHECK(l.extracted == kg(27));
        CHECK(l.diagnostics.empty());
    }
    SECTION("extracted without a weight: what they were thought to hold") {
        b.honey("2026-07-12", Kind::extracted, "A");
        const Ledger l = b.account("2026-07-12");
        CHECK(l.lots.at(0).weight.value == kg(30));
        CHECK(l.lots[0].weight.low == kg(26));
        CHECK_FALSE(l.lots[0].weight.weighed);
        CHECK(l.lots[0].shares[0].honey.high == kg(14));
    }
}

TEST_CASE("a lot left unnamed is named after its day, further ones b and c", "[ledger]") {
    HoneyBook b;
    for (int i = 0; i < 3; ++i) b.kg("2026-07-12", Kind::extracted, "5");
    b.kg("2026-07-13", Kind::extracted, "5");
    const Ledger l = b.account("2026-07-14");
    REQUIRE(l.lots.size() == 4);
    CHECK(l.lots[0].name == "2026-07-12");
    CHECK(l.lots[0].name_made);
    CHECK(l.lots[1].name == "2026-07-12b");
    CHECK(l.lots[2].name == "2026-07-12c");
    CHECK(l.lots[3].name == "2026-07-13");
}

TEST_CASE("the same lot name continues the lot, in large or small letters", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    b.super_off("2026-07-10", h1, {10, 12, 14});
    b.kg("2026-07-12", Kind::extracted, "11", "A");
    b.super_off("2026-07-13", h2, {10, 12, 14});
    b.super_off("2026-07-13", h1, {4, 6, 8});
    b.kg("2026-07-14", Kind::extracted, "18", "a");
    const Ledger l = b.account("2026-07-14");
    REQUIRE(l.lots.size() == 1);
    CHECK(l.lots[0].weight.value == kg(29));
    CHECK(l.lots[0].shares[0].honey.value == kg(17));
    CHECK(l.lots[0].shares[1].honey.value == kg(12));
    CHECK(l.harvests.size() == 3);
}

TEST_CASE("a lot name used in another year is one lot, with a warning", "[ledger]") {
    HoneyBook b;
    b.hive("h1");
    b.super_off_net("2025-07-12", 0, 11);
    b.kg("2025-07-12", Kind::extracted, "11", "A");
    b.super_off_net("2026-07-12", 0, 11);
    b.kg("2026-07-12", Kind::extracted, "11", "A");
    const Ledger l = b.account("2026-07-14");
    CHECK(codes(l.diagnostics) == Codes{"warning lot-name-again"});
    CHECK(l.diagnostics[0].related.size() == 1);
}

TEST_CASE("an extraction takes the hives it names and leaves the rest waiting", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2"), h3 = b.hive("h3");
    for (const HiveId h : {h1, h2, h3}) b.super_off("2026-07-10", h, {10, 12, 14});
    b.kg("2026-07-12", Kind::extracted, "23", "A").hives = {h1, h3};
    const Ledger l = b.account("2026-07-12");
    CHECK(l.waiting == std::vector<std::size_t>{1});
    CHECK(l.lots[0].shares.size() == 2);
    CHECK(l.lots[0].shares[1].hive == h3);
}

TEST_CASE("an extraction under a yard's heading takes what waits there, else all that waits", "[ledger]") {
    HoneyBook b;
    const YardId mill = b.yard("mill"), home = b.yard("home"), shed = b.yard("shed");
    const HiveId h1 = b.hive("h1", mill), h2 = b.hive("h2", home);
    b.super_off("2026-07-10", h1, {10, 12, 14});
    b.super_off("2026-07-10", h2, {10, 12, 14});
    SECTION("some wait there") {
        b.kg("2026-07-12", Kind::extracted, "12", "A").yard = mill;
        const Ledger l = b.account("2026-07-12");
        CHECK(l.waiting == std::vector<std::size_t>{1});
        CHECK(l.assumptions.at(0).text == "what was waiting at mill (hives not said)");
    }
    SECTION("none do: it is where the extractor stands") {
        b.kg("2026-07-12", Kind::extracted, "24", "A").yard = shed;
        CHECK(b.account("2026-07-12").waiting.empty());
    }
}

TEST_CASE("on one day the order of lines does not matter, unless two extractions share it out", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    SECTION("the honey house in a file before the yard's") {
        b.kg("2026-07-12", Kind::extracted, "12", "A");
        b.super_off("2026-07-12", h1, {10, 12, 14});
        CHECK(b.account("2026-07-12").waiting.empty());
    }
    SECTION("off, extracted, off, extracted") {
        b.super_off("2026-07-12", h1, {10, 12, 14});
        b.kg("2026-07-12", Kind::extracted, "12", "A");
        b.super_off("2026-07-12", h2, {10, 12, 14});
        b.kg("2026-07-12", Kind::extracted, "13", "B");
        const Ledger l = b.account("2026-07-12");
        CHECK(l.lots.at(0).shares.at(0).hive == h1);
        CHECK(l.lots.at(1).shares.at(0).hive == h2);
    }
    SECTION("times tell") {
        b.kg("2026-07-12", Kind::extracted, "12", "A").minute = 600;
        b.super_off("2026-07-12", h1, {10, 12, 14});
        b.journal.facts.back().minute = 900;
        CHECK(b.account("2026-07-12").waiting.size() == 1);
    }
}

TEST_CASE("no more supers are extracted than were said; the others wait", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    b.super_off("2026-07-10", h1, {10, 12, 14});
    b.super_off("2026-07-11", h2, {10, 12, 14});
    b.super_off("2026-07-11", h2, {10, 12, 14});
    b.kg("2026-07-12", Kind::extracted, "24", "A").count = 2;
    const Ledger l = b.account("2026-07-12");
    CHECK(codes(l.diagnostics) == Codes{"warning super-count-differs"});
    CHECK(l.lots[0].takings == std::vector<std::size_t>{0, 1});
    CHECK(l.waiting == std::vector<std::size_t>{2});
}

TEST_CASE("a count of supers that differs from what was waiting is a warning", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1");
    b.super_off("2026-07-10", h1, {10, 12, 14});
    b.super_off("2026-07-10", h1, {10, 12, 14});
    b.kg("2026-07-12", Kind::extracted, "24", "A").count = 3;
    const Ledger l = b.account("2026-07-12");
    CHECK(codes(l.diagnostics) == Codes{"warning super-count-differs"});
    CHECK(l.diagnostics[0].title == "3 supers said, but 2 supers were waiting to be extracted");
    CHECK(l.diagnostics[0].related.size() == 2);
    CHECK(l.waiting.empty());
}

TEST_CASE("later notes never move a lot's shares", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    b.super_off("2026-07-10", h1, {10, 12, 14});
    b.super_off("2026-07-10", h2, {10, 12, 14});
    b.kg("2026-07-12", Kind::extracted, "24", "A");
    SECTION("an empty box weighed after that day does not count for the shares") {
        b.fact("2026-07-20", Kind::box_weight).detail = "after";
        b.history.takings[0].net = kg(8);
        b.history.takings[0].weighings = {b.last()};
        const Ledger l = b.account("2026-07-20");
        CHECK(l.lots[0].shares[0].honey.value == kg(12));
    }
    SECTION("weighed the same day it does") {
        b.fact("2026-07-12", Kind::box_weight).detail = "after";
        b.history.takings[0].net = kg(8);
        b.history.takings[0].weighings = {b.last()};
        const Ledger l = b.account("2026-07-20");
        CHECK(l.lots[0].shares[0].honey.value == kg(9.6));
    }
    SECTION("weighed with honey after it came off, before it was extracted") {
        b.fact("2026-07-11", Kind::box_weight).value = measure("20", Unit::kilogram).value();
        b.history.takings[0].gross = kg(20);
        b.history.takings[0].weighings = {b.last()};
        const Ledger l = b.account("2026-07-12");
        // 20 kg less an empty medium of 6 kg against 12 kg: 14 to 12.
        CHECK(l.lots[0].shares[0].honey.value == kg(12.923) + kg(0));
        CHECK(l.lots[0].shares[1].honey.value == kg(11.077));
    }
}

TEST_CASE("a super written down after the extraction waits for the next one, with a warning", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    b.super_off("2026-07-10", h1, {10, 12, 14});
    b.super_off("2026-07-10", h2, {10, 12, 14});
    b.journal.facts.back().noted = day_from_iso("2026-07-20").value();
    b.kg("2026-07-12", Kind::extracted, "12", "A");
    // Made again as of the day of extraction, the history does not have what was written down later.
    b.journal.facts[0].box = {BoxChoice::By::top, Role::super, 0, {}};
    const Ledger l = b.account("2026-07-21");
    CHECK(codes(l.diagnostics) == Codes{"warning late-taking"});
    CHECK(l.waiting == std::vector<std::size_t>{1});
    CHECK(l.lots[0].shares.size() == 1);
}

TEST_CASE("extracted from hives of which nothing waits: the whole when it is one, else no more than an average", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    SECTION("one hive") {
        b.kg("2026-07-12", Kind::extracted, "14", "A").hives = {h1};
        const Ledger l = b.account("2026-07-12");
        CHECK(codes(l.diagnostics) == Codes{"warning nothing-waiting"});
        CHECK(l.lots[0].shares[0].honey.low == kg(14));
    }
    SECTION("two, one of them with a super off") {
        b.super_off("2026-07-10", h2, {10, 12, 14});
        b.kg("2026-07-12", Kind::extracted, "20", "A").hives = {h1, h2};
        const Ledger l = b.account("2026-07-12");
        CHECK(codes(l.diagnostics) == Codes{"warning nothing-waiting"});
        CHECK(l.lots[0].shares[0].honey.value == kg(10));
        CHECK(l.lots[0].shares[0].honey.low.ng == 0);
    }
    SECTION("nobody named, nothing waiting: honey of no known hive") {
        b.kg("2026-07-12", Kind::extracted, "14", "A");
        const Ledger l = b.account("2026-07-12");
        CHECK(codes(l.diagnostics) == Codes{"warning nothing-waiting"});
        CHECK(l.lots[0].shares.at(0).hive == no_hive);
        CHECK(l.hives.empty());
    }
    SECTION("no weight either") {
        b.honey("2026-07-12", Kind::extracted, "A");
        CHECK(codes(b.account("2026-07-12").diagnostics) == Codes{"warning extracted-nothing"});
    }
}

TEST_CASE("a weight the supers cannot have held is a warning", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1");
    b.super_off("2026-07-10", h1, {10, 12, 14});
    b.kg("2026-07-12", Kind::extracted, "82", "A");
    CHECK(codes(b.account("2026-07-12").diagnostics) == Codes{"warning lot-weight-odd"});
}

TEST_CASE("honey extracted by volume has the range of its density", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1");
    b.honey("2026-07-12", Kind::extracted, "A").value = measure("5", Unit::us_gallon).value();
    b.journal.facts.back().hives = {h1};
    const Ledger l = b.account("2026-07-12");
    // 12 lb a gallon: "Density of Honey", Bee Culture, which has 11.6343 to 12.057 lb for 21 to 13 % water.
    CHECK(l.lots[0].weight.value.kilograms() == Approx(60 * 0.45359237).epsilon(0.015));
    CHECK(l.lots[0].weight.low.kilograms() == Approx(5 * 11.6343 * 0.45359237).epsilon(0.002));
    CHECK_FALSE(l.lots[0].weight.weighed);
}

TEST_CASE("net weight is before less after, to 100 g, and sums to the lot", "[ledger]") {
    // Source of the rule: R. Buechler et al., COLOSS BEEBOOK, J. Apic. Res. 52(1), 2013, 3.3.1.
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    b.super_off_net("2026-07-10", h1, 22.4 - 6.0);
    b.super_off_net("2026-07-10", h2, 19.8 - 5.9);
    b.honey("2026-07-12", Kind::extracted, "1");
    const Ledger l = b.account("2026-07-12");
    CHECK(l.lots[0].weight.value == kg(30.3));
    CHECK(l.lots[0].weight.weighed);
    CHECK(l.lots[0].shares[0].honey.value == kg(16.4));
    CHECK(l.lots[0].shares[0].honey.weighed);
}

TEST_CASE("a super that went back unextracted is not extracted", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1");
    b.super_off("2026-07-10", h1, {10, 12, 14}).returned = day_from_iso("2026-07-11").value();
    b.super_off("2026-07-10", h1, {0, 0, 0}).harvest = false;
    b.kg("2026-07-12", Kind::extracted, "12", "A");
    CHECK(b.account("2026-07-12").lots[0].takings.empty());
}
