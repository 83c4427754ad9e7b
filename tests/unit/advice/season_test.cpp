// Advice keeps its promises on whole seasons, whatever the day.
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

TEST_CASE("the same journal and day give the same advice", "[advice][season]") {
    const auto files = season_files();
    const Day day = *day_from_iso("2026-06-20");
    CHECK(listing(advised(read_journal(files, day), iso(day))) == listing(advised(read_journal(files, day), iso(day))));
}
