#include <algorithm>

#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

using Sighted = BoxSighting::What;

/// A super last seen at most so full, permille, was not taken off for honey.
constexpr std::int64_t unused_up_to = 50;
/// A wet super taken off within so many days was on to be licked dry. Common practice, no source.
constexpr int days_of_cleaning = 14;

/// The weight of a box written down before it came off: with honey the same day, or `before` extraction.
const BoxSighting* earlier_weighing(const Replay& r, BoxId box, Day day) {
    const Box& b = r.box(box);
    for (auto w = b.sightings.rbegin(); w != b.sightings.rend(); ++w) {
        if (w->what != Sighted::gross_weight || w->detail == "after") continue;
        const BoxStay& stay = b.stays.back();
        const bool this_stay = !stay.from || w->day >= *stay.from;
        return this_stay && (w->day == day || w->detail == "before") ? &*w : nullptr;
    }
    return nullptr;
}

bool cleaned_only(const Replay& r, BoxId box, Day day) {
    const Box& b = r.box(box);
    const std::optional<Day>& from = b.stays.back().from;
    return b.comb == Comb::wet && from && days_between(*from, day) < days_of_cleaning;
}

bool holds_honey(const Replay& r, const Step& s, BoxId box) {
    if (s.fact.manner == "empty") return false;
    if (s.fact.value.dimension == Dimension::mass || earlier_weighing(r, box, s.day())) return true;
    if (const auto share = last_share(r, box, Sighted::full)) return *share > unused_up_to;
    if (last_share(r, box, Sighted::capped).value_or(0) > 0) return true;
    return s.fact.detail != "shed" && !cleaned_only(r, box, s.day());
}

void weigh_taking(Replay& r, const Step& s, Taking& taking, std::optional<Mass> mass) {
    if (mass) {
        const bool net = s.fact.manner == "honey" || s.fact.manner == "net";
        (net ? taking.net : taking.gross) = *mass;
        taking.weighings.push_back(s.id);
    } else if (const BoxSighting* w = earlier_weighing(r, taking.box, s.day())) {
        taking.gross = Mass{w->amount};
        taking.weighings.push_back(w->fact);
    }
}

void add_taking(Replay& r, Taking taking) {
    const std::size_t at = r.out.takings.size();
    if (taking.harvest) r.waiting.push_back(at);
    r.state(taking.hive).takings.push_back(at);
    if (taking.box != no_box) r.box_state(taking.box).taking = static_cast<std::int64_t>(at);
    r.out.takings.push_back(std::move(taking));
}

void remember_taken(HiveState& state, Day day, BoxId box) {
    if (state.taken_day != day) state.taken.clear();
    state.taken_day = day;
    state.taken.push_back(box);
}

void take_super(Replay& r, const Step& s, BoxId box, std::optional<Mass> mass) {
    const HiveId hive = s.fact.hive;
    Taking taking;
    taking.hive = hive, taking.day = s.day(), taking.fact = s.id, taking.box = box;
    taking.harvest = holds_honey(r, s, box);
    weigh_taking(r, s, taking, mass);
    take_away(r, hive, box, s.day(), s.id);
    remember_taken(r.state(hive), s.day(), box);
    const bool harvest = taking.harvest;
    add_taking(r, std::move(taking));
    r.box_state(box).where = Whereabouts::waiting;
    if (!harvest) into_shed(r, s, box, comb_left(r, box));
}

std::vector<Mass> weights(Replay& r, const Step& s, std::size_t boxes) {
    if (s.fact.value.dimension != Dimension::mass || boxes == 0) return {};
    const std::vector<Mass> parts = in_parts({s.fact.value.amount}, boxes);
    if (boxes > 1) report_weight_shared(r, s, boxes, parts.front());
    return parts;
}

/// All brood boxes alike: the uppermost is meant, for it makes no difference.
BoxChoice brood_choice(const Replay& r, const Fact& fact) {
    BoxChoice choice = choice_to_take(fact, Role::brood);
    choice.role = Role::brood;
    const std::vector<BoxId> on = boxes_on(r, fact.hive, Role::brood);
    const auto other_kind = [&](BoxId b) { return r.box(b).kind != r.box(on.front()).kind; };
    const bool open = choice.by == BoxChoice::By::unsaid || choice.by == BoxChoice::By::sole;
    if (open && on.size() > 1 && std::none_of(on.begin(), on.end(), other_kind)) choice.by = BoxChoice::By::top;
    return choice;
}

/// More are taken off than are on: those that are on go.
std::vector<BoxId> boxes_to_take(Replay& r, Step& s, const BoxChoice& choice) {
    std::vector<BoxId> boxes = named_boxes(r, s, s.fact.hive, choice, true);
    if (boxes.empty() && choice.by == BoxChoice::By::top_n) boxes = s.boxes = boxes_on(r, s.fact.hive, choice.role);
    return boxes;
}

int whole_frames(const Measure& m) { return static_cast<int>((m.amount + 500) / 1000); }

}  // namespace

void super_off(Replay& r, Step& s) {
    const std::vector<BoxId> boxes = boxes_to_take(r, s, choice_to_take(s.fact, Role::super));
    if (boxes.empty()) return;
    const std::vector<Mass> masses = weights(r, s, boxes.size());
    for (std::size_t i = 0; i < boxes.size(); ++i)
        take_super(r, s, boxes[i], masses.empty() ? std::nullopt : std::optional(masses[i]));
    stack_changed(r, s.fact.hive, s.id);
}

void brood_box_off(Replay& r, Step& s) {
    const std::vector<BoxId> boxes = boxes_to_take(r, s, brood_choice(r, s.fact));
    for (const BoxId box : boxes) {
        take_away(r, s.fact.hive, box, s.day(), s.id);
        into_shed(r, s, box, comb_left(r, box));
    }
    if (boxes.empty()) return;
    r.state(s.fact.hive).stack_assumed = false;
    stack_changed(r, s.fact.hive, s.id);
}

void frames_off(Replay& r, Step& s) {
    const Fact& f = s.fact;
    if (f.box.by != BoxChoice::By::unsaid) named_boxes(r, s, f.hive, f.box, false);
    else if (const auto on = boxes_on(r, f.hive, Role::super); on.size() == 1) s.boxes = on;
    const int frames = f.value.dimension == Dimension::count ? whole_frames(f.value) : std::max(0, f.count);
    if (s.boxes.size() == 1 && frames > r.box(s.boxes.front()).frames) {
        report_too_many_frames(r, s, f.hive, s.boxes.front(), f.value);
        return;
    }
    Taking taking;
    taking.hive = f.hive, taking.day = s.day(), taking.fact = s.id, taking.frames = frames;
    if (f.second.dimension == Dimension::mass) {
        (f.manner == "honey" || f.manner == "net" ? taking.net : taking.gross) = Mass{f.second.amount};
        taking.weighings.push_back(s.id);
    }
    add_taking(r, std::move(taking));
}

}  // namespace waxtab::replaying
