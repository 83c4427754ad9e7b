#include "report/calendar.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "text/utf8.hpp"

namespace waxtab {

namespace {

constexpr std::size_t line_octets = 75;  // RFC 5545, 3.1, without the line end

/// TEXT after RFC 5545, 3.3.11. Control characters of the journal are shown, not sent.
std::string escaped(std::string_view text) {
    std::string out;
    for (std::size_t begin = 0; begin <= text.size();) {
        const std::size_t end = std::min(text.find('\n', begin), text.size());
        for (const char c : printable(text.substr(begin, end - begin))) {
            if (c == '\\' || c == ';' || c == ',') out += '\\';
            out += c;
        }
        if (end < text.size()) out += "\\n";
        begin = end + 1;
    }
    return out;
}

bool inside_character(char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0x80; }

/// A content line, folded; no character is torn apart.
std::string folded(std::string_view line) {
    std::string out;
    std::size_t room = line_octets;
    while (line.size() > room) {
        std::size_t cut = room;
        while (cut > 1 && inside_character(line[cut])) --cut;
        out.append(line.substr(0, cut)).append("\r\n ");
        line.remove_prefix(cut);
        room = line_octets - 1;
    }
    return out.append(line).append("\r\n");
}

std::string basic_date(Day day) {
    std::string text = iso(day);
    std::erase(text, '-');
    return text;
}

std::string event_text(const CalendarEvent& event, Day on) {
    std::string out = folded("BEGIN:VEVENT");
    out += folded("UID:" + event.uid);
    out += folded(fmt::format("DTSTAMP:{}T000000Z", basic_date(on)));
    out += folded(fmt::format("SEQUENCE:{}", on.time_since_epoch().count()));
    out += folded("DTSTART;VALUE=DATE:" + basic_date(event.from));
    out += folded("DTEND;VALUE=DATE:" + basic_date(event.to + date::days{1}));  // exclusive
    out += folded("SUMMARY:" + escaped(event.title));
    if (!event.details.empty()) out += folded("DESCRIPTION:" + escaped(event.details));
    out += folded(fmt::format("CATEGORIES:{}", event.category));
    out += folded("TRANSP:TRANSPARENT");
    return out + folded("END:VEVENT");
}

}  // namespace

std::string calendar_file(const std::vector<CalendarEvent>& events, Day on) {
    std::string out = folded("BEGIN:VCALENDAR") + folded("VERSION:2.0") + folded("PRODID:-//waxtab//hive journal//EN") +
                      folded("CALSCALE:GREGORIAN") + folded("METHOD:PUBLISH") + folded("X-WR-CALNAME:Hives");
    for (const CalendarEvent& event : events) out += event_text(event, on);
    return out + folded("END:VCALENDAR");
}

}  // namespace waxtab
