#include "report/supers.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "report/phrases.hpp"
#include "report/table.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

const Box& box_of(const History& history, const SuperEstimate& super) {
    return history.boxes[static_cast<std::size_t>(super.box)];
}

/// Supers of a hive from the top down, as they stand.
std::vector<const SuperEstimate*> supers_of(const Estimates& estimates, HiveId hive) {
    std::vector<const SuperEstimate*> supers;
    for (const SuperEstimate& super : estimates.supers)
        if (super.hive == hive) supers.push_back(&super);
    std::reverse(supers.begin(), supers.end());
    return supers;
}

std::string name_text(const Box& box, int place) {
    return box.label.empty() ? fmt::format("{}", place) : fmt::format("{} \"{}\"", place, printable(box.label));
}

std::string supers_table(const History& history, const std::vector<const SuperEstimate*>& supers, const Style& style) {
    Table table;
    for (const auto head : {"super", "full", "capped", "honey in it", "seen"}) table.column(head);
    for (const SuperEstimate* s : supers) {
        table.row({name_text(box_of(history, *s), s->place), share_text(s->full), share_text(s->capped),
                   kg_text(s->kg, style), s->last_seen ? iso(*s->last_seen) : "never"});
    }
    return table.text(2);
}

std::string rate_lines(const HiveEstimate& hive, const Style& style) {
    std::string gain = (hive.no_room ? "gains at least " : "gains ") + rate_text(hive.kg_per_day, style);
    if (hive.no_room) gain += "; it had no room when last seen";
    if (!hive.from_own_visits) gain += "; too few visits of its own, so judged by its yard and the time of year";
    const std::string room = fmt::format("room for {}: {}", kg_text(hive.room_kg, style), days_text(hive.days_of_room));
    return paragraph(gain, "  ", "    ") + paragraph(room, "  ", "    ");
}

/// Supers that are getting on; of one that is nearly empty or was never looked at the day says nothing.
std::string ripe_line(const std::vector<const SuperEstimate*>& supers, Day on) {
    constexpr double worth_foretelling = 0.25;
    std::vector<std::string> parts;
    for (const SuperEstimate* s : supers) {
        if (!s->ripe_likely || !s->last_seen || s->full.value < worth_foretelling) continue;
        if (*s->ripe_likely <= on) {
            parts.push_back(fmt::format("super {} now", s->place));
            continue;
        }
        std::string text = fmt::format("super {} about {}", s->place, iso(*s->ripe_likely));
        if (s->ripe_early && s->ripe_late) text += fmt::format(" ({} to {})", iso(*s->ripe_early), iso(*s->ripe_late));
        parts.push_back(std::move(text));
    }
    if (parts.empty()) return {};
    return paragraph(fmt::format("fit to take, by the capping: {}", fmt::join(parts, "; ")), "  ", "    ");
}

/// Looks that do not go together, and which was believed.
std::string fell_line(const std::vector<const SuperEstimate*>& supers) {
    std::vector<std::string> parts;
    for (const SuperEstimate* s : supers)
        if (s->fell_from)
            parts.push_back(fmt::format("super {} was about {:.0f}% full at the look before: bees do not use up so much, so something was taken "
                                        "unnoted or one look was wrong; the last look is believed", s->place, 100 * *s->fell_from));
    return parts.empty() ? std::string{} : paragraph(fmt::format("{}", fmt::join(parts, "; ")), "  ", "    ");
}

std::string because_line(const Journal& journal, const HiveEstimate* hive,
                         const std::vector<const SuperEstimate*>& supers, const Style& style) {
    if (!style.refs) return {};
    std::vector<std::string> parts;
    for (const SuperEstimate* s : supers)
        if (!s->because.empty())
            parts.push_back(fmt::format("super {} {}", s->place, refs_text(journal, s->because, style)));
    if (hive && !hive->because.empty())
        parts.push_back("gain " + refs_text(journal, hive->because, style));
    return parts.empty() ? std::string{} : paragraph(fmt::format("read from: {}", fmt::join(parts, "; ")), "  ", "    ");
}

void note_place(std::vector<std::pair<std::string, std::vector<int>>>& said, std::string words, int place) {
    for (auto& [known, places] : said)
        if (known == words) return places.push_back(place);
    said.push_back({std::move(words), {place}});
}

/// `when full: 15.2 kg (13.8-16.6)`, with the supers named where they differ.
std::string holds_line(const std::vector<const SuperEstimate*>& supers, const Style& style) {
    std::vector<std::pair<std::string, std::vector<int>>> said;
    for (const SuperEstimate* s : supers) note_place(said, kg_text(s->capacity_kg, style), s->place);
    if (said.size() == 1) return paragraph(fmt::format("when full{}: {}", supers.size() > 1 ? ", each" : "", said.front().first), "  ", "    ");
    std::vector<std::string> parts;
    for (const auto& [words, places] : said)
        parts.push_back(fmt::format("{} (super{} {})", words, places.size() > 1 ? "s" : "", fmt::join(places, ", ")));
    return paragraph(fmt::format("when full: {}", fmt::join(parts, "; ")), "  ", "    ");
}

/// `assumed: medium (supers 2, 1); drawn comb (super 2)`.
std::string assumed_line(const History& history, const std::vector<const SuperEstimate*>& supers) {
    std::vector<std::pair<std::string, std::vector<int>>> said;
    for (const SuperEstimate* s : supers) {
        const Box& box = box_of(history, *s);
        if (box.kind_assumed) note_place(said, printable(box.kind), s->place);
        if (box.comb_assumed) note_place(said, fmt::format("{} comb", comb_text(box.comb)), s->place);
    }
    std::vector<std::string> parts;
    for (const auto& [words, places] : said)
        parts.push_back(fmt::format("{} (super{} {})", words, places.size() > 1 ? "s" : "", fmt::join(places, ", ")));
    return parts.empty() ? std::string{} : paragraph(fmt::format("assumed: {}", fmt::join(parts, "; ")), "  ", "    ");
}

std::string hive_text(const Journal& journal, const History& history, const Estimates& estimates, HiveId id,
                      const Style& style) {
    const HiveEstimate* hive = estimates.hive(id);
    const auto supers = supers_of(estimates, id);
    std::string out = heading(printable(journal.hive_name(id)), style);
    if (hive && !supers.empty()) out += rate_lines(*hive, style);
    if (supers.empty())
        return out + (history.supers_on(id).empty() ? "  no super on\n" : "  nothing noted of it yet: no estimate of its supers\n");
    out += supers_table(history, supers, style);
    return out + holds_line(supers, style) + ripe_line(supers, estimates.on) + fell_line(supers) + because_line(journal, hive, supers, style) + assumed_line(history, supers);
}

/// Living hives that are listed and stand in `yard` now.
std::vector<HiveId> hives_in(const History& history, YardId yard, const Selection& selection) {
    std::vector<HiveId> ids;
    for (const HiveHistory& hive : history.hives)
        if (hive.alive && hive.yard_on(history.on) == yard && lists(selection, history, hive.hive, history.on))
            ids.push_back(hive.hive);
    return ids;
}

}  // namespace

std::string supers_text(const Journal& journal, const History& history, const Estimates& estimates,
                        const Selection& selection, const Style& style) {
    std::string out;
    for (YardId yard = no_yard; yard < static_cast<YardId>(journal.yards.size()); ++yard) {
        const auto ids = hives_in(history, yard, selection);
        if (ids.empty()) continue;
        const std::string name = yard == no_yard ? "No yard named" : "Yard " + printable(journal.yard_name(yard));
        out += '\n' + heading(fmt::format("{}, {}", name, counted(static_cast<std::int64_t>(ids.size()), "hive")), style);
        for (const HiveId id : ids) out += '\n' + hive_text(journal, history, estimates, id, style);
    }
    if (out.empty()) return fmt::format("No living hive to show on {}.\n", iso(estimates.on));
    const std::string head = fmt::format(
        "Supers on {}. Supers are numbered from the brood up; in 8 cases of 10 the truth lies in the range. "
        "Days of room allow for the flow fading.",
        iso(estimates.on));
    out = paragraph(head, "", "") + out;
    if (estimates.keeper.words.empty()) return out;
    const std::string lines = refs_text(journal, estimates.keeper.because, style);
    return out + '\n' + paragraph("Your eye: " + printable(estimates.keeper.words) + ".", "", "") +
           (lines.empty() ? lines : paragraph("read from: " + lines, "  ", "    "));
}

}  // namespace waxtab
