#include "handbook/calendar.hpp"

#include <catch2/catch.hpp>

using namespace waxtab::handbook;

// Queensland Department of Primary Industries table (academickids.com): sealed 7.5 / 9 / 10, out 16 / 21 / 24,
// egg 3, larva 5.5 / 6 / 6.5, sealed time 8 / 12 / 14.5 days.
TEST_CASE("development days by caste", "[handbook][calendar]") {
    const auto queen = development(Caste::queen), worker = development(Caste::worker);
    const auto drone = development(Caste::drone);
    CHECK(queen.emerges.typical == 16);
    CHECK(worker.emerges.typical == 21);
    CHECK(drone.emerges.typical == 24);
    CHECK(queen.sealed.low == 7.5);
    CHECK(queen.sealed.typical == 8);
    CHECK(worker.sealed.typical == 9);
    CHECK(drone.sealed.typical == 10);
    CHECK(queen.emerges.typical - queen.sealed.typical == 8);
    CHECK(worker.emerges.typical - worker.sealed.typical == 12);
    CHECK(drone.emerges.typical - drone.sealed.low == 14.5);
    for (const auto& d : {queen, worker, drone}) {
        CHECK(d.hatches.typical == 3);
        CHECK(d.hatches.typical < d.sealed.low);
        CHECK(d.sealed.high < d.emerges.low);
    }
    // Spread of emergence at americasbeekeeper.com: 15-17, 19-22, 24-25 (other tables 23-24 for drones).
    CHECK(queen.emerges.low == 15);
    CHECK(queen.emerges.high == 17);
    CHECK(worker.emerges.low == 19);
    CHECK(worker.emerges.high == 22);
    CHECK(drone.emerges.high == 25);
}

static const QueenStart starts[] = {
    QueenStart::cell_with_egg,     QueenStart::charged_cell, QueenStart::open_cell,
    QueenStart::sealed_cell_found, QueenStart::cell_sealed,  QueenStart::prime_swarm_left,
    QueenStart::virgin_emerged,    QueenStart::queenless_split, QueenStart::split_eggs_only,
    QueenStart::swarm_hived};

TEST_CASE("windows open before they close", "[handbook][calendar]") {
    const auto ordered = [](const Window& w) {
        return w.earliest <= w.usual_from && w.usual_from <= w.usual_to && w.usual_to < w.overdue;
    };
    for (QueenStart start : starts) {
        INFO(static_cast<int>(start));
        CHECK(ordered(first_eggs(start)));
        const auto out = emergence(start), fly = first_flights(start);
        CHECK(out.has_value() == (start != QueenStart::swarm_hived));
        CHECK(out.has_value() == fly.has_value());
        CHECK(out.has_value() == quiet_time(start).has_value());
        if (!out) continue;
        CHECK(ordered(*out));
        CHECK(ordered(*fly));
        CHECK(out->usual_from < fly->usual_from);
        CHECK(fly->usual_from < first_eggs(start).usual_from);
    }
}

// Out of the egg on day 16; a cell sealed on day 8 is 8 days from emergence (Bee Craft, 20 June 2018; Trunch BK).
TEST_CASE("emergence from a queen cell", "[handbook][calendar]") {
    CHECK(emergence(QueenStart::cell_with_egg)->usual_to == 16);
    CHECK(emergence(QueenStart::cell_with_egg)->usual_from == 16 - 3);
    CHECK(emergence(QueenStart::open_cell)->usual_from == 8);
    CHECK(emergence(QueenStart::open_cell)->usual_to == 16 - 3);
    CHECK(emergence(QueenStart::charged_cell)->usual_from == emergence(QueenStart::open_cell)->usual_from);
    CHECK(emergence(QueenStart::charged_cell)->usual_to == emergence(QueenStart::cell_with_egg)->usual_to);
    CHECK(emergence(QueenStart::cell_sealed)->usual_from == 8);
    CHECK(emergence(QueenStart::prime_swarm_left)->usual_to == 8);
}

// A sealed cell that is found may have been sealed for up to 8 days.
TEST_CASE("a sealed cell found leaves emergence and eggs wide open", "[handbook][calendar]") {
    const auto out = emergence(QueenStart::sealed_cell_found);
    CHECK(out->earliest == 0);
    CHECK(out->usual_to == 8);
    CHECK(first_eggs(QueenStart::sealed_cell_found).earliest == 6);
}

// Trunch BK: eggs 14-21 days after emergence; first flight 4 days (Bee Craft) and 2-3 days more to eggs.
TEST_CASE("first eggs", "[handbook][calendar]") {
    CHECK(first_eggs(QueenStart::virgin_emerged) == Window{6, 14, 21, 22});
    CHECK(first_eggs(QueenStart::cell_sealed) == Window{14, 22, 29, 30});
    CHECK(first_eggs(QueenStart::prime_swarm_left) == Window{14, 22, 29, 30});
    CHECK(first_eggs(QueenStart::queenless_split) == Window{18, 26, 33, 34});
    CHECK(first_eggs(QueenStart::split_eggs_only).earliest == 18 + 3);
    CHECK(first_eggs(QueenStart::swarm_hived).overdue == 10);
    // Test frame by about day 30 from sealing, inside the 4 weeks in which a virgin can still mate (Breconshire BKA).
    for (QueenStart start : starts) {
        const auto out = emergence(start);
        if (out) CHECK(first_eggs(start).overdue - out->usual_to <= 28);
    }
}

TEST_CASE("flights and the quiet time", "[handbook][calendar]") {
    CHECK(*first_flights(QueenStart::virgin_emerged) == Window{4, 5, 7, 21});
    CHECK(*first_flights(QueenStart::cell_sealed) == Window{12, 13, 15, 29});
    const auto quiet = quiet_time(QueenStart::cell_sealed);
    CHECK(quiet->from == 8);
    CHECK(quiet->to == 22);
    CHECK(quiet_time(QueenStart::sealed_cell_found)->from == 0);
}

// Eggs gone after day 3, open brood after day 9, sealed worker brood after day 21; Trunch BK: only sealed brood
// means the swarm left at least 9 days ago.
TEST_CASE("brood seen tells when the queen last laid", "[handbook][calendar]") {
    const auto worker = development(Caste::worker);
    CHECK(last_laid(BroodSeen::eggs).at_least == 0);
    CHECK(last_laid(BroodSeen::eggs).at_most == static_cast<int>(worker.hatches.typical));
    CHECK(last_laid(BroodSeen::open_no_eggs).at_least == 3);
    CHECK(last_laid(BroodSeen::open_no_eggs).at_most == static_cast<int>(worker.sealed.typical));
    CHECK(last_laid(BroodSeen::only_sealed).at_least == 9);
    CHECK(last_laid(BroodSeen::only_sealed).at_most == static_cast<int>(worker.emerges.typical));
    CHECK(last_laid(BroodSeen::none).at_least == 21);
    CHECK_FALSE(last_laid(BroodSeen::none).at_most.has_value());
    CHECK(all_brood_gone_day == static_cast<int>(development(Caste::drone).emerges.typical));
}
