#include <algorithm>
#include <array>

#include "facts/tokens.hpp"

// Amounts said in words: `one-pound jars`, `half a gallon`, `a quart of 2:1`, `12-oz`.
namespace waxtab {

namespace {

struct NumberWord {
    std::string_view word, number;
};

constexpr std::array<NumberWord, 9> number_words = {{{"a", "1"}, {"another", "1"}, {"an", "1"}, {"one", "1"}, {"two", "2"}, {"three", "3"}, {"five", "5"}, {"half", "0.5"}, {"quarter", "0.25"}}};

/// Units of weight and volume only: `a day` and `one degree` are no amounts of anything kept here.
constexpr std::array<std::string_view, 24> unit_words = {"pound", "pounds", "lb", "lbs", "ounce", "ounces", "oz", "kilo", "kilos", "kg", "gram", "grams", "g",
    "litre", "litres", "liter", "liters", "gallon", "gallons", "quart", "quarts", "pint", "pints", "gal"};

bool is_word(const std::vector<Token>& t, std::size_t i, std::string_view text) { return i < t.size() && t[i].type == Token::Type::word && t[i].text == text; }

bool is_unit(const std::vector<Token>& t, std::size_t i) {
    return i < t.size() && t[i].type == Token::Type::word && std::find(unit_words.begin(), unit_words.end(), t[i].text) != unit_words.end();
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
    for (const NumberWord& n : number_words)
        if (is_word(t, i, n.word)) return digits = n.number, 1;
    return 0;
}

/// `two to one`, `1 to 1`: sugar to water.
bool is_ratio(const std::vector<Token>& t, std::size_t i) {
    const auto says = [&](std::size_t k, std::string_view word, std::string_view digit) {
        return is_word(t, k, word) || (k < t.size() && t[k].type == Token::Type::number && t[k].text == digit);
    };
    return (says(i, "one", "1") || says(i, "two", "2")) && is_word(t, i + 1, "to") && says(i + 2, "one", "1");
}

}  // namespace

std::vector<Token> amounts_in_words(const std::vector<Token>& tokens) {
    std::vector<Token> out;
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        if (is_ratio(tokens, i)) {
            Token ratio = tokenise(is_word(tokens, i, "two") || tokens[i].text == "2" ? "2:1" : "1:1", 0).front();
            ratio.begin = tokens[i].begin, ratio.end = tokens[i + 2].end;
            ratio.space_before = tokens[i].space_before, ratio.space_after = tokens[i + 2].space_after;
            out.push_back(std::move(ratio));
            i += 2;
            continue;
        }
        std::string digits;
        std::size_t used = number_at(tokens, i, digits);
        const bool bare = used == 0 && is_unit(tokens, i) && is_word(tokens, i + 1, "of") && (i == 0 || tokens[i - 1].type == Token::Type::symbol);
        if (bare) digits = "1";   // pint of thin syrup
        // 2 more quarts
        if (used == 0 && tokens[i].type == Token::Type::number && tokens[i].value.said() && is_word(tokens, i + 1, "more") && is_unit(tokens, i + 2)) digits = tokens[i].text, used = 2;
        const std::size_t unit = used && is_hyphen(tokens, i + used) ? i + used + 1 : i + used;
        if ((used == 0 && !bare) || !is_unit(tokens, unit)) {
            out.push_back(tokens[i]);
            continue;
        }
        std::vector<Token> amount = tokenise(digits + ' ' + tokens[unit].text, 0);
        Token merged = amount.front();
        merged.begin = tokens[i].begin, merged.end = tokens[unit].end;
        merged.space_before = tokens[i].space_before, merged.space_after = tokens[unit].space_after;
        out.push_back(std::move(merged));
        i = unit;
    }
    return out;
}

}  // namespace waxtab
