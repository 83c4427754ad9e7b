#include <catch2/catch.hpp>

#include "diagnostics/render.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

using namespace waxtab;

namespace {

/// A journal of one file `a.hive` and a diagnostic about the first place where `words` stand in it.
std::string shown(const std::string& text, const std::string& words, Diagnostic d, bool colour = false) {
    Sources sources;
    sources.add("a.hive", text);
    const auto at = static_cast<std::uint32_t>(sources[0].text().find(words));
    d.span = {0, at, at + static_cast<std::uint32_t>(words.size())};
    return render(sources, d, colour);
}

Diagnostic unit_missing() {
    Diagnostic d;
    d.code = "unit-missing";
    d.title = "expected a unit after '12'";
    d.label = "not a unit";
    d.hint = "write kg, g or l, for example '12 kg'";
    return d;
}

}  // namespace

TEST_CASE("a diagnostic shows the place, the line, the span and what to write") {
    CHECK(shown("# c\nh3 fed 12 kx syrup\n", "kx", unit_missing()) ==
          "a.hive:2:11: error: expected a unit after '12' [unit-missing]\n"
          "    2 | h3 fed 12 kx syrup\n"
          "      |           ^^ not a unit\n"
          "      = hint: write kg, g or l, for example '12 kg'\n");
}

TEST_CASE("columns count characters, carets stand under what is shown") {
    // A wide character takes two columns on the screen but counts as one character.
    const std::string out = shown("\tBjörn 蜂 12 kx\n", "kx", unit_missing());
    CHECK(out.find("a.hive:1:13: error:") == 0);
    CHECK(out.find("    1 |     Björn 蜂 12 kx\n      |                 ^^ not") != std::string::npos);
}

TEST_CASE("control characters and bad bytes are shown, not sent") {
    const std::string out = shown("h3 \x1b[31m\x07 \xff kx\n", "kx", unit_missing());
    CHECK(out.find('\x1b') == std::string::npos);
    CHECK(out.find("\\x1B[31m\\x07 \\xFF kx") != std::string::npos);
}

TEST_CASE("a long line is cut to a window around the span") {
    const std::string text = std::string(300, 'a') + " kx " + std::string(300, 'b') + "\n";
    const std::string out = shown(text, "kx", unit_missing());
    CHECK(out.find("aaa kx bbb") != std::string::npos);
    for (std::size_t at = 0; at < out.size();) {
        const std::size_t end = out.find('\n', at);
        CHECK(display_width(out.substr(at, end - at)) <= page_width);
        at = end + 1;
    }
}

TEST_CASE("a span of a whole long line keeps its carets inside the line") {
    const std::string text = std::string(300, 'a');
    const std::string out = shown(text + "\n", text, unit_missing());
    for (std::size_t at = 0; at < out.size(); at = out.find('\n', at) + 1)
        CHECK(out.find('\n', at) - at <= page_width);
}

TEST_CASE("an earlier line is cited as a note with its own place") {
    Sources sources;
    sources.add("a.hive", "one\ntwo\n");
    Diagnostic d;
    d.code = "contradiction";
    d.severity = Severity::warning;
    d.span = {0, 4, 7};
    d.title = "two cannot be";
    d.related.push_back({{0, 0, 3}, "since one is"});
    CHECK(render(sources, d, false) ==
          "a.hive:2:1: warning: two cannot be [contradiction]\n"
          "    2 | two\n"
          "      | ^^^\n"
          "a.hive:1:1: note: since one is\n"
          "    1 | one\n"
          "      | ^^^\n");
}

TEST_CASE("colour only when asked for") {
    CHECK(shown("kx\n", "kx", unit_missing()).find('\x1b') == std::string::npos);
    CHECK(shown("kx\n", "kx", unit_missing(), true).find("\x1b[1;31merror:\x1b[0m") != std::string::npos);
}

TEST_CASE("an empty file and no file at all can be spoken of") {
    Sources sources;
    sources.add("a.hive", "");
    Diagnostic d;
    d.severity = Severity::warning;
    d.code = "empty-file";
    d.title = "nothing in it";
    d.span = {0, 0, 0};
    CHECK(render(sources, d, false) == "a.hive:1:1: warning: nothing in it [empty-file]\n");
    d.span = {};
    CHECK(render(sources, d, false) == "waxtab: warning: nothing in it [empty-file]\n");
}

TEST_CASE("diagnostics are put in order and said once") {
    Diagnostics ds(3);
    ds[0].span = {1, 0, 1};
    ds[1].span = {0, 5, 6};
    ds[2].span = {0, 5, 6};
    sort_for_reading(ds);
    REQUIRE(ds.size() == 2);
    CHECK(ds[0].span.file == 0);
    CHECK(tally(ds).errors == 2);
}

TEST_CASE("json of a diagnostic keeps to plain characters") {
    Sources sources;
    sources.add("a.hive", "h\x1b kx\n");
    Diagnostic d = unit_missing();
    d.span = {0, 3, 5};
    d.title = "what is '\x1b\xff'";
    const std::string json = render_json(sources, d);
    CHECK(json.find('\x1b') == std::string::npos);
    CHECK(json.find("\"line\":1,\"column\":4,\"end_column\":6,\"severity\":\"error\",\"code\":\"unit-missing\"") != std::string::npos);
}
