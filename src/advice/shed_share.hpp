#pragma once
#include <string>
#include <vector>

#include "advice/advice.hpp"

namespace waxtab {

struct HiveView;

/// What one hive wants of the shed, and what it gets when there is not enough for all.
struct ShedClaim {
    HiveId hive = no_hive;
    /// Chance that room runs out with none, one, two ... of the wanted supers put on, 0..1; as many as are wanted.
    std::vector<double> chances;
    bool known = true;          ///< false: nothing to base a chance on; it comes after those with one
    bool crowded = false;       ///< the brood nest has no room now: it goes first
    int gets = 0;

    int wanted() const { return static_cast<int>(chances.size()); }
};

/// The claim of a hive on `count` supers that have to last `days` days.
ShedClaim claim_of(const HiveView& hive, int count, int days);

/// Gives `in_shed` supers one by one to where room is likeliest to run out without it; equals in the order of claims.
/// Claims end up in the order of being served.
void share_out(std::vector<ShedClaim>& claims, int in_shed);

/// How many supers of a kind and comb the shed holds; the lines that say so are added to `because`.
int supers_in_shed(const History& history, const std::string& box_kind, Comb comb, std::vector<FactId>& because);

/// `first h3 (9 in 10), then h5 (4 in 10; 1 of the 2 it wants); none for h1 (2 in 10)`: the odds are that room runs out without it.
std::string shared_words(const Journal& journal, const std::vector<ShedClaim>& claims);

}  // namespace waxtab
