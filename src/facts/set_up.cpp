#include "facts/set_up_line.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "facts/headings.hpp"
#include "facts/items.hpp"
#include "handbook/boxes.hpp"

namespace waxtab {

namespace {

bool hive_line(const std::vector<Token>& t, bool before_headings) {
    if (!word_is(t, 0, "hive") && !word_is(t, 0, "nuc")) return false;
    if (before_headings) return true;
    const auto colon = std::find_if(t.begin(), t.end(), [](const Token& x) { return x.text == ":" && x.type == Token::Type::symbol; });
    const auto at = std::find_if(t.begin(), colon, [](const Token& x) { return x.text == "at" && x.type == Token::Type::word; });
    if (at == colon || at - t.begin() > 6 || at - t.begin() < 2 || at + 1 == t.end() || (at + 1)->type != Token::Type::word) return false;
    // hive 3 strips out, washed at 1/300: a note; hive h9, also Rose, at mill: set up
    for (auto i = t.begin() + 2; i != at; ++i) {
        const bool also = i->text == "also" || (i->text == "," && i + 1 != t.end() && ((i + 1)->text == "also" || (i + 1)->text == "at"));
        if (also) return true;
        if (i->text == "," || t[1].type == Token::Type::number) return false;
    }
    return colon != t.end() || at - t.begin() == 2;   // a name of several words is set up with what stands there
}

bool words_then_number(const std::vector<Token>& t, std::string_view first) { return word_is(t, 0, first) && t.size() >= 2 && t.size() <= 5; }

}  // namespace

void SetUpLine::units() {
    for (std::size_t i = 1; i < t_.size(); ++i) {
        const std::string& w = t_[i].text;
        if (w == "kg" || w == "kilogram" || w == "kilograms") set("units of weight", s_.mass, MassUnit::kilogram), s_.mass_said = true;
        else if (w == "lb" || w == "lbs" || w == "pounds") set("units of weight", s_.mass, MassUnit::pound), s_.mass_said = true;
        else if (w == "c" || w == "celsius") set("units of temperature", s_.temperature, Unit::celsius), s_.temperature_said = true;
        else if (w == "f" || w == "fahrenheit") set("units of temperature", s_.temperature, Unit::fahrenheit), s_.temperature_said = true;
        else if (t_[i].type == Token::Type::word && w != "and") error("set-up", i, fmt::format("'{}' is no unit", w), "write `units kg`, `units lb`, `units kg C` or `units lb F`");
    }
}

void SetUpLine::gallon() {
    if (word_is(t_, 1, "us")) set("gallon", s_.gallon, Unit::us_gallon);
    else if (word_is(t_, 1, "imperial") || word_is(t_, 1, "imp") || word_is(t_, 1, "uk")) set("gallon", s_.gallon, Unit::imperial_gallon);
    else error("set-up", 1, "which gallon?", "write `gallon us` or `gallon imperial`");
}

void SetUpLine::dates() {
    if (word_is(t_, 1, "day")) set("dates", s_.date_order, DateOrder::day_month);
    else if (word_is(t_, 1, "month")) set("dates", s_.date_order, DateOrder::month_day);
    else error("set-up", 1, "which order of dates?", "write `dates day-month` or `dates month-day`");
}

void SetUpLine::year() {
    const int y = t_.size() > 1 && t_[1].value.said() ? static_cast<int>(t_[1].value.amount / 1000) : 0;
    if (y < 1900 || y > 2200) return error("set-up", 1, "which year?", "write for example `year 2026`");
    // Journals of several seasons say a year per file; it holds for the headings that follow.
    s_.year = y;
}

void SetUpLine::default_kind() {
    const bool super = word_is(t_, 1, "super");
    std::size_t from = 2;
    if (!super && !word_is(t_, 1, "brood")) return error("set-up", 1, "default of what?", "write `default super shallow` or `default brood deep`");
    if (word_is(t_, 2, "box")) ++from;
    const std::string name = from < t_.size() ? lower(raw(from, t_.size())) : std::string{};
    if (super) set("default super", s_.super_kind, name), s_.super_kind_said = true;
    else set("default brood", s_.brood_kind, name), s_.brood_kind_said = true;
}

void SetUpLine::new_supers() {
    if (has_word(t_, "under")) set("new supers", s_.new_supers, Placing::under);
    else if (has_word(t_, "over") || has_word(t_, "top")) set("new supers", s_.new_supers, Placing::over);
    else return error("set-up", 2, "where do new supers go?", "write `new supers go over` or `new supers go under`");
    s_.new_supers_said = true;
}

void SetUpLine::visit() {
    for (const Token& t : t_) {
        if (!t.value.said() || (t.value.dimension != Dimension::duration && t.value.dimension != Dimension::count)) continue;
        const auto days = static_cast<int>(t.value.dimension == Dimension::duration ? t.value.amount : t.value.amount / 1000);
        if (days < 1 || days > 60) break;
        set("visit interval", s_.visit_interval_days, days);
        s_.visit_interval_said = true;
        return;
    }
    error("set-up", 1, "how often?", "write for example `visit every 10 days`");
}

void SetUpLine::season(std::size_t from, int& m1, int& d1, int& m2, int& d2, bool& said_it, std::string_view name) {
    std::vector<std::pair<int, int>> found;
    for (std::size_t i = from; i + 1 < t_.size() + 1 && i < t_.size(); ++i) {
        const auto day = [&](std::size_t k) { return k < t_.size() && t_[k].type == Token::Type::number ? static_cast<int>(t_[k].value.amount / 1000) : k < t_.size() && t_[k].type == Token::Type::ordinal ? t_[k].n : 0; };
        const auto month = [&](std::size_t k) { return k < t_.size() && t_[k].type == Token::Type::word ? static_cast<int>(month_number(t_[k].text)) : 0; };
        if (day(i) && month(i + 1)) found.emplace_back(month(i + 1), day(i)), ++i;
        else if (month(i) && day(i + 1)) found.emplace_back(month(i), day(i + 1)), ++i;
    }
    if (found.size() != 2) return error("set-up", 1, fmt::format("from when to when is the {}?", name), fmt::format("write for example `{} 1 April to 31 August`", name));
    const bool differs = said(name) && (found[0] != std::pair{m1, d1} || found[1] != std::pair{m2, d2});
    once(std::string(name), differs);
    if (differs) return;
    std::tie(m1, d1) = found[0];
    std::tie(m2, d2) = found[1];
    said_it = true;
}

void SetUpLine::climate() {
    const std::string name = t_.size() > 1 ? t_[1].text : std::string{};
    if (name != "mild" && name != "middle" && name != "cold") return error("set-up", 1, "which climate?", "write `climate mild`, `climate middle` or `climate cold`");
    set("climate", s_.climate, name);
}

void SetUpLine::threshold() {
    const auto value = std::find_if(t_.begin(), t_.end(), [](const Token& t) { return t.value.dimension == Dimension::share; });
    if (value == t_.end()) return error("set-up", 1, "a threshold needs a percent", "write for example `threshold full 70%`");
    if (value->value.amount > 1000) return error("set-up", static_cast<std::size_t>(value - t_.begin()), "a threshold is at most 100%", "write for example `threshold full 70%`");
    const auto permille = static_cast<int>(value->value.amount);
    if (word_is(t_, 1, "full")) set("threshold full", s_.super_at_full_percent, permille / 10);
    else if (word_is(t_, 1, "drawn")) set("threshold drawn", s_.super_at_drawn_percent, permille / 10);
    else if (word_is(t_, 1, "capped")) set("threshold capped", s_.ripe_at_capped_percent, permille / 10);
    else if (word_is(t_, 1, "moisture")) set("threshold moisture", s_.moisture_limit_permille, permille);
    else if (word_is(t_, 1, "mites")) set("threshold mites", s_.mite_threshold_permille, permille), s_.mite_threshold_said = true;
    else error("set-up", 1, "threshold of what?", "thresholds are full, drawn, capped, moisture and mites");
}

void SetUpLine::risk() {
    if (t_.size() < 2 || t_[1].value.dimension != Dimension::share) return error("set-up", 1, "risk needs a percent", "write for example `risk 20%`");
    set("risk", s_.accepted_risk_percent, static_cast<int>(t_[1].value.amount / 10));
}

void SetUpLine::lift() {
    if (t_.size() < 2 || t_[1].value.dimension != Dimension::mass) return error("set-up", 1, "lift needs a weight", "write for example `lift 20 kg`");
    set("lift", s_.lift_limit_kg, static_cast<int>(t_[1].value.amount / 1'000'000'000'000));
}

bool is_set_up(const std::vector<Token>& t, bool before_headings) {
    if (t.empty() || t[0].type != Token::Type::word) return false;
    if (hive_line(t, before_headings)) return true;
    if (word_is(t, 0, "units") || word_is(t, 0, "threshold")) return true;
    if (word_is(t, 0, "yard")) return before_headings || (!has_symbol(t, ":") && t.size() <= 6);
    if (word_is(t, 0, "gallon") && t.size() == 2) return true;
    if (word_is(t, 0, "dates") && t.size() >= 2) return true;
    if (word_is(t, 0, "year") && t.size() == 2) return true;
    if (word_is(t, 0, "climate") && t.size() == 2) return true;
    if (word_is(t, 0, "default") && (word_is(t, 1, "super") || word_is(t, 1, "brood"))) return true;
    if (word_is(t, 0, "new") && word_is(t, 1, "supers") && word_is(t, 2, "go")) return true;
    if (word_is(t, 0, "visit") && word_is(t, 1, "every")) return true;
    if (word_is(t, 0, "season")) return true;
    if (word_is(t, 0, "swarm") && word_is(t, 1, "season")) return true;
    if (word_is(t, 0, "box") && has_symbol(t, ":") && (has_word(t, "frames") || has_word(t, "full"))) return true;
    if (words_then_number(t, "risk") && t[1].value.dimension == Dimension::share) return true;
    if (words_then_number(t, "lift") && t[1].value.dimension == Dimension::mass) return true;
    return word_is(t, 0, "shed") && before_headings;
}

std::vector<Fact> read_set_up(const std::vector<Token>& tokens, std::string_view text, Span span, Journal& journal, Lexicon& lexicon) {
    return SetUpLine(tokens, text, span, journal, lexicon).read();
}

std::vector<BoxKind> handbook_box_kinds() {
    std::vector<BoxKind> kinds;
    for (const handbook::BoxKind& k : handbook::box_kinds()) {
        BoxKind kind;
        kind.name = std::string(k.name);
        kind.role = k.role == handbook::BoxRole::super ? Role::super : Role::brood;
        kind.frames = k.frames;
        kind.depth_mm = k.depth_mm;
        const handbook::Range full = handbook::full_kg(k);
        kind.full_low_kg = full.low, kind.full_kg = full.typical, kind.full_high_kg = full.high;
        kind.tare_low_kg = k.tare_kg.low, kind.tare_kg = k.tare_kg.typical, kind.tare_high_kg = k.tare_kg.high;
        kinds.push_back(std::move(kind));
    }
    return kinds;
}

void finish_set_up(Journal& journal) {
    const Settings& s = journal.settings;
    for (HiveDecl& hive : journal.hives)
        for (StackPart& part : hive.stack)
            if (part.what == StackPart::What::box && part.box_kind.empty()) part.box_kind = part.role == Role::super ? s.super_kind : s.brood_kind;
    const auto check = [&](const std::string& name, std::string_view setting) {
        if (journal.box_kind(name)) return;
        const auto said = std::find_if(s.said.begin(), s.said.end(), [&](const auto& p) { return p.first == setting; });
        journal.diagnostics.push_back({"unknown-box", Severity::error, said == s.said.end() ? Span{} : said->second, fmt::format("'{}' is no known kind of box", name), {},
                                       fmt::format("declare it, for example `box {}: super, 10 frames, 15 kg full`", name), {}});
    };
    check(s.super_kind, "default super");
    check(s.brood_kind, "default brood");
}

}  // namespace waxtab
