#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"

// Clauses to facts: every way of cutting one, and details that follow after a comma.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

bool speaks_of_cells(const Item& i) {
    static constexpr std::array<std::string_view, 7> cells = {"queen cell", "open cell", "sealed cell", "charged cell", "swarm cell", "supersedure cell", "emergency cell"};
    return i.what == What::term && std::any_of(cells.begin(), cells.end(), [&](std::string_view c) { return i.is(c); });
}

}  // namespace

/// `hot`: of a hive, its temper; of no hive, the weather.
void LineReader::one_of_yard_and_hive(std::vector<Candidate>& found) const {
    const auto of_yard = [](const Candidate& c) { return c.about_yard; };
    if (std::all_of(found.begin(), found.end(), of_yard) || std::none_of(found.begin(), found.end(), of_yard)) return;
    if (subject_.said()) std::erase_if(found, of_yard);
    else std::erase_if(found, [](const Candidate& c) { return needs_hive(c); });
}

/// Every way of cutting the items into readings, fewest pieces first; two solutions at most.
std::vector<LineReader::Solution> LineReader::solve(const std::vector<Item>& items) {
    const std::size_t n = items.size();
    if (n > 24) return {};
    struct Best {
        std::size_t pieces = 99;
        std::vector<Solution> ways;
    };
    std::vector<Best> best(n + 1);
    best[0] = {0, {Solution{}}};
    const ItemContext context = item_context();
    const auto of_brood = [](const Item& i) { return i.is("egg") || i.is("larva") || i.is("brood") || i.is("frames of brood") || i.is("brood in all stages"); };
    const bool brood = box_.by == BoxChoice::By::unsaid && (brood_said_ || std::any_of(items.begin(), items.end(), of_brood));
    const bool food = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::food); });
    const auto told = [&](Kind kind) {
        return std::any_of(out_->begin() + static_cast<std::ptrdiff_t>(first_of_line_), out_->end(), [&](const RawFact& r) { return r.fact.kind == kind; });
    };
    const bool box_last = out_->size() > first_of_line_ && out_->back().fact.box.by != BoxChoice::By::unsaid;
    const bool of_box = box_last && last_.set && last_.out < out_->size();   // in this sentence
    const bool extracted = told(Kind::extracted), jarred = told(Kind::jars);
    const bool cells = cells_said_ || std::any_of(items.begin(), items.end(), speaks_of_cells);
    for (std::size_t j = 1; j <= n; ++j) {
        for (std::size_t i = 0; i < j; ++i) {
            if (best[i].pieces > 4 || j - i > 14) continue;
            std::size_t from = i;
            bool linked = false;
            while (from < j && (items[from].has(Class::link) || stop(items[from], ":"))) linked = linked || items[from].is("and"), ++from;
            const std::vector<Item> part(items.begin() + static_cast<std::ptrdiff_t>(from), items.begin() + static_cast<std::ptrdiff_t>(j));
            const bool idle = std::all_of(part.begin(), part.end(), [](const Item& k) { return k.idle(); });
            if (idle) {
                if (best[i].pieces < best[j].pieces) best[j] = best[i];
                continue;
            }
            std::vector<Candidate> found = matcher_.read(part, text(), context);
            one_of_yard_and_hive(found);
            // two mediums, one drawn: one of them, not a frame
            const auto one_drawn = [](const Candidate& c) { return c.fact.kind == Kind::drawn && c.fact.value.unit == Unit::frame && c.fact.value.amount == 1000 && c.fact.box.by == BoxChoice::By::unsaid; };
            if (std::none_of(part.begin(), part.end(), [](const Item& k) { return k.is("frame"); })) std::erase_if(found, one_drawn);
            const auto no_year = [&](const Candidate& c) { return c.fact.kind == Kind::comb_year && (c.fact.count < 1990 || c.fact.count > static_cast<int>(date::year_month_day{context_->noted}.year())); };
            std::erase_if(found, no_year);
            const bool of_cells = cells && std::any_of(found.begin(), found.end(), [](const Candidate& c) { return c.after_cells; });
            if (of_cells) std::erase_if(found, [](const Candidate& c) { return !c.after_cells; });
            if (!brood) std::erase_if(found, [](const Candidate& c) { return c.after_brood; });
            if (!cells) std::erase_if(found, [](const Candidate& c) { return c.after_cells; });
            // top super full, weighs 21 kg: of the super where one was spoken of last
            if (found.size() > 1) std::erase_if(found, [&](const Candidate& c) { return of_box ? c.fact.kind == Kind::hive_weight : c.carries_box && c.fact.kind == Kind::box_weight; });
            // super full, capped: but not after 3 queen cells
            if (!box_last) std::erase_if(found, [](const Candidate& c) { return c.carries_box && c.fact.kind == Kind::capped; });
            if (!extracted) std::erase_if(found, [](const Candidate& c) { return c.after_lot; });
            if (!jarred) std::erase_if(found, [](const Candidate& c) { return c.after_jars; });
            if (!food) std::erase_if(found, [](const Candidate& c) { return c.beside_food; });
            if (box_.by == BoxChoice::By::unsaid) std::erase_if(found, [](const Candidate& c) { return c.carries_box; });
            if (found.empty() && linked && i > 0) {
                // added a super and an excluder: the verb goes on
                for (std::size_t v = i; v-- > 0;) {
                    if (!items[v].has(Class::done) && items[v].what != What::sign) continue;
                    std::vector<Item> with_verb = part;
                    with_verb.insert(with_verb.begin(), items[v]);
                    found = matcher_.read(with_verb, text(), context);
                    break;
                }
            }
            if (found.empty() && j + 1 < n && items[j].is("and")) {
                // an excluder and a super on: the verb comes last
                const auto verb = std::find_if(items.begin() + static_cast<std::ptrdiff_t>(j), items.end(), [](const Item& k) { return k.has(Class::done); });
                const bool own = std::any_of(part.begin(), part.end(), [](const Item& k) { return k.has(Class::done) || k.what == What::sign; });
                if (verb != items.end() && !own) {
                    std::vector<Item> with_verb = part;
                    with_verb.push_back(*verb);
                    found = matcher_.read(with_verb, text(), context);
                }
            }
            if (found.empty() || best[i].pieces + 1 > best[j].pieces) continue;
            if (best[i].pieces + 1 < best[j].pieces) best[j] = {best[i].pieces + 1, {}};
            for (const Solution& before : best[i].ways)
                for (const Candidate& c : found) {
                    Solution s = before;
                    s.candidates.push_back(c);
                    s.spans.push_back(span(part));
                    const bool seen = std::any_of(best[j].ways.begin(), best[j].ways.end(), [&](const Solution& o) {
                        return std::equal(o.candidates.begin(), o.candidates.end(), s.candidates.begin(), s.candidates.end(),
                                          [](const Candidate& a, const Candidate& b) { return same_content(a.fact, b.fact) && a.swap == b.swap; });
                    });
                    if (!seen && best[j].ways.size() < 3) best[j].ways.push_back(std::move(s));
                }
        }
    }
    // A negation governs its clause: nothing in it happened, but for `added a super without excluder`, one reading of all of it.
    const bool negated = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::negation); });
    const auto partly = [](const Solution& s) {
        return s.candidates.size() > 1 && std::any_of(s.candidates.begin(), s.candidates.end(), [](const Candidate& c) { return is_event(c.fact.kind); });
    };
    if (negated) std::erase_if(best[n].ways, partly);
    return best[n].pieces == 99 ? std::vector<Solution>{} : best[n].ways;
}

/// `reversed the deeps, the bottom one was bare`: after brood boxes, a box that is not called a super is none.
bool LineReader::of_brood_boxes(const Fact& fact, Span where) const {
    if (out_->size() <= first_of_line_ || fact.box.by == BoxChoice::By::unsaid || fact.box.role != Role::super) return false;
    const Kind before = out_->back().fact.kind;
    const bool brood = before == Kind::brood_reversed || before == Kind::brood_box_on || before == Kind::brood_box_off;
    return brood && lower(journal_.sources.text(where)).find("super") == std::string::npos;
}

/// Keeps words of which it cannot be told what they are about, and asks.
void LineReader::keep_asked(Span where, const char* question, const char* hint) {
    RawFact raw;
    raw.fact.detail = "flagged";
    raw.fact.span = where;
    raw.fact.text = std::string(journal_.sources.text(where));
    raw.hives = subject_.hives;
    put(std::move(raw), Reading{});
    journal_.diagnostics.push_back({"not-understood", Severity::warning, where, fmt::format("not understood: '{}'", journal_.sources.text(where)), question, hint, {}});
}

/// `extracted 36 kg lot B, 18.2%`: what follows is of that lot; `filled 60 x 454 g, gave away 4`: of those jars.
void LineReader::honey_from_before(Fact& fact, const Candidate& c) {
    const bool of_lot = fact.kind == Kind::moisture || fact.kind == Kind::honey_index || fact.kind == Kind::drained || fact.kind == Kind::jars;
    for (std::size_t k = first_of_line_; k < out_->size(); ++k) {
        const Fact& before = (*out_)[k].fact;
        if (of_lot && before.kind == Kind::extracted && fact.lot.empty() && fact.box.by == BoxChoice::By::unsaid) fact.lot = before.lot;
        if (!c.after_jars || before.kind != Kind::jars) continue;
        fact.value = before.value;
        if (fact.lot.empty()) fact.lot = before.lot;
    }
}

/// `Calling it lot A`: the name of the honey extracted before it in the line.
bool LineReader::names_lot(const std::vector<Item>& items) {
    const Item* lot = nullptr;
    for (const Item& i : items) {
        if (i.what == What::lot && i.lots.size() == 1) lot = &i;
        else if (!i.is("calling it") && !i.idle()) return false;
    }
    if (!lot) return false;
    bool named = false;
    for (std::size_t k = first_of_line_; k < out_->size(); ++k) {
        Fact& f = (*out_)[k].fact;
        const bool honey = f.kind == Kind::extracted || f.kind == Kind::moisture || f.kind == Kind::honey_index || f.kind == Kind::drained;
        if (!honey || !f.lot.empty()) continue;
        f.lot = lot->lots.front();
        f.span.end = std::max(f.span.end, lot->end);
        journal_.readings[(*out_)[k].reading].span.end = f.span.end;
        named = true;
    }
    return named;
}

void LineReader::take(const Solution& solution, std::optional<Day> happened) {
    for (std::size_t k = 0; k < solution.candidates.size(); ++k) {
        const Candidate& c = solution.candidates[k];
        RawFact raw;
        raw.fact = c.fact;
        if (raw.fact.kind == Kind::remark) raw.fact.text = std::string(journal_.sources.text(solution.spans[k]));
        raw.swap = c.swap;
        raw.fact.span = solution.spans[k];
        if (happened && raw.fact.kind == Kind::weight_change) raw.fact.text = iso(*happened);
        else if (happened) raw.fact.happened = *happened;
        brood_said_ = brood_said_ || raw.fact.kind == Kind::brood || raw.fact.kind == Kind::eggs || raw.fact.kind == Kind::larvae;
        cells_said_ = cells_said_ || raw.fact.kind == Kind::queen_cells || raw.fact.kind == Kind::cells_removed || raw.fact.kind == Kind::cells_left;
        if (raw.fact.box.by != BoxChoice::By::unsaid && raw.fact.box.role == Role::super && raw.fact.kind != Kind::super_on) box_ = raw.fact.box;
        else if (takes_box_from_before(raw.fact.kind) || (c.carries_box && raw.fact.kind != Kind::super_on)) raw.fact.box = box_;
        if (of_brood_boxes(raw.fact, solution.spans[k])) {
            keep_asked(solution.spans[k], "of which box?", "say `super` or `brood box`, or put it in quotes if it is only a remark");
            continue;
        }
        const bool frames = (raw.fact.kind == Kind::brood || raw.fact.kind == Kind::stores || raw.fact.kind == Kind::bees) && raw.fact.value.said();
        if (frames && divided_) {
            keep_asked(solution.spans[k], "at which hive?", "write a line for the hive they are in");
            continue;
        }
        honey_from_before(raw.fact, c);
        if (raw.fact.kind == Kind::super_count && raw.fact.count == 1) box_ = {BoxChoice::By::sole, Role::super, 0, {}};
        if (c.hive_named && raw.fact.hive != no_hive) {
            raw.hives = {raw.fact.hive};
            const bool left_one = raw.fact.kind == Kind::swarm_hived && raw.fact.other == no_hive && subject_.hives.size() == 1;
            if (left_one && subject_.hives.front() != raw.fact.hive) raw.fact.other = subject_.hives.front();
        } else if (c.hive_named) {
            raw.hives = {raw.fact.other};
            raw.fact.other = subject_.hives.size() == 1 && subject_.hives.front() != raw.hives.front() ? subject_.hives.front() : no_hive;
        } else if (needs_hive(c) || (c.about_honey && comes_of_hives(raw.fact.kind))) {
            raw.hives = subject_.hives, raw.all = subject_.all, raw.but = subject_.but, raw.rest = subject_.rest, raw.both = subject_.both, raw.all_count = subject_.count;
        }
        if (raw.fact.kind == Kind::pollen && !subject_.said()) {   // of the yard: kept in its words
            raw.fact = Fact{};
            raw.fact.kind = Kind::remark;
            raw.fact.span = solution.spans[k];
            raw.fact.text = std::string(journal_.sources.text(raw.fact.span));
            put(std::move(raw), Reading{});
            continue;
        }
        if (needs_hive(c) && !c.hive_named && !subject_.said()) {
            const Span where = solution.spans[k];
            if (!complained_)
                journal_.diagnostics.push_back({"no-hive", Severity::error, where, fmt::format("'{}': at which hive?", journal_.sources.text(where)), "no hive named",
                                                "begin the line with the hive, for example `h3 " + std::string(journal_.sources.text(where)) + "`", {}});
            complained_ = true;
        }
        if (needs_hive(c) && raw.hives.empty() && !raw.all && !raw.rest && !raw.both) {
            raw.fact = Fact{};
            raw.fact.kind = Kind::remark;
            raw.fact.detail = "flagged";
            raw.fact.span = solution.spans[k];
            raw.fact.text = std::string(journal_.sources.text(raw.fact.span));
            put(std::move(raw), Reading{});
            continue;
        }
        // made a nuc into n1, 3 frames of brood: they are the nuc's
        if (frames && out_->size() > first_of_sentence_) {
            const Fact& born = out_->back().fact;
            const bool nuc = born.kind == Kind::nuc_made || born.kind == Kind::hive_split;
            const HiveId young = nuc ? born.other : no_hive;
            const bool goes_on_so = born.kind == Kind::brood || born.kind == Kind::stores || born.kind == Kind::bees;
            nuc_frames_ = young != no_hive ? young : goes_on_so ? nuc_frames_ : no_hive;
            if (nuc_frames_ != no_hive) raw.hives = {nuc_frames_}, raw.all = raw.rest = raw.both = false;
        }
        Reading reading;
        reading.outcome = raw.fact.kind == Kind::remark ? Reading::Outcome::remark : Reading::Outcome::facts;
        put(std::move(raw), std::move(reading));
    }
}

/// Details after a comma: reads the last clause and this one as one; true when that is one fact.
bool LineReader::join_last(const std::vector<Item>& items) {
    if (!last_.set) return false;
    std::vector<Item> both = last_.items;
    if (!both.empty() && both.back().is("on")) {
        Item comma;   // `super on, 10 frames`: not spread over them
        comma.what = What::stop, comma.text = ",", comma.begin = both.back().end, comma.end = items.front().begin;
        both.push_back(std::move(comma));
    }
    both.insert(both.end(), items.begin(), items.end());
    if (both.size() > 16) return false;
    const std::vector<Item> written = both;
    std::optional<Day> happened;
    for (std::size_t i = 0; i < both.size();) {
        if (both[i].what == What::day && both[i].text != "due") happened = both[i].day, both.erase(both.begin() + static_cast<std::ptrdiff_t>(i));
        else ++i;
    }
    chunk(both, item_context());
    std::vector<Item> without = both;
    if (!subject_.said() || last_.out < out_->size()) take_subject(without);
    std::vector<Solution> ways = solve(without);
    if (ways.size() != 1 || ways.front().candidates.size() != std::max<std::size_t>(1, out_->size() - last_.out)) return false;
    if (is_event(ways.front().candidates.front().fact.kind) && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::negation) && !i.is("no excluder"); })) return false;
    out_->resize(last_.out);
    journal_.readings.resize(last_.readings);
    journal_.diagnostics.resize(last_.diagnostics);
    take(ways.front(), happened);
    last_.items = written;
    return true;
}

}  // namespace waxtab
