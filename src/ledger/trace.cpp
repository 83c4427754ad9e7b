#include "ledger/trace.hpp"

#include <algorithm>
#include <functional>
#include <set>

#include "ledger/books.hpp"
#include "ledger/concerns.hpp"

namespace waxtab {

namespace {

using Names = std::set<std::string, std::less<>>;

/// The lot and all that was blended into it; `forward`, all it was blended into.
Names reach(const Ledger& ledger, const std::string& lot, bool forward) {
    Names names{lot};
    for (bool grown = true; grown;) {
        grown = false;
        for (const Blending& b : ledger.blendings)
            if (names.contains(forward ? b.from : b.into)) grown = names.insert(forward ? b.into : b.from).second || grown;
    }
    return names;
}

/// In the order the ledger has its lots.
std::vector<const Lot*> by_age(const Ledger& ledger, const Names& names) {
    std::vector<const Lot*> out;
    for (const Lot& lot : ledger.lots)
        if (names.contains(lot.name)) out.push_back(&lot);
    return out;
}

TracedTaking traced(const History& history, std::size_t i) {
    const Taking& t = history.takings[i];
    TracedTaking out{i, t.hive, {}, t.day, t.fact};
    if (t.box == no_box) return out;
    for (const BoxStay& s : history.boxes[static_cast<std::size_t>(t.box)].stays)
        if (s.hive == t.hive && (!s.from || *s.from <= t.day)) out.on = s.from;
    return out;
}

TracedSource source(const Journal& journal, const History& history, const std::string& lot, HiveId hive, const MassRange& honey,
                    const std::vector<std::size_t>& takings) {
    TracedSource s;
    s.lot = lot;
    s.hive = hive;
    s.honey = honey;
    for (const std::size_t i : takings) {
        const Concerns c = concerns_of(journal, history, history.takings[i]);
        s.takings.push_back(traced(history, i));
        add_once(s.feeds, c.feeds);
        add_once(s.possible_feeds, c.possible_feeds);
        add_once(s.treatments, c.treatments);
    }
    return s;
}

/// What came into a lot from outside the ledger's other lots: harvests by hive, stock, purchases.
void add_sources(const Journal& journal, const History& history, const Ledger& ledger, const Lot& lot, std::vector<TracedSource>& out) {
    const std::size_t first = out.size();
    for (const Harvest& h : ledger.harvests) {
        if (h.lot != lot.name) continue;
        const auto same = std::find_if(out.begin() + static_cast<std::ptrdiff_t>(first), out.end(),
                                       [&](const TracedSource& s) { return s.hive == h.hive; });
        TracedSource s = source(journal, history, lot.name, h.hive, h.honey, h.takings);
        if (same == out.end()) {
            out.push_back(std::move(s));
            continue;
        }
        same->honey = {same->honey.low + h.honey.low, same->honey.value + h.honey.value, same->honey.high + h.honey.high,
                       same->honey.weighed && h.honey.weighed};
        same->takings.insert(same->takings.end(), s.takings.begin(), s.takings.end());
        add_once(same->feeds, s.feeds);
        add_once(same->possible_feeds, s.possible_feeds);
        add_once(same->treatments, s.treatments);
    }
    std::stable_sort(out.begin() + static_cast<std::ptrdiff_t>(first), out.end(),
                     [](const TracedSource& a, const TracedSource& b) { return a.hive < b.hive; });
}

void add_foreign(const Lot& lot, std::vector<TracedSource>& out) {
    const auto exact = [](Mass m) { return MassRange{m, m, m, true}; };
    Mass own{};
    for (const TracedSource& s : out)
        if (s.lot == lot.name) own += s.honey.value;
    const Mass unknown = lot.harvested.value - own;
    if (lot.opening.ng > 0 || lot.bought.ng > 0 || unknown.ng > 0) {
        TracedSource s;
        s.lot = lot.name;
        s.honey = exact(lot.opening + lot.bought + unknown);
        s.opening = lot.opening.ng > 0;
        s.bought_from = lot.bought_from;
        out.push_back(std::move(s));
    }
}

bool may_be(const Going& going, const Names& lots) {
    return std::any_of(lots.begin(), lots.end(), [&](const std::string& n) {
        return std::binary_search(going.may_be.begin(), going.may_be.end(), n);
    });
}

std::vector<RecallRow> recall(const Ledger& ledger, const Names& lots) {
    std::vector<RecallRow> rows;
    for (const Lot& lot : ledger.lots) {
        const bool ours = lots.contains(lot.name);
        for (const Going& g : lot.goings) {
            const bool unsure = g.lot_assumed && !g.may_be.empty();
            if (ours || may_be(g, lots)) rows.push_back({lot.name, g, !ours || unsure});
        }
    }
    std::stable_sort(rows.begin(), rows.end(), [](const RecallRow& a, const RecallRow& b) {
        return a.going.day != b.going.day ? a.going.day < b.going.day : a.going.fact < b.going.fact;
    });
    return rows;
}

}  // namespace

Trace trace(const Journal& journal, const History& history, const Ledger& ledger, std::string_view name) {
    Trace t;
    const Lot* start = ledger.lot(name);
    if (!start) return t;
    t.found = true;
    t.lot = start->name;
    const Names back = reach(ledger, start->name, false), ahead = reach(ledger, start->name, true);
    for (const Blending& b : ledger.blendings)
        if (back.contains(b.into) && back.contains(b.from)) t.blendings.push_back(b);
    for (const Lot* lot : by_age(ledger, back)) {
        t.made_of.push_back(lot->name);
        add_sources(journal, history, ledger, *lot, t.sources);
        add_foreign(*lot, t.sources);
    }
    t.recall = recall(ledger, ahead);
    for (const Lot* lot : by_age(ledger, ahead)) {
        t.went_into.push_back(lot->name);
        t.left_in_jars += lot->left_in_jars();
        t.left_in_bulk += lot->bulk;
    }
    return t;
}

}  // namespace waxtab
