// Queen cells and swarms. No cause and no probability of swarming is ever stated, and cells are never to be
// destroyed while a laying queen is not proven.
#include <algorithm>

#include <fmt/format.h>

#include "advice/rule.hpp"
#include "handbook/calendar.hpp"

namespace waxtab {
namespace {

using handbook::QueenStart;

/// Days after the sighting during which cells still stand as seen: sealed 8 days, or open less.
constexpr int cells_stand_days = 8;

QueenStart start_of(const CellsSeen& cells) {
    if (cells.sealed) return QueenStart::sealed_cell_found;
    return cells.only_cups ? QueenStart::charged_cell : QueenStart::open_cell;
}

std::string cells_words(const CellsSeen& cells) {
    const std::string number = cells.count > 0 ? (cells.roughly ? "about " : "") + std::to_string(cells.count) + " " : "";
    return fmt::format("{}{}{} noted on {}", number, cells.only_cups ? "charged queen cup" : cells.sealed ? "sealed queen cell" : "open queen cell",
                       cells.one() ? "" : "s", iso(cells.day));
}

std::string emergence_words(const CellsSeen& cells) {
    const auto out = *handbook::emergence(start_of(cells));
    const auto day = [&](int n) { return iso(cells.day + date::days{n}); };
    return fmt::format("a virgin may emerge between {} and {}", day(out.usual_from), day(out.usual_to));
}

bool standing(const HiveView& hive) {
    return hive.queen.cells && !hive.queen.cells->supersedure &&
           days_between(hive.queen.cells->day, hive.on()) <= cells_stand_days;
}

Advices queen_and_cells(const HiveView& hive) {
    if (!standing(hive) || !hive.queen.cells->queen_there) return {};
    const CellsSeen& cells = *hive.queen.cells;
    Advice a = advise_to(Act::split, Rank::swarm, "split it or make an artificial swarm today");
    a.by = cells.day;
    how_sure(a, Sureness::likely, "a swarm tends to leave when the first cell is sealed, sooner if cells were taken down");
    a.reasons.push_back(cells_words(cells) + ", with the queen or eggs there");
    a.reasons.push_back(cells.sealed ? "sealed already: do not wait for the next visit"
                                     : fmt::format("first sealing between {} and {}", iso(cells.day),
                                                   iso(cells.day + date::days{5})));
    a.reasons.push_back(emergence_words(cells));
    a.reasons.push_back("taking cells down only is no control: bees build again and go earlier");
    because(a, cells.facts);
    if (hive.queen.queen) because(a, hive.queen.queen->fact);
    else if (hive.queen.eggs) because(a, hive.queen.eggs->fact);
    return {a};
}

Advices cells_without_proof(const HiveView& hive) {
    if (!standing(hive) || hive.queen.cells->queen_there || hive.queen.swarmed || hive.queen.queen_left) return {};
    const CellsSeen& cells = *hive.queen.cells;
    if (days_between(cells.day, hive.on()) > 5 || cells.one()) return {};
    Advice a = advise_to(Act::note, Rank::swarm, "leave the queen cells alone until a laying queen is proven");
    if (!cells.sealed) {   // sealed ones may hatch any day: then it is too late to go looking
        a.act = Act::open;
        a.what = "look for eggs or the queen; " + a.what;
        a.by = cells.day + date::days{cells.only_cups ? 3 : 1};
    }
    how_sure(a, Sureness::certain, "queen and eggs were not noted");
    a.reasons.push_back(cells_words(cells) + ", neither queen nor eggs noted with them");
    a.reasons.push_back("without her they may be all the colony has; with her it is about to swarm: split or artificial swarm");
    a.reasons.push_back(emergence_words(cells));
    because(a, cells.facts);
    return {a};
}

Advices supersedure(const HiveView& hive) {
    const auto& cells = hive.queen.cells;
    if (!cells || !cells->supersedure || days_between(cells->day, hive.on()) > 21) return {};
    Advice a = advise_to(Act::note, Rank::swarm, "leave the supersedure cells to the bees");
    how_sure(a, Sureness::likely, "");
    a.reasons.push_back(cells_words(*cells) + " as supersedure: they replace their queen");
    because(a, cells->facts);
    return {a};
}

Advices cells_come_back(const HiveView& hive) {
    const auto& removed = hive.queen.cells_removed;
    if (!removed || days_between(removed->day, hive.on()) > 10) return {};
    if (const auto visit = hive.last_visit(); visit && days_between(removed->day, *visit) >= 4) return {};
    const bool queen = hive.queen.eggs && days_between(hive.queen.eggs->day, removed->day) <= 3;
    Advice a = advise_to(Act::open, Rank::swarm, queen ? "look again for queen cells" : "make sure a laying queen is there: look for eggs");
    a.by = removed->day + date::days{5};
    how_sure(a, Sureness::likely, "sealed cells have been found 96 hours after a comb with larvae was given");
    a.reasons.push_back(fmt::format("queen cells taken down on {}; bees build again, and go earlier", iso(removed->day)));
    if (!queen) a.reasons.push_back("no eggs noted with them: the colony may have nothing left to raise a queen from");
    because(a, removed->fact);
    return {a};
}

/// One cell is left already, as noted since `day`.
bool down_to_one(const HiveView& hive, Day day) {
    const auto& cells = hive.queen.cells;
    return (cells && cells->day >= day && cells->one()) || hive.last(days_between(day, hive.on()), [](const Fact& f) {
        return f.kind == Kind::cells_left && is_one(f);
    });
}

/// The queen left, with a swarm or to the other half of a split, and several cells are standing.
Advices one_cell(const HiveView& hive) {
    const bool with_split = hive.queen.queen_left && hive.queen.left_with_cells;
    const bool split = with_split && (!hive.queen.swarmed || hive.queen.swarmed->day < hive.queen.queen_left->day);
    const auto& left = split ? hive.queen.queen_left : hive.queen.swarmed;
    if (!left || left->it->detail == "cast" || days_between(left->day, hive.on()) > 7 || down_to_one(hive, left->day)) return {};
    Advice a = advise_to(Act::open, Rank::swarm, "leave one good queen cell, before casts go");
    const auto& sealed = hive.queen.sealed_before_swarm;
    a.by = std::max(left->day, (sealed && !split ? *sealed : left->day) + date::days{7});
    how_sure(a, Sureness::likely, "the first virgin emerges 7-8 days after the first cell is sealed");
    a.reasons.push_back(split ? fmt::format("the queen left with the split on {}, and queen cells were standing; several virgins mean casts", iso(left->day))
                              : fmt::format("swarmed on {}; several virgins mean casts", iso(left->day)));
    if (sealed && !split) a.reasons.push_back(fmt::format("sealed cells were noted on {} already", iso(*sealed)));
    because(a, left->fact);
    return {a};
}

Advices which_half(const HiveView& hive) {
    const auto& split = hive.queen.split_unknown;
    if (!split) return {};
    const int since = days_between(split->day, hive.on());
    if (since > 21) return {};
    Advice a = advise_to(Act::open, Rank::swarm, "look for eggs: is the queen in this half?");
    a.by = std::max(hive.on(), split->day + date::days{5});
    how_sure(a, Sureness::certain, "eggs are gone three days after the queen");
    a.reasons.push_back(fmt::format("split on {} without saying where the queen went", iso(split->day)));
    because(a, split->fact);
    return {a};
}

}  // namespace

std::vector<Rule> swarm_rules() {
    return {
        {{"queen-and-cells", "Queen or eggs together with charged or sealed cells: split or artificial swarm today, not just a date.",
          "theapiarist.org, from memory; BBKA, \"May\" (I. Campbell); W. Shaw, Welsh Beekeepers' Association", "Swarms"},
         &queen_and_cells},
        {{"cells-unproven", "Queen cells without queen or eggs noted: look for her; no cell is touched while a laying queen is not proven.",
          "W. Shaw, Welsh Beekeepers' Association, There are queen cells in my hive", "Swarms"},
         &cells_without_proof},
        {{"supersedure-cells", "Supersedure cells are left to the bees.", "common practice, no source", "Swarms"},
         &supersedure},
        {{"cells-come-back", "After cells were taken down look again within 4-5 days, for eggs first.",
          "BBKA, \"May\" (sealed cells after 96 hours); W. Shaw, Welsh Beekeepers' Association", "Swarms"},
         &cells_come_back},
        {{"one-cell", "After the prime swarm, or a split that took the queen from standing cells, one cell stays, before casts.", "theapiarist.org, from memory", "Swarms"},
         &one_cell},
        {{"which-half", "After a split that does not say where the queen went, eggs tell after three days.",
          "Trunch Beekeepers, \"Queen cells\"; development tables (Queensland DPI)", "Swarms"},
         &which_half},
    };
}

}  // namespace waxtab
