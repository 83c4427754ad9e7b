#include "estimate/tape.hpp"

#include <algorithm>
#include <optional>
#include <tuple>

namespace waxtab {
namespace {

using What = TapeEntry::What;

std::int64_t order_of(FactId fact) { return fact == set_up_fact ? -1 : static_cast<std::int64_t>(fact); }

class Writer {
public:
    Writer(const Journal& journal, const History& history)
        : journal_(journal), history_(history), first_(journal.hives.size()) {}

    std::vector<TapeEntry> write() {
        for (const Box& box : history_.boxes)
            if (box.role == Role::super) boxes(box);
        for (std::size_t i = 0; i < history_.takings.size(); ++i) {
            frames(i);
            weighed(i);
        }
        for (const HiveHistory& hive : history_.hives) facts_of(hive);
        for (std::size_t y = 0; y < history_.yard_facts.size(); ++y) facts_of_yard(static_cast<YardId>(y));
        for (FactId fact : history_.honey_facts)
            if (journal_.facts[fact].kind == Kind::extracted) add(What::extracted, journal_.facts[fact].happened, fact, no_hive, fact);
        for (const HiveHistory& hive : history_.hives) arrivals(hive);
        set_up_days();
        std::stable_sort(tape_.begin(), tape_.end(), [](const TapeEntry& a, const TapeEntry& b) {
            return std::tie(a.day, a.order) < std::tie(b.day, b.order);
        });
        return std::move(tape_);
    }

private:
    TapeEntry& add(What what, Day day, FactId fact, HiveId hive, std::size_t index) {
        tape_.push_back({day, order_of(fact), what, hive, no_yard, no_box, index});
        if (hive != no_hive) met(hive, day);
        return tape_.back();
    }

    void met(HiveId hive, Day day) {
        auto& first = first_[static_cast<std::size_t>(hive)];
        if (!first || day < *first) first = day;
    }

    void boxes(const Box& box) {
        for (std::size_t i = 0; i < box.stays.size(); ++i) {
            const BoxStay& stay = box.stays[i];
            // A stay from before the first dated fact starts with the hive: its day is filled in last.
            if (stay.from) add(What::box_on, *stay.from, stay.on_fact, stay.hive, i).box = box.id;
            else tape_.push_back({Day{}, -1, What::box_on, stay.hive, no_yard, box.id, i});
            if (stay.to) add(What::box_off, *stay.to, stay.off_fact, stay.hive, i).box = box.id;
        }
        for (std::size_t i = 0; i < box.sightings.size(); ++i) {
            const BoxSighting& s = box.sightings[i];
            add(What::sighting, s.day, s.fact, hive_of(box, s), i).box = box.id;
        }
    }

    /// The hive a box stood on when it was seen; none when it stood on none.
    static HiveId hive_of(const Box& box, const BoxSighting& s) {
        HiveId found = no_hive;
        // A box may be seen and moved on one day: then the order of the facts decides.
        for (const BoxStay& stay : box.stays) {
            const bool come = !stay.from || *stay.from < s.day || (*stay.from == s.day && order_of(stay.on_fact) <= s.fact);
            const bool gone = stay.to && (*stay.to < s.day || (*stay.to == s.day && order_of(stay.off_fact) < s.fact));
            if (come && !gone) found = stay.hive;
        }
        return found;
    }

    void frames(std::size_t index) {
        const Taking& taking = history_.takings[index];
        if (taking.box != no_box || !taking.harvest) return;
        TapeEntry& entry = add(What::frames_off, taking.day, taking.fact, taking.hive, index);
        for (const Event& event : history_.hives[static_cast<std::size_t>(taking.hive)].events)
            if (event.fact == taking.fact) entry.box = event.box;
    }

    /// A taking teaches about the keeper from the day its last weight was noted.
    void weighed(std::size_t index) {
        const Taking& taking = history_.takings[index];
        if (!taking.net && !taking.gross) return;
        FactId last = taking.fact;
        for (FactId fact : taking.weighings) last = std::max(last, fact);
        if (last != set_up_fact) add(What::weighed, std::max(taking.day, journal_.facts[last].happened), last, no_hive, index);
    }

    static bool touches(Kind kind) {
        switch (kind) {
            case Kind::hive_weight: case Kind::weight_change: case Kind::strength: case Kind::flow:
            case Kind::swarmed: case Kind::hive_split: case Kind::nuc_made: case Kind::hive_united:
            case Kind::frames_moved: case Kind::feed: case Kind::brood_box_on: case Kind::brood_box_off:
                return true;
            default: return false;
        }
    }

    void facts_of(const HiveHistory& hive) {
        for (const Event& event : hive.events) {
            if (event.fact == set_up_fact) continue;
            met(hive.hive, event.day);
            if (touches(journal_.facts[event.fact].kind)) add(What::hive_fact, event.day, event.fact, hive.hive, event.fact);
        }
    }

    void facts_of_yard(YardId yard) {
        for (FactId fact : history_.yard_facts[static_cast<std::size_t>(yard)])
            add(What::yard_fact, journal_.facts[fact].happened, fact, no_hive, fact).yard = yard;
    }

    void arrivals(const HiveHistory& hive) {
        const auto& first = first_[static_cast<std::size_t>(hive.hive)];
        if (!first) return;
        YardId now = hive.yard_on(*first);
        tape_.push_back({*first, -2, What::arrive, hive.hive, now, no_box, 0});
        for (const auto& [day, yard] : hive.yards) {
            if (day <= *first || yard == now) continue;
            now = yard;
            // After the day's own facts: what was read that day was read before the journey.
            tape_.push_back({day, order_of(set_up_fact - 1), What::arrive, hive.hive, yard, no_box, 0});
        }
        if (hive.ended) tape_.push_back({*hive.ended, order_of(set_up_fact - 1), What::end, hive.hive, no_yard, no_box, 0});
    }

    void set_up_days() {
        std::erase_if(tape_, [&](const TapeEntry& e) { return e.order == -1 && e.day == Day{} && e.hive != no_hive && !first_[static_cast<std::size_t>(e.hive)]; });
        for (TapeEntry& e : tape_)
            if (e.order == -1 && e.day == Day{} && e.hive != no_hive) e.day = *first_[static_cast<std::size_t>(e.hive)];
    }

    const Journal& journal_;
    const History& history_;
    std::vector<std::optional<Day>> first_;
    std::vector<TapeEntry> tape_;
};

}  // namespace

std::vector<TapeEntry> tape_of(const Journal& journal, const History& history) { return Writer(journal, history).write(); }

}  // namespace waxtab
