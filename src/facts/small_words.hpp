#pragma once
#include <string_view>
#include <vector>

#include "facts/items.hpp"

// Steps of chunking that settle what small words do: prepositions before hives, on and off said by the way.
namespace waxtab {

/// The row of the vocabulary for a term of a class; null when there is none.
const grammar::Word* table_word(std::string_view term, grammar::Class klass);
/// Removes items [from, from + n) after widening item `into` to cover their text.
void absorb(std::vector<Item>& items, std::size_t into, std::size_t from, std::size_t n);
/// Takes an item for said by the way: no reading needs it.
void pass_over(Item& item);
/// Things that are put on or in, so that the small word before a hive may say that they were.
bool goes_on_or_in(const Item& item);
/// What stands on frames that are counted: brood, bees, stores, so that `on 4` says on how many.
bool counted_in_frames(const Item& item);
/// A super, also said as a box.
bool is_super(const Item& item);
/// What a treatment that stays in is counted in.
bool is_strip(const Item& item);
/// `on` in `put a super on`, `in` in `12 mites in 3 days`: said by the way.
void by_the_way(std::vector<Item>& items);
/// Prepositions before hives and yards become their role.
void roles(std::vector<Item>& items);
/// Pairs with a meaning of their own: to the shed, no excluder, under the top super.
void pairs(std::vector<Item>& items);

}  // namespace waxtab
