#include <catch2/catch.hpp>

#include "honey_book.hpp"

using namespace waxtab;
using waxtab::testing::HoneyBook;

namespace {

using Codes = std::vector<std::string>;

/// Lot A of 40 kg.
HoneyBook with_lot() {
    HoneyBook b;
    b.hive("h1");
    b.kg("2026-07-12", Kind::extracted, "40", "A").hives = {0};
    b.super_off_net("2026-07-10", 0, 40);
    std::swap(b.journal.facts[0], b.journal.facts[1]);
    b.history.honey_facts = {1};
    b.history.takings[0].fact = 0;
    b.history.takings[0].weighings = {0};
    return b;
}

}  // namespace

TEST_CASE("jars take honey out of bulk, sales take jars out", "[ledger]") {
    HoneyBook b = with_lot();
    b.jars("2026-07-20", Kind::jars, 60, "454", "A");
    b.jars("2026-07-25", Kind::gone_out, 24, "454", "A").text = "village shop";
    b.jars("2026-07-26", Kind::gone_out, 2, "454", "A").detail = "given";
    const Ledger l = b.account("2026-08-01");
    const Lot& a = l.lots.at(0);
    CHECK(a.bulk == kg(40 - 27.24));
    CHECK(a.in_jars == kg(27.24));
    REQUIRE(a.jars.size() == 1);
    CHECK(a.jars[0].filled == 60);
    CHECK(a.jars[0].out == 26);
    CHECK(a.jars[0].left == 34);
    CHECK(a.goings.at(0).to == "village shop");
    CHECK(a.goings[1].how == "given");
    CHECK(l.gone == kg(26 * 0.454));
    CHECK(l.left_in_jars == kg(34 * 0.454));
    CHECK(l.left_in_bulk == kg(12.76));
    CHECK(l.diagnostics.empty());
}

TEST_CASE("more jars than honey is an error that cites the lot's lines", "[ledger]") {
    HoneyBook b = with_lot();
    b.jars("2026-07-20", Kind::jars, 60, "454", "A");
    b.jars("2026-07-21", Kind::jars, 60, "454", "A");
    const Ledger l = b.account("2026-08-01");
    REQUIRE(codes(l.diagnostics) == Codes{"error more-than-there-is"});
    CHECK(l.diagnostics[0].title == "60 jars of 454 g are 27.24 kg, but lot A had 12.76 kg left in bulk");
    REQUIRE(l.diagnostics[0].related.size() == 2);
    CHECK(l.diagnostics[0].related[0].text == "lot A was extracted here");
    CHECK(l.diagnostics[0].related[1].text == "lot A was put in jars here");
    CHECK(l.beyond == kg(2 * 27.24 - 40));
}

TEST_CASE("more jars than estimated is only a warning while the estimate leaves it open", "[ledger]") {
    HoneyBook b;
    b.hive("h1");
    b.super_off("2026-07-10", 0, {10, 12, 14});
    b.honey("2026-07-12", Kind::extracted, "A");
    b.jars("2026-07-20", Kind::jars, 13, "1000", "A");
    CHECK(codes(b.account("2026-08-01").diagnostics) == Codes{"warning more-than-estimated"});
    b.jars("2026-07-21", Kind::jars, 3, "1000", "A");
    CHECK(codes(b.account("2026-08-01").diagnostics) == Codes{"warning more-than-estimated", "error more-than-there-is"});
}

TEST_CASE("more jars out than were filled is an error that cites the fillings", "[ledger]") {
    HoneyBook b = with_lot();
    b.jars("2026-07-20", Kind::jars, 20, "454", "A");
    b.jars("2026-07-25", Kind::gone_out, 24, "454", "A");
    const Ledger l = b.account("2026-08-01");
    REQUIRE(codes(l.diagnostics) == Codes{"error more-out-than-filled"});
    CHECK(l.diagnostics[0].title == "24 jars of 454 g sold, but lot A had only 20 left");
    CHECK(l.diagnostics[0].related.size() == 1);
    CHECK(l.lots[0].jars[0].beyond == 4);
    CHECK(l.lots[0].jars[0].left == 0);
}

TEST_CASE("jars of a size never filled", "[ledger]") {
    HoneyBook b = with_lot();
    b.jars("2026-07-20", Kind::jars, 20, "454", "A");
    SECTION("out of a named lot") {
        b.jars("2026-07-25", Kind::gone_out, 4, "340", "A");
        const Ledger l = b.account("2026-08-01");
        CHECK(codes(l.diagnostics) == Codes{"error more-out-than-filled"});
        CHECK(l.lots[0].jars.size() == 2);
    }
    SECTION("out of none") {
        b.jars("2026-07-25", Kind::gone_out, 4, "340");
        const Ledger l = b.account("2026-08-01");
        CHECK(codes(l.diagnostics) == Codes{"error more-out-than-filled"});
        CHECK(l.gone.ng == 0);
    }
    SECTION("out of a lot nobody knows") {
        b.jars("2026-07-25", Kind::gone_out, 4, "454", "B");
        const Ledger l = b.account("2026-08-01");
        CHECK(codes(l.diagnostics) == Codes{"error unknown-lot"});
        CHECK(l.diagnostics[0].hint == "lots by this day: A");
    }
}

TEST_CASE("a size left unsaid is the only one there is, else a question", "[ledger]") {
    HoneyBook b = with_lot();
    b.jars("2026-07-20", Kind::jars, 20, "454", "A");
    SECTION("one size") {
        b.jars("2026-07-25", Kind::gone_out, 4, "", "A");
        const Ledger l = b.account("2026-08-01");
        CHECK(l.lots[0].jars[0].out == 4);
        CHECK(l.assumptions.back().text == "jars of 454 g (size not said)");
    }
    SECTION("two sizes") {
        b.jars("2026-07-21", Kind::jars, 20, "227", "A");
        b.jars("2026-07-25", Kind::gone_out, 4, "", "A");
        const Ledger l = b.account("2026-08-01");
        CHECK(codes(l.diagnostics) == Codes{"error jar-size-unsaid"});
        CHECK(l.diagnostics[0].hint == "there are: 227 g, 454 g; write for example '4 x 454 g'");
    }
    SECTION("filled without a size goes on with the usual one") {
        b.jars("2026-07-21", Kind::jars, 10, "", "A");
        CHECK(b.account("2026-08-01").lots[0].jars[0].filled == 30);
    }
    SECTION("filled without any size known") {
        HoneyBook fresh = with_lot();
        fresh.jars("2026-07-20", Kind::jars, 20, "", "A");
        CHECK(codes(fresh.account("2026-08-01").diagnostics) == Codes{"error jar-size-unsaid"});
    }
}

TEST_CASE("a lot left unsaid is the only one that fits, else the latest, with a warning", "[ledger]") {
    HoneyBook b = with_lot();
    b.kg("2026-07-15", Kind::bought_in, "10", "B");
    SECTION("only A has enough") {
        b.jars("2026-07-20", Kind::jars, 40, "454");
        const Ledger l = b.account("2026-08-01");
        CHECK(l.lots[0].in_jars == kg(18.16));
        CHECK(l.diagnostics.empty());
        CHECK(l.assumptions.back().text == "lot A (not said)");
    }
    SECTION("both have") {
        b.jars("2026-07-20", Kind::jars, 10, "454");
        const Ledger l = b.account("2026-08-01");
        CHECK(l.lots[1].in_jars == kg(4.54));
        CHECK(codes(l.diagnostics) == Codes{"warning which-lot"});
    }
    SECTION("both have, one of today") {
        b.jars("2026-07-15", Kind::jars, 10, "454");
        CHECK(b.account("2026-08-01").diagnostics.empty());
    }
    SECTION("no lot at all") {
        HoneyBook fresh;
        fresh.jars("2026-07-20", Kind::jars, 40, "454");
        CHECK(codes(fresh.account("2026-08-01").diagnostics) == Codes{"error no-honey-yet"});
    }
}

TEST_CASE("jars sold without a lot leave the oldest first and say which others they may be", "[ledger]") {
    HoneyBook b = with_lot();
    b.kg("2026-07-15", Kind::bought_in, "20", "B");
    b.jars("2026-07-20", Kind::jars, 10, "454", "A");
    b.jars("2026-07-20", Kind::jars, 30, "454", "B");
    SECTION("either has enough") {
        b.jars("2026-07-25", Kind::gone_out, 4, "454");
        const Ledger l = b.account("2026-08-01");
        CHECK(l.lots[0].goings.at(0).jars == 4);
        CHECK(l.lots[0].goings[0].lot_assumed);
        CHECK(l.lots[0].goings[0].may_be == std::vector<std::string>{"B"});
        CHECK(codes(l.diagnostics) == Codes{"warning which-lot"});
    }
    SECTION("only one has enough") {
        b.jars("2026-07-25", Kind::gone_out, 24, "454");
        const Ledger l = b.account("2026-08-01");
        CHECK(l.lots[1].goings.at(0).jars == 24);
        CHECK(l.diagnostics.empty());
    }
    SECTION("only both together") {
        b.jars("2026-07-25", Kind::gone_out, 36, "454");
        const Ledger l = b.account("2026-08-01");
        CHECK(l.lots[0].jars[0].left == 0);
        CHECK(l.lots[1].jars[0].left == 4);
    }
}

TEST_CASE("bulk sold by weight; a weight that is so many jars when no bulk is left", "[ledger]") {
    HoneyBook b = with_lot();
    SECTION("bulk") {
        b.kg("2026-07-25", Kind::gone_out, "20", "A").detail = "sold";
        const Ledger l = b.account("2026-08-01");
        CHECK(l.lots[0].bulk_gone == kg(20));
        CHECK(l.gone == kg(20));
    }
    SECTION("jars") {
        b.jars("2026-07-20", Kind::jars, 80, "500", "A");
        b.kg("2026-07-25", Kind::gone_out, "6", "").detail = "sold";
        const Ledger l = b.account("2026-08-01");
        CHECK(l.lots[0].jars[0].out == 12);
        CHECK(l.assumptions.back().text == "12 jars of 500 g (so much was not left in bulk)");
    }
    SECTION("more than there is") {
        b.kg("2026-07-25", Kind::gone_out, "50", "A").detail = "sold";
        const Ledger l = b.account("2026-08-01");
        CHECK(codes(l.diagnostics) == Codes{"error more-than-there-is"});
        CHECK(l.beyond == kg(10));
    }
    SECTION("spoiled") {
        b.kg("2026-07-25", Kind::gone_out, "15", "A").detail = "spoiled";
        const Ledger l = b.account("2026-08-01");
        CHECK(l.spoiled == kg(15));
        CHECK(l.gone.ng == 0);
    }
}

TEST_CASE("jars come back to where they came from", "[ledger]") {
    HoneyBook b = with_lot();
    b.kg("2026-07-15", Kind::bought_in, "20", "B");
    b.jars("2026-07-20", Kind::jars, 30, "454", "A");
    b.jars("2026-07-20", Kind::jars, 30, "454", "B");
    b.jars("2026-07-25", Kind::gone_out, 20, "454", "A").text = "farm shop";
    b.jars("2026-07-26", Kind::gone_out, 20, "454", "B").text = "village shop";
    b.jars("2026-08-20", Kind::come_back, 6, "454").text = "farm shop";
    const Ledger l = b.account("2026-09-01");
    CHECK(l.lots[0].jars[0].left == 16);
    CHECK(l.lots[0].jars[0].out == 14);
    CHECK(l.lots[0].goings.back().how == "come back");
    CHECK(l.gone == kg(34 * 0.454));
    SECTION("more back than went out") {
        b.jars("2026-08-21", Kind::come_back, 50, "454", "A");
        CHECK(codes(b.account("2026-09-01").diagnostics) == Codes{"error more-back-than-out"});
    }
}

TEST_CASE("a stocktake books the difference and reports it", "[ledger]") {
    HoneyBook b = with_lot();
    b.jars("2026-07-20", Kind::jars, 30, "454", "A");
    SECTION("jars missing") {
        b.jars("2026-09-01", Kind::stocktake, 28, "454", "A");
        const Ledger l = b.account("2026-09-01");
        CHECK(l.lots[0].jars[0].left == 28);
        CHECK(l.lots[0].jars[0].adjusted == -2);
        CHECK(l.adjusted == kg(-0.908));
        CHECK(codes(l.diagnostics) == Codes{"warning stocktake-difference"});
        CHECK(l.diagnostics[0].title == "28 jars of 454 g counted, but the books have 30");
    }
    SECTION("as the books say: nothing to report") {
        b.jars("2026-09-01", Kind::stocktake, 30, "454", "A");
        CHECK(b.account("2026-09-01").diagnostics.empty());
    }
    SECTION("a few grams in the tank") {
        b.kg("2026-09-01", Kind::stocktake, "26.3", "A");
        const Ledger l = b.account("2026-09-01");
        CHECK(l.lots[0].bulk == kg(26.3));
        CHECK(codes(l.diagnostics) == Codes{"note stocktake-difference"});
    }
    SECTION("lot unsaid: over all lots, missing from the oldest") {
        b.kg("2026-07-21", Kind::extracted, "20", "B");
        b.jars("2026-07-22", Kind::jars, 10, "454", "B");
        b.jars("2026-09-01", Kind::stocktake, 35, "454");
        const Ledger l = b.account("2026-09-01");
        CHECK(l.lots[0].jars[0].left == 25);
        CHECK(l.lots[1].jars[0].left == 10);
    }
}

TEST_CASE("what was there before and what was bought are lots of their own", "[ledger]") {
    HoneyBook b;
    b.jars("2026-03-01", Kind::opening_stock, 18, "454");
    b.kg("2026-04-01", Kind::bought_in, "20").text = "a neighbour";
    b.jars("2026-04-02", Kind::gone_out, 12, "454");
    const Ledger l = b.account("2026-05-01");
    REQUIRE(l.lots.size() == 2);
    CHECK(l.lots[0].name == "opening stock");
    CHECK(l.lots[0].jars[0].left == 6);
    CHECK(l.lots[1].name == "bought in 2026-04-01");
    CHECK(l.lots[1].bought_from == "a neighbour");
    CHECK(l.opening == kg(18 * 0.454));
    CHECK(l.bought == kg(20));
    CHECK(l.hives.empty());
    CHECK(l.diagnostics.empty());
}

TEST_CASE("what names a lot opened further down the same day comes after it", "[ledger]") {
    HoneyBook b;
    b.hive("h1");
    b.jars("2026-07-12", Kind::jars, 10, "454", "A");
    b.kg("2026-07-12", Kind::extracted, "12", "A").hives = {0};
    const Ledger l = b.account("2026-07-12");
    CHECK(codes(l.diagnostics) == Codes{"warning nothing-waiting"});
    CHECK(l.lots[0].in_jars == kg(4.54));
}

TEST_CASE("jar sizes as labels have them", "[ledger]") {
    CHECK(jar_text(Mass::grams(454)) == "454 g");
    CHECK(jar_text(Mass::grams(1000)) == "1 kg");
    CHECK(jar_text(Mass::grams(2500)) == "2.5 kg");
    CHECK(jar_text({453'592'370'000}) == "1 lb");
    CHECK(jar_text({12 * std::int64_t{28'349'523'125}}) == "12 oz");
}
