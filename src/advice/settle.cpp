#include "advice/settle.hpp"

#include <algorithm>
#include <initializer_list>
#include <tuple>

#include <fmt/format.h>

#include "advice/rule.hpp"

namespace waxtab {
namespace {

bool one_of(Act act, std::initializer_list<Act> acts) { return std::find(acts.begin(), acts.end(), act) != acts.end(); }

bool concerns_same_hive(const Advice& a, const Advice& b) {
    if (a.hive != no_hive) return a.hive == b.hive;
    if (a.act != Act::stand_still) return false;
    return a.yard == b.yard;
}

bool share_boxes(const Advice& a, const Advice& b) {
    if (a.boxes.empty() || b.boxes.empty()) return true;
    return std::any_of(a.boxes.begin(), a.boxes.end(),
                       [&](BoxId x) { return std::find(b.boxes.begin(), b.boxes.end(), x) != b.boxes.end(); });
}

/// Acts that cannot go together, whichever wins.
bool acts_clash(Act winner, Act loser) {
    switch (winner) {
        case Act::stand_still:
            return one_of(loser, {Act::add_super, Act::take_honey, Act::take_empty, Act::clear, Act::split, Act::give_frame, Act::unite});
        case Act::supers_off: return one_of(loser, {Act::add_super, Act::take_honey, Act::clear});
        case Act::stop_feed: return one_of(loser, {Act::add_super, Act::feed});
        case Act::leave_super: return one_of(loser, {Act::take_honey, Act::take_empty, Act::clear});
        case Act::leave_shut: return one_of(loser, {Act::open, Act::split, Act::give_frame, Act::unite});
        case Act::no_super: return loser == Act::add_super;
        default: return false;
    }
}

template <class T>
void append_new(std::vector<T>& to, const std::vector<T>& from) {
    for (const T& t : from)
        if (std::find(to.begin(), to.end(), t) == to.end()) to.push_back(t);
}

/// Only acts that are one thing to do, however many reasons there are.
bool joins(Act act) {
    return one_of(act, {Act::add_super, Act::take_honey, Act::open, Act::feed, Act::give_frame, Act::unite, Act::split, Act::excluder,
                        Act::leave_shut, Act::entrance});
}

void join(Advice& first, const Advice& second) {
    if (first.rule != second.rule) append_new(first.also, {second.rule});
    append_new(first.also, second.also);
    // What was worked out stays, whichever of the two is surer.
    const Advice& unsaid = second.sureness < first.sureness ? first : second;
    if (first.act == Act::add_super && !unsaid.chances.empty()) append_new(first.reasons, {figures_of(unsaid)});
    append_new(first.reasons, second.reasons);
    first.chances.insert(first.chances.end(), second.chances.begin(), second.chances.end());
    append_new(first.because, second.because);
    append_new(first.over, second.over);
    append_new(first.boxes, second.boxes);
    if (second.by && (!first.by || *second.by < *first.by)) first.by = second.by;
    first.rank = std::min(first.rank, second.rank);
    if (first.act == Act::take_honey) {
        first.sureness = std::max(first.sureness, second.sureness);
        first.what = fmt::format("take {} supers off for honey", first.boxes.size());
    } else if (second.sureness < first.sureness) {
        first.sureness = second.sureness;
        first.sureness_words = second.sureness_words;
    }
}

/// Index of the advice that keeps `i` from being given, if any.
std::optional<std::size_t> beaten_by(const std::vector<Advice>& all, std::size_t i) {
    for (std::size_t k = 0; k < all.size(); ++k)
        if (k != i && contradicts(all[k], all[i])) return k;
    return std::nullopt;
}

std::vector<Advice> without_losers(std::vector<Advice> all) {
    std::vector<std::optional<std::size_t>> winner(all.size());
    for (std::size_t i = 0; i < all.size(); ++i) winner[i] = beaten_by(all, i);
    std::vector<Advice> out;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!winner[i]) continue;
        // The one that wins may itself have lost: the last in the chain says so.
        std::size_t w = *winner[i];
        for (std::size_t steps = 0; winner[w] && steps < all.size(); ++steps) w = *winner[w];
        append_new(all[w].over, {fmt::format("{} ({})", all[i].what, all[i].rule)});
    }
    for (std::size_t i = 0; i < all.size(); ++i)
        if (!winner[i]) out.push_back(std::move(all[i]));
    return out;
}

std::vector<Advice> without_covered(std::vector<Advice> all) {
    std::vector<Advice> out;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool covered = std::any_of(all.begin(), all.end(), [&](const Advice& a) { return covers(a, all[i]); });
        if (!covered) out.push_back(all[i]);
    }
    return out;
}

std::vector<Advice> joined(std::vector<Advice> all) {
    std::vector<Advice> out;
    for (Advice& a : all) {
        const auto same = std::find_if(out.begin(), out.end(), [&](const Advice& o) {
            return joins(a.act) && a.hive != no_hive && o.hive == a.hive && o.act == a.act;
        });
        if (same == out.end()) out.push_back(std::move(a));
        else join(*same, a);
    }
    return out;
}

}  // namespace

bool contradicts(const Advice& a, const Advice& b) {
    return a.rank <= b.rank && acts_clash(a.act, b.act) && concerns_same_hive(a, b) && share_boxes(a, b);
}

bool covers(const Advice& a, const Advice& b) {
    if (a.hive == no_hive || a.hive != b.hive) return false;
    if (a.act == Act::split || a.act == Act::give_frame || a.act == Act::unite) return b.act == Act::open && a.rank <= b.rank;
    return a.act == Act::clear && b.act == Act::take_honey;
}

std::vector<Advice> settle(std::vector<Advice> advice) {
    return joined(without_covered(without_losers(std::move(advice))));
}

void sort_by_urgency(std::vector<Advice>& advice) {
    const Day never = Day{date::days{1000000}};
    const auto key = [&](const Advice& a) {
        return std::tuple{a.rank != Rank::disease, a.by.value_or(never), a.rank, a.hive < 0};
    };
    std::stable_sort(advice.begin(), advice.end(), [&](const Advice& a, const Advice& b) { return key(a) < key(b); });
}

}  // namespace waxtab
