// What is said side by side says what it says alone: no clause of a line gives its verb, its number or its hive to another.
#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "said.hpp"

using namespace waxtab;

namespace {

/// Of every area of the notation one or two, none of which is a detail of another.
constexpr std::array<std::string_view, 24> clauses = {"super on", "took the top super off", "added a super of foundation", "excluder on", "top 70% full", "bottom super 40% capped", "7 frames of brood",
    "eggs seen", "no eggs", "queen seen", "marked blue", "2 queen cells", "no queen cells", "swarmed", "calm", "2 stings", "fed 2 L 1:1", "oxalic acid trickled", "strips out",
    "alcohol wash 4/300", "wax moth", "queenless", "united with h5", "brood box on"};

/// How two clauses may stand in one line, and which hives each is told of.
struct Pattern {
    std::string_view line;
    std::vector<std::string> x, y;
};

std::set<std::string> facts(const Journal& journal) {
    std::set<std::string> found;
    for (const Fact& f : journal.facts)
        if (f.noted != Day{} && f.kind != Kind::remark) found.insert(short_form(journal, f));
    return found;
}

/// What a line says alone; read once.
const std::set<std::string>& alone(const std::string& line) {
    static std::map<std::string, std::set<std::string>> read;
    const auto [at, first] = read.try_emplace(line);
    if (first) at->second = facts(test::journal_of(line));
    return at->second;
}

/// What the clause says of each of the hives.
std::set<std::string> alone(std::string_view clause, const std::vector<std::string>& hives) {
    std::set<std::string> all;
    for (const std::string& hive : hives) all.merge(std::set<std::string>(alone(fmt::format("{} {}", hive, clause))));
    return all;
}

bool asked(const Journal& journal) {
    return !journal.diagnostics.empty() || std::any_of(journal.facts.begin(), journal.facts.end(), [](const Fact& f) { return f.detail == "flagged"; });
}

}  // namespace

TEST_CASE("clauses side by side say what they say alone, or are asked about", "[facts][figures]") {
    const std::vector<Pattern> patterns = {{"h3 {x}, {y}", {"h3"}, {"h3"}}, {"h3 {x} and {y}", {"h3"}, {"h3"}}, {"h3 {x}. {y}.", {"h3"}, {"h3"}},
        {"h3 {x} ({y})", {"h3"}, {"h3"}}, {"h3 {x} so {y}", {"h3"}, {"h3"}}, {"h3 {x}; h4 {y}", {"h3"}, {"h4"}}, {"h3 {x}, h4 {y}", {"h3"}, {"h4"}}, {"h3 {x} and h4 {y}", {"h3"}, {"h4"}},
        {"{x} on h3, {y} on h4", {"h3"}, {"h4"}}, {"{x} in h3 and {y} in h4", {"h3"}, {"h4"}}, {"h3 {x}, {y} in h4", {"h3"}, {"h4"}}, {"h3 and h4 {x}, {y}", {"h3", "h4"}, {"h3", "h4"}},
        {"h3 and h4 {x}. h6 {y}", {"h3", "h4"}, {"h6"}}, {"h3 {x} and {y} on h4", {"h3"}, {"h4"}}, {"{x} h3, h4 {y}", {"h3"}, {"h4"}}, {"h3 {x} h4 {y}", {"h3"}, {"h4"}}, {"{x} in h3 {y} in h4", {"h3"}, {"h4"}}, {"{x} on h3 {y} on h4", {"h3"}, {"h4"}}, {"{x} in h3, h4 {y}", {"h3"}, {"h4"}}};
    for (std::string_view x : clauses) REQUIRE(alone(x, {"h3"}).size() == 1);
    for (const Pattern& p : patterns)
        for (std::string_view x : clauses)
            for (std::string_view y : clauses) {
                if (x == y) continue;
                const std::string line = fmt::format(fmt::runtime(p.line), fmt::arg("x", x), fmt::arg("y", y));
                INFO(line);
                const Journal journal = test::journal_of(line);
                std::set<std::string> meant = alone(x, p.x);
                meant.merge(alone(y, p.y));
                const std::set<std::string> found = facts(journal);
                const bool nothing_made_up = std::includes(meant.begin(), meant.end(), found.begin(), found.end());
                const bool nothing_lost = asked(journal) || found == meant;
                CHECK(nothing_made_up);
                CHECK(nothing_lost);
            }
}

namespace {

/// Clauses that name their hive where a sentence does.
constexpr std::array<std::string_view, 20> sentences = {"took the top super off {h}", "gave {h} another super", "fed {h} 2 L 1:1", "fed 2 L of 2:1 to {h}", "put an excluder on {h}", "eggs in {h}", "2 queen cells in {h}",
    "united {h} with h9", "treated {h} with oxalic acid", "strips out of {h}", "moved {h} to orchard", "super on {h}", "{h} calm", "{h} top 70% full", "alcohol wash on {h} 4/300", "no eggs in {h}", "split {h} into h11",
    "pulled 2 supers off {h}", "{h} swarmed", "knocked down 3 cells in {h}"};

/// The sentence with the hive in its place.
std::string about(std::string_view sentence, std::string_view hive) { return fmt::format(fmt::runtime(sentence), fmt::arg("h", hive)); }

std::set<std::string> of_sentence(std::string_view sentence, std::string_view hive) { return alone(about(sentence, hive)); }

}  // namespace

TEST_CASE("sentences about two hives say what they say alone, or are asked about", "[facts][figures]") {
    for (std::string_view x : sentences) REQUIRE(of_sentence(x, "h3").size() == 1);
    for (std::string_view between : {", ", " and ", ". ", "; "})
        for (std::string_view x : sentences)
            for (std::string_view y : sentences) {
                if (x == y) continue;
                const std::string line = about(x, "h3") + std::string(between) + about(y, "h4");
                INFO(line);
                const Journal journal = test::journal_of(line);
                std::set<std::string> meant = of_sentence(x, "h3");
                meant.merge(of_sentence(y, "h4"));
                const std::set<std::string> found = facts(journal);
                CHECK(std::includes(meant.begin(), meant.end(), found.begin(), found.end()));
                CHECK((asked(journal) || found == meant));
            }
}

TEST_CASE("honey, the yard and a hive side by side keep their own", "[facts][figures]") {
    constexpr std::array<std::string_view, 26> told = {"extracted 24 kg lot A from h1", "filled 60 x 454 g lot A", "sold 12 x 454 g lot A to the shop", "gave away 3 x 454 g", "kept 2 x 454 g", "moisture 17.6% lot A", "1.2 kg wax",
        "4 supers foundation in the shed", "spoiled 2 jars", "stocktake 5 kg lot A", "18C", "sunny", "light wind", "lime in bloom", "clover over", "flow heavy", "h3 calm", "h3 super on", "took the top super off h3", "fed h3 2 L 1:1",
        "h3 6 frames of brood", "h3 queen seen", "2 stings at h3", "h3 swarmed", "sold 4 kg to the baker", "rain"};
    for (std::string_view x : told) REQUIRE(alone(std::string(x)).size() == 1);
    for (std::string_view between : {", ", " and ", ". ", "; "})
        for (std::string_view x : told)
            for (std::string_view y : told) {
                if (x == y) continue;
                const std::string line = std::string(x) + std::string(between) + std::string(y);
                INFO(line);
                const Journal journal = test::journal_of(line);
                std::set<std::string> meant = alone(std::string(x));
                meant.merge(std::set<std::string>(alone(std::string(y))));
                const std::set<std::string> found = facts(journal);
                CHECK(std::includes(meant.begin(), meant.end(), found.begin(), found.end()));
                CHECK((asked(journal) || found == meant));
            }
}

TEST_CASE("a sentence about a list of hives is told of each", "[facts][figures]") {
    for (std::string_view x : sentences) {
        const std::string line = about(x, "h3, h4 and h6");
        INFO(line);
        const Journal journal = test::journal_of(line);
        std::set<std::string> meant = of_sentence(x, "h3");
        meant.merge(of_sentence(x, "h4"));
        meant.merge(of_sentence(x, "h6"));
        const std::set<std::string> found = facts(journal);
        CHECK((found == meant || (asked(journal) && std::includes(meant.begin(), meant.end(), found.begin(), found.end()))));
    }
}

TEST_CASE("a clause with one more hive at its end is told of both", "[facts][figures]") {
    for (std::string_view x : clauses) {
        const std::string line = fmt::format("h3 {} and h4", x);
        INFO(line);
        const Journal journal = test::journal_of(line);
        const std::set<std::string> found = facts(journal), meant = alone(x, {"h3", "h4"});
        CHECK((found == meant || (asked(journal) && std::includes(meant.begin(), meant.end(), found.begin(), found.end()))));
    }
}
