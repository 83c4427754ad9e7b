#include <algorithm>

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include "cli/options.hpp"
#include "facts/lexicon.hpp"
#include "facts/tokens.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

constexpr std::string_view version = "waxtab 0.1.0\n";

Ending refused(std::string_view message) {
    return {2, fmt::format("waxtab: error: {}\nTry 'waxtab --help'.\n", printable(message))};
}

/// Days as they stand on the command line, before they are read.
struct DayWords {
    std::string on, since, until;
};

/// Which of the options that many commands share a command makes use of; it refuses the others.
struct Takes {
    Command command;
    bool hive, yard, since, until, units, refs;
};
constexpr Takes takes[] = {
    // command               hive   yard   since  until  units  refs
    {Command::check,         false, false, false, false, false, false},
    {Command::lines,         true,  true,  true,  true,  true,  true},
    {Command::timeline,      true,  true,  true,  true,  false, true},
    {Command::supers,        true,  true,  false, false, true,  true},
    {Command::advise,        true,  true,  false, false, true,  true},
    {Command::bring,         true,  true,  false, true,  true,  true},
    {Command::harvest,       true,  true,  true,  true,  true,  true},
    {Command::records,       true,  true,  true,  true,  false, true},
    {Command::hindsight,     true,  false, true,  true,  true,  true},
};

const Takes& takes_of(Command command) {
    return *std::find_if(std::begin(takes), std::end(takes) - 1, [&](const Takes& t) { return t.command == command; });
}

void add_common(CLI::App& app, Options& options, DayWords& days, std::string& units) {
    const Takes& use = takes_of(options.command);
    app.add_option("paths", options.paths, "journal files or folders; default: the current folder");
    app.add_option("--on", days.on, "the day to stand on: only what was noted by then counts; default: today")
        ->type_name("DATE");
    if (use.hive)
        app.add_option("--hive", options.hives, "only this hive; may be repeated")->type_name("NAME")->allow_extra_args(false);
    if (use.yard)
        app.add_option("--yard", options.yards, "only this yard; may be repeated")->type_name("NAME")->allow_extra_args(false);
    if (use.since) app.add_option("--since", days.since, "list nothing older; everything still counts")->type_name("DATE");
    const bool round = options.command == Command::bring;
    if (use.until)
        app.add_option("--until", days.until, round ? "the last day of the round; default: over the visit interval"
                                                    : "list nothing newer; everything still counts")->type_name("DATE");
    if (use.units)
        app.add_option("--units", units, options.command == Command::lines ? "kg or lb, for --json and --csv; default: kg"
                                                                            : "kg or lb; default: as the journal says, in --json kg")
            ->type_name("kg|lb");
    app.add_flag("--json", options.json, "for programs instead of people");
    if (use.refs) app.add_flag("--no-refs", options.no_refs, "leave out file:line, for comparing");
}

void add_report(CLI::App& app, Options& options, DayWords& days, std::string& units) {
    app.add_option("paths", options.paths, "journal files or folders; default: the current folder");
    app.add_option("--out", options.out, "the folder to write to; it is made when it is not there")->type_name("FOLDER")->required();
    app.add_flag("--only-if-changed", options.only_if_changed, "leave the folder alone when the report would be the same");
    app.add_option("--on", days.on, "the day to stand on; default: today")->type_name("DATE");
    app.add_option("--units", units, "kg or lb; default: as the journal says")->type_name("kg|lb");
    app.add_flag("--no-refs", options.no_refs, "leave out the journal's lines");
}

void add_own(CLI::App& app, Command command, Options& options) {
    if (command == Command::check)
        app.add_option("--explain", options.explain, "explain a code such as unknown-hive, and read no journal")
            ->type_name("CODE");
    if (command == Command::advise)
        app.add_flag("--sources", options.sources, "list where the rules come from; 'waxtab rules' has them all");
    if (command == Command::harvest)
        app.add_option("--lot", options.lot, "the way of one lot, from hives to buyers")->type_name("NAME");
    if (command != Command::lines) return;
    app.add_flag("--csv", options.csv, "comma-separated values, one head line");
    app.add_flag("--read-back", options.read_back, "each line as written, with what was understood");
}

std::string options_page(const CLI::App& app) {
    std::string out;
    for (const CLI::Option* option : app.get_options()) {
        if (option->get_lnames().empty()) continue;
        std::string name = "--" + option->get_lnames().front();
        if (option->get_expected_min() > 0) name += ' ' + option->get_type_name();
        out += paragraph(option->get_description(), "  " + pad_right(name, 17) + " ", std::string(20, ' '));
    }
    return out;
}

/// Reads a day that may not have been given; false when it is not a day.
bool read_day(const std::string& words, std::optional<Day>& into) {
    if (words.empty()) return true;
    into = day_from_iso(words);
    return into.has_value();
}

std::optional<Ending> read_days(const DayWords& words, Options& options) {
    const auto wrong = [](std::string_view option, const std::string& text) {
        return refused(fmt::format("{} wants a day that exists, written like 2026-06-03, not '{}'", option, text));
    };
    if (!read_day(words.on, options.on)) return wrong("--on", words.on);
    if (!read_day(words.since, options.since)) return wrong("--since", words.since);
    if (!read_day(words.until, options.until)) return wrong("--until", words.until);
    if (options.since && options.until && *options.since > *options.until)
        return refused(fmt::format("--since {} is after --until {}", words.since, words.until));
    return {};
}

std::optional<Ending> read_units(const std::string& units, Options& options) {
    if (units.empty()) return {};
    if (units == "kg") options.units = MassUnit::kilogram;
    if (units == "lb") options.units = MassUnit::pound;
    if (!options.units) return refused(fmt::format("--units wants kg or lb, not '{}'", units));
    return {};
}

/// CLI11's word for what went wrong, with a suggestion for an option that is nearly one.
Ending option_error(const CLI::App& app, const CLI::ParseError& error, const std::vector<std::string>& arguments) {
    std::vector<std::string> known{"--help"};
    for (const CLI::Option* option : app.get_options())
        for (const std::string& name : option->get_lnames()) known.push_back("--" + name);
    for (const std::string& argument : arguments) {
        const std::string name = argument.substr(0, argument.find('='));
        if (!argument.starts_with('-') || argument == "-" || std::find(known.begin(), known.end(), name) != known.end()) continue;
        const std::string near = nearest(name, known);
        return refused(fmt::format("{} has no option '{}'{}", app.get_name(), name,
                                   near.empty() ? "" : fmt::format("; did you mean '{}'?", near)));
    }
    return refused(error.what());
}

std::variant<Options, Ending> read_command(Command command, const std::vector<std::string>& arguments) {
    Options options;
    options.command = command;
    DayWords days;
    std::string units;
    CLI::App app("", std::string(name_of(command)));
    if (takes_names(command)) {
        app.add_option("name", options.paths, command == Command::words ? "a word to explain" : "a rule to explain");
    } else if (command == Command::report) {
        add_report(app, options, days, units);
    } else {
        add_own(app, command, options);
        add_common(app, options, days, units);
    }
    app.set_help_flag();
    if (std::any_of(arguments.begin(), arguments.end(), [](const std::string& a) { return a == "--help" || a == "-h"; }))
        return Ending{0, help_page(command, options_page(app))};
    try {
        app.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
    } catch (const CLI::ParseError& error) {
        return option_error(app, error, arguments);
    }
    if (options.json + options.csv + options.read_back > 1)
        return refused("choose one of --json, --csv and --read-back");
    if (command == Command::lines && !units.empty() && !options.json && !options.csv)
        return refused("lines shows what was written; --units goes with --json and --csv");
    const bool chosen = !options.hives.empty() || !options.yards.empty() || !days.since.empty() || !days.until.empty();
    if (!options.lot.empty() && chosen)
        return refused("--lot shows the whole way of one lot; leave out --hive, --yard, --since and --until");
    if (const auto ending = read_days(days, options)) return *ending;
    if (const auto ending = read_units(units, options)) return *ending;
    return options;
}

std::string command_names() {
    std::vector<std::string_view> names;
    for (const CommandEntry& entry : commands()) names.push_back(entry.name);
    return fmt::format("{}", fmt::join(names, ", "));
}

}  // namespace

std::string nearest(std::string_view word, const std::vector<std::string>& candidates) {
    // A third of the letters may be wrong, one at least, but never all of them.
    std::size_t best = std::min(std::max<std::size_t>(word.size() / 3, 1) + 1, word.size());
    std::string found;
    for (const std::string& candidate : candidates) {
        const std::size_t distance = edit_distance(lower(word), lower(candidate));
        if (distance < best) best = distance, found = candidate;
    }
    return found;
}

std::variant<Options, Ending> read_arguments(const std::vector<std::string>& arguments) {
    if (arguments.empty()) return Ending{2, help_page()};
    const std::string& first = arguments.front();
    if (first == "--version") return Ending{0, std::string(version)};
    if (first == "--help" || first == "-h" || first == "help") return Ending{0, help_page()};
    std::vector<std::string> names;
    for (const CommandEntry& entry : commands()) {
        if (entry.name == first) return read_command(entry.command, {arguments.begin() + 1, arguments.end()});
        names.emplace_back(entry.name);
    }
    if (first.starts_with('-'))
        return refused(fmt::format("a command comes first, before '{}': one of {}", first, command_names()));
    const std::string near = nearest(first, names);
    if (!near.empty()) return refused(fmt::format("there is no command '{}'; did you mean '{}'?", first, near));
    return refused(fmt::format("there is no command '{}'; it is one of {}", first, command_names()));
}

}  // namespace waxtab
