#include <limits>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "report/supers.hpp"
#include "report/timeline.hpp"
#include "report_fixture.hpp"

using namespace waxtab;

TEST_CASE("the timeline draws the stack as it stands and tells the days") {
    const Read r(small_journal, june(3));
    const std::string text = timeline_text(r.journal, r.history, {}, {});
    const std::size_t upper = text.find("super, medium, 9 frames, drawn  since 2026-06-03");
    const std::size_t lower = text.find("super, medium, 9 frames, drawn  from the start");
    const std::size_t excluder = text.find("----- excluder -----");
    const std::size_t floor = text.find("===== floor =====");
    CHECK(upper < lower);
    CHECK(lower < excluder);
    CHECK(excluder < floor);
    CHECK(floor < text.find("  2026-06-03  top 70% capped"));
    CHECK(holds(text, "Yard mill\n\n  2026-06-03  24C, sunny, flow heavy, white clover in bloom"));
    CHECK(holds(text, "assumed: "));
    CHECK(widest_line(text) <= 80);
}

TEST_CASE("the timeline lists chosen days but stacks what stands now") {
    const Read r(small_journal + "\n2026-06-10 mill\nh3 calm\n", june(10));
    Selection selection;
    selection.since = june(9);
    const std::string text = timeline_text(r.journal, r.history, selection, {});
    CHECK(holds(text, "since 2026-06-03"));
    CHECK_FALSE(holds(text, "70%"));
    CHECK(holds(text, "calm"));
}

TEST_CASE("a dead hive says so and has no stack to show") {
    const Read r(small_journal + "\n2026-06-10 mill\nh3 dead\n", june(10));
    const std::string text = timeline_text(r.journal, r.history, {}, {});
    CHECK(holds(text, "from the start, dead 2026-06-10"));
    CHECK_FALSE(holds(text, "floor"));
    CHECK(nlohmann::json::parse(timeline_json(r.journal, r.history, {}, {}))["hives"][0]["alive"] == false);
}

TEST_CASE("a hive that comes into being later is shown only when asked for") {
    const Read r(small_journal + "\n2026-06-10 mill\nsplit h3 into n1\n", june(5));
    CHECK_FALSE(holds(timeline_text(r.journal, r.history, {}, {}), "n1"));
    Selection selection;
    selection.hives = {r.journal.hive("n1")};
    CHECK(holds(timeline_text(r.journal, r.history, selection, {}), "not yet in being"));
}

TEST_CASE("timeline json has the stack from the floor up") {
    const Read r(small_journal, june(3));
    const auto json = nlohmann::json::parse(timeline_json(r.journal, r.history, {}, {}));
    CHECK(json["on"] == "2026-06-03");
    const auto& stack = json["hives"][0]["stack"];
    REQUIRE(stack.size() == 4);
    CHECK(stack[0]["role"] == "brood");
    CHECK(stack[1]["what"] == "excluder");
    CHECK(stack[2]["since"].is_null());
    CHECK(stack[3]["since"] == "2026-06-03");
    CHECK(stack[3]["at"] == "a.hive:7");
}

namespace {

/// The small journal with estimates made up, so that every word printed is known.
Read with_made_up_estimates() {
    Read r(small_journal, june(3));
    HiveEstimate& hive = r.estimates.hives.at(0);
    hive.kg_per_day = {0.8, 1.9, 3.0};
    hive.room_kg = {7, 11.4, 15.2};
    hive.days_of_room = {3, 6, std::numeric_limits<double>::infinity()};
    hive.from_own_visits = true;
    hive.no_room = false;
    SuperEstimate& lower = r.estimates.supers.at(0);
    lower.full = {0.7, 0.8, 0.9};
    lower.capped = {0.6, 0.7, 0.75};
    lower.kg = {6.9, 8.2, 9.6};
    lower.capacity_kg = {9, 11, 13};
    lower.ripe_early = june(10), lower.ripe_likely = june(14), lower.ripe_late = june(20);
    r.estimates.keeper.words = "a super you call full has held 80 % of the usual";
    return r;
}

}  // namespace

TEST_CASE("supers are shown from the top down, each figure with its range") {
    const Read r = with_made_up_estimates();
    const std::string text = supers_text(r.journal, r.history, r.estimates, {}, {});
    CHECK(holds(text, "Yard mill, 1 hive\n\nh3\n  gains 1.9 kg a day (0.8-3.0)\n  room for 11.4 kg (7.0-15.2): 6 days (3 or more)\n"));
    CHECK(holds(text, "  1      80% (70-90)  70% (60-75)  8.2 kg (6.9-9.6)  2026-06-03\n"));
    CHECK(text.find("\n  2  ") < text.find("\n  1  "));
    CHECK(holds(text, "fit to take, by the capping: super 1 about 2026-06-14 (2026-06-10 to\n    2026-06-20)"));
    CHECK(holds(text, "read from: "));
    CHECK(holds(text, "assumed: medium (supers 2, 1)"));
    CHECK(holds(text, "a super you call full"));
    CHECK(widest_line(text) <= 80);
    Style bare;
    bare.refs = false;
    CHECK_FALSE(holds(supers_text(r.journal, r.history, r.estimates, {}, bare), "a.hive"));
}

TEST_CASE("supers json has shares in percent and no value for what never ends") {
    const Read r = with_made_up_estimates();
    const auto json = nlohmann::json::parse(supers_json(r.journal, r.history, r.estimates, {}, {}));
    const auto& hive = json["hives"][0];
    CHECK(hive["days_of_room"]["value"] == 6);
    CHECK(hive["days_of_room"]["high"].is_null());
    CHECK(hive["supers"][0]["place"] == 1);
    CHECK(hive["supers"][0]["full"]["value"] == 80);
    CHECK(hive["supers"][0]["honey"]["high"] == 9.6);
    CHECK(hive["supers"][0]["at"].is_array());
}

TEST_CASE("what a super holds when full is shown with its range, and its honey never ends above it") {
    const Read made_up = with_made_up_estimates();
    CHECK(holds(supers_text(made_up.journal, made_up.history, made_up.estimates, {}, {}), "(super 2); 11.0 kg (9.0-13.0) (super 1)\n"));
    const Read r(small_journal + "\n2026-06-10 mill\nh3 bottom full, top full\n", june(11));
    const std::string text = supers_text(r.journal, r.history, r.estimates, {}, {});
    INFO(text);
    CHECK(holds(text, "\n  when full, each: "));
    for (const SuperEstimate& s : r.estimates.supers) {
        CHECK(s.kg.high <= s.capacity_kg.high);
        CHECK(s.capacity_kg.low < s.capacity_kg.high);
    }
}

TEST_CASE("looks that do not go together are named for machines too") {
    Read r = with_made_up_estimates();
    r.estimates.supers.at(1).fell_from = 0.823;
    const auto json = nlohmann::json::parse(supers_json(r.journal, r.history, r.estimates, {}, {}));
    CHECK(json["hives"][0]["supers"][0]["fell_from"].is_null());
    CHECK(json["hives"][0]["supers"][1]["fell_from"] == 82.3);
}

TEST_CASE("what the scale has shown of the eye names its weighings") {
    Read r = with_made_up_estimates();
    r.estimates.keeper.because = {0};
    const std::string line = r.journal.sources.at(r.journal.facts[0].span);
    CHECK(holds(supers_text(r.journal, r.history, r.estimates, {}, {}), "of the usual.\n  read from: " + line + "\n"));
    const auto json = nlohmann::json::parse(supers_json(r.journal, r.history, r.estimates, {}, {}));
    CHECK(json["keeper_at"][0] == line);
    Style bare;
    bare.refs = false;
    CHECK_FALSE(nlohmann::json::parse(supers_json(r.journal, r.history, r.estimates, {}, bare)).contains("keeper_at"));
}
