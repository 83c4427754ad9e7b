#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

/// Drawn so far, permille, foundation counts as comb when the box comes back.
constexpr std::int64_t mostly_drawn = 500;

}  // namespace

Comb comb_left(const Replay& r, BoxId id) {
    const Box& box = r.box(id);
    if (box.comb == Comb::wet) return Comb::drawn;   // licked dry
    if (box.comb != Comb::foundation && box.comb != Comb::strips) return box.comb;
    for (const BoxSighting& s : box.sightings) {
        if (s.what == BoxSighting::What::drawn && s.amount >= mostly_drawn) return Comb::drawn;
        if (s.what == BoxSighting::What::full && s.amount >= mostly_drawn) return Comb::drawn;
    }
    return box.comb;
}

/// The year stays with the box; a later word outranks an earlier one.
void comb_year(Replay& r, Step& s) {
    const BoxChoice& choice = s.fact.box;
    const bool by_label_alone = s.fact.hive == no_hive && choice.by == BoxChoice::By::label;
    const BoxId labelled_so = by_label_alone ? labelled(r, no_hive, choice.label) : no_box;
    if (labelled_so != no_box) s.boxes = {labelled_so};
    else if (by_label_alone) report_no_such_label(r, s, choice.label);
    if (s.fact.hive != no_hive) s.boxes = named_boxes(r, s, s.fact.hive, choice, false);
    for (const BoxId id : s.boxes) r.box(id).comb_year = s.fact.count, r.box(id).comb_year_fact = s.id;
}

}  // namespace waxtab::replaying
