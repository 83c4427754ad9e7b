#include "facts/line_reader.hpp"

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <utility>

#include <fmt/format.h>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// Clauses that say several things: shares one after the other, parts joined by `and`, a count hive by hive.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

bool verb(const Item& i) { return i.what == What::sign || i.has(Class::done); }

/// A verb that goes on to the next part: not on, off, in and out, which belong where they stand.
bool goes_on_to_the_next(const Item& i) { return verb(i) && !on_or_off(i); }

bool weather(const std::vector<Item>& items) {
    return std::all_of(items.begin(), items.end(), [](const Item& i) { return i.idle() || i.has(Class::weather); });
}

bool is_one(const Item& i) { return i.what == What::value && i.value.unit == Unit::piece && i.value.amount == 1000; }

/// `half full already`: begins with how full, and puts nothing.
bool first_says_how_full(const std::vector<Item>& items) {
    const auto first = std::find_if(items.begin(), items.end(), [](const Item& i) { return !i.idle() && !i.has(Class::about); });
    return first != items.end() && !eventful(items) && (first->has(Class::amount) || (first->what == What::value && first->value.dimension == Dimension::share));
}

/// A list of hives, written as `said`, in two: without its last hive, and that hive. Nothing where none of the links stands
/// before it.
std::optional<std::pair<Item, Item>> without_the_last(const Item& list, const std::string& said, std::initializer_list<std::string_view> links) {
    std::size_t at = std::string::npos, length = 0;
    for (std::string_view link : links)
        if (const std::size_t found = said.rfind(link); found != said.npos && (at == said.npos || found > at)) at = found, length = link.size();
    if (at == said.npos) return {};
    std::pair<Item, Item> parts{list, list};
    parts.first.hives.pop_back(), parts.first.end = list.begin + static_cast<std::uint32_t>(at);
    parts.second.hives = {list.hives.back()}, parts.second.begin = list.begin + static_cast<std::uint32_t>(at + length);
    return parts;
}

/// Item `k` is a hive that something is told of: h4 in `h3 super off and h4 united with h5`, not h5.
bool told_of(const std::vector<Item>& items, std::size_t k) {
    if (!is_hives(items[k])) return false;
    while (k > 0 && items[k - 1].has(Class::filler)) --k;
    if (k == 0) return true;
    const Item& before = items[k - 1];
    return !(before.is("with") || before.is("into") || before.is("to") || before.is("from") || before.is("calling it"));
}

/// How many of the items from `first` on are hives that something is told of.
std::size_t told_of_after(const std::vector<Item>& items, std::size_t first) {
    std::size_t n = 0;
    for (std::size_t k = first; k < items.size(); ++k) n += told_of(items, k);
    return n;
}

/// A hive and what is told of it, in these words.
bool names_its_hive(const std::vector<Item>& part) {
    const auto more = [](const Item& i) { return !i.idle() && !i.has(Class::link) && !i.has(Class::preposition) && !is_hives(i) && i.what != What::stop; };
    bool own = false;
    for (std::size_t k = 0; k < part.size(); ++k) own = own || (is_hives(part[k]) && !(k > 0 && (part[k - 1].is("with") || part[k - 1].is("into"))));   // united with h5: no word of h5
    return own && std::any_of(part.begin(), part.end(), more);
}

/// Of a hive and the mites counted there, and of nothing else.
bool tells_a_count(const Item& i) {
    return i.idle() || is_hives(i) || i.what == What::value || i.what == What::slash || i.is("mite") || i.is("in") || i.is("per") || i.is("of") || i.is("bees") || i.is("added") || i.is("none") || i.is("per day");
}

/// `washes per 300 bees`, `drop over 3 days`: takes the sample or the days, said once for all hives, out of the header.
std::vector<Item> said_once(std::vector<Item>& header) {
    const auto leads = [](const Item& i) { return i.is("per") || i.is("in") || i.is("from") || i.is("over"); };
    const auto per = std::find_if(header.begin(), header.end(), leads);
    const bool measured = per != header.end() && per + 1 != header.end() && (per + 1)->what == What::value && ((per + 1)->value.dimension == Dimension::duration || (per + 1)->value.amount >= 50'000);
    if (!measured) return {};
    std::vector<Item> once(per, header.end());
    header.erase(per, header.end());
    return once;
}

/// `h1 2/300 h2 1/300`: a clause for each hive.
void clause_for_each_hive(std::vector<std::vector<Item>>& clauses) {
    for (std::size_t c = 0; c < clauses.size(); ++c) {
        const auto next = std::find_if(clauses[c].begin() + 1, clauses[c].end(), is_hives);
        const bool counted = next != clauses[c].end() && ((next - 1)->what == What::value || (next - 1)->what == What::slash || (next - 1)->is("mite"));
        const auto at = static_cast<std::size_t>(next - clauses[c].begin());
        if (counted && next->role == Item::Role::none) break_clause(clauses, c, at, at);
    }
}

bool any_method(const std::vector<Item>& items) {
    return std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::method) || i.is("weighed"); });
}

}  // namespace

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

/// `supers: full, half, empty`: which has which is asked. How many clauses they take, 0 where it is no such list.
std::size_t LineReader::shares_in_turn(const std::vector<std::vector<Item>>& clauses, std::size_t at) {
    const auto share = [](const Item& i) { return i.has(Class::amount) || (i.what == What::value && i.value.dimension == Dimension::share); };
    const auto alone = [&](const std::vector<Item>& c) { return std::any_of(c.begin(), c.end(), share) && std::all_of(c.begin(), c.end(), [&](const Item& i) { return share(i) || i.idle() || i.has(Class::link) || i.has(Class::about); }); };
    const auto supers = [&](const Item& i) { return is_super(i) && !i.counted && surface(i).ends_with('s'); };
    const std::vector<Item>& first = clauses[at];
    if (std::none_of(first.begin(), first.end(), supers) || first.empty() || !share(first.back()) || eventful(first)) return 0;
    std::size_t end = at + 1;
    std::vector<Item> all = first;
    for (; end < clauses.size() && alone(clauses[end]); ++end) all.insert(all.end(), clauses[end].begin(), clauses[end].end());
    if (end == at + 1) return 0;
    keep_asked(span(all), "which super has which?", "name them, for example `top full, bottom half full`");
    return end - at;
}

/// The one way in which the part is read by itself, if there is one.
std::optional<LineReader::Solution> LineReader::only_way(const std::vector<Item>& part) {
    Clause p;
    p.items = part;
    take_doubt_and_day(p);
    chunk(p.items, item_context());
    std::erase_if(p.items, [](const Item& i) { return i.what == What::hives && i.role == Item::Role::none; });
    std::vector<Solution> ways = solve(p.items);
    if (ways.empty()) std::erase_if(p.items, [](const Item& i) { return i.what == What::hives; }), ways = solve(p.items);
    if (ways.size() != 1 || ways.front().candidates.empty()) return {};
    return std::move(ways.front());
}

/// True when the part is read in one way by itself. An event needs a word that says it was done.
bool LineReader::reads(const std::vector<Item>& part) {
    const std::optional<Solution> way = only_way(part);
    return way && (eventful(part) || std::none_of(way->candidates.begin(), way->candidates.end(), [](const Candidate& c) { return is_event(c.fact.kind); }));
}

/// `took the top super off h3 and h4 strong`: what was seen, or treated, and nothing that could be taken or given.
bool LineReader::seen_by_itself(const std::vector<Item>& part) {
    const std::optional<Solution> way = only_way(part);
    const auto seen = [](const Candidate& c) {
        const Kind k = c.fact.kind;
        return (seen_of_colony(k) && !of_frames(c.fact)) || (takes_box_from_before(k) && c.fact.value.unit != Unit::frame) || k == Kind::queen_cells || k == Kind::cups || k == Kind::mites || k == Kind::hive_weight || k == Kind::pollen || k == Kind::pest || k == Kind::disease || k == Kind::feeder_state || k == Kind::treatment || k == Kind::stings;
    };
    return way && std::all_of(way->candidates.begin(), way->candidates.end(), seen);
}

/// One deed, its verb with it.
bool LineReader::reads_as_one(const std::vector<Item>& part) {
    const std::optional<Solution> way = only_way(part);
    return way && way->candidates.size() == 1;
}

/// The part after a link with the verb of the part before it, where it has none and reads with that.
std::vector<Item> LineReader::with_the_verb_of(const std::vector<Item>& left, std::vector<Item> right) {
    const auto done = std::find_if(left.rbegin(), left.rend(), goes_on_to_the_next);
    if (done == left.rend() || eventful(right)) return right;
    if (!done->is("cells removed") && !done->is("left") && seen_by_itself(right)) return right;
    std::vector<Item> with_verb{*done};
    with_verb.insert(with_verb.end(), right.begin(), right.end());
    with_verb.front().begin = with_verb.front().end = right.front().begin;
    // fed 1 quart of 1:1 to h4 and 2 quarts to h6
    const auto ratio = [](const Item& i) { return i.what == What::ratio; };
    const auto mixed = std::find_if(left.begin(), left.end(), ratio);
    if (done->is("fed") && mixed != left.end() && std::none_of(right.begin(), right.end(), ratio) && std::none_of(right.begin(), right.end(), [](const Item& i) { return i.has(Class::food); })) {
        std::vector<Item> with_ratio = with_verb;
        with_ratio.insert(with_ratio.begin() + 2, *mixed);
        with_ratio[2].begin = with_ratio[2].end = right.front().end;
        if (reads(with_ratio)) return with_ratio;
    }
    if (reads_as_one(with_verb)) return with_verb;
    box_ = any_hive(right) ? BoxChoice{} : box_;   // of the other hive
    return right;
}

/// `did a wash on h4 and knocked down 2 cells`: when the whole is not read, the parts on either side of a
/// link are, each for itself; the verb goes on to a part that has none (`took 2 supers off and 4 frames`).
/// Not where a negation could reach over the link.
bool LineReader::parts_at_links(const Clause& c) {
    const std::vector<Item>& all = c.written;
    const auto stops_it = [](const Item& i) { return i.text == "went" || i.has(Class::negation) || !i.unknown_hives.empty() || i.is("all but"); };
    if (!c.doubt.empty() || std::any_of(all.begin(), all.end(), stops_it)) return false;
    for (std::size_t k = 1; k + 1 < all.size(); ++k) {
        const bool colon = stop(all[k], ":");
        // a frame of eggs and brood from h2: all of it
        const auto from = std::find_if(all.begin() + static_cast<std::ptrdiff_t>(k), all.end(), [](const Item& i) { return i.is("from"); });
        if (from != all.end() && any_hive({from, all.end()}) && !eventful({all.begin() + static_cast<std::ptrdiff_t>(k), from}) && std::any_of(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(k), is_frames)) continue;
        if (!all[k].is("and") && !all[k].is("with") && surface(all[k]) != "so" && !colon) continue;
        if (colon && !plain_talk({all.begin(), all.begin() + static_cast<std::ptrdiff_t>(k)})) continue;
        if (all[k].is("with") && (all[k + 1].has(Class::plant) || (all[k + 1].is("bees") && k + 2 == all.size()))) continue;   // half full with rape, filled with bees
        std::vector<Item> left(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(k));
        std::vector<Item> right(all.begin() + static_cast<std::ptrdiff_t>(k) + 1, all.end());
        // top and bottom supers off: no part is the lone word for a box
        const bool lone_box = std::all_of(left.begin(), left.end(), [](const Item& i) { return i.idle() || i.has(Class::which) || i.text == "ordinal"; });
        if (lone_box && std::any_of(left.begin(), left.end(), [](const Item& i) { return i.has(Class::which); })) continue;
        // super on and half full: which was there?
        const bool bare_on = left.back().is("on") && std::any_of(left.begin(), left.end(), is_super) && std::none_of(left.begin(), left.end(), goes_on_to_the_next);
        if (bare_on && all[k].is("and") && first_says_how_full(right)) return keep_asked(span(all), "put on, or on already?", "write `+super` if it went on, `top half full` if it was there"), true;
        const auto measured = [](const Item& i) { return i.what == What::value || i.what == What::slash || i.counted || i.has(Class::count); };
        if (right.size() == 1 && right.front().is("full") && std::any_of(left.begin(), left.end(), measured)) continue;   // 6 of ten drawn and filled
        // Of a part that is not read, what stands beside it may be a detail; not where it has its own verb.
        const bool own = (all[k].is("and") || colon) && (eventful(right) || weather(right) || plain_talk(left));
        if (!reads(left) && !(own && reads(right))) continue;
        if (c.own.said() && !c.before.said()) subject_ = any_hive(left) ? c.before : c.own;
        // 48 one-pound jars and 6 pints from lot A: all of that lot
        const auto lot = [](const Item& i) { return i.what == What::lot; };
        if (!eventful(right) && right.back().what == What::lot && std::none_of(left.begin(), left.end(), lot)) {
            left.push_back(right.back());
            left.back().begin = left.back().end = left[left.size() - 2].end;
        }
        clause(left);
        if (!c.before.said() && any_hive(right)) subject_ = c.before;
        for (const Item& i : left)
            if (!subject_.said() && !any_hive(right) && i.what == What::hives) subject_.hives = i.hives;
        if (!all[k].is("with")) right = with_the_verb_of(left, std::move(right));   // super came off with 9 kg in it: once
        clause(std::move(right));
        return true;
    }
    return false;
}

/// After a clause that was not read: the hives it began with are what the line is about now, and the box
/// spoken of before it may be another one.
void LineReader::spoke_of_others(const Clause& c) {
    const auto first = std::find_if(c.written.begin(), c.written.end(), [](const Item& i) { return !i.idle() && !i.has(Class::link); });
    if (c.own.said() && first != c.written.end() && (first->what == What::hives || !headed_)) subject_ = c.own;
    const bool elsewhere = std::any_of(c.written.begin(), c.written.end(), [&](const Item& i) { return i.what == What::hives && i.hives != c.before.hives; });
    if (elsewhere) box_ = {};
    if (std::any_of(c.written.begin(), c.written.end(), [](const Item& i) { return i.is("super") || i.is("box") || i.what == What::box || i.has(Class::which); })) box_ = {};
}

/// `hives 4 and 6 are both calm`: said of the hives, so it picks no box.
void LineReader::both_of_them(std::vector<Item>& items) const {
    std::size_t named = subject_.hives.size();
    for (const Item& i : items)
        if (i.what == What::hives && i.role == Item::Role::none) named = std::max(named, i.hives.size());
    const auto so_many = [&](const Item& n) {
        const grammar::Word* word = n.what == What::term ? n.word(Class::count) : nullptr;
        return word ? word->number == static_cast<int>(named) : bare_number(n) && n.value.amount == static_cast<std::int64_t>(named) * 1000;
    };
    for (std::size_t k = 0; k < items.size(); ++k) {
        Item& i = items[k];
        if (k + 2 == items.size() && surface(i) == "in all" && so_many(items[k + 1])) i.loose = true, items.pop_back();   // eggs in all three
        const auto one = [&](std::size_t at) { return at < items.size() && (items[at].has(Class::count) || is_one(items[at])); };
        const bool in_every = surface(i) == "in every" || surface(i) == "in each";
        if (named > 1 && k + 2 == items.size() && in_every && (one(k + 1) || surface(items[k + 1]) == "hive")) {   // eggs in every one
            items.resize(k);
            break;
        }
        if (i.what != What::term || !((i.is("both") && named == 2) || (i.is("all") && (named > 1 || subject_.all) && !i.has(Class::order)))) continue;
        i.loose = true;
        if (k + 2 == items.size() && so_many(items[k + 1])) items.pop_back();   // eggs in all 3
        if (k > 0 && k + 1 == items.size() && (items[k - 1].is("in") || items[k - 1].is("on") || items[k - 1].is("of"))) items[k - 1].loose = true;   // eggs in both
    }
}

/// `supers 1 and 2 full`, `top and bottom supers off`: a fact for each. What both weighed is asked.
bool LineReader::for_each_box(const Clause& c) {
    const auto pair = std::find_if(c.without.begin(), c.without.end(), [](const Item& i) { return i.what == What::box && i.box2.by != BoxChoice::By::unsaid; });
    if (pair == c.without.end()) return false;
    const bool off = eventful(c.without);
    if (off && !masses_in(c.without).empty()) return ask_each_or_both(c.written);
    std::vector<Item> first = c.without, second = c.without;
    const auto at = static_cast<std::size_t>(pair - c.without.begin());
    first[at].box2 = {};
    second[at].box = pair->box2, second[at].box2 = {};
    const std::vector<Solution> one = solve(first), two = solve(second);
    if (one.size() != 1 || two.size() != 1) return false;
    const auto came_off = [](const Solution& s) { return s.candidates.size() == 1 && s.candidates.front().fact.kind == Kind::super_off; };
    if (off && !(came_off(one.front()) && came_off(two.front()))) return false;
    take(one.front(), c.happened);
    take(two.front(), c.happened);
    return true;
}

/// `mite wash: h1 6 in 300, h2 11`: how it was counted is said once for all hives that follow.
void LineReader::method_for_all(std::vector<std::vector<Item>>& clauses) const {
    if (clauses.empty() || !any_method(clauses.front())) return;
    // drop boards, 3 days: h1 9, h2 15
    const auto method_alone = [](const Item& i) { return i.idle() || i.has(Class::method); };
    const bool days_follow = clauses.size() > 1 && clauses[1].size() > 2 && clauses[1][0].what == What::value && clauses[1][0].value.dimension == Dimension::duration && stop(clauses[1][1], ":");
    if (days_follow && std::all_of(clauses[0].begin(), clauses[0].end(), method_alone)) {
        Item in = clauses[1][0];
        in.what = What::term, in.words = {table_word("in", Class::done)}, in.end = in.begin;
        clauses[1].insert(clauses[1].begin(), in);
        clauses[1].insert(clauses[1].begin(), clauses[0].begin(), clauses[0].end());
        clauses.erase(clauses.begin());
    }
    // mite drop over 7 days, h4 14, h5 21
    const auto of_the_method = [](const Item& i) { return i.idle() || i.has(Class::method) || i.is("over") || i.is("per") || i.is("in") || (i.what == What::value && i.value.dimension == Dimension::duration); };
    const bool hive_follows = clauses.size() > 1 && clauses[1].size() == 2 && is_hives(clauses[1][0]) && (bare_number(clauses[1][1]) || clauses[1][1].what == What::slash);
    if (hive_follows && std::all_of(clauses[0].begin(), clauses[0].end(), of_the_method)) {
        clauses[1].insert(clauses[1].begin(), clauses[0].begin(), clauses[0].end());
        clauses.erase(clauses.begin());
    }
    const auto hives = std::find_if(clauses.front().begin(), clauses.front().end(), is_hives);
    std::vector<Item> header(clauses.front().begin(), hives);
    if (hives == clauses.front().end() || !any_method(header)) return;
    // drop 8 mites in 4 days h4, 14 h5: the 8 is h4's
    std::vector<Item> for_all = header;
    std::erase_if(for_all, [](const Item& i) { return i.what == What::stop; });
    said_once(for_all);
    const bool counted = std::any_of(for_all.begin(), for_all.end(), [](const Item& i) { return i.what == What::slash || (bare_number(i) && i.value.amount < 50'000); });
    if (counted) return;
    clauses.front().erase(clauses.front().begin(), hives);
    std::erase_if(header, [](const Item& i) { return i.what == What::stop; });
    const std::vector<Item> once = said_once(header);
    clause_for_each_hive(clauses);
    const auto sample = [](const Item& i) { return i.what == What::slash || (i.what == What::value && (i.value.dimension == Dimension::duration || i.value.amount >= 50'000)); };
    const bool sampled = once.empty() && std::any_of(clauses.front().begin(), clauses.front().end(), sample);
    for (std::size_t c = 0; c < clauses.size(); ++c) {
        const bool as_before = sampled && clauses[c].size() == 2;   // h1 12 mites in 3 days, h2 9: in as many
        if (c > 0 && (as_before || !any_hive(clauses[c]) || any_method(clauses[c]) || !std::all_of(clauses[c].begin(), clauses[c].end(), tells_a_count))) continue;
        std::vector<Item> said = header;
        if (c > 0)
            for (Item& i : said) i.begin = i.end = clauses[c].front().begin;
        const std::uint32_t end = clauses[c].back().end;
        clauses[c].insert(clauses[c].begin(), said.begin(), said.end());
        for (Item i : once) i.begin = i.end = end, clauses[c].push_back(i);
    }
}

/// `pulled honey: h1 2 supers, 51 kg, h2 1 super`: what was done is said once for all hives that follow.
void LineReader::deed_for_all(std::vector<std::vector<Item>>& clauses) const {
    if (clauses.empty()) return;
    std::vector<Item>& first = clauses.front();
    const auto colon = std::find_if(first.begin(), first.end(), [](const Item& i) { return stop(i, ":"); });
    const bool apart = colon == first.end() && clauses.size() > 1 && !clauses[1].empty() && is_hives(clauses[1].front());   // pulled honey - h1 2 supers
    const bool led = colon != first.end() && colon + 1 != first.end() && is_hives(*(colon + 1));
    const auto deed = [](const Item& i) { return i.is("taken off") || i.is("added") || i.is("fed"); };
    const auto fits = [&](const Item& i) { return i.idle() || i.is("honey") || deed(i); };
    if (!(apart || led) || std::count_if(first.begin(), colon, deed) != 1 || !std::all_of(first.begin(), colon, fits)) return;
    const Item said = *std::find_if(first.begin(), colon, deed);
    if (apart) clauses.erase(clauses.begin());
    else first.erase(first.begin(), colon + 1);
    for (std::vector<Item>& clause : clauses) {
        const bool goes_on = clause.size() == 2 && bare_number(clause[1]);   // h1 2 supers, h2 1
        if (clause.size() < 2 || !is_hives(clause.front()) || eventful(clause) || goes_on) continue;
        Item here = said;
        here.begin = here.end = clause.front().end;
        clause.insert(clause.begin() + 1, here);
    }
}

/// `did an alcohol wash on h1, 3 mites in 300 bees`, `hefted, heavy`: how it was found stands in the clause before.
bool LineReader::found_as_said_before(const std::vector<Item>& items, const std::vector<Solution>& ways) {
    const Kind kind = ways.front().candidates.front().fact.kind;
    const bool found = ways.front().candidates.size() == 1 && (kind == Kind::mites || kind == Kind::stores);
    if (!found || any_method(items) || !last_.set || last_.out >= out_->size() || out_->back().fact.kind != Kind::remark || !any_method(last_.items)) return false;
    return join_last(items);
}

/// `put a super on h2 and h3 has 4 cells`: no list of hives, but a clause about each.
void LineReader::another_hive_begins(std::vector<std::vector<Item>>& clauses) const {
    for (std::size_t c = 0; c < clauses.size(); ++c)
        for (std::size_t i = 1; i + 2 < clauses[c].size(); ++i) {
            const Item& list = clauses[c][i];
            if (list.what != What::hives || list.hives.size() < 2 || !list.unknown_hives.empty()) continue;
            const std::string verb = surface(clauses[c][i + 1]);
            const bool singular = verb == "has" || verb == "is" || verb == "was" || verb == "had" || verb == "got" || verb == "looks" || verb == "needs";
            auto parts = singular ? without_the_last(list, surface(list), {" and ", " & "}) : std::nullopt;
            if (!parts || !eventful({clauses[c].begin(), clauses[c].begin() + static_cast<std::ptrdiff_t>(i)})) continue;
            std::vector<Item> next(clauses[c].begin() + static_cast<std::ptrdiff_t>(i), clauses[c].end());
            next.front() = std::move(parts->second);
            next.front().role = Item::Role::none;
            clauses[c].resize(i + 1);
            clauses[c][i] = std::move(parts->first);
            clauses.insert(clauses.begin() + static_cast<std::ptrdiff_t>(c) + 1, std::move(next));
            break;
        }
}

/// `super on h3, h4 fed 2 L`: no list, where what stands before the hives and what comes after them are two things and each
/// is read by itself.
void LineReader::lists_that_are_none(std::vector<std::vector<Item>>& clauses) {
    for (std::size_t c = 0; c < clauses.size(); ++c)
        for (std::size_t i = 1; i + 1 < clauses[c].size(); ++i) {
            const std::vector<Item> items = clauses[c];
            const Item& list = items[i];
            if (list.what != What::hives || list.hives.size() < 2 || !list.unknown_hives.empty()) continue;
            const std::string said = surface(list);
            const bool spaced = std::count(said.begin(), said.end(), ' ') == static_cast<std::ptrdiff_t>(list.hives.size()) - 1 && said.find_first_of(",&+") == said.npos;   // h1 h2, of one word each
            const auto parts = spaced ? without_the_last(list, said, {" "}) : without_the_last(list, said, {", ", " and ", " & ", " + "});
            if (!parts || surface(parts->second).find('-') != std::string::npos) continue;   // the last is a range
            std::vector<Item> left(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(i) + 1), right(items.begin() + static_cast<std::ptrdiff_t>(i), items.end());
            left.back() = parts->first, right.front() = parts->second;
            const auto next = std::find_if(right.begin() + 1, right.end(), [](const Item& k) { return !k.idle(); });
            const bool of_all = next != right.end() && (next->is("all") || next->is("both") || says_each(*next));
            // extracted 20 kg from h1 and h2 moisture 17.5%; strips out of h1 and h2 drop on h2 35 in 2 days
            const bool of_honey = std::any_of(right.begin(), right.end(), [](const Item& k) { return k.is("moisture") || k.what == What::lot; });
            if (of_honey || told_of_after(right, 1) > 0) continue;
            const std::optional<Solution> whole = only_way(items);
            if (of_all || (whole && whole->candidates.size() == 1) || !only_way(left) || !only_way(right)) continue;
            clauses[c] = std::move(left);
            clauses.insert(clauses.begin() + static_cast<std::ptrdiff_t>(c) + 1, std::move(right));
            break;
        }
}

/// `super on h3 calm h4`: each is followed by its hive, the first by the one at `i`.
bool LineReader::ends_with_its_hive(const std::vector<Item>& items, std::size_t i) {
    const auto bare = [](const Item& k) { return k.what == What::hives && k.role == Item::Role::none; };
    const auto link = [](const Item& k) { return k.is("and") || k.what == What::stop; };
    const bool object = i > 0 && items[i - 1].has(Class::done) && !on_or_off(items[i - 1]);   // fed h3 2 L eggs in h4
    if (object || std::any_of(items.begin(), items.end(), link)) return false;
    if (headed_ || subject_.said() || bare(items.front()) || !told_of(items, i) || !told_of(items, items.size() - 1) || i + 2 >= items.size() || items[i + 1].has(Class::link) || items[i + 1].has(Class::preposition)) return false;
    const std::vector<Item> left = part_of(items, 0, i + 1), right = part_of(items, i + 1, items.size());
    return (reads(left) || seen_by_itself(left)) && (reads(right) || seen_by_itself(right));
}

/// `h1 calm h2 strong`, with nothing between: each begins with its hive, where both are read by themselves. Not of `into h2`.
void LineReader::run_on_hives(std::vector<std::vector<Item>>& clauses) {
    const auto leads = [](const Item& i) { return i.has(Class::preposition) || i.has(Class::link) || i.has(Class::placing) || i.what == What::sign || i.is("all but") || i.is("but") || i.is("same as"); };
    for (std::size_t c = 0; c < clauses.size(); ++c)
        for (std::size_t i = 1; i + 1 < clauses[c].size(); ++i) {
            const std::vector<Item>& items = clauses[c];
            if (items[i].what != What::hives || items[i].role != Item::Role::none) continue;
            if (ends_with_its_hive(items, i)) {
                break_clause(clauses, c, i + 1, i + 1);
                break;
            }
            const std::vector<Item> left = part_of(items, 0, i), right = part_of(items, i, items.size());
            const bool begun = any_hive(left) ? is_hives(left.front()) : headed_ && subject_.said() && c == 0;
            const bool of_itself = items[i - 1].is("swarmed") || (items[i - 1].is("treated") && surface(items[i - 1]) != "treated");   // oxalic acid trickled
            if (items[i - 1].has(Class::done) && !on_or_off(items[i - 1]) && !of_itself) continue;   // h3 calm and fed h4 2 L
            const bool put = on_or_off(items[i - 1]);   // h1 super on h2 fed 2 L
            if (!begun || (!put && leads(items[i - 1])) || !(put ? reads_as_one(left) : reads(left) || seen_by_itself(left)) || !only_way(right)) continue;
            break_clause(clauses, c, i, i);
            break;
        }
}

/// Where in a clause what is told of another hive begins, its `and`; 0 where nothing does: `took the top super off h1 and
/// the super off h4`, `gave h1 a super and h2 a feeder`, `h1 calm and h2 grumpy`, `united h1 with h2 and moved h3 to mill`.
std::size_t LineReader::other_hive_at(const std::vector<Item>& items) const {
    const auto one_hive = [](const Item& i) { return i.what == What::hives && i.role == Item::Role::none; };
    const auto says_more = [&](const Item& i) { return !i.idle() && !i.has(Class::link) && !is_hives(i) && i.what != What::stop; };
    for (std::size_t k = 1; k + 2 < items.size(); ++k) {
        const auto link = items.begin() + static_cast<std::ptrdiff_t>(k);
        if (!link->is("and") || told_of_after(items, k) != 1 || std::none_of(items.begin(), link, says_more) || std::none_of(link, items.end(), says_more)) continue;
        const bool named = std::any_of(items.begin(), link, is_hives);
        const auto begins = std::find_if(link + 1, items.end(), [](const Item& i) { return !i.idle() && !i.is("in") && !i.is("on"); });
        const bool goes_on = (named || (headed_ && subject_.said())) && begins != items.end() && one_hive(*begins) && !is_hives(items[k - 1]);
        const bool at_the_ends = one_hive(items[k - 1]) && one_hive(items.back());
        const bool own_deeds = named && eventful({items.begin(), link}) && (link + 1)->has(Class::done) && !on_or_off(*(link + 1));
        const bool last_elsewhere = headed_ && subject_.said() && !named && one_hive(items.back()) && told_of(items, items.size() - 1);   // h4 fed 2 L and super on h3
        const auto content = std::find_if(link + 1, items.end(), says_more);
        const bool more = content != items.end() && !content->has(Class::preposition) && !on_or_off(*content);
        if (goes_on || at_the_ends || own_deeds || (last_elsewhere && more)) return k;
    }
    return 0;
}

/// What is told of each of two hives, each for itself. True when the clause is so.
bool LineReader::each_of_two(const std::vector<Item>& items) {
    std::size_t k = other_hive_at(items);
    for (std::size_t link = 1; k == 0 && link + 1 < items.size(); ++link) {   // h3 calm and gave h4 another super
        if (!items[link].is("and")) continue;
        const std::vector<Item> first = part_of(items, 0, link), second = part_of(items, link + 1, items.size());
        const bool of_the_head = headed_ && subject_.said() && !any_hive(first);
        if ((of_the_head || names_its_hive(first)) && names_its_hive(second) && only_way(first) && only_way(second)) k = link;
    }
    if (k == 0) return false;
    const std::vector<Item> left(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(k)), right(items.begin() + static_cast<std::ptrdiff_t>(k) + 1, items.end());
    const bool denied = std::any_of(left.begin(), left.end(), [](const Item& i) { return i.has(Class::negation); });
    if (denied && !any_hive(left) && !(only_way(left) && only_way(right))) return false;
    const Subject before = subject_;
    clause(left);
    subject_ = before;
    const bool goes_on_of_box = out_->size() > first_of_line_ && takes_box_from_before(out_->back().fact.kind);   // top full in h1 and half full in h2
    if (!goes_on_of_box) box_ = {};
    clause(with_the_verb_of(left, right));
    return true;
}

/// `took the top off 3 and gave 4 a super`: two hives by their bare numbers.
bool LineReader::each_of_two_numbers(const std::vector<Item>& items) {
    if (items.size() < 5 || std::none_of(items.begin(), items.end(), bare_number)) return false;
    std::vector<Item> named = items;
    return bare_hives(named) && std::count_if(named.begin(), named.end(), is_hives) > 1 && each_of_two(named);
}

/// `fed h1 2 L and h2 3 L of 2:1`: a clause for each, that the ratio may go to both.
void LineReader::feeds_apart(std::vector<std::vector<Item>>& clauses) const {
    for (std::size_t c = 0; c < clauses.size(); ++c) {
        if (std::none_of(clauses[c].begin(), clauses[c].end(), [](const Item& i) { return i.is("fed"); })) continue;
        const std::size_t k = other_hive_at(clauses[c]);
        if (k > 0 && is_hives(clauses[c][k + 1])) break_clause(clauses, c, k, k + 1);
    }
}

/// Remembers the hives that clauses name at their end; one at the beginning is what the line goes on about.
void LineReader::note_tail(const Clause& c) {
    if (headed_) return;
    const auto said = std::find_if(c.written.begin(), c.written.end(), [](const Item& i) { return !i.idle(); });
    if (said != c.written.end() && said->what == What::hives) tail_.clear();
    for (const HiveId h : c.own.hives)
        if (std::find(tail_.begin(), tail_.end(), h) == tail_.end()) tail_.push_back(h);
}

}  // namespace waxtab
