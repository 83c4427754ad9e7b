#include <catch2/catch.hpp>

#include "report/phrases.hpp"
#include "report/table.hpp"
#include "report_fixture.hpp"
#include "text/layout.hpp"

using namespace waxtab;

TEST_CASE("wrapping breaks at blanks, cuts words that are too long, and counts display columns") {
    CHECK(wrap("", 10) == std::vector<std::string>{""});
    CHECK(wrap("one two three", 7) == std::vector<std::string>{"one two", "three"});
    CHECK(wrap("abcdefgh", 3) == std::vector<std::string>{"abc", "def", "gh"});
    CHECK(wrap("蜂蜂蜂", 4) == std::vector<std::string>{"蜂蜂", "蜂"});
    CHECK(paragraph("one two three", "- ", "  ", 9) == "- one two\n  three\n");
}

TEST_CASE("tabs stand for blanks up to every fourth column") {
    CHECK(expand_tabs("\tx") == "    x");
    CHECK(expand_tabs("ab\tx") == "ab  x");
    CHECK(expand_tabs("\tx", 3) == " x");
}

TEST_CASE("tables align by display width, leave out empty columns and keep to the page") {
    Table table;
    table.column("hive");
    table.column("nothing");
    table.column("honey", Table::Align::right);
    table.row({"蜂", "", "1.0 kg"});
    table.row({"h11", "", "12.0 kg"});
    CHECK(table.text(2) == "  hive    honey\n  蜂     1.0 kg\n  h11   12.0 kg\n");
    Table wide;
    wide.column("");
    wide.column("");
    wide.row({std::string(30, 'a'), std::string(40, 'b') + ' ' + std::string(40, 'c')});
    CHECK(widest_line(wide.text()) <= page_width);
}

TEST_CASE("a reference stands at the right edge, below when there is no room") {
    CHECK(with_ref("words", "  ", "  ", "a.hive:1") == "  words" + std::string(65, ' ') + "a.hive:1\n");
    CHECK(with_ref("words", "  ", "  ", "") == "  words\n");
    CHECK(widest_line(with_ref(std::string(75, 'x'), "  ", "  ", std::string(60, 'r'))) <= page_width);
    const std::string squeezed = with_ref(std::string(38, 'x') + ' ' + std::string(38, 'y'), "", "  ", "a.hive:1");
    CHECK(holds(squeezed, "yy" + std::string(32, ' ') + "a.hive:1\n"));
}

TEST_CASE("amounts are said with their ranges") {
    const Style kg;
    Style lb;
    lb.mass = MassUnit::pound;
    CHECK(kg_text({6.9, 8.2, 9.6}, kg) == "8.2 kg (6.9-9.6)");
    CHECK(kg_text({6.9, 8.2, 9.6}, lb) == "18.1 lb (15.2-21.2)");
    CHECK(kg_text({-0.5, -0.01, 0.4}, kg) == "0.0 kg (-0.5 to 0.4)");
    CHECK(share_text({0.2, 0.35, 0.5}) == "35% (20-50)");
    CHECK(share_text({1, 1, 1}) == "100%");
    CHECK(rate_text({0.8, 1.9, 3.0}, kg) == "1.9 kg a day (0.8-3.0)");
    const double never = std::numeric_limits<double>::infinity();
    CHECK(days_text({3, 6.9, 14}) == "6 days (3-14)");
    CHECK(days_text({1.5, 1.9, never}) == "1 day (1 or more)");
    CHECK(days_text({12, 300, never}) == "likely to outlast the flow (12 days or more)");
    CHECK(days_text({never, never, never}) == "more than 45 days");
    CHECK(days_text({0, 0.4, never}) == "it may run out today");
    CHECK(days_text({0, 0.2, 0.9}) == "less than a day");
    CHECK(days_text({0, 0.6, 3}) == "less than a day (0-3)");
    CHECK(mass_text(MassRange{Mass::grams(38000), Mass::grams(41300), Mass::grams(44500), false}, kg) == "41.30 kg (38.0-44.5)");
    CHECK(mass_text(MassRange{Mass::grams(41300), Mass::grams(41300), Mass::grams(41300), true}, kg) == "41.30 kg");
    CHECK(counted(1, "super") == "1 super");
    CHECK(counted(2, "super") == "2 supers");
    CHECK(listed({"h1", "h2", "h3"}) == "h1, h2 and h3");
}
