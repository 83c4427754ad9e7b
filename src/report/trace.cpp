#include "ledger/trace.hpp"

#include <fmt/format.h>

#include "report/harvest.hpp"
#include "report/lot_parts.hpp"
#include "report/phrases.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

std::string names_text(const std::vector<std::string>& lots) {
    std::vector<std::string> names;
    for (const std::string& lot : lots) names.push_back(printable(lot));
    return listed(names);
}

std::string taking_text(const Journal& journal, const History& history, const Estimates& estimates,
                        const TracedTaking& traced, const Style& style) {
    const Taking& taking = history.takings[traced.taking];
    const std::string what = taking.box == no_box
                                 ? counted(taking.frames, "frame")
                                 : box_text(journal, history.boxes[static_cast<std::size_t>(taking.box)]);
    const std::string on = taking.box == no_box ? std::string{}
                           : traced.on          ? fmt::format(", on from {}", iso(*traced.on))
                                                : ", on from the start";
    const MassRange honey = honey_of(history, estimates, traced.taking);
    std::vector<FactId> because{traced.fact};
    because.insert(because.end(), taking.weighings.begin(), taking.weighings.end());
    return with_ref(fmt::format("{}{}, off {}; {} {}", what, on, iso(traced.off), mass_text(honey, style),
                                honey.weighed ? "weighed" : "estimated"),
                    "    - ", "      ", refs_text(journal, because, style));
}

std::string facts_text(const Journal& journal, std::string_view title, const std::vector<FactId>& facts, const Style& style) {
    std::string out;
    for (const FactId id : facts)
        out += with_ref(fmt::format("{} {}: {}", title, iso(journal.facts[id].happened),
                                    words_of(journal, journal.facts[id], false)),
                        "    ", "      ", ref_text(journal, id, no_hive, style));
    return out;
}

std::string source_name(const Journal& journal, const TracedSource& source) {
    if (source.opening) return "stock there at the start";
    if (source.hive == no_hive)
        return source.bought_from.empty() ? "bought in" : "bought in from " + printable(source.bought_from);
    return printable(journal.hive_name(source.hive));
}

std::string source_text(const Journal& journal, const History& history, const Estimates& estimates,
                        const TracedSource& source, std::string_view lot, const Style& style) {
    std::string text = fmt::format("{}: {}", source_name(journal, source), mass_text(source.honey, style));
    if (source.lot != lot) text += fmt::format(", by way of lot {}", printable(source.lot));
    std::string out = paragraph(text, "  ", "    ");
    for (const TracedTaking& taking : source.takings) out += taking_text(journal, history, estimates, taking, style);
    return out + facts_text(journal, "feed", source.feeds, style) +
           facts_text(journal, "possible: syrup carried up, feed", source.possible_feeds, style) +
           facts_text(journal, "treatment", source.treatments, style);
}

bool met_anything(const Trace& trace) {
    for (const TracedSource& source : trace.sources)
        if (!source.feeds.empty() || !source.possible_feeds.empty() || !source.treatments.empty()) return true;
    return false;
}

std::string recall_text(const Journal& journal, const Ledger& ledger, const Trace& trace, const Style& style) {
    std::string out;
    for (const RecallRow& row : trace.recall) {
        std::string text = going_text(row.going, ledger.lot(row.lot), style);
        if (row.lot != trace.lot) text += fmt::format(", as lot {}", printable(row.lot));
        if (row.possible) text += "; may be of this lot";
        out += with_ref(text, fmt::format("  {}  ", iso(row.going.day)), "    ", ref_text(journal, row.going.fact, no_hive, style));
    }
    return out + fmt::format("  left in jars {}, in bulk {}\n", mass_text(trace.left_in_jars, style),
                             mass_text(trace.left_in_bulk, style));
}

/// What each asker says to the lot's water, never merged into one mark.
std::string moisture_text(const Journal& journal, const Lot& lot, const Style& style) {
    const auto answers = moisture_answers(lot, false);
    if (!answers || !lot.water) return {};
    const auto tenths = [](std::int64_t permille) { return static_cast<double>(permille) / 10.0; };
    const Water& w = *lot.water;
    std::string water = fmt::format("{:.1f}%", tenths(w.value));
    if (w.low < w.high) water += fmt::format(" ({:.1f}-{:.1f})", tenths(w.low), tenths(w.high));
    std::string out = '\n' + heading("Moisture", style) +
                      with_ref(water + (w.read ? ", read" : ", by what was blended"), "  ", "    ",
                               refs_text(journal, w.because, style));
    for (const handbook::LimitAnswer& answer : *answers) {
        if (!answer.limit) continue;
        out += paragraph(limit_text(w, *answer.limit), "  - ", "    ");
    }
    return out;
}

}  // namespace

std::string trace_text(const Journal& journal, const History& history, const Estimates& estimates,
                       const Ledger& ledger, std::string_view name, const Style& style) {
    const Trace way = trace(journal, history, ledger, name);
    const Lot* lot = ledger.lot(name);
    if (!way.found || !lot) return {};
    std::string out = lot_head(journal, *lot, style);
    if (way.made_of.size() > 1) out += paragraph("made of lots " + names_text(way.made_of), "  ", "    ");
    if (way.went_into.size() > 1) out += paragraph("went into lots " + names_text(way.went_into), "  ", "    ");
    out += '\n' + heading("Where it came from", style);
    for (const TracedSource& source : way.sources)
        out += source_text(journal, history, estimates, source, lot->name, style);
    if (met_anything(way))
        out += paragraph("Feeds and treatments are listed where they met a super. Whether such honey may be sold is for the "
                         "product label, local law and your vet or bee inspector to say.", "  ", "  ");
    out += moisture_text(journal, *lot, style);
    return out + '\n' + heading("Where it went", style) + recall_text(journal, ledger, way, style);
}

}  // namespace waxtab
