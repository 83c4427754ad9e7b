// Ranges and errors of forecasts on invented seasons, whose generator shares nothing with the estimator: seasons of flows that
// come and go, and dry ones with a flow in spring and a long dearth.
#include <catch2/catch.hpp>

#include <cmath>
#include <cstdio>
#include <map>
#include <string>

#include "estimate/learn.hpp"
#include "forecast_score.hpp"
#include "kept_season.hpp"

using namespace waxtab;

namespace {

using Scores = std::map<std::string, ForecastScore>;

/// By then the spring flow of a dry season is over.
constexpr int dearth_from_day = 60;

KeptSeason::Settings dry_season() {
    KeptSeason::Settings s;
    s.dry = true;
    s.days = 180;
    return s;
}

Scores score(int seasons, const KeptSeason::Settings& settings) {
    Scores out;
    season::Dice dice(77);
    for (int i = 0; i < seasons; ++i) {
        KeptSeason season(static_cast<std::uint64_t>(1000 + i), settings);
        season.run(add_at(0.65));
        const Journal& journal = season.book.journal;
        const History& history = season.book.history;
        Pass::Options options;
        options.keep_visits = true;
        Pass pass(journal, history, learn(journal, history).schedule, options);
        pass.run();
        for (const Judged& j : judged_forecasts(pass, journal)) {
            if (j.horizon() != 7 && j.horizon() != 10 && j.horizon() != 14) continue;
            out["all"].add(j, dice);
            out[std::to_string(j.horizon()) + " days"].add(j, dice);
            out["third " + std::to_string(1 + days_between(season.first, j.made) * 3 / season.settings.days)].add(j, dice);
            if (j.no_change >= 0.7) out["near full"].add(j, dice);
            if (settings.dry && days_between(season.first, j.made) >= dearth_from_day) out["long dearth"].add(j, dice);
        }
    }
    return out;
}

void check_ranges(const Scores& scores, bool print) {
    for (const auto& [name, s] : scores) {
        if (print)
            std::printf("%-11s %6d forecasts, 80 %% range %.1f %%, 50 %% range %.1f %%, error %.3f of a super, %.2f of the line's, %.2f of no change\n",
                        name.c_str(), s.n, 100 * s.cover_80(), 100 * s.cover_50(), s.error / s.n, s.to_line(), s.to_no_change());
        INFO(name << ": " << s.n << " forecasts, 80 %: " << s.cover_80() << ", 50 %: " << s.cover_50());
        CHECK(s.cover_80() > 0.76);
        CHECK(s.cover_80() < 0.84);
        CHECK(s.cover_50() > 0.45);
        CHECK(s.cover_50() < 0.55);
        CHECK(s.n >= 1000);
    }
}

void check(int seasons, bool print) {
    const Scores scores = score(seasons, {});
    check_ranges(scores, print);
    const ForecastScore& all = scores.at("all");
    CHECK(all.n >= 5000);
    CHECK(all.to_line() <= 0.80);
    CHECK(all.to_no_change() < 1);
}

}  // namespace

TEST_CASE("ranges hold on invented seasons", "[estimate][coverage][figures]") { check(60, false); }

TEST_CASE("ranges hold in a long dearth", "[estimate][coverage][figures]") {
    const Scores scores = score(60, dry_season());
    CHECK(scores.at("long dearth").n >= 5000);
    check_ranges(scores, false);
}

TEST_CASE("ranges hold for eyes better and worse than most", "[estimate][coverage][figures]") {
    for (const double eye : {0.05, 0.12})
        for (const bool dry : {false, true}) {
            KeptSeason::Settings settings = dry ? dry_season() : KeptSeason::Settings{};
            settings.eye = eye;
            const ForecastScore all = score(60, settings).at("all");
            INFO("eye " << eye << ", dry " << dry << ", 80 %: " << all.cover_80() << ", 50 %: " << all.cover_50());
            CHECK(std::abs(all.cover_80() - 0.8) < 0.04);
            CHECK(std::abs(all.cover_50() - 0.5) < 0.05);
        }
}

TEST_CASE("the table of coverage over 1000 yard seasons, and as many dry ones", "[.slow][coverage]") {
    check(1000, true);
    check_ranges(score(1000, dry_season()), true);
}
