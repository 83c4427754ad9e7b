#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "estimate/estimate.hpp"
#include "ledger/ledger.hpp"
#include "report/style.hpp"
#include "text/layout.hpp"

namespace waxtab {

/// `from`, `at` or `to`: what stands between honey that went and `going.to`.
constexpr std::string_view way_of(const Going& going) { return going.how == "come back" ? "from" : going.at_place ? "at" : "to"; }

/// Before the lines that tell more of a piece of advice or a record.
constexpr std::string_view inner_indent = "    ";

/// `8.2 kg (6.9-9.6)`, of kilograms; in pounds when the style says so.
std::string kg_text(const Range& kg, const Style& style);
/// As above with two decimals for the value; without a range when weighed.
std::string mass_text(const MassRange& mass, const Style& style);
/// `41.30 kg`.
std::string mass_text(Mass mass, const Style& style);
/// Shares 0..1 as `35% (20-50)`; `35%` when the bounds round to the same.
std::string share_text(const Range& share);
/// `6 days (3-14)`; without an upper bound `6 days (3 or more)`.
std::string days_text(const Range& days);
/// `1.9 kg a day (0.8-3.0)`.
std::string rate_text(const Range& kg_per_day, const Style& style);

/// `1 super`, `2 supers`; the plural adds an s, or is given.
std::string counted(std::int64_t n, std::string_view one, std::string_view many = {});

/// What a box is, in words: `super, medium, 9 frames, drawn, "B4"`.
std::string box_text(const Journal& journal, const Box& box);
/// `drawn`, `foundation`, `wet` ...; empty for unsaid.
std::string_view comb_text(Comb comb);

/// `file:line` of each fact, once each, lines of one file together: `mill.hive:7,9 honey.hive:3`; empty without refs.
std::string refs_text(const Journal& journal, const std::vector<FactId>& facts, const Style& style);
/// `file:line` of a fact, or of the set-up line of `hive` for `set_up_fact`; empty without refs.
std::string ref_text(const Journal& journal, FactId fact, HiveId hive, const Style& style);

/// The short form of a fact, without its hive where the reader sees that already.
std::string words_of(const Journal& journal, const Fact& fact, bool with_hive);

/// A line `left` with `ref` at the right edge of the page, on a line of its own when both do not fit;
/// `left` is wrapped, later lines after `rest`.
std::string with_ref(std::string_view left, std::string_view first, std::string_view rest, std::string_view ref);

}  // namespace waxtab
