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
        {"box", {Kind::brood_box_on, Kind::super_on}},
        {"test frame", {Kind::frames_moved}},
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

/// The kinds of note that answer a to-do; none for words that no note can answer.
std::vector<Kind> kinds_wanted(std::string_view text) {
    std::vector<Kind> out;
    for (const Answer& a : answers())
        if (mentions(text, a.word)) out.insert(out.end(), a.kinds.begin(), a.kinds.end());
    return out;
}

/// A to-do that no note can answer is settled by a visit to its hive this many days on; own judgement.
constexpr int settled_by_visit_days = 10;

/// Judges later facts by one to-do.
struct Answering {
    const Fact& todo;
    std::vector<Kind> kinds = kinds_wanted(todo.text);
    bool look = asks_to_look(todo.text);

    bool operator()(const Fact& later) const {
        if (later.noted <= todo.noted || later.kind == Kind::todo || !same_place(todo, later)) return false;
        if (std::find(kinds.begin(), kinds.end(), later.kind) != kinds.end()) return true;
        if (later.kind == Kind::remark) return false;
        if (look) return true;
        return kinds.empty() && todo.hive != no_hive && days_between(todo.noted, later.noted) >= settled_by_visit_days;
    }
};

bool hive_gone(const Context& c, const Fact& todo) {
    return todo.hive != no_hive && !c.history.hives[static_cast<std::size_t>(todo.hive)].alive;
}

}  // namespace

std::vector<Seen> open_todos(const Context& c) {
    std::vector<Seen> out;
    for (auto s = c.facts.begin(); s != c.facts.end(); ++s) {
        if (s->it->kind != Kind::todo || days_between(s->it->noted, c.on) > todo_days || hive_gone(c, *s->it)) continue;
        const Answering answers_it{*s->it};
        if (std::none_of(s, c.facts.end(), [&](const Seen& l) { return answers_it(*l.it); })) out.push_back(*s);
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
        {{"to-do", "Your own to-dos come back until a later note answers them, or, where no note can, until the hive is visited ten days on.", "the journal itself", "To-dos"}, &todos},
    };
}

}  // namespace waxtab
