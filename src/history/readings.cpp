#include <algorithm>
#include <cmath>

#include "handbook/moisture.hpp"
#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

using By = BoxChoice::By;
using Sighted = BoxSighting::What;

/// A reading's amount with its range.
struct Amount {
    std::int64_t amount = 0, low = 0, high = 0;
};

bool names_the_only_one(const BoxChoice& choice) { return choice.by == By::unsaid || choice.by == By::sole; }

/// Words said of a super that came off this very day are of that super: `super off 14 kg, 20% capped`.
std::vector<BoxId> taken_today(const Replay& r, HiveId hive, const BoxChoice& choice, Day day) {
    const HiveState& state = r.state(hive);
    if (state.taken_day != day) return {};
    if (names_the_only_one(choice) && state.taken.size() == 1) return state.taken;
    const BoxId box = choice.by == By::label ? labelled(r, hive, choice.label) : no_box;
    const bool taken = std::find(state.taken.begin(), state.taken.end(), box) != state.taken.end();
    return taken ? std::vector<BoxId>{box} : std::vector<BoxId>{};
}

/// The boxes a reading is about.
std::vector<BoxId> read_boxes(Replay& r, Step& s) {
    const HiveId hive = s.fact.hive;
    Resolved found = resolve_told(r, s.fact, s.fact.box);
    if (found.trouble == Resolved::Trouble::absent) found.boxes = taken_today(r, hive, s.fact.box, s.day());
    if (found.boxes.empty()) report_trouble(r, s, hive, s.fact.box, found, false);
    s.boxes = found.boxes;
    return found.boxes;
}

bool by_place(const BoxChoice& choice) { return choice.by == By::top || choice.by == By::bottom || choice.by == By::middle; }

/// `top` and `bottom` of one visit are two boxes: true, and reported, when the stack has one for both.
bool named_otherwise(Replay& r, const Step& s, BoxId box, Sighted what) {
    if (!by_place(s.fact.box)) return false;
    HiveState& state = r.state(s.fact.hive);
    if (state.read_day != s.day()) state.read_today.clear();
    state.read_day = s.day();
    for (const NamedReading& earlier : state.read_today) {
        if (earlier.box != box || earlier.what != what || earlier.choice == s.fact.box) continue;
        report_same_box(r, s, s.fact.hive, s.fact.box, earlier);
        return true;
    }
    state.read_today.push_back({s.fact.box, box, what, s.id});
    return false;
}

std::int64_t permille(std::int64_t thousandths, std::int64_t whole) {
    return std::clamp<std::int64_t>((thousandths + whole / 2) / std::max<std::int64_t>(1, whole), 0, 1000);
}

/// Frames of a box, or the sections of a rack as far as they were told; 0 when not.
std::int64_t parts_of(const Replay& r, BoxId box) {
    return r.box(box).comb == Comb::sections ? r.box_state(box).sections : r.box(box).frames;
}

/// `5 frames full`, `all but 2 frames`, `7 sides drawn` as a share of the box; nothing when it has not so many.
std::optional<Amount> share_of_frames(Replay& r, const Step& s, BoxId box) {
    Measure said = s.fact.value;
    const bool all_but = said.of < 0;
    if (!said.said()) said.amount = said.low = said.high = 2000;   // all but the two outside ones
    said.of = 0;
    const std::int64_t whole = parts_of(r, box) * (said.unit == Unit::side ? 2 : 1);
    if (whole == 0) return report_sections_unknown(r, s), std::nullopt;
    if (said.amount > whole * 1000) {
        report_too_many_frames(r, s, s.fact.hive, box, said);
        return std::nullopt;
    }
    const Amount part{permille(said.amount, whole), permille(said.low, whole), permille(said.high, whole)};
    return all_but ? Amount{1000 - part.amount, 1000 - part.high, 1000 - part.low} : part;
}

/// A share said as n of m frames must fit the frames of the box.
bool fits_box(Replay& r, const Step& s, BoxId box) {
    const Measure& said = s.fact.value;
    const int frames = r.box(box).frames;
    if (r.box(box).comb == Comb::sections && said.of > 0) r.box_state(box).sections = said.of;
    if (said.of <= 0 || said.of == frames || r.box(box).comb == Comb::sections) return true;
    const std::int64_t n = (said.amount * said.of + 500) / 1000;
    if (n > frames) return report_too_many_frames(r, s, s.fact.hive, box, said), false;
    report_frames_differ(r, s, s.fact.hive, box, said);
    return true;
}

std::optional<Amount> share_said(Replay& r, const Step& s, BoxId box) {
    const Measure& said = s.fact.value;
    if (said.dimension == Dimension::count || said.of < 0) return share_of_frames(r, s, box);
    if (said.dimension != Dimension::share || !fits_box(r, s, box)) return std::nullopt;
    return Amount{said.amount, said.low, said.high};
}

BoxSighting* seen_that_day(Replay& r, BoxId box, Sighted what, Day day) {
    std::vector<BoxSighting>& all = r.box(box).sightings;
    for (auto s = all.rbegin(); s != all.rend() && s->day == day; ++s)
        if (s->what == what && !s->repeated) return &*s;
    return nullptr;
}

/// More comb capped than filled cannot be: then capped was meant of the honey that is in.
void reconcile(Replay& r, const Step& s, BoxId box) {
    const BoxSighting* filled = seen_that_day(r, box, Sighted::full, s.day());
    BoxSighting* sealed = seen_that_day(r, box, Sighted::capped, s.day());
    if (!filled || !sealed || sealed->low <= filled->high) return;
    report_capped_over_full(r, s, *filled, *sealed);
    sealed->amount = filled->amount * sealed->amount / 1000;
    sealed->low = std::min(sealed->amount, filled->low * sealed->low / 1000);
    sealed->high = std::max(sealed->amount, filled->high * sealed->high / 1000);
}

/// So far apart, in permille, two looks by one eye on one day are not of the same honey: more than two standard deviations of
/// the difference of two looks that are wrong by 8 % each, and rounded to tens.
constexpr std::int64_t far_apart = 250;

/// The box or its frames were handled on that day, so that it may hold something else than before.
bool handled_on(const Replay& r, HiveId hive, BoxId box, Day day) {
    const Box& b = r.out.boxes[static_cast<std::size_t>(box)];
    const auto moved = [&](const BoxStay& stay) { return stay.from == day || stay.to == day; };
    if (std::any_of(b.stays.begin(), b.stays.end(), moved) || (!b.emptied.empty() && b.emptied.back() == day)) return true;
    const auto frames = [&](const Event& e) {
        if (e.day != day || e.fact == set_up_fact) return false;
        const Kind kind = r.journal.facts[e.fact].kind;
        return kind == Kind::frames_moved || kind == Kind::frames_off || divides(kind);
    };
    const std::vector<Event>& events = r.out.hives[static_cast<std::size_t>(hive)].events;
    return std::any_of(events.begin(), events.end(), frames);
}

/// Of one super looked at twice on one day both readings count; where they cannot both be right, that is said.
void compare_looks(Replay& r, const Step& s, BoxId box, Sighted what, const Amount& now) {
    const BoxSighting* earlier = seen_that_day(r, box, what, s.day());
    if (!earlier || std::max(now.low - earlier->high, earlier->low - now.high) < far_apart) return;
    if (!handled_on(r, s.fact.hive, box, s.day())) report_looks_differ(r, s, s.fact.hive, *earlier);
}

/// Seen empty on the day it came off: it was not taken for honey.
void reconsider_taking(Replay& r, const Step& s, BoxId box, std::int64_t share) {
    const std::int64_t at = r.box_state(box).taking;
    if (r.box_state(box).where != Whereabouts::waiting || at < 0 || share > 50) return;
    Taking& taking = r.out.takings[static_cast<std::size_t>(at)];
    if (!taking.harvest || taking.gross || taking.net || taking.day != s.day()) return;
    taking.harvest = false;
    no_longer_waiting(r, static_cast<std::size_t>(at));
    into_shed(r, s, box, comb_left(r, box));
}

void see(Replay& r, const Step& s, BoxId box, Sighted what, const Amount& a) {
    r.box(box).sightings.push_back({what, s.day(), s.id, a.amount, a.low, a.high, {}, false});
}

void read_share(Replay& r, Step& s, Sighted what) {
    for (const BoxId box : read_boxes(r, s)) {
        const std::optional<Amount> share = share_said(r, s, box);
        if (!share || named_otherwise(r, s, box, what)) continue;   // of a box that is not there
        if (what == Sighted::full || what == Sighted::capped) compare_looks(r, s, box, what, *share);
        see(r, s, box, what, *share);
        if (what == Sighted::full || what == Sighted::capped) reconcile(r, s, box);
        if (what == Sighted::full) reconsider_taking(r, s, box, share->amount);
    }
}

/// A swarm or split drawing comb does it in the brood box, as long as there is no super.
bool in_brood_box(const Replay& r, const Fact& f) {
    return f.box.by == By::unsaid && boxes_on(r, f.hive, Role::super).empty() && !boxes_on(r, f.hive, Role::brood).empty();
}

std::optional<std::int64_t> water_permille(const Fact& f) {
    if (f.kind == Kind::moisture) return f.value.dimension == Dimension::share ? std::optional(f.value.amount) : std::nullopt;
    if (f.value.dimension != Dimension::index) return std::nullopt;
    const double index = static_cast<double>(f.value.amount) / 100000.0;
    const bool warm = f.second.dimension == Dimension::temperature;
    const auto percent = warm ? handbook::water_percent(index, static_cast<double>(f.second.amount) / 1000.0) : handbook::water_percent(index);
    return percent ? std::optional(static_cast<std::int64_t>(std::lround(*percent * 10.0))) : std::nullopt;
}

const BoxSighting* last_of(const Box& box, Sighted what) {
    const Day from = box.stays.empty() ? Day{} : box.stays.back().from.value_or(Day{});
    for (auto s = box.sightings.rbegin(); s != box.sightings.rend(); ++s) {
        if (s->day < from || (!box.emptied.empty() && s->day < box.emptied.back())) return nullptr;
        if (s->what == what) return &*s;
    }
    return nullptr;
}

bool repeat_last(Replay& r, const Step& s, BoxId id) {
    bool any = false;
    for (const Sighted what : {Sighted::full, Sighted::capped, Sighted::drawn}) {
        const BoxSighting* last = last_of(r.box(id), what);
        if (!last) continue;
        any = true;
        if (last->day == s.day()) continue;   // read anew today
        BoxSighting again = *last;
        again.day = s.day(), again.fact = s.id, again.repeated = true;
        r.box(id).sightings.push_back(again);
    }
    return any;
}

}  // namespace

void full(Replay& r, Step& s) { read_share(r, s, Sighted::full); }
void capped(Replay& r, Step& s) { read_share(r, s, Sighted::capped); }

void drawn(Replay& r, Step& s) {
    if (!in_brood_box(r, s.fact)) return read_share(r, s, Sighted::drawn);
    const BoxId box = boxes_on(r, s.fact.hive, Role::brood).back();
    s.boxes = {box};
    if (const auto share = share_said(r, s, box)) see(r, s, box, Sighted::drawn, *share);
}

/// So many of so many sections are as good as a share of the rack.
void sections_done(Replay& r, Step& s) {
    const Fact& f = s.fact;
    if (f.value.dimension == Dimension::share) return read_share(r, s, Sighted::full);
    if (f.count < 0 || f.second.amount <= 0) return;
    const int whole = static_cast<int>(f.second.amount / 1000);
    const std::int64_t share = permille(std::int64_t{f.count} * 1000 * 1000, f.second.amount);
    for (const BoxId box : read_boxes(r, s)) {
        r.box_state(box).sections = whole;
        see(r, s, box, Sighted::full, {share, share, share});
    }
}

void shakes_out(Replay& r, Step& s) {
    const std::int64_t yes = s.fact.detail == "no" ? 0 : 1;
    for (const BoxId box : read_boxes(r, s)) see(r, s, box, Sighted::shakes_out, {yes, yes, yes});
}

void super_brood(Replay& r, Step& s) {
    const std::int64_t yes = s.fact.detail == "none" ? 0 : 1;
    for (const BoxId box : read_boxes(r, s)) see(r, s, box, Sighted::brood, {yes, yes, yes});
}

/// Of a lot it belongs to the honey; of a super, to the super.
void moisture(Replay& r, Step& s) {
    const bool of_box = s.fact.hive != no_hive && s.fact.lot.empty();
    if (!of_box) return r.out.honey_facts.push_back(s.id);
    const auto water = water_permille(s.fact);
    for (const BoxId box : read_boxes(r, s))
        if (water) see(r, s, box, Sighted::moisture, {*water, *water, *water});
}

/// Said of the hive at large it is about all its supers, and says nothing where there are none.
void no_change(Replay& r, Step& s) {
    const HiveId hive = s.fact.hive;
    const bool at_large = names_the_only_one(s.fact.box);
    if (at_large) s.boxes = boxes_on(r, hive, Role::super);
    if (s.boxes.empty() && s.fact.box.by == By::unsaid) return;
    if (s.boxes.empty()) read_boxes(r, s);
    bool any = s.boxes.empty();
    for (const BoxId box : s.boxes) any = repeat_last(r, s, box) || any;
    if (!any) report_nothing_to_repeat(r, s, hive);
}

}  // namespace waxtab::replaying
