#pragma once
#include <array>
#include <optional>
#include <span>
#include <string_view>

namespace waxtab::handbook {

// ---- refractive index to water ------------------------------------------------------------

/// One row of the table: refractive index at 20 C, water in g per 100 g of honey.
struct IndexRow {
    double index = 0;
    double water_percent = 0;
};
/// The table in steps of 0.2 % water, falling index, 13.0 to 25.0 %.
/// Source: S. Bogdanov, Book of Honey ch. 4 (2009 and 2011), after Chataway (1932).
extern const std::array<IndexRow, 61> index_table;

/// Lowest and highest water content the table reaches, percent.
inline constexpr double least_water_percent = 13.0, most_water_percent = 25.0;

/// Change of the refractive index per degree Celsius; added above 20 C, taken off below.
/// Source: S. Bogdanov, Book of Honey ch. 4 (2011), note under the table.
inline constexpr double index_per_degree = 0.00023;

/// The index the sample would show at 20 C. Only for an index read off the scale: a percent from a
/// self-compensating meter must not be corrected again. Source: as index_per_degree.
constexpr double index_at_20(double reading, double sample_celsius) {
    return reading + (sample_celsius - 20.0) * index_per_degree;
}

/// Water in percent from the index at 20 C, by straight lines between the table's rows.
/// Nothing outside 13-25 % (index 1.5044 to 1.4740). Source: as index_table.
std::optional<double> water_percent(double index_20c);

/// As above for a reading taken at `sample_celsius`. Nothing either when that is outside 5-45 C,
/// where the straight correction is not vouched for (bounds from memory).
std::optional<double> water_percent(double reading, double sample_celsius);

/// Water in percent from the index at 20 C by formula: (-0.2681 - log10(index - 1)) / 0.002243.
/// Agrees with the table within 0.03 points; nothing outside 13-25 %. Source: Wedmore (1955), in
/// S. Bogdanov, Book of Honey ch. 4 (2011), where the constant is printed in bar notation as 1.73190.
std::optional<double> water_percent_wedmore(double index_20c);

// ---- keeping and limits -------------------------------------------------------------------

/// How liable honey is to ferment within a year at this water content and yeast count.
enum class Fermentation {
    safe,               ///< below 17.1 %: whatever the yeast count
    safe_under_1000,    ///< 17.1-18.0 %: with fewer than 1,000 yeasts per gram
    safe_under_10,      ///< 18.1-19.0 %: with fewer than 10 per gram
    safe_under_1,       ///< 19.1-20.0 %: with fewer than one per gram
    always_in_danger,   ///< above 20.0 %
};
/// The band for a water content in percent. Source: A. G. Lochhead (1933, attribution from memory),
/// as tabled in A Practical Manual of Beekeeping, table 2; "for a year" after USDA Handbook 335.
Fermentation fermentation(double water_percent);
/// The band in words: `safe if there are fewer than 10 yeasts per gram`.
std::string_view words(Fermentation band);

/// Who asks about the water; each asks a different question, so the answers are never merged.
enum class Asker { eu_law, us_grade, association, keeping };

/// A limit of one asker.
struct MoistureLimit {
    Asker asker = Asker::eu_law;
    std::string_view name;      ///< `US grade A or B`
    bool heather = false;       ///< holds for heather (Calluna) honey only
    double percent = 0;         ///< highest water content allowed
    bool below_only = false;    ///< the limit itself already fails
    std::string_view source;
};
/// All limits known here.
extern const std::array<MoistureLimit, 7> moisture_limits;

/// True when honey of this water content is within the limit; exact to a millionth of a percent.
bool within(const MoistureLimit& limit, double water_percent);

/// One asker's answer.
struct LimitAnswer {
    const MoistureLimit* limit = nullptr;   ///< the limit met, else the widest one missed
    bool met = false;
};
/// The four answers, in the order of Asker. Where an asker has no limit of its own for heather honey,
/// the general one counts.
std::array<LimitAnswer, 4> limit_answers(double water_percent, bool heather);

// ---- blending -----------------------------------------------------------------------------

/// Honey going into a blend.
struct Portion {
    double kg = 0;
    double water_percent = 0;
};
/// Water of the blend by mass balance; nothing when there is no mass or a mass is negative.
/// The yeast of the wet part is not blended away. Source: mass balance, own arithmetic.
std::optional<double> blend_percent(std::span<const Portion> portions);

/// Kilograms of honey with `other_percent` water that bring `kg` with `percent` to `target`:
/// kg * (percent - target) / (target - other_percent). 0 when already there; nothing when the target
/// does not lie between the two, or the mass is negative. Source: mass balance (Pearson square).
std::optional<double> kg_to_reach(double kg, double percent, double target, double other_percent);

}  // namespace waxtab::handbook
