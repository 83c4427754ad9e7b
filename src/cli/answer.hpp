#pragma once
#include <memory>
#include <optional>
#include <string>

#include "cli/options.hpp"
#include "ledger/ledger.hpp"
#include "report/style.hpp"

namespace waxtab {

/// A journal with all that follows from it on one day.
struct Whole {
    Journal journal;
    History history;
    Estimates estimates;
    Ledger ledger;

    /// What is wrong, of all stages, in reading order.
    Diagnostics diagnostics() const;
};

/// Runs the stages over the files.
std::unique_ptr<Whole> whole_of(std::vector<JournalFile> files, Day on);

/// What a command says, or why it cannot.
struct Answer {
    std::string text;
    std::string refusal;    ///< not empty: wrong use, such as a hive that is not in the journal
};

/// The answer of any command but `check`.
Answer answer(const Options& options, const Whole& whole, bool colour);

/// What `check` prints; errors are counted by the caller.
std::string check_text(const Options& options, const Whole& whole, const Diagnostics& diagnostics, bool colour);

}  // namespace waxtab
