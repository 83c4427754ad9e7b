#include "facts/itemiser.hpp"

#include <algorithm>

#include "facts/headings.hpp"

// Days said within a line: dates, weekdays, yesterday, ten days ago.
namespace waxtab {

using What = Item::What;

namespace {

/// Day of the week of a name (0 is Sunday) that is no other word, -1 for other words.
int weekday_of(std::string_view word) {
    static constexpr std::pair<std::string_view, int> names[] = {{"sunday", 0}, {"monday", 1}, {"mon", 1}, {"tuesday", 2}, {"tues", 2}, {"tue", 2},
        {"wednesday", 3}, {"weds", 3}, {"wed", 3}, {"thursday", 4}, {"thurs", 4}, {"thu", 4}, {"friday", 5}, {"fri", 5}, {"saturday", 6}, {"sat", 6}};
    for (const auto& [name, day] : names)
        if (name == word) return day;
    return -1;
}

/// The two numbers of `8-15`; noughts for anything else.
std::pair<unsigned, unsigned> dashed(const Token& t) {
    if (t.type != Token::Type::number) return {};
    const std::size_t dash = t.text.find('-');
    if (dash == t.text.npos) return {};
    const auto digits = [](std::string_view s) { return !s.empty() && s.size() < 3 && s.find_first_not_of("0123456789") == s.npos; };
    const std::string first = t.text.substr(0, dash), second = t.text.substr(dash + 1);
    if (!digits(first) || !digits(second)) return {};
    return {static_cast<unsigned>(std::stoi(first)), static_cast<unsigned>(std::stoi(second))};
}

/// The latest such day not after `noted`.
std::optional<Day> latest(unsigned day, unsigned month, Day noted) {
    const date::year_month_day now{noted};
    for (int back = 0; back < 5; ++back) {
        const date::year_month_day d{now.year() - date::years{back}, date::month{month}, date::day{day}};
        if (d.ok() && Day{d} <= noted) return Day{d};
    }
    return {};
}

std::optional<Day> latest_of_month(unsigned day, Day noted) {
    date::year_month_day d{noted};
    for (int back = 0; back < 3; ++back) {
        const date::year_month_day try_day{d.year(), d.month(), date::day{day}};
        if (try_day.ok() && Day{try_day} <= noted) return Day{try_day};
        d = d.year() / d.month() / date::day{1};
        d = date::year_month_day{d - date::months{1}};
    }
    return {};
}

/// The first such day after `noted`.
std::optional<Day> soonest(unsigned day, unsigned month, Day noted) {
    const date::year_month_day now{noted};
    for (int on = 0; on < 5; ++on) {
        const date::year_month_day d{now.year() + date::years{on}, date::month{month}, date::day{day}};
        if (d.ok() && Day{d} > noted) return Day{d};
    }
    return {};
}

}  // namespace

/// `Sat: super on. Sun: half full`: a day, and no sun.
bool Itemiser::sunday_among_days() const {
    if (!word(0, "sun") || !symbol(1, ":")) return false;
    for (std::size_t i = 0; i + 1 < tokens_.size(); ++i)
        if (tokens_[i].type == Token::Type::word && weekday_of(tokens_[i].text) > 0 && tokens_[i + 1].text == ":") return true;
    return false;
}

/// `on 2026-06-12`, `on the 12th`, `12 June`, `June 12`, `since the 5th`, `14/5`, `yesterday`, `3 days ago`.
bool Itemiser::day() {
    std::size_t next = 0;
    bool since = false;
    if (word(0, "on") || word(0, "at")) next = 1;
    else if (word(0, "since") || word(0, "from")) next = 1, since = word(0, "since");
    else if (word(0, "by") || word(0, "until") || word(0, "till")) next = 1;
    std::size_t due_words = 0;
    if (word(0, "due")) due_words = next = 1 + (word(1, "out") ? 1u : 0u) + (word(2, "by") || word(2, "on") ? 1u : 0u);
    const bool due = due_words > 0 || (next == 1 && (word(0, "by") || word(0, "until") || word(0, "till")));
    const auto near = [&](unsigned day_number, unsigned month_of_year) { return due ? soonest(day_number, month_of_year, context_.noted) : latest(day_number, month_of_year, context_.noted); };
    const auto in_order = [&](unsigned first, unsigned second) {
        const bool dm = context_.settings->date_order == DateOrder::day_month;
        return near(dm ? first : second, dm ? second : first);
    };
    const bool after_preposition = next > 0;
    // super on 2 weeks ago: the on is of the super
    if (after_preposition && due_words == 0 && token(next) && token(next)->type == Token::Type::quantity) return false;
    if (word(next, "the")) ++next;
    const Token* t = token(next);
    if (!t) return false;
    std::optional<Day> found;
    std::size_t length = 0;
    const Day noted = context_.noted;
    const auto month_word = [&](std::size_t i) { const Token* m = token(i); return m && m->type == Token::Type::word ? month_number(m->text) : 0u; };
    const auto small = [&](std::size_t i) -> unsigned {
        const Token* n = token(i);
        if (!n || (n->type != Token::Type::ordinal && n->type != Token::Type::number)) return 0;
        const auto v = n->type == Token::Type::ordinal ? n->n : static_cast<int>(n->value.amount / 1000);
        return v >= 1 && v <= 31 && (n->type == Token::Type::ordinal || n->value.amount % 1000 == 0) ? static_cast<unsigned>(v) : 0;
    };
    // the year of 17/10/2026, 17/10/26
    const auto year_number = [&](std::size_t i) {
        const Token* y = token(i);
        const bool whole = y && y->type == Token::Type::number && y->value.amount % 1000 == 0 && y->text.find_first_not_of("0123456789") == std::string::npos;
        const int n = whole ? static_cast<int>(y->value.amount / 1000) : 0;
        const bool short_form = whole && y->text.size() == 2 && symbol(i - 1, "/");
        return short_form ? 2000 + n : n >= 1990 && n <= 2100 ? n : 0;
    };
    if (t->type == Token::Type::date) found = day_from_iso(t->text), length = 1;
    else if (small(next) && month_word(next + 1) && !no_month(token(next + 1), token(next + 2))) found = near(small(next), month_word(next + 1)), length = 2;
    else if (month_word(next) && small(next + 1) && (t->text != "may" || after_preposition)) found = near(small(next + 1), month_word(next)), length = 2;
    else if (const auto [n, m] = dashed(*t); due && n > 0 && context_.settings->date_order != DateOrder::unset) found = in_order(n, m), length = 1;   // by 8-15
    else if (after_preposition && t->type == Token::Type::ordinal) found = latest_of_month(static_cast<unsigned>(t->n), noted), length = 1;
    else if (t->type == Token::Type::slash && !t->value.said() && (after_preposition || (symbol(next + 1, "/") && year_number(next + 2))) && context_.settings->date_order != DateOrder::unset) found = in_order(static_cast<unsigned>(t->n), static_cast<unsigned>(t->m)), length = 1;
    else if (due) return false;
    else if ((next == 0 || since) && word(next, "yesterday")) found = noted - date::days{1}, length = 1;
    else if (t->type == Token::Type::word && (weekday_of(t->text) >= 0 || sunday_among_days())) {
        const auto back = (date::weekday{noted} - date::weekday{static_cast<unsigned>(std::max(0, weekday_of(t->text)))}).count();
        found = noted - date::days{since && back == 0 ? 7 : back}, length = 1;   // since Sunday, written on a Sunday
    } else if (word(0, "last") && token(1) && token(1)->type == Token::Type::word && weekday_of(token(1)->text) >= 0) {
        const auto back = (date::weekday{noted} - date::weekday{static_cast<unsigned>(weekday_of(token(1)->text))}).count();
        found = noted - date::days{back == 0 ? 7 : back}, length = 2;
    } else if (word(0, "last") && word(1, "night")) found = noted - date::days{1}, length = 2;
    else if (t->type == Token::Type::quantity && t->value.dimension == Dimension::duration && word(next + 1, "ago"))
        found = noted - date::days{t->value.amount}, length = 2;
    // 30 June 2028, 17/10/2026
    const bool slashed = found && length == 1 && t->type == Token::Type::slash && symbol(next + 1, "/");
    const int year = slashed || (found && length == 2) ? year_number(next + 2) : 0;
    if (year > 0) {
        const date::year_month_day day_said{*found};
        const date::year_month_day exact{date::year{year}, day_said.month(), day_said.day()};
        if (!exact.ok()) return false;
        found = Day{exact};
        length = 3;
    }
    if (!found) return false;
    // out Aug 8, written on 25 July: no keeper notes a day of last summer without its year
    const date::year_month_day said{*found};
    const auto next_time = soonest(static_cast<unsigned>(said.day()), static_cast<unsigned>(said.month()), noted);
    const bool to_come = !due && year == 0 && t->type != Token::Type::date && days_between(*found, noted) > 200 && next_time;
    if (to_come) found = next_time;
    Item& item = push(What::day, next + length);
    item.day = *found;
    item.since = since;
    if (due || to_come) item.text = "due";
    return true;
}

}  // namespace waxtab
