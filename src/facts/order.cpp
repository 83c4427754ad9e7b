#include "facts/order.hpp"

#include "facts/tokens.hpp"

#include <algorithm>
#include <functional>
#include <map>
#include <tuple>

#include <fmt/format.h>

namespace waxtab {

namespace {

auto effect_key(const RawFact& r) {
    return std::tuple{r.fact.happened, r.fact.minute < 0 ? 0 : r.fact.minute, r.fact.span.file, r.effect};
}

/// Which hives live where while the facts are walked through; just enough for `all` and for yards.
class Roster {
public:
    explicit Roster(Journal& journal) : journal_(journal) {
        for (const HiveDecl& h : journal.hives) {
            alive_.push_back(h.declared);
            yard_.push_back(h.yard);
        }
    }

    YardId yard(HiveId h) const { return yard_[static_cast<std::size_t>(h)]; }
    void stands(HiveId h, YardId yard) { yard_[static_cast<std::size_t>(h)] = yard; }
    void adopt(HiveId h, YardId yard) {
        yard_[static_cast<std::size_t>(h)] = yard;
        YardId& first = journal_.hives[static_cast<std::size_t>(h)].yard;
        if (first == no_yard) first = yard;
    }

    std::vector<HiveId> living(YardId yard) const {
        std::vector<HiveId> out;
        for (std::size_t h = 0; h < alive_.size(); ++h)
            if (alive_[h] && (yard == no_yard || yard_[h] == yard)) out.push_back(static_cast<HiveId>(h));
        return out;
    }

    void follow(const Fact& f) {
        switch (f.kind) {
            case Kind::hive_moved: stands(f.hive, f.yard); break;
            case Kind::hive_sold: case Kind::hive_dead: case Kind::hive_ended: case Kind::hive_united: set_alive(f.hive, false); break;
            case Kind::swarm_hived: case Kind::hive_bought: born(f.hive, f); break;
            case Kind::hive_split: case Kind::nuc_made:
                if (f.other != no_hive) born(f.other, f);
                break;
            default: break;
        }
    }

private:
    void set_alive(HiveId h, bool alive) { alive_[static_cast<std::size_t>(h)] = alive; }
    void born(HiveId h, const Fact& f) {
        set_alive(h, true);
        adopt(h, f.yard);
        HiveDecl& decl = journal_.hives[static_cast<std::size_t>(h)];
        if (!decl.span.known()) decl.span = f.span;
        if (f.kind == Kind::nuc_made) decl.nucleus = true;
    }

    Journal& journal_;
    std::vector<bool> alive_;
    std::vector<YardId> yard_;
};

/// Spreads raw facts over their hives, in order.
class Spreader {
public:
    Spreader(Journal& journal) : journal_(journal), roster_(journal) {}

    void take(RawFact& raw) {
        const std::vector<HiveId> hives = whose(raw);
        if (hives.empty() && (raw.all || raw.rest || raw.both)) {
            Fact kept;
            kept.happened = raw.fact.happened, kept.noted = raw.fact.noted, kept.minute = raw.fact.minute, kept.yard = raw.fact.yard, kept.span = raw.fact.span;
            kept.detail = "flagged";
            kept.text = std::string(journal_.sources.text(raw.fact.span));
            journal_.readings[raw.reading].outcome = Reading::Outcome::remark;
            return push(std::move(kept), raw.reading);
        }
        if (hives.empty()) return push(raw.fact, raw.reading);
        const bool several = hives.size() > 1;
        if (several && raw.fact.kind >= Kind::opening_stock && raw.fact.kind <= Kind::sections_done) {
            Fact once = raw.fact;   // extracted from them together, not from each
            if (!raw.all && once.kind == Kind::extracted && once.hives.empty()) once.hives = hives;
            return push(std::move(once), raw.reading);
        }
        for (const HiveId h : hives) {
            Fact f = raw.fact;
            f.hive = h;
            if (raw.swap) std::swap(f.hive, f.other);
            if (several && f.count > 0 && is_event(f.kind)) f.assumed |= assumed_each;
            settle_yard(f);
            roster_.follow(f);
            seen_.push_back({f.noted, f.span.file, h});
            push(std::move(f), raw.reading);
        }
    }

private:
    struct Seen {
        Day noted;
        std::uint32_t file;
        HiveId hive;
    };

    bool seen_this_visit(const RawFact& raw, HiveId h) const {
        return std::any_of(seen_.rbegin(), seen_.rend(), [&](const Seen& s) { return s.hive == h && s.noted == raw.fact.noted && s.file == raw.fact.span.file; });
    }

    std::vector<HiveId> whose(const RawFact& raw) {
        if (!raw.all && !raw.rest && !raw.both) return raw.hives;
        std::vector<HiveId> hives = roster_.living(raw.fact.yard);
        std::erase_if(hives, [&](HiveId h) { return std::find(raw.but.begin(), raw.but.end(), h) != raw.but.end(); });
        if (raw.nuclei) std::erase_if(hives, [&](HiveId h) { return !journal_.hives[static_cast<std::size_t>(h)].nucleus; });
        if (raw.rest) std::erase_if(hives, [&](HiveId h) { return seen_this_visit(raw, h); });
        if (raw.both && hives.size() != 2) {
            std::vector<HiveId> last;
            for (auto s = seen_.rbegin(); s != seen_.rend() && last.size() < 2; ++s)
                if (s->noted == raw.fact.noted && std::find(last.begin(), last.end(), s->hive) == last.end()) last.insert(last.begin(), s->hive);
            hives = last;
        }
        const bool empty = raw.both ? hives.size() != 2 : hives.empty();
        if (!empty && raw.all && raw.all_count >= 0 && raw.all_count != static_cast<int>(hives.size())) return so_many(raw, hives);
        if (!empty) return hives;
        journal_.diagnostics.push_back({"no-hive", Severity::error, raw.fact.span, "which hives? none is meant by this here", "no hive found",
                                        "name the hives, for example `h1 h2: calm`", {}});
        return {};
    }

    /// `all 3`, where four live here: those that are no nuclei, or those that bear numbers, if they are three; else none, for
    /// nobody can tell which.
    std::vector<HiveId> so_many(const RawFact& raw, const std::vector<HiveId>& hives) {
        const auto nucleus = [&](HiveId h) { return journal_.hives[static_cast<std::size_t>(h)].nucleus; };
        const auto without_number = [&](HiveId h) { return journal_.hive_name(h).find_first_of("0123456789") == std::string_view::npos; };
        for (const auto& left_out : {std::function<bool(HiveId)>(nucleus), std::function<bool(HiveId)>(without_number)}) {
            std::vector<HiveId> meant = hives;
            std::erase_if(meant, left_out);
            if (raw.all_count != static_cast<int>(meant.size())) continue;
            std::string others;
            for (const HiveId h : hives)
                if (left_out(h)) others += (others.empty() ? "" : ", ") + std::string(journal_.hive_name(h));
            journal_.diagnostics.push_back({"hives-differ", Severity::note, raw.fact.span, fmt::format("all {}: read without {}", raw.all_count, others), {}, "name the hives if others are meant", {}});
            return meant;
        }
        std::string names;
        for (const HiveId h : hives) names += (names.empty() ? "" : ", ") + std::string(journal_.hive_name(h));
        journal_.diagnostics.push_back({"hives-differ", Severity::error, raw.fact.span, fmt::format("all {}? {} here: {}", raw.all_count, hives.size() == 1 ? "one lives" : fmt::format("{} live", hives.size()), names), "which are meant?",
                                        "name the hives, or write what is missing: one died, was moved, or was never set up", {}});
        return {};
    }

    /// A hive's facts belong to the yard it stands in.
    void settle_yard(Fact& f) {
        if (f.hive == no_hive || f.kind == Kind::hive_moved) return;
        const bool birth = f.kind == Kind::swarm_hived || f.kind == Kind::hive_bought;
        if (birth) return;
        const YardId stands = roster_.yard(f.hive);
        if (stands == no_yard) {
            if (f.yard != no_yard) roster_.adopt(f.hive, f.yard);
            return;
        }
        if (f.yard != no_yard && f.yard != stands && warned_ != std::pair{f.hive, f.noted}) {
            warned_ = {f.hive, f.noted};
            journal_.diagnostics.push_back({"wrong-yard", Severity::warning, f.span,
                                            fmt::format("{} stands at {}, not at {}", journal_.hive_name(f.hive), journal_.yard_name(stands), journal_.yard_name(f.yard)),
                                            {}, fmt::format("if it was moved, write `{} moved to {}`", journal_.hive_name(f.hive), journal_.yard_name(f.yard)),
                                            {{journal_.hives[static_cast<std::size_t>(f.hive)].span, "it was set up here"}}});
        }
        f.yard = stands;
    }

    void push(Fact f, std::size_t reading) {
        journal_.facts.push_back(std::move(f));
        journal_.readings[reading].facts.push_back(static_cast<std::uint32_t>(journal_.facts.size() - 1));
    }

    Journal& journal_;
    Roster roster_;
    std::vector<Seen> seen_;
    std::pair<HiveId, Day> warned_{no_hive, Day{}};
};

/// Marks the facts that repeat, in another file, an event noted already.
std::vector<bool> copies(Journal& journal) {
    struct Place {
        std::vector<std::uint32_t> facts;
    };
    std::map<std::string, std::map<std::uint32_t, Place>> events;
    for (std::uint32_t i = 0; i < journal.facts.size(); ++i) {
        const Fact& f = journal.facts[i];
        if (!is_event(f.kind) || f.noted == Day{}) continue;
        events[iso(f.happened) + ' ' + short_form(journal, f)][f.span.file].facts.push_back(i);
    }
    std::vector<bool> drop(journal.facts.size());
    for (const auto& [said, files] : events) {
        if (files.size() < 2) continue;
        const auto most = std::max_element(files.begin(), files.end(), [](const auto& a, const auto& b) { return a.second.facts.size() < b.second.facts.size(); });
        for (const auto& [file, place] : files) {
            if (file == most->first) continue;
            for (const std::uint32_t i : place.facts) drop[i] = true;
            journal.diagnostics.push_back({"copied", Severity::warning, journal.facts[place.facts.front()].span,
                                           fmt::format("'{}' stands in another file too, and counts once", journal.sources.text(journal.facts[place.facts.front()].span)), {},
                                           "delete one of the two; if it really happened twice, write both in one file",
                                           {{journal.facts[most->second.facts.front()].span, "it counts from here"}}});
        }
    }
    return drop;
}

void leave_out(Journal& journal, const std::vector<bool>& drop) {
    std::vector<std::uint32_t> new_index(journal.facts.size());
    std::vector<Fact> kept;
    for (std::size_t i = 0; i < journal.facts.size(); ++i) {
        new_index[i] = static_cast<std::uint32_t>(kept.size());
        if (!drop[i]) kept.push_back(std::move(journal.facts[i]));
    }
    for (Reading& r : journal.readings) {
        std::erase_if(r.facts, [&](std::uint32_t i) { return drop[i]; });
        for (std::uint32_t& i : r.facts) i = new_index[i];
    }
    journal.facts = std::move(kept);
}

/// Warns of a hive's day spread over two files whose order nothing tells.
void unsure_order(Journal& journal) {
    std::map<std::pair<HiveId, Day>, const Fact*> first;
    std::map<std::pair<HiveId, Day>, bool> warned;
    for (const Fact& f : journal.facts) {
        if (f.hive == no_hive || !is_event(f.kind) || f.minute >= 0 || f.noted == Day{}) continue;
        const Fact*& before = first[{f.hive, f.happened}];
        if (!before) {
            before = &f;
            continue;
        }
        bool& done = warned[{f.hive, f.happened}];
        if (before->span.file == f.span.file || done) continue;
        done = true;
        journal.diagnostics.push_back({"order-unsure", Severity::warning, f.span,
                                       fmt::format("{} on {} is told in two files; which came first?", journal.hive_name(f.hive), iso(f.happened)), {},
                                       "put times on the headings, or tell the day in one file; now the file first by name counts as first",
                                       {{before->span, "the other file"}}});
    }
}

/// A lot goes by its name as first written, whatever the case of its letters later.
void one_name_a_lot(std::vector<RawFact>& raw) {
    std::map<std::string, std::string> names;
    const auto settle = [&](std::string& name) { name = names.emplace(lower(name), name).first->second; };
    for (RawFact& r : raw) {
        if (!r.fact.lot.empty()) settle(r.fact.lot);
        for (std::string& lot : r.fact.lots) settle(lot);
    }
}

}  // namespace

void put_in_order(Journal& journal, std::vector<RawFact> raw) {
    std::stable_sort(raw.begin(), raw.end(), [](const RawFact& a, const RawFact& b) { return effect_key(a) < effect_key(b); });
    one_name_a_lot(raw);
    Spreader spreader(journal);
    for (RawFact& r : raw) spreader.take(r);
    const std::vector<bool> drop = copies(journal);
    if (std::find(drop.begin(), drop.end(), true) != drop.end()) leave_out(journal, drop);
    unsure_order(journal);
}

}  // namespace waxtab
