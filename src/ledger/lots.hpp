#pragma once
#include <functional>
#include <string>
#include <string_view>

#include "ledger/books.hpp"

namespace waxtab {

/// Index into Ledger::lots.
using LotId = std::size_t;
inline constexpr LotId no_lot = static_cast<LotId>(-1);

/// The lot of this name, large and small letters alike.
LotId find_lot(const Books& books, std::string_view name);
/// A lot's name as it is compared: ASCII letters in lower case.
std::string folded(std::string_view name);

/// The named lot, opened if there is none; `opened` is its first day.
LotId lot_named(Books& books, const std::string& name, Day opened);
/// A new lot named after `stem`, with b, c, ... behind it while the name is taken.
LotId lot_named_for(Books& books, const std::string& stem, Day opened);

/// The lot a fact names; an error and no_lot when the ledger does not know it.
LotId lot_said(Books& books, FactId fact);

/// The lot a fact speaks of. When it names none: the only lot that `fits`, else the latest, with a warning
/// when several fit and the latest was not opened the same day. An error and no_lot when there is no lot at all.
LotId lot_for(Books& books, FactId fact, std::string_view doing, const std::function<bool(const Lot&)>& fits);

/// Takes `need` out of the lot's bulk. When the books have less, the rest is booked as beyond: a warning within
/// the range of an estimated lot or the 100 g a scale is good for, else an error that cites the lot's lines.
/// `what` says what took it: `100 jars of 454 g are 45.40 kg`.
void draw_bulk(Books& books, LotId lot, Mass need, FactId fact, const std::string& what);

/// Cites lines of a lot, saying of each what was done there: `lot A was extracted here`.
void cite_lot(const Books& books, Diagnostic& diagnostic, const Lot& lot, const std::vector<FactId>& facts);

}  // namespace waxtab
