#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "ledger/ledger.hpp"

namespace waxtab {

/// One mite count in mites per 100 bees.
struct MiteRate { Day day{}; double per_100 = 0; FactId fact = 0; };

/// What is known of a colony worth breeding from, or not: figures side by side, never one mark.
/// Source: R. Buechler et al., COLOSS BEEBOOK, Standard methods for rearing and selection of queens,
/// J. Apic. Res. 52(1), 2013, sec. 3.3.
struct ColonyFigures {
    HiveId hive = no_hive;
    YardId yard = no_yard;              ///< where it stood last
    int season = 0;                     ///< year
    /// Honey taken this season; none when none was taken (which is no zero: it may not be off yet).
    std::optional<MassRange> honey;
    /// Honey of the hives with a harvest in the same yard and season, this one among them.
    int yard_hives = 0;
    Mass yard_low, yard_median, yard_high;
    /// Temper as noted, by how often.
    int calm = 0, lively = 0, defensive = 0;
    int stings = 0;
    /// Lowest swarming score of the season on the 4-point scale (4 none, 3 cells but stoppable, 2 repeated
    /// with advanced signs, 1 swarmed or only major intervention); none when queen cells were never noted on.
    std::optional<double> swarm_score;
    std::string swarm_words;            ///< why that score
    std::vector<MiteRate> mites;        ///< in order of day
    /// Queen's mother as noted, else the hive it was split or swarmed from.
    std::string mother;
    std::vector<FactId> because;
};

/// Figures of all hives alive in the season of the day stood on, journal order.
std::vector<ColonyFigures> breeding(const Journal& journal, const History& history, const Ledger& ledger);

}  // namespace waxtab
