// The long form of a fact reads back to the same fact.
#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

#include "facts/match.hpp"
#include "readings.hpp"
#include "said.hpp"

using namespace waxtab;
using waxtab::test::journal_of;

namespace {

/// The facts of a journal that have a day, without where they stand.
std::vector<Fact> dated(const Journal& journal) {
    std::vector<Fact> out;
    for (const Fact& f : journal.facts)
        if (f.noted != Day{}) out.push_back(f);
    return out;
}

/// A journal made of the set-up and the long forms of another's facts.
Journal again(const Journal& journal) {
    std::string text;
    for (const std::string& line : set_up_lines(journal)) text += line + '\n';
    text += '\n';
    for (const Fact& f : journal.facts) text += long_form(journal, f) + '\n';
    return read_journal({{"b.hive", text}}, date::sys_days{date::year{2026} / 11 / 25});
}

void check_round_trip(std::string_view line) {
    INFO(line);
    const Journal first = journal_of(line);
    const Journal second = again(first);
    const std::vector<Fact> a = dated(first), b = dated(second);
    REQUIRE(a.size() == b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        INFO(long_form(first, a[i]) << " -> " << long_form(second, b[i]));
        CHECK(a[i].happened == b[i].happened);
        CHECK(a[i].noted == b[i].noted);
        const bool words = a[i].kind == Kind::remark;
        CHECK((words ? a[i].text == b[i].text : same_content(a[i], b[i])));
    }
}

}  // namespace

TEST_CASE("every row's example reads as its kind", "[facts]") {
    std::set<Kind> with_example;
    for (const grammar::ReadingRow& row : grammar::reading_rows) {
        if (row.example.empty()) continue;
        INFO(row.example);
        with_example.insert(row.kind);
        const std::vector<Fact> facts = dated(journal_of(row.example));
        CHECK(std::any_of(facts.begin(), facts.end(), [&](const Fact& f) { return f.kind == row.kind; }));
        CHECK(std::none_of(facts.begin(), facts.end(), [](const Fact& f) { return f.detail == "flagged"; }));
    }
    CHECK(with_example.size() > 70);
}

TEST_CASE("the long form of every row's example reads back to the same fact", "[facts]") {
    for (const grammar::ReadingRow& row : grammar::reading_rows)
        if (!row.example.empty()) check_round_trip(row.example);
}

TEST_CASE("long forms of facts of every shape read back", "[facts]") {
    for (const char* line : {
             "h3 +2 supers shallow foundation under", "h3 +super cut comb", "h3 +super sections over", "h3 +super wet", "h3 +super starter strips", "h3 +super mixed between",
             "h3 +super drawn9 \"C7\"", "h3 +super with 9 frames", "h3 super on with 10 frames of foundation", "h3 -2 supers 38 kg", "h3 top off 22 kg net", "h3 super off, empty",
             "h3 super off, full", "h3 2 shallows off", "h3 top 2 supers off", "h3 super 1 off", "h5 super \"B4\" off 20 kg", "h3 super off to shed", "h3 took 4 frames of honey, 7.8 kg",
             "h3 brood box foundation on", "h3 excluder on", "h3 escape board under top super", "h3 clearer under the top 2 supers", "h5 swapped super 1 with super 2", "h3 moved top super under",
             "h5 top super moved to h6", "h3 moved 2 frames of honey to h4", "h3 moved a frame of eggs to h4", "h3: no supers", "h5: 2 brood boxes", "h3 double brood",
             "h3 top 75-80% full", "h3 top 90+% capped", "h3 about 60% full", "h3 super about half full", "h3 super 7 of 9 frames drawn", "h3 super all but 2 frames capped",
             "h3 super full bar the 2 outside frames", "h3 super mostly capped", "h3 super a third full", "h3 super three quarters drawn", "h3 super nearly full", "h3 super 5 frames full",
             "h3 super 2.5 frames capped", "h3 super foundation", "h3 super starting to cap", "h3 super uncapped", "h3 cut comb super 80% capped", "h3 nectar shakes out", "h3 super no change",
             "h3 weighs 42.5 kg", "h3 gained 3 kg since 20 May", "h3 lost 2 lb", "h3 top super 21 kg before extracting", "h3 8 frames of bees", "h3 6 seams", "h3 BIAS on 7", "h3 bias",
             "h3 brood on 6.5 frames", "h3 no brood", "h3 no eggs", "h3 larvae seen", "h3 sealed brood on 4 frames", "h3 no sealed brood", "h3 spotty brood", "h3 backfilled", "h3 bearding",
             "h3 temper 7", "h3 stores 2", "h3 stores 10 kg", "h3 starving", "h3 stores low", "h3 orange pollen", "h3 plenty of pollen", "h3 brood in the top super", "h3 brood above the excluder",
             "h3 queen seen green", "h3 virgin seen", "h3 queen not laying yet", "h3 new queen seen", "h3 drone layer", "h3 laying workers", "h3 marked and clipped", "h3 requeened, yellow, caged",
             "h7 queen from h2", "h3 3 charged cups", "h3 cups dry", "h3 no queen cups", "h3 3 QCs, 2 sealed", "h3 4 swarm cells open", "h3 supersedure cell", "h3 queen cell torn down",
             "h3 knocked down 2 sealed queen cells, left 1 open", "h3 fed 1 gal 2:1", "h3 fed 2 quarts syrup", "h3 fondant on", "h3 fed 3:2 2 L", "h3 pollen patty 1/2 lb", "h3 feeder half empty",
             "h3 oxalic trickle 30 ml", "h3 treated with Greenstuff", "h3 amitraz strips in for 6 weeks, batch 1234", "h3 formic in, out by 14 July", "h3 2 amitraz strips in", "h3 strips out",
             "h3 6 mites per 300 bees", "h3 sugar roll 4/300", "h3 mite wash 3%", "h3 natural drop 5 per day", "h3 varroa 12 in 24 h", "h3 board: no mites", "h3 no chalk brood", "h3 no wasps",
             "h3 swarmed on 12 May", "h3 cast left", "caught a swarm, hived as s3, 2 kg", "h3 split into h11 (5 frames, old queen)", "h3 made a nuc into n3, 3 frames of brood", "bought hive h13 from a friend",
             "h3 sold to a neighbour", "h6 renamed Rose", "h3 dead", "20 degrees", "72F", "flow heavy, lime", "no flow", "lime nearly over", "bramble in bud", "opening stock 24 x 454 g jars",
             "bought in 20 kg honey from a neighbour", "extracted 4 supers = 101 lb lot A from h1 h3", "moisture 17,8", "moisture 17.4-17.6% lot A", "refractive index 1.4915 at 24C lot A", "drained 3 kg from cappings lot A",
             "blended lots A and B into lot C, 30 kg", "filled 40 jars", "24 sections packed lot S", "sold 24 lb to shop", "gave away 4 x 1 lb", "kept 2 kg", "spoiled 3 jars", "returned 2 jars from the shop",
             "stocktake 5 kg lot A", "wax 1 kg", "best before 2028-07-01 lot A", "lot B fermenting", "shed: 6 supers shallow drawn, 3 excluders, 2 foundation", "+2 supers drawn to shed", "-2 supers from shed",
             "todo bring 2 supers", "\"a remark with \"\"quotes\"\" in it\"", "h3 \"bees, at dusk; yes.\"", "all: fed 2 L", "2026-06-01 h3 top 50%"})
        check_round_trip(line);
}
