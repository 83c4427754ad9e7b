#pragma once
#include <array>

namespace waxtab::handbook {

/// A cold that kills every stage of the wax moth in comb when it lasts so many hours. Source: COLOSS BEEBOOK, wax
/// moth, sec. 5.8.1, after Charriere and Imdorf (1999).
struct Freezing { double celsius = 0, hours = 0; };
inline constexpr std::array<Freezing, 4> freezings{{{0, 24}, {-7, 4.5}, {-12, 3}, {-15, 2}}};

/// Years after which comb that held brood is renewed: 3 to 4. Source: University of Minnesota Bee Squad
/// (backyardbeekeeping.iamcountryside.com, storing comb); E. Jaycox (University of Illinois) as told at beekeep.info.
/// Others say 5, or never.
inline constexpr int brood_comb_years = 4;

}  // namespace waxtab::handbook
