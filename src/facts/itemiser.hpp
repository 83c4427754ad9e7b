#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "facts/items.hpp"

namespace waxtab {

/// `Hive 3 - 7 seams`, `Mill 1 - 70% full`: the dash stands after a hive's name and makes no range of its number.
std::vector<Token> names_before_dashes(const std::vector<Token>& tokens, const Lexicon& lexicon);

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

    Item& push(Item::What what, std::size_t tokens) {
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
    bool sunday_among_days() const;
    bool hive();
    bool bare_hives();
    bool a_or_hive_a() const;
    bool done_to_each() const;
    std::vector<HiveId> numbered_hives(std::size_t& end) const;
    bool label();
    bool price();
    bool phrase();
    bool value();
    bool other();
    bool glued_comb();
    HiveId words_and_number(std::size_t next, std::size_t ahead, std::size_t& length, std::string& name) const;
    bool of_the_sky(std::size_t next, std::size_t ahead, const Meaning& meaning) const;
    HiveId one_hive(std::size_t ahead, std::size_t& length, std::string& name) const;
    bool hyphenated(std::size_t index) const;
    bool names_colour(std::size_t ahead, std::size_t length) const;
    bool colour_of_queen(std::size_t ahead, std::size_t length) const;
    /// `super no. 2`, `super #2`: the number is the super's and names no hive.
    bool after_super() const { return !items_.empty() && (items_.back().is("super") || items_.back().is("box")); }

    const std::vector<Token>& tokens_;
    const ItemContext& context_;
    std::vector<std::string> words_;
    std::vector<Item> items_;
    std::size_t at_ = 0;
};

}  // namespace waxtab
