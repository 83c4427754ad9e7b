// Where the shed holds fewer supers than are asked for: who goes first.
#include "advice/shed_share.hpp"

#include <algorithm>
#include <tuple>

#include <fmt/format.h>

#include "advice/chance.hpp"
#include "advice/rule.hpp"
#include "advice/supers.hpp"

namespace waxtab {
namespace {

bool fits(const ShedRow& row, const std::string& box_kind, Comb comb) {
    if (row.box_kind != box_kind) return false;
    if (comb == Comb::drawn) return is_one_of(comb_word(row.comb), {"drawn", "wet", "mixed", ""});
    return row.comb == comb;
}

/// How urgent the next super for a claim is: crowded before known before unknown, then by chance.
std::tuple<int, double> urgency(const ShedClaim& claim) {
    const bool first = claim.gets == 0;
    return {first && claim.crowded ? 2 : claim.known ? 1 : 0, claim.chances[static_cast<std::size_t>(claim.gets)]};
}

ShedClaim* next_served(std::vector<ShedClaim>& claims) {
    ShedClaim* best = nullptr;
    for (ShedClaim& c : claims)
        if (c.gets < c.wanted() && (!best || urgency(c) > urgency(*best))) best = &c;
    return best;
}

/// `h3 (9 in 10)`; with how many it gets where that is not all.
std::string claim_words(const Journal& journal, const ShedClaim& claim) {
    const std::string why = claim.crowded ? "crowded" : claim.known ? odds(claim.chances.front()) : "no chance known";
    const bool part = claim.gets > 0 && claim.gets < claim.wanted();
    return fmt::format("{} ({}{})", journal.hive_name(claim.hive), why, part ? fmt::format("; {} of the {} it wants", claim.gets, claim.wanted()) : "");
}

/// So many hives are named; of the others, which have less claim, the number is.
constexpr std::size_t most_named = 12;

void name(std::vector<std::string>& names, std::string words) {
    if (names.size() < most_named) names.push_back(std::move(words));
}

std::string more_words(std::size_t all) { return all > most_named ? fmt::format(" and {} more", all - most_named) : std::string{}; }

}  // namespace

ShedClaim claim_of(const HiveView& hive, int count, int days) {
    ShedClaim claim;
    claim.hive = hive.id;
    claim.known = !hive.supers.empty() && room_known(hive);
    claim.crowded = crowded(hive).has_value();
    const double each = one_more_kg(hive);
    for (int n = 0; n < count; ++n) claim.chances.push_back(claim.known ? hive.estimate->chance_full_within(days, n * each) : 0.0);
    return claim;
}

void share_out(std::vector<ShedClaim>& claims, int in_shed) {
    std::vector<HiveId> served;
    for (ShedClaim& c : claims) c.gets = 0;
    for (int left = in_shed; left > 0; --left) {
        ShedClaim* next = next_served(claims);
        if (!next) break;
        if (next->gets++ == 0) served.push_back(next->hive);
    }
    const auto place = [&](const ShedClaim& c) { return std::find(served.begin(), served.end(), c.hive) - served.begin(); };
    std::stable_sort(claims.begin(), claims.end(), [&](const ShedClaim& a, const ShedClaim& b) {
        if (place(a) != place(b)) return place(a) < place(b);
        return a.gets == 0 && urgency(a) > urgency(b);
    });
}

int supers_in_shed(const History& history, const std::string& box_kind, Comb comb, std::vector<FactId>& because) {
    int n = 0;
    for (const ShedRow& row : history.shed) {
        if (!fits(row, box_kind, comb)) continue;
        n += row.count;
        because.insert(because.end(), row.facts.begin(), row.facts.end());
    }
    return std::max(0, n);
}

std::string shared_words(const Journal& journal, const std::vector<ShedClaim>& claims) {
    std::vector<std::string> some, none;
    std::size_t served = 0;
    for (const ShedClaim& c : claims) {
        served += c.gets > 0;
        name(c.gets > 0 ? some : none, claim_words(journal, c));
    }
    const std::size_t left = claims.size() - served;
    std::string out = some.empty() ? std::string{} : fmt::format("first {}{}", fmt::join(some, ", then "), more_words(served));
    if (!none.empty())
        out += fmt::format("{}none for {}{}", out.empty() ? "" : "; ", left > most_named ? fmt::format("{}", fmt::join(none, ", ")) : listed(none),
                           more_words(left));
    return out + "; in brackets the chance that room runs out without it";
}

}  // namespace waxtab
