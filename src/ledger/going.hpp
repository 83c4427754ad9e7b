#pragma once
#include <string_view>
#include <vector>

#include "ledger/jars.hpp"

namespace waxtab {

/// One row of jars in a lot.
struct RowId {
    LotId lot = no_lot;
    std::size_t row = 0;
};

/// Rows a fact can speak of: of its lot if named, of its size if said (volume by density of unknown honey);
/// comb when it says so or there are no such jars; oldest lot first.
std::vector<RowId> rows_meant(const Books& books, const Fact& fact);
inline JarRow& row_at(Books& books, RowId id) { return books.ledger.lots[id.lot].jars[id.row]; }

/// `gone_out`: jars or bulk sold, given, used or spoiled.
void go_out(Books& books, FactId fact);
/// `come_back`: jars or bulk that went out and are here again.
void come_back(Books& books, FactId fact);
/// `stocktake`: what is there against what the books say; the difference is booked and reported.
void take_stock(Books& books, FactId fact);

/// An error for a number of jars whose size is not said and not plain. Always false.
bool ask_size(Books& books, FactId fact, const std::vector<RowId>& rows);

}  // namespace waxtab
