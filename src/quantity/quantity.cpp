#include "quantity/quantity.hpp"

#include <charconv>
#include <cmath>

#include <fmt/format.h>

namespace waxtab {

namespace {

struct UnitRow {
    Unit unit;
    Dimension dimension;
    std::int64_t size;
    std::string_view sign;
};

// Exact sizes: international yard and pound (1959), litre and gallons as NIST Handbook 44 appendix C
// and the UK Units of Measurement Regulations 1995 give them.
constexpr UnitRow unit_rows[] = {
    {Unit::none, Dimension::none, 1, ""},
    {Unit::kilogram, Dimension::mass, 1'000'000'000'000, "kg"},
    {Unit::gram, Dimension::mass, 1'000'000'000, "g"},
    {Unit::pound, Dimension::mass, 453'592'370'000, "lb"},
    {Unit::ounce, Dimension::mass, 28'349'523'125, "oz"},
    {Unit::tonne, Dimension::mass, 1'000'000'000'000'000, "t"},
    {Unit::litre, Dimension::volume, 1'000'000'000, "L"},
    {Unit::millilitre, Dimension::volume, 1'000'000, "ml"},
    {Unit::us_gallon, Dimension::volume, 3'785'411'784, "US gal"},
    {Unit::imperial_gallon, Dimension::volume, 4'546'090'000, "imp gal"},
    {Unit::us_quart, Dimension::volume, 946'352'946, "US qt"},
    {Unit::imperial_quart, Dimension::volume, 1'136'522'500, "imp qt"},
    {Unit::us_pint, Dimension::volume, 473'176'473, "US pt"},
    {Unit::imperial_pint, Dimension::volume, 568'261'250, "imp pt"},
    {Unit::percent, Dimension::share, 10, "%"},
    {Unit::fraction, Dimension::share, 1000, ""},
    {Unit::of_frames, Dimension::share, 1000, "frames"},
    {Unit::piece, Dimension::count, 1000, ""},
    {Unit::frame, Dimension::count, 1000, "frames"},
    {Unit::seam, Dimension::count, 1000, "seams"},
    {Unit::side, Dimension::count, 500, "sides"},
    {Unit::celsius, Dimension::temperature, 1000, "C"},
    {Unit::fahrenheit, Dimension::temperature, 1000, "F"},
    {Unit::refractive_index, Dimension::index, 100'000, "RI"},
    {Unit::day, Dimension::duration, 1, "days"},
};

const UnitRow& row(Unit unit) {
    for (const UnitRow& r : unit_rows)
        if (r.unit == unit) return r;
    return unit_rows[0];
}

/// Digits and decimal places of a written number, as an integer and a power of ten.
struct Decimal {
    std::int64_t digits = 0;
    int places = 0;
};

std::optional<Decimal> decimal(std::string_view number) {
    Decimal d;
    bool point = false, any = false;
    for (const char c : number) {
        if (c == '.' || c == ',') {
            if (point) return {};
            point = true;
        } else if (c >= '0' && c <= '9') {
            if (d.digits > 99'999'999'999) return {};
            d.digits = d.digits * 10 + (c - '0');
            d.places += point;
            any = true;
        } else {
            return {};
        }
    }
    if (!any) return {};
    return d;
}

/// number * size, rounded half up; nothing when it does not fit.
std::optional<std::int64_t> scaled(Decimal d, std::int64_t size) {
    __extension__ using Wide = __int128;
    Wide power = 1;
    for (int i = 0; i < d.places; ++i) power *= 10;
    const Wide result = (static_cast<Wide>(d.digits) * size + power / 2) / power;
    if (result > INT64_MAX) return {};
    return static_cast<std::int64_t>(result);
}

std::int64_t to_celsius(std::int64_t thousandths_fahrenheit) {
    const std::int64_t ninths = (thousandths_fahrenheit - 32'000) * 5;
    return (ninths >= 0 ? ninths + 4 : ninths - 4) / 9;
}

std::int64_t to_fahrenheit(std::int64_t thousandths_celsius) {
    const std::int64_t fifths = thousandths_celsius * 9;
    return (fifths >= 0 ? fifths + 2 : fifths - 2) / 5 + 32'000;
}

/// amount/size as the shortest decimal of at most `places` places.
std::string shortest(std::int64_t amount, std::int64_t size, int places) {
    __extension__ using Wide = __int128;
    Wide power = 1;
    for (int i = 0; i < places; ++i) power *= 10;
    const bool negative = amount < 0;
    const Wide whole = negative ? -static_cast<Wide>(amount) : amount;
    const Wide scaled = (whole * power * 2 + size) / (2 * static_cast<Wide>(size));
    std::string text = fmt::format("{}.{:0{}}", static_cast<std::int64_t>(scaled / power),
                                   static_cast<std::int64_t>(scaled % power), places);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    return negative && text != "0" ? '-' + text : text;
}

std::string number_of(std::int64_t amount, Unit unit) {
    if (unit == Unit::fahrenheit) return shortest((to_fahrenheit(amount) + 50) / 100, 10, 1);
    return shortest(amount, row(unit).size, row(unit).dimension == Dimension::index ? 5 : 9);
}

}  // namespace

std::string iso(Day day) {
    const date::year_month_day d{day};
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(d.year()), static_cast<unsigned>(d.month()),
                       static_cast<unsigned>(d.day()));
}

std::optional<Day> day_from_iso(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return {};
    int y = 0;
    unsigned m = 0, d = 0;
    const auto number = [&](std::size_t from, std::size_t length, auto& into) {
        const char* end = text.data() + from + length;
        return std::from_chars(text.data() + from, end, into).ptr == end;
    };
    if (!number(0, 4, y) || !number(5, 2, m) || !number(8, 2, d)) return {};
    const date::year_month_day ymd{date::year{y}, date::month{m}, date::day{d}};
    if (!ymd.ok()) return {};
    return Day{ymd};
}

Mass Mass::from_kilograms(double kg) { return grams(std::llround(kg * 1000.0)); }

std::int64_t Mass::whole_grams() const {
    constexpr std::int64_t gram = 1'000'000'000;
    return (ng >= 0 ? ng + gram / 2 : ng - gram / 2) / gram;
}

std::int64_t unit_size(Unit unit) { return row(unit).size; }
Dimension dimension_of(Unit unit) { return row(unit).dimension; }
std::string_view unit_sign(Unit unit) { return row(unit).sign; }

std::optional<Measure> measure(std::string_view number, Unit unit) {
    const auto d = decimal(number);
    if (!d) return {};
    const auto amount = scaled(*d, unit_size(unit));
    if (!amount) return {};
    const std::int64_t base = unit == Unit::fahrenheit ? to_celsius(*amount) : *amount;
    return Measure{dimension_of(unit), unit, base, base, base, 0, false};
}

Measure share_of(std::int64_t thousandths_n, int m, Unit unit) {
    const std::int64_t amount = (thousandths_n + m / 2) / m;
    return {Dimension::share, unit, amount, amount, amount, m, false};
}

Measure percent(double value) {
    const auto amount = static_cast<std::int64_t>(std::llround(value * 10.0));
    return {Dimension::share, Unit::percent, amount, amount, amount, 0, false};
}

Measure in_imperial(Measure m) {
    const Unit us = m.unit;
    if (us == Unit::us_gallon) m.unit = Unit::imperial_gallon;
    else if (us == Unit::us_quart) m.unit = Unit::imperial_quart;
    else if (us == Unit::us_pint) m.unit = Unit::imperial_pint;
    else return m;
    const auto from = static_cast<std::uint64_t>(unit_size(us)), to = static_cast<std::uint64_t>(unit_size(m.unit));
    const auto scaled = [&](std::int64_t amount) {
        const auto a = static_cast<std::uint64_t>(amount);   // not negative; whole units apart, that nothing runs over
        return amount == INT64_MAX ? amount : static_cast<std::int64_t>(a / from * to + (a % from * to + from / 2) / from);
    };
    m.amount = scaled(m.amount), m.low = scaled(m.low), m.high = scaled(m.high);
    return m;
}

std::string number_text(const Measure& m) { return number_of(m.amount, m.unit); }

std::string text_of(const Measure& m) {
    if (m.unit == Unit::of_frames && m.of > 0)
        return fmt::format("{} of {}", shortest((m.amount * m.of + 50) / 100, 10, 1), m.of);
    const Unit unit = m.unit == Unit::fraction || m.unit == Unit::of_frames ? Unit::percent : m.unit;
    const bool about = m.about && m.dimension != Dimension::share && m.amount - m.low == m.amount / 10 && m.high - m.amount == m.amount / 10;   // as far as `about` goes
    const bool least = m.dimension != Dimension::share && m.low == m.amount && m.high == INT64_MAX;
    std::string text = least ? "at least " + number_of(m.amount, unit) : about ? "about " + number_of(m.amount, unit)
                       : m.low < m.amount && m.amount < m.high
                           ? number_of(m.low, unit) + '-' + number_of(m.high, unit)
                           : number_of(m.amount, unit);
    const std::string_view sign = unit == Unit::day && text == "1" ? "day" : unit_sign(unit);
    const bool glued = unit == Unit::percent || unit == Unit::celsius || unit == Unit::fahrenheit;
    if (!sign.empty() && !glued) text += ' ';
    return text.append(sign);
}

std::string number_text(Mass mass, MassUnit unit, int decimals) {
    const std::int64_t size = unit_size(unit == MassUnit::pound ? Unit::pound : Unit::kilogram);
    __extension__ using Wide = __int128;
    Wide power = 1;
    for (int i = 0; i < decimals; ++i) power *= 10;
    const bool negative = mass.ng < 0;
    const Wide whole = negative ? -static_cast<Wide>(mass.ng) : mass.ng;
    const Wide rounded = (whole * power * 2 + size) / (2 * static_cast<Wide>(size));
    const auto units = static_cast<std::int64_t>(rounded / power);
    const auto rest = static_cast<std::int64_t>(rounded % power);
    const char* sign = negative && rounded != 0 ? "-" : "";
    return decimals == 0 ? fmt::format("{}{}", sign, units) : fmt::format("{}{}.{:0{}}", sign, units, rest, decimals);
}

std::string text_of(Mass mass, MassUnit unit, int decimals) {
    return number_text(mass, unit, decimals) + (unit == MassUnit::pound ? " lb" : " kg");
}

}  // namespace waxtab
