#include "ledger/concerns.hpp"

#include <algorithm>

#include "history/feed_span.hpp"
#include "ledger/books.hpp"

namespace waxtab {

namespace {

/// A stretch of days at one hive; no `from`: since before the journal.
struct Stretch {
    HiveId hive = no_hive;
    std::optional<Day> from;
    Day to{};
    FactId began = set_up_fact, ended = set_up_fact;   ///< what put the box there and took it away
    bool box_known = true;      ///< false for frames: what stood beside the feed was perhaps another box
};

std::optional<Day> last_emptied(const Box& box, Day before) {
    std::optional<Day> day;
    for (const Day d : box.emptied)
        if (d < before) day = d;
    return day;
}

std::vector<Stretch> stretches_of(const History& history, const Taking& t) {
    if (t.box == no_box) {
        const auto year = date::year_month_day{t.day}.year();
        return {{t.hive, Day{date::year_month_day{year / date::January / 1}}, t.day, set_up_fact, t.fact, false}};
    }
    const Box& box = history.boxes[static_cast<std::size_t>(t.box)];
    const auto empty = last_emptied(box, t.day);
    std::vector<Stretch> out;
    for (const BoxStay& s : box.stays) {
        const Day to = s.to ? std::min(*s.to, t.day) : t.day;
        if (s.from && *s.from > t.day) continue;
        if (empty && to <= *empty) continue;
        out.push_back({s.hive, s.from, to, s.on_fact, s.to ? s.off_fact : t.fact, true});
    }
    return out;
}

bool meets(const Stretch& s, Day from, Day to) { return from <= s.to && (!s.from || to >= *s.from); }

/// Noted on the day the box came off, after it had: supers off, then strips in.
bool after_it_came_off(const Stretch& s, Day from, FactId fact) {
    return from == s.to && s.ended != set_up_fact && fact > s.ended;
}

/// Strips out, then the super on, on one day.
bool out_before(const Journal& journal, const HiveHistory& hive, const Stretch& s, const Treating& t) {
    if (!t.to || !s.from || *t.to != *s.from || s.began == set_up_fact) return false;
    return std::any_of(hive.events.begin(), hive.events.end(), [&](const Event& e) {
        return e.day == *t.to && e.fact < s.began && journal.facts[e.fact].kind == Kind::treatment_off;
    });
}

/// A treatment without an end is still in: it reaches to the end of the stretch.
void collect(const Journal& journal, const HiveHistory& hive, const Stretch& s, Concerns& out) {
    for (const Feeding& f : hive.feedings) {
        if (f.fact == set_up_fact || after_it_came_off(s, f.from, f.fact)) continue;
        const FeedSpan span = span_of(journal, f, s.to);
        if (s.box_known && meets(s, span.from, span.sure)) add_once(out.feeds, f.fact);
        else if (meets(s, span.from, span.possible)) add_once(out.possible_feeds, f.fact);
    }
    for (const Treating& t : hive.treatings)
        if (!after_it_came_off(s, t.from, t.fact) && !out_before(journal, hive, s, t) && meets(s, t.from, t.to.value_or(s.to))) add_once(out.treatments, t.fact);
}

}  // namespace

Concerns concerns_of(const Journal& journal, const History& history, const Taking& taking) {
    Concerns out;
    for (const Stretch& s : stretches_of(history, taking))
        if (s.hive >= 0 && static_cast<std::size_t>(s.hive) < history.hives.size())
            collect(journal, history.hives[static_cast<std::size_t>(s.hive)], s, out);
    return out;
}

Concerns concerns_of(const Journal& journal, const History& history, const Lot& lot) {
    Concerns out;
    for (const LotShare& share : lot.shares)
        for (const std::size_t i : share.takings) {
            const Concerns c = concerns_of(journal, history, history.takings[i]);
            add_once(out.feeds, c.feeds);
            add_once(out.treatments, c.treatments);
            add_once(out.possible_feeds, c.possible_feeds);
        }
    std::erase_if(out.possible_feeds, [&](FactId f) { return std::find(out.feeds.begin(), out.feeds.end(), f) != out.feeds.end(); });
    return out;
}

std::vector<FactId> concerns_of(const Journal& journal, const History& history, const std::vector<std::size_t>& takings) {
    std::vector<FactId> out;
    for (const std::size_t i : takings) {
        const Concerns c = concerns_of(journal, history, history.takings[i]);
        add_once(out, c.feeds);
        add_once(out, c.possible_feeds);
        add_once(out, c.treatments);
    }
    return out;
}

}  // namespace waxtab
