// Stores: enough for winter in the keeper's climate, hunger in spring and between flows, colonies too small.
#include <algorithm>

#include <fmt/format.h>

#include "advice/rule.hpp"
#include "handbook/boxes.hpp"
#include "handbook/winter.hpp"

namespace waxtab {
namespace {

// ---- what is there --------------------------------------------------------------------------

/// Bees and brood in a colony going into winter, kg; from memory.
constexpr Range bees_kg{1.5, 2.5, 4.0};
/// One full brood frame where the box kind gives no figure, kg. Sources: BBKA News 216 (2 and 3 kg), Aumeier (2.2 kg).
constexpr Range frame_kg{1.8, 2.3, 3.2};

Range scale(const Range& r, double by) { return {r.low * by, r.value * by, r.high * by}; }

Range brood_frame_kg(const HiveView& hive) {
    const auto boxes = hive.all->history.brood_boxes_on(hive.id);
    if (boxes.empty()) return frame_kg;
    const Box& box = hive.all->history.boxes[static_cast<std::size_t>(boxes.front())];
    const BoxKind* kind = hive.all->kind(box);
    if (!kind || kind->full_kg <= 0 || kind->frames <= 0) return frame_kg;
    return scale({kind->full_low_kg, kind->full_kg, kind->full_high_kg}, 1.0 / kind->frames);
}

Range tare_kg(const HiveView& hive) {
    Range sum = bees_kg;
    for (const Standing& s : hive.history->stack) {
        if (s.what != StackPart::What::box) continue;
        const BoxKind* kind = hive.all->kind(hive.all->history.boxes[static_cast<std::size_t>(s.box)]);
        if (!kind) continue;
        sum = {sum.low + kind->tare_low_kg, sum.value + kind->tare_kg, sum.high + kind->tare_high_kg};
    }
    return sum;
}

struct Stores { Range kg; Seen seen; std::string words; };

std::optional<Stores> stores_noted(const HiveView& hive, int days) {
    const auto seen = hive.last(days, [](const Fact& f) {
        return (f.kind == Kind::stores || f.kind == Kind::hive_weight) && f.value.said();
    });
    if (!seen) return std::nullopt;
    const Measure& m = seen->it->value;
    const double amount = static_cast<double>(m.amount);
    if (m.dimension == Dimension::count)
        return Stores{scale(brood_frame_kg(hive), amount / 1000.0), *seen, text_of(m) + " of stores"};
    if (m.dimension != Dimension::mass) return std::nullopt;
    const double kg = amount * 1e-12;
    if (seen->it->kind == Kind::stores) return Stores{{kg, kg, kg}, *seen, text_of(m) + " of stores"};
    const Range tare = tare_kg(hive);
    return Stores{{std::max(0.0, kg - tare.high), std::max(0.0, kg - tare.value), std::max(0.0, kg - tare.low)}, *seen,
                  text_of(m) + " on the scale"};
}

handbook::Syrup syrup_kind(std::string_view detail) {
    if (detail == "thin syrup") return handbook::Syrup::thin;
    return detail == "syrup 3:2" ? handbook::Syrup::three_to_two : handbook::Syrup::thick;
}

/// Stores that came of what was fed since.
double fed_kg_since(const HiveView& hive, Day day, std::vector<FactId>& facts) {
    double kg = 0;
    for (const Seen& s : hive.facts) {
        if (s.it->kind != Kind::feed || s.day < day || !s.it->value.said()) continue;
        const double amount = static_cast<double>(s.it->value.amount) * (s.it->value.dimension == Dimension::mass ? 1e-12 : 1e-9);
        kg += s.it->value.dimension == Dimension::volume ? handbook::stores_from_syrup(amount, syrup_kind(s.it->detail)) : amount;
        facts.push_back(s.fact);
    }
    return kg;
}

// ---- winter -----------------------------------------------------------------------------------

/// The day feeding should be done by: the end of September, mid-October in the north; half a year on in the south.
Day feeding_done(const Context& c) {
    const Settings& s = c.settings();
    const auto& ends = handbook::feeding_ends[s.climate == "cold" ? 3 : 0];
    const auto year = date::year_month_day{c.on}.year();
    const int month = c.northern() ? ends.month : ends.month - 6;
    return Day{date::year_month_day{year, date::month{static_cast<unsigned>(month)}, date::day{static_cast<unsigned>(ends.day)}}};
}

/// From two months before feeding should be done until six weeks after, the honey season being over or nearly so.
bool autumn(const Context& c) {
    const int left = days_between(c.on, feeding_done(c));
    if (left > 60 || left < -45 || c.phase() == Phase::before) return false;
    return c.phase() == Phase::after || c.season_days_left() <= 14;
}

std::string supers_off_first(const HiveView& hive) {
    return hive.supers.empty() ? "" : ", the honey supers off first";
}

void say_need(Advice& a, const HiveView& hive, const Stores& have, double fed, const handbook::WinterStores& need) {
    const MassUnit unit = hive.settings().mass;
    a.reasons.push_back(fmt::format("{} on {}: {}{}", have.words, iso(have.seen.day), kg_words(have.kg, unit),
                                    fed > 0 ? fmt::format(", and {} from what was fed since", kg_words({fed, fed, fed}, unit)) : ""));
    a.reasons.push_back(fmt::format("a {} climate asks for {}{}", need.climate, kg_words({need.kg.low, need.kg.typical, need.kg.high}, unit),
                                    hive.settings().climate.empty() ? " (climate not set: middle taken)" : ""));
}

/// Less than this is within what a glance or a scale can tell; own judgement.
constexpr double worth_feeding_kg = 2;

/// A later word of plenty outranks an earlier count.
bool plenty_since(const HiveView& hive, const Seen& seen) {
    const auto plenty = hive.last(days_between(seen.day, hive.on()), Kind::stores, {"plenty"});
    return plenty && plenty->fact > seen.fact;
}

Advices winter_stores(const HiveView& hive) {
    if (!autumn(*hive.all)) return {};
    const auto have = stores_noted(hive, 35);
    if (!have || plenty_since(hive, have->seen)) return {};
    const Settings& s = hive.settings();
    const auto need = handbook::winter_stores(s.climate.empty() ? "middle" : s.climate);
    if (!need) return {};
    std::vector<FactId> feeds;
    const double fed = fed_kg_since(hive, have->seen.day, feeds);
    const double lacks = need->kg.typical - have->kg.value - fed;
    if (lacks < worth_feeding_kg) return {};
    const Day done = feeding_done(*hive.all);
    const bool in_time = hive.on() <= done;
    const double sugar = handbook::sugar_for_stores(lacks, handbook::Syrup::thick);
    const MassUnit unit = s.mass;
    Advice a = advise_to(Act::feed, Rank::rest,
                         in_time ? fmt::format("feed thick syrup of about {} of sugar (it gives 1.1 times its weight in stores){}", kg_words({sugar, sugar, sugar}, unit), supers_off_first(hive))
                                 : fmt::format("feed fondant, late for syrup{}", supers_off_first(hive)));
    a.by = in_time ? done : hive.on();
    const double least = std::max(0.0, need->kg.low - have->kg.high - fed), most = need->kg.high - have->kg.low - fed;
    how_sure(a, least > 0 ? Sureness::likely : Sureness::possible, fmt::format("short of stores by {}", kg_words({least, lacks, most}, unit)));
    say_need(a, hive, *have, fed, *need);
    because(a, have->seen.fact);
    because(a, feeds);
    return {a};
}

/// Stores of one of these were noted, however long ago: young notes do not tell that none were looked at before.
bool ever_noted(const YardView& yard, const std::vector<HiveId>& hives) {
    return std::any_of(yard.hives.begin(), yard.hives.end(), [&](const HiveView* h) {
        return std::find(hives.begin(), hives.end(), h->id) != hives.end() && (h->last(all_days, Kind::stores) || stores_noted(*h, all_days));
    });
}

Advices weigh_for_winter(const YardView& yard) {
    const Context& c = *yard.all;
    if (!autumn(c) || c.on > feeding_done(c)) return {};
    Advice a = advise_to(Act::note, Rank::rest, "weigh or count the winter stores and note them");
    for (const HiveView* h : yard.hives)
        if (!h->last(35, Kind::stores) && !stores_noted(*h, 35)) a.hives.push_back(h->id);
    if (a.hives.empty()) return {};
    a.by = std::max(c.on, feeding_done(c) - date::days{14});
    how_sure(a, Sureness::certain, "");
    a.reasons.push_back(fmt::format("no stores noted {}at {}; feeding should be done by {}",
                                    ever_noted(yard, a.hives) ? "for five weeks " : "", hive_names(yard, a.hives),
                                    iso(feeding_done(c))));
    return {a};
}

// ---- hunger -----------------------------------------------------------------------------------

/// The last temperature noted in a week, C.
std::optional<double> temperature_lately(const HiveView& hive) {
    const auto& facts = hive.all->yard(hive.yard).facts;
    for (auto s = facts.rbegin(); s != facts.rend() && days_between(s->day, hive.on()) <= 7; ++s)
        if (s->it->kind == Kind::temperature) return static_cast<double>(s->it->value.amount) / 1000.0;
    return std::nullopt;
}

bool cold_lately(const HiveView& hive) { return temperature_lately(hive).value_or(20) < handbook::no_syrup_below_celsius; }
bool warm_lately(const HiveView& hive) { return temperature_lately(hive).value_or(0) >= handbook::no_syrup_below_celsius; }

/// Honey that is on is food as well, if the keeper leaves it to the bees.
std::string supers_words(const HiveView& hive) {
    double kg = 0;
    for (const SuperView& s : hive.supers)
        if (s.estimate && s.estimate->last_seen) kg += s.estimate->kg.low;
    const std::string fed = "what is fed under honey supers ends up in them";
    if (kg < worth_feeding_kg) return fed;
    return fmt::format("{}; or feed nothing and leave the bees what is in them, {} or more", fed,
                       kg_words({kg, kg, kg}, hive.settings().mass));
}

/// Without a word on the temperature the calendar tells: no syrup once feeding should be done, nor before spring.
bool cold_months(const Context& c) {
    return c.northern_month() >= 11 || c.northern_month() <= 2 || (c.phase() == Phase::after && c.on > feeding_done(c));
}

std::string_view feed_now(const HiveView& hive) {
    return cold_lately(hive) || (!warm_lately(hive) && cold_months(*hive.all)) ? "fondant" : "syrup";
}

Advices hunger(const HiveView& hive) {
    const auto stores = hive.last(14, Kind::stores);
    if (!stores || !is_one_of(stores->it->detail, {"none", "light"})) return {};
    if (hive.flow().running() && hive.flow().day > stores->day) return {};   // they find it themselves
    for (const Seen& s : hive.facts)
        if (s.it->kind == Kind::feed && s.day >= stores->day) return {};
    const bool none = stores->it->detail == "none";
    Advice a = advise_to(Act::feed, Rank::rest, fmt::format("feed {}{}", feed_now(hive), supers_off_first(hive)));
    a.by = none ? hive.on() : std::min(hive.next_visit(), hive.on() + date::days{3});
    how_sure(a, none ? Sureness::certain : Sureness::likely, "");
    a.reasons.push_back(fmt::format("stores noted as {} on {}", stores->it->detail, iso(stores->day)));
    if (!hive.supers.empty()) a.reasons.push_back(supers_words(hive));
    because(a, stores->fact);
    return {a};
}

Advices spring_stores(const YardView& yard) {
    const Context& c = *yard.all;
    if (c.phase() != Phase::before || c.northern_month() != 3) return {};
    Advice a = advise_to(Act::note, Rank::rest, "heft the hives: hunger month");
    for (const HiveView* h : yard.hives)
        if (!h->last(21, Kind::stores) && !h->last(21, Kind::hive_weight)) a.hives.push_back(h->id);
    if (a.hives.empty()) return {};
    a.by = c.on + date::days{7};
    how_sure(a, Sureness::likely, "");
    const auto use = [&](const handbook::Range& r) { return kg_words({r.low, r.typical, r.high}, c.settings().mass); };
    a.reasons.push_back(fmt::format("with brood a hive uses {} a month, without {}; no stores noted {}at {}", use(handbook::brooding_use_kg_per_month),
                                    use(handbook::winter_use_kg_per_month), ever_noted(yard, a.hives) ? "for three weeks " : "",
                                    hive_names(yard, a.hives)));
    return {a};
}

Advices small_colony(const HiveView& hive) {
    if (!autumn(*hive.all)) return {};
    const auto bees = hive.last(30, [](const Fact& f) { return f.kind == Kind::bees && f.value.dimension == Dimension::count; });
    if (!bees || bees->it->value.amount >= handbook::unite_below_frames * 1000) return {};
    if (hive.last(days_between(bees->day, hive.on()), Kind::hive_united)) return {};
    Advice a = advise_to(Act::unite, Rank::rest, "consider uniting it with a healthy colony");
    a.by = feeding_done(*hive.all);
    how_sure(a, Sureness::possible, "");
    a.reasons.push_back(fmt::format("{} of bees on {}, fewer than {}; unite no sick colony", text_of(bees->it->value), iso(bees->day),
                                    handbook::unite_below_frames));
    because(a, bees->fact);
    return {a};
}

}  // namespace

std::vector<Rule> winter_rules() {
    return {
        {{"winter-stores", "Stores are compared with what your climate asks for; feeding is done by the end of September, mid-October in "
                           "the north.",
          "BBKA News 216 (2013); honeybeesuite.com; Bienen & Natur; dates: norfolkbeekeepers.org.uk, USDA overwintering text; sugar: "
          "Curth, Hohenheim (1981), 0.9 kg (thin) to 1.1 kg (thick) of stores a kg", "Winter and stores"},
         &winter_stores},
        {{"winter-stores-unknown", "Before the feeding ends, every hive's stores are weighed or counted.",
          "as winter-stores; basicbeekeeping, lesson 119", "Winter and stores"},
         &weigh_for_winter},
        {{"hunger", "Light or no stores: feed now, the honey supers off first.", "common practice, no source; National Bee Unit, starvation alert (Sept 2017)",
          "Winter and stores"},
         &hunger},
        {{"spring-hunger", "March is the hunger month: heft the hives.", "bees-online.at (Feb 2021); Bienen & Natur (use with brood)",
          "Winter and stores"},
         &spring_stores},
        {{"small-colony", "Fewer than six frames of bees before winter: think about uniting.", "honey.org.au (Queensland)",
          "Winter and stores"},
         &small_colony},
    };
}

}  // namespace waxtab
