#include "report/hindsight.hpp"

#include <cmath>

#include <fmt/format.h>

#include "report/phrases.hpp"
#include "report/table.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

std::string percent_text(double share) { return fmt::format("{:.0f}%", share * 100.0); }

std::string bias_text(double share) {
    const long points = std::lround(share * 100.0);
    return points == 0 ? "0%" : fmt::format("{:+}%", points);
}

std::vector<std::string> row_cells(std::string_view days, const HindsightRow& row, const Style& style) {
    const Mass error = Mass::from_kilograms(row.error_kg);
    return {std::string(days), fmt::format("{}", row.forecasts), percent_text(row.inside_80), percent_text(row.inside_50),
            text_of(error, style.mass), percent_text(row.error_share), bias_text(row.bias_share),
            percent_text(row.no_change_share), row.with_line > 0 ? percent_text(row.line_share) : "",
            row.with_line > 0 ? percent_text(row.error_with_line_share) : ""};
}

std::string days_words(const HindsightRow& row) {
    return fmt::format("{}-{}", row.from_days, row.to_days);
}

std::string rows_table(const Hindsight& hindsight, const Style& style) {
    Table table;
    for (const auto head : {"days", "times", "in 80%", "in 50%", "off by", "off by", "bias", "no change", "line", "(own)"})
        table.column(head, Table::Align::right);
    for (const HindsightRow& row : hindsight.rows) table.row(row_cells(days_words(row), row, style));
    if (hindsight.rows.size() > 1) table.row(row_cells("all", hindsight.all, style));
    return table.text(2);
}

std::string cases_text(const Journal& journal, std::string_view title, const std::vector<HindsightCase>& cases,
                       const Selection& selection, const Style& style) {
    std::string out;
    for (const HindsightCase& c : cases) {
        if (!selection.has_hive(c.hive) || !selection.has_day(c.day)) continue;
        out += with_ref(fmt::format("{}, chance foretold {}", printable(journal.hive_name(c.hive)), percent_text(c.chance)),
                        fmt::format("  {}  ", iso(c.day)), "    ", ref_text(journal, c.because, c.hive, style));
    }
    return out.empty() ? out : '\n' + heading(title, style) + out;
}

constexpr std::string_view legend =
    "days: from one visit to the next. in 80%, in 50%: how often what was then written lay in the 80% range, and in the 50% "
    "range. Rounded readings count in part (a tenth across the edge of a range by what of it lies inside; empty and full stand "
    "for all beyond), so that ranges that are right show 80% and 50%. off by: mean distance, in weight and in shares of a super. "
    "bias: above zero foretold too much. no change: how far off \"as last time\" would have been.";
constexpr std::string_view line_legend =
    " line: how far off a line through the last two visits would have been, and beside it the estimates where there was "
    "such a line.";

std::string_view ranges_words(RangesHeld held) {
    switch (held) {
        case RangesHeld::open: return "too few days to say more of the ranges";
        case RangesHeld::well: return "as many as should be, as far as can be told";
        case RangesHeld::narrow: return "fewer than should be, the ranges were too narrow";
        case RangesHeld::wide: return "more than should be, the ranges were too wide";
    }
    return {};
}

}  // namespace

std::string hindsight_words(const Hindsight& hindsight, const Style& style) {
    const HindsightRow& r = hindsight.all;
    if (hindsight.too_little)
        return fmt::format("{} of {} forecasts wanted: too little was read twice to judge by", r.forecasts, few_forecasts);
    return fmt::format("{}: {} of readings inside the 80% range (rounded readings count in part): {}; {} off on average ({} of a "
                       "super), {} had nothing changed been assumed",
                       counted(r.forecasts, "forecast"), percent_text(r.inside_80), ranges_words(r.ranges), text_of(Mass::from_kilograms(r.error_kg), style.mass),
                       percent_text(r.error_share), percent_text(r.no_change_share));
}

std::string hindsight_text(const Journal& journal, const Hindsight& hindsight, Day on, const Selection& selection,
                           const Style& style) {
    std::string out = heading("Hindsight on " + iso(on), style) + '\n';
    out += paragraph(hindsight_words(hindsight, style), "", "");
    if (!hindsight.rows.empty()) out += '\n' + rows_table(hindsight, style) + '\n' + 
               paragraph(std::string(legend) + (hindsight.all.with_line > 0 ? std::string(line_legend) : ""), "  ", "  ");
    out += cases_text(journal, "Hives found without room", hindsight.ran_out, selection, style);
    out += cases_text(journal, "Supers that stayed empty", hindsight.stayed_empty, selection, style);
    if (hindsight.supers_put_on > 0)
        out += '\n' + paragraph(fmt::format("{} put on in all, {} stayed empty; room ran out {}, foretold {}.",
                                            counted(hindsight.supers_put_on, "super"), hindsight.stayed_empty.size(),
                                            counted(static_cast<std::int64_t>(hindsight.ran_out.size()), "time"),
                                            counted(hindsight.ran_out_foretold, "time")), "", "");
    return out;
}

}  // namespace waxtab
