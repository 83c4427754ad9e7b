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
            const bool of_cells = cells && std::any_of(found.begin(), found.end(), [](const Candidate& c) { return c.after_cells; });
            if (of_cells) std::erase_if(found, [](const Candidate& c) { return !c.after_cells; });
            if (!brood) std::erase_if(found, [](const Candidate& c) { return c.after_brood; });
            if (!cells) std::erase_if(found, [](const Candidate& c) { return c.after_cells; });
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
        else if (takes_box_from_before(raw.fact.kind) || c.carries_box) raw.fact.box = box_;
        if (raw.fact.kind == Kind::super_count && raw.fact.count == 1) box_ = {BoxChoice::By::sole, Role::super, 0, {}};
        if (c.hive_named && raw.fact.hive != no_hive) {
            raw.hives = {raw.fact.hive};
            const bool left_one = raw.fact.kind == Kind::swarm_hived && raw.fact.other == no_hive && subject_.hives.size() == 1;
            if (left_one && subject_.hives.front() != raw.fact.hive) raw.fact.other = subject_.hives.front();
        } else if (c.hive_named) {
            raw.hives = {raw.fact.other};
            raw.fact.other = subject_.hives.size() == 1 && subject_.hives.front() != raw.hives.front() ? subject_.hives.front() : no_hive;
        } else if (needs_hive(c) || c.about_honey) {
            raw.hives = subject_.hives, raw.all = subject_.all, raw.but = subject_.but, raw.rest = subject_.rest, raw.both = subject_.both, raw.all_count = subject_.count;
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
        Reading reading;
        reading.outcome = raw.fact.kind == Kind::remark ? Reading::Outcome::remark : Reading::Outcome::facts;
        put(std::move(raw), std::move(reading));
    }
}

/// Details after a comma: reads the last clause and this one as one; true when that is one fact.
bool LineReader::join_last(const std::vector<Item>& items) {
    if (!last_.set) return false;
    std::vector<Item> both = last_.items;
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

/// `h5 1/2 3/4`: several bare shares are the supers from the brood up.
bool LineReader::several_shares(const std::vector<Item>& items) {
    std::vector<Item> shares;
    for (const Item& i : items) {
        const bool share = (i.what == What::slash && i.m > 0 && i.n <= i.m && i.m <= 40) || (i.what == What::value && i.value.dimension == Dimension::share);
        if (share) shares.push_back(i);
        else if (!i.idle()) return false;
    }
    if (shares.size() < 2 || !subject_.said()) return false;
    for (std::size_t k = 0; k < shares.size(); ++k) {
        Item box;
        box.what = What::box;
        box.begin = shares[k].begin, box.end = shares[k].end;
        box.box = {BoxChoice::By::number, Role::super, static_cast<std::uint8_t>(k + 1), {}};
        std::vector<Solution> ways = solve({box, shares[k]});
        if (ways.size() != 1) return false;
        ways.front().candidates.front().fact.assumed |= assumed_order;
        take(ways.front(), {});
    }
    return true;
}

/// `10 frames of brood (6 below, 4 up)`: the whole is the fact; its parts are kept as words, and have to
/// come to it. Number of clauses that are parts.
std::size_t LineReader::parts_of_a_whole(const std::vector<std::vector<Item>>& clauses, std::size_t at) {
    if (!last_.set || at == 0 || last_.out >= out_->size() || out_->back().fact.kind == Kind::remark) return 0;
    const auto number = [](const std::vector<Item>& clause) -> std::int64_t {
        const auto where = [](const Item& i) { return i.has(Class::placing) || i.has(Class::which) || i.is("gained") || i.is("lost weight"); };
        const bool part = clause.size() == 2 && clause[0].what == What::value && clause[0].value.unit == Unit::piece && clause[0].value.amount > 0 && where(clause[1]);
        return part ? clause[0].value.amount : 0;
    };
    std::size_t end = at;
    std::int64_t sum = 0;
    for (; end < clauses.size() && number(clauses[end]) > 0; ++end) sum += number(clauses[end]);
    const Fact& whole = out_->back().fact;
    const std::int64_t said = whole.value.dimension == Dimension::count && whole.value.said() ? whole.value.amount : std::int64_t{whole.count} * 1000;
    if (end < at + 2 || said <= 0) return 0;
    std::vector<Item> kept;
    for (std::size_t k = at; k < end; ++k) kept.insert(kept.end(), clauses[k].begin(), clauses[k].end());
    keep_words(kept, Kind::remark, Reading::Outcome::remark, "");
    if (sum == said) return end - at;
    out_->back().fact.detail = "flagged";
    const Span where = span(kept);
    journal_.diagnostics.push_back({"parts-differ", Severity::warning, where, fmt::format("'{}' does not come to the number before it", journal_.sources.text(where)), "the number before it is kept",
                                    "correct the parts or the whole", {}});
    return end - at;
}

}  // namespace waxtab
