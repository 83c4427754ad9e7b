// Sixty invented lines in the manner of real notes: hive lids, club reports, forum posts. Each as the
// facts it is read as; `?` marks what is flagged and kept as a remark, `!` a message.
#include <catch2/catch.hpp>

#include "said.hpp"

namespace {

constexpr std::string_view set_up = R"(
units lb F
gallon us
dates month-day
year 2025
yard pump house
yard Orchard
yard Ferry Field
yard Larkrise
yard Gully
yard Tin Barn
hive 1 at pump house: deep, excluder, super drawn
hive 2 at pump house: 2 deeps, excluder, 3 supers drawn
hive 3 at pump house: 2 deeps, excluder, 3 supers drawn
hive 4 at pump house: 2 deeps, excluder, super drawn
hive 5 at pump house: 2 deeps, excluder, 2 supers drawn
hive 6 at pump house: 2 deeps, excluder, super drawn
hive 7 at pump house: 2 deeps, excluder, super drawn
hive 8 at pump house: 2 deeps, excluder, 2 supers drawn
hive 9 at pump house: 2 deeps, excluder, 2 supers drawn
hive Daisy at pump house: deep, excluder, super drawn
hive Grey box at pump house: deep
hive Tin Barn hive at Tin Barn: deep
nuc Nuc A at pump house: deep
nuc nuc B at pump house: deep

2025-06-03 pump house
)";

}  // namespace

TEST_CASE("sixty lines as keepers write them", "[facts]") {
    waxtab::test::check_lines({
        {R"(4/28 Pump House. 61F, breezy. Opened 1 thru 6.)", R"(61F | breezy | hive 1 inspected | hive 2 inspected | hive 3 inspected | hive 4 inspected | hive 5 inspected | hive 6 inspected)"},
        {R"(#3 - added shallow, all fdn, on top. Excluder under.)", R"(hive 3 +super shallow foundation over | ?hive 3 "Excluder under" | !not-understood)"},
        {R"(H5: 2nd super on (drawn), put under the first)", R"(hive 5 +super drawn under)"},
        {R"(Daisy: super about half full, 2 frames capped. Left alone.)", R"(Daisy super about half | Daisy super 2 frames capped | Daisy "Left alone")"},
        {R"(Hive 8  supr 1 full & sealed bar the 2 outside frames, supr 2 barely started)", R"(?hive 8 "supr 1 full & sealed bar the 2 outside frames" | ?hive 8 "supr 2 barely started" | !unknown-word | !unknown-word)"},
        {R"(2: BIAS on 7, Q seen (green, clipped). No QCs. Good tempered. 1 super.)", R"(hive 2 BIAS on 7 | hive 2 queen seen green | hive 2 queen clipped | hive 2 no queen cells | hive 2 temper calm | hive 2 1 super)"},
        {R"(2: BIAS on 7, 1 super.
4 — ditto)", R"(hive 2 BIAS on 7 | hive 2 1 super | hive 4 BIAS on 7 | hive 4 1 super | !same-as-above)"},
        {R"(Grey box: 5 fob, eggs but no queen spotted, 2 cups dry)", R"(Grey box 5 frames of bees | Grey box eggs seen | Grey box queen not seen | Grey box 2 queen cups dry)"},
        {R"(All: flow on, white clover + basswood just opening.)", R"(flow on | white clover just opening | lime just opening)"},
        {R"(Swapped top & bottom supers on H5, full one now up top.)", R"(hive 5 swapped top super and bottom super | hive 5 top full)"},
        {R"(Pulled 3 supers off #3, 88 lb all told. 17.6 on the refractometer.)", R"(hive 3 -3 supers 88 lb | hive 3 moisture 17.6%)"},
        {R"(Nuc A: queen laying! 3 frs brood, moved up into a full box)", R"(Nuc A queen laying | Nuc A 3 frames of brood | Nuc A "moved up into a full box")"},
        {R"(H1 backfilling the broodnest - nectar where brood hatched. Put on a third super quick.)", R"(hive 1 brood nest backfilled | hive 1 "nectar where brood hatched" | hive 1 +super)"},
        {R"(put clearer bds under top 2 supers, hives 2, 5 and 9. Back tomorrow.)", R"(hive 2 escape board on under top 2 supers | hive 5 escape board on under top 2 supers | hive 9 escape board on under top 2 supers | hive 2 todo "Back tomorrow" | hive 5 todo "Back tomorrow" | hive 9 todo "Back tomorrow")"},
        {R"(Larkrise 3/6: 7 hives, 15 supers on, avg half full.)", R"(?"Larkrise 3/6: 7 hives" | ?"15 supers on" | ?"avg half full" | !not-understood | !two-readings | !not-understood)"},
        {R"(H6 super 8/10 drawn, 6/10 filled, 3 capped)", R"(hive 6 super 8 of 10 frames drawn | hive 6 super 6 of 10 frames full | hive 6 super 3 frames capped)"},
        {R"(H4 light. Fed 1 gal 2:1)", R"(hive 4 stores light | hive 4 fed 1 gal thick syrup)"},
        {R"(#8 alcohol wash 11/300. Formic in, out by 9/14.)", R"(hive 8 wash 11/300 | hive 8 formic acid in for 103 days)"},
        {R"(Sticky board, Grey box: 42 mites in 3 days)", R"(Grey box drop 42 mites in 3 days)"},
        {R"(H6 Removed 1 sealed QC, left 1 open one on frame 4 w/ pin)", R"(hive 6 knocked down 1 sealed queen cell | hive 6 left 1 open queen cell | hive 6 "on frame 4" | !only-kept)"},
        {R"(Tin Barn hive on the scale 141.5 (+6 since Tues))", R"(?Tin Barn hive "on the scale 141.5" | ?Tin Barn hive "6 since Tues" | !no-unit | !not-understood | !wrong-yard)"},
        {R"(Ferry Field: hive 2 dead. Cluster size of fist, plenty honey. Mites I think.)", R"(hive 2 dead | hive 2 "Cluster size of fist" | hive 2 plenty of stores | hive 2 "Mites I think" | !wrong-yard)"},
        {R"(took excluder out of 6 - they wont go up)", R"(hive 6 excluder off | hive 6 "they wont go up")"},
        {R"(cut comb super on Daisy, thin fdn, no excluder, 10 frs)", R"(Daisy +super cut comb 10 frames)"},
        {R"(Section rack (32) on No. 2 yesterday. Bees in it already.)", R"(hive 2 +super sections32 on 2025-06-02 | hive 2 "Bees in it already")"},
        {R"(Wets back on H2 and H5 over inner cover, take off Sunday)", R"(hive 2 "Wets back on H2 and H5 over inner cover" | hive 5 "Wets back on H2 and H5 over inner cover" | hive 2 todo "take off Sunday" | hive 5 todo "take off Sunday")"},
        {R"(Extracted Sat: 4 supers = 101 lb, 84 x 1lb jars, rest in pail. 2.5 lb cappings wax.)", R"(extracted 101 lb 4 supers on 2025-05-31 | filled 84 x 1 lb | "rest in pail" | 2.5 lb wax)"},
        {R"(In shed: 6 supers drawn, 2 fdn, 3 excluders, 1 escape board.)", R"(shed: 6 supers drawn | shed: 2 supers foundation | shed: 3 excluders | shed: 1 escape board)"},
        {R"(Next visit: bring 2 supers + the marking pen)", R"(todo "Next visit: bring 2 supers + the marking pen")"},
        {R"(H7 HOT today, 3 stings thru glove. requeen.)", R"(hive 7 temper defensive | hive 7 3 stings | hive 7 todo "requeen")"},
        {R"(split #3 -> new hive 11 (5 frames, old queen). #3 left w/ cells.)", R"(hive 3 split into hive 11 5 frames old queen | hive 3 "#3 left w/ cells")"},
        {R"(united nuc B onto H4, newspaper)", R"(nuc B united with hive 4 over newspaper)"},
        {R"(Moved Grey box and Daisy to Orchard last night)", R"(Grey box moved to Orchard on 2025-06-02 | Daisy moved to Orchard on 2025-06-02)"},
        {R"(Swarm in the plum tree, hived as S1, 4 lb ish.)", R"("Swarm in the plum tree" | swarm hived as S1 about 4 lb)"},
        {R"(Requeened 7, yellow dot, cage in, chk 5 days)", R"(hive 7 requeened | hive 7 queen marked yellow | hive 7 "cage in" | hive 7 todo "chk 5 days")"},
        {R"(H1 ?maybe swarmed - less bees, no eggs, 1 opened cell)", R"(hive 1 "maybe swarmed" | hive 1 "less bees" | hive 1 no eggs | hive 1 1 queen cell emerged)"},
        {R"(Rained. Did nothing but top up jars: 1, 4, 6.)", R"(rain | "Did nothing" | ?"top up jars: 1" | ?"4" | ?"6" | !not-understood | !not-understood | !not-understood)"},
        {R"(Superseding I think, 2 cells mid-comb, H9)", R"(hive 9 "Superseding I think" | hive 9 2 queen cells)"},
        {R"(H3 queen gone?? eggs anyway)", R"(?hive 3 "queen gone" | hive 3 eggs seen | !two-readings)"},
        {R"(OAV all 9, 1st of 3. 38F.)", R"(hive 1 treated oxalic acid 1st of 3 | hive 2 treated oxalic acid 1st of 3 | hive 3 treated oxalic acid 1st of 3 | hive 4 treated oxalic acid 1st of 3 | hive 5 treated oxalic acid 1st of 3 | hive 6 treated oxalic acid 1st of 3 | hive 7 treated oxalic acid 1st of 3 | hive 8 treated oxalic acid 1st of 3 | hive 9 treated oxalic acid 1st of 3 | 38F | !hives-differ)"},
        {R"(SHB bad in #8, put traps. Wax moth in stored supers - froze 'em)", R"(hive 8 small hive beetle | hive 8 "put traps" | hive 8 "Wax moth in stored supers" | ?hive 8 "froze 'em" | !not-understood)"},
        {R"(top entrance opened on all supered hives, 90s all week)", R"(?"top entrance opened on all supered hives" | ?"90s all week" | !not-understood | !not-understood)"},
        {R"(H2 - S1 80%, S2 30% (mostly uncapped), S3 fdn untouched)", R"(hive 2 super 1 80% | hive 2 super 2 30% | hive 2 super 2 a quarter capped | hive 2 super 3 not drawn)"},
        {R"(robbed 2 frames honey from 5 for nuc A)", R"(hive 5 moved 2 frames of honey to Nuc A)"},
        {R"(reversed brood boxes 1, 2, 3)", R"(?"reversed brood boxes 1" | ?"2" | ?"3" | !not-understood | !not-understood | !not-understood)"},
        {R"(June 31 H5 added supre)", R"(!impossible-date | !unknown-word)"},
        {R"(heavy as lead, couldn't lift top super off 9. call it 40lb)", R"(?"heavy as lead" | ?"couldn't lift top super off 9" | ?"call it 40lb" | !no-hive | !not-understood | !not-understood)"},
        {R"(H6 10 frames brood in 2 deeps (6 below, 4 up))", R"(hive 6 10 frames of brood | hive 6 "6 below, 4 up")"},
        {R"(H4 1 gal + pollen patty 1/2 lb, feeder emptied since last wk)", R"(hive 4 fed 1 gal syrup | hive 4 fed 0.5 lb pollen patty | hive 4 "feeder emptied since last wk")"},
        {R"(Bramble over, willowherb starting. Lime was a flop.)", R"(bramble over | willowherb just opening | "Lime was a flop")"},
        {R"(#3 & #8 same: super 3/4, add one next wk if no rain)", R"(hive 3 super three quarters | hive 8 super three quarters | hive 3 todo "add one next wk if no rain" | hive 8 todo "add one next wk if no rain")"},
        {R"(nothing in super of H6. Pinched 2 filled frames off H5 as bait.)", R"(hive 6 super empty | hive 5 took 2 frames of honey)"},
        {R"(cast swarm, size of a melon, gone before i got the box)", R"("cast swarm" | "size of a melon" | "gone before i got the box")"},
        {R"(H6 brood: 6 seams, spotty, some chalk. stores 2. pollen loads.)", R"(hive 6 6 frames of brood | hive 6 pattern poor | hive 6 chalk brood | hive 6 2 frames of stores | hive 6 plenty of pollen)"},
        {R"(No. 2: 19 of 32 sections finished, rest travel-stained/part.)", R"(hive 2 section super 19 of 32 frames capped | hive 2 "rest travel-stained" | hive 2 "part")"},
        {R"(12 Aug. Honey off: Orchard 5 supers, Pump House 9, Gully 0.)", R"(?"Honey off: Orchard 5 supers" | ?"Pump House 9" | ?"Gully 0" | !not-understood | !not-understood | !not-understood)"},
        {R"(H5 q marked today (blue) - last seen unmarked 14/5)", R"(hive 5 queen marked blue | hive 5 "last seen unmarked 14/5")"},
        {R"(Mouse guards on, entrances reduced, straps on. Done till spring)", R"("Mouse guards on" | "entrances reduced" | "straps on" | "Done till spring")"},
        {R"(bees all over the ivy, stinks of it)", R"("bees all over the ivy" | "stinks of it")"},
        {R"(gave Daisy the half-full super from 6 (bees brushed off))", R"(hive 6 moved super to Daisy half | Daisy "bees brushed off")"},
    }, set_up);
}
