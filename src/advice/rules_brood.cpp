// What eggs, larvae and their absence say about the queen.
#include <fmt/format.h>

#include "advice/rule.hpp"
#include "handbook/calendar.hpp"

namespace waxtab {
namespace {

/// Notes older than this are no news; the inspection rule takes over.
constexpr int news_days = 14;

bool fresh(const HiveView& hive, const std::optional<Seen>& s) {
    return s && days_between(s->day, hive.on()) <= news_days;
}

Advices eggs_without_queen(const HiveView& hive) {
    const auto& absent = hive.queen.absent;
    const auto& eggs = hive.queen.eggs;
    if (!absent || !fresh(hive, eggs) || days_between(absent->day, eggs->day) < 0) return {};
    // Within three days of her loss they are hers.
    const bool hers = days_between(absent->day, eggs->day) <= 3 && days_between(absent->day, hive.on()) <= 3;
    Advice a = advise_to(Act::open, Rank::swarm, "look closely at the eggs: how many in a cell, where, drone brood in worker cells?");
    a.by = hive.next_visit();
    how_sure(a, Sureness::possible, hers ? "they may still be the lost queen's" : "a queen unseen, or laying workers");
    a.reasons.push_back(fmt::format("eggs on {} while the queen was noted as absent on {}", iso(eggs->day), iso(absent->day)));
    because(a, eggs->fact);
    because(a, absent->fact);
    return {a};
}

Advices no_eggs(const HiveView& hive) {
    const auto& none = hive.queen.no_eggs;
    if (!fresh(hive, none) || hive.queen.clock || hive.queen.absent || hive.queen.split_unknown || hive.queen.cells_removed) return {};
    const auto larvae = hive.last(news_days, [&](const Fact& f) { return f.kind == Kind::larvae && f.detail != "none"; });
    const bool open = larvae && larvae->day == none->day;
    const auto ago = handbook::last_laid(open ? handbook::BroodSeen::open_no_eggs : handbook::BroodSeen::only_sealed);
    Advice a = advise_to(Act::open, Rank::swarm, "look for eggs, the queen and queen cells");
    a.by = none->day + date::days{5};
    how_sure(a, Sureness::possible, "");
    a.reasons.push_back(open ? fmt::format("larvae but no eggs on {}: laying stopped {} to {} days before", iso(none->day), ago.at_least,
                                           *ago.at_most)
                             : fmt::format("no eggs on {}: laying stopped at least 3 days before", iso(none->day)));
    if (hive.queen.queen && hive.queen.queen->it->detail == "laying") a.reasons.push_back("she was noted as laying before");
    because(a, none->fact);
    if (open) because(a, larvae->fact);
    return {a};
}

Advices queenless(const HiveView& hive) {
    const auto& absent = hive.queen.absent;
    if (!absent || days_between(absent->day, hive.on()) > 45 || hive.queen.clock || hive.queen.cells) return {};
    if (hive.queen.eggs && hive.queen.eggs->day >= absent->day) return {};
    Advice a = advise_to(Act::give_frame, Rank::swarm, "give a test frame with eggs and young larvae");
    a.by = hive.next_visit();
    how_sure(a, Sureness::likely, "queen noted as absent, no eggs since");
    a.reasons.push_back(fmt::format("queen absent on {}; cells on the frame prove it and raise a new one", iso(absent->day)));
    because(a, absent->fact);
    return {a};
}

Advices laying_workers_risk(const HiveView& hive) {
    const auto& none = hive.queen.no_open_brood;
    if (!none || hive.queen.laying_workers) return {};
    const int days = days_between(none->day, hive.on());
    if (days < handbook::laying_workers_from_days || days > 75 || hive.all->phase() != Phase::during) return {};
    Advice a = advise_to(Act::give_frame, Rank::swarm, "give a frame with eggs and young larvae: laying workers are to be feared");
    a.by = hive.on();
    how_sure(a, Sureness::possible, "loose figures");
    a.reasons.push_back(fmt::format("no open brood since {}: {}; without brood scent workers begin to lay after some 3 weeks",
                                    iso(none->day), counted(days, "day")));
    because(a, none->fact);
    return {a};
}

Advices laying_workers(const HiveView& hive) {
    const auto& seen = hive.queen.laying_workers;
    if (!seen || days_between(seen->day, hive.on()) > 45) return {};
    Advice a = advise_to(Act::unite, Rank::swarm, "unite the bees with a strong queenright hive, or shake them out");
    a.by = hive.next_visit();
    how_sure(a, Sureness::likely, "a queen given to laying workers is seldom taken");
    a.reasons.push_back(fmt::format("laying workers noted on {}", iso(seen->day)));
    because(a, seen->fact);
    return {a};
}

Advices failing_queen(const HiveView& hive) {
    const auto& seen = hive.queen.failing;
    if (!seen || days_between(seen->day, hive.on()) > 45 || hive.queen.clock) return {};
    Advice a = advise_to(Act::unite, Rank::swarm, "give it a new queen, or unite it");
    a.by = hive.next_visit();
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back(fmt::format("queen noted as {} on {}", seen->it->detail, iso(seen->day)));
    because(a, seen->fact);
    return {a};
}

}  // namespace

std::vector<Rule> brood_rules() {
    return {
        {{"eggs-without-queen", "Eggs while the queen is said to be gone may be laying workers': eggs per cell and drone brood tell.",
          "development tables (Queensland DPI); bmdooney.com", "Queens and brood"},
         &eggs_without_queen},
        {{"no-eggs", "No eggs: the last was laid more than 3 days ago; larvae without eggs, 3-9 days.",
          "development tables (Queensland DPI), worked out; Trunch Beekeepers", "Queens and brood"},
         &no_eggs},
        {{"queenless", "A queen noted as absent and no eggs since: a test frame.", "from memory", "Queens and brood"},
         &queenless},
        {{"laying-workers-risk", "No open brood for three weeks: laying workers are to be feared.",
          "bmdooney.com; Breconshire BKA (Sept 2025), after C. Butler: loose figures", "Queens and brood"},
         &laying_workers_risk},
        {{"laying-workers", "A colony of laying workers is united or shaken out.", "common practice, no source", "Queens and brood"},
         &laying_workers},
        {{"failing-queen", "A failing queen or drone layer is replaced, or the colony united.", "common practice, no source",
          "Queens and brood"},
         &failing_queen},
    };
}

}  // namespace waxtab
