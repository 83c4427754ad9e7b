#include "ledger/going.hpp"

#include <algorithm>
#include <set>

#include <fmt/format.h>

namespace waxtab {

namespace {

std::string_view how_of(const Fact& f) { return f.detail.empty() ? std::string_view{"sold"} : f.detail; }

std::string done_words(const Fact& f) {
    const std::string_view how = how_of(f);
    if (how == "given") return "given away";
    if (how == "own use") return "kept for own use";
    return std::string{how};
}

Going going_of(const Books& books, FactId fact, const Jarful& jars, Mass honey) {
    const Fact& f = books.fact(fact);
    Going g;
    g.day = f.happened;
    g.fact = fact;
    g.jars = jars.count;
    g.size = jars.size;
    g.honey = honey;
    g.how = how_of(f);
    g.to = f.text;
    g.at_place = f.at_place;
    g.business = f.manner == "business";
    g.lot_assumed = f.lot.empty();
    return g;
}

std::vector<RowId> with_left(Books& books, const std::vector<RowId>& rows) {
    std::vector<RowId> out;
    for (const RowId r : rows)
        if (row_at(books, r).left > 0) out.push_back(r);
    return out;
}

std::vector<RowId> with_enough(Books& books, const std::vector<RowId>& rows, int count) {
    std::vector<RowId> out;
    for (const RowId r : rows)
        if (row_at(books, r).left >= count) out.push_back(r);
    return out;
}

/// All of one size, and all comb or none.
bool one_kind(Books& books, const std::vector<RowId>& rows) {
    return std::all_of(rows.begin(), rows.end(), [&](RowId r) {
        return row_at(books, r).size == row_at(books, rows.front()).size && row_at(books, r).comb == row_at(books, rows.front()).comb;
    });
}

/// Narrows the rows to one size when the size was not said: the only size there, else the only one of which
/// there are enough. False, with an error, when it stays open.
bool settle_size(Books& books, FactId fact, std::vector<RowId>& rows) {
    const Fact& f = books.fact(fact);
    if (f.value.said() || rows.empty()) return true;
    if (!one_kind(books, rows)) {
        std::vector<RowId> fit = with_enough(books, rows, f.count);
        if (fit.empty() || !one_kind(books, fit)) return ask_size(books, fact, rows);
        rows = std::move(fit);
    }
    const JarRow& row = row_at(books, rows.front());
    if (!row.comb) assume(books, fact, fmt::format("jars of {} (size not said)", jar_text(row.size)));
    return true;
}

std::vector<std::string> other_lots(Books& books, const std::vector<RowId>& rows, LotId but) {
    std::vector<std::string> names;
    for (const RowId r : rows)
        if (r.lot != but) names.push_back(books.ledger.lots[r.lot].name);
    std::sort(names.begin(), names.end());
    return names;
}

void book_out(Books& books, RowId at, int count, FactId fact, const std::vector<RowId>& candidates) {
    Lot& lot = books.ledger.lots[at.lot];
    JarRow& row = lot.jars[at.row];
    row.left -= count;
    row.out += count;
    Going g = going_of(books, fact, {count, row.size, row.comb}, times(row.size, count));
    if (g.how == "spoiled") row.spoiled += count;
    if (g.lot_assumed) g.may_be = other_lots(books, candidates, at.lot);
    lot.goings.push_back(std::move(g));
    add_once(row.because, fact);
}

/// Which lot's jars they were was not said and is not plain: oldest first (common practice, no source).
void warn_which_jars(Books& books, FactId fact, const std::vector<RowId>& rows, int count) {
    const JarRow& row = row_at(books, rows.front());
    const std::string what = jars_words(count, row.size, row.comb);
    Diagnostic& d = say(books, Severity::warning, "which-lot", fact,
                        fmt::format("{} {} without a lot, and {} lots have such", what, done_words(books.fact(fact)), rows.size()));
    d.label = fmt::format("taken from the oldest first, lot {}", books.ledger.lots[rows.front().lot].name);
    d.hint = fmt::format("name the lot, so that they can be called back: 'lot {}'", books.ledger.lots[rows.front().lot].name);
    for (const RowId r : rows) cite_lot(books, d, books.ledger.lots[r.lot], {row_at(books, r).because.front()});
}

/// More went out than there was: the rest is booked on the first row as beyond the books.
void error_too_few(Books& books, FactId fact, const std::vector<RowId>& rows, int count, int there) {
    const JarRow& row = row_at(books, rows.front());
    const std::string of = rows.size() == 1 ? fmt::format("lot {} had", books.ledger.lots[rows.front().lot].name) : "there were";
    Diagnostic& d = say(books, Severity::error, "more-out-than-filled", fact,
                        fmt::format("{} {}, but {} only {} left", jars_words(count, row.size, row.comb), done_words(books.fact(fact)), of, there));
    d.label = fmt::format("{} more than were filled", count - there);
    d.hint = "check the count, the size and the lot; jars there before this journal: 'opening stock 24 x 454 g'";
    for (const RowId r : rows) cite_lot(books, d, books.ledger.lots[r.lot], row_at(books, r).because);
}

void book_beyond(Books& books, RowId at, int count, FactId fact, const std::vector<RowId>& rows) {
    JarRow& row = row_at(books, at);
    row.beyond += count;
    row.left += count;
    book_out(books, at, count, fact, rows);
}

void send_jars(Books& books, FactId fact, const std::vector<RowId>& rows) {
    const int count = books.fact(fact).count;
    std::vector<RowId> there = with_left(books, rows);
    const std::vector<RowId> enough = with_enough(books, there, count);
    if (enough.size() == 1 && there.size() > 1) there = enough;
    if (there.size() > 1) warn_which_jars(books, fact, there, count);
    else if (books.fact(fact).lot.empty() && !there.empty() && books.ledger.lots.size() > 1)
        assume(books, fact, fmt::format("lot {} (not said)", books.ledger.lots[there.front().lot].name));
    int left = count;
    for (const RowId r : there) left -= std::min(left, row_at(books, r).left);
    if (left > 0) error_too_few(books, fact, there.empty() ? rows : there, count, count - left);
    int to_book = count - left;
    for (const RowId r : there) {
        const int part = std::min(to_book, row_at(books, r).left);
        if (part > 0) book_out(books, r, part, fact, there);
        to_book -= part;
    }
    if (left > 0) book_beyond(books, there.empty() ? rows.front() : there.front(), left, fact, there);
}

/// Jars of a size no lot ever had. Booked where the lot is named; else no lot can be held to it.
void none_such(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    const auto size = honey_of(f.value);
    const std::string what = size ? jars_words(f.count, size->value, false) : fmt::format("{} jars", f.count);
    const std::string where = f.lot.empty() ? "no such jars were filled" : fmt::format("lot {} has no such jars", f.lot);
    Diagnostic& d = say(books, Severity::error, "more-out-than-filled", fact, fmt::format("{} {}, but {}", what, done_words(f), where));
    d.label = f.lot.empty() || !size ? "left out of the books" : "booked beyond what was filled";
    d.hint = "note the filling, 'filled 40 x 454 g lot A', or what was there before: 'opening stock 24 x 454 g'";
    const LotId id = f.lot.empty() ? no_lot : find_lot(books, f.lot);
    if (id == no_lot) return;
    cite_lot(books, d, books.ledger.lots[id], books.ledger.lots[id].because);
    if (!size) return;
    JarRow& row = jar_row(books.ledger.lots[id], size->value, false);
    const auto at = static_cast<std::size_t>(&row - books.ledger.lots[id].jars.data());
    book_beyond(books, {id, at}, f.count, fact, {});
}

void jars_out(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (!f.lot.empty() && lot_said(books, fact) == no_lot) return;
    std::vector<RowId> rows = rows_meant(books, f);
    if (rows.empty()) return none_such(books, fact);
    if (settle_size(books, fact, rows)) send_jars(books, fact, rows);
}

/// A weight with no lot having so much in bulk, read as jars: the rows it may come from and how many it makes.
struct AsJars {
    std::vector<RowId> rows;
    int count = 0;
};

bool bulk_has(const Books& books, const Fact& f, Mass honey) {
    const LotId named = f.lot.empty() ? no_lot : find_lot(books, f.lot);
    if (named != no_lot) return books.ledger.lots[named].bulk >= honey;
    return std::any_of(books.ledger.lots.begin(), books.ledger.lots.end(), [&](const Lot& l) { return l.bulk >= honey; });
}

/// Only when there are jars of one size, enough of them, and the weight is a whole number of them.
AsJars as_jars(Books& books, FactId fact, Mass honey) {
    Fact any = books.fact(fact);
    any.value = {};
    if (bulk_has(books, any, honey) || (!any.lot.empty() && find_lot(books, any.lot) == no_lot)) return {};
    const std::vector<RowId> rows = with_left(books, rows_meant(books, any));
    if (rows.empty() || !one_kind(books, rows)) return {};
    const std::int64_t size = row_at(books, rows.front()).size.ng;
    std::int64_t left = 0;
    for (const RowId r : rows) left += row_at(books, r).left;
    if (size <= 0 || honey.ng % size != 0 || honey.ng / size > left) return {};
    return {rows, static_cast<int>(honey.ng / size)};
}

void bulk_out(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    const auto honey = honey_of(f.value);
    if (!honey) return;
    const std::string doing = fmt::format("{} {}", words(books, honey->value), done_words(f));
    const LotId id = lot_for(books, fact, doing, [&](const Lot& l) { return l.bulk >= honey->value; });
    if (id == no_lot) return;
    draw_bulk(books, id, honey->value, fact, doing);
    Lot& lot = books.ledger.lots[id];
    (how_of(f) == "spoiled" ? lot.spoiled : lot.bulk_gone) += honey->value;
    lot.goings.push_back(going_of(books, fact, {}, honey->value));
    add_once(lot.because, fact);
}

void weight_as_jars(Books& books, FactId fact, const AsJars& jars) {
    const JarRow& row = row_at(books, jars.rows.front());
    assume(books, fact, jars_words(jars.count, row.size, row.comb) + " (so much was not left in bulk)");
    int to_book = jars.count;
    for (const RowId r : jars.rows) {
        const int part = std::min(to_book, row_at(books, r).left);
        if (part > 0) book_out(books, r, part, fact, jars.rows);
        to_book -= part;
    }
}

}  // namespace

std::vector<RowId> rows_meant(const Books& books, const Fact& fact) {
    const auto size = honey_of(fact.value);
    const LotId named = fact.lot.empty() ? no_lot : find_lot(books, fact.lot);
    const auto& lots = books.ledger.lots;
    std::vector<RowId> jars, combs;
    for (LotId i = named == no_lot ? 0 : named; i < (named == no_lot ? lots.size() : named + 1); ++i)
        for (std::size_t r = 0; r < lots[i].jars.size(); ++r)
            if (!size || lots[i].jars[r].size == size->value) (lots[i].jars[r].comb ? combs : jars).push_back({i, r});
    // Pieces of comb are meant when they are named so, or when there is nothing else it could be.
    return fact.manner == "comb" || jars.empty() ? combs : jars;
}

bool ask_size(Books& books, FactId fact, const std::vector<RowId>& rows) {
    std::set<std::string> sizes;
    for (const RowId r : rows) {
        const JarRow& row = row_at(books, r);
        sizes.insert(row.comb ? std::string{"pieces of comb"} : jar_text(row.size));
    }
    std::string list;
    for (const std::string& s : sizes) list += (list.empty() ? "" : ", ") + s;
    Diagnostic& d = say(books, Severity::error, "jar-size-unsaid", fact, fmt::format("{} jars of what size?", books.fact(fact).count));
    d.label = "left out of the books";
    d.hint = fmt::format("there are: {}; write for example '{} x 454 g'", list, books.fact(fact).count);
    return false;
}

void go_out(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (f.count > 0) return jars_out(books, fact);
    if (f.count == 0) return;
    const auto honey = honey_of(f.value);
    if (!honey) {
        say(books, Severity::error, "amount-unsaid", fact, "no amount of honey").hint = "write it as '20 kg' or '24 x 454 g'";
        return;
    }
    const AsJars jars = as_jars(books, fact, honey->value);
    if (jars.count > 0) return weight_as_jars(books, fact, jars);
    bulk_out(books, fact);
}

}  // namespace waxtab
