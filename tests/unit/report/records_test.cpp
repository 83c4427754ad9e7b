// The books law asks for, printed.
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "ledger/ledger.hpp"
#include "report/lot_parts.hpp"
#include "report/records.hpp"

using namespace waxtab;

namespace {

struct Kept {
    Journal journal;
    History history;
    Records records;
};

Kept kept() {
    Kept k;
    const Day on = *day_from_iso("2026-09-30");
    k.journal = read_journal({{"a.hive", "units kg\nhive h1 at mill: deep\nhive h2 at mill: deep\n"
                                         "2026-08-10 mill\nh1 thymol strips in\nh2 thymol strips in\nh1 fed 2 kg sugar\n"
                                         "2026-09-07 mill\nh1 thymol strips out\nh2 thymol strips out\nh1 chalk brood\n"}}, on);
    for (Fact& f : k.journal.facts)
        if (f.kind == Kind::treatment_on) f.text = "batch 1234, from the vet, withdrawal 0 days";
    k.history = replay(k.journal, on);
    k.records = records(k.journal, k.history, account(k.journal, k.history, estimate(k.journal, k.history)));
    return k;
}

}  // namespace

// Source of the fields: SI 2013/2033 regs 17-19 and Regulation (EU) 2019/6 art. 108; a withdrawal period of zero is an entry.
TEST_CASE("a medicine is printed with every field law asks for, and what is not noted", "[report][records]") {
    const Kept k = kept();
    const std::string text = records_text(k.journal, k.history, k.records, {}, {});
    INFO(text);
    for (const char* words : {"2026-08-10 to 2026-09-07, 28 days, thymol", "batch 1234", "supplier the vet", "withdrawal period 0 days",
                              "hives: h1 and h2", "not noted: quantity", "sugar, 2 kg, h1", "not noted: origin in 1 of 1", "chalk brood",
                              "none noted", "your law"})
        CHECK(text.find(words) != std::string::npos);
    Selection h2;
    h2.hives = {k.journal.hive("h2")};
    const std::string part = records_text(k.journal, k.history, k.records, h2, {});
    CHECK(part.find("hives: h2") != std::string::npos);
    CHECK(part.find("sugar") == std::string::npos);
}

TEST_CASE("the records as JSON: what is not noted is null", "[report][records]") {
    const Kept k = kept();
    const auto json = nlohmann::json::parse(records_json(k.journal, k.history, k.records, {}, {}));
    REQUIRE(json["medicines"].size() == 1);
    CHECK(json["medicines"][0]["batch"] == "1234");
    CHECK(json["medicines"][0]["withdrawal"] == "0 days");
    CHECK(json["medicines"][0]["quantity"].is_null());
    CHECK(json["medicines"][0]["days"] == 28);
    CHECK(json["feeds"][0]["origin"].is_null());
    CHECK(json["trade"].empty());
}

// Directive 2001/110/EC: at most 20 %; a range that reaches over it answers nothing.
TEST_CASE("a limit inside the range of the water is not sure", "[report][records]") {
    const handbook::MoistureLimit& eu = *handbook::limit_answers(17, false)[0].limit;
    CHECK(limit_text({171, 171, 171, true, {}}, eu) == "EU honey law, at most 20%: met");
    CHECK(limit_text({142, 171, 227, false, {}}, eu) == "EU honey law, at most 20%: not sure, its range reaches over it");
    CHECK(limit_text({205, 210, 215, false, {}}, eu) == "EU honey law, at most 20%: not met");
}
