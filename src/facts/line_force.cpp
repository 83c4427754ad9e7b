#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"

// What is no event though it names one: plans, conditions, reasons, doubts.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

/// What was not done, and cannot be any more: only that.
bool regret(std::string_view surface) {
    static constexpr std::array<std::string_view, 10> words = {"ought to have", "should've", "should have", "could've", "could have", "would've", "forgot", "forgot to", "was going to", "were going to"};
    return std::find(words.begin(), words.end(), surface) != words.end();
}

/// Words that put an event out of force without asking for anything to be done.
bool wishful(std::string_view surface) {
    static constexpr std::array<std::string_view, 20> words = {"thinking of", "thinking about", "could", "might", "may", "would", "might have", "may have", "must have", "meant to", "wish", "expect", "expecting",
        "hope", "hoping", "waiting for", "wait", "considering", "ready for", "soon"};
    return regret(surface) || std::find(words.begin(), words.end(), surface) != words.end();
}

/// Begins to tell of the bees.
bool they(std::string_view surface) {
    static constexpr std::array<std::string_view, 8> words = {"they", "they've", "they're", "she", "she's", "it", "it's", "has"};
    return std::find(words.begin(), words.end(), surface.substr(0, surface.find(' '))) != words.end();
}

bool begins_with_plan(std::vector<Item>::const_iterator from, std::vector<Item>::const_iterator to) {
    const auto first = std::find_if(from, to, [](const Item& i) { return !i.has(Class::filler); });
    return first != to && first->has(Class::plan);
}

/// `when I hefted them`: what had been done by then, no condition.
bool when_done(const std::vector<Item>& items, const Item& when) {
    for (const Item* next = &when + 1; next < items.data() + items.size(); ++next) {
        if (next->has(Class::filler)) continue;
        return next->is("weighed") || next->is("inspected") || next->is("opened") || (next->what == What::unknown && next->text.ends_with("ed"));
    }
    return false;
}

}  // namespace

/// `in May`, `when I hefted them`, `drizzle till 11`: a month and a moment are neither plan nor condition.
bool LineReader::tells_when(const std::vector<Item>& items, const Item& i, std::string_view surface) const {
    const bool month = surface == "may" && &i != items.data() && journal_.sources.text({file_, i.begin, i.end}).front() == 'M';
    const bool of_weather = i.is("when") && &i + 1 < items.data() + items.size() && (&i + 1)->what == What::value && std::any_of(items.begin(), items.end(), [](const Item& k) { return k.has(Class::weather); });
    // three days later, eggs seen: when it was
    const bool after_days = surface == "later" && &i != items.data() && (((&i - 1)->what == What::value && (&i - 1)->value.dimension == Dimension::duration) || line_before({file_, i.begin, i.end}).ends_with("a week ") || line_before({file_, i.begin, i.end}).ends_with("a month "));
    if (after_days) return true;
    // misty till ten: how long it was so
    const auto weather = [](const Item& k) { return k.has(Class::weather) || (k.what == What::value && k.value.dimension == Dimension::temperature); };
    const bool so_long = (surface == "till" || surface == "until") && &i != items.data() && std::any_of(items.data(), &i, weather) && std::none_of(items.begin(), items.end(), [](const Item& k) { return is_hives(k) || k.what == What::day; });
    if (so_long) return true;
    const bool name = &i != items.data() && ((&i - 1)->is("into") || (&i - 1)->is("calling it"));   // split into Hope
    return month || name || of_weather || (i.is("when") && surface != "until" && when_done(items, i));
}

/// `feed all taken`, `swap done`, `close to swarming`, `fit to burst`: the word of an order, at `at`, that is none here.
bool LineReader::names_no_order(const std::vector<Item>& items, std::size_t at) const {
    static constexpr std::array<std::string_view, 14> over = {"done", "gone", "taken", "finished", "eaten", "complete", "completed", "used up", "taken down", "went well", "visit", "done well", "taken up", "is done"};
    static constexpr std::array<std::string_view, 6> like = {"fit to", "fit and", "clean as", "build up", "close to", "mark my"};
    std::size_t end = at + 1;
    while (end < items.size() && end < at + 3 && items[end].what != What::stop) ++end;
    if (end == at + 1 || surface(items[at]).starts_with("check") || items[at].is("look")) return false;
    const std::string said = lower(text().substr(items[at].begin, items[end - 1].end - items[at].begin));
    if (std::any_of(like.begin(), like.end(), [&](std::string_view l) { return said.starts_with(l); })) return true;
    return std::any_of(over.begin(), over.end(), [&](std::string_view o) { return said.ends_with(' ' + std::string(o)); });
}

/// The plan, condition or bare imperative that governs a clause, if any.
bool LineReader::governed(const std::vector<std::vector<Item>>& clauses, std::size_t at, std::string& because, bool& todo) const {
    const std::vector<Item>& items = clauses[at];
    static constexpr std::array<std::string_view, 7> pronouns = {"i", "we", "they", "she", "he", "you", "it"};
    bool first_word = true;
    for (const Item& i : items) {
        if (i.what == What::stop) continue;
        const std::string said = surface(i);
        // they needed room, so added a super
        const bool met = said == "needed" && std::any_of(clauses.begin() + static_cast<std::ptrdiff_t>(at), clauses.end(), [](const std::vector<Item>& c) { return std::any_of(c.begin(), c.end(), [](const Item& k) { return k.is("added") || k.is("taken off"); }); });
        if (met) return false;
        const bool of_weather = (said == "later" || said == "soon") && std::any_of(items.begin(), items.end(), [](const Item& k) { return k.has(Class::weather); });   // thundery later
        if (of_weather) continue;
        const bool suffices = said == "will" && &i + 1 < items.data() + items.size() && surface(*(&i + 1)) == "do" && (&i + 2 == items.data() + items.size() || surface(*(&i + 2)).starts_with("for"));   // a bit high but will do
        if (suffices) continue;
        if (tells_when(items, i, said) || (said == "remember" && !first_word)) continue;
        if ((said == "in a week" || said == "in a fortnight" || said == "in two weeks") && (std::any_of(items.begin(), items.end(), [](const Item& k) { return k.is("gained") || k.is("lost weight"); }) || (!eventful(items) && std::none_of(items.begin(), items.end(), [](const Item& k) { return k.has(Class::order); })))) continue;   // the first dry day in a fortnight
        const bool then_done = said == "once" && !first_word && &i + 2 == items.data() + items.size() && items.back().has(Class::done);   // came to 34 kg once extracted
        if (then_done) continue;
        const bool to_see = said == "if" && &i > items.data() && (&i - 1)->is("seen");   // to see if they draw it quicker: why it was done
        if (to_see) return because = said, todo = false, true;
        // the 4 pints I put for h5 should be 6: a correction
        const bool corrects = said == "should" && &i + 2 < items.data() + items.size() && surface(*(&i + 1)) == "be" && holds_number(*(&i + 2)) && std::any_of(items.data(), &i, holds_number);
        if (corrects) return false;
        const bool at_most = said == "if" && &i + 2 == items.data() + items.size() && surface(*(&i + 1)) == "that";   // 3 seams if that
        const bool or_so = said == "if" && &i + 3 == items.data() + items.size() && surface(*(&i + 1)) == "not" && holds_number(*(&i + 2));   // 6 frames if not 7
        if (at_most || or_so) continue;
        if (i.has(Class::plan) || i.has(Class::condition)) {
            because = said;
            const bool negated = std::any_of(items.begin(), items.end(), [](const Item& k) { return k.has(Class::negation); });
            const bool timed = i.is("when") || (said == "needed" && std::any_of(items.begin(), items.end(), [](const Item& k) { return k.has(Class::doubt); }));   // not sure they needed it
            // must be hungry, fed 1 L: what is guessed is no plan, and ends with its clause
            const auto done = [](const Item& k) { return k.has(Class::done) || k.has(Class::order); };
            const bool must_be = said == "must" && &i + 2 < items.data() + items.size() && surface(*(&i + 1)) == "be" && std::none_of(&i + 2, items.data() + items.size(), done);
            if (must_be) return because = "must be", todo = false, true;
            // should be two supers full in there: a guess
            const bool guess = said == "should" && &i + 2 < items.data() + items.size() && surface(*(&i + 1)) == "be" && (holds_number(*(&i + 2)) || (&i + 2)->has(Class::about));
            todo = !timed && !guess && !wishful(said) && !(negated && (said.starts_with("need") || said == "will" || said.starts_with("should") || said.starts_with("want")));
            return true;
        }
        const bool weather = i.has(Class::weather) && std::all_of(items.begin(), items.end(), [](const Item& k) { return k.has(Class::weather) || k.has(Class::link) || k.idle(); });   // close and thundery
        const bool state = said == "clean" && items.size() == 1;   // 2 wet supers off, clean
        const bool weighed = said == "weigh" && &i + 1 < items.data() + items.size() && ((&i + 1)->what == What::value || (&i + 1)->has(Class::about));   // h5 to h8: weigh 38 and 41 kg
        if (first_word && i.has(Class::order) && names_no_order(items, static_cast<std::size_t>(&i - items.data()))) return false;   // feed all taken
        if (first_word && i.has(Class::order) && !said.ends_with('s') && !weather && !state && !weighed) {
            because = said;
            todo = true;
            return true;
        }
        const bool someone = std::find(pronouns.begin(), pronouns.end(), said) != pronouns.end();   // I give that queen a month: nobody is asked to
        if (someone || (!i.has(Class::filler) && !i.has(Class::link))) first_word = false;
    }
    return false;
}

/// The clause after the last one governed. A plan governs to the end of its sentence; what is not needed only itself, and a
/// wish or a missed chance to the next plan.
std::size_t LineReader::governed_to(const std::vector<std::vector<Item>>& clauses, std::size_t at, bool todo, const std::string& because) {
    if (regret(because) || because == "must be" || (!todo && because.starts_with("need"))) return at + 1;
    std::size_t end = at + 1;
    // needs a super, they have bees on all 16 frames: why
    const auto why_it_needs = [&](const std::vector<Item>& c) {
        std::vector<Item> joined = c;
        chunk(joined, item_context());
        return !c.empty() && they(surface(c.front())) && !eventful(joined) && reads(c);
    };
    // want a super, gave each one: done
    const auto begins_with = [&](const std::vector<Item>& c, const auto& words) {
        const auto first = std::find_if(c.begin(), c.end(), [](const Item& i) { return !i.idle() && !i.has(Class::link); });
        return first != c.end() && std::find(words.begin(), words.end(), surface(*first)) != words.end();
    };
    const auto done = [&](const std::vector<Item>& c) {
        static constexpr std::array<std::string_view, 10> past = {"put", "put on", "gave", "gave it", "gave them", "gave her", "took", "added", "fed", "pulled"};
        return begins_with(c, past);
    };
    if (todo && (because.starts_with("need") || because.starts_with("want"))) {
        while (end < clauses.size() && !done(clauses[end]) && !(because.starts_with("need") && why_it_needs(clauses[end]))) ++end;
        return end;
    }
    std::string why;
    bool other = false;
    // h4 oxalic in December if broodless, h5 queenright, eggs seen: what was seen at another hive
    const std::vector<Item>& plan = clauses[at];
    const bool condition = !plan.empty() && plan.front().has(Class::condition);
    const auto another_seen = [&](const std::vector<Item>& c) {
        const bool begins = c.size() > 1 && is_hives(c.front()) && c.front().role == Item::Role::none && any_hive(plan);
        return begins && std::none_of(plan.begin(), plan.end(), [&](const Item& i) { return i.what == What::hives && i.hives == c.front().hives; }) && seen_by_itself(part_of(c, 1, c.size()));
    };
    // next time clip her, second drawn super added: done
    const auto added = [&](const std::vector<Item>& c) {
        static constexpr std::array<std::string_view, 7> ends = {"added", "given", "removed", "fitted", "put on", "taken off", "replaced"};
        return c.size() > 1 && c.back().has(Class::done) && std::find(ends.begin(), ends.end(), surface(c.back())) != ends.end() && reads(c);
    };
    // plan on oxalic in November, sold 12 more jars: done
    const auto deed = [&](const std::vector<Item>& c) {
        static constexpr std::array<std::string_view, 7> past = {"gave", "took", "sold", "extracted", "bottled", "filled", "jarred"};
        return begins_with(c, past) && reads(c);
    };
    if (todo && !condition) {
        while (end < clauses.size() && !((another_seen(clauses[end]) || added(clauses[end]) || deed(clauses[end])) && !governed(clauses, end, why, other))) ++end;
        return end;
    }
    if (todo || !wishful(because)) return clauses.size();
    while (end < clauses.size() && !(governed(clauses, end, why, other) && other)) ++end;
    return end;
}

/// `excluder off because they won't go through`: the reason is a clause of its own. Not in `all capped but one`.
bool LineReader::gives_reason(const std::vector<Item>& items, std::size_t at) const {
    static constexpr std::array<std::string_view, 40> words = {"as i'm", "as i", "as we're", "as we", "since i'm", "since i", "since we're", "since we", "since it's", "since it is", "since it was", "since she", "since there", "as it's", "as it is", "as it was", "as she", "as there", "on account of", "because", "b/c", "cos", "since they", "as they", "but", "though", "although", "even though", "while", "whereas", "by the time", "which i", "which is", "which are", "which was", "which were", "seeing as", "seeing that", "given that", "thanks to"};
    const Item& item = items[at];
    if (item.what != What::term || !item.is("but") || at == 0 || at + 1 >= items.size() || items[at - 1].is("same as")) return false;   // h2 the same but only 4: not the same
    const std::string said = surface(item);
    const Item& next = items[at + 1];
    if (said == "but" && surface(next) == "for") return false;   // fully capped but for 2 frames
    const bool amount = next.what == What::value || next.what == What::hives || next.has(Class::count) || next.is("outside frames") || surface(next) == "the";
    // never built up so I united it with h7, heavy so I didn't feed: a denial on one side reaches no further
    const auto denied = [&](auto from, auto to) { return std::any_of(from, to, [](const Item& i) { return i.has(Class::negation); }); };
    const auto here = items.begin() + static_cast<std::ptrdiff_t>(at);
    const bool one_denied = said == "so" && (surface(next) == "i" || surface(next) == "we") && denied(items.begin(), here) != denied(here, items.end());
    return one_denied || (!(said == "but" && amount) && std::find(words.begin(), words.end(), said) != words.end());
}

/// `gave it a frame of eggs from h7 and will check for cells`: the deed before the plan was done.
void LineReader::plans_after_deeds(std::vector<std::vector<Item>>& clauses) const {
    const auto out_of_force = [](const Item& i) { return i.has(Class::plan) || i.has(Class::condition) || i.has(Class::order) || i.has(Class::doubt) || i.has(Class::negation); };
    for (std::size_t c = 0; c < clauses.size(); ++c)
        for (std::size_t k = 1; k + 1 < clauses[c].size(); ++k) {
            const std::vector<Item>& items = clauses[c];
            const auto link = items.begin() + static_cast<std::ptrdiff_t>(k);
            const bool so = surface(items[k]) == "so";
            const bool plan = so ? std::any_of(link, items.end(), [](const Item& i) { return i.has(Class::plan); }) : items[k].is("and") && begins_with_plan(link + 1, items.end());
            const bool deed = std::any_of(items.begin(), link, [](const Item& i) { return i.has(Class::done); }) && std::none_of(items.begin(), link, out_of_force);
            if (!plan || !deed) continue;
            break_clause(clauses, c, k, k + 1);
            break;
        }
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

/// `might requeen, mean, 2 stings`: a number that a wish takes with it is not passed over in silence.
void LineReader::more_than_a_wish(Span where, const std::string& because) {
    if (!wishful(because) || regret(because)) return;
    out_->back().fact.detail = "flagged";
    journal_.diagnostics.push_back({"in-doubt", Severity::warning, where, fmt::format("'{}' is kept as a remark", journal_.sources.text(where)), fmt::format("because of '{}'", because),
                                    fmt::format("begin a new sentence for what is so, apart from '{}'", because), {}});
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

}  // namespace waxtab
