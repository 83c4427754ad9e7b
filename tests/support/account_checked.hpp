#pragma once
#include <string>
#include <vector>

#include <catch2/catch.hpp>

#include "ledger/ledger.hpp"

namespace waxtab {

inline Mass kg(double v) { return Mass::from_kilograms(v); }
inline Day on(std::string_view iso) { return day_from_iso(iso).value(); }

/// The ledger, with every equation of the books checked: a test that uses this cannot pass with books that do
/// not close.
inline Ledger account_checked(const Journal& journal, const History& history, const Estimates& estimates) {
    Ledger ledger = account(journal, history, estimates);
    CHECK(unbalanced(ledger) == std::vector<std::string>{});
    return ledger;
}

/// All stages of a journal of one file up to the ledger.
struct Accounted {
    Journal journal;
    History history;
    Ledger ledger;
};

inline Accounted account_text(const std::string& text, std::string_view on) {
    const Day day = day_from_iso(on).value();
    Accounted a;
    a.journal = read_journal({{"a.hive", text}}, day);
    a.history = replay(a.journal, day);
    a.ledger = account_checked(a.journal, a.history, estimate(a.journal, a.history));
    return a;
}

/// `error jar-size-unsaid` and so on, in order.
inline std::vector<std::string> codes(const Diagnostics& diagnostics) {
    std::vector<std::string> out;
    for (const Diagnostic& d : diagnostics) {
        const char* severity = d.severity == Severity::error ? "error " : d.severity == Severity::warning ? "warning " : "note ";
        out.push_back(severity + std::string{d.code});
    }
    return out;
}

}  // namespace waxtab
