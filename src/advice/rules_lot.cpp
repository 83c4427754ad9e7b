// Honey in lots and jars: what is not to be jarred, blended or sold before something is settled.
#include <algorithm>

#include <fmt/format.h>

#include "advice/rule.hpp"
#include "handbook/moisture.hpp"
#include "ledger/concerns.hpp"

namespace waxtab {
namespace {

constexpr std::string_view infants = "no honey to infants under 12 months";

bool any_left(const Lot& lot) {
    if (lot.bulk.ng > 0) return true;
    for (const JarRow& row : lot.jars)
        if (row.left > 0) return true;
    return false;
}

Advice about(std::string what) {
    Advice a = advise_to(Act::jar, Rank::law_and_food, std::move(what));
    a.cautions = {std::string(infants)};
    return a;
}

Advices fermenting(const Context& c) {
    Advices out;
    for (const Lot& lot : c.ledger.lots) {
        if (!lot.fermenting || !any_left(lot)) continue;
        Advice a = about(fmt::format("keep lot {} out of jars and blends: it ferments", lot.name));
        how_sure(a, Sureness::certain, "");
        a.reasons.push_back("honey sold as such has not begun to ferment; the yeast of a blend is not blended away");
        for (const Seen& s : c.facts)
            if (s.it->kind == Kind::fermenting && s.it->lot == lot.name) because(a, s.fact);
        out.push_back(std::move(a));
    }
    return out;
}

std::string limit_words(double percent) {
    std::string out;
    for (const auto& answer : handbook::limit_answers(percent, false))
        out += fmt::format("{}{} {}", out.empty() ? "" : ", ", answer.limit->name, answer.met ? "met" : "missed");
    return out;
}

Advices wet_lot(const Context& c) {
    Advices out;
    for (const Lot& lot : c.ledger.lots) {
        if (lot.fermenting || !lot.moisture_permille || !any_left(lot)) continue;
        if (*lot.moisture_permille <= c.settings().moisture_limit_permille) continue;
        const double percent = static_cast<double>(*lot.moisture_permille) / 10.0;
        Advice a = about(percent > 20.0 ? fmt::format("keep lot {} out of jars for sale: {}% water", lot.name, decimal(percent))
                                        : fmt::format("use lot {} soon: {}% water keeps badly", lot.name, decimal(percent)));
        how_sure(a, percent > 20.0 ? Sureness::certain : Sureness::likely, std::string(handbook::words(handbook::fermentation(percent))));
        a.reasons.push_back("limits: " + limit_words(percent));
        because(a, lot.moisture_facts);
        out.push_back(std::move(a));
    }
    return out;
}

/// `thymol on 2026-08-01 at h1`, the first few of them.
std::string facts_words(const Context& c, const std::vector<FactId>& facts) {
    constexpr std::size_t few = 3;
    std::vector<std::string> out;
    for (std::size_t i = 0; i < std::min(few, facts.size()); ++i) {
        const Fact& f = c.journal.facts[facts[i]];
        const std::string what = !f.detail.empty() ? std::string(f.detail) : f.kind == Kind::treatment_on || f.kind == Kind::treatment ? f.text : "";
        out.push_back(fmt::format("{} on {} at {}", what.empty() ? "feed" : what, iso(f.happened), c.journal.hive_name(f.hive)));
    }
    if (facts.size() > few) out.push_back(fmt::format("{} more", facts.size() - few));
    return listed(out);
}

Advices concerns(const Context& c) {
    Advices out;
    for (const Lot& lot : c.ledger.lots) {
        if (lot.concerns.empty() || !any_left(lot)) continue;
        const Concerns met = concerns_of(c.journal, c.history, lot);
        const bool sure = !met.feeds.empty() || !met.treatments.empty();
        Advice a = about(fmt::format("clear lot {} with label and law before any of it is sold", lot.name));
        how_sure(a, sure ? Sureness::certain : Sureness::possible, sure ? "" : "syrup may have been carried up");
        if (!met.feeds.empty()) a.reasons.push_back(facts_words(c, met.feeds) + ": fed while its supers were on");
        if (!met.treatments.empty()) a.reasons.push_back(facts_words(c, met.treatments) + ": in while its supers were on");
        if (!met.possible_feeds.empty())
            a.reasons.push_back(facts_words(c, met.possible_feeds) + ": fed shortly before its supers went on, or beside unknown frames");
        because(a, lot.concerns);
        out.push_back(std::move(a));
    }
    return out;
}

/// Jars sold at once from which a business is likely the buyer; own judgement.
constexpr int many_jars = 24;

bool buyer_wanted(const Fact& f) {
    if (f.kind != Kind::gone_out || f.detail != "sold" || !f.text.empty()) return false;
    return f.manner == "business" || f.count >= many_jars || (f.count < 0 && f.value.dimension == Dimension::mass);
}

Advices to_whom(const Context& c) {
    Advice a = about("note who bought it, if it was a business");
    a.cautions.clear();
    for (const Seen& s : c.facts)
        if (buyer_wanted(*s.it) && days_between(s.day, c.on) <= 365) because(a, s.fact);
    if (a.because.empty()) return {};
    how_sure(a, Sureness::possible, "");
    a.reasons.push_back(fmt::format("{} without a buyer; who sells food keeps which businesses got it, private buyers need not be named",
                                    counted(static_cast<int>(a.because.size()), "larger sale")));
    return {a};
}

bool in_jars(const Lot& lot) {
    for (const JarRow& row : lot.jars)
        if (row.left > 0 && !row.comb) return true;
    return false;
}

Advices best_before(const Context& c) {
    Advice past = about(""), missing = about("");
    std::vector<std::string> past_names, missing_names;
    for (const Lot& lot : c.ledger.lots) {
        if (!in_jars(lot)) continue;
        const auto day = day_from_iso(lot.best_before);
        if (lot.best_before.empty()) missing_names.push_back(lot.name), because(missing, lot.because);
        else if (day && *day < c.on) past_names.push_back(lot.name), because(past, lot.because);
    }
    Advices out;
    if (!past_names.empty()) {
        past.what = fmt::format("take the jars of lot {} off sale: past their best-before day", listed(past_names));
        how_sure(past, Sureness::certain, "");
        past.reasons.push_back("the day you noted has passed");
        out.push_back(std::move(past));
    }
    if (!missing_names.empty()) {
        missing.what = fmt::format("note the best-before day of lot {}", listed(missing_names));
        how_sure(missing, Sureness::possible, "");
        missing.reasons.push_back("jars are in stock and no day is noted; two years are usual, less for wet honey");
        out.push_back(std::move(missing));
    }
    return out;
}

}  // namespace

std::vector<Rule> lot_rules() {
    return {
        {{"lot-ferments", "A lot noted as fermenting is never jarred or blended.", "Codex STAN 12-1981; Directive 2001/110/EC", "Honey"},
         &fermenting},
        {{"lot-wet", "A lot above your moisture limit: what the four limits say, and how it keeps.",
          "Directive 2001/110/EC (20%), US grades 50 FR 15861 (18.6%), DLR Westpfalz (17.5%), Lochhead's bands, A Practical Manual of "
          "Beekeeping", "Honey"},
         &wet_lot},
        {{"lot-concerns", "A lot whose supers overlapped a feed or treatment is cleared by the keeper before it is sold.",
          "Codex STAN 12-1981; Reg. (EU) 2019/6 art. 108", "Honey"},
         &concerns},
        {{"best-before", "Jars in stock have a best-before day, chosen by the moisture; jars past it come off sale.",
          "two years: several UK pages; by moisture: DLR Westpfalz (2019)", "Honey"},
         &best_before},
        {{"sold-to-whom", "For honey sold to a business its name is noted; bulk and two dozen jars or more without a buyer are asked about.", "Reg. (EC) 178/2002 art. 18", "Honey"},
         &to_whom},
    };
}

}  // namespace waxtab
