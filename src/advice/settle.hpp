#pragma once
#include <vector>

#include "advice/advice.hpp"

namespace waxtab {

/// True when both cannot be followed at the same hive: `a` outranks or comes first.
bool contradicts(const Advice& a, const Advice& b);
/// True when who follows `a` has done `b` as well.
bool covers(const Advice& a, const Advice& b);

/// Settles contradictions by rank (the winner says what it outranks), drops what other advice covers, and joins
/// advice that asks for the same at the same hive. Order of the input decides between equals.
std::vector<Advice> settle(std::vector<Advice> advice);

/// Most urgent first: disease, then by last good day, then by rank; equals keep their order.
void sort_by_urgency(std::vector<Advice>& advice);

}  // namespace waxtab
