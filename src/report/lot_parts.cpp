#include "report/lot_parts.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "report/phrases.hpp"
#include "report/table.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

std::string part_of(Mass part, Mass whole) {
    if (whole.ng <= 0) return {};
    return fmt::format("{:.0f}%", 100.0 * part.kilograms() / whole.kilograms());
}

std::string boxes_text(const History& history, const LotShare& share) {
    int supers = 0, frames = 0;
    for (const std::size_t taking : share.takings) {
        supers += history.takings[taking].box != no_box;
        frames += history.takings[taking].frames;
    }
    std::vector<std::string> parts;
    if (supers > 0) parts.push_back(counted(supers, "super"));
    if (frames > 0) parts.push_back(counted(frames, "frame"));
    return listed(parts);
}

const JarRow* row_of(const Lot& lot, Mass size) {
    for (const JarRow& row : lot.jars)
        if (row.size == size) return &row;
    return nullptr;
}

std::string jars_text(const JarRow& row) {
    std::string text = row.comb ? "pieces of comb" : "jars";
    if (row.size.ng > 0) text += " of " + jar_text(row.size);
    text += fmt::format(": {} filled", row.filled);
    if (row.adjusted != 0) text += fmt::format(", {:+} by stocktake", row.adjusted);
    if (row.beyond != 0) text += fmt::format(", {} more than the books had", row.beyond);
    text += fmt::format(", {} out", row.out);
    if (row.spoiled != 0) text += fmt::format(" ({} of them spoiled)", row.spoiled);
    return text + fmt::format(", {} left", row.left);
}

/// How the lot began.
std::string_view origin_text(const Lot& lot) {
    if (lot.harvested.value.ng > 0) return "extracted";
    if (lot.opening.ng > 0) return "there on";
    if (lot.bought.ng > 0) return "bought";
    return lot.blended_in.ng > 0 ? "blended" : "from";
}

std::string flows_text(const Lot& lot, const Style& style) {
    std::vector<std::string> parts;
    const auto add = [&](Mass mass, std::string_view words) {
        if (mass.ng != 0) parts.push_back(fmt::format("{} {}", mass_text(mass, style), words));
    };
    add(lot.opening, "there at the start");
    add(lot.bought, "bought in");
    add(lot.drained, "drained from cappings");
    add(lot.adjusted, "booked by stocktake");
    add(lot.beyond, "more than the books had");
    add(lot.spoiled, "of bulk spoiled");
    add(lot.blended_in, "blended in");
    add(lot.blended_out, "blended into other lots");
    std::vector<std::string> names;
    for (const std::string& name : lot.blended_from) names.push_back(printable(name));
    std::string text = fmt::format("{}", fmt::join(parts, ", "));
    if (!names.empty()) text += fmt::format("{}blended from {}", text.empty() ? "" : "; ", listed(names));
    return text;
}

}  // namespace

std::string weight_text(const Lot& lot, const Style& style) {
    const bool counted_only = lot.weight.value.ng == 0 && std::any_of(lot.jars.begin(), lot.jars.end(), [](const JarRow& row) { return row.comb; });
    if (counted_only) return "comb, counted but not weighed";
    return fmt::format("{}, {}", mass_text(lot.weight, style), lot.weight.weighed ? "weighed" : "estimated");
}

std::string lot_head(const Journal& journal, const Lot& lot, const Style& style) {
    std::string text = fmt::format("Lot {}, {} {}: {}", printable(lot.name), origin_text(lot), iso(lot.extracted),
                                   weight_text(lot, style));
    if (lot.name_made) text += " (named after its day)";
    if (lot.moisture_permille) text += fmt::format("; moisture {:.1f}%", static_cast<double>(*lot.moisture_permille) / 10.0);
    if (lot.fermenting) text += "; fermenting";
    return with_ref(text, "", "  ", refs_text(journal, lot.because, style));
}

MassRange honey_of(const History& history, const Estimates& estimates, std::size_t taking) {
    const Taking& t = history.takings[taking];
    if (t.net) return {*t.net, *t.net, *t.net, true};
    if (taking >= estimates.takings.size()) return {};
    const Range& kg = estimates.takings[taking].kg;
    return {Mass::from_kilograms(kg.low), Mass::from_kilograms(kg.value), Mass::from_kilograms(kg.high), false};
}

std::string going_text(const Going& going, const Lot* lot, const Style& style) {
    const JarRow* row = lot ? row_of(*lot, going.size) : nullptr;
    const std::string_view thing = row && row->comb ? "piece" : "jar";
    std::string text = going.jars > 0 ? counted(going.jars, thing) : mass_text(going.honey, style) + " in bulk";
    if (going.jars > 0) text += going.size.ng > 0 ? fmt::format(" of {} ({})", jar_text(going.size), mass_text(going.honey, style)) : ", not weighed";
    if (!going.how.empty()) text += fmt::format(", {}", going.how);
    if (!going.to.empty()) text += fmt::format(" {} {}", way_of(going), printable(going.to));
    if (going.lot_assumed) text += "; lot not said";
    std::vector<std::string> others;
    for (const std::string& other : going.may_be) others.push_back(printable(other));
    return others.empty() ? text : text + ", may be of " + listed(others);
}

std::string shares_table(const Journal& journal, const History& history, const Lot& lot, const Selection& selection,
                         const Style& style) {
    Table table;
    for (const auto head : {"hive", "honey", "part", "from", "written in"}) table.column(head);
    for (const LotShare& share : lot.shares) {
        if (!selection.has_hive(share.hive)) continue;
        const std::string hive = share.hive == no_hive ? "no hive named" : printable(journal.hive_name(share.hive));
        table.row({hive, mass_text(share.honey, style), part_of(share.honey.value, lot.weight.value),
                   boxes_text(history, share), refs_text(journal, share.because, style)});
    }
    return table.text(2);
}

std::string whereabouts(const Journal& journal, const Lot& lot, const Selection& selection, const Style& style) {
    std::string out;
    const std::string flows = flows_text(lot, style);
    if (!flows.empty()) out += paragraph(flows, "  ", "    ");
    for (const JarRow& row : lot.jars)
        out += with_ref(jars_text(row), "  ", "    ", refs_text(journal, row.because, style));
    for (const Going& going : lot.goings)
        if (selection.has_day(going.day))
            out += with_ref(going_text(going, &lot, style), "  " + iso(going.day) + "  ", "    ",
                            ref_text(journal, going.fact, no_hive, style));
    return out + paragraph(fmt::format("left in bulk: {}", mass_text(lot.bulk, style)), "  ", "    ");
}

std::string limit_text(const Water& water, const handbook::MoistureLimit& limit) {
    const bool driest = handbook::within(limit, static_cast<double>(water.low) / 10), wettest = handbook::within(limit, static_cast<double>(water.high) / 10);
    return fmt::format("{}, {} {:.4g}%: {}", limit.name, limit.below_only ? "below" : "at most", limit.percent,
                       wettest ? "met" : driest ? "not sure, its range reaches over it" : "not met");
}

}  // namespace waxtab
