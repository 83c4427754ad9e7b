// Hives called by a word and a number, by numbers alone, by a letter and a nought: alone, in lists and ranges.
#include <catch2/catch.hpp>

#include "said.hpp"

TEST_CASE("hives called by a word and a number", "[facts]") {
    constexpr std::string_view roofs = R"(units kg
year 2026
gallon us
yard roof
yard churchyard
hive Roof 1, also R1, at roof: deep, excluder, super drawn
hive Roof 2, also R2, at roof: deep, excluder, super drawn
hive Roof 3, also R3, at roof: deep, excluder, super drawn
hive Church 1, also C1, at churchyard: deep

2026-06-03 roof
)";
    waxtab::test::check_lines({
        {R"(Roof 1 - brood on 5, queen seen, still got her blue dot)",
         R"(Roof 1 5 frames of brood | Roof 1 queen seen | Roof 1 queen marked blue)"},
        {R"(Roof 2 light on stores again, gave them 1 kg fondant, didn't spot her maj but eggs, so she's about)",
         R"(Roof 2 stores light | Roof 2 fed 1 kg fondant | Roof 2 queen not seen | Roof 2 eggs seen | Roof 2 "so she's about")"},
        {R"(Roof 1 and Roof 3: six seams apiece, pollen coming in)",
         R"(Roof 1 6 seams | Roof 3 6 seams | Roof 1 pollen coming in | Roof 3 pollen coming in)"},
        {R"(Roof 1, 2 and 3: calm)",
         R"(Roof 1 temper calm | Roof 2 temper calm | Roof 3 temper calm)"},
        {R"(Roof 1 and 2 calm)",
         R"(Roof 1 temper calm | Roof 2 temper calm)"},
        {R"(Roof 1-3 calm)",
         R"(Roof 1 temper calm | Roof 2 temper calm | Roof 3 temper calm)"},
        {R"(Roof 1, 8 frames of brood, super on and about time too)",
         R"(Roof 1 8 frames of brood | Roof 1 +super | Roof 1 "about time too")"},
        {R"(Roof 1: 3 seams)",
         R"(Roof 1 3 seams)"},
        {R"(Church 1 swarmed Thursday)",
         R"(Church 1 swarmed on 2026-05-28 | !wrong-yard)"},
        {R"(Made a nuc from Roof 2 into Lift - old queen, 2 frames of brood, one of stores)",
         R"(Roof 2 made a nuc into Lift 2 frames of brood and 1 frame of stores old queen)"},
        {R"(Roof 2 - three queen cells, all open, here we go again)",
         R"(Roof 2 3 open queen cells | Roof 2 "here we go again")"},
        {R"(Roof 1 super about half full, Roof 3 only two frames drawn, Roof 2 no change)",
         R"(Roof 1 super about half | Roof 3 2 frames drawn | Roof 2 no change)"},
        {R"(Escape board off and both supers off Roof 1, 21 kg of honey between them)",
         R"(Roof 1 escape board off | Roof 1 -all supers 21 kg net)"},
        {R"(Roof 3 super off as well, all capped bar two frames, 11.5 kg)",
         R"(Roof 3 super all but 2 frames capped | Roof 3 -super 11.5 kg)"},
        {R"(R1 super off, all capped, about 12 kg, wasps shocking)",
         R"(Roof 1 super fully capped | Roof 1 -super about 12 kg | Roof 1 wasps)"},
        {R"(Church 1 alcohol wash 11 from 300)",
         R"(Church 1 wash 11/300 | !wrong-yard)"},
        {R"(Ivy coming out on the churchyard wall, 16C and drizzle, wind getting up)",
         R"(ivy just opening | 16C | drizzle | windy)"},
        {R"(Thymol out of C1, drop only 2 mites in 4 days, Roof 3 united with Church 1, brood about gone)",
         R"(Church 1 thymol out | Church 1 drop 2 mites in 4 days | Roof 3 united with Church 1 | Roof 3 "brood about gone" | !wrong-yard)"},
        {R"(Extracted 29 kg lot Lime from Roof 1 and Roof 3)",
         R"(extracted 29 kg lot Lime from Roof 1 Roof 3)"},
        {R"(pulled honey: R1 2 supers, 51 kg, R2 1 box, 24 kg)",
         R"(Roof 1 -2 supers 51 kg | Roof 2 -1 super 24 kg)"},
        {R"(R2 and R1: queen laying in R2, R1 virgin seen)",
         R"(Roof 2 queen laying | Roof 1 virgin seen)"},
        {R"(R1: strips out, 8 weeks in)",
         R"(Roof 1 strips out | ?Roof 1 "8 weeks in" | !not-understood)"},
        {R"(R2: top off, 27 kg, manuka)",
         R"(Roof 2 -top super 27 kg | Roof 2 "manuka")"},
        {R"(R2: escape board on under both)",
         R"(Roof 2 escape board on under all supers)"},
        {R"(Roof 1 2 supers on)",
         R"(?Roof 1 "2 supers on" | !two-readings)"},
        {R"(Roof 1 - 7 seams, BIAS on 6. Super about 70% full)",
         R"(Roof 1 7 seams | Roof 1 BIAS on 6 | Roof 1 super about 70% full)"},
        {R"(Roof 1 - 3 calm)",
         R"(?Roof 1 "3 calm" | !not-understood)"},
    }, roofs);
}

TEST_CASE("ranges of names that begin with a nought", "[facts]") {
    constexpr std::string_view lab = "units kg\nyear 2026\nhive C01 at lab: deep\nhive C02 at lab: deep\nhive C08 at lab: deep\nhive C09 at lab: deep\nhive C10 at lab: deep\n\n2026-06-03 lab\n";
    waxtab::test::check_lines({
        {R"(C08 to C10: calm)", R"(C08 temper calm | C09 temper calm | C10 temper calm)"},
        {R"(C01, C02 and C09-C10: 3 seams)", R"(C01 3 seams | C02 3 seams | C09 3 seams | C10 3 seams)"},
    }, lab);
}

TEST_CASE("hives called by bare numbers, in lists", "[facts]") {
    constexpr std::string_view numbers = R"(units kg C
year 2026
yard have
yard lyng
hive 1 at have: deep, excluder, super drawn
hive 2 at have: deep, excluder, super drawn
hive 3 at have: deep, excluder, super drawn
hive 4 at have: deep, excluder, super drawn
hive 5 at have: deep, excluder, super drawn
hive 7 at have: deep, excluder, super drawn
hive 8 at have: deep, excluder, super drawn
nuc n1 at have: deep

2026-06-03 have
)";
    waxtab::test::check_lines({
        {R"(4 and 5: fed 3 kg sugar each, light)",
         R"(hive 4 fed 3 kg sugar | hive 5 fed 3 kg sugar | hive 4 stores light | hive 5 stores light)"},
        {R"(5, 7 and 8: one drawn super each, eggs seen in all)",
         R"(?hive 5 "one drawn super each" | ?hive 7 "one drawn super each" | ?hive 8 "one drawn super each" | hive 5 eggs seen | hive 7 eggs seen | hive 8 eggs seen | !not-understood)"},
        {R"(2: united with 4 over newspaper)",
         R"(hive 2 united with hive 4 over newspaper)"},
        {R"(3 and 5: super off, 14 kg each)",
         R"(hive 3 -super 14 kg | hive 5 -super 14 kg)"},
        {R"(Extracted 76 kg rape, lot R1, from 1 3 5 and 8)",
         R"(extracted 76 kg rape lot R1 from hive 1 hive 3 hive 5 hive 8)"},
        {R"(1, 3 and 5: super on each)",
         R"(hive 1 +super | hive 3 +super | hive 5 +super)"},
        {R"(1,3 and 5: calm)",
         R"(hive 1 temper calm | hive 3 temper calm | hive 5 temper calm)"},
        {R"(1-4: calm)",
         R"(hive 1 temper calm | hive 2 temper calm | hive 3 temper calm | hive 4 temper calm)"},
        {R"(4 and 7: no super)",
         R"(hive 4 no supers | hive 7 no supers)"},
        {R"(8: on the scale, 41,2 kg, up 6,3 kg in a week, super nearly full)",
         R"(hive 8 weighs 41.2 kg | ?hive 8 "up 6,3 kg in a week" | hive 8 super nearly full | !not-understood)"},
        {R"(3, 5 and 8 moved to lyng)",
         R"(hive 3 moved to lyng | hive 5 moved to lyng | hive 8 moved to lyng)"},
        {R"(3: heather super off, 12,5 kg, 5: only 9 kg)",
         R"(hive 3 -super 12.5 kg | ?hive 5 "5: only 9 kg" | !not-understood)"},
        {R"(2C, no wind, 1 3 4 5 7 8: oxalic acid trickled)",
         R"(2C | calm weather | hive 1 treated oxalic acid | hive 3 treated oxalic acid | hive 4 treated oxalic acid | hive 5 treated oxalic acid | hive 7 treated oxalic acid | hive 8 treated oxalic acid)"},
        {R"(2: BIAS on 7)",
         R"(hive 2 BIAS on 7)"},
        {R"(2: 1 super)",
         R"(hive 2 1 super)"},
        {R"(3 supers on 5)",
         R"(?hive 5 "3 supers on 5" | !two-readings)"},
        {R"(pollen coming in on 1, 2, 3 and 5)",
         R"(hive 1 pollen coming in | hive 2 pollen coming in | hive 3 pollen coming in | hive 5 pollen coming in)"},
        {R"(Formic pads on 1, 3 and 5, out by August 8)",
         R"(hive 1 formic acid in for 66 days | hive 3 formic acid in for 66 days | hive 5 formic acid in for 66 days)"},
        {R"(Put a medium on 1, 3 and 5)",
         R"(hive 1 +super medium | hive 3 +super medium | hive 5 +super medium)"},
        {R"(Put wet supers back on 1 and 4)",
         R"(hive 1 +super wet | hive 4 +super wet)"},
        {R"(hive 1 weighs 138 kg, hive 2 124, hive 5 feels light, sugar brick on)",
         R"(hive 1 weighs 138 kg | hive 2 weighs 124 kg | hive 5 stores light | hive 5 fed sugar)"},
        {R"(Correction, hive 2 got its medium June 2, not the 1st)",
         R"(?"Correction, hive 2 got its medium June 2, not the 1st" | !not-understood)"},
        {R"(hives 2 4 5: calm)",
         R"(hive 2 temper calm | hive 4 temper calm | hive 5 temper calm)"},
    }, numbers);
}
