#include "facts/items.hpp"

#include <algorithm>
#include <array>

#include "facts/itemiser.hpp"
#include "facts/small_words.hpp"

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
    "no", "c", "ca", "approx", "abt", "nr", "fr", "frs", "lb", "lbs", "oz", "vs", "st", "rd", "ave", "q", "mr", "mrs", "dr", "est", "incl", "exc"};

/// The C of `hived as C.`, not the c. of `c. 20 kg`.
bool one_capital(const Token& t) { return t.text.size() == 1 && !t.raw.empty(); }

bool abbreviated(std::string_view word) {
    return std::find(abbreviations.begin(), abbreviations.end(), word) != abbreviations.end();
}

/// A row of the vocabulary that is known to be there.
const grammar::Word* table_row(Class klass, std::string_view term) {
    return &*std::find_if(std::begin(grammar::words), std::end(grammar::words), [&](const grammar::Word& w) { return w.klass == klass && w.term == term; });
}

}  // namespace

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
        std::size_t skip = next;
        if (!several) {   // lot A and lot B
            const bool more = (symbol(skip, "&") || word(skip, "and")) && word(skip + 1, "lot") && name_token(skip + 2);
            if (!more) break;
            next = skip + 2;
            continue;
        }
        while (symbol(skip, ",") || symbol(skip, "&") || word(skip, "and")) ++skip;
        if (skip == next || !name_token(skip)) break;
        next = skip;
    }
    if (names.empty()) return false;
    push(What::lot, next).lots = names;
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

/// `$12`, `£6.50 a jar`, `€9/kg`: what something was sold for, and by what measure.
bool Itemiser::price() {
    const std::string_view first = tokens_[at_].text;
    const bool glued = tokens_[at_].type == Token::Type::word && first.size() > 2 && (first.starts_with("\xC2\xA3") || first.starts_with("\xE2\x82\xAC"));
    const bool apart = (symbol(0, "$") || word(0, "\xC2\xA3") || word(0, "\xE2\x82\xAC")) && number(1);
    static constexpr std::array<std::string_view, 7> money = {"quid", "bucks", "dollars", "euros", "euro", "pence", "cents"};
    const bool named = number(0) && token(1) && std::find(money.begin(), money.end(), token(1)->text) != money.end();   // 7 quid
    if (!glued && !apart && !named) return false;
    std::size_t used = glued ? 1 : 2;
    if (symbol(used, ".") && !tokens_[at_ + used].space_before && !tokens_[at_ + used].space_after && token(used + 1) && token(used + 1)->type == Token::Type::number) used += 2;   // £6.50
    static constexpr std::array<std::string_view, 14> measures = {"pop", "jar", "lb", "pound", "kg", "kilo", "bucket", "tub", "section", "piece", "one", "nuc", "oz", "litre"};
    const bool each = word(used, "a") || word(used, "per") || word(used, "the") || symbol(used, "/");
    const Token* measure = each ? token(used + 1) : nullptr;
    if (measure && std::find(measures.begin(), measures.end(), measure->text) != measures.end()) used += 2;
    else if (word(used, "each") || word(used, "apiece") || word(used, "ea")) used += 1;
    push(What::term, used).words = {table_row(Class::filler, "price")};
    return true;
}

namespace {

bool colour(const std::string& word) {
    return std::any_of(std::begin(grammar::words), std::end(grammar::words), [&](const grammar::Word& w) { return w.klass == Class::colour && w.term == word; });
}

}  // namespace

/// The longest phrase of the vocabulary that starts here.
bool Itemiser::phrase() {
    if (price()) return true;
    if (after_super() && (word(0, "no") || word(0, "nr") || word(0, "number") || symbol(0, "#"))) {
        const std::size_t point = symbol(1, ".") ? 2 : 1;
        if (number(point)) {
            at_ += point;
            return value();
        }
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
    // with her blue dot: the queen's colour, not the queen
    const bool her_colour = meaning.length == 2 && words[0] == "with" && words[1] == "her" && words.size() > 2 && colour(words[2]);
    if (her_colour) {
        push(What::term, 1).words = {table_row(Class::link, "with")};
        return true;
    }
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
    if (stem == "s" && context_.lexicon->labels_begin_with(stem)) return push(What::unknown, 1).text = t.text, true;   // S3 where boxes are called S1, S2
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
            // 68 degrees where no scale was chosen: no day is so hot in Celsius
            const bool too_hot = !context_.settings->temperature_said && item.value.amount > measure("50", Unit::celsius)->amount;
            if (too_hot) item.value = measure(digits, Unit::fahrenheit).value_or(Measure{});
            item.unit_assumed = true;
            return true;
        }
        case Token::Type::gallons: {
            Item& item = push(What::value, 1);
            item.value = context_.settings->gallon_meant() == Unit::imperial_gallon ? in_imperial(t.value) : t.value;
            item.unit_assumed = true;
            return true;
        }
        case Token::Type::slash: {
            // 1/2/3: no share, and no date either
            const bool chain = symbol(1, "/") && !token(1)->space_before && !token(1)->space_after && number(2);
            if (chain) return push(What::unknown, 3).text.clear(), true;
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
        if (t.text == "->" && symbol(1, "+")) {
            push(What::stop, 1).text = ",";
            return true;
        }
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
        const bool after_slash = at_ > 0 && tokens_[at_ - 1].text == "/" && !t.space_after;   // 6 seams/+super drawn
        const bool in_brackets = at_ > 0 && tokens_[at_ - 1].text == "(" && token(1) && token(1)->type == Token::Type::word;   // 2 stings (+super drawn9)
        if (t.text == "+" && (t.space_before || after_slash || in_brackets)) {
            push(What::sign, 1).text = "+";
            return true;
        }
        if (t.text == "+" && !t.space_before && (t.space_after || at_ + 1 == tokens_.size()) && !leads) {
            push(What::sign, 1).text = "+";
            return true;
        }
        if (t.text == "-" && (t.space_before || after_slash) && !t.space_after) {
            push(What::sign, 1).text = "-";
            return true;
        }
        const bool denies = at_ > 0 && words_[at_ - 1] == "no" && !number(1);   // upper half full. no. a third
        if (t.text == "." && (!t.space_after || (at_ > 0 && !denies && abbreviated(words_[at_ - 1]) && !one_capital(tokens_[at_ - 1])))) return false;
        if (t.text == "~" ) {
            Item& item = push(What::term, 1);
            item.words = {table_row(Class::about, "about")};
            return true;
        }
        push(What::stop, 1).text = t.text;
        return true;
    }
    // at 09:55: the hour of one thing seen is not kept
    if (t.type == Token::Type::time) {
        if (!items_.empty() && (items_.back().is("at") || items_.back().is("about"))) pass_over(items_.back());
        pass_over(push(What::term, 1));
        return true;
    }
    push(What::unknown, 1).text = t.text;
    return true;
}

std::vector<Item> itemise(const std::vector<Token>& tokens, const ItemContext& context) {
    const std::vector<Token> with_amounts = amounts_in_words(named_after_a_comma(with_and_without(names_before_dashes(tokens, *context.lexicon))));
    return Itemiser(with_amounts, context).items();
}

}  // namespace waxtab
