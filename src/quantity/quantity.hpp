#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include <date/date.h>

namespace waxtab {

/// A calendar day; the keeper's own, no time zone.
using Day = date::sys_days;

/// `2026-06-03`.
std::string iso(Day day);
/// The day of an ISO date, nothing if it is not one or does not exist.
std::optional<Day> day_from_iso(std::string_view text);
/// Whole days from `from` to `to`.
inline int days_between(Day from, Day to) { return static_cast<int>((to - from).count()); }

/// What kind of amount a measure is, and the base unit its integer counts.
enum class Dimension : std::uint8_t {
    none,
    mass,         ///< nanograms (an ounce is exactly 28 349 523 125)
    volume,       ///< nanolitres (a US gallon is exactly 3 785 411 784)
    share,        ///< permille of a whole
    count,        ///< thousandths, so that 6.5 frames are exact
    temperature,  ///< thousandths of a degree Celsius
    index,        ///< refractive index, 1/100 000
    duration,     ///< days
};

/// The unit a measure was written in; decides how it is printed back.
enum class Unit : std::uint8_t {
    none,
    kilogram, gram, pound, ounce, tonne,
    litre, millilitre, us_gallon, imperial_gallon, us_quart, imperial_quart, us_pint, imperial_pint,
    percent, fraction, of_frames,  ///< a share as %, as a word or fraction, or as n of m frames
    piece, frame, seam, side,
    celsius, fahrenheit,
    refractive_index,
    day,
};

/// An amount as written: base-unit integer, with the range the words themselves left open
/// (`75-80 %`, `at least 70 %`, `about half`). low <= amount <= high.
struct Measure {
    Dimension dimension = Dimension::none;
    Unit unit = Unit::none;
    std::int64_t amount = 0;
    std::int64_t low = 0;
    std::int64_t high = 0;
    /// For `n of m frames`: m, else 0.
    int of = 0;
    /// Said with about, roughly, ~, ish.
    bool about = false;

    bool said() const { return dimension != Dimension::none; }
    friend bool operator==(const Measure&, const Measure&) = default;
};

/// An exact mass. Sums close exactly; only what is shown is rounded.
struct Mass {
    std::int64_t ng = 0;

    static constexpr Mass grams(std::int64_t g) { return {g * 1'000'000'000}; }
    /// Rounded to the gram: what estimates hand on.
    static Mass from_kilograms(double kg);
    double kilograms() const { return static_cast<double>(ng) * 1e-12; }
    /// Rounded half away from zero.
    std::int64_t whole_grams() const;
    friend constexpr auto operator<=>(const Mass&, const Mass&) = default;
    friend constexpr Mass operator+(Mass a, Mass b) { return {a.ng + b.ng}; }
    friend constexpr Mass operator-(Mass a, Mass b) { return {a.ng - b.ng}; }
    Mass& operator+=(Mass b) { return ng += b.ng, *this; }
    Mass& operator-=(Mass b) { return ng -= b.ng, *this; }
};

/// A count of whole things, not left open: `5`, neither `4-5` nor `about 5` nor `4.5`.
inline bool is_whole(const Measure& m) { return m.dimension == Dimension::count && m.low == m.high && m.amount % 1000 == 0; }

/// Base-unit size of one `unit`; 0 for units without a fixed size (Fahrenheit).
std::int64_t unit_size(Unit unit);
Dimension dimension_of(Unit unit);
/// The unit's sign as printed and as read back: `kg`, `lb`, `L`, `%`, `C`.
std::string_view unit_sign(Unit unit);

/// A measure of `number` (decimal digits, `.` or `,` as the decimal sign, no sign) in `unit`;
/// nothing when it is not a number or does not fit.
std::optional<Measure> measure(std::string_view number, Unit unit);
/// A share of n parts in m, `n <= m`, rounded to the permille.
Measure share_of(std::int64_t thousandths_n, int m, Unit unit);
Measure percent(double value);

/// The same number of imperial gallons, quarts or pints where US ones stood; any other measure as it is. Sizes: see `unit_size`.
Measure in_imperial(Measure measure);

/// The number of a measure in its own unit, shortest exact decimal: `24`, `17.8`.
std::string number_text(const Measure& measure);
/// The measure as the notation writes it: `24 lb`, `70%`, `7 of 9`, `75-80%`.
std::string text_of(const Measure& measure);

/// The unit reports print masses in.
enum class MassUnit : std::uint8_t { kilogram, pound };
/// `12.3 kg` or `27.1 lb`, rounded half away from zero to `decimals` places.
std::string text_of(Mass mass, MassUnit unit, int decimals = 1);
/// The bare number of the above.
std::string number_text(Mass mass, MassUnit unit, int decimals = 1);

}  // namespace waxtab
