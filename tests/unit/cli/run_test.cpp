#include <map>
#include <sstream>

#include <catch2/catch.hpp>

#include "cli/run.hpp"
#include "text/utf8.hpp"

using namespace waxtab;

namespace {

/// Files made up for a test, by path; a path with no bytes cannot be read.
class MadeUpFiles : public Files {
public:
    std::map<std::string, std::optional<std::string>> files;

    What what(const std::string& path) const override {
        if (files.count(path)) return What::file;
        const std::string inside = path == "." ? "" : path + '/';
        for (const auto& [name, bytes] : files)
            if (name.starts_with(inside)) return What::folder;
        return path == "." ? What::folder : What::missing;
    }
    std::optional<std::vector<std::string>> journals_below(const std::string& folder) const override {
        const std::string inside = folder == "." ? "" : folder + '/';
        std::vector<std::string> names;
        for (const auto& [name, bytes] : files)
            if (name.starts_with(inside) && name.ends_with(".hive")) names.push_back(name.substr(inside.size()));
        return names;
    }
    std::optional<std::string> read(const std::string& path) const override {
        const auto file = files.find(path);
        return file == files.end() ? std::nullopt : file->second;
    }
};

struct Said {
    int status = 0;
    std::string out, err;
};

constexpr const char* small =
    "units kg\n"
    "hive h3 at mill: deep, excluder, super drawn9\n"
    "\n"
    "2026-06-03 mill\n"
    "24C sunny, flow heavy, white clover\n"
    "h3 top 70% capped\n"
    "+super h3 drawn9\n";

Said say(const std::vector<std::string>& arguments, const MadeUpFiles& files, const std::string& input = {}) {
    std::istringstream in(input);
    std::ostringstream out, err;
    Io io{in, out, err, files, date::year{2026} / 6 / 3, false};
    const int status = run(arguments, io);
    return {status, out.str(), err.str()};
}

Said say(const std::vector<std::string>& arguments, const std::string& journal = small) {
    MadeUpFiles files;
    files.files["mill.hive"] = journal;
    return say(arguments, files);
}

bool holds(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::size_t widest(const std::string& text) {
    std::istringstream lines(text);
    std::size_t most = 0;
    for (std::string line; std::getline(lines, line);) most = std::max(most, display_width(line));
    return most;
}

}  // namespace

TEST_CASE("check of the small journal is fine") {
    const Said said = say({"check"});
    CHECK(said.status == 0);
    CHECK(said.out == "fine: 6 facts about 1 hive in 1 file\n");
    CHECK(said.err.empty());
}

TEST_CASE("check shows errors in reading order, counts them and exits with 1") {
    const Said said = say({"check"}, std::string(small) + "h4 top full\nh3 fed 1 L syrup 1:1\n");
    CHECK(said.status == 1);
    CHECK(holds(said.out, "mill.hive:8:1: error: "));
    CHECK(holds(said.out, "1 error, 0 warnings in 1 file\n"));
}

TEST_CASE("other commands answer with status 0 and leave the number of errors on standard error") {
    for (const std::string command : {"lines", "timeline", "supers", "advise", "bring", "harvest", "hindsight"}) {
        CAPTURE(command);
        const Said said = say({command}, std::string(small) + "h4 top full\n");
        CHECK(said.status == 0);
        CHECK_FALSE(said.out.empty());
        CHECK(said.err == "waxtab: 1 error in the journal; 'waxtab check' shows it\n");
    }
}

TEST_CASE("no report is wider than a page") {
    for (const std::string command : {"check", "timeline", "supers", "advise", "bring", "harvest", "hindsight", "words"}) {
        CAPTURE(command);
        CHECK(widest(say({command}).out) <= 80);
        CHECK(widest(say({command, "--help"}).out) <= 80);
    }
    CHECK(widest(say({"--help"}).out) <= 80);
    CHECK(widest(say({"lines", "--read-back"}).out) <= 80);
}

TEST_CASE("wrong use exits with 2 and suggests what was meant") {
    const std::pair<std::vector<std::string>, std::string> cases[] = {
        {{"suprs"}, "there is no command 'suprs'; did you mean 'supers'?"},
        {{"fly"}, "there is no command 'fly'; it is one of check"},
        {{"supers", "--on", "yesterday"}, "--on wants a day that exists, written like 2026-06-03, not 'yesterday'"},
        {{"supers", "--on", "2026-02-30"}, "not '2026-02-30'"},
        {{"supers", "--hive", "h33"}, "the journal has no hive 'h33'; did you mean 'h3'?"},
        {{"supers", "--yard", "mll"}, "the journal has no yard 'mll'; did you mean 'mill'?"},
        {{"supers", "--yards", "mill"}, "supers has no option '--yards'; did you mean '--yard'?"},
        {{"supers", "--units", "stone"}, "--units wants kg or lb, not 'stone'"},
        {{"lines", "--json", "--csv"}, "choose one of --json, --csv and --read-back"},
        {{"lines", "--since", "2026-06-02", "--until", "2026-06-01"}, "--since 2026-06-02 is after --until 2026-06-01"},
        {{"harvest", "--lot", "A"}, "the journal has no lot 'A'"},
        {{"check", "--explain", "unknown-hve"}, "there is no code 'unknown-hve'; did you mean 'unknown-hive'?"},
        {{"--on", "2026-06-03"}, "a command comes first"},
    };
    for (const auto& [arguments, words] : cases) {
        const Said said = say(arguments);
        CAPTURE(words, said.err);
        CHECK(said.status == 2);
        CHECK(holds(said.err, words));
        CHECK(said.out.empty());
    }
    CHECK(say({}).status == 2);
}

TEST_CASE("files and folders that cannot be read exit with 2, and the rest is still answered") {
    MadeUpFiles files;
    CHECK(say({"check"}, files).status == 2);
    CHECK(holds(say({"check"}, files).err, "no journal in '.'"));
    CHECK(holds(say({"check", "nowhere"}, files).err, "there is no file or folder 'nowhere'"));
    files.files["year/a.hive"] = small;
    files.files["year/b.hive"] = std::nullopt;
    const Said said = say({"check", "year"}, files);
    CHECK(said.status == 2);
    CHECK(holds(said.err, "cannot read 'year/b.hive'"));
    CHECK(holds(said.out, "fine: 6 facts"));
}

TEST_CASE("files of one folder are named relative to it, of several with the folder before") {
    MadeUpFiles files;
    files.files["year/mill/a.hive"] = small;
    CHECK(holds(say({"lines", "year"}, files).out, "# mill/a.hive:6"));
    files.files["other/b.hive"] = "";
    CHECK(holds(say({"lines", "year/", "other"}, files).out, "# year/mill/a.hive:6"));
    CHECK(holds(say({"lines", "./year/mill/a.hive"}, files).out, "# year/mill/a.hive:6"));
    CHECK(say({"lines", "--no-refs", "year", "year/mill/a.hive"}, files).out == say({"lines", "--no-refs", "year"}, files).out);
}

TEST_CASE("a dash reads standard input") {
    const Said said = say({"lines", "-"}, MadeUpFiles{}, small);
    CHECK(said.status == 0);
    CHECK(holds(said.out, "h3 top 70% capped  # -:6"));
}

TEST_CASE("the day stood on decides what counts, today by default") {
    CHECK(holds(say({"lines", "--on", "2026-06-02"}).out, "hive h3 at mill"));
    CHECK_FALSE(holds(say({"lines", "--on", "2026-06-02"}).out, "70%"));
    CHECK(holds(say({"supers"}).out, "Supers on 2026-06-03."));
}

TEST_CASE("headings after the day stood on are warned of once a file") {
    const std::string year = std::string(small) + "\n2026-07-01 mill\nh3 calm\n\n2026-07-08 mill\nh3 calm\n";
    const Said said = say({"check"}, year);
    CHECK(said.status == 0);
    CHECK(holds(said.out, "mill.hive:9:1: warning: 2026-07-01 is after today [after-today]"));
    CHECK(holds(said.out, "and 1 heading later"));
    CHECK(holds(said.out, "0 errors, 1 warning in 1 file\n"));
}

TEST_CASE("an empty file is said to be empty") {
    const Said said = say({"check"}, "");
    CHECK(said.status == 0);
    CHECK(holds(said.out, "mill.hive:1:1: warning: nothing is written in this file [empty-file]"));
}

TEST_CASE("output that cannot be written is not success") {
    std::istringstream in;
    std::ostringstream out, err;
    out.setstate(std::ios::badbit);
    MadeUpFiles files;
    files.files["mill.hive"] = small;
    Io io{in, out, err, files, date::year{2026} / 6 / 3, false};
    CHECK(run({"check"}, io) == 2);
    CHECK(holds(err.str(), "could not be written"));
}

TEST_CASE("help teaches: what is answered, a journal, how to use it") {
    const Said help = say({"--help"});
    CHECK(help.status == 0);
    for (const char* part : {"h3 top 70% capped", "waxtab check", "advise", "Exit status"}) CHECK(holds(help.out, part));
    CHECK(holds(say({"supers", "--help"}).out, "--on DATE"));
    CHECK(holds(say({"check", "--explain", "unknown-hive"}).out, "unknown-hive: error"));
    CHECK(say({"--version"}).out.starts_with("waxtab "));
}

TEST_CASE("the example of the help is a journal without errors") {
    std::istringstream help(say({"--help"}).out);
    std::string journal;
    for (std::string line; std::getline(help, line) && !line.starts_with("Then,");)
        if (line.starts_with("    ")) journal += line.substr(4) + '\n';
    const Said said = say({"check"}, journal);
    CAPTURE(journal, said.out);
    CHECK(said.status == 0);
    CHECK(said.out.starts_with("fine: "));
}

TEST_CASE("words explains the notation and single words") {
    CHECK(say({"words"}).status == 0);
    CHECK(say({"words", "super"}).status == 0);
    CHECK(say({"words", "zzzz"}).status == 2);
}
