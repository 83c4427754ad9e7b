#include <filesystem>
#include <fstream>

#include <catch2/catch.hpp>
#include <unistd.h>

#include "cli/report_folder.hpp"

using namespace waxtab;
namespace fs = std::filesystem;

namespace {

/// A folder of the test's own, gone afterwards.
struct Scratch {
    fs::path path = fs::temp_directory_path() / ("waxtab-report-test-" + std::to_string(::getpid()));
    Scratch() { fs::create_directories(path); }
    ~Scratch() { fs::remove_all(path); }
};

const std::vector<ReportFile> one{{"report.html", "one"}, {"lots/a.html", "lot a"}};
const std::vector<ReportFile> two{{"report.html", "two"}, {"visits.ics", "days"}};

}  // namespace

TEST_CASE("a report takes the place of the one before, whole") {
    const Scratch scratch;
    const std::string folder = (scratch.path / "deep" / "report").string();
    CHECK(put_report(folder, one).empty());
    CHECK(holds_report(folder, one));
    CHECK(put_report(folder, two).empty());
    CHECK(holds_report(folder, two));
    CHECK_FALSE(holds_report(folder, one));
    CHECK_FALSE(fs::exists(scratch.path / "deep" / ".report.new"));
}

TEST_CASE("what a killed run left behind is cleared away") {
    const Scratch scratch;
    const fs::path folder = scratch.path / "report";
    fs::create_directories(scratch.path / ".report.new");
    std::ofstream(scratch.path / ".report.new" / "half") << "half";
    CHECK(put_report(folder.string(), one).empty());
    CHECK(holds_report(folder.string(), one));
    fs::rename(folder, scratch.path / ".report.old");
    CHECK(put_report(folder.string() + "/", two).empty());
    CHECK(holds_report(folder.string(), two));
}

TEST_CASE("a folder with something else in it is left alone") {
    const Scratch scratch;
    std::ofstream(scratch.path / "mine.txt") << "mine";
    CHECK_FALSE(put_report(scratch.path.string(), one).empty());
    CHECK(fs::exists(scratch.path / "mine.txt"));
    CHECK_FALSE(fs::exists(scratch.path / "report.html"));
}
