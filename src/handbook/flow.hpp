#pragma once
#include <optional>
#include <span>
#include <string_view>

#include "handbook/range.hpp"

namespace waxtab::handbook {

// ---- is the flow on -----------------------------------------------------------------------

enum class FlowState { on, off, unclear };

/// A working rule for the daily weight change of one strong hive; settings, not facts. Worked out from 871 days of
/// the scale hive at Bad Schwartau (HOneyBee Online Studies, 2017-2019): three days running at half a kilogram
/// came first on 11 May, 4 May and 4 April; single days below 0.4 kg are noise (s.d. 0.2 kg in winter).
inline constexpr double flow_on_kg_per_day = 0.5;
inline constexpr int flow_on_days = 3;
inline constexpr int flow_off_days = 7;
inline constexpr double daily_noise_kg = 0.4;

/// On when each of the last three days gained at least 0.5 kg; off when the last seven gained nothing on average;
/// else unclear, also with too few days. Oldest day first, kg a day. No gain with the top super full means no
/// room, not no flow: the caller has to look. Source: as flow_on_kg_per_day.
FlowState flow_state(std::span<const double> daily_kg);

// ---- how much a day may bring ---------------------------------------------------------------

/// kg a day lost when nothing is found in summer, as a positive number. Source: HOneyBee Online Studies and the
/// hive at Flakkebjerg (Zenodo 4953762): means over weeks; single days up to 0.7.
inline constexpr Range dearth_loss_kg_per_day{0.1, 0.2, 0.3};
/// kg a day of net gain in a light flow; common practice, with 0.5 for weak colonies in fruit bloom
/// (gartenhonig-en.jimdofree.com, 2015) as the middle.
inline constexpr Range light_flow_kg_per_day{0.1, 0.5, 1.0};
/// kg a day of net gain in a good flow: May averages 0.94 and 1.18 (HOneyBee Online Studies), 1.6 (meadoflife
/// blog), 2 for strong colonies (gartenhonig-en.jimdofree.com), 40 lb in 8 days (Warner Nature Center).
inline constexpr Range good_flow_kg_per_day{1.0, 1.6, 2.5};
/// kg a day from which a day is exceptional: 12 lb at the Warner Nature Center scale (4 July 2017).
inline constexpr double exceptional_kg_per_day = 5.0;
/// kg a day which, gained day after day, are rather a slip of the pen. Own judgement from the figures above.
inline constexpr double suspect_kg_per_day = 6.0;

/// Plausible daily change of one hive for the keeper's word: `none`, `over`, `light`, `medium`, `on`, `starting`,
/// `ending`, `heavy`; losses negative. Nothing for another word. Sources: the ranges above; `medium` and `on` 0.5 to
/// 2.0 for strong and weak colonies of one yard (gartenhonig-en.jimdofree.com, 2015); which word means which
/// range is common practice.
std::optional<Range> daily_gain(std::string_view flow_word);

/// Share of the day's rise that is gone by morning. 30 % over 22 flow days of a weak colony at Flakkebjerg (Zenodo
/// 4953762); the bounds are a quarter to a third, as commonly said.
inline constexpr Range overnight_loss_share{0.25, 0.30, 0.33};
/// What of a rise read in the evening (kg, >= 0) is still there next morning. Source: overnight_loss_share.
constexpr Range kept_overnight(double evening_rise_kg) {
    return {evening_rise_kg * (1 - overnight_loss_share.high), evening_rise_kg * (1 - overnight_loss_share.typical),
            evening_rise_kg * (1 - overnight_loss_share.low)};
}

// ---- nectar and honey -----------------------------------------------------------------------

/// Kilograms of honey from a kilogram of nectar: sugar / (1 - water), both as shares. An upper bound, what the bees
/// eat is left out. Nothing unless 0 < sugar < 1, 0 <= water < 1 and the nectar is thinner than the honey.
/// Source: mass balance; J. Exp. Biol. 212:429 (2009) gives 0.75 g evaporated from 20 % to 82 % sugar.
constexpr std::optional<double> honey_per_kg_nectar(double sugar_share, double honey_water_share) {
    if (!(sugar_share > 0 && sugar_share < 1 && honey_water_share >= 0 && honey_water_share < 1)) return std::nullopt;
    if (sugar_share > 1 - honey_water_share) return std::nullopt;
    return sugar_share / (1 - honey_water_share);
}

/// Room that nectar takes against the honey it becomes. Source: D. Caron, "Is it time to super", American Bee
/// Journal, June 2021.
inline constexpr Range nectar_room_factor{2.0, 2.5, 3.0};

/// Days from the end of a flow until the honey is finished. Source: Die Honigmacher (3-7 days); McGee, On Food and
/// Cooking (2004), says about three weeks from the flower: a disagreement.
inline constexpr Range finished_after_flow_days{3, 5, 7};

}  // namespace waxtab::handbook
