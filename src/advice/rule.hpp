#pragma once
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "advice/context.hpp"
#include "advice/words.hpp"

namespace waxtab {

using Advices = std::vector<Advice>;
/// Looks at one living hive.
using HiveRule = Advices (*)(const HiveView&);
/// Looks at one yard with living hives.
using YardRule = Advices (*)(const YardView&);
/// Looks at the whole journal.
using WholeRule = Advices (*)(const Context&);
/// Adds to advice another rule gave; true when it had something to add.
using AmendRule = bool (*)(const HiveView&, Advice&);
/// Looks at all advice there is, settled, and adds to it; gives advice of its own.
using AllRule = Advices (*)(const Context&, Advices&);

/// One line of the table of rules. Rule functions leave name and source to the table.
struct Rule {
    RuleEntry entry;
    std::variant<HiveRule, YardRule, WholeRule, AmendRule, AllRule> apply;
};

// The table, group by group.
std::vector<Rule> super_rules();
std::vector<Rule> room_rules();
std::vector<Rule> amend_rules();
std::vector<Rule> foundation_rules();
std::vector<Rule> harvest_rules();
std::vector<Rule> flow_end_rules();
std::vector<Rule> food_rules();
std::vector<Rule> treatment_rules();
std::vector<Rule> mite_rules();
std::vector<Rule> swarm_rules();
std::vector<Rule> new_queen_rules();
std::vector<Rule> brood_rules();
std::vector<Rule> inspection_rules();
std::vector<Rule> excluder_rules();
std::vector<Rule> winter_rules();
std::vector<Rule> disease_rules();
std::vector<Rule> shed_rules();
std::vector<Rule> lot_rules();
std::vector<Rule> word_rules();
/// All of them, in the order of the manual.
const std::vector<Rule>& rule_table();

/// A piece of advice, begun; the rest is filled in step by step.
inline Advice advise_to(Act act, Rank rank, std::string what) {
    Advice a;
    a.act = act;
    a.rank = rank;
    a.what = std::move(what);
    return a;
}
/// Says how sure: the word and the figures or the reason for it.
inline void how_sure(Advice& a, Sureness sureness, std::string_view figures) {
    static constexpr std::string_view words[] = {"certain", "likely", "possible"};
    a.sureness = sureness;
    a.sureness_words = std::string(words[static_cast<std::size_t>(sureness)]);
    if (!figures.empty()) a.sureness_words += ": " + std::string(figures);
}
/// `7 in 10 that room runs out` of `likely: 7 in 10 that room runs out`; empty where nothing follows the word.
inline std::string figures_of(const Advice& a) {
    const std::size_t at = a.sureness_words.find(": ");
    return at == std::string::npos ? std::string{} : a.sureness_words.substr(at + 2);
}
inline void because(Advice& a, FactId fact) {
    if (fact != set_up_fact) a.because.push_back(fact);
}
inline void because(Advice& a, const std::vector<FactId>& facts) {
    for (FactId f : facts) because(a, f);
}

}  // namespace waxtab
