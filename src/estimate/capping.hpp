#pragma once
#include <array>

#include "estimate/gaussian.hpp"

namespace waxtab {

/// Days by which capping follows storing, tried side by side. Ripening takes "3-7 days after the flow"
/// (Die Honigmacher) or "about three weeks" (McGee, On Food and Cooking, 2004): the two disagree.
inline constexpr std::array capping_lags{5.0, 7.0, 10.0, 14.0, 20.0, 28.0};

/// How well each lag has told the readings of capping, over the whole journal.
class CappingLag {
public:
    CappingLag();
    /// `score[i]`: log density of a reading under lag i.
    void learn(const std::array<double, capping_lags.size()>& score);
    /// Weight of lag i, summing to 1.
    double weight(std::size_t i) const;
    double mean() const;

private:
    std::array<double, capping_lags.size()> log_weight_{};
};

/// The share of one super's comb that is capped, under each lag:
/// d capped / dt = (filled - capped) / lag.
class Capping {
public:
    /// A super put on empty, or one of which nothing is known.
    static Capping empty();
    static Capping unknown();

    /// `days` with the share filled moving from `before` to `after`; `filled_sd` its uncertainty.
    void advance(double days, double before, double after, double filled_sd);
    /// A reading of the share capped.
    void observe(double share, double sd, CappingLag& lag);

    /// Mean and variance over the lags.
    Moments share(const CappingLag& lag) const;

private:
    std::array<Moments, capping_lags.size()> by_lag_{};
};

}  // namespace waxtab
