// The new queen's calendar: quiet while a virgin is due, then eggs, then a test frame.
#include <algorithm>

#include <fmt/format.h>

#include "advice/rule.hpp"
#include "handbook/calendar.hpp"

namespace waxtab {
namespace {

using handbook::QueenStart;

std::string_view start_words(QueenStart start) {
    switch (start) {
        case QueenStart::cell_with_egg:
        case QueenStart::charged_cell: return "charged queen cells found";
        case QueenStart::open_cell: return "open queen cells found";
        case QueenStart::sealed_cell_found: return "sealed queen cell found";
        case QueenStart::cell_sealed: return "queen cell given";
        case QueenStart::prime_swarm_left: return "swarmed";
        case QueenStart::virgin_emerged: return "virgin noted";
        case QueenStart::queenless_split:
        case QueenStart::split_eggs_only: return "split without its queen";
        case QueenStart::swarm_hived: return "swarm hived or queen introduced";
    }
    return "";
}

/// The days of the calendar, from the sighting.
std::string eggs_words(const QueenClock& clock) {
    const auto eggs = handbook::first_eggs(clock.start);
    return fmt::format("first eggs possible from {}, usual {} to {}", iso(clock.at(eggs.earliest)), iso(clock.at(eggs.usual_from)),
                       iso(clock.at(eggs.usual_to)));
}

std::string emergence_words(const QueenClock& clock) {
    const auto out = handbook::emergence(clock.start);
    if (!out || out->usual_to == 0) return "";
    if (out->usual_from == out->usual_to) return fmt::format("; emergence about {}", iso(clock.at(out->usual_to)));
    return fmt::format("; emergence between {} and {}", iso(clock.at(out->usual_from)), iso(clock.at(out->usual_to)));
}

std::string clock_words(const QueenClock& clock) {
    return fmt::format("{} on {}{}; {}", start_words(clock.start), iso(clock.day), emergence_words(clock), eggs_words(clock));
}

Advice begin(const HiveView& hive, Act act, std::string what) {
    Advice a = advise_to(act, Rank::swarm, std::move(what));
    a.reasons.push_back(clock_words(*hive.queen.clock));
    because(a, hive.queen.clock->fact);
    return a;
}

Advices leave_shut(const HiveView& hive) {
    if (!hive.queen.clock) return {};
    const QueenClock& clock = *hive.queen.clock;
    const auto quiet = handbook::quiet_time(clock.start);
    if (!quiet || hive.on() < clock.at(quiet->from) || hive.on() >= clock.at(quiet->to)) return {};
    Advice a = begin(hive, Act::leave_shut, fmt::format("leave the brood nest shut until {}", iso(clock.at(quiet->to))));
    how_sure(a, Sureness::likely, "a virgin is emerging, flying or mating");
    return {a};
}

/// A swarm without its old queen has a virgin: first eggs two to three weeks after hiving, a week of grace.
/// Source: killowen.com (casts).
constexpr int cast_overdue = 28;

bool hived(const HiveView& hive) {
    const FactId fact = hive.queen.clock->fact;
    return fact != set_up_fact && hive.journal().facts[fact].kind == Kind::swarm_hived;
}

int overdue_day(const HiveView& hive) {
    const QueenClock& clock = *hive.queen.clock;
    return hived(hive) && clock.start == QueenStart::swarm_hived ? cast_overdue : handbook::first_eggs(clock.start).overdue;
}

Advices look_for_eggs(const HiveView& hive) {
    if (!hive.queen.clock) return {};
    const QueenClock& clock = *hive.queen.clock;
    const auto eggs = handbook::first_eggs(clock.start);
    if (hive.on() < clock.at(eggs.usual_from) || hive.on() >= clock.at(overdue_day(hive))) return {};
    const auto quiet = handbook::quiet_time(clock.start);
    if (quiet && hive.on() < clock.at(quiet->to)) return {};
    const bool no_queen = !quiet && hive.on() >= clock.at(eggs.overdue);
    Advice a = begin(hive, Act::open, "look for eggs of the new queen");
    a.by = no_queen ? clock.at(overdue_day(hive)) : clock.at(eggs.usual_to);
    how_sure(a, Sureness::likely, quiet ? "14-21 days after emergence is usual, longer in bad weather" : "as soon as there is comb");
    if (no_queen) a.reasons.push_back("an old queen would lay by now; a cast's first eggs come 2-3 weeks after hiving");
    return {a};
}

bool no_eggs_since(const HiveView& hive, Day day) { return !hive.queen.eggs || hive.queen.eggs->day < day; }

Advices test_frame(const HiveView& hive) {
    if (!hive.queen.clock) return {};
    const QueenClock& clock = *hive.queen.clock;
    const auto eggs = handbook::first_eggs(clock.start);
    const int overdue = overdue_day(hive);
    if (hive.on() < clock.at(overdue) || !no_eggs_since(hive, clock.at(eggs.earliest))) return {};
    Advice a = begin(hive, Act::give_frame, "look for eggs; if there are none, give a test frame with eggs and young larvae");
    a.by = std::max(hive.on(), clock.at(overdue));
    how_sure(a, Sureness::likely, "");
    const int day = days_between(clock.day, hive.on());
    if (clock.start != QueenStart::swarm_hived)
        a.reasons.push_back(fmt::format("day {} and no eggs noted: a virgin not mated within 3-4 weeks is likely to lay drones only", day));
    else a.reasons.push_back(fmt::format("day {} and no eggs noted", day));
    a.reasons.push_back("queen cells on the test frame mean that she is missing; frames from healthy hives only");
    return {a};
}

}  // namespace

std::vector<Rule> new_queen_rules() {
    return {
        {{"virgin-quiet", "While a virgin is due to emerge, fly or mate the brood nest stays shut; a sealed cell that is found may emerge "
                          "0-8 days later.",
          "Bee Craft, 20 June 2018; Trunch Beekeepers", "New queens"},
         &leave_shut},
        {{"eggs-expected", "First eggs are looked for in their usual window, counted from what was noted.",
          "Trunch Beekeepers (14-21 days after emergence); Bee Craft, 20 June 2018; Norfolk Beekeepers; casts: killowen.com", "New queens"},
         &look_for_eggs},
        {{"test-frame", "No eggs at about day 30 from a sealed cell: a test frame of eggs.",
          "from memory; mating within 3-4 weeks: Breconshire BKA (Sept 2025)", "New queens"},
         &test_frame},
    };
}

}  // namespace waxtab
