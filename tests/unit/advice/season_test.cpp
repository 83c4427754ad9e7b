// Advice keeps its promises on whole seasons, whatever the day.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include <catch2/catch.hpp>

#include "mentor.hpp"

using namespace waxtab;

namespace {

std::vector<JournalFile> season_files() {
    std::vector<JournalFile> files;
    for (const auto& entry : std::filesystem::directory_iterator(WAXTAB_ROOT "/examples/season")) {
        if (entry.path().extension() != ".hive") continue;
        std::stringstream bytes;
        bytes << std::ifstream(entry.path()).rdbuf();
        files.push_back({entry.path().filename().string(), bytes.str()});
    }
    return files;
}

}  // namespace

TEST_CASE("advice through the example season is signed, short and said once", "[advice][season]") {
    const auto files = season_files();
    REQUIRE(files.size() >= 3);
    for (Day day = *day_from_iso("2026-03-20"); day < *day_from_iso("2026-11-01"); day += date::days{17}) {
        INFO(iso(day));
        const Advised a = advised(read_journal(files, day), iso(day));
        check_always(a);
        // No hive is told to put a super on and to put no more on, or to open and to stay shut.
        for (const Advice& x : a.advice)
            for (const Advice& y : a.advice) {
                if (x.hive == no_hive || x.hive != y.hive) continue;
                CHECK_FALSE((x.act == Act::add_super && y.act == Act::no_super));
                CHECK_FALSE((x.act == Act::open && y.act == Act::leave_shut));
                CHECK_FALSE((x.act == Act::add_super && (y.act == Act::stop_feed || y.act == Act::supers_off)));
            }
    }
}

namespace {

bool shares_box(const Advice& x, const Advice& y) {
    return std::any_of(x.boxes.begin(), x.boxes.end(), [&](BoxId b) { return std::find(y.boxes.begin(), y.boxes.end(), b) != y.boxes.end(); });
}

/// Nothing at one hive undoes what something else asks for there.
void check_no_contradiction(const Advised& a) {
    const auto at_yard = [](const Advice& x, const Advice& y) {
        return x.hive == y.hive || (y.hive == no_hive && std::find(y.hives.begin(), y.hives.end(), x.hive) != y.hives.end());
    };
    for (const Advice& x : a.advice)
        for (const Advice& y : a.advice) {
            if (x.hive == no_hive || &x == &y || !at_yard(x, y)) continue;
            INFO(x.rule << " and " << y.rule);
            CHECK_FALSE((x.act == Act::add_super && (y.act == Act::no_super || y.act == Act::stop_feed || y.act == Act::supers_off || y.act == Act::clear)));
            CHECK_FALSE((x.act == Act::open && y.act == Act::leave_shut));
            CHECK_FALSE((x.act == Act::feed && y.act == Act::stop_feed));
            CHECK_FALSE((x.act == Act::take_honey && y.act == Act::leave_super && shares_box(x, y)));
            CHECK_FALSE((x.act == Act::take_honey && y.act == Act::take_empty && shares_box(x, y)));
            CHECK_FALSE((x.act == Act::split && y.act == Act::unite));
        }
}

}  // namespace

// Six keepers' seasons written by hand: allotment and heather in Britain, a beginner's two hives, three in the USA and Australia,
// with splits, swarms, unions, feeds, treatments and moves.
TEST_CASE("advice through six seasons contradicts nothing and says nothing twice", "[advice][figures][season]") {
    int seasons = 0;
    for (const auto& entry : std::filesystem::directory_iterator(WAXTAB_ROOT "/tests/unit/advice/seasons")) {
        std::stringstream bytes;
        bytes << std::ifstream(entry.path()).rdbuf();
        const std::vector<JournalFile> files{{entry.path().filename().string(), bytes.str()}};
        ++seasons;
        for (Day day = *day_from_iso("2026-02-20"); day < *day_from_iso("2027-02-01"); day += date::days{9}) {
            INFO(entry.path().filename() << " on " << iso(day));
            const Advised a = advised(read_journal(files, day), iso(day));
            check_always(a);
            check_no_contradiction(a);
        }
    }
    CHECK(seasons == 6);
}

TEST_CASE("the same journal and day give the same advice", "[advice][season]") {
    const auto files = season_files();
    const Day day = *day_from_iso("2026-06-20");
    CHECK(listing(advised(read_journal(files, day), iso(day))) == listing(advised(read_journal(files, day), iso(day))));
}
