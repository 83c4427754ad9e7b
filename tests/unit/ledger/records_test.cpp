#include <catch2/catch.hpp>

#include "honey_book.hpp"
#include "ledger/medicine_note.hpp"
#include "ledger/records.hpp"

using namespace waxtab;
using waxtab::testing::HoneyBook;

TEST_CASE("medicine records have the fields the law asks for, or say not noted", "[ledger]") {
    // SI 2013/2033 regs 17-19; Regulation (EU) 2019/6 art. 108.
    HoneyBook b;
    b.hive("h1"), b.hive("h2"), b.hive("h3");
    for (const HiveId h : {0, 1}) {
        Fact& f = b.fact("2026-08-20", Kind::treatment_on);
        f.hive = h, f.detail = "amitraz", f.count = 2, f.text = "batch 17A, from the vet, withdrawal 0 days";
        b.history.hives[static_cast<std::size_t>(h)].treatings = {{on("2026-08-20"), on("2026-10-01"), b.last(), "amitraz", 42}};
    }
    Fact& f = b.fact("2026-12-20", Kind::treatment);
    f.hive = 2, f.detail = "oxalic acid", f.value = measure("35", Unit::millilitre).value();
    b.history.hives[2].treatings = {{on("2026-12-20"), on("2026-12-20"), b.last(), "oxalic acid", {}}};
    const Records r = records(b.journal, b.history, b.account("2026-12-31"));
    REQUIRE(r.medicines.size() == 2);
    const MedicineRecord& amitraz = r.medicines[0];
    CHECK(amitraz.substance == "amitraz");
    CHECK(amitraz.hives == std::vector<HiveId>{0, 1});
    CHECK(amitraz.quantity == "2 strips");
    CHECK(amitraz.batch == "17A");
    CHECK(amitraz.supplier == "the vet");
    CHECK(amitraz.withdrawal == "0 days");
    CHECK(amitraz.days == 42);
    CHECK(amitraz.missing.empty());
    const MedicineRecord& oxalic = r.medicines[1];
    CHECK(oxalic.quantity == "35 ml");
    CHECK(oxalic.days == 1);
    CHECK(oxalic.batch == not_noted);
    CHECK(oxalic.missing == std::vector<std::string>{"batch", "supplier", "withdrawal period"});
}

TEST_CASE("a medicine still in has no last day", "[ledger]") {
    HoneyBook b;
    b.hive("h1");
    b.fact("2026-08-20", Kind::treatment_on).hive = 0;
    b.journal.facts.back().text = "a new thing";
    b.history.hives[0].treatings = {{on("2026-08-20"), {}, 0, "a new thing", {}}};
    const Records r = records(b.journal, b.history, b.account("2026-09-01"));
    CHECK_FALSE(r.medicines.at(0).last);
    CHECK_FALSE(r.medicines[0].days);
    CHECK(r.medicines[0].substance == "a new thing");
    CHECK(r.medicines[0].batch == not_noted);
}

TEST_CASE("words beside a treatment", "[ledger]") {
    CHECK(medicine_note("17A").product == "17A");
    CHECK(medicine_note("Batch: 17A; supplier the vet").batch == "17A");
    CHECK(medicine_note("withdrawal period 14 days").withdrawal == "14 days");
    CHECK(medicine_note("batches").batch.empty());
    const MedicineNote run_on = medicine_note("batch 77B from Bee Supplies Ltd withdrawal 0 days");
    CHECK(run_on.batch == "77B");
    CHECK(run_on.supplier == "Bee Supplies Ltd");
    CHECK(run_on.withdrawal == "0 days");
    CHECK(medicine_note("17A bought from the vet").supplier == "the vet");
    CHECK(medicine_note("17A bought from the vet").product == "17A");
}

TEST_CASE("feeds of a day and kind are one record", "[ledger]") {
    // Regulation (EC) 852/2004 annex I: nature and origin of feed.
    HoneyBook b;
    b.hive("h1"), b.hive("h2");
    for (const HiveId h : {0, 1}) {
        Fact& f = b.fact("2026-09-01", Kind::feed);
        f.hive = h, f.detail = "syrup", f.value = measure("2", Unit::litre).value();
    }
    b.fact("2026-09-01", Kind::feed).hive = 0;
    b.journal.facts.back().detail = "fondant";
    const Records r = records(b.journal, b.history, b.account("2026-09-01"));
    REQUIRE(r.feeds.size() == 2);
    CHECK(r.feeds[0].hives == std::vector<HiveId>{0, 1});
    CHECK(r.feeds[0].amount == "2 L");
    CHECK(r.feeds[1].amount == not_noted);
    CHECK(r.feeds[1].missing == std::vector<std::string>{"amount", "origin"});
}

TEST_CASE("one step back, one step forward", "[ledger]") {
    // Regulation (EC) 178/2002 art. 18: who supplied you, which businesses you supplied.
    HoneyBook b;
    b.kg("2026-04-01", Kind::bought_in, "20", "N").text = "a neighbour";
    b.jars("2026-04-05", Kind::jars, 20, "454", "N");
    Fact& f = b.jars("2026-04-10", Kind::gone_out, 12, "454", "N");
    f.text = "farm shop", f.manner = "business";
    b.jars("2026-04-11", Kind::gone_out, 1, "454", "N").detail = "given";
    b.jars("2026-04-12", Kind::gone_out, 2, "454", "N");
    const Records r = records(b.journal, b.history, b.account("2026-05-01"));
    REQUIRE(r.trade.size() == 3);
    CHECK(r.trade[0].in);
    CHECK(r.trade[0].who == "a neighbour");
    CHECK(r.trade[1].business);
    CHECK(r.trade[2].who == not_noted);
}

TEST_CASE("disease noted of several hives on a day is one record; its absence none", "[ledger]") {
    HoneyBook b;
    b.hive("h1"), b.hive("h2");
    for (const HiveId h : {0, 1}) {
        Fact& f = b.fact("2026-05-01", Kind::disease);
        f.hive = h, f.detail = "chalk brood";
    }
    b.fact("2026-05-02", Kind::disease).manner = "none";
    const Records r = records(b.journal, b.history, b.account("2026-05-03"));
    REQUIRE(r.diseases.size() == 1);
    CHECK(r.diseases[0].hives.size() == 2);
}
