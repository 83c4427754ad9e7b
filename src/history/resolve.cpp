#include "history/resolve.hpp"

#include <fmt/format.h>

namespace waxtab::replaying {
namespace {

using By = BoxChoice::By;
using Trouble = Resolved::Trouble;

Resolved found(std::vector<BoxId> boxes) { return {std::move(boxes), Trouble::none, no_box}; }
Resolved trouble(Trouble what) { return {{}, what, no_box}; }

Resolved by_label(const Replay& r, HiveId hive, const std::string& label) {
    const BoxId box = labelled(r, hive, label);
    if (box != no_box && stands_on(r, box) == hive && hive != no_hive) return found({box});
    return {{}, Trouble::absent, box};
}

Resolved only_one(const std::vector<BoxId>& on) {
    if (on.size() > 1) return trouble(Trouble::which);
    return found(on);
}

/// The middle one is clear of three only; of four or more, ask.
Resolved middle(const std::vector<BoxId>& on) {
    if (on.size() > 3) return trouble(Trouble::which);
    return on.size() == 3 ? found({on[1]}) : trouble(Trouble::absent);
}

Resolved uppermost(const std::vector<BoxId>& on, std::size_t n) {
    if (n > on.size()) return trouble(Trouble::absent);
    return found({on.end() - static_cast<std::ptrdiff_t>(n), on.end()});
}

const char* role_word(Role role) { return role == Role::brood ? "brood box" : role == Role::any ? "box" : "super"; }
std::string plural(Role role) { return role == Role::super ? "supers" : std::string(role_word(role)) + "es"; }

}  // namespace

Resolved resolve(const Replay& r, HiveId hive, const BoxChoice& choice) {
    if (choice.by == By::label) return by_label(r, hive, choice.label);
    const std::vector<BoxId> on = boxes_on(r, hive, choice.role);
    if (on.empty()) return trouble(Trouble::absent);
    switch (choice.by) {
        case By::top: return found({on.back()});
        case By::bottom: return found({on.front()});
        case By::middle: return middle(on);
        case By::number:
            if (choice.number < 1 || choice.number > on.size()) return trouble(Trouble::absent);
            return found({on[choice.number - 1u]});
        case By::all: return found(on);
        case By::top_n: return uppermost(on, choice.number);
        default: return only_one(on);
    }
}

Resolved resolve_told(const Replay& r, const Fact& fact, const BoxChoice& choice) {
    Resolved all = resolve(r, fact.hive, choice);
    const Comb comb = fact.kind == Kind::sections_done ? Comb::sections : fact.comb;
    const bool told = comb != Comb::unsaid || !fact.box_kind.empty();
    const bool all_such = choice.by == By::all && comb == Comb::wet;   // the wet supers off
    if ((all.trouble != Trouble::which && !all_such) || !told) return all;
    std::vector<BoxId> fitting = boxes_on(r, fact.hive, choice.role);
    std::erase_if(fitting, [&](BoxId id) {
        const Box& b = r.box(id);
        return (comb != Comb::unsaid && b.comb != comb) || (!fact.box_kind.empty() && b.kind != fact.box_kind);
    });
    return fitting.size() == 1 || (all_such && !fitting.empty()) ? found(std::move(fitting)) : all;
}

BoxChoice choice_to_take(const Fact& fact, Role role) {
    BoxChoice choice = fact.box;
    if (choice.by == By::unsaid) choice.role = role;
    const bool open = choice.by == By::unsaid || choice.by == By::sole || choice.by == By::top;
    if (fact.count > 1 && open) choice.by = By::top_n, choice.number = static_cast<std::uint8_t>(fact.count > 250 ? 250 : fact.count);
    return choice;
}

std::string in_words(const BoxChoice& choice) {
    const std::string word = role_word(choice.role);
    switch (choice.by) {
        case By::top: return "top " + word;
        case By::bottom: return "bottom " + word;
        case By::middle: return "middle " + word;
        case By::number: return fmt::format("{} {}", word, choice.number);
        case By::label: return fmt::format("{} \"{}\"", word, choice.label);
        case By::all: return "all " + plural(choice.role);
        case By::top_n: return counted(choice.number, choice.role);
        default: return word;
    }
}

std::string counted(std::size_t n, Role role) {
    if (n == 0) return "no " + plural(role);
    return fmt::format("{} {}", n, n == 1 ? std::string(role_word(role)) : plural(role));
}

}  // namespace waxtab::replaying
