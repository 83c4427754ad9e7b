#pragma once
#include <string>
#include <vector>

#include "advice/advice.hpp"

/// A short journal, a day to stand on, and the advice a good mentor gives there and does not give.
struct MentorCase {
    std::string name;
    std::string source;                 ///< where the advice comes from
    std::string on;
    std::string journal;
    /// `h3 room-runs-out: on top`: hive, rule, and words the advice must hold; `-` for no hive, `*` for any.
    std::vector<std::string> must;
    /// The same; a rule of `*` means any rule.
    std::vector<std::string> must_not;
};

/// Everything a case is judged by; also for tests that look closer.
struct Advised {
    waxtab::Journal journal;
    waxtab::History history;
    waxtab::Estimates estimates;
    waxtab::Ledger ledger;
    std::vector<waxtab::Advice> advice;
};
Advised advised(const std::string& journal, const std::string& on);
Advised advised(waxtab::Journal journal, const std::string& on);
/// All advice, one line each, for messages.
std::string listing(const Advised& a);
/// The advice of a rule, or one it was joined to, at a hive (empty: none).
const waxtab::Advice* find(const Advised& a, const std::string& hive, const std::string& rule);

void check_case(const MentorCase& c);
/// What holds for any advice: signed, short, with reasons, nothing twice, nothing forbidden said.
void check_always(const Advised& a);

/// One or two yards with usual hives; cases add lines.
inline const std::string mill = "units kg\nhive h3 at mill: deep, excluder, super drawn9\n";
inline const std::string mill_bare = "units kg\nhive h3 at mill: deep, excluder\n";
