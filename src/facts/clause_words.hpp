#pragma once
#include <string_view>
#include <vector>

#include "facts/match.hpp"

// What the clauses of a line are asked by more than one of the steps that read it.
namespace waxtab {

/// Punctuation `text`.
bool stop(const Item& i, std::string_view text);
/// Frames of bees, brood or stores, counted.
bool of_frames(const Fact& fact);
/// What is seen of the bees, their brood and queen.
bool seen_of_colony(Kind kind);
/// A hive or several named in the line.
bool is_hives(const Item& i);
bool any_hive(const std::vector<Item>& items);
/// Frames, of brood or of stores.
bool is_frames(const Item& i);
/// A split, or a nuc made.
bool is_split(const Item& i);
/// Syrup, or a food that was not named.
bool is_syrup(std::string_view food);
/// Two hives, something told between them, and more before the one or after the other: no word of what is of both.
bool told_apart(const std::vector<Item>& items);
/// Two hives with something told between them and no link: `super on h1 calm h2`.
bool run_together(const std::vector<Item>& items);
/// Ends a sentence: a full stop, a semicolon, an exclamation mark.
bool sentence_end(const Item& i);
/// A sign or a done-word stands among them.
bool eventful(const std::vector<Item>& items);
/// Items `from` to before `to`.
std::vector<Item> part_of(const std::vector<Item>& items, std::size_t from, std::size_t to);
/// Ends clause `c` before item `end`; what stands from item `next` on becomes the clause after it.
void break_clause(std::vector<std::vector<Item>>& clauses, std::size_t c, std::size_t end, std::size_t next);
/// Moisture, refractive index, what drained: measured of honey that is in a lot.
bool measured_of_lot(Kind kind);
/// Tells of jars filled, or of jars that went out.
bool tells_of_jars(const Fact& fact);
/// Can facts of one clause go on in the next: the 9 frames of `super on, 9 drawn frames`?
bool goes_on(Kind kind);
/// `super still on`, kept as words, of which more may follow: `no change`.
bool still_on(const Fact& fact);
/// Honey facts that tell of the hives a line is about; jars filled and sold are of no hive.
bool comes_of_hives(Kind kind);
/// on, off, in, out: done-words only where no other stands beside them.
bool on_or_off(const Item& i);
/// Says a number in some way.
bool holds_number(const Item& i);
/// A share or a strength may be said with a maybe; an event may not.
bool soft(Kind kind);
/// A fact about one hive, not the yard, the honey or the shed.
bool needs_hive(const Candidate& c);
/// A reading of the box spoken of before where it names none itself.
bool takes_box_from_before(Kind kind);
/// What is said of a colony and is nothing that is counted: `boiling over`, `looks queenless`, `is calm`.
bool tells_how_it_is(const Item& i);
/// Goes with one hive, not with a number of them.
bool one_does(const std::string& verb);
/// `80, 60, 40%`: an earlier number is of the last one's unit.
Item of_the_unit(Item number, const Item& last);
/// The masses said, in the order written.
std::vector<Measure> masses_in(const std::vector<Item>& items);
/// The items of a clause whose hives became what the line is about.
std::vector<Item> without_hives(std::vector<Item> items);

}  // namespace waxtab
