#include <algorithm>
#include <cstdint>
#include <tuple>

#include <fmt/format.h>

#include "advice/context.hpp"
#include "advice/words.hpp"
#include "handbook/calendar.hpp"
#include "report/calendar.hpp"
#include "report/phrases.hpp"

namespace waxtab {

namespace {

/// FNV-1a, 64 bits (Fowler, Noll, Vo; draft-eastlake-fnv).
std::string fingerprint(std::string_view text) {
    std::uint64_t hash = 0xcbf29ce484222325u;
    for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3u;
    return fmt::format("{:016x}", hash);
}

/// Collects the events of a journal.
class Collector {
public:
    Collector(const Context& context, const std::vector<Advice>& advice, const Style& style)
        : c_(context), advice_(advice), style_(style) {}

    std::vector<CalendarEvent> collect() {
        for (const YardView& yard : c_.yards)
            if (!yard.hives.empty()) visit(yard);
        for (const HiveView& hive : c_.hives) {
            new_queen(hive);
            treatments(hive);
            for (const SuperView& super : hive.supers) fit_to_take(hive, super);
        }
        for (const Advice& piece : advice_)
            if (piece.act == Act::todo) todo(piece);
        std::stable_sort(events_.begin(), events_.end(), [](const CalendarEvent& a, const CalendarEvent& b) {
            return std::tie(a.from, a.title, a.uid) < std::tie(b.from, b.title, b.uid);
        });
        return std::move(events_);
    }

private:
    /// Adds an event that is not wholly past. `facts` is what makes it this event and no other.
    void add(std::string_view category, std::string_view facts, Day from, Day to, std::string title, std::string details) {
        if (to < c_.on) return;
        std::string uid = fmt::format("{}-{}@waxtab", category, fingerprint(facts));
        // The same to-do written twice is one event.
        if (std::any_of(events_.begin(), events_.end(), [&](const CalendarEvent& e) { return e.uid == uid; })) return;
        events_.push_back({std::move(uid), std::move(title), std::move(details), category, from, to});
    }

    std::string_view name(const HiveView& hive) const { return c_.journal.hive_name(hive.id); }

    std::string with_lines(std::string text, const std::vector<FactId>& facts) const {
        const std::string refs = refs_text(c_.journal, facts, style_);
        return refs.empty() ? text : text + "\nwritten in " + refs;
    }

    Day visit_day(const YardView& yard) const {
        const Day due = yard.last_visit ? *yard.last_visit + date::days{c_.settings().visit_interval_days} : c_.on;
        return std::max(due, c_.on);
    }

    void visit(const YardView& yard) {
        const std::string_view yard_name = c_.journal.yard_name(yard.id);
        const Day day = visit_day(yard);
        std::string details = yard.last_visit ? "last visit " + iso(*yard.last_visit) : std::string("no visit noted yet");
        for (const Advice& piece : advice_) {
            const bool here = piece.hive != no_hive && c_.history.hives[static_cast<std::size_t>(piece.hive)].yard_on(c_.on) == yard.id;
            if (!here || piece.act == Act::todo || !piece.by || *piece.by > day) continue;
            details += fmt::format("\n{}: {}", c_.journal.hive_name(piece.hive), piece.what);
        }
        add("visit", fmt::format("visit\n{}", yard_name), day, day, fmt::format("Visit {}", yard_name), std::move(details));
    }

    void new_queen(const HiveView& hive) {
        if (!hive.queen.clock) return;
        const QueenClock& clock = *hive.queen.clock;
        const std::string facts = fmt::format("{}\n{}", name(hive), iso(clock.day));
        const std::string counted_from = with_lines(fmt::format("counted from {}", iso(clock.day)), {clock.fact});
        if (const auto quiet = handbook::quiet_time(clock.start))
            add("queen", "shut\n" + facts, clock.at(quiet->from), clock.at(quiet->to),
                fmt::format("{}: leave shut, a virgin emerges, flies and mates", name(hive)), counted_from);
        const handbook::Window eggs = handbook::first_eggs(clock.start);
        add("queen", "eggs\n" + facts, clock.at(eggs.usual_from), clock.at(eggs.usual_to),
            fmt::format("{}: look for eggs of the new queen", name(hive)), counted_from);
        add("queen", "overdue\n" + facts, clock.at(eggs.overdue), clock.at(eggs.overdue),
            fmt::format("{}: no eggs by now? Give a test frame", name(hive)), counted_from);
    }

    void treatments(const HiveView& hive) {
        for (const Treating& treating : hive.history->treatings) {
            if (treating.to || !treating.meant_days || treating.fact == set_up_fact) continue;
            const Day due = std::max(c_.on, treating.from + date::days{*treating.meant_days});
            add("treatment", fmt::format("{}\n{}\n{}", name(hive), treating.substance, iso(treating.from)), due, due,
                fmt::format("{}: {} is meant to come out", name(hive), treating.substance),
                with_lines(fmt::format("in since {}, meant for {}; the product label decides", iso(treating.from),
                                       waxtab::counted(*treating.meant_days, "day")), {treating.fact}));
        }
    }

    /// Of a nearly empty super the day says nothing a keeper can use.
    void fit_to_take(const HiveView& hive, const SuperView& super) {
        constexpr double worth_foretelling = 0.25;
        if (!super.estimate || !super.estimate->ripe_likely || super.full() < worth_foretelling) return;
        const SuperEstimate& estimate = *super.estimate;
        const Day day = std::max(c_.on, *estimate.ripe_likely);
        std::string details = fmt::format("by the capping: {} full, {} capped now", share_text(estimate.full),
                                          share_text(estimate.capped));
        if (estimate.ripe_early && estimate.ripe_late)
            details += fmt::format("\nin 8 cases of 10 between {} and {}", iso(*estimate.ripe_early), iso(*estimate.ripe_late));
        const std::string since = super.since ? iso(*super.since) : std::string("start");
        add("honey", fmt::format("{}\n{}\n{}\n{}", name(hive), since, super.box->label, super.place), day, day,
            fmt::format("{}: {} likely fit to take", name(hive), super_name(hive, super)),
            with_lines(std::move(details), estimate.because));
    }

    void todo(const Advice& piece) {
        if (piece.because.empty() || piece.because.front() == set_up_fact) return;
        const Fact& fact = c_.journal.facts[piece.because.front()];
        const YardId yard = piece.hive != no_hive ? c_.history.hives[static_cast<std::size_t>(piece.hive)].yard_on(c_.on) : piece.yard;
        const Day usual = yard != no_yard ? visit_day(c_.yard(yard)) : c_.on;
        const Day day = std::max(c_.on, piece.by.value_or(usual));
        const std::string_view where = piece.hive != no_hive ? c_.journal.hive_name(piece.hive) : c_.journal.yard_name(yard);
        add("to-do", fmt::format("{}\n{}\n{}", where, iso(fact.noted), fact.text), day, day,
            where.empty() ? fact.text : fmt::format("{}: {}", where, fact.text),
            with_lines(fmt::format("noted {}", iso(fact.noted)), piece.because));
    }

    const Context& c_;
    const std::vector<Advice>& advice_;
    const Style& style_;
    std::vector<CalendarEvent> events_;
};

}  // namespace

std::vector<CalendarEvent> calendar_events(const Journal& journal, const History& history, const Estimates& estimates,
                                           const Ledger& ledger, const std::vector<Advice>& advice, const Style& style) {
    const Context context(journal, history, estimates, ledger);
    return Collector(context, advice, style).collect();
}

}  // namespace waxtab
