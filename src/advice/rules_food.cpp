// Feeds and honey supers keep apart: what is fed is carried up and is not honey.
#include <algorithm>

#include <fmt/format.h>

#include "advice/harvest.hpp"
#include "handbook/winter.hpp"

namespace waxtab {
namespace {

/// Days a portion of syrup may still be in the feeder or on its way up; own judgement.
constexpr int portion_days = 7;
/// Days before a super goes on within which syrup counts as carried up; own judgement.
constexpr int carried_up_days = 14;

const Fact& fact_of(const HiveView& hive, FactId id) { return hive.journal().facts[id]; }

bool sweet(const HiveView& hive, const Feeding& f) {
    return f.fact != set_up_fact && fact_of(hive, f.fact).detail != "pollen patty";
}

/// A portion is gone within days, though the journal may end it only with the next one.
Day fed_until(const HiveView& hive, const Feeding& f) {
    const Day noted = f.to.value_or(hive.on());
    const bool feeder = f.fact == set_up_fact || fact_of(hive, f.fact).kind == Kind::feeder_on;
    return feeder ? noted : std::min(noted, f.from + date::days{portion_days});
}

std::string feed_name(const HiveView& hive, const Feeding& f) {
    const Fact& fact = fact_of(hive, f.fact);
    if (fact.kind == Kind::feeder_on || fact.detail.empty()) return "feed";
    return std::string(fact.detail);
}

/// Hunger outranks a clean crop: then supers come off instead, which the hunger rule says.
bool hungry(const HiveView& hive) { return hive.last(14, Kind::stores, {"none", "light"}).has_value(); }

Advice feed_off(const HiveView& hive, std::string_view feed, std::optional<Day> since, FactId fact) {
    Advice a = advise_to(Act::stop_feed, Rank::law_and_food, "take the feed off: honey supers are on");
    a.by = hive.on();
    how_sure(a, Sureness::certain, "");
    a.reasons.push_back(fmt::format("{}{} with {} on: what is fed is not honey", feed, since ? " since " + iso(*since) : "",
                                    counted(static_cast<int>(hive.supers.size()), "super")));
    because(a, fact);
    because(a, hive.supers.back().on_fact);
    return a;
}

Advices feed_with_supers(const HiveView& hive) {
    if (hive.supers.empty() || hungry(hive)) return {};
    if (hive.feeder) return {feed_off(hive, "a feeder on", hive.feeder->since, hive.feeder->fact)};
    for (auto f = hive.history->feedings.rbegin(); f != hive.history->feedings.rend(); ++f)
        if (sweet(hive, *f) && fed_until(hive, *f) >= hive.on()) return {feed_off(hive, feed_name(hive, *f), f->from, f->fact)};
    return {};
}

/// Supers that were on while something was fed, or that went on soon after.
Advices fed_supers(const HiveView& hive) {
    Advice a = advise_to(Act::leave_super, Rank::law_and_food, "");
    std::vector<std::string> names;
    const Feeding* fed = nullptr;
    for (const SuperView& s : hive.supers) {
        for (const Feeding& f : hive.history->feedings) {
            if (!sweet(hive, f) || cleared_by_keeper(hive, f.from)) continue;
            if (!stood_within(*s.box, hive.id, f.from, fed_until(hive, f) + date::days{carried_up_days})) continue;
            if (!s.since && s.full() <= 0) continue;
            fed = &f;
            if (names.empty() || names.back() != super_name(hive, s)) {
                names.push_back(super_name(hive, s));
                a.boxes.push_back(s.box->id);
                because(a, s.on_fact);
            }
            because(a, f.fact);
        }
    }
    if (!fed) return {};
    a.what = fmt::format("keep the contents of {} apart: not to be sold as honey", listed(names));
    how_sure(a, Sureness::likely, "syrup is carried up");
    const bool before = fed_until(hive, *fed) < hive.supers.front().since.value_or(fed->from);
    a.reasons.push_back(fmt::format("{} fed from {} to {}{}", feed_name(hive, *fed), iso(fed->from), iso(fed_until(hive, *fed)),
                                    before ? ", shortly before the super went on" : ", with the super on"));
    a.reasons.push_back("marked until it is emptied, or until you note it as cleared");
    return {a};
}

Advices honey_fed(const HiveView& hive) {
    const auto fed = hive.last(21, Kind::feed, {"honey"});
    if (!fed) return {};
    Advice a = advise_to(Act::note, Rank::law_and_food, "feed no honey, least of all from elsewhere");
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back(fmt::format("honey fed on {}: it may carry disease and starts robbing; white sugar does neither", iso(fed->day)));
    because(a, fed->fact);
    return {a};
}

}  // namespace

std::vector<Rule> food_rules() {
    return {
        {{"feed-with-supers", "No feed while honey supers are on.", "Codex STAN 12-1981: honey has no added ingredients; htfbw.com",
          "Feed and honey"},
         &feed_with_supers},
        {{"fed-super", "A super that was on during a feed, or went on within a fortnight after one, stays marked: bees carry syrup up.",
          "Codex STAN 12-1981; wvbeekeeper.blogspot.com; the fortnight is from memory", "Feed and honey"},
         &fed_supers},
        {{"honey-fed", "Honey is no feed: disease and robbing.", "National Bee Unit, Best Practice Guideline No. 7",
          "Feed and honey"},
         &honey_fed},
    };
}

}  // namespace waxtab
