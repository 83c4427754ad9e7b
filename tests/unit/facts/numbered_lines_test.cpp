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
