#pragma once
// How each kind of fact changes the histories: one function a kind. Each notes in the step the boxes the
// fact resolved to, reports what contradicts the past, and leaves everything sound.
#include "history/replay.hpp"

namespace waxtab::replaying {

using Transition = void (*)(Replay&, Step&);

// stack_on.cpp
void super_on(Replay& r, Step& s);
void brood_box_on(Replay& r, Step& s);
// stack_off.cpp
void super_off(Replay& r, Step& s);
void brood_box_off(Replay& r, Step& s);
void frames_off(Replay& r, Step& s);
// stack_moves.cpp
void boxes_swapped(Replay& r, Step& s);
void brood_reversed(Replay& r, Step& s);
void super_lifted(Replay& r, Step& s);
void super_moved(Replay& r, Step& s);
void box_labelled(Replay& r, Step& s);
void super_count(Replay& r, Step& s);
void brood_box_count(Replay& r, Step& s);
// gear.cpp
void excluder_on(Replay& r, Step& s);
void excluder_off(Replay& r, Step& s);
void escape_on(Replay& r, Step& s);
void escape_off(Replay& r, Step& s);
void entrance_on(Replay& r, Step& s);
void entrance_off(Replay& r, Step& s);
void feeder_on(Replay& r, Step& s);
void feeder_off(Replay& r, Step& s);
// lives.cpp
void hive_moved(Replay& r, Step& s);
void hive_sold(Replay& r, Step& s);
void hive_dead(Replay& r, Step& s);
void hive_ended(Replay& r, Step& s);
void hive_united(Replay& r, Step& s);
void hive_born(Replay& r, Step& s);        ///< swarm hived, hive bought
void hive_divided(Replay& r, Step& s);     ///< split, nuc made
// readings.cpp
void full(Replay& r, Step& s);
void capped(Replay& r, Step& s);
void drawn(Replay& r, Step& s);
void sections_done(Replay& r, Step& s);
void shakes_out(Replay& r, Step& s);
void super_brood(Replay& r, Step& s);
void moisture(Replay& r, Step& s);
void no_change(Replay& r, Step& s);
// weighing.cpp
void box_weight(Replay& r, Step& s);
// care.cpp
void feed(Replay& r, Step& s);
void feeder_state(Replay& r, Step& s);
void treatment(Replay& r, Step& s);
void treatment_on(Replay& r, Step& s);
void treatment_off(Replay& r, Step& s);
// extraction.cpp
void extracted(Replay& r, Step& s);
void combs_packed(Replay& r, Step& s);
// shed.cpp
void shed_said(Replay& r, Step& s);
void shed_in(Replay& r, Step& s);
void shed_out(Replay& r, Step& s);
void combs_frozen(Replay& r, Step& s);
void comb_year(Replay& r, Step& s);
// elsewhere.cpp
void yard_fact(Replay& r, Step& s);
void honey_fact(Replay& r, Step& s);
void todo(Replay& r, Step& s);
void only_told(Replay& r, Step& s);        ///< nothing changes; it stands in the hive's story

/// The function of a kind.
Transition transition_of(Kind kind);

// ---- shared between areas

/// The boxes a fact names on its hive, noted in the step; reports and gives none when there is trouble.
std::vector<BoxId> named_boxes(Replay& r, Step& s, HiveId hive, const BoxChoice& choice, bool taking);
/// A box that stands nowhere goes to the shed, holding this comb.
void into_shed(Replay& r, const Step& s, BoxId box, Comb comb);
void gear_into_shed(Replay& r, const Step& s, std::string_view gear);
/// Takes boxes or gear from the shed as far as its stock was said.
void from_shed(Replay& r, const Step& s, const std::string& kind, Comb comb, int count);
void gear_from_shed(Replay& r, const Step& s, std::string_view gear);
/// What is left in a box's frames once its honey is out or it was not filled.
Comb comb_left(const Replay& r, BoxId box);
/// Adds what a box holds, as weighed, to its latest taking: before or after extraction.
void set_gross(Replay& r, const Step& s, Taking& taking, Mass mass);
void set_tare(Replay& r, const Step& s, Taking& taking, Mass mass);
/// One mass in equal parts that add up to it exactly.
std::vector<Mass> in_parts(Mass whole, std::size_t parts);
/// Takes a taking off the list of those that wait for extraction.
void no_longer_waiting(Replay& r, std::size_t taking);
/// The comb honey of sections and cut comb is packed, not extracted.
bool comb_honey(const Box& box);

}  // namespace waxtab::replaying
