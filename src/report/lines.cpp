#include "report/lines.hpp"

#include <fmt/format.h>

#include "report/phrases.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

/// What stands behind the `#`: the place and the assumptions.
std::string comment(const Journal& journal, const Fact& fact, const Style& style) {
    std::vector<std::string> parts;
    if (style.refs && fact.span.known()) parts.push_back(printable(journal.sources.at(fact.span)));
    for (const std::string& assumed : assumptions(journal, fact)) parts.push_back(printable(assumed));
    return parts.empty() ? std::string{} : fmt::format("  # {}", fmt::join(parts, "; "));
}

}  // namespace

std::vector<FactId> listed_facts(const Journal& journal, Day on, const Selection& selection) {
    std::vector<FactId> ids;
    for (FactId id = 0; id < journal.facts.size(); ++id) {
        const Fact& fact = journal.facts[id];
        if (fact.noted <= on && fact.happened <= on && lists(selection, fact)) ids.push_back(id);
    }
    return ids;
}

std::string lines_text(const Journal& journal, Day on, const Selection& selection, const Style& style) {
    std::string out;
    if (selection.everything())
        for (const std::string& line : set_up_lines(journal)) out += printable(line) + '\n';
    for (const FactId id : listed_facts(journal, on, selection)) {
        const Fact& fact = journal.facts[id];
        out += printable(long_form(journal, fact)) + comment(journal, fact, style) + '\n';
    }
    return out;
}

}  // namespace waxtab
