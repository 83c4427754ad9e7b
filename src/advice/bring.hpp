#pragma once
#include <optional>
#include <string>
#include <vector>

#include "advice/shed_share.hpp"

namespace waxtab {

/// A hive to open on the round, and what to do there.
struct Stop {
    HiveId hive = no_hive;
    std::vector<std::size_t> advice;    ///< indices into the advice handed in
    std::optional<Day> by;              ///< the earliest last good day among them
    int supers = 0;                     ///< supers that are to go on here
    /// Where no advice asks for them: the chance that room runs out before the round after, 0..1.
    std::optional<double> chance_ahead;
};

/// Supers of one kind and comb to load.
struct SuperLoad {
    std::string box_kind;
    Comb comb = Comb::drawn;
    int count = 0;                      ///< likely needed
    int reserve = 0;                    ///< more, should the flow run at the high end of the ranges
    std::vector<HiveId> hives;          ///< they are for
    std::vector<HiveId> reserve_hives;
    std::vector<ShedClaim> claims;      ///< parallel to `hives`
    std::vector<FactId> because;        ///< of the reserve too
};

/// Strips that come out on the round.
struct StripLoad { HiveId hive = no_hive; std::string substance; Day from{}; std::optional<Day> due; FactId fact = 0; };

/// Feed to load: what and for whom; kilograms of stores wanted where known.
struct FeedLoad { HiveId hive = no_hive; std::string what; std::optional<Range> stores_kg; std::vector<FactId> because; };

/// Honey that comes home on the round and what it takes to carry it.
struct HoneyLoad {
    int supers = 0;                     ///< ripe supers to fetch, or above escape boards
    Range kg;                           ///< honey in them
    int tubs = 0;                       ///< of `tub_kg`, for the high end of the range
    static constexpr double tub_kg = 25;
    int jars = 0;                       ///< of `jar_size`, for the likely value; 0 when no jar size was ever noted
    Mass jar_size;
    std::vector<FactId> because;        ///< the readings of those supers, and the jars last filled
};

/// One yard of the round.
struct YardRound {
    YardId yard = no_yard;
    Day day{};                          ///< when it is due: last visit and interval, not before the round begins
    std::vector<Stop> hives;            ///< in the order to open them
    std::vector<SuperLoad> supers;
    int escape_boards = 0;
    std::vector<FactId> boards_because;
    std::vector<StripLoad> strips;
    std::vector<FeedLoad> feed;
    HoneyLoad honey;
    std::vector<FactId> todos;
    std::vector<std::string> remarks;   ///< such as `go here last: foulbrood is suspected`
};

/// What the shed holds against what the round wants.
struct ShedCheck {
    std::string what;                   ///< `medium super, drawn`, `escape board`
    int wanted = 0;                     ///< without the reserve
    int reserve = 0;
    std::optional<int> in_shed;         ///< none: the journal does not say
    int short_by = 0;                   ///< of the wanted ones; 0 when enough or unknown
    std::vector<ShedClaim> claims;      ///< of supers, in the order of being served where the shed is known
    std::vector<FactId> because;        ///< what is wanted for what, and what is in the shed
};

/// What to put on the truck for the next round.
struct Round {
    Day from{}, to{};
    std::vector<YardRound> yards;       ///< in the order to drive: a yard under suspicion last
    std::vector<ShedCheck> shed;
    std::vector<FactId> todos;          ///< to-dos of no yard
};

/// Plans the round from `from` to `to`, both included: yards with a hive to open or a visit due by then. Pure.
/// `advice` is what `advise` gave for the same day.
Round bring(const Journal& journal, const History& history, const Estimates& estimates,
            const std::vector<Advice>& advice, Day from, Day to);

}  // namespace waxtab
