#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include <fmt/format.h>

#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// Which hives a line or a clause is about.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

/// What is said of a colony and is nothing that is counted: `boiling over`, `looks queenless`, `is calm`.
bool tells_how_it_is(const Item& i) {
    static constexpr std::array<std::string_view, 15> states = {"strong", "weak", "calm", "lively", "defensive", "queenright", "queenless", "roomy", "crowded", "bearding", "backfilled", "starving",
        "drone layer", "queen seen", "queen not seen"};
    return i.what == What::term && !i.counted && std::any_of(states.begin(), states.end(), [&](std::string_view s) { return i.is(s); });
}

/// Goes with one hive, not with a number of them.
bool one_does(const std::string& verb) {
    static constexpr std::array<std::string_view, 9> verbs = {"is", "was", "has", "had", "looks", "seems", "needs", "got", "feels"};
    return std::find(verbs.begin(), verbs.end(), verb) != verbs.end();
}

/// More is said than how many are so: not `2 strong`, nor `2 strong, 1 weak`.
bool no_tally(const std::vector<Item>& items) {
    bool more = false;
    for (std::size_t i = 2; i + 1 < items.size(); ++i) {
        if (items[i].what != What::stop) continue;
        more = true;
        if (i + 2 < items.size() && bare_number(items[i + 1]) && tells_how_it_is(items[i + 2])) return false;
    }
    return more;
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
            const std::vector<HiveId> without = items[but_not ? 2 : 1].hives;
            std::erase_if(subject_.hives, [&](HiveId h) { return std::find(without.begin(), without.end(), h) != without.end(); });
            items.erase(items.begin(), items.begin() + (but_not ? 3 : 2));
        }
        strangers_in_the_list(items);
        if (items.size() > 1 && items.front().what == What::yard) line_yard_ = items.front().yard, items.erase(items.begin());   // h5 & h6 mill: ...
        drop_marks();
        return;
    }
    // 6 looks queenless, 5 united with 3: a bare number that counts nothing
    const auto goes_with_one = [&] { return one_does(surface(items[1])) || (tells_how_it_is(items[1]) && no_tally(items)) || (items.size() > 2 && (items[1].is("united") || items[1].is("renamed"))); };
    if (items.size() > 1 && context_->hives.empty() && !context_->all && bare_number(lead) && goes_with_one()) {
        if (const HiveId id = lexicon_.hive(tokens.front().text); id != no_hive) {
            subject_.hives = {id};
            items.erase(items.begin());
            return;
        }
    }
    numbered_ = bare_list(items);
    if (numbered_ || numbers_before_commas(items)) return;
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

/// `everyone fed 2 L except h3`: left out at the end of the first clause. What follows in that sentence, which may be of
/// either, is taken out and given back.
std::vector<Item> LineReader::exception_at_the_end(std::vector<Item>& items) {
    const auto end = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.what == What::stop; });
    if (!(subject_.all || subject_.several()) || end - items.begin() < 3 || !((end - 2)->is("all but") || (end - 2)->is("but")) || (end - 1)->what != What::hives || !(end - 1)->unknown_hives.empty()) return {};
    const std::vector<HiveId> without = (end - 1)->hives;
    subject_.but.insert(subject_.but.end(), without.begin(), without.end());
    std::erase_if(subject_.hives, [&](HiveId h) { return std::find(without.begin(), without.end(), h) != without.end(); });
    const auto sentence_ends = std::find_if(end, items.end(), sentence_end);
    std::vector<Item> rest;
    if (end != sentence_ends) rest.assign(end + 1, sentence_ends);
    items.erase(end - 2, sentence_ends);
    return rest;
}

/// The hive a bare whole number names, none where it names none.
HiveId LineReader::hive_numbered(const Item& i) const {
    const bool whole = bare_number(i) && i.value.low == i.value.high && i.value.amount % 1000 == 0 && i.text != "word";
    return whole ? lexicon_.hive(std::to_string(i.value.amount / 1000)) : no_hive;
}

/// `2, 4, excluder on`: numbers of hives, each with its comma, at the head of a line. True when it begins so.
bool LineReader::numbers_before_commas(std::vector<Item>& items) {
    std::vector<HiveId> hives;
    std::size_t i = 0;
    for (; i + 2 < items.size() && stop(items[i + 1], ","); i += 2) {
        const HiveId id = hive_numbered(items[i]);
        if (id == no_hive) break;
        hives.push_back(id);
    }
    if (hives.empty()) return false;
    subject_.hives = hives;
    items.erase(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(i));
    return numbered_ = true;
}

/// In a line that began so: `6, 5 frames of brood` after what was told of 5 is of hive 6; and so `h3, wash 9/300` in a line
/// that began with `h2,`.
void LineReader::numbers_among_clauses(std::vector<std::vector<Item>>& clauses) const {
    for (std::size_t c = 0; headed_ && c < clauses.size(); ++c) {
        std::vector<HiveId> hives;
        std::size_t end = c;
        for (; end + 1 < clauses.size() && clauses[end].size() == 1; ++end) {
            const Item& i = clauses[end].front();
            const bool named = i.what == What::hives && i.role == Item::Role::none && i.unknown_hives.empty() && !i.hives.empty();
            const HiveId numbered = numbered_ && !named ? hive_numbered(i) : no_hive;
            if (!named && numbered == no_hive) break;
            if (named) hives.insert(hives.end(), i.hives.begin(), i.hives.end());
            else hives.push_back(numbered);
        }
        if (hives.empty()) continue;
        Item named = clauses[c].front();
        named.what = What::hives, named.hives = hives, named.end = clauses[end - 1].back().end;
        clauses[end].insert(clauses[end].begin(), std::move(named));
        clauses.erase(clauses.begin() + static_cast<std::ptrdiff_t>(c), clauses.begin() + static_cast<std::ptrdiff_t>(end));
    }
}

/// `3 and 4 each got a super`: bare numbers joined, and a word that goes with several hives. True when they are hives.
bool LineReader::bare_list(std::vector<Item>& items) {
    static constexpr std::array<std::string_view, 8> several = {"each", "both", "are", "were", "have", "had", "all", "both of them"};
    std::vector<HiveId> hives;
    std::size_t i = 0;
    for (; i < items.size(); ++i) {
        if (items[i].is("and") || stop(items[i], ",")) continue;
        if (!bare_number(items[i]) || items[i].value.low != items[i].value.high || items[i].value.amount % 1000 != 0) break;
        const HiveId id = lexicon_.hive(std::to_string(items[i].value.amount / 1000));
        if (id == no_hive) return false;
        hives.push_back(id);
    }
    if (hives.size() < 2 || i >= items.size()) return false;
    const bool many = std::find(several.begin(), several.end(), surface(items[i])) != several.end();
    const bool deed = items[i].has(Class::done) && !on_or_off(items[i]);   // 3, 5 and 8 moved to mill
    if (!many && !deed) return false;
    subject_.hives = hives;
    items.erase(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(i) + (says_each(items[i]) || deed ? 0 : 1));
    return true;
}

/// `h1 - super full. h2 - super half full. h3, cut comb super on`: each sentence with the hive it is about.
void LineReader::head_of_sentence(std::vector<Item>& items) {
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

/// `took excluder out of 6`, `requeened 7`, `split 3 into 11`: bare numbers that can only be hives.
bool LineReader::bare_hives(std::vector<Item>& items) const {
    bool any = false;
    // opened 1 thru 6
    for (std::size_t i = 1; i + 3 == items.size(); ++i) {
        const auto whole = [](const Item& k) { return k.what == What::value && k.value.unit == Unit::piece && k.value.amount % 1000 == 0 ? static_cast<int>(k.value.amount / 1000) : 0; };
        const std::string between = surface(items[i + 1]);
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
        const bool ends = i + 1 == items.size() || items[i + 1].what == What::hives || items[i + 1].has(Class::preposition) || items[i + 1].has(Class::link) || items[i + 1].is("newspaper");
        const bool days = before.is("in") && std::any_of(items.begin(), items.end(), [](const Item& k) { return k.has(Class::method) || k.is("mite"); });   // drop 12 in 4
        if (days || !ends || !(preposition || before.has(Class::done))) continue;
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
