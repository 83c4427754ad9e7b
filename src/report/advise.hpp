#pragma once
#include <string>
#include <vector>

#include "advice/advice.hpp"
#include "report/style.hpp"

namespace waxtab {

/// What to do, most urgent first: where, what, by when, how sure, for what reasons and journal lines. Then the
/// keeper's own to-dos, the usual cautions once each, and with `sources` the rules with where they come from.
std::string advise_text(const Journal& journal, const History& history, const std::vector<Advice>& advice,
                        const Selection& selection, const Style& style, bool sources = false);

/// The same as one JSON document: `on`, `advice` in the order given.
std::string advise_json(const Journal& journal, const History& history, const std::vector<Advice>& advice,
                        const Selection& selection, const Style& style);

/// `certain`, `likely` or `possible`.
std::string_view name_of(Sureness sureness);

/// True when a piece of advice is listed.
bool lists(const Selection& selection, const History& history, const Advice& advice);

}  // namespace waxtab
