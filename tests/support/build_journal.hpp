#pragma once
// Journals made of facts by hand, so that a stage is tested without the reader. Each fact gets a line of its
// own in a made-up file, so that messages and what they cite can be checked.
#include <string>
#include <utility>
#include <vector>

#include "facts/journal.hpp"

namespace waxtab::testing {

inline Day day(std::string_view iso_date) { return day_from_iso(iso_date).value(); }

inline StackPart brood(std::string kind = "deep") {
    StackPart p;
    p.role = Role::brood, p.box_kind = std::move(kind);
    return p;
}
inline StackPart super(std::string label = {}, int frames = 0, Comb comb = Comb::unsaid) {
    StackPart p;
    p.role = Role::super, p.box_kind = "medium", p.frames = frames, p.comb = comb, p.label = std::move(label);
    return p;
}
inline StackPart gear(StackPart::What what) {
    StackPart p;
    p.what = what;
    return p;
}
inline StackPart excluder() { return gear(StackPart::What::excluder); }

inline BoxChoice by(BoxChoice::By how, Role role = Role::super) { return {how, role, 0, {}}; }
inline BoxChoice top() { return by(BoxChoice::By::top); }
inline BoxChoice bottom() { return by(BoxChoice::By::bottom); }
inline BoxChoice sole() { return by(BoxChoice::By::sole); }
inline BoxChoice all() { return by(BoxChoice::By::all); }
inline BoxChoice number(int n) { return {BoxChoice::By::number, Role::super, static_cast<std::uint8_t>(n), {}}; }
inline BoxChoice label(std::string text) { return {BoxChoice::By::label, Role::super, 0, std::move(text)}; }

inline Measure kilograms(std::string_view number_of) { return measure(number_of, Unit::kilogram).value(); }
inline Measure frames(std::string_view number_of) { return measure(number_of, Unit::frame).value(); }

/// A journal under construction. References returned stay good until the next fact.
class BuildJournal {
public:
    BuildJournal() {
        kind("medium", Role::super);
        kind("shallow", Role::super);
        kind("deep", Role::brood);
        yard("mill");
    }

    YardId yard(std::string name) {
        YardDecl decl;
        decl.name = std::move(name), decl.declared = true;
        journal_.yards.push_back(decl);
        return static_cast<YardId>(journal_.yards.size() - 1);
    }
    /// A hive set up at the first yard.
    HiveId hive(std::string name, std::vector<StackPart> stack) {
        HiveDecl decl;
        decl.span = write("hive " + name);
        decl.name = std::move(name), decl.stack = std::move(stack), decl.declared = true, decl.yard = 0;
        journal_.hives.push_back(decl);
        return static_cast<HiveId>(journal_.hives.size() - 1);
    }
    /// A hive that a fact brings into being.
    HiveId later_hive(std::string name) {
        HiveDecl decl;
        decl.name = std::move(name), decl.yard = 0;
        journal_.hives.push_back(decl);
        return static_cast<HiveId>(journal_.hives.size() - 1);
    }
    Fact& fact(std::string_view date, Kind kind, HiveId hive = no_hive) {
        Fact f;
        f.happened = f.noted = day(date);
        f.kind = kind, f.hive = hive, f.yard = 0;
        const std::string who = hive == no_hive ? std::string{} : std::string(journal_.hive_name(hive)) + " ";
        f.span = write(who + std::string(name_of(kind)));
        journal_.facts.push_back(f);
        return journal_.facts.back();
    }
    Fact& fact(std::string_view date, Kind kind, HiveId hive, BoxChoice box) {
        Fact& f = fact(date, kind, hive);
        f.box = std::move(box);
        return f;
    }
    /// A share read of a box, in percent.
    Fact& share(std::string_view date, Kind kind, HiveId hive, BoxChoice box, int percents) {
        Fact& f = fact(date, kind, hive, std::move(box));
        f.value = percent(percents);
        return f;
    }
    Settings& settings() { return journal_.settings; }
    /// The text line (from 1) the last fact stands on.
    int line() const { return line_; }

    Journal journal() const {
        Journal out = journal_;
        out.sources.add("made.hive", text_);
        return out;
    }

private:
    void kind(std::string name, Role role) {
        BoxKind k;
        k.name = std::move(name), k.role = role;
        journal_.box_kinds.push_back(k);
    }
    Span write(const std::string& text) {
        const auto begin = static_cast<std::uint32_t>(text_.size());
        text_ += text + "\n";
        ++line_;
        return {0, begin, begin + static_cast<std::uint32_t>(text.size())};
    }

    Journal journal_;
    std::string text_;
    int line_ = 0;
};

}  // namespace waxtab::testing
