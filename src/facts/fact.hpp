#pragma once
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "facts/kinds.hpp"
#include "quantity/quantity.hpp"
#include "text/span.hpp"

namespace waxtab {

/// Index into `Journal::hives`; `no_hive` when a fact is not about one hive.
using HiveId = std::int32_t;
inline constexpr HiveId no_hive = -1;
/// Index into `Journal::yards`; `no_yard` when not known.
using YardId = std::int32_t;
inline constexpr YardId no_yard = -1;

/// What boxes are for: brood boxes stand below, supers above.
enum class Role : std::uint8_t { any, brood, super };

/// What the frames of a box hold for the bees to build on.
enum class Comb : std::uint8_t { unsaid, drawn, foundation, wet, strips, cut_comb, sections, mixed };

/// Where a box was put in the stack.
enum class Placing : std::uint8_t {
    unsaid,
    over,    ///< on top of the supers that are on
    under,   ///< next to the brood, below the supers that are on
    between, ///< above the lowest super
};

/// The words by which a fact names boxes of a hive; which boxes they are is decided
/// when the fact takes effect, by the stack at that moment.
struct BoxChoice {
    enum class By : std::uint8_t {
        unsaid,  ///< no box named
        sole,    ///< "the super", "super": the only one, else ask
        top,     ///< the uppermost of its role
        bottom,  ///< the lowest of its role
        middle,  ///< the one between, of three
        number,  ///< counted from the brood up, 1 is the lowest
        label,   ///< its painted label
        all,     ///< every box of its role
        top_n,   ///< the `number` uppermost
    };
    By by = By::unsaid;
    Role role = Role::super;
    std::uint8_t number = 0;
    std::string label;

    friend bool operator==(const BoxChoice&, const BoxChoice&) = default;
};

/// What was left unsaid and taken as usual; printed beside the fact.
enum Assumption : std::uint16_t {
    assumed_box_kind = 1,   ///< box kind from the default super or brood kind
    assumed_placing = 2,    ///< place of a new super from the setting
    assumed_full = 4,       ///< a bare share of a super read as how full it is
    assumed_unit = 8,       ///< unit of a bare number from the settings
    assumed_year = 16,      ///< year of a date from the heading before or the set-up
    assumed_order = 32,     ///< shares of several supers read from the brood up, weights of several from the top
    assumed_comb = 64,      ///< comb of a new super unsaid, taken as drawn
    assumed_each = 128,     ///< a count said of several hives taken as each
    assumed_fob = 256,      ///< FOB taken as frames of bees
};

/// One thing the keeper wrote down, typed. Which fields a kind uses is said in kinds.hpp.
/// All words of closed lists (`detail`, `manner`) point to static text.
struct Fact {
    Kind kind = Kind::remark;
    Day happened{};
    Day noted{};
    /// Minutes after midnight, -1 when not said.
    std::int16_t minute = -1;
    std::uint16_t assumed = 0;
    YardId yard = no_yard;
    HiveId hive = no_hive;
    /// The other hive of a move, union, split or swarm.
    HiveId other = no_hive;
    BoxChoice box;
    BoxChoice box2;
    Placing placing = Placing::unsaid;
    Comb comb = Comb::unsaid;
    /// Frames in the box as written (drawn9: 9), 0 when unsaid.
    std::int16_t frames = 0;
    /// How many boxes, jars, cells, cups, mites; -1 when unsaid.
    std::int32_t count = -1;
    /// How many as written, where the words left it open: `4-5`, `about 10`, `at least 5`; `count` is then the middle,
    /// half rounded up. Of queen cells, cups and mites only.
    Measure count_range;
    Measure value;
    Measure second;
    /// A trade term of the kind's closed list, such as `heavy` for a flow.
    std::string_view detail;
    /// A second such term, such as the kind of queen cell.
    std::string_view manner;
    /// Name of a box kind, such as `medium`; empty when unsaid.
    std::string box_kind;
    /// Free words: a remark, a plant, a buyer, a batch.
    std::string text;
    /// `text` is where it was sold, no buyer.
    bool at_place = false;
    std::string lot;
    /// Several hives or lots where a kind takes them (extracted from, blended from).
    std::vector<HiveId> hives;
    std::vector<std::string> lots;
    Span span;
};

/// One and no other number: not `1-2`.
inline bool is_one(const Fact& fact) { return fact.count == 1 && !fact.count_range.said(); }

}  // namespace waxtab
