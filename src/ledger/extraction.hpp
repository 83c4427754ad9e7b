#pragma once
#include "ledger/books.hpp"

namespace waxtab {

/// `extracted`: takes waiting honey into a lot and shares the lot's weight among its hives.
void extract(Books& books, FactId fact);
/// `combs_packed`: sections or cut comb, by count and weight, into a lot.
void pack_combs(Books& books, FactId fact);
/// `opening_stock` and `bought_in`: honey that was not harvested in this journal.
void open_stock(Books& books, FactId fact);
void buy_in(Books& books, FactId fact);

}  // namespace waxtab
