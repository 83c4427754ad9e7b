#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "facts/chunk.hpp"

namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

bool stop(const Item& i, std::string_view text) { return i.what == What::stop && i.text == text; }
bool clause_end(const Item& i) { return i.what == What::stop && (i.text == "," || i.text == "(" || i.text == ")" || i.text == "-" || i.text == "/"); }
bool sentence_end(const Item& i) { return i.what == What::stop && (i.text == "." || i.text == ";" || i.text == "!"); }

/// Words that put an event out of force without asking for anything to be done.
bool wishful(std::string_view surface) {
    static constexpr std::array<std::string_view, 24> words = {"could", "might", "may", "would", "could have", "might have", "may have", "must have",
        "should have", "was going to", "were going to", "meant to", "forgot", "forgot to", "wish", "expect", "expecting", "hope", "hoping",
        "waiting for", "wait", "considering", "ready for", "soon"};
    return std::find(words.begin(), words.end(), surface) != words.end();
}

bool eventful(const std::vector<Item>& items) {
    return std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::sign || i.has(Class::done); });
}

/// Can facts of one clause go on in the next: the 9 frames of `super on, 9 drawn frames`?
bool goes_on(Kind kind) {
    switch (kind) {
        case Kind::super_on: case Kind::super_off: case Kind::brood_box_on: case Kind::frames_off: case Kind::hive_split: case Kind::nuc_made:
        case Kind::swarm_hived: case Kind::queen_introduced: case Kind::extracted: case Kind::gone_out: case Kind::jars: case Kind::combs_packed:
        case Kind::feed: case Kind::treatment: case Kind::treatment_on: case Kind::mites: case Kind::super_moved: case Kind::frames_moved:
        case Kind::bought_in: case Kind::opening_stock: case Kind::moisture: case Kind::honey_index: case Kind::come_back: case Kind::stocktake:
            return true;
        default: return false;
    }
}

bool holds_number(const Item& i) {
    return i.what == What::value || i.what == What::slash || i.what == What::jars || i.counted || i.has(Class::count);
}

/// The row of a word that has two meanings in the trade, if it is one.
const grammar::TwoMeanings* meanings_of(const Item& i) {
    if (i.what != What::unknown && !i.is("cleared")) return nullptr;
    const std::string_view text = i.what == What::unknown ? std::string_view(i.text) : "cleared";
    const std::string_view single = text.size() > 2 && text.ends_with('s') ? text.substr(0, text.size() - 1) : text;
    const auto found = std::find_if(std::begin(grammar::two_meanings), std::end(grammar::two_meanings), [&](const grammar::TwoMeanings& t) { return t.word == text || t.word == single; });
    return found == std::end(grammar::two_meanings) ? nullptr : &*found;
}

bool smells_of_data(const Item& i, const Lexicon& lexicon) {
    if (i.what == What::value || i.what == What::slash || i.what == What::ratio || i.what == What::sign || i.what == What::jars) return true;
    if (i.counted) return true;
    if (i.what == What::unknown && i.text.find_first_of("0123456789") != std::string::npos) return true;
    if (const grammar::Word* w = i.word(Class::count); w && w->number > 1) return true;
    return i.what == What::unknown && !lexicon.nearest(i.text).empty();
}

/// Speaks of something done to boxes, frames or queens: worth a look when it was not understood.
bool tells_of_a_deed(const std::vector<Item>& items) {
    static constexpr std::array<std::string_view, 12> things = {"super", "brood box", "excluder", "frame", "frames of brood", "frames of stores", "queen", "queen cell", "escape board", "feeder", "upper entrance", "swarm"};
    const auto deed = [](const Item& i) { return i.what == What::sign || (i.has(Class::done) && !i.is("on") && !i.is("off") && !i.is("in") && !i.is("out") && !i.is("left")); };
    const auto thing = [](const Item& i) { return i.what == What::box || i.is("wet") || std::any_of(things.begin(), things.end(), [&](std::string_view t) { return i.is(t); }); };
    static constexpr std::array<std::string_view, 11> lives = {"treated", "split", "united", "swarmed", "requeened", "bought", "hived", "nuc made", "shook out", "renamed", "supered"};
    const auto life = [](const Item& i) { return std::any_of(lives.begin(), lives.end(), [&](std::string_view t) { return i.is(t); }); };
    if (std::any_of(items.begin(), items.end(), life)) return true;
    const auto strange = [](const Item& i) { return i.what == What::unknown; };
    const auto plainly = [&](const Item& i) { return deed(i) && !i.is("gained") && !i.is("lost weight"); };
    return (std::any_of(items.begin(), items.end(), deed) && std::any_of(items.begin(), items.end(), thing)) ||
           (std::any_of(items.begin(), items.end(), plainly) && std::any_of(items.begin(), items.end(), strange));
}

/// The items of a clause whose hives became what the line is about.
std::vector<Item> without_hives(std::vector<Item> items) {
    const auto named = std::count_if(items.begin(), items.end(), [](const Item& k) { return k.what == What::hives; });
    if (named > 1) {
        // Only the hives the line is about: the ones without a preposition.
        for (std::size_t i = 0; i < items.size(); ++i) {
            const bool led = i > 0 && (items[i - 1].has(Class::preposition) || items[i - 1].is("new") || items[i - 1].is("with"));
            if (items[i].what != What::hives || led) continue;
            items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
            return items;
        }
    }
    for (std::size_t i = 0; i < items.size();) {
        const bool before = i + 1 < items.size() && items[i + 1].what == What::hives && (items[i].is("from") || items[i].is("to") || items[i].is("on") || items[i].is("in") || items[i].is("off") || items[i].is("at"));
        const bool verb = std::count_if(items.begin(), items.end(), [](const Item& k) { return k.has(Class::done); }) > 1;
        if (items[i].what == What::hives || (before && (!items[i].has(Class::done) || verb))) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
        else ++i;
    }
    return items;
}

/// A share or a strength may be said with a maybe; an event may not.
bool soft(Kind kind) {
    return kind == Kind::full || kind == Kind::capped || kind == Kind::drawn || kind == Kind::bees || kind == Kind::brood || kind == Kind::stores ||
           kind == Kind::hive_weight || kind == Kind::box_weight || kind == Kind::strength;
}

bool speaks_of_cells(const Item& i) {
    static constexpr std::array<std::string_view, 7> cells = {"queen cell", "open cell", "sealed cell", "charged cell", "swarm cell", "supersedure cell", "emergency cell"};
    return i.what == What::term && std::any_of(cells.begin(), cells.end(), [&](std::string_view c) { return i.is(c); });
}

bool needs_hive(const Candidate& c) {
    return !c.about_yard && !c.about_honey && !c.about_shed;
}

bool takes_box_from_before(Kind kind) {
    return kind == Kind::full || kind == Kind::capped || kind == Kind::drawn || kind == Kind::shakes_out || kind == Kind::no_change;
}

}  // namespace

Span LineReader::span(const std::vector<Item>& items) const {
    std::size_t first = 0, last = items.size();
    while (first + 1 < last && items[first].what == What::stop) ++first;
    while (last > first + 1 && items[last - 1].what == What::stop) --last;
    return items.empty() ? Span{} : Span{file_, items[first].begin, items[last - 1].end};
}

void LineReader::put(RawFact raw, Reading reading) {
    reading.span = reading.span.known() ? reading.span : raw.fact.span;
    journal_.readings.push_back(std::move(reading));
    raw.reading = journal_.readings.size() - 1;
    raw.fact.noted = context_->noted;
    if (raw.fact.happened == Day{}) raw.fact.happened = context_->noted;
    raw.fact.minute = raw.fact.happened == context_->noted ? context_->minute : std::int16_t{-1};
    if (raw.fact.yard == no_yard) raw.fact.yard = line_yard_ != no_yard ? line_yard_ : context_->yard;
    if (context_->year_assumed) raw.fact.assumed |= assumed_year;
    if (raw.fact.kind == Kind::super_on || raw.fact.kind == Kind::brood_box_on) {
        if (raw.fact.box_kind.empty()) raw.fact.assumed |= assumed_box_kind;
        if (raw.fact.placing == Placing::unsaid && raw.fact.kind == Kind::super_on) raw.fact.assumed |= assumed_placing;
        if (raw.fact.comb == Comb::unsaid) raw.fact.assumed |= assumed_comb;
    }
    raw.effect = std::uint64_t{raw.fact.span.begin} * 2 + 1;
    if (takes_box_from_before(raw.fact.kind))
        for (std::size_t k = first_of_line_; k < out_->size(); ++k) {
            const Fact& off = (*out_)[k].fact;
            if (off.kind == Kind::super_off && off.box == raw.fact.box) raw.effect = std::uint64_t{off.span.begin} * 2;
        }
    out_->push_back(std::move(raw));
}

/// The words of a remark or to-do: without the quotes, without the word todo itself.
std::string LineReader::words_kept(const std::vector<Item>& items, Span where) const {
    std::size_t first = 0;
    const auto surface = [&](const Item& i) { return lower(journal_.sources.text({file_, i.begin, i.end})); };
    const bool todo = items.size() > 1 && (surface(items[0]) == "todo" || surface(items[0]) == "to do" || surface(items[0]) == "to-do");
    if (todo) first = 1;
    while (todo && first + 1 < items.size() && items[first].what == What::stop) ++first;
    if (items.size() == first + 1 && items[first].what == What::quoted) return items[first].text;
    return std::string(journal_.sources.text({file_, std::max(where.begin, items[first].begin), where.end}));
}

/// Keeps a stretch of the line word for word, as a remark or a to-do.
void LineReader::keep_words(const std::vector<Item>& items, Kind kind, Reading::Outcome outcome, std::string because) {
    const Span where = span(items);
    if (!where.known()) return;
    RawFact raw;
    raw.fact.kind = kind;
    raw.fact.span = where;
    raw.fact.text = words_kept(items, where);
    raw.hives = subject_.hives, raw.all = subject_.all, raw.but = subject_.but, raw.rest = subject_.rest, raw.both = subject_.both;
    Reading reading;
    reading.outcome = outcome;
    reading.because = std::move(because);
    put(std::move(raw), std::move(reading));
}

/// `all`, `both`, `the rest`, `all but h4`, at the head of a line or at the end of a clause.
bool LineReader::take_all(std::vector<Item>& items, bool at_head) {
    if (items.empty()) return false;
    const auto surface = [&](const Item& i) { return lower(journal_.sources.text({file_, i.begin, i.end})); };
    const auto group = [&](const Item& i) {
        const std::string s = surface(i);
        return i.what == What::term && (s == "all" || s == "both" || s == "the rest" || s == "the others" || s == "rest" || s == "others" || s == "everyone" || s == "everybody" || s == "every" || s == "each" || s == "all but" || s == "all bar" || s == "all except" || s == "all exc" || s == "the lot");
    };
    const auto names_hives = [&](const Item& i) {
        const std::string s = surface(i);
        return s == "hives" || s == "colonies" || s == "hive" || s == "colony" || s == "of them" || s == "three" || s == "two" || s == "four" || s == "five" || s == "six";
    };
    std::size_t at = items.size();
    if (at_head && group(items.front())) {
        const bool boxes = items.size() > 1 && (items[1].is("super") || items[1].is("box") || items[1].is("frame") || items[1].is("brood box") || items[1].is("capped") || items[1].is("drawn") || items[1].has(Class::amount) || items[1].is("queen cell"));
        if (!boxes) at = 0;
    }
    if (at == items.size())
        for (std::size_t i = 1; i < items.size(); ++i) {
            if (!group(items[i])) continue;
            // 12 jars at 6.50 each: no hives are meant
            if (surface(items[i]) == "each" && (items[i - 1].what == What::value || items[i - 1].counted)) continue;
            if (items[i - 1].is("treated") || items[i - 1].is("fed") || items[i - 1].is("inspected")) at = i;
            const bool ends = i + 1 == items.size() || (i + 2 == items.size() && items[i + 1].what == What::value && items[i + 1].value.unit == Unit::piece);
            const bool named = i + 1 < items.size() && (names_hives(items[i + 1]) || items[i + 1].what == What::hives);
            if (ends || named || items[i].is("all but")) at = i;
        }
    if (at == items.size()) return false;
    const std::string s = surface(items[at]);
    std::size_t end = at + 1;
    Subject found;
    found.both = s == "both";
    found.rest = s.find("rest") != s.npos || s.find("other") != s.npos;
    found.all = !found.both && !found.rest;
    while (end < items.size() && (names_hives(items[end]) || (items[end].what == What::value && items[end].value.unit == Unit::piece && (end + 1 == items.size() || stop(items[end + 1], ":"))))) {
        if (items[end].what == What::value) found.count = static_cast<int>(items[end].value.amount / 1000);
        ++end;
    }
    bool but = items[at].is("all but") && s != "the rest";
    if (end < items.size() && items[end].is("all but")) but = true, ++end;
    if (but && end < items.size() && items[end].what == What::hives) {
        found.but = items[end].hives;
        ++end;
    } else if (but && end < items.size() && surface(items[end]) == "nuc") {
        for (std::size_t h = 0; h < journal_.hives.size(); ++h)
            if (journal_.hives[h].nucleus) found.but.push_back(static_cast<HiveId>(h));
        ++end;
    } else if (but) {
        return false;
    }
    // "treat all" leaves nothing dangling; a preposition before it goes with it.
    if (at > 0 && (items[at - 1].is("on") || items[at - 1].is("to") || items[at - 1].is("of") || items[at - 1].is("in")) && at > 1) --at;
    subject_ = found;
    items.erase(items.begin() + static_cast<std::ptrdiff_t>(at), items.begin() + static_cast<std::ptrdiff_t>(end));
    return true;
}

/// Takes the hives a line begins with off it.
void LineReader::head(std::vector<Item>& items, const std::vector<Token>& tokens) {
    while (!items.empty() && items.front().what == What::stop && (items.front().text == "-" || items.front().text == "*")) items.erase(items.begin());
    if (items.empty()) return;
    const auto drop_marks = [&] {
        while (!items.empty() && items.front().what == What::stop && items.front().text != "(") items.erase(items.begin());
    };
    Item& first = items.front();
    if (first.what == What::term && first.has(Class::filler) && items.size() > 1 && items[1].what == What::hives) items.erase(items.begin());
    Item& lead = items.front();
    if (lead.what == What::hives) {
        subject_.hives = lead.hives;
        subject_.unknown = lead.unknown_hives;
        if (!lead.unknown_hives.empty()) complain_about(subject_, {lead});
        items.erase(items.begin());
        drop_marks();
        return;
    }
    // 2: BIAS on 7
    const bool marked = items.size() > 1 && items[1].what == What::stop && (items[1].text == ":" || items[1].text == "-");
    if (marked && lead.what == What::value && lead.value.unit == Unit::piece) {
        const HiveId id = lexicon_.hive(tokens.front().text);
        if (id != no_hive) {
            subject_.hives = {id};
            items.erase(items.begin());
            drop_marks();
        }
        return;
    }
    if (marked && lead.what == What::unknown) {
        // A name before a colon is a hive nobody set up.
        subject_.unknown = {std::string(journal_.sources.text({file_, lead.begin, lead.end}))};
        complain_about(subject_, {lead});
        items.erase(items.begin());
        drop_marks();
        return;
    }
    if (marked && lead.what == What::yard) {
        line_yard_ = lead.yard;
        items.erase(items.begin());
        drop_marks();
        if (items.empty()) context_->yard = line_yard_;
        return head(items, tokens);
    }
    if (take_all(items, true)) drop_marks();
}

void LineReader::complain_about(const Subject& subject, const std::vector<Item>& items) {
    for (const std::string& name : subject.unknown) {
        const std::string near = lexicon_.nearest_hive(lower(name));
        Diagnostic d{"unknown-hive", Severity::error, span(items), fmt::format("there is no hive '{}'", name), "not set up", {}, {}};
        d.hint = near.empty() ? fmt::format("set it up, for example `hive {} at mill: deep`, or say how it came: hived, split, bought", name)
                              : fmt::format("did you mean '{}'? else set it up, for example `hive {} at mill: deep`", near, name);
        journal_.diagnostics.push_back(std::move(d));
    }
    complained_ = true;
}

LineReader::Subject LineReader::take_subject(std::vector<Item>& items) {
    Subject found;
    for (std::size_t i = 0; i < items.size();) {
        if (items[i].what != What::hives || items[i].role != Item::Role::none) { ++i; continue; }
        found.hives.insert(found.hives.end(), items[i].hives.begin(), items[i].hives.end());
        found.unknown.insert(found.unknown.end(), items[i].unknown_hives.begin(), items[i].unknown_hives.end());
        if (!items[i].unknown_hives.empty()) {
            Subject unknown;
            unknown.unknown = items[i].unknown_hives;
            complain_about(unknown, {items[i]});
        }
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
    }
    return found;
}

/// `moved top super to h9`, where there is no h9: said, and the clause kept as written.
bool LineReader::unknown_other(const std::vector<Item>& items) {
    for (const Item& i : items) {
        if (i.what != What::hives || i.role == Item::Role::none || i.unknown_hives.empty()) continue;
        Subject other;
        other.unknown = i.unknown_hives;
        complain_about(other, {i});
        return true;
    }
    return false;
}

bool LineReader::only_hives(const std::vector<Item>& items) const {
    bool any = false;
    for (const Item& i : items) {
        if (i.what == What::hives) any = true;
        else if (!i.idle() && !i.has(Class::preposition) && !i.is("on")) return false;
    }
    return any;
}

void LineReader::read(const std::vector<Token>& tokens, std::uint32_t file, LineContext& context, const std::vector<RawFact>& visit, std::vector<RawFact>& out) {
    visit_ = &visit;
    file_ = file, context_ = &context, out_ = &out;
    subject_ = {};
    subject_.hives = context.hives, subject_.all = context.all, subject_.but = context.but;
    box_ = {};
    line_yard_ = no_yard;
    complained_ = cells_said_ = brood_said_ = false;
    first_of_line_ = out.size();
    std::vector<Item> items = itemise(tokens, item_context());
    head(items, tokens);
    if (subject_.said()) context.hives = subject_.hives, context.all = subject_.all, context.but = subject_.but;
    const bool nothing_else = std::all_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::stop; });
    if (nothing_else) return;
    std::vector<Item> part;
    for (Item& item : items) {
        if (!sentence_end(item)) { part.push_back(std::move(item)); continue; }
        sentence(std::move(part));
        part.clear();
    }
    sentence(std::move(part));
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

/// The plan, condition or bare imperative that governs a clause, if any.
bool LineReader::governed(const std::vector<std::vector<Item>>& clauses, std::size_t at, std::string& because, bool& todo) const {
    const std::vector<Item>& items = clauses[at];
    bool first_word = true;
    for (const Item& i : items) {
        if (i.what == What::stop) continue;
        const std::string surface = lower(journal_.sources.text({file_, i.begin, i.end}));
        // they needed room, so added a super
        const bool met = surface == "needed" && std::any_of(clauses.begin() + static_cast<std::ptrdiff_t>(at), clauses.end(), [](const std::vector<Item>& c) { return std::any_of(c.begin(), c.end(), [](const Item& k) { return k.is("added") || k.is("taken off"); }); });
        if (met) return false;
        if (i.has(Class::plan) || i.has(Class::condition)) {
            because = surface;
            const bool negated = std::any_of(items.begin(), items.end(), [](const Item& k) { return k.has(Class::negation); });
            const bool timed = i.is("when");
            todo = !timed && !wishful(surface) && !(negated && (surface.starts_with("need") || surface == "will"));
            return true;
        }
        if (first_word && i.has(Class::order) && !surface.ends_with('s')) {
            because = surface;
            todo = true;
            return true;
        }
        if (!i.has(Class::filler) && !i.has(Class::link)) first_word = false;
    }
    return false;
}

/// `excluder off because they won't go through`: the reason is a clause of its own. Not in `all capped but one`.
bool LineReader::gives_reason(const std::vector<Item>& items, std::size_t at) const {
    static constexpr std::array<std::string_view, 9> words = {"because", "b/c", "cos", "since they", "as they", "but", "though", "although", "while"};
    const Item& item = items[at];
    if (item.what != What::term || !item.is("but") || at == 0 || at + 1 >= items.size()) return false;
    const std::string surface = lower(journal_.sources.text({file_, item.begin, item.end}));
    const Item& next = items[at + 1];
    const bool amount = next.what == What::value || next.what == What::hives || next.has(Class::count) || next.is("outside frames") || next.is("the") ;
    return !(surface == "but" && amount) && std::find(words.begin(), words.end(), surface) != words.end();
}

void LineReader::sentence(std::vector<Item> items) {
    last_ = {};
    shed_.clear();
    std::vector<std::vector<Item>> clauses(1);
    for (Item& item : items) {
        if (clause_end(item) || gives_reason(items, static_cast<std::size_t>(&item - items.data()))) {
            if (!clauses.back().empty()) clauses.emplace_back();
            continue;
        }
        clauses.back().push_back(std::move(item));
    }
    if (clauses.back().empty()) clauses.pop_back();
    hives_at_the_end(clauses);
    doubts_join_what_they_doubt(clauses);
    for (std::size_t c = 0; c < clauses.size(); ++c) {
        if (const std::size_t parts = parts_of_a_whole(clauses, c)) {
            c += parts - 1;
            continue;
        }
        std::string because;
        bool todo = false;
        if (!governed(clauses, c, because, todo)) {
            clause(std::move(clauses[c]));
            continue;
        }
        // It governs to the end of its sentence.
        std::vector<Item> rest;
        for (std::size_t k = c; k < clauses.size(); ++k) rest.insert(rest.end(), clauses[k].begin(), clauses[k].end());
        std::vector<Item> copy = rest;
        if (!subject_.said()) {
            // "check h3 on Sunday": the hive named in it is what it is about.
            chunk(copy, item_context());
            Subject s = take_subject(copy);
            if (s.said()) subject_ = s;
        }
        keep_words(rest, todo ? Kind::todo : Kind::remark, eventful(rest) ? Reading::Outcome::put_out : todo ? Reading::Outcome::todo : Reading::Outcome::remark, because);
        return;
    }
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

/// `cleared h1-h4, 7 supers home`: seven from each, or seven together?
bool LineReader::each_or_together(const Solution& solution, const std::vector<Item>& items) {
    if (solution.candidates.empty()) return false;
    const Fact& f = solution.candidates.front().fact;
    const bool several = subject_.hives.size() > 1 || subject_.all || subject_.rest || subject_.both;
    const bool counted = f.kind == Kind::super_off && f.count > 0;
    const bool weighed = f.kind == Kind::super_off && f.value.said();
    if (!several || !(counted || weighed)) return false;
    for (const Item& i : items) {
        const std::string surface = lower(journal_.sources.text({file_, i.begin, i.end}));
        if (i.what == What::sign || surface == "each" || surface == "apiece" || surface == "each of them") return false;
    }
    keep_words(items, Kind::remark, Reading::Outcome::ambiguous, "");
    out_->back().fact.detail = "flagged";
    const std::string said(journal_.sources.text(span(items)));
    journal_.diagnostics.push_back({"each-or-together", Severity::error, span(items), fmt::format("'{}': from each of the hives, or together?", said), "which one?",
                                    "add `each`, or write a line for each hive", {}});
    return true;
}

/// More than the whole, more frames than there are: said plainly, whatever else the clause says.
bool LineReader::impossible_share(const std::vector<Item>& items) {
    std::vector<Item> joined = items;
    chunk(joined, item_context());
    for (const Item& i : joined) {
        const bool share = i.what == What::value && i.value.dimension == Dimension::share && i.value.amount > 1000;
        const bool frames = share && i.value.of > 0;
        if (!share) continue;
        const Span where{file_, i.begin, i.end};
        const std::string said(journal_.sources.text(where));
        journal_.diagnostics.push_back({frames ? "too-many-frames" : "share-over-100", Severity::error, where,
                                        frames ? fmt::format("'{}' is more frames than there are", said) : fmt::format("'{}' is more than the whole", said), {},
                                        frames ? "write how many of the frames in the box, for example `7 of 9 frames`" : "write a share from 0% to 100%", {}});
        return true;
    }
    return false;
}

/// A bare number where a weight or a volume stands: kg or lb matters.
bool LineReader::unit_missing(const std::vector<Item>& items) {
    static constexpr std::array<std::string_view, 9> weighty = {"weighed", "scale", "extracted", "fed", "drained", "wax", "syrup", "fondant", "sugar"};
    const bool asks = std::any_of(items.begin(), items.end(), [](const Item& i) { return std::any_of(weighty.begin(), weighty.end(), [&](auto w) { return i.is(w); }); });
    if (!asks) return false;
    for (const Item& i : items) {
        if (i.what != What::value || i.value.unit != Unit::piece) continue;
        const Span where{file_, i.begin, i.end};
        const std::string said(journal_.sources.text(where));
        journal_.diagnostics.push_back({"no-unit", Severity::error, where, fmt::format("'{}' of what?", said), "a number without its unit",
                                        fmt::format("write the unit, for example `{} kg`, `{} lb` or `{} L`", said, said, said), {}});
        return true;
    }
    return false;
}

/// A word or abbreviation that means one thing to some and another to others: both said.
bool LineReader::two_meanings(const std::vector<Item>& items) {
    for (const Item& i : items) {
        const grammar::TwoMeanings* row = meanings_of(i);
        if (!row) continue;
        const Span where{file_, i.begin, i.end};
        journal_.diagnostics.push_back({"two-meanings", Severity::warning, where, fmt::format("'{}' can mean {}", journal_.sources.text(where), row->meanings), "which one?",
                                        "write it in full, or put the remark in quotes", {}});
        return true;
    }
    return false;
}

void LineReader::unread(const std::vector<Item>& items) {
    const Span where = span(items);
    const bool negated = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::negation); });
    const bool flagged = std::any_of(items.begin(), items.end(), [&](const Item& i) { return smells_of_data(i, lexicon_) || meanings_of(i); }) || (!negated && tells_of_a_deed(items));
    keep_words(items, Kind::remark, negated && eventful(items) ? Reading::Outcome::put_out : Reading::Outcome::remark, negated && eventful(items) ? "not" : "");
    if (!flagged) return;
    out_->back().fact.detail = "flagged";
    if (unit_missing(items) || two_meanings(items)) return;
    Diagnostic d{"not-understood", Severity::warning, where, fmt::format("not understood: '{}'", journal_.sources.text(where)), "kept as a remark",
                 "say it in the words of `waxtab words`, or put it in quotes if it is only a remark", {}};
    for (const Item& i : items) {
        if (i.what != What::unknown) continue;
        const std::string near = lexicon_.nearest(i.text);
        if (near.empty()) continue;
        d.span = {file_, i.begin, i.end};
        d.code = "unknown-word";
        d.label = fmt::format("did you mean '{}'?", near);
        d.hint = fmt::format("write '{}', or put the remark in quotes", near);
        break;
    }
    journal_.diagnostics.push_back(std::move(d));
}

/// `put clearer boards on, hives 2, 5 and 9`: the hives said last are those of the whole sentence.
void LineReader::hives_at_the_end(std::vector<std::vector<Item>>& clauses) {
    if (subject_.said() || clauses.size() < 2 || !only_hives(clauses.back())) return;
    for (std::size_t c = 0; c + 1 < clauses.size(); ++c)
        if (std::any_of(clauses[c].begin(), clauses[c].end(), [](const Item& i) { return i.what == What::hives; })) return;
    for (const Item& i : clauses.back()) {
        if (i.what != What::hives) continue;
        subject_.hives.insert(subject_.hives.end(), i.hives.begin(), i.hives.end());
        if (!i.unknown_hives.empty()) subject_.unknown = i.unknown_hives, complain_about(subject_, {i});
    }
    clauses.pop_back();
}

/// `took excluder out of 6`, `requeened 7`, `split 3 into 11`: bare numbers that can only be hives.
bool LineReader::bare_hives(std::vector<Item>& items) const {
    bool any = false;
    // opened 1 thru 6
    for (std::size_t i = 1; i + 3 == items.size(); ++i) {
        const auto whole = [](const Item& k) { return k.what == What::value && k.value.unit == Unit::piece && k.value.amount % 1000 == 0 ? static_cast<int>(k.value.amount / 1000) : 0; };
        const std::string between = lower(journal_.sources.text({file_, items[i + 1].begin, items[i + 1].end}));
        const int first = whole(items[i]), last = whole(items[i + 2]);
        if (!items[i - 1].has(Class::done) || (between != "thru" && between != "through" && between != "to") || first <= 0 || last <= first || last - first > 200) continue;
        std::vector<HiveId> range;
        for (int n = first; n <= last; ++n)
            if (const HiveId id = lexicon_.hive(std::to_string(n)); id != no_hive) range.push_back(id);
        if (range.size() != static_cast<std::size_t>(last - first + 1)) continue;
        items[i].what = What::hives;
        items[i].hives = range;
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 1, items.end());
        return true;
    }
    for (std::size_t i = 1; i < items.size(); ++i) {
        Item& number = items[i];
        if (number.what != What::value || number.value.unit != Unit::piece || number.value.low != number.value.high || number.value.amount % 1000 != 0) continue;
        Item& before = items[i - 1];
        const bool preposition = before.is("off") || before.is("from") || before.is("of") || before.is("on") || before.is("across") || before.is("to") || before.is("into") || before.is("with") || before.is("in");
        const bool ends = i + 1 == items.size() || items[i + 1].what == What::hives || items[i + 1].has(Class::preposition) || items[i + 1].has(Class::link);
        if (!ends || !(preposition || before.has(Class::done))) continue;
        const HiveId id = lexicon_.hive(std::to_string(number.value.amount / 1000));
        if (id == no_hive) continue;
        number.what = What::hives;
        number.hives = {id};
        any = true;
        if (!preposition) continue;
        const bool verb = std::any_of(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(i) - 1, [](const Item& k) { return k.has(Class::done) || k.what == What::sign; });
        if (before.is("from")) number.role = Item::Role::from;
        else if (before.is("to")) number.role = Item::Role::to;
        else if (before.is("into")) number.role = Item::Role::into;
        else if (before.is("with")) number.role = Item::Role::with;
        else if (before.has(Class::done) && !verb) continue;
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i--) - 1);
    }
    return any;
}

/// `took 2 supers from h3`: the hive after from or to is the one spoken of.
std::vector<LineReader::Solution> LineReader::about_the_named(const std::vector<Item>& items) {
    std::vector<Item> demoted;
    Subject from;
    for (const Item& i : items) {
        if (i.what == What::hives && from.hives.empty()) from.hives = i.hives, from.unknown = i.unknown_hives;
        else demoted.push_back(i);
    }
    if (!from.said()) return {};
    subject_ = from;
    return solve(demoted);
}

/// What `same as` does not copy: what was counted or marked there is not so here.
bool copied_by_same(const Fact& f) {
    switch (f.kind) {
        case Kind::stings: case Kind::queen_marked: case Kind::queen_mother: case Kind::remark: case Kind::todo: case Kind::box_labelled:
        case Kind::hive_moved: case Kind::hive_renamed: case Kind::hive_split: case Kind::nuc_made: case Kind::hive_united: case Kind::swarm_hived:
        case Kind::hive_bought: case Kind::super_moved: case Kind::frames_moved: case Kind::extracted: return false;
        default: return true;
    }
}

/// `h8 same as h3`: what this visit noted of the other hive so far. `ditto` names no hive, so it is asked.
bool LineReader::same_again(const std::vector<Item>& items) {
    if (items.empty() || !items.front().is("same as")) return false;
    const Span where = span(items);
    const bool named = items.size() == 2 && items[1].what == What::hives && items[1].hives.size() == 1;
    // ditto: the one hive of the line above
    const std::string surface = lower(journal_.sources.text(where));
    const bool above = items.size() == 1 && (surface == "ditto" || surface == "as above" || surface == "same again") && !visit_->empty() && visit_->back().hives.size() == 1 &&
                       visit_->back().fact.noted == context_->noted && visit_->back().fact.span.file == file_ && subject_.hives.size() == 1 && visit_->back().hives != subject_.hives;
    if ((!named && !above) || subject_.hives.empty()) {
        keep_words(items, Kind::remark, Reading::Outcome::remark, "");
        out_->back().fact.detail = "flagged";
        journal_.diagnostics.push_back({"same-as-what", Severity::warning, where, fmt::format("'{}': the same as which hive?", journal_.sources.text(where)), "kept as a remark",
                                        "name the hive, for example `h4 same as h3`", {}});
        return true;
    }
    const HiveId from = above ? visit_->back().hives.front() : items[1].hives.front();
    std::vector<RawFact> copies;
    const auto gather = [&](const std::vector<RawFact>& noted) {
        for (const RawFact& r : noted) {
            const bool there = r.fact.noted == context_->noted && r.fact.span.file == file_ && std::find(r.hives.begin(), r.hives.end(), from) != r.hives.end();
            if (there && copied_by_same(r.fact)) copies.push_back(r);
        }
    };
    gather(*visit_);
    gather(*out_);
    if (copies.empty()) {
        keep_words(items, Kind::remark, Reading::Outcome::remark, "");
        out_->back().fact.detail = "flagged";
        journal_.diagnostics.push_back({"same-as-what", Severity::warning, where, fmt::format("nothing stands above about {} on this visit", journal_.hive_name(from)), "kept as a remark",
                                        "write what was seen", {}});
        return true;
    }
    if (above)
        journal_.diagnostics.push_back({"same-as-above", Severity::note, where, fmt::format("'{}' is read as the same as {}, the hive of the line above", surface, journal_.hive_name(from)), {},
                                        fmt::format("write `same as {}` if so", journal_.hive_name(from)), {}});
    for (RawFact& r : copies) {
        r.hives = subject_.hives;
        r.fact.span = where;
        if (r.fact.kind == Kind::queen) r.fact.text.clear();
        Reading reading;
        reading.outcome = Reading::Outcome::facts;
        put(std::move(r), std::move(reading));
    }
    return true;
}

/// `super added, I think`: a doubt after a comma is about what was said before it, one before it about what follows.
void LineReader::doubts_join_what_they_doubt(std::vector<std::vector<Item>>& clauses) const {
    const auto only_doubt = [](const std::vector<Item>& clause) {
        return std::any_of(clause.begin(), clause.end(), [](const Item& i) { return i.has(Class::doubt) || stop(i, "?"); }) &&
               std::all_of(clause.begin(), clause.end(), [](const Item& i) { return i.idle() || i.has(Class::doubt) || i.has(Class::about); });
    };
    for (std::size_t c = 0; c < clauses.size() && clauses.size() > 1;) {
        if (!only_doubt(clauses[c])) { ++c; continue; }
        std::vector<Item> doubt = std::move(clauses[c]);
        clauses.erase(clauses.begin() + static_cast<std::ptrdiff_t>(c));
        std::vector<Item>& whose = clauses[c > 0 ? c - 1 : 0];
        whose.insert(c > 0 ? whose.end() : whose.begin(), doubt.begin(), doubt.end());
    }
}

/// A guess or a question about something that happened: kept as it is; with a number in it, said so.
void LineReader::in_doubt(const std::vector<Item>& items, const std::string& doubt) {
    keep_words(items, Kind::remark, Reading::Outcome::put_out, doubt);
    if (std::none_of(items.begin(), items.end(), holds_number)) return;
    out_->back().fact.detail = "flagged";
    const Span where = span(items);
    journal_.diagnostics.push_back({"in-doubt", Severity::warning, where, fmt::format("'{}' is a guess, and kept as a remark", journal_.sources.text(where)), fmt::format("because of '{}'", doubt),
                                    fmt::format("leave out '{}' if it is so, or put the remark in quotes", doubt), {}});
}

void LineReader::clause(std::vector<Item> items) {
    while (!items.empty() && items.front().what == What::stop) items.erase(items.begin());
    // #3 & #8 same: super 3/4
    if (items.size() > 2 && items[0].is("same as") && stop(items[1], ":")) items.erase(items.begin(), items.begin() + 2);
    if (items.empty()) return;
    const std::vector<Item> written = items;
    if (items.size() == 1 && items.front().what == What::quoted && last_.set && last_.out < out_->size() && goes_on(out_->back().fact.kind) && join_last(items)) return;
    if (items.size() == 1 && items.front().what == What::quoted) return keep_words(items, Kind::remark, Reading::Outcome::remark, "");
    if (only_hives(items)) {
        // "put clearer boards on, hives 2, 5 and 9": the hives of what was just said
        Subject late;
        for (const Item& i : items)
            if (i.what == What::hives) late.hives.insert(late.hives.end(), i.hives.begin(), i.hives.end()), late.unknown = i.unknown_hives;
        if (last_.set && items.front().has(Class::preposition) && join_last(items)) return;
        if (!subject_.said()) return void(subject_ = late);
        if (last_.set && join_last(items)) return;
        return keep_words(written, Kind::remark, Reading::Outcome::remark, "");
    }
    // last seen unmarked 14/5: of another day, and no more than that
    if (std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("last seen"); })) return keep_words(items, Kind::remark, Reading::Outcome::put_out, "last seen");
    std::string doubt;
    std::optional<Day> happened;
    bool since = false;
    for (std::size_t i = 0; i < items.size();) {
        const bool question = stop(items[i], "?");
        if (question || (items[i].has(Class::doubt) && items[i].words.size() == 1)) {
            doubt = question ? "?" : lower(journal_.sources.text({file_, items[i].begin, items[i].end}));
            items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
        } else if (items[i].what == What::day && items[i].text != "due" && !std::any_of(items.begin(), items.end(), [](const Item& k) { return k.is("best before"); })) {
            happened = items[i].day;
            since = since || items[i].since;
            items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
        } else {
            ++i;
        }
    }
    std::vector<Item> spoken = written;
    if (!subject_.said() && take_all(items, false)) spoken = items;
    if (items.size() > 1 && (subject_.said() || items.front().is("sold")) && lower(journal_.sources.text({file_, items.back().begin, items.back().end})) == "each") items.pop_back();
    chunk(items, item_context());
    if (unknown_other(items)) return keep_words(written, Kind::remark, Reading::Outcome::remark, "");
    std::vector<Item> without = items;
    const Subject own = take_subject(without);
    const Subject before = subject_;
    if (own.said() && !subject_.said()) subject_ = own;
    std::vector<Solution> ways = own.said() && before.said() ? solve(items) : solve(without);
    if (ways.empty() && own.said() && before.said() && before.hives != own.hives) {
        // A line about one hive that goes on to speak of another.
        subject_ = own;
        ways = solve(without);
        if (ways.empty()) subject_ = before;
    }
    if (impossible_share(written)) return keep_words(written, Kind::remark, Reading::Outcome::remark, "");
    if (!items.empty() && (items.front().is("shed") || (items.size() > 1 && items[1].is("shed")))) {
        for (const Item& i : items)
            if (i.is("shed")) shed_ = {i};
    } else if (ways.empty() && !shed_.empty()) {
        without.insert(without.begin(), shed_.front());
        ways = solve(without);
    }
    if (ways.empty() && !subject_.said()) {
        ways = about_the_named(without);
    }
    if (ways.empty()) {
        std::vector<Item> named = without;
        if (bare_hives(named)) {
            const Subject found = take_subject(named);
            std::vector<Solution> read = solve(named);
            if (read.empty() && !subject_.said() && !found.said()) read = about_the_named(named);
            if (read.size() == 1 && (!found.said() || !subject_.said())) {
                if (found.said()) subject_ = found;
                ways = std::move(read);
            }
        }
    }
    if (ways.empty() && same_again(written)) return;
    const auto events = [&] { return std::any_of(ways.front().candidates.begin(), ways.front().candidates.end(), [](const Candidate& c) { return is_event(c.fact.kind); }); };
    if (ways.size() == 1 && !doubt.empty()) {
        const bool all_soft = std::all_of(ways.front().candidates.begin(), ways.front().candidates.end(), [](const Candidate& c) { return soft(c.fact.kind); });
        if (!all_soft) return in_doubt(written, doubt);
        for (Candidate& c : ways.front().candidates) c.fact.value.about = true;
    }
    if (ways.size() == 1 && since && events()) return keep_words(written, Kind::remark, Reading::Outcome::put_out, "since");
    if (ways.empty() && several_shares(without)) return;
    const bool may_join = last_.set && doubt.empty() && last_.out < out_->size() && (ways.empty() || goes_on(out_->back().fact.kind));
    if (may_join && join_last(written)) return;
    if (ways.size() == 1 && each_or_together(ways.front(), written)) return;
    if (ways.size() == 1) {
        last_ = {own.said() || subject_.hives != before.hives ? without_hives(spoken) : spoken, out_->size(), journal_.readings.size(), journal_.diagnostics.size(), true};
        return take(ways.front(), happened);
    }
    if (ways.empty()) {
        last_ = {written, out_->size(), journal_.readings.size(), journal_.diagnostics.size(), true};
        return unread(written);
    }
    keep_words(written, Kind::remark, Reading::Outcome::ambiguous, "");
    out_->back().fact.detail = "flagged";
    Diagnostic d{"two-readings", Severity::error, span(written), fmt::format("'{}' can be read in two ways", journal_.sources.text(span(written))), "which one?", {}, {}};
    const auto say = [&](const Solution& s) {
        std::string said;
        for (const Candidate& c : s.candidates) {
            Fact f = c.fact;
            if (f.hive == no_hive && subject_.hives.size() == 1 && needs_hive(c)) f.hive = subject_.hives.front();
            f.happened = f.noted = context_->noted;
            said += (said.empty() ? "" : ", ") + short_form(journal_, f);
        }
        return said;
    };
    d.hint = fmt::format("write `{}` or `{}`", say(ways[0]), say(ways[1]));
    journal_.diagnostics.push_back(std::move(d));
}

}  // namespace waxtab
