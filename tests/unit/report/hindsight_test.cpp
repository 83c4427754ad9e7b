#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "report/hindsight.hpp"
#include "report_fixture.hpp"

using namespace waxtab;

namespace {

Hindsight made_up() {
    Hindsight h;
    h.rows.push_back({1, 8, 84, 40, 0.81, 0.52, 1.9, 0.12, -0.03, 0.19, 0.15, 0.11, RangesHeld::well});
    h.all = h.rows.front();
    h.ran_out.push_back({0, 0, june(1), set_up_fact, 0.71});
    h.supers_put_on = 5;
    h.too_little = false;
    return h;
}

}  // namespace

TEST_CASE("hindsight shows how often the range held and how far off the estimates were") {
    const Read r(small_journal, june(3));
    const std::string text = hindsight_text(r.journal, made_up(), june(3), {}, {});
    CHECK(hindsight_words(made_up(), {}) == "84 forecasts: 81% of readings inside the 80% range (rounded readings count in part): as many as "
                                            "should be, as far as can be told; 1.9 kg off on average (12% of a super), "
                                            "19% had nothing changed been assumed");
    CHECK(holds(text, "84 forecasts: 81% of readings inside the 80% range (rounded readings count in\npart)"));
    CHECK(holds(text, "   1-8     84     81%     52%  1.9 kg     12%   -3%        19%   15%    11%\n"));
    CHECK(holds(text, "Hives found without room\n  2026-06-01  h3, chance foretold 71%"));
    CHECK(widest_line(text) <= 80);
    const auto json = nlohmann::json::parse(hindsight_json(r.journal, made_up(), june(3), {}, {}));
    CHECK(json["rows"][0]["inside_80"] == 81);
    CHECK(json["rows"][0]["inside_50"] == 52);
    CHECK(json["rows"][0]["ranges"] == "well");
    CHECK(json["ran_out"][0]["hive"] == "h3");
}

TEST_CASE("hindsight in pounds says so in its sentence too, and says when there is too little to judge by") {
    const Read r(small_journal, june(3));
    Style pounds;
    pounds.mass = MassUnit::pound;
    // 1.9 kg is 4.19 lb: a pound is 0.45359237 kg (international pound of 1959).
    CHECK(holds(hindsight_text(r.journal, made_up(), june(3), {}, pounds), "4.2 lb off on average"));
    Hindsight few;
    few.all.forecasts = 8;
    CHECK(hindsight_words(few, {}) == "8 of 20 forecasts wanted: too little was read twice to judge by");
}
