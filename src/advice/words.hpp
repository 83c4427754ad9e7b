#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "advice/context.hpp"
#include "text/layout.hpp"

namespace waxtab {

/// `1 super`, `3 supers`.
std::string counted(int n, std::string_view noun);
/// `2 to 5 kg of honey, likely 3`, in the keeper's unit, with `of` after the unit; both bounds alike: `3 kg of honey`.
std::string kg_words(const Range& kg, MassUnit unit, std::string_view of = {});
/// `70% (60-80%)` of shares 0..1.
std::string share_words(const Range& share);
/// `7 in 10`; never more than `19 in 20` nor less than `1 in 20`.
std::string odds(double chance);
/// `h1, h2 and h5`; `all hives` when they are all of the yard and more than three.
std::string hive_names(const YardView& yard, const std::vector<HiveId>& hives);
/// `the super` when it is the only one, `the top super`, `the bottom super`, `super 2`; a label is added: `super "B4"`.
std::string super_name(const HiveView& hive, const SuperView& super);
/// `8 days ago (2026-06-03)`, `today`, `yesterday (...)`.
std::string ago(Day day, Day on);
/// `18.5%` of permille.
std::string permille_words(std::int64_t permille);
/// `29.5` with at most one decimal.
std::string decimal(double value);
/// The name of a box kind and its comb: `medium super, drawn`.
std::string box_words(std::string_view kind, Comb comb);
std::string_view comb_word(Comb comb);

}  // namespace waxtab
