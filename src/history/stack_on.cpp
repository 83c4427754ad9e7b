#include <algorithm>

#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

/// A super put on again within so many days, with nothing said of its comb, went back with its honey.
constexpr int days_unextracted = 3;

/// A box that was taken off with honey and never said to be extracted goes on again: empty, or as it was.
void settle_waiting(Replay& r, const Step& s, BoxId box) {
    const auto at = static_cast<std::size_t>(r.box_state(box).taking);
    Taking& taking = r.out.takings[at];
    const bool soon = days_between(taking.day, s.day()) <= days_unextracted;
    if (s.fact.comb != Comb::unsaid || taking.tare || !soon) {
        r.box(box).emptied.push_back(s.day());
        return;
    }
    taking.returned = s.day();
    taking.harvest = false;
    no_longer_waiting(r, at);
}

void put_again(Replay& r, const Step& s, BoxId id) {
    BoxState& state = r.box_state(id);
    Box& box = r.box(id);
    const bool was_waiting = state.where == Whereabouts::waiting;
    if (was_waiting) settle_waiting(r, s, id);
    const bool emptied = was_waiting && !r.out.takings[static_cast<std::size_t>(state.taking)].returned;
    box.comb_assumed = s.fact.comb == Comb::unsaid;
    if (!box.comb_assumed) box.comb = s.fact.comb;
    else if (emptied) box.comb = comb_left(r, id);
    else if (state.where == Whereabouts::in_shed) box.comb = state.shed_comb;
    if (s.fact.frames > 0) box.frames = s.fact.frames;
    if (!s.fact.box_kind.empty()) box.kind = s.fact.box_kind, box.kind_assumed = false;
    if (state.where == Whereabouts::in_shed) from_shed(r, s, box.kind, state.shed_comb, 1);
}

BoxId brand_new(Replay& r, const Step& s, Role role, const std::string& label) {
    const Fact& f = s.fact;
    const BoxId id = make_box(r, {role, f.box_kind, f.frames, f.comb, label});
    from_shed(r, s, r.box(id).kind, f.comb, 1);
    return id;
}

/// The box of that label if it can be put on; a new one else. `no_box` when it stands on this hive already.
BoxId box_to_put(Replay& r, const Step& s, Role role) {
    const std::string& label = s.fact.box.label;
    const BoxId known = label.empty() ? no_box : labelled(r, s.fact.hive, label);
    if (known == no_box || r.box_state(known).where == Whereabouts::gone) return brand_new(r, s, role, label);
    if (r.box_state(known).where != Whereabouts::on_hive) {
        put_again(r, s, known);
        r.box(known).role = role;
        return known;
    }
    report_label_twice(r, s, label, known);
    return stands_on(r, known) == s.fact.hive ? no_box : brand_new(r, s, role, label);
}

void boxes_put_on(Replay& r, Step& s, Role role, Placing placing) {
    const int count = std::max(1, s.fact.count);
    for (int i = 0; i < count; ++i) {
        const BoxId box = box_to_put(r, s, role);
        if (box == no_box) return;
        put_on(r, s.fact.hive, box, place_for(r, s.fact.hive, role, placing), s.day(), s.id);
        s.boxes.push_back(box);
    }
    stack_changed(r, s.fact.hive, s.id);
}

}  // namespace

void super_on(Replay& r, Step& s) {
    const Placing said = s.fact.placing;
    boxes_put_on(r, s, Role::super, said == Placing::unsaid ? r.journal.settings.new_supers : said);
}

void brood_box_on(Replay& r, Step& s) {
    boxes_put_on(r, s, Role::brood, s.fact.placing);
    r.state(s.fact.hive).stack_assumed = false;
}

}  // namespace waxtab::replaying
