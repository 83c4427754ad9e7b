// Figures of colonies worth breeding from. Source: COLOSS BEEBOOK, queen rearing, sec. 3.3.3 (swarming score: 4 none,
// 3 cells but stoppable, 2 repeated, 1 swarmed or only major intervention; supersedure does not count; the season's
// lowest is the result).
#include "advice/breeding.hpp"

#include <catch2/catch.hpp>

#include "mentor.hpp"

using namespace waxtab;

namespace {

const std::string four =
    "units kg\nhive h1 at mill: deep, excluder, super drawn9\nhive h2 at mill: deep, excluder, super drawn9\n"
    "hive h3 at mill: deep, excluder, super drawn9\nhive h4 at mill: deep\n";

const ColonyFigures& figures(const Advised& a, const std::vector<ColonyFigures>& all, const std::string& hive) {
    for (const ColonyFigures& f : all)
        if (a.journal.hive_name(f.hive) == hive) return f;
    FAIL("no figures for " << hive);
    return all.front();
}

}  // namespace

TEST_CASE("the swarming score is the lowest of the season", "[advice][breeding]") {
    const Advised a = advised(four + "2026-05-10 mill\nh1 no queen cells\nh2 2 open queen cells\nh3 2 supersedure cells\n"
                                     "2026-05-18 mill\nh1 no queen cells\nh2 3 open queen cells\n2026-05-25 mill\nh2 swarmed\n", "2026-07-01");
    const auto all = breeding(a.journal, a.history, a.ledger);
    CHECK(figures(a, all, "h1").swarm_score == 4.0);
    CHECK(figures(a, all, "h2").swarm_score == 1.0);
    CHECK_FALSE(figures(a, all, "h3").swarm_score);
    // Silence is not a negative.
    CHECK_FALSE(figures(a, all, "h4").swarm_score);
}

TEST_CASE("a swarm that was hived scores the hive it left", "[advice][breeding]") {
    const Advised a = advised(four + "2026-05-10 mill\nh1 no queen cells\n2026-05-20 mill\nswarm from h1 hived as s1\n", "2026-07-01");
    const auto all = breeding(a.journal, a.history, a.ledger);
    CHECK(figures(a, all, "h1").swarm_score == 1.0);
    CHECK_FALSE(figures(a, all, "s1").swarm_score);
}

TEST_CASE("honey that was blended counts once", "[advice][breeding]") {
    const Advised a = advised(four + "2026-07-01 mill\nh1 top off 24 kg\n2026-07-02\nextracted 15 kg lot A from h1\n"
                                     "opening stock 5 kg lot B\n2026-07-05\nblended lots A and B into lot C\n", "2026-08-01");
    const auto all = breeding(a.journal, a.history, a.ledger);
    REQUIRE(figures(a, all, "h1").honey);
    CHECK(figures(a, all, "h1").honey->value == Mass::from_kilograms(15));
}

TEST_CASE("cells once are 3, a split because of them is 1", "[advice][breeding]") {
    const Advised a = advised(four + "2026-05-10 mill\nh1 2 open queen cells\nh2 4 open queen cells\n2026-05-11 mill\nh2 split into h5\n", "2026-07-01");
    const auto all = breeding(a.journal, a.history, a.ledger);
    CHECK(figures(a, all, "h1").swarm_score == 3.0);
    CHECK(figures(a, all, "h2").swarm_score == 1.0);
}

TEST_CASE("yield stands against the own yard and season", "[advice][breeding]") {
    const Advised a = advised(four + "2026-07-01 mill\nh1 top off 24 kg\nh2 top off 20 kg\nh3 top off 14 kg\n"
                                     "2026-07-02\nextracted 30 kg lot A from h1 h2 h3\n", "2026-08-01");
    INFO(listing(a));
    const auto all = breeding(a.journal, a.history, a.ledger);
    const ColonyFigures& best = figures(a, all, "h1");
    REQUIRE(best.honey);
    CHECK(best.yard_hives == 3);
    CHECK(best.yard_high == best.honey->value);
    CHECK(best.yard_low < best.yard_median);
    CHECK_FALSE(figures(a, all, "h4").honey);
    // Last year's harvest is no longer counted.
    const Advised later = advised(four + "2025-07-01 mill\nh1 top off 24 kg\n2025-07-02\nextracted 15 kg lot A from h1\n", "2026-08-01");
    CHECK_FALSE(figures(later, breeding(later.journal, later.history, later.ledger), "h1").honey);
}

TEST_CASE("temper, stings and mites are shown as noted", "[advice][breeding]") {
    const Advised a = advised(four + "2026-05-10 mill\nh1 calm\nh2 defensive, 3 stings\n2026-06-10 mill\nh1 calm, alcohol wash 6/300\n", "2026-07-01");
    const auto all = breeding(a.journal, a.history, a.ledger);
    CHECK(figures(a, all, "h1").calm == 2);
    CHECK(figures(a, all, "h2").defensive == 1);
    CHECK(figures(a, all, "h2").stings == 3);
    REQUIRE(figures(a, all, "h1").mites.size() == 1);
    CHECK(figures(a, all, "h1").mites[0].per_100 == Approx(2.0));
}
