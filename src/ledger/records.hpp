#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "ledger/ledger.hpp"

namespace waxtab {

/// How a record shows a field the law asks for that the journal does not have.
inline constexpr std::string_view not_noted = "not noted";

/// A medicine given to hives. Fields after SI 2013/2033 (Veterinary Medicines Regulations 2013) regs 17-19
/// and Regulation (EU) 2019/6 art. 108: product, batch, dates, length, quantity, supplier, withdrawal period
/// (zero is an entry), hives treated. Fields the journal lacks read `not noted`.
struct MedicineRecord {
    std::string substance;
    std::string method;
    Day first{};
    std::optional<Day> last;            ///< none while it is in
    std::optional<int> days;            ///< length of treatment; 1 for one given once
    std::string quantity;               ///< per hive
    std::string batch, supplier, withdrawal;
    std::vector<HiveId> hives;
    std::vector<FactId> facts;
    std::vector<std::string> missing;   ///< names of the fields that are not noted
};

/// Feed given to hives; nature, origin and amount after Regulation (EC) 852/2004 annex I.
struct FeedRecord {
    Day day{};
    std::string what, amount, origin;
    std::vector<HiveId> hives;
    std::vector<FactId> facts;
    std::vector<std::string> missing;
};

/// Disease that may touch food safety, Regulation (EC) 852/2004 annex I.
struct DiseaseRecord { Day day{}; std::string what, how; std::vector<HiveId> hives; std::vector<FactId> facts; };

/// Honey bought from or sold to others, Regulation (EC) 178/2002 art. 18: one step back, one step forward.
struct TradeRecord {
    Day day{};
    std::string lot, who;               ///< who: `not noted` when unsaid
    int jars = 0;
    Mass size, honey;
    bool in = false;                    ///< bought in; else gone out
    bool business = false;              ///< said to be a business; final consumers need not be named
    FactId fact = 0;
    bool at_place = false;              ///< `who` is the place it was sold at
};

/// The books food and veterinary law asks a beekeeper for. It lists what was noted; what must be kept, how
/// long, and what may be used is for local law, the label and the prescribing vet to say.
struct Records {
    std::vector<MedicineRecord> medicines;   ///< by first day
    std::vector<FeedRecord> feeds;           ///< by day
    std::vector<DiseaseRecord> diseases;
    std::vector<TradeRecord> trade;
};

/// The records as of `history.on`.
Records records(const Journal& journal, const History& history, const Ledger& ledger);

}  // namespace waxtab
