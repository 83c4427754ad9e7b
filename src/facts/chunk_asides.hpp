#pragma once
#include <vector>

#include "facts/items.hpp"
#include "facts/settings.hpp"

// The passes of `chunk` that pass over what is said by the way and kept nowhere: places, reasons, prices, how long the weather lasted.
namespace waxtab {

/// `I counted 9 frames of bees`: no stock of honey.
void counted_frames(std::vector<Item>& items);
/// `22C at five o'clock`: the hour is not kept.
void by_the_clock(std::vector<Item>& items);
/// `drizzle till 11`: how long the weather lasted. `still` after it is no wind.
void weather_until(std::vector<Item>& items);
/// `kamahi in flower`: a plant nobody listed goes by its name, unless it is a slip for a word of the notation.
void strange_plants(std::vector<Item>& items, const Lexicon& lexicon);
/// `lime just starting along the brook`: where it stands is not kept.
void where_plants_stand(std::vector<Item>& items);
/// `84 and humid`, where the scale was said: the temperature.
void bare_temperature(std::vector<Item>& items, const Settings& settings);
/// `fed 1 L at 30C`, `moisture 17% at 20C`: of the food, of the honey; no weather.
void temperature_of_that(std::vector<Item>& items);
/// `no clover yet`: not in flower yet.
void no_plant_yet(std::vector<Item>& items);
/// `moved to the moor for the heather`: why is not kept.
void why_moved(std::vector<Item>& items);
/// `on frame 4`, `with a pin`: where it was seen, how it was marked; no reading needs it.
void on_which_frame(std::vector<Item>& items);
/// `heather super 8 frames capped`: of what it is filled with; nothing is said of the bloom.
void plants_of_boxes(std::vector<Item>& items);
/// `swarm from the pear tree hived as s1`: where it hung is no hive's.
void swarm_places(std::vector<Item>& items);
/// `found 7 frames of bees`: the number says it; what is left was found, not left by the keeper.
void found_so_many(std::vector<Item>& items);
/// `took the super off before the rain`: only when it was.
void before_what_came(std::vector<Item>& items);
/// `drop 21 mites in 7 days = 3.0/day`: what follows is worked out from what was counted.
void worked_out(std::vector<Item>& items);
/// `gave 2 jars to Ann for the use of her ladder`: what for is not kept.
void what_it_was_for(std::vector<Item>& items);
/// What something was sold for is not kept: `at 6.50`.
void prices(std::vector<Item>& items);

}  // namespace waxtab
