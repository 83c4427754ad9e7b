#include "diagnostics/catalogue.hpp"

#include <fmt/format.h>

#include "diagnostics/render.hpp"
#include "text/layout.hpp"

namespace waxtab {

namespace {

constexpr Severity error = Severity::error, warning = Severity::warning, note = Severity::note;

// The first lines of most examples; each entry has to be a whole journal that brings its message about.
#define H3 "hive h3 at mill: deep, excluder, super drawn9\n\n"
#define LOT_A H3 "2026-06-03 mill\nh3 top off 20 kg\nextracted 12 kg lot A from h3\n"

// By code. Two files are told apart by a line `# in another file`.
const std::vector<CatalogueEntry> entries = {
    {"after-today", warning, "A day heading lies after the day stood on. What stands under it is read but does not count yet.",
     H3 "2126-06-03 mill\nh3 calm\n", "Correct the date, or stand on a later day with --on."},
    {"already-living", error, "A line brings a hive into being that has bees already.",
     "hive h3 at mill: deep\n\n2026-06-03 mill\nmade nuc n1 from h3\n\n2026-06-10 mill\nsplit h3 into n1\n",
     "Give the new hive a name of its own, or write that it was united with the living one."},
    {"already-there", warning, "A hive is moved to the yard where it stands.", H3 "2026-06-03 mill\nh3 moved to mill\n",
     "Check the name of the yard and the day of the move."},
    {"ambiguous-date", error, "A date in numbers can be read day first or month first.", H3 "5/6/2026 mill\nh3 calm\n",
     "Write it as 2026-06-05 or 5 June 2026, or set the order once with `dates day-month` or `dates month-day`."},
    {"amount-unsaid", error, "Honey went out, came in or was there at the start, and how much is not said.", "",
     "Write it as `20 kg` or `24 x 454 g`."},
    {"best-before-past", warning, "A best-before date is over on the day it is written.", LOT_A "best before 2025-01-01 lot A\n", "Check the year."},
    {"capped-over-full", note, "More of a super is said to be capped than is full. It is taken as a share of the honey that is in it.",
     H3 "2026-06-03 mill\nh3 top 50% full, 80% capped\n", "Say what the shares are of, or correct one of them."},
    {"combs-without-weight", warning, "Comb honey was packed without a weight, and no comb super was noted as taken off. It is counted but not weighed.",
     H3 "2026-06-03 mill\npacked 24 sections lot S\n", "Write what it weighs: `24 sections packed, 8.6 kg`."},
    {"copied", warning, "The same happening stands in two files. It is counted as often as in the file that has most of it.",
     H3 "2026-06-03 mill\n+super h3\n# in another file\n2026-06-03 mill\n+super h3\n", "Delete the copy, or give times if it happened twice."},
    {"count-differs", warning, "The number of supers or brood boxes that was written is not what the lines before it add up to.",
     H3 "2026-06-03 mill\nh3: 2 supers\n", "Write the line that is missing on its day: `+super h3` or `-super h3`."},
    {"each-or-together", error, "A number or a weight is written of several hives, and may be meant of each or of all together.",
     "hive h1 at mill: deep, super\nhive h2 at mill: deep, super\n\n2026-06-03 mill\ncleared h1 h2, 2 supers off\n",
     "Add `each`, or write a line for each hive."},
    {"empty-file", warning, "A journal file holds nothing but blanks.", "\n", "Write in it, or leave it out."},
    {"extracted-nothing", warning, "Honey was extracted; its weight is not said, and nothing was noted as taken off for it.",
     H3 "2026-06-03 mill\nextracted lot A\n", "Write the weight, `extracted 82 kg lot A`, or note first what came off the hives."},
    {"fermenting-in-blend", error, "A lot noted as fermenting was blended; its yeast goes into the whole blend.",
     LOT_A "lot A fermenting\nopening stock 20 kg lot B\nblended lots A and B into lot C\n", "If another lot was meant, correct it."},
    {"fermenting-in-jars", error, "A lot noted as fermenting was put into jars.", LOT_A "lot A fermenting\nfilled 10 x 454 g lot A\n",
     "If another lot was meant, correct it. What fermenting honey may be used for is for local law to say."},
    {"frames-differ", warning, "A share is written of another number of frames than the box has.",
     H3 "2026-06-03 mill\nh3 super 5 of 8 frames full\n", "Say the frames where the box was set up or put on: `+super h3 drawn8`."},
    {"gear-twice", warning, "An excluder, escape board, upper entrance or feeder goes on a hive that has one. The second is not counted.",
     H3 "2026-06-03 mill\nh3 excluder on\n", "If the first came off, write that line before: `h3 excluder off`."},
    {"heavier-after", error, "A super weighs more after extracting than before.",
     LOT_A "h3 top after extracting 25 kg\n",
     "Check the two weights and which box they are of."},
    {"hive-gone", error, "Something is noted for a hive that had died, was sold or was united before.",
     H3 "2026-06-03 mill\nh3 dead\n\n2026-06-10 mill\nh3 fed 2 L syrup 1:1\n", "Write the hive that is meant, or correct the earlier line."},
    {"hive-not-yet", error, "Something is noted for a hive on a day before it came into being.",
     "hive h3 at mill: deep\n\n2026-06-03 mill\nn1 calm\n\n2026-06-10 mill\nmade nuc n1 from h3\n",
     "Correct the date of one of the lines, or set the hive up."},
    {"hive-twice", error, "Two set-up lines declare the same hive differently.",
     "hive h3 at mill: deep\nhive h3 at mill: deep, deep\n", "Keep one of them, or give the other hive another name."},
    {"hives-differ", error, "A number of hives is named with `all`, and another number lives in the yard, with the nuclei and without.",
     "", "Name the hives, or write what is missing: one died, was moved or was never set up."},
    {"impossible-date", error, "The calendar has no such day.", H3 "31 June 2026 mill\nh3 calm\n", "Correct the day or the month."},
    {"in-doubt", warning, "A guess or a question that holds a number. It is kept as a remark and counts as nothing.",
     H3 "2026-06-03 mill\nh3 maybe took off 2 supers\n", "Leave out the word of doubt if it is so, or put the remark in quotes."},
    {"index-out-of-table", error, "No water content of honey belongs to this refractive index and temperature.",
     LOT_A "refractive index 1.3500 at 20C lot A\n", "Read the instrument again; write index and temperature."},
    {"jar-size-unsaid", error, "Jars are counted but their size was never said.", LOT_A "filled 10 jars lot A\n", "Write the size: `10 x 454 g`."},
    {"label-twice", error, "A label is given to a box while another box that bears it stands on a hive.",
     "hive h3 at mill: deep, super \"B4\"\nhive h5 at mill: deep\n\n2026-06-03 mill\n+super h5 \"B4\"\n",
     "Use another label, or write that the box was moved."},
    {"late-taking", warning, "A super came off before an extraction but was written down after it. It waits for the next one, since "
     "what a lot holds is not changed by later notes.",
     "hive h3 at mill: deep, super, super\n\n2026-07-10 mill\nh3 top off 20 kg\n\n2026-07-12\nextracted 12 kg lot A from h3\n\n"
     "2026-07-20 mill\nh3 super off on 10 July\n",
     "Write it under its own day to count it in that lot."},
    {"looks-differ", warning, "Two readings of one super on one day are far apart. Both count, so that the estimate lies between them.",
     H3 "2026-06-03 mill\nh3 top 80%\nh3 top 20%\n", "Correct the one that is wrong, or write what was done to the super in between."},
    {"lot-name-again", warning, "A lot is named like one of an earlier year; both become one lot.",
     "hive h3 at mill: deep, super, super\n\n2025-07-12 mill\nh3 top off 20 kg\nextracted 12 kg lot A from h3\n\n"
     "2026-07-12 mill\nh3 super off 20 kg\nextracted 12 kg lot A from h3\n",
     "Give each season's lots names of their own."},
    {"lot-weight-odd", warning, "The weight extracted is far from what the supers are thought to have held.",
     H3 "2026-06-03 mill\nh3 top off 20 kg\nextracted 82 kg lot A from h3\n", "Look for a super or a hive that is missing, or a slip in the weight."},
    {"moisture-odd", warning, "A moisture outside what refractometers for honey show.", LOT_A "moisture 31% lot A\n",
     "Look whether the meter shows sugar (Brix) instead of water."},
    {"more-back-than-out", error, "More came back than had gone out.", LOT_A "filled 10 x 454 g lot A\n5 jars came back\n", "Check the count, the size and the lot."},
    {"more-out-than-filled", error, "More jars went out than were filled.", LOT_A "filled 10 x 454 g lot A\nsold 24 jars to village shop\n",
     "Check the count, the size and the lot. Jars from before this journal are written `opening stock 24 x 454 g`."},
    {"more-than-estimated", warning, "More honey went into jars or out than an unweighed lot is thought to hold.",
     H3 "2026-06-03 mill\nh3 top full\nh3 top off\nextracted lot A from h3\nfilled 42 x 454 g lot A\n", "Weigh lots when they are extracted: `extracted 40 kg lot A`."},
    {"more-than-there-is", error, "More honey or more jars went out than there were.",
     LOT_A "filled 100 x 454 g lot A\n",
     "Check number, size and lot. Honey from elsewhere is written `opening stock` or `bought in`."},
    {"no-date", error, "Lines stand before the first day heading and set nothing up, so their day is not known.",
     "hive h3 at mill: deep\nh3 top full\n", "Put a heading above them: `2026-06-03 mill`."},
    {"no-hive", error, "Something that belongs to a hive was written without one, or to a group that has none in it.",
     H3 "2026-06-03 mill\ntop 70% capped\n", "Begin the line with the hive: `h3 top 70% capped`."},
    {"no-honey-yet", error, "Jars or honey are written down before any honey was extracted.",
     H3 "2026-06-03 mill\nfilled 40 x 454 g\n", "Note the extraction first, or what there was before: `opening stock 20 kg`."},
    {"no-such-super", error, "A line speaks of a super that is not on the hive.", H3 "2026-06-03 mill\nh3 super 3 full\n",
     "Check the number (counted from the brood up) or the label, or write the line by which it came on."},
    {"no-unit", error, "A number stands where its unit matters, and has none.", H3 "2026-06-03 mill\nh3 fed 2 syrup\n", "Write the unit: `2 L`, `2 kg`."},
    {"no-year", error, "The first date has no year, and none was set up.", H3 "3 June mill\nh3 calm\n",
     "Write the first date in full, or set `year 2026`."},
    {"not-on", error, "Something is taken off that is not on.", "hive h3 at mill: deep\n\n2026-06-03 mill\n-super h3\n",
     "Write the line by which it came on, or correct the hive."},
    {"not-taken-off", warning, "A super is weighed after extracting but was never written as taken off.",
     H3 "2026-06-03 mill\nh3 top after extracting 6 kg\n", "Write the line by which it came off: `h3 top off 21 kg`."},
    {"not-text", error, "There is a NUL byte in a file: it may not be a journal at all.", "", "Delete the byte or leave the file out."},
    {"not-understood", warning, "A phrase that looks like a measurement or an action was not understood. It is kept as a remark, word for word.",
     H3 "2026-06-03 mill\nh3 17 gribbles on 4\n", "Say it in the words of `waxtab words`, or put it in quotes if it is only a remark."},
    {"not-utf8", error, "A file holds bytes that no UTF-8 text has, as older editors write them.", "", "Save the file as UTF-8 in your editor."},
    {"nothing-to-blend", error, "A lot was blended that has nothing left in bulk.",
     LOT_A "sold 12 kg lot A to the baker\nopening stock 20 kg lot B\nblended lots A and B into lot C\n", "Check the lot, or what went out of it before."},
    {"nothing-to-repeat", note, "`no change` was written of a super that was not looked at before.",
     "hive h3 at mill: deep, excluder\n\n2026-06-03 mill\n+super h3\n\n2026-06-10 mill\nh3 super no change\n", "Write what was seen."},
    {"nothing-waiting", warning, "Honey is extracted from a hive of which no super was noted as taken off.",
     H3 "2026-06-03 mill\nextracted 12 kg lot A from h3\n", "Note first what came off: `h3 top off 22 kg`."},
    {"only-kept", note, "Words with a number that no report counts: a price, the frame on which something was seen. They are kept as a remark.",
     LOT_A "filled 10 x 454 g lot A\nsold 4 x 454 g lot A at 7 euro each\n", "Nothing needs to be done."},
    {"order-unsure", warning, "One day of a hive is told in two files, and the order matters. The file first by name counts as first.",
     H3 "2026-06-03 mill\n+super h3\n# in another file\n2026-06-03 mill\nh3 top 20%\n-super h3\n", "Put times on the headings, or tell the day in one file."},
    {"parts-differ", warning, "Parts in brackets do not add up to the number before them. The number before them is kept.",
     "", "Correct the parts or the whole."},
    {"same-as-above", note, "`ditto` is read as the same as the hive of the line above.", "", "Write `same as h2` if so."},
    {"same-as-what", warning, "`same as` names no hive that was written about above on this visit.",
     H3 "2026-06-03 mill\nh3 same as yesterday\n", "Name the hive, or write what was seen."},
    {"same-super", warning, "Two names were used on one visit as if for two supers, but only one is on.",
     H3 "2026-06-03 mill\nh3 top super 80%, bottom super 20%\n", "Write the line by which the other came on, or name one of them."},
    {"sections-unknown", warning, "A number of frames or sections is written of a super whose number of sections is not known.",
     "hive h3 at mill: deep, super sections\n\n2026-06-03 mill\nh3 super 4 frames capped\n", "Write it as n of m: `18 of 32 sections filled`."},
    {"set-up", error, "A set-up line cannot be read.", "units stone\n", "Write it as in the hint, or see `waxtab words`."},
    {"setting-differs", error, "A setting is said twice, differently.", "units kg\nunits lb\n", "Keep one of the lines."},
    {"share-over-100", error, "A share is more than the whole.", H3 "2026-06-03 mill\nh3 super 110%\n", "Write a share from 0% to 100%."},
    {"shed-short", warning, "More was taken from the shed than is left in it.",
     "shed: 1 super drawn\nhive h3 at mill: deep, excluder\n\n2026-06-03 mill\n+2 supers h3 drawn\n", "Write how many are there now: `shed: 6 supers drawn`."},
    {"stocktake-difference", warning, "A stocktake found more or less than the books have. The difference is booked.",
     LOT_A "filled 20 x 454 g lot A\nstocktake 15 x 454 g lot A\n", "Look for a sale, a gift or a filling that was not noted."},
    {"super-count-differs", warning, "The number of supers extracted is not the number that waited.",
     H3 "2026-06-03 mill\nh3 top off 20 kg\nextracted 3 supers, 12 kg lot A\n", "Name the hives, or note the supers that came off."},
    {"too-many-frames", error, "More frames are written of than the box has.", H3 "2026-06-03 mill\nh3 super 11 of 9 frames full\n",
     "Correct the number, or say the frames where the box was put on."},
    {"treatment-not-on", error, "A treatment is taken out that was not put in.", H3 "2026-06-03 mill\nh3 thymol out\n",
     "Write the line by which it went in, on its day."},
    {"two-meanings", warning, "An abbreviation or a word that means one thing to some keepers and another to others. The phrase is kept as a remark.",
     H3 "2026-06-03 mill\nh3 SC on frame 4\n", "Write it in full, or put the remark in quotes."},
    {"two-readings", error, "A phrase can be read in two ways. Both are shown; neither is taken, and the words are kept as a remark.",
     H3 "2026-06-03 mill\nh3 brood packed\n", "Write it as one of the two is written in the message."},
    {"unknown-box", error, "A setting names a kind of box that is not known.", "default super tall\n", "Declare it: `box tall: super, 10 frames, 15 kg full`."},
    {"unknown-hive", error, "A hive is named that was not set up and did not come into being. Nothing is booked to it.",
     H3 "2026-06-03 mill\nh33 calm\n", "Correct the name, or set the hive up: `hive h33 at mill: deep`."},
    {"unknown-lot", error, "A lot is named that does not exist by that day.",
     LOT_A "filled 10 x 454 g lot B\n", "Correct the name, or note the extraction."},
    {"unknown-word", warning, "A word is not known but is near to one that is. Nothing is corrected silently: the phrase is kept as a remark.",
     H3 "2026-06-03 mill\nh3 top 70% caped\n", "Write the word that was meant, or put the remark in quotes."},
    {"unknown-yard", error, "A heading or a hive names a yard that is not known, though it is near to one that is.",
     "hive h3 at mill: deep\n\n2026-06-03 mil\nh3 calm\n", "Correct the name, or set the yard up: `yard mil`."},
    {"weight-shared", note, "One weight was written for several supers. It is divided equally among them.",
     "hive h3 at mill: deep, super, super\n\n2026-06-03 mill\nh3 both supers off 40 kg\n", "Weigh each super by itself to know what each gave."},
    {"which-lot", warning, "Jars or honey go out, and more than one lot could be meant. The latest is taken.",
     "hive h3 at mill: deep, super, super\n\n2026-06-03 mill\nh3 top off 20 kg\nextracted 12 kg lot A from h3\nh3 super off 20 kg\n"
     "extracted 12 kg lot B from h3\n\n2026-06-10\nfilled 10 x 454 g\n", "Name the lot."},
    {"which-super", error, "`the super` or `off` was written while several supers are on, and it matters which.",
     "hive h3 at mill: deep, super, super\n\n2026-06-03 mill\nh3 super off\n", "Write `top`, `bottom`, `super 2`, `all supers` or the label."},
    {"with-itself", error, "A hive is named as its own partner.", H3 "2026-06-03 mill\nh3 united with h3\n", "Write the two hives that are meant."},
    {"wrong-weekday", warning, "The weekday does not belong to the date. The date is taken.", H3 "Mon 3 June 2026 mill\nh3 calm\n", "Correct one of the two."},
    {"wrong-yard", warning, "A hive is written under the heading of another yard than its own.",
     "yard heath\n" H3 "2026-06-03 heath\nh3 calm\n", "If it was moved, write `h3 moved to heath`."},
};

#undef LOT_A
#undef H3

std::string indented(std::string_view lines) {
    std::string out;
    while (!lines.empty()) {
        const std::size_t end = lines.find('\n');
        if (end > 0) out += "    ";
        out.append(lines.substr(0, end)).append("\n");
        lines.remove_prefix(end == lines.npos ? lines.size() : end + 1);
    }
    return out;
}

}  // namespace

const std::vector<CatalogueEntry>& catalogue() { return entries; }

const CatalogueEntry* catalogue_entry(std::string_view code) {
    for (const CatalogueEntry& entry : entries)
        if (entry.code == code) return &entry;
    return nullptr;
}

std::string catalogue_text(const CatalogueEntry& entry) {
    std::string out = fmt::format("{}: {}\n\n", entry.code, name_of(entry.severity));
    out += paragraph(entry.means, "", "") + '\n';
    if (!entry.example.empty()) out += "For example:\n\n" + indented(entry.example) + '\n';
    return out + "What to do:\n\n" + paragraph(entry.remedy, "    ", "    ");
}

std::string catalogue_page() {
    std::string out = "# Messages\n\nWhat `waxtab check` may say, by the code at the end of each message.\n";
    for (const CatalogueEntry& entry : entries) {
        out += fmt::format("\n## {}\n\n{}: {}\n", entry.code, name_of(entry.severity), entry.means);
        if (!entry.example.empty()) out += fmt::format("\n```hive\n{}```\n", entry.example);
        out += fmt::format("\n{}\n", entry.remedy);
    }
    return out;
}

}  // namespace waxtab
