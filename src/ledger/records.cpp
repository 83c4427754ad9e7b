#include "ledger/records.hpp"

#include <algorithm>
#include <tuple>

#include <fmt/format.h>

#include "ledger/books.hpp"
#include "ledger/medicine_note.hpp"

namespace waxtab {

namespace {

void set_or_missing(std::string& field, std::string_view name, std::vector<std::string>& missing) {
    if (!field.empty()) return;
    field = not_noted;
    missing.emplace_back(name);
}

std::string quantity_of(const Fact& f) {
    std::string text;
    if (f.value.said()) text = text_of(f.value);
    else if (f.kind == Kind::treatment_on && f.count > 0) text = fmt::format("{} {}", f.count, f.count == 1 ? "strip" : "strips");
    return text;
}

/// A treatment of one hive. The days' end is the last day the medicine was in.
MedicineRecord medicine(const Journal& journal, HiveId hive, const Treating& t) {
    const Fact& f = journal.facts[t.fact];
    const MedicineNote note = medicine_note(f.text);
    MedicineRecord r;
    r.substance = t.substance;
    r.method = std::string{f.manner};
    r.first = t.from;
    r.last = t.to;
    if (t.to) r.days = std::max(1, days_between(t.from, *t.to));
    r.quantity = quantity_of(f);
    r.supplier = note.supplier;
    r.withdrawal = note.withdrawal;
    // Free words beside a substance are the batch; alone they are the medicine itself.
    const bool alone = f.detail.empty();
    if (alone && !note.product.empty()) r.substance = note.product;
    r.batch = note.batch.empty() && !alone ? note.product : note.batch;
    r.hives = {hive};
    r.facts = {t.fact};
    return r;
}

auto same_treatment(const MedicineRecord& r) {
    return std::tie(r.first, r.substance, r.method, r.last, r.quantity, r.batch, r.supplier, r.withdrawal);
}

void finish(MedicineRecord& r) {
    set_or_missing(r.substance, "substance", r.missing);
    set_or_missing(r.quantity, "quantity", r.missing);
    set_or_missing(r.batch, "batch", r.missing);
    set_or_missing(r.supplier, "supplier", r.missing);
    set_or_missing(r.withdrawal, "withdrawal period", r.missing);
}

std::vector<MedicineRecord> medicines(const Journal& journal, const History& history) {
    std::vector<MedicineRecord> all;
    for (const HiveHistory& h : history.hives)
        for (const Treating& t : h.treatings)
            if (t.fact != set_up_fact) all.push_back(medicine(journal, h.hive, t));
    std::stable_sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return same_treatment(a) < same_treatment(b); });
    std::vector<MedicineRecord> joined;
    for (MedicineRecord& r : all) {
        if (joined.empty() || same_treatment(joined.back()) != same_treatment(r)) {
            joined.push_back(std::move(r));
            continue;
        }
        joined.back().hives.push_back(r.hives.front());
        add_once(joined.back().facts, r.facts);
    }
    for (MedicineRecord& r : joined) finish(r);
    return joined;
}

/// Facts of a kind about hives, one record for alike ones of a day.
std::vector<FactId> facts_of(const Journal& journal, const History& history, Kind kind) {
    std::vector<FactId> out;
    for (std::size_t i = 0; i < journal.facts.size(); ++i) {
        const Fact& f = journal.facts[i];
        if (f.kind == kind && f.noted <= history.on && f.happened <= history.on) out.push_back(static_cast<FactId>(i));
    }
    return out;
}

FeedRecord feed(const Fact& f, FactId id) {
    FeedRecord r;
    r.day = f.happened;
    r.what = f.detail.empty() ? "feed" : std::string{f.detail};
    if (!f.manner.empty()) r.what += fmt::format(" {}", f.manner);
    r.amount = f.value.said() ? text_of(f.value) : "";
    const MedicineNote note = medicine_note(f.text);
    r.origin = note.supplier.empty() ? note.product : note.supplier;
    set_or_missing(r.amount, "amount", r.missing);
    set_or_missing(r.origin, "origin", r.missing);
    r.facts = {id};
    if (f.hive != no_hive) r.hives = {f.hive};
    return r;
}

template <class Record, class Same>
void join(std::vector<Record>& records, Record record, const Same& same) {
    const auto there = std::find_if(records.begin(), records.end(), [&](const Record& r) { return same(r, record); });
    if (there == records.end()) {
        records.push_back(std::move(record));
        return;
    }
    there->hives.insert(there->hives.end(), record.hives.begin(), record.hives.end());
    add_once(there->facts, record.facts);
}

std::vector<FeedRecord> feeds(const Journal& journal, const History& history) {
    std::vector<FeedRecord> out;
    std::size_t today = 0;   // records of the day in hand start here; facts come in order of day
    for (const FactId id : facts_of(journal, history, Kind::feed)) {
        FeedRecord r = feed(journal.facts[id], id);
        if (out.empty() || out.back().day != r.day) today = out.size();
        std::vector<FeedRecord> day(out.begin() + static_cast<std::ptrdiff_t>(today), out.end());
        join(day, std::move(r), [](const FeedRecord& a, const FeedRecord& b) {
            return std::tie(a.day, a.what, a.amount, a.origin) == std::tie(b.day, b.what, b.amount, b.origin);
        });
        out.resize(today);
        out.insert(out.end(), day.begin(), day.end());
    }
    return out;
}

std::vector<DiseaseRecord> diseases(const Journal& journal, const History& history) {
    std::vector<DiseaseRecord> out;
    for (const FactId id : facts_of(journal, history, Kind::disease)) {
        const Fact& f = journal.facts[id];
        if (f.manner == "none") continue;
        DiseaseRecord r{f.happened, f.detail.empty() ? f.text : std::string{f.detail}, std::string{f.manner}, {}, {id}};
        if (f.hive != no_hive) r.hives = {f.hive};
        join(out, std::move(r), [](const DiseaseRecord& a, const DiseaseRecord& b) {
            return std::tie(a.day, a.what, a.how) == std::tie(b.day, b.what, b.how);
        });
    }
    return out;
}

TradeRecord sale(const Lot& lot, const Going& g) {
    TradeRecord r{g.day, lot.name, g.to, g.jars, g.size, g.honey, g.how == "come back", g.business, g.fact, g.at_place};
    if (r.who.empty()) r.who = not_noted;
    return r;
}

void add_purchases(const Journal& journal, const Ledger& ledger, std::vector<TradeRecord>& out) {
    for (const Lot& lot : ledger.lots) {
        for (const FactId id : lot.because) {
            const Fact& f = journal.facts[id];
            if (f.kind != Kind::bought_in) continue;
            const auto honey = honey_of(f.value);
            if (!honey) continue;
            const int jars = f.count > 0 ? f.count : 0;
            const Mass size = jars > 0 ? honey->value : Mass{};
            const Mass all = jars > 0 ? times(size, jars) : honey->value;
            out.push_back({f.happened, lot.name, f.text.empty() ? std::string{not_noted} : f.text, jars, size, all, true, true, id});
        }
    }
}

/// Bought, sold and come back; gifts, own use and spoiled honey are no trade.
std::vector<TradeRecord> trade(const Journal& journal, const Ledger& ledger) {
    std::vector<TradeRecord> out;
    add_purchases(journal, ledger, out);
    for (const Lot& lot : ledger.lots)
        for (const Going& g : lot.goings)
            if (g.how == "sold" || g.how == "come back") out.push_back(sale(lot, g));
    std::stable_sort(out.begin(), out.end(), [](const TradeRecord& a, const TradeRecord& b) {
        return std::tie(a.day, a.fact) < std::tie(b.day, b.fact);
    });
    return out;
}

}  // namespace

Records records(const Journal& journal, const History& history, const Ledger& ledger) {
    return {medicines(journal, history), feeds(journal, history), diseases(journal, history), trade(journal, ledger)};
}

}  // namespace waxtab
