#pragma once
#include <string_view>

#include "facts/match.hpp"

// The slots of the table of readings: which items go where, and what they fill a fact with.
namespace waxtab {

/// A place in a reading for a value rather than a word.

enum Slot : int {
    SHARE, AMOUNT, N, FRAMES, MASS, VOLUME, TEMP, DAYS, INDEX, NUMBER, RATIO, SAMPLE, NOFM, BOX, BOX2, KIND, SUPERKIND, COMB, PLACE,
    FROM, TO, INTO, WITH, HIVE, TO_YARD, LABEL, COLOUR, PLANT, SUBSTANCE, METHOD, FOOD, PEST, DISEASE, WEATHER, LOT, LOTS, INTO_LOT,
    JARS, SCORE, DATE, DUE, FULLNESS, SPECIAL, ORDINAL_SUPER, NTH_SUPER, ORDINAL, BOXPAIR, PAINTED, BROODKIND, NTH, slot_count
};

/// The slot named so in the table; -1 when there is none.
int slot_of(std::string_view name);
/// True when the item can stand in the slot.
bool slot_accepts(int slot, const Item& item);
/// A weight.
bool is_mass(const Item& item);
/// Whole days from one day to a later one.
Measure days_to(Day from, Day to);
/// A number said as `9` with nothing that it counts, and not as `1st of 3`.
bool bare_number(const Item& item);
/// `7/10`: a share rather than a sample or a ratio.
bool whole_share(const Item& item);
/// Names a kind of box that is a super: `medium`.
bool is_super_kind(const Item& item);
/// What a word of comb says the frames hold.
Comb comb_of(const Item& item);

/// Fills a fact from one item that went to a slot.
struct Filler {
    Candidate& c;
    const ItemContext& context;
    bool second_box = false;

    /// The number before a counted thing, into the count or, for `value`, the value.
    void count_of(const Item& item, const std::string& into);
    void fill(int slot, const Item& item, const std::string& count_into);

private:
    int whole_number(const Measure& m);
    void share(const Item& item);
    void amount(const Item& item);
    void frames(const Item& item);
    void box(const Item& item);
    void comb(const Item& item);
    void place(const Item& item);
    void hives(const Item& item, bool new_hive);
    void food(const Item& item);
    void ratio(const Item& item);
    void jars(const Item& item);
};

/// What a field of the row adds once all slots are filled.
void apply_field(Candidate& c, const std::string& name, const std::string& value);
/// Tidies what slots alone cannot settle.
void finish(Candidate& c, const std::vector<Item>& items);

}  // namespace waxtab
