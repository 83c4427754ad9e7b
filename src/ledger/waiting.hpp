#pragma once
#include <cstddef>
#include <string>
#include <vector>

#include "ledger/books.hpp"
#include "ledger/shares.hpp"

namespace waxtab {

/// The honey of a taking as known from what was noted by `cutoff`: weighed before and after (net), else gross
/// less the usual weight of the empty box, else the estimate made when it came off.
MassRange known_honey(const Books& books, std::size_t taking, Day cutoff);

/// The waiting takings an extraction or packing on `fact` takes: off by then, not gone back, of the hives the
/// fact lists, else of its yard when any wait there, else all. Combs meant to be cut or sold whole only when
/// `combs`, others only when not. What came off earlier but was written down after the fact was noted is left
/// waiting, with a warning.
std::vector<std::size_t> takings_for(Books& books, FactId fact, bool combs);

/// One claim a hive, in order of the hives' first takings; marks nothing.
std::vector<Claim> claims_of(const Books& books, const std::vector<std::size_t>& takings, Day cutoff);

/// The yard the hive stood in when the taking came off.
YardId yard_of(const Books& books, const Taking& taking);

/// Hives named by a fact: its list, or its one hive.
std::vector<HiveId> hives_said(const Fact& fact);

}  // namespace waxtab
