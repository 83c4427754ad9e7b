#include <algorithm>

#include "facts/headings.hpp"
#include "facts/items.hpp"
#include "facts/set_up_line.hpp"
#include "handbook/boxes.hpp"
#include "facts/slots.hpp"

// Set-up lines that name things: yards, hives with their boxes, box kinds, the shed.
namespace waxtab {

using grammar::Class;

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
        else if (item.is("double brood")) brood = box = true, count = 2;
        else if (item.is("brood box") || item.is("single brood")) brood = box = true;
        else if (item.has(Class::combing)) {
            box = true;
            out.comb = comb_of(item);
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
    if (kind.name.find('/') != kind.name.npos) return error("set-up", 1, fmt::format("'{}' would be read as a fraction", kind.name), "call the box by words, for example `box three-quarter: super, 10 frames, 18 kg full`");
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

}  // namespace waxtab
