#pragma once
#include <optional>
#include <vector>

#include "ledger/lots.hpp"
#include "ledger/shares.hpp"

namespace waxtab {

/// Books honey from own hives into a lot: shares by hive, harvest lines, takings no longer waiting, feeds and
/// treatments they met. `measured`: the weight said, else what the takings are known or estimated to hold.
/// The weight booked is returned.
MassRange harvest_into(Books& books, LotId lot, FactId fact, const std::vector<std::size_t>& takings,
                       const std::optional<MassRange>& measured);

/// The lot a fact names, opened if new; else a lot named after its day.
LotId lot_to_fill(Books& books, FactId fact);

/// What waits at the end of the journal, as harvest lines and totals.
void book_waiting(Books& books);

}  // namespace waxtab
