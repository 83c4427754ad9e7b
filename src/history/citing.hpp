#pragma once
// How contradictions quote and cite lines of the journal.
#include "history/replay.hpp"

namespace waxtab::replaying {

/// The words of the fact as written, in '...', shortened; `this line` when it has no text.
std::string quoted(const Replay& r, const Fact& fact);
/// A cited line: the fact's, or for `set_up_fact` the hive's set-up line with `set_up_text`.
Related cite(const Replay& r, HiveId hive, FactId fact, std::string text, std::string set_up_text);
/// Adds a diagnostic about the step's own line; related lines without a place are left out.
void report(Replay& r, const Step& s, Severity severity, std::string_view code, std::string title, std::string hint,
            std::vector<Related> related = {});
/// True the first time this code is reported for these words since the hive's boxes last changed.
bool first_time(Replay& r, HiveId hive, std::string_view code, const BoxChoice& choice);
/// True when both facts stand on the same line of the same file.
bool same_line(const Replay& r, const Fact& a, const Fact& b);

}  // namespace waxtab::replaying
