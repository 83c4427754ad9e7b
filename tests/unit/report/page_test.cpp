#include <catch2/catch.hpp>

#include "report/page.hpp"
#include "report/page_parts.hpp"
#include "report/phrases.hpp"
#include "report_fixture.hpp"

using namespace waxtab;

namespace {

std::vector<ReportFile> files_of(const Read& r) {
    const std::vector<Advice> advice = advise(r.journal, r.history, r.estimates, r.ledger);
    const Round round = bring(r.journal, r.history, r.estimates, advice, r.history.on, r.history.on + date::days{7});
    return report_files({r.journal, r.history, r.estimates, r.ledger, advice, round, r.journal.diagnostics, {}, {}});
}

}  // namespace

TEST_CASE("words of the journal are text on the page, never markup") {
    CHECK(html("<b a=\"1\" b='2'>&") == "&lt;b a=&quot;1&quot; b=&#39;2&#39;&gt;&amp;");
    // A right-to-left override would turn what follows; it is shown.
    CHECK(html("a\u202eb") == "a\\u{202E}b");
    const Read r("hive h1 at mill: deep, super drawn9 \"<i>\"\n\n2026-06-03 mill\nh1 super 40%\n"
                 "h1: \"<script>alert(1)</script>\"\n", june(3));
    for (const ReportFile& file : files_of(r)) {
        CHECK_FALSE(holds(file.bytes, "<script>alert"));
        if (file.name == "report.html") CHECK(holds(file.bytes, "&lt;script&gt;alert(1)"));
    }
}

TEST_CASE("the page needs nothing from elsewhere") {
    for (const ReportFile& file : files_of(Read(small_journal, june(3)))) {
        CHECK_FALSE(holds(file.bytes, "http:"));
        CHECK_FALSE(holds(file.bytes, "https:"));
        CHECK_FALSE(holds(file.bytes, "<script"));
        CHECK_FALSE(holds(file.bytes, "src="));
    }
}

TEST_CASE("the report as text stays within the page, long problems too") {
    const Read r("hive h3 at mill: deep\n\n2026-06-03 mill\nh3 super 9 of the one with the very long name that somebody gave 140% full and 7 boxes\n"
                 "h3 moisture 31% lot of the long name of the meadow behind the house by the river\n", june(3));
    REQUIRE_FALSE(r.journal.diagnostics.empty());
    const auto files = files_of(r);
    REQUIRE(files[1].name == "report.txt");
    CHECK(widest_line(files[1].bytes) <= 80);
}

TEST_CASE("every link within the page leads to a place on it") {
    const std::string page = files_of(Read(small_journal, june(3))).front().bytes;
    std::size_t links = 0;
    for (std::size_t at = page.find("href=\"#"); at != page.npos; at = page.find("href=\"#", at + 1), ++links) {
        const std::string id = page.substr(at + 7, page.find('"', at + 7) - at - 7);
        CHECK(times_in(page, "id=\"" + id + "\"") == 1);
    }
    CHECK(links > 10);
}

TEST_CASE("beside a super in the drawing stands its honey with the range, as in the list below") {
    const Read r(small_journal, june(3));
    const std::string page = files_of(r).front().bytes;
    REQUIRE(r.estimates.supers.size() == 2);
    for (const SuperEstimate& super : r.estimates.supers) {
        const std::string kg = kg_text(super.kg, {});
        CHECK(holds(kg, "("));
        CHECK(holds(page, ">" + kg + "</text>"));
    }
    CHECK(holds(page, ">super 2, today</text>"));
}

TEST_CASE("the same journal and day give the same bytes") {
    const auto a = files_of(Read(small_journal, june(3))), b = files_of(Read(small_journal, june(3)));
    REQUIRE(a.size() == b.size());
    for (std::size_t i = 0; i < a.size(); ++i) CHECK((a[i].name == b[i].name && a[i].bytes == b[i].bytes));
}

TEST_CASE("lots have pages under names that differ") {
    Ledger ledger;
    for (const char* name : {"A", "a!", "<u>", "\u05d3", "\u05d4"}) {
        Lot lot;
        lot.name = name;
        ledger.lots.push_back(lot);
    }
    std::vector<std::string> names;
    for (const Lot& lot : ledger.lots) names.push_back(lot_file(ledger, lot));
    CHECK(names == std::vector<std::string>{"a.html", "a_2.html", "u.html", "lot.html", "lot_2.html"});
}

TEST_CASE("what is cut short is cut between characters") {
    CHECK(shortened("bramble", 7) == "bramble");
    CHECK(shortened("white clover", 6) == "white\u2026");
    CHECK(shortened("\u05d3\u05d1\u05d5\u05e8\u05d4", 3) == "\u05d3\u05d1\u2026");
}

TEST_CASE("days, ranges and weights never break, and nothing else is touched") {
    CHECK(unbroken("<p title=\"2026-06-03\">by 2026-06-03</p>") == "<p title=\"2026-06-03\">by <time>2026-06-03</time></p>");
    CHECK(unbroken("8.2 kg (6.9-9.6), 88% (80-96%)") == "8.2\u00a0kg (6.9-\u20609.6), 88% (80-\u206096%)");
    CHECK(unbroken("0.5 kg a day (-0.2 to 1.3)") == "0.5\u00a0kg a day (-\u20600.2\u00a0to\u00a01.3)");
    CHECK(unbroken("66 jars of 454 g, 12 oz") == "66 jars of 454\u00a0g, 12\u00a0oz");
    // No day, no range, a drawing, the lines of the journal.
    for (const char* left : {"2026-02-30 x2026-06-033 12026-06-03", "10-15 (a-b) (1 to b) ( to 2) 5 kgs x kg (", "<svg><text>2026-06-03 (1-2)</text></svg>",
                             "<dl class=\"lines\"><dd>2026-06-03 (1-2)</dd></dl>", "<", "<svg"})
        CHECK(unbroken(left) == left);
}

TEST_CASE("sums name so many lines and lead to the rest") {
    const Read r(small_journal, june(3));
    const std::vector<Advice> advice;
    const Round round;
    const Diagnostics diagnostics;
    const std::vector<Estimates> past;
    const ReportInput input{r.journal, r.history, r.estimates, r.ledger, advice, round, diagnostics, past, {}};
    Page page(input);
    std::vector<FactId> all;
    for (FactId id = 0; id < r.journal.facts.size(); ++id) all.push_back(id);
    const std::string refs = page.refs(all, 2, "#ledger-lots");
    CHECK(refs == " <span class=\"ref\"><a href=\"#l0-5\">a.hive:5</a>, <a href=\"#l0-6\">6</a>"
                  " <a href=\"#ledger-lots\">and 1 more</a></span>");
    CHECK_FALSE(holds(page.refs(all), "more"));
    CHECK(holds(page.cited_lines(), "id=\"l0-7\""));
}

TEST_CASE("in long journals the look back takes in the latest days only, and the page says so") {
    Journal journal;
    History history;
    history.on = june(30);
    HiveHistory hive;
    for (unsigned day = 1; day <= 12; ++day) hive.visits.push_back(june(day));
    history.hives.push_back(hive);
    journal.facts.resize(1000);
    CHECK(days_to_look_back(journal, history).size() == 12);
    journal.facts.resize(250'000);
    const std::vector<Day> days = days_to_look_back(journal, history);
    REQUIRE(days.size() == 8);
    CHECK((days.front() == june(5) && days.back() == june(12)));
    const Read r(small_journal + "\n2026-06-10 mill\nh3 top 90%\n", june(11));
    CHECK(holds(files_of(r).front().bytes, "What was estimated on earlier days is not drawn here."));
}

TEST_CASE("a hive of which nothing was noted has no estimate, and no figures are made up for it") {
    const Read r("hive h1 at mill: deep, super drawn9\nhive h2 at mill: deep, super drawn9\n\n2026-06-03 mill\nh2 super 40%\n", june(5));
    const std::string page = files_of(r).front().bytes;
    CHECK(times_in(page, "Nothing noted of it yet") == 1);
    CHECK_FALSE(holds(page, "room for 0.0 kg"));
}

TEST_CASE("the page says what the scale has shown of the eye, with the lines of the weighings") {
    const std::string weighed = "units kg\nhive h3 at mill: deep, excluder, super drawn9\n\n2026-06-03 mill\nh3 top full\n"
                                "h3 top off 16 kg\n\n2026-06-05\nextracted 12.5 kg lot A from h3\n";
    const Read r(weighed, june(6));
    REQUIRE(r.estimates.keeper.weighings == 1);
    const std::string page = files_of(r).front().bytes;
    const std::size_t at = page.find("<p id=\"eye\">Your eye: a super you call full has held ");
    REQUIRE(at != page.npos);
    const std::string words = page.substr(at, page.find("</p>", at) - at);
    CHECK(holds(words, "1 weighing"));
    CHECK(holds(words, "href=\"#l0-6\""));
    CHECK_FALSE(holds(files_of(Read(small_journal, june(3))).front().bytes, "Your eye"));
}
