#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "report/harvest.hpp"
#include "report_fixture.hpp"

using namespace waxtab;

namespace {

const std::string season =
    "units kg\n"
    "hive h1 at mill: deep, excluder, super drawn9 \"A\"\n"
    "hive h2 at mill: deep, excluder, super drawn9 \"B\"\n"
    "\n"
    "2026-06-10 mill\n"
    "h1: \"A\" off 22.4 kg\n"
    "h2: \"B\" off 19.8 kg\n"
    "\n"
    "2026-06-11\n"
    "extracted 29.3 kg lot 1 from h1 h2\n"
    "h1 \"A\" after extracting 6.0 kg\n"
    "h2 \"B\" after extracting 5.9 kg\n"
    "moisture 17.6 lot 1\n"
    "filled 40 x 454 g lot 1\n"
    "sold 24 x 454 g lot 1 to village shop\n";

}  // namespace

TEST_CASE("the honey ledger: lots, shares, jars, what went out, what is left") {
    const Read r(season, june(12));
    const std::string text = harvest_text(r.journal, r.history, r.estimates, r.ledger, {}, {});
    CHECK(holds(text, "Lot 1, extracted 2026-06-11: 29.30 kg, weighed; moisture 17.6%"));
    CHECK(holds(text, "jars of 454 g: 40 filled, 24 out, 16 left"));
    CHECK(holds(text, "2026-06-11  24 jars of 454 g (10.90 kg), sold to village shop"));
    CHECK(holds(text, "left in bulk: 11.14 kg"));
    CHECK(holds(text, "Yard mill: 29.30 kg in 2 supers"));
    CHECK(holds(text, "All together"));
    CHECK(widest_line(text) <= 80);
}

TEST_CASE("a chosen hive shows its own shares, and no sums that are not its own") {
    const Read r(season, june(12));
    Selection selection;
    selection.hives = {r.journal.hive("h1")};
    const std::string text = harvest_text(r.journal, r.history, r.estimates, r.ledger, selection, {});
    CHECK(holds(text, "  h1 "));
    CHECK_FALSE(holds(text, "  h2 "));
    CHECK_FALSE(holds(text, "All together"));
    selection = {};
    selection.since = june(20);
    CHECK(harvest_text(r.journal, r.history, r.estimates, r.ledger, selection, {}).find("Lot 1") == std::string::npos);
}

TEST_CASE("a lot leads back to its supers and forward to its buyers") {
    const Read r(season, june(12));
    const std::string text = trace_text(r.journal, r.history, r.estimates, r.ledger, "1", {});
    // Net weight is gross less tare: 22.4 - 6.0 and 19.8 - 5.9 kg.
    CHECK(holds(text, "16.40 kg"));
    CHECK(holds(text, "13.90 kg"));
    CHECK(holds(text, "\"A\", on from the start, off 2026-06-10"));
    CHECK(holds(text, "sold to village shop"));
    CHECK(holds(text, "met"));
    CHECK(trace_text(r.journal, r.history, r.estimates, r.ledger, "none", {}).empty());
    CHECK(widest_line(text) <= 80);
}

TEST_CASE("honey that waits to be extracted is shown with its estimate") {
    const Read r("hive h1 at mill: deep, super\n\n2026-06-03 mill\nh1 top full\nh1 top off\n", june(4));
    const std::string text = harvest_text(r.journal, r.history, r.estimates, r.ledger, {}, {});
    CHECK(holds(text, "Waiting to be extracted"));
    CHECK(holds(text, "h1    2026-06-03"));
}

TEST_CASE("no honey is said") {
    const Read r(small_journal, june(3));
    CHECK(harvest_text(r.journal, r.history, r.estimates, r.ledger, {}, {}) == "No honey taken off by 2026-06-03.\n");
}

TEST_CASE("harvest json closes: shares sum to the lot") {
    const Read r(season, june(12));
    const auto json = nlohmann::json::parse(harvest_json(r.journal, r.history, r.estimates, r.ledger, {}, {}));
    double sum = 0;
    for (const auto& share : json["lots"][0]["shares"]) sum += share["honey"]["value"].get<double>();
    CHECK(sum == Approx(29.3).margin(0.001));
    CHECK(json["sums"]["extracted"] == 29.3);
    CHECK(json["yields"].size() == 2);
    const auto trace = nlohmann::json::parse(trace_json(r.journal, r.history, r.estimates, r.ledger, "1", {}));
    CHECK(trace["sources"].size() == 2);
    CHECK(trace["recall"][0]["to"] == "village shop");
}
