#include "report/yield_parts.hpp"

#include <fmt/format.h>

#include "report/phrases.hpp"
#include "report/table.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

std::string taken_text(int supers, int frames) {
    std::vector<std::string> parts;
    if (supers > 0) parts.push_back(counted(supers, "super"));
    if (frames > 0) parts.push_back(counted(frames, "frame"));
    return listed(parts);
}

std::string hive_count(std::size_t n) { return counted(static_cast<std::int64_t>(n), "hive"); }

/// `27.33 kg a hive over the 3 hives that gave honey, 20.50 kg over all 4 that stood there; 18.00 to 41.00 kg`.
std::string average_text(const YieldRow& row, const Style& style) {
    if (row.harvested.size() + row.living.size() < 2) return {};
    std::string text = fmt::format("{} a hive over the {} that gave honey", mass_text(row.per_harvested, style),
                                   hive_count(row.harvested.size()));
    if (row.living.size() > row.harvested.size())
        text += fmt::format(", {} over all {} that stood there", mass_text(row.per_living, style), row.living.size());
    if (row.harvested.size() > 1)
        text += fmt::format("; the least {}, the middle {}, the most {}", mass_text(row.least, style),
                            mass_text(row.median, style), mass_text(row.most, style));
    return text;
}

std::string row_text(const std::string& name, const YieldRow& row, const Style& style) {
    std::string text = fmt::format("{}: {}", name, mass_text(row.honey, style));
    const std::string taken = taken_text(row.supers, row.frames);
    if (!taken.empty()) text += " in " + taken;
    std::string out = paragraph(text, "  ", "    ");
    const std::string average = average_text(row, style);
    return average.empty() ? out : out + paragraph(average, "    ", "    ");
}

std::string hives_table(const Journal& journal, const Yields& yields, int year, YardId yard, const Selection& selection,
                        const Style& style) {
    Table table;
    for (int i = 0; i < 4; ++i) table.column("");
    for (const SeasonYield& whole : yields.hives) {
        if (whole.year != year || !selection.has_hive(whole.hive)) continue;
        const SeasonYield row = at_yard(whole, yard);
        if (row.parts.empty()) continue;
        std::vector<FactId> because;
        for (const Harvest& part : row.parts) because.insert(because.end(), part.because.begin(), part.because.end());
        table.row({printable(journal.hive_name(row.hive)), mass_text(row.honey, style),
                   taken_text(row.supers, row.frames), refs_text(journal, because, style)});
    }
    return table.text(6);
}

std::string colonies_text(const Journal& journal, const Yields& yields, int year, const Style& style) {
    std::string out;
    for (const ColonyYield& colony : yields.colonies) {
        if (colony.year != year) continue;
        std::vector<std::string> names;
        for (const HiveId hive : colony.hives) names.push_back(printable(journal.hive_name(hive)));
        out += paragraph(fmt::format("one colony in part of the season, {}: {} together", listed(names),
                                     mass_text(colony.honey, style)), "  ", "    ");
    }
    return out;
}

/// The yards of a season with their hives; with hives chosen, these alone.
std::string yards_of(const Journal& journal, const Yields& yields, int year, const Selection& selection,
                     const Style& style, int& count) {
    std::string out;
    for (const YieldRow& yard : yields.yards) {
        if (yard.year != year || !selection.has_yard(yard.yard)) continue;
        const std::string hives = hives_table(journal, yields, year, yard.yard, selection, style);
        if (hives.empty() && !selection.hives.empty()) continue;
        const std::string name = yard.yard == no_yard ? "No yard named" : "Yard " + printable(journal.yard_name(yard.yard));
        if (selection.hives.empty()) out += row_text(name, yard, style);
        out += hives;
        ++count;
    }
    return out;
}

}  // namespace

Yields yields_of(const Journal& journal, const History& history, const Ledger& ledger, const Selection& selection) {
    if (!selection.since && !selection.until) return yields(journal, history, ledger);
    const Day first = date::year{1} / 1 / 1;
    return yields(journal, history, ledger, selection.since.value_or(first), selection.until.value_or(ledger.on));
}

std::string yields_text(const Journal& journal, const Yields& yields, const Selection& selection, const Style& style) {
    std::string out;
    for (const YieldRow& season : yields.seasons) {
        int listed_yards = 0;
        const std::string yards = yards_of(journal, yields, season.year, selection, style, listed_yards);
        if (yards.empty()) continue;
        const bool whole = selection.hives.empty() && selection.yards.empty();
        const std::string name = fmt::format("Season {}", season.year);
        out += '\n' + (whole && listed_yards > 1 ? row_text(name, season, style) : "  " + name + '\n') + yards;
        if (whole) out += colonies_text(journal, yields, season.year, style);
    }
    return out.empty() ? out : '\n' + heading("Yields", style) + out;
}

}  // namespace waxtab
