#pragma once
#include <optional>

#include "advice/rule.hpp"

namespace waxtab {

/// The flow gives no reason for another super: ending, over or none, or late in the season not known to be on.
/// Source: J. Harris, Mississippi State University Extension P3382; Rinderer's experiment on empty comb in weak flows.
bool flow_refuses_super(const HiveView& hive);

/// Bees noted as packed, crowded or backfilled within a fortnight and no super put on since.
std::optional<Seen> crowded(const HiveView& hive);

/// Late in the season, and the flow gives no reason for another super.
bool season_closed(const HiveView& hive);
/// Strips are in: then the supers come off or the strips do, and there is no word of room.
bool strips_in(const HiveView& hive);
/// A super on it is fit to take.
bool ripe_on(const HiveView& hive);
/// What one more like the top super would hold, kilograms; 0 where there is none to go by.
double one_more_kg(const HiveView& hive);
/// A rule asks for a super here, or to look at those that are on with one at hand.
bool super_asked(const HiveView& hive);
/// `room for 8 to 12 kg of honey, likely 10; gaining 0.2 to 0.8 kg a day, likely 0.5`; the hive has an estimate.
std::string room_words(const HiveView& hive);

/// Hives whose supers may stay as they are until the next visit, with the chance that room lasts.
struct Lasting {
    std::vector<HiveId> hives;
    double least = 0;           ///< the least of their chances
    std::string words;          ///< `8 in 10 or more at each that room lasts until 2026-06-20`
};
/// Finds them, those left out that `others` ask something of, and adds their chances, reasons and lines to `advice`;
/// nothing where there are none.
std::optional<Lasting> say_room_lasts(Advice& advice, const YardView& yard, const Advices& others);
/// A gap between flows: none now, and the season is not near its end.
bool in_gap(const YardView& yard);

/// Advice to put a super on; kind, comb, place and number are settled afterwards.
Advice add_super();
/// Writes `what` from number, comb and place.
void word_super(Advice& advice, std::string_view place);

}  // namespace waxtab
