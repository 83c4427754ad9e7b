#pragma once
#include <string_view>
#include <vector>

#include "facts/match.hpp"

// What the clauses of a line are asked by more than one of the steps that read it.
namespace waxtab {

/// Punctuation `text`.
bool stop(const Item& i, std::string_view text);
/// A sign or a done-word stands among them.
bool eventful(const std::vector<Item>& items);
/// Can facts of one clause go on in the next: the 9 frames of `super on, 9 drawn frames`?
bool goes_on(Kind kind);
/// `super still on`, kept as words, of which more may follow: `no change`.
bool still_on(const Fact& fact);
/// Honey facts that tell of the hives a line is about; jars filled and sold are of no hive.
bool comes_of_hives(Kind kind);
/// Says a number in some way.
bool holds_number(const Item& i);
/// A share or a strength may be said with a maybe; an event may not.
bool soft(Kind kind);
/// A fact about one hive, not the yard, the honey or the shed.
bool needs_hive(const Candidate& c);
/// A reading of the box spoken of before where it names none itself.
bool takes_box_from_before(Kind kind);
/// The items of a clause whose hives became what the line is about.
std::vector<Item> without_hives(std::vector<Item> items);

}  // namespace waxtab
