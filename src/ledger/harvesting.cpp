#include "ledger/harvesting.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "ledger/concerns.hpp"
#include "ledger/waiting.hpp"

namespace waxtab {

namespace {

std::string hive_names(const Books& books, const std::vector<HiveId>& hives) {
    std::string out;
    for (std::size_t i = 0; i < hives.size(); ++i) {
        if (i > 0) out += i + 1 == hives.size() ? " and " : ", ";
        out += books.journal.hive_name(hives[i]);
    }
    return out;
}

bool has(const std::vector<Claim>& claims, HiveId hive) {
    return std::any_of(claims.begin(), claims.end(), [&](const Claim& c) { return c.hive == hive; });
}

/// A claim for a hive the extraction names though nothing of it was waiting: as much as the average of the
/// others, between nothing and all. Source: the average net weight for combs that cannot be traced, COLOSS
/// BEEBOOK, J. Apic. Res. 52(1), 2013, 3.3.1.
Claim untraced(HiveId hive, const std::vector<Claim>& traced, const MassRange& total) {
    Mass mean = total.value;
    if (!traced.empty()) {
        Mass all{};
        for (const Claim& c : traced) all += c.honey.value;
        mean = {all.ng / static_cast<std::int64_t>(traced.size())};
    }
    return {hive, {{}, mean, std::max(mean, total.high), false}, {}, {}};
}

void add_untraced(Books& books, FactId fact, std::vector<Claim>& claims, const MassRange& total) {
    std::vector<HiveId> missing;
    for (const HiveId h : hives_said(books.fact(fact)))
        if (!has(claims, h)) missing.push_back(h);
    if (missing.empty()) return;
    const std::vector<Claim> traced = claims;
    for (const HiveId h : missing) claims.push_back(untraced(h, traced, total));
    Diagnostic& d = say(books, Severity::warning, "nothing-waiting", fact,
                        fmt::format("extracted from {}, but no super of {} was noted as taken off and not yet extracted",
                                    hive_names(books, missing), missing.size() == 1 ? "it" : "theirs"));
    d.label = missing.size() == 1 && claims.size() == 1 ? "all of it is booked to this hive" : "their shares are no more than an average";
    d.hint = fmt::format("note what came off, for example '{} top off 22 kg'", books.journal.hive_name(missing.front()));
}

/// Nothing was waiting and no hive was named: the lot leads back to no hive.
Claim of_no_hive(Books& books, FactId fact, const MassRange& total) {
    Diagnostic& d = say(books, Severity::warning, "nothing-waiting", fact,
                        fmt::format("{} of honey, but nothing was noted as taken off and not yet extracted", words(books, total.value)));
    d.label = "the lot leads back to no hive";
    d.hint = "note what came off before, or name the hives: 'from h1 h3'";
    return {no_hive, total, {}, {}};
}

std::string supers_words(std::int64_t n) { return fmt::format("{} super{}", n, n == 1 ? "" : "s"); }

void check_count(Books& books, FactId fact, const std::vector<std::size_t>& takings) {
    const std::int32_t said = books.fact(fact).count;
    const auto supers = std::count_if(takings.begin(), takings.end(), [&](std::size_t i) { return books.taking(i).box != no_box; });
    if (said < 0 || said == supers || takings.empty()) return;
    Diagnostic& d = say(books, Severity::warning, "super-count-differs", fact,
                        fmt::format("{} said, but {} waiting to be extracted", supers_words(said),
                                    supers == 1 ? "1 super was" : fmt::format("{} supers were", supers)));
    d.label = fmt::format("{} counted as extracted", supers_words(supers));
    d.hint = "name the hives, for example 'extracted 82 kg lot A from h1 h3', or note the supers that came off";
    for (const std::size_t i : takings) cite(books, d, books.taking(i).fact, "waiting since");
}

/// A weight far from what the supers can have held points at a forgotten super or hive, or a slip of the pen.
void check_weight(Books& books, FactId fact, const MassRange& said, const MassRange& claimed) {
    if (claimed.value.ng == 0) return;
    const bool light = said.value.kilograms() < 0.75 * claimed.low.kilograms();
    const bool heavy = said.value.kilograms() > 1.25 * claimed.high.kilograms();
    if (!light && !heavy) return;
    Diagnostic& d = say(books, Severity::warning, "lot-weight-odd", fact,
                        fmt::format("{} extracted, but what came off is thought to have held {} ({} to {})", words(books, said.value),
                                    words(books, claimed.value), words(books, claimed.low), words(books, claimed.high)));
    d.label = heavy ? "more than the supers can have held" : "much less than the supers held";
    d.hint = heavy ? "is a super or a hive missing?" : "were all of them extracted? Name the hives: 'from h1 h3'";
}

Harvest harvest_line(const Books& books, const LotShare& share, const std::string& lot, Day otherwise) {
    Harvest h{share.hive, no_yard, otherwise, lot, share.honey, 0, 0, share.takings, share.because};
    if (!share.takings.empty()) h.day = Day{};
    for (const std::size_t i : share.takings) {
        const Taking& t = books.taking(i);
        h.supers += t.box != no_box;
        h.frames += t.box == no_box ? t.frames : 0;
        if (t.day >= h.day) h.yard = yard_of(books, t);
        h.day = std::max(h.day, t.day);
    }
    if (share.takings.empty() && share.hive != no_hive)
        h.yard = books.history.hives[static_cast<std::size_t>(share.hive)].yard_on(h.day);
    return h;
}

void no_longer_waiting(Books& books, const std::vector<std::size_t>& takings) {
    std::erase_if(books.waiting, [&](std::size_t i) { return std::find(takings.begin(), takings.end(), i) != takings.end(); });
}

std::vector<LotShare> shares_for(Books& books, FactId fact, const std::vector<std::size_t>& takings,
                                 const std::optional<MassRange>& measured) {
    std::vector<Claim> claims = claims_for(books, takings, fact);
    MassRange claimed = exactly({});
    for (const Claim& c : claims) claimed = claimed + c.honey;
    if (!measured) return shares_of(claims);
    if (claims.size() >= hives_said(books.fact(fact)).size()) check_weight(books, fact, *measured, claimed);
    add_untraced(books, fact, claims, *measured);
    if (claims.empty()) claims.push_back(of_no_hive(books, fact, *measured));
    return share_out(*measured, claims);
}

}  // namespace

MassRange harvest_into(Books& books, LotId id, FactId fact, const std::vector<std::size_t>& takings,
                       const std::optional<MassRange>& measured) {
    if (books.fact(fact).kind == Kind::extracted) check_count(books, fact, takings);
    std::vector<LotShare> shares = shares_for(books, fact, takings, measured);
    for (LotShare& s : shares) add_once(s.because, fact);
    Lot& lot = books.ledger.lots[id];
    const MassRange got = measured ? *measured : sum(shares);
    lot.harvested = lot.harvested + got;
    lot.weight = lot.weight + got;
    lot.takings.insert(lot.takings.end(), takings.begin(), takings.end());
    add_once(lot.concerns, concerns_of(books.journal, books.history, takings));
    merge_shares(lot.shares, shares);
    add_once(lot.because, fact);
    for (const LotShare& s : shares)
        if (s.hive != no_hive) books.ledger.harvests.push_back(harvest_line(books, s, lot.name, books.fact(fact).happened));
    no_longer_waiting(books, takings);
    return got;
}

LotId lot_to_fill(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (!f.lot.empty()) return lot_named(books, f.lot, f.happened);
    const LotId made = lot_named_for(books, iso(f.happened), f.happened);
    assume(books, fact, fmt::format("lot {} (not said)", books.ledger.lots[made].name));
    return made;
}

void book_waiting(Books& books) {
    books.ledger.waiting = books.waiting;
    books.ledger.waiting_honey = exactly({});
    for (const Claim& c : claims_now(books, books.waiting)) {
        for (const LotShare& s : shares_of({c})) books.ledger.harvests.push_back(harvest_line(books, s, "", books.ledger.on));
        books.ledger.waiting_honey = books.ledger.waiting_honey + c.honey;
    }
}

}  // namespace waxtab
