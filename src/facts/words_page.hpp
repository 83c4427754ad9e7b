#pragma once
#include <string>
#include <string_view>

namespace waxtab {

/// The notation on two printed pages at most (80 columns, 120 lines), made from the tables of words and readings.
std::string words_page();

/// What one word means: its trade term, the other ways of writing it, and the ways of saying something
/// with it, with examples. For a word nobody knows: the nearest known one, or a pointer to the page.
std::string explain_word(std::string_view word);

/// True when `explain_word` has something to explain.
bool knows_word(std::string_view word);

}  // namespace waxtab
