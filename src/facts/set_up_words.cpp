#include "facts/set_up.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "handbook/boxes.hpp"

// Set-up lines written back from what was read.
namespace waxtab {

namespace {

std::string comb_word(Comb comb, int frames) {
    static constexpr std::string_view words[] = {"", "drawn", "foundation", "wet", "starter strips", "cut comb", "sections", "mixed"};
    std::string text(words[static_cast<std::size_t>(comb)]);
    if (frames > 0) text += (comb == Comb::unsaid ? "" : text.find(' ') == text.npos ? "" : " ") + std::to_string(frames) + (comb == Comb::unsaid ? " frames" : "");
    return text;
}

std::string part_text(const StackPart& p) {
    switch (p.what) {
        case StackPart::What::excluder: return "excluder";
        case StackPart::What::escape: return "escape board";
        case StackPart::What::feeder: return "feeder";
        case StackPart::What::upper_entrance: return "upper entrance";
        case StackPart::What::box: break;
    }
    std::string text = p.role == Role::super ? "super" : "brood box";
    if (!p.assumed_kind) text += ' ' + p.box_kind;
    const std::string comb = comb_word(p.comb, p.frames);
    if (!comb.empty()) text += ' ' + comb;
    if (!p.label.empty()) text += " \"" + p.label + '"';
    return text;
}

std::string quoted_if_needed(const std::string& name) {
    const bool plain = name.find_first_of(",:\"") == name.npos && name.find(" at ") == name.npos && name.find(" also ") == name.npos;
    return plain ? name : '"' + name + '"';
}

}  // namespace

std::vector<std::string> set_up_lines(const Journal& journal) {
    const Settings& s = journal.settings;
    const Settings usual;
    std::vector<std::string> lines;
    const auto add = [&](std::string line) { lines.push_back(std::move(line)); };
    std::string units;
    if (s.mass_said) units += s.mass == MassUnit::pound ? " lb" : " kg";
    if (s.temperature_said) units += s.temperature == Unit::fahrenheit ? " F" : " C";
    if (!units.empty()) add("units" + units);
    if (s.gallon != Unit::none) add(s.gallon == Unit::us_gallon ? "gallon us" : "gallon imperial");
    if (s.date_order != DateOrder::unset) add(s.date_order == DateOrder::day_month ? "dates day-month" : "dates month-day");
    if (s.visit_interval_said) add(fmt::format("visit every {} days", s.visit_interval_days));
    const auto named = [](int month, int day) {
        static constexpr std::string_view names[] = {"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"};
        return fmt::format("{} {}", day, names[static_cast<std::size_t>(month - 1)]);
    };
    if (s.season_said) add("season " + named(s.season_from_month, s.season_from_day) + " to " + named(s.season_to_month, s.season_to_day));
    if (s.swarm_said) add("swarm season " + named(s.swarm_from_month, s.swarm_from_day) + " to " + named(s.swarm_to_month, s.swarm_to_day));
    if (!s.climate.empty()) add("climate " + s.climate);
    const auto was_said = [&](std::string_view name) { return std::any_of(s.said.begin(), s.said.end(), [&](const auto& p) { return p.first == name; }); };
    if (was_said("threshold full")) add(fmt::format("threshold full {}%", s.super_at_full_percent));
    if (was_said("threshold drawn")) add(fmt::format("threshold drawn {}%", s.super_at_drawn_percent));
    if (was_said("threshold capped")) add(fmt::format("threshold capped {}%", s.ripe_at_capped_percent));
    if (was_said("threshold moisture")) add(fmt::format("threshold moisture {}.{}%", s.moisture_limit_permille / 10, s.moisture_limit_permille % 10));
    if (was_said("threshold mites")) add(fmt::format("threshold mites {}.{}%", s.mite_threshold_permille / 10, s.mite_threshold_permille % 10));
    if (was_said("risk")) add(fmt::format("risk {}%", s.accepted_risk_percent));
    if (was_said("lift")) add(fmt::format("lift {} kg", s.lift_limit_kg));
    if (s.new_supers_said) add(s.new_supers == Placing::under ? "new supers go under" : "new supers go over");
    for (const BoxKind& k : journal.box_kinds) {
        if (!k.declared) continue;
        std::string line = fmt::format("box {}: {}, {} frames", quoted_if_needed(k.name), k.role == Role::super ? "super" : "brood", k.frames);
        const auto kg = [](double v) { return number_text(*measure(fmt::format("{:.3f}", v), Unit::kilogram)); };
        if (k.depth_mm > 0) line += fmt::format(", {} mm", static_cast<int>(k.depth_mm + 0.5));
        if (k.full_kg > 0) line += ", " + kg(k.full_kg) + " kg full";
        if (k.tare_kg > 0) line += ", " + kg(k.tare_kg) + " kg empty";
        add(line);
    }
    if (s.super_kind_said) add("default super " + s.super_kind);
    if (s.brood_kind_said) add("default brood " + s.brood_kind);
    for (const YardDecl& y : journal.yards) {
        std::string line = "yard " + quoted_if_needed(y.name);
        for (const std::string& a : y.aliases) line += ", also " + quoted_if_needed(a);
        add(line);
    }
    for (const HiveDecl& h : journal.hives) {
        if (!h.declared) continue;
        std::string line = (h.nucleus ? "nuc " : "hive ") + quoted_if_needed(h.name);
        for (const std::string& a : h.aliases) line += ", also " + quoted_if_needed(a);
        if (h.yard != no_yard) line += " at " + quoted_if_needed(journal.yards[static_cast<std::size_t>(h.yard)].name);
        if (!h.stack.empty()) line += ":";
        for (std::size_t i = 0; i < h.stack.size(); ++i) line += (i ? ", " : " ") + part_text(h.stack[i]);
        add(line);
    }
    return lines;
}

}  // namespace waxtab
