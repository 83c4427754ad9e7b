#pragma once
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "estimate/capacity.hpp"
#include "estimate/capping.hpp"
#include "estimate/field.hpp"
#include "estimate/keeper.hpp"
#include "estimate/readings.hpp"
#include "estimate/tape.hpp"

namespace waxtab {

/// Above so many hives standing in a yard at once, hives are taken as independent given its flow.
inline constexpr int joint_hives = 25;

/// The numbers of the model from a day on; in day order, the first valid from the start.
using Schedule = std::vector<std::pair<Day, Parameters>>;

/// A super on a hive while the pass goes by.
struct SuperTrack {
    BoxId box = no_box;
    Capacity capacity;
    Capping capping = Capping::empty();
    double drawn = 1;               ///< share of the comb drawn
    bool start_known = false;       ///< what it held when it was put on is known
    bool said_full = false;         ///< by its last reading
    int readings = 0;
    std::optional<Day> last_seen;
    std::optional<Moments> read;    ///< kilograms it was taken to hold after its last reading
    Day read_on{};
    std::optional<double> fell_from;///< share it held at the reading before, where bees cannot have used up the difference
    std::vector<FactId> because;

    SuperSlot slot() const { return {capacity.kg, capacity.appeal}; }
};

/// A hive while the pass goes by.
struct HiveTrack {
    YardId yard = no_yard;
    int number = -1;                ///< in the yard's field; -1 while it is in none
    bool weighed = false;           ///< some hive weight is noted, so that its base is followed
    std::vector<SuperTrack> supers; ///< in the order of the field's own state
    std::optional<Day> weighed_on;  ///< day of the last hive weight
    std::optional<Day> gain_seen;   ///< last reading that told something of its gain
    std::vector<FactId> because;    ///< facts about the hive itself that were taken in

    std::vector<SuperSlot> slots() const;
};

struct YardTrack {
    std::unique_ptr<Field> field;
    Day at{};
    std::vector<HiveId> hives;
    std::vector<FactId> because;    ///< notes on flow, bloom and weather that were taken in
};

/// A super as it left a hive.
struct TakenTrack {
    YardId yard = no_yard;
    int mark = -1;                  ///< in the yard's field
    double capacity = 0;
    Moments held;                   ///< kilograms by the keeper's full, as known that day
    bool judged = false;            ///< looked at in the three weeks before
    bool in_lot = false;            ///< already weighed as part of a lot
    std::vector<FactId> because;
    Moments held_then;              ///< as `held`, without readings of later days
    std::optional<Keeper> keeper_then;  ///< what was known of the keeper's eye that day
};

/// One reading of a share, for judging forecasts.
struct VisitReading { BoxId box = no_box; ShareReading reading; FactId fact = 0; };

/// What was believed of a hive at the end of a day it was looked at.
struct VisitTrack {
    HiveId hive = no_hive;
    Day day{};
    YardId yard = no_yard;
    std::vector<BoxId> before, after;       ///< supers on in the morning and in the evening
    std::vector<SuperSlot> slots;           ///< of `after`
    std::vector<double> drawn;              ///< of `after`
    std::vector<VisitReading> readings;
    Gaussian local;                         ///< in the evening
    bool weighed = false;
    Parameters parameters;
    double full_factor = 1;                 ///< the keeper's, as known that day
};

/// A hive on a day that is looked back to.
struct PastTrack {
    struct Super { BoxId box = no_box; double capacity = 0; Moments held; int mark = -1; };
    HiveId hive = no_hive;
    YardId yard = no_yard;
    Day day{};
    std::vector<Super> supers;
    Moments held;                   ///< kilograms in all supers by the keeper's full, as known that day
    int mark = -1;                  ///< the same in the yard's field
};

/// One walk through a history in date order, yard by yard.
class Pass {
public:
    struct Options {
        bool keep_visits = false;
        bool keep_likelihood = false;
        std::vector<Day> look_back{};   ///< ascending; hives are remembered as they stood on these evenings
    };

    Pass(const Journal& journal, const History& history, Schedule schedule, Options options);
    Pass(const Journal& journal, const History& history, Schedule schedule) : Pass(journal, history, std::move(schedule), Options{}) {}
    /// Goes to the end of the tape, and on to the day stood on.
    void run();

    const HiveTrack& hive(HiveId id) const { return hives_[static_cast<std::size_t>(id)]; }
    const YardTrack* yard(YardId id) const;
    const Keeper& keeper() const { return keeper_; }
    /// The facts by which the keeper's eye was learned, in order of learning.
    const std::vector<FactId>& weighed_by() const { return weighed_by_; }
    const CappingLag& lag() const { return lag_; }
    const std::map<std::size_t, TakenTrack>& taken() const { return taken_; }
    const std::vector<VisitTrack>& visits() const { return visits_; }
    const Parameters& parameters(Day day) const;
    const std::vector<PastTrack>& past() const { return past_; }
    /// Log likelihood of all readings by the end of each day with any, in day order.
    const std::vector<std::pair<Day, double>>& likelihood() const { return likelihood_; }

private:
    /// What is known of a super that stands on no hive.
    struct Away { Day since{}; Moments held; SuperTrack track; bool harvested = false; std::optional<std::size_t> taking; };

    YardTrack& yard_of(YardId id, Day day);
    void count_hives();
    void advance(YardTrack& yard, Day to);
    void step_hive(YardTrack& yard, HiveId id, const Parameters& p, double days);
    void take(const TapeEntry& entry);
    void close_day();
    void remember(Day day);
    void remember(YardTrack& yard, YardId id, HiveId hive);

    void arrive(const TapeEntry& e);
    void leave(HiveId id);
    void box_on(const TapeEntry& e);
    void box_off(const TapeEntry& e);
    Moments start_of(const TapeEntry& e, SuperTrack& track);
    void frames_off(const TapeEntry& e);
    void weighed(const TapeEntry& e);
    void extracted(const TapeEntry& e);
    void sighting(const TapeEntry& e);
    void share_seen(HiveTrack& hive, std::size_t k, const BoxSighting& s);
    void full_seen(HiveTrack& hive, std::size_t k, const ShareReading& r, const BoxSighting& s);
    void capped_seen(HiveTrack& hive, std::size_t k, const BoxSighting& s);
    void gross_seen(HiveTrack& hive, std::size_t k, const BoxSighting& s);
    void seen_away(const TapeEntry& e);
    void hive_fact(const TapeEntry& e);
    void yard_fact(const TapeEntry& e);
    void hive_weight(HiveTrack& hive, const Fact& fact);
    void weight_change(HiveTrack& hive, const Fact& fact, Day day);
    void shift_strength(HiveTrack& hive, double by, double sd);
    void shift_base(HiveTrack& hive, double by, double sd);
    void shift_own(HiveTrack& hive, int k, double by, double sd);
    void fed(HiveTrack& hive, const Fact& fact);
    bool allow_for_loss(HiveTrack& hive, std::size_t k, double share, double sd, Day day);
    double off_from_look_of_day(const HiveTrack& hive, std::size_t k, double share, double sd, Day day);
    void allow_for_change(HiveTrack& hive, const Eigen::VectorXd& z, double kg, Day day);
    void keep_reading(HiveTrack& hive, std::size_t k, double sd, Day day);
    void rectify(HiveTrack& hive);

    Field& field_of(const HiveTrack& hive) { return *yards_.at(hive.yard).field; }
    HiveTrack& track(HiveId id) { return hives_[static_cast<std::size_t>(id)]; }
    bool others_full(const HiveTrack& hive, std::size_t k, Day day) const;
    void touch(HiveId id);
    Weighing::Part part_of(const TakenTrack& taken) const;

    const Journal& journal_;
    const History& history_;
    Schedule schedule_;
    Options options_;
    std::vector<HiveTrack> hives_;
    std::map<YardId, YardTrack> yards_;
    std::map<YardId, int> most_hives_;
    std::map<BoxId, Away> away_;
    std::map<std::size_t, TakenTrack> taken_;
    std::vector<std::vector<std::size_t>> takings_of_;   ///< by box
    Keeper keeper_;
    std::vector<FactId> weighed_by_;
    CappingLag lag_;
    std::vector<HiveId> touched_;
    std::vector<VisitTrack> today_;
    std::vector<VisitTrack> visits_;
    std::vector<PastTrack> past_;
    std::vector<std::pair<Day, double>> likelihood_;
    std::vector<std::optional<Day>> last_visit_;
};

}  // namespace waxtab
