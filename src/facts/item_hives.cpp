#include "facts/itemiser.hpp"

#include <algorithm>
#include <array>

#include "facts/small_words.hpp"

// Hives, lists and ranges of them.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

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
    // hives A to F
    const std::string one = hive_key(from), other = hive_key(to);
    if (one.size() == 1 && other.size() == 1 && one[0] >= 'a' && one[0] < other[0] && other[0] <= 'z') {
        for (char letter = one[0]; letter <= other[0]; ++letter) {
            const std::string name(1, letter);
            if (const HiveId id = lexicon.hive(name); id != no_hive) hives.push_back(id);
            else unknown.push_back(name);
        }
        return hives;
    }
    if (low < 0 || high < low || high - low > 999 || prefix != prefix2) return hives;
    const std::string first = hive_key(from);
    const std::size_t width = first.size() - prefix.size();   // C07 to C11
    for (int n = low; n <= high; ++n) {
        std::string digits = std::to_string(n);
        if (first[prefix.size()] == '0' && digits.size() < width) digits.insert(0, width - digits.size(), '0');
        const std::string name = prefix + digits;
        const HiveId id = lexicon.hive(name);
        if (id == no_hive) unknown.push_back(name);
        else hives.push_back(id);
    }
    return hives;
}

/// `requeened with a yellow queen` where a hive is called A: the article; `I saw eggs` where one is called I: the keeper.
bool article_or_pronoun(const Token& t, const Token* next) {
    const bool small_a = t.text == "a" && t.raw.empty(), capital_i = t.text == "i";
    const bool goes_on = next && next->type != Token::Type::symbol && next->text != "and" && next->text != "to";
    return (small_a || capital_i) && goes_on;
}

/// The tokens before `at` and `number` name one hive: `hive 3`, `#3`, `Mill 1`.
bool names_one_hive(const std::vector<Token>& tokens, std::size_t at, const std::string& number, const Lexicon& lexicon) {
    const Token& before = tokens[at - 1];
    if (before.text == "hive" || before.text == "colony" || before.text == "#") return true;
    std::string name = number;
    for (std::size_t words = 1; words <= 3 && words <= at && tokens[at - words].type == Token::Type::word; ++words) {
        name = tokens[at - words].text + ' ' + name;
        if (lexicon.hive(name) != no_hive) return true;
    }
    return false;
}

}  // namespace

std::vector<Token> names_before_dashes(const std::vector<Token>& tokens, const Lexicon& lexicon) {
    std::vector<Token> out;
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        const Token& range = tokens[i];
        const std::size_t dash = range.text.find(" - ");
        const bool number = range.type == Token::Type::number || range.type == Token::Type::quantity;
        const bool of_hives = i + 1 < tokens.size() && tokens[i + 1].text == ":";   // hive 3 - 5: calm
        const bool named = dash != range.text.npos && !of_hives && (i == 0 ? lexicon.hive(range.text.substr(0, dash)) != no_hive : names_one_hive(tokens, i, range.text.substr(0, dash), lexicon));   // 3 - 7 seams
        if (!number || !named) {
            out.push_back(range);
            continue;
        }
        const std::string after = range.text.substr(dash + 3);
        const auto second = range.end - static_cast<std::uint32_t>(after.size());
        for (Token part : tokenise(range.text.substr(0, dash), range.begin)) out.push_back(std::move(part));
        out.back().space_after = true;
        Token sign = tokenise("-", second - 2).front();
        sign.space_before = sign.space_after = true;
        out.push_back(std::move(sign));
        for (Token part : tokenise(after, second)) out.push_back(std::move(part));
        out.back().space_after = range.space_after;
    }
    return out;
}

/// `Roof 1`, `Roof 1-3`: a name of up to three words and a number, from `next` on. `length` stays 0 when there is none.
HiveId Itemiser::words_and_number(std::size_t next, std::size_t ahead, std::size_t& length, std::string& name) const {
    const auto tight_dash = [&](std::size_t i) { return symbol(i, "-") && !token(i)->space_before && !token(i)->space_after; };
    std::size_t last = next;
    while (last < next + 4 && token(last) && (token(last)->type == Token::Type::word || (last > next && tight_dash(last)))) ++last;
    if (last == next || last == next + 4 || !token(last) || token(last)->type != Token::Type::number) return no_hive;
    std::string joined;
    for (std::size_t i = next; i <= last; ++i)
        if (!tight_dash(i)) joined += (joined.empty() ? "" : " ") + token(i)->text;
    const HiveId id = context_.lexicon->hive(joined);
    const std::size_t dash = joined.find('-');
    const bool range = dash != joined.npos && context_.lexicon->hive(joined.substr(0, dash)) != no_hive;
    if (id == no_hive && !range) return no_hive;
    name = joined;
    length = last + 1 - ahead;
    return id;
}

/// `62F and sunny`, `Sunny, 62F` where a hive is called Sunny; not `sunny calm`, `Sunny: calm`, `Sunny and Creek calm`.
bool Itemiser::of_the_sky(std::size_t next, std::size_t ahead, const Meaning& meaning) const {
    const bool weather = std::any_of(meaning.words.begin(), meaning.words.end(), [](const grammar::Word* w) { return w->klass == Class::weather; });
    if (!weather || next > 0) return false;
    const bool small = token(0)->raw.empty(), first = ahead == 0 && items_.empty();
    const std::size_t after = meaning.length, beyond = after + 1;
    const bool ends = !token(after) || symbol(after, ",") || symbol(after, ".") || (word(after, "and") && token(beyond) && context_.lexicon->find(words_, at_ + beyond).hive == no_hive);
    const bool warm = token(beyond) && (token(beyond)->type == Token::Type::degrees || token(beyond)->value.dimension == Dimension::temperature);
    return small ? !first || ends : ends && warm;
}

/// The hive that starts `ahead` tokens from here; `length` 0 when none does. A name that looks like a
/// hive and is not known gives no_hive with its `name`.
HiveId Itemiser::one_hive(std::size_t ahead, std::size_t& length, std::string& name) const {
    length = 0;
    std::size_t next = ahead;
    bool generic = false;
    if (symbol(next, "#") && !after_super()) generic = true, ++next;
    else if (word(next, "hive") || word(next, "hives") || word(next, "colony") || word(next, "colonies") || word(next, "nr")) generic = true, ++next;
    else if (word(next, "no") && symbol(next + 1, ".") && !after_super() && !((ahead > 0 || !items_.empty()) && (word(next + 3, "super") || word(next + 3, "box")))) generic = true, next += 2;
    const bool by_number = generic && (word(next, "no") || word(next, "nr"));
    if (by_number) ++next;
    if (generic && (symbol(next, "#") || (by_number && symbol(next, ".")))) ++next;   // not of `thymol out of all hives. h1 calm`
    const Token* t = token(next);
    if (!t) return no_hive;
    if (!generic) {
        const HiveId id = words_and_number(next, ahead, length, name);
        if (length > 0) return id;
    }
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
    if (!generic && article_or_pronoun(*t, token(next + 1))) return no_hive;
    const Meaning meaning = context_.lexicon->find(words_, at_ + next);
    // Mill top super, where a hive is called Top
    const bool box_word = std::any_of(meaning.words.begin(), meaning.words.end(), [](const grammar::Word* w) { return w->klass == Class::which; }) && t->raw.empty() && (ahead > 0 || !items_.empty());
    if (meaning.hive != no_hive && !box_word && !of_the_sky(next, ahead, meaning)) {
        // A hive called like a word is meant only when written as a name.
        length = next + meaning.length - ahead;
        name = t->text;
        return meaning.hive;
    }
    const bool looks = t->text.size() >= 2 && (t->text[0] == 'h' || t->text[0] == 'n') && t->text[1] >= '0' && t->text[1] <= '9';
    const bool short_name = generic && t->text.size() <= 2 && meaning.words.empty() && (t->text.size() == 1 || t->text.find_first_of("0123456789") != std::string::npos);
    if (looks || short_name) {   // not of `the blue hive is calm`, `a proper hive by June`
        name = t->text;
        length = next + 1 - ahead;
    }
    return no_hive;
}

/// One word, the name of a colour.
bool Itemiser::names_colour(std::size_t ahead, std::size_t length) const {
    if (length != 1) return false;
    const Meaning meaning = context_.lexicon->find(words_, at_ + ahead);
    return std::any_of(meaning.words.begin(), meaning.words.end(), [](const grammar::Word* w) { return w->klass == Class::colour; });
}

/// `marked blue`, `white queen`, where a hive is called Blue or White: the colour is meant.
bool Itemiser::colour_of_queen(std::size_t ahead, std::size_t length) const {
    if (!names_colour(ahead, length)) return false;
    const bool bracketed = items_.size() > 1 && items_.back().what == What::stop && items_.back().text == "(" && (items_[items_.size() - 2].is("queen") || items_[items_.size() - 2].is("queen seen"));   // queen (blue)
    const bool before = ahead == 0 && !items_.empty() && (items_.back().is("marked") || items_.back().is("queen") || items_.back().is("requeened") || items_.back().is("pollen") || bracketed);
    static constexpr std::array<std::string_view, 10> after = {"sky", "skies", "queen", "dot", "spot", "disc", "marked", "q", "paint", "pollen"};
    return before || std::any_of(after.begin(), after.end(), [&](std::string_view w) { return word(ahead + 1, w); });
}

/// Bare numbers from here on that are hives, one and all, with commas, `and` or a dash between them; `end` the token after them.
std::vector<HiveId> Itemiser::numbered_hives(std::size_t& end) const {
    std::vector<HiveId> hives;
    end = 0;
    for (std::size_t i = 0; number(i);) {
        const std::string& said = token(i)->text;
        const std::size_t dash = said.find('-'), comma = said.find(',');   // 1-4; 1,3 and 5
        std::vector<HiveId> here;
        if (dash != said.npos) {
            std::vector<std::string> unknown;
            here = hive_range(*context_.lexicon, said.substr(0, dash), said.substr(dash + 1), unknown);
            if (!unknown.empty()) return {};
        } else if (comma != said.npos) {
            here = {context_.lexicon->hive(said.substr(0, comma)), context_.lexicon->hive(said.substr(comma + 1))};
        } else {
            here = {context_.lexicon->hive(said)};
        }
        if (here.empty() || std::find(here.begin(), here.end(), no_hive) != here.end()) return {};
        hives.insert(hives.end(), here.begin(), here.end());
        end = ++i;
        while (symbol(i, ",") || symbol(i, "&") || word(i, "and")) ++i;
    }
    return hives;
}

/// `from 1, 3 and 5`, `off 2 and 4`; `1, 3 and 5: super on each` at the beginning of a clause.
bool Itemiser::bare_hives() {
    if (!number(0)) return false;
    std::size_t end = 0;
    const bool box_on = items_.size() > 1 && items_.back().is("on") && (items_[items_.size() - 2].is("super") || items_[items_.size() - 2].is("excluder"));   // drawn super on 4
    const bool comb_on = items_.size() > 2 && items_.back().is("on") && items_[items_.size() - 2].has(Class::combing) && is_super(items_[items_.size() - 3]);   // super drawn on 1, 2 and 4
    const bool put = !items_.empty() && (items_.back().is("on") || items_.back().is("to") || items_.back().is("in") || items_.back().is("returned")) && (box_on || comb_on || std::none_of(items_.begin(), items_.end(), counted_in_frames)) &&
                     !(items_.back().is("in") && items_.size() > 1 && items_[items_.size() - 2].what == What::value);   // formic pads on 1, 3 and 6; not brood on 4
    const bool after = put || (!items_.empty() && (items_.back().is("from") || items_.back().is("off")));
    const bool begins = items_.empty() || items_.back().what == What::stop;
    if (!after && !begins) return false;
    const std::vector<HiveId> hives = numbered_hives(end);
    const Token* next = token(end);
    const bool ends = after ? (hives.size() > 1 || (box_on && hives.size() == 1)) && (!next || next->type == Token::Type::symbol) : !hives.empty() && symbol(end, ":") && next->space_after;
    if (!ends) return false;
    push(What::hives, end).hives = hives;
    return true;
}

/// What was said so far is done to a hive and takes nothing to another: `all supers off h1 to h4`, `formic out h1 to h4`; not
/// `moved a super h1 to h4`, nor `2 supers off h1 to h4`, which may have gone there.
bool Itemiser::done_to_each() const {
    const auto any = [&](auto says) { return std::any_of(items_.begin(), items_.end(), says); };
    const bool carried = any([](const Item& i) { return i.is("moved") || i.is("given") || i.is("given away") || i.is("united") || i.is("split") || i.is("frame") || i.is("frames of brood") || i.is("frames of stores") || i.is("queen") || i.is("bees"); });
    const bool taken = any([](const Item& i) { return i.is("off") || i.is("taken off") || (i.what == What::sign && i.text == "-"); });
    if (carried || (taken && !any([](const Item& i) { return i.is("all"); }))) return false;
    return any([](const Item& i) { return i.what == What::sign || i.has(Class::substance) || i.has(Class::food) || i.is("all") || i.is("on") || i.is("added") || i.is("fed") || i.is("inspected"); });
}

/// `h5 has cells. A virgin was seen`: the hive called A, or the article? Only after a sentence, and before a thing.
bool Itemiser::a_or_hive_a() const {
    if (token(0)->text != "a" || items_.empty() || items_.back().what != What::stop || items_.back().text != ".") return false;
    const Meaning next = context_.lexicon->find(words_, at_ + 1);
    return std::any_of(next.words.begin(), next.words.end(), [](const grammar::Word* w) { return w->klass == Class::thing || w->term == "virgin"; });
}

/// A hive, a list or range of hives, or all of them.
bool Itemiser::hive() {
    if (bare_hives()) return true;
    // h1 no. 2 super full: its second super
    const bool of_super = !items_.empty() && word(0, "no") && symbol(1, ".") && number(2) && (word(3, "super") || word(3, "box"));
    if (of_super && token(2)->value.amount > 0 && token(2)->value.amount < 10'000) {
        const auto n = static_cast<std::uint8_t>(token(2)->value.amount / 1000);
        push(What::box, 4).box = {BoxChoice::By::number, Role::super, n, {}};
        return true;
    }
    std::size_t length = 0;
    std::string name;
    HiveId id = one_hive(0, length, name);
    const bool marked = std::any_of(items_.begin(), items_.end(), [](const Item& i) { return i.is("marked") || i.is("requeened"); });
    const bool her_colour = marked && items_.back().what == What::hives && names_colour(0, length);   // marked the queen in h3 blue
    if (length == 0 || her_colour || colour_of_queen(0, length)) return false;
    if (length == 1 && a_or_hive_a()) return push(What::unknown, 1).text = name, true;
    const bool generic = symbol(0, "#") || word(0, "hive") || word(0, "hives") || word(0, "colony") || word(0, "colonies");
    Item item;
    item.what = What::hives;
    const auto take = [&](HiveId hive, const std::string& said) {
        if (hive != no_hive) item.hives.push_back(hive);
        else item.unknown_hives.push_back(said);
    };
    // h3's super, said of another hive: it comes from there
    const bool inside = !items_.empty() && items_.back().what != What::stop;
    if (inside && tokens_[at_ + length - 1].text.ends_with("'s")) item.role = Item::Role::from;
    const std::size_t blank = generic ? name.npos : name.rfind(' ');
    const std::string words = blank == name.npos ? std::string{} : name.substr(0, blank + 1);
    if (const auto dash = name.find('-'); (generic || !words.empty()) && dash != name.npos && id == no_hive) {
        item.hives = hive_range(*context_.lexicon, name.substr(0, dash), words + name.substr(dash + 1), item.unknown_hives);
        if (item.hives.empty() && item.unknown_hives.empty()) item.unknown_hives = {name};
        name = name.substr(dash + 1);
    } else {
        take(id, name);
    }
    std::string last = name;
    // hive 2's super
    if (symbol(length, "'") && word(length + 1, "s") && !tokens_[at_ + length].space_after) {
        if (inside) item.role = Item::Role::from;
        length += 2;
    }
    std::size_t next = length;
    bool listed = false, commas = false;
    // A bare number goes on a list only where nothing follows that it could count.
    const bool plural = word(0, "hives") || word(0, "colonies");
    const std::string stem = id != no_hive && name.find_first_not_of("0123456789", words.size()) == name.npos ? words : std::string{};
    const auto bare_number = [&](std::size_t i) {
        if (!stem.empty() && number(i) && context_.lexicon->hive(stem + token(i)->text) == no_hive) return false;
        if ((!generic && stem.empty()) || !number(i)) return false;
        const Token* after = token(i + 1);
        if (plural && after && (after->type == Token::Type::number || after->type == Token::Type::quantity || after->type == Token::Type::gallons)) return true;   // hives 2 4 5; hives 3 and 4 2 L
        if ((plural || !stem.empty()) && after && after->type == Token::Type::word) {
            const Meaning meaning = context_.lexicon->find(words_, at_ + i + 1);
            return std::none_of(meaning.words.begin(), meaning.words.end(), [](const grammar::Word* w) { return w->klass == Class::thing; });
        }
        return !after || after->type == Token::Type::symbol || (after->type == Token::Type::word && (after->text == "and" || after->text == "to" || after->text == "thru"));
    };
    const auto says_more = [&](std::size_t i) {
        const Token* after = token(i);
        if (!after || after->type != Token::Type::word) return false;
        const Meaning meaning = context_.lexicon->find(words_, at_ + i);
        return meaning.length > 0 && std::none_of(meaning.words.begin(), meaning.words.end(), [](const grammar::Word* w) { return w->klass == Class::preposition || w->klass == Class::link || w->klass == Class::done || w->klass == Class::which || w->klass == Class::filler; });
    };
    const bool denied = std::any_of(items_.begin(), items_.end(), [](const Item& i) { return i.has(grammar::Class::negation); });   // no cells in hives 1, 2 or 6: in none
    for (;;) {
        std::size_t skip = next;
        const bool first_comma = listed && !commas && symbol(skip, ",");
        commas = commas || symbol(skip, ",");
        const bool ranged = symbol(skip, "-") || word(skip, "to") || word(skip, "thru") || word(skip, "through");
        listed = listed || (!ranged && !symbol(skip, ",") && item.hives.size() + item.unknown_hives.size() > 0);   // not h1-h3, h5
        if (ranged) ++skip;
        else while (symbol(skip, ",") || symbol(skip, "&") || symbol(skip, "+") || word(skip, "and") || (denied && word(skip, "or"))) ++skip;
        std::size_t more = 0;
        std::string said;
        if (skip > next && word(skip, "the")) {   // Green, Red and the Nuc
            const HiveId named = one_hive(skip + 1, more, said);
            if (named != no_hive) ++skip;
        }
        HiveId other = one_hive(skip, more, said);
        if (more > 0 && (colour_of_queen(skip, more) || (skip == next && marked && names_colour(skip, more)))) break;
        // thymol on h1 h2, h3 calm: the comma begins another clause, but not in `thymol on h1 h2, h3`
        const Token* after = token(skip + more);
        const bool goes_on = after && after->type != Token::Type::symbol && !(after->type == Token::Type::word && (after->text == "and" || after->text == "to"));
        if (inside && first_comma && (more == 0 || goes_on)) break;
        // queen laying in h2, h4 virgin seen: the comma begins another clause
        if (more > 0 && inside && symbol(next, ",") && says_more(skip + more)) break;
        // moved to h8, h8's light: another clause
        if (more > 0 && symbol(next, ",") && tokens_[at_ + skip + more - 1].text.ends_with("'s")) break;
        const bool apart = skip > next || plural || ranged;   // hive 2 124, hive 5: no list
        const bool wide_dash = symbol(next, "-") && tokens_[at_ + next].space_before && tokens_[at_ + next].space_after;   // hive 3 - 7 seams
        if (more == 0 && !wide_dash && ((apart && bare_number(skip)) || (ranged && (generic || !stem.empty()) && number(skip)))) {
            said = stem + token(skip)->text;
            // "2,5 and 9" after "hives" is a list, not a decimal.
            if (const auto comma = said.find(','); comma != said.npos) {
                take(context_.lexicon->hive(said.substr(0, comma)), said.substr(0, comma));
                said = said.substr(comma + 1);
            }
            if (const auto either = said.find(" or "); denied && either != said.npos) {   // 1, 2 or 6
                take(context_.lexicon->hive(said.substr(0, either)), said.substr(0, either));
                said = stem + said.substr(either + 4);
            }
            other = context_.lexicon->hive(said);
            more = 1;
        }
        // thymol on h1 h2 s1, where there is no s1
        const Token* stranger = item.hives.size() > 1 && more == 0 ? token(skip) : nullptr;
        if (stranger && stranger->type == Token::Type::word && stranger->text.size() >= 2 && stranger->text.size() <= 4 && stranger->text.find_first_of("0123456789") == 1 && stranger->text.find_first_not_of("0123456789", 1) == std::string::npos &&
            stranger->text[0] != 'x') said = stranger->text, more = 1;
        if (more == 0) break;
        if (ranged) {
            // "moved h3 to h5" is no range: only numbers with a dash, or names after "hives", or of three hives at least that something is done to.
            const bool certain = !word(next, "to") || generic || !stem.empty() || at_ == 0;
            const auto range = hive_range(*context_.lexicon, last, said, item.unknown_hives);
            const bool giver = word(next, "to") && range.size() < 3 && !generic && stem.empty();   // h3 to h4 one frame of brood
            if (range.empty() || giver || (!certain && (range.size() < 3 || !done_to_each()))) break;
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

}  // namespace waxtab
