#pragma once
#include <cstdint>
#include <vector>

#include "ledger/ledger.hpp"

namespace waxtab {

/// `total` (>= 0) split in proportion to `weights` (each >= 0), by largest remainder, ties to the first. Parts
/// are whole grams but for one that takes what the total has beyond whole grams, so that they sum to the total
/// to the last nanogram, and to its grams as shown. Equal parts when all weights are zero; empty for no weights.
std::vector<Mass> split(Mass total, const std::vector<Mass>& weights);

/// What one hive brought to an extraction, by weighing or estimate.
struct Claim {
    HiveId hive = no_hive;
    MassRange honey;
    std::vector<std::size_t> takings;
    std::vector<FactId> because;
};

/// The claims as shares of a lot whose weight is known: values in proportion to the claims, summing to
/// `total.value`. A share's range follows from its own claim and from those of the others together, taken as
/// independent (an error that all share cancels in a proportion); it lies within 0 and the total. Shares of an
/// exact total have no range when no claim has one.
std::vector<LotShare> share_out(const MassRange& total, const std::vector<Claim>& claims);

/// The claims as they are: for a lot that was not weighed.
std::vector<LotShare> shares_of(const std::vector<Claim>& claims);

/// Adds shares to those of a lot, hive by hive; hives in journal order, unknown ones last.
void merge_shares(std::vector<LotShare>& into, const std::vector<LotShare>& more);

/// The shares of `part` taken evenly out of honey with these `shares`: what a blending carries along.
std::vector<LotShare> portion(const std::vector<LotShare>& shares, Mass part);

MassRange sum(const std::vector<LotShare>& shares);

}  // namespace waxtab
