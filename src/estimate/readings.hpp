#pragma once
#include "estimate/model.hpp"
#include "history/history.hpp"

namespace waxtab {

/// A share of a super as noted, with the error of its kind of reading.
struct ShareReading {
    enum class Side : std::uint8_t { about, at_least, at_most };
    double share = 0;           ///< 0..1
    double sd = 0;              ///< error of the eye and of the rounding, s.d.
    double eye = 0;             ///< error of the eye alone, s.d.
    double rounding = 0;        ///< that of the rounding alone, s.d.
    Side side = Side::about;
    bool says_full = false;     ///< no room was left: 97 % or more
};

/// What a sighting of a share says. The error is that of the eye together with the rounding of what was
/// written: tenths, quarters, frames of the box; wider for `about`, for words and for a repeated reading.
ShareReading share_reading(const Parameters& p, const Journal& journal, const BoxSighting& sighting);

/// What a yard's note says of its flow, kg/day, as value and variance; variance 0 where it says nothing.
/// The figures are guesses with errors wide enough to be outvoted by any hive that was looked at.
Moments flow_evidence(const Fact& fact);

/// What a hive's note says of its strength against its yard, kg/day; variance 0 where it says nothing.
Moments strength_evidence(const Fact& fact);

}  // namespace waxtab
