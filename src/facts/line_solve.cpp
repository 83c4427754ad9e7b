#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// Clauses to readings: every way of cutting one.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

bool is_event_of(const Candidate& c) { return is_event(c.fact.kind); }

/// `(added a box) to 3 and split`: the hive belongs to what was done before it, which is not in the part.
bool of_the_deed_before(const std::vector<Item>& part) {
    const auto led = std::find_if(part.begin(), part.end(), [](const Item& k) { return k.what == What::hives && k.role != Item::Role::none; });
    const auto link = std::find_if(led, part.end(), [](const Item& k) { return k.is("and"); });
    const auto deed = [](const Item& k) { return k.has(Class::done) && !on_or_off(k); };
    return link != part.end() && std::none_of(part.begin(), led, deed) && std::any_of(link, part.end(), deed);
}

}  // namespace

/// Items `i` to `j` as one reading; where they make none, with the verb that goes on from before them (`added a super and an
/// excluder`) or comes after them (`an excluder and a super on`).
std::vector<Candidate> LineReader::read_part(const std::vector<Item>& items, std::size_t i, std::size_t j, const std::vector<Item>& part, bool linked, const Told& told) {
    std::vector<Candidate> found = matcher_.read(part, text(), item_context());
    if (!found.empty()) fitting_after(found, part, part_of(items, 0, i), linked, told);
    const auto with = [&](const Item& verb, bool first) {
        std::vector<Item> with_verb = part;
        with_verb.insert(first ? with_verb.begin() : with_verb.end(), verb);
        found = matcher_.read(with_verb, text(), item_context());
        if (!found.empty()) fitting_after(found, with_verb, part_of(items, 0, i), linked, told);
    };
    // pulled the excluder and one medium: no word of how many stand there
    const bool counts_supers = !found.empty() && std::all_of(found.begin(), found.end(), [](const Candidate& c) { return c.fact.kind == Kind::super_count; });
    if ((found.empty() || counts_supers) && linked && i > 0)
        for (std::size_t v = i; v-- > 0;) {
            if (!items[v].has(Class::done) && items[v].what != What::sign) continue;
            const std::vector<Candidate> alone = found;
            if (!counts_supers || !on_or_off(items[v])) with(items[v], true);
            if (found.empty()) found = alone;
            break;
        }
    if (!found.empty() || j + 1 >= items.size() || !items[j].is("and") || eventful(part)) return found;
    const auto verb = std::find_if(items.begin() + static_cast<std::ptrdiff_t>(j), items.end(), [](const Item& k) { return k.has(Class::done); });
    const bool weight_alone = !part.empty() && std::all_of(part.begin(), part.end(), [](const Item& k) { return is_mass(k) || k.idle(); });   // 26 lb and extracted 24 lb
    if (verb != items.end() && !weight_alone) with(*verb, false);
    return found;
}

/// Adds the readings of one more part to the ways of what stands before it; three ways at most.
void LineReader::go_on_with(const std::vector<Solution>& before, const std::vector<Candidate>& found, Span where, std::vector<Solution>& ways) {
    const auto same = [](const Candidate& a, const Candidate& b) { return same_content(a.fact, b.fact) && a.swap == b.swap; };
    for (const Solution& b : before)
        for (const Candidate& c : found) {
            Solution s = b;
            s.candidates.push_back(c);
            s.spans.push_back(where);
            const bool seen = std::any_of(ways.begin(), ways.end(), [&](const Solution& o) { return std::equal(o.candidates.begin(), o.candidates.end(), s.candidates.begin(), s.candidates.end(), same); });
            if (!seen && ways.size() < 3) ways.push_back(std::move(s));
        }
}

/// A cut that is none: of a negated clause (but for one reading of all of it, `added a super without excluder`), and of a
/// clause without a hive half of which is about one (`sold 12 jars`).
bool LineReader::torn_apart(const Solution& s, bool negated, bool added) const {
    if (s.candidates.size() < 2) return false;
    // 1 charged queen cup removed: the cup
    for (std::size_t k = 1; k < s.candidates.size(); ++k) {
        const std::string said = lower(journal_.sources.text(s.spans[k]));
        if (s.candidates[k].fact.kind == Kind::super_off && said == "removed" && !takes_box_from_before(s.candidates[k - 1].fact.kind)) return true;
    }
    // put an escape board on under the last super: no super
    const auto board = [](const Candidate& c) { return c.fact.kind == Kind::escape_on; };
    const auto placed = [](const Candidate& c) { return c.fact.kind == Kind::super_on && c.fact.placing != Placing::unsaid; };
    if (std::any_of(s.candidates.begin(), s.candidates.end(), board) && std::any_of(s.candidates.begin(), s.candidates.end(), placed)) return true;
    if (negated && std::any_of(s.candidates.begin(), s.candidates.end(), is_event_of)) return true;
    const auto no_supers = [](const Candidate& c) { return c.fact.kind == Kind::super_count && c.fact.count == 0; };   // no super half full
    if (std::any_of(s.candidates.begin(), s.candidates.end(), no_supers) && std::any_of(s.candidates.begin(), s.candidates.end(), [](const Candidate& c) { return takes_box_from_before(c.fact.kind); })) return true;
    const auto of_hive = [](const Candidate& c) { return needs_hive(c) && !c.hive_named; };
    // super on each three quarters full: those that are on
    const auto how_far = [](const Candidate& c) { return takes_box_from_before(c.fact.kind) && c.fact.value.said() && c.fact.value.amount > 0; };
    if (!added && s.candidates.front().fact.kind == Kind::super_on && std::any_of(s.candidates.begin() + 1, s.candidates.end(), how_far)) return true;
    // fed 2 frames of honey: given, and no stores of its own
    for (std::size_t k = 1; k < s.candidates.size(); ++k)
        if (s.candidates[k - 1].fact.kind == Kind::feed && !s.candidates[k - 1].fact.value.said() && s.candidates[k].fact.kind == Kind::stores) return true;
    // 70% empty, a quarter or so full: two words of how full, of one box
    for (std::size_t k = 1; k < s.candidates.size(); ++k) {
        const Fact &before = s.candidates[k - 1].fact, &fact = s.candidates[k].fact;
        if (before.kind == Kind::full && fact.kind == Kind::full && before.value.dimension == Dimension::share && fact.value.dimension == Dimension::share && (fact.box.by == BoxChoice::By::unsaid || fact.box == before.box)) return true;
    }
    // super half full with rape: no word of its bloom
    const auto plant_alone = [](const Candidate& c) { return grammar::reading_rows[c.row].pattern == "PLANT"; };
    if (std::any_of(s.candidates.begin(), s.candidates.end(), plant_alone) && std::any_of(s.candidates.begin(), s.candidates.end(), of_hive)) return true;
    // heather pressed, lot A: the honey, no word of its bloom
    if (std::any_of(s.candidates.begin(), s.candidates.end(), plant_alone) && std::any_of(s.candidates.begin(), s.candidates.end(), [](const Candidate& c) { return c.about_honey; })) return true;
    return !subject_.said() && std::any_of(s.candidates.begin(), s.candidates.end(), of_hive) && std::any_of(s.candidates.begin(), s.candidates.end(), [](const Candidate& c) { return c.about_honey; });
}

/// Every way of cutting the items into readings, fewest pieces first; three solutions at most.
std::vector<LineReader::Solution> LineReader::solve(const std::vector<Item>& items) {
    constexpr std::size_t longest = 24, longest_part = 14, most_pieces = 5;
    const std::size_t n = items.size();
    if (n > longest) return {};
    struct Best {
        std::size_t pieces = 99;
        std::vector<Solution> ways;
    };
    std::vector<Best> best(n + 1);
    best[0] = {0, {Solution{}}};
    const Told told = told_before(items);
    for (std::size_t j = 1; j <= n; ++j)
        for (std::size_t i = 0; i < j; ++i) {
            if (best[i].pieces >= most_pieces || j - i > longest_part) continue;
            std::size_t from = i;
            bool linked = false;
            while (from < j && (items[from].has(Class::link) || stop(items[from], ":"))) linked = linked || items[from].is("and"), ++from;
            // left 2 one open cell: the 2 is a hive's
            if (j < n && j > from && bare_number(items[j - 1]) && j - from > 1 && (items[j].counted || bare_number(items[j]))) continue;
            // nearly half capped: no share of its own
            const bool how_much = j < n && j > from && items[j - 1].what == What::term && (items[j - 1].is("nearly") || items[j - 1].is("fully")) && (items[j].has(Class::amount) || (items[j].what == What::value && items[j].value.dimension == Dimension::share));
            if (how_much) continue;
            const std::vector<Item> part = part_of(items, from, j);
            if (of_the_deed_before(part)) continue;
            // 2 frames of brood from h5 +super: a sign begins what it is said of
            if (j - from > 2 && std::any_of(part.begin() + 1, part.end() - 1, [](const Item& k) { return k.what == What::sign; })) continue;
            if (std::all_of(part.begin(), part.end(), [](const Item& k) { return k.idle(); })) {
                if (best[i].pieces < best[j].pieces) best[j] = best[i];
                continue;
            }
            const std::vector<Candidate> found = read_part(items, i, j, part, linked, told);
            if (found.empty() || best[i].pieces + 1 > best[j].pieces) continue;
            if (best[i].pieces + 1 < best[j].pieces) best[j] = {best[i].pieces + 1, {}};
            go_on_with(best[i].ways, found, span(part), best[j].ways);
        }
    if (best[n].pieces == 99) return {};
    const bool negated = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::negation); });
    const bool added = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::sign || (i.has(Class::done) && !on_or_off(i)); });
    std::erase_if(best[n].ways, [&](const Solution& s) { return torn_apart(s, negated, added); });
    // pulled the excluder and one medium: the verb goes on to it
    const auto counts = [](const Solution& s) { return std::any_of(s.candidates.begin(), s.candidates.end(), [](const Candidate& c) { return c.fact.kind == Kind::super_count; }); };
    if (added && !std::all_of(best[n].ways.begin(), best[n].ways.end(), counts)) std::erase_if(best[n].ways, counts);
    // what says everything it means goes before what leaves something to assume
    std::vector<Solution>& ways = best[n].ways;
    const auto assumes = [](const Solution& s) { return std::count_if(s.candidates.begin(), s.candidates.end(), [](const Candidate& c) { return (c.fact.assumed & assumed_full) != 0; }); };
    std::ptrdiff_t least = 99;
    for (const Solution& s : ways) least = std::min(least, assumes(s));
    std::erase_if(ways, [&](const Solution& s) { return assumes(s) > least; });
    return ways;
}

}  // namespace waxtab
