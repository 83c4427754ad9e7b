#pragma once
#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include <fmt/format.h>

#include "facts/set_up.hpp"

namespace waxtab {

/// Token `i` is the word.
inline bool word_is(const std::vector<Token>& t, std::size_t i, std::string_view text) {
    return i < t.size() && t[i].type == Token::Type::word && t[i].text == text;
}
/// Token `i` is the symbol.
inline bool symbol_is(const std::vector<Token>& t, std::size_t i, std::string_view text) {
    return i < t.size() && t[i].type == Token::Type::symbol && t[i].text == text;
}
/// The symbol stands among them.
inline bool has_symbol(const std::vector<Token>& t, std::string_view text) {
    return std::any_of(t.begin(), t.end(), [&](const Token& x) { return x.type == Token::Type::symbol && x.text == text; });
}
/// The word stands among them.
inline bool has_word(const std::vector<Token>& t, std::string_view text) {
    return std::any_of(t.begin(), t.end(), [&](const Token& x) { return x.type == Token::Type::word && x.text == text; });
}

/// One set-up line being read.
class SetUpLine {
public:
    SetUpLine(const std::vector<Token>& tokens, std::string_view text, Span span, Journal& journal, Lexicon& lexicon)
        : t_(tokens), text_(text), span_(span), journal_(journal), lexicon_(lexicon), s_(journal.settings) {}

    std::vector<Fact> read() {
        if (word_is(t_, 0, "units")) units();
        else if (word_is(t_, 0, "gallon")) gallon();
        else if (word_is(t_, 0, "dates")) dates();
        else if (word_is(t_, 0, "year")) year();
        else if (word_is(t_, 0, "yard")) yard();
        else if (word_is(t_, 0, "hive") || word_is(t_, 0, "nuc")) hive();
        else if (word_is(t_, 0, "box")) box();
        else if (word_is(t_, 0, "default")) default_kind();
        else if (word_is(t_, 0, "new")) new_supers();
        else if (word_is(t_, 0, "visit")) visit();
        else if (word_is(t_, 0, "season")) season(1, s_.season_from_month, s_.season_from_day, s_.season_to_month, s_.season_to_day, s_.season_said, "season");
        else if (word_is(t_, 0, "swarm")) season(2, s_.swarm_from_month, s_.swarm_from_day, s_.swarm_to_month, s_.swarm_to_day, s_.swarm_said, "swarm season");
        else if (word_is(t_, 0, "climate")) climate();
        else if (word_is(t_, 0, "threshold")) threshold();
        else if (word_is(t_, 0, "risk")) risk();
        else if (word_is(t_, 0, "lift")) lift();
        else if (word_is(t_, 0, "shed")) shed();
        return std::move(facts_);
    }

private:
    std::string raw(std::size_t from, std::size_t to) const { return std::string(text_.substr(t_[from].begin, t_[to - 1].end - t_[from].begin)); }
    Span at(std::size_t i) const { return i < t_.size() ? Span{span_.file, t_[i].begin, t_[i].end} : span_; }
    void error(std::string_view code, std::size_t i, std::string title, std::string hint) {
        journal_.diagnostics.push_back({code, Severity::error, at(i), std::move(title), {}, std::move(hint), {}});
    }
    /// Notes where a setting was said; a second, different saying is an error naming both.
    void once(std::string name, bool differs) {
        const auto said = std::find_if(s_.said.begin(), s_.said.end(), [&](const auto& p) { return p.first == name; });
        if (said == s_.said.end()) {
            s_.said.emplace_back(name, span_);
            return;
        }
        if (!differs) return;
        journal_.diagnostics.push_back({"setting-differs", Severity::error, span_, fmt::format("'{}' was set differently before", name), {},
                                        "keep one of the two lines", {{said->second, "the other one is here"}}});
    }
    bool said(std::string_view name) const {
        return std::any_of(s_.said.begin(), s_.said.end(), [&](const auto& p) { return p.first == name; });
    }
    template <typename T>
    void set(std::string_view name, T& field, T value) {
        const bool differs = said(name) && field != value;
        once(std::string(name), differs);
        if (!differs) field = value;
    }
    void units();
    void gallon();
    void dates();
    void year();
    void yard();
    void hive();
    void box();
    void default_kind();
    void new_supers();
    void visit();
    void season(std::size_t from, int& m1, int& d1, int& m2, int& d2, bool& said_it, std::string_view name);
    void climate();
    void threshold();
    void risk();
    void lift();
    void shed();
    std::size_t name_at(std::size_t i, std::string& name) const;
    YardId yard_named(const std::string& name, bool declared, Span where);
    void stack(std::size_t from, HiveDecl& hive);
    void part(std::size_t from, std::size_t to, HiveDecl& hive);

    const std::vector<Token>& t_;
    std::string_view text_;
    Span span_;
    Journal& journal_;
    Lexicon& lexicon_;
    Settings& s_;
    std::vector<Fact> facts_;
};

}  // namespace waxtab
