#include "ledger/blend.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "ledger/shares.hpp"

namespace waxtab {

namespace {

/// What one lot puts into a blend.
struct Part {
    LotId lot = no_lot;
    Mass honey;
};

/// The lots named as going in, but not the one they go into.
std::vector<LotId> sources_of(Books& books, FactId fact, LotId into) {
    std::vector<LotId> out;
    for (const std::string& name : books.fact(fact).lots) {
        const LotId id = find_lot(books, name);
        if (id == no_lot) {
            Diagnostic& d = say(books, Severity::error, "unknown-lot", fact, fmt::format("there is no lot '{}' by this day", name));
            d.label = "left out of the blend";
            d.hint = "note its extraction first";
        } else if (id != into && std::find(out.begin(), out.end(), id) == out.end()) {
            out.push_back(id);
        }
    }
    return out;
}

void refuse_fermenting(Books& books, FactId fact, LotId id) {
    const Lot& lot = books.ledger.lots[id];
    if (!lot.fermenting) return;
    Diagnostic& d = say(books, Severity::error, "fermenting-in-blend", fact, fmt::format("lot {} is fermenting and was blended", lot.name));
    d.label = "its yeast spoils the whole blend";
    d.hint = "the yeasts of a fermenting lot are not blended away; if another lot was meant, correct it";
    cite(books, d, lot.fermenting_facts, "noted as fermenting");
}

void error_no_bulk(Books& books, FactId fact, LotId id) {
    const Lot& lot = books.ledger.lots[id];
    Diagnostic& d = say(books, Severity::error, "nothing-to-blend", fact, fmt::format("lot {} was blended, but has nothing left in bulk", lot.name));
    d.label = "nothing of it went into the blend";
    cite_lot(books, d, lot, lot.because);
}

/// The bulk of each, or the weight said in proportion to it.
std::vector<Part> parts_of(Books& books, FactId fact, const std::vector<LotId>& sources) {
    std::vector<Mass> bulk;
    Mass all{};
    for (const LotId id : sources) {
        bulk.push_back(books.ledger.lots[id].bulk);
        all += bulk.back();
        if (bulk.back().ng <= 0) error_no_bulk(books, fact, id);
    }
    const auto said = honey_of(books.fact(fact).value);
    if (said && sources.size() > 1) assume(books, fact, "in proportion to what was left of each (not said)");
    const std::vector<Mass> parts = said ? split(said->value, bulk) : bulk;
    std::vector<Part> out;
    for (std::size_t i = 0; i < sources.size(); ++i)
        if (parts[i].ng > 0) out.push_back({sources[i], parts[i]});
    return out;
}

/// Takings and hives are carried along by the shares; feeds and treatments by the concerns.
void pour(Books& books, const Part& part, LotId into, FactId fact) {
    draw_bulk(books, part.lot, part.honey, fact, fmt::format("{} blended", words(books, part.honey)));
    Lot& from = books.ledger.lots[part.lot];
    Lot& to = books.ledger.lots[into];
    from.blended_out += part.honey;
    to.blended_in += part.honey;
    to.bulk += part.honey;
    std::vector<LotShare> carried = portion(from.shares, part.honey);
    if (carried.empty()) carried.push_back({no_hive, exactly(part.honey), {}, {}});
    for (LotShare& s : carried) {
        s.takings.clear();
        add_once(s.because, fact);
    }
    merge_shares(to.shares, carried);
    to.weight = to.weight + exactly(part.honey);
    if (std::find(to.blended_from.begin(), to.blended_from.end(), from.name) == to.blended_from.end()) to.blended_from.push_back(from.name);
    add_once(to.concerns, from.concerns);
    to.fermenting = to.fermenting || from.fermenting;
    if (from.fermenting) add_once(to.fermenting_facts, from.fermenting_facts);
    add_once(to.because, fact);
    add_once(from.because, fact);
    books.ledger.blendings.push_back({from.name, to.name, part.honey, books.fact(fact).happened, fact});
}

std::optional<Water> water_after(const Books& books, const std::vector<Part>& parts, LotId into, FactId fact) {
    std::vector<WetPart> wet;
    const Lot& to = books.ledger.lots[into];
    if (to.bulk.ng > 0) wet.push_back({to.bulk, to.water});
    for (const Part& p : parts) wet.push_back({p.honey, books.ledger.lots[p.lot].water});
    std::optional<Water> mixed = balance_of(wet);
    if (mixed) add_once(mixed->because, fact);
    return mixed;
}

}  // namespace

void blend(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    const LotId into = f.lot.empty() ? lot_named_for(books, "blend " + iso(f.happened), f.happened) : lot_named(books, f.lot, f.happened);
    if (f.lot.empty()) assume(books, fact, fmt::format("lot {} (not said)", books.ledger.lots[into].name));
    const std::vector<LotId> sources = sources_of(books, fact, into);
    for (const LotId id : sources) refuse_fermenting(books, fact, id);
    refuse_fermenting(books, fact, into);
    const std::vector<Part> parts = parts_of(books, fact, sources);
    if (parts.empty()) return;
    const std::optional<Water> mixed = water_after(books, parts, into, fact);
    for (const Part& p : parts) pour(books, p, into, fact);
    Lot& to = books.ledger.lots[into];
    // A reading made before the blending no longer speaks of what the lot holds.
    to.water = mixed;
    to.moisture_permille.reset();
}

}  // namespace waxtab
