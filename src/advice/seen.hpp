#pragma once
#include <initializer_list>
#include <string_view>

#include "facts/fact.hpp"
#include "history/history.hpp"

namespace waxtab {

/// A fact with its index and the day it happened.
struct Seen {
    FactId fact = set_up_fact;
    Day day{};
    const Fact* it = nullptr;
};

/// Looks back over so many days: however long ago.
constexpr int all_days = 100000;

inline bool is_one_of(std::string_view word, std::initializer_list<std::string_view> words) {
    for (std::string_view w : words)
        if (w == word) return true;
    return false;
}

/// True when `text` holds `word`, capitals ignored; `word` is lower case.
bool mentions(std::string_view text, std::string_view word);

}  // namespace waxtab
