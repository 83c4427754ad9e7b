#pragma once
#include "ledger/lots.hpp"

namespace waxtab {

/// Jars or pieces of comb of one size.
struct Jarful {
    int count = 0;
    Mass size;
    bool comb = false;
};

/// The lot's row of this size, opened if need be.
JarRow& jar_row(Lot& lot, Mass size, bool comb);
/// Moves honey that is in bulk into jars, as far as the books have it (see draw_bulk).
void put_in_jars(Books& books, LotId lot, FactId fact, const Jarful& jars);
/// `jars`: fills jars from a lot.
void fill_jars(Books& books, FactId fact);

}  // namespace waxtab
