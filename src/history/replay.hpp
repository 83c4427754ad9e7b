#pragma once
// The working state of a replay and the services its transitions share. Only src/history includes this.
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "history/history.hpp"

namespace waxtab::replaying {

/// Where a box is that stands on no hive.
enum class Whereabouts : std::uint8_t {
    on_hive,
    waiting,   ///< taken off with honey, not extracted yet
    in_shed,
    gone,      ///< sold with its hive, or one of many in the shed
};

/// What the replay keeps of a box beyond its history.
struct BoxState {
    Whereabouts where = Whereabouts::on_hive;
    /// What it holds while in the shed.
    Comb shed_comb = Comb::unsaid;
    /// Sections in the rack, as last told by n of m; 0 when not.
    int sections = 0;
    /// Its latest taking, index into `History::takings`; -1 when it was never taken off.
    std::int64_t taking = -1;
};

/// A contradiction that was reported already, so that its echo at the next visit is not.
struct Reported {
    std::string_view code;
    BoxChoice choice;
};

/// How a reading of the day named its box, to notice two names for one box.
struct NamedReading {
    BoxChoice choice;
    BoxId box = no_box;
    BoxSighting::What what = BoxSighting::What::full;
    FactId fact = 0;
};

/// What the replay keeps of a hive beyond its history.
struct HiveState {
    enum class Life : std::uint8_t { unborn, living, gone };
    Life life = Life::living;
    /// The first fact about it is the one that brings it into being.
    bool born_by_fact = false;
    /// Its stack was assumed at birth and not told yet.
    bool stack_assumed = false;
    FactId birth_fact = set_up_fact;
    /// The line that last changed which boxes are on.
    FactId stack_fact = set_up_fact;
    /// The line that last took a box off.
    std::optional<FactId> off_fact;
    /// The last line that was asked which box it means.
    std::optional<FactId> asked_fact;
    /// Reported against the stack as it is now.
    std::vector<Reported> reported;
    /// The last day a line was found to come before its birth or after its end.
    std::optional<Day> life_reported;
    /// The line that last moved the hive to another yard.
    FactId yard_fact = set_up_fact;
    std::vector<NamedReading> read_today;
    Day read_day{};
    /// Boxes taken off on `taken_day`, in order.
    std::vector<BoxId> taken;
    Day taken_day{};
    /// Its own among the takings of the history.
    std::vector<std::size_t> takings;
};

/// A fact while it takes effect.
struct Step {
    const Fact& fact;
    FactId id;
    /// The boxes it resolved to, for the hive's story.
    std::vector<BoxId> boxes;
    Day day() const { return fact.happened; }
};

struct Replay {
    const Journal& journal;
    History out;
    std::vector<HiveState> states;      ///< parallel to the hives
    std::vector<BoxState> box_states;   ///< parallel to `out.boxes`
    std::map<std::string, std::vector<BoxId>> labels;   ///< by label in lower case
    /// Beside each row of the shed: its count was said by the keeper; too few were reported.
    struct RowState { bool said = false; bool short_reported = false; };
    std::vector<RowState> shed_states;
    /// Takings not extracted yet, indices into `out.takings`, ascending.
    std::vector<std::size_t> waiting;
    /// An extraction or packing of the day, not settled yet: what comes off on its day, written further on, may
    /// belong to it. `takings`: how many there were when it was written.
    struct Packing { FactId fact = 0; std::size_t takings = 0; };
    std::vector<Packing> packings;

    HiveHistory& hive(HiveId id) { return out.hives[static_cast<std::size_t>(id)]; }
    const HiveHistory& hive(HiveId id) const { return out.hives[static_cast<std::size_t>(id)]; }
    HiveState& state(HiveId id) { return states[static_cast<std::size_t>(id)]; }
    const HiveState& state(HiveId id) const { return states[static_cast<std::size_t>(id)]; }
    Box& box(BoxId id) { return out.boxes[static_cast<std::size_t>(id)]; }
    const Box& box(BoxId id) const { return out.boxes[static_cast<std::size_t>(id)]; }
    BoxState& box_state(BoxId id) { return box_states[static_cast<std::size_t>(id)]; }
    const BoxState& box_state(BoxId id) const { return box_states[static_cast<std::size_t>(id)]; }
    const Fact& fact(FactId id) const { return journal.facts[id]; }
    std::string name(HiveId id) const { return std::string(journal.hive_name(id)); }
};

/// All hives as they were set up, before the first fact (set_up.cpp).
Replay set_up(const Journal& journal, Day on);
/// One fact takes effect (effect.cpp).
void take_effect(Replay& r, FactId fact);
/// Empties the boxes of the day's extractions and packings (extraction.cpp).
void settle_packings(Replay& r);

// ---- boxes (boxes.cpp)

/// What a new box is like.
struct NewBox {
    Role role = Role::super;
    std::string kind;          ///< empty: the usual kind of its role
    int frames = 0;            ///< 0: its kind's number
    Comb comb = Comb::unsaid;  ///< unsaid: drawn, assumed
    std::string label;
};

BoxId make_box(Replay& r, const NewBox& what);
/// Gives a box its painted label. Two boxes may come to carry the same; the latest is found first.
void set_label(Replay& r, BoxId box, const std::string& label);
/// The box so labelled: on `hive` if one is there, else the last one to get the label; `no_box` if none.
BoxId labelled(const Replay& r, HiveId hive, const std::string& label);
/// The hive a box stands on, `no_hive` when on none.
HiveId stands_on(const Replay& r, BoxId box);
/// The share it was last seen filled since it was last emptied, permille; nothing when not seen.
std::optional<std::int64_t> last_share(const Replay& r, BoxId box, BoxSighting::What what);

// ---- stacks (stacks.cpp)

/// Place in the hive's stack where boxes of a role go by these words.
std::size_t place_for(const Replay& r, HiveId hive, Role role, Placing placing);
/// Puts a box on a hive; opens its stay.
void put_on(Replay& r, HiveId hive, BoxId box, std::size_t at, std::optional<Day> since, FactId fact);
/// Takes a box off the hive it stands on; closes its stay.
void take_away(Replay& r, HiveId hive, BoxId box, Day day, FactId fact);
std::size_t place_of(const Replay& r, HiveId hive, BoxId box);
/// The boxes of the role on the hive, from the floor up; `Role::any` for all.
std::vector<BoxId> boxes_on(const Replay& r, HiveId hive, Role role);
/// Marks that the boxes of a hive are others, or elsewhere, since this fact.
void stack_changed(Replay& r, HiveId hive, FactId fact);

}  // namespace waxtab::replaying
