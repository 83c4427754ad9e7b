#pragma once
#include <string>

#include "ledger/ledger.hpp"
#include "report/style.hpp"

namespace waxtab {

/// `13.00 kg, weighed`, or that its comb was only counted.
std::string weight_text(const Lot& lot, const Style& style);
/// `A, extracted 2026-07-12: 82.00 kg, weighed; moisture 17.8%`, with its references.
std::string lot_head(const Journal& journal, const Lot& lot, const Style& style);
/// A table of hives with their part of the lot.
std::string shares_table(const Journal& journal, const History& history, const Lot& lot, const Selection& selection,
                         const Style& style);
/// `24 jars of 454 g (10.90 kg), sold to village shop`; `lot` decides whether jars or pieces of comb.
std::string going_text(const Going& going, const Lot* lot, const Style& style);
/// Honey in a taking: weighed net, else estimated.
MassRange honey_of(const History& history, const Estimates& estimates, std::size_t taking);
/// Jars filled, out and left; what went out, day by day; what is left in jars and in bulk.
std::string whereabouts(const Journal& journal, const Lot& lot, const Selection& selection, const Style& style);

/// `EU honey law, at most 20%: met`; `not sure` where the range of the water reaches over the limit.
std::string limit_text(const Water& water, const handbook::MoistureLimit& limit);

}  // namespace waxtab
