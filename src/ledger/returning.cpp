#include <algorithm>

#include <fmt/format.h>

#include "ledger/going.hpp"

namespace waxtab {

namespace {

Going coming_of(const Fact& f, FactId fact, int jars, Mass size, Mass honey) {
    Going g;
    g.day = f.happened;
    g.fact = fact;
    g.jars = jars;
    g.size = size;
    g.honey = honey;
    g.how = "come back";
    g.to = f.text;
    g.business = f.manner == "business";
    g.lot_assumed = f.lot.empty();
    return g;
}

/// How many of the row went to this buyer; to anyone when none is named.
int went_to(const Lot& lot, const JarRow& row, const std::string& who) {
    int n = 0;
    for (const Going& g : lot.goings)
        if (g.size == row.size && g.jars > 0 && g.how != "come back" && g.how != "spoiled" && (who.empty() || g.to == who)) n += g.jars;
    return n;
}

/// Rows of which jars are out: those that went to whoever brings them first, then the latest lot.
std::vector<RowId> rows_out(Books& books, const Fact& f) {
    std::vector<RowId> rows;
    for (const RowId r : rows_meant(books, f))
        if (row_at(books, r).out - row_at(books, r).spoiled > 0) rows.push_back(r);
    std::reverse(rows.begin(), rows.end());
    const auto theirs = [&](RowId r) { return went_to(books.ledger.lots[r.lot], row_at(books, r), f.text) > 0; };
    std::stable_partition(rows.begin(), rows.end(), theirs);
    return rows;
}

void error_not_out(Books& books, FactId fact, int count, int out) {
    const Fact& f = books.fact(fact);
    Diagnostic& d = say(books, Severity::error, "more-back-than-out", fact,
                        fmt::format("{} jars came back, but {} had gone out", count, out == 0 ? "none" : fmt::format("only {}", out)));
    d.label = fmt::format("{} left out of the books", count - out);
    d.hint = "check the count, the size and the lot";
    for (const RowId r : rows_meant(books, f)) cite_lot(books, d, books.ledger.lots[r.lot], row_at(books, r).because);
}

void jars_back(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (!f.lot.empty() && lot_said(books, fact) == no_lot) return;
    int left = f.count;
    for (const RowId r : rows_out(books, f)) {
        Lot& lot = books.ledger.lots[r.lot];
        JarRow& row = lot.jars[r.row];
        const int part = std::min(left, row.out - row.spoiled);
        if (part == 0) break;
        if (f.lot.empty()) assume(books, fact, fmt::format("{} of lot {} (not said)", jars_words(part, row.size, row.comb), lot.name));
        row.out -= part;
        row.left += part;
        lot.goings.push_back(coming_of(f, fact, part, row.size, times(row.size, part)));
        add_once(row.because, fact);
        left -= part;
    }
    if (left > 0) error_not_out(books, fact, f.count, f.count - left);
}

void bulk_back(Books& books, FactId fact, Mass honey) {
    const Fact& f = books.fact(fact);
    const LotId id = lot_for(books, fact, "honey came back", [&](const Lot& l) { return l.bulk_gone >= honey; });
    if (id == no_lot) return;
    Lot& lot = books.ledger.lots[id];
    const Mass back = std::min(honey, lot.bulk_gone);
    if (back < honey) {
        Diagnostic& d = say(books, Severity::error, "more-back-than-out", fact,
                            fmt::format("{} came back, but only {} of lot {} had gone out in bulk", words(books, honey), words(books, back), lot.name));
        cite_lot(books, d, lot, lot.because);
    }
    lot.bulk_gone -= back;
    lot.bulk += back;
    if (back.ng > 0) lot.goings.push_back(coming_of(f, fact, 0, {}, back));
    add_once(lot.because, fact);
}

}  // namespace

void come_back(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (f.count > 0) return jars_back(books, fact);
    if (f.count == 0) return;
    if (const auto honey = honey_of(f.value)) bulk_back(books, fact, honey->value);
}

}  // namespace waxtab
