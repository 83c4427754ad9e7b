#pragma once
#include <optional>

#include "advice/rule.hpp"

namespace waxtab {

/// The flow gives no reason for another super: ending, over or none, or late in the season not known to be on.
/// Source: J. Harris, Mississippi State University Extension P3382; Rinderer's experiment on empty comb in weak flows.
bool flow_refuses_super(const HiveView& hive);

/// Bees noted as packed, crowded or backfilled within a fortnight and no super put on since.
std::optional<Seen> crowded(const HiveView& hive);

/// Advice to put a super on; kind, comb, place and number are settled afterwards.
Advice add_super();
/// Writes `what` from number, comb and place.
void word_super(Advice& advice, std::string_view place);

}  // namespace waxtab
