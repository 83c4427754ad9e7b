#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "quantity/quantity.hpp"

namespace waxtab {

enum class Command { check, lines, timeline, supers, advise, bring, harvest, records, hindsight, report, words, rules };

/// What was asked for on the command line; names are not yet looked up in the journal.
struct Options {
    Command command = Command::check;
    std::vector<std::string> paths;     ///< empty: the current folder; for `words` and `rules` what to explain
    std::optional<Day> on;              ///< none: today
    std::vector<std::string> hives, yards;
    std::optional<Day> since, until;
    std::optional<MassUnit> units;      ///< none: as the journal says
    bool json = false, csv = false, read_back = false, no_refs = false;
    std::string explain;                ///< check: a code to explain; empty: none
    bool sources = false;               ///< advise: list where the rules come from
    std::string lot;                    ///< harvest: a lot to trace; empty: none
    std::string out;                    ///< report: the folder to write to
    bool only_if_changed = false;       ///< report: leave a folder alone that holds the same bytes
};

/// A run that is over before it began: help, or wrong use.
struct Ending {
    int status = 0;                     ///< 0: `text` goes to standard output; else to standard error
    std::string text;
};

/// Reads the arguments after the program's name.
std::variant<Options, Ending> read_arguments(const std::vector<std::string>& arguments);

/// The program's help, and the help of one command.
std::string help_page();
std::string help_page(Command command, const std::string& options);

/// Name and one-line answer of every command, in the order of the help.
struct CommandEntry {
    Command command;
    std::string_view name;
    std::string_view answers;
};
const std::vector<CommandEntry>& commands();
std::string_view name_of(Command command);
/// True for commands that read no journal: `words` and `rules` explain names.
inline bool takes_names(Command command) { return command == Command::words || command == Command::rules; }

/// The candidate nearest to `word` by edits when it is near enough to be meant, else empty.
std::string nearest(std::string_view word, const std::vector<std::string>& candidates);

}  // namespace waxtab
