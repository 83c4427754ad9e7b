#pragma once
#include <vector>

#include "facts/items.hpp"

namespace waxtab {

/// Joins the items of one clause into larger ones: `7 of 10 frames`, `40 x 454 g`, `top 2 supers`,
/// `from h3`; binds numbers to what they count and about-words to their amounts.
void chunk(std::vector<Item>& items, const ItemContext& context);

/// Said with about or maybe: ten points of a share, a tenth of anything else, either way, where it has no range of its own.
void widen(Measure& m);

/// Things a number can count.
bool countable(const Item& item);

}  // namespace waxtab
