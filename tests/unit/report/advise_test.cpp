#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "report/advise.hpp"
#include "report_fixture.hpp"

using namespace waxtab;

namespace {

Advice add_a_super(const Read& r) {
    Advice a;
    a.hive = 0;
    a.what = "put a super on, under the one that is on";
    a.by = june(5);
    a.sureness_words = "likely: 7 in 10 that room runs out before 2026-06-10";
    a.rule = "room-runs-out";
    a.source = "a book, page 4";
    a.reasons = {"room for 3.0 kg (1-5), gaining 1.9 kg a day (0.8-3.0)"};
    for (FactId id = 0; id < r.journal.facts.size(); ++id)
        if (r.journal.facts[id].hive == 0) a.because.push_back(id);
    a.cautions = {"a full super is heavy"};
    a.act = Act::add_super;
    return a;
}

Advice own_todo() {
    Advice a;
    a.what = "your to-do: bring 2 supers";
    a.act = Act::todo;
    a.rule = "todo";
    return a;
}

}  // namespace

TEST_CASE("advice says where, what, by when, how sure, why, and quotes the journal") {
    const Read r(small_journal, june(3));
    const std::string text = advise_text(r.journal, r.history, {add_a_super(r)}, {}, {});
    CHECK(holds(text, "Advice for 2026-06-03\n\nWithin 7 days\n\n  h3 at mill: put a super on, under the one that is on\n"));
    CHECK(holds(text, "    by 2026-06-05, in 2 days; likely: 7 in 10 that room runs out before\n    2026-06-10\n"));
    CHECK(holds(text, "    - room for 3.0 kg (1-5), gaining 1.9 kg a day (0.8-3.0)\n"));
    CHECK(holds(text, "a.hive:6\n"));
    CHECK(holds(text, "\"+super"));
    CHECK(holds(text, "    rule: room-runs-out\n"));
    CHECK_FALSE(holds(text, "a book, page 4"));
    CHECK(holds(text, "'waxtab rules NAME'"));
    CHECK(holds(advise_text(r.journal, r.history, {add_a_super(r)}, {}, {}, true), "  - room-runs-out: a book, page 4\n"));
    CHECK(widest_line(text) <= 80);
}

TEST_CASE("cautions are said once at the end, to-dos before them, the most urgent first") {
    const Read r(small_journal, june(3));
    Advice late = add_a_super(r);
    late.by = june(1);
    late.what = "open it";
    const std::string text = advise_text(r.journal, r.history, {own_todo(), add_a_super(r), late}, {}, {});
    CHECK(times_in(text, "a full super is heavy") == 1);
    CHECK(text.find("Due now") < text.find("Within 7 days"));
    CHECK(holds(text, "was due by 2026-06-01, 2 days ago"));
    CHECK(text.find("Within 7 days") < text.find("Your own to-dos\n\n  - bring 2 supers\n"));
    CHECK(text.find("bring 2 supers") < text.find("Take care"));
}

TEST_CASE("without references the facts stand by day, however they were written") {
    const Read r(small_journal, june(3));
    Style style;
    style.refs = false;
    const std::string text = advise_text(r.journal, r.history, {add_a_super(r)}, {}, style);
    CHECK_FALSE(holds(text, "a.hive"));
    CHECK(holds(text, "      2026-06-03  top 70% capped, +super drawn9\n"));
}

TEST_CASE("nothing to do is said") {
    const Read r(small_journal, june(3));
    CHECK(advise_text(r.journal, r.history, {}, {}, {}) == "Nothing to do on 2026-06-03, as far as the journal tells.\n");
    Selection other_yard;
    other_yard.yards = {99};
    CHECK(advise_text(r.journal, r.history, {add_a_super(r)}, other_yard, {}).starts_with("Nothing to do"));
}

TEST_CASE("advice json carries rule, source, reasons and lines") {
    const Read r(small_journal, june(3));
    const auto json = nlohmann::json::parse(advise_json(r.journal, r.history, {add_a_super(r)}, {}, {}));
    const auto& a = json["advice"][0];
    CHECK(a["hive"] == "h3");
    CHECK(a["by"] == "2026-06-05");
    CHECK(a["rule"] == "room-runs-out");
    CHECK(a["source"] == "a book, page 4");
    CHECK(a["because"][0]["at"] == "a.hive:6");
}

TEST_CASE("chances are figures for machines") {
    const Read r(small_journal, june(3));
    Advice a = add_a_super(r);
    a.chances = {{"room runs out", 0.734, june(10), 0, no_box}, {"fit to take", 0.5, june(3), 0, r.history.supers_on(0).back()}};
    const auto json = nlohmann::json::parse(advise_json(r.journal, r.history, {a}, {}, {}));
    const auto& chance = json["advice"][0]["chances"][0];
    CHECK(chance["hive"] == "h3");
    CHECK(chance["that"] == "room runs out");
    CHECK(chance["percent"] == 73);
    CHECK(chance["by"] == "2026-06-10");
    CHECK(chance["super"].is_null());
    CHECK(json["advice"][0]["chances"][1]["super"] == 2);
}

TEST_CASE("of many lines the first and the latest are quoted, the places of all are named") {
    std::string journal = "units kg\nhive h3 at mill: deep, excluder, super drawn9\n";
    for (int day = 1; day <= 20; ++day) journal += fmt::format("\n2026-05-{:02} mill\nh3 top {}% full\n", day, 10 + day);
    const Read r(journal, june(1));
    Advice a;
    a.hive = 0;
    a.what = "look";
    for (FactId id = 0; id < r.journal.facts.size(); ++id)
        if (r.journal.facts[id].hive == 0) a.because.push_back(id);
    REQUIRE(a.because.size() == 20);
    const std::string text = advise_text(r.journal, r.history, {a}, {}, {});
    INFO(text);
    CHECK(times_in(text, "% full") == 7);
    CHECK(holds(text, "\"top 11% full\""));
    CHECK(holds(text, "\"top 30% full\""));
    CHECK(holds(text, "and 13 lines more: a.hive:11,14,17,20,23,26,29,32,35,38,41,44,47\n"));
    CHECK(widest_line(text) <= 80);
}

TEST_CASE("a caution names the hives it is meant for") {
    const Read r(small_journal, june(3));
    CHECK(holds(advise_text(r.journal, r.history, {add_a_super(r)}, {}, {}), "  - h3: a full super is heavy\n"));
}
