#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include <fmt/format.h>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// Which hives a line or a clause is about.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

void take_out(std::vector<HiveId>& hives, const std::vector<HiveId>& without) {
    std::erase_if(hives, [&](HiveId h) { return std::find(without.begin(), without.end(), h) != without.end(); });
}

}  // namespace

/// `h1 and Low wall, 1 gallon each`: a hive nobody set up.
void LineReader::strangers_in_the_list(std::vector<Item>& items) {
    if (items.size() < 3 || !items[0].is("and")) return;
    std::size_t end = 1;
    while (end < items.size() && end < 4 && (items[end].what == What::unknown || items[end].what == What::term)) ++end;
    if (std::none_of(items.begin() + 1, items.begin() + static_cast<std::ptrdiff_t>(end), [](const Item& i) { return i.what == What::unknown; })) return;
    const auto capital = [&](const Item& i) { const char c = text()[i.begin]; return c >= 'A' && c <= 'Z'; };
    if (end == 1 || end >= items.size() || items[end].what != What::stop || items[end].text == "." || !capital(items[1])) return;
    const Span where = span({items.begin() + 1, items.begin() + static_cast<std::ptrdiff_t>(end)});
    subject_.unknown = {std::string(journal_.sources.text(where))};
    complain_about(subject_, {items.begin() + 1, items.begin() + static_cast<std::ptrdiff_t>(end)});
    items.erase(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(end));
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
        numbered_ = text()[lead.begin] >= '0' && text()[lead.begin] <= '9';
        subject_.hives = lead.hives;
        subject_.unknown = lead.unknown_hives;
        if (!lead.unknown_hives.empty()) complain_about(subject_, {lead});
        items.erase(items.begin());
        // h1-h9 but not h6: ...
        const bool but_not = items.size() > 2 && items[0].is("but") && items[1].has(Class::negation) && items[2].what == What::hives;
        const bool but = items.size() > 1 && items[0].is("all but") && items[1].what == What::hives;
        if (but_not || but) {
            take_out(subject_.hives, items[but_not ? 2 : 1].hives);
            items.erase(items.begin(), items.begin() + (but_not ? 3 : 2));
        }
        strangers_in_the_list(items);
        if (items.size() > 1 && items.front().what == What::yard) line_yard_ = items.front().yard, items.erase(items.begin());   // h5 & h6 mill: ...
        drop_marks();
        return;
    }
    if (begins_with_numbers(items)) return;
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

/// `fed all 2 L but not h3`: all but that one.
void LineReader::but_not_these(std::vector<Item>& items) const {
    bool group = false;
    for (std::size_t i = 0; i + 2 < items.size(); ++i) {
        group = group || says_group(items[i]);
        const bool ends = i + 3 == items.size() || items[i + 3].what == What::stop;
        if (!group || !ends || !items[i].is("but") || !items[i + 1].has(Class::negation) || items[i + 2].what != What::hives) continue;
        items[i].words = {table_word("all but", Class::preposition)};
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    }
}

/// `hives 1-9 but not 6: calm`, `hives 1-5 except 3 and 4`: takes those left out by their numbers out of the list before them.
void LineReader::but_not_numbers(std::vector<Item>& items) const {
    if (items.size() < 3 || items[0].what != What::hives || items[0].hives.size() < 2) return;
    const bool but = items[1].is("all but") || (items[1].is("but") && (items[2].has(Class::negation) || bare_number(items[2])));
    std::size_t end = but && items[2].has(Class::negation) ? 3 : 2;
    std::vector<HiveId> left_out;
    for (; but && end < items.size() && (bare_number(items[end]) || (items[end].is("and") && !left_out.empty())); ++end)
        if (bare_number(items[end])) left_out.push_back(hive_numbered(items[end]));
    const auto listed = [&](HiveId id) { return id != no_hive && std::find(items[0].hives.begin(), items[0].hives.end(), id) != items[0].hives.end(); };
    const bool alone = end == items.size() || items[end].what == What::stop;
    if (left_out.empty() || !alone || !std::all_of(left_out.begin(), left_out.end(), listed)) return;
    take_out(items[0].hives, left_out);
    items.erase(items.begin() + 1, items.begin() + static_cast<std::ptrdiff_t>(end));
}

/// `everyone fed 2 L except h3`: left out at the end of the first clause. What follows in that sentence, which may be of
/// either, is taken out and given back.
std::vector<Item> LineReader::exception_at_the_end(std::vector<Item>& items) {
    const auto end = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.what == What::stop; });
    if (!(subject_.all || subject_.several()) || end - items.begin() < 3 || !((end - 2)->is("all but") || (end - 2)->is("but")) || (end - 1)->what != What::hives || !(end - 1)->unknown_hives.empty()) return {};
    const std::vector<HiveId>& without = (end - 1)->hives;
    subject_.but.insert(subject_.but.end(), without.begin(), without.end());
    take_out(subject_.hives, without);
    const auto sentence_ends = std::find_if(end, items.end(), sentence_end);
    std::vector<Item> rest;
    if (end != sentence_ends) rest.assign(end + 1, sentence_ends);
    items.erase(end - 2, sentence_ends);
    return rest;
}

/// `h1 - super full. h2 - super half full. h3, cut comb super on`: each sentence with the hive it is about.
void LineReader::head_of_sentence(std::vector<Item>& items) {
    // hived it as s1; 3 left with 2 sealed cells
    const bool of_one = items.size() > 2 && out_->size() > first_of_line_ && called_by_number(items[0]) != no_hive && ((items[1].is("left") && items[2].is("with")) || one_does(surface(items[1])));
    if (of_one) take_as_hive(items[0]);
    // 1 and 2 calm; 3 queen seen: in a line that began so
    const bool goes_on = numbered_ && !of_one && items.size() > 1 && out_->size() > first_of_line_ && called_by_number(items[0]) != no_hive;
    if (goes_on && !countable(items[1]) && (!may_count(items, 0) || items[1].is("queen") || tells_how_it_is(items[1]))) take_as_hive(items[0]);
    if (!headed_ || items.size() < 3 || items[0].what != What::hives || items[0].role != Item::Role::none || !(stop(items[1], "-") || stop(items[1], ","))) return;
    subject_ = {};
    subject_.hives = items[0].hives, subject_.unknown = items[0].unknown_hives;
    box_ = {};
    if (!subject_.unknown.empty()) complain_about(subject_, {items[0]});
    items.erase(items.begin(), items.begin() + 2);
}

/// `h1 h2 h3: queen seen in h2, a super on each`: each of the hives the line began with.
void LineReader::each_of_the_head(const std::vector<Item>& items) {
    const bool narrowed = head_.several() && subject_.hives.size() == 1 && head_.hives != subject_.hives;
    if (narrowed && std::any_of(items.begin(), items.end(), [&](const Item& i) { return says_each(i); })) subject_ = head_, box_ = {};
}

/// `put a super on h1 and one on h2`, `and another on h2`, `and on h2`: as much on either.
void LineReader::one_there_too(std::vector<std::vector<Item>>& clauses) const {
    const auto one_more = [&](const Item& k) { return (k.has(Class::count) && k.word(Class::count)->number == 1) || says_another(k); };
    for (std::vector<Item>& items : clauses)
        for (std::size_t i = 1; i + 3 < items.size(); ++i) {
            const auto counts = [](const Item& k) { return k.has(Class::count) || k.what == What::value; };
            std::size_t there = i + 2;
            while (there < items.size() && (one_more(items[there]) || items[there].is("on") || items[there].is("to"))) ++there;
            const bool one = items[i].what == What::hives && items[i + 1].is("and") && there > i + 2;
            if (!one || there + 1 != items.size() || items[there].what != What::hives || std::any_of(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(i), counts)) continue;
            items[i].hives.insert(items[i].hives.end(), items[there].hives.begin(), items[there].hives.end());
            items[i].unknown_hives.insert(items[i].unknown_hives.end(), items[there].unknown_hives.begin(), items[there].unknown_hives.end());
            items[i].end = items[there].end;
            items.resize(i + 1);
        }
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

bool LineReader::only_hives(const std::vector<Item>& items) const {
    bool any = false;
    for (const Item& i : items) {
        if (i.what == What::hives) any = true;
        else if (!i.idle() && !i.has(Class::preposition) && !i.is("on")) return false;
    }
    return any;
}

/// `put clearer boards on, hives 2, 5 and 9`, `thymol on, all but n1`: the hives said last are those of the whole sentence.
void LineReader::hives_at_the_end(std::vector<std::vector<Item>>& clauses) {
    if (subject_.said() || clauses.size() < 2) return;
    for (std::size_t c = 0; c + 1 < clauses.size(); ++c)
        if (std::any_of(clauses[c].begin(), clauses[c].end(), [](const Item& i) { return i.what == What::hives; })) return;
    std::vector<Item> group = clauses.back();
    if (take_all(group, true)) {
        if (std::all_of(group.begin(), group.end(), [](const Item& i) { return i.idle(); })) clauses.pop_back();
        else subject_ = {};
        return;
    }
    if (!only_hives(clauses.back())) return;
    for (const Item& i : clauses.back()) {
        if (i.what != What::hives) continue;
        subject_.hives.insert(subject_.hives.end(), i.hives.begin(), i.hives.end());
        if (!i.unknown_hives.empty()) subject_.unknown = i.unknown_hives, complain_about(subject_, {i});
    }
    clauses.pop_back();
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
    const Subject before = std::exchange(subject_, from);
    std::vector<Solution> ways = solve(demoted);
    if (ways.empty()) subject_ = before;
    return ways;
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

}  // namespace waxtab
