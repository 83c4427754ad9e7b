// Lines of lines are lines: the long form of a journal reads back to itself, on the examples too.
#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "said.hpp"

using namespace waxtab;

namespace {

const Day today = date::sys_days{date::year{2026} / 11 / 25};

std::vector<JournalFile> files_below(const std::filesystem::path& folder) {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
        if (entry.path().extension() == ".hive") paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<JournalFile> files;
    for (const auto& path : paths) {
        std::ifstream in(path, std::ios::binary);
        std::ostringstream bytes;
        bytes << in.rdbuf();
        files.push_back({path.string(), bytes.str()});
    }
    return files;
}

std::string lines(const Journal& j) {
    std::string text;
    for (const std::string& line : set_up_lines(j)) text += line + '\n';
    for (const Fact& f : j.facts) text += long_form(j, f) + '\n';
    return text;
}

}  // namespace

TEST_CASE("the lines of every example read back to themselves", "[facts]") {
    for (const auto& folder : std::filesystem::directory_iterator(WAXTAB_ROOT "/examples")) {
        if (!folder.is_directory()) continue;
        INFO(folder.path().string());
        const std::vector<JournalFile> files = files_below(folder.path());
        if (files.empty()) continue;
        const Journal journal = read_journal(files, today);
        REQUIRE_FALSE(journal.facts.empty());
        const std::string once = lines(journal);
        CHECK(lines(read_journal({{"lines.hive", once}}, today)) == once);
    }
}
