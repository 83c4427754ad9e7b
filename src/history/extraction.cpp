#include <algorithm>

#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

bool from_these(const Fact& f, HiveId hive) {
    if (f.hives.empty()) return f.hive == no_hive || f.hive == hive;
    return std::find(f.hives.begin(), f.hives.end(), hive) != f.hives.end();
}

/// Both of one day: the order of lines does not tell, since hives and honey house may be in different files;
/// times do, where both are said.
bool off_before(const Replay& r, const Taking& taking, FactId packing) {
    const Fact& off = r.fact(taking.fact);
    const Fact& f = r.fact(packing);
    const bool timed = off.happened == f.happened && off.minute >= 0 && f.minute >= 0;
    return !(timed && taking.fact > packing);
}

/// Later notes do not change what a lot holds.
bool in_time(const Replay& r, const Taking& taking, FactId packing) {
    return r.fact(taking.fact).noted <= r.fact(packing).noted && off_before(r, taking, packing);
}

bool wanted(const Replay& r, const Replay::Packing& p, const Taking& taking) {
    const Fact& f = r.fact(p.fact);
    if (!from_these(f, taking.hive) || !in_time(r, taking, p.fact)) return false;
    const bool combs = f.kind == Kind::combs_packed;
    const bool is_comb = taking.box != no_box && comb_honey(r.box(taking.box));
    if (is_comb != combs) return false;
    if (!combs || f.detail.empty()) return true;
    return (f.detail == "sections") == (r.box(taking.box).comb == Comb::sections);
}

/// Where no hive is named, those of the yard it was written at, if any of them wait.
void keep_to_yard(const Replay& r, const Fact& f, std::vector<std::size_t>& takings) {
    if (!f.hives.empty() || f.hive != no_hive || f.yard == no_yard) return;
    const auto elsewhere = [&](std::size_t at) {
        const Taking& t = r.out.takings[at];
        return r.hive(t.hive).yard_on(t.day) != f.yard;
    };
    if (!std::all_of(takings.begin(), takings.end(), elsewhere)) std::erase_if(takings, elsewhere);
}

/// Those waiting longest first, no more boxes than were said; the count of a packing is of combs, not of boxes.
std::vector<std::size_t> picked(const Replay& r, const Replay::Packing& p, std::size_t limit) {
    std::vector<std::size_t> out;
    for (const std::size_t at : r.waiting)
        if (at < limit && wanted(r, p, r.out.takings[at])) out.push_back(at);
    const Fact& f = r.fact(p.fact);
    keep_to_yard(r, f, out);
    const int most = f.kind == Kind::extracted ? f.count : 0;
    int boxes = 0;
    std::erase_if(out, [&](std::size_t at) { return most > 0 && r.out.takings[at].box != no_box && boxes++ >= most; });
    return out;
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

/// The hives it came from have it in their story.
void tell_hives(Replay& r, const Step& s, const std::vector<std::size_t>& takings) {
    std::vector<std::pair<HiveId, std::vector<BoxId>>> told;
    const auto of_hive = [&](HiveId id) {
        const auto entry = std::find_if(told.begin(), told.end(), [&](const auto& e) { return e.first == id; });
        return entry != told.end() ? entry : told.insert(told.end(), {id, {}});
    };
    for (const HiveId h : s.fact.hives) of_hive(h);
    for (const std::size_t at : takings) {
        const Taking& t = r.out.takings[at];
        const auto entry = of_hive(t.hive);
        if (t.box != no_box) entry->second.push_back(t.box);
    }
    for (const auto& [id, boxes] : told) {
        if (id == s.fact.hive) continue;   // told already, as its own fact
        r.hive(id).events.push_back({s.day(), s.id, boxes.size() == 1 ? boxes.front() : no_box, boxes});
    }
}

void settle(Replay& r, const Replay::Packing& p, std::size_t limit) {
    const Step s{r.fact(p.fact), p.fact, {}};
    const std::vector<std::size_t> takings = picked(r, p, limit);
    tell_hives(r, s, takings);
    for (const std::size_t at : takings) empty_out(r, s, at);
    std::erase_if(r.waiting, [&](std::size_t at) { return std::binary_search(takings.begin(), takings.end(), at); });
}

/// One of the same kind and day before it gets only what had come off by then.
void pack(Replay& r, Step& s) {
    r.out.honey_facts.push_back(s.id);
    const auto same = [&](const Replay::Packing& p) { return r.fact(p.fact).kind == s.fact.kind; };
    for (const Replay::Packing& p : r.packings)
        if (same(p)) settle(r, p, p.takings);
    std::erase_if(r.packings, same);
    r.packings.push_back({s.id, r.out.takings.size()});
}

}  // namespace

bool comb_honey(const Box& box) { return box.comb == Comb::cut_comb || box.comb == Comb::sections; }

void no_longer_waiting(Replay& r, std::size_t taking) {
    std::erase(r.waiting, taking);
}

void extracted(Replay& r, Step& s) { pack(r, s); }
void combs_packed(Replay& r, Step& s) { pack(r, s); }

void settle_packings(Replay& r) {
    const std::vector<Replay::Packing> packings = std::move(r.packings);
    r.packings.clear();
    for (const Replay::Packing& p : packings) settle(r, p, r.out.takings.size());
}

}  // namespace waxtab::replaying
