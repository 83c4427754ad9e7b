#include <algorithm>

#include "history/replay.hpp"

namespace waxtab::replaying {
namespace {

bool is_box(const Replay& r, const Standing& s, Role role) {
    return s.box != no_box && (role == Role::any || r.box(s.box).role == role);
}

/// Just above the brood: over the lowest run of brood boxes and the excluder on them.
std::size_t above_brood(const Replay& r, const std::vector<Standing>& stack) {
    std::size_t at = 0;
    for (std::size_t i = 0; i < stack.size() && !is_box(r, stack[i], Role::super); ++i)
        if (is_box(r, stack[i], Role::brood) || stack[i].what == StackPart::What::excluder) at = i + 1;
    return at;
}

std::size_t place_for_super(const Replay& r, const std::vector<Standing>& stack, Placing placing) {
    const auto super = [&](const Standing& s) { return is_box(r, s, Role::super); };
    const auto lowest = std::find_if(stack.begin(), stack.end(), super);
    if (lowest == stack.end()) return above_brood(r, stack);
    if (placing == Placing::under) return static_cast<std::size_t>(lowest - stack.begin());
    if (placing == Placing::between) return static_cast<std::size_t>(lowest - stack.begin()) + 1;
    const auto highest = std::find_if(stack.rbegin(), stack.rend(), super);
    return static_cast<std::size_t>(highest.base() - stack.begin());
}

std::size_t place_for_brood(const Replay& r, const std::vector<Standing>& stack, Placing placing) {
    if (placing == Placing::under) return 0;
    std::size_t at = 0;
    for (std::size_t i = 0; i < stack.size(); ++i) {
        if (stack[i].what == StackPart::What::excluder || is_box(r, stack[i], Role::super)) break;
        if (is_box(r, stack[i], Role::brood)) at = i + 1;
    }
    return at;
}

}  // namespace

std::size_t place_for(const Replay& r, HiveId hive, Role role, Placing placing) {
    const std::vector<Standing>& stack = r.hive(hive).stack;
    return role == Role::brood ? place_for_brood(r, stack, placing) : place_for_super(r, stack, placing);
}

void put_on(Replay& r, HiveId hive, BoxId box, std::size_t at, std::optional<Day> since, FactId fact) {
    std::vector<Standing>& stack = r.hive(hive).stack;
    stack.insert(stack.begin() + static_cast<std::ptrdiff_t>(at), Standing{StackPart::What::box, box, since, fact});
    r.box(box).stays.push_back(BoxStay{hive, since, std::nullopt, fact, set_up_fact});
    r.box_state(box).where = Whereabouts::on_hive;
}

std::size_t place_of(const Replay& r, HiveId hive, BoxId box) {
    const std::vector<Standing>& stack = r.hive(hive).stack;
    const auto found = std::find_if(stack.begin(), stack.end(), [&](const Standing& s) { return s.box == box; });
    return static_cast<std::size_t>(found - stack.begin());
}

void take_away(Replay& r, HiveId hive, BoxId box, Day day, FactId fact) {
    std::vector<Standing>& stack = r.hive(hive).stack;
    stack.erase(stack.begin() + static_cast<std::ptrdiff_t>(place_of(r, hive, box)));
    BoxStay& stay = r.box(box).stays.back();
    stay.to = day;
    stay.off_fact = fact;
    r.state(hive).off_fact = fact;
}

std::vector<BoxId> boxes_on(const Replay& r, HiveId hive, Role role) {
    std::vector<BoxId> found;
    if (hive == no_hive) return found;
    for (const Standing& s : r.hive(hive).stack)
        if (is_box(r, s, role)) found.push_back(s.box);
    return found;
}

void stack_changed(Replay& r, HiveId hive, FactId fact) {
    HiveState& state = r.state(hive);
    state.stack_fact = fact;
    state.stack_assumed = false;
    state.reported.clear();
    state.read_today.clear();
}

}  // namespace waxtab::replaying
