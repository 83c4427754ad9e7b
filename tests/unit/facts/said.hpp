#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "facts/journal.hpp"

namespace waxtab::test {

/// A yard of hives the lines of the reading tests are about.
std::string_view usual_set_up();

/// A journal of the set-up, a heading of 3 June 2026 and the lines.
Journal journal_of(std::string_view lines, std::string_view set_up = usual_set_up());

/// What a line is read as: the short form of every fact and the code of every message, ` | ` between.
/// A remark that is flagged has `?` before it, a message `!`, a fact dated otherwise `on DATE` after it.
std::string said(std::string_view line, std::string_view set_up = usual_set_up());
std::string said(const Journal& journal);

/// A written line and what it must be read as.
struct Line {
    std::string_view written, meant;
};

/// Checks every line of a table against what it is read as.
void check_lines(const std::vector<Line>& lines, std::string_view set_up = usual_set_up());

}  // namespace waxtab::test
