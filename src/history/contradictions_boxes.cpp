#include <algorithm>

#include <fmt/format.h>

#include "history/citing.hpp"
#include "history/contradictions.hpp"

namespace waxtab::replaying {
namespace {

Related last_change(const Replay& r, HiveId hive) {
    const std::string name = r.name(hive);
    return cite(r, hive, r.state(hive).stack_fact, fmt::format("the boxes of {} last changed here", name),
                fmt::format("{} was set up here", name));
}

/// Where the box of a label was last said to be.
Related last_seen(const Replay& r, BoxId box) {
    const Box& b = r.box(box);
    if (b.stays.empty()) return {};
    const BoxStay& stay = b.stays.back();
    const std::string on = r.name(stay.hive);
    if (stay.to) return cite(r, stay.hive, stay.off_fact, fmt::format("it was taken off {} here", on), {});
    return cite(r, stay.hive, stay.on_fact, fmt::format("it was put on {} here", on), fmt::format("{} was set up here with it", on));
}

std::string how_many_are_on(const Replay& r, HiveId hive, Role role) {
    const std::size_t n = boxes_on(r, hive, role).size();
    return fmt::format("{} {} on", counted(n, role), n == 1 ? "is" : "are");
}

std::string label_hint(const Replay& r, HiveId hive, const BoxChoice& choice, BoxId elsewhere) {
    const std::string name = r.name(hive);
    if (elsewhere == no_box)
        return fmt::format("no box of that label is known; put it on with `+super {0} \"{1}\"`, or paint one that is on: "
                           "`{0} top labelled \"{1}\"`", name, choice.label);
    const HiveId on = stands_on(r, elsewhere);
    if (on == no_hive) return fmt::format("if it went back on, write that line first: `+super {} \"{}\"`", name, choice.label);
    return fmt::format("if it was moved, write that line first: `{} super \"{}\" moved to {}`", r.name(on), choice.label, name);
}

std::string absent_hint(const Replay& r, HiveId hive, const BoxChoice& choice, BoxId elsewhere) {
    if (choice.by == BoxChoice::By::label) return label_hint(r, hive, choice, elsewhere);
    const char* thing = choice.role == Role::brood ? "brood box" : "super";
    return fmt::format("if another {0} was put on, write that line first: `+{0} {1}`; boxes are counted from the brood up",
                       thing, r.name(hive));
}

std::vector<Related> cited(const Replay& r, HiveId hive, BoxId elsewhere) {
    if (elsewhere != no_box) return {last_seen(r, elsewhere)};
    return {last_change(r, hive)};
}

std::string described(const Replay& r, BoxId id, std::size_t number) {
    const Box& b = r.box(id);
    const char* word = b.role == Role::brood ? "brood box" : "super";
    std::string text = fmt::format("{} {}: {}, {} frames", word, number, b.kind, b.frames);
    if (!b.label.empty()) text += fmt::format(", \"{}\"", b.label);
    return text;
}

}  // namespace

void report_no_such_box(Replay& r, const Step& s, HiveId hive, const BoxChoice& choice, BoxId elsewhere) {
    if (!first_time(r, hive, "no-such-super", choice)) return;
    std::string title = fmt::format("{} has no '{}'", r.name(hive), in_words(choice));
    title += choice.by == BoxChoice::By::label ? " on it" : ": " + how_many_are_on(r, hive, choice.role);
    report(r, s, Severity::error, "no-such-super", std::move(title), absent_hint(r, hive, choice, elsewhere),
           cited(r, hive, elsewhere));
}

void report_no_such_label(Replay& r, const Step& s, const std::string& label) {
    report(r, s, Severity::error, "no-such-super", fmt::format("no box is labelled '{}'", label),
           "check the label, or put the box on with it: `+super h3 \"B4\"`");
}

void report_not_on(Replay& r, const Step& s, HiveId hive, const BoxChoice& choice, BoxId elsewhere) {
    if (!first_time(r, hive, "not-on", choice)) return;
    std::string title = fmt::format("'{}' cannot be taken off {}", in_words(choice), r.name(hive));
    title += choice.by == BoxChoice::By::label ? ": it is not on" : ": " + how_many_are_on(r, hive, choice.role);
    std::vector<Related> related = cited(r, hive, elsewhere);
    const std::optional<FactId> off = r.state(hive).off_fact;
    if (elsewhere == no_box && off)
        related = {cite(r, hive, *off, fmt::format("the last one was taken off {} here", r.name(hive)), {})};
    report(r, s, Severity::error, "not-on", std::move(title), absent_hint(r, hive, choice, elsewhere), std::move(related));
}

void report_which(Replay& r, const Step& s, HiveId hive, const BoxChoice& choice) {
    HiveState& state = r.state(hive);
    const bool same = state.asked_fact && same_line(r, s.fact, r.fact(*state.asked_fact));
    state.asked_fact = s.id;
    if (same) return;
    const std::vector<BoxId> on = boxes_on(r, hive, choice.role);
    std::vector<Related> related;
    for (std::size_t i = 0; i < on.size(); ++i) {
        const std::string text = described(r, on[i], i + 1);
        related.push_back(cite(r, hive, r.box(on[i]).stays.back().on_fact, text, text));
    }
    const std::string words = in_words(choice);
    report(r, s, Severity::error, "which-super",
           fmt::format("'{}' of {} could be any of {}", words, r.name(hive), on.size()),
           choice.role == Role::brood ? "write `top brood box`, `bottom brood box` or its label"
                                      : "write `top`, `bottom`, `super 2` (counted from the brood up), `all supers` or its label",
           std::move(related));
}

void report_trouble(Replay& r, const Step& s, HiveId hive, const BoxChoice& choice, const Resolved& found, bool taking) {
    if (found.trouble == Resolved::Trouble::which) report_which(r, s, hive, choice);
    else if (taking) report_not_on(r, s, hive, choice, found.elsewhere);
    else report_no_such_box(r, s, hive, choice, found.elsewhere);
}

void report_same_box(Replay& r, const Step& s, HiveId hive, const BoxChoice& choice, const NamedReading& earlier) {
    if (!first_time(r, hive, "same-super", choice)) return;
    report(r, s, Severity::warning, "same-super",
           fmt::format("'{}' and '{}' are one and the same on {}: {}", in_words(choice), in_words(earlier.choice), r.name(hive),
                       how_many_are_on(r, hive, choice.role)),
           absent_hint(r, hive, {BoxChoice::By::top, choice.role, 0, {}}, no_box),
           {cite(r, hive, earlier.fact, "it was read by the other name here", {}), last_change(r, hive)});
}

void report_count(Replay& r, const Step& s, HiveId hive, Role role, int said, std::size_t on) {
    const BoxChoice choice{BoxChoice::By::top_n, role, static_cast<std::uint8_t>(said < 250 ? said : 250), {}};
    if (!first_time(r, hive, "count-differs", choice)) return;
    const char* thing = role == Role::brood ? "brood box" : "super";
    const bool more = said > static_cast<int>(on);
    report(r, s, Severity::warning, "count-differs",
           fmt::format("{} says {}, but by the journal {} has {} on", quoted(r, s.fact),
                       counted(static_cast<std::size_t>(said), role), r.name(hive), counted(on, role)),
           more ? fmt::format("if one was put on, write `+{} {}` on its day", thing, r.name(hive))
                : fmt::format("if one was taken off, write `-{} {}` on its day", thing, r.name(hive)),
           {last_change(r, hive)});
}

void report_gear_twice(Replay& r, const Step& s, HiveId hive, std::string_view gear, const Standing& there) {
    const std::string name = r.name(hive);
    report(r, s, Severity::warning, "gear-twice",
           fmt::format("{} has its {} on already", name, gear),
           fmt::format("if the first one came off, write that line before: `{} {} off`", name, gear),
           {cite(r, hive, there.fact, "it was put on here", fmt::format("{} was set up here with one", name))});
}

void report_gear_not_on(Replay& r, const Step& s, HiveId hive, std::string_view gear, Severity severity) {
    const std::string name = r.name(hive);
    const BoxChoice by_name{BoxChoice::By::label, Role::any, 0, std::string(gear)};
    if (!first_time(r, hive, "not-on", by_name)) return;
    const std::vector<Event>& events = r.hive(hive).events;
    const auto last = std::find_if(events.rbegin(), events.rend(), [&](const Event& e) { return r.fact(e.fact).kind == s.fact.kind; });
    const FactId off = last == events.rend() ? set_up_fact : last->fact;
    report(r, s, severity, "not-on", fmt::format("no {} is on {} to take off", gear, name),
           fmt::format("if one was put on, write that line first: `{} {} on`", name, gear),
           {cite(r, hive, off, "it was taken off here", fmt::format("{} was set up here without one", name))});
}

}  // namespace waxtab::replaying
