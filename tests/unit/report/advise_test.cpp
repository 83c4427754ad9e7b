#include <catch2/catch.hpp>
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
    a.caution = "a full super is heavy";
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
