#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "report/bring.hpp"
#include "report_fixture.hpp"

using namespace waxtab;

namespace {

const std::string two_hives = "hive h3 at mill: deep, excluder, super drawn9\nhive h4 at mill: deep, excluder, super drawn9\n\n"
                              "2026-06-03 mill\nh3 super 70% capped\n";

Round a_round(const Read& r) {
    Round round;
    round.from = june(3);
    round.to = june(10);
    YardRound yard;
    yard.yard = r.journal.yard("mill");
    yard.day = june(5);
    Stop stop;
    stop.hive = 0;
    stop.advice = {0, 1};
    stop.by = june(5);
    yard.hives.push_back(stop);
    Stop only_todo;
    only_todo.hive = 1;
    only_todo.advice = {1};
    yard.hives.push_back(only_todo);
    SuperLoad load;
    load.box_kind = "medium";
    load.count = 2;
    load.reserve = 1;
    load.hives = {0};
    load.reserve_hives = {1};
    yard.supers.push_back(load);
    yard.escape_boards = 1;
    round.yards.push_back(yard);
    round.shed.push_back({"medium super, drawn", 2, 1, 1, 1, {}, {}});
    round.shed.push_back({"escape board", 1, 0, std::nullopt, 0, {}, {}});
    return round;
}

std::vector<Advice> the_advice() {
    Advice add;
    add.hive = 0;
    add.what = "put 2 supers on";
    add.act = Act::add_super;
    Advice todo;
    todo.hive = 1;
    todo.what = "your to-do: bring 2 supers";
    todo.act = Act::todo;
    return {add, todo};
}

}  // namespace

TEST_CASE("a round says what to load, in case too, and what the shed lacks") {
    const Read r(two_hives, june(3));
    const std::string text = bring_text(r.journal, a_round(r), the_advice(), {}, {});
    CHECK(holds(text, "What to bring, round of 2026-06-03 to 2026-06-10\n\nYard mill, 2026-06-05, 1 hive to open\n"));
    CHECK(holds(text, "    - 3 x medium super, drawn for h3; 1 of them in case"));
    CHECK(holds(text, "    - 1 escape board\n"));
    CHECK(holds(text, "      - put 2 supers on\n"));
    CHECK(holds(text, "  medium super, drawn       2        1            1      1\n"));
    CHECK(holds(text, "not said"));
}

TEST_CASE("a hive with nothing but a to-do is no hive to open") {
    const Read r(two_hives, june(3));
    const Round shown = listed(a_round(r), the_advice(), {});
    REQUIRE(shown.yards.size() == 1);
    CHECK(shown.yards[0].hives.size() == 1);
}

TEST_CASE("a round for machines") {
    const Read r(two_hives, june(3));
    const auto json = nlohmann::json::parse(bring_json(r.journal, a_round(r), the_advice(), {}, {}));
    CHECK(json["from"] == "2026-06-03");
    CHECK(json["yards"][0]["yard"] == "mill");
    CHECK(json["yards"][0]["supers"][0]["wanted"] == 2);
    CHECK(json["yards"][0]["supers"][0]["in_case"] == 1);
    CHECK(json["shed"][0]["short"] == 1);
    CHECK(json["shed"][1]["in_shed"].is_null());
}

TEST_CASE("everything to load names the lines it comes from") {
    const Read r("units kg\nhive h3 at mill: deep, excluder, super drawn9\n\n2026-05-28 mill\nshed: 1 super drawn9, 2 escape boards\n"
                 "flow heavy\nh3 super 60%\n\n2026-06-03 mill\nh3 super full, 95% capped\n"
                 "extracted 4 kg lot A from h3\nfilled 8 x 454 g lot A\n",
                 june(4));
    const std::vector<Advice> advice = advise(r.journal, r.history, r.estimates, r.ledger);
    const Round round = bring(r.journal, r.history, r.estimates, advice, june(4), june(11));
    REQUIRE(round.yards.size() == 1);
    const std::vector<LoadLine> lines = load_lines(r.journal, round.yards[0], {});
    CHECK(lines.size() >= 3);
    for (const LoadLine& line : lines) {
        INFO(line.words);
        CHECK_FALSE(line.because.empty());
    }
    REQUIRE_FALSE(round.shed.empty());
    for (const ShedCheck& row : round.shed) CHECK_FALSE(row.because.empty());
}

TEST_CASE("where the shed is short it is said who goes first and who without") {
    const Read r(two_hives, june(3));
    Round round = a_round(r);
    ShedClaim first, none;
    first.hive = 0, first.chances = {0.9}, first.gets = 1;
    none.hive = 1, none.chances = {0.4};
    round.shed[0].claims = {first, none};
    const std::string text = bring_text(r.journal, round, the_advice(), {}, {});
    INFO(text);
    CHECK(holds(text, "  - 1 short of medium super, drawn: first h3 (9 in 10); none for "));
    CHECK(holds(text, "(4 in 10)"));
    const auto json = nlohmann::json::parse(bring_json(r.journal, round, the_advice(), {}, {}));
    REQUIRE(json["shed"][0]["shares"].size() == 2);
    CHECK(json["shed"][0]["shares"][0]["gets"] == 1);
    CHECK(json["shed"][0]["shares"][1]["percent"] == 40);
    CHECK(json["shed"][1]["shares"].empty());
}

TEST_CASE("a super that is loaded for the time after the round is among what to do there") {
    const Read r(two_hives, june(3));
    Round round = a_round(r);
    round.yards[0].hives[0].advice = {1};
    round.yards[0].hives[0].supers = 1;
    round.yards[0].hives[0].chance_ahead = 0.42;
    CHECK(holds(bring_text(r.journal, round, the_advice(), {}, {}), "      - put a super on: 4 in 10 that room runs out before the round after\n"));
}
