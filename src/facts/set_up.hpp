#pragma once
#include <string>
#include <vector>

#include "facts/journal.hpp"
#include "facts/lexicon.hpp"
#include "facts/tokens.hpp"

namespace waxtab {

/// Is this line, by its first words, a set-up line? `before_headings`: no day heading stands above it in
/// its file, where `hive 3: ...` and `shed: ...` declare rather than report.
bool is_set_up(const std::vector<Token>& tokens, bool before_headings);

/// Takes a set-up line into the journal; what is wrong with it goes to `journal.diagnostics`.
/// `text` is the file's text. Returns the facts it brings (what is in the shed).
std::vector<Fact> read_set_up(const std::vector<Token>& tokens, std::string_view text, Span span, Journal& journal, Lexicon& lexicon);

/// Box kinds of the handbook, as journals start with.
std::vector<BoxKind> handbook_box_kinds();

/// After all files: hives whose yard was never declared, the default kinds resolved.
void finish_set_up(Journal& journal);

}  // namespace waxtab
