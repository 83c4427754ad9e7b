#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "facts/tokens.hpp"

// Amounts said in words: `one-pound jars`, `half a gallon`, `a quart of 2:1`, `12-oz`.
namespace waxtab {

namespace {

struct NumberWord {
    std::string_view word, number;
};

constexpr std::array<NumberWord, 18> words_of_numbers = {{{"a", "1"}, {"another", "1"}, {"an", "1"}, {"one", "1"}, {"two", "2"}, {"three", "3"}, {"four", "4"}, {"five", "5"}, {"six", "6"}, {"seven", "7"},
    {"eight", "8"}, {"nine", "9"}, {"ten", "10"}, {"eleven", "11"}, {"twelve", "12"}, {"twenty", "20"}, {"half", "0.5"}, {"quarter", "0.25"}}};

/// Units of weight and volume only: `a day` and `one degree` are no amounts of anything kept here.
constexpr std::array<std::string_view, 26> unit_words = {"pounder", "pounders", "pound", "pounds", "lb", "lbs", "ounce", "ounces", "oz", "kilo", "kilos", "kg", "gram", "grams", "g",
    "litre", "litres", "liter", "liters", "gallon", "gallons", "quart", "quarts", "pint", "pints", "gal"};

bool is_word(const std::vector<Token>& t, std::size_t i, std::string_view text) { return i < t.size() && t[i].type == Token::Type::word && t[i].text == text; }

bool is_unit(const std::vector<Token>& t, std::size_t i) {
    return i < t.size() && t[i].type == Token::Type::word && std::find(unit_words.begin(), unit_words.end(), t[i].text) != unit_words.end();
}

/// `five days`, `two weeks`; not the `in two weeks` of a plan.
bool is_days(const std::vector<Token>& t, std::size_t i) { return is_word(t, i, "days") || (is_word(t, i, "weeks") && !(i > 1 && is_word(t, i - 2, "in"))); }

/// `8 to 9 frames`: a range.
bool is_range(const std::vector<Token>& t, std::size_t i) {
    static constexpr std::array<std::string_view, 8> counted = {"frames", "frs", "fr", "seams", "cups", "cells", "combs", "qcs"};
    const auto whole = [&](std::size_t k) { return k < t.size() && t[k].type == Token::Type::number && t[k].value.said() && t[k].value.low == t[k].value.high; };
    const bool from = i > 0 && is_word(t, i - 1, "from");
    return !from && whole(i) && is_word(t, i + 1, "to") && whole(i + 2) && t[i + 2].value.amount > t[i].value.amount && i + 3 < t.size() && std::find(counted.begin(), counted.end(), t[i + 3].text) != counted.end();
}

bool is_hyphen(const std::vector<Token>& t, std::size_t i) {
    return i < t.size() && t[i].type == Token::Type::symbol && t[i].text == "-" && !t[i].space_before && !t[i].space_after;
}

/// The number said at `i`, as digits, and how many tokens it takes; 0 when none is.
std::size_t number_at(const std::vector<Token>& t, std::size_t i, std::string& digits) {
    const bool half_article = is_word(t, i, "half") && (is_word(t, i + 1, "a") || is_word(t, i + 1, "an"));
    if (half_article) return digits = "0.5", 2;
    const bool article_half = (is_word(t, i, "a") || is_word(t, i, "one")) && is_word(t, i + 1, "half");
    if (article_half) return digits = "0.5", 2;
    if (t[i].type == Token::Type::number && t[i].value.said() && is_hyphen(t, i + 1)) return digits = t[i].text, 1;
    for (const NumberWord& n : words_of_numbers)
        if (is_word(t, i, n.word)) return digits = n.number, 1;
    return 0;
}

/// `nine tenths`, `three fifths`: the fraction as a percentage, empty where none is said.
std::string fraction_at(const std::vector<Token>& t, std::size_t i) {
    static constexpr std::array<std::string_view, 9> numbers = {"one", "two", "three", "four", "five", "six", "seven", "eight", "nine"};
    const std::size_t part = is_hyphen(t, i + 1) ? i + 2 : i + 1;
    const bool tenths = is_word(t, part, "tenths") || is_word(t, part, "tenth"), fifths = is_word(t, part, "fifths") || is_word(t, part, "fifth");
    for (std::size_t n = 1; n <= numbers.size() && (tenths || fifths); ++n)
        if (is_word(t, i, numbers[n - 1]) && (tenths || n < 5)) return fmt::format("{}%", n * (tenths ? 10 : 20));
    return {};
}

/// `two to one`, `1 to 1`: sugar to water.
bool is_ratio(const std::vector<Token>& t, std::size_t i) {
    const auto says = [&](std::size_t k, std::string_view word, std::string_view digit) {
        return is_word(t, k, word) || (k < t.size() && t[k].type == Token::Type::number && t[k].text == digit);
    };
    return (says(i, "one", "1") || says(i, "two", "2")) && is_word(t, i + 1, "to") && says(i + 2, "one", "1");
}

/// A word of `list` at `i`: its place in it counted from 1, 0 when it is none.
template <std::size_t n> int place_in(const std::array<std::string_view, n>& list, const std::vector<Token>& t, std::size_t i) {
    for (std::size_t k = 0; k < n; ++k)
        if (is_word(t, i, list[k])) return static_cast<int>(k) + 1;
    return 0;
}

constexpr std::array<std::string_view, 9> ones = {"one", "two", "three", "four", "five", "six", "seven", "eight", "nine"};

/// `forty-eight`, `twenty four`, `thirty`, `eighteen`: from thirteen to ninety-nine; 0 tokens when it is none.
std::size_t tens_and_ones(const std::vector<Token>& t, std::size_t i, int& number) {
    static constexpr std::array<std::string_view, 7> teens = {"thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"};
    static constexpr std::array<std::string_view, 8> tens = {"twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"};
    if (const int teen = place_in(teens, t, i); teen > 0) return number = teen + 12, 1;
    const int ten = place_in(tens, t, i);
    if (ten == 0) return 0;
    const std::size_t second = is_hyphen(t, i + 1) ? i + 2 : i + 1;
    const int one = place_in(ones, t, second);
    number = (ten + 1) * 10 + one;
    return one > 0 ? second - i + 1 : 1;
}

/// `three hundred`, `a hundred and twenty`, `forty-eight`: the number, and how many tokens it takes; 0 when none is said.
std::size_t compound_number(const std::vector<Token>& t, std::size_t i, std::string& digits) {
    int number = 0;
    const int hundreds = is_word(t, i + 1, "hundred") ? (is_word(t, i, "a") ? 1 : place_in(ones, t, i)) : 0;
    std::size_t used = tens_and_ones(t, i + (hundreds > 0 ? (is_word(t, i + 2, "and") ? 3 : 2) : 0), number);
    if (hundreds > 0) used += used > 0 && is_word(t, i + 2, "and") ? 3 : 2;
    if (used > 0) digits = std::to_string(hundreds * 100 + number);
    return used;
}

/// `and a half` at `i`.
bool and_a_half(const std::vector<Token>& t, std::size_t i) { return is_word(t, i, "and") && is_word(t, i + 1, "a") && is_word(t, i + 2, "half"); }

}  // namespace

std::vector<Token> with_and_without(const std::vector<Token>& tokens) {
    std::vector<Token> out;
    const auto slash = [&](std::size_t i) { return i < tokens.size() && tokens[i].type == Token::Type::symbol && tokens[i].text == "/" && !tokens[i].space_before; };
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        out.push_back(tokens[i]);
        const bool point = i + 1 < tokens.size() && tokens[i + 1].type == Token::Type::symbol && tokens[i + 1].text == ".";
        if (is_word(tokens, i, "alc") && point && is_word(tokens, i + 2, "wash")) out.back().space_after = true, ++i;   // alc. wash
        // w. 3 frames
        const bool dot = is_word(tokens, i, "w") && i + 2 < tokens.size() && tokens[i + 1].type == Token::Type::symbol && tokens[i + 1].text == "." && !tokens[i + 1].space_before && tokens[i + 2].type != Token::Type::symbol && tokens[i + 2].type != Token::Type::word;
        if (!is_word(tokens, i, "w") || !(slash(i + 1) || dot)) continue;
        const bool without = is_word(tokens, i + 2, "o") && !tokens[i + 1].space_after;
        const Token& last = tokens[without ? i + 2 : i + 1];
        out.back().text = without ? "without" : "with";
        out.back().end = last.end, out.back().space_after = true;
        i += without ? 2 : 1;
    }
    return out;
}

std::vector<Token> named_after_a_comma(const std::vector<Token>& tokens) {
    std::vector<Token> out;
    const auto comma = [&](std::size_t i) { return i < tokens.size() && tokens[i].type == Token::Type::symbol && tokens[i].text == ","; };
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        const bool short_name = i + 1 < tokens.size() && tokens[i + 1].type == Token::Type::word && tokens[i + 1].text.size() <= 4 && tokens[i + 1].text.find_first_of("0123456789") != std::string::npos;
        const bool made = i > 1 && is_word(tokens, i - 1, "nuc") && (is_word(tokens, i - 2, "a") || is_word(tokens, i - 2, "up") || is_word(tokens, i - 2, "made"));
        if (comma(i) && made && short_name && (i + 2 >= tokens.size() || comma(i + 2) || tokens[i + 2].text == ".")) continue;
        out.push_back(tokens[i]);
    }
    return out;
}

std::vector<Token> amounts_in_words(const std::vector<Token>& tokens) {
    std::vector<Token> out;
    const auto put = [&](const std::string& digits, std::size_t first, std::size_t last) {
        Token merged = tokenise(digits, 0).front();
        merged.begin = tokens[first].begin, merged.end = tokens[last].end;
        merged.space_before = tokens[first].space_before, merged.space_after = tokens[last].space_after;
        out.push_back(std::move(merged));
    };
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        if (is_ratio(tokens, i)) {
            put(is_word(tokens, i, "two") || tokens[i].text == "2" ? "2:1" : "1:1", i, i + 2);
            i += 2;
            continue;
        }
        if (const std::string fraction = fraction_at(tokens, i); !fraction.empty()) {
            const std::size_t last = is_hyphen(tokens, i + 1) ? i + 2 : i + 1;
            put(fraction, i, last);
            i = last;
            continue;
        }
        // 52f
        const bool degrees = tokens[i].type == Token::Type::number && tokens[i].value.said() && !tokens[i].space_after && is_word(tokens, i + 1, "f") && tokens[i].value.amount >= 25'000 && tokens[i].value.amount <= 125'000;
        if (degrees) {
            put(tokens[i].text + "F", i, i + 1);
            i += 1;
            continue;
        }
        if (is_range(tokens, i)) {
            put(tokens[i].text + '-' + tokens[i + 2].text, i, i + 2);
            i += 2;
            continue;
        }
        std::string digits;
        std::size_t used = compound_number(tokens, i, digits);
        if (used > 0 && (is_word(tokens, i + used, "degrees") || is_word(tokens, i + used, "deg"))) {
            put(digits + " degrees", i, i + used);
            i += used;
            continue;
        }
        // fourteen and a half kilos, three and a half frames
        std::string ones_said;
        const std::size_t counted = used > 0 ? used : number_at(tokens, i, ones_said);
        const std::string whole = used > 0 ? digits : ones_said;
        if (counted > 0 && !is_word(tokens, i, "a") && whole.find('.') == std::string::npos && and_a_half(tokens, i + counted)) {
            const std::size_t last = i + counted + 2;
            const bool unit = is_unit(tokens, last + 1);
            put(whole + ".5" + (unit ? " " + tokens[last + 1].text : ""), i, unit ? last + 1 : last);
            i = unit ? last + 1 : last;
            continue;
        }
        if (used > 0 && !is_unit(tokens, i + used)) {
            put(digits, i, i + used - 1);
            i += used - 1;
            continue;
        }
        if (used == 0) used = number_at(tokens, i, digits);
        const bool bare = used == 0 && is_unit(tokens, i) && is_word(tokens, i + 1, "of") && (i == 0 || tokens[i - 1].type == Token::Type::symbol);
        if (bare) digits = "1";   // pint of thin syrup
        // 2 more quarts
        if (used == 0 && tokens[i].type == Token::Type::number && tokens[i].value.said() && is_word(tokens, i + 1, "more") && is_unit(tokens, i + 2)) digits = tokens[i].text, used = 2;
        const std::size_t unit = used && is_hyphen(tokens, i + used) ? i + used + 1 : i + used;
        const bool days = used == 1 && is_days(tokens, unit) && digits.find('.') == std::string::npos && tokens[i].text != "a" && tokens[i].text != "another";   // over five days
        if ((used == 0 && !bare) || !(is_unit(tokens, unit) || days)) {
            out.push_back(tokens[i]);
            continue;
        }
        const bool half_more = is_unit(tokens, unit) && digits.find('.') == std::string::npos && and_a_half(tokens, unit + 1);   // a litre and a half
        put(digits + (half_more ? ".5 " : " ") + (tokens[unit].text.starts_with("pounder") ? "lb" : tokens[unit].text), i, half_more ? unit + 3 : unit);
        i = half_more ? unit + 3 : unit;
    }
    return out;
}

}  // namespace waxtab
