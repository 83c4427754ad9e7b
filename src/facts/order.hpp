#pragma once
#include <vector>

#include "facts/journal.hpp"
#include "facts/line_reader.hpp"

namespace waxtab {

/// Puts facts in order of effect (day happened, time, file, line), spreads what was said of several
/// hives or of all living hives of a yard, leaves out copies of events in other files, and fills
/// `journal.facts`.
void put_in_order(Journal& journal, std::vector<RawFact> raw);

}  // namespace waxtab
