#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace waxtab {

/// Columns a line of any report may take.
inline constexpr std::size_t page_width = 80;

/// `text` with blanks after it to `width` columns; longer text is left as it is.
std::string pad_right(std::string_view text, std::size_t width);
/// `text` with blanks before it to `width` columns; longer text is left as it is.
std::string pad_left(std::string_view text, std::size_t width);

/// Bytes of the longest beginning of `text` that takes at most `width` columns; whole characters.
std::size_t bytes_within(std::string_view text, std::size_t width);

/// `text` broken at blanks into lines of at most `width` columns, without line ends or indents.
/// A word that is longer than a line is cut. Never empty: no text gives one empty line.
std::vector<std::string> wrap(std::string_view text, std::size_t width);

/// A paragraph with line ends: the first line after `first`, the others after `rest`, both part of the width.
std::string paragraph(std::string_view text, std::string_view first, std::string_view rest,
                      std::size_t width = page_width);

/// `a, b and c`.
std::string listed(const std::vector<std::string>& items);

/// Tabs as blanks up to the next of the tab stops, which stand every 4 columns from column `from`.
std::string expand_tabs(std::string_view text, std::size_t from = 0);

}  // namespace waxtab
