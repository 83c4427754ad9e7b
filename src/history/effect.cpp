// One fact takes effect: is the hive there to be written about, what changes, where it is told.
#include <algorithm>

#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

using Life = HiveState::Life;

/// Kinds down to the yard's are about a hive; a box may be weighed by its label alone.
bool needs_hive(Kind kind) { return (kind < Kind::weather && kind != Kind::box_weight) || kind == Kind::sections_done; }

bool is_birth(Kind kind) { return kind == Kind::swarm_hived || kind == Kind::hive_bought; }

bool says_nothing_of_life(Kind kind) {
    switch (kind) {
        case Kind::todo: case Kind::remark: case Kind::hive_renamed: case Kind::box_weight: case Kind::extracted:
        case Kind::combs_packed: case Kind::queen_mother:
            return true;
        default: return false;
    }
}

/// What can still be done with the boxes of a hive that has ended, while they stand there.
bool salvage(Kind kind) {
    switch (kind) {
        case Kind::super_off: case Kind::brood_box_off: case Kind::excluder_off: case Kind::escape_off: case Kind::feeder_off:
        case Kind::entrance_off: case Kind::treatment_off: case Kind::super_moved: case Kind::frames_moved: case Kind::frames_off:
        case Kind::hive_moved: case Kind::box_labelled: case Kind::super_count: case Kind::brood_box_count: case Kind::hive_ended:
            return true;
        default: return false;
    }
}

bool may_be_gone(const Replay& r, const Fact& f, HiveId hive) {
    const HiveHistory& h = r.hive(hive);
    if (!h.stack.empty() && salvage(f.kind)) return true;
    return h.ended == f.happened && !is_event(f.kind);   // what was seen when the end was noted
}

bool is_there(Replay& r, const Step& s, HiveId hive) {
    if (hive == no_hive || says_nothing_of_life(s.fact.kind)) return true;
    switch (r.state(hive).life) {
        case Life::living: return true;
        case Life::gone:
            if (may_be_gone(r, s.fact, hive)) return true;
            report_hive_gone(r, s, hive);
            return false;
        default:
            if (r.fact(r.state(hive).birth_fact).happened == s.day()) return true;
            report_hive_not_yet(r, s, hive);
            return false;
    }
}

/// True when the hives of a fact are there to take part in it. The hive it brings into being need not be,
/// nor the one a swarm came from.
bool takes_part(Replay& r, const Step& s) {
    const Fact& f = s.fact;
    if (is_birth(f.kind) || f.kind == Kind::queen_mother) return true;
    if (!is_there(r, s, f.hive)) return false;
    const bool divided = divides(f.kind);
    return divided || f.other == f.hive || is_there(r, s, f.other);
}

/// Written at home, not at the hive.
bool at_home(const Replay& r, const Step& s) {
    const Kind kind = s.fact.kind;
    if (kind == Kind::todo || kind == Kind::remark || kind == Kind::hive_renamed) return true;
    if (kind == Kind::extracted || kind == Kind::combs_packed || kind == Kind::queen_mother) return true;
    if (kind != Kind::box_weight) return false;
    return std::none_of(s.boxes.begin(), s.boxes.end(), [&](BoxId box) { return stands_on(r, box) == s.fact.hive; });
}

void tell(Replay& r, const Step& s, HiveId id) {
    if (id == no_hive) return;
    HiveHistory& hive = r.hive(id);
    hive.events.push_back({s.day(), s.id, s.boxes.size() == 1 ? s.boxes.front() : no_box, s.boxes});
    if (!at_home(r, s) && (hive.visits.empty() || hive.visits.back() != s.day())) hive.visits.push_back(s.day());
}

/// The day's extractions are over when another day comes, or when a fact asks whether boxes are empty.
void settle_before(Replay& r, const Fact& f) {
    if (r.packings.empty()) return;
    const bool next_day = r.fact(r.packings.front().fact).happened != f.happened;
    const bool asks = f.kind == Kind::super_on || f.kind == Kind::brood_box_on || f.kind == Kind::shed ||
                      (f.kind == Kind::box_weight && f.detail.empty());
    if (next_day || asks) settle_packings(r);
}

}  // namespace

void take_effect(Replay& r, FactId id) {
    Step s{r.journal.facts[id], id, {}};
    settle_before(r, s.fact);
    const Transition change = transition_of(s.fact.kind);
    const bool has_hive = s.fact.hive != no_hive || !needs_hive(s.fact.kind);
    if (has_hive && takes_part(r, s)) change(r, s);
    tell(r, s, s.fact.hive);
    if (s.fact.other != s.fact.hive) tell(r, s, s.fact.other);
}

}  // namespace waxtab::replaying
