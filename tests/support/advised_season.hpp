#pragma once
#include <map>
#include <memory>
#include <string>

#include "advice/advice.hpp"
#include "kept_season.hpp"

namespace waxtab {

/// How a keeper of an invented season sets up the journal they write.
struct JournalHabits {
    int risk_percent = 20;          ///< of running out of room before the next visit
    std::string comb = "drawn";     ///< of the supers that go on
    std::string more;               ///< further set-up lines
};

/// What the keeper has written so far, as text: one line a hive and visit.
inline std::string journal_of(const KeptSeason& season, const JournalHabits& habits) {
    std::string text = "units kg\nyear 2026\nvisit every 10 days\nseason 10 April to 7 September\nyard yard\nrisk " +
                       std::to_string(habits.risk_percent) + "%\nshed: 400 supers " + habits.comb + "\n" + habits.more;
    const auto& boxes = season.book.history.boxes;
    std::map<Day, std::map<HiveId, std::string>> seen, put_on;
    std::map<HiveId, int> place;
    for (const HiveId hive : season.ids)
        text += "hive " + season.book.journal.hives[static_cast<std::size_t>(hive)].name + " at yard: deep\n";
    for (const Box& box : boxes) {
        const HiveId hive = box.stays.front().hive;
        const int here = ++place[hive];
        put_on[*box.stays.front().from][hive] += " super " + habits.comb + " on.";
        for (const BoxSighting& s : box.sightings)
            seen[s.day][hive] += " super " + std::to_string(here) + " " + std::to_string(s.amount / 10) + "%.";
    }
    for (const auto& [day, lines] : put_on) seen[day];
    for (const auto& [day, lines] : seen) {
        text += "\n" + iso(day) + " yard\n";
        for (const HiveId hive : season.ids) {
            const auto looked = lines.find(hive);
            const auto added = put_on[day].find(hive);
            const std::string words = (looked == lines.end() ? "" : looked->second) + (added == put_on[day].end() ? "" : added->second);
            if (!words.empty()) text += season.book.journal.hives[static_cast<std::size_t>(hive)].name + words + "\n";
        }
    }
    return text;
}

/// What `advise` says from such a journal on a day: supers to put on, by hive.
inline std::map<HiveId, int> supers_advised(const KeptSeason& season, const JournalHabits& habits, Day day) {
    const Journal journal = read_journal({{"bees.hive", journal_of(season, habits)}}, day);
    const History history = replay(journal, day);
    const Estimates estimates = estimate(journal, history);
    std::map<HiveId, int> more;
    for (const Advice& a : advise(journal, history, estimates, account(journal, history, estimates)))
        if (a.act == Act::add_super && a.hive != no_hive) more[a.hive] += a.count;
    return more;
}

/// The keeper who asks at every visit and does what is said.
inline KeptSeason::Policy as_advised(const JournalHabits& habits) {
    struct Memory { Day day{}; std::map<HiveId, int> more; };
    const auto memory = std::make_shared<Memory>();
    return [memory, habits](KeptSeason& season, int hive, Day day, double, int) {
        if (memory->day != day) *memory = {day, supers_advised(season, habits, day)};
        return memory->more[hive];
    };
}

}  // namespace waxtab
