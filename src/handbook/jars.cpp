#include "handbook/jars.hpp"

#include <algorithm>
#include <numeric>

#include "handbook/range.hpp"

namespace waxtab::handbook {

namespace {
constexpr std::string_view torbay = "Torbay branch, Devon BKA (tbbk.co.uk)";
constexpr std::string_view lots = "Directive 2011/91/EU; exceptions as in the EU summary of 89/396/EEC";
}  // namespace

const std::array<JarSize, 14> jar_sizes{{
    {42, "Britain (1 1/2 oz)", from_memory},
    {57, "Britain (2 oz)", torbay},
    {113, "Britain (4 oz)", torbay},
    {227, "Britain, USA (8 oz)", torbay},
    {340, "Britain, USA (12 oz)", torbay},
    {454, "Britain, USA (1 lb)", torbay},
    {907, "USA (2 lb)", from_memory},
    {2268, "USA (5 lb)", from_memory},
    {250, "Germany", from_memory},
    {500, "Germany", from_memory},
    {125, "France", from_memory},
    {250, "France", from_memory},
    {500, "France", from_memory},
    {1000, "France", from_memory},
}};

const std::array<LabelRule, 5> lot_rules{{
    {"A lot is what one producer or packer packed under practically the same conditions; he says what belongs to it.",
     lots},
    {"The mark starts with L unless it stands clearly apart from other marks.", lots},
    {"No lot mark is needed when the best-before date shows day and month.", lots},
    {"No lot mark is needed on a pack whose largest side is under 10 cm2, or on food not packed beforehand.", lots},
    {"Keep from whom honey came and to which businesses it went; the people who eat it need not be listed.",
     "Regulation (EC) 178/2002, art. 18"},
}};

const LabelRule infant_caution{"Not for babies under twelve months: honey can carry the germs of infant botulism.",
                               "CDC; American Academy of Pediatrics; INSPQ (Quebec)"};

std::optional<double> tolerable_negative_error(double g) {
    if (!(g >= 5 && g <= 1000)) return std::nullopt;
    if (g <= 50) return g * 0.09;
    if (g <= 100) return 4.5;
    if (g <= 200) return g * 0.045;
    if (g <= 300) return 9.0;
    if (g <= 500) return g * 0.03;
    return 15.0;
}

std::optional<BatchCheck> check_batch(double nominal_g, std::span<const double> net_g) {
    const auto error = tolerable_negative_error(nominal_g);
    if (!error || net_g.empty()) return std::nullopt;
    const auto short_by = [&](double much) {
        return std::count_if(net_g.begin(), net_g.end(), [&](double g) { return nominal_g - g > much + 1e-9; });
    };
    const auto n = static_cast<double>(net_g.size());
    const double mean = std::accumulate(net_g.begin(), net_g.end(), 0.0) / n;
    return BatchCheck{mean >= nominal_g - 1e-9, static_cast<double>(short_by(*error)) * 40 <= n,
                      short_by(2 * *error) == 0};
}

int check_sample(int jars_filled) {
    const int wanted = jars_filled <= 50 ? 3 : jars_filled <= 100 ? 5 : 8;
    return std::clamp(jars_filled, 0, wanted);
}

std::optional<int> figure_height_mm(double g) {
    if (!(g > 0)) return std::nullopt;
    return g <= 50 ? 2 : g <= 200 ? 3 : g <= 1000 ? 4 : 6;
}

bool lot_mark_needed(const Pack& pack) {
    return !(pack.best_before_with_day || pack.largest_side_cm2 < 10 || pack.packed_at_sale || pack.bulk_to_packer);
}

}  // namespace waxtab::handbook
