#pragma once
#include <cstdint>
#include <optional>
#include <string_view>

namespace waxtab {

/// The kinds of fact, by area. Beside each, the fields it uses beyond hive, yard and days.
enum class Kind : std::uint8_t {
    // Stack
    super_on,        ///< count, box_kind, comb, frames, placing, box.label; detail "returned wet" etc. through comb
    super_off,       ///< box, count (all: -1 with box all), value gross mass; detail destination: "shed", "" ; manner an amount ("empty", "half", "full") or "honey" (the weight is net)
    brood_box_on,    ///< count, box_kind, comb, frames, placing
    brood_box_off,   ///< count, box
    excluder_on, excluder_off,
    escape_on, escape_off,      ///< escape or clearer board; box the one above it
    entrance_on, entrance_off,  ///< upper entrance open, closed
    feeder_on, feeder_off,
    boxes_swapped,   ///< box and box2 change places
    brood_reversed,  ///< brood boxes change places
    super_lifted,    ///< a box to another place of its own stack: box, placing
    super_moved,     ///< to another hive: hive gives, other gets; box, placing at the other
    frames_moved,    ///< hive gives, other gets; count, detail "brood", "honey", "eggs", "drawn", "bees"
    frames_off,      ///< frames of honey taken: value count of frames, second mass, box
    box_labelled,    ///< box, text the label
    super_count,     ///< a claim: count supers are on
    brood_box_count, ///< a claim: count brood boxes
    // The life of hives
    hive_moved,      ///< yard is the new one
    hive_renamed,    ///< text the new name
    hive_sold, hive_dead,  ///< text cause
    hive_ended,      ///< shaken out, given up; detail "shook out"; text
    hive_united,     ///< hive is gone, other has its bees; detail "newspaper" or ""
    hive_split,      ///< hive is the mother, other the new one; count frames, of them value of brood, second of stores; detail "old queen" or "" (which went to the new)
    nuc_made,        ///< as hive_split, the new one a nucleus
    swarm_hived,     ///< hive is the new one, other where it came from if known; value mass; text place
    hive_bought,     ///< hive is the new one; text from whom
    swarmed,         ///< detail "prime", "cast" or ""
    // Fill
    full, capped, drawn,   ///< box, value share
    shakes_out,      ///< box; detail "yes" (nectar falls) or "no"
    no_change,       ///< box: the last reading again
    hive_weight,     ///< value mass
    weight_change,   ///< value mass, detail "gain" or "loss"; text since when
    box_weight,      ///< box, value gross mass; detail "before" or "after" extracting, or ""
    // Colony
    bees,            ///< value count (frames or seams)
    brood,           ///< value count of frames; detail "all stages", "none" or ""
    eggs, larvae, sealed_brood,  ///< detail "seen" or "none"; value count of frames
    pattern,         ///< detail "good" or "poor"
    crowding,        ///< detail "packed", "backfilled", "crowded", "roomy", "bearding"
    strength,        ///< detail "strong", "fair", "weak"; value frames
    temper,          ///< detail "calm", "lively", "defensive"; value count a score
    stings,          ///< count
    stores,          ///< detail "plenty", "fair", "light", "none"; value frames or mass
    pollen,          ///< detail "coming in", "plenty", "none"; text colour
    super_brood,     ///< brood or eggs in a super: box, detail
    // Queen
    queen,           ///< detail: "seen", "not seen", "right", "absent", "virgin", "laying", "not laying", "new", "failing", "drone layer", "laying workers", "emerged", "superseded"
    queen_marked,    ///< detail colour; count year
    queen_clipped,
    queen_introduced,///< detail colour; manner "cage", "cell", "released"; text source or mother
    queen_mother,    ///< hive's queen: other the mother's hive, or text
    cups,            ///< count; detail "charged", "dry", "egg" or ""
    queen_cells,     ///< count (0 none, -1 some); detail "open", "sealed", "emerged", "torn down" or ""; manner "swarm", "supersedure", "emergency"
    cells_removed,   ///< count (-1 all); detail as above
    cells_left,      ///< count
    // Care
    feed,            ///< detail "syrup", "thin syrup", "syrup 3:2", "thick syrup", "fondant", "sugar", "pollen patty", "honey"; value mass or volume
    feeder_state,    ///< detail "empty", "half", "full", "untouched"
    treatment,       ///< given once: detail substance (or text); manner method; count nth of second (a count) in a course; value dose; text batch
    treatment_on, treatment_off,  ///< detail substance or text; count strips; second days meant to stay
    mites,           ///< detail "wash", "sugar roll", "drop", "drone brood", ""; count mites; value bees of the sample (count), or share; second days for a drop
    pest,            ///< detail name; manner "none" or ""; value how many
    disease,         ///< detail name; manner "suspected", "confirmed"
    inspected,       ///< opened, nothing said
    // Yard
    weather,         ///< text
    temperature,     ///< value
    flow,            ///< detail "none", "light", "medium", "good", "heavy", "on", "starting", "ending", "over"; text plant
    bloom,           ///< text plant; detail "not yet", "bud", "start", "on", "peak", "ending", "end"
    // Honey
    opening_stock,   ///< jars: count, value size; bulk: value mass; lot
    bought_in,       ///< value mass or jars; text from whom; lot
    extracted,       ///< value mass; lot; hives; count supers
    moisture,        ///< value share (tenths kept: permille); box or lot
    honey_index,     ///< value refractive index, second temperature; box or lot
    drained,         ///< value mass from cappings; lot
    blended,         ///< lots into lot; value mass
    bulk_moved,      ///< value mass; lot; text where
    jars,            ///< count, value size; lot
    combs_packed,    ///< sections or cut comb pieces: count, value each or total (second); lot
    gone_out,        ///< jars count, value size, or bulk value mass; detail "sold", "given", "own use", "spoiled"; manner "business" or ""; text to whom; lot; second price not kept
    come_back,       ///< as gone_out
    stocktake,       ///< jars count, value size, or bulk; lot
    wax,             ///< value mass
    best_before,     ///< lot; happened is the day it was noted, text the date
    fermenting,      ///< lot
    sections_done,   ///< box; count of second.count
    // Shed
    shed,            ///< so many are there now: count, box_kind, comb; detail what when no box ("excluder", "escape board", "frame")
    shed_in, shed_out,  ///< change to it
    combs_frozen,    ///< supers of comb frozen against wax moth: count (-1 all or one with its label), box_kind, comb; box a label; second days
    comb_year,       ///< box, or all of the hive's supers; count the year its comb was drawn
    // Words
    todo,            ///< text
    remark,          ///< text; detail "flagged" when it smells of data
};

inline constexpr int kind_count = static_cast<int>(Kind::remark) + 1;

/// The kind's name in output and in the reference: `super-on`.
std::string_view name_of(Kind kind);
std::optional<Kind> kind_named(std::string_view name);
/// True for what changes hives, boxes, honey or the shed; false for readings and words.
bool is_event(Kind kind);
/// A hive was divided: a split, or a nucleus made from it.
bool divides(Kind kind);

}  // namespace waxtab
