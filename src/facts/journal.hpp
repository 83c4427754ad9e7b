#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "diagnostics/diagnostic.hpp"
#include "facts/fact.hpp"
#include "facts/settings.hpp"
#include "text/source.hpp"

namespace waxtab {

/// One part of a declared stack, from the floor up.
struct StackPart {
    enum class What : std::uint8_t { box, excluder, escape, feeder, upper_entrance };
    What what = What::box;
    Role role = Role::brood;
    std::string box_kind;   ///< as written or the default kind; never empty for a box
    Comb comb = Comb::unsaid;
    int frames = 0;         ///< 0: the kind's own number
    std::string label;
    bool assumed_kind = false;
    bool assumed_comb = false;
};

/// A hive of the journal: declared by a set-up line, or brought into being by a fact.
struct HiveDecl {
    std::string name;                  ///< as first written
    std::vector<std::string> aliases;
    YardId yard = no_yard;             ///< where it stands at first
    std::vector<StackPart> stack;      ///< as set up; empty for a hive born of a fact
    bool nucleus = false;
    bool declared = false;
    Span span;                         ///< the set-up line, or the line of its birth
};

struct YardDecl {
    std::string name;
    std::vector<std::string> aliases;
    bool declared = false;
    Span span;
};

/// A stretch of the journal and what was made of it; the read-back is printed from these.
struct Reading {
    enum class Outcome : std::uint8_t {
        facts,      ///< read; see `first_fact`, `fact_count`
        heading,    ///< a day heading
        set_up,     ///< a set-up line
        remark,     ///< kept word for word
        todo,
        put_out,    ///< a done-word or sign put out of force by a plan or a negation; kept as remark or to-do
        ambiguous,  ///< two readings; kept as a remark and an error
    };
    Outcome outcome = Outcome::remark;
    Span span;
    /// Indices into `Journal::facts`.
    std::vector<std::uint32_t> facts;
    /// For `put_out`: the word that governs, such as `will` or `didn't`.
    std::string because;
};

/// A whole journal, read: set-up, facts in the order they take effect, and what is wrong with it.
struct Journal {
    Sources sources;
    Settings settings;
    std::vector<BoxKind> box_kinds;
    std::vector<YardDecl> yards;
    std::vector<HiveDecl> hives;
    /// In order of effect: day happened, time, file, line. `all` and lists of hives are spread out,
    /// one fact a hive.
    std::vector<Fact> facts;
    std::vector<Reading> readings;
    Diagnostics diagnostics;

    HiveId hive(std::string_view name_or_alias) const;
    YardId yard(std::string_view name_or_alias) const;
    const BoxKind* box_kind(std::string_view name) const;
    std::string_view hive_name(HiveId id) const { return id < 0 ? std::string_view{} : hives[static_cast<std::size_t>(id)].name; }
    std::string_view yard_name(YardId id) const { return id < 0 ? std::string_view{} : yards[static_cast<std::size_t>(id)].name; }
};

/// A file handed to the reader: its name as it shall appear in references, and its bytes.
struct JournalFile {
    std::string name;
    std::string bytes;
};

/// Reads a journal. Never fails: what is wrong becomes diagnostics, what is not understood remarks.
/// Files are taken in bytewise order of their names. `today` is the day stood on: facts noted
/// after it are read and checked but marked by `Journal` users through `noted`; it also serves to
/// warn of headings after it.
Journal read_journal(std::vector<JournalFile> files, Day today);

/// The long form of a fact, itself valid notation, without the trailing comment of assumptions:
/// `2026-06-03 mill h3 top 70% capped`. What a set-up line brought (what is in the shed) has no date.
std::string long_form(const Journal& journal, const Fact& fact);
/// The long form without date and yard: `h3 top 70% capped`.
std::string short_form(const Journal& journal, const Fact& fact);
/// What was assumed for a fact, in words: `on top (not said)`; empty when nothing was.
std::vector<std::string> assumptions(const Journal& journal, const Fact& fact);

/// The set-up of a journal as set-up lines that read back to the same; printed before the facts.
std::vector<std::string> set_up_lines(const Journal& journal);

}  // namespace waxtab
