#pragma once
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "facts/fact.hpp"
#include "words.hpp"

namespace waxtab {

/// What a run of words can mean: terms of the vocabulary, a hive or yard by name, a box kind.
struct Meaning {
    std::size_t length = 0;                    ///< tokens it covers
    std::vector<const grammar::Word*> words;   ///< in table order
    HiveId hive = no_hive;
    YardId yard = no_yard;
    std::string box_kind;
};

/// The vocabulary together with the names a journal declares.
class Lexicon {
public:
    void add_hive(std::string_view name, HiveId id);
    void add_yard(std::string_view name, YardId id);
    void add_box_kind(std::string_view name);
    /// A label painted on a box, written in quotes somewhere in the journal: `B4`. Letters and a number
    /// only, so that it may be written without the quotes elsewhere.
    void add_label(std::string_view name);
    /// The label as first written, empty when it is none.
    std::string label(std::string_view lower_name) const;

    /// The longest meaning of the lower-case words from `at` on; length 0 when there is none.
    Meaning find(const std::vector<std::string>& words, std::size_t at) const;
    /// Hive named so, also written as `hive 3`, `#3`, `No. 3` or `h3`; no_hive when there is none.
    HiveId hive(std::string_view lower_name) const;
    YardId yard(std::string_view lower_name) const;
    /// True when the word starts nothing in the vocabulary and is no name.
    bool unknown(std::string_view lower_word) const;
    /// A label begins so, with a number after it: `s` where a box is called S1.
    bool labels_begin_with(std::string_view stem) const;
    /// The known word nearest to `lower_word` by edits, empty when none is near; hives and yards too.
    std::string nearest(std::string_view lower_word) const;
    /// The declared hive name nearest to `lower_name`, empty when none is near.
    std::string nearest_hive(std::string_view lower_name) const;

private:
    struct Entry {
        std::vector<std::string> words;
        Meaning meaning;
    };
    using Entries = std::map<std::string, std::vector<Entry>, std::less<>>;
    /// The vocabulary alone, built once.
    static const Entries& vocabulary();
    static void add_to(std::vector<Entry>& entries, Entry entry);
    void add(std::string_view surface, const Meaning& meaning);
    /// The entries that begin with the word; null when there are none.
    const std::vector<Entry>* beginning_with(std::string_view first) const;
    std::vector<const Entry*> longest(const std::vector<std::string>& words, std::size_t at) const;

    /// Entries of the first words of names; they hold the vocabulary's entries of those words too.
    Entries names_;
    std::map<std::string, HiveId, std::less<>> hives_;
    std::map<std::string, YardId, std::less<>> yards_;
    std::map<std::string, std::string, std::less<>> labels_;
};

/// The form under which hive names are compared: lower case, `hive 3`, `#3`, `no. 3`, `3` all as `h3`.
std::string hive_key(std::string_view name);

/// Number of single-letter changes, insertions, losses and swaps of neighbours between two words.
std::size_t edit_distance(std::string_view a, std::string_view b);

/// The pieces of `text` between separators; empty ones are left out.
std::vector<std::string> parts_of(std::string_view text, char separator);
/// Splits at blanks.
std::vector<std::string> words_of(std::string_view text);

}  // namespace waxtab
