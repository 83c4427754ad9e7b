#include "history/invariants.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace waxtab {
namespace {

using Breaches = std::vector<std::string>;

void sizes(const Journal& journal, const History& h, Breaches& out) {
    if (h.hives.size() != journal.hives.size()) out.push_back("not one history for each hive");
    if (h.yard_facts.size() != journal.yards.size()) out.push_back("not one list of facts for each yard");
    for (std::size_t i = 0; i < h.hives.size(); ++i)
        if (h.hives[i].hive != static_cast<HiveId>(i)) out.push_back(fmt::format("hive {} is out of place", i));
    for (std::size_t i = 0; i < h.boxes.size(); ++i)
        if (h.boxes[i].id != static_cast<BoxId>(i)) out.push_back(fmt::format("box {} is out of place", i));
}

/// On how many places of all stacks each box stands.
std::vector<int> places(const History& h, Breaches& out) {
    std::vector<int> count(h.boxes.size());
    for (const HiveHistory& hive : h.hives)
        for (const Standing& s : hive.stack) {
            if ((s.what == StackPart::What::box) != (s.box != no_box)) out.push_back(fmt::format("hive {} has a box that is none", hive.hive));
            if (s.box == no_box) continue;
            ++count[static_cast<std::size_t>(s.box)];
            const std::vector<BoxStay>& stays = h.boxes[static_cast<std::size_t>(s.box)].stays;
            const bool agrees = !stays.empty() && !stays.back().to && stays.back().hive == hive.hive;
            if (!agrees) out.push_back(fmt::format("box {} stands on hive {} without a stay", s.box, hive.hive));
        }
    return count;
}

void stacks(const History& h, Breaches& out) {
    const std::vector<int> count = places(h, out);
    for (const Box& box : h.boxes) {
        const int open = static_cast<int>(std::count_if(box.stays.begin(), box.stays.end(), [](const BoxStay& s) { return !s.to; }));
        if (open > 1) out.push_back(fmt::format("box {} has {} open stays", box.id, open));
        if (count[static_cast<std::size_t>(box.id)] != open)
            out.push_back(fmt::format("box {} stands in {} places with {} open stays", box.id, count[static_cast<std::size_t>(box.id)], open));
        if (box.stays.empty()) out.push_back(fmt::format("box {} was never on a hive", box.id));
    }
}

void stays(const History& h, Breaches& out) {
    for (const Box& box : h.boxes)
        for (std::size_t i = 0; i < box.stays.size(); ++i) {
            const BoxStay& s = box.stays[i];
            if (s.from && s.to && *s.to < *s.from) out.push_back(fmt::format("box {} came off before it went on", box.id));
            if (i > 0 && (!s.from || !box.stays[i - 1].to || *s.from < *box.stays[i - 1].to))
                out.push_back(fmt::format("the stays of box {} overlap", box.id));
            if (i + 1 < box.stays.size() && !s.to) out.push_back(fmt::format("an early stay of box {} is open", box.id));
        }
}

void sightings(const History& h, Breaches& out) {
    for (const Box& box : h.boxes) {
        for (std::size_t i = 0; i < box.sightings.size(); ++i) {
            const BoxSighting& s = box.sightings[i];
            if (s.low > s.amount || s.amount > s.high) out.push_back(fmt::format("a sighting of box {} is outside its range", box.id));
            if (i > 0 && s.day < box.sightings[i - 1].day) out.push_back(fmt::format("sightings of box {} run backwards", box.id));
            const bool share = s.what == BoxSighting::What::full || s.what == BoxSighting::What::capped || s.what == BoxSighting::What::drawn;
            if (share && (s.low < 0 || s.high > 1000)) out.push_back(fmt::format("a share of box {} is not between none and all", box.id));
        }
        if (!std::is_sorted(box.emptied.begin(), box.emptied.end())) out.push_back(fmt::format("box {} was emptied backwards", box.id));
    }
}

void takings(const History& h, Breaches& out) {
    std::vector<int> off(h.boxes.size());
    for (const Taking& t : h.takings) {
        if (t.box != no_box) ++off[static_cast<std::size_t>(t.box)];
        if (t.gross && t.tare && t.net && t.net->ng != t.gross->ng - t.tare->ng) out.push_back("a taking's net is not gross less tare");
        if ((t.gross || t.tare || t.net) == t.weighings.empty()) out.push_back("a taking's weights and weighings differ");
        if (t.returned && t.harvest) out.push_back("a super that went back counts as harvest");
    }
    for (const Box& box : h.boxes) {
        const auto closed = std::count_if(box.stays.begin(), box.stays.end(), [](const BoxStay& s) { return s.to.has_value(); });
        if (off[static_cast<std::size_t>(box.id)] > closed) out.push_back(fmt::format("box {} was taken more often than it came off", box.id));
    }
}

void lives(const History& h, Breaches& out) {
    for (const HiveHistory& hive : h.hives) {
        if (hive.alive && hive.ended) out.push_back(fmt::format("hive {} lives after its end", hive.hive));
        if (hive.united_into != no_hive && hive.alive) out.push_back(fmt::format("hive {} lives on after a union", hive.hive));
        const auto later = [](const Event& a, const Event& b) { return a.day < b.day; };
        if (!std::is_sorted(hive.events.begin(), hive.events.end(), later)) out.push_back(fmt::format("the story of hive {} runs backwards", hive.hive));
        const auto& v = hive.visits;
        if (std::adjacent_find(v.begin(), v.end(), [](Day a, Day b) { return a >= b; }) != v.end())
            out.push_back(fmt::format("visits to hive {} are not in order", hive.hive));
        for (const Treating& t : hive.treatings)
            if (t.to && *t.to < t.from) out.push_back(fmt::format("a treatment of hive {} ends before it begins", hive.hive));
        for (const Feeding& f : hive.feedings)
            if (f.to && *f.to < f.from) out.push_back(fmt::format("a feed of hive {} ends before it begins", hive.hive));
    }
}

void shed(const History& h, Breaches& out) {
    for (const ShedRow& row : h.shed)
        if (row.count < 0 || row.frozen < 0 || row.frozen > row.count) out.push_back(fmt::format("the shed's {} do not add up", row.what));
}

}  // namespace

std::vector<std::string> broken_invariants(const Journal& journal, const History& history) {
    Breaches out;
    sizes(journal, history, out);
    if (!out.empty()) return out;   // the rest goes by index
    stacks(history, out);
    stays(history, out);
    sightings(history, out);
    takings(history, out);
    lives(history, out);
    shed(history, out);
    return out;
}

}  // namespace waxtab
