#pragma once
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/quantity.hpp"

namespace waxtab {

/// The smallest things a line is made of.
struct Token {
    enum class Type : std::uint8_t {
        word,      ///< letters and digits, starting with a letter; `text` in lower case
        number,    ///< a bare number or range; `value` of dimension count
        quantity,  ///< a number with a unit
        degrees,   ///< a temperature whose scale was not said
        gallons,   ///< gallons, US or imperial not said; likewise pints
        slash,     ///< n/m: a fraction, a date or a sample
        ratio,     ///< 1:1
        ordinal,   ///< 2nd
        date,      ///< an ISO date
        time,      ///< 17:30
        quoted,    ///< "words", `text` without the quotes
        symbol,    ///< one character of punctuation, or `->`
    };
    Type type = Type::symbol;
    std::uint32_t begin = 0, end = 0;   ///< bytes of the source file
    std::string text;
    std::string raw;                    ///< as written, where that differs from `text`
    Measure value;
    int n = 0, m = 0;                   ///< slash, ratio: the two numbers; ordinal: n; time: hour and minute
    bool space_before = false, space_after = false;
    bool glued_comma = false;           ///< the number was written with a decimal comma
};

/// Tokens of one line. `offset` is the byte offset of the line in its file.
std::vector<Token> tokenise(std::string_view line, std::uint32_t offset);

/// Lower case for ASCII and the Latin, Greek and Cyrillic letters that have a simple one.
std::string lower(std::string_view text);

/// `w/` and `w/o` as the words they stand for, `alc. wash` without its point.
std::vector<Token> with_and_without(const std::vector<Token>& tokens);

/// `made up a nuc, n1, with the old queen` without the comma before the name.
std::vector<Token> named_after_a_comma(const std::vector<Token>& tokens);

/// Amounts said with a word or a hyphen as one token each: `one-pound`, `half a gallon`, `a quart`, `12-oz`.
std::vector<Token> amounts_in_words(const std::vector<Token>& tokens);

}  // namespace waxtab
