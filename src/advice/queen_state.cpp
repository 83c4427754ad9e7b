#include "advice/queen_state.hpp"

#include <algorithm>
#include <cctype>

namespace waxtab {
namespace {

using handbook::QueenStart;

/// Eggs stay eggs for three days, so a queen noted that long ago may still be the layer.
constexpr int egg_days = 3;
/// The last of a lost queen's larvae are sealed by then, with a day to spare.
constexpr int old_larvae_days = 10;
/// Days after which a clock without any news is dropped; own judgement.
constexpr int clock_days = 75;

bool says_none(const Fact& f) { return f.detail == "none" || f.count == 0; }

bool shows_eggs(const Fact& f) {
    if (f.kind == Kind::eggs) return !says_none(f);
    return f.kind == Kind::brood && f.detail == "all stages";
}
bool shows_open_brood(const Fact& f) { return shows_eggs(f) || (f.kind == Kind::larvae && !says_none(f)); }
bool brood_frames(const Fact& f) {
    return (f.kind == Kind::brood || f.kind == Kind::sealed_brood) && f.detail != "none" && f.value.low > 0;
}
bool denies_eggs(const Fact& f) { return f.kind == Kind::eggs && says_none(f); }
bool denies_open_brood(const Fact& f) {
    if (f.kind == Kind::larvae) return says_none(f);
    return f.kind == Kind::brood && (f.detail == "none" || (f.value.said() && f.value.high == 0));
}
bool queen_seen(const Fact& f) {
    return f.kind == Kind::queen_marked || f.kind == Kind::queen_clipped ||
           (f.kind == Kind::queen && is_one_of(f.detail, {"seen", "right", "laying"}));
}

bool recent(const std::optional<Seen>& seen, Day day, int days) {
    return seen && days_between(seen->day, day) <= days;
}

/// Keeps a QueenState up to date, one fact at a time.
class Walker {
public:
    explicit Walker(HiveId hive) : hive_(hive) {}

    void take(const Seen& s) {
        if (state.cells && s.day > state.cells->day) commit_cells();
        take_brood(s);
        take_queen(s);
        take_cells(s);
        take_colony(s);
    }
    QueenState state;

private:
    void start(QueenStart what, const Seen& s) { state.clock = QueenClock{what, s.day, s.fact}; }

    int days_on_clock(Day day) const { return state.clock ? days_between(state.clock->day, day) : 0; }
    int earliest_eggs() const { return state.clock ? handbook::first_eggs(state.clock->start).earliest : 0; }
    bool before_new_eggs(Day day) const { return state.clock && days_on_clock(day) < earliest_eggs(); }

    /// Eggs just after a loss are the old queen's; later ones prove the new one.
    void prove_laying(const Seen& s) {
        if (before_new_eggs(s.day)) return;
        if (state.clock) state.cells.reset();
        state.clock.reset();
        state.absent.reset();
        state.cells_removed.reset();
        state.split_unknown.reset();
        state.queen_left.reset();
    }

    void take_brood(const Seen& s) {
        const Fact& f = *s.it;
        if (shows_eggs(f)) {
            state.eggs = s;
            state.no_eggs.reset();
            prove_laying_by_eggs(s);
        }
        if (denies_eggs(f)) state.no_eggs = s;
        if (shows_open_brood(f) || brood_frames(f)) {
            state.open_brood = s;
            state.no_open_brood.reset();
        }
        if (newer_than_old_queen(s)) prove_laying_by_eggs(s);
        if (denies_open_brood(f) && !state.no_open_brood) state.no_open_brood = s;
    }

    /// Larvae or sealed brood too young to be the old queen's.
    bool newer_than_old_queen(const Seen& s) const {
        if (!state.clock) return false;
        const int days = days_on_clock(s.day);
        if (shows_open_brood(*s.it)) return days >= std::max(earliest_eggs() + 3, old_larvae_days);
        return brood_frames(*s.it) && days >= std::max(earliest_eggs() + 9, handbook::all_brood_gone_day);
    }

    /// Eggs while the queen is said to be gone may be laying workers': no proof.
    void prove_laying_by_eggs(const Seen& s) {
        if (!state.absent && !state.laying_workers) prove_laying(s);
    }

    void take_queen(const Seen& s) {
        const Fact& f = *s.it;
        if (queen_seen(f)) see_queen(s);
        if (f.kind == Kind::queen_clipped) state.clipped = true;
        if (f.kind == Kind::queen_introduced) introduce(s);
        if (f.kind != Kind::queen) return;
        if (f.detail == "absent") state.absent = s;
        if (is_one_of(f.detail, {"failing", "drone layer"})) state.failing = s;
        if (f.detail == "laying workers") state.laying_workers = s;
        if (is_one_of(f.detail, {"virgin", "emerged"})) start(QueenStart::virgin_emerged, s);
    }

    void see_queen(const Seen& s) {
        state.queen = s;
        if (clock_from_cells() && before_new_eggs(s.day)) state.clock.reset();
        state.absent.reset();
        state.split_unknown.reset();
        state.cells_removed.reset();
        const bool lays = s.it->kind == Kind::queen && is_one_of(s.it->detail, {"laying", "right"});
        if (lays) state.clock.reset();
        if (lays) state.failing.reset(), state.laying_workers.reset();
    }

    bool clock_from_cells() const {
        return state.clock && (state.clock->start == QueenStart::sealed_cell_found ||
                               state.clock->start == QueenStart::open_cell || state.clock->start == QueenStart::charged_cell);
    }

    void introduce(const Seen& s) {
        state.failing.reset();
        state.laying_workers.reset();
        state.absent.reset();
        state.clipped = false;
        state.cells.reset();
        if (s.it->manner == "cell") start(QueenStart::cell_sealed, s);
        else start(QueenStart::swarm_hived, s);
    }

    void take_cells(const Seen& s) {
        const Fact& f = *s.it;
        if (f.kind == Kind::cups && is_one_of(f.detail, {"charged", "egg"}) && f.count != 0) see_cells(s, true);
        if (f.kind == Kind::queen_cells) take_queen_cells(s);
        if (f.kind == Kind::cells_removed) remove_cells(s);
        if (f.kind == Kind::cells_left) leave_cells(s);
    }

    void take_queen_cells(const Seen& s) {
        const Fact& f = *s.it;
        if (f.count == 0 || f.detail == "torn down") {
            state.cells.reset();
        } else if (f.detail == "emerged") {
            state.cells.reset();
            start(QueenStart::virgin_emerged, s);
        } else {
            see_cells(s, false);
        }
    }

    void see_cells(const Seen& s, bool cups) {
        const Fact& f = *s.it;
        if (!state.cells || state.cells->day != s.day) {
            state.cells = CellsSeen{};
            state.cells->day = s.day;
            state.cells->only_cups = cups;
        }
        state.cells->facts.push_back(s.fact);
        state.cells->only_cups = state.cells->only_cups && cups;
        state.cells->sealed = state.cells->sealed || f.detail == "sealed";
        state.cells->supersedure = f.manner == "supersedure";
        if (f.count > 0) state.cells->count = f.count, state.cells->roughly = f.count_range.said();
    }

    void remove_cells(const Seen& s) {
        if (left_day_ == s.day) return;   // "left 1, knocked down 2": what was left stands
        const bool all = s.it->count < 0 || !state.cells || state.cells->count < 0 || s.it->count >= state.cells->count;
        if (!all) {
            if (state.cells && state.cells->count > 0) state.cells->count -= s.it->count;
            return;
        }
        state.cells.reset();
        state.clock.reset();
        state.cells_removed = s;
    }

    void leave_cells(const Seen& s) {
        state.cells_removed.reset();
        if (s.it->count == 0) {
            state.cells.reset();
            state.cells_removed = s;
            return;
        }
        left_day_ = s.day;
        if (!state.cells || state.cells->day != s.day) see_cells(s, false);
        state.cells->count = s.it->count;
        state.cells->roughly = s.it->count_range.said();
    }

    void take_colony(const Seen& s) {
        const Fact& f = *s.it;
        switch (f.kind) {
            case Kind::swarmed: swarm(s); break;
            case Kind::swarm_hived: hive_swarm(s); break;
            case Kind::hive_split:
            case Kind::nuc_made: split(s); break;
            default: break;
        }
    }

    void swarm(const Seen& s) {
        state.swarmed = s;
        state.sealed_before_swarm = state.cells && state.cells->sealed ? std::optional<Day>(state.cells->day) : std::nullopt;
        state.queen.reset();
        state.clipped = false;
        start(s.it->detail == "cast" ? QueenStart::virgin_emerged : QueenStart::prime_swarm_left, s);
    }

    /// A swarm that was hived left its old hive, where that is known and was not noted already.
    void hive_swarm(const Seen& s) {
        if (s.it->hive != hive_) {
            if (!state.swarmed || days_between(state.swarmed->day, s.day) > 3) swarm(s);
            return;
        }
        state = QueenState{};
        start(s.it->detail == "cast" ? QueenStart::virgin_emerged : QueenStart::swarm_hived, s);
    }

    /// `old queen` says that she went to the new hive.
    void split(const Seen& s) {
        const bool mother = s.it->hive == hive_;
        if (!mother) state = QueenState{};
        if (s.it->detail != "old queen") {
            state.split_unknown = s;
            return;
        }
        if (!mother) {
            state.queen = s;
            return;
        }
        state.queen.reset();
        state.clipped = false;
        state.queen_left = s;
        state.left_with_cells = state.cells.has_value();
        if (!state.cells) start(QueenStart::queenless_split, s);
        else if (state.cells->sealed) start(QueenStart::sealed_cell_found, s);
        else start(state.cells->only_cups ? QueenStart::charged_cell : QueenStart::open_cell, s);
    }

public:
    /// Cells with no sign of the queen beside them set the clock; with her there, they ask for a split instead.
    void commit_cells() {
        if (!state.cells) return;
        CellsSeen& cells = *state.cells;
        const auto lost = [&](const std::optional<Seen>& s) { return s && s->day >= cells.day - date::days{egg_days}; };
        cells.queen_there = !lost(state.swarmed) && !lost(state.absent) && !lost(state.queen_left) && !state.clock &&
                            (recent(state.queen, cells.day, egg_days) || recent(state.eggs, cells.day, egg_days));
        if (cells.queen_there || state.clock || cells.supersedure) return;
        const QueenStart what = cells.sealed      ? QueenStart::sealed_cell_found
                                : cells.only_cups ? QueenStart::charged_cell
                                                  : QueenStart::open_cell;
        state.clock = QueenClock{what, cells.day, cells.facts.front()};
    }

private:
    HiveId hive_;
    std::optional<Day> left_day_;   ///< the last day on which cells were left on purpose
};

}  // namespace

bool mentions(std::string_view text, std::string_view word) {
    if (word.empty() || text.size() < word.size()) return false;
    for (std::size_t i = 0; i + word.size() <= text.size(); ++i) {
        std::size_t n = 0;
        while (n < word.size() && std::tolower(static_cast<unsigned char>(text[i + n])) == word[n]) ++n;
        if (n == word.size()) return true;
    }
    return false;
}

QueenState walk_queen(HiveId hive, const std::vector<Seen>& facts, Day on) {
    Walker walker(hive);
    for (const Seen& s : facts) walker.take(s);
    walker.commit_cells();
    QueenState state = walker.state;
    if (state.clock && days_between(state.clock->day, on) > clock_days) state.clock.reset();
    if (state.cells && days_between(state.cells->day, on) > clock_days) state.cells.reset();
    return state;
}

}  // namespace waxtab
