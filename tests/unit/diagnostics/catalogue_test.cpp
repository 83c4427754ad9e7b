#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>

#include <catch2/catch.hpp>

#include "diagnostics/catalogue.hpp"
#include "ledger/ledger.hpp"

using namespace waxtab;

namespace {

std::string bytes_of(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

/// Codes as the sources write them: beside a severity, in a call of error(), or assigned.
std::set<std::string> codes_in_sources() {
    const std::regex patterns[] = {
        std::regex(R"re(\{\s*"([a-z0-9-]+)",\s*Severity::)re"),
        std::regex(R"re(\{\w+ \? "([a-z0-9-]+)" : "[a-z0-9-]+",\s*Severity::)re"),
        std::regex(R"re(\{\w+ \? "[a-z0-9-]+" : "([a-z0-9-]+)",\s*Severity::)re"),
        std::regex(R"re(Severity::\w+,\s*"([a-z0-9-]+)")re"),
        std::regex(R"re(Severity::\w+,\s*\w+ \? "([a-z0-9-]+)" : "[a-z0-9-]+")re"),
        std::regex(R"re(Severity::\w+,\s*\w+ \? "[a-z0-9-]+" : "([a-z0-9-]+)")re"),
        std::regex(R"re(\berror\("([a-z0-9-]+)")re"),
        std::regex(R"re(\bcode = "([a-z0-9-]+)")re"),
    };
    std::set<std::string> codes;
    for (const char* folder : {"facts", "history", "estimate", "ledger"}) {
        for (const auto& entry : std::filesystem::directory_iterator(WAXTAB_ROOT "/src/" + std::string(folder))) {
            if (entry.path().extension() != ".cpp") continue;
            const std::string text = bytes_of(entry.path());
            for (const std::regex& pattern : patterns)
                for (std::sregex_iterator it(text.begin(), text.end(), pattern), end; it != end; ++it)
                    codes.insert((*it)[1]);
        }
    }
    return codes;
}

/// The example as files: a line `# in another file` begins a second one.
std::vector<JournalFile> files_of(std::string_view example) {
    constexpr std::string_view mark = "# in another file\n";
    const std::size_t at = example.find(mark);
    std::vector<JournalFile> files{{"a.hive", std::string(example.substr(0, at))}};
    if (at != example.npos) files.push_back({"b.hive", std::string(example.substr(at + mark.size()))});
    return files;
}

Diagnostics diagnostics_of(std::vector<JournalFile> files) {
    const Day on = date::year{2026} / 9 / 30;
    const Journal journal = read_journal(std::move(files), on);
    const History history = replay(journal, on);
    const Ledger ledger = account(journal, history, estimate(journal, history));
    Diagnostics all = journal.diagnostics;
    all.insert(all.end(), history.diagnostics.begin(), history.diagnostics.end());
    all.insert(all.end(), ledger.diagnostics.begin(), ledger.diagnostics.end());
    return all;
}

}  // namespace

TEST_CASE("the catalogue and the sources speak of the same codes") {
    std::set<std::string> catalogued;
    for (const CatalogueEntry& entry : catalogue()) catalogued.emplace(entry.code);
    const std::set<std::string> used = codes_in_sources();
    std::vector<std::string> missing, dead;
    std::set_difference(used.begin(), used.end(), catalogued.begin(), catalogued.end(), std::back_inserter(missing));
    std::set_difference(catalogued.begin(), catalogued.end(), used.begin(), used.end(), std::back_inserter(dead));
    CHECK(missing == std::vector<std::string>{});
    CHECK(dead == std::vector<std::string>{});
}

TEST_CASE("the catalogue is in order and complete in each entry") {
    const auto by_code = [](const CatalogueEntry& a, const CatalogueEntry& b) { return a.code < b.code; };
    CHECK(std::is_sorted(catalogue().begin(), catalogue().end(), by_code));
    for (const CatalogueEntry& entry : catalogue()) {
        CAPTURE(entry.code);
        CHECK_FALSE(entry.means.empty());
        CHECK_FALSE(entry.remedy.empty());
        CHECK(catalogue_entry(entry.code) == &entry);
    }
    CHECK(catalogue_entry("no-such-code") == nullptr);
}

TEST_CASE("every example of the catalogue brings its message about, as grave as it says") {
    for (const CatalogueEntry& entry : catalogue()) {
        if (entry.example.empty()) continue;
        CAPTURE(entry.code);
        std::vector<std::string> said;
        bool found = false;
        for (const Diagnostic& d : diagnostics_of(files_of(entry.example))) {
            said.push_back(std::string(d.code) + ": " + d.title);
            found = found || (d.code == entry.code && d.severity == entry.severity);
        }
        CAPTURE(said);
        CHECK(found);
    }
}
