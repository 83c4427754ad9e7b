#include "estimate/capacity.hpp"

#include <algorithm>

#include "estimate/gaussian.hpp"
#include "handbook/boxes.hpp"

namespace waxtab {
namespace {

handbook::CombType comb_type(Comb comb) {
    switch (comb) {
        case Comb::foundation: case Comb::strips: return handbook::CombType::foundation;
        case Comb::cut_comb: return handbook::CombType::cut_comb;
        case Comb::sections: return handbook::CombType::sections;
        default: return handbook::CombType::drawn;
    }
}

/// Bees start on drawn comb first and fill sections last: common practice, no source; the sizes are guesses.
double appeal_of(Comb comb) {
    switch (comb) {
        case Comb::foundation: case Comb::strips: return 0.5;
        case Comb::cut_comb: return 0.5;
        case Comb::sections: return 0.4;
        case Comb::mixed: return 0.75;
        default: return 1;
    }
}

/// What frames and comb make of a full box's kilograms: the handbook's own ratio, for any box.
double factor_of(int full_frames, int frames, Comb comb) {
    handbook::BoxKind kind;
    kind.frames = full_frames;
    kind.published_kg = 1;
    const auto box = handbook::capacity(kind, std::clamp(frames, 1, full_frames + 1), comb_type(comb));
    return box ? box->typical / handbook::full_kg(kind).typical : 1;
}

}  // namespace

Capacity capacity_of(const Journal& journal, const Box& box) {
    const BoxKind* kind = journal.box_kind(box.kind);
    if (kind == nullptr) kind = journal.box_kind(journal.settings.super_kind);
    // A ten-frame medium where nothing at all is known.
    static const BoxKind usual{"medium", Role::super, 10, 168, 14, 17, 20, 4.8, 6.5, 8.5, false, {}};
    if (kind == nullptr || kind->full_kg <= 0) kind = &usual;
    const int frames = box.frames > 0 ? box.frames : kind->frames;
    const double width = std::max(kind->full_high_kg - kind->full_low_kg, 0.02 * kind->full_kg);
    Capacity c;
    c.kg = kind->full_kg * factor_of(kind->frames, frames, box.comb);
    c.spread = std::clamp(width / (2 * z80 * kind->full_kg), 0.02, 0.3);
    c.tare_kg = kind->tare_kg > 0 ? kind->tare_kg : 6.5;
    c.tare_sd = kind->tare_kg > 0 ? std::max((kind->tare_high_kg - kind->tare_low_kg) / (2 * z80), 0.2) : 1.5;
    c.appeal = appeal_of(box.comb);
    return c;
}

}  // namespace waxtab
