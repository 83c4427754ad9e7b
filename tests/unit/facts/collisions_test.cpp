// No clause made from one row of the readings may give two different facts, but for those asked back on purpose.
#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

#include "facts/lexicon.hpp"
#include "readings.hpp"
#include "said.hpp"

using namespace waxtab;

namespace {

/// Words that fill a slot; empty for a slot no sample is made of.
std::string sample(std::string_view slot) {
    static const std::pair<std::string_view, std::string_view> samples[] = {
        {"SHARE", "60%"}, {"AMOUNT", "half"}, {"N", "3"}, {"FRAMES", "4 frames"}, {"MASS", "5 kg"}, {"VOLUME", "2 L"}, {"TEMP", "21C"}, {"DAYS", "in 3 days"},
        {"INDEX", "1.4915"}, {"NUMBER", "17.8"}, {"RATIO", "1:1"}, {"SAMPLE", "4/300"}, {"BOX", "top super"}, {"BOX2", "bottom super"}, {"KIND", "shallow"},
        {"SUPERKIND", "shallow"}, {"COMB", "drawn"}, {"PLACE", "under"}, {"FROM", "from h4"}, {"TO", "to h4"}, {"INTO", "into h4"}, {"WITH", "with h4"}, {"HIVE", "h4"},
        {"TO_YARD", "to orchard"}, {"LABEL", "\"B9\""}, {"COLOUR", "yellow"}, {"PLANT", "lime"}, {"SUBSTANCE", "oxalic acid"}, {"METHOD", "alcohol wash"}, {"FOOD", "fondant"},
        {"PEST", "wax moth"}, {"DISEASE", "chalk brood"}, {"WEATHER", "sunny"}, {"LOT", "lot A"}, {"LOTS", "lots A and B"}, {"INTO_LOT", "into lot C"}, {"JARS", "40 x 454 g"},
        {"SCORE", "4"}, {"DATE", "2026-06-01"}, {"DUE", "by 2026-07-14"}, {"FULLNESS", "empty"}, {"SPECIAL", "cut comb"}, {"ORDINAL_SUPER", "2nd super"}, {"NTH_SUPER", "2nd super"}, {"ORDINAL", "second"}, {"NOFM", "9 of 11 frames"}, {"BOXPAIR", "top and bottom supers"}};
    for (const auto& [name, text] : samples)
        if (name == slot) return std::string(text);
    return {};
}

/// One way of filling an element: its `choice`-th alternative.
std::string words_of(std::string_view element, std::size_t choice) {
    std::string text(element);
    while (!text.empty() && (text.back() == '?' || (text.back() == '+' && text.size() > 1))) text.pop_back();
    const std::vector<std::string> alternatives = parts_of(text, '|');
    std::string one = alternatives[choice % alternatives.size()];
    const bool free = one.starts_with('@');
    if (free) one.erase(0, 1);
    const bool counted = one.ends_with("##");
    while (one.ends_with('#')) one.pop_back();
    const std::string filled = sample(one);
    if (!filled.empty()) return (counted && one != "SPECIAL" && one != "COMB" ? "3 " : "") + filled;
    std::replace(one.begin(), one.end(), '_', ' ');
    if (one == "over state") one = "finished";
    return (counted ? "3 " : "") + one + (free ? " \"some one\"" : "");
}

/// Clauses of a row: the needed elements alone, and with each optional one.
std::vector<std::string> clauses_of(const grammar::ReadingRow& row) {
    const std::vector<std::string> elements = parts_of(row.pattern, ' ');
    std::vector<std::string> out;
    for (std::size_t with = 0; with <= elements.size(); ++with)
        for (std::size_t choice = 0; choice < 3; ++choice) {
            std::string clause;
            for (std::size_t e = 0; e < elements.size(); ++e) {
                if (elements[e].ends_with('?') && e != with) continue;
                const std::string words = words_of(elements[e], choice);
                clause += (clause.empty() || clause == "+" || clause == "-" ? "" : " ") + words;
            }
            out.push_back(clause);
        }
    return out;
}

/// Readings that are asked back because the words have two meanings in the trade.
bool declared(std::string_view clause) {
    static const std::vector<std::string_view> asked = {"brood packed", "3 super on", "3 shallow on", "not queen", "queen missing", "queen gone", "new queen"};
    return std::any_of(asked.begin(), asked.end(), [&](std::string_view a) { return clause.find(a) != clause.npos; });
}

}  // namespace

TEST_CASE("no clause of one reading gives two facts, unless it is asked back on purpose", "[facts][figures]") {
    std::set<std::string> tried;
    for (const grammar::ReadingRow& row : grammar::reading_rows)
        for (const std::string& clause : clauses_of(row)) {
            if (declared(clause) || !tried.insert(clause).second) continue;
            INFO(clause);
            const Journal journal = test::journal_of("h3 " + clause);
            CHECK(std::none_of(journal.diagnostics.begin(), journal.diagnostics.end(), [](const Diagnostic& d) { return d.code == "two-readings"; }));
        }
    CHECK(tried.size() > 500);
}

TEST_CASE("what has two meanings is asked back", "[facts]") {
    for (const char* line : {"h3 brood packed", "h3 3 supers on", "h3 3 shallows on", "h3 no queen", "h3 queen gone", "h3 new queen", "h3 Q+"}) {
        INFO(line);
        const Journal journal = test::journal_of(line);
        CHECK(std::any_of(journal.diagnostics.begin(), journal.diagnostics.end(), [](const Diagnostic& d) { return d.code == "two-readings"; }));
    }
}
