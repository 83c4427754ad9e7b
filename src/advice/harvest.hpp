#pragma once
#include <string>
#include <vector>

#include "advice/rule.hpp"

namespace waxtab {

/// What speaks for and against a super being fit to take. A moisture reading outranks capping; one
/// reading is one frame.
struct Ripeness {
    enum class Verdict : std::uint8_t {
        unripe,
        wet,        ///< a moisture reading above the limit
        shakes,     ///< nectar falls when a comb is shaken
        measure,    ///< dry by one or two readings, not capped enough: measure more frames
        ripe,
    };
    Verdict verdict = Verdict::unripe;
    Sureness sureness = Sureness::likely;
    std::string words;
    std::vector<FactId> facts;
    /// By capping: the chance that it is fit. A reading or a falling drop is no matter of chance.
    std::optional<double> chance;
};
Ripeness ripeness(const HiveView& hive, const SuperView& super);

/// Days after which what stands in a super is a guess: none is called fit to take, and a look comes first; own
/// judgement.
constexpr int look_days = 14;

/// Brood or eggs noted in a super of the hive within a worker's development, 24 days.
std::optional<Seen> brood_in_super(const HiveView& hive);
/// A note at the hive after `since` that clears a marked super: a remark with "cleared".
bool cleared_by_keeper(const HiveView& hive, Day since);
/// The super was on a hive at some time in [from, to].
bool stood_within(const Box& box, HiveId hive, Day from, Day to);

}  // namespace waxtab
