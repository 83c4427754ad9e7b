#pragma once
#include <array>
#include <optional>
#include <span>
#include <string_view>

namespace waxtab::handbook {

// ---- sizes --------------------------------------------------------------------------------

/// A customary net weight; any weight may be sold.
struct JarSize {
    double grams = 0;
    std::string_view where;
    std::string_view source;
};
extern const std::array<JarSize, 14> jar_sizes;

// ---- how much a jar may be short ------------------------------------------------------------

/// Tolerable negative error in grams (or ml) for a nominal quantity; nothing outside 5-1,000. For jars sold by the
/// European rule only: the USA uses another table (NIST Handbook 133). Source: Directive 76/211/EEC, Annex I 2.4.
std::optional<double> tolerable_negative_error(double nominal_g);

/// The three packers' rules for a batch.
struct BatchCheck {
    bool mean_ok = false;       ///< on average not below nominal
    bool few_short = false;     ///< at most 1 in 40 short by more than the tolerable error
    bool none_twice = false;    ///< none short by more than twice that
    constexpr bool ok() const { return mean_ok && few_short && none_twice; }
};
/// Checks weighed net contents in grams; nothing without weights or outside the table. Source: Directive
/// 76/211/EEC; tradingstandards.gov.uk (2.5 %).
std::optional<BatchCheck> check_batch(double nominal_g, std::span<const double> net_g);

/// Jars to weigh as a check: 3 up to 50 filled, 5 up to 100, else 8; never more than there are. 0 for none.
/// Source: Trading Standards text quoted at beekeepingforum.co.uk (7-8 above 100).
int check_sample(int jars_filled);

/// Least height in mm of the figures of the weight on the label. Source: Torbay branch, Devon BKA (tbbk.co.uk);
/// SI 2006/659. Nothing for 0 or less.
std::optional<int> figure_height_mm(double nominal_g);

// ---- label --------------------------------------------------------------------------------

/// A rule for the label or the record, in words.
struct LabelRule {
    std::string_view says;
    std::string_view source;
};
/// Lot mark: what it is, and when none is wanted.
extern const std::array<LabelRule, 5> lot_rules;

/// Whether a lot mark is needed on packed honey, by these exceptions. Source: Directive 2011/91/EU.
struct Pack {
    bool best_before_with_day = false;  ///< the date shows day and month
    double largest_side_cm2 = 100;
    bool packed_at_sale = false;        ///< not prepacked, or packed where it is sold
    bool bulk_to_packer = false;        ///< farm produce to a packing station
};
bool lot_mark_needed(const Pack& pack);

/// No honey for infants: under twelve months. Sources: CDC; American Academy of Pediatrics; INSPQ (Quebec).
extern const LabelRule infant_caution;
inline constexpr int infant_months = 12;

/// Usual best-before period in years; the water content should decide. Source: several British pages.
inline constexpr int best_before_years = 2;

}  // namespace waxtab::handbook
