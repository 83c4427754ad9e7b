#include "ledger/waiting.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace waxtab {

namespace {

/// Sections and cut comb are packed, other supers and frames extracted; a packing may say which of the two.
bool is_for(const Books& books, const Taking& t, const Fact& f, bool combs) {
    const Comb comb = t.box == no_box ? Comb::unsaid : books.history.boxes[static_cast<std::size_t>(t.box)].comb;
    const bool is_comb = comb == Comb::sections || comb == Comb::cut_comb;
    if (is_comb != combs) return false;
    return !combs || f.detail.empty() || (f.detail == "sections") == (comb == Comb::sections);
}

/// A line that asks whether boxes are empty: the day's extractions before it are over, as in the histories.
bool asks_for_empty(const Fact& f) {
    return f.kind == Kind::super_on || f.kind == Kind::brood_box_on || f.kind == Kind::shed || (f.kind == Kind::box_weight && f.detail.empty());
}

/// Written further down on its day than the extraction, but before the next one or a line that ends it.
bool still_of_it(const Books& books, FactId extraction, FactId taking) {
    const Fact& f = books.fact(extraction);
    for (FactId id = extraction + 1; id < books.journal.facts.size() && books.fact(id).happened == f.happened; ++id) {
        if (books.fact(id).noted > books.history.on) continue;
        if (books.fact(id).kind == f.kind) return false;
        if (asks_for_empty(books.fact(id))) return taking < id;
    }
    return true;
}

/// Off before the extraction. On one day the order of lines does not tell, since yards and honey house may
/// be in different files; but times do, and an extraction written further down.
bool off_before(const Books& books, const Taking& t, FactId fact) {
    const Fact& f = books.fact(fact);
    if (t.day != f.happened) return t.day < f.happened;
    if (t.fact == set_up_fact || t.fact < fact) return true;
    if (books.fact(t.fact).minute >= 0 && f.minute >= 0) return false;
    return still_of_it(books, fact, t.fact);
}

void warn_late(Books& books, std::size_t i, FactId fact) {
    if (!books.told_late.insert(i).second) return;
    const Taking& t = books.taking(i);
    Diagnostic& d = say(books, Severity::warning, "late-taking", t.fact,
                        fmt::format("came off {} by {}, but was written down after the extraction of {}",
                                    books.journal.hive_name(t.hive), iso(t.day), iso(books.fact(fact).happened)));
    d.label = "waits for the next extraction";
    d.hint = "what a lot holds is not changed by later notes; write it under its own day to count it there";
    cite(books, d, fact, "the extraction");
}

std::vector<std::size_t> of_hives(const Books& books, const std::vector<std::size_t>& ready, const std::vector<HiveId>& hives) {
    std::vector<std::size_t> out;
    for (const std::size_t i : ready)
        if (std::find(hives.begin(), hives.end(), books.taking(i).hive) != hives.end()) out.push_back(i);
    return out;
}

std::vector<std::size_t> of_yard(const Books& books, const std::vector<std::size_t>& ready, YardId yard) {
    std::vector<std::size_t> out;
    for (const std::size_t i : ready)
        if (yard_of(books, books.taking(i)) == yard) out.push_back(i);
    return out;
}

std::vector<std::size_t> ready(const Books& books, FactId fact, bool combs) {
    std::vector<std::size_t> out;
    for (const std::size_t i : books.waiting) {
        const Taking& t = books.taking(i);
        const bool back = t.returned && *t.returned <= books.fact(fact).happened;
        if (!back && is_for(books, t, books.fact(fact), combs) && off_before(books, t, fact)) out.push_back(i);
    }
    return out;
}

std::vector<std::size_t> chosen(Books& books, FactId fact, const std::vector<std::size_t>& all) {
    const Fact& f = books.fact(fact);
    const std::vector<HiveId> hives = hives_said(f);
    if (!hives.empty()) return of_hives(books, all, hives);
    if (f.yard == no_yard) return all;
    const std::vector<std::size_t> here = of_yard(books, all, f.yard);
    if (here.empty() || here.size() == all.size()) return all;
    assume(books, fact, fmt::format("what was waiting at {} (hives not said)", books.journal.yard_name(f.yard)));
    return here;
}

/// Those waiting longest, no more supers than were said; the others go on waiting.
void keep_to_count(Books& books, FactId fact, std::vector<std::size_t>& takings) {
    const std::int32_t said = books.fact(fact).count;
    const auto is_super = [&](std::size_t i) { return books.taking(i).box != no_box; };
    const auto supers = std::count_if(takings.begin(), takings.end(), is_super);
    if (said <= 0 || supers <= said) return;
    Diagnostic& d = say(books, Severity::warning, "super-count-differs", fact,
                        fmt::format("{} said, but {} were waiting to be extracted", said == 1 ? "1 super" : fmt::format("{} supers", said), supers));
    d.label = said == 1 ? "the one that waited longest is counted" : "those that waited longest are counted";
    d.hint = "name the hives, for example 'extracted 82 kg lot A from h1 h3'";
    for (const std::size_t i : takings)
        if (is_super(i)) cite(books, d, books.taking(i).fact, "waiting since");
    std::int32_t kept = 0;
    std::erase_if(takings, [&](std::size_t i) { return is_super(i) && kept++ >= said; });
}

}  // namespace

YardId yard_of(const Books& books, const Taking& t) {
    if (t.hive == no_hive || static_cast<std::size_t>(t.hive) >= books.history.hives.size()) return no_yard;
    return books.history.hives[static_cast<std::size_t>(t.hive)].yard_on(t.day);
}

std::vector<HiveId> hives_said(const Fact& fact) {
    if (fact.hives.empty() && fact.hive != no_hive) return {fact.hive};
    std::vector<HiveId> once;
    for (const HiveId h : fact.hives)
        if (std::find(once.begin(), once.end(), h) == once.end()) once.push_back(h);
    return once;
}

std::vector<std::size_t> takings_for(Books& books, FactId fact, bool combs) {
    std::vector<std::size_t> in_time;
    for (const std::size_t i : chosen(books, fact, ready(books, fact, combs))) {
        if (books.noted_by(books.taking(i).fact, books.fact(fact).noted)) in_time.push_back(i);
        else warn_late(books, i, fact);
    }
    if (!combs) keep_to_count(books, fact, in_time);
    return in_time;
}

}  // namespace waxtab
