#pragma once
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "ledger/ledger.hpp"

namespace waxtab {

/// Histories and estimates of an earlier day.
struct Then {
    History history;
    Estimates estimates;
};

/// The ledger while it is being written: what it reads, what is still waiting, and what it says.
struct Books {
    const Journal& journal;
    const History& history;
    const Estimates& estimates;
    Ledger ledger;
    std::vector<std::size_t> waiting;   ///< indices into History::takings, ascending
    std::size_t to_come = 0;            ///< first taking of a later day than the one being booked
    std::set<std::size_t> told_late;    ///< takings already reported as written down late
    std::map<std::string, std::size_t> by_name;  ///< lots by their name in lower case
    std::vector<FactId> backdated;      ///< facts noted after the day they happened
    std::optional<std::pair<Day, Then>> then;    ///< made when a backdated fact asks for it; the last one is kept

    Books(const Journal&, const History&, const Estimates&);
    const Fact& fact(FactId id) const { return journal.facts[id]; }
    /// Set up, or noted on the day or before.
    bool noted_by(FactId id, Day day) const { return id == set_up_fact || fact(id).noted <= day; }
    const Taking& taking(std::size_t i) const { return history.takings[i]; }
    /// Takings up to and with this day wait from now on.
    void go_to(Day day);
};

// ---- saying what is wrong -----------------------------------------------------------------

/// A new diagnostic about a fact; fill in label, hint and cited lines.
Diagnostic& say(Books& books, Severity severity, std::string_view code, FactId about, std::string title);
/// Cites the line of a fact as having to do with a diagnostic, `text` being what it did; each line once, eight
/// at most.
void cite(const Books& books, Diagnostic& diagnostic, FactId fact, std::string text);
/// Cites the lines of several facts.
void cite(const Books& books, Diagnostic& diagnostic, const std::vector<FactId>& facts, const std::string& text);
/// Notes what was taken as usual.
void assume(Books& books, FactId fact, std::string text);

// ---- words and amounts --------------------------------------------------------------------

/// `12.30 kg` or `27.12 lb`, in the journal's unit.
std::string words(const Books& books, Mass mass);
/// `1 jar of 454 g`, `36 jars of 454 g`, `24 pieces of comb`.
std::string jars_words(int count, Mass size, bool comb);

inline Mass times(Mass size, int count) { return {size.ng * count}; }
/// A mass as written, or the honey in a volume as written by the density of honey of unknown water; nothing
/// when the measure is neither, or is zero.
std::optional<MassRange> honey_of(const Measure& measure);
inline MassRange exactly(Mass mass) { return {mass, mass, mass, true}; }
MassRange operator+(const MassRange& a, const MassRange& b);
void add_once(std::vector<FactId>& facts, FactId fact);
void add_once(std::vector<FactId>& facts, const std::vector<FactId>& more);

}  // namespace waxtab
