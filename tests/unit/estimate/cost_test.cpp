// Estimates cost time in proportion to facts. Times themselves are only printed; ratios are checked.
#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>
#include <cstdio>

#include "estimate/estimate.hpp"
#include "notebook.hpp"
#include "season_generator.hpp"

using namespace waxtab;

namespace {

/// `yards` yards of `hives` hives over `seasons` seasons, every hive seen every ten days, two supers each.
Notebook made(int yards, int hives, int seasons) {
    Notebook book;
    season::Dice dice(9);
    std::vector<HiveId> ids;
    for (int y = 0; y < yards; ++y) {
        const YardId at = book.yard("y" + std::to_string(y));
        for (int h = 0; h < hives; ++h) ids.push_back(book.hive("h" + std::to_string(y) + "-" + std::to_string(h), at));
    }
    for (int s = 0; s < seasons; ++s) {
        const Day first = date::sys_days{date::year{2017 + s} / 5 / 1};
        std::vector<BoxId> on;
        std::vector<double> full(2 * ids.size(), 0.0);
        for (HiveId id : ids) on.push_back(book.super_on(id, first)), on.push_back(book.super_on(id, first));
        for (int visit = 1; visit <= 10; ++visit)
            for (std::size_t i = 0; i < on.size(); ++i) {
                full[i] = std::min(1.0, full[i] + dice.between(0, 0.2));
                book.full(on[i], first + date::days{10 * visit}, season::eye(dice, full[i]));
            }
        for (BoxId box : on) book.take_off(box, first + date::days{110});
        book.stand_on(first + date::days{110});
    }
    return book;
}

double seconds(const Notebook& book) {
    double best = 1e9;
    for (int i = 0; i < 3; ++i) {
        const auto start = std::chrono::steady_clock::now();
        const Estimates e = estimate(book.journal, book.history);
        best = std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
        REQUIRE(e.takings.size() == book.history.takings.size());
    }
    return best;
}

}  // namespace

TEST_CASE("estimates cost time in proportion to facts", "[estimate][cost][figures]") {
    const Notebook small = made(4, 8, 3), large = made(16, 8, 3), seasons = made(4, 8, 12);
    const double one = seconds(small), yards = seconds(large), years = seconds(seasons);
    INFO("small " << one << " s, four times the yards " << yards << " s, four times the seasons " << years << " s");
    CHECK(yards < 8 * one);
    CHECK(years < 8 * one);
}

TEST_CASE("large journals", "[.slow][cost]") {
    const auto print = [](const char* what, const Notebook& book) {
        std::printf("%-36s %7zu facts %6.2f s\n", what, book.journal.facts.size(), seconds(book));
    };
    print("250 hives in one yard, a season", made(1, 250, 1));
    print("500 hives in one yard, a season", made(1, 500, 1));
    print("500 hives in one yard, two seasons", made(1, 500, 2));
    print("25 hives in one yard, ten seasons", made(1, 25, 10));
    print("40 yards of 10, five seasons", made(40, 10, 5));
    print("40 yards of 10, ten seasons", made(40, 10, 10));
    print("40 yards of 25, ten seasons", made(40, 25, 10));
}
