#pragma once
#include <optional>
#include <string>
#include <utility>

#include "estimate/estimate.hpp"
#include "account_checked.hpp"

namespace waxtab::testing {

/// Honey facts, supers taken off and what they were thought to hold, made by hand in date order, so that the
/// ledger is tested without the stages before it. Each fact has a line of its own in a made-up file.
class HoneyBook {
public:
    HoneyBook() {
        BoxKind medium;
        medium.name = "medium";
        medium.tare_low_kg = 5, medium.tare_kg = 6, medium.tare_high_kg = 7;
        journal.box_kinds.push_back(medium);
    }

    YardId yard(std::string name) {
        journal.yards.push_back({std::move(name), {}, true, {}});
        return static_cast<YardId>(journal.yards.size()) - 1;
    }
    HiveId hive(std::string name, YardId at = no_yard) {
        HiveDecl decl;
        decl.name = std::move(name), decl.yard = at;
        journal.hives.push_back(decl);
        HiveHistory h;
        h.hive = static_cast<HiveId>(journal.hives.size()) - 1;
        if (at != no_yard) h.yards.push_back({Day{}, at});
        history.hives.push_back(h);
        return h.hive;
    }

    /// The fact just written; good until the next one.
    Fact& fact(std::string_view day, Kind kind) {
        Fact f;
        f.kind = kind;
        f.happened = f.noted = day_from_iso(day).value();
        const auto begin = static_cast<std::uint32_t>(text_.size());
        text_ += std::string{day} + " " + std::string{name_of(kind)};
        f.span = {0, begin, static_cast<std::uint32_t>(text_.size())};
        text_ += "\n";
        journal.facts.push_back(std::move(f));
        return journal.facts.back();
    }
    Fact& honey(std::string_view day, Kind kind, std::string_view lot = {}) {
        Fact& f = fact(day, kind);
        f.lot = std::string{lot};
        history.honey_facts.push_back(last());
        return f;
    }
    Fact& kg(std::string_view day, Kind kind, std::string_view amount, std::string_view lot = {}) {
        Fact& f = honey(day, kind, lot);
        f.value = measure(amount, Unit::kilogram).value();
        return f;
    }
    /// So many jars of so many grams.
    Fact& jars(std::string_view day, Kind kind, int count, std::string_view grams, std::string_view lot = {}) {
        Fact& f = honey(day, kind, lot);
        f.count = count;
        if (!grams.empty()) f.value = measure(grams, Unit::gram).value();
        if (kind == Kind::gone_out) f.detail = "sold";
        return f;
    }
    FactId last() const { return static_cast<FactId>(journal.facts.size()) - 1; }

    /// A super off, thought to hold so much.
    Taking& super_off(std::string_view day, HiveId hive, Range kg, Comb comb = Comb::drawn) {
        fact(day, Kind::super_off).hive = hive;
        Box box;
        box.id = static_cast<BoxId>(history.boxes.size());
        box.kind = "medium", box.comb = comb;
        BoxStay stay;
        stay.hive = hive, stay.to = day_from_iso(day).value(), stay.off_fact = last();
        box.stays.push_back(stay);
        history.boxes.push_back(box);
        Taking t;
        t.hive = hive, t.day = day_from_iso(day).value(), t.fact = last(), t.box = box.id;
        history.takings.push_back(t);
        estimates.takings.push_back({history.takings.size() - 1, kg, {}, kg});
        return history.takings.back();
    }
    /// A super off of which the honey was weighed.
    Taking& super_off_net(std::string_view day, HiveId hive, double kg) {
        Taking& t = super_off(day, hive, {kg, kg, kg});
        t.net = Mass::from_kilograms(kg);
        t.weighings.push_back(last());
        return t;
    }

    Ledger account(std::string_view on) {
        Journal j = journal;
        j.sources.add("made.hive", text_);
        history.on = estimates.on = day_from_iso(on).value();
        return account_checked(j, history, estimates);
    }

    Journal journal;
    History history;
    Estimates estimates;

private:
    std::string text_;
};

}  // namespace waxtab::testing
