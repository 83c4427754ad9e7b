#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "text/span.hpp"

namespace waxtab {

enum class Severity { error, warning, note };

/// Another place in the journal that a diagnostic speaks of, such as the earlier line it contradicts.
struct Related {
    Span span;
    std::string text;
};

/// One thing wrong, or doubtful, in a journal. A value: rendering is someone else's business.
struct Diagnostic {
    /// Stable name from the catalogue, such as `unknown-hive`.
    std::string_view code;
    Severity severity = Severity::error;
    Span span;
    /// What is wrong, lower case, no full stop, quoting what was written in '...'.
    std::string title;
    /// What is wrong just here, for under the caret; may be empty.
    std::string label;
    /// What to write or do instead; may be empty.
    std::string hint;
    std::vector<Related> related;
};

using Diagnostics = std::vector<Diagnostic>;

}  // namespace waxtab
