// The keeper's own to-dos come back until a later note answers them.
#include <algorithm>

#include <fmt/format.h>

#include "advice/rule.hpp"
#include "advice/todo.hpp"

namespace waxtab {
namespace {

/// A to-do older than this is taken as forgotten on purpose; own judgement.
constexpr int todo_days = 120;

struct Answer { std::string_view word; std::vector<Kind> kinds; };

const std::vector<Answer>& answers() {
    static const std::vector<Answer> table{
        {"super", {Kind::super_on, Kind::super_off, Kind::super_moved}},
        {"requeen", {Kind::queen_introduced}},
        {"feed", {Kind::feed, Kind::feeder_on, Kind::feeder_off}},
        {"treat", {Kind::treatment, Kind::treatment_on}},
        {"strip", {Kind::treatment_on, Kind::treatment_off}},
        {"mite", {Kind::mites}},
        {"split", {Kind::hive_split, Kind::nuc_made}},
        {"nuc", {Kind::nuc_made, Kind::hive_split}},
        {"unite", {Kind::hive_united}},
        {"combine", {Kind::hive_united}},
        {"move", {Kind::hive_moved}},
        {"excluder", {Kind::excluder_on, Kind::excluder_off}},
        {"escape", {Kind::escape_on}},
        {"clearer", {Kind::escape_on}},
        {"extract", {Kind::extracted}},
        {"mark", {Kind::queen_marked}},
        {"clip", {Kind::queen_clipped}},
        {"jar", {Kind::jars}},
    };
    return table;
}

/// Looking is answered by any later visit.
bool asks_to_look(std::string_view text) {
    for (std::string_view w : {"check", "look", "inspect", "see if", "ask for"})
        if (mentions(text, w)) return true;
    return false;
}

bool same_place(const Fact& todo, const Fact& later) {
    if (todo.hive != no_hive) return later.hive == todo.hive || later.other == todo.hive;
    return todo.yard == no_yard || later.yard == no_yard || later.yard == todo.yard;
}

bool answers_it(const Fact& todo, const Fact& later) {
    if (later.noted <= todo.noted || later.kind == Kind::todo || !same_place(todo, later)) return false;
    if (later.kind != Kind::remark && asks_to_look(todo.text)) return true;
    for (const Answer& a : answers())
        if (mentions(todo.text, a.word) && std::find(a.kinds.begin(), a.kinds.end(), later.kind) != a.kinds.end()) return true;
    return false;
}

bool hive_gone(const Context& c, const Fact& todo) {
    return todo.hive != no_hive && !c.history.hives[static_cast<std::size_t>(todo.hive)].alive;
}

}  // namespace

std::vector<Seen> open_todos(const Context& c) {
    std::vector<Seen> out;
    for (const Seen& s : c.facts) {
        if (s.it->kind != Kind::todo || days_between(s.it->noted, c.on) > todo_days || hive_gone(c, *s.it)) continue;
        const bool done = std::any_of(c.facts.begin(), c.facts.end(), [&](const Seen& l) { return answers_it(*s.it, *l.it); });
        if (!done) out.push_back(s);
    }
    return out;
}

namespace {

Advices todos(const Context& c) {
    Advices out;
    for (const Seen& s : open_todos(c)) {
        Advice a = advise_to(Act::todo, Rank::rest, "your to-do: " + s.it->text);
        a.hive = s.it->hive;
        a.yard = s.it->yard;
        how_sure(a, Sureness::certain, "your own note");
        a.reasons.push_back(fmt::format("noted {}", ago(s.it->noted, c.on)));
        because(a, s.fact);
        out.push_back(std::move(a));
    }
    return out;
}

}  // namespace

std::vector<Rule> word_rules() {
    return {
        {{"to-do", "Your own to-dos come back until a later note answers them.", "the journal itself", "To-dos"}, &todos},
    };
}

}  // namespace waxtab
