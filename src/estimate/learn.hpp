#pragma once
#include <string>

#include "estimate/pass.hpp"

namespace waxtab {

/// The numbers of the model as learned from a journal.
struct Learned {
    Schedule schedule;
    std::string words;      ///< where they come from, for the reader
};

/// Chooses the numbers by the likelihood of the readings on a fixed grid, with priors. From each day on only
/// readings of days before it have a say, so that hindsight never sees what it is to foretell.
Learned learn(const Journal& journal, const History& history);

}  // namespace waxtab
