#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "history/history.hpp"

namespace waxtab {

/// A stretch of days a queen headed a hive.
struct Reign {
    int queen = 0;                      ///< index into the list of queens
    HiveId hive = no_hive;
    std::optional<Day> from;            ///< unset: there when the notes begin
    std::optional<Day> to;              ///< unset: as far as is known she is there
    FactId from_fact = set_up_fact, to_fact = set_up_fact;
    std::string_view came;              ///< how she came there: `raised after the swarm`, `introduced`; empty: was there
    std::string_view went;              ///< how it ended: `left with the swarm`, `not there any more`; empty: it did not
};

/// A queen, told from others by what was noted: a split or swarm that took her, a new one introduced or raised.
struct Queen {
    std::string colour;                 ///< as marked; empty when not noted
    int year = 0;                       ///< as noted with the mark, 0 when not
    bool clipped = false;
    HiveId raised_in = no_hive;         ///< hive that raised her, where the notes say so
    std::string mother;                 ///< as noted: a hive or a breeder; else empty
};

/// The queens of a journal and where each was when.
struct Queens {
    std::vector<Queen> queens;
    std::vector<Reign> reigns;          ///< in order of their beginning

    /// Of one hive, in order.
    std::vector<const Reign*> of(HiveId hive) const;
    /// The same queen's next reign after this one; null when there is none.
    const Reign* next(const Reign& reign) const;
    /// Her reign before this one; null when there is none.
    const Reign* before(const Reign& reign) const;
    /// True when the notes tell more of a hive's queens than that there was one.
    bool worth_telling(HiveId hive) const;
};

/// Follows queens through splits, swarms, unions and introductions, as of `history.on`. Where a split does not say which
/// half she went to, she is taken to have stayed.
Queens queens_of(const Journal& journal, const History& history);

}  // namespace waxtab
