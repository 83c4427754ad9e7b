#include <catch2/catch.hpp>

#include "account_checked.hpp"
#include "ledger/concerns.hpp"
#include "ledger/records.hpp"
#include "ledger/trace.hpp"
#include "ledger/yields.hpp"

using namespace waxtab;

namespace {


const std::string set_up = R"(units kg
yard mill
hive h1 at mill: deep, excluder, super drawn9 "A"
hive h2 at mill: deep, excluder, super drawn9 "B"
hive h3 at mill: deep, excluder, super drawn9 "C"

2026-07-20 mill
h1 top 90% full
h2 top 70% full
h3 top 100% full
)";

/// Supers off and extracted.
const std::string harvest = set_up + R"(
2026-07-24 mill
h1: "A" off
h2: "B" off
h3: "C" off

2026-07-26
extracted 36 kg lot 1
)";

}  // namespace

TEST_CASE("weighed before and after, the example's lot is shared by net weights", "[ledger]") {
    const Accounted a = account_text(R"(units kg
hive h1 at mill: deep, excluder, super drawn9 "A"
hive h2 at mill: deep, excluder, super drawn9 "B"

2026-07-24 mill
h1: "A" off 22.4 kg
h2: "B" off 19.8 kg

2026-07-26
extracted 29.3 kg lot 1 from h1 h2
h1 "A" after extracting 6.0 kg
h2 "B" after extracting 5.9 kg
moisture 17.6 lot 1

2026-08-01
filled 60 x 454 g lot 1
best before 2028-08-01 lot 1

2026-08-08
sold 24 x 454 g lot 1 to village shop
gave away 2 x 454 g lot 1
)", "2026-09-01");
    REQUIRE(a.ledger.lots.size() == 1);
    const Lot& lot = a.ledger.lots[0];
    CHECK(lot.shares.at(0).honey.value == kg(15.859));
    CHECK(lot.shares.at(0).honey.weighed);
    CHECK(lot.shares.at(1).honey.value == kg(13.441));
    CHECK(lot.moisture_permille == 176);
    CHECK(lot.jars.at(0).left == 34);
    CHECK(lot.bulk == kg(2.06));
    CHECK(lot.best_before == "2028-08-01");
    CHECK(a.ledger.diagnostics.empty());
    const Trace t = trace(a.journal, a.history, a.ledger, "1");
    CHECK(t.recall.size() == 2);
}

TEST_CASE("estimated supers share what was weighed, with ranges", "[ledger]") {
    const Accounted a = account_text(harvest, "2026-08-01");
    const Lot& lot = a.ledger.lots.at(0);
    REQUIRE(lot.shares.size() == 3);
    CHECK(lot.shares[2].honey.value > lot.shares[0].honey.value);
    CHECK(lot.shares[0].honey.value > lot.shares[1].honey.value);
    CHECK(lot.shares[1].honey.low < lot.shares[1].honey.high);
}

TEST_CASE("shares stand still whatever is noted later", "[ledger]") {
    const auto shares = [](const std::string& text, std::string_view on) {
        std::vector<std::tuple<HiveId, Mass, Mass, Mass>> out;
        const Accounted a = account_text(text, on);
        for (const LotShare& s : a.ledger.lots.at(0).shares)
            out.push_back({s.hive, s.honey.low, s.honey.value, s.honey.high});
        return out;
    };
    const auto then = shares(harvest, "2026-07-26");
    SECTION("empty boxes weighed a week later") {
        const std::string later = harvest + R"(
2026-08-02
h1 "A" after extracting 6.0 kg
h3 "C" after extracting 6.3 kg
)";
        CHECK(shares(later, "2026-08-02") == then);
    }
    SECTION("the next harvest, weighed, teaches what the keeper's full is") {
        const std::string later = harvest + R"(
2026-08-02 mill
h1 +super drawn9 "D"
2026-08-12 mill
h1 top 50% full
h1: "D" off 22.0 kg
2026-08-14
extracted lot 2
h1 "D" after extracting 6.0 kg
)";
        CHECK(shares(later, "2026-08-20") == then);
    }
    SECTION("a note dated back") {
        const std::string later = harvest + R"(
2026-08-02 mill
h2 top was 20% full on 23 July
)";
        CHECK(shares(later, "2026-08-02") == then);
    }
    SECTION("standing on an earlier day of the longer journal") {
        CHECK(shares(harvest + "\n2026-08-02 mill\nh1 calm\n", "2026-07-26") == then);
    }
}

TEST_CASE("more jars than honey, more out than filled, cite the lines they contradict", "[ledger]") {
    const Accounted a = account_text(harvest + R"(
2026-08-01
filled 100 x 454 g lot 1
2026-08-02
sold 120 x 454 g lot 1 to shop
)", "2026-09-01");
    CHECK(codes(a.ledger.diagnostics) == std::vector<std::string>{"error more-than-there-is", "error more-out-than-filled"});
    REQUIRE(a.ledger.diagnostics.size() == 2);
    CHECK(a.journal.sources.text(a.ledger.diagnostics[0].related.at(0).span).find("extracted 36 kg") != std::string_view::npos);
    CHECK(a.journal.sources.text(a.ledger.diagnostics[1].related.at(0).span).find("filled 100") != std::string_view::npos);
}

TEST_CASE("a lot named in capitals is shown as written", "[ledger]") {
    const Accounted a = account_text("units kg\nhive h1: deep, super \"A\"\n\n2026-07-24\nh1 \"A\" off 22 kg\nextracted 16 kg lot Summer\n", "2026-09-01");
    CHECK(a.ledger.lots.at(0).name == "Summer");
}

TEST_CASE("yards in files of their own make the same ledger as one file", "[ledger]") {
    const Day on = day_from_iso("2026-09-01").value();
    const std::string mill = "2026-07-24 mill\nh1: \"A\" off 22 kg\n";
    const std::string house = "2026-07-24\nextracted 15 kg lot 1\nfilled 20 x 454 g lot 1\n";
    const std::string hives = "units kg\nhive h1 at mill: deep, excluder, super drawn9 \"A\"\n";
    const auto ledger = [&](std::vector<JournalFile> files) {
        const Journal j = read_journal(std::move(files), on);
        const History h = replay(j, on);
        return account_checked(j, h, estimate(j, h));
    };
    const Ledger one = ledger({{"all.hive", hives + "\n" + mill + house}});
    const Ledger split = ledger({{"set-up.hive", hives}, {"b-mill.hive", mill}, {"a-house.hive", house}});
    REQUIRE(one.lots.size() == 1);
    REQUIRE(split.lots.size() == 1);
    CHECK(one.lots[0].shares.at(0).hive == split.lots[0].shares.at(0).hive);
    CHECK(one.lots[0].bulk == split.lots[0].bulk);
    CHECK(split.waiting.empty());
}

TEST_CASE("supers off, then fed and treated the same day: no concern of that honey", "[ledger]") {
    const std::string hive = "units kg\nyard mill\nhive h1 at mill: deep, excluder, super drawn9\n\n2026-07-20 mill\n";
    const std::string off = "h1 super off 20 kg\n", fed = "h1 fed 2 L syrup 2:1\n", in = "h1 amitraz strips in for 6 weeks\n";
    const std::string lot = "\n2026-07-21\nextracted 12 kg lot B from h1\n";
    const Accounted after = account_text(hive + off + fed + in + lot, "2026-08-01");
    const Concerns none = concerns_of(after.journal, after.history, after.ledger.lots.at(0));
    CHECK((none.feeds.empty() && none.possible_feeds.empty() && none.treatments.empty()));
    // The same day the other way round: both were on while the super was.
    const Accounted before = account_text(hive + fed + in + off + lot, "2026-08-01");
    const Concerns both = concerns_of(before.journal, before.history, before.ledger.lots.at(0));
    CHECK((both.feeds.size() == 1 && both.treatments.size() == 1));
}

TEST_CASE("strips out, then the super on the same day: no concern of its honey", "[ledger]") {
    const Accounted a = account_text("units kg\nyard mill\nhive h1 at mill: deep, excluder\n\n2026-04-01 mill\nh1 amitraz strips in\n\n2026-05-10 mill\n"
                                     "h1 amitraz strips out\nh1 +super drawn9\n\n2026-07-20 mill\nh1 super off 20 kg\n\n2026-07-21\nextracted 12 kg lot B from h1\n", "2026-08-01");
    CHECK(concerns_of(a.journal, a.history, a.ledger.lots.at(0)).treatments.empty());
}
