#pragma once
#include <optional>
#include <vector>

#include "estimate/pass.hpp"

namespace waxtab {

/// A stretch of the probability foretold, from `low` to `high`, 0..1.
struct Stretch {
    double low = 0, high = 0;

    /// How much of it lies in the middle `part` (0..1) of all probability, 0..1: the non-randomised probability integral
    /// transform of Czado, Gneiting & Held, Biometrics 65 (2009), 1254. Over many forecasts with right ranges its mean is `part`.
    double inside(double part) const;
};

/// What was foretold of a super's next reading, and what was then written.
struct Judged {
    HiveId hive = no_hive;
    BoxId box = no_box;
    Day made{}, day{};              ///< the visit it was made at, the visit it was for
    FactId fact = 0;                ///< the reading it is held against
    Moments share;                  ///< of full, before the eye: foretold
    double eye_sd = 0;              ///< error of the reading it is held against, with rounding
    double eye_alone = 0;           ///< the same before rounding
    double read = 0;                ///< share written
    bool read_full = false;
    ShareReading::Side side = ShareReading::Side::about;
    double no_change = 0;           ///< share by the last reading
    std::optional<double> line;     ///< share by the line through the last two
    double capacity_kg = 0;         ///< by the keeper's full, as known when it was made

    int horizon() const { return days_between(made, day); }
    /// The share foretold, 0..1 (as likely above as below), and the bounds `z` standard deviations to either side.
    double expected() const;
    double low(double z) const;
    double high(double z) const;
    /// Distribution function of what the eye takes the super to hold, as foretold, at share x: a share between
    /// nothing and full, and the eye's error on top; before rounding and cutting to 0..1.
    double below(double x) const;
    /// The stretch of `below` that the reading stands for: all that is rounded to it, of empty and full all beyond as well.
    Stretch stretch() const;
};

/// Every forecast a pass allows: for each hive from one visit with readings to the next, from what was known in
/// the evening of the first, where the same supers stood on it in the morning of the second.
std::vector<Judged> judged_forecasts(const Pass& pass, const Journal& journal);

}  // namespace waxtab
