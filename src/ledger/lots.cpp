#include "ledger/lots.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace waxtab {

namespace {

std::string lot_names(const Ledger& ledger) {
    std::string names;
    for (const Lot& lot : ledger.lots) names += (names.empty() ? "" : ", ") + lot.name;
    return names;
}

/// `2026-07-12`, `2026-07-12b`, ... , `2026-07-12z`, `2026-07-12-27`.
std::string nth_name(const std::string& stem, int n) {
    if (n == 1) return stem;
    if (n <= 26) return stem + static_cast<char>('a' + n - 1);
    return fmt::format("{}-{}", stem, n);
}

LotId latest(const Ledger& ledger) {
    LotId best = 0;
    for (LotId i = 1; i < ledger.lots.size(); ++i)
        if (ledger.lots[i].extracted >= ledger.lots[best].extracted) best = i;
    return best;
}

void warn_which_lot(Books& books, FactId fact, std::string_view doing, const std::vector<LotId>& fit, LotId chosen) {
    Diagnostic& d = say(books, Severity::warning, "which-lot", fact,
                        fmt::format("{} without a lot, and {} lots could be meant", doing, fit.size()));
    d.label = fmt::format("taken as lot {}, the latest", books.ledger.lots[chosen].name);
    d.hint = fmt::format("name the lot, for example 'lot {}'", books.ledger.lots[chosen].name);
    for (const LotId i : fit) {
        const Lot& lot = books.ledger.lots[i];
        if (!lot.because.empty()) cite_lot(books, d, lot, {lot.because.front()});
    }
}

LotId lot_unsaid(Books& books, FactId fact, std::string_view doing, const std::function<bool(const Lot&)>& fits) {
    std::vector<LotId> fit;
    const auto& lots = books.ledger.lots;
    for (LotId i = 0; i < lots.size(); ++i)
        if (fits(lots[i])) fit.push_back(i);
    const LotId chosen = fit.size() == 1 ? fit.front() : latest(books.ledger);
    if (fit.size() > 1 && lots[chosen].extracted != books.fact(fact).happened) warn_which_lot(books, fact, doing, fit, chosen);
    if (lots.size() > 1) assume(books, fact, fmt::format("lot {} (not said)", lots[chosen].name));
    return chosen;
}

std::string_view done_here(Kind kind) {
    switch (kind) {
        case Kind::extracted: return "was extracted here";
        case Kind::combs_packed: return "was packed here";
        case Kind::opening_stock: return "was there from the start";
        case Kind::bought_in: return "was bought here";
        case Kind::drained: return "got honey from cappings here";
        case Kind::blended: return "was blended here";
        case Kind::jars: return "was put in jars here";
        case Kind::gone_out: return "went out here";
        case Kind::come_back: return "came back here";
        case Kind::stocktake: return "was counted here";
        default: return "is spoken of here";
    }
}

/// Within what an estimate or a scale leaves open.
bool excusable(const Lot& lot) {
    // Supers are weighed to 100 g: R. Buechler et al., COLOSS BEEBOOK, J. Apic. Res. 52(1), 2013, 3.3.1.
    return lot.beyond <= lot.weight.high - lot.weight.value + Mass::grams(100);
}

}  // namespace

std::string folded(std::string_view name) {
    std::string out{name};
    for (char& c : out)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return out;
}

const Lot* Ledger::lot(std::string_view name) const {
    const std::string wanted = folded(name);
    for (const Lot& l : lots)
        if (folded(l.name) == wanted) return &l;
    return nullptr;
}

LotId find_lot(const Books& books, std::string_view name) {
    const auto there = books.by_name.find(folded(name));
    return there == books.by_name.end() ? no_lot : there->second;
}

LotId lot_named(Books& books, const std::string& name, Day opened) {
    const LotId there = find_lot(books, name);
    if (there != no_lot) return there;
    Lot lot;
    lot.name = name;
    lot.extracted = opened;
    lot.weight = lot.harvested = exactly({});
    books.by_name[folded(name)] = books.ledger.lots.size();
    books.ledger.lots.push_back(std::move(lot));
    return books.ledger.lots.size() - 1;
}

LotId lot_named_for(Books& books, const std::string& stem, Day opened) {
    int n = 1;
    while (find_lot(books, nth_name(stem, n)) != no_lot) ++n;
    const LotId made = lot_named(books, nth_name(stem, n), opened);
    books.ledger.lots[made].name_made = true;
    return made;
}

LotId lot_said(Books& books, FactId fact) {
    const std::string& name = books.fact(fact).lot;
    const LotId found = find_lot(books, name);
    if (found != no_lot) return found;
    Diagnostic& d = say(books, Severity::error, "unknown-lot", fact, fmt::format("there is no lot '{}' by this day", name));
    d.label = "left out of the books";
    d.hint = books.ledger.lots.empty() ? "note the extraction first, or what was there before with 'opening stock'"
                                       : fmt::format("lots by this day: {}", lot_names(books.ledger));
    return no_lot;
}

LotId lot_for(Books& books, FactId fact, std::string_view doing, const std::function<bool(const Lot&)>& fits) {
    if (!books.fact(fact).lot.empty()) return lot_said(books, fact);
    if (!books.ledger.lots.empty()) return lot_unsaid(books, fact, doing, fits);
    Diagnostic& d = say(books, Severity::error, "no-honey-yet", fact, fmt::format("{}, but no honey was extracted by this day", doing));
    d.label = "left out of the books";
    d.hint = "note the extraction first, or what was there before with 'opening stock'";
    return no_lot;
}

void draw_bulk(Books& books, LotId id, Mass need, FactId fact, const std::string& what) {
    Lot& lot = books.ledger.lots[id];
    if (need <= lot.bulk) {
        lot.bulk -= need;
        return;
    }
    const Mass had = lot.bulk;
    lot.beyond += need - lot.bulk;
    lot.bulk = {};
    const bool fine = excusable(lot);
    Diagnostic& d = say(books, fine ? Severity::warning : Severity::error, fine ? "more-than-estimated" : "more-than-there-is", fact,
                        fmt::format("{}, but lot {} had {} left in bulk", what, lot.name, had.ng == 0 ? "nothing" : words(books, had)));
    d.label = fmt::format("{} more than the books have", words(books, need - had));
    d.hint = fine ? "weigh the lot when it is extracted and write it: 'extracted 40 kg lot A'"
                  : "check the weights and the lot; honey from elsewhere: 'opening stock', 'bought in'";
    cite_lot(books, d, lot, lot.because);
}

void cite_lot(const Books& books, Diagnostic& diagnostic, const Lot& lot, const std::vector<FactId>& facts) {
    for (const FactId f : facts)
        if (f != set_up_fact) cite(books, diagnostic, f, fmt::format("lot {} {}", lot.name, done_here(books.fact(f).kind)));
}

}  // namespace waxtab
