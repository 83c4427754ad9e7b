#include <algorithm>

#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

bool from_these(const Fact& f, HiveId hive) {
    if (f.hives.empty()) return f.hive == no_hive || f.hive == hive;
    return std::find(f.hives.begin(), f.hives.end(), hive) != f.hives.end();
}

/// The frames are empty; a box that was not put on again yet is in the shed now.
void empty_out(Replay& r, const Step& s, std::size_t at) {
    Taking& taking = r.out.takings[at];
    taking.extracted = s.id;
    if (taking.box == no_box) return;
    const BoxState& state = r.box_state(taking.box);
    const bool off = state.where == Whereabouts::waiting && state.taking == static_cast<std::int64_t>(at);
    if (!off) return;   // it was emptied when it went on again
    r.box(taking.box).emptied.push_back(s.day());
    into_shed(r, s, taking.box, comb_honey(r.box(taking.box)) ? r.box(taking.box).comb : Comb::wet);
}

bool wanted(const Replay& r, const Step& s, const Taking& taking, bool combs) {
    if (!from_these(s.fact, taking.hive)) return false;
    const bool is_comb = taking.box != no_box && comb_honey(r.box(taking.box));
    if (is_comb != combs) return false;
    if (!combs || s.fact.detail.empty()) return true;
    return (s.fact.detail == "sections") == (r.box(taking.box).comb == Comb::sections);
}

/// Those waiting longest first, no more boxes than were said.
std::vector<std::size_t> picked(const Replay& r, const Step& s, bool combs, int most) {
    std::vector<std::size_t> out;
    int boxes = 0;
    for (const std::size_t at : r.waiting) {
        const Taking& taking = r.out.takings[at];
        if (!wanted(r, s, taking, combs)) continue;
        if (taking.box != no_box && most > 0 && boxes++ >= most) continue;
        out.push_back(at);
    }
    return out;
}

/// The hives it came from have it in their story.
void tell_hives(Replay& r, const Step& s, const std::vector<std::size_t>& takings) {
    std::vector<std::pair<HiveId, std::vector<BoxId>>> told;
    for (const HiveId h : s.fact.hives) told.push_back({h, {}});
    for (const std::size_t at : takings) {
        const Taking& t = r.out.takings[at];
        auto hive = std::find_if(told.begin(), told.end(), [&](const auto& entry) { return entry.first == t.hive; });
        if (hive == told.end()) hive = told.insert(told.end(), {t.hive, {}});
        if (t.box != no_box) hive->second.push_back(t.box);
    }
    for (const auto& [id, boxes] : told) {
        if (id == s.fact.hive) continue;   // told already, as its own fact
        r.hive(id).events.push_back({s.day(), s.id, boxes.size() == 1 ? boxes.front() : no_box, boxes});
    }
}

void take_out(Replay& r, Step& s, bool combs, int most) {
    const std::vector<std::size_t> takings = picked(r, s, combs, most);
    tell_hives(r, s, takings);
    for (const std::size_t at : takings) empty_out(r, s, at);
    std::erase_if(r.waiting, [&](std::size_t at) { return std::find(takings.begin(), takings.end(), at) != takings.end(); });
    r.out.honey_facts.push_back(s.id);
}

}  // namespace

bool comb_honey(const Box& box) { return box.comb == Comb::cut_comb || box.comb == Comb::sections; }

void no_longer_waiting(Replay& r, std::size_t taking) {
    std::erase(r.waiting, taking);
}

void extracted(Replay& r, Step& s) { take_out(r, s, false, s.fact.count); }

/// The count of a packing is of combs, not of boxes.
void combs_packed(Replay& r, Step& s) { take_out(r, s, true, 0); }

}  // namespace waxtab::replaying
