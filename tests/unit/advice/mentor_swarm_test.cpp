// Queen cells, swarms, splits, new queens, brood and inspections.
#include <catch2/catch.hpp>

#include "mentor.hpp"

namespace {

const std::vector<MentorCase> cases{
    {"queen and charged cells: split today", "theapiarist.org (from memory); BBKA, \"May\"", "2026-05-20",
     mill + "2026-05-20 mill\nh3 top 20% full, queen seen, eggs seen, 3 open queen cells\n",
     {"h3 queen-and-cells: artificial swarm today", "h3 queen-and-cells: taking cells down only is no control"}, {"h3 virgin-quiet", "h3 inspection-due"}},
    {"sealed cells, no queen noted: leave them alone", "W. Shaw, Welsh Beekeepers' Association", "2026-05-20",
     mill + "2026-05-20 mill\nh3 top 20% full, queen not seen, 2 sealed queen cells\n", {"h3 cells-unproven: laying queen is proven"}, {"h3 queen-and-cells"}},
    {"a sealed cell found emerges 0 to 8 days later", "correction: it may be up to 8 days sealed", "2026-05-21",
     mill + "2026-05-20 mill\nh3 queen not seen, no eggs, 1 sealed queen cell\n",
     {"h3 virgin-quiet: between 2026-05-20 and 2026-05-28", "h3 virgin-quiet: possible from 2026-05-26"}, {"h3 inspection-due"}},
    {"dry cups are normal", "homeofthebusybee.com", "2026-05-20", mill + "2026-05-20 mill\nh3 eggs seen, 2 queen cups dry\n", {},
     {"h3 queen-and-cells", "h3 cells-unproven"}},
    {"silent while a virgin is due", "Bee Craft, 20 June 2018", "2026-06-10",
     mill_bare + "2026-05-30 mill\nh3 inspected\nh3 swarmed\n", {"h3 virgin-quiet: shut until"}, {"h3 inspection-due"}},
    {"after the prime swarm one cell", "theapiarist.org, from memory", "2026-05-31",
     mill_bare + "2026-05-30 mill\nh3 swarmed\n", {"h3 one-cell: before casts"}, {"h3 queen-and-cells"}},
    {"one cell left already", "theapiarist.org, from memory", "2026-06-02",
     mill_bare + "2026-05-30 mill\nh3 swarmed\nh3 left 1 sealed queen cell\n", {}, {"h3 one-cell"}},
    {"eggs are looked for in their usual window", "Trunch Beekeepers: 14-21 days after emergence", "2026-06-23",
     mill_bare + "2026-05-30 mill\nh3 swarmed\n", {"h3 eggs-expected: new queen"}, {"h3 virgin-quiet", "h3 test-frame"}},
    {"test frame at about day 30", "from memory; Breconshire BKA: mated within 3-4 weeks", "2026-06-30",
     mill_bare + "2026-05-30 mill\nh3 swarmed\n2026-06-24 mill\nh3 no eggs\n", {"h3 test-frame: by 2026-06-30"}, {"h3 inspection-due"}},
    {"forty-two days is not waited", "correction: overdue at 42-50 is too late", "2026-07-04",
     mill_bare + "2026-05-30 mill\nh3 swarmed\n", {"h3 test-frame"}, {"h3 eggs-expected"}},
    {"eggs seen in the window: the calendar ends", "Trunch Beekeepers", "2026-06-25",
     mill_bare + "2026-05-30 mill\nh3 swarmed\n2026-06-24 mill\nh3 eggs seen, calm\n", {}, {"h3 test-frame", "h3 eggs-expected", "h3 virgin-quiet"}},
    {"old eggs after a swarm prove nothing", "development tables: eggs for three days", "2026-06-10",
     mill_bare + "2026-05-30 mill\nh3 swarmed\n2026-05-31 mill\nh3 eggs seen\n", {"h3 virgin-quiet"}, {}},
    {"cells taken down: look again, for eggs first", "BBKA, \"May\": sealed cells 96 hours after a test comb", "2026-05-22",
     mill_bare + "2026-05-20 mill\nh3 knocked down 3 queen cells\n", {"h3 cells-come-back: laying queen"}, {}},
    {"supersedure cells are left", "common practice, no source", "2026-08-02",
     mill_bare + "2026-08-01 mill\nh3 eggs seen, 2 supersedure cells\n", {"h3 supersedure-cells"}, {"h3 queen-and-cells"}},
    {"split without its queen: eggs in four weeks", "table of new queens: day 26-33", "2026-05-15",
     mill_bare + "2026-05-01 mill\nh3 split into h4 with old queen, 3 frames of brood\n", {"h3 virgin-quiet"}, {"h3 inspection-due"}},
    {"split, queen not said: which half?", "development tables: eggs are gone after three days", "2026-05-04",
     mill_bare + "2026-05-01 mill\nh3 split into h4\n", {"h3 which-half: in this half", "h4 which-half"}, {}},
    {"a hived swarm lays within ten days, a cast in three weeks", "from memory: late from day 10; killowen.com", "2026-06-12",
     mill_bare + "2026-06-01 mill\nswarm hived as s1\n", {"s1 eggs-expected: a cast's first eggs come 2-3 weeks after hiving"}, {"s1 test-frame", "s1 virgin-quiet"}},
    {"a hived swarm without eggs after four weeks", "killowen.com; a test frame from memory", "2026-06-30",
     mill_bare + "2026-06-01 mill\nswarm hived as s1\n", {"s1 test-frame: day 29"}, {"s1 *: drones only"}},
    {"queen gone but eggs: look closely", "laying workers: bmdooney.com; eggs per cell", "2026-06-20",
     mill_bare + "2026-06-01 mill\nh3 queenless\n2026-06-19 mill\nh3 eggs seen\n", {"h3 eggs-without-queen: how many in a cell"}, {}},
    {"larvae, no eggs: she stopped 3 to 9 days ago", "development tables (Queensland DPI), worked out", "2026-06-05",
     mill_bare + "2026-06-04 mill\nh3 no eggs, larvae seen\n", {"h3 no-eggs: 3 to 9 days"}, {}},
    {"queenless: a test frame", "from memory", "2026-06-05", mill_bare + "2026-06-04 mill\nh3 queenless, no eggs\n", {"h3 queenless: test frame"}, {}},
    {"no open brood for three weeks: laying workers feared", "bmdooney.com; Breconshire BKA", "2026-06-28",
     mill_bare + "2026-06-04 mill\nh3 no eggs, no larvae\n", {"h3 laying-workers-risk: 3 weeks"}, {}},
    {"laying workers: unite or shake out", "common practice, no source", "2026-06-28",
     mill_bare + "2026-06-27 mill\nh3 laying workers\n", {"h3 laying-workers: shake"}, {}},
    {"a drone layer is replaced", "common practice, no source", "2026-06-28", mill_bare + "2026-06-27 mill\nh3 drone layer\n", {"h3 failing-queen"}, {}},
    {"inspection after a week in swarm season", "BBKA, \"May\": every 7 days", "2026-05-28",
     mill_bare + "2026-05-20 mill\nh3 eggs seen, calm\n", {"h3 inspection-due: every 7 days"}, {}},
    {"six days: silence", "BBKA, \"May\": every 7 days", "2026-05-26", mill_bare + "2026-05-20 mill\nh3 eggs seen, calm\n", {}, {"h3 inspection-due"}},
    {"five days for a crowded one", "BBKA, \"May\": 4-5 days at higher risk", "2026-05-26",
     mill + "2026-05-20 mill\nh3 eggs seen, brood box packed with bees\n", {"h3 inspection-due: every 5 days"}, {}},
    {"ten days with a clipped queen", "from memory: 10-14 days", "2026-05-28",
     mill_bare + "2026-05-10 mill\nh3 queen marked blue, clipped\n2026-05-20 mill\nh3 eggs seen\n", {}, {"h3 inspection-due"}},
    {"out of swarm season monthly", "Florida compliance agreement: once a month", "2026-08-10",
     mill_bare + "2026-07-25 mill\nh3 eggs seen\n", {}, {"h3 inspection-due"}},
    {"no inspection in winter", "common practice, no source", "2026-12-10", mill_bare + "2026-10-01 mill\nh3 eggs seen\n", {}, {"h3 inspection-due"}},
    {"a drawn super left alone over the excluder is baited", "betterbee.com; T. Sebestyen, Bee Culture", "2026-05-20",
     mill_bare + "2026-05-08 mill\n+super h3 drawn\n2026-05-20 mill\nflow on\nh3 super empty\n", {"h3 bait: frame of honey or brood"}, {}},
    {"a new queen due and room short: on top, brood nest shut", "Bee Craft 2018; precedence", "2026-06-08",
     mill + "2026-06-01 mill\nflow heavy\nh3 top 40% full\nh3 swarmed\n2026-06-08 mill\nflow heavy\nh3 top 95% full\n",
     {"h3 room-runs-out: on top"}, {"h3 inspection-due"}},
};

}  // namespace

TEST_CASE("mentor: swarms, queens and brood", "[advice][mentor]") {
    for (const MentorCase& c : cases) check_case(c);
}
