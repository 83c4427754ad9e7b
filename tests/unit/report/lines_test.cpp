#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "report/lines.hpp"
#include "report_fixture.hpp"

using namespace waxtab;

namespace {

Style without_refs() {
    Style style;
    style.refs = false;
    return style;
}

nlohmann::json first_of_kind(const std::string& lines, const std::string& kind) {
    std::istringstream in(lines);
    for (std::string line; std::getline(in, line);) {
        const auto json = nlohmann::json::parse(line);
        if (json["kind"] == kind) return json;
    }
    return nullptr;
}

}  // namespace

TEST_CASE("lines of the small journal: long forms with place and assumptions behind the number sign") {
    const Read r(small_journal, june(3));
    const std::string text = lines_text(r.journal, june(3), {}, {});
    CHECK(holds(text, "2026-06-03 mill h3 top 70% capped  # a.hive:6\n"));
    CHECK(holds(text, "2026-06-03 mill h3 +super drawn9  # a.hive:7; "));
    CHECK_FALSE(holds(lines_text(r.journal, june(3), {}, without_refs()), "a.hive"));
}

TEST_CASE("lines read again give themselves") {
    const Read once(small_journal, june(3));
    const std::string first = lines_text(once.journal, june(3), {}, without_refs());
    const Read twice(first, june(3));
    CHECK(lines_text(twice.journal, june(3), {}, without_refs()) == first);
}

TEST_CASE("lines list what is chosen, and set-up lines only when nothing is left out") {
    const Read r(small_journal + "\n2026-06-10 mill\nh3 top 80% full\n", june(10));
    Selection selection;
    selection.since = june(5);
    const std::string text = lines_text(r.journal, june(10), selection, {});
    CHECK(text == "2026-06-10 mill h3 top 80% full  # a.hive:10\n");
    CHECK_FALSE(holds(lines_text(r.journal, june(9), {}, {}), "80%"));
}

TEST_CASE("json gives one object a fact, shares in percent, masses in kilograms") {
    const Read r(small_journal + "h3 bottom off 44 lb\nh3 fed 500 ml syrup 1:1\n", june(3));
    const std::string text = lines_json(r.journal, june(3), {}, {});
    const auto capped = first_of_kind(text, "capped");
    CHECK(capped["date"] == "2026-06-03");
    CHECK(capped["noted"] == "2026-06-03");
    CHECK(capped["yard"] == "mill");
    CHECK(capped["hive"] == "h3");
    CHECK(capped["box"] == "top");
    CHECK(capped["value"] == 70);
    CHECK(capped["unit"] == "%");
    CHECK(capped["at"] == "a.hive:6");
    const auto on = first_of_kind(text, "super-on");
    CHECK(on["value"] == 1);
    CHECK(on["unit"] == "supers");
    CHECK(on["box"].is_null());
    CHECK(on["assumed"].size() == 2);
    // 44 lb are 19.95806428 kg: the international pound of 1959.
    CHECK(first_of_kind(text, "super-off")["value"].get<double>() == Approx(19.95806428).epsilon(1e-9));
    CHECK(first_of_kind(text, "super-off")["unit"] == "kg");
    CHECK(first_of_kind(text, "feed")["value"] == 0.5);
    CHECK(first_of_kind(text, "feed")["unit"] == "L");
    CHECK_FALSE(first_of_kind(lines_json(r.journal, june(3), {}, without_refs()), "capped").contains("at"));
}

TEST_CASE("a count left open keeps its range") {
    const Read r(small_journal + "h3 4-5 queen cells, at least 6 frames of brood\n", june(3));
    const auto cells = first_of_kind(lines_json(r.journal, june(3), {}, {}), "queen-cells");
    CHECK(cells["value"] == 5);
    CHECK(cells["low"] == 4);
    CHECK(cells["high"] == 5);
    const auto brood = first_of_kind(lines_json(r.journal, june(3), {}, {}), "brood");
    CHECK(brood["value"] == 6);
    CHECK(brood["low"] == 6);
    CHECK_FALSE(brood.contains("high"));
    const std::string lines = lines_text(r.journal, june(3), {}, without_refs());
    CHECK(holds(lines, "h3 4-5 queen cells\n"));
    CHECK(holds(lines, "h3 at least 6 frames of brood\n"));
}

TEST_CASE("jars are counted first and measured second") {
    const Read r("hive h3 at mill: deep, super\n\n2026-06-03 mill\nh3 top off 20 kg\nextracted 12 kg lot A from h3\n"
                 "filled 20 x 454 g lot A\n", june(3));
    const auto jars = first_of_kind(lines_json(r.journal, june(3), {}, {}), "jars");
    CHECK(jars["value"] == 20);
    CHECK(jars["unit"] == "jars");
    CHECK(jars["size"] == 0.454);
    CHECK(first_of_kind(lines_json(r.journal, june(3), {}, {}), "extracted")["value"] == 12);
}

TEST_CASE("csv after RFC 4180: head line, CR LF, quotes doubled, nothing a spreadsheet would run") {
    const Read r("hive h3 at mill: deep\n\n2026-06-03 mill\n\"=cmd(), said \x07\"\nh3: \"a, b\"\n", june(3));
    const std::string text = lines_csv(r.journal, june(3), {}, {});
    CHECK(text.starts_with("date,noted,time,yard,hive,kind,box,value,unit,at,"));
    CHECK(times_in(text, "\r\n") == times_in(text, "\n"));
    CHECK(holds(text, "\"'=cmd(), said \\x07\""));
    CHECK(holds(text, "\"a, b\""));
}

TEST_CASE("read-back shows each line with what was understood, remarks, to-dos and words out of force") {
    const Read r(small_journal + "h3 will need a super next week\n\"bees on the landing board\"\nh3 no super added\n", june(3));
    const std::string text = read_back(r.journal, june(3), {}, {});
    CHECK(text.starts_with("a.hive\n    1 | units kg\n            set-up\n"));
    CHECK(holds(text, "    4 | 2026-06-03 mill\n            day: Wednesday 2026-06-03 at mill\n"));
    CHECK(holds(text, "    6 | h3 top 70% capped\n            h3 top 70% capped\n"));
    CHECK(holds(text, "                assumed: on top"));
    CHECK(holds(text, "            to do: "));
    CHECK(holds(text, "(because of 'will')"));
    CHECK(holds(text, "            remark: \"bees on the landing board\"\n"));
    CHECK(holds(text, "            remark, no event: "));
    CHECK(widest_line(text) <= 80);
}

TEST_CASE("below a heading of several hives both and each are those") {
    const Read r("units kg\nhive h1 at mill: deep, super drawn9\nhive h2 at mill: deep, super drawn9\nhive h3 at mill: deep, super drawn9\n2026-06-03 mill\nh1\n  calm\nh2 h3\n  both calm\n  super on each\n", june(3));
    const std::string text = lines_text(r.journal, june(3), {}, without_refs());
    CHECK(holds(text, "h2 temper calm\n"));
    CHECK(holds(text, "h3 temper calm\n"));
    CHECK(holds(text, "h2 +super"));
    CHECK(holds(text, "h3 +super"));
    CHECK_FALSE(holds(text, "h1 +super"));
}

TEST_CASE("a heading is read back with the yard it names, not that of the hive below it") {
    const Read r("hive h1 at house: deep\nhive h7, also Poplar, at cove: deep\nhive h8 at upper cove: deep\n\n"
                 "21 April 2026 House:\nh7 \"poplar flow wide open\"\nh1 calm\n"
                 "22 April 2026, 9:30 at upper cove\nh7 calm\n23 April 2026\nh7 calm\n", june(3));
    const std::string text = read_back(r.journal, june(3), {}, {});
    CHECK(holds(text, "day: Tuesday 2026-04-21 at house\n"));
    CHECK(holds(text, "day: Wednesday 2026-04-22 at upper cove\n"));
    CHECK(holds(text, "day: Thursday 2026-04-23 at cove\n"));
}

TEST_CASE("control characters of a journal are shown, not sent") {
    const Read r("hive h3 at mill: deep\n\n2026-06-03 mill\nh3: \"red \x1b[31m bell \x07 \xe2\x80\xae\"\n", june(3));
    for (const std::string& text : {lines_text(r.journal, june(3), {}, {}), lines_json(r.journal, june(3), {}, {}),
                                    lines_csv(r.journal, june(3), {}, {}), read_back(r.journal, june(3), {}, {})}) {
        CHECK_FALSE(holds(text, "\x1b"));
        CHECK_FALSE(holds(text, "\x07"));
        CHECK_FALSE(holds(text, "\xe2\x80\xae"));
    }
}
