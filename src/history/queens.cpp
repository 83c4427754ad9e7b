#include "history/queens.hpp"

#include <algorithm>

namespace waxtab {
namespace {

/// A queen that left with a swarm is the one hived within so many days; own judgement.
constexpr int swarm_hived_days = 14;
/// A virgin seen or a queen noted as new so long after one was begun is that one; own judgement.
constexpr int raised_days = 60;

class Follower {
public:
    Follower(const Journal& journal, const History& history)
        : journal_(journal), now_(journal.hives.size(), -1), left_(journal.hives.size()) {
        for (const HiveHistory& h : history.hives)
            if (!h.born && (h.alive || h.ended)) begin(h.hive, add(), std::nullopt, set_up_fact, "");
    }

    void take(FactId id) {
        const Fact& f = journal_.facts[id];
        if (f.hive == no_hive) return;
        switch (f.kind) {
            case Kind::swarmed: swarm(f, id); break;
            case Kind::swarm_hived: hive_swarm(f, id); break;
            case Kind::hive_split: case Kind::nuc_made: split(f, id); break;
            case Kind::hive_united: unite(f, id); break;
            case Kind::hive_bought: begin(f.hive, add(), f.happened, id, "bought with the hive"); break;
            case Kind::hive_dead: case Kind::hive_ended: case Kind::hive_sold: end(f.hive, f.happened, id, "with the hive"); break;
            default: note(f, id);
        }
    }
    Queens out;

private:
    struct Left { int queen = -1; Day day{}; };

    int add(HiveId raised_in = no_hive) {
        out.queens.push_back({});
        out.queens.back().raised_in = raised_in;
        return static_cast<int>(out.queens.size()) - 1;
    }
    /// Index of the reign that goes on, -1 without one.
    int& now(HiveId hive) { return now_[static_cast<std::size_t>(hive)]; }

    void begin(HiveId hive, int queen, std::optional<Day> day, FactId id, std::string_view came) {
        out.reigns.push_back({queen, hive, day, std::nullopt, id, set_up_fact, came, {}});
        now(hive) = static_cast<int>(out.reigns.size()) - 1;
    }
    int end(HiveId hive, Day day, FactId id, std::string_view went) {
        if (now(hive) < 0) return -1;
        Reign& r = out.reigns[static_cast<std::size_t>(now(hive))];
        r.to = day, r.to_fact = id, r.went = went;
        now(hive) = -1;
        return r.queen;
    }
    Queen& queen_of(HiveId hive) { return out.queens[static_cast<std::size_t>(out.reigns[static_cast<std::size_t>(now(hive))].queen)]; }

    void leave_with_swarm(HiveId hive, Day day, FactId id) {
        left_[static_cast<std::size_t>(hive)] = {end(hive, day, id, "left with the swarm"), day};
        begin(hive, add(hive), day, id, "raised after the swarm");
    }

    void swarm(const Fact& f, FactId id) {
        if (f.detail != "cast") leave_with_swarm(f.hive, f.happened, id);
    }

    void hive_swarm(const Fact& f, FactId id) {
        if (f.other == no_hive || f.other == f.hive) return begin(f.hive, add(), f.happened, id, "came with the swarm");
        if (f.detail == "cast") return begin(f.hive, add(f.other), f.happened, id, "came with the cast");
        Left& left = left_[static_cast<std::size_t>(f.other)];
        if (left.queen < 0 || days_between(left.day, f.happened) > swarm_hived_days) leave_with_swarm(f.other, f.happened, id);
        begin(f.hive, left.queen < 0 ? add() : left.queen, f.happened, id, "came with the swarm");
        left = {};
    }

    void split(const Fact& f, FactId id) {
        if (f.other == no_hive || f.other == f.hive) return;
        if (f.detail != "old queen") return begin(f.other, add(f.hive), f.happened, id, "raised after the split");
        const int old = end(f.hive, f.happened, id, "went with the split");
        begin(f.other, old < 0 ? add() : old, f.happened, id, "came with the split");
        begin(f.hive, add(f.hive), f.happened, id, "raised after the split");
    }

    /// The queen of the hive that is gone goes on where the other has none.
    void unite(const Fact& f, FactId id) {
        const int queen = end(f.hive, f.happened, id, "united");
        if (queen >= 0 && f.other != no_hive && now(f.other) < 0) begin(f.other, queen, f.happened, id, "came with the union");
    }

    void note(const Fact& f, FactId id) {
        if (f.kind == Kind::queen_introduced) {
            end(f.hive, f.happened, id, "replaced");
            begin(f.hive, add(), f.happened, id, "introduced");
            if (f.manner != "cell") queen_of(f.hive).colour = f.detail;
            queen_of(f.hive).mother = f.text;
        }
        if (f.kind == Kind::queen) told(f, id);
        if (now(f.hive) < 0) return;
        Queen& queen = queen_of(f.hive);
        if (f.kind == Kind::queen_marked) {
            queen.colour = f.detail;
            if (f.count > 0) queen.year = f.count;
        }
        if (f.kind == Kind::queen_clipped) queen.clipped = true;
        if (f.kind == Kind::queen_mother) queen.mother = f.other != no_hive ? std::string(journal_.hive_name(f.other)) : f.text;
    }

    bool just_raised(HiveId hive, Day day) {
        if (now(hive) < 0) return false;
        const Reign& r = out.reigns[static_cast<std::size_t>(now(hive))];
        return r.from && r.came.starts_with("raised") && days_between(*r.from, day) <= raised_days;
    }

    void told(const Fact& f, FactId id) {
        if (f.detail == "absent") {
            if (!just_raised(f.hive, f.happened)) end(f.hive, f.happened, id, "not there any more");
            return;
        }
        const bool is_new = f.detail == "new" || f.detail == "superseded" || f.detail == "emerged" || f.detail == "virgin";
        if (is_new && !just_raised(f.hive, f.happened)) {
            end(f.hive, f.happened, id, f.detail == "superseded" ? "superseded" : "replaced");
            begin(f.hive, add(f.hive), f.happened, id, "raised there");
        } else if (now(f.hive) < 0 && (f.detail == "seen" || f.detail == "laying" || f.detail == "right")) {
            begin(f.hive, add(), f.happened, id, "seen");
        }
    }

    const Journal& journal_;
    std::vector<int> now_;
    std::vector<Left> left_;
};

}  // namespace

std::vector<const Reign*> Queens::of(HiveId hive) const {
    std::vector<const Reign*> found;
    for (const Reign& r : reigns)
        if (r.hive == hive) found.push_back(&r);
    return found;
}

const Reign* Queens::next(const Reign& reign) const {
    for (const Reign* r = &reign + 1; r != reigns.data() + reigns.size(); ++r)
        if (r->queen == reign.queen) return r;
    return nullptr;
}

const Reign* Queens::before(const Reign& reign) const {
    for (const Reign* r = &reign; r != reigns.data();)
        if ((--r)->queen == reign.queen) return r;
    return nullptr;
}

bool Queens::worth_telling(HiveId hive) const {
    const std::vector<const Reign*> all = of(hive);
    if (all.size() != 1) return !all.empty();
    const Queen& q = queens[static_cast<std::size_t>(all.front()->queen)];
    return !q.colour.empty() || q.year > 0 || q.clipped || !q.mother.empty() || before(*all.front()) || all.front()->to;
}

Queens queens_of(const Journal& journal, const History& history) {
    Follower follower(journal, history);
    for (FactId id = 0; id < journal.facts.size(); ++id)
        if (journal.facts[id].noted <= history.on && journal.facts[id].happened <= history.on) follower.take(id);
    return std::move(follower.out);
}

}  // namespace waxtab
