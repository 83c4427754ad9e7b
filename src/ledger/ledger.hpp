#pragma once
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "estimate/estimate.hpp"
#include "handbook/moisture.hpp"

namespace waxtab {

/// A mass with the range it may lie in; equal bounds when weighed.
struct MassRange {
    Mass low, value, high;
    bool weighed = false;
};

/// What one hive gave to one lot. `no_hive`: honey of which no hive is known (opening stock, bought in).
struct LotShare {
    HiveId hive = no_hive;
    MassRange honey;            ///< values of a lot's shares sum exactly to the lot's weight
    std::vector<std::size_t> takings;  ///< indices into History::takings
    std::vector<FactId> because;
};

/// Jars, or pieces of comb, of one size in one lot. filled + adjusted + beyond = out + left.
struct JarRow {
    Mass size;                  ///< honey in one; the rows of a lot differ in it
    int filled = 0;             ///< filled, or there from the start, or bought in
    int out = 0;                ///< gone out for good, spoiled ones too, less what came back
    int left = 0;
    std::vector<FactId> because;
    int spoiled = 0;            ///< of those out
    int adjusted = 0;           ///< booked by stocktakes: found more, or (negative) fewer
    int beyond = 0;             ///< went out though the books had none; each with an error
    bool comb = false;          ///< pieces of comb honey or sections, no jars
};

/// Honey or jars leaving (or coming back).
struct Going {
    Day day{};
    FactId fact = 0;
    int jars = 0;               ///< 0 for bulk
    Mass size;
    Mass honey;
    std::string_view how;       ///< `sold`, `given`, `own use`, `spoiled`, `come back`
    std::string to;             ///< who had it, or the place it was sold at
    bool at_place = false;      ///< `to` is a place
    bool business = false;      ///< said to be a business
    bool lot_assumed = false;   ///< the lot was not said
    std::vector<std::string> may_be;  ///< other lots it may be of, where the lot was not said; sorted
};

/// Water in a lot, permille.
struct Water {
    std::int64_t low = 0, value = 0, high = 0;
    bool read = false;          ///< read off an instrument; else by mass balance of a blend
    std::vector<FactId> because;
};

/// Bulk honey that went from one lot into another.
struct Blending {
    std::string from, into;
    Mass honey;
    Day day{};
    FactId fact = 0;
};

/// A quantity of honey kept together and named, from extraction, stock, purchase or blending.
/// In bulk: opening + bought + harvested + drained + blended_in + beyond + adjusted
///        = in_jars + blended_out + bulk_gone + spoiled + bulk.
struct Lot {
    std::string name;           ///< as written, else made from the day of extraction: `2026-07-12`
    bool name_made = false;
    Day extracted{};            ///< day of the first extraction, else of opening, purchase or blending
    MassRange weight;           ///< all that came in but drained cappings: opening, bought, harvested, blended in
    std::vector<LotShare> shares;      ///< by hive in journal order, unknown hives last
    std::vector<std::size_t> takings;
    std::optional<std::int64_t> moisture_permille;   ///< last reading, temperature-corrected
    std::vector<FactId> moisture_facts;
    bool fermenting = false;
    std::vector<JarRow> jars;
    std::vector<Going> goings;  ///< in order of effect
    Mass bulk;                  ///< left in bulk
    Mass drained, blended_in, blended_out;
    Mass bulk_gone;             ///< bulk sold, given, used, less what came back
    Mass in_jars;               ///< put in jars or packed as comb, opening and bought jars among them
    std::vector<std::string> blended_from;
    /// Feeds and treatments that overlapped the supers of this lot (through blends too).
    std::vector<FactId> concerns;
    std::vector<FactId> because;

    Mass opening, bought;       ///< stock at the start of the journal; honey bought in
    MassRange harvested;        ///< from the keeper's own hives
    Mass beyond;                ///< taken from bulk though the books had none: a low estimate, or an error
    Mass adjusted;              ///< booked by stocktakes of bulk, negative for a loss
    Mass spoiled;               ///< bulk spoiled
    std::string bought_from;    ///< as written
    std::optional<Water> water; ///< all readings together, or the mass balance of a blend without a reading
    std::string best_before;    ///< as written; ISO where it was a date
    std::vector<FactId> fermenting_facts;
    std::vector<FactId> moved;  ///< bulk put elsewhere: tanks, buckets, other rooms

    Mass left_in_jars() const;
    Mass jars_gone() const;     ///< without the spoiled
    Mass jars_spoiled() const;
    Mass jars_adjusted() const;
    Mass jars_beyond() const;
};

/// Honey taken off per hive.
struct HiveYield { HiveId hive = no_hive; MassRange honey; int supers = 0; int frames = 0; std::vector<FactId> because; };

/// What one hive gave at one extraction or packing, or has waiting: the lines yields are summed from.
struct Harvest {
    HiveId hive = no_hive;
    YardId yard = no_yard;      ///< where the hive stood when the honey came off
    Day day{};                  ///< the honey came off, the last of it
    std::string lot;            ///< empty while it waits for extraction
    MassRange honey;
    int supers = 0, frames = 0;
    std::vector<std::size_t> takings;
    std::vector<FactId> because;
};

/// Something taken as usual because it was not said, printed beside the fact.
struct LedgerAssumption { FactId fact = 0; std::string text; };

/// Where every kilogram went, as of a day:
/// opening + bought + extracted + drained + beyond + adjusted = gone + spoiled + left_in_jars + left_in_bulk.
struct Ledger {
    Day on{};
    std::vector<Lot> lots;              ///< in order of extraction
    std::vector<HiveYield> hives;       ///< hives with a harvest, journal order
    std::vector<std::size_t> waiting;   ///< takings not yet extracted
    MassRange waiting_honey;
    Mass wax;
    /// Opening stock, bought in, out, left: totals over all lots, closing exactly. `jarred` is all that ever
    /// was in jars or packed comb; `gone` is sold, given and used, less what came back.
    Mass opening, bought, extracted, jarred, gone, spoiled, left_in_jars, left_in_bulk;
    /// More jars than honey, an unknown lot and the like.
    Diagnostics diagnostics;

    Mass drained, beyond, adjusted;     ///< over all lots, jars and bulk together; see Lot and JarRow
    std::vector<FactId> wax_facts;
    std::vector<Harvest> harvests;      ///< in order of extraction, the waiting last
    std::vector<Blending> blendings;    ///< in order of effect
    std::vector<LedgerAssumption> assumptions;

    /// The lot of this name, large and small letters alike; null when there is none.
    const Lot* lot(std::string_view name) const;
};

/// The honey ledger as of `history.on`. A lot's weight and shares rest on what was noted by the day its
/// extraction was noted, so that later notes never move them: on `TakingEstimate::kg_then`, and on histories
/// and estimates made anew as of that day when something that had happened by then was noted later. Pure.
Ledger account(const Journal& journal, const History& history, const Estimates& estimates);

/// Every equation of the books that does not close, in words; empty when all do.
std::vector<std::string> unbalanced(const Ledger& ledger);

/// `454 g`, `1 lb`, `12 oz`, `1.5 kg`: the size of a jar as its label says it.
std::string jar_text(Mass size);

/// What honey law, grading, an association and keeping say to a lot's water: four questions, four answers,
/// never one mark. Nothing when the water is not known. `heather`: the lot is heather (Calluna) honey.
std::optional<std::array<handbook::LimitAnswer, 4>> moisture_answers(const Lot& lot, bool heather);

}  // namespace waxtab
