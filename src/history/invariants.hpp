#pragma once
#include <string>
#include <vector>

#include "history/history.hpp"

namespace waxtab {

/// What must hold of every history, whatever the journal says: a box stands on at most one hive and its open
/// stay agrees with that hive's stack, days run forward, boxes are neither lost nor doubled, weights close.
/// One sentence for each breach; empty when all is well.
std::vector<std::string> broken_invariants(const Journal& journal, const History& history);

}  // namespace waxtab
