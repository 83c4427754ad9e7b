// Empty supers in the shed.
#include <algorithm>

#include <fmt/format.h>

#include "advice/rule.hpp"

namespace waxtab {
namespace {

bool warm_half(const Context& c) {
    return c.phase() == Phase::during || (c.phase() == Phase::after && c.days_after_season() <= 60);
}

Advices moth(const Context& c) {
    if (!warm_half(c)) return {};
    int drawn = 0, wet = 0;
    Advice a = advise_to(Act::shed, Rank::rest, "");
    for (const ShedRow& row : c.history.shed) {
        if (row.box_kind.empty() || row.count <= 0) continue;
        if (row.comb != Comb::drawn && row.comb != Comb::wet && row.comb != Comb::mixed) continue;
        (row.comb == Comb::wet ? wet : drawn) += row.count;
        because(a, row.facts);
    }
    if (drawn + wet == 0) return {};
    a.what = wet > 0 ? "have the wet supers cleaned, or shut them tight; guard drawn comb against moth"
                     : "guard the drawn supers in the shed against moth";
    how_sure(a, Sureness::possible, "");
    a.reasons.push_back(fmt::format("in the shed: {} drawn, {} wet", counted(drawn, "super"), counted(wet, "super")));
    a.reasons.push_back("cold kills moth: a freezer for a night or two, or an airy cold place; comb that held brood first, old comb out");
    return {a};
}

}  // namespace

std::vector<Rule> shed_rules() {
    return {
        {{"shed-moth", "Drawn supers in the shed are guarded against moth, wet ones cleaned or shut tight.",
          "COLOSS BEEBOOK, wax moth, sec. 5.8.1; common practice for the rest", "Shed"},
         &moth},
    };
}

}  // namespace waxtab
