#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "ledger/blend.hpp"

namespace waxtab {

namespace {

/// Water read off a refractometer, in permille; the index corrected to 20 C when a temperature was noted.
struct Reading {
    std::int64_t low = 0, value = 0, high = 0;
};

std::int64_t permille(double percent) { return std::llround(percent * 10); }

void warn_index(Books& books, FactId fact) {
    Diagnostic& d = say(books, Severity::error, "index-out-of-table", fact, "no water content belongs to this refractive index");
    d.label = "the table reaches from 1.4740 (25% water) to 1.5044 (13%)";
    d.hint = "write the index and the temperature of the honey, 5 to 45 C: 'refractive index 1.4915 at 24C lot A'";
}

std::optional<Reading> from_index(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    const double index = static_cast<double>(f.value.amount) / 100'000;
    const bool warm_known = f.second.dimension == Dimension::temperature;
    const double celsius = warm_known ? static_cast<double>(f.second.amount) / 1000 : 20.0;
    const auto water = handbook::water_percent(index, celsius);
    if (!water) {
        warn_index(books, fact);
        return {};
    }
    if (!warm_known) assume(books, fact, "honey at 20 C (temperature not said)");
    const std::int64_t v = permille(*water);
    return Reading{v, v, v};
}

std::optional<Reading> reading_of(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (f.kind == Kind::honey_index) return from_index(books, fact);
    if (f.value.dimension != Dimension::share) return {};
    return Reading{f.value.low, f.value.amount, f.value.high};
}

void warn_odd(Books& books, FactId fact, std::int64_t value) {
    // Readings outside the refractometer table are not water of honey: S. Bogdanov, Book of Honey, ch. 4.
    if (value >= permille(handbook::least_water_percent) && value <= permille(handbook::most_water_percent)) return;
    Diagnostic& d = say(books, Severity::warning, "moisture-odd", fact, fmt::format("moisture {:.1f}% is outside what honey has", static_cast<double>(value) / 10));
    d.label = "13 to 25% is what refractometers for honey show";
    d.hint = "if the meter showed sugar (Brix), water is less than 100 minus that; look at its manual";
}

/// Several readings of one lot span a range, since one reading is one sample.
Water joined(const std::optional<Water>& before, const Reading& r, FactId fact) {
    Water w{r.low, r.value, r.high, true, {}};
    if (before && before->read) {
        w.low = std::min(w.low, before->low);
        w.high = std::max(w.high, before->high);
        w.because = before->because;
    }
    add_once(w.because, fact);
    return w;
}

struct Sums {
    double kg = 0, low = 0, value = 0, high = 0;
    bool any = false, all = true;
};

Sums sums_of(const std::vector<WetPart>& parts) {
    Sums s;
    for (const WetPart& p : parts) {
        const double kg = p.honey.kilograms();
        s.kg += kg;
        s.any = s.any || p.water;
        s.all = s.all && p.water;
        s.low += kg * (p.water ? static_cast<double>(p.water->low) : 10 * handbook::least_water_percent);
        s.high += kg * (p.water ? static_cast<double>(p.water->high) : 10 * handbook::most_water_percent);
        if (p.water) s.value += kg * static_cast<double>(p.water->value);
    }
    return s;
}

}  // namespace

std::optional<Water> balance_of(const std::vector<WetPart>& parts) {
    const Sums s = sums_of(parts);
    if (!s.any || s.kg <= 0) return {};
    double known = 0;
    for (const WetPart& p : parts) known += p.water ? p.honey.kilograms() : 0;
    // Unread parts stand in the value with the mean of the read ones; the range says what that is worth.
    Water w{std::llround(s.low / s.kg), std::llround(s.value / known), std::llround(s.high / s.kg), false, {}};
    w.low = std::min(w.low, w.value);
    w.high = std::max(w.high, w.value);
    for (const WetPart& p : parts)
        if (p.water) add_once(w.because, p.water->because);
    return w;
}

void read_water(Books& books, FactId fact) {
    const Fact& f = books.fact(fact);
    if (f.box.by != BoxChoice::By::unsaid || f.hive != no_hive) return;
    const LotId id = lot_for(books, fact, "moisture read", [](const Lot& l) { return l.bulk > Mass::grams(1); });
    if (id == no_lot) return;
    const auto reading = reading_of(books, fact);
    if (!reading) return;
    warn_odd(books, fact, reading->value);
    Lot& lot = books.ledger.lots[id];
    lot.moisture_permille = reading->value;
    add_once(lot.moisture_facts, fact);
    lot.water = joined(lot.water, *reading, fact);
}

std::optional<std::array<handbook::LimitAnswer, 4>> moisture_answers(const Lot& lot, bool heather) {
    if (!lot.water) return {};
    return handbook::limit_answers(static_cast<double>(lot.water->value) / 10, heather);
}

}  // namespace waxtab
