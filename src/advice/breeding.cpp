#include "advice/breeding.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "advice/mites.hpp"
#include "handbook/swarm.hpp"

namespace waxtab {
namespace {

/// A season is a calendar year, or July to June where the honey season spans the new year.
struct Season { int year = 0; Day from{}, to{}; };

Season season_of(const Settings& s, Day on) {
    const date::year_month_day today{on};
    const bool wraps = s.season_from_month > s.season_to_month;
    const auto first = [&](date::year y) { return Day{y / (wraps ? 7 : 1) / 1}; };
    date::year year = today.year();
    if (wraps && on < first(year)) year -= date::years{1};
    return {static_cast<int>(year), first(year), first(year + date::years{1}) - date::days{1}};
}

/// Reads the season's notes of one hive into its figures.
class Reader {
public:
    Reader(const Journal& journal, ColonyFigures& figures) : journal_(journal), out_(figures) {}

    void take(const Seen& s) {
        const Fact& f = *s.it;
        switch (f.kind) {
            case Kind::temper: take_temper(s); break;
            case Kind::stings: out_.stings += std::max(0, f.count); keep(s); break;
            case Kind::mites: take_mites(s); break;
            case Kind::queen_mother: out_.mother = mother_name(f); keep(s); break;
            case Kind::queen_introduced: if (!f.text.empty()) { out_.mother = f.text; keep(s); } break;
            case Kind::cups: if (is_one_of(f.detail, {"charged", "egg"}) && f.count != 0) take_cells(s); break;
            case Kind::queen_cells: take_cells(s); break;
            case Kind::swarmed: lower(1, fmt::format("swarmed on {}", iso(s.day)), s); break;
            case Kind::swarm_hived: if (f.other == out_.hive) lower(1, fmt::format("its swarm was hived on {}", iso(s.day)), s); break;
            case Kind::hive_split: case Kind::nuc_made: take_split(s); break;
            default: break;
        }
    }

private:
    void keep(const Seen& s) { out_.because.push_back(s.fact); }

    void take_temper(const Seen& s) {
        if (s.it->detail == "calm") ++out_.calm;
        if (s.it->detail == "lively") ++out_.lively;
        if (s.it->detail == "defensive") ++out_.defensive;
        keep(s);
    }

    void take_mites(const Seen& s) {
        if (const auto rate = mite_rate(s)) out_.mites.push_back(*rate), keep(s);
    }

    std::string mother_name(const Fact& f) const {
        return f.other != no_hive && f.other != out_.hive ? std::string(journal_.hive_name(f.other)) : f.text;
    }

    void lower(double score, std::string words, const Seen& s) {
        keep(s);
        if (out_.swarm_score && *out_.swarm_score <= score) return;
        out_.swarm_score = score;
        out_.swarm_words = std::move(words);
    }

    /// Supersedure cells do not count; a look without cells is the best score.
    void take_cells(const Seen& s) {
        if (s.it->manner == "supersedure") return;
        if (s.it->count == 0) return lower(4, "no swarm cells noted", s);
        if (cell_days_.empty() || cell_days_.back() != s.day) cell_days_.push_back(s.day);
        const std::size_t n = cell_days_.size();
        if (n >= 3) return lower(2, fmt::format("swarm cells on {} visits", n), s);
        if (n == 2) return lower(2.5, "swarm cells built again; other signs not noted", s);
        lower(3, fmt::format("swarm cells on {}", iso(s.day)), s);
    }

    void take_split(const Seen& s) {
        if (s.it->hive != out_.hive || cell_days_.empty() || days_between(cell_days_.back(), s.day) > 7) return;
        lower(1, fmt::format("swarm cells, then split on {}", iso(s.day)), s);
    }

    const Journal& journal_;
    ColonyFigures& out_;
    std::vector<Day> cell_days_;
};

MassRange sum(const MassRange& a, const MassRange& b) {
    return {a.low + b.low, a.value + b.value, a.high + b.high, a.weighed && b.weighed};
}

/// By harvests, not by lots: honey that was blended stands in several lots.
void take_honey(ColonyFigures& f, const Ledger& ledger, const Season& season) {
    for (const Harvest& h : ledger.harvests) {
        if (h.hive != f.hive || h.day < season.from || h.day > season.to) continue;
        f.honey = f.honey ? sum(*f.honey, h.honey) : h.honey;
        f.because.insert(f.because.end(), h.because.begin(), h.because.end());
    }
}

bool lived_in(const HiveHistory& h, const Season& season) {
    return (h.alive || (h.ended && *h.ended >= season.from)) && (!h.born || *h.born <= season.to);
}

void set_against_yard(std::vector<ColonyFigures>& all) {
    for (ColonyFigures& f : all) {
        std::vector<Mass> yields;
        for (const ColonyFigures& o : all)
            if (o.yard == f.yard && o.honey) yields.push_back(o.honey->value);
        if (yields.empty()) continue;
        std::sort(yields.begin(), yields.end());
        f.yard_hives = static_cast<int>(yields.size());
        f.yard_low = yields.front();
        f.yard_high = yields.back();
        const std::size_t mid = yields.size() / 2;
        f.yard_median = yields.size() % 2 ? yields[mid] : Mass{(yields[mid - 1].ng + yields[mid].ng) / 2};
    }
}

void tidy(std::vector<FactId>& facts) {
    std::sort(facts.begin(), facts.end());
    facts.erase(std::unique(facts.begin(), facts.end()), facts.end());
    if (!facts.empty() && facts.back() == set_up_fact) facts.pop_back();
}

}  // namespace

std::vector<ColonyFigures> breeding(const Journal& journal, const History& history, const Ledger& ledger) {
    const Season season = season_of(journal.settings, history.on);
    std::vector<ColonyFigures> out;
    std::vector<int> place(history.hives.size(), -1);
    for (const HiveHistory& h : history.hives) {
        if (!lived_in(h, season)) continue;
        ColonyFigures f;
        f.hive = h.hive;
        f.yard = h.yard_on(history.on);
        f.season = season.year;
        if (h.mother != no_hive) f.mother = journal.hive_name(h.mother);
        place[static_cast<std::size_t>(h.hive)] = static_cast<int>(out.size());
        out.push_back(std::move(f));
    }
    std::vector<Reader> readers;
    for (ColonyFigures& f : out) readers.emplace_back(journal, f);
    for (std::size_t i = 0; i < journal.facts.size(); ++i) {
        const Fact& f = journal.facts[i];
        // A swarm that was hived tells of the hive it left.
        const HiveId hive = f.kind == Kind::swarm_hived ? f.other : f.hive;
        if (hive < 0 || place[static_cast<std::size_t>(hive)] < 0) continue;
        if (f.noted > history.on || f.happened > history.on || f.happened < season.from) continue;
        readers[static_cast<std::size_t>(place[static_cast<std::size_t>(hive)])].take({static_cast<FactId>(i), f.happened, &f});
    }
    for (ColonyFigures& f : out) take_honey(f, ledger, season);
    set_against_yard(out);
    for (ColonyFigures& f : out) tidy(f.because);
    return out;
}

}  // namespace waxtab
