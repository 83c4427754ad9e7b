// Journals whose notes do not go together: estimates stay within what bees and boxes can do.
#include <catch2/catch.hpp>

#include <string>

#include "estimate/estimate.hpp"

using namespace waxtab;

namespace {

Estimates read(const std::string& text, std::string_view on) {
    const Day day = *day_from_iso(on);
    const Journal journal = read_journal({{"bees.hive", text}}, day);
    return estimate(journal, replay(journal, day));
}

void ordered(const Range& r) {
    CHECK(r.low <= r.value);
    CHECK(r.value <= r.high);
}

/// What holds for any journal whatever.
void sane(const Estimates& e) {
    for (const SuperEstimate& s : e.supers) {
        for (const Range& r : {s.full, s.capped, s.drawn}) {
            ordered(r);
            CHECK(r.low >= 0);
            CHECK(r.high <= 1);
        }
        ordered(s.kg);
        CHECK(s.kg.low >= 0);
        CHECK(s.kg.high <= s.capacity_kg.high + 0.001);
        CHECK(s.capped.value <= s.full.value);
    }
    for (const HiveEstimate& h : e.hives) {
        double holds = 0;
        for (const SuperEstimate& s : e.supers) holds += s.hive == h.hive ? s.capacity_kg.value : 0;
        ordered(h.kg_per_day);
        ordered(h.room_kg);
        CHECK(h.kg_per_day.low >= -0.5);
        CHECK(h.kg_per_day.high < 8);
        CHECK(h.room_kg.low >= 0);
        CHECK(h.room_kg.high <= holds + 0.001);
        CHECK(h.days_of_room.low <= h.days_of_room.value);
        CHECK(h.days_of_room.value <= h.days_of_room.high);
    }
    for (const YardEstimate& y : e.yards) CHECK(y.kg_per_day.low >= -0.5);
}

const std::string put_on = "hive h1 at mill: deep, excluder\n\n2026-05-01 mill\nh1 super drawn on\n";

}  // namespace

TEST_CASE("honey that went unnoted is no dearth", "[estimate][contradiction]") {
    const Estimates e = read(put_on + "\n2026-06-01 mill\nh1 super 90%\n\n2026-06-03 mill\nh1 super 20%\n", "2026-06-03");
    sane(e);
    CHECK(e.supers.at(0).full.value == Approx(0.2).margin(0.06));
    CHECK(e.supers.at(0).full.high > 0.25);
    REQUIRE(e.supers.at(0).fell_from.has_value());
    CHECK(*e.supers.at(0).fell_from > 0.8);
    CHECK(e.hives.at(0).kg_per_day.value > -0.1);
}

TEST_CASE("full one day and nearly empty the next", "[estimate][contradiction]") {
    const Estimates e = read(put_on + "\n2026-05-31 mill\nh1 super full\n\n2026-06-01 mill\nh1 super 10%\n", "2026-06-01");
    sane(e);
    CHECK(e.supers.at(0).full.value < 0.2);
    CHECK(e.supers.at(0).fell_from.has_value());
    CHECK(e.hives.at(0).kg_per_day.value > -0.1);
}

TEST_CASE("two looks of one day that cannot both be right leave it open", "[estimate][contradiction]") {
    const std::string day = put_on + "\n2026-06-01 mill\nh1 super 80%\n";
    const Estimates one = read(day, "2026-06-01"), both = read(day + "h1 super 20%\n", "2026-06-01"), near = read(day + "h1 super 60%\n", "2026-06-01");
    sane(both);
    CHECK(both.supers.at(0).full.low < 0.3);
    CHECK(both.supers.at(0).full.high > 0.7);
    CHECK(near.supers.at(0).full.high - near.supers.at(0).full.low < one.supers.at(0).full.high - one.supers.at(0).full.low);
}

TEST_CASE("a flow that stops is no contradiction", "[estimate][contradiction]") {
    const Estimates e = read(put_on + "\n2026-05-20 mill\nh1 super 50%\n\n2026-06-10 mill\nh1 super 40%\n", "2026-06-10");
    sane(e);
    CHECK_FALSE(e.supers.at(0).fell_from.has_value());
    CHECK(e.hives.at(0).kg_per_day.value < 0.3);
}

TEST_CASE("odd journals keep within what bees and boxes can do", "[estimate][contradiction]") {
    sane(read("hive h1 at mill: deep, super drawn\n\n2026-06-01 mill\nh1 super 80%\nh1 super 20%\n\n2026-06-08 mill\nh1 super half full\n", "2026-06-08"));
    sane(read("hive h1 at mill: deep, super drawn, super drawn\n\n2026-06-01 mill\nh1 top 50%, bottom full\n\n2026-06-08 mill\n"
              "h1 bottom super off 18 kg\nh1 top 80%\n\n2026-06-20 mill\nh1 swarmed\n", "2026-06-20"));
    sane(read("hive h1 at mill: deep, super drawn\n\n2026-06-01 mill\nh1 top full\n\n2026-06-08 mill\nh1 top empty\n\n2026-06-15 mill\nh1 top full\n", "2026-06-15"));
    sane(read(put_on + "\n2026-06-01 mill\nh1 super empty\n\n2026-06-02 mill\nh1 super full\n\n2026-06-03 mill\nh1 swarmed\n", "2026-07-20"));
}

TEST_CASE("a hive weight no bees explain leaves the flow alone", "[estimate][contradiction]") {
    const std::string weights = "units lb\nhive h1 at mill: deep, excluder, super drawn\n\n2026-06-01 mill\nh1 top empty\nh1 weighs 100 lb\n\n"
                                "2026-06-10 mill\nh1 weighs 130 lb\n\n2026-06-20 mill\nh1 weighs ";
    const Estimates fell = read(weights + "90 lb\n", "2026-06-20"), rose = read(weights + "400 lb\n", "2026-06-20");
    sane(fell);
    sane(rose);
    CHECK(fell.hives.at(0).kg_per_day.value > -0.1);
    CHECK(rose.hives.at(0).kg_per_day.value < 3);
    CHECK(fell.supers.at(0).full.value > 0.2);
}

TEST_CASE("past days are told in the light of what came after", "[estimate][past]") {
    const std::string two = "hive h1 at mill: deep, excluder\nhive h2 at mill: deep\n\n2026-05-01 mill\nh1 super drawn on\n\n2026-05-15 mill\nh1 super 10%\n\n"
                            "2026-05-25 mill\nh2 looks well\n\n";
    const std::string later = two + "2026-06-05 mill\nh1 super 90%\n";
    const Day middle = *day_from_iso("2026-05-25"), end = *day_from_iso("2026-06-05"), before = *day_from_iso("2026-04-01");
    const Journal journal = read_journal({{"bees.hive", later}}, end);
    const History history = replay(journal, end);
    const std::vector<Estimates> past = smoothed_past(journal, history, {before, middle, end});
    REQUIRE(past.size() == 3);
    CHECK(past[0].supers.empty());
    const Range then = read(two, "2026-05-25").supers.at(0).full, smoothed = past[1].supers.at(0).full;
    CHECK(smoothed.value > then.value + 0.1);
    CHECK(smoothed.value < 0.8);
    CHECK(smoothed.high - smoothed.low < then.high - then.low + 0.05);
    const Estimates now = estimate(journal, history);
    CHECK(past[2].supers.at(0).kg.value == Approx(now.supers.at(0).kg.value).margin(0.01));
    CHECK(past[2].hive(0)->room_kg.value == Approx(now.hive(0)->room_kg.value).margin(0.01));
    for (const Estimates& e : past) sane(e);
}
