// Hives called by a word and a number, as where a yard's name is part of theirs.
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
         R"(Roof 2 made a nuc into Lift 2 frames old queen | ?"one of stores" | !no-hive)"},
        {R"(Roof 2 - three queen cells, all open, here we go again)",
         R"(Roof 2 3 open queen cells | Roof 2 "here we go again")"},
        {R"(Roof 1 super about half full, Roof 3 only two frames drawn, Roof 2 no change)",
         R"(Roof 1 super about half | Roof 3 2 frames drawn | Roof 2 no change)"},
        {R"(Escape board off and both supers off Roof 1, 21 kg of honey between them)",
         R"(Roof 1 escape board off | Roof 1 -all supers 21 kg net)"},
        {R"(Roof 3 super off as well, all capped bar two frames, 11.5 kg)",
         R"(Roof 3 super all but 2 frames capped | Roof 3 -super 11.5 kg)"},
        {R"(R1 super off, all capped, about 12 kg, wasps shocking)",
         R"(Roof 1 super fully capped | Roof 1 -super 10.8-13.2 kg | Roof 1 wasps)"},
        {R"(Church 1 alcohol wash 11 from 300)",
         R"(Church 1 wash 11/300 | !wrong-yard)"},
        {R"(Ivy coming out on the churchyard wall, 16C and drizzle, wind getting up)",
         R"(ivy just opening | 16C | rain | windy)"},
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
    }, roofs);
}

TEST_CASE("ranges of names that begin with a nought", "[facts]") {
    constexpr std::string_view lab = "units kg\nyear 2026\nhive C01 at lab: deep\nhive C02 at lab: deep\nhive C08 at lab: deep\nhive C09 at lab: deep\nhive C10 at lab: deep\n\n2026-06-03 lab\n";
    waxtab::test::check_lines({
        {R"(C08 to C10: calm)", R"(C08 temper calm | C09 temper calm | C10 temper calm)"},
        {R"(C01, C02 and C09-C10: 3 seams)", R"(C01 3 seams | C02 3 seams | C09 3 seams | C10 3 seams)"},
    }, lab);
}
