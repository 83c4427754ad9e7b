#pragma once
#include <optional>
#include <string>
#include <vector>

#include "diagnostics/diagnostic.hpp"
#include "facts/lexicon.hpp"
#include "facts/settings.hpp"
#include "facts/tokens.hpp"

namespace waxtab {

/// A meaningful part of a clause: a term, an amount, hives, a box, jars.
struct Item {
    enum class What : std::uint8_t {
        term,     ///< `words`
        value,    ///< `value`
        slash,    ///< n/m, in `n` and `m`; may also serve as a share
        ratio,    ///< n:m
        hives,    ///< `hives`, `all`, `but`; `role` the preposition before it
        yard,     ///< `yard`
        box,      ///< `box`; `box2` where two were named together (top and bottom)
        jars,     ///< `count` x `value`
        lot,      ///< `lots`
        new_name, ///< a name after hived as, split into ...; `text`
        quoted,
        day,      ///< `day`; `since` for a state that holds from then on
        unknown,
        sign,     ///< + or -, in `text`
        stop,     ///< punctuation, in `text`: `,` `;` `.` `(` `)` `:` `-` `?` ...
    };
    enum class Role : std::uint8_t { none, from, to, into, with };
    What what = What::unknown;
    Role role = Role::none;
    std::vector<const grammar::Word*> words;
    std::string box_kind;
    Measure value;
    bool counted = false;        ///< a number belongs to the thing: `count_value`
    Measure count_value;
    int count = -1;
    int n = 0, m = 0;
    BoxChoice box, box2;
    std::vector<HiveId> hives;
    std::vector<std::string> unknown_hives;
    bool all = false;            ///< all hives of the yard, but `but`
    bool rest = false;           ///< those of the yard not spoken of yet in this visit
    bool both = false;           ///< the two
    std::vector<HiveId> but;
    YardId yard = no_yard;
    std::vector<std::string> lots;
    std::string text;
    Day day{};
    bool since = false;
    /// Said by the way: a reading may pass over it (`on` in `put a super on h3`).
    bool loose = false;
    /// Of words no reading needs (a price, which frame): kept beside the facts where they hold a number.
    bool aside = false;
    bool about = false;
    bool unit_assumed = false;
    std::uint32_t begin = 0, end = 0;

    /// True when one of its meanings is the term.
    bool is(std::string_view term) const;
    bool has(grammar::Class klass) const;
    const grammar::Word* word(grammar::Class klass) const;
    /// May be passed over.
    bool idle() const;
};

/// What items are read against: names, settings and the day they were noted.
struct ItemContext {
    const Lexicon* lexicon = nullptr;
    const Settings* settings = nullptr;
    Day noted{};
    /// The line speaks of cells or brood, so that `both sealed` is of no super.
    bool of_other_things = false;
};

/// Turns the tokens of one clause into items: longest phrases first, numbers bound to what they count.
std::vector<Item> itemise(const std::vector<Token>& tokens, const ItemContext& context);

}  // namespace waxtab
