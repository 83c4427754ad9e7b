#include "facts/line_reader.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"

// A line of a visit: its sentences, their clauses, and what each clause is read as.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

bool clause_end(const Item& i) { return i.what == What::stop && (i.text == "," || i.text == "(" || i.text == ")" || i.text == "-" || i.text == "/"); }

bool sentence_end(const Item& i) { return i.what == What::stop && (i.text == "." || i.text == ";" || i.text == "!"); }

}  // namespace

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
