#pragma once
#include <array>
#include <optional>
#include <string_view>

namespace waxtab::handbook {

/// Mites per 100 bees of a wash or roll; nothing without bees or for negative mites. Source: arithmetic.
constexpr std::optional<double> mites_per_100(double mites, double bees) {
    if (!(bees > 0 && mites >= 0)) return std::nullopt;
    return mites * 100 / bees;
}

/// Mites dropped a day on a board that lay for so many days; nothing unless days > 0 and mites >= 0.
constexpr std::optional<double> drop_per_day(double mites, double days) {
    if (!(days > 0 && mites >= 0)) return std::nullopt;
    return mites / days;
}

/// Bees in a sample whose size is not said, half a cup; from memory.
inline constexpr int usual_sample_bees = 300;
/// Bees below which a sample says little; from memory.
inline constexpr int least_sample_bees = 100;

/// A level of mites per 100 bees from which some treat. Settings for the keeper to choose from, never a verdict:
/// season, climate and local advice decide.
struct MiteThreshold {
    std::string_view when;
    double mites_per_100 = 0;
    std::string_view source;
};
inline constexpr std::array<MiteThreshold, 3> mite_thresholds{{
    {"in the season", 3, "in use at USDA-ARS and by clubs"},
    {"February", 1, "Mississippi State University Extension"},
    {"before the winter bees are raised", 2, "from memory"},
}};

/// Highest day temperature for formic acid strips, C, on the labels seen (UK Vm 40476/4000, 2013-14; 10-29.5 C on
/// the first day). The label in the keeper's hands counts.
inline constexpr double formic_acid_most_celsius = 29.5;
inline constexpr double formic_acid_least_celsius = 10;
/// Days amitraz strips are meant to stay, and at most, on the US label of 2012 (EPA emergency exemption, 10 Dec
/// 2012; 56 days: beekeepers' news of 24 Oct 2012).
inline constexpr int amitraz_days = 42;
inline constexpr int amitraz_most_days = 56;

}  // namespace waxtab::handbook
