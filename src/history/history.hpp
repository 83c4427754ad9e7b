#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "diagnostics/diagnostic.hpp"
#include "facts/journal.hpp"

namespace waxtab {

/// Index of a fact in `Journal::facts`; `set_up_fact` for what a set-up line brought in.
using FactId = std::uint32_t;
inline constexpr FactId set_up_fact = 0xffffffffu;

/// Index into `History::boxes`. A box keeps its id when it is moved, swapped or goes to another hive.
using BoxId = std::int32_t;
inline constexpr BoxId no_box = -1;

/// What was seen or weighed of one box.
struct BoxSighting {
    enum class What : std::uint8_t { full, capped, drawn, gross_weight, shakes_out, brood, moisture };
    What what = What::full;
    Day day{};
    FactId fact = 0;
    /// Permille for shares and moisture, nanograms for weights, 1/0 for yes and no; a range where the words left one.
    std::int64_t amount = 0, low = 0, high = 0;
    /// For weights: "before", "after" extraction or "".
    std::string_view detail;
    /// The reading was repeated by "no change", not taken anew.
    bool repeated = false;
};

/// A stretch of time a box stood on a hive.
struct BoxStay {
    HiveId hive = no_hive;
    /// Nothing when it stood there from before the first dated fact.
    std::optional<Day> from;
    /// Nothing while it stands there.
    std::optional<Day> to;
    FactId on_fact = set_up_fact;
    FactId off_fact = set_up_fact;   ///< meaningful when `to` is set
};

/// A box with its frames, known for life.
struct Box {
    BoxId id = no_box;
    Role role = Role::super;
    std::string kind;                ///< name of its BoxKind
    int frames = 0;                  ///< frames in it
    Comb comb = Comb::drawn;         ///< what it was last put on with
    std::string label;
    bool kind_assumed = false, comb_assumed = false;
    std::vector<BoxStay> stays;      ///< in time order; the last is open while the box is on a hive
    std::vector<BoxSighting> sightings;  ///< in order of effect
    /// The box was emptied by extraction on this day (its honey is gone): estimates start anew.
    std::vector<Day> emptied;
    int comb_year = 0;               ///< the year its comb was drawn, 0 when not said
    FactId comb_year_fact = set_up_fact;
};

/// One thing standing on a hive's floor, from below.
struct Standing {
    StackPart::What what = StackPart::What::box;
    BoxId box = no_box;
    std::optional<Day> since;
    FactId fact = set_up_fact;
};

/// A super or frames taken off for honey, with what is known of their weight.
struct Taking {
    HiveId hive = no_hive;
    Day day{};
    FactId fact = 0;
    BoxId box = no_box;              ///< no_box for frames
    int frames = 0;                  ///< when only frames were taken
    std::optional<Mass> gross;       ///< weighed with honey, box and frames
    std::optional<Mass> tare;        ///< weighed after extraction
    std::optional<Mass> net;         ///< gross - tare when both were weighed, or a weight said to be of honey
    std::vector<FactId> weighings;   ///< the facts behind the three
    /// Empty or taken off for other reasons: not a harvest.
    bool harvest = true;
    /// The super went back on unextracted.
    std::optional<Day> returned;
    /// The fact (extracted, combs packed) by which its honey went into a lot; none while it waits.
    std::optional<FactId> extracted;
};

/// One line of a hive's story, for the timeline.
struct Event {
    Day day{};
    FactId fact = set_up_fact;
    BoxId box = no_box;              ///< the box the fact resolved to, if one
    std::vector<BoxId> boxes;        ///< all of them, where several
};

/// Feed given: `to` is set by the feeder coming off or running empty; see feed_span.hpp for how long it counts.
struct Feeding { Day from{}; std::optional<Day> to; FactId fact = 0; };
/// A treatment on a hive; `to` unset while strips are in.
struct Treating { Day from{}; std::optional<Day> to; FactId fact = 0; std::string substance; std::optional<int> meant_days; };

struct HiveHistory {
    HiveId hive = no_hive;
    /// False before the fact that brought it into being, and after its end.
    bool alive = true;
    std::optional<Day> born;         ///< unset: from before the first dated fact, or not yet
    std::optional<Day> ended;
    FactId end_fact = set_up_fact;
    HiveId mother = no_hive;         ///< hive it was split or swarmed from
    HiveId united_into = no_hive;
    std::vector<std::pair<Day, YardId>> yards;  ///< where it stood from when; first may be Day{} (from the start)
    std::vector<Standing> stack;     ///< as of the day stood on, floor up; a dead hive's stands till taken away
    std::vector<Event> events;       ///< every fact about this hive, in order of effect
    std::vector<Feeding> feedings;
    std::vector<Treating> treatings;
    std::vector<Day> visits;         ///< days with any observation or action at the hive, ascending, unique

    YardId yard_on(Day day) const;
};

/// Boxes in the shed by kind and comb, and other gear by name.
struct ShedRow {
    std::string what;
    std::string box_kind;
    Comb comb = Comb::unsaid;
    int count = 0;
    std::vector<FactId> facts;
    int frozen = 0;                  ///< of `count`, those frozen against wax moth since they came in
    std::vector<FactId> frozen_facts;
};

/// All hives of a journal, replayed up to a day.
struct History {
    Day on{};
    std::vector<HiveHistory> hives;  ///< parallel to Journal::hives
    std::vector<Box> boxes;
    std::vector<Taking> takings;     ///< in order of effect
    std::vector<ShedRow> shed;       ///< `what`: super, brood box, excluder, escape board, frame
    bool shed_said = false;
    /// Facts about a yard (flow, bloom, weather, temperature) and about honey and words, in order.
    std::vector<std::vector<FactId>> yard_facts;  ///< parallel to Journal::yards
    std::vector<FactId> honey_facts;              ///< extracted, moisture of lots, jars, gone_out ... in order
    std::vector<FactId> todos;
    /// Contradictions, each citing the earlier line it contradicts.
    Diagnostics diagnostics;

    /// Supers on `hive` now, from the brood up.
    std::vector<BoxId> supers_on(HiveId hive) const;
    std::vector<BoxId> brood_boxes_on(HiveId hive) const;
};

/// Replays the facts noted by `on` and having happened by `on`. Goes on after a contradiction.
History replay(const Journal& journal, Day on);

/// Frames in a box as written, else its kind's number.
int frames_of(const Journal& journal, const Box& box);

}  // namespace waxtab
