#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

#include "facts/long_form.hpp"
#include "said.hpp"

namespace {

using namespace waxtab;

const Fact& feed(const Journal& journal) {
    const auto at = std::find_if(journal.facts.begin(), journal.facts.end(), [](const Fact& f) { return f.kind == Kind::feed; });
    REQUIRE(at != journal.facts.end());
    return *at;
}

Journal fed(const std::string& amount, const std::string& set_up) {
    return test::journal_of("h3 fed " + amount + " 2:1", set_up + "\nyear 2026\nyard mill\nhive h3 at mill: deep\n");
}

std::int64_t nanolitres(const std::string& amount, const std::string& set_up) { return feed(fed(amount, set_up)).value.amount; }

}  // namespace

// NIST Handbook 44 appendix C: a US gallon is 3.785411784 L, a quart a fourth, a pint an eighth of it. Units of Measurement
// Regulations 1995 (UK): a gallon is 4.54609 dm3, a pint 0.56826125 dm3.
TEST_CASE("a gallon, a quart and a pint are those of the set-up", "[facts]") {
    CHECK(nanolitres("1 gallon", "units lb\ngallon us") == 3'785'411'784);
    CHECK(nanolitres("1 quart", "units lb\ngallon us") == 946'352'946);
    CHECK(nanolitres("2 pints", "units lb\ngallon us") == 946'352'946);
    CHECK(nanolitres("1 gallon", "units kg\ngallon imperial") == 4'546'090'000);
    CHECK(nanolitres("1 quart", "units kg\ngallon imperial") == 1'136'522'500);
    CHECK(nanolitres("2 pints", "units kg\ngallon imperial") == 1'136'522'500);
    CHECK(nanolitres("2.5 gal", "units lb\ngallon imperial") == 11'365'225'000);
}

TEST_CASE("one that is named is that one, whatever the set-up says", "[facts]") {
    CHECK(nanolitres("1 US gallon", "units kg\ngallon imperial") == 3'785'411'784);
    CHECK(nanolitres("1 imp quart", "units lb\ngallon us") == 1'136'522'500);
    CHECK(nanolitres("1 imperial pint", "units lb\ngallon us") == 568'261'250);
}

TEST_CASE("a gallon that nothing says is taken by the unit of mass, and said beside the fact", "[facts]") {
    const Journal metric = fed("1 gallon", "units kg"), pounds = fed("1 gallon", "units lb");
    CHECK(feed(metric).value.amount == 4'546'090'000);
    CHECK(feed(pounds).value.amount == 3'785'411'784);
    CHECK(assumptions(metric, feed(metric)) == std::vector<std::string>{"imperial gallons (not said)"});
    CHECK(assumptions(pounds, feed(pounds)) == std::vector<std::string>{"US gallons (not said)"});
    const Journal said = fed("1 gallon", "units kg\ngallon us");
    CHECK(assumptions(said, feed(said)) == std::vector<std::string>{"US gallons (as set up)"});
}
