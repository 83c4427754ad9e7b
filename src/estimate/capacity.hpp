#pragma once
#include "history/history.hpp"

namespace waxtab {

/// What a box holds and weighs, by its kind, frames and comb, before anything was learned of the keeper.
struct Capacity {
    double kg = 0;              ///< honey when full
    double spread = 0;          ///< relative s.d. of `kg`
    double tare_kg = 0, tare_sd = 0;    ///< box, frames and empty comb
    double appeal = 1;          ///< how readily bees fill it beside drawn comb at 1
};

/// Full kilograms come from the journal's box kind; frames and comb change them as the handbook says.
Capacity capacity_of(const Journal& journal, const Box& box);

}  // namespace waxtab
