#include <fmt/format.h>

#include "report/harvest.hpp"
#include "report/lot_parts.hpp"
#include "report/phrases.hpp"
#include "report/yields.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

/// When the box stood on the hive it was taken from.
std::string stay_text(const History& history, const Taking& taking) {
    if (taking.box == no_box) return {};
    for (const BoxStay& stay : history.boxes[static_cast<std::size_t>(taking.box)].stays)
        if (stay.hive == taking.hive && stay.to && *stay.to == taking.day)
            return stay.from ? fmt::format(", on it from {}", iso(*stay.from)) : ", on it from the start";
    return {};
}

std::string taking_text(const Journal& journal, const History& history, const Estimates& estimates, std::size_t i,
                        const Style& style) {
    const Taking& taking = history.takings[i];
    const std::string what = taking.box == no_box
                                 ? counted(taking.frames, "frame")
                                 : box_text(journal, history.boxes[static_cast<std::size_t>(taking.box)]);
    const YardId yard = history.hives[static_cast<std::size_t>(taking.hive)].yard_on(taking.day);
    const std::string at = yard == no_yard ? std::string{} : " at " + printable(journal.yard_name(yard));
    const MassRange honey = honey_of(history, estimates, i);
    std::vector<FactId> because{taking.fact};
    because.insert(because.end(), taking.weighings.begin(), taking.weighings.end());
    const std::string text = fmt::format("{}{}: {}, taken off {}{}; {} {}", printable(journal.hive_name(taking.hive)), at,
                                         what, iso(taking.day), stay_text(history, taking), mass_text(honey, style),
                                         honey.weighed ? "weighed" : "estimated");
    return with_ref(text, "  - ", "    ", refs_text(journal, because, style));
}

std::string concerns_text(const Journal& journal, const Lot& lot, const Style& style) {
    std::string out;
    for (const FactId id : lot.concerns) {
        const Fact& fact = journal.facts[id];
        out += with_ref(iso(fact.happened) + "  " + words_of(journal, fact, true), "  - ", "    ",
                        ref_text(journal, id, no_hive, style));
    }
    if (out.empty()) return {};
    return '\n' + heading("Feeds and treatments that met its supers", style) + out +
           paragraph("Whether this honey may be sold is for the product label, local law and your own "
                     "veterinary or bee inspector to say.", "  ", "  ");
}

}  // namespace

std::string trace_text(const Journal& journal, const History& history, const Estimates& estimates, const Lot& lot,
                       const Style& style) {
    std::string out = lot_head(journal, lot, style);
    if (!lot.takings.empty()) out += '\n' + heading("Where it came from", style);
    for (const std::size_t taking : lot.takings) out += taking_text(journal, history, estimates, taking, style);
    const std::string shares = shares_table(journal, history, lot, Selection{}, style);
    if (!shares.empty()) out += '\n' + heading("Hive by hive", style) + shares;
    out += concerns_text(journal, lot, style);
    if (!lot.moisture_facts.empty()) out += '\n' + heading("Moisture", style);
    for (const FactId id : lot.moisture_facts)
        out += with_ref(iso(journal.facts[id].happened) + "  " + words_of(journal, journal.facts[id], true), "  ", "    ",
                        ref_text(journal, id, no_hive, style));
    return out + '\n' + heading("Where it went", style) + whereabouts(journal, lot, Selection{}, style);
}

}  // namespace waxtab
