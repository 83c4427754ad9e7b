#include "ledger/jars.hpp"

#include <algorithm>
#include <set>

#include <fmt/format.h>

namespace waxtab {

namespace {

/// The one size filled so far, when there is only one.
std::optional<Mass> usual_size(const Ledger& ledger) {
    std::set<Mass> sizes;
    for (const Lot& lot : ledger.lots)
        for (const JarRow& row : lot.jars)
            if (!row.comb) sizes.insert(row.size);
    if (sizes.size() != 1) return {};
    return *sizes.begin();
}

std::optional<Mass> size_of(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (const auto said = honey_of(f.value)) {
        if (f.value.dimension == Dimension::volume)
            assume(books, fact, fmt::format("{} of honey in a jar of {}", jar_text(said->value), text_of(f.value)));
        return said->value;
    }
    const auto usual = usual_size(books.ledger);
    if (usual) {
        assume(books, fact, fmt::format("jars of {} (size not said)", jar_text(*usual)));
        return usual;
    }
    Diagnostic& d = say(books, Severity::error, "jar-size-unsaid", fact, fmt::format("{} jars of what size?", f.count));
    d.label = "left out of the books";
    d.hint = fmt::format("write the size, for example '{} x 454 g'", f.count);
    return {};
}

void refuse_fermenting(Books& books, LotId id, FactId fact) {
    const Lot& lot = books.ledger.lots[id];
    if (!lot.fermenting) return;
    Diagnostic& d = say(books, Severity::error, "fermenting-in-jars", fact, fmt::format("lot {} is fermenting and was put in jars", lot.name));
    d.label = "honey that ferments is not to be jarred";
    d.hint = "if the lot is another one, correct it; fermenting honey may be fit for baking, where local law allows it";
    cite(books, d, lot.fermenting_facts, "noted as fermenting");
}

}  // namespace

JarRow& jar_row(Lot& lot, Mass size, bool comb) {
    const auto there = std::find_if(lot.jars.begin(), lot.jars.end(),
                                    [&](const JarRow& r) { return r.size == size && r.comb == comb; });
    if (there != lot.jars.end()) return *there;
    JarRow row;
    row.size = size;
    row.comb = comb;
    lot.jars.push_back(row);
    return lot.jars.back();
}

void put_in_jars(Books& books, LotId id, FactId fact, const Jarful& jars) {
    const Mass need = times(jars.size, jars.count);
    draw_bulk(books, id, need, fact, fmt::format("{} {} {}", jars_words(jars.count, jars.size, jars.comb), jars.count == 1 ? "is" : "are", words(books, need)));
    Lot& lot = books.ledger.lots[id];
    JarRow& row = jar_row(lot, jars.size, jars.comb);
    row.filled += jars.count;
    row.left += jars.count;
    lot.in_jars += need;
    add_once(row.because, fact);
    add_once(lot.because, fact);
}

void fill_jars(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (f.count <= 0) return;
    const auto size = size_of(books, fact);
    if (!size) return;
    const Mass need = times(*size, f.count);
    const LotId id = lot_for(books, fact, "jars filled", [&](const Lot& lot) { return lot.bulk >= need; });
    if (id == no_lot) return;
    refuse_fermenting(books, id, fact);
    put_in_jars(books, id, fact, {f.count, *size, false});
}

}  // namespace waxtab
