#include <algorithm>

#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

using Life = HiveState::Life;

/// A hive ends; what was given or put in for the bees ends with it.
void end_life(Replay& r, const Step& s, HiveId id) {
    HiveHistory& hive = r.hive(id);
    hive.alive = false;
    hive.ended = s.day();
    hive.end_fact = s.id;
    r.state(id).life = Life::gone;
    for (Feeding& f : hive.feedings)
        if (!f.to) f.to = s.day();
    for (Treating& t : hive.treatings)
        if (!t.to) t.to = s.day();
}

/// Takes every box off a hive, from the floor up, and what stood between them to the shed.
std::vector<BoxId> clear_stack(Replay& r, Step& s, HiveId id, bool gear_to_shed) {
    const std::vector<BoxId> boxes = boxes_on(r, id, Role::any);
    for (const BoxId box : boxes) take_away(r, id, box, s.day(), s.id);
    for (const Standing& left : r.hive(id).stack) {
        if (!gear_to_shed) break;
        if (left.what == StackPart::What::excluder) gear_into_shed(r, s, "excluder");
        if (left.what == StackPart::What::escape) gear_into_shed(r, s, "escape board");
    }
    r.hive(id).stack.clear();
    stack_changed(r, id, s.id);
    return boxes;
}

std::size_t above_all_boxes(const Replay& r, HiveId id) {
    const std::vector<BoxId> boxes = boxes_on(r, id, Role::any);
    return boxes.empty() ? 0 : place_of(r, id, boxes.back()) + 1;
}

bool says_to_shed(const Fact& f) {
    return f.detail == "shed" || f.manner == "shed" || f.text.find("shed") != std::string::npos;
}

/// What nobody told of a new hive: one brood box of the usual kind.
void assume_brood_box(Replay& r, const Step& s, HiveId id) {
    const BoxId box = make_box(r, {Role::brood, {}, 0, Comb::unsaid, {}});
    put_on(r, id, box, 0, s.day(), s.id);
    r.state(id).stack_assumed = true;
    r.state(id).stack_fact = s.id;
}

void come_into_being(Replay& r, const Step& s, HiveId id, HiveId mother) {
    HiveState& state = r.state(id);
    if (state.life == Life::living) return report_already_living(r, s, id);
    HiveHistory& hive = r.hive(id);
    state.life = Life::living;
    state.birth_fact = s.id;
    hive.alive = true;
    hive.born = s.day();
    hive.ended.reset();
    hive.end_fact = set_up_fact;
    hive.united_into = no_hive;
    hive.mother = mother;
    const YardId declared = r.journal.hives[static_cast<std::size_t>(id)].yard;
    if (hive.yards.empty()) hive.yards.emplace_back(s.day(), declared == no_yard ? s.fact.yard : declared);
    if (hive.stack.empty()) assume_brood_box(r, s, id);
}

}  // namespace

void hive_moved(Replay& r, Step& s) {
    HiveHistory& hive = r.hive(s.fact.hive);
    if (s.fact.yard == no_yard) return;
    if (!hive.yards.empty() && hive.yards.back().second == s.fact.yard) return report_already_there(r, s, s.fact.hive);
    hive.yards.emplace_back(s.day(), s.fact.yard);
    r.state(s.fact.hive).yard_fact = s.id;
}

/// A sold hive leaves with its boxes.
void hive_sold(Replay& r, Step& s) {
    s.boxes = clear_stack(r, s, s.fact.hive, false);
    for (const BoxId box : s.boxes) r.box_state(box).where = Whereabouts::gone;
    end_life(r, s, s.fact.hive);
}

/// A dead hive's boxes stand until they are taken away.
void hive_dead(Replay& r, Step& s) { hive_ended(r, s); }

void hive_ended(Replay& r, Step& s) {
    const HiveId id = s.fact.hive;
    if (says_to_shed(s.fact)) {
        s.boxes = clear_stack(r, s, id, true);
        for (const BoxId box : s.boxes) into_shed(r, s, box, comb_left(r, box));
    }
    if (r.state(id).life == Life::living) end_life(r, s, id);
}

/// Its boxes go on top of the other hive's.
void hive_united(Replay& r, Step& s) {
    const HiveId gone = s.fact.hive, other = s.fact.other;
    if (gone == other) return report_with_itself(r, s, gone);
    s.boxes = clear_stack(r, s, gone, true);
    end_life(r, s, gone);
    r.hive(gone).united_into = other;
    if (other == no_hive) return;
    for (const BoxId box : s.boxes) put_on(r, other, box, above_all_boxes(r, other), s.day(), s.id);
    stack_changed(r, other, s.id);
}

void hive_born(Replay& r, Step& s) { come_into_being(r, s, s.fact.hive, s.fact.other); }

void hive_divided(Replay& r, Step& s) {
    if (s.fact.other == no_hive) return;
    if (s.fact.other == s.fact.hive) return report_with_itself(r, s, s.fact.hive);
    come_into_being(r, s, s.fact.other, s.fact.hive);
}

}  // namespace waxtab::replaying
