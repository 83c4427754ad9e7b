#pragma once
#include <optional>
#include <string>
#include <vector>

#include "diagnostics/diagnostic.hpp"
#include "facts/lexicon.hpp"
#include "facts/settings.hpp"
#include "facts/tokens.hpp"

namespace waxtab {

/// The date at the start of a line and what stands beside it.
struct DateStart {
    bool is_date = false;         ///< the line begins with a date, good or bad
    std::optional<Day> day;       ///< unset when the date is bad; `diagnostics` says why
    bool year_assumed = false;
    int minute = -1;
    YardId yard = no_yard;
    std::size_t used = 0;         ///< tokens of the date, weekday, time and yard
    Diagnostics diagnostics;
};

/// Reads a date (ISO, `3 June 2026`, `June 3, 2026`, `3 June`, with weekday, time, yard) at the start of
/// the tokens. `year` is that of the heading before or of the set-up, 0 when there is none.
DateStart read_date_start(const std::vector<Token>& tokens, const Lexicon& lexicon, const Settings& settings, int year, std::uint32_t file);

/// Month number of a month's name or three-letter form, 0 for other words.
unsigned month_number(std::string_view lower_word);

/// `10 may have swarmed`, `4 may be light`: a `may` that is no month, by the word after it. Either may be null.
bool no_month(const Token* may, const Token* next);

}  // namespace waxtab
