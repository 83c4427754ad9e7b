#pragma once
#include <array>
#include <optional>

#include "handbook/range.hpp"

namespace waxtab::handbook {

/// Specific gravity of honey (honey and water both at 20 C) at a water content in percent.
struct GravityRow {
    double water_percent = 0;
    double specific_gravity = 0;
};
/// 13 to 21 % water. Source: J. W. White, in Honey: A Comprehensive Survey (1975), from memory; the ends
/// agree with the gallon limits in "Density of Honey", Bee Culture (11.6343 and 12.057138 lb), 17 % with
/// 1.423 in Sweeteners: Nutritional Aspects, table 5.7 (after White 1992 and FAO Bulletin 124).
inline constexpr std::array<GravityRow, 10> gravity_table{{
    {13.0, 1.4457}, {14.0, 1.4404}, {15.0, 1.4350}, {16.0, 1.4295}, {17.0, 1.4237},
    {18.0, 1.4171}, {18.6, 1.4129}, {19.0, 1.4101}, {20.0, 1.4027}, {21.0, 1.3950},
}};

/// Kilograms in a litre of water at 20 C (physical constant).
inline constexpr double water_kg_per_l = 0.998203;
/// Pounds per US gallon for one kilogram per litre: 3.785411784 / 0.45359237, exact definitions.
inline constexpr double lb_per_us_gallon_per_kg_per_l = 3.785411784 / kg_per_lb;

/// Specific gravity at 20/20 C, straight lines between the rows; nothing outside 13-21 %.
constexpr std::optional<double> specific_gravity(double water_percent) {
    if (!(water_percent >= gravity_table.front().water_percent)) return std::nullopt;
    for (std::size_t i = 1; i < gravity_table.size(); ++i) {
        const GravityRow a = gravity_table[i - 1], b = gravity_table[i];
        if (water_percent > b.water_percent) continue;
        const double part = (water_percent - a.water_percent) / (b.water_percent - a.water_percent);
        return a.specific_gravity + part * (b.specific_gravity - a.specific_gravity);
    }
    return std::nullopt;
}

/// Density in kg per litre at 20 C; nothing outside 13-21 % water. Warm honey is lighter by some 0.04 %
/// per degree (from memory), which is left out. Source: as gravity_table, times water_kg_per_l.
constexpr std::optional<double> density_kg_per_l(double water_percent) {
    const auto gravity = specific_gravity(water_percent);
    if (!gravity) return std::nullopt;
    return *gravity * water_kg_per_l;
}

/// Pounds in a US gallon of honey at 20 C; nothing outside 13-21 % water.
/// The trade's rule is 12 lb (five gallons, 60 lb): "Density of Honey", Bee Culture.
constexpr std::optional<double> lb_per_us_gallon(double water_percent) {
    const auto density = density_kg_per_l(water_percent);
    if (!density) return std::nullopt;
    return *density * lb_per_us_gallon_per_kg_per_l;
}

/// kg per litre of honey whose water is not known: 21 % water, 17.2 % (the average: A Practical Manual of
/// Beekeeping, p. 49), 13 %.
inline constexpr Range honey_density_kg_per_l{1.3925, 1.4199, 1.4431};

/// Kilograms in so many litres of honey of unknown water; litres >= 0.
constexpr Range honey_kg(double litres) { return scaled(honey_density_kg_per_l, litres); }

/// As above at a known water content, +-0.5 %: by so much do published densities differ. Nothing outside
/// 13-21 % water or for negative litres.
constexpr std::optional<Range> honey_kg(double litres, double water_percent) {
    const auto density = density_kg_per_l(water_percent);
    if (!density || !(litres >= 0)) return std::nullopt;
    const double kg = litres * *density;
    return Range{kg * 0.995, kg, kg * 1.005};
}

}  // namespace waxtab::handbook
