#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// Groups of hives a line or a clause is about: all, both, the rest, the nuclei, those of a yard.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

bool group_word(std::string_view said) {
    static constexpr std::array<std::string_view, 19> words = {"all", "both", "the rest", "the others", "rest", "others", "everyone", "everybody", "every", "each", "all but", "all bar", "all except", "all exc",
        "the lot", "everybody else", "everyone else", "all others", "all the others"};
    return std::find(words.begin(), words.end(), said) != words.end();
}

/// `five` of the words for numbers, 0 for one and for other words.
int several_said(const Item& i) {
    const grammar::Word* word = i.what == What::term ? i.word(Class::count) : nullptr;
    return word && word->number > 1 ? static_cast<int>(word->number) : 0;
}

bool hives_word(std::string_view said) { return said == "hives" || said == "colonies"; }

bool nuclei_word(std::string_view said) { return said == "nucs" || said == "nuclei" || said == "nucleus colonies"; }

bool count_of_pieces(const Item& i) { return i.what == What::value && i.value.unit == Unit::piece; }

void drop(std::vector<Item>& items, std::size_t from, std::size_t n) {
    items.erase(items.begin() + static_cast<std::ptrdiff_t>(from), items.begin() + static_cast<std::ptrdiff_t>(from + n));
}

}  // namespace

/// `all fed 2 L, not h3`: what the clause before told is not told of these. True when the clause says only that.
bool LineReader::not_at_these(const std::vector<Item>& items) {
    std::vector<HiveId> left_out;
    bool denied = false;
    for (const Item& i : items) {
        denied = denied || (i.has(Class::negation) && surface(i) == "not");
        if (i.what == What::hives && i.role == Item::Role::none && i.unknown_hives.empty()) left_out.insert(left_out.end(), i.hives.begin(), i.hives.end());
        else if (!i.idle() && !i.has(Class::negation) && i.what != What::stop && !i.is("and") && !i.is("but")) return false;
    }
    if (!denied || left_out.empty() || before_clause_ >= out_->size() || before_clause_ < first_of_line_) return false;
    const auto here = [&](HiveId h) { return std::find(left_out.begin(), left_out.end(), h) != left_out.end(); };
    const auto told_of_more = [&](const RawFact& r) {
        const auto among = static_cast<std::size_t>(std::count_if(r.hives.begin(), r.hives.end(), here));
        return r.all || (among == left_out.size() && among < r.hives.size());
    };
    const auto told = out_->begin() + static_cast<std::ptrdiff_t>(before_clause_);
    const auto told_here = [&](const RawFact& r) { return r.all || r.rest || r.both || std::any_of(r.hives.begin(), r.hives.end(), here); };
    const bool of_others = std::none_of(told, out_->end(), told_here);   // h3 calm, not h4
    if (!of_others && !std::all_of(told, out_->end(), told_of_more)) return keep_asked(span(items), "not what?", "write a line for each hive"), true;
    for (auto raw = told; raw != out_->end() && !of_others; ++raw) {
        if (raw->all) raw->but.insert(raw->but.end(), left_out.begin(), left_out.end());
        else std::erase_if(raw->hives, here);
    }
    const Subject now = std::exchange(subject_, {});
    subject_.hives = left_out;
    keep_words(items, Kind::remark, Reading::Outcome::remark, "");
    subject_ = now;
    return true;
}

bool LineReader::says_group(const Item& i) const { return i.what == What::term && (group_word(surface(i)) || (i.is("all but") && surface(i).starts_with("everything"))); }

bool LineReader::says_hives(const Item& i) const {
    const std::string said = surface(i);
    return hives_word(said) || said == "hive" || said == "colony" || said == "of them" || several_said(i) > 0;
}

/// `mill hives: calm`, `all the mill hives were calm`, `the nucs: fed 1 L each`. True when the line begins so.
bool LineReader::group_at_head(std::vector<Item>& items) {
    const auto all_of = [&](std::size_t used, bool nuclei) {
        drop(items, 0, used);
        subject_ = {};
        subject_.all = true, subject_.nuclei = nuclei;
        return true;
    };
    const std::string first = surface(items[0]);
    const std::size_t yard = first == "all the" ? 1 : first == "all" && items.size() > 1 && surface(items[1]) == "the" ? 2 : 0;
    if (yard + 2 < items.size() && items[yard].what == What::yard && hives_word(surface(items[yard + 1]))) {
        line_yard_ = items[yard].yard;
        const bool all_said = items.size() > yard + 3 && items[yard + 2].is("all");   // mill hives all strong
        return all_of(yard + (all_said ? 3 : 2), false);
    }
    const std::size_t nuclei = first == "the" && items.size() > 1 ? 1 : 0;
    return nuclei + 1 < items.size() && nuclei_word(surface(items[nuclei])) && all_of(nuclei + 1, true);
}

/// `all mill hives`, `each of the three`: without the yard, which the line is about then, and without `of the`.
void LineReader::only_the_group(std::vector<Item>& items) {
    if (!says_group(items.front())) return;
    if (items.size() > 2 && items[1].what == What::yard && (says_hives(items[2]) || stop(items[2], ":"))) {
        line_yard_ = items[1].yard;
        drop(items, 1, 1);
    }
    const auto hives_or_article = [&](std::size_t k) { return says_hives(items[k]) || (surface(items[k]) == "the" && k + 1 < items.size() && says_hives(items[k + 1])); };
    while (items.size() > 2 && (surface(items[1]) == "of" || surface(items[1]) == "the" || surface(items[1]) == "of the") && hives_or_article(2)) drop(items, 1, 1);
}

/// Whether a group at the head of a line is of hives, not of boxes, frames or cells.
bool LineReader::heads_with_hives(const std::vector<Item>& items) const {
    if (surface(items.front()) == "all the" && items.size() > 1 && hives_word(surface(items[1]))) return true;   // all the hives but h6
    if (!says_group(items.front())) return false;
    if (items.size() < 2) return true;
    // both off h8: of what is on it; not all calm except h8
    const auto end = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.what == What::stop; });
    const auto named = [&](const Item& i) { return i.what == What::hives && !(&i - 1)->is("all but") && !(&i - 1)->is("but"); };
    const bool at_a_hive = items.size() > 2 && items[1].what != What::hives && !items[1].is("all but") && !says_hives(items[1]) && !nuclei_word(surface(items[1])) &&
                           std::any_of(items.begin() + 2, std::max(end, items.begin() + 2), named);
    static constexpr std::array<std::string_view, 7> others = {"super", "box", "frame", "brood box", "capped", "drawn", "queen cell"};
    return !at_a_hive && !items[1].has(Class::amount) && std::none_of(others.begin(), others.end(), [&](std::string_view o) { return items[1].is(o); });
}

/// Where the group stands, past the end when none does.
std::size_t LineReader::find_group(const std::vector<Item>& items, bool at_head) const {
    if (at_head && heads_with_hives(items)) return 0;
    const bool medicine = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::substance); });
    // at the head of a line: what its first clause is about, not a later one
    const auto clause_end = at_head ? std::find_if(items.begin(), items.end(), [](const Item& i) { return i.what == What::stop; }) : items.end();
    const auto size = static_cast<std::size_t>(clause_end - items.begin());
    std::size_t at = items.size();
    const bool told = out_->size() > first_of_line_;   // 2 supers on h1, a feeder on each: not on all there are
    for (std::size_t i = 1; i < size; ++i) {
        if (!says_group(items[i]) && !(medicine && items[i].what == What::term && surface(items[i]) == "in all")) continue;
        if (items[i - 1].is("cells removed")) continue;   // knocked down the rest: of the cells
        const bool named_later = at_head && std::any_of(items.begin() + static_cast<std::ptrdiff_t>(i), items.end(), [](const Item& k) { return k.what == What::hives; });
        if (says_each(items[i]) && named_later) continue;   // super on each, h1-h5
        if (says_each(items[i]) && told && !(i + 1 < items.size() && says_hives(items[i + 1]))) continue;
        if (says_each(items[i]) && (items[i - 1].what == What::value || items[i - 1].counted)) continue;   // 12 jars at 6.50 each
        const bool ends = i + 1 == size || (i + 2 == items.size() && count_of_pieces(items[i + 1]));
        const bool but_these = i + 2 < items.size() && (items[i + 1].is("but") || items[i + 1].is("all but")) && items[i + 2].what == What::hives;   // everybody but h1
        const bool named = but_these || (i + 1 < items.size() && (says_hives(items[i + 1]) || nuclei_word(surface(items[i + 1])) || items[i + 1].what == What::hives));
        const bool done_to = items[i - 1].is("treated") || items[i - 1].is("fed") || items[i - 1].is("inspected");
        if (ends || named || done_to || items[i].is("all but")) at = i;
    }
    return at;
}

/// `all 3 calm`: three hives; not `all 3 supers full`.
bool LineReader::counts_hives(const std::vector<Item>& items) const {
    if (items.size() < 3 || !items[0].is("all") || !bare_number(items[1])) return false;
    const Item& next = items[2];
    return next.what == What::term && !countable(next) && !next.has(Class::combing) && next.box_kind.empty() && !next.idle() && !next.is("capped") && !next.has(Class::amount);
}

/// What the group at `at` is, how many were said and which are left out; `end` is moved past it. False when it leaves out what nobody can tell.
bool LineReader::read_group(const std::vector<Item>& items, std::size_t at, bool counted, Subject& found, std::size_t& end) const {
    const std::string said = surface(items[at]);
    found.both = said == "both";
    found.rest = said.find("rest") != said.npos || said.find("other") != said.npos || said.ends_with(" else");
    found.all = !found.both && !found.rest;
    const auto goes_on = [&](std::size_t k) {
        const bool number = count_of_pieces(items[k]) && (counted || k + 1 == items.size() || stop(items[k + 1], ":") || says_hives(items[k + 1]));
        return number || says_hives(items[k]);
    };
    for (end = at + 1; end < items.size() && goes_on(end); ++end) {
        if (items[end].what == What::value) found.count = static_cast<int>(items[end].value.amount / 1000);
        else if (const int several = several_said(items[end])) found.count = several;
    }
    if (end < items.size() && nuclei_word(surface(items[end])) && !items[at].is("all but")) {
        if (found.both) found.count = 2;
        found.nuclei = found.all = true, found.both = found.rest = false;
        ++end;
    }
    bool but = items[at].is("all but") && said != "the rest";
    const bool but_these = end + 1 < items.size() && items[end].is("but") && items[end + 1].what == What::hives;
    if (end < items.size() && (items[end].is("all but") || but_these)) but = true, ++end;
    if (!but) return true;
    if (end >= items.size()) return false;
    if (items[end].what == What::hives) found.but = items[end].hives;
    else if (surface(items[end]) != "nuc" && !nuclei_word(surface(items[end]))) return false;
    else
        for (std::size_t h = 0; h < journal_.hives.size(); ++h)
            if (journal_.hives[h].nucleus) found.but.push_back(static_cast<HiveId>(h));
    ++end;
    return true;
}

/// `h1-h3 heavy, the rest light`: the clause goes over to the other hives; where one hive is spoken of, `all the others` may
/// be its boxes. True when that is asked.
bool LineReader::others_begin(std::vector<Item>& items) {
    Subject found;
    std::size_t end = 0;
    if (items.size() < 2 || !subject_.said() || !says_group(items.front()) || !read_group(items, 0, false, found, end) || !found.rest) return false;
    const std::vector<Item> written = items;
    if ((subject_.several() || subject_.all) && take_all(items, true)) return box_ = {}, last_ = {}, false;
    const bool asked = written.front().is("all");
    if (asked) keep_asked(span(written), "the other boxes, or the other hives?", "name the boxes, or write a line for the other hives");
    return asked;
}

/// `all`, `both`, `the rest`, `all but h4`, at the head of a line or at the end of a clause.
bool LineReader::take_all(std::vector<Item>& items, bool at_head) {
    if (items.empty() || (at_head && bare_number(items.front()))) return false;   // 4 and 5: fed 3 kg each
    if (at_head && group_at_head(items)) return true;
    if (at_head) only_the_group(items);
    std::size_t at = find_group(items, at_head), end = 0;
    Subject found;
    if (at == items.size() || !read_group(items, at, at_head && counts_hives(items), found, end)) return false;
    const bool in_all = surface(items[at]) == "in all";   // amitraz in all
    // "treat all" leaves nothing dangling; a preposition before it goes with it, where it is not what was done: strips in both hives
    if (at > 1) {
        const Item& before = items[at - 1];
        const bool other_deed = std::any_of(items.begin(), items.end(), [&](const Item& i) { return &i != &before && (i.what == What::sign || i.has(Class::done)); });
        const bool put = (before.is("in") || before.is("on")) && !other_deed && std::any_of(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(at), goes_on_or_in);
        if (!put && (before.is("at") || before.is("on") || before.is("to") || before.is("of") || before.is("in"))) --at;
    }
    // below a heading `h4 h5`: both calm, a super on each
    const std::vector<HiveId>& headed = context_->hives;
    const bool of_the_heading = headed.size() > 1 && !found.rest && !found.nuclei && found.but.empty() && (found.both ? headed.size() == 2 : found.count < 0 || found.count == static_cast<int>(headed.size()));
    const bool all_hives = std::any_of(items.begin() + static_cast<std::ptrdiff_t>(at), items.begin() + static_cast<std::ptrdiff_t>(end), [&](const Item& i) { return hives_word(surface(i)); });
    subject_ = found;
    if (of_the_heading && !all_hives) subject_ = {}, subject_.hives = headed;
    if (in_all) items[at++].words = {table_word("in", Class::done)};
    drop(items, at, end - at);
    return true;
}

}  // namespace waxtab
