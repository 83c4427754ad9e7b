#include "history/contradictions.hpp"
#include "history/replay.hpp"

namespace waxtab::replaying {
namespace {

/// The hive a fact brings into being, if it is of that kind.
HiveId born_by(const Fact& f) {
    if (f.kind == Kind::swarm_hived || f.kind == Kind::hive_bought) return f.hive;
    if (divides(f.kind)) return f.other;
    return no_hive;
}

/// Marks the hives that are not there yet at first: those not set up, and those set up whose first fact is
/// their birth.
void find_births(Replay& r) {
    std::vector<bool> spoken_of(r.states.size());
    const auto speak = [&](HiveId h) { if (h != no_hive) spoken_of[static_cast<std::size_t>(h)] = true; };
    for (FactId id = 0; id < r.journal.facts.size(); ++id) {
        const Fact& f = r.journal.facts[id];
        const HiveId born = born_by(f);
        if (born != no_hive) {
            HiveState& state = r.state(born);
            const bool declared = r.journal.hives[static_cast<std::size_t>(born)].declared;
            const bool first = state.birth_fact == set_up_fact && (!declared || !spoken_of[static_cast<std::size_t>(born)]);
            if (first) state.birth_fact = id, state.life = HiveState::Life::unborn;
        }
        if (f.kind != Kind::todo && f.kind != Kind::remark) speak(f.hive), speak(f.other);
    }
}

void put_part(Replay& r, HiveId hive, const StackPart& part) {
    std::vector<Standing>& stack = r.hive(hive).stack;
    if (part.what != StackPart::What::box) {
        stack.push_back({part.what, no_box, std::nullopt, set_up_fact});
        return;
    }
    const Role role = part.role == Role::super ? Role::super : Role::brood;
    const BoxId box = make_box(r, {role, part.box_kind, part.frames, part.comb, part.label});
    r.box(box).kind_assumed = part.assumed_kind;
    put_on(r, hive, box, stack.size(), std::nullopt, set_up_fact);
}

void set_up_hive(Replay& r, HiveId id) {
    const HiveDecl& decl = r.journal.hives[static_cast<std::size_t>(id)];
    HiveHistory& hive = r.hive(id);
    hive.hive = id;
    const bool unborn = r.state(id).life == HiveState::Life::unborn;
    hive.alive = !unborn;
    if (!unborn || decl.declared) hive.yards.emplace_back(Day{}, decl.yard);
    for (const StackPart& part : decl.stack) put_part(r, id, part);
    if (!decl.stack.empty() || unborn) return;
    const BoxId box = make_box(r, {Role::brood, {}, 0, Comb::unsaid, {}});
    put_on(r, id, box, 0, std::nullopt, set_up_fact);
}

}  // namespace

Replay set_up(const Journal& journal, Day on) {
    Replay r{journal, {}, {}, {}, {}, {}, {}, {}};
    r.out.on = on;
    r.out.hives.resize(journal.hives.size());
    r.states.resize(journal.hives.size());
    r.out.yard_facts.resize(journal.yards.size());
    find_births(r);
    for (std::size_t h = 0; h < journal.hives.size(); ++h) set_up_hive(r, static_cast<HiveId>(h));
    return r;
}

}  // namespace waxtab::replaying
