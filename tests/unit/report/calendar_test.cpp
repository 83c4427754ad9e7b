#include <catch2/catch.hpp>

#include "report/calendar.hpp"
#include "report_fixture.hpp"
#include "text/utf8.hpp"

using namespace waxtab;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = text.find("\r\n", begin);
        REQUIRE(end != text.npos);
        lines.push_back(text.substr(begin, end - begin));
        begin = end + 2;
    }
    return lines;
}

/// Long lines put together again: a line that begins with a blank belongs to the one before.
std::string unfolded(const std::string& text) {
    std::string out;
    for (const std::string& line : lines_of(text)) out += line.starts_with(' ') ? line.substr(1) : '\n' + line;
    return out;
}

CalendarEvent event(std::string title, std::string details = {}) {
    return {"visit-1@waxtab", std::move(title), std::move(details), "visit", june(5), june(7)};
}

}  // namespace

// RFC 5545, sections 3.1 (lines end with CR LF and are at most 75 octets, without tearing characters), 3.3.11 (TEXT)
// and 3.6.1 (the end of an all-day event is not part of it).
TEST_CASE("lines of the calendar are folded at 75 octets between characters") {
    std::string title;
    for (int i = 0; i < 90; ++i) title += i % 3 == 0 ? "\u05d3" : i % 3 == 1 ? "\U0001F41D" : "w";
    const std::string text = calendar_file({event(title)}, june(3));
    for (const std::string& line : lines_of(text)) {
        CHECK(line.size() <= 75);
        CHECK(first_invalid_utf8(line) == std::string::npos);
    }
    CHECK(holds(unfolded(text), "\nSUMMARY:" + title + "\n"));
}

TEST_CASE("text in the calendar is escaped, and control characters are shown") {
    const std::string text = unfolded(calendar_file({event("a, b; c\\d", "first\nsecond\x07 END:VEVENT\r")}, june(3)));
    CHECK(holds(text, "\nSUMMARY:a\\, b\\; c\\\\d\n"));
    CHECK(holds(text, "\nDESCRIPTION:first\\nsecond"));
    CHECK_FALSE(holds(text, "\x07"));
}

TEST_CASE("events last whole days and leave them free") {
    const std::string text = unfolded(calendar_file({event("Visit mill")}, june(3)));
    CHECK(holds(text, "\nDTSTAMP:20260603T000000Z\n"));
    CHECK(holds(text, "\nDTSTART;VALUE=DATE:20260605\nDTEND;VALUE=DATE:20260608\n"));
    CHECK(holds(text, "\nTRANSP:TRANSPARENT\n"));
}

TEST_CASE("an event keeps its name from day to day, so that it moves instead of doubling") {
    const auto uids = [](Day on) {
        const Read r(small_journal, on);
        std::vector<std::string> out;
        for (const CalendarEvent& e : calendar_events(r.journal, r.history, r.estimates, r.ledger, {}, {})) out.push_back(e.uid);
        std::sort(out.begin(), out.end());
        return out;
    };
    CHECK_FALSE(uids(june(3)).empty());
    CHECK(uids(june(3)).front().ends_with("@waxtab"));
    const auto before = uids(june(3)), after = uids(june(4));
    const auto stays = [&](const std::string& uid) { return std::find(before.begin(), before.end(), uid) != before.end(); };
    CHECK(std::any_of(after.begin(), after.end(), stays));
}
