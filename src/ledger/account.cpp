#include <algorithm>
#include <map>

#include "ledger/blend.hpp"
#include "ledger/books.hpp"
#include "ledger/extraction.hpp"
#include "ledger/going.hpp"
#include "ledger/harvesting.hpp"

namespace waxtab {

namespace {

using Booking = void (*)(Books&, FactId);

Booking booking_of(Kind kind) {
    switch (kind) {
        case Kind::opening_stock: return open_stock;
        case Kind::bought_in: return buy_in;
        case Kind::extracted: return extract;
        case Kind::combs_packed: return pack_combs;
        case Kind::moisture:
        case Kind::honey_index: return read_water;
        case Kind::drained: return drain;
        case Kind::blended: return blend;
        case Kind::bulk_moved: return move_bulk;
        case Kind::jars: return fill_jars;
        case Kind::gone_out: return go_out;
        case Kind::come_back: return come_back;
        case Kind::stocktake: return take_stock;
        case Kind::wax: return gather_wax;
        case Kind::best_before: return date_lot;
        case Kind::fermenting: return mark_fermenting;
        default: return nullptr;
    }
}

bool opens_lot(Kind kind) {
    return kind == Kind::extracted || kind == Kind::opening_stock || kind == Kind::bought_in || kind == Kind::combs_packed ||
           kind == Kind::blended;
}

/// Names of the lots a fact needs to be there.
std::vector<std::string> needs(const Fact& f) {
    if (f.kind == Kind::blended) return f.lots;
    if (opens_lot(f.kind) || f.lot.empty()) return {};
    return {f.lot};
}

/// On one day, what names a lot that is only opened further down (in another file, say) comes after it.
class DayOrder {
public:
    explicit DayOrder(Books& books) : books_(books) {}

    void book(const std::vector<FactId>& day) {
        for (std::size_t i = 0; i < day.size(); ++i) {
            if (opened_below(day, i)) held_.push_back(day[i]);
            else book_one(day[i]);
        }
        release(true);
    }

private:
    bool opened_below(const std::vector<FactId>& day, std::size_t i) const {
        for (const std::string& name : needs(books_.fact(day[i]))) {
            if (find_lot(books_, name) != no_lot) continue;
            for (std::size_t k = i + 1; k < day.size(); ++k) {
                const Fact& f = books_.fact(day[k]);
                if (opens_lot(f.kind) && folded(f.lot) == folded(name)) return true;
            }
        }
        return false;
    }

    void book_one(FactId fact) {
        if (const Booking booking = booking_of(books_.fact(fact).kind)) booking(books_, fact);
        if (opens_lot(books_.fact(fact).kind)) release(false);
    }

    /// Books what was held back and now has its lots; all of it at the end of the day.
    void release(bool all) {
        std::vector<FactId> held;
        held.swap(held_);
        for (const FactId fact : held) {
            const auto lots = needs(books_.fact(fact));
            const bool there = std::all_of(lots.begin(), lots.end(), [&](const std::string& n) { return find_lot(books_, n) != no_lot; });
            if (there || all) book_one(fact);
            else held_.push_back(fact);
        }
    }

    Books& books_;
    std::vector<FactId> held_;
};

/// All that came off by the day waits; then the day's honey facts.
void book_day(Books& books, DayOrder& order, const std::vector<FactId>& day) {
    books.go_to(books.fact(day.front()).happened);
    order.book(day);
}

void book_days(Books& books) {
    DayOrder order{books};
    const auto& facts = books.history.honey_facts;
    std::vector<FactId> day;
    for (std::size_t i = 0; i < facts.size(); ++i) {
        day.push_back(facts[i]);
        const bool last = i + 1 == facts.size() || books.fact(facts[i + 1]).happened != books.fact(facts[i]).happened;
        if (!last) continue;
        book_day(books, order, day);
        day.clear();
    }
    books.go_to(books.ledger.on);
}

void total_up(Ledger& ledger) {
    for (const Lot& lot : ledger.lots) {
        ledger.opening += lot.opening;
        ledger.bought += lot.bought;
        ledger.drained += lot.drained;
        ledger.beyond += lot.beyond + lot.jars_beyond();
        ledger.adjusted += lot.adjusted + lot.jars_adjusted();
        ledger.jarred += lot.in_jars;
        ledger.gone += lot.bulk_gone + lot.jars_gone();
        ledger.spoiled += lot.spoiled + lot.jars_spoiled();
        ledger.left_in_jars += lot.left_in_jars();
        ledger.left_in_bulk += lot.bulk;
    }
}

void total_hives(Ledger& ledger) {
    std::map<HiveId, HiveYield> by_hive;
    for (const Harvest& h : ledger.harvests) {
        const auto [at, fresh] = by_hive.try_emplace(h.hive);
        HiveYield& y = at->second;
        y.honey = fresh ? h.honey : y.honey + h.honey;
        y.hive = h.hive;
        y.supers += h.supers;
        y.frames += h.frames;
        add_once(y.because, h.because);
    }
    for (auto& [hive, yield] : by_hive) ledger.hives.push_back(std::move(yield));
}

Mass sum_of_jars(const Lot& lot, int JarRow::*count) {
    Mass sum{};
    for (const JarRow& row : lot.jars) sum += times(row.size, row.*count);
    return sum;
}

}  // namespace

Mass Lot::left_in_jars() const { return sum_of_jars(*this, &JarRow::left); }
Mass Lot::jars_spoiled() const { return sum_of_jars(*this, &JarRow::spoiled); }
Mass Lot::jars_gone() const { return sum_of_jars(*this, &JarRow::out) - jars_spoiled(); }
Mass Lot::jars_adjusted() const { return sum_of_jars(*this, &JarRow::adjusted); }
Mass Lot::jars_beyond() const { return sum_of_jars(*this, &JarRow::beyond); }

Ledger account(const Journal& journal, const History& history, const Estimates& estimates) {
    Books books{journal, history, estimates};
    book_days(books);
    book_waiting(books);
    total_hives(books.ledger);
    total_up(books.ledger);
    return std::move(books.ledger);
}

}  // namespace waxtab
