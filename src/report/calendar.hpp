#pragma once
#include <string>
#include <vector>

#include "advice/advice.hpp"
#include "report/style.hpp"

namespace waxtab {

/// A stretch of whole days to put into a calendar.
struct CalendarEvent {
    /// Made from the facts it rests on, so that reading the file in again moves the event instead of doubling it.
    std::string uid;
    std::string title;
    std::string details;        ///< lines, with `\n` between
    std::string_view category;  ///< `visit`, `queen`, `treatment`, `honey`, `to-do`
    Day from{}, to{};           ///< both included
};

/// What is coming from `history.on` on: visits due, days to leave a new queen alone and to look for eggs, treatments
/// meant to come out, supers likely fit to take, to-dos. By day, then title.
std::vector<CalendarEvent> calendar_events(const Journal& journal, const History& history, const Estimates& estimates,
                                           const Ledger& ledger, const std::vector<Advice>& advice, const Style& style);

/// The events as an iCalendar file (RFC 5545): all-day events that leave the days free, stamped with `on`.
std::string calendar_file(const std::vector<CalendarEvent>& events, Day on);

}  // namespace waxtab
