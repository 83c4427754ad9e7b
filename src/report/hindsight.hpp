#pragma once
#include <string>

#include "estimate/hindsight.hpp"
#include "report/style.hpp"

namespace waxtab {

/// How good past estimates were on this journal: by days ahead, how often the range held and how far off they
/// were, beside "no change" and a line through the last two visits; hives that ran out of room, supers that stayed
/// empty. Says so when there is too little to judge by.
std::string hindsight_text(const Journal& journal, const Hindsight& hindsight, Day on, const Selection& selection,
                           const Style& style);

/// One plain sentence: how often the ranges held and how far off the forecasts were, or that there is too little to judge
/// by; empty without forecasts.
std::string hindsight_words(const Hindsight& hindsight, const Style& style);

/// The same as one JSON document: `on`, `words`, `rows`, `all` (each with `inside_80`, `inside_50` and what that says of the
/// `ranges`: open, well, narrow or wide), `ran_out`, `stayed_empty`.
std::string hindsight_json(const Journal& journal, const Hindsight& hindsight, Day on, const Selection& selection,
                           const Style& style);

}  // namespace waxtab
