#include "report/harvest.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "report/lot_parts.hpp"
#include "report/phrases.hpp"
#include "report/table.hpp"
#include "report/yield_parts.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

std::string lots_text(const Journal& journal, const History& history, const Ledger& ledger, const Selection& selection,
                      const Style& style) {
    std::string out;
    for (const Lot& lot : ledger.lots) {
        if (!lists(selection, history, lot)) continue;
        out += '\n' + lot_head(journal, lot, style) + shares_table(journal, history, lot, selection, style) +
               whereabouts(journal, lot, selection, style);
    }
    return out;
}

std::string waiting_text(const Journal& journal, const History& history, const Estimates& estimates,
                         const Ledger& ledger, const Selection& selection, const Style& style) {
    Table table;
    for (const auto head : {"hive", "taken off", "honey in it", "box", ""}) table.column(head);
    for (const std::size_t i : ledger.waiting) {
        const Taking& taking = history.takings[i];
        if (!lists(selection, history, taking.hive, taking.day) || !selection.has_day(taking.day)) continue;
        const std::string box = taking.box == no_box ? counted(taking.frames, "frame")
                                                     : printable(history.boxes[static_cast<std::size_t>(taking.box)].kind);
        table.row({printable(journal.hive_name(taking.hive)), iso(taking.day),
                   mass_text(honey_of(history, estimates, i), style), box,
                   ref_text(journal, taking.fact, taking.hive, style)});
    }
    if (table.empty()) return {};
    std::string out = '\n' + heading("Waiting to be extracted", style) + '\n' + table.text(2);
    if (selection.everything()) out += "  together " + mass_text(ledger.waiting_honey, style) + '\n';
    return out;
}

std::string sums_text(const Ledger& ledger, const Style& style) {
    Table table;
    table.column("");
    table.column("", Table::Align::right);
    const auto add = [&](std::string_view words, Mass mass, bool always) {
        if (always || mass.ng != 0) table.row({std::string(words), mass_text(mass, style)});
    };
    add("opening stock", ledger.opening, false);
    add("bought in", ledger.bought, false);
    add("extracted", ledger.extracted, true);
    add("drained from cappings", ledger.drained, false);
    add("booked by stocktakes", ledger.adjusted, false);
    add("more than the books had", ledger.beyond, false);
    add("gone out", ledger.gone, true);
    add("spoiled", ledger.spoiled, false);
    add("left in jars and combs", ledger.left_in_jars, true);
    add("left in bulk", ledger.left_in_bulk, true);
    add("wax, beside the honey", ledger.wax, false);
    return '\n' + heading("All together", style) + '\n' + table.text(2);
}

std::string assumptions_text(const Journal& journal, const Ledger& ledger, const Style& style) {
    std::vector<std::pair<std::string, std::vector<FactId>>> said;
    for (const LedgerAssumption& assumed : ledger.assumptions) {
        auto known = std::find_if(said.begin(), said.end(), [&](const auto& s) { return s.first == assumed.text; });
        if (known == said.end()) known = said.insert(said.end(), {assumed.text, {}});
        known->second.push_back(assumed.fact);
    }
    std::string out;
    for (const auto& [text, facts] : said)
        out += with_ref(printable(text), "  - ", "    ", refs_text(journal, facts, style));
    return out.empty() ? out : '\n' + heading("Assumed", style) + '\n' + out;
}

}  // namespace

bool lists(const Selection& selection, const History& history, const Lot& lot) {
    if (!selection.has_day(lot.extracted)) return false;
    if (selection.hives.empty() && selection.yards.empty()) return true;
    return std::any_of(lot.shares.begin(), lot.shares.end(), [&](const LotShare& share) {
        return share.hive != no_hive && lists(selection, history, share.hive, lot.extracted);
    });
}

std::string harvest_text(const Journal& journal, const History& history, const Estimates& estimates,
                         const Ledger& ledger, const Selection& selection, const Style& style) {
    std::string out = lots_text(journal, history, ledger, selection, style);
    out += yields_text(journal, yields_of(journal, history, ledger, selection), selection, style);
    out += waiting_text(journal, history, estimates, ledger, selection, style);
    if (out.empty() && ledger.opening.ng == 0 && ledger.bought.ng == 0)
        return fmt::format("No honey taken off by {}.\n", iso(ledger.on));
    if (selection.everything()) out += sums_text(ledger, style) + assumptions_text(journal, ledger, style);
    return heading("Honey ledger on " + iso(ledger.on), style) + out;
}

}  // namespace waxtab
