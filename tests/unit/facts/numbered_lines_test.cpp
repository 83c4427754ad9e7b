#include <catch2/catch.hpp>

#include "said.hpp"

// Hives that are called by a number and nothing else: a number at the head of a line is theirs where it can count nothing.

TEST_CASE("hives called by bare numbers", "[facts]") {
    waxtab::test::check_lines({
        {R"(1 3 4 light on stores, fed 2 quarts 1:1 each)", R"(hive 1 stores light | hive 3 stores light | hive 4 stores light | hive 1 fed 2 qt thin syrup | hive 3 fed 2 qt thin syrup | hive 4 fed 2 qt thin syrup)"},
        {R"(hives 1-5 but not 3 and 4, fed 2 L)", R"(hive 1 fed 2 L syrup | hive 2 fed 2 L syrup | hive 5 fed 2 L syrup)"},
        {R"(pulled 2 supers off 3 and super on 4)", R"(hive 3 -2 supers | hive 4 +super)"},
        {R"(added a brood box to 3 and split 4 into h12)", R"(hive 3 +brood box | hive 4 split into h12)"},
        {R"(both supers off 3 and queen seen in 4)", R"(hive 3 -all supers | hive 4 queen seen)"},
        {R"(3 swarmed. gave 4 another super.)", R"(hive 3 swarmed | ?hive 3 "gave 4 another super" | !not-understood)"},
        {R"(3 queen seen, eggs, 5 frames of brood, calm)", R"(hive 3 queen seen | hive 3 eggs seen | hive 3 5 frames of brood | hive 3 temper calm)"},
        {R"(1 BIAS on 8, 9 seams, reversed the brood boxes)", R"(hive 1 BIAS on 8 | hive 1 9 seams | hive 1 reversed brood boxes)"},
        {R"(1 2 super on, drawn10)", R"(hive 1 +super drawn10 | hive 2 +super drawn10)"},
        {R"(alcohol wash 2 2/300, 3 5 mites in 300)", R"(hive 2 wash 2/300 | hive 3 wash 5/300)"},
        {R"(5 super ½ full, 6 frames drawn)", R"(hive 5 super half | hive 5 super 6 frames drawn)"},
        {R"(2 super 7 of 10 frames full, 20% capped, 2 empty queen cups)", R"(hive 2 super 7 of 10 frames full | hive 2 super 20% capped | hive 2 2 queen cups dry)"},
        {R"(3 4 capped queen cells, knocked down 2)", R"(hive 3 4 sealed queen cells | hive 3 knocked down 2 queen cells)"},
        {R"(7 8 frames of bees, brood on 5, +medium, got stung twice)", R"(hive 7 8 frames of bees | hive 7 5 frames of brood | hive 7 +super medium | hive 7 2 stings)"},
        {R"(1 top super off 34 lb, 2 super off 29½ lb)", R"(hive 1 -top super 34 lb | hive 2 -super 29.5 lb)"},
        {R"(mites 1 3/300, 2 9/300)", R"(hive 1 3/300 mites | hive 2 9/300 mites)"},
        {R"(all but 2 fed 1 gal 2:1)", R"(hive 1 fed 1 gal thick syrup | hive 3 fed 1 gal thick syrup | hive 4 fed 1 gal thick syrup | hive 5 fed 1 gal thick syrup | hive 6 fed 1 gal thick syrup | hive 7 fed 1 gal thick syrup)"},
        {R"(all fed 1 L except 2, calm)", R"(hive 1 fed 1 L syrup | hive 3 fed 1 L syrup | hive 4 fed 1 L syrup | hive 5 fed 1 L syrup | hive 6 fed 1 L syrup | hive 7 fed 1 L syrup | ?"calm" | !not-understood)"},
        {R"(2 3 formic out, 2 sticky board 140 mites in 3 days)", R"(hive 2 formic acid out | hive 3 formic acid out | hive 2 drop 140 mites in 3 days)"},
        {R"(4 8 frames bees, 5 brood, calm)", R"(hive 4 8 frames of bees | hive 4 5 frames of brood | hive 4 temper calm)"},
        {R"(2 strong, 1 weak)", R"(?"2 strong" | ?"1 weak" | !not-understood | !not-understood)"},
        {R"(2 supers off)", R"(?"2 supers off" | !no-hive)"},
        {R"(3 queen cells)", R"(?"3 queen cells" | !no-hive)"},
        {R"(12 jars sold)", R"(sold 12 jars)"},
        {R"(5 frames drawn)", R"(?"5 frames drawn" | !no-hive)"},
        {R"(3 4 of 10 frames)", R"(?hive 3 "4 of 10 frames" | !not-understood)"},
        {R"(1 3 frames of brood, 2 4 frames, 3 5)", R"(hive 1 3 frames of brood | ?hive 2 "2 4 frames" | ?hive 2 "3 5" | !not-understood | !not-understood)"},
        {R"(4: calm. 5: lively)", R"(hive 4 temper calm | hive 5 temper lively)"},
    },
    "units lb\ngallon us\ndates month-day\nyear 2026\nyard mill\n"
    "hive 1 at mill: 2 deeps, excluder, medium drawn\n"
    "hive 2 at mill: 2 deeps, excluder, medium drawn\n"
    "hive 3 at mill: deep, medium drawn, medium drawn\n"
    "hive 4 at mill: deep\n"
    "hive 5 at mill: deep, excluder, medium drawn, medium drawn\n"
    "hive 6 at mill: deep\n"
    "hive 7 at mill: deep\n\n");
}

TEST_CASE("a topic said once before hives called by number", "[facts]") {
    waxtab::test::check_lines({
        {R"(Inspected 1 to 6. Queens: 1, 4 and 5 seen, 2 not but eggs, 3 and 6 not looked for.)", R"(hive 1 inspected | hive 2 inspected | hive 3 inspected | hive 4 inspected | hive 5 inspected | hive 6 inspected | hive 1 queen seen | hive 4 queen seen | hive 5 queen seen | hive 2 queen not seen | hive 2 eggs seen | hive 3 "3 and 6 not looked for" | hive 6 "3 and 6 not looked for")"},
        {R"(Brood: 5, 4, 6, 5, 3, 4 frames.)", R"(?"Brood: 5" | ?"4" | ?"6" | ?"5" | ?"3" | ?"4 frames" | !no-hive | !not-understood | !not-understood | !not-understood | !not-understood | !not-understood)"},
        {R"(Stores: 1 to 4 plenty, 5 light, 6 very light. Gave 6 1 kg fondant.)", R"(hive 1 plenty of stores | hive 2 plenty of stores | hive 3 plenty of stores | hive 4 plenty of stores | hive 5 stores light | hive 6 stores light | hive 6 fed 1 kg fondant)"},
        {R"(Excluder and a drawn super on 1, 3 and 4. 2 can wait till the dandelion is properly out.)", R"(hive 1 excluder on | hive 3 excluder on | hive 4 excluder on | hive 1 +super drawn | hive 3 +super drawn | hive 4 +super drawn | "2 can wait till the dandelion is properly out")"},
        {R"(Temper: 1, 2 and 4 calm, 3 a bit stroppy, 5 followed me to the gate. 2 stings.)", R"(hive 1 temper calm | hive 2 temper calm | hive 4 temper calm | hive 3 temper defensive | hive 5 "5 followed me to the gate" | hive 5 2 stings)"},
        {R"(Supers: 1 half full, 3 started, 4 nearly full. Second super on 4, under the first.)", R"(hive 1 super half | hive 3 super started | hive 4 super nearly full | hive 4 +super under)"},
        {R"(Cups: 1 has 2, 4 has 3, none charged.)", R"(hive 1 2 queen cups | hive 4 3 queen cups | hive 4 queen cup dry)"},
        {R"(Super on 2 and 5, drawn on 2, foundation on 5. 6 not ready yet.)", R"(hive 2 +super | hive 5 +super | ?hive 2 "drawn on 2" | ?hive 5 "drawn on 2" | ?hive 2 "foundation on 5" | ?hive 5 "foundation on 5" | ?"6 not ready yet" | !not-understood | !not-understood | !not-understood)"},
        {R"(Inspected 1 to 5. Queens: 1, 2 and 5 seen, 3 not seen but eggs, 4 not seen and no eggs.)", R"(hive 1 inspected | hive 2 inspected | hive 3 inspected | hive 4 inspected | hive 5 inspected | hive 1 queen seen | hive 2 queen seen | hive 5 queen seen | hive 3 queen not seen | hive 3 eggs seen | hive 4 queen not seen | hive 4 no eggs)"},
        {R"(Cells: 4 had 6 sealed, knocked down 5 and left the one. 3 had 2 open.)", R"(hive 4 6 sealed queen cells | hive 4 knocked down 5 queen cells | hive 4 left 1 queen cell | hive 3 2 open queen cells)"},
        {R"(4 swarmed I'd say, Mrs Tobin saw them go over the hedge on Thursday.)", R"(hive 4 "swarmed I'd say" | ?hive 4 "Mrs Tobin saw them go over the hedge on Thursday" | !not-understood)"},
        {R"(Split 3 into 7: the old queen, 3 frames of brood and 2 of stores.)", R"(?"Split 3 into 7: the old queen" | ?"3 frames of brood" | ?"2 of stores" | !not-understood | !not-understood | !not-understood)"},
        {R"(Supers: 1 full, 70% capped. 2 half drawn. 3 three frames full. 4 both nearly full.)", R"(hive 1 super full | hive 1 super 70% capped | hive 2 super half drawn | hive 3 3 frames full | hive 4 all supers nearly full)"},
        {R"(Swarm in Tobin's hawthorn, took it about six in the evening and hived it as 8. 6 frames of bees.)", R"("Swarm in Tobin's hawthorn" | ?"took it about six in the evening and hived it as 8" | ?"6 frames of bees" | !not-understood | !no-hive)"},
        {R"(Feeding: 8 got 2 litres of 1:1, 7 the same.)", R"(?"got 2 litres of 1:1" | ?"7 the same" | !unknown-hive | !unknown-hive | !not-understood)"},
        {R"(Queens: 3 one sealed cell left, not disturbed. 7 laying, marked her blue.)", R"(hive 3 left 1 sealed queen cell | hive 3 "not disturbed" | ?"laying" | ?"marked her blue" | !unknown-hive)"},
        {R"(Inspected all but 4. Queens: 1, 2, 5, 7 and 8 seen, 3 virgin, 6 not but eggs.)", R"(hive 1 inspected | hive 2 inspected | hive 3 inspected | hive 5 inspected | hive 6 inspected | hive 1 queen seen | hive 2 queen seen | hive 5 queen seen | hive 3 virgin seen | hive 6 queen not seen | hive 6 eggs seen | !unknown-hive | !unknown-hive)"},
        {R"(Brood: 1 7 frames, 2 6, 5 5, 6 4, 8 3. Good pattern in all, a bit of chalk brood in 6.)", R"(hive 1 7 frames of brood | hive 2 6 frames of brood | hive 5 5 frames of brood | hive 6 4 frames of brood | ?"3" | ?"Good pattern in all" | ?"a bit of chalk brood in 6" | !unknown-hive | !not-understood)"},
        {R"(Supers: 1 nearly full and 80% capped, 2 half full, 4 top empty, bottom fully capped, 5 four frames drawn.)", R"(hive 1 super nearly full | hive 1 super 80% capped | hive 2 super half | hive 4 top empty | hive 4 bottom fully capped | hive 5 4 frames drawn)"},
        {R"(Done: second super on 1 and 2, drawn, on top. Excluder and super on 6.)", R"(hive 1 "Done" | hive 2 "Done" | hive 1 +super drawn over | hive 2 +super drawn over | hive 6 excluder on | hive 6 +super)"},
        {R"(Inspected 1 to 6. Queens: 1 and 2 seen, 3 laying, 4 not seen but 3 frames of eggs, 5 queenless.)", R"(hive 1 inspected | hive 2 inspected | hive 3 inspected | hive 4 inspected | hive 5 inspected | hive 6 inspected | hive 1 queen seen | hive 2 queen seen | hive 3 queen laying | hive 4 queen not seen | hive 4 eggs on 3 frames | hive 5 queenless)"},
        {R"(Supers: 1 both capped, 2 bottom 90% capped, top two thirds full, 4 fully capped, 6 half.)", R"(hive 1 all supers fully capped | hive 2 bottom 90% capped | hive 2 top two thirds | hive 4 super fully capped | hive 6 super half)"},
        {R"(Clearer boards on 1 and 4.)", R"(hive 1 escape board on | hive 4 escape board on)"},
        {R"(Washes: 1 3/300, 2 6/300, 6 11/300. 6 needs treating as soon as the honey is off.)", R"(hive 1 wash 3/300 | hive 2 wash 6/300 | hive 6 wash 11/300 | hive 6 todo "6 needs treating as soon as the honey is off")"},
        {R"(If 5 has nothing to show next week, unite it with 7.)", R"(todo "If 5 has nothing to show next week, unite it with 7")"},
        {R"(Supers off 1 and 4, two from each. 1 gave 24 kg, 4 gave 21.5 kg. Clearer boards off.)", R"(hive 1 -all supers | hive 4 -all supers | ?hive 1 "two from each" | ?hive 4 "two from each" | ?"1 gave 24 kg" | ?"4 gave 21.5 kg" | ?"Clearer boards off" | !not-understood | !not-understood | !not-understood | !no-hive)"},
        {R"(Extracted 44 kg from 1 and 4, lot A, moisture 17.8%.)", R"(extracted 44 kg lot A from hive 1 hive 4 | moisture 17.8% lot A)"},
        {R"(Wet supers back on 1 and 2, one each, on top.)", R"(hive 1 +super wet over | hive 2 +super wet over)"},
        {R"(5 united with 7 over newspaper.)", R"(?hive 5 "united with 7 over newspaper" | !not-understood)"},
        {R"(Filled 60 x 454 g from lot A. Sold 24 to Hanly's shop at 8 euro, gave 2 to Mrs Tobin for the swarm.)", R"(filled 60 x 454 g lot A | sold 24 x 454 g lot A to "Hanly's shop" | "at 8 euro" | gave away 2 x 454 g lot A to "Mrs Tobin" | !only-kept)"},
        {R"(Treatments: thymol into 1, 2, 3 and 4, formic acid in 6, all to come out on 12 September.)", R"(?"Treatments: thymol into 1" | ?"2" | ?"3 and 4" | hive 6 formic acid in | hive 6 todo "all to come out on 12 September" | !not-understood | !not-understood | !not-understood)"},
        {R"(Last supers: 2 top off, 13 kg. 6 left on for the bees.)", R"(?"Last supers: 2 top off" | ?"13 kg" | ?"6 left on for the bees" | !not-understood | !not-understood | !not-understood)"},
        {R"(Feeding: 3 litres of 2:1 each to 1, 2 and 3, 5 litres to 6. Hefted: 4 heavy, 8 light.)", R"(?"Feeding: 3 litres of 2:1 each to 1, 2 and 3, 5 litres to 6" | hive 4 plenty of stores | ?"light" | !not-understood | !unknown-hive)"},
        {R"(Jars: 34 of lot A left in the pantry. Must requeen 3 in the spring, too hot altogether.)", R"(?"Jars: 34 of lot A left in the pantry" | todo "Must requeen 3 in the spring, too hot altogether" | !not-understood)"},
        {R"(Super on 4)", R"(hive 4 +super)"},
        {R"(Second super on 4)", R"(hive 4 +super)"},
        {R"(Second super on 4, on top)", R"(hive 4 +super over)"},
        {R"(A super on 1, 3 and 4)", R"(hive 1 +super | hive 3 +super | hive 4 +super)"},
        {R"(Drawn super on 1, 3 and 4)", R"(hive 1 +super drawn | hive 3 +super drawn | hive 4 +super drawn)"},
        {R"(Super on 1 and 3)", R"(hive 1 +super | hive 3 +super)"},
        {R"(Excluder on 1, 3 and 4)", R"(hive 1 excluder on | hive 3 excluder on | hive 4 excluder on)"},
        {R"(Excluder and super on 6)", R"(hive 6 excluder on | hive 6 +super)"},
        {R"(Excluder and a drawn super on 1, 3 and 4)", R"(hive 1 excluder on | hive 3 excluder on | hive 4 excluder on | hive 1 +super drawn | hive 3 +super drawn | hive 4 +super drawn)"},
        {R"(Clearer boards on 1, 3 and 4)", R"(hive 1 escape board on | hive 3 escape board on | hive 4 escape board on)"},
        {R"(Fed 1, 3 and 4)", R"(hive 1 fed | ?hive 1 "3 and 4" | !not-understood)"},
        {R"(Fed 2 L to 1, 3 and 4)", R"(hive 1 fed 2 L syrup | hive 3 fed 2 L syrup | hive 4 fed 2 L syrup)"},
        {R"(Supers off 1 and 4, two from each)", R"(hive 1 -all supers | hive 4 -all supers | ?hive 1 "two from each" | ?hive 4 "two from each" | !not-understood)"},
        {R"(1 gave 24 kg, 4 gave 21.5 kg)", R"(?hive 1 "gave 24 kg" | ?hive 4 "4 gave 21.5 kg" | !not-understood | !not-understood)"},
        {R"(a bit of chalk brood in 6)", R"(?"a bit of chalk brood in 6" | !not-understood)"},
        {R"(5 united with 3 over newspaper)", R"(hive 5 united with hive 3 over newspaper)"},
        {R"(6 left on for the bees)", R"(hive 6 "left on for the bees")"},
        {R"(Split 3 into 7)", R"(hive 3 split into hive 7)"},
        {R"(Split 3 into 7: the old queen, 3 frames of brood)", R"(?"Split 3 into 7: the old queen" | ?"3 frames of brood" | !not-understood | !not-understood)"},
        {R"(Gave 6 1 kg fondant)", R"(hive 6 fed 1 kg fondant)"},
        {R"(Gave 6 1 kg of fondant, 5 2 L of syrup)", R"(hive 6 fed 1 kg fondant | ?hive 6 "5 2 L of syrup" | !no-unit)"},
        {R"(thymol in 1, 2, 3 and 4)", R"(hive 1 thymol in | hive 2 thymol in | hive 3 thymol in | hive 4 thymol in)"},
        {R"(thymol into 1, 2, 3 and 4)", R"(hive 1 treated thymol | ?hive 1 "2" | ?hive 1 "3 and 4" | !not-understood | !not-understood)"},
        {R"(fed 4 a litre of thin)", R"(hive 4 fed 1 L thin syrup)"},
        {R"(4 light, fed 4 a litre of thin; 3 hefted, plenty left)", R"(hive 4 stores light | hive 4 fed 1 L thin syrup | hive 3 "3 hefted" | hive 3 "plenty left")"},
        {R"(hived a swarm as s1; 3 left with 2 sealed cells)", R"(swarm hived as s1 | hive 3 left 2 sealed queen cells)"},
        {R"(3 left with 2 sealed cells)", R"(hive 3 left 2 sealed queen cells)"},
        {R"(two supers on 6, both drawn)", R"(?hive 6 "two supers on 6" | ?hive 6 "both drawn" | !two-readings | !not-understood)"},
        {R"(1 and 2 calm, 6 frames of brood each; 3 queen seen, 5 frames of brood)", R"(hive 1 temper calm | hive 2 temper calm | hive 1 6 frames of brood | hive 2 6 frames of brood | hive 3 queen seen | hive 3 5 frames of brood)"},
        {R"(1 and 2 calm; 4 half full; 5 about a third)", R"(hive 1 temper calm | hive 2 temper calm | ?hive 4 "4 half full" | ?hive 5 "5 about a third" | !not-understood | !not-understood)"},
        {R"(1 super half full; 2 capped)", R"(hive 1 super half | ?hive 1 "2 capped" | !not-understood)"},
        {R"(Swarm cells: 5 four unsealed)", R"(?hive 5 "5 four unsealed" | !not-understood)"},
        {R"(5 top 80% capped, bottom fully)", R"(hive 5 top 80% capped | ?hive 5 "bottom fully" | !not-understood)"},
        {R"(1 top all but 1 frame capped, bottom one fully; 2 capped)", R"(hive 1 top all but 1 frame capped | ?hive 1 "bottom one fully" | ?hive 1 "2 capped" | !not-understood | !not-understood)"},
        {R"(1 and 2 calm; 3 swarmed, 2 sealed cells left)", R"(hive 1 temper calm | hive 2 temper calm | hive 3 swarmed | hive 3 left 2 sealed queen cells)"},
        {R"(1 and 2 calm; 2 stings)", R"(hive 1 temper calm | hive 2 temper calm | ?hive 1 "2 stings" | ?hive 2 "2 stings" | !each-or-together)"},
        {R"(1 and 2 calm; 4 hefted heavy)", R"(hive 1 temper calm | hive 2 temper calm | hive 4 plenty of stores)"},
        {R"(1 and 2 calm; 5 virgin seen running about)", R"(hive 1 temper calm | hive 2 temper calm | ?hive 1 "5 virgin seen running about" | ?hive 2 "5 virgin seen running about" | !not-understood)"},
        {R"(1 and 2 calm. 3 queen seen)", R"(hive 1 temper calm | hive 2 temper calm | hive 3 queen seen)"},
        {R"(1 and 2 calm, 3 queen seen)", R"(hive 1 temper calm | hive 2 temper calm | ?hive 1 "3 queen seen" | ?hive 2 "3 queen seen" | !not-understood)"},
        {R"(1 and 2 calm. 3 queen cells. 2 cups)", R"(hive 1 temper calm | hive 2 temper calm | ?hive 1 "3 queen cells" | ?hive 2 "3 queen cells" | ?hive 1 "2 cups" | ?hive 2 "2 cups" | !not-understood | !not-understood)"},
        {R"(1 packed with bees, 6 cups, 2 charged. 4 dry cups only)", R"(hive 1 brood box packed | hive 1 6 queen cups | hive 1 2 charged cups | ?hive 1 "4 dry cups only" | !not-understood)"},
        {R"(1 calm. 4 dry cups only)", R"(hive 1 temper calm | ?hive 1 "4 dry cups only" | !not-understood)"},
        {R"(hive 1 calm. 4 dry cups only)", R"(hive 1 temper calm | hive 1 4 queen cups dry)"},
        {R"(1 calm. 3 supers off)", R"(hive 1 temper calm | ?hive 1 "3 supers off" | !not-understood)"},
        {R"(1 calm, 3 supers off)", R"(hive 1 temper calm | hive 1 -3 supers)"},
        {R"(4 calm. 4 swarm cells)", R"(hive 4 temper calm | hive 4 4 swarm cells)"},
        {R"(1 calm. 9 swarm cells)", R"(hive 1 temper calm | hive 1 9 swarm cells)"},
        {R"(1 4 seams. 2 stings)", R"(hive 1 4 seams | hive 1 2 stings)"},
        {R"(3 queen seen. 4 frames of brood)", R"(hive 3 queen seen | hive 3 4 frames of brood)"},
        {R"(1 2 strips out too)", R"(?hive 1 "2 strips out too" | !not-understood)"},
        {R"(2 2 strips out)", R"(hive 2 2 strips out)"},
        {R"(2 1 strip out)", R"(hive 2 1 strip out)"},
        {R"(1 4 supers off 60 lb)", R"(?hive 1 "4 supers off 60 lb" | !not-understood)"},
        {R"(4 2 supers off 60 lb)", R"(hive 4 -2 supers 60 lb)"},
        {R"(1 3 swarm cells)", R"(hive 1 3 swarm cells)"},
    },
    "units kg\n"
    "year 2026\nyard mill\n"
    "hive 1 at mill: deep, super drawn9\n"
    "hive 2 at mill: deep, super drawn9\n"
    "hive 3 at mill: deep, super drawn9\n"
    "hive 4 at mill: deep, super drawn9, super drawn9\n"
    "hive 5 at mill: deep, super drawn9\n"
    "hive 6 at mill: deep, super drawn9\n\n");
}
