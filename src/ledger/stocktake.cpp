#include <algorithm>

#include <fmt/format.h>

#include "ledger/going.hpp"

namespace waxtab {

namespace {

void report(Books& books, FactId fact, const std::string& counted, const std::string& booked, const std::vector<FactId>& lines, bool small) {
    Diagnostic& d = say(books, small ? Severity::note : Severity::warning, "stocktake-difference", fact,
                        fmt::format("{} counted, but the books have {}", counted, booked));
    d.label = "the difference is booked as found by stocktake";
    d.hint = "a sale, a gift or a filling may have gone unnoted";
    cite(books, d, lines, "in the books");
}

/// Missing jars are taken from the oldest lot first, found ones go to the latest (common practice, no source).
void book_jars(Books& books, std::vector<RowId> rows, int difference, FactId fact) {
    if (difference > 0) std::reverse(rows.begin(), rows.end());
    for (const RowId r : rows) {
        JarRow& row = row_at(books, r);
        const int part = difference > 0 ? difference : -std::min(-difference, row.left);
        row.adjusted += part;
        row.left += part;
        difference -= part;
        if (part != 0) add_once(row.because, fact);
        if (difference == 0) return;
    }
}

/// Jars of a size the named lot never had: a row of its own, all of it found.
std::vector<RowId> found_row(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    const auto size = honey_of(f.value);
    const LotId id = f.lot.empty() ? no_lot : find_lot(books, f.lot);
    if (!size || id == no_lot) return {};
    JarRow& row = jar_row(books.ledger.lots[id], size->value, false);
    return {{id, static_cast<std::size_t>(&row - books.ledger.lots[id].jars.data())}};
}

bool one_size(Books& books, const std::vector<RowId>& rows) {
    return std::all_of(rows.begin(), rows.end(), [&](RowId r) { return row_at(books, r).size == row_at(books, rows.front()).size; });
}

void count_jars(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (!f.lot.empty() && lot_said(books, fact) == no_lot) return;
    std::vector<RowId> rows = rows_meant(books, f);
    if (rows.empty()) rows = found_row(books, fact);
    if (rows.empty() || !one_size(books, rows)) {
        ask_size(books, fact, rows);
        return;
    }
    int booked = 0;
    std::vector<FactId> lines;
    for (const RowId r : rows) {
        booked += row_at(books, r).left;
        add_once(lines, row_at(books, r).because);
    }
    if (booked == f.count) return;
    const JarRow& row = row_at(books, rows.front());
    report(books, fact, jars_words(f.count, row.size, row.comb), std::to_string(booked), lines, false);
    book_jars(books, rows, f.count - booked, fact);
}

void weigh_bulk(Books& books, FactId fact, const MassRange& there) {
    const LotId id = lot_for(books, fact, "stocktake of bulk", [](const Lot& l) { return l.bulk > Mass::grams(1); });
    if (id == no_lot) return;
    Lot& lot = books.ledger.lots[id];
    const Mass difference = there.value - lot.bulk;
    if (difference.ng == 0) return;
    // Within what the estimate left open, or what a scale is good for (100 g, see lots.cpp), nothing is wrong.
    const Mass off = difference.ng < 0 ? Mass{-difference.ng} : difference;
    const bool small = off <= lot.weight.high - lot.weight.low + Mass::grams(100);
    report(books, fact, fmt::format("{} of lot {}", words(books, there.value), lot.name), words(books, lot.bulk), lot.because, small);
    Lot& again = books.ledger.lots[id];
    again.adjusted += difference;
    again.bulk = there.value;
    add_once(again.because, fact);
}

}  // namespace

void take_stock(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (f.count >= 0) return count_jars(books, fact);
    // An empty tank is a stocktake too, so zero counts.
    if (f.value.dimension == Dimension::mass && f.value.amount == 0) return weigh_bulk(books, fact, exactly({}));
    if (const auto honey = honey_of(f.value)) weigh_bulk(books, fact, *honey);
}

}  // namespace waxtab
