#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <span>
#include <string_view>

namespace waxtab::handbook {

/// One step of the four-point swarming scale.
struct SwarmScore {
    int points = 0;     ///< 4 is best, 1 has swarmed
    std::string_view says;
};
/// Source: R. Buechler et al., Standard methods for rearing and selection of queens, J. Apic. Res. 52(1) (2013),
/// sec. 3.3.3, Table 6; own wording. Supersedure cells do not count.
inline constexpr std::array<SwarmScore, 4> swarm_scores{{
    {4, "no swarm cells with egg, larva or pupa"},
    {3, "some swarm cells with brood, but room and taking the cells out would still hold the bees"},
    {2, "cells built again and again, with less open brood, a slimmed queen and little comb building"},
    {1, "swarmed, or kept from it only by a split or the like"},
}};

/// The step with these points; nothing outside 1 to 4 (half points lie between two steps). Source: swarm_scores.
constexpr std::optional<SwarmScore> swarm_score(int points) {
    for (const SwarmScore& s : swarm_scores)
        if (s.points == points) return s;
    return std::nullopt;
}

/// True for 1, 1.5, 2 ... 4: half points are allowed. Source: as swarm_scores.
inline bool is_swarm_score(double points) {
    return points >= 1 && points <= 4 && points * 2 == std::floor(points * 2);
}

/// A season's score is its lowest; nothing without valid scores. Source: as swarm_scores.
inline std::optional<double> season_swarm_score(std::span<const double> scores) {
    std::optional<double> lowest;
    for (double s : scores)
        if (is_swarm_score(s)) lowest = lowest ? std::min(*lowest, s) : s;
    return lowest;
}

/// Days between looks in swarm season, as a longest gap. Source: BBKA, "May" (I. Campbell).
inline constexpr int inspection_days = 7;
/// As above for colonies at higher risk; from no sign to a swarm can take five days. Sources: BBKA, "May" (4-5
/// days); Trunch BK, "Queen cells" (5 days).
inline constexpr int inspection_days_high_risk = 5;
/// As above with a clipped queen; from memory (10-14 days).
inline constexpr int inspection_days_clipped = 10;

/// How strongly a sign speaks for swarming. No published figure gives a probability, so none is given here.
enum class SignWeight { normal, watch, act };

/// A sign of swarming or crowding.
struct SwarmSign {
    std::string_view sign;
    SignWeight weight = SignWeight::normal;
    std::string_view source;
};
inline constexpr std::array<SwarmSign, 7> swarm_signs{{
    {"queen cups, dry", SignWeight::normal, "homeofthebusybee.com"},
    {"queen cups with an egg or jelly", SignWeight::act, "homeofthebusybee.com"},
    {"open or sealed queen cells beside a laying queen", SignWeight::act, "theapiarist.org, from memory"},
    {"brood nest filled back with nectar", SignWeight::watch, "betterbee.com: may also be a flow without room"},
    {"much drone brood", SignWeight::watch, "betterbee.com"},
    {"bees hanging out at the entrance", SignWeight::watch, "beekeepersrealm.com"},
    {"less open brood and a slimmed queen", SignWeight::act, "Buechler et al., J. Apic. Res. 52(1) (2013)"},
}};

}  // namespace waxtab::handbook
