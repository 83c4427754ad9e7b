#pragma once
#include <string>
#include <vector>

#include <catch2/catch.hpp>

#include "history/history.hpp"
#include "history/invariants.hpp"

namespace waxtab::testing {

/// A day after all that is noted in a test.
inline const Day later = day_from_iso("2026-12-31").value();

/// Replays and checks what must hold of every history.
inline History replay_checked(const Journal& journal, Day on) {
    History history = replay(journal, on);
    for (const std::string& breach : broken_invariants(journal, history)) FAIL_CHECK(breach);
    return history;
}

/// The codes of what the replay found wrong, in order, each after its severity: `error not-on`.
inline std::vector<std::string> found(const History& history) {
    std::vector<std::string> out;
    for (const Diagnostic& d : history.diagnostics) {
        const char* severity = d.severity == Severity::error ? "error " : d.severity == Severity::warning ? "warning " : "note ";
        out.push_back(severity + std::string(d.code));
    }
    return out;
}

/// The lines a diagnostic cites, from 1.
inline std::vector<int> cited(const Journal& journal, const Diagnostic& d) {
    std::vector<int> out;
    for (const Related& line : d.related) out.push_back(static_cast<int>(journal.sources[line.span.file].place(line.span.begin).line));
    return out;
}

inline const Box& box_at(const History& history, BoxId id) { return history.boxes[static_cast<std::size_t>(id)]; }
inline const HiveHistory& hive_at(const History& history, HiveId id) { return history.hives[static_cast<std::size_t>(id)]; }

}  // namespace waxtab::testing
