#include <fmt/format.h>

#include "history/citing.hpp"
#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

using By = BoxChoice::By;
using Sighted = BoxSighting::What;

/// Net honey is the box before less the box after extraction, to 100 g. Source: COLOSS BEEBOOK, Standard
/// methods for rearing and selection of queens, J. Apic. Res. 52(1), 2013, 3.3.1.
void settle_net(Replay& r, const Step& s, Taking& taking) {
    if (!taking.gross || !taking.tare) return;
    if (*taking.tare >= *taking.gross) {
        taking.net.reset();
        return report_heavier_after(r, s, taking);
    }
    taking.net = *taking.gross - *taking.tare;
}

Taking* latest_taking(Replay& r, BoxId box) {
    const std::int64_t at = r.box_state(box).taking;
    return at < 0 ? nullptr : &r.out.takings[static_cast<std::size_t>(at)];
}

bool emptied_since(const Box& box, Day day) { return !box.emptied.empty() && box.emptied.back() >= day; }

void weigh(Replay& r, const Step& s, BoxId id, Mass mass) {
    const std::string_view detail = s.fact.detail;
    r.box(id).sightings.push_back({Sighted::gross_weight, s.day(), s.id, mass.ng, mass.ng, mass.ng, detail, false});
    Taking* taking = latest_taking(r, id);
    if (detail == "after") {
        if (!taking) return report_not_taken_off(r, s, s.fact.box);
        return set_tare(r, s, *taking, mass);
    }
    if (!taking || stands_on(r, id) != no_hive) return;
    if (detail == "before" || (!taking->gross && !taking->net)) set_gross(r, s, *taking, mass);
    else if (emptied_since(r.box(id), taking->day)) set_tare(r, s, *taking, mass);
}

/// Boxes that came off the hive on its latest day of taking and lack this weight.
std::vector<BoxId> off_and_unweighed(const Replay& r, HiveId hive, bool after) {
    std::vector<BoxId> found;
    const std::vector<std::size_t>& all = r.state(hive).takings;
    for (auto at = all.rbegin(); at != all.rend(); ++at) {
        const Taking& t = r.out.takings[*at];
        if (t.day != r.out.takings[all.back()].day) break;
        const bool lacks = after ? !t.tare : !t.gross;
        if (t.box != no_box && lacks) found.insert(found.begin(), t.box);
    }
    return found;
}

void ask_which_was_weighed(Replay& r, const Step& s, std::size_t several) {
    report(r, s, Severity::error, "which-super",
           fmt::format("{} weighs one of {} supers that came off {}", quoted(r, s.fact), several, r.name(s.fact.hive)),
           "name it by its label, or write the weight where it comes off: `h3 top off 21 kg`",
           {cite(r, s.fact.hive, r.state(s.fact.hive).stack_fact, "they came off here", {})});
}

/// The box is not on: it is one that came off.
std::vector<BoxId> weighed_off_the_hive(Replay& r, const Step& s) {
    const BoxChoice& choice = s.fact.box;
    const bool after = s.fact.detail == "after";
    const std::vector<BoxId> off = off_and_unweighed(r, s.fact.hive, after);
    if (off.size() == 1 || choice.by == By::all || (choice.by == By::top_n && choice.number == off.size())) return off;
    if (off.size() > 1) ask_which_was_weighed(r, s, off.size());
    else if (after) report_not_taken_off(r, s, choice);
    else report_no_such_box(r, s, s.fact.hive, choice, no_box);
    return {};
}

std::vector<BoxId> weighed_by_label(Replay& r, const Step& s) {
    const BoxId box = labelled(r, s.fact.hive, s.fact.box.label);
    if (box != no_box) return {box};
    if (s.fact.hive != no_hive) report_no_such_box(r, s, s.fact.hive, s.fact.box, no_box);
    else report_no_such_label(r, s, s.fact.box.label);
    return {};
}

std::vector<BoxId> weighed(Replay& r, const Step& s) {
    if (s.fact.box.by == By::label) return weighed_by_label(r, s);
    if (s.fact.hive == no_hive) return {};
    if (s.fact.detail != "after") {
        const Resolved found = resolve_told(r, s.fact, s.fact.box);
        if (found.trouble == Resolved::Trouble::none) return found.boxes;
        if (found.trouble == Resolved::Trouble::which) return report_which(r, s, s.fact.hive, s.fact.box), std::vector<BoxId>{};
    }
    return weighed_off_the_hive(r, s);
}

}  // namespace

void set_gross(Replay& r, const Step& s, Taking& taking, Mass mass) {
    taking.gross = mass;
    taking.weighings.push_back(s.id);
    settle_net(r, s, taking);
}

void set_tare(Replay& r, const Step& s, Taking& taking, Mass mass) {
    taking.tare = mass;
    taking.weighings.push_back(s.id);
    settle_net(r, s, taking);
}

std::vector<Mass> in_parts(Mass whole, std::size_t parts) {
    const auto n = static_cast<std::int64_t>(parts);
    std::vector<Mass> out(parts, Mass{whole.ng / n});
    if (!out.empty()) out.front().ng += whole.ng % n;
    return out;
}

void box_weight(Replay& r, Step& s) {
    if (s.fact.value.dimension != Dimension::mass) return;
    s.boxes = weighed(r, s);
    if (s.boxes.empty()) return;
    const std::vector<Mass> parts = in_parts({s.fact.value.amount}, s.boxes.size());
    if (parts.size() > 1) report_weight_shared(r, s, parts.size(), parts.front());
    for (std::size_t i = 0; i < parts.size(); ++i) weigh(r, s, s.boxes[i], parts[i]);
}

}  // namespace waxtab::replaying
