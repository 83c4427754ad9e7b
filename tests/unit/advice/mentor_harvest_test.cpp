// Honey off, the end of a flow, boards, and lots.
#include <catch2/catch.hpp>

#include "mentor.hpp"

namespace {

const std::vector<MentorCase> cases{
    {"three quarters capped comes off", "C. Collison, Harvesting & Packing Honey: 3/4", "2026-07-10",
     mill + "2026-07-10 mill\nflow on\nh3 top full, 90% capped\n", {"h3 take-when-ripe: capped"}, {"h3 leave-on"}},
    {"one third capped stays on", "bee-health.extension.org; Die Honigmacher", "2026-07-10",
     mill + "2026-07-10 mill\nflow on\nh3 top full, top 30% capped\n", {"h3 leave-on: moisture reading would outrank"}, {"h3 take-when-ripe"}},
    {"two thirds with a dry shake", "Die Honigmacher, course 3: 2/3 and the shake test", "2026-07-10",
     mill + "2026-07-10 mill\nh3 top full, top 70% capped, doesn't shake out\n", {"h3 take-when-ripe: no nectar falls"}, {}},
    {"nectar shakes out: leave it", "Somerset BKA; Die Honigmacher (Spritzprobe)", "2026-07-10",
     mill + "2026-07-10 mill\nh3 top full, top 90% capped, nectar shakes out\n", {"h3 not-ripe: nectar falls"}, {"h3 take-when-ripe"}},
    {"moisture outranks capping", "Bienen & Natur; melkonyan.de: fully capped above 18 %", "2026-07-10",
     mill + "2026-07-10 mill\nh3 top full, top 95% capped\nmoisture 19.5% h3 top\n", {"h3 not-ripe: moisture outranks capping"},
     {"h3 take-when-ripe"}},
    {"one dry reading is one frame", "blog.exometeofraiture.net (2019): single frames at 23 % under cappings", "2026-07-10",
     mill + "2026-07-10 mill\nh3 top full, top 20% capped\nmoisture 17.2% h3 top\n", {"h3 measure-more-frames: one frame"},
     {"h3 take-when-ripe"}},
    {"ripe honey: several frames, outer ones too", "correction on ripeness; common practice for the number", "2026-07-10",
     mill + "2026-07-10 mill\nh3 top full, top 95% capped\n", {"h3 take-when-ripe: outer ones too"}, {}},
    {"brood in a super: no honey from it", "honey regulations (Directive 2001/110/EC, from memory)", "2026-07-10",
     mill + "2026-07-10 mill\nh3 top full, top 90% capped, brood in super\n", {"h3 brood-in-super", "h3 brood-above-excluder: several explanations"},
     {"h3 take-when-ripe"}},
    {"comb honey has to be sealed", "honey regulations (Directive 2001/110/EC, from memory)", "2026-07-10",
     "units kg\nhive h3 at mill: deep, excluder, super cut comb\n2026-07-10 mill\nh3 top full, top 80% capped\n", {}, {"h3 take-when-ripe", "h3 comb-honey"}},
    {"sealed comb honey comes off", "Demuth, USDA Farmers' Bulletin 503 (1912)", "2026-07-10",
     "units kg\nhive h3 at mill: deep, excluder, super cut comb\n2026-07-10 mill\nh3 top full, top fully capped\n", {"h3 comb-honey: sealed"}, {}},
    {"a heavy super gets a lifting caution by kilograms", "HSE guideline filter: 25 kg, less when twisting", "2026-07-10",
     "units kg\nhive h3 at mill: deep, excluder, super deep\n2026-07-10 mill\nh3 top full, top fully capped\n", {"h3 lifting: lifting limit"}, {}},
    {"a light super gets none", "HSE guideline filter: by kilograms, not by the box's name", "2026-07-10",
     "units kg\nlift 60 kg\nhive h3 at mill: deep, excluder, super deep\n2026-07-10 mill\nh3 top full, top fully capped\n", {}, {"h3 lifting"}},
    {"defensive bees get a sting caution", "common practice, no source", "2026-07-10",
     mill + "2026-07-10 mill\nh3 top full, top fully capped, defensive\n", {"h3 stings: defensive"}, {}},
    {"escape board: back in two days", "from memory: 24-48 hours", "2026-07-11",
     mill + "2026-07-10 mill\nh3 top full, top fully capped\nh3 escape board on\n", {"h3 escape-board: by 2026-07-12"}, {"h3 take-when-ripe"}},
    {"escape board forgotten", "from memory: 24-48 hours", "2026-07-15",
     mill + "2026-07-10 mill\nh3 top full, top fully capped\nh3 escape board on\n", {"h3 escape-board: way back"}, {}},
    {"supers waiting are extracted within days", "bee-health.extension.org: 3-4 days", "2026-07-12",
     mill + "2026-07-10 mill\nh3 top full, top fully capped\nh3 top off 22kg\n", {"- extract-soon: by 2026-07-14"}, {}},
    {"rape honey cannot wait", "from memory: it sets in the comb", "2026-05-20",
     mill + "2026-05-10 mill\noilseed rape in flower\n2026-05-19 mill\nh3 top full, top fully capped\nh3 top off 22kg\n",
     {"- extract-soon: sets in the comb"}, {}},
    {"extracted: nothing waits", "bee-health.extension.org", "2026-07-13",
     mill + "2026-07-10 mill\nh3 top off 22kg\n2026-07-12\nextracted 14 kg lot A from h3\n", {}, {"- extract-soon"}},
    {"end of flow: untouched supers come off, room to ripen stays", "Demuth, USDA Farmers' Bulletin 503; MSU P3382", "2026-08-20",
     mill + "2026-08-01 mill\n+super h3 drawn9\n2026-08-20 mill\nflow ending\nh3 super 1 80% full, top empty\n",
     {"h3 take-untouched: untouched", "h3 take-untouched: stores in the brood box"}, {}},
    {"the only super, untouched, stays as ripening room in the season", "Demuth 1912: always leave some room", "2026-08-10",
     mill + "2026-08-10 mill\nflow ending\nh3 top empty\n", {}, {"h3 take-untouched"}},
    {"a gap in June is not the season's end", "the season's dates are the keeper's; stores: basicbeekeeping, lesson 119", "2026-06-15",
     mill + "2026-06-15 mill\nno flow\nh3 top 30% full\n", {"- gap-not-end: not the season's end"}, {"h3 take-untouched", "h3 season-over", "h3 no-more-supers"}},
    {"one super for all is not said to extracting hives", "correction: that is section-honey advice of 1912", "2026-08-20",
     mill + "2026-08-01 mill\n+super h3 drawn9\n2026-08-20 mill\nflow ending\nh3 super 1 80% full, top 60% full\n", {},
     {"h3 take-untouched", "h3 *: one super"}},
    {"supers after the season", "Demuth 1912: off promptly; robbing", "2026-09-10",
     mill + "2026-09-08 mill\nflow over\nh3 top 60% full\n", {"h3 season-over: robbing", "h3 excluder-winter"}, {}},
    {"a fermenting lot is not jarred", "Codex STAN 12-1981; the yeast is not blended away", "2026-09-01",
     mill + "2026-08-01 mill\nh3 top off 22kg\n2026-08-02\nextracted 14 kg lot B from h3\n2026-09-01\nlot B fermenting\n",
     {"- lot-ferments: out of jars and blends", "- lot-ferments: infants under 12 months"}, {}},
    {"a wet lot: four limits, four answers", "Directive 2001/110/EC; 50 FR 15861; DLR Westpfalz", "2026-08-03",
     mill + "2026-08-01 mill\nh3 top off 22kg\n2026-08-02\nextracted 14 kg lot B from h3\nmoisture 19.2% lot B\n",
     {"- lot-wet: 19.2%", "- lot-wet: missed"}, {}},
    {"a lot from a super that was fed under is cleared before it is sold", "Codex STAN 12-1981", "2026-07-10",
     mill + "2026-05-20 mill\nh3 top 20% full, fed 2 L syrup 1:1\n2026-07-01 mill\nh3 top off 22kg\n2026-07-02\nextracted 14 kg lot B from h3\n",
     {"- lot-concerns: label and law"}, {}},
    {"two dozen jars and no buyer: was it a business?", "Reg. (EC) 178/2002 art. 18: which businesses", "2026-08-10",
     mill + "2026-08-01 mill\nh3 top off 22kg\n2026-08-02\nextracted 14 kg lot B from h3\nfilled 28 x 454 g lot B\n2026-08-05\nsold 24 x 454 g lot B\n",
     {"- sold-to-whom: business"}, {}},
    {"six jars at the door, or a named shop: silence", "Reg. (EC) 178/2002 art. 18: no duty to name consumers", "2026-08-10",
     mill + "2026-08-01 mill\nh3 top off 22kg\n2026-08-02\nextracted 14 kg lot B from h3\nfilled 30 x 454 g lot B\n2026-08-05\nsold 4 x 454 g lot B\n"
            "sold 24 x 454 g lot B to village shop\n",
     {}, {"- sold-to-whom"}},
    {"half-done supers go to the hives that will finish", "Demuth, USDA Farmers' Bulletin 503 (1912)", "2026-08-15",
     "units kg\nhive h3 at mill: deep, excluder, super drawn9\nhive h4 at mill: deep, excluder, super drawn9\n"
     "2026-08-15 mill\nflow ending\nh3 top 40% full, top uncapped\nh4 top 50% full, top uncapped\n",
     {"- sort-unfinished: healthy hives only"}, {}},
    {"with foulbrood about nothing is sorted between hives", "local law on notifiable bee diseases", "2026-08-15",
     "units kg\nhive h3 at mill: deep, excluder, super drawn9\nhive h4 at mill: deep, excluder, super drawn9\n"
     "2026-08-15 mill\nflow ending\nh3 top 40% full, top uncapped\nh4 top 50% full, top uncapped, foulbrood suspected\n",
     {"- notifiable-disease: over: give unfinished"}, {"- sort-unfinished"}},
    {"a dry lot: silence", "DLR Westpfalz: below 17.5 %", "2026-08-03",
     mill + "2026-08-01 mill\nh3 top off 22kg\n2026-08-02\nextracted 14 kg lot B from h3\nmoisture 17.0% lot B\n", {}, {"- lot-wet"}},
};

}  // namespace

TEST_CASE("mentor: harvest, flow's end and lots", "[advice][mentor]") {
    for (const MentorCase& c : cases) check_case(c);
}
