#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// A sentence cut into clauses: what belongs together, what is said for itself, what goes on from clause to clause.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

using Items = std::vector<Item>;
using Clauses = std::vector<Items>;

bool clause_end(const Items& items, std::size_t at) {
    const Item& i = items[at];
    if (i.what != What::stop) return false;
    const bool per_day = i.text == "/" && at > 0 && at + 1 < items.size() && items[at - 1].what == What::value && items[at + 1].what == What::unknown && (items[at + 1].text == "day" || items[at + 1].text == "d" || items[at + 1].text == "week");   // 3/day, 2.8 kg/day
    const bool per_hour = i.text == "/" && at > 0 && at + 1 < items.size() && items[at - 1].what == What::unknown && items[at + 1].what == What::unknown && ((items[at - 1].text == "km" && items[at + 1].text == "h") || (items[at - 1].text == "m" && items[at + 1].text == "s"));
    if (per_day || per_hour) return false;
    const bool sample = i.text == "/" && at > 0 && at + 1 < items.size() && items[at - 1].is("mite") && bare_number(items[at + 1]);   // 6 mites/300
    return !sample && (i.text == "," || i.text == "(" || i.text == ")" || i.text == "-" || i.text == "/");
}

/// Where the clause begins that `at` stands in or ends.
std::size_t clause_begin(const Items& items, std::size_t at) {
    while (at > 0 && !clause_end(items, at - 1)) --at;
    return at;
}

bool idle(const Items& items) {
    return std::all_of(items.begin(), items.end(), [](const Item& i) { return i.idle() || i.has(Class::link); });
}

/// The first item that says something, `size` when none does.
std::size_t first_said(const Items& items, std::size_t from = 0) {
    while (from < items.size() && items[from].idle()) ++from;
    return from;
}

bool says_value(const Item& i) {
    return (i.what == What::value && i.text != "nth" && i.value.dimension != Dimension::temperature && i.value.dimension != Dimension::duration) || i.what == What::slash ||
           (i.what == What::term && !i.counted && (i.has(Class::amount) || (i.has(Class::count) && i.word(Class::count)->number > 1)));
}

bool between_values(const Item& i) { return i.is("and") || (i.what == What::stop && (i.text == "," || i.text == "/")); }

/// Values one after the other from `from` on, with nothing between them but commas and `and`: their places.
std::vector<std::size_t> run_of_values(const Items& items, std::size_t from) {
    std::vector<std::size_t> run{from};
    for (std::size_t i = from + 1; i < items.size();) {
        std::size_t next = i;
        while (next < items.size() && between_values(items[next])) ++next;
        if (next == i || next >= items.size() || !says_value(items[next])) break;
        run.push_back(next);
        i = next + 1;
    }
    return run;
}

}  // namespace

std::vector<Items> LineReader::cut(Items items) const {
    Clauses clauses(1);
    // took the super off and it weighed 17 kg; extracted 31 kg and called it lot A: of what the clause before tells
    const auto of_the_one_before = [&](std::size_t i) {
        const auto is = [&](std::size_t k, std::string_view term) { return k < items.size() && items[k].is(term); };
        return items[i].is("and") && (is(i + 1, "calling it") || (i + 1 < items.size() && surface(items[i + 1]) == "it" && is(i + 2, "weighed")));
    };
    for (std::size_t i = 0; i < items.size(); ++i) {
        const auto dated = [](const Item& k) { return k.what == What::day; };
        const bool today = items[i].is("and") && i + 1 < items.size() && says_today(items[i + 1]) && std::any_of(clauses.back().begin(), clauses.back().end(), dated);   // swarmed Thursday and now queenless
        const bool there = items[i].is("and") && i + 1 < items.size() && surface(items[i + 1]).starts_with("there");   // the queen was gone and there were no eggs
        if (clause_end(items, i) || gives_reason(items, i) || of_the_one_before(i) || today || there) {
            if (!clauses.back().empty()) clauses.emplace_back();
            continue;
        }
        if (stop(items[i], ":") && clauses.back().size() == 1 && surface(clauses.back().front()) == "no" && clauses.size() > 1) {   // marked white, no: blue
            clauses.emplace_back();
            continue;
        }
        const bool asked = stop(items[i], "?") && i + 1 < items.size() && !stop(items[i + 1], "?") && !clauses.back().empty();
        clauses.back().push_back(items[i]);
        if (asked) clauses.emplace_back();   // queenless? no eggs seen
    }
    if (clauses.back().empty()) clauses.pop_back();
    return clauses;
}

/// `+excluder and super foundation`: the plus is of both.
void LineReader::plus_goes_on(Clauses& clauses) const {
    const auto of_a_box = [](const Item& i) { return is_super(i) || i.has(Class::combing) || !i.box_kind.empty() || i.has(Class::placing) || i.has(Class::count) || bare_number(i) || i.idle(); };
    for (Items& items : clauses) {
        if (items.empty() || items.front().what != What::sign || items.front().text != "+") continue;
        const auto link = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.is("and"); });
        if (link == items.end() || link + 2 >= items.end() || !std::all_of(link + 1, items.end(), of_a_box) || std::none_of(link + 1, items.end(), is_super)) continue;
        Item plus = items.front();
        plus.begin = plus.end = (link + 1)->begin;
        items.insert(link + 1, std::move(plus));
    }
}

/// `lagging behind h4, which has 7 frames capped`: h4 has them.
void LineReader::which_of_the_hive(Clauses& clauses) const {
    for (std::size_t c = 1; c < clauses.size(); ++c) {
        const Items& before = clauses[c - 1];
        const bool names_last = !before.empty() && is_hives(before.back()) && before.back().hives.size() == 1;
        if (!names_last || clauses[c].empty() || !surface(clauses[c].front()).starts_with("which")) continue;
        Item hive = before.back();
        hive.role = Item::Role::none;
        clauses[c].insert(clauses[c].begin(), std::move(hive));
    }
}

/// `2 supers off`, and not `each`: of several hives, from each of them or from all together?
bool LineReader::boxes_of_all(Items::const_iterator from, Items::const_iterator to) const {
    const auto several = [](const Item& i) { return (i.has(Class::count) && i.word(Class::count)->number > 1) || (bare_number(i) && i.value.amount > 1000); };
    const auto off = [](const Item& i) { return i.is("off") || i.is("taken off"); };
    return std::any_of(from, to, off) && std::any_of(from, to, several) && std::none_of(from, to, [&](const Item& i) { return says_each(i); });
}

/// `took the supers off h2, h4 and h6, 24 kg, 19 kg and 21 kg`: as many weights as hives, one for each in their order.
void LineReader::one_weight_each(Clauses& clauses) const {
    const auto off = [](const Item& i) { return i.is("off") || i.is("taken off"); };
    const auto beside = [](const Item& i) { return i.idle() || i.is("and") || i.is("before") || i.is("net") || i.is("honey"); };
    for (std::size_t c = 0; c + 1 < clauses.size(); ++c) {
        const Items said = clauses[c];
        const auto list = std::find_if(said.begin(), said.end(), [](const Item& i) { return i.what == What::hives && i.hives.size() > 1 && i.unknown_hives.empty(); });
        if (list == said.end() || std::none_of(said.begin(), said.end(), off) || std::any_of(said.begin(), said.end(), is_mass)) continue;
        if (boxes_of_all(said.begin(), said.end())) continue;   // 2 supers off h3 and h4: from each?
        Items masses, rest;
        std::size_t end = c + 1;
        for (; end < clauses.size() && std::all_of(clauses[end].begin(), clauses[end].end(), [&](const Item& i) { return is_mass(i) || bare_number(i) || beside(i); }); ++end)
            for (const Item& i : clauses[end])
                if (is_mass(i) || bare_number(i)) masses.push_back(i);
                else if (!i.idle() && !i.is("and")) rest.push_back(i);
        if (masses.size() != list->hives.size() || !is_mass(masses.back())) continue;
        for (Item& mass : masses) mass = of_the_unit(mass, masses.back());   // 28, 31 and 22 lb
        Clauses apart;
        const auto at = static_cast<std::size_t>(list - said.begin());
        for (std::size_t h = 0; h < masses.size(); ++h) {
            apart.push_back(said);
            apart.back()[at].hives = {list->hives[h]};
            apart.back().push_back(masses[h]);
            apart.back().insert(apart.back().end(), rest.begin(), rest.end());
        }
        clauses.erase(clauses.begin() + static_cast<std::ptrdiff_t>(c), clauses.begin() + static_cast<std::ptrdiff_t>(end));
        clauses.insert(clauses.begin() + static_cast<std::ptrdiff_t>(c), apart.begin(), apart.end());
        c += apart.size() - 1;
    }
}

/// `h2-h4 supers 80, 60, 40% full`: as many values as hives, one for each in their order. As few as two have to be bare
/// numbers or stand with an `and`: `h1 h2 70%, 80% capped` says two things of both. True when the sentence is read.
bool LineReader::one_value_each(const Items& items) {
    const std::size_t hives = subject_.hives.size();
    if (hives < 2 || !subject_.unknown.empty()) return false;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (!says_value(items[i])) continue;
        const std::vector<std::size_t> run = run_of_values(items, i);
        const auto linked = [&](const Item& k) { return k.is("and"); };
        const bool bare = bare_number(items[i]) && run.size() > 1;
        const auto counted = [](const Item& k) { return k.what == What::slash || (k.what == What::value && (k.value.dimension == Dimension::mass || k.value.dimension == Dimension::volume)); };
        const bool counted_each = run.size() == hives && std::all_of(run.begin(), run.end(), [&](std::size_t k) { return counted(items[k]) && items[k].what == items[run.front()].what && items[k].value.dimension == items[run.front()].value.dimension; });   // h6 h7 wash 3/300, 9/300
        const bool listed = bare || counted_each || run.size() > 2 || std::any_of(items.begin() + static_cast<std::ptrdiff_t>(i), items.begin() + static_cast<std::ptrdiff_t>(run.back()), linked);
        i = run.back();
        const auto a_hive = [&](std::size_t k) { return bare_number(items[k]) && lexicon_.hive(items[k].text) != no_hive; };
        const bool in_frames = run.front() > 1 && counted_in_frames(items[run.front() - 2]);   // brood on 5, 6 and 3
        const bool of_hives = bare && !in_frames && run.front() > 0 && (items[run.front() - 1].is("on") || items[run.front() - 1].is("in") || items[run.front() - 1].is("off") || items[run.front() - 1].is("from")) && std::all_of(run.begin(), run.end(), a_hive);   // excluders on 2 and 6
        if (run.size() < 2 || !listed || of_hives) continue;
        if (is_mass(items[run.back()]) && boxes_of_all(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(run.front()))) continue;
        if (run.size() != hives) {
            if (!bare) continue;
            keep_asked(span(items), "which of the hives has which?", "write a line for each hive");
            return true;
        }
        std::size_t begin = clause_begin(items, run.front()), end = run.back() + 1;
        const bool values_alone = begin > 1 && begin == run.front();
        // 1 super off each, 10.8 kg and 12.4 kg: of what the clause before tells
        const bool ends = std::all_of(items.begin() + static_cast<std::ptrdiff_t>(run.back()) + 1, items.end(), [](const Item& k) { return k.idle() || k.is("honey") || k.is("net"); });
        const std::size_t clause_before = values_alone ? clause_begin(items, begin - 1) : begin;
        while (end < items.size() && !clause_end(items, end)) ++end;
        // sugar roll, 2, 5 and 1 mites per 300
        const bool method = std::any_of(items.begin() + static_cast<std::ptrdiff_t>(clause_before), items.begin() + static_cast<std::ptrdiff_t>(begin), [](const Item& k) { return k.has(Class::method); });
        if (ends || method) begin = clause_before;
        const Subject all = subject_;
        if (begin > 0) sentence(part_of(items, 0, begin));
        for (std::size_t h = 0; h < hives; ++h) {
            Items one = part_of(items, begin, run.front());
            std::erase_if(one, [&](const Item& k) { return says_each(k); });
            one.push_back(of_the_unit(items[run[h]], items[run.back()]));
            const Items rest = part_of(items, run.back() + 1, end);
            one.insert(one.end(), rest.begin(), rest.end());
            subject_ = {};
            subject_.hives = {all.hives[h]};
            box_ = {}, last_ = {};
            sentence(std::move(one));
        }
        subject_ = all, box_ = {};
        if (end < items.size()) sentence(part_of(items, end, items.size()));
        return true;
    }
    return false;
}

/// `washed h1, h2 and h3 and got 9, 4 and 12 mites out of 300`: as many values as hives in the list before them. True when the sentence is read.
bool LineReader::one_value_for_each_listed(const Items& items) {
    const auto list = std::find_if(items.begin(), items.end(), is_hives);
    const bool method = std::any_of(items.begin(), list, [](const Item& i) { return i.has(Class::method); });
    if (headed_ || !method || list == items.end() || std::count_if(items.begin(), items.end(), is_hives) != 1 || list->hives.size() < 2 || !list->unknown_hives.empty()) return false;
    Items rest = items;
    rest.erase(rest.begin() + (list - items.begin()));
    const Subject before = std::exchange(subject_, {});
    subject_.hives = list->hives;
    if (one_value_each(rest)) return true;
    subject_ = before;
    return false;
}

/// `has eggs and I think she is laying`: a doubt after a link is about what follows it.
void LineReader::doubts_after_facts(Clauses& clauses) {
    for (std::size_t c = 0; c < clauses.size(); ++c)
        for (std::size_t k = 1; k + 1 < clauses[c].size(); ++k) {
            const Items& items = clauses[c];
            if (!items[k].has(Class::link) || items[k].is("with")) continue;
            const std::size_t next = first_said(items, k + 1);
            const auto doubt = [](const Item& i) { return i.has(Class::doubt); };
            const bool of_the_second = items[k].is("and") && std::none_of(items.begin() + static_cast<std::ptrdiff_t>(k) + 1, items.end(), [](const Item& i) { return i.has(Class::link); }) &&
                                       std::any_of(items.begin() + static_cast<std::ptrdiff_t>(k), items.end(), doubt) && only_way(part_of(items, 0, k)) && only_way(part_of(items, k + 1, items.size()));   // top capped and the bottom one is maybe half full
            if (next >= items.size() || !(doubt(items[next]) || of_the_second) || idle(part_of(items, 0, k)) || std::any_of(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(k), doubt)) continue;
            break_clause(clauses, c, k, k + 1);
            break;
        }
}

/// `fed 1 kg sugar will need syrup next week`: what was done before the plan, in words of the past and with something done to
/// or given, was done all the same; what was counted is so, where the plan only says what it needs.
void LineReader::needs_after_facts(Clauses& clauses) {
    static constexpr std::array<std::string_view, 13> past = {"added", "fed", "treated", "taken off", "moved", "requeened", "extracted", "filled", "sold", "united", "given away", "returned", "undersupered"};
    const auto deed = [](const Item& i) { return std::any_of(past.begin(), past.end(), [&](std::string_view p) { return i.is(p); }); };
    for (std::size_t c = 0; c < clauses.size(); ++c) {
        const Items& items = clauses[c];
        const auto governs = [&](const Item& i) { return i.has(Class::plan) || i.has(Class::condition) || (i.has(Class::order) && !surface(i).ends_with('s')) || i.has(Class::negation) || i.has(Class::doubt); };
        const auto plan = std::find_if(items.begin(), items.end(), governs);
        if (plan == items.end() || plan - items.begin() < 2 || !plan->has(Class::plan)) continue;
        if (surface(*plan) == "ready for" && reads(Items(items.begin(), plan))) {   // clearer board on, ready for Monday
            const auto at = static_cast<std::size_t>(plan - items.begin());
            break_clause(clauses, c, at, at);
            continue;
        }
        static constexpr std::array<std::string_view, 16> words = {"will", "need", "needs", "need to", "might", "may", "going to", "should", "must", "want", "want to", "plan to", "planning to", "hope to", "hoping to", "hoping"};
        if (std::find(words.begin(), words.end(), surface(*plan)) == words.end()) continue;
        const bool weighed = std::any_of(items.begin(), plan, is_mass) && std::any_of(items.begin(), plan, [](const Item& i) { return i.is("weighed"); });   // weighs 50 kg and should be 60
        const bool need = weighed || std::any_of(plan, items.end(), [&](const Item& i) { return surface(i).starts_with("need") || surface(i).starts_with("want") || surface(i).starts_with("plan") || surface(i).starts_with("hop"); });
        Items before(items.begin(), plan);
        while (before.size() > 1 && (before.back().has(Class::link) || surface(before.back()) == "i" || surface(before.back()) == "we")) before.pop_back();
        const bool done = std::any_of(before.begin(), before.end(), deed);
        const bool any_done = std::any_of(before.begin(), before.end(), [&](const Item& i) {
            const bool in_sample = i.is("in") && &i + 1 < before.data() + before.size() && bare_number(*(&i + 1));   // 11 in 300
            return (i.has(Class::done) && !in_sample && !i.is("weighed") && !i.has(Class::link)) || i.what == What::sign;
        });
        if (!(done || (need && !any_done)) || !reads(before)) continue;
        break_clause(clauses, c, before.size(), static_cast<std::size_t>(plan - items.begin()));
    }
}

/// `sold 24 jars to the shop and h3 calm`: a name ends where something else is told.
void LineReader::names_end(Clauses& clauses) {
    const auto names = [](const Item& i) { return i.is("sold") || i.is("given away") || i.is("bought") || i.is("added"); };
    for (std::size_t c = 0; c < clauses.size(); ++c) {
        const Items items = clauses[c];
        const auto deed = std::find_if(items.begin(), items.end(), names);
        const auto to = std::find_if(deed, items.end(), [](const Item& i) { return i.is("to") || i.is("from"); });
        if (to == items.end() || std::none_of(to, items.end(), [](const Item& i) { return i.what == What::unknown; })) continue;
        for (auto k = static_cast<std::size_t>(to - items.begin()) + 2; k + 1 < items.size(); ++k) {
            const bool unknown = std::any_of(items.begin() + static_cast<std::ptrdiff_t>(k), items.end(), [](const Item& i) { return i.what == What::unknown; });
            // sold 12 jars to the baker and gave 2 to the vicar
            const bool goes_out = items[k].is("and") && (names(items[k + 1]) || items[k + 1].is("own use") || surface(items[k + 1]) == "kept") && only_way(part_of(items, 0, k));
            if (goes_out) {
                break_clause(clauses, c, k, k + 1);
                break;
            }
            if (!items[k].is("and") || unknown || !only_way(part_of(items, k + 1, items.size())) || !only_way(part_of(items, 0, k))) continue;
            break_clause(clauses, c, k, k + 1);
            break;
        }
    }
}

/// `no eggs or larvae`: neither.
void LineReader::neither(Clauses& clauses) {
    for (std::size_t c = 0; c < clauses.size(); ++c)
        for (std::size_t k = 2; k + 1 < clauses[c].size(); ++k) {
            const Items& items = clauses[c];
            const std::size_t first = first_said(items);
            if (surface(items[k]) != "or" || first >= k || surface(items[first]) != "no" || !items[first].has(Class::negation)) continue;
            Items right = part_of(items, k + 1, items.size());
            Item no = items[first];
            no.begin = no.end = right.front().begin;
            right.insert(right.begin(), std::move(no));
            if (!only_way(part_of(items, 0, k)) || !only_way(right)) continue;
            clauses[c].resize(k);
            clauses.insert(clauses.begin() + static_cast<std::ptrdiff_t>(c) + 1, std::move(right));
            break;
        }
}

/// `no queen no eggs`, `excluder off and no cells`, `no eggs so gave it a test frame`: each for itself.
void LineReader::denials_apart(Clauses& clauses) {
    for (std::size_t c = 0; c < clauses.size(); ++c)
        for (std::size_t k = 1; k + 1 < clauses[c].size(); ++k) {
            const Items& items = clauses[c];
            const auto denied = [](const Item& i) { return i.has(Class::negation); };
            const bool follows = surface(items[k]) == "so" || surface(items[k]) == "and so" || surface(items[k]) == "then";
            const bool begins = (items[k].is("and") || follows) && surface(items[k + 1]) == "no" && denied(items[k + 1]) && std::none_of(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(k), denied);
            if (!begins && !follows) continue;
            const Items right = part_of(items, k + 1, items.size());
            const std::size_t first = first_said(right);
            const bool deed = follows && first < right.size() && right[first].has(Class::done) && !on_or_off(right[first]);   // top one ready so took it off
            if (!(deed || only_way(part_of(items, 0, k))) || !(begins || only_way(right))) continue;
            break_clause(clauses, c, k, k + 1);
            break;
        }
    for (std::size_t c = 0; c < clauses.size(); ++c)
        for (std::size_t k = 2; k + 1 < clauses[c].size(); ++k) {
            const Items& items = clauses[c];
            if (surface(items[k]) != "no" || !items[k].has(Class::negation) || surface(items[0]) != "no" || idle(part_of(items, 1, k)) || std::any_of(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(k), [](const Item& i) { return i.what == What::hives; })) continue;
            break_clause(clauses, c, k, k);
            break;
        }
}

/// `heavy no feed needed`: what is not needed is said for itself.
void LineReader::not_needed(Clauses& clauses) const {
    for (std::size_t c = 0; c < clauses.size(); ++c)
        for (std::size_t k = 1; k < clauses[c].size(); ++k) {
            const Items& items = clauses[c];
            if (!items[k].has(Class::negation) || idle(part_of(items, 0, k))) continue;
            const auto need = [&](const Item& i) { return i.has(Class::plan) && surface(i).starts_with("need"); };
            if (std::none_of(items.begin() + static_cast<std::ptrdiff_t>(k), items.end(), need)) continue;
            const bool of_what_stands_before = std::all_of(items.begin() + static_cast<std::ptrdiff_t>(k) + 1, items.end(), [&](const Item& i) { return i.idle() || need(i); });   // oxalic not needed
            if (of_what_stands_before) continue;
            break_clause(clauses, c, k, k);
            break;
        }
}

/// `clover and lime starting`, `willow & gorse pollen`: what is said after the last plant is said of each of them.
void LineReader::plants_share(Clauses& clauses) const {
    for (std::size_t c = 0; c < clauses.size(); ++c) {
        const Items items = clauses[c];
        const std::size_t first = first_said(items);
        const auto plant = [&](std::size_t i) { return i < items.size() && items[i].has(Class::plant); };
        if (!plant(first) || first + 2 >= items.size() || !items[first + 1].is("and")) continue;
        const std::size_t second = first_said(items, first + 2);
        if (plant(second) && second + 1 < items.size() && items[second + 1].is("both")) {   // clover and lime both out
            clauses[c].erase(clauses[c].begin() + static_cast<std::ptrdiff_t>(second) + 1);
            --c;
            continue;
        }
        if (!plant(second) || idle(part_of(items, second + 1, items.size())) || std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::hives; })) continue;
        Items one{items[first]};
        const Items rest = part_of(items, second + 1, items.size());
        one.insert(one.end(), rest.begin(), rest.end());
        clauses[c] = part_of(items, second, items.size());
        clauses.insert(clauses.begin() + static_cast<std::ptrdiff_t>(c), std::move(one));
        ++c;
    }
}

/// `fed 2 L 1:1, h3 3 L`: the feed goes on to a hive with nothing but an amount.
void LineReader::feeds_go_on(Clauses& clauses) const {
    for (std::size_t c = 1; c < clauses.size(); ++c) {
        const auto fed = std::find_if(clauses[c - 1].begin(), clauses[c - 1].end(), [](const Item& i) { return i.is("fed"); });
        const Items& items = clauses[c];
        if (fed == clauses[c - 1].end() || items.empty() || items.front().what != What::hives) continue;
        bool amount = false, ratio = false;
        const bool bare = std::all_of(items.begin() + 1, items.end(), [&](const Item& i) {
            const bool volume = i.what == What::value && i.value.dimension == Dimension::volume;
            amount = amount || volume, ratio = ratio || i.what == What::ratio;
            return volume || i.idle() || i.what == What::ratio || says_each(i);
        });
        if (!bare || !amount) continue;
        Items said{items.front(), *fed};
        said[1].begin = said[1].end = items.front().end;
        for (const Item& i : clauses[c - 1])
            if (i.has(Class::food) || (i.what == What::ratio && !ratio)) said.push_back(i), said.back().begin = said.back().end = items.front().end;
        said.insert(said.end(), items.begin() + 1, items.end());
        const auto is_ratio = [](const Item& i) { return i.what == What::ratio; };
        // h1 fed 5 L, h2 4 L of 2:1: all of it
        const auto mixed = std::find_if(items.begin(), items.end(), is_ratio);
        for (std::size_t k = c; ratio && k-- > 0 && std::any_of(clauses[k].begin(), clauses[k].end(), [](const Item& i) { return i.is("fed"); });) {
            if (std::any_of(clauses[k].begin(), clauses[k].end(), is_ratio)) break;
            clauses[k].push_back(*mixed);
            clauses[k].back().begin = clauses[k].back().end = clauses[k][clauses[k].size() - 2].end;
        }
        clauses[c] = std::move(said);
    }
}

namespace {

/// What is counted or measured hive after hive, and may be said of the next with its number only.
bool counted_in_turn(const Fact& f) {
    switch (f.kind) {
        case Kind::bees: case Kind::brood: case Kind::stores: case Kind::cups: case Kind::queen_cells: case Kind::stings: case Kind::mites: case Kind::hive_weight: case Kind::feed: return true;
        case Kind::super_off: return f.count > 0;
        case Kind::super_on: return f.count > 0 && f.comb == Comb::unsaid;
        case Kind::full: case Kind::capped: case Kind::drawn: return f.value.unit == Unit::percent;
        default: return false;
    }
}

/// Puts the number said by `item` into a copy of what was told of another hive; false when it does not fit there.
bool put_number(Fact& f, const Item& item) {
    if (item.is("none")) {
        if (f.kind != Kind::queen_cells && f.kind != Kind::cups && f.kind != Kind::mites && f.kind != Kind::stings) return false;
        f.count = 0;
        if (f.kind == Kind::mites && f.value.dimension == Dimension::share) f.value.amount = f.value.low = f.value.high = 0;   // h1 mites 2%, h2 none
        if (f.kind != Kind::mites && f.kind != Kind::stings) f.detail = f.manner = {};
        return true;
    }
    if (item.what == What::slash) {
        const bool of_a_sample = f.value.unit == Unit::piece || f.value.dimension == Dimension::share;
        if (f.kind != Kind::mites || item.m < 50 || !of_a_sample) return false;
        f.count = item.n;
        f.value = measure(std::to_string(item.m), Unit::piece).value_or(f.value);
        return true;
    }
    const Measure& said = item.value;
    const bool boxes = f.kind == Kind::super_off || f.kind == Kind::super_on;
    if (boxes && (said.unit != Unit::piece || said.amount == 0)) return false;
    if (f.kind == Kind::feed && said.unit == Unit::piece) return false;   // 2 of what?
    if (said.unit != Unit::piece) return said.dimension == f.value.dimension && (f.value = said, true);
    const bool in_value = f.kind == Kind::bees || f.kind == Kind::brood || f.kind == Kind::stores || f.kind == Kind::hive_weight;
    if (in_value && f.value.said() && f.value.unit != Unit::percent) {
        const auto number = measure(item.text, f.value.unit);
        return number && (f.value = *number, true);
    }
    const bool whole = said.low == said.high && said.amount % 1000 == 0;
    if (in_value || f.count < 0 || !whole) return false;
    f.count = static_cast<int>(said.amount / 1000);
    if (f.kind == Kind::cups) f.detail = {};   // h1 2 cups, dry. h3 4
    if (f.kind == Kind::super_off) {   // so many supers, of which no weight is told
        f.value = {}, f.manner = {};
        f.box = f.count == 1 ? BoxChoice{BoxChoice::By::sole, Role::super, 0, {}} : BoxChoice{BoxChoice::By::top_n, Role::super, static_cast<std::uint8_t>(std::min(f.count, 250)), {}};
    }
    return true;
}

}  // namespace

/// The clause before told one thing, of one hive.
bool LineReader::told_of_one_hive() const { return out_->size() == before_clause_ + 1 && before_clause_ >= first_of_line_ && out_->back().hives.size() == 1; }

/// What was told of hives goes on at others, which the line is about from here.
void LineReader::goes_on_at(RawFact raw, const std::vector<HiveId>& hives, Span where) {
    put_at(std::move(raw), hives, where);
    before_clause_ = out_->size() - 1;
    box_ = {}, last_.set = false;
    subject_ = {};
    subject_.hives = hives;
}

/// `bottom super off h3, and one off h4`: which one of h4 is not said.
static BoxChoice one_super(const BoxChoice& told) {
    using By = BoxChoice::By;
    const bool told_which = told.by == By::top || told.by == By::bottom || told.by == By::middle || told.by == By::number || told.by == By::label;
    return told_which ? BoxChoice{By::sole, Role::super, 0, {}} : told;
}

/// `super off h1, one off h2`: the same done there. True when it is.
bool LineReader::one_more_there(const Items& items) {
    Items said;
    for (const Item& i : items)
        if (!i.idle() && !i.has(Class::link)) said.push_back(i);
    // gave h1 a super and h2 one
    if (said.size() == 2 && said[0].what == What::hives && said[0].hives.size() == 1 && said[0].unknown_hives.empty() && said[1].has(Class::count) && said[1].word(Class::count)->number == 1 && told_of_one_hive() &&
        out_->back().hives != said[0].hives && out_->back().fact.kind == Kind::super_on && out_->back().fact.count <= 1) {
        goes_on_at(out_->back(), said[0].hives, span(items));
        return true;
    }
    // put a super on h4 and another on h5
    const auto another = std::find_if(items.begin(), items.end(), [&](const Item& i) { return says_another(i); });
    if (another != items.end() && said.size() == 2) said.insert(said.begin(), *another);
    const bool one = said.size() == 3 && (says_another(said[0]) || (said[0].has(Class::count) && said[0].word(Class::count)->number == 1));
    const bool shape = one && said[2].what == What::hives && said[2].hives.size() == 1 && said[2].unknown_hives.empty();
    if (!shape || !told_of_one_hive() || out_->back().hives == said[2].hives) return false;
    const Fact& f = out_->back().fact;
    const bool off = f.kind == Kind::super_off && (said[1].is("off") || said[1].is("from")), on = f.kind == Kind::super_on && (said[1].is("on") || said[1].is("to"));
    if (!(off || on) || f.count > 1 || f.box.by == BoxChoice::By::all) return false;
    RawFact raw = out_->back();
    raw.fact.value = {}, raw.fact.manner = {};
    if (off) raw.fact.box = one_super(raw.fact.box);
    goes_on_at(std::move(raw), said[2].hives, span(items));
    return true;
}

/// `h1 6 frames of brood, h2 4`: a hive and a number tell of it what was told of the hive before. True when they do.
bool LineReader::count_goes_on(const Items& items) {
    const Item* hive = nullptr;
    const Item* number = nullptr;
    Items joined = items;
    // 5 per 300
    for (std::size_t i = 0; i + 2 < joined.size(); ++i) {
        const bool sample = bare_number(joined[i]) && (joined[i + 1].is("per") || joined[i + 1].is("in") || joined[i + 1].is("of") || joined[i + 1].is("from")) && bare_number(joined[i + 2]) && joined[i + 2].value.amount >= 50'000;
        if (!sample || joined[i].value.amount % 1000 != 0) continue;
        joined[i].what = What::slash;
        joined[i].n = static_cast<int>(joined[i].value.amount / 1000), joined[i].m = static_cast<int>(joined[i + 2].value.amount / 1000);
        joined.erase(joined.begin() + static_cast<std::ptrdiff_t>(i) + 1, joined.begin() + static_cast<std::ptrdiff_t>(i) + 3);
    }
    const Kind told = out_->size() > first_of_line_ ? out_->back().fact.kind : Kind::remark;
    for (std::size_t i = 0; told == Kind::mites && i + 2 < joined.size(); ++i) {   // 12 in 3 days, as before
        const bool so_long = bare_number(joined[i]) && (joined[i + 1].is("in") || joined[i + 1].is("over")) && joined[i + 2].what == What::value && joined[i + 2].value == out_->back().fact.second;
        if (so_long) joined.erase(joined.begin() + static_cast<std::ptrdiff_t>(i) + 1, joined.begin() + static_cast<std::ptrdiff_t>(i) + 3);
    }
    const auto off_there = [&](const Item& i) { return told == Kind::super_off && (i.is("off") || i.is("from")); };   // 2 supers off h1 and one off h3
    const bool there = std::any_of(joined.begin(), joined.end(), off_there);
    for (Item& i : joined)   // and h2 had two
        if (i.what == What::term && i.has(Class::count) && (i.word(Class::count)->number > 1 || there)) i.what = What::value, i.value = measure(std::to_string(i.word(Class::count)->number), Unit::piece).value(), i.text = std::to_string(i.word(Class::count)->number), i.words.clear();
    bool about = false;
    for (const Item& i : joined) {
        if (i.what == What::hives && i.role == Item::Role::none && !hive) hive = &i;   // h2 4; 14 h5
        else if ((i.what == What::value || i.what == What::slash || i.is("none")) && i.text != "nth" && !number) number = &i;
        else if ((i.is("on") || i.is("in") || i.is("at") || off_there(i)) && number && !hive) continue;   // 9/300 on h3
        else if (i.is("on") && hive && !number && out_->size() > first_of_line_ && of_frames(out_->back().fact)) continue;   // h1 on 6 frames of brood, h2 on 4
        else if (!number && (i.is("about") || i.is("just under") || i.is("just over") || i.is("nearly"))) about = true;   // h2 nearly seven
        else if (i.what == What::sign && i.text == "+" && told == Kind::super_on) continue;   // h1 +2 supers, h2 +1
        else if (i.has(Class::link) && !number && !hive) continue;   // and h6 was 1 in 300
        else if (!i.idle() || i.loose) return false;
    }
    if (!hive || !number || !hive->unknown_hives.empty() || hive->hives.empty() || out_->size() != before_clause_ + 1 || before_clause_ < first_of_line_ || out_->back().hives.empty()) return false;
    if (out_->back().hives == hive->hives || !counted_in_turn(out_->back().fact)) return false;
    const std::string more = rest_of_line(items);
    if (hive->hives.size() > 1 && more.size() > 4 && more.starts_with("and ") && std::isdigit(static_cast<unsigned char>(more[4]))) return false;   // h3 and h4 6 and 7
    RawFact raw = out_->back();
    if (there) raw.fact.box = one_super(raw.fact.box);
    if (!put_number(raw.fact, *number) || (about && (!raw.fact.value.said() || raw.fact.kind == Kind::mites))) return false;
    if (about) widen(raw.fact.value);
    goes_on_at(std::move(raw), hive->hives, span(items));
    return true;
}

/// `h2 too`: what the last clause told of other hives is so here as well. True when it is.
bool LineReader::these_too(const Items& items) {
    static constexpr std::array<std::string_view, 6> words = {"too", "also", "as well", "likewise", "same", "the same"};
    const bool too = std::any_of(items.begin(), items.end(), [&](const Item& i) { return std::find(words.begin(), words.end(), surface(i)) != words.end(); });
    if (!too || !last_.set || last_.out >= out_->size()) return false;
    const std::vector<RawFact> told(out_->begin() + static_cast<std::ptrdiff_t>(last_.out), out_->end());
    if (std::any_of(told.begin(), told.end(), [](const RawFact& r) { return r.fact.kind == Kind::remark || r.hives.empty() || r.fact.other != no_hive; })) return false;
    std::vector<HiveId> hives;
    for (const Item& i : items) hives.insert(hives.end(), i.hives.begin(), i.hives.end());
    for (const RawFact& raw : told) put_at(raw, hives, span(items));
    last_.set = false;
    return true;
}

}  // namespace waxtab
