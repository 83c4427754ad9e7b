#include <algorithm>

#include <fmt/format.h>

#include "report/page_parts.hpp"

namespace waxtab {

double TimeAxis::x(Day day) const {
    const double share = static_cast<double>(days_between(from, day)) / std::max(1, days_between(from, to));
    return left + (right - left) * std::clamp(share, 0.0, 1.0);
}

TimeAxis season_axis(const ReportInput& input) {
    constexpr int ahead = 21, at_least = 60;
    const Day on = input.history.on;
    const Settings& s = input.journal.settings;
    const date::year_month_day today{on};
    Day begin = date::sys_days(today.year() / s.season_from_month / date::day{static_cast<unsigned>(s.season_from_day)});
    for (const HiveHistory& hive : input.history.hives)
        for (const Day visit : hive.visits)
            if (date::year_month_day{visit}.year() == today.year()) begin = std::min(begin, visit);
    TimeAxis axis;
    axis.to = on + date::days{ahead};
    axis.from = std::min(begin, on - date::days{at_least});
    return axis;
}

std::string month_marks(const TimeAxis& axis, double top, double bottom, Day on) {
    static constexpr std::string_view names[] = {"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    std::string lines, words;
    date::year_month month = date::year_month_day{axis.from}.year() / date::year_month_day{axis.from}.month();
    const int every = days_between(axis.from, axis.to) > 300 ? 2 : 1;
    for (int i = 0; date::sys_days(month / 1) <= axis.to; month += date::months{1}, ++i) {
        const Day first = date::sys_days(month / 1);
        if (first >= axis.from) lines += fmt::format("M{} {}V{}", xy(axis.x(first)), xy(top), xy(bottom + 4));
        const Day last = date::sys_days((month + date::months{1}) / 1);
        const double begin = axis.x(std::max(first, axis.from)), end = axis.x(std::min(last, axis.to));
        if (end - begin > 24 && i % every == 0)
            words += fmt::format("<text x=\"{}\" y=\"{}\" text-anchor=\"middle\">{}</text>", xy((begin + end) / 2), xy(bottom + 14),
                                 names[static_cast<unsigned>(month.month()) - 1]);
    }
    return fmt::format("<path class=\"hair\" d=\"{}\"/>{}<path class=\"line\" d=\"M{} {}V{}\"/>"
                       "<text x=\"{}\" y=\"{}\" text-anchor=\"middle\">today</text>",
                       lines, words, xy(axis.x(on)), xy(top), xy(bottom), xy(axis.x(on)), xy(top - 4));
}

}  // namespace waxtab
