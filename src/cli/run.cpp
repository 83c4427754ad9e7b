#include "cli/run.hpp"

#include <algorithm>
#include <ostream>

#include <fmt/format.h>

#include "advice/advice.hpp"
#include "cli/answer.hpp"
#include "cli/gather.hpp"
#include "cli/options.hpp"
#include "cli/report_command.hpp"
#include "diagnostics/catalogue.hpp"
#include "diagnostics/render.hpp"
#include "facts/words_page.hpp"
#include "report/phrases.hpp"
#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

constexpr int fine = 0, found_errors = 1, wrong_use = 2;

void complain(Io& io, std::string_view words) { io.err << "waxtab: error: " << printable(words) << '\n'; }

/// Writes the answer; a full disk or a closed pipe must not pass for success.
int write(Io& io, std::string_view text, int status) {
    io.out << text << std::flush;
    if (io.out) return status;
    complain(io, "the output could not be written");
    return wrong_use;
}

int explain(const Options& options, Io& io) {
    const CatalogueEntry* entry = catalogue_entry(options.explain);
    if (entry) return write(io, catalogue_text(*entry), fine);
    std::vector<std::string> codes;
    for (const CatalogueEntry& known : catalogue()) codes.emplace_back(known.code);
    const std::string near = nearest(options.explain, codes);
    complain(io, fmt::format("there is no code '{}'{}", options.explain,
                             near.empty() ? "" : fmt::format("; did you mean '{}'?", near)));
    return wrong_use;
}

std::string rule_text(const RuleEntry& rule) {
    return fmt::format("{} ({})\n", rule.name, rule.group) + paragraph(rule.says, "  ", "  ") +
           paragraph(fmt::format("Source: {}.", rule.source), "  ", "  ");
}

int words(const Options& options, Io& io) {
    if (options.paths.empty()) return write(io, words_page(), fine);
    std::string word;
    for (const std::string& part : options.paths) word += (word.empty() ? "" : " ") + part;
    if (knows_word(word)) return write(io, explain_word(word), fine);
    io.err << explain_word(word);
    return wrong_use;
}

int rules_of_advice(const Options& options, Io& io) {
    if (options.paths.empty()) return write(io, rules_page(), fine);
    std::string out;
    std::vector<std::string> known;
    for (const RuleEntry& rule : rules()) known.emplace_back(rule.name);
    for (const std::string& name : options.paths) {
        const auto at = std::find(known.begin(), known.end(), name);
        if (at == known.end()) {
            const std::string near = nearest(name, known);
            complain(io, fmt::format("there is no rule '{}'; {}", name,
                                     near.empty() ? std::string("'waxtab rules' lists them") : fmt::format("did you mean '{}'?", near)));
            return wrong_use;
        }
        out += rule_text(rules()[static_cast<std::size_t>(at - known.begin())]);
    }
    return write(io, out, fine);
}

int check(const Options& options, const Whole& whole, Io& io) {
    const Diagnostics diagnostics = whole.diagnostics();
    const int status = tally(diagnostics).errors > 0 ? found_errors : fine;
    return write(io, check_text(options, whole, diagnostics, io.colour && !options.json), status);
}

void say_errors(const Whole& whole, Io& io) {
    const int errors = tally(whole.diagnostics()).errors;
    if (errors > 0)
        io.err << fmt::format("waxtab: {} in the journal; 'waxtab check' shows {}\n", counted(errors, "error"),
                              errors == 1 ? "it" : "them");
}

int other(const Options& options, const Whole& whole, Io& io) {
    const Answer said = answer(options, whole, io.colour);
    if (!said.refusal.empty()) return complain(io, said.refusal), wrong_use;
    say_errors(whole, io);
    return write(io, said.text, fine);
}

/// Journals from this many bytes on take more than a moment.
constexpr std::size_t long_from = 1'000'000;

std::size_t bytes_of(const std::vector<JournalFile>& files) {
    std::size_t sum = 0;
    for (const JournalFile& file : files) sum += file.bytes.size();
    return sum;
}

bool speaks_of_advice(Command command) {
    return command == Command::advise || command == Command::bring || command == Command::report;
}

/// A journal that could not be read whole makes no report: yesterday's is worth more than half of today's.
int report(const Options& options, const Whole& whole, bool read_whole, Progress& progress, Io& io) {
    const std::string problem = read_whole ? write_report(options, whole, progress)
                                           : "no report was written, the one before is left as it was";
    progress.done();
    if (!problem.empty()) return complain(io, problem), wrong_use;
    say_errors(whole, io);
    return fine;
}

}  // namespace

int run(const std::vector<std::string>& arguments, Io& io) {
    const auto read = read_arguments(arguments);
    if (const auto* ending = std::get_if<Ending>(&read)) {
        if (ending->status == fine) return write(io, ending->text, fine);
        io.err << ending->text;
        return ending->status;
    }
    const Options& options = std::get<Options>(read);
    if (!options.explain.empty()) return explain(options, io);
    if (options.command == Command::words) return words(options, io);
    if (options.command == Command::rules) return rules_of_advice(options, io);
    Gathered gathered = gather(options.paths, io);
    for (const std::string& problem : gathered.problems) complain(io, problem);
    if (gathered.files.empty()) return wrong_use;
    Progress progress(io, bytes_of(gathered.files) > long_from);
    progress.step("reading and estimating");
    const auto whole = whole_of(std::move(gathered.files), options.on.value_or(io.today));
    // Advice says its weights in the journal's unit.
    if (options.units && speaks_of_advice(options.command)) whole->journal.settings.mass = *options.units;
    if (options.command == Command::report) return report(options, *whole, gathered.problems.empty(), progress, io);
    progress.done();
    const int status = options.command == Command::check ? check(options, *whole, io) : other(options, *whole, io);
    return gathered.problems.empty() ? status : wrong_use;
}

}  // namespace waxtab
