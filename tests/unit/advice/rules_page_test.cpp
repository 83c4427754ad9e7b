#include <set>

#include <catch2/catch.hpp>

#include "advice/rule.hpp"

using namespace waxtab;

TEST_CASE("every rule has a name of its own, a sentence and a source", "[advice][rules]") {
    std::set<std::string_view> names;
    for (const RuleEntry& r : rules()) {
        INFO(r.name);
        CHECK(names.insert(r.name).second);
        CHECK(r.says.back() == '.');
        CHECK_FALSE(r.source.empty());
        CHECK_FALSE(r.group.empty());
        CHECK(r.name.find(' ') == std::string_view::npos);
    }
    CHECK(rules().size() == rule_table().size() + 1);
}

TEST_CASE("the page of rules is made from the table", "[advice][rules]") {
    const std::string page = rules_page();
    for (const RuleEntry& r : rules()) CHECK(page.find("**" + std::string(r.name) + "**") != std::string::npos);
    // Each heading once.
    std::set<std::string_view> groups;
    std::size_t headings = 0;
    for (const RuleEntry& r : rules()) groups.insert(r.group);
    for (std::size_t at = page.find("\n## "); at != std::string::npos; at = page.find("\n## ", at + 1)) ++headings;
    CHECK(headings == groups.size());
}

TEST_CASE("words of advice", "[advice][words]") {
    CHECK(counted(1, "super") == "1 super");
    CHECK(counted(3, "brood box") == "3 brood boxes");
    CHECK(odds(0.72) == "7 in 10");
    CHECK(odds(1.0) == "19 in 20");
    CHECK(listed({"a", "b", "c"}) == "a, b and c");
    CHECK(share_words({0.6, 0.7, 0.8}) == "70% (60-80%)");
    CHECK(kg_words({2, 3, 5}, MassUnit::kilogram) == "2.0 to 5.0 kg, likely 3.0");
    CHECK(kg_words({4, 4, 4}, MassUnit::pound) == "8.8 lb");
    CHECK(permille_words(185) == "18.5%");
}
