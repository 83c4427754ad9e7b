#include "handbook/moisture.hpp"

#include <algorithm>
#include <cmath>

namespace waxtab::handbook {

const std::array<IndexRow, 61> index_table{{
    {1.5044, 13.0}, {1.5038, 13.2}, {1.5033, 13.4}, {1.5028, 13.6}, {1.5023, 13.8},
    {1.5018, 14.0}, {1.5012, 14.2}, {1.5007, 14.4}, {1.5002, 14.6}, {1.4997, 14.8},
    {1.4992, 15.0}, {1.4987, 15.2}, {1.4982, 15.4}, {1.4976, 15.6}, {1.4971, 15.8},
    {1.4966, 16.0}, {1.4961, 16.2}, {1.4956, 16.4}, {1.4951, 16.6}, {1.4946, 16.8},
    {1.4940, 17.0}, {1.4935, 17.2}, {1.4930, 17.4}, {1.4925, 17.6}, {1.4920, 17.8},
    {1.4915, 18.0}, {1.4910, 18.2}, {1.4905, 18.4}, {1.4900, 18.6}, {1.4895, 18.8},
    {1.4890, 19.0}, {1.4885, 19.2}, {1.4880, 19.4}, {1.4875, 19.6}, {1.4870, 19.8},
    {1.4865, 20.0}, {1.4860, 20.2}, {1.4855, 20.4}, {1.4850, 20.6}, {1.4845, 20.8},
    {1.4840, 21.0}, {1.4835, 21.2}, {1.4830, 21.4}, {1.4825, 21.6}, {1.4820, 21.8},
    {1.4815, 22.0}, {1.4810, 22.2}, {1.4805, 22.4}, {1.4800, 22.6}, {1.4795, 22.8},
    {1.4790, 23.0}, {1.4785, 23.2}, {1.4780, 23.4}, {1.4775, 23.6}, {1.4770, 23.8},
    {1.4765, 24.0}, {1.4760, 24.2}, {1.4755, 24.4}, {1.4750, 24.6}, {1.4745, 24.8},
    {1.4740, 25.0},
}};

const std::array<MoistureLimit, 7> moisture_limits{{
    {Asker::eu_law, "EU honey law", false, 20.0, false, "Directive 2001/110/EC, Annex II point 2"},
    {Asker::eu_law, "EU honey law, heather", true, 23.0, false, "Directive 2001/110/EC, Annex II point 2"},
    {Asker::us_grade, "US grade A or B", false, 18.6, false,
     "United States Standards for Grades of Extracted Honey, 50 FR 15861 (1985)"},
    {Asker::us_grade, "US grade C", false, 20.0, false,
     "United States Standards for Grades of Extracted Honey, 50 FR 15861 (1985)"},
    {Asker::association, "German and Czech association jar", false, 18.0, false,
     "DLR Westpfalz, 17 June 2019 (German association); Brno veterinary faculty, 2014 (Czech norm)"},
    {Asker::association, "German association jar, heather", true, 21.4, false,
     "Die Honigmacher, course 1 (German association)"},
    {Asker::keeping, "safe for a year", false, 17.1, true,
     "Lochhead scheme, in A Practical Manual of Beekeeping, table 2"},
}};

namespace {
constexpr double hair = 1e-6;

}  // namespace

std::optional<double> water_percent(double index_20c) {
    // Rows fall in index; the first row not above the reading ends the stretch it lies in.
    const auto end = std::find_if(index_table.begin(), index_table.end(),
                                  [&](const IndexRow& row) { return row.index <= index_20c + 1e-9; });
    if (end == index_table.end()) return std::nullopt;
    if (std::abs(end->index - index_20c) <= 1e-9) return end->water_percent;
    if (end == index_table.begin()) return std::nullopt;
    const IndexRow& wetter = *end;
    const IndexRow& drier = *(end - 1);
    const double part = (drier.index - index_20c) / (drier.index - wetter.index);
    return drier.water_percent + part * (wetter.water_percent - drier.water_percent);
}

std::optional<double> water_percent(double reading, double sample_celsius) {
    if (!(sample_celsius >= 5.0 && sample_celsius <= 45.0)) return std::nullopt;
    return water_percent(index_at_20(reading, sample_celsius));
}

std::optional<double> water_percent_wedmore(double index_20c) {
    if (!(index_20c > 1.0)) return std::nullopt;
    const double water = (-0.2681 - std::log10(index_20c - 1.0)) / 0.002243;
    // The formula's own rounding may carry the table's end rows just past the bounds.
    if (!(water >= least_water_percent - 0.03 && water <= most_water_percent + 0.03)) return std::nullopt;
    return std::clamp(water, least_water_percent, most_water_percent);
}

Fermentation fermentation(double water) {
    if (water < 17.1 - hair) return Fermentation::safe;
    if (water <= 18.0 + hair) return Fermentation::safe_under_1000;
    if (water <= 19.0 + hair) return Fermentation::safe_under_10;
    if (water <= 20.0 + hair) return Fermentation::safe_under_1;
    return Fermentation::always_in_danger;
}

std::string_view words(Fermentation band) {
    switch (band) {
        case Fermentation::safe: return "safe whatever the yeast count";
        case Fermentation::safe_under_1000: return "safe if there are fewer than 1,000 yeasts per gram";
        case Fermentation::safe_under_10: return "safe if there are fewer than 10 yeasts per gram";
        case Fermentation::safe_under_1: return "safe if there is less than one yeast per gram";
        case Fermentation::always_in_danger: return "always in danger of fermenting";
    }
    return {};
}

bool within(const MoistureLimit& limit, double water) {
    return limit.below_only ? water < limit.percent - hair : water <= limit.percent + hair;
}

std::array<LimitAnswer, 4> limit_answers(double water, bool heather) {
    std::array<LimitAnswer, 4> answers{};
    for (const MoistureLimit& limit : moisture_limits) {
        LimitAnswer& answer = answers[static_cast<std::size_t>(limit.asker)];
        if (limit.heather && !heather) continue;
        // The stricter limit stands first; a wider one is asked only when that one is missed.
        if (!answer.met) answer = {&limit, within(limit, water)};
    }
    return answers;
}

std::optional<double> blend_percent(std::span<const Portion> portions) {
    double kg = 0, water = 0;
    for (const Portion& p : portions) {
        if (!(p.kg >= 0)) return std::nullopt;
        kg += p.kg;
        water += p.kg * p.water_percent;
    }
    if (!(kg > 0)) return std::nullopt;
    return water / kg;
}

std::optional<double> kg_to_reach(double kg, double percent, double target, double other_percent) {
    if (!(kg >= 0)) return std::nullopt;
    if (percent == target) return 0.0;
    const double over = percent - target, under = target - other_percent;
    if (!(over * under > 0)) return std::nullopt;
    return kg * over / under;
}

}  // namespace waxtab::handbook
