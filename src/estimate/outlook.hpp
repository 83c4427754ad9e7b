#pragma once
#include <vector>

#include "estimate/model.hpp"

namespace waxtab {

/// The days ahead of one yard: the steps of a day from a day on, shared by its hives.
class Outlook {
public:
    Outlook(const Parameters& p, const Settings& settings, Day from, int days, double flow_now);
    const std::vector<Step>& steps() const { return steps_; }
    const Parameters& parameters() const { return p_; }

private:
    Parameters p_;
    std::vector<Step> steps_;
};

/// What one hive gains over the coming days, kilograms, and its honey now; index 0 is one day.
struct Gains {
    std::vector<double> mean, sd;
    std::vector<double> with_honey_sd;  ///< s.d. of gain plus the honey it now holds
    double honey = 0, honey_sd = 0;     ///< in its supers now
};

Gains gains_ahead(const Outlook& outlook, const Gaussian& local);

}  // namespace waxtab
