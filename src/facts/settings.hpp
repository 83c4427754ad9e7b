#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "facts/fact.hpp"

namespace waxtab {

enum class DateOrder : std::uint8_t { unset, day_month, month_day };

/// A box kind as the journal knows it: from the handbook, or declared with `box`.
struct BoxKind {
    std::string name;
    Role role = Role::super;
    int frames = 10;
    /// Outside depth in millimetres, 0 when not known.
    double depth_mm = 0;
    /// Kilograms of honey when full, drawn comb, full complement of frames.
    double full_low_kg = 0, full_kg = 0, full_high_kg = 0;
    /// Kilograms of the box with its frames and empty drawn comb.
    double tare_low_kg = 0, tare_kg = 0, tare_high_kg = 0;
    /// The keeper declared it, so its figures outrank the handbook's.
    bool declared = false;
    Span span;
};

/// What the journal's set-up lines say, with the usual default where they say nothing.
struct Settings {
    MassUnit mass = MassUnit::kilogram;
    bool mass_said = false;
    Unit temperature = Unit::celsius;
    bool temperature_said = false;
    Unit gallon = Unit::none;              ///< us_gallon or imperial_gallon once said
    /// Which gallon, quart and pint one not said is: as set up; else imperial where masses are in kg, US where in lb (common practice,
    /// no source: metric countries that still say gallons mean imperial ones).
    Unit gallon_meant() const { return gallon != Unit::none ? gallon : mass == MassUnit::kilogram ? Unit::imperial_gallon : Unit::us_gallon; }
    DateOrder date_order = DateOrder::unset;
    int year = 0;                          ///< for headings without one; 0 when not said
    std::string super_kind = "medium";
    bool super_kind_said = false;
    std::string brood_kind = "deep";
    bool brood_kind_said = false;
    Placing new_supers = Placing::over;
    bool new_supers_said = false;
    int visit_interval_days = 7;
    bool visit_interval_said = false;
    /// Add a super when the chance of running out of room before the next visit is above this.
    int accepted_risk_percent = 20;
    /// Rule-of-thumb fill triggers (share full for drawn, share drawn for foundation), percent.
    int super_at_full_percent = 70;
    int super_at_drawn_percent = 85;
    /// Share capped from which a super counts as ripe without a moisture reading, percent.
    int ripe_at_capped_percent = 75;
    /// Moisture above which honey is not fit to take, permille.
    int moisture_limit_permille = 185;
    /// Mites per 100 bees, in permille of bees, from which treatment is due; keeper's own.
    int mite_threshold_permille = 30;
    bool mite_threshold_said = false;
    /// Month and day of the season for honey and for swarming; default by the northern calendar.
    int season_from_month = 4, season_from_day = 1;
    int season_to_month = 9, season_to_day = 1;
    bool season_said = false;
    int swarm_from_month = 4, swarm_from_day = 15;
    int swarm_to_month = 7, swarm_to_day = 15;
    bool swarm_said = false;
    /// Winter stores climate: "mild", "middle" or "cold"; empty when not said.
    std::string climate;
    /// Kilograms one person lifts; heavier boxes get a caution.
    int lift_limit_kg = 25;
    /// Where each setting was said, for messages: name -> span.
    std::vector<std::pair<std::string, Span>> said;
};

}  // namespace waxtab
