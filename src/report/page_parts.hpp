#pragma once
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "report/page.hpp"

// What the parts of the page share. Every part returns HTML.

namespace waxtab {

/// Journal text as HTML text: control characters shown, markup escaped. Fit for attributes in double quotes.
std::string html(std::string_view text);
/// The same, kept from turning the direction of what stands around it.
std::string bdi(std::string_view text);
/// At most so many characters, with an ellipsis where something was cut; not escaped.
std::string shortened(std::string_view text, std::size_t characters);
/// A coordinate with at most one decimal.
std::string xy(double value);

/// A page being written: its input, and which journal lines it has cited so far.
class Page {
public:
    explicit Page(const ReportInput& input) : in(input) {}

    /// Links to the journal lines of facts: `mill.hive:7,9`. Empty without refs.
    std::string refs(const std::vector<FactId>& facts);
    /// A link to one line; the set-up line of `hive` for `set_up_fact`.
    std::string ref(FactId fact, HiveId hive);
    std::string ref(Span span);
    /// The hive's name, linking to its section.
    std::string hive(HiveId hive) const;
    std::string yard(YardId yard) const;
    YardId yard_of(HiveId hive) const;

    /// All cited lines, with what was written there.
    std::string cited_lines() const;

    const ReportInput& in;

private:
    std::string line_link(std::uint32_t file, std::uint32_t line, bool with_name);
    std::map<std::uint32_t, std::set<std::uint32_t>> cited_;
};

/// Style sheet and the hatchings the drawings use.
std::string_view page_style();
std::string_view page_hatchings();
/// A whole document around `body`.
std::string page_document(std::string_view title, std::string_view body);

// ---- the sections of the page, in order ---------------------------------------------------
std::string week_section(Page& page);
std::string bring_section(Page& page);
std::string yard_sheets(Page& page);
std::string hives_section(Page& page);
std::string flow_section(Page& page);
std::string ledger_section(Page& page);
std::string compare_section(Page& page);
std::string breeding_section(Page& page);
std::string problems_section(Page& page);

/// Seasons before the one of the day stood on with honey in them, ascending; each has a page of its own.
std::vector<int> older_seasons(const ReportInput& input);
std::string season_page(const ReportInput& input, int year);

// ---- drawings -----------------------------------------------------------------------------

/// The days a chart spans.
struct TimeAxis {
    Day from{}, to{};
    double left = 30, right = 334;
    double x(Day day) const;
};
/// The season of the day stood on, as far as there is something to draw, and three weeks ahead.
TimeAxis season_axis(const ReportInput& input);
/// Months below a chart, and a line for the day stood on.
std::string month_marks(const TimeAxis& axis, double top, double bottom, Day on);
/// The months of all filling charts, drawn once on the page and shared by them.
std::string shared_months(const ReportInput& input);

std::string stack_drawing(Page& page, const HiveHistory& hive);
/// Empty when there is nothing to draw.
std::string filling_chart(Page& page, const HiveHistory& hive);
std::string flow_chart(Page& page, YardId yard);
std::string ledger_drawing(Page& page);

}  // namespace waxtab
