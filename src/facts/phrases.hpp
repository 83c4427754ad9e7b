#pragma once
#include <string>
#include <string_view>
#include <utility>

#include "facts/fact.hpp"

// The parts that facts written back are put together from.
namespace waxtab {

/// Builds a line word by word.
class Words {
public:
    Words& operator()(std::string_view word) {
        if (word.empty()) return *this;
        if (!text_.empty() && text_.back() != '+' && text_.back() != '-') text_ += ' ';
        text_ += word;
        return *this;
    }
    std::string text() && { return std::move(text_); }

private:
    std::string text_;
};

/// The parts that are not empty, with blanks between.
template <typename... Parts>
std::string words(Parts... parts) {
    Words w;
    (w(parts), ...);
    return std::move(w).text();
}

/// Free words in quotes; quote marks inside are doubled.
std::string quoted(std::string_view text);
/// `1 super`, `2 supers`; the noun alone when the number is not known.
std::string plural(int n, std::string_view noun);
/// A box as a line names it; empty when unsaid.
std::string box_words(const BoxChoice& b);
/// The comb that tells one super from the others.
std::string_view telling_comb(Comb comb);
/// As before a share: `top 70% capped`, `cut comb super 90% capped`.
std::string short_box(const Fact& f);
/// What the frames hold, with their number where said: `drawn9`.
std::string comb_words(const Fact& f);
/// `over`, `under`, `between`.
std::string_view place_words(Placing p);
/// `about 6`, `8-9`, `6`.
std::string count_text(const Measure& m);
/// A share as said: `70%`, `7 of 9 frames`, `half`.
std::string share_words(const Measure& m);
/// `40 x 454 g`, `12 jars`, or a mass in bulk.
std::string jars_words(const Fact& f);
/// Sections or pieces of cut comb.
std::string_view comb_noun(const Fact& f);
/// `lot A`, or nothing.
std::string lot_words(const Fact& f);
/// A preposition and free words in quotes, or nothing.
std::string free_words(std::string_view preposition, const std::string& text);
/// `1st`, `22nd`.
std::string ordinal(int n);

}  // namespace waxtab
