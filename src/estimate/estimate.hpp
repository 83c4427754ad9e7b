#pragma once
#include <optional>
#include <string>
#include <vector>

#include "history/history.hpp"

namespace waxtab {

/// A value with its 80 % range. low <= value <= high.
struct Range {
    double low = 0, value = 0, high = 0;
};

/// A super on a hive on the day stood on.
struct SuperEstimate {
    BoxId box = no_box;
    HiveId hive = no_hive;
    int place = 0;              ///< counted from the brood up, 1 is the lowest
    Range full;                 ///< share filled, 0..1
    Range capped;               ///< share of the comb capped, 0..1
    Range drawn;                ///< share of the comb drawn, 0..1
    Range kg;                   ///< honey in it, kilograms
    Range capacity_kg;          ///< honey when full, kilograms
    std::optional<Day> last_seen;   ///< day of the last reading of any kind; none: never looked at
    std::vector<FactId> because;    ///< the readings it rests on
    /// Share it was seen filled before a last look that found less than bees can have left, 0..1: something was taken
    /// unnoted, or one of the two looks was wrong. The later look is believed, and says nothing of the flow.
    std::optional<double> fell_from;
    /// Fit to take, by capping alone: the first day, likely, late; none when not foreseen.
    std::optional<Day> ripe_early, ripe_likely, ripe_late;
};

/// So far ahead gains are foreseen, days.
inline constexpr int forecast_days = 45;

/// A hive on the day stood on.
struct HiveEstimate {
    HiveId hive = no_hive;
    Range kg_per_day;           ///< filling rate of its supers; negative in a dearth
    Range room_kg;              ///< honey that still finds room in its supers
    /// Days until the room runs out: with 1, 5 and 9 chances in 10; +infinity for what is not foreseen
    /// within `forecast_days`, and all three where no super is on or nothing is being gained.
    Range days_of_room;
    /// Probability that room runs out within `days` days, 0..1; 0 where no super is on.
    double chance_full_within(int days) const;
    /// The same if so many kilograms of room were added today.
    double chance_full_within(int days, double added_room_kg) const;
    /// Mean and standard deviation of the gain over the coming days, kilograms; index 0 is one day.
    std::vector<double> gain_mean, gain_sd;
    double room_mean = 0, room_sd = 0;
    /// Standard deviation of gain less room over the coming days, kilograms; as long as `gain_mean`.
    std::vector<double> shortfall_sd;
    bool from_own_visits = false;   ///< else from its neighbours and the usual for the time
    bool no_room = false;           ///< the last reading said full: the rate is a lower bound
    std::vector<FactId> because;
};

/// The flow of a yard on the day stood on.
struct YardEstimate {
    YardId yard = no_yard;
    Range kg_per_day;           ///< what its mean hive gains; negative in a dearth
    Range usual_kg_per_day;     ///< what is normal there at this time of year
    std::vector<FactId> because;    ///< the last notes on flow, bloom and weather
};

/// What a box is estimated to have held when it was taken off, for the ledger.
struct TakingEstimate {
    std::size_t taking = 0;     ///< index into History::takings
    Range kg;                   ///< net honey
    std::vector<FactId> because;
    /// The same from notes up to the day it came off only: what a lot's shares rest on, so that later notes
    /// and weighings never move them.
    Range kg_then;
};

/// How the keeper's eye compares with the scale.
struct KeeperCalibration {
    int weighings = 0;          ///< boxes both judged by eye and weighed
    /// Kilograms a super the keeper calls full has held, against the handbook's figure: 1 is equal.
    Range full_factor{0.85, 1.0, 1.15};
    std::string words;          ///< for the reader; empty when there is nothing to say
    std::vector<FactId> because;    ///< the weighings it was learned from
};

struct Estimates {
    Day on{};
    std::vector<SuperEstimate> supers;  ///< by hive, then from the brood up
    std::vector<HiveEstimate> hives;    ///< living hives, in journal order
    std::vector<TakingEstimate> takings;///< parallel to History::takings
    KeeperCalibration keeper;
    std::vector<YardEstimate> yards;    ///< yards with hives, in journal order
    /// Days by which capping follows storing, as learned.
    double capping_lag_days = 0;
    /// Where the numbers of the model come from, in words: learned from so many visits, or the usual ones.
    std::string settings;

    const SuperEstimate* super(BoxId box) const;
    const HiveEstimate* hive(HiveId hive) const;
};

/// Estimates as of `history.on`, from what was noted by then. Pure; same input, same bits.
Estimates estimate(const Journal& journal, const History& history);

/// What stood on the hives on past days, ascending, in the light of everything noted by `history.on`: the forward pass,
/// then a smoother. Of supers the box, hive, share, kilograms and capacity are given, of hives the room; the rest is
/// left out. In yards of more than 25 hives it is what was known by each day instead.
std::vector<Estimates> smoothed_past(const Journal& journal, const History& history, const std::vector<Day>& days);

}  // namespace waxtab
