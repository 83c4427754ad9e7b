#include "ledger/extraction.hpp"

#include <fmt/format.h>

#include "ledger/harvesting.hpp"
#include "ledger/jars.hpp"
#include "ledger/waiting.hpp"

namespace waxtab {

namespace {

void warn_another_year(Books& books, LotId id, FactId fact) {
    const Lot& lot = books.ledger.lots[id];
    const auto year = [](Day d) { return date::year_month_day{d}.year(); };
    if (year(lot.extracted) == year(books.fact(fact).happened)) return;
    Diagnostic& d = say(books, Severity::warning, "lot-name-again", fact,
                        fmt::format("lot {} was already used in {}", lot.name, static_cast<int>(year(lot.extracted))));
    d.label = "both are now one lot";
    d.hint = "give each season's lots names of their own, so that a jar leads back to one harvest";
    cite_lot(books, d, lot, lot.because);
}

void warn_nothing(Books& books, FactId fact) {
    Diagnostic& d = say(books, Severity::warning, "extracted-nothing", fact,
                        "extracted, but without a weight, and nothing was noted as taken off and not yet extracted");
    d.label = "the lot has no honey in the books";
    d.hint = "write the weight, 'extracted 82 kg lot A', or note the supers that came off before";
}

/// Honey nobody in this journal harvested, into a lot, as jars or in bulk.
void book_foreign(Books& books, LotId id, FactId fact, Mass& account) {
    const Fact& f = books.fact(fact);
    const auto honey = honey_of(f.value);
    if (!honey) {
        Diagnostic& d = say(books, Severity::error, "amount-unsaid", fact, "no amount of honey");
        d.hint = "write it as '20 kg' or '24 x 454 g'";
        return;
    }
    const bool jars = f.count > 0;
    const Mass all = jars ? times(honey->value, f.count) : honey->value;
    const MassRange in = jars || honey->weighed ? exactly(all) : *honey;
    Lot& lot = books.ledger.lots[id];
    lot.weight = lot.weight + in;
    lot.bulk += all;
    account += all;
    merge_shares(lot.shares, {{no_hive, in, {}, {fact}}});
    add_once(lot.because, fact);
    if (jars) put_in_jars(books, id, fact, {f.count, honey->value, false});
}

}  // namespace

void extract(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    const std::vector<std::size_t> takings = takings_for(books, fact, false);
    const auto measured = honey_of(f.value);
    const LotId id = lot_to_fill(books, fact);
    if (!measured && takings.empty()) warn_nothing(books, fact);
    if (!books.ledger.lots[id].because.empty()) warn_another_year(books, id, fact);
    const MassRange got = harvest_into(books, id, fact, takings, measured);
    books.ledger.lots[id].bulk += got.value;
    books.ledger.extracted += got.value;
}

void open_stock(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    const LotId id = lot_named(books, f.lot.empty() ? "opening stock" : f.lot, f.happened);
    book_foreign(books, id, fact, books.ledger.lots[id].opening);
}

void buy_in(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    const LotId id = f.lot.empty() ? lot_named_for(books, "bought in " + iso(f.happened), f.happened)
                                   : lot_named(books, f.lot, f.happened);
    if (books.ledger.lots[id].bought_from.empty()) books.ledger.lots[id].bought_from = f.text;
    book_foreign(books, id, fact, books.ledger.lots[id].bought);
}

}  // namespace waxtab
