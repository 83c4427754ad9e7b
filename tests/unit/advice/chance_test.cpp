// Chances read from ranges, and where advice gives them.
#include "advice/chance.hpp"

#include <algorithm>

#include <catch2/catch.hpp>

#include "advice/shed_share.hpp"
#include "mentor.hpp"

using namespace waxtab;

namespace {

Day day(const char* iso) { return *day_from_iso(iso); }

const Chance* chance_of(const Advice& a, std::string_view that) {
    const auto at = std::find_if(a.chances.begin(), a.chances.end(), [&](const Chance& c) { return c.that == that; });
    return at == a.chances.end() ? nullptr : &*at;
}

/// The advice a rule itself gave, wherever.
const Advice* given_by(const Advised& a, std::string_view rule) {
    const auto at = std::find_if(a.advice.begin(), a.advice.end(), [&](const Advice& piece) { return piece.rule == rule; });
    return at == a.advice.end() ? nullptr : &*at;
}

bool says(const Advice& a, const std::string& words) {
    return a.sureness_words.find(words) != std::string::npos ||
           std::any_of(a.reasons.begin(), a.reasons.end(), [&](const std::string& r) { return r.find(words) != std::string::npos; });
}

ShedClaim claim(HiveId hive, std::vector<double> chances) {
    ShedClaim c;
    c.hive = hive;
    c.chances = std::move(chances);
    return c;
}

}  // namespace

// Percentage points of the normal distribution: 10 % above 1.2816, 25 % above 0.6745 (any table of it).
TEST_CASE("a range that holds eight times in ten has one in ten below and above it", "[advice][chance]") {
    const Range r{2, 5, 6};
    CHECK(chance_above(r, 2) == Approx(0.9));
    CHECK(chance_above(r, 5) == Approx(0.5));
    CHECK(chance_above(r, 6) == Approx(0.1));
    // Either side has its own spread: the upper quartile lies 0.6745/1.2816 of the way up, the lower one as far down.
    CHECK(chance_above(r, 5 + 1 * 0.6745 / 1.2816) == Approx(0.25).margin(1e-4));
    CHECK(chance_above(r, 5 - 3 * 0.6745 / 1.2816) == Approx(0.75).margin(1e-4));
    CHECK(chance_above({1, 1, 1}, 0.75) == 1);
    CHECK(chance_above({0.5, 0.5, 0.5}, 0.75) == 0);
}

TEST_CASE("the days a super may be fit give the chance that it is by a day", "[advice][chance]") {
    SuperEstimate s;
    CHECK_FALSE(chance_ripe_by(s, day("2026-06-10"), day("2026-06-17")));
    s.ripe_early = day("2026-06-15"), s.ripe_likely = day("2026-06-20"), s.ripe_late = day("2026-06-30");
    double before = 0;
    for (int ahead = 0; ahead <= 30; ++ahead) {
        const double now = chance_ripe_by(s, day("2026-06-10"), day("2026-06-10") + date::days{ahead}).value();
        CHECK(now >= before);
        before = now;
    }
    CHECK(chance_ripe_by(s, day("2026-06-10"), day("2026-06-14")).value() < 0.1);
    CHECK(chance_ripe_by(s, day("2026-06-10"), day("2026-06-20")).value() == Approx(0.5).margin(0.05));
    CHECK(chance_ripe_by(s, day("2026-06-10"), day("2026-06-30")).value() == Approx(0.9).margin(0.02));
    s.ripe_late.reset();
    CHECK(chance_ripe_by(s, day("2026-06-10"), day("2026-06-30")).value() < 0.8);
    // Fit today, whatever comes: certain by capping.
    s.ripe_early = s.ripe_likely = s.ripe_late = day("2026-06-10");
    CHECK(chance_ripe_by(s, day("2026-06-10"), day("2026-06-10")).value() == 1);
}

TEST_CASE("no more: the chance that one put on now is not filled by the season's end, and what room does", "[advice][chance]") {
    const Advised a = advised(mill + "season 1 April to 31 August\n2026-08-01 mill\nh3 top 60% full\n2026-08-08 mill\nflow ending\nh3 top 85% full\n", "2026-08-09");
    INFO(listing(a));
    const Advice* no_more = given_by(a, "no-more-supers");
    REQUIRE(no_more);
    CHECK(says(*no_more, "that a super put on now would not be filled by 2026-08-31, the end of your season"));
    CHECK(says(*no_more, "that the room there lasts as long; room for "));
    const HiveEstimate& e = a.estimates.hives.front();
    const Chance* filled = chance_of(*no_more, "a super put on now is not filled");
    const Chance* lasts = chance_of(*no_more, "room lasts");
    REQUIRE((filled && lasts));
    CHECK(filled->by == day("2026-08-31"));
    CHECK(filled->value == Approx(1 - e.chance_full_within(22, a.estimates.supers.front().capacity_kg.value)));
    CHECK(lasts->value == Approx(1 - e.chance_full_within(22)));
    CHECK(lasts->value < filled->value);
    CHECK(no_more->because.size() >= 2);
}

TEST_CASE("take off: the chance that it is fit; a reading has none", "[advice][chance]") {
    const Advised capped = advised(mill + "2026-07-10 mill\nflow on\nh3 top full, 80% capped\n", "2026-07-10");
    INFO(listing(capped));
    const Advice* take = find(capped, "h3", "take-when-ripe");
    REQUIRE(take);
    const Chance* fit = chance_of(*take, "fit to take");
    REQUIRE(fit);
    CHECK(fit->value > 0.5);
    CHECK(fit->value < 0.95);
    CHECK(says(*take, " in 10 that it is fit, capped "));
    CHECK(says(*take, "kg of honey, likely "));

    const Advised read = advised(mill + "2026-07-10 mill\nflow on\nh3 top full, 80% capped\nmoisture 17.2% h3 top\n", "2026-07-10");
    INFO(listing(read));
    const Advice* dry = find(read, "h3", "take-when-ripe");
    REQUIRE(dry);
    CHECK(dry->chances.empty());
    CHECK(says(*dry, "17.2% measured"));
    CHECK_FALSE(says(*dry, "that it is fit"));
}

TEST_CASE("several supers to take: each with its own chance, together with the least", "[advice][chance]") {
    const Advised a = advised("units kg\nhive h3 at mill: deep, excluder, super drawn9, super drawn9\n"
                              "2026-07-10 mill\nflow on\nh3 bottom full, bottom 95% capped, top full, top 80% capped\n", "2026-07-10");
    INFO(listing(a));
    const Advice* take = find(a, "h3", "take-when-ripe");
    REQUIRE(take);
    REQUIRE(take->chances.size() == 2);
    CHECK(take->what == "take 2 supers off for honey");
    CHECK(says(*take, " or more at each that it is fit"));
    CHECK(std::count_if(take->reasons.begin(), take->reasons.end(), [](const std::string& r) { return r.find("that it is fit, capped") != r.npos; }) == 2);
}

TEST_CASE("leave on: how sure it is not fit, and when it will be", "[advice][chance]") {
    const Advised a = advised(mill + "2026-07-10 mill\nflow on\nh3 top full, top 50% capped\n", "2026-07-10");
    INFO(listing(a));
    const Advice* leave = find(a, "h3", "leave-on");
    REQUIRE(leave);
    REQUIRE((chance_of(*leave, "not fit to take") && chance_of(*leave, "fit to take")));
    CHECK(chance_of(*leave, "not fit to take")->value > 0.9);
    CHECK(says(*leave, "that it is not fit yet, "));
    CHECK(says(*leave, "that it is by 2026-07-17; by capping about 2026-07-"));
}

TEST_CASE("comb honey has to be sealed, and the days foreseen are of the mark: no chance by a day", "[advice][chance]") {
    const Advised a = advised("units kg\nhive h3 at mill: deep, excluder, super cut comb\n2026-07-10 mill\nflow on\nh3 top full, top 60% capped\n", "2026-07-10");
    INFO(listing(a));
    const Advice* leave = find(a, "h3", "leave-on");
    REQUIRE(leave);
    CHECK(says(*leave, "when it will be sealed is not foreseen, so no chance is given"));
    CHECK_FALSE(chance_of(*leave, "fit to take"));
    CHECK(chance_of(*leave, "not fit to take"));
}

TEST_CASE("a nearly full super is measured by what it holds: supers and advise agree", "[advice][chance]") {
    // Seven tenths of the comb capped and nine tenths full: 77 % of what there is, over the mark of 75 %.
    const Advised a = advised(mill + "ripe at 75% capped\n2026-07-01 mill\nh3 top 88% full, top 60% capped\n2026-07-10 mill\nno flow\nh3 top 90% full, top 70% capped\n",
                              "2026-07-10");
    INFO(listing(a));
    const SuperEstimate& s = a.estimates.supers.front();
    REQUIRE(s.full.value < 0.97);
    REQUIRE(s.capped.value < 0.75);
    REQUIRE(s.ripe_likely == day("2026-07-10"));
    CHECK(find(a, "h3", "take-when-ripe"));
    CHECK_FALSE(find(a, "h3", "leave-on"));
}

TEST_CASE("leave: the chance that room lasts until the next visit, hive by hive", "[advice][chance]") {
    const std::string hives = "units kg\nhive h3 at mill: deep, excluder, super drawn9\nhive h4 at mill: deep, excluder, super drawn9\n"
                              "hive h5 at mill: deep, excluder, super drawn9\n";
    const Advised a = advised(hives + "2026-06-01 mill\nflow on\nh3 top 10% full\nh4 top 30% full\n2026-06-08 mill\nflow light\nh3 top 15% full\nh4 top 55% full\n",
                              "2026-06-08");
    INFO(listing(a));
    const Advice* leave = given_by(a, "room-lasts");
    REQUIRE(leave);
    CHECK(leave->what == "leave h3 and h4 with the supers they have: room lasts");
    CHECK(says(*leave, "that room lasts until 2026-06-15"));
    REQUIRE(leave->chances.size() == 2);
    for (const Chance& c : leave->chances) {
        const HiveEstimate* e = a.estimates.hive(c.hive);
        REQUIRE(e);
        CHECK(c.value == Approx(1 - e->chance_full_within(7)));
        CHECK(c.value >= 1 - a.journal.settings.accepted_risk_percent / 100.0);
    }
    // Nothing was ever noted of the super on h5: said, and no chance made up.
    CHECK(says(*leave, "nothing tells how full the supers at h5 are: no chance is given"));
}

TEST_CASE("hives that are asked for a super, or whose honey is ripe, are not told to be left", "[advice][chance]") {
    const std::string hives = "units kg\nhive h3 at mill: deep, excluder, super drawn9\nhive h4 at mill: deep, excluder, super drawn9\n"
                              "hive h5 at mill: deep, excluder, super drawn9\n";
    const Advised a = advised(hives + "2026-06-01 mill\nflow heavy\nh3 top 40% full\nh4 top full, top 90% capped\nh5 top 5% full\n"
                                      "2026-06-08 mill\nflow on\nh3 top 95% full\nh4 top full, top 95% capped\nh5 top 15% full\n", "2026-06-08");
    INFO(listing(a));
    CHECK(find(a, "h3", "room-runs-out"));
    const Advice* leave = find(a, "h5", "room-lasts");
    REQUIRE(leave);
    CHECK(leave->what == "leave its super as it is: room lasts");
    CHECK_FALSE(find(a, "h3", "room-lasts"));
    CHECK_FALSE(find(a, "h4", "room-lasts"));
    // Nor where an untouched super comes off: Demuth, USDA Farmers' Bulletin 503.
    const Advised late = advised(mill + "2026-08-01 mill\n+super h3 drawn9\n2026-08-20 mill\nflow ending\nh3 super 1 80% full, top empty\n", "2026-08-20");
    INFO(listing(late));
    const Advice* off = find(late, "h3", "take-untouched");
    REQUIRE(off);
    CHECK(says(*off, " that the room left without it lasts until 2026-09-01"));
    CHECK(chance_of(*off, "room lasts without them"));
    CHECK_FALSE(find(late, "h3", "room-lasts"));
}

TEST_CASE("nothing is known of what is in the supers: no odds", "[advice][chance]") {
    const Advised a = advised(mill + "2026-07-08 mill\nflow heavy\nh3 calm\n", "2026-07-09");
    INFO(listing(a));
    for (const Advice& piece : a.advice) {
        CHECK(piece.chances.empty());
        CHECK_FALSE(says(piece, "in 10 that"));
        CHECK_FALSE(says(piece, "in 20 that"));
    }
    CHECK(std::any_of(a.advice.begin(), a.advice.end(), [](const Advice& piece) { return says(piece, "no chance is given"); }));
}

TEST_CASE("words and figures say the same, and chances are chances", "[advice][chance]") {
    const Advised a = advised(mill + "2026-06-01 mill\nflow heavy\nh3 top 40% full\n2026-06-08 mill\nflow on\nh3 top 95% full\n", "2026-06-08");
    const Advice* add = find(a, "h3", "room-runs-out");
    REQUIRE(add);
    const Chance* runs_out = chance_of(*add, "room runs out");
    REQUIRE(runs_out);
    CHECK(says(*add, odds(runs_out->value) + " that room runs out before " + iso(*runs_out->by)));
    CHECK(runs_out->value == Approx(a.estimates.hives.front().chance_full_within(7)));
    for (const Advice& piece : a.advice)
        for (const Chance& c : piece.chances) CHECK((c.value >= 0 && c.value <= 1));
}

TEST_CASE("a yard of forty: one line says how many, the reasons name them and speak of the least sure", "[advice][chance]") {
    std::string journal = "units kg\n", first = "2026-06-01 mill\nflow light\n", second = "2026-06-08 mill\nflow light\n";
    for (int i = 1; i <= 40; ++i) {
        journal += "hive colony" + std::to_string(i) + " at mill: deep, excluder, super drawn9\n";
        if (i == 1) continue;   // so that it is not all hives
        first += "colony" + std::to_string(i) + " top 10% full\n";
        second += "colony" + std::to_string(i) + " top " + std::to_string(i <= 12 ? 45 : 15) + "% full\n";
    }
    const Advised a = advised(journal + first + second, "2026-06-08");
    const Advice* leave = given_by(a, "room-lasts");
    REQUIRE(leave);
    INFO(leave->what);
    CHECK(leave->what.size() <= 160);
    CHECK(leave->what.rfind("leave 39 hives with", 0) == 0);
    CHECK(leave->chances.size() == 39);
    CHECK(leave->reasons.size() <= 10);
    CHECK(leave->because.size() <= 6);
    CHECK(says(*leave, "colony40"));
    check_always(a);
}

// ---- the shed -------------------------------------------------------------------------------

TEST_CASE("too few supers go one by one to where room is likeliest to run out", "[advice][shed]") {
    std::vector<ShedClaim> claims{claim(0, {0.3}), claim(1, {0.9, 0.5}), claim(2, {0.6})};
    share_out(claims, 2);
    CHECK(claims[0].hive == 1);
    CHECK(claims[0].gets == 1);
    CHECK(claims[1].hive == 2);
    CHECK(claims[1].gets == 1);
    CHECK(claims[2].gets == 0);
    share_out(claims, 3);
    CHECK(claims[0].gets == 2);
    // A brood nest without room goes first, one of which nothing is known last.
    claims = {claim(0, {0.9}), claim(1, {0.1}), claim(2, {0.0})};
    claims[1].crowded = true;
    claims[2].known = false;
    share_out(claims, 1);
    CHECK(claims[0].hive == 1);
    CHECK(claims[0].gets == 1);
    CHECK(claims[2].hive == 2);
    for (int in_shed = 0; in_shed < 6; ++in_shed) {
        share_out(claims, in_shed);
        int given = 0;
        for (const ShedClaim& c : claims) given += c.gets;
        CHECK(given == std::min(in_shed, 3));
    }
}

TEST_CASE("the words on the shed name twelve hives of each sort and count the rest", "[advice][shed]") {
    std::string journal = "units kg\n";
    for (int i = 1; i <= 30; ++i) journal += "hive h" + std::to_string(i) + " at mill: deep\n";
    const Advised a = advised(journal, "2026-06-08");
    std::vector<ShedClaim> claims;
    for (HiveId id = 0; id < 30; ++id) claims.push_back(claim(id, {0.9 - 0.02 * id}));
    claims[0].chances.push_back(0.01);
    share_out(claims, 2);
    const std::string words = shared_words(a.journal, claims);
    INFO(words);
    CHECK(words.rfind("first h1 (9 in 10; 1 of the 2 it wants), then h2 (9 in 10); none for h3 (9 in 10), h4 (", 0) == 0);
    CHECK(words.find(" and 16 more; in brackets") != std::string::npos);
    CHECK(words.find("h15 (") == std::string::npos);
}

namespace {

const std::string three_full =
    "hive h3 at mill: deep, excluder, super drawn9\nhive h4 at mill: deep, excluder, super drawn9\nhive h5 at mill: deep, excluder, super drawn9\n"
    "2026-06-01 mill\nflow on\nh3 top 40% full\nh4 top 45% full\nh5 top 50% full\n"
    "2026-06-08 mill\nflow on\nh3 top 75% full\nh4 top 97% full\nh5 top 88% full\n";

int supers_wanted(const Advised& a) {
    int n = 0;
    for (const Advice& piece : a.advice) n += piece.act == Act::add_super ? piece.count : 0;
    return n;
}

}  // namespace

TEST_CASE("more supers asked for than the shed has: who goes first, who without, and how many are short", "[advice][shed]") {
    const Advised a = advised("units kg\nshed: 1 super drawn\n" + three_full, "2026-06-08");
    INFO(listing(a));
    const int wanted = supers_wanted(a);
    REQUIRE(wanted >= 2);
    const Advice* shed = given_by(a, "shed-short");
    REQUIRE(shed);
    CHECK(shed->what.rfind("get " + std::to_string(wanted - 1) + (wanted == 2 ? " more super" : " more supers") + " (medium, drawn): the shed has 1 of the " + std::to_string(wanted), 0) == 0);
    // h4 is the fullest.
    CHECK((says(*shed, "first h4 (") || says(*shed, "1 of 2 for h4 (")));
    CHECK(says(*shed, "none for "));
    REQUIRE_FALSE(shed->because.empty());
    CHECK(a.journal.facts[shed->because.front()].kind == Kind::shed);
    const Advice* without = find(a, "h5", "room-runs-out");
    REQUIRE(without);
    CHECK(says(*without, "none is left for it"));
}

TEST_CASE("enough in the shed, or a shed not noted: nothing is said of it", "[advice][shed]") {
    const Advised enough = advised("units kg\nshed: 9 supers drawn\n" + three_full, "2026-06-08");
    REQUIRE(supers_wanted(enough) >= 2);
    CHECK_FALSE(given_by(enough, "shed-short"));
    const Advised unsaid = advised("units kg\n" + three_full, "2026-06-08");
    REQUIRE(supers_wanted(unsaid) >= 2);
    CHECK_FALSE(given_by(unsaid, "shed-short"));
    for (const Advice& piece : unsaid.advice) CHECK_FALSE(says(piece, "the shed has"));
}
