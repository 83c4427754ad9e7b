#include <catch2/catch.hpp>

#include "account_checked.hpp"
#include "honey_book.hpp"
#include "ledger/trace.hpp"

using namespace waxtab;
using waxtab::testing::HoneyBook;

TEST_CASE("a lot leads back to hives and days and forward to whoever got it", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    b.super_off_net("2026-07-10", h1, 16);
    b.history.boxes[0].stays[0].from = on("2026-05-20");
    b.super_off_net("2026-07-11", h2, 14);
    b.kg("2026-07-12", Kind::extracted, "30", "A");
    b.jars("2026-07-20", Kind::jars, 40, "500", "A");
    b.jars("2026-07-22", Kind::gone_out, 12, "500", "A").text = "village shop";
    b.journal.facts.back().manner = "business";
    b.jars("2026-07-25", Kind::come_back, 2, "500", "A").text = "village shop";
    const Ledger l = b.account("2026-08-01");
    const Trace t = trace(b.journal, b.history, l, "a");
    REQUIRE(t.found);
    REQUIRE(t.sources.size() == 2);
    CHECK(t.sources[0].hive == h1);
    CHECK(t.sources[0].honey.value == kg(16));
    CHECK(t.sources[0].takings.at(0).off == on("2026-07-10"));
    CHECK(t.sources[0].takings[0].on == on("2026-05-20"));
    CHECK_FALSE(t.sources[1].takings.at(0).on);
    REQUIRE(t.recall.size() == 2);
    CHECK(t.recall[0].going.to == "village shop");
    CHECK(t.recall[0].going.business);
    CHECK_FALSE(t.recall[0].possible);
    CHECK(t.recall[1].going.how == "come back");
    CHECK(t.left_in_jars == kg(15));
    CHECK(t.left_in_bulk == kg(10));
    CHECK_FALSE(trace(b.journal, b.history, l, "Z").found);
}

TEST_CASE("a trace goes through blends both ways", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    b.super_off_net("2026-07-10", h1, 20);
    b.kg("2026-07-10", Kind::extracted, "20", "A");
    b.super_off_net("2026-07-11", h2, 20);
    b.kg("2026-07-11", Kind::extracted, "20", "B");
    b.kg("2026-07-11", Kind::bought_in, "10", "N").text = "a neighbour";
    b.honey("2026-07-12", Kind::blended, "C").lots = {"A", "N"};
    b.journal.facts.back().value = measure("15", Unit::kilogram).value();
    b.honey("2026-07-13", Kind::blended, "D").lots = {"B", "C"};
    b.jars("2026-07-20", Kind::jars, 20, "500", "D");
    b.jars("2026-07-22", Kind::gone_out, 5, "500", "D").text = "a friend";
    const Ledger l = b.account("2026-08-01");

    const Trace back = trace(b.journal, b.history, l, "D");
    CHECK(back.made_of == std::vector<std::string>{"A", "B", "N", "C", "D"});
    REQUIRE(back.sources.size() == 3);
    CHECK(back.sources[0].hive == h1);
    CHECK(back.sources[1].hive == h2);
    CHECK(back.sources[2].bought_from == "a neighbour");
    CHECK(back.blendings.size() == 4);

    const Trace ahead = trace(b.journal, b.history, l, "A");
    CHECK(ahead.went_into == std::vector<std::string>{"A", "C", "D"});
    REQUIRE(ahead.recall.size() == 1);
    CHECK(ahead.recall[0].lot == "D");
    CHECK(ahead.recall[0].going.to == "a friend");
}

TEST_CASE("jars sold without a lot are on the recall list of every lot they may be of", "[ledger]") {
    HoneyBook b;
    b.hive("h1");
    for (const char* lot : {"A", "B"}) {
        b.kg("2026-07-10", Kind::extracted, "20", lot).hives = {0};
        b.jars("2026-07-11", Kind::jars, 20, "500", lot);
    }
    b.jars("2026-07-22", Kind::gone_out, 5, "500").text = "the fair";
    const Ledger l = b.account("2026-08-01");
    for (const char* lot : {"A", "B"}) {
        const Trace t = trace(b.journal, b.history, l, lot);
        REQUIRE(t.recall.size() == 1);
        CHECK(t.recall[0].possible);
    }
}

TEST_CASE("feeds and treatments while the super was on are on the lot's way", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    b.fact("2026-05-01", Kind::feed);
    b.fact("2026-05-25", Kind::feed);
    b.fact("2026-06-01", Kind::treatment);
    b.history.hives[0].feedings = {{on("2026-05-01"), {}, 0}, {on("2026-05-25"), on("2026-05-30"), 1}};
    b.history.hives[0].treatings = {{on("2026-06-01"), on("2026-06-01"), 2, "formic acid", {}}};
    b.history.hives[1].treatings = b.history.hives[0].treatings;
    b.super_off_net("2026-07-10", h1, 20);
    b.history.boxes[0].stays[0].from = on("2026-05-20");
    b.super_off_net("2026-07-10", h2, 20);
    b.history.boxes[1].stays[0].from = on("2026-06-02");
    b.kg("2026-07-10", Kind::extracted, "40", "A");
    b.honey("2026-07-11", Kind::blended, "B").lots = {"A"};
    const Ledger l = b.account("2026-08-01");
    CHECK(l.lots[0].concerns == std::vector<FactId>{1, 2});
    CHECK(l.lots[1].concerns == std::vector<FactId>{1, 2});
    const Trace t = trace(b.journal, b.history, l, "B");
    CHECK(t.sources[0].feeds == std::vector<FactId>{1});
    CHECK(t.sources[0].treatments == std::vector<FactId>{2});
    CHECK(t.sources[1].treatments.empty());
}

TEST_CASE("a super carries what met it on another hive, until it is emptied", "[ledger]") {
    HoneyBook b;
    const HiveId h1 = b.hive("h1"), h2 = b.hive("h2");
    b.fact("2026-05-25", Kind::treatment);
    b.history.hives[0].treatings = {{on("2026-05-25"), on("2026-05-25"), 0, "oxalic acid", {}}};
    b.super_off_net("2026-07-10", h2, 20);
    BoxStay before;
    before.hive = h1, before.from = on("2026-05-20"), before.to = on("2026-06-10");
    auto& box = b.history.boxes[0];
    box.stays[0].from = on("2026-06-10");
    box.stays.insert(box.stays.begin(), before);
    b.kg("2026-07-10", Kind::extracted, "20", "A");
    CHECK(b.account("2026-08-01").lots[0].concerns == std::vector<FactId>{0});
    b.history.boxes[0].emptied = {on("2026-06-10")};
    CHECK(b.account("2026-08-01").lots[0].concerns.empty());
}
