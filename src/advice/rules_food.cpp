// Feeds and honey supers keep apart: what is fed is carried up and is not honey.
#include <algorithm>

#include <fmt/format.h>

#include "advice/harvest.hpp"
#include "history/feed_span.hpp"

namespace waxtab {
namespace {

const Fact& fact_of(const HiveView& hive, FactId id) { return hive.journal().facts[id]; }

bool sweet(const HiveView& hive, const Feeding& f) {
    return f.fact != set_up_fact && fact_of(hive, f.fact).detail != "pollen patty";
}

std::string feed_name(const HiveView& hive, const Feeding& f) {
    const Fact& fact = fact_of(hive, f.fact);
    if (fact.kind == Kind::feeder_on || fact.detail.empty()) return "feed";
    return std::string(fact.detail);
}

/// Hunger outranks a clean crop: then supers come off instead, which the hunger rule says.
bool hungry(const HiveView& hive) { return hive.last(14, Kind::stores, {"none", "light"}).has_value(); }

Advice feed_off(const HiveView& hive, std::string_view feed, std::optional<Day> since, FactId fact, bool sure) {
    Advice a = advise_to(Act::stop_feed, Rank::law_and_food, "take the feed off: honey supers are on");
    a.by = hive.on();
    how_sure(a, sure ? Sureness::certain : Sureness::possible, sure ? "" : "its end was not noted");
    a.reasons.push_back(fmt::format("{}{} with {} on: what is fed is not honey", feed, since ? " since " + iso(*since) : "",
                                    counted(static_cast<int>(hive.supers.size()), "super")));
    if (!sure) a.reasons.push_back("if it is off or empty, note that");
    because(a, fact);
    because(a, hive.supers.back().on_fact);
    return a;
}

/// Days a portion may still be in the feeder when its end was not noted; common practice, no source: see
/// feed_carried_days for what a strong colony takes.
constexpr int portion_days = 7;

/// The last sweet feed given within so many days and not noted empty or off.
const Feeding* fed_within(const HiveView& hive, int days) {
    for (auto f = hive.history->feedings.rbegin(); f != hive.history->feedings.rend(); ++f)
        if (sweet(hive, *f) && !f->to && days_between(f->from, hive.on()) <= days) return &*f;
    return nullptr;
}

Advices feed_with_supers(const HiveView& hive) {
    if (hive.supers.empty() || hungry(hive)) return {};
    const Feeding* fed = fed_within(hive, portion_days);
    if (hive.feeder) {
        const bool fresh = fed || (hive.feeder->since && days_between(*hive.feeder->since, hive.on()) <= portion_days);
        return {feed_off(hive, "a feeder on", hive.feeder->since, hive.feeder->fact, fresh)};
    }
    if (fed) return {feed_off(hive, feed_name(hive, *fed), fed->from, fed->fact, fed->from == hive.on())};
    return {};
}

enum class Mixed { no, possible, surely };

Mixed mixed_with(const HiveView& hive, const SuperView& super, const Feeding& f) {
    if (!sweet(hive, f) || cleared_by_keeper(hive, f.from) || (!super.since && super.full() <= 0)) return Mixed::no;
    const FeedSpan span = span_of(hive.journal(), f, hive.on());
    if (stood_within(*super.box, hive.id, span.from, span.sure)) return Mixed::surely;
    return stood_within(*super.box, hive.id, span.from, span.possible) ? Mixed::possible : Mixed::no;
}

std::string mixed_reason(const HiveView& hive, const SuperView& super, const Feeding& f, Mixed mixed) {
    const FeedSpan span = span_of(hive.journal(), f, hive.on());
    const std::string days = span.sure == span.from ? "on " + iso(span.from) : fmt::format("from {} to {}", iso(span.from), iso(span.sure));
    if (mixed == Mixed::surely) return fmt::format("{} fed {}, with {} on", feed_name(hive, f), days, super_name(hive, super));
    const int later = super.since ? days_between(span.sure, *super.since) : 0;
    return fmt::format("{} fed {}, {} before {} went on: bees move syrup up for up to {} days", feed_name(hive, f), days,
                       counted(later, "day"), super_name(hive, super), feed_carried_days);
}

/// The feed that makes most of it, and all that were given near.
struct Fed {
    Mixed most = Mixed::no;
    const Feeding* last = nullptr;
    std::vector<FactId> facts;
};

Fed fed_into(const HiveView& hive, const SuperView& super) {
    Fed out;
    for (const Feeding& f : hive.history->feedings) {
        const Mixed mixed = mixed_with(hive, super, f);
        if (mixed == Mixed::no) continue;
        if (mixed >= out.most) out.most = mixed, out.last = &f;
        out.facts.push_back(f.fact);
    }
    return out;
}

/// Surely mixed supers are not taken; possible ones are for the keeper to judge, so that nothing else is held up.
Advice begin_mixed(Mixed wanted) {
    const bool sure = wanted == Mixed::surely;
    Advice a = advise_to(sure ? Act::leave_super : Act::note, Rank::law_and_food, "");
    how_sure(a, sure ? Sureness::certain : Sureness::possible, sure ? "" : "syrup may have been carried up");
    return a;
}

/// The advice for supers mixed with feed; `wanted` picks the sure or the possible ones.
Advices fed_supers_as(const HiveView& hive, Mixed wanted) {
    Advice a = begin_mixed(wanted);
    std::vector<std::string> names;
    for (const SuperView& s : hive.supers) {
        const Fed fed = fed_into(hive, s);
        if (fed.most != wanted) continue;
        names.push_back(super_name(hive, s));
        a.reasons.push_back(mixed_reason(hive, s, *fed.last, wanted));
        a.boxes.push_back(s.box->id);
        because(a, fed.facts);
        because(a, s.on_fact);
    }
    if (names.empty()) return {};
    a.what = wanted == Mixed::surely ? fmt::format("keep the contents of {} apart: not to be sold as honey", listed(names))
                                     : fmt::format("look whether syrup got into {} before any is sold as honey", listed(names));
    a.reasons.push_back("marked until it is emptied, or until you note it as cleared");
    return {a};
}

/// Supers that were on while something was fed, or that went on soon after.
Advices fed_supers(const HiveView& hive) {
    Advices out = fed_supers_as(hive, Mixed::surely);
    for (Advice& a : fed_supers_as(hive, Mixed::possible)) out.push_back(std::move(a));
    return out;
}

Advices honey_fed(const HiveView& hive) {
    const auto fed = hive.last(21, Kind::feed, {"honey"});
    if (!fed) return {};
    Advice a = advise_to(Act::note, Rank::law_and_food, "feed no honey from elsewhere, your own from healthy hives at the most; better white sugar");
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back(fmt::format("honey fed on {}: honey can carry foul brood from hive to hive, and it starts robbing", iso(fed->day)));
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
          "Codex STAN 12-1981; wvbeekeeper.blogspot.com; the fortnight: common practice, no source", "Feed and honey"},
         &fed_supers},
        {{"honey-fed", "Honey is no feed: it carries foul brood and starts robbing; own honey from healthy hives at the most.", "National Bee Unit, Best Practice Guideline No. 7 (feed no honey); own honey at the most: common practice, no source",
          "Feed and honey"},
         &honey_fed},
    };
}

}  // namespace waxtab
