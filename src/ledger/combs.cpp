#include <fmt/format.h>

#include "ledger/extraction.hpp"
#include "ledger/harvesting.hpp"
#include "ledger/jars.hpp"
#include "ledger/waiting.hpp"

namespace waxtab {

namespace {

/// The weight of all pieces: the total said, or so much each. One weight alone is of each up to 1 kg, since no
/// section or piece of cut comb is heavier (common practice, no source), else of all.
std::optional<MassRange> weight_said(const Fact& f) {
    if (const auto total = honey_of(f.second)) return total;
    const auto one = honey_of(f.value);
    if (!one || one->value > Mass::grams(1000)) return one;
    return MassRange{times(one->low, f.count), times(one->value, f.count), times(one->high, f.count), one->weighed};
}

/// Comb supers wait for this; frames cut from other supers do when no comb super waits.
std::vector<std::size_t> takings_to_pack(Books& books, FactId fact) {
    const auto combs = takings_for(books, fact, true);
    if (!combs.empty() || hives_said(books.fact(fact)).empty()) return combs;
    return takings_for(books, fact, false);
}

void warn_no_weight(Books& books, FactId fact) {
    Diagnostic& d = say(books, Severity::warning, "combs-without-weight", fact, "comb honey packed without a weight, and no comb super was noted as taken off");
    d.label = "counted, but no kilograms in the books";
    d.hint = "write what it weighs: '24 sections packed, 8.6 kg'";
}

}  // namespace

void pack_combs(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (f.count <= 0) return;
    const std::vector<std::size_t> takings = takings_to_pack(books, fact);
    const auto said = weight_said(f);
    if (!said && takings.empty()) warn_no_weight(books, fact);
    const LotId id = lot_to_fill(books, fact);
    const MassRange got = harvest_into(books, id, fact, takings, said);
    books.ledger.extracted += got.value;
    books.ledger.lots[id].bulk += got.value;
    // The nanograms an even split leaves over stay in bulk, so that count times size is exact.
    put_in_jars(books, id, fact, {f.count, {got.value.ng / f.count}, true});
}

}  // namespace waxtab
