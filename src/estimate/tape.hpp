#pragma once
#include <vector>

#include "history/history.hpp"

namespace waxtab {

/// One thing that touches the estimates, in the order it took effect.
struct TapeEntry {
    enum class What : std::uint8_t {
        arrive,     ///< a hive is first met, or comes to a yard
        box_on,     ///< `index`: stay of the box
        box_off,    ///< `index`: stay of the box
        sighting,   ///< `index`: sighting of the box
        frames_off, ///< `index`: taking of frames; `box` where the fact resolved to one
        hive_fact,  ///< `index`: fact about the hive
        yard_fact,  ///< `index`: fact about the yard
        extracted,  ///< `index`: fact
        weighed,    ///< `index`: taking whose net weight is known from here on
        end,        ///< the hive is gone
    };
    Day day{};
    std::int64_t order = -1;    ///< fact that brought it about; -1 for the set-up
    What what = What::hive_fact;
    HiveId hive = no_hive;
    YardId yard = no_yard;
    BoxId box = no_box;
    std::size_t index = 0;
};

/// Everything of a history that touches the estimates, in order of effect.
std::vector<TapeEntry> tape_of(const Journal& journal, const History& history);

}  // namespace waxtab
