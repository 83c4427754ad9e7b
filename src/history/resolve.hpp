#pragma once
#include "history/replay.hpp"

namespace waxtab::replaying {

/// Which boxes the words of a fact mean, by the stack at that moment.
struct Resolved {
    enum class Trouble : std::uint8_t { none, absent, which };
    std::vector<BoxId> boxes;      ///< from the floor up; empty when there is trouble
    Trouble trouble = Trouble::none;
    /// The box of that label that stands elsewhere or nowhere; `no_box` when the label is not known.
    BoxId elsewhere = no_box;
};

/// `unsaid` is taken as `sole`: the only one of its role.
Resolved resolve(const Replay& r, HiveId hive, const BoxChoice& choice);

/// As `resolve` for the choice; where several boxes answer to it and the fact tells comb or kind, those of that
/// comb or kind: `cut comb super 90% capped`.
Resolved resolve_told(const Replay& r, const Fact& fact, const BoxChoice& choice);

/// The choice a fact that takes boxes off makes: a count with no box named means the uppermost.
BoxChoice choice_to_take(const Fact& fact, Role role);

/// `top super`, `super 3`, `super "B4"`, `all supers`.
std::string in_words(const BoxChoice& choice);
/// `no supers`, `1 super`, `3 supers`.
std::string counted(std::size_t n, Role role);

}  // namespace waxtab::replaying
