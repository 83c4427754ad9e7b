// What the histories hold to be emptied is what the ledger has in its lots: two answers to one question.
#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>

#include "account_checked.hpp"

using namespace waxtab;

namespace {

/// Takings in lots by the ledger, and by the histories; each with the taking's index.
void check_agreed(const Journal& journal, const Day on) {
    const History history = replay(journal, on);
    const Ledger ledger = account_checked(journal, history, estimate(journal, history));
    std::vector<std::size_t> in_lots, emptied;
    for (const Lot& lot : ledger.lots) in_lots.insert(in_lots.end(), lot.takings.begin(), lot.takings.end());
    std::sort(in_lots.begin(), in_lots.end());
    for (std::size_t i = 0; i < history.takings.size(); ++i)
        if (history.takings[i].extracted) emptied.push_back(i);
    CHECK(in_lots == emptied);
}

Journal example(const std::filesystem::path& folder, Day on) {
    std::vector<JournalFile> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().extension() != ".hive") continue;
        std::ostringstream text;
        text << std::ifstream(entry.path(), std::ios::binary).rdbuf();
        files.push_back({entry.path().filename().string(), text.str()});
    }
    std::sort(files.begin(), files.end(), [](const JournalFile& a, const JournalFile& b) { return a.name < b.name; });
    return read_journal(std::move(files), on);
}

/// A summer of supers going on and off and honey extracted, in every order a keeper may write it.
std::string summer(std::uint32_t seed) {
    std::mt19937 random{seed};
    const auto pick = [&](int low, int high) { return std::uniform_int_distribution<int>{low, high}(random); };
    std::string text = "units kg\n";
    const int hives = pick(1, 5);
    for (int h = 1; h <= hives; ++h)
        text += "hive h" + std::to_string(h) + " at " + (pick(0, 1) ? "mill" : "home") + ": deep, excluder, super drawn9, super drawn9\n";
    Day day = *day_from_iso("2026-06-01");
    for (int i = 0; i < pick(3, 12); ++i, day += date::days{pick(0, 9)}) {
        text += "\n" + iso(day) + "\n";
        for (int n = pick(1, 4); n > 0; --n) {
            const std::string h = "h" + std::to_string(pick(1, hives));
            const int what = pick(1, 10);
            if (what <= 4) text += h + " top off\n";
            else if (what <= 6) text += "+super " + h + " drawn9\n";
            else if (what <= 7) text += "extracted " + std::to_string(pick(5, 40)) + " kg lot " + std::string(1, static_cast<char>('A' + pick(0, 3))) + " from " + h + "\n";
            else if (what <= 8) text += "extracted " + std::to_string(pick(1, 3)) + " supers, " + std::to_string(pick(5, 40)) + " kg lot E\n";
            else text += "extracted " + std::to_string(pick(5, 40)) + " kg lot " + std::string(1, static_cast<char>('A' + pick(0, 3))) + "\n";
        }
    }
    return text;
}

}  // namespace

TEST_CASE("histories and ledger empty the same supers in every example", "[ledger]") {
    for (const auto& folder : std::filesystem::directory_iterator(WAXTAB_ROOT "/examples")) {
        if (!folder.is_directory()) continue;
        INFO(folder.path());
        for (const char* on : {"2026-06-15", "2026-08-01", "2026-12-31"}) check_agreed(example(folder.path(), *day_from_iso(on)), *day_from_iso(on));
    }
}

TEST_CASE("histories and ledger empty the same supers in any summer", "[figures][ledger]") {
    const Day on = *day_from_iso("2026-12-31");
    for (std::uint32_t seed = 1; seed <= 150; ++seed) {
        const std::string text = summer(seed);
        INFO("seed " << seed << "\n" << text);
        check_agreed(read_journal({{"a.hive", text}}, on), on);
    }
}
