#include <algorithm>

#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

std::optional<BoxId> one_box(Replay& r, const Step& s, const BoxChoice& choice) {
    const Resolved found = resolve_told(r, s.fact, choice);
    if (found.trouble == Resolved::Trouble::none && found.boxes.size() == 1) return found.boxes.front();
    report_trouble(r, s, s.fact.hive, choice, found, false);
    return std::nullopt;
}

void swap_places(Replay& r, HiveId hive, BoxId a, BoxId b) {
    std::vector<Standing>& stack = r.hive(hive).stack;
    std::swap(stack[place_of(r, hive, a)], stack[place_of(r, hive, b)]);
}

/// Lifts a box out of its stack and puts it back in another place; it never left the hive.
void shift(Replay& r, HiveId hive, BoxId box, Placing placing) {
    std::vector<Standing>& stack = r.hive(hive).stack;
    const std::size_t from = place_of(r, hive, box);
    const Standing standing = stack[from];
    stack.erase(stack.begin() + static_cast<std::ptrdiff_t>(from));
    const std::size_t to = place_for(r, hive, r.box(box).role, placing);
    stack.insert(stack.begin() + static_cast<std::ptrdiff_t>(to), standing);
}

/// A count seen on the day the hive came into being tells what was assumed of it.
bool told_at_birth(Replay& r, Step& s, Role role, std::size_t on) {
    HiveState& state = r.state(s.fact.hive);
    if (role != Role::brood || !state.stack_assumed || r.hive(s.fact.hive).born != s.day()) return false;
    for (std::size_t n = on; static_cast<int>(n) < s.fact.count; ++n) {
        const BoxId box = make_box(r, {role, s.fact.box_kind, 0, Comb::unsaid, {}});
        put_on(r, s.fact.hive, box, place_for(r, s.fact.hive, role, Placing::over), s.day(), s.id);
        s.boxes.push_back(box);
    }
    state.stack_assumed = false;
    stack_changed(r, s.fact.hive, s.id);
    return true;
}

void check_count(Replay& r, Step& s, Role role) {
    if (s.fact.count < 0) return;
    const std::size_t on = boxes_on(r, s.fact.hive, role).size();
    if (static_cast<std::size_t>(s.fact.count) == on || told_at_birth(r, s, role, on)) return;
    report_count(r, s, s.fact.hive, role, s.fact.count, on);
}

BoxChoice moved_choice(const Fact& fact) { return choice_to_take(fact, Role::super); }

}  // namespace

std::vector<BoxId> named_boxes(Replay& r, Step& s, HiveId hive, const BoxChoice& choice, bool taking) {
    Resolved found = hive == s.fact.hive ? resolve_told(r, s.fact, choice) : resolve(r, hive, choice);
    if (found.trouble != Resolved::Trouble::none) report_trouble(r, s, hive, choice, found, taking);
    s.boxes = found.boxes;
    return found.boxes;
}

void boxes_swapped(Replay& r, Step& s) {
    const auto a = one_box(r, s, s.fact.box);
    const auto b = a ? one_box(r, s, s.fact.box2) : std::nullopt;
    if (!a || !b) return;
    if (*a == *b) {
        report_same_box(r, s, s.fact.hive, s.fact.box, {s.fact.box2, *b, BoxSighting::What::full, s.id});
        return;
    }
    swap_places(r, s.fact.hive, *a, *b);
    s.boxes = {*a, *b};
    stack_changed(r, s.fact.hive, s.id);
}

void brood_reversed(Replay& r, Step& s) {
    const std::vector<BoxId> on = boxes_on(r, s.fact.hive, Role::brood);
    if (on.size() < 2) {
        report_no_such_box(r, s, s.fact.hive, {BoxChoice::By::number, Role::brood, 2, {}}, no_box);
        return;
    }
    for (std::size_t i = 0; i < on.size() / 2; ++i) swap_places(r, s.fact.hive, on[i], on[on.size() - 1 - i]);
    s.boxes = on;
    stack_changed(r, s.fact.hive, s.id);
}

void super_lifted(Replay& r, Step& s) {
    const auto box = one_box(r, s, s.fact.box);
    if (!box) return;
    shift(r, s.fact.hive, *box, s.fact.placing);
    s.boxes = {*box};
    stack_changed(r, s.fact.hive, s.id);
}

void super_moved(Replay& r, Step& s) {
    const HiveId from = s.fact.hive, to = s.fact.other;
    if (to == no_hive) return;
    if (from == to) return report_with_itself(r, s, from);
    const Placing placing = s.fact.placing == Placing::unsaid ? r.journal.settings.new_supers : s.fact.placing;
    for (const BoxId box : named_boxes(r, s, from, moved_choice(s.fact), true)) {
        take_away(r, from, box, s.day(), s.id);
        put_on(r, to, box, place_for(r, to, r.box(box).role, placing), s.day(), s.id);
    }
    if (s.boxes.empty()) return;
    stack_changed(r, from, s.id);
    stack_changed(r, to, s.id);
}

void box_labelled(Replay& r, Step& s) {
    const auto box = one_box(r, s, s.fact.box);
    if (!box || s.fact.text.empty()) return;
    s.boxes = {*box};
    const BoxId holder = labelled(r, s.fact.hive, s.fact.text);
    if (holder == *box) return;
    if (holder != no_box && stands_on(r, holder) != no_hive) return report_label_twice(r, s, s.fact.text, holder);
    set_label(r, *box, s.fact.text);
}

void super_count(Replay& r, Step& s) { check_count(r, s, Role::super); }
void brood_box_count(Replay& r, Step& s) { check_count(r, s, Role::brood); }

}  // namespace waxtab::replaying
