#include <fmt/format.h>

#include "history/citing.hpp"
#include "history/contradictions.hpp"

namespace waxtab::replaying {
namespace {

std::string grams_in_words(const Replay& r, Mass mass) { return text_of(mass, r.journal.settings.mass); }

/// The line by which a box got its number of frames.
Related came_on(const Replay& r, HiveId hive, BoxId box) {
    const Box& b = r.box(box);
    const FactId on = b.stays.empty() ? set_up_fact : b.stays.front().on_fact;
    const std::string text = fmt::format("it came on with {} frames here", b.frames);
    return cite(r, hive, on, text, text);
}

std::string permille_in_words(std::int64_t permille) { return fmt::format("{}%", (permille + 5) / 10); }

}  // namespace

void report_too_many_frames(Replay& r, const Step& s, HiveId hive, BoxId box, const Measure& said) {
    report(r, s, Severity::error, "too-many-frames",
           fmt::format("'{}' is more than the {} frames of this {}", text_of(said), r.box(box).frames,
                       r.box(box).role == Role::brood ? "brood box" : "super"),
           "correct the number, or say how many frames it has where it was put on: `+super h3 drawn9`", {came_on(r, hive, box)});
}

void report_frames_differ(Replay& r, const Step& s, HiveId hive, BoxId box, const Measure& said) {
    if (!first_time(r, hive, "frames-differ", {BoxChoice::By::number, Role::super, static_cast<std::uint8_t>(said.of), r.box(box).label}))
        return;
    report(r, s, Severity::warning, "frames-differ",
           fmt::format("'{}' speaks of {} frames, but this super has {}", text_of(said), said.of, r.box(box).frames),
           fmt::format("the share is kept as written; say the frames where it was put on: `+super {} drawn{}`", r.name(hive), said.of),
           {came_on(r, hive, box)});
}

void report_capped_over_full(Replay& r, const Step& s, const BoxSighting& full, const BoxSighting& capped) {
    report(r, s, Severity::note, "capped-over-full",
           fmt::format("{} capped is more than {} full: taken as that much of the honey in it", permille_in_words(capped.amount),
                       permille_in_words(full.amount)),
           "capped is a share of all the comb of the super, as full is", {cite(r, no_hive, full.fact == s.id ? capped.fact : full.fact, "the other reading is here", {})});
}

void report_looks_differ(Replay& r, const Step& s, HiveId hive, const BoxSighting& earlier) {
    const std::string text = fmt::format("{}% was read of it here", (earlier.amount + 5) / 10);
    report(r, s, Severity::warning, "looks-differ",
           fmt::format("{} and {} the same day are of the same super: taken as between the two", quoted(r, s.fact), quoted(r, r.journal.facts[earlier.fact])),
           "correct the one that is wrong; if honey went or came in between, write that: `2 frames of honey off`", {cite(r, hive, earlier.fact, text, text)});
}

void report_sections_unknown(Replay& r, const Step& s) {
    report(r, s, Severity::warning, "sections-unknown", fmt::format("{} is of how many sections?", quoted(r, s.fact)),
           "write it as n of m: `18 of 32 sections filled`");
}

void report_nothing_to_repeat(Replay& r, const Step& s, HiveId hive) {
    report(r, s, Severity::note, "nothing-to-repeat",
           fmt::format("{} repeats nothing: the super of {} was not looked at since it went on", quoted(r, s.fact), r.name(hive)),
           fmt::format("write what was seen: `{} super 20%`, `{} super empty`", r.name(hive), r.name(hive)));
}

void report_label_twice(Replay& r, const Step& s, const std::string& label, BoxId holder) {
    const BoxStay& stay = r.box(holder).stays.back();
    const std::string text = fmt::format("\"{}\" came onto {} here", label, r.name(stay.hive));
    report(r, s, Severity::error, "label-twice",
           fmt::format("'{}' is the label of a box that stands on {}", label, r.name(stay.hive)),
           fmt::format("use another label; a box that was moved is written `{} super \"{}\" moved to ...`", r.name(stay.hive), label),
           {cite(r, stay.hive, stay.on_fact, text, text)});
}

void report_heavier_after(Replay& r, const Step& s, const Taking& taking) {
    report(r, s, Severity::error, "heavier-after",
           fmt::format("{} after extracting is not less than the {} before", grams_in_words(r, *taking.tare), grams_in_words(r, *taking.gross)),
           "weigh the super with honey before and without after, or correct one of the two",
           {cite(r, no_hive, taking.weighings.front(), "it was weighed here", {})});
}

void report_not_taken_off(Replay& r, const Step& s, const BoxChoice& choice) {
    report(r, s, Severity::warning, "not-taken-off",
           fmt::format("{} weighs '{}' after extracting, but it was not taken off before", quoted(r, s.fact), in_words(choice)),
           "write the line by which it came off: `h3 super \"B4\" off 21 kg`");
}

void report_weight_shared(Replay& r, const Step& s, std::size_t boxes, Mass each) {
    report(r, s, Severity::note, "weight-shared",
           fmt::format("'{}' is the weight of {} supers together: counted as {} each", text_of(s.fact.value), boxes, grams_in_words(r, each)),
           "weigh each super by itself to know what each hive and box gave");
}

}  // namespace waxtab::replaying
