#pragma once
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "report/style.hpp"

namespace waxtab {

/// A decimal number as text, exact: `17.8`.
struct Number {
    std::string text;
};

/// One named value of a fact for machines: nothing, words, a number or a list of words.
struct Field {
    std::string_view name;
    std::variant<std::monostate, std::string, Number, std::vector<std::string>> value;

    bool empty() const { return value.index() == 0; }
};

/// A fact as named values, always the same names in the same order:
/// date, noted, time, yard, hive, kind, box, value, unit, at, then what the kind adds. Shares are in percent,
/// masses in kilograms (pounds when the style says so), volumes in litres, temperatures in Celsius. `value` is
/// the amount the fact is about, the count where it has no amount. `at` is empty without refs.
std::vector<Field> fields_of(const Journal& journal, const Fact& fact, const Style& style);

/// The words of a box choice: `top`, `super 2`, `B4`, `all`; empty when no box was named.
std::string words_of(const BoxChoice& box);

/// `over`, `under`, `between`; empty when unsaid.
std::string_view placing_text(Placing placing);

}  // namespace waxtab
