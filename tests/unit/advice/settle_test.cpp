// Contradictions are settled by rank, nothing is said twice.
#include "advice/settle.hpp"

#include <catch2/catch.hpp>

using namespace waxtab;

namespace {

Advice make(HiveId hive, Act act, Rank rank, const char* rule, const char* what) {
    Advice a;
    a.hive = hive;
    a.yard = 0;
    a.act = act;
    a.rank = rank;
    a.rule = rule;
    a.what = what;
    a.reasons = {std::string("because of ") + rule};
    return a;
}

}  // namespace

TEST_CASE("the lower rank loses and is named by the winner", "[advice][settle]") {
    auto out = settle({make(1, Act::stop_feed, Rank::law_and_food, "feed-with-supers", "take the feed off"),
                       make(1, Act::add_super, Rank::room, "room-runs-out", "put a super on"),
                       make(2, Act::add_super, Rank::room, "room-runs-out", "put a super on")});
    REQUIRE(out.size() == 2);
    CHECK(out[0].over == std::vector<std::string>{"put a super on (room-runs-out)"});
    CHECK(out[1].hive == 2);
}

TEST_CASE("disease outranks everything that moves, at every hive of the yard", "[advice][settle]") {
    auto still = make(no_hive, Act::stand_still, Rank::disease, "notifiable-disease", "call the inspector");
    auto elsewhere = make(9, Act::take_honey, Rank::rest, "take-when-ripe", "take it off");
    elsewhere.yard = 1;
    auto out = settle({still, make(1, Act::take_honey, Rank::rest, "take-when-ripe", "take it off"),
                       make(2, Act::split, Rank::swarm, "queen-and-cells", "split it"),
                       make(2, Act::feed, Rank::rest, "hunger", "feed syrup"), elsewhere});
    REQUIRE(out.size() == 3);
    CHECK(out[0].over.size() == 2);
    CHECK(out[1].rule == "hunger");
    CHECK(out[2].hive == 9);
}

TEST_CASE("a winner that itself loses hands on what it beat", "[advice][settle]") {
    auto still = make(no_hive, Act::stand_still, Rank::disease, "notifiable-disease", "call the inspector");
    auto out = settle({still, make(1, Act::leave_shut, Rank::swarm, "virgin-quiet", "leave it shut"),
                       make(1, Act::split, Rank::swarm, "queen-and-cells", "split it"),
                       make(1, Act::open, Rank::rest, "inspection-due", "inspect it")});
    REQUIRE(out.size() == 2);
    std::size_t over = out[0].over.size() + out[1].over.size();
    CHECK(over == 2);
}

TEST_CASE("leaving one super on does not keep another from coming off", "[advice][settle]") {
    auto wet = make(1, Act::leave_super, Rank::law_and_food, "not-ripe", "leave the top super on");
    wet.boxes = {7};
    auto ripe = make(1, Act::take_honey, Rank::rest, "take-when-ripe", "take the bottom super off");
    ripe.boxes = {5};
    auto same = make(1, Act::take_honey, Rank::rest, "take-when-ripe", "take the top super off");
    same.boxes = {7};
    auto out = settle({wet, ripe, same});
    REQUIRE(out.size() == 2);
    CHECK(out[1].boxes == std::vector<BoxId>{5});
}

TEST_CASE("what asks for the same is joined: reasons of both, the earlier day", "[advice][settle]") {
    auto a = make(1, Act::add_super, Rank::room, "crowded", "put a super on");
    auto b = make(1, Act::add_super, Rank::room, "room-runs-out", "put a super on");
    a.by = *day_from_iso("2026-06-05");
    b.by = *day_from_iso("2026-06-03");
    b.because = {4};
    auto out = settle({a, b});
    REQUIRE(out.size() == 1);
    CHECK(out[0].also == std::vector<std::string>{"room-runs-out"});
    CHECK(out[0].reasons.size() == 2);
    CHECK(out[0].by == b.by);
    CHECK(out[0].because == std::vector<FactId>{4});
}

TEST_CASE("several ripe supers are one piece of advice", "[advice][settle]") {
    auto a = make(1, Act::take_honey, Rank::rest, "take-when-ripe", "take super 1 off for honey");
    auto b = make(1, Act::take_honey, Rank::rest, "take-when-ripe", "take the top super off for honey");
    a.boxes = {1};
    b.boxes = {2};
    b.sureness = Sureness::possible;
    auto out = settle({a, b});
    REQUIRE(out.size() == 1);
    CHECK(out[0].what == "take 2 supers off for honey");
    CHECK(out[0].sureness == Sureness::possible);
    CHECK(out[0].also.empty());
}

TEST_CASE("a split makes the inspection, and coming back for a cleared super its taking off", "[advice][settle]") {
    auto out = settle({make(1, Act::split, Rank::swarm, "queen-and-cells", "split it"),
                       make(1, Act::open, Rank::rest, "inspection-due", "inspect it"),
                       make(2, Act::take_honey, Rank::rest, "take-when-ripe", "take it off"),
                       make(2, Act::clear, Rank::rest, "escape-board", "come back")});
    REQUIRE(out.size() == 2);
    CHECK(out[0].act == Act::split);
    CHECK(out[0].over.empty());
    CHECK(out[1].act == Act::clear);
}

TEST_CASE("most urgent first, disease before all", "[advice][settle]") {
    auto late = make(1, Act::add_super, Rank::room, "room-runs-out", "a");
    late.by = *day_from_iso("2026-06-10");
    auto soon = make(2, Act::open, Rank::rest, "inspection-due", "b");
    soon.by = *day_from_iso("2026-06-05");
    auto some_day = make(3, Act::note, Rank::law_and_food, "fed-super", "c");
    auto still = make(no_hive, Act::stand_still, Rank::disease, "notifiable-disease", "d");
    std::vector<Advice> all{late, some_day, soon, still};
    sort_by_urgency(all);
    CHECK(all[0].what == "d");
    CHECK(all[1].what == "b");
    CHECK(all[2].what == "a");
    CHECK(all[3].what == "c");
}
