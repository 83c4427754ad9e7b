#pragma once
#include <cstddef>
#include <string>
#include <vector>

#include "ledger/books.hpp"
#include "ledger/shares.hpp"

namespace waxtab {

/// The waiting takings an extraction or packing on `fact` takes: off by then, not gone back, of the hives the
/// fact lists, else of its yard when any wait there, else all. Combs meant to be cut or sold whole only when
/// `combs`, others only when not. What came off earlier but was written down after the fact was noted is left
/// waiting, with a warning.
std::vector<std::size_t> takings_for(Books& books, FactId fact, bool combs);

/// What each hive brought to an extraction, as known when the extraction was noted: weighed before and after
/// (net), else gross less the usual weight of the empty box, else the estimate of the day it came off. In order
/// of the hives' first takings.
std::vector<Claim> claims_for(Books& books, const std::vector<std::size_t>& takings, FactId fact);

/// What each hive has waiting, as known now.
std::vector<Claim> claims_now(const Books& books, const std::vector<std::size_t>& takings);

/// The yard the hive stood in when the taking came off.
YardId yard_of(const Books& books, const Taking& taking);

/// Hives named by a fact, each once: its list, or its one hive.
std::vector<HiveId> hives_said(const Fact& fact);

}  // namespace waxtab
