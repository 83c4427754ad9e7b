#pragma once
#include "ledger/lots.hpp"

namespace waxtab {

/// `blended`: bulk of several lots into one. All the bulk there is, or, when a weight is said, so much in
/// proportion to the bulk of each.
void blend(Books& books, FactId fact);

/// `moisture` and `honey_index` of a lot; a reading of a box is no business of the ledger.
void read_water(Books& books, FactId fact);

/// Water of a blend by mass balance: what was there with its own water, and the parts going in. A part whose
/// water was never read may lie anywhere in the refractometer table (13 to 25 %). Nothing when no part is known.
struct WetPart {
    Mass honey;
    std::optional<Water> water;
};
std::optional<Water> balance_of(const std::vector<WetPart>& parts);

/// `drained`, `bulk_moved`, `wax`, `best_before`, `fermenting`: notes about a lot.
void drain(Books& books, FactId fact);
void move_bulk(Books& books, FactId fact);
void gather_wax(Books& books, FactId fact);
void date_lot(Books& books, FactId fact);
void mark_fermenting(Books& books, FactId fact);

}  // namespace waxtab
