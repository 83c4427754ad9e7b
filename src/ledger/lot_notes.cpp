#include <fmt/format.h>

#include "ledger/blend.hpp"

namespace waxtab {

namespace {

bool in_bulk(const Lot& lot) { return lot.bulk > Mass::grams(1); }

/// A best-before day that was over when the honey was still to be filled or sold helps nobody.
void warn_past(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    const auto day = day_from_iso(f.text);
    if (!day || *day > f.happened) return;
    say(books, Severity::warning, "best-before-past", fact, fmt::format("best before {} is not after {}", f.text, iso(f.happened))).hint =
        "check the year";
}

}  // namespace

void drain(Books& books, FactId fact) {
    const auto honey = honey_of(books.fact(fact).value);
    if (!honey) return;
    const LotId id = lot_for(books, fact, "cappings drained", in_bulk);
    if (id == no_lot) return;
    Lot& lot = books.ledger.lots[id];
    lot.drained += honey->value;
    lot.bulk += honey->value;
    add_once(lot.because, fact);
}

void move_bulk(Books& books, FactId fact) {
    const auto honey = honey_of(books.fact(fact).value);
    const Mass need = honey ? honey->value : Mass{};
    const LotId id = lot_for(books, fact, "bulk honey moved", [&](const Lot& l) { return in_bulk(l) && l.bulk >= need; });
    if (id == no_lot) return;
    Lot& lot = books.ledger.lots[id];
    if (need > lot.bulk) {
        Diagnostic& d = say(books, Severity::error, "more-than-there-is", fact,
                            fmt::format("{} moved, but lot {} has {} in bulk", words(books, need), lot.name, words(books, lot.bulk)));
        d.hint = "moving bulk changes no amounts; check the weight and the lot";
        cite_lot(books, d, lot, lot.because);
    }
    add_once(books.ledger.lots[id].moved, fact);
}

void gather_wax(Books& books, FactId fact) {
    const Measure& value = books.fact(fact).value;
    if (value.dimension != Dimension::mass) return;
    books.ledger.wax += Mass{value.amount};
    add_once(books.ledger.wax_facts, fact);
}

void date_lot(Books& books, FactId fact) {
    const LotId id = lot_for(books, fact, "best before", [](const Lot& l) { return in_bulk(l) || l.left_in_jars().ng > 0; });
    if (id == no_lot) return;
    books.ledger.lots[id].best_before = books.fact(fact).text;
    add_once(books.ledger.lots[id].because, fact);
    warn_past(books, fact);
}

void mark_fermenting(Books& books, FactId fact) {
    const LotId id = lot_for(books, fact, "fermenting honey", [](const Lot& l) { return in_bulk(l) || l.left_in_jars().ng > 0; });
    if (id == no_lot) return;
    books.ledger.lots[id].fermenting = true;
    add_once(books.ledger.lots[id].fermenting_facts, fact);
}

}  // namespace waxtab
