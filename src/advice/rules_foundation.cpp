// Supers of foundation: where they hold bees up, and when they will not be drawn.
#include <algorithm>

#include <fmt/format.h>

#include "advice/supers.hpp"

namespace waxtab {
namespace {

bool undrawn(const SuperView& s) { return !s.built_comb() && s.drawn() < 0.3; }

bool occupied_drawn_super(const HiveView& hive) {
    return std::any_of(hive.supers.begin(), hive.supers.end(),
                       [](const SuperView& s) { return s.drawn() >= 0.5 && s.full() >= 0.1; });
}

Advices over_excluder(const HiveView& hive) {
    if (!hive.excluder || hive.supers.empty() || occupied_drawn_super(hive) || flow_refuses_super(hive)) return {};
    const bool all_undrawn = std::all_of(hive.supers.begin(), hive.supers.end(), undrawn);
    if (!all_undrawn || hive.all->phase() != Phase::during) return {};
    Advice a = advise_to(Act::excluder, Rank::room, "take the excluder out until they draw the foundation, or bait the super with "
                                                    "a drawn comb; then put it back with the queen below");
    a.by = hive.next_visit();
    how_sure(a, Sureness::possible, "bees may refuse to pass an excluder into bare foundation");
    a.reasons.push_back("every super over the excluder is undrawn foundation");
    for (const SuperView& s : hive.supers) {
        a.boxes.push_back(s.box->id);
        because(a, s.on_fact);
    }
    return {a};
}

Advices too_few_frames(const HiveView& hive) {
    for (const SuperView& s : hive.supers) {
        const BoxKind* kind = hive.all->kind(*s.box);
        const int frames = frames_of(hive.journal(), *s.box);
        if (!kind || !undrawn(s) || frames >= kind->frames) continue;
        Advice a = advise_to(Act::note, Rank::room,
                             fmt::format("fill {} up to {} frames until the foundation is drawn", super_name(hive, s), kind->frames));
        a.by = hive.next_visit();
        how_sure(a, Sureness::likely, "");
        a.reasons.push_back(fmt::format("{} frames of foundation where {} fit: spaced wide they build cross-comb{}", frames, kind->frames,
                                        frames + 1 == kind->frames ? "; wide (Manley) frames of full width are meant to be one fewer" : ""));
        a.boxes.push_back(s.box->id);
        because(a, s.on_fact);
        return {a};
    }
    return {};
}

Advices late_foundation(const HiveView& hive) {
    if (!hive.all->late() || hive.all->phase() == Phase::before || !flow_refuses_super(hive)) return {};
    if (hive.all->days_after_season() > 60) return {};
    for (const SuperView& s : hive.supers) {
        if (!undrawn(s)) continue;
        Advice a = advise_to(Act::take_empty, Rank::rest, fmt::format("take {} off: undrawn foundation", super_name(hive, s)));
        a.by = hive.next_visit();
        how_sure(a, Sureness::likely, "foundation is not drawn after the main flow");
        a.reasons.push_back(fmt::format("late in your season and {} drawn", s.estimate ? share_words(s.estimate->drawn) : "0%"));
        a.boxes.push_back(s.box->id);
        because(a, s.on_fact);
        return {a};
    }
    return {};
}

}  // namespace

std::vector<Rule> foundation_rules() {
    return {
        {{"foundation-over-excluder", "Nothing but undrawn foundation over an excluder is two obstacles at once; said only where no "
                                      "drawn super with bees at work is on.",
          "Winston via Surrey Bee Club; Norfolk Beekeepers; oxfordbees.com; bait: T. Sebestyen, Bee Culture", "Foundation"},
         &over_excluder},
        {{"foundation-spacing", "Foundation is drawn with the full number of frames; nine or eight only once it is drawn.",
          "apalacheebeekeepers.com; P. Craft, philcrafthivecraft.com", "Foundation"},
         &too_few_frames},
        {{"foundation-late", "Bare foundation comes off late in the season: bees do not draw it after the main flow.",
          "A. Wade, Canberra Beekeepers (March 2022)", "Foundation"},
         &late_foundation},
    };
}

}  // namespace waxtab
