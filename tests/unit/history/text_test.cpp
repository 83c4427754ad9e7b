// From the words of a journal to its histories.
#include <algorithm>
#include <fstream>
#include <sstream>

#include "build_journal.hpp"
#include "replay_checked.hpp"

using namespace waxtab;
using namespace waxtab::testing;
using Codes = std::vector<std::string>;

namespace {


Journal read(const std::string& text) { return read_journal({{"a.hive", text}}, later); }

std::string file_text(const std::string& name) {
    std::ifstream in(std::string(WAXTAB_ROOT) + "/" + name, std::ios::binary);
    REQUIRE(in);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

Journal season() {
    std::vector<JournalFile> files;
    for (const char* name : {"set-up", "mill", "orchard", "heath", "honey"})
        files.push_back({std::string(name) + ".hive", file_text("examples/season/" + std::string(name) + ".hive")});
    return read_journal(std::move(files), later);
}

}  // namespace

TEST_CASE("the small journal", "[history][text]") {
    const Journal journal = read(
        "units kg\n"
        "hive h3 at mill: deep, excluder, super drawn9\n"
        "\n"
        "2026-06-03 mill\n"
        "24C sunny, flow heavy, white clover\n"
        "h3 top 70% capped\n"
        "+super h3 drawn9\n");
    const History h = replay_checked(journal, later);
    CHECK(h.diagnostics.empty());
    const HiveId h3 = journal.hive("h3");
    REQUIRE(h.supers_on(h3).size() == 2);
    const Box& lower = box_at(h, h.supers_on(h3)[0]);
    const Box& upper = box_at(h, h.supers_on(h3)[1]);
    CHECK_FALSE(lower.stays[0].from);
    REQUIRE(lower.sightings.size() == 1);
    CHECK(lower.sightings[0].what == BoxSighting::What::capped);
    CHECK(lower.sightings[0].amount == 700);
    CHECK(upper.stays[0].from == day("2026-06-03"));
    CHECK(upper.frames == 9);
    CHECK(upper.kind == "medium");
    CHECK(h.yard_facts[static_cast<std::size_t>(journal.yard("mill"))].size() >= 3);
}

TEST_CASE("contradictions in words, with the line they contradict", "[history][text]") {
    const Journal journal = read(
        "hive h1 at mill: deep, excluder, super\n"      // 1
        "hive h2 at mill: deep\n"
        "\n"
        "2026-06-03 mill\n"
        "h1 super off 21 kg\n"                          // 5
        "h2 dead\n"                                     // 6
        "\n"
        "2026-06-10 mill\n"
        "h1 super off\n"
        "h1 top 50% full\n"
        "h2 fed 2 L syrup 1:1\n"
        "h1: 2 supers\n");
    const History h = replay_checked(journal, later);
    REQUIRE(found(h) == Codes{"error not-on", "error no-such-super", "error hive-gone", "warning count-differs"});
    CHECK(cited(journal, h.diagnostics[0]) == std::vector<int>{5});
    CHECK(h.diagnostics[1].title == "h1 has no 'top super': no supers are on");
    CHECK(cited(journal, h.diagnostics[2]) == std::vector<int>{6});
    CHECK(h.diagnostics[2].title == "'fed 2 L syrup 1:1' is noted for h2, which died on 2026-06-03");
}

TEST_CASE("a box is followed by its label from hive to hive", "[history][text]") {
    const Journal journal = read(
        "units kg\n"
        "hive h1 at mill: deep, super \"M2\"\n"
        "hive h2 at mill: deep\n"
        "2026-06-03 mill\n"
        "h1 top super moved to h2\n"
        "2026-06-10 mill\n"
        "h2 \"M2\" 80% full\n"
        "h2 \"M2\" off 21.5 kg\n"
        "2026-06-11\n"
        "extracted 15 kg lot A from h2\n"
        "h2 \"M2\" after extracting 6.1 kg\n");
    const History h = replay_checked(journal, later);
    CHECK(h.diagnostics.empty());
    REQUIRE(h.takings.size() == 1);
    CHECK(h.takings[0].hive == journal.hive("h2"));
    CHECK(h.takings[0].net == Mass::grams(15400));
    CHECK(h.takings[0].extracted);
    CHECK(box_at(h, h.takings[0].box).stays.size() == 2);
}

TEST_CASE("the example season is sound on every day of it", "[history][text]") {
    const Journal journal = season();
    for (Day on = day("2026-04-01"); on <= day("2026-10-31"); on += date::days{7}) {
        INFO(iso(on));
        replay_checked(journal, on);
    }
    const History h = replay_checked(journal, later);
    CHECK(h.takings.size() > 15);
    CHECK_FALSE(hive_at(h, journal.hive("k2")).alive);
    CHECK(hive_at(h, journal.hive("h6")).united_into == journal.hive("Blue"));
    CHECK(hive_at(h, journal.hive("s1")).yard_on(later) == journal.yard("orchard"));
}
