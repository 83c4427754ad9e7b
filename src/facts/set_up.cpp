#include "facts/set_up.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "facts/headings.hpp"
#include "facts/items.hpp"
#include "handbook/boxes.hpp"

namespace waxtab {

namespace {

using grammar::Class;

bool word_is(const std::vector<Token>& t, std::size_t i, std::string_view text) {
    return i < t.size() && t[i].type == Token::Type::word && t[i].text == text;
}
bool symbol_is(const std::vector<Token>& t, std::size_t i, std::string_view text) {
    return i < t.size() && t[i].type == Token::Type::symbol && t[i].text == text;
}
bool has_symbol(const std::vector<Token>& t, std::string_view text) {
    return std::any_of(t.begin(), t.end(), [&](const Token& x) { return x.type == Token::Type::symbol && x.text == text; });
}
bool has_word(const std::vector<Token>& t, std::string_view text) {
    return std::any_of(t.begin(), t.end(), [&](const Token& x) { return x.type == Token::Type::word && x.text == text; });
}

bool hive_line(const std::vector<Token>& t, bool before_headings) {
    if (!word_is(t, 0, "hive") && !word_is(t, 0, "nuc")) return false;
    if (before_headings) return true;
    const auto colon = std::find_if(t.begin(), t.end(), [](const Token& x) { return x.text == ":" && x.type == Token::Type::symbol; });
    const auto at = std::find_if(t.begin(), colon, [](const Token& x) { return x.text == "at" && x.type == Token::Type::word; });
    return at != colon && at - t.begin() <= 6;
}

bool words_then_number(const std::vector<Token>& t, std::string_view first) { return word_is(t, 0, first) && t.size() >= 2 && t.size() <= 5; }

/// One set-up line being read.
class SetUpLine {
public:
    SetUpLine(const std::vector<Token>& tokens, std::string_view text, Span span, Journal& journal, Lexicon& lexicon)
        : t_(tokens), text_(text), span_(span), journal_(journal), lexicon_(lexicon), s_(journal.settings) {}

    std::vector<Fact> read() {
        if (word_is(t_, 0, "units")) units();
        else if (word_is(t_, 0, "gallon")) gallon();
        else if (word_is(t_, 0, "dates")) dates();
        else if (word_is(t_, 0, "year")) year();
        else if (word_is(t_, 0, "yard")) yard();
        else if (word_is(t_, 0, "hive") || word_is(t_, 0, "nuc")) hive();
        else if (word_is(t_, 0, "box")) box();
        else if (word_is(t_, 0, "default")) default_kind();
        else if (word_is(t_, 0, "new")) new_supers();
        else if (word_is(t_, 0, "visit")) visit();
        else if (word_is(t_, 0, "season")) season(1, s_.season_from_month, s_.season_from_day, s_.season_to_month, s_.season_to_day, s_.season_said, "season");
        else if (word_is(t_, 0, "swarm")) season(2, s_.swarm_from_month, s_.swarm_from_day, s_.swarm_to_month, s_.swarm_to_day, s_.swarm_said, "swarm season");
        else if (word_is(t_, 0, "climate")) climate();
        else if (word_is(t_, 0, "threshold")) threshold();
        else if (word_is(t_, 0, "risk")) risk();
        else if (word_is(t_, 0, "lift")) lift();
        else if (word_is(t_, 0, "shed")) shed();
        return std::move(facts_);
    }

private:
    std::string raw(std::size_t from, std::size_t to) const { return std::string(text_.substr(t_[from].begin, t_[to - 1].end - t_[from].begin)); }
    Span at(std::size_t i) const { return i < t_.size() ? Span{span_.file, t_[i].begin, t_[i].end} : span_; }
    void error(std::string_view code, std::size_t i, std::string title, std::string hint) {
        journal_.diagnostics.push_back({code, Severity::error, at(i), std::move(title), {}, std::move(hint), {}});
    }
    /// Notes where a setting was said; a second, different saying is an error naming both.
    void once(std::string name, bool differs) {
        const auto said = std::find_if(s_.said.begin(), s_.said.end(), [&](const auto& p) { return p.first == name; });
        if (said == s_.said.end()) {
            s_.said.emplace_back(name, span_);
            return;
        }
        if (!differs) return;
        journal_.diagnostics.push_back({"setting-differs", Severity::error, span_, fmt::format("'{}' was set differently before", name), {},
                                        "keep one of the two lines", {{said->second, "the other one is here"}}});
    }
    bool said(std::string_view name) const {
        return std::any_of(s_.said.begin(), s_.said.end(), [&](const auto& p) { return p.first == name; });
    }
    template <typename T>
    void set(std::string_view name, T& field, T value) {
        const bool differs = said(name) && field != value;
        once(std::string(name), differs);
        if (!differs) field = value;
    }
    void units();
    void gallon();
    void dates();
    void year();
    void yard();
    void hive();
    void box();
    void default_kind();
    void new_supers();
    void visit();
    void season(std::size_t from, int& m1, int& d1, int& m2, int& d2, bool& said_it, std::string_view name);
    void climate();
    void threshold();
    void risk();
    void lift();
    void shed();
    std::size_t name_at(std::size_t i, std::string& name) const;
    YardId yard_named(const std::string& name, bool declared, Span where);
    void stack(std::size_t from, HiveDecl& hive);
    void part(std::size_t from, std::size_t to, HiveDecl& hive);

    const std::vector<Token>& t_;
    std::string_view text_;
    Span span_;
    Journal& journal_;
    Lexicon& lexicon_;
    Settings& s_;
    std::vector<Fact> facts_;
};

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

std::size_t SetUpLine::name_at(std::size_t i, std::string& name) const {
    if (i >= t_.size()) return i;
    if (t_[i].type == Token::Type::quoted) return name = t_[i].text, i + 1;
    const std::size_t from = i;
    while (i < t_.size() && !symbol_is(t_, i, ",") && !symbol_is(t_, i, ":") && !word_is(t_, i, "at") && !word_is(t_, i, "also")) ++i;
    if (i > from) name = raw(from, i);
    return i;
}

YardId SetUpLine::yard_named(const std::string& name, bool declared, Span where) {
    YardId id = lexicon_.yard(lower(name));
    if (id != no_yard) {
        if (declared) journal_.yards[static_cast<std::size_t>(id)].declared = true;
        return id;
    }
    id = static_cast<YardId>(journal_.yards.size());
    journal_.yards.push_back({name, {}, declared, where});
    lexicon_.add_yard(name, id);
    return id;
}

void SetUpLine::yard() {
    std::string name;
    std::size_t i = name_at(1, name);
    if (name.empty()) return error("set-up", 0, "which yard?", "write for example `yard mill, also Mill Lane`");
    const YardId id = yard_named(name, true, span_);
    while (i < t_.size()) {
        std::string alias;
        if (word_is(t_, i, "also") || symbol_is(t_, i, ",")) { ++i; continue; }
        const std::size_t next = name_at(i, alias);
        if (next == i) break;
        i = next;
        if (lexicon_.yard(lower(alias)) == no_yard) {
            journal_.yards[static_cast<std::size_t>(id)].aliases.push_back(alias);
            lexicon_.add_yard(alias, id);
        }
    }
}

void SetUpLine::hive() {
    HiveDecl hive;
    hive.nucleus = word_is(t_, 0, "nuc");
    hive.declared = true;
    hive.span = span_;
    std::size_t i = name_at(1, hive.name);
    if (hive.name.empty()) return error("set-up", 0, "which hive?", "write for example `hive h3 at mill: deep, excluder, super drawn9`");
    while (i < t_.size() && !symbol_is(t_, i, ":")) {
        if (symbol_is(t_, i, ",") || word_is(t_, i, "also")) { ++i; continue; }
        std::string name;
        if (word_is(t_, i, "at")) {
            const std::size_t from = i + 1;
            i = name_at(from, name);
            if (!name.empty()) hive.yard = yard_named(name, false, at(from));
            continue;
        }
        const std::size_t next = name_at(i, name);
        if (next == i) break;
        hive.aliases.push_back(name);
        i = next;
    }
    const HiveId known = lexicon_.hive(lower(hive.name));
    if (known != no_hive) {
        journal_.diagnostics.push_back({"hive-twice", Severity::error, span_, fmt::format("hive '{}' is set up twice", hive.name), {},
                                        "keep one of the two lines, or give this hive another name",
                                        {{journal_.hives[static_cast<std::size_t>(known)].span, "it is set up here"}}});
        return;
    }
    if (symbol_is(t_, i, ":")) stack(i + 1, hive);
    const auto id = static_cast<HiveId>(journal_.hives.size());
    lexicon_.add_hive(hive.name, id);
    for (const std::string& alias : hive.aliases) lexicon_.add_hive(alias, id);
    journal_.hives.push_back(std::move(hive));
}

void SetUpLine::stack(std::size_t from, HiveDecl& hive) {
    while (from < t_.size()) {
        std::size_t to = from;
        while (to < t_.size() && !symbol_is(t_, to, ",") && !symbol_is(t_, to, "+")) ++to;
        if (to > from) part(from, to, hive);
        from = to + 1;
    }
}

void SetUpLine::part(std::size_t from, std::size_t to, HiveDecl& hive) {
    const std::vector<Token> piece(t_.begin() + static_cast<std::ptrdiff_t>(from), t_.begin() + static_cast<std::ptrdiff_t>(to));
    const ItemContext context{&lexicon_, &s_, Day{}};
    StackPart out;
    int count = 1;
    bool super = false, brood = false, box = false;
    for (const Item& item : itemise(piece, context)) {
        if (item.is("excluder")) out.what = StackPart::What::excluder;
        else if (item.is("escape board")) out.what = StackPart::What::escape;
        else if (item.is("feeder")) out.what = StackPart::What::feeder;
        else if (item.is("upper entrance")) out.what = StackPart::What::upper_entrance;
        else if (item.is("super")) super = box = true;
        else if (item.is("brood box")) brood = box = true;
        else if (const auto* w = item.word(Class::combing)) {
            box = true;
            static constexpr std::pair<std::string_view, Comb> combs[] = {{"drawn", Comb::drawn}, {"foundation", Comb::foundation}, {"wet", Comb::wet},
                {"strips", Comb::strips}, {"cut comb", Comb::cut_comb}, {"sections", Comb::sections}, {"mixed", Comb::mixed}};
            for (const auto& [term, comb] : combs)
                if (term == w->term) out.comb = comb;
            if (item.counted) out.frames = item.count;
        } else if (!item.box_kind.empty()) {
            out.box_kind = item.box_kind;
            box = true;
        } else if (item.what == Item::What::quoted) out.label = item.text;
        else if (item.what == Item::What::value && item.value.dimension == Dimension::count) {
            const auto n = static_cast<int>(item.value.amount / 1000);
            if (out.comb != Comb::unsaid && out.frames == 0) out.frames = n;
            else count = n;
        } else if (item.has(Class::count)) count = item.word(Class::count)->number;
        else if (item.is("frame")) out.frames = out.frames ? out.frames : count, count = count == out.frames ? 1 : count;
        else if (item.is("box")) box = true;
        else if (!item.idle()) {
            journal_.diagnostics.push_back({"set-up", Severity::error, {span_.file, item.begin, item.end},
                                            fmt::format("'{}' is nothing a hive is stacked from", text_.substr(item.begin, item.end - item.begin)), {},
                                            "write the stack from the floor up, for example `deep, excluder, super drawn9`", {}});
            return;
        }
    }
    if (out.what == StackPart::What::box) {
        if (!box) return;
        const BoxKind* kind = out.box_kind.empty() ? nullptr : journal_.box_kind(out.box_kind);
        const bool above = std::any_of(hive.stack.begin(), hive.stack.end(), [](const StackPart& p) { return p.what == StackPart::What::excluder || p.role == Role::super; });
        out.role = super ? Role::super : brood ? Role::brood : kind && kind->role == Role::super ? Role::super : above && !kind ? Role::super : above ? Role::super : Role::brood;
        out.assumed_kind = out.box_kind.empty();
        out.assumed_comb = out.comb == Comb::unsaid && out.role == Role::super;
    }
    if (count < 1 || count > 12) count = 1;
    for (int k = 0; k < count; ++k) hive.stack.push_back(out);
}

void SetUpLine::box() {
    const auto colon = std::find_if(t_.begin(), t_.end(), [](const Token& x) { return x.type == Token::Type::symbol && x.text == ":"; });
    const auto c = static_cast<std::size_t>(colon - t_.begin());
    BoxKind kind;
    kind.name = c > 1 ? lower(raw(1, c)) : std::string{};
    if (!kind.name.empty() && kind.name.front() == '"') kind.name = kind.name.substr(1, kind.name.size() - 2);
    if (kind.name.empty()) return error("set-up", 1, "which box?", "write for example `box long super: super, 12 frames, 20 kg full, 7 kg empty`");
    kind.declared = true;
    kind.span = span_;
    double full = 0, empty = 0;
    for (std::size_t i = c + 1; i < t_.size(); ++i) {
        const Token& t = t_[i];
        if (word_is(t_, i, "super")) kind.role = Role::super;
        else if (word_is(t_, i, "brood")) kind.role = Role::brood;
        else if (t.type == Token::Type::number && (word_is(t_, i + 1, "frames") || word_is(t_, i + 1, "frame"))) kind.frames = static_cast<int>(t.value.amount / 1000), ++i;
        else if (t.type == Token::Type::number && word_is(t_, i + 1, "mm")) kind.depth_mm = static_cast<double>(t.value.amount) / 1000.0, ++i;
        else if (t.type == Token::Type::quantity && t.value.dimension == Dimension::mass) {
            const double kg = static_cast<double>(t.value.amount) * 1e-12;
            if (word_is(t_, i + 1, "empty")) empty = kg, ++i;
            else full = kg, i += word_is(t_, i + 1, "full") ? 1 : 0;
        } else if (t.type == Token::Type::word && t.text != "box" && t.text != "deep") error("set-up", i, fmt::format("'{}' says nothing about a box", t.text), "say its role (super or brood), frames, depth in mm, kg full, kg empty");
    }
    // A keeper's own figure is known to about a tenth either way.
    kind.full_kg = full, kind.full_low_kg = full * 0.9, kind.full_high_kg = full * 1.1;
    kind.tare_kg = empty, kind.tare_low_kg = empty * 0.95, kind.tare_high_kg = empty * 1.05;
    const auto same = std::find_if(journal_.box_kinds.begin(), journal_.box_kinds.end(), [&](const BoxKind& k) { return k.name == kind.name; });
    if (same != journal_.box_kinds.end() && same->declared) {
        const bool differs = same->frames != kind.frames || same->full_kg != kind.full_kg || same->tare_kg != kind.tare_kg || same->role != kind.role;
        if (differs) journal_.diagnostics.push_back({"setting-differs", Severity::error, span_, fmt::format("box '{}' is declared differently before", kind.name), {}, "keep one of the two lines", {{same->span, "the other one is here"}}});
        return;
    }
    if (same != journal_.box_kinds.end()) {
        // What the keeper leaves out stays as the handbook has it.
        if (full == 0) kind.full_kg = same->full_kg, kind.full_low_kg = same->full_low_kg, kind.full_high_kg = same->full_high_kg;
        if (empty == 0) kind.tare_kg = same->tare_kg, kind.tare_low_kg = same->tare_low_kg, kind.tare_high_kg = same->tare_high_kg;
        *same = kind;
    } else {
        if (full == 0) error("set-up", 0, fmt::format("how much honey does a full '{}' hold?", kind.name), "add for example `20 kg full`");
        journal_.box_kinds.push_back(kind);
    }
    lexicon_.add_box_kind(kind.name);
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

void SetUpLine::shed() {
    std::size_t from = symbol_is(t_, 1, ":") ? 2 : 1;
    while (from < t_.size()) {
        std::size_t to = from;
        while (to < t_.size() && !symbol_is(t_, to, ",")) ++to;
        HiveDecl scratch;
        const std::size_t errors = journal_.diagnostics.size();
        if (to > from) part(from, to, scratch);
        if (!scratch.stack.empty() && errors == journal_.diagnostics.size()) {
            Fact f;
            f.kind = Kind::shed;
            f.span = {span_.file, t_[from].begin, t_[to - 1].end};
            f.count = static_cast<int>(scratch.stack.size());
            const StackPart& p = scratch.stack.front();
            f.comb = p.comb;
            f.box_kind = p.box_kind;
            if (p.what == StackPart::What::excluder) f.detail = "excluder";
            else if (p.what == StackPart::What::escape) f.detail = "escape board";
            else if (p.what == StackPart::What::feeder) f.detail = "feeder";
            else if (p.role == Role::brood && !p.box_kind.empty() && journal_.box_kind(p.box_kind) && journal_.box_kind(p.box_kind)->role == Role::brood) f.detail = "brood box";
            const Token& first = t_[from];
            if (first.type == Token::Type::number) f.count = static_cast<int>(first.value.amount / 1000);
            facts_.push_back(f);
        }
        from = to + 1;
    }
}

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
