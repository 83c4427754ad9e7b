#include "advice/context.hpp"

#include <algorithm>

namespace waxtab {
namespace {

using date::month_day;

struct Span2 { Day from, to; };

Day day_of(date::year year, int month, int day) {
    return Day{date::year_month_day{year, date::month{static_cast<unsigned>(month)}, date::day{static_cast<unsigned>(day)}}};
}

/// The season window, of those of the years about `on`, that holds `on` or ends or begins nearest to it.
Span2 window_near(Day on, int from_month, int from_day, int to_month, int to_day) {
    const date::year year = date::year_month_day{on}.year();
    const bool wraps = std::pair{from_month, from_day} > std::pair{to_month, to_day};
    std::optional<Span2> best;
    int best_gap = 0;
    for (int shift = -1; shift <= 1; ++shift) {
        const date::year y = year + date::years{shift};
        const Span2 w{day_of(y, from_month, from_day), day_of(wraps ? y + date::years{1} : y, to_month, to_day)};
        const int gap = std::max({0, days_between(on, w.from), days_between(w.to, on)});
        if (!best || gap < best_gap) best = w, best_gap = gap;
    }
    return *best;
}

Span2 honey_season(const Context& c) {
    const Settings& s = c.settings();
    return window_near(c.on, s.season_from_month, s.season_from_day, s.season_to_month, s.season_to_day);
}

Flow::State flow_state(std::string_view word) {
    using S = Flow::State;
    if (word == "none") return S::none;
    if (word == "light") return S::light;
    if (word == "heavy" || word == "good") return S::heavy;
    if (word == "starting") return S::starting;
    if (word == "ending") return S::ending;
    if (word == "over") return S::over;
    return S::on;
}

/// How long a word on the flow holds. What is over towards the season's end is over; before, it is a gap.
int flow_days(Flow::State state, Day noted, Day season_end) {
    const bool for_good = days_between(noted, season_end) <= season_end_days;
    if (state == Flow::State::over && for_good) return flow_over_days;
    if (state == Flow::State::over) return flow_gap_days;
    return state == Flow::State::none || state == Flow::State::ending ? flow_gap_days : flow_note_days;
}

/// A bloom tells that there may be nectar; its end does not tell that other plants give none, but a flow noted
/// before it is no longer known to go on.
Flow flow_from(const std::vector<Seen>& facts, Day on, Day season_end) {
    Flow bloom;
    bool ended = false;
    for (auto s = facts.rbegin(); s != facts.rend() && days_between(s->day, on) <= flow_over_days; ++s) {
        const int days = days_between(s->day, on);
        if (s->it->kind == Kind::flow) {
            const Flow said{flow_state(s->it->detail), s->day, s->fact, false};
            if (days > flow_days(said.state, said.day, season_end) || (ended && said.running())) return bloom;
            return bloom.fact && said.fading() ? bloom : said;
        }
        if (s->it->kind != Kind::bloom || days > flow_note_days) continue;
        if (is_one_of(s->it->detail, {"end", "ending"})) ended = ended || !bloom.fact;
        else if (!ended && !bloom.fact && is_one_of(s->it->detail, {"start", "on", "peak"})) bloom = {Flow::State::on, s->day, s->fact, true};
    }
    return bloom;
}

std::optional<Standing> standing(const HiveHistory& h, StackPart::What what) {
    for (const Standing& s : h.stack)
        if (s.what == what) return s;
    return std::nullopt;
}

SuperView super_view(const Context& c, HiveId hive, BoxId id, int place) {
    SuperView v;
    v.box = &c.history.boxes[static_cast<std::size_t>(id)];
    v.estimate = c.estimates.super(id);
    v.place = place;
    for (const BoxStay& stay : v.box->stays)
        if (stay.hive == hive && !stay.to) v.since = stay.from, v.on_fact = stay.on_fact;
    return v;
}

HiveView hive_view(const Context& c, const HiveHistory& h, std::vector<Seen> facts) {
    HiveView v;
    v.all = &c;
    v.id = h.hive;
    v.yard = h.yard_on(c.on);
    v.history = &h;
    v.estimate = c.estimates.hive(h.hive);
    int place = 0;
    for (BoxId id : c.history.supers_on(h.hive)) v.supers.push_back(super_view(c, h.hive, id, ++place));
    v.brood_boxes = static_cast<int>(c.history.brood_boxes_on(h.hive).size());
    v.excluder = standing(h, StackPart::What::excluder).has_value();
    v.escape = standing(h, StackPart::What::escape);
    v.feeder = standing(h, StackPart::What::feeder);
    v.upper_entrance = standing(h, StackPart::What::upper_entrance);
    v.facts = std::move(facts);
    v.queen = walk_queen(v.id, v.facts, c.on);
    return v;
}

/// Every hive's facts, those in which it is the other hive among them.
std::vector<std::vector<Seen>> facts_by_hive(const Context& c) {
    std::vector<std::vector<Seen>> out(c.journal.hives.size());
    const auto put = [&](HiveId hive, const Seen& s) {
        if (hive >= 0 && static_cast<std::size_t>(hive) < out.size()) out[static_cast<std::size_t>(hive)].push_back(s);
    };
    for (const Seen& s : c.facts) {
        put(s.it->hive, s);
        if (s.it->other != s.it->hive) put(s.it->other, s);
    }
    return out;
}

}  // namespace

Day HiveView::on() const { return all->on; }
const Settings& HiveView::settings() const { return all->settings(); }
const Journal& HiveView::journal() const { return all->journal; }
const Flow& HiveView::flow() const { return all->yard(yard).flow; }

std::optional<Seen> HiveView::last(int days, Kind kind) const {
    return last(days, [kind](const Fact& f) { return f.kind == kind; });
}
std::optional<Seen> HiveView::last(int days, Kind kind, std::initializer_list<std::string_view> details) const {
    return last(days, [kind, details](const Fact& f) { return f.kind == kind && is_one_of(f.detail, details); });
}

std::optional<Day> HiveView::last_visit() const {
    if (history->visits.empty()) return std::nullopt;
    return history->visits.back();
}

Day HiveView::next_visit() const {
    const auto last = all->yard(yard).last_visit;
    if (!last) return on();
    return std::max(on(), *last + date::days{settings().visit_interval_days});
}

int HiveView::days_to_next_visit() const {
    const int days = days_between(on(), next_visit());
    return days > 0 ? days : settings().visit_interval_days;
}

double HiveView::emptiest_full() const {
    double least = supers.empty() ? 0.0 : 1.0;
    for (const SuperView& s : supers) least = std::min(least, s.full());
    return least;
}

double HiveView::chance_full(int days) const {
    return supers.empty() || !estimate ? 0.0 : estimate->chance_full_within(days);
}

bool HiveView::super_put_on_since(Day day) const {
    return std::any_of(supers.begin(), supers.end(), [&](const SuperView& s) { return s.since && *s.since >= day; });
}

int HiveView::brood_frames_in_boxes() const {
    int frames = 0;
    for (BoxId box : all->history.brood_boxes_on(id))
        frames += frames_of(journal(), all->history.boxes[static_cast<std::size_t>(box)]);
    return frames;
}

Context::Context(const Journal& j, const History& h, const Estimates& e, const Ledger& l)
    : journal(j), history(h), estimates(e), ledger(l), on(h.on) {
    for (std::size_t i = 0; i < j.facts.size(); ++i)
        if (j.facts[i].noted <= on && j.facts[i].happened <= on)
            facts.push_back({static_cast<FactId>(i), j.facts[i].happened, &j.facts[i]});
    yards.resize(j.yards.size());
    nowhere.all = this;
    for (std::size_t i = 0; i < yards.size(); ++i) yards[i].all = this, yards[i].id = static_cast<YardId>(i);
    for (const Seen& s : facts)
        if (s.it->hive == no_hive && s.it->yard >= 0) yards[static_cast<std::size_t>(s.it->yard)].facts.push_back(s);
    for (YardView& y : yards) y.flow = flow_from(y.facts, on, honey_season(*this).to);

    auto by_hive = facts_by_hive(*this);
    hives.reserve(h.hives.size());
    for (const HiveHistory& hive : h.hives)
        if (hive.alive) hives.push_back(hive_view(*this, hive, std::move(by_hive[static_cast<std::size_t>(hive.hive)])));
    for (const HiveView& v : hives) {
        YardView& y = v.yard < 0 ? nowhere : yards[static_cast<std::size_t>(v.yard)];
        y.hives.push_back(&v);
        if (const auto visit = v.last_visit(); visit && (!y.last_visit || *visit > *y.last_visit)) y.last_visit = visit;
    }
}

const YardView& Context::yard(YardId id) const {
    return id < 0 || static_cast<std::size_t>(id) >= yards.size() ? nowhere : yards[static_cast<std::size_t>(id)];
}

Phase Context::phase() const {
    const Span2 season = honey_season(*this);
    return on < season.from ? Phase::before : on > season.to ? Phase::after : Phase::during;
}

int Context::season_days_left() const {
    return phase() == Phase::during ? days_between(on, honey_season(*this).to) : 0;
}

int Context::days_after_season() const {
    return phase() == Phase::after ? days_between(honey_season(*this).to, on) : 0;
}

bool Context::swarm_season() const {
    const Settings& s = settings();
    const Span2 w = window_near(on, s.swarm_from_month, s.swarm_from_day, s.swarm_to_month, s.swarm_to_day);
    return on >= w.from && on <= w.to;
}

bool Context::northern() const { return settings().season_to_month >= 6 && settings().season_to_month <= 11; }

int Context::northern_month() const {
    const int month = static_cast<int>(static_cast<unsigned>(date::year_month_day{on}.month()));
    return northern() ? month : (month + 5) % 12 + 1;
}

bool Context::late() const {
    return phase() == Phase::after || (phase() == Phase::during && season_days_left() < late_season_days);
}

std::optional<Range> Context::gross_kg(const SuperView& super) const {
    const BoxKind* k = kind(*super.box);
    if (!k || !super.estimate) return std::nullopt;
    const Range& honey = super.estimate->kg;
    return Range{honey.low + k->tare_low_kg, honey.value + k->tare_kg, honey.high + k->tare_high_kg};
}

}  // namespace waxtab
