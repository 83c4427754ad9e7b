#pragma once
#include <string>
#include <utility>

#include "history/history.hpp"

namespace waxtab {

/// A journal and its history written side by side without going through text, for tests of later stages.
/// Things must be written in date order.
class Notebook {
public:
    explicit Notebook(double full_kg = 16, double spread = 0.15) {
        BoxKind kind;
        kind.name = "medium";
        kind.full_kg = full_kg;
        kind.full_low_kg = full_kg * (1 - spread);
        kind.full_high_kg = full_kg * (1 + spread);
        kind.tare_low_kg = 4.8, kind.tare_kg = 6.5, kind.tare_high_kg = 8.5;
        journal.box_kinds.push_back(kind);
    }

    YardId yard(std::string name) {
        journal.yards.push_back({std::move(name), {}, true, {}});
        history.yard_facts.emplace_back();
        return static_cast<YardId>(journal.yards.size()) - 1;
    }

    HiveId hive(std::string name, YardId at) {
        HiveDecl decl;
        decl.name = std::move(name);
        decl.yard = at;
        decl.declared = true;
        journal.hives.push_back(decl);
        HiveHistory h;
        h.hive = static_cast<HiveId>(journal.hives.size()) - 1;
        h.yards.emplace_back(Day{}, at);
        history.hives.push_back(h);
        return h.hive;
    }

    /// A super that has stood on the hive since before the first note.
    BoxId super_from_before(HiveId hive, Comb comb = Comb::drawn) { return box(hive, comb, 10, {hive, {}, {}, set_up_fact, set_up_fact}, {}); }

    BoxId super_on(HiveId hive, Day day, Comb comb = Comb::drawn, int frames = 10) {
        const FactId fact = note(hive, day, Kind::super_on);
        return box(hive, comb, frames, {hive, day, {}, fact, set_up_fact}, day);
    }

    void put_on(HiveId hive, BoxId id, Day day) {
        const FactId fact = note(hive, day, Kind::super_on);
        at(id).stays.push_back({hive, day, {}, fact, set_up_fact});
        history.hives[static_cast<std::size_t>(hive)].stack.push_back({StackPart::What::box, id, day, fact});
    }

    /// Takes a super off for honey; `kg` its net weight, negative when it was not weighed.
    std::size_t take_off(BoxId id, Day day, double kg = -1, bool harvest = true) {
        Box& b = at(id);
        const HiveId hive = b.stays.back().hive;
        const FactId fact = note(hive, day, Kind::super_off);
        b.stays.back().to = day;
        b.stays.back().off_fact = fact;
        std::erase_if(history.hives[static_cast<std::size_t>(hive)].stack, [&](const Standing& s) { return s.box == id; });
        Taking taking;
        taking.hive = hive, taking.day = day, taking.fact = fact, taking.box = id, taking.harvest = harvest;
        if (kg >= 0) taking.net = Mass::from_kilograms(kg), taking.weighings = {fact};
        history.takings.push_back(taking);
        return history.takings.size() - 1;
    }

    void emptied(BoxId id, Day day) { at(id).emptied.push_back(day); }

    FactId see(BoxId id, Day day, BoxSighting::What what, int permille, int low = -1, int high = -1) {
        const Kind kind = what == BoxSighting::What::capped ? Kind::capped : what == BoxSighting::What::drawn ? Kind::drawn : Kind::full;
        const FactId fact = note(at(id).stays.back().hive, day, kind);
        Measure& m = journal.facts.back().value;
        m.dimension = Dimension::share, m.unit = Unit::percent;
        m.amount = permille, m.low = low < 0 ? permille : low, m.high = high < 0 ? permille : high;
        at(id).sightings.push_back({what, day, fact, m.amount, m.low, m.high, {}, false});
        return fact;
    }
    FactId full(BoxId id, Day day, int percent) { return see(id, day, BoxSighting::What::full, 10 * percent); }
    FactId capped(BoxId id, Day day, int percent) { return see(id, day, BoxSighting::What::capped, 10 * percent); }
    FactId drawn(BoxId id, Day day, int percent) { return see(id, day, BoxSighting::What::drawn, 10 * percent); }

    FactId weight(HiveId hive, Day day, double kg) {
        const FactId fact = note(hive, day, Kind::hive_weight);
        Measure& m = journal.facts.back().value;
        m.dimension = Dimension::mass, m.unit = Unit::kilogram;
        m.amount = m.low = m.high = Mass::from_kilograms(kg).ng;
        return fact;
    }

    FactId flow(YardId yard, Day day, std::string_view detail) {
        const FactId fact = note(no_hive, day, Kind::flow);
        journal.facts.back().yard = yard;
        journal.facts.back().detail = detail;
        history.yard_facts[static_cast<std::size_t>(yard)].push_back(fact);
        return fact;
    }

    FactId note(HiveId hive, Day day, Kind kind) {
        Fact fact;
        fact.kind = kind, fact.happened = fact.noted = day, fact.hive = hive;
        journal.facts.push_back(fact);
        const FactId id = static_cast<FactId>(journal.facts.size()) - 1;
        if (hive == no_hive) return id;
        HiveHistory& h = history.hives[static_cast<std::size_t>(hive)];
        h.events.push_back({day, id, no_box, {}});
        if (h.visits.empty() || h.visits.back() != day) h.visits.push_back(day);
        return id;
    }

    const History& stand_on(Day day) {
        history.on = day;
        return history;
    }

    Journal journal;
    History history;

private:
    Box& at(BoxId id) { return history.boxes[static_cast<std::size_t>(id)]; }

    BoxId box(HiveId hive, Comb comb, int frames, BoxStay stay, std::optional<Day> since) {
        Box b;
        b.id = static_cast<BoxId>(history.boxes.size());
        b.kind = "medium", b.frames = frames, b.comb = comb;
        b.stays.push_back(stay);
        history.boxes.push_back(b);
        history.hives[static_cast<std::size_t>(hive)].stack.push_back({StackPart::What::box, b.id, since, stay.on_fact});
        return b.id;
    }
};

}  // namespace waxtab
