#pragma once
// What the replay finds wrong, one function a contradiction. Each cites the earlier line it contradicts.
#include "history/resolve.hpp"

namespace waxtab::replaying {

/// A box that is looked at or moved is not there.
void report_no_such_box(Replay& r, const Step& s, HiveId hive, const BoxChoice& choice, BoxId elsewhere);
/// A box is named by a label that none has.
void report_no_such_label(Replay& r, const Step& s, const std::string& label);
/// A box that is taken off is not on.
void report_not_on(Replay& r, const Step& s, HiveId hive, const BoxChoice& choice, BoxId elsewhere);
/// Several boxes answer to the words.
void report_which(Replay& r, const Step& s, HiveId hive, const BoxChoice& choice);
/// One of the three above, as the trouble is; `taking` when boxes are taken off.
void report_trouble(Replay& r, const Step& s, HiveId hive, const BoxChoice& choice, const Resolved& found, bool taking);
/// Two names of one day mean one and the same box.
void report_same_box(Replay& r, const Step& s, HiveId hive, const BoxChoice& choice, const NamedReading& earlier);
/// A count that was seen differs from what the journal adds up to.
void report_count(Replay& r, const Step& s, HiveId hive, Role role, int said, std::size_t on);

/// Gear (`excluder`) goes on where one is, or comes off where none is.
void report_gear_twice(Replay& r, const Step& s, HiveId hive, std::string_view gear, const Standing& there);
void report_gear_not_on(Replay& r, const Step& s, HiveId hive, std::string_view gear, Severity severity);

/// A hive that has ended, or is not yet there, is written about.
void report_hive_gone(Replay& r, const Step& s, HiveId hive);
void report_hive_not_yet(Replay& r, const Step& s, HiveId hive);
void report_already_living(Replay& r, const Step& s, HiveId hive);
void report_with_itself(Replay& r, const Step& s, HiveId hive);
void report_already_there(Replay& r, const Step& s, HiveId hive);

/// More frames than the box has; or a number of frames that is not the box's.
void report_too_many_frames(Replay& r, const Step& s, HiveId hive, BoxId box, const Measure& said);
void report_frames_differ(Replay& r, const Step& s, HiveId hive, BoxId box, const Measure& said);
void report_capped_over_full(Replay& r, const Step& s, const BoxSighting& full, const BoxSighting& capped);
/// Two looks into one super on one day that are too far apart for an eye's error.
void report_looks_differ(Replay& r, const Step& s, HiveId hive, const BoxSighting& earlier);
/// So many sections, of a rack of which nobody said how many it has.
void report_sections_unknown(Replay& r, const Step& s);
void report_nothing_to_repeat(Replay& r, const Step& s, HiveId hive);

/// A label is painted on, or a labelled box put on, while a box of that label stands somewhere.
void report_label_twice(Replay& r, const Step& s, const std::string& label, BoxId holder);
/// The weight after extracting is not below the weight before.
void report_heavier_after(Replay& r, const Step& s, const Taking& taking);
/// A weight after extracting of a super that was not taken off.
void report_not_taken_off(Replay& r, const Step& s, const BoxChoice& choice);
void report_weight_shared(Replay& r, const Step& s, std::size_t boxes, Mass each);
void report_treatment_not_on(Replay& r, const Step& s, HiveId hive, const std::string& substance);
/// Combs frozen in the shed, of a box that stands on a hive.
void report_frozen_on_hive(Replay& r, const Step& s, BoxId box);
void report_shed_short(Replay& r, const Step& s, const ShedRow& row, int wanted);

}  // namespace waxtab::replaying
