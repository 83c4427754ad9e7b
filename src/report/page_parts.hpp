#pragma once
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "ledger/yields.hpp"
#include "report/page.hpp"

// What the parts of the page share. Every part returns HTML.

namespace waxtab {

/// Journal text as HTML text: control characters shown, markup escaped. Fit for attributes in double quotes.
std::string html(std::string_view text);
/// The same, kept from turning the direction of what stands around it.
std::string bdi(std::string_view text);
/// Days set so that a line never breaks within them, ranges and weights likewise; what stands in tags and drawings is left alone.
std::string unbroken(std::string_view markup);
/// At most so many characters, with an ellipsis where something was cut; not escaped.
std::string shortened(std::string_view text, std::size_t characters);
/// A coordinate with at most one decimal.
std::string xy(double value);

/// A table that scrolls on its own where the screen is narrow. `heads` are plain text, `rows` markup.
std::string wide_table(std::string_view caption, const std::vector<std::string_view>& heads, std::string_view rows);
/// A row of it: its head and its data, all markup.
std::string cells(std::string_view head, const std::vector<std::string>& data);

/// A page being written: its input, and which journal lines it has cited so far.
class Page {
public:
    explicit Page(const ReportInput& input) : in(input) {}

    /// Links to the journal lines of facts: `mill.hive:7, 9`. Empty without refs.
    std::string refs(const std::vector<FactId>& facts);
    /// The same, `most` lines of them, and a link to where the rest is cited: `and 23 more`.
    std::string refs(const std::vector<FactId>& facts, std::size_t most, std::string_view where);
    /// Links to the lines an estimate rests on, to the hive's set-up line where it rests on none.
    std::string refs(const HiveEstimate& estimate);
    /// True when the supers of a hive are estimated: not before anything was noted of it.
    bool judged(HiveId hive) const;
    /// A link to one line; the set-up line of `hive` for `set_up_fact`.
    std::string ref(FactId fact, HiveId hive);
    std::string ref(Span span);
    /// The hive's name, linking to its section.
    std::string hive(HiveId hive) const;
    std::string yard(YardId yard) const;
    YardId yard_of(HiveId hive) const;

    /// The name of the hatching of a box with so many frames, which is drawn once for the whole page.
    std::string frame_pattern(int frames, bool foundation);
    static std::string frame_pattern_name(int frames, bool foundation);
    const std::set<std::pair<int, bool>>& frame_patterns() const { return frame_patterns_; }

    /// All cited lines, with what was written there.
    std::string cited_lines() const;

    const ReportInput& in;

private:
    std::map<std::uint32_t, std::set<std::uint32_t>> lines_of(const std::vector<FactId>& facts) const;
    std::string line_link(std::uint32_t file, std::uint32_t line, bool with_name);
    std::map<std::uint32_t, std::set<std::uint32_t>> cited_;
    std::set<std::pair<int, bool>> frame_patterns_;
};

/// A whole document around `body`, with its style sheet and the hatchings the drawings use.
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

/// Honey by hive in one season; empty where none was taken.
std::string hives_table(Page& page, const Yields& yields, int year);
/// Honey by yard and season. `here` is the season whose hives stand on the same page.
std::string yards_table(Page& page, const Yields& yields, const std::vector<YieldRow>& rows, int here);

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
/// What the stacks and charts of the hives are drawn with, said once beside samples of it.
std::string drawing_key();
/// The months of all filling charts, drawn once on the page and shared by them, within `<defs>`.
std::string shared_months(const ReportInput& input);

std::string stack_drawing(Page& page, const HiveHistory& hive);
/// The hatchings of the boxes drawn so far.
std::string frame_patterns(const Page& page);
/// Empty when there is nothing to draw.
std::string filling_chart(Page& page, const HiveHistory& hive);
std::string flow_chart(Page& page, YardId yard);
std::string ledger_drawing(Page& page);

}  // namespace waxtab
