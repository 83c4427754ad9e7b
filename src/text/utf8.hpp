#pragma once
#include <string>
#include <string_view>

namespace waxtab {

/// Offset of the first byte that is not valid UTF-8 (RFC 3629), or npos.
std::size_t first_invalid_utf8(std::string_view text);
/// Number of code points; bytes that are not UTF-8 count one each.
std::size_t count_characters(std::string_view text);
/// Columns the text takes on a terminal: wide East Asian characters and emoji 2, combining marks 0.
std::size_t display_width(std::string_view text);
/// The text with every control character (C0, C1, DEL, bidirectional overrides) and every invalid byte
/// shown as `?`-free visible notation `\xNN` or `\u{NNNN}`, safe to print on a terminal.
std::string printable(std::string_view text);
/// Decodes the code point at `text[at]` and moves `at` past it; an invalid byte gives U+FFFD.
char32_t next_character(std::string_view text, std::size_t& at);
/// Appends `c` as UTF-8.
void append_utf8(std::string& out, char32_t c);

}  // namespace waxtab
