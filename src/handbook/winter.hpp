#pragma once
#include <array>
#include <optional>
#include <string_view>

#include "handbook/range.hpp"

namespace waxtab::handbook {

/// Stores a colony should go into winter with, kg of honey or sugar stores, by the keeper's kind of climate.
struct WinterStores {
    std::string_view climate;   ///< `mild`, `middle` or `cold`
    Range kg;
    std::string_view source;
};
inline constexpr std::array<WinterStores, 3> winter_stores_table{{
    {"mild", {15, 18, 20}, "US South 40 lb: honeybeesuite.com (many sources compared); 15 kg: Bienen & Natur"},
    {"middle", {20, 23, 27},
     "Britain 20 kg, BBKA News 216 (2013), and 25 kg, National Bee Unit (2017); US middle 60 lb: honeybeesuite.com"},
    {"cold", {27, 36, 41}, "US North 80-90 lb: honeybeesuite.com; Illinois 60-80 lb: basicbeekeeping, lesson 119"},
}};
/// The row of a climate; nothing for another word. Names are lower case.
constexpr std::optional<WinterStores> winter_stores(std::string_view climate) {
    for (const WinterStores& row : winter_stores_table)
        if (row.climate == climate) return row;
    return std::nullopt;
}

/// A published amount of stores for a place, kg; equal bounds where one figure is given.
struct StoresNamed {
    std::string_view where;
    double low_kg = 0, high_kg = 0;
    std::string_view source;
};
inline constexpr std::array<StoresNamed, 10> stores_named{{
    {"Britain, single brood box", 20, 20, "BBKA News 216 (2013)"},
    {"Britain, brood and a half", 25, 25, "BBKA News 216 (2013)"},
    {"England, autumn 2017", 25, 25, "National Bee Unit, starvation alert (Sept 2017)"},
    {"Cotswolds", 18, 23, "cotswoldbees.co.uk (40-50 lb)"},
    {"Germany", 15, 20, "Bienen & Natur (more in mild winters, when brooding goes on)"},
    {"Virginia mountains", 23, 27, "waldeneffect.org (50-60 lb)"},
    {"central Illinois", 27, 36, "basicbeekeeping, lesson 119 (60-80 lb)"},
    {"northern USA, packed outdoors", 20, 20, "E. F. Phillips and G. S. Demuth, USDA (45 lb)"},
    {"Georgia Piedmont", 14, 14, "cowetabeekeepers.org (30 lb and more, by the end of October)"},
    {"Atlantic Canada", 27, 36, "antherapiary.com (60-80 lb)"},
}};

/// Gross weight of a hive ready for winter, kg: boxes, combs, bees and stores.
struct GrossWeight {
    std::string_view hive;
    double kg = 0;
    std::string_view source;
};
inline constexpr std::array<GrossWeight, 5> gross_weights{{
    {"single deep", 31.9, "Ontario winter tips naming OMAFRA, farms.com (70 lb)"},
    {"double deep", 45.5, "Ontario winter tips naming OMAFRA, farms.com (100 lb)"},
    {"single deep, Canada", 43.1, "Canadian Association of Professional Apiculturists, quoted 2013 (95 lb)"},
    {"double deep, Canada", 61.2, "Canadian Association of Professional Apiculturists, quoted 2013 (135 lb)"},
    {"two-storey hive, USA", 59.0, "West Plains BA (2012), 130 lb: one opinion of several"},
}};

/// The day feeding should be finished by; the sources are two weeks apart.
struct FeedingEnds {
    std::string_view where;
    int month = 0, day = 0;
    std::string_view source;
};
inline constexpr std::array<FeedingEnds, 4> feeding_ends{{
    {"Norfolk", 9, 30, "norfolkbeekeepers.org.uk"},
    {"British Columbia", 9, 30, "stickyfingershoney.ca"},
    {"Germany", 10, 1, "wiki.bienenzeitung.de"},
    {"northern USA and southern Canada", 10, 15, "USDA overwintering text (chestofbooks.com)"},
}};
/// No syrup when the days stay colder than this, C. Source: one of the texts under feeding_ends; which
/// of them is not settled.
inline constexpr double no_syrup_below_celsius = 13;

// ---- sugar and syrup ----------------------------------------------------------------------

/// Syrup by kilograms of sugar to litres of water: 1:1, 3:2, 2:1.
enum class Syrup { thin, three_to_two, thick };

/// Figures after Curth (Hohenheim, 1981), at bienenzuchtverein-merkstein.de.
struct SyrupFigures {
    double sugar_kg_per_litre = 0;      ///< sugar in a litre of syrup
    double stores_kg_per_kg_sugar = 0;  ///< sealed stores from a kilogram of sugar
};
constexpr SyrupFigures syrup(Syrup kind) {
    switch (kind) {
        case Syrup::thin: return {0.625, 0.90};
        case Syrup::three_to_two: return {0.80, 1.08};
        case Syrup::thick: return {0.89, 1.12};
    }
    return {};
}
/// Kilograms of stores from kilograms of sugar (>= 0) fed as this syrup. Source: SyrupFigures.
constexpr double stores_from_sugar(double sugar_kg, Syrup kind) {
    return sugar_kg * syrup(kind).stores_kg_per_kg_sugar;
}
/// Kilograms of stores from litres of syrup (>= 0). Source: SyrupFigures.
constexpr double stores_from_syrup(double litres, Syrup kind) {
    return stores_from_sugar(litres * syrup(kind).sugar_kg_per_litre, kind);
}
/// Kilograms of sugar to feed for so many kilograms of stores still wanted; 0 when none are.
constexpr double sugar_for_stores(double stores_kg, Syrup kind) {
    return stores_kg > 0 ? stores_kg / syrup(kind).stores_kg_per_kg_sugar : 0.0;
}

// ---- use ----------------------------------------------------------------------------------

/// Stores used in a month without brood, kg: November to February 0.9 on a scale hive at Bad Schwartau (HOneyBee
/// Online Studies, 2017-2019), 1 kg in Bienen & Natur, 40-50 g a day at BV Alb-Lautertal.
inline constexpr Range winter_use_kg_per_month{0.9, 1.0, 1.5};
/// As above with brood: 3 kg in Bienen & Natur, up to 1 kg a week at bees-online.at (Feb 2021).
inline constexpr Range brooding_use_kg_per_month{2.0, 3.0, 4.3};

/// Bees, brood and stores together above which about 94 % of colonies lived through winter, kg. Source: Penn State
/// Entomology (Doeke et al., J. Econ. Entomol. 2019, reference from memory).
inline constexpr double good_contents_kg = 30;
/// Frames of bees below which uniting is worth a thought. Source: honey.org.au (Queensland).
inline constexpr int unite_below_frames = 6;

}  // namespace waxtab::handbook
