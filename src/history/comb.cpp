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

}  // namespace waxtab::replaying
