#include <fmt/format.h>

#include "advice/rule.hpp"
#include "text/layout.hpp"

namespace waxtab {
namespace {

/// Figures rather than advice, but found in the same page of the manual.
constexpr RuleEntry breeding_entry{
    "breeding-figures", "Colonies to breed from are shown with yield against their own yard and season, temper, lowest swarming score "
                        "of the season and mites, side by side, never as one mark.",
    "R. Buechler et al., COLOSS BEEBOOK, Standard methods for rearing and selection of queens, J. Apic. Res. 52(1), 2013, sec. 3.3",
    "Breeding"};

std::vector<Rule> join_groups() {
    std::vector<Rule> all;
    for (auto group : {disease_rules, super_rules, room_rules, amend_rules, foundation_rules, harvest_rules, flow_end_rules, food_rules, treatment_rules,
                       mite_rules, swarm_rules, new_queen_rules, brood_rules, inspection_rules, excluder_rules, winter_rules, shed_rules,
                       lot_rules, word_rules}) {
        std::vector<Rule> rules = group();
        all.insert(all.end(), rules.begin(), rules.end());
    }
    return all;
}

std::vector<RuleEntry> entries() {
    std::vector<RuleEntry> out;
    for (const Rule& r : rule_table()) out.push_back(r.entry);
    out.push_back(breeding_entry);
    return out;
}

}  // namespace

const std::vector<Rule>& rule_table() {
    static const std::vector<Rule> table = join_groups();
    return table;
}

const std::vector<RuleEntry>& rules() {
    static const std::vector<RuleEntry> table = entries();
    return table;
}

std::string rules_page() {
    std::string out =
        "# The rules of the advice\n\n" +
        paragraph("Each piece of advice names its rule. Where two contradict at the same hive, disease comes first, then law and food, "
                  "then swarms, then room, then the rest; the advice that stands says what it outranks. A source that is missing is "
                  "called so: *common practice, no source*, or *from memory*.", "", "");
    std::string_view group;
    for (const RuleEntry& r : rules()) {
        if (r.group != group) out += fmt::format("\n## {}\n\n", r.group);
        group = r.group;
        out += paragraph(fmt::format("**{}**: {} *Source: {}.*", r.name, r.says, r.source), "- ", "  ");
    }
    return out;
}

}  // namespace waxtab
