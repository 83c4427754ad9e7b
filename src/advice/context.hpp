#pragma once
#include <initializer_list>
#include <optional>
#include <string_view>
#include <vector>

#include "advice/advice.hpp"
#include "advice/queen_state.hpp"
#include "advice/seen.hpp"

namespace waxtab {

struct Context;

/// Where a day stands in the honey season the keeper set.
enum class Phase : std::uint8_t { before, during, after };

/// What is known of the flow at a yard, from notes that still hold: see `flow_note_days`.
struct Flow {
    enum class State : std::uint8_t { unknown, none, light, on, heavy, starting, ending, over };
    State state = State::unknown;
    Day day{};
    std::optional<FactId> fact;
    bool from_bloom = false;    ///< only a bloom was noted, no flow

    bool running() const { return state == State::on || state == State::heavy || state == State::starting || state == State::light; }
    bool fading() const { return state == State::none || state == State::ending || state == State::over; }
};

/// A super on a hive: box, estimate, since when.
struct SuperView {
    const Box* box = nullptr;
    const SuperEstimate* estimate = nullptr;    ///< null when there is none
    int place = 1;                              ///< counted from the brood up
    std::optional<Day> since;
    FactId on_fact = set_up_fact;

    double full() const { return estimate ? estimate->full.value : 0.0; }
    double capped() const { return estimate ? estimate->capped.value : 0.0; }
    double drawn() const { return estimate ? estimate->drawn.value : (built_comb() ? 1.0 : 0.0); }
    /// Put on with comb the bees need not draw.
    bool built_comb() const { return box->comb != Comb::foundation && box->comb != Comb::strips; }
    bool comb_honey() const { return box->comb == Comb::cut_comb || box->comb == Comb::sections; }
};

/// A living hive as the rules see it.
struct HiveView {
    const Context* all = nullptr;
    HiveId id = no_hive;
    YardId yard = no_yard;
    const HiveHistory* history = nullptr;
    const HiveEstimate* estimate = nullptr;     ///< null when there is none
    std::vector<SuperView> supers;              ///< from the brood up
    int brood_boxes = 0;
    bool excluder = false;
    std::optional<Standing> escape, feeder, upper_entrance;
    std::vector<Seen> facts;                    ///< every fact naming this hive, in order of effect
    QueenState queen;

    Day on() const;
    const Settings& settings() const;
    const Journal& journal() const;
    /// The last fact that `wanted` holds for and that is at most `days` old.
    template <class Wanted>
    std::optional<Seen> last(int days, Wanted wanted) const {
        for (auto s = facts.rbegin(); s != facts.rend() && days_between(s->day, on()) <= days; ++s)
            if (wanted(*s->it)) return *s;
        return std::nullopt;
    }
    std::optional<Seen> last(int days, Kind kind) const;
    /// The same, with one of these details.
    std::optional<Seen> last(int days, Kind kind, std::initializer_list<std::string_view> details) const;
    std::optional<Day> last_visit() const;
    bool visited_today() const { return last_visit() == on(); }
    /// Days until something can be done again: the interval when the hive was looked at today or the visit
    /// is overdue, else the days to the next visit.
    int days_to_next_visit() const;
    /// The next visit, today when it is overdue.
    Day next_visit() const;
    const Flow& flow() const;
    /// Share filled of the emptiest super; 0 without supers.
    double emptiest_full() const;
    /// Probability that room runs out within `days`; 0 without supers or without an estimate.
    double chance_full(int days) const;
    bool super_put_on_since(Day day) const;
    int brood_frames_in_boxes() const;
};

/// A yard as the rules see it.
struct YardView {
    const Context* all = nullptr;
    YardId id = no_yard;
    Flow flow;
    std::vector<const HiveView*> hives;         ///< living ones, journal order
    std::optional<Day> last_visit;
    std::vector<Seen> facts;                    ///< facts about the yard itself, in order
};

/// Everything advice is made from, as of one day. Not copied: views point into it.
struct Context {
    Context(const Journal&, const History&, const Estimates&, const Ledger&);
    Context(const Context&) = delete;
    Context& operator=(const Context&) = delete;

    const Journal& journal;
    const History& history;
    const Estimates& estimates;
    const Ledger& ledger;
    Day on{};
    std::vector<HiveView> hives;                ///< living ones, journal order
    std::vector<YardView> yards;                ///< parallel to Journal::yards
    std::vector<Seen> facts;                    ///< all facts noted and having happened by `on`
    YardView nowhere;                           ///< stands in for an unknown yard

    const YardView& yard(YardId id) const;
    const Settings& settings() const { return journal.settings; }
    Phase phase() const;
    /// Days of the season still to come; 0 outside it.
    int season_days_left() const;
    /// Days since the season ended; 0 during and before it.
    int days_after_season() const;
    bool swarm_season() const;
    /// True where the season's end falls in the second half of the year, as in the northern half of the world.
    bool northern() const;
    /// The month as the northern half counts it, 1 to 12: July in the south is 1.
    int northern_month() const;
    /// Less than four weeks of the season are left, or it is over.
    bool late() const;
    const BoxKind* kind(const Box& box) const { return journal.box_kind(box.kind); }
    /// Kilograms the super weighs with box and frames; nothing when its kind is unknown.
    std::optional<Range> gross_kg(const SuperView& super) const;
};

/// Days after which a note on the flow no longer tells what is going on; common practice, no source.
inline constexpr int flow_note_days = 14;
/// Days before its end from which a flow noted as over is over for the season; own judgement.
inline constexpr int season_end_days = 60;
/// The same for a flow noted as none or ending, and as over at the season's end: what ended then does not come back
/// by itself; own judgement.
inline constexpr int flow_gap_days = 21;
inline constexpr int flow_over_days = 42;
/// Days before its end from which the season counts as late; common practice, no source.
inline constexpr int late_season_days = 28;

}  // namespace waxtab
