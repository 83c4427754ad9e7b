#include "facts/items.hpp"
#include "facts/headings.hpp"

#include <algorithm>
#include <array>

namespace waxtab {

using grammar::Class;
using What = Item::What;

bool Item::is(std::string_view term) const {
    return std::any_of(words.begin(), words.end(), [&](const grammar::Word* w) { return w->term == term; });
}

const grammar::Word* Item::word(Class klass) const {
    const auto found = std::find_if(words.begin(), words.end(), [&](const grammar::Word* w) { return w->klass == klass; });
    return found == words.end() ? nullptr : *found;
}

bool Item::has(Class klass) const { return word(klass) != nullptr; }

bool Item::idle() const {
    return loose || what == What::stop || has(Class::filler) || is("of");
}

namespace {

/// Words after which a full stop ends nothing.
constexpr std::array<std::string_view, 22> abbreviations = {
    "no", "c", "ca", "approx", "nr", "fr", "frs", "lb", "lbs", "oz", "vs", "st", "rd", "ave", "q", "mr", "mrs", "dr", "est", "incl", "exc", "found"};

bool abbreviated(std::string_view word) {
    return std::find(abbreviations.begin(), abbreviations.end(), word) != abbreviations.end();
}

/// A row of the vocabulary that is known to be there.
const grammar::Word* table_row(Class klass, std::string_view term) {
    return &*std::find_if(std::begin(grammar::words), std::end(grammar::words), [&](const grammar::Word& w) { return w.klass == klass && w.term == term; });
}

/// Day of the week of a name (0 is Sunday) that is no other word, -1 for other words.
int weekday_of(std::string_view word) {
    static constexpr std::pair<std::string_view, int> names[] = {{"sunday", 0}, {"monday", 1}, {"mon", 1}, {"tuesday", 2}, {"tues", 2}, {"tue", 2},
        {"wednesday", 3}, {"weds", 3}, {"wed", 3}, {"thursday", 4}, {"thurs", 4}, {"thu", 4}, {"friday", 5}, {"fri", 5}, {"saturday", 6}, {"sat", 6}};
    for (const auto& [name, day] : names)
        if (name == word) return day;
    return -1;
}

/// Turns tokens into items; each function tries to take what starts at `at_`.
class Itemiser {
public:
    Itemiser(const std::vector<Token>& tokens, const ItemContext& context) : tokens_(tokens), context_(context) {
        for (const Token& t : tokens) words_.push_back(word_at(t));
    }

    std::vector<Item> items() {
        while (at_ < tokens_.size()) {
            if (lot() || day() || hive() || label() || phrase() || value() || other()) continue;
            ++at_;
        }
        return std::move(items_);
    }

private:
    /// The word as the lexicon sees it: hyphens between words count as blanks, other tokens block.
    static std::string word_at(const Token& t) {
        if (t.type == Token::Type::word) return t.text;
        if (t.type == Token::Type::ordinal) return t.text;
        if (t.type == Token::Type::number && !t.value.said()) return t.text;
        if (t.type == Token::Type::symbol && t.text == "&") return "&";
        return std::string(1, '\0');
    }

    Item& push(What what, std::size_t tokens) {
        Item item;
        item.what = what;
        item.begin = tokens_[at_].begin;
        item.end = tokens_[at_ + tokens - 1].end;
        at_ += tokens;
        return items_.emplace_back(std::move(item));
    }
    const Token* token(std::size_t ahead) const { return at_ + ahead < tokens_.size() ? &tokens_[at_ + ahead] : nullptr; }
    bool symbol(std::size_t ahead, std::string_view text) const {
        const Token* t = token(ahead);
        return t && t->type == Token::Type::symbol && t->text == text;
    }
    bool word(std::size_t ahead, std::string_view text) const {
        const Token* t = token(ahead);
        return t && t->type == Token::Type::word && t->text == text;
    }
    bool number(std::size_t ahead) const {
        const Token* t = token(ahead);
        return t && t->type == Token::Type::number && t->value.dimension == Dimension::count;
    }

    bool lot();
    bool day();
    bool hive();
    bool label();
    bool phrase();
    bool value();
    bool other();
    bool glued_comb();
    HiveId one_hive(std::size_t ahead, std::size_t& length, std::string& name) const;
    bool hyphenated(std::size_t index) const;
    bool colour_of_queen(std::size_t ahead, std::size_t length) const;

    const std::vector<Token>& tokens_;
    const ItemContext& context_;
    std::vector<std::string> words_;
    std::vector<Item> items_;
    std::size_t at_ = 0;
};

/// `lot A`, `lots A and B`, `lot 2026-07-12b`: a name runs to the next blank.
bool Itemiser::lot() {
    const bool several = word(0, "lots");
    if (!several && !word(0, "lot")) return false;
    std::size_t next = 1;
    std::vector<std::string> names;
    const auto name_token = [&](std::size_t i) {
        const Token* t = token(i);
        return t && t->type != Token::Type::symbol && !(t->type == Token::Type::word && (t->text == "of" || t->text == "is" || t->text == "into"));
    };
    while (name_token(next)) {
        const auto written = [&](std::size_t i) { return token(i)->raw.empty() || token(i)->type == Token::Type::quoted ? token(i)->text : token(i)->raw; };
        std::string name = written(next);
        while (token(next + 1) && !token(next)->space_after && (name_token(next + 1) || symbol(next + 1, "-") || symbol(next + 1, "/")))
            name += written(++next);
        names.push_back(name);
        ++next;
        if (!several) break;
        std::size_t skip = next;
        while (symbol(skip, ",") || symbol(skip, "&") || word(skip, "and")) ++skip;
        if (skip == next || !name_token(skip)) break;
        next = skip;
    }
    if (names.empty()) return false;
    push(What::lot, next).lots = names;
    return true;
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
    if (t->type == Token::Type::date) found = day_from_iso(t->text), length = 1;
    else if (small(next) && month_word(next + 1)) found = near(small(next), month_word(next + 1)), length = 2;
    else if (month_word(next) && small(next + 1) && t->text != "may") found = near(small(next + 1), month_word(next)), length = 2;
    else if (after_preposition && t->type == Token::Type::ordinal) found = latest_of_month(static_cast<unsigned>(t->n), noted), length = 1;
    else if (after_preposition && t->type == Token::Type::slash && !t->value.said() && context_.settings->date_order != DateOrder::unset) {
        const bool dm = context_.settings->date_order == DateOrder::day_month;
        found = near(static_cast<unsigned>(dm ? t->n : t->m), static_cast<unsigned>(dm ? t->m : t->n)), length = 1;
    } else if (due) return false;
    else if (word(0, "yesterday")) found = noted - date::days{1}, length = 1;
    else if (t->type == Token::Type::word && weekday_of(t->text) >= 0) {
        const auto back = (date::weekday{noted} - date::weekday{static_cast<unsigned>(weekday_of(t->text))}).count();
        found = noted - date::days{back}, length = 1;
    } else if (word(0, "last") && word(1, "night")) found = noted - date::days{1}, length = 2;
    else if (t->type == Token::Type::quantity && t->value.dimension == Dimension::duration && word(next + 1, "ago"))
        found = noted - date::days{t->value.amount}, length = 2;
    if (!found) return false;
    Item& item = push(What::day, next + length);
    item.day = *found;
    item.since = since;
    if (due) item.text = "due";
    return true;
}

/// The hive that starts `ahead` tokens from here; `length` 0 when none does. A name that looks like a
/// hive and is not known gives no_hive with its `name`.
HiveId Itemiser::one_hive(std::size_t ahead, std::size_t& length, std::string& name) const {
    length = 0;
    std::size_t next = ahead;
    bool generic = false;
    if (symbol(next, "#")) generic = true, ++next;
    else if (word(next, "hive") || word(next, "hives") || word(next, "colony") || word(next, "colonies") || word(next, "nr")) generic = true, ++next;
    else if (word(next, "no") && symbol(next + 1, ".")) generic = true, next += 2;
    if (generic && (word(next, "no") || word(next, "nr"))) ++next;
    if (generic && (symbol(next, "#") || symbol(next, "."))) ++next;
    const Token* t = token(next);
    if (!t) return no_hive;
    if (t->type == Token::Type::number && (generic || (token(next + 1) && token(next + 1)->type == Token::Type::word && !t->space_after && token(next + 1)->text.size() == 1))) {
        name = t->text;
        std::size_t used = 1;
        if (!t->space_after && token(next + 1) && token(next + 1)->type == Token::Type::word && token(next + 1)->text.size() == 1)
            name += token(next + 1)->text, ++used;
        const HiveId id = context_.lexicon->hive(name);
        if (id == no_hive && !generic) return name.clear(), no_hive;
        length = next + used - ahead;
        return id;
    }
    if (t->type != Token::Type::word) return no_hive;
    const Meaning meaning = context_.lexicon->find(words_, at_ + next);
    if (meaning.hive != no_hive) {
        // A hive called like a word is meant only when written as a name.
        length = next + meaning.length - ahead;
        name = t->text;
        return meaning.hive;
    }
    const bool looks = t->text.size() >= 2 && t->text[0] == 'h' && t->text[1] >= '0' && t->text[1] <= '9';
    if (looks || (generic && t->text.size() <= 2)) {
        name = t->text;
        length = next + 1 - ahead;
    }
    return no_hive;
}

/// Every hive from key `from` to key `to` that differs only in its number.
std::vector<HiveId> hive_range(const Lexicon& lexicon, const std::string& from, const std::string& to, std::vector<std::string>& unknown) {
    const auto split = [](const std::string& key) {
        std::size_t digits = key.size();
        while (digits > 0 && key[digits - 1] >= '0' && key[digits - 1] <= '9') --digits;
        return std::pair{key.substr(0, digits), digits < key.size() ? std::stoi(key.substr(digits, 5)) : -1};
    };
    const auto [prefix, low] = split(hive_key(from));
    const auto [prefix2, high] = split(hive_key(to));
    std::vector<HiveId> hives;
    if (low < 0 || high < low || high - low > 999 || prefix != prefix2) return hives;
    for (int n = low; n <= high; ++n) {
        const std::string name = prefix + std::to_string(n);
        const HiveId id = lexicon.hive(name);
        if (id == no_hive) unknown.push_back(name);
        else hives.push_back(id);
    }
    return hives;
}

/// `marked blue`, `white queen`, where a hive is called Blue or White: the colour is meant.
bool Itemiser::colour_of_queen(std::size_t ahead, std::size_t length) const {
    if (length != 1) return false;
    const Meaning meaning = context_.lexicon->find(words_, at_ + ahead);
    const bool colour = std::any_of(meaning.words.begin(), meaning.words.end(), [](const grammar::Word* w) { return w->klass == Class::colour; });
    if (!colour) return false;
    const bool before = ahead == 0 && !items_.empty() && (items_.back().is("marked") || items_.back().is("queen") || items_.back().is("requeened"));
    static constexpr std::array<std::string_view, 8> after = {"queen", "dot", "spot", "disc", "marked", "q", "paint", "pollen"};
    return before || std::any_of(after.begin(), after.end(), [&](std::string_view w) { return word(ahead + 1, w); });
}

/// A hive, a list or range of hives, or all of them.
bool Itemiser::hive() {
    std::size_t length = 0;
    std::string name;
    HiveId id = one_hive(0, length, name);
    if (length == 0 || colour_of_queen(0, length)) return false;
    const bool generic = symbol(0, "#") || word(0, "hive") || word(0, "hives") || word(0, "colony") || word(0, "colonies");
    Item item;
    item.what = What::hives;
    const auto take = [&](HiveId hive, const std::string& said) {
        if (hive != no_hive) item.hives.push_back(hive);
        else item.unknown_hives.push_back(said);
    };
    // h3's super, said of another hive: it comes from there
    if (!items_.empty() && tokens_[at_ + length - 1].text.ends_with("'s")) item.role = Item::Role::from;
    if (const auto dash = name.find('-'); generic && dash != name.npos && id == no_hive) {
        item.hives = hive_range(*context_.lexicon, name.substr(0, dash), name.substr(dash + 1), item.unknown_hives);
        if (item.hives.empty() && item.unknown_hives.empty()) item.unknown_hives = {name};
        name = name.substr(dash + 1);
    } else {
        take(id, name);
    }
    std::string last = name;
    std::size_t next = length;
    // A bare number goes on a list only where nothing follows that it could count.
    const auto bare_number = [&](std::size_t i) {
        if (!generic || !number(i)) return false;
        const Token* after = token(i + 1);
        return !after || after->type == Token::Type::symbol || (after->type == Token::Type::word && (after->text == "and" || after->text == "to" || after->text == "thru"));
    };
    for (;;) {
        std::size_t skip = next;
        const bool ranged = symbol(skip, "-") || word(skip, "to") || word(skip, "thru") || word(skip, "through");
        if (ranged) ++skip;
        else while (symbol(skip, ",") || symbol(skip, "&") || symbol(skip, "+") || word(skip, "and")) ++skip;
        std::size_t more = 0;
        std::string said;
        HiveId other = one_hive(skip, more, said);
        if (more > 0 && colour_of_queen(skip, more)) break;
        if (more == 0 && (bare_number(skip) || (ranged && generic && number(skip)))) {
            said = token(skip)->text;
            // "2,5 and 9" after "hives" is a list, not a decimal.
            if (const auto comma = said.find(','); comma != said.npos) {
                take(context_.lexicon->hive(said.substr(0, comma)), said.substr(0, comma));
                said = said.substr(comma + 1);
            }
            other = context_.lexicon->hive(said);
            more = 1;
        }
        if (more == 0) break;
        if (ranged) {
            // "moved h3 to h5" is no range: only numbers with a dash, or names after "hives".
            if (!symbol(next, "-") && !generic) break;
            const auto range = hive_range(*context_.lexicon, last, said, item.unknown_hives);
            if (range.empty()) break;
            item.hives.insert(item.hives.end(), range.begin() + 1, range.end());
        } else {
            take(other, said);
        }
        last = said;
        next = skip + more;
    }
    Item& placed = push(What::hives, next);
    item.begin = placed.begin;
    item.end = placed.end;
    placed = item;
    return true;
}

/// A box label, as known from elsewhere in the journal, without its quotes.
bool Itemiser::label() {
    if (tokens_[at_].type != Token::Type::word) return false;
    const std::string name = context_.lexicon->label(tokens_[at_].text);
    if (name.empty()) return false;
    push(What::quoted, 1).text = name;
    return true;
}

/// The longest phrase of the vocabulary that starts here.
bool Itemiser::phrase() {
    // w/ and w/o
    if (word(0, "w") && symbol(1, "/")) {
        const bool without = word(2, "o") && !tokens_[at_ + 1].space_after;
        push(What::term, without ? 3 : 2).words = {without ? table_row(Class::negation, "not") : table_row(Class::link, "with")};
        return true;
    }
    if ((symbol(0, "$") || word(0, "\xC2\xA3") || word(0, "\xE2\x82\xAC")) && number(1)) {
        push(What::term, 2).words = {table_row(Class::filler, "price")};
        return true;
    }
    // Q+ and Q-; the first is queenright to some, queen seen to others.
    if (word(0, "q") && (symbol(1, "+") || symbol(1, "-")) && !tokens_[at_ + 1].space_before && (tokens_[at_ + 1].space_after || at_ + 2 == tokens_.size() || tokens_[at_ + 2].type == Token::Type::symbol)) {
        const bool plus = symbol(1, "+");
        Item& item = push(What::term, 2);
        item.words = {table_row(Class::state, plus ? "queenright" : "queenless")};
        if (plus) item.words.push_back(table_row(Class::state, "queen seen"));
        return true;
    }
    if (tokens_[at_].type != Token::Type::word && !symbol(0, "&")) return glued_comb();
    // Hyphens inside phrases (half-full) are passed over when looking the phrase up.
    std::vector<std::string> words;
    std::vector<std::size_t> ends;
    for (std::size_t i = at_; i < tokens_.size() && words.size() < 6; ++i) {
        if (hyphenated(i)) continue;
        words.push_back(words_[i]);
        ends.push_back(i + 1);
        if (words_[i] == std::string(1, '\0')) break;
    }
    const Meaning meaning = context_.lexicon->find(words, 0);
    if (meaning.length == 0) return glued_comb();
    const std::size_t used = ends[meaning.length - 1] - at_;
    if (meaning.yard != no_yard && meaning.words.empty()) {
        push(What::yard, used).yard = meaning.yard;
        return true;
    }
    Item& item = push(What::term, used);
    item.words = meaning.words;
    item.box_kind = meaning.box_kind;
    item.yard = meaning.yard;
    return true;
}

bool Itemiser::hyphenated(std::size_t index) const {
    const Token& t = tokens_[index];
    return t.type == Token::Type::symbol && t.text == "-" && !t.space_before && !t.space_after;
}

/// `drawn9`, `foundation10`: a word of comb and the frames in the box; `s2`: super 2; `x3`.
bool Itemiser::glued_comb() {
    const Token& t = tokens_[at_];
    if (t.type != Token::Type::word) return false;
    const std::size_t digits = t.text.find_first_of("0123456789");
    if (digits == std::string::npos || digits == 0 || t.text.find_first_not_of("0123456789", digits) != std::string::npos) return false;
    if (t.text.size() - digits > 3) return false;
    const std::string stem = t.text.substr(0, digits);
    const int n = std::stoi(t.text.substr(digits));
    const Meaning meaning = context_.lexicon->find({stem}, 0);
    if (!meaning.words.empty() && meaning.words.front()->klass == Class::combing) {
        Item& item = push(What::term, 1);
        item.words = meaning.words;
        item.counted = true;
        item.count = n;
        item.count_value = measure(std::to_string(n), Unit::frame).value();
        return true;
    }
    if (stem == "s" || stem == "super") {
        Item& item = push(What::box, 1);
        item.box = {BoxChoice::By::number, Role::super, static_cast<std::uint8_t>(n), {}};
        return true;
    }
    if (stem == "x") {
        Item& item = push(What::value, 1);
        item.value = measure(std::to_string(n), Unit::piece).value();
        item.text = "x";
        return true;
    }
    return false;
}

bool Itemiser::value() {
    const Token& t = tokens_[at_];
    switch (t.type) {
        case Token::Type::number:
        case Token::Type::quantity: {
            Item& item = push(What::value, 1);
            item.value = t.value;
            item.text = t.text;
            return true;
        }
        case Token::Type::degrees: {
            Item& item = push(What::value, 1);
            const std::string digits = t.text.substr(0, t.text.find_first_not_of("0123456789.,"));
            item.value = measure(digits, context_.settings->temperature).value_or(Measure{});
            item.unit_assumed = true;
            return true;
        }
        case Token::Type::gallons: {
            Item& item = push(What::value, 1);
            item.value = t.value;
            item.unit_assumed = true;
            return true;
        }
        case Token::Type::slash: {
            Item& item = push(What::slash, 1);
            item.n = t.n, item.m = t.m;
            return true;
        }
        case Token::Type::ratio: {
            Item& item = push(What::ratio, 1);
            item.n = t.n, item.m = t.m;
            return true;
        }
        default: return false;
    }
}

bool Itemiser::other() {
    const Token& t = tokens_[at_];
    if (t.type == Token::Type::quoted) {
        push(What::quoted, 1).text = t.text;
        return true;
    }
    if (t.type == Token::Type::ordinal) {
        Item& item = push(What::term, 1);
        item.count = t.n;
        item.text = "ordinal";
        return true;
    }
    if (t.type == Token::Type::symbol) {
        if (t.text == "-" && !t.space_before && !t.space_after) return false;   // half-full
        const bool leads = items_.empty() || items_.back().what == What::hives || items_.back().what == What::stop;
        if (t.text == "->") {
            Item& item = push(What::term, 1);
            item.words = {table_row(Class::preposition, "into")};
            return true;
        }
        if (t.text == "+" && t.space_before && t.space_after && !leads) {
            Item& item = push(What::term, 1);
            item.words = {table_row(Class::link, "and")};
            return true;
        }
        if (t.text == "+" && t.space_before) {
            push(What::sign, 1).text = "+";
            return true;
        }
        if (t.text == "+" && !t.space_before && (t.space_after || at_ + 1 == tokens_.size()) && !leads) {
            push(What::sign, 1).text = "+";
            return true;
        }
        if (t.text == "-" && t.space_before && !t.space_after) {
            push(What::sign, 1).text = "-";
            return true;
        }
        if (t.text == "." && (!t.space_after || (at_ > 0 && abbreviated(words_[at_ - 1])))) return false;
        if (t.text == "~" ) {
            Item& item = push(What::term, 1);
            item.words = {table_row(Class::about, "about")};
            return true;
        }
        push(What::stop, 1).text = t.text;
        return true;
    }
    push(What::unknown, 1).text = t.text;
    return true;
}

}  // namespace

std::vector<Item> itemise(const std::vector<Token>& tokens, const ItemContext& context) {
    return Itemiser(tokens, context).items();
}

}  // namespace waxtab
