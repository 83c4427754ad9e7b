#pragma once
#include <string>

#include "report/style.hpp"

namespace waxtab {

/// Every understood fact on one dated line of its own, itself valid notation, in order of effect; behind `#`
/// where it was written and what was assumed. The set-up lines come first, unless the selection leaves
/// something out. Facts noted or happening after `on` are left out. Lines are never broken.
std::string lines_text(const Journal& journal, Day on, const Selection& selection, const Style& style);

/// The facts as JSON Lines, one object a fact; the names are those of `fields_of`. The first ten are always
/// there, null where there is nothing; the others only where there is something. `at` is left out without refs.
std::string lines_json(const Journal& journal, Day on, const Selection& selection, const Style& style);

/// The facts as comma-separated values after RFC 4180, a head line first, CR LF line ends. Words that a
/// spreadsheet would take for a formula have a `'` before them.
std::string lines_csv(const Journal& journal, Day on, const Selection& selection, const Style& style);

/// Each line as written and under it what was understood from it: facts, remarks, to-dos, and words put out of
/// force. With a selection only lines that gave a listed fact. File names and line numbers are part of it.
std::string read_back(const Journal& journal, Day on, const Selection& selection, const Style& style);

/// The facts that `lines` lists, in order.
std::vector<FactId> listed_facts(const Journal& journal, Day on, const Selection& selection);

}  // namespace waxtab
