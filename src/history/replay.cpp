#include "history/replay.hpp"

#include <algorithm>
#include <array>

#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab {
namespace replaying {
namespace {

struct Row {
    Kind kind;
    Transition transition;
};

constexpr Row transition_rows[] = {
    {Kind::super_on, super_on},
    {Kind::super_off, super_off},
    {Kind::brood_box_on, brood_box_on},
    {Kind::brood_box_off, brood_box_off},
    {Kind::excluder_on, excluder_on},
    {Kind::excluder_off, excluder_off},
    {Kind::escape_on, escape_on},
    {Kind::escape_off, escape_off},
    {Kind::entrance_on, entrance_on},
    {Kind::entrance_off, entrance_off},
    {Kind::feeder_on, feeder_on},
    {Kind::feeder_off, feeder_off},
    {Kind::boxes_swapped, boxes_swapped},
    {Kind::brood_reversed, brood_reversed},
    {Kind::super_lifted, super_lifted},
    {Kind::super_moved, super_moved},
    {Kind::frames_off, frames_off},
    {Kind::box_labelled, box_labelled},
    {Kind::super_count, super_count},
    {Kind::brood_box_count, brood_box_count},
    {Kind::hive_moved, hive_moved},
    {Kind::hive_sold, hive_sold},
    {Kind::hive_dead, hive_dead},
    {Kind::hive_ended, hive_ended},
    {Kind::hive_united, hive_united},
    {Kind::hive_split, hive_divided},
    {Kind::nuc_made, hive_divided},
    {Kind::swarm_hived, hive_born},
    {Kind::hive_bought, hive_born},
    {Kind::full, full},
    {Kind::capped, capped},
    {Kind::drawn, drawn},
    {Kind::sections_done, sections_done},
    {Kind::shakes_out, shakes_out},
    {Kind::super_brood, super_brood},
    {Kind::no_change, no_change},
    {Kind::box_weight, box_weight},
    {Kind::feed, feed},
    {Kind::feeder_state, feeder_state},
    {Kind::treatment, treatment},
    {Kind::treatment_on, treatment_on},
    {Kind::treatment_off, treatment_off},
    {Kind::weather, yard_fact},
    {Kind::temperature, yard_fact},
    {Kind::flow, yard_fact},
    {Kind::bloom, yard_fact},
    {Kind::extracted, extracted},
    {Kind::combs_packed, combs_packed},
    {Kind::moisture, moisture},
    {Kind::honey_index, moisture},
    {Kind::opening_stock, honey_fact},
    {Kind::bought_in, honey_fact},
    {Kind::drained, honey_fact},
    {Kind::blended, honey_fact},
    {Kind::bulk_moved, honey_fact},
    {Kind::jars, honey_fact},
    {Kind::gone_out, honey_fact},
    {Kind::come_back, honey_fact},
    {Kind::stocktake, honey_fact},
    {Kind::wax, honey_fact},
    {Kind::best_before, honey_fact},
    {Kind::fermenting, honey_fact},
    {Kind::shed, shed_said},
    {Kind::shed_in, shed_in},
    {Kind::shed_out, shed_out},
    {Kind::combs_frozen, combs_frozen},
    {Kind::comb_year, comb_year},
    {Kind::todo, todo},
};

constexpr std::array<Transition, kind_count> make_table() {
    std::array<Transition, kind_count> table{};
    for (Transition& t : table) t = only_told;
    for (const Row& row : transition_rows) table[static_cast<std::size_t>(row.kind)] = row.transition;
    return table;
}

constexpr std::array<Transition, kind_count> table = make_table();

}  // namespace

Transition transition_of(Kind kind) { return table[static_cast<std::size_t>(kind)]; }

}  // namespace replaying

History replay(const Journal& journal, Day on) {
    replaying::Replay r = replaying::set_up(journal, on);
    for (FactId id = 0; id < journal.facts.size(); ++id) {
        const Fact& fact = journal.facts[id];
        if (fact.noted <= on && fact.happened <= on) replaying::take_effect(r, id);
    }
    replaying::settle_packings(r);
    return std::move(r.out);
}

}  // namespace waxtab
