#include <algorithm>

#include "ledger/waiting.hpp"

namespace waxtab {

namespace {

/// A taking as seen from a day: what was weighed and estimated of it by then.
struct Seen {
    const Taking* taking = nullptr;
    const TakingEstimate* estimate = nullptr;
};

/// All that made up the net weight was noted by then.
bool net_known(const Books& books, const Taking& t, Day cutoff) {
    return t.net && std::all_of(t.weighings.begin(), t.weighings.end(), [&](FactId f) { return books.noted_by(f, cutoff); });
}

/// The gross weight was noted after the taking, by `cutoff`: the estimate of the day it came off cannot know it.
bool gross_came_later(const Books& books, const Taking& t, Day cutoff) {
    if (!t.gross || t.fact == set_up_fact) return false;
    return std::any_of(t.weighings.begin(), t.weighings.end(), [&](FactId f) {
        const Fact& fact = books.fact(f);
        return fact.value.amount == t.gross->ng && fact.noted <= cutoff && fact.noted > books.fact(t.fact).noted;
    });
}

const BoxKind* kind_of(const Books& books, const Taking& t) {
    if (t.box == no_box) return nullptr;
    return books.journal.box_kind(books.history.boxes[static_cast<std::size_t>(t.box)].kind);
}

MassRange gross_less_box(const BoxKind& kind, Mass gross) {
    const auto less = [&](double tare_kg) { return std::max(Mass{}, gross - Mass::from_kilograms(tare_kg)); };
    return {less(kind.tare_high_kg), less(kind.tare_kg), less(kind.tare_low_kg), false};
}

MassRange mass_of(const Range& kg) {
    const auto mass = [](double v) { return Mass::from_kilograms(std::max(0.0, v)); };
    const Mass value = mass(kg.value);
    return {std::min(mass(kg.low), value), value, std::max(mass(kg.high), value), false};
}

MassRange known_by(const Books& books, const Seen& seen, Day cutoff) {
    const Taking& t = *seen.taking;
    if (net_known(books, t, cutoff)) return exactly(*t.net);
    const BoxKind* kind = kind_of(books, t);
    if (kind && gross_came_later(books, t, cutoff)) return gross_less_box(*kind, *t.gross);
    if (!seen.estimate) return {};
    const Range& then = seen.estimate->kg_then;
    return mass_of(then.high > 0 ? then : seen.estimate->kg);
}

Seen seen_now(const Books& books, std::size_t i) {
    const auto& estimates = books.estimates.takings;
    return {&books.taking(i), i < estimates.size() ? &estimates[i] : nullptr};
}

/// The n-th taking of its fact, so that it is found again in a history that lacks later notes.
std::size_t ordinal(const History& history, std::size_t i) {
    std::size_t n = 0;
    for (std::size_t k = 0; k < i; ++k) n += history.takings[k].fact == history.takings[i].fact;
    return n;
}

Seen seen_then(const Books& books, const Then& then, std::size_t i) {
    std::size_t skip = ordinal(books.history, i);
    for (std::size_t k = 0; k < then.history.takings.size(); ++k) {
        if (then.history.takings[k].fact != books.taking(i).fact || skip-- > 0) continue;
        return {&then.history.takings[k], k < then.estimates.takings.size() ? &then.estimates.takings[k] : nullptr};
    }
    return seen_now(books, i);
}

bool touches(const Books& books, const Fact& f, const std::vector<std::size_t>& takings) {
    return std::any_of(takings.begin(), takings.end(), [&](std::size_t i) {
        const Taking& t = books.taking(i);
        if (f.hive == no_hive) return f.yard == no_yard || f.yard == yard_of(books, t);
        return f.hive == t.hive || books.history.hives[static_cast<std::size_t>(f.hive)].yard_on(t.day) == yard_of(books, t);
    });
}

/// Something of these yards had happened by the extraction but was noted after it: what was known then is not
/// what is known now, and histories and estimates are made anew as they were.
const Then* then_of(Books& books, const std::vector<std::size_t>& takings, FactId fact) {
    const Fact& e = books.fact(fact);
    const bool asked = std::any_of(books.backdated.begin(), books.backdated.end(), [&](FactId id) {
        const Fact& f = books.fact(id);
        return f.happened <= e.happened && f.noted > e.noted && f.noted <= books.ledger.on && touches(books, f, takings);
    });
    if (!asked || takings.empty()) return nullptr;
    if (!books.then || books.then->first != e.noted) {
        Then then{replay(books.journal, e.noted), {}};
        then.estimates = estimate(books.journal, then.history);
        books.then = {e.noted, std::move(then)};
    }
    return &books.then->second;
}

Claim& claim_of(std::vector<Claim>& claims, HiveId hive) {
    const auto mine = std::find_if(claims.begin(), claims.end(), [&](const Claim& c) { return c.hive == hive; });
    if (mine != claims.end()) return *mine;
    claims.push_back({hive, exactly({}), {}, {}});
    return claims.back();
}

void add(const Books& books, std::vector<Claim>& claims, std::size_t i, const MassRange& honey, Day cutoff) {
    const Taking& t = books.taking(i);
    Claim& claim = claim_of(claims, t.hive);
    claim.honey = claim.honey + honey;
    claim.takings.push_back(i);
    add_once(claim.because, t.fact);
    for (const FactId w : t.weighings)
        if (books.noted_by(w, cutoff)) add_once(claim.because, w);
}

}  // namespace

std::vector<Claim> claims_for(Books& books, const std::vector<std::size_t>& takings, FactId fact) {
    const Day cutoff = books.fact(fact).noted;
    const Then* then = then_of(books, takings, fact);
    std::vector<Claim> claims;
    for (const std::size_t i : takings)
        add(books, claims, i, known_by(books, then ? seen_then(books, *then, i) : seen_now(books, i), cutoff), cutoff);
    return claims;
}

std::vector<Claim> claims_now(const Books& books, const std::vector<std::size_t>& takings) {
    std::vector<Claim> claims;
    for (const std::size_t i : takings) {
        const Seen seen = seen_now(books, i);
        const MassRange honey = seen.taking->net ? exactly(*seen.taking->net) : seen.estimate ? mass_of(seen.estimate->kg) : MassRange{};
        add(books, claims, i, honey, books.ledger.on);
    }
    return claims;
}

}  // namespace waxtab
