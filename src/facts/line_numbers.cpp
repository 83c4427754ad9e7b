#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// Hives spoken of by their bare numbers.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

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

/// Stands between a number and what it counts: `4 capped queen cells`, `2 empty drawn supers`.
bool describes(const Item& i) {
    return i.idle() || i.has(Class::combing) || i.has(Class::state) || i.has(Class::colour) || !i.box_kind.empty() || i.is("capped") || i.is("empty") || i.is("full") || i.is("more");
}

}  // namespace

/// The hive a bare whole number names, none where it names none.
HiveId LineReader::hive_numbered(const Item& i) const {
    const bool whole = bare_number(i) && is_whole(i.value) && i.text != "word";
    if (!whole) return no_hive;
    const HiveId as_written = lexicon_.hive(surface(i));   // 07
    return as_written != no_hive ? as_written : lexicon_.hive(std::to_string(i.value.amount / 1000));
}

/// The hive that is called by this number and nothing else, none where there is none.
HiveId LineReader::called_by_number(const Item& i) const {
    const HiveId id = hive_numbered(i);
    return id != no_hive && journal_.hives[static_cast<std::size_t>(id)].name == surface(i) ? id : no_hive;
}

/// The number at `at` may count what follows it, so that it is no hive: `4 capped queen cells`, `2 supers off`, `12 sunny`,
/// `1 jar`; not `2 super off`, `5 both supers full`, `3 eggs seen`.
bool LineReader::may_count(const std::vector<Item>& items, std::size_t at) const {
    static constexpr std::array<std::string_view, 5> not_counted = {"bees", "egg", "stores", "larva", "brood in all stages"};
    static constexpr std::array<std::string_view, 13> one_of_them = {"frames of brood", "frames of bees", "frames of stores", "seam", "jar", "swarm", "nuc", "frame", "mite", "lot", "queen cell", "cup", "sting"};
    static constexpr std::array<std::string_view, 8> goes_on = {"of", "in", "per", "am", "pm", "x", "hive", "hives"};
    const auto goes_on_so = [&](std::size_t k) { return k < items.size() && std::find(goes_on.begin(), goes_on.end(), surface(items[k])) != goes_on.end(); };
    std::size_t k = at + 1;
    if (goes_on_so(k)) return true;
    while (k < items.size() && describes(items[k])) ++k;
    const auto any = [](const auto& terms, const Item& i) { return std::any_of(terms.begin(), terms.end(), [&](std::string_view t) { return i.is(t); }); };
    const auto noun = [&](const Item& i) { return i.has(Class::thing) && !any(not_counted, i); };
    if (k >= items.size()) return true;
    const std::string said = surface(items[k]);
    const bool several = noun(items[k]) && (said.ends_with('s') || said.find("s of ") != said.npos);
    return goes_on_so(k) || several || any(one_of_them, items[k]) || items[k].has(Class::weather) || items[k].what == What::stop || items[k].what == What::unknown;
}

/// `1 3 4 light on stores`, `2 super off 29 lb`: numbers that hives are called by, where no hive is spoken of and they can
/// count nothing. True when the line begins so.
bool LineReader::called_by_numbers(std::vector<Item>& items) {
    if (!context_->hives.empty() || context_->all) return false;
    std::vector<HiveId> hives;
    std::size_t end = 0, last = 0;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (!hives.empty() && items[i].is("and")) continue;
        const HiveId id = called_by_number(items[i]);
        if (id == no_hive) break;
        hives.push_back(id);
        last = i, end = i + 1;
    }
    const bool one_of_it = hives.size() > 1 && items[last].value.amount == 1000 && end < items.size() && countable(items[end]);   // 2 1 strip out
    const bool list_ends = hives.size() > 1 && end < items.size() && items[end].what == What::stop;   // 4 and 5. Strips out.
    if (!hives.empty() && !list_ends && (one_of_it || may_count(items, last))) hives.pop_back(), end = last;
    if (hives.empty() || (hives.size() == 1 && tells_how_it_is(items[end]) && !no_tally(items))) return false;
    while (end > 0 && items[end - 1].is("and")) --end;
    subject_.hives = hives;
    items.erase(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(end));
    return true;
}

/// `6 looks queenless`, `5 united with 3`: a bare number that counts nothing. True when the line begins so.
bool LineReader::number_of_one(std::vector<Item>& items) {
    if (items.size() < 2 || !context_->hives.empty() || context_->all) return false;
    const HiveId id = hive_numbered(items[0]);
    const bool of_one = one_does(surface(items[1])) || (tells_how_it_is(items[1]) && no_tally(items)) || (items.size() > 2 && (items[1].is("united") || items[1].is("renamed")));
    if (id == no_hive || !of_one) return false;
    subject_.hives = {id};
    items.erase(items.begin());
    return true;
}

/// Takes the numbers of hives a line begins with off it. True when it begins so.
bool LineReader::begins_with_numbers(std::vector<Item>& items) {
    numbered_ = number_of_one(items);
    if (numbered_) return true;
    numbered_ = bare_list(items) || numbers_before_commas(items) || called_by_numbers(items);
    return numbered_;
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
    // 7, 8, 10 super half full: and the last of them
    const HiveId last = i < items.size() ? called_by_number(items[i]) : no_hive;
    if (last != no_hive && i + 1 < items.size() && items[i + 1].what != What::stop && (tells_how_it_is(items[i + 1]) || !may_count(items, i))) hives.push_back(last), ++i;
    subject_.hives = hives;
    items.erase(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(i));
    return true;
}

/// In a line of hives called by their numbers: `1 calm. 4 swarm cells`, `1 2 strips out`, `1 half full; 2 capped`. That hive,
/// or so many of them?
bool LineReader::hive_or_so_many(const std::vector<Item>& items) const {
    static constexpr std::array<std::string_view, 8> said_uncounted = {"queen cell", "swarm cell", "cup", "sealed cell", "open cell", "super", "strip", "pad"};
    const HiveId id = items.size() > 1 && numbered_ && !pointed_ ? called_by_number(items[0]) : no_hive;   // not of 1. Calm. 4 swarm cells.
    if (id == no_hive || (subject_.hives.size() == 1 && subject_.hives.front() == id)) return false;
    const bool goes_on = out_->size() > first_of_line_;
    if (goes_on && items.size() == 2 && (items[1].is("capped") || items[1].is("full") || items[1].is("drawn"))) return true;
    std::size_t k = 1;
    while (k < items.size() && describes(items[k])) ++k;
    const bool noun = k < items.size() && std::any_of(said_uncounted.begin(), said_uncounted.end(), [&](std::string_view n) { return items[k].is(n); }) && surface(items[k]).ends_with('s');
    if (goes_on || !noun) return noun;
    const bool list = !subject_.hives.empty() && subject_.hives.back() < id;
    return list && (items[k].is("super") || items[k].is("strip") || items[k].is("pad")) && k + 1 < items.size() && items[k + 1].has(Class::done);
}

/// Takes a number for the hive called by it.
void LineReader::take_as_hive(Item& number) const {
    number.hives = {called_by_number(number)};
    number.what = What::hives;
}

/// `all but 2 fed 1 kg`, `wash 2 4/300`: numbers that can only be those of hives, wherever they stand.
void LineReader::numbers_of_hives(std::vector<Item>& items) const {
    for (std::size_t i = 1; i < items.size(); ++i) {
        const bool ends = i + 1 == items.size() || items[i + 1].what == What::stop;
        const bool sampled = !ends && items[i + 1].what == What::slash && items[i + 1].m >= 50;
        const bool given = !ends && (items[i - 1].is("fed") || items[i - 1].is("added")) && items[i + 1].what == What::value && (items[i + 1].value.dimension == Dimension::volume || items[i + 1].value.dimension == Dimension::mass);   // fed 4 a litre
        const bool left_out = items[i - 1].is("all but") && (ends || !may_count(items, i));
        if ((sampled || left_out || given) && called_by_number(items[i]) != no_hive) take_as_hive(items[i]);
    }
}

/// `2 super off 29 lb` after what was told of hive 1: the number is a hive's, where it can count nothing and something is done
/// there, or where another number follows that counts.
bool LineReader::goes_over_to_numbered(const std::vector<Item>& items) const {
    if (items.size() < 2 || called_by_number(items[0]) == no_hive) return false;
    const Item& next = items[1];
    if (items.size() == 2) return numbered_ && bare_number(next) && items[0].text != "word" && next.text != "word";   // 1 6 frames of brood, 2 5
    if (bare_number(next) && may_count(items, 1) && !items[2].is("of") && items[2].what != What::stop) return true;   // 3 5 mites in 300
    if (!numbered_ || may_count(items, 0)) return false;
    const bool deed = next.has(Class::done) && !on_or_off(next) && !next.has(Class::combing) && !next.is("capped");
    return deed || is_super(next) || next.has(Class::which) || next.has(Class::method) || next.has(Class::plan) || next.has(Class::negation) || next.is("queen") || one_does(surface(next)) || tells_how_it_is(next);
}

/// In a line that began so: `6, 5 frames of brood` after what was told of 5 is of hive 6; and so `h3, wash 9/300` in a line
/// that began with `h2,`.
void LineReader::numbers_among_clauses(std::vector<std::vector<Item>>& clauses) const {
    for (std::size_t c = 0; c < clauses.size(); ++c) {
        std::vector<HiveId> hives;
        std::size_t end = c;
        for (; headed_ && end + 1 < clauses.size() && clauses[end].size() == 1; ++end) {
            const Item& i = clauses[end].front();
            const bool named = i.what == What::hives && i.role == Item::Role::none && i.unknown_hives.empty() && !i.hives.empty();
            const HiveId numbered = numbered_ && !named ? hive_numbered(i) : no_hive;
            if (!named && numbered == no_hive) break;
            if (named) hives.insert(hives.end(), i.hives.begin(), i.hives.end());
            else hives.push_back(numbered);
        }
        if (hives.empty()) {
            if (goes_over_to_numbered(clauses[c])) take_as_hive(clauses[c].front());
            continue;
        }
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
        if (!bare_number(items[i])) break;
        const HiveId id = hive_numbered(items[i]);
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
        const bool counts = before.is("left") || before.is("sold") || before.is("given away") || before.is("kept") || before.is("filled") || (before.is("cells removed") && !before.is("taken off")) || (i + 1 < items.size() && items[i + 1].is("of"));   // knocked down 4 of the cells and left 2
        if (days || counts || !ends || !(preposition || before.has(Class::done))) continue;
        const HiveId id = lexicon_.hive(std::to_string(number.value.amount / 1000));
        if (id == no_hive) continue;
        number.what = What::hives;
        number.hives = {id};
        any = true;
        if (!preposition) continue;
        const auto here = items.begin() + static_cast<std::ptrdiff_t>(i) - 1;
        const auto link = std::find_if(std::make_reverse_iterator(here), items.rend(), [](const Item& k) { return k.is("and"); });   // pulled 2 off 3 and super on 4
        const bool verb = std::any_of(link.base(), here, [](const Item& k) { return k.has(Class::done) || k.what == What::sign; });
        if (before.is("from")) number.role = Item::Role::from;
        else if (before.is("to")) number.role = Item::Role::to;
        else if (before.is("into")) number.role = Item::Role::into;
        else if (before.is("with")) number.role = Item::Role::with;
        else if (before.has(Class::done) && !verb) continue;
        if (surface(before) == "out of") {   // formic out of 4
            before.words = {table_word("out", Class::done)};
            continue;
        }
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i--) - 1);
    }
    return any;
}

}  // namespace waxtab
