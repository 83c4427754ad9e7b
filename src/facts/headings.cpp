#include "facts/headings.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

namespace waxtab {

namespace {

constexpr std::array<std::string_view, 12> months = {"january", "february", "march", "april", "may", "june",
                                                     "july", "august", "september", "october", "november", "december"};
constexpr std::array<std::string_view, 7> weekdays = {"sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"};

int weekday_number(std::string_view word) {
    for (std::size_t d = 0; d < weekdays.size(); ++d)
        if (word.size() >= 3 && (word == weekdays[d] || word == weekdays[d].substr(0, 3) || (word.size() == 4 && word == weekdays[d].substr(0, 4))))
            return static_cast<int>(d);
    return -1;
}

/// Walks over the tokens of one line's start.
class DateReader {
public:
    DateReader(const std::vector<Token>& tokens, const Lexicon& lexicon, const Settings& settings, int year, std::uint32_t file)
        : tokens_(tokens), lexicon_(lexicon), settings_(settings), year_(year), file_(file) {}

    DateStart read() {
        weekday();
        if (!date()) return {};
        const Token* after = token();
        if (after && after->type == Token::Type::word && (after->text == "correction" || after->text == "corrected")) return {};   // 17 May correction: of that day, told on this
        start_.is_date = true;
        while (weekday() || time() || punctuation()) {}
        check_weekday();
        yard();
        while (time()) {}
        start_.used = at_;
        return std::move(start_);
    }

private:
    const Token* token(std::size_t ahead = 0) const { return at_ + ahead < tokens_.size() ? &tokens_[at_ + ahead] : nullptr; }
    bool symbol(std::string_view text, std::size_t ahead = 0) const {
        const Token* t = token(ahead);
        return t && t->type == Token::Type::symbol && t->text == text;
    }
    unsigned month(std::size_t ahead) const {
        const Token* t = token(ahead);
        return t && t->type == Token::Type::word ? month_number(t->text) : 0;
    }
    /// A whole number (or 3rd) at `ahead`, -1 otherwise.
    int whole(std::size_t ahead) const {
        const Token* t = token(ahead);
        if (!t) return -1;
        if (t->type == Token::Type::ordinal) return t->n;
        if (t->type != Token::Type::number || t->value.amount % 1000 != 0 || t->value.low != t->value.high) return -1;
        return static_cast<int>(t->value.amount / 1000);
    }
    Span span(std::size_t from, std::size_t to) const { return {file_, tokens_[from].begin, tokens_[to - 1].end}; }

    bool weekday() {
        const Token* t = token();
        if (!t || t->type != Token::Type::word) return false;
        const int d = weekday_number(t->text);
        if (d < 0) return false;
        weekday_ = d;
        weekday_at_ = at_++;
        punctuation();
        return true;
    }
    bool punctuation() {
        if (!symbol(",") && !symbol(".") && !(symbol("-") && token()->space_after && token(1) && token(1)->type == Token::Type::time)) return false;
        ++at_;
        return true;
    }
    bool time() {
        const Token* t = token();
        if (!t) return false;
        if (t->type == Token::Type::time) {
            start_.minute = t->n * 60 + t->m;
            ++at_;
            return true;
        }
        const int hour = whole(0);
        const Token* half = token(1);
        if (hour < 1 || hour > 12 || !half || half->type != Token::Type::word || (half->text != "am" && half->text != "pm")) return false;
        start_.minute = (hour % 12 + (half->text == "pm" ? 12 : 0)) * 60;
        at_ += 2;
        return true;
    }
    void yard() {
        std::vector<std::string> words;
        std::size_t at = at_;
        if (symbol("-") || symbol(",")) ++at;
        if (at < tokens_.size() && tokens_[at].text == "at") ++at;
        for (std::size_t i = at; i < tokens_.size(); ++i) words.push_back(tokens_[i].text);
        if (words.empty()) return;
        const Meaning meaning = lexicon_.find(words, 0);
        if (meaning.yard == no_yard) return;
        start_.yard = meaning.yard;
        at_ = at + meaning.length;
        if (symbol(":") || symbol(".")) ++at_;
    }
    void set(int y, unsigned m, unsigned d, std::size_t from) {
        const date::year_month_day ymd{date::year{y}, date::month{m}, date::day{d}};
        if (ymd.ok()) {
            start_.day = Day{ymd};
            return;
        }
        Diagnostic bad{"impossible-date", Severity::error, span(from, at_), {}, {}, {}, {}};
        if (m >= 1 && m <= 12) {
            const date::year_month_day_last last{date::year{y}, date::month_day_last{date::month{m}}};
            bad.title = fmt::format("there is no day {} in {} {}", d, capital(months[m - 1]), y);
            bad.label = fmt::format("that month has {} days", static_cast<unsigned>(last.day()));
        } else {
            bad.title = fmt::format("there is no month {}", m);
        }
        bad.hint = "write the day as year-month-day, for example 2026-06-03; the lines below are left out until then";
        start_.diagnostics.push_back(std::move(bad));
    }
    static std::string capital(std::string_view word) {
        std::string out(word);
        out[0] = static_cast<char>(out[0] - 'a' + 'A');
        return out;
    }
    bool iso() {
        const Token* t = token();
        if (!t || t->type != Token::Type::date) return false;
        const auto number = [&](std::size_t from, std::size_t n) { return std::stoi(t->text.substr(from, n)); };
        ++at_;
        set(number(0, 4), static_cast<unsigned>(number(5, 2)), static_cast<unsigned>(number(8, 2)), at_ - 1);
        return true;
    }
    bool named() {
        unsigned m = 0;
        int d = -1;
        std::size_t used = 0;
        if (whole(0) >= 1 && month(1)) d = whole(0), m = month(1), used = 2;
        else if (month(0) && whole(1) >= 1 && whole(1) <= 31) m = month(0), d = whole(1), used = 2;
        if (used == 0 || no_month(token(used - 1), token(used))) return false;
        const std::size_t from = at_;
        at_ += used;
        if (symbol(".") && m) ++at_;
        std::size_t skip = symbol(",") ? 1 : 0;
        const int y = whole(skip);
        if (y >= 1900 && y <= 2200) {
            at_ += skip + 1;
            set(y, m, static_cast<unsigned>(d), from);
            return true;
        }
        if (year_ == 0) {
            start_.diagnostics.push_back({"no-year", Severity::error, span(from, at_), "which year? the first date of the journal needs one", {},
                                          "write it in full, for example 2026-06-03, or say `year 2026` in a set-up line", {}});
            return true;
        }
        start_.year_assumed = true;
        set(year_, m, static_cast<unsigned>(d), from);
        return true;
    }
    /// 5/6/2026, 13/04, 5.6.26
    bool numeric() {
        const Token* t = token();
        if (!t || t->type != Token::Type::slash || t->value.said()) return false;
        const int a = t->n, b = t->m;
        const std::size_t from = at_;
        std::size_t used = 1;
        int y = year_;
        bool year_said = false;
        if (symbol("/", 1) && whole(2) >= 0) {
            y = whole(2) < 100 ? 2000 + whole(2) : whole(2);
            used = 3;
            year_said = true;
        }
        if (a < 1 || b < 1 || (a > 31 || b > 31)) return false;
        at_ += used;
        DateOrder order = settings_.date_order;
        if (order == DateOrder::unset && a > 12) order = DateOrder::day_month;
        if (order == DateOrder::unset && b > 12) order = DateOrder::month_day;
        if (order == DateOrder::unset) {
            const std::string year_text = y ? fmt::format(" {}", y) : std::string{};
            start_.diagnostics.push_back(
                {"ambiguous-date", Severity::error, span(from, at_),
                 fmt::format("'{}/{}' could be {} {}{} or {} {}{}", a, b, a, capital(months[static_cast<std::size_t>(b - 1)]), year_text, b,
                             capital(months[static_cast<std::size_t>(a - 1)]), year_text),
                 "two readings",
                 y ? fmt::format("write {:04}-{:02}-{:02} or {:04}-{:02}-{:02}, or say `dates day-month` or `dates month-day` in a set-up line", y, b, a, y, a, b)
                   : std::string("write it in full, or say `dates day-month` or `dates month-day` in a set-up line"),
                 {}});
            return true;
        }
        if (y == 0) return year_ = 0, start_.diagnostics.push_back({"no-year", Severity::error, span(from, at_), "which year? the first date of the journal needs one", {}, "write it in full, for example 2026-06-03", {}}), true;
        start_.year_assumed = !year_said;
        const bool dm = order == DateOrder::day_month;
        set(y, static_cast<unsigned>(dm ? b : a), static_cast<unsigned>(dm ? a : b), from);
        return true;
    }
    bool date() { return iso() || named() || numeric(); }
    void check_weekday() {
        if (weekday_ < 0 || !start_.day) return;
        const auto actual = static_cast<int>(date::weekday{*start_.day}.c_encoding());
        if (actual == weekday_) return;
        start_.diagnostics.push_back({"wrong-weekday", Severity::warning, span(weekday_at_, weekday_at_ + 1),
                                      fmt::format("{} is a {}, not a {}", waxtab::iso(*start_.day), capital(weekdays[static_cast<std::size_t>(actual)]),
                                                  capital(weekdays[static_cast<std::size_t>(weekday_)])),
                                      "does not fit the date", "put the weekday or the date right; the date was taken", {}});
    }

    const std::vector<Token>& tokens_;
    const Lexicon& lexicon_;
    const Settings& settings_;
    int year_;
    std::uint32_t file_;
    DateStart start_;
    std::size_t at_ = 0;
    int weekday_ = -1;
    std::size_t weekday_at_ = 0;
};

}  // namespace

unsigned month_number(std::string_view word) {
    if (word == "sept") return 9;
    for (unsigned m = 0; m < 12; ++m)
        if (word.size() >= 3 && (word == months[m] || word == months[m].substr(0, 3))) return m + 1;
    return 0;
}

DateStart read_date_start(const std::vector<Token>& tokens, const Lexicon& lexicon, const Settings& settings, int year, std::uint32_t file) {
    return DateReader(tokens, lexicon, settings, year, file).read();
}

bool no_month(const Token* may, const Token* next) {
    static constexpr std::array<std::string_view, 16> verbs = {"have", "be", "need", "not", "still", "want", "go", "swarm", "require", "yet", "well", "already", "just", "do", "take", "only"};
    return may && may->text == "may" && next && next->type == Token::Type::word && std::find(verbs.begin(), verbs.end(), next->text) != verbs.end();
}

}  // namespace waxtab
