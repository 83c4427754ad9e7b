#include <fmt/format.h>

#include "cli/options.hpp"
#include "text/layout.hpp"

namespace waxtab {

namespace {

constexpr std::string_view example =
    "    hive h3 at mill: deep, excluder, super drawn9\n"
    "\n"
    "    2026-06-03 mill\n"
    "    h3 top 70% capped, no queen cells\n"
    "    +super h3 drawn9\n";

/// What a command is for, as a paragraph or two, and a line to try.
struct Teaching {
    Command command;
    std::string_view words;
    std::string_view try_it;
};

constexpr Teaching teachings[] = {
    {Command::check,
     "Reads the journal as a careful colleague would and says what cannot be right: an unknown hive, a super taken "
     "off that was never on, a date that does not exist, a number without its unit. Each message names file, line "
     "and column, shows the words and says what to write instead. Exit status 0 when all is well, 1 when there are "
     "errors; warnings alone are no errors.",
     "waxtab check\n  waxtab check --explain unknown-hive"},
    {Command::lines,
     "Prints every fact that was understood on one dated line of its own. The lines are valid notation themselves, "
     "made for grep, awk and diff; what was assumed stands behind the '#'. Without a filter the set-up lines come "
     "first, so that the output is a whole journal again. --read-back shows each line as you wrote it and under it what "
     "was understood, remarks and to-dos included.",
     "waxtab lines | grep ' h3 '\n  waxtab lines --read-back mill.hive\n  waxtab lines --json | jq 'select(.kind == "
     "\"full\")'"},
    {Command::timeline,
     "Shows for every hive what stands on it now, drawn as it stands, each box with the day it went on, and below it what "
     "happened day by day.",
     "waxtab timeline --hive h3 --since 2026-06-01"},
    {Command::supers,
     "Estimates for every super how full and how capped it is and how much honey is in it, and for every hive how "
     "fast it gains and how many days of room it has. Each figure comes with the range that holds in 8 cases of 10 "
     "and with the journal lines it rests on. In --json shares are percent; 'holds' is the honey in it when full, 'fell_from' how "
     "full it was at the look before where two looks do not go together, else null, and 'keeper_at' the weighings by which your eye "
     "was judged.",
     "waxtab supers --yard mill"},
    {Command::advise,
     "Says what to do at which hive, by when, how sure that is, and because of which lines of the journal and which "
     "rule. The most urgent comes first, your own to-dos and the usual cautions last. In --json 'chances' are the odds of the words "
     "as percent: of what, at which hive, by when.",
     "waxtab advise --yard mill"},
    {Command::bring,
     "Says what to put on the truck for the next round: the hives to open in order and what to do there, supers by kind and comb "
     "with a reserve, escape boards, feed, strips that come out, tubs and jars; and what the shed is short of. The round "
     "goes to --until, else over the visit interval.",
     "waxtab bring\n  waxtab bring --until 2026-07-12"},
    {Command::hindsight,
     "Shows how good its own estimates have been on this journal: at every past visit it foretells the next one from what "
     "was noted by then, and compares.",
     "waxtab hindsight"},
    {Command::report,
     "Writes report.html, report.txt, visits.ics and a page for every lot to a folder of their own. The page needs no network "
     "and no script, and prints with a sheet to take to the yard. The folder holds the whole old or the whole new report at any "
     "moment; nothing is printed when all goes well, so that cron has nothing to mail but errors.",
     "waxtab report --out ~/hives-report\n  waxtab report --out ~/hives-report --only-if-changed"},
    {Command::words,
     "Prints the notation on one page: the words that are understood and the ways of saying things. With a word it explains "
     "that word.",
     "waxtab words\n  waxtab words super"},
    {Command::rules,
     "Prints every rule of the advice with its source, group by group, as a page in Markdown. With the name of a rule it explains "
     "that rule.",
     "waxtab rules\n  waxtab rules room-runs-out"},
    {Command::records,
     "Prints the books that law asks a beekeeper for: medicines given with batch, supplier, quantity, days and withdrawal period, feed "
     "given and where it came from, disease, and honey bought and sold. A field the journal does not have reads 'not noted'. What must "
     "be kept, and how long, is for your law to say.",
     "waxtab records --since 2026-01-01"},
    {Command::harvest,
     "Keeps the honey ledger: supers taken off, extracted lots and the hives they came from, jars, what went out, "
     "what is left in bulk, yields by hive, yard and season. --lot shows the way of one lot from the hives to the "
     "buyers.",
     "waxtab harvest --since 2026-01-01\n  waxtab harvest --lot A"},
};

const Teaching& teaching_of(Command command) {
    for (const Teaching& teaching : teachings)
        if (teaching.command == command) return teaching;
    return teachings[0];
}

std::string command_list() {
    std::string out;
    for (const CommandEntry& entry : commands())
        out += paragraph(entry.answers, "  " + pad_right(entry.name, 11), std::string(13, ' '));
    return out;
}

}  // namespace

const std::vector<CommandEntry>& commands() {
    static const std::vector<CommandEntry> entries = {
        {Command::check, "check", "what is wrong with the journal, line by line"},
        {Command::lines, "lines", "every fact on a line of its own, for grep, notebooks and databases"},
        {Command::timeline, "timeline", "what stands on each hive and what happened to it"},
        {Command::supers, "supers", "how full each super is, how fast each hive fills, days of room left"},
        {Command::advise, "advise", "what to do at which hive, by when, and why"},
        {Command::bring, "bring", "what to put on the truck for the next round"},
        {Command::harvest, "harvest", "the honey ledger: from hives through lots to jars"},
        {Command::records, "records", "medicines, feed, disease and trade, as law asks for them"},
        {Command::hindsight, "hindsight", "how good past estimates were on this journal"},
        {Command::report, "report", "a page, a text and a calendar for every morning"},
        {Command::words, "words", "the notation on one page; with a word, that word explained"},
        {Command::rules, "rules", "every rule of the advice and where it comes from"},
    };
    return entries;
}

std::string_view name_of(Command command) {
    for (const CommandEntry& entry : commands())
        if (entry.command == command) return entry.name;
    return {};
}

std::string help_page() {
    std::string out = paragraph(
        "waxtab reads a beekeeper's journal, plain dated notes in files ending in .hive, and answers questions about "
        "hives, supers and honey. It keeps nothing and changes nothing: the journal is all there is.", "", "");
    out += "\nA journal can be as short as this. Write it to spring.hive with any editor:\n\n" + std::string(example);
    out += "\nThen, in the same folder:\n\n"
           "    waxtab check                    is all of it understood?\n"
           "    waxtab lines --read-back        how was each line understood?\n"
           "    waxtab supers --on 2026-06-10   how full will they be?\n"
           "    waxtab advise --on 2026-06-10   what should be done, by when?\n"
           "\nUse: waxtab COMMAND [OPTIONS] [FILES OR FOLDERS]\n\nCommands:\n" + command_list();
    out += '\n' + paragraph(
        "Files and folders that are named together make one journal; with none named it is every *.hive in the "
        "current folder and below. 'waxtab COMMAND --help' tells more about a command and its options.", "", "");
    return out + "\nExit status: 0 answered (check: no errors), 1 check found errors, 2 wrong use\nor unreadable file.\n";
}

std::string help_page(Command command, const std::string& options) {
    const Teaching& teaching = teaching_of(command);
    const bool about_words = takes_names(command);
    const std::string_view takes = command == Command::words   ? "[WORD]"
                                   : command == Command::rules ? "[RULE]"
                                                               : "[OPTIONS] [FILES OR FOLDERS]";
    std::string out = fmt::format("Use: waxtab {} {}\n\n", name_of(command), takes);
    out += paragraph(teaching.words, "", "");
    out += fmt::format("\nTry:\n  {}\n", teaching.try_it);
    if (about_words) return out;
    return out + "\nA journal to try it on:\n\n" + std::string(example) + "\nOptions:\n" + options;
}

}  // namespace waxtab
