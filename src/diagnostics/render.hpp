#pragma once
#include <string>

#include "diagnostics/diagnostic.hpp"
#include "text/source.hpp"

namespace waxtab {

/// `error`, `warning` or `note`.
std::string_view name_of(Severity severity);

/// A diagnostic as compilers print it: `file:line:column: error: title [code]`, the line it is about with
/// the span underlined, the hint, and other lines it speaks of as notes. Columns count characters. Control
/// characters of the journal are shown, not sent. Escape sequences for colour only when `colour`.
std::string render(const Sources& sources, const Diagnostic& diagnostic, bool colour);

/// The same as one JSON object without a line end: `file`, `line`, `column`, `end_column` (of the same line),
/// `severity`, `code`, `title`, `hint`, `related`.
std::string render_json(const Sources& sources, const Diagnostic& diagnostic);

/// In order of file, line and column; what belongs to no file first. Repetitions of the same span, code and
/// title are dropped.
void sort_for_reading(Diagnostics& diagnostics);

/// How many are errors, and how many warnings.
struct Tally {
    int errors = 0;
    int warnings = 0;
};
Tally tally(const Diagnostics& diagnostics);

}  // namespace waxtab
