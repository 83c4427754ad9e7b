#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "estimate/estimate.hpp"
#include "ledger/ledger.hpp"

namespace waxtab {

/// Order in which advice that contradicts is settled: the lower wins.
enum class Rank : std::uint8_t { disease, law_and_food, swarm, room, rest };

/// How sure a piece of advice is.
enum class Sureness : std::uint8_t { certain, likely, possible };

/// What a piece of advice asks for, so that two that contradict or repeat each other are found.
enum class Act : std::uint8_t {
    note,           ///< look up, write down, bear in mind: contradicts nothing
    add_super,
    no_super,       ///< put no more on
    take_honey,     ///< take supers off for honey
    leave_super,    ///< leave supers on, or keep their honey apart
    take_empty,     ///< take unused supers off
    clear,          ///< come back for boxes above an escape board
    extract,
    jar,            ///< about honey in lots and jars
    feed,
    stop_feed,
    treat,
    end_treatment,  ///< strips out
    supers_off,     ///< no honey supers on while something is in the hive
    count_mites,
    open,           ///< open the hive and look
    leave_shut,     ///< leave the brood nest shut
    split,          ///< split or artificial swarm
    give_frame,     ///< a frame from another hive
    unite,          ///< unite or requeen
    excluder,
    entrance,
    shed,           ///< about boxes in the shed
    stand_still,    ///< nothing moves from or to the yard
    todo,           ///< the keeper's own to-do, returned
};

/// A chance the words of a piece of advice speak of, as a figure.
struct Chance {
    std::string that;           ///< `room runs out`
    double value = 0;           ///< 0..1
    std::optional<Day> by;      ///< the last day it is about
    HiveId hive = no_hive;
    BoxId box = no_box;         ///< the super it is about, if one
};

/// One piece of advice.
struct Advice {
    HiveId hive = no_hive;      ///< no_hive: for a yard or the keeper
    YardId yard = no_yard;
    std::string what;           ///< imperative, one line: `put a super on, under the one that is on`
    std::optional<Day> by;      ///< last good day
    Sureness sureness = Sureness::likely;
    std::string sureness_words; ///< `likely: 7 in 10 that room runs out before 2026-06-10`
    std::string rule;           ///< stable rule name, such as `room-runs-out`
    std::string source;         ///< the rule's source, or `common practice, no source`
    std::vector<Chance> chances;        ///< none where there is nothing to base one on
    std::vector<std::string> reasons;   ///< plain sentences with numbers and units
    std::vector<FactId> because;        ///< the journal lines
    std::vector<std::string> over;      ///< advice it outranks, in words
    std::vector<std::string> cautions;  ///< the usual ones, one each
    Rank rank = Rank::rest;
    Act act = Act::note;
    std::vector<std::string> also;      ///< rules that ask for the same and gave reasons to it
    std::vector<HiveId> hives;          ///< for advice to a yard: the hives it speaks of; empty: all
    std::vector<BoxId> boxes;           ///< the boxes it speaks of
    int count = 0;              ///< how many supers to put on; 0 where none
    std::string box_kind;       ///< of the supers to put on
    Comb comb = Comb::unsaid;   ///< of the supers to put on
};

/// What to do at which hive, most urgent first.
std::vector<Advice> advise(const Journal& journal, const History& history, const Estimates& estimates,
                           const Ledger& ledger);

/// One rule, as the manual lists it.
struct RuleEntry {
    std::string_view name;      ///< stable: `first-super`
    std::string_view says;      ///< one sentence
    std::string_view source;
    std::string_view group;     ///< heading it stands under in the manual: `Supers`
};
const std::vector<RuleEntry>& rules();

/// The table of rules as a page of the manual, in Markdown.
std::string rules_page();

}  // namespace waxtab
