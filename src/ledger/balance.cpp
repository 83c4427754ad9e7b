#include <fmt/format.h>

#include "ledger/books.hpp"
#include "ledger/shares.hpp"

namespace waxtab {

namespace {

/// Equations of the books checked one by one; those that fail are put in words.
class Closing {
public:
    void equal(std::string_view what, Mass left, Mass right) {
        if (left != right) failed.push_back(fmt::format("{}: {} ng against {} ng", what, left.ng, right.ng));
    }
    void true_that(std::string_view what, bool holds) {
        if (!holds) failed.push_back(std::string{what});
    }
    std::vector<std::string> failed;
};

bool ordered(const MassRange& m) { return m.low <= m.value && m.value <= m.high; }

void check_jars(Closing& c, const Lot& lot) {
    Mass filled{};
    for (const JarRow& row : lot.jars) {
        filled += times(row.size, row.filled);
        c.true_that("jars of " + lot.name, row.filled + row.adjusted + row.beyond == row.out + row.left);
        c.true_that("no jars below nothing in " + lot.name, row.left >= 0 && row.out >= row.spoiled && row.spoiled >= 0);
    }
    c.equal("filled jars of " + lot.name, filled, lot.in_jars);
    c.equal("honey in jars of " + lot.name, lot.in_jars + lot.jars_beyond() + lot.jars_adjusted(),
            lot.jars_gone() + lot.jars_spoiled() + lot.left_in_jars());
}

void check_goings(Closing& c, const Lot& lot) {
    Mass out{};
    for (const Going& g : lot.goings) out += g.how == "come back" ? Mass{-g.honey.ng} : g.honey;
    c.equal("goings of " + lot.name, out, lot.bulk_gone + lot.spoiled + lot.jars_gone() + lot.jars_spoiled());
}

void check_shares(Closing& c, const Lot& lot) {
    Mass value{};
    for (const LotShare& s : lot.shares) {
        value += s.honey.value;
        c.true_that("a share of " + lot.name + " outside its range", ordered(s.honey));
        c.true_that("a share of " + lot.name + " above the lot", s.honey.high <= lot.weight.high);
        c.true_that("a share of " + lot.name + " below nothing", s.honey.low.ng >= 0);
    }
    c.equal("shares of " + lot.name, value, lot.weight.value);
    c.true_that("weight of " + lot.name + " outside its range", ordered(lot.weight));
}

void check_lot(Closing& c, const Lot& lot) {
    c.equal("weight of " + lot.name, lot.weight.value, lot.opening + lot.bought + lot.harvested.value + lot.blended_in);
    c.equal("bulk of " + lot.name, lot.weight.value + lot.drained + lot.beyond + lot.adjusted,
            lot.in_jars + lot.blended_out + lot.bulk_gone + lot.spoiled + lot.bulk);
    c.true_that("no bulk below nothing in " + lot.name, lot.bulk.ng >= 0);
    check_jars(c, lot);
    check_goings(c, lot);
    check_shares(c, lot);
}

void check_totals(Closing& c, const Ledger& l) {
    c.equal("honey in and out", l.opening + l.bought + l.extracted + l.drained + l.beyond + l.adjusted,
            l.gone + l.spoiled + l.left_in_jars + l.left_in_bulk);
    Mass harvested{}, own{}, in{}, out{}, hives{}, waiting{};
    for (const Lot& lot : l.lots) {
        harvested += lot.harvested.value;
        in += lot.blended_in;
        out += lot.blended_out;
    }
    for (const Harvest& h : l.harvests) (h.lot.empty() ? waiting : own) += h.honey.value;
    for (const HiveYield& h : l.hives) hives += h.honey.value;
    c.equal("extracted", harvested, l.extracted);
    c.equal("blended", in, out);
    c.equal("waiting", waiting, l.waiting_honey.value);
    c.equal("hives", hives, own + waiting);
    c.true_that("harvests beyond what was extracted", own <= l.extracted);
}

}  // namespace

std::vector<std::string> unbalanced(const Ledger& ledger) {
    Closing c;
    for (const Lot& lot : ledger.lots) check_lot(c, lot);
    check_totals(c, ledger);
    return c.failed;
}

}  // namespace waxtab
