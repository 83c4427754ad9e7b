#include "advice/bring.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "advice/disease.hpp"
#include "advice/shed_share.hpp"
#include "advice/supers.hpp"
#include "advice/todo.hpp"

namespace waxtab {
namespace {

bool needs_opening(Act act) {
    switch (act) {
        case Act::note: case Act::no_super: case Act::leave_super: case Act::leave_shut: case Act::extract: case Act::jar: case Act::shed:
        case Act::stand_still: return false;
        default: return true;
    }
}

void append(std::vector<FactId>& to, const std::vector<FactId>& facts) { to.insert(to.end(), facts.begin(), facts.end()); }

/// Plans one yard of the round.
class YardPlan {
public:
    YardPlan(const Context& context, const YardView& yard, const std::vector<Advice>& advice, Day day)
        : c_(context), yard_(yard), advice_(advice) {
        out_.yard = yard.id;
        out_.day = day;
    }

    YardRound plan() {
        standstill_ = suspected_disease(yard_).has_value();
        for (const HiveView* h : yard_.hives) plan_hive(*h);
        sort_stops();
        size_honey();
        for (const Seen& s : open_todos(c_))
            if (yard_of(s) == yard_.id) out_.todos.push_back(s.fact);
        remark();
        return std::move(out_);
    }

private:
    YardId yard_of(const Seen& s) const {
        return s.it->hive == no_hive ? s.it->yard : c_.history.hives[static_cast<std::size_t>(s.it->hive)].yard_on(c_.on);
    }

    void plan_hive(const HiveView& hive) {
        Stop stop;
        stop.hive = hive.id;
        bool open = false, super_advised = false;
        for (std::size_t i = 0; i < advice_.size(); ++i) {
            const Advice& a = advice_[i];
            if (a.hive != hive.id) continue;
            stop.advice.push_back(i);
            open = open || needs_opening(a.act);
            if (a.by && (!stop.by || *a.by < *stop.by)) stop.by = a.by;
            if (a.act == Act::add_super) super_advised = true, load_super(hive, a.box_kind, a.comb, a.count, a.because), stop.supers = a.count;
            else load_other(hive, a);
        }
        load_strips(hive);
        if (!super_advised) stop.supers = look_ahead(hive);
        if (!super_advised && stop.supers > 0) stop.chance_ahead = hive.chance_full(days_to_last());
        if (open || stop.supers > 0) out_.hives.push_back(std::move(stop));
    }

    SuperLoad& row(const std::string& kind, Comb comb) {
        for (SuperLoad& s : out_.supers)
            if (s.box_kind == kind && s.comb == comb) return s;
        SuperLoad fresh;
        fresh.box_kind = kind;
        fresh.comb = comb;
        out_.supers.push_back(std::move(fresh));
        return out_.supers.back();
    }

    void load_super(const HiveView& hive, const std::string& kind, Comb comb, int count, const std::vector<FactId>& because) {
        SuperLoad& load = row(kind, comb);
        load.count += count;
        load.hives.push_back(hive.id);
        load.claims.push_back(claim_of(hive, count, days_to_last()));
        append(load.because, because);
    }

    int days_to_last() const { return days_between(c_.on, out_.day) + c_.settings().visit_interval_days; }

    /// On the round a super has to last until the round after it. One more goes along where only the high end of
    /// the rate would need it.
    int look_ahead(const HiveView& hive) {
        if (standstill_ || hive.supers.empty() || !hive.estimate || flow_refuses_super(hive) || has_act(hive, Act::supers_off) ||
            has_act(hive, Act::stop_feed))
            return 0;
        const int days = days_to_last();
        const std::string& kind = hive.supers.back().box->kind;
        if (hive.chance_full(days) * 100 > c_.settings().accepted_risk_percent) {
            load_super(hive, kind, Comb::drawn, 1, hive.estimate->because);
            return 1;
        }
        if (hive.estimate->days_of_room.low < days) {
            SuperLoad& load = row(kind, Comb::drawn);
            ++load.reserve;
            load.reserve_hives.push_back(hive.id);
            append(load.because, hive.estimate->because);
        }
        return 0;
    }

    bool has_act(const HiveView& hive, Act act) const {
        return std::any_of(advice_.begin(), advice_.end(), [&](const Advice& a) { return a.hive == hive.id && a.act == act; });
    }

    void load_other(const HiveView& hive, const Advice& a) {
        if (a.act == Act::take_honey) {
            ++out_.escape_boards;
            append(out_.boards_because, a.because);
            load_boxes(hive, a.boxes);
        }
        if (a.act == Act::clear) load_boxes(hive, above_escape(hive));
        if (a.act == Act::feed) out_.feed.push_back(feed(hive, a));
    }

    static FeedLoad feed(const HiveView& hive, const Advice& a) {
        FeedLoad load;
        load.hive = hive.id;
        load.what = a.what;
        load.because = a.because;
        return load;
    }

    std::vector<BoxId> above_escape(const HiveView& hive) const {
        std::vector<BoxId> boxes;
        bool above = false;
        for (const Standing& s : hive.history->stack) {
            if (s.what == StackPart::What::escape) above = true;
            else if (above && s.what == StackPart::What::box) boxes.push_back(s.box);
        }
        return boxes;
    }

    void load_boxes(const HiveView& hive, const std::vector<BoxId>& boxes) {
        for (const SuperView& s : hive.supers) {
            if (std::find(boxes.begin(), boxes.end(), s.box->id) == boxes.end()) continue;
            ++out_.honey.supers;
            if (!s.estimate) continue;
            append(out_.honey.because, s.estimate->because);
            out_.honey.kg.low += s.estimate->kg.low;
            out_.honey.kg.value += s.estimate->kg.value;
            out_.honey.kg.high += s.estimate->kg.high;
        }
    }

    void load_strips(const HiveView& hive) {
        for (const Treating& t : hive.history->treatings) {
            if (t.to || t.fact == set_up_fact || c_.journal.facts[t.fact].kind == Kind::treatment) continue;
            std::optional<Day> due;
            if (t.meant_days) due = t.from + date::days{*t.meant_days};
            const bool now = due ? *due <= out_.day + date::days{c_.settings().visit_interval_days} : has_act(hive, Act::end_treatment);
            if (now) out_.strips.push_back({hive.id, t.substance, t.from, due, t.fact});
        }
    }

    void size_honey() {
        if (out_.honey.supers == 0) return;
        out_.honey.tubs = static_cast<int>(std::ceil(out_.honey.kg.high / HoneyLoad::tub_kg));
        for (auto s = c_.facts.rbegin(); s != c_.facts.rend(); ++s) {
            if (s->it->kind != Kind::jars || s->it->value.dimension != Dimension::mass || s->it->value.amount <= 0) continue;
            out_.honey.jar_size = Mass{s->it->value.amount};
            out_.honey.jars = static_cast<int>(std::ceil(out_.honey.kg.value / out_.honey.jar_size.kilograms()));
            out_.honey.because.push_back(s->fact);
            return;
        }
    }

    /// The hive under suspicion last, so that nothing is carried from it; else the most urgent first.
    void sort_stops() {
        const auto seen = suspected_disease(yard_);
        const Day never = Day{date::days{1000000}};
        std::stable_sort(out_.hives.begin(), out_.hives.end(), [&](const Stop& a, const Stop& b) {
            const auto key = [&](const Stop& s) { return std::pair{seen && s.hive == seen->it->hive, s.by.value_or(never)}; };
            return key(a) < key(b);
        });
    }

    void remark() {
        if (standstill_) out_.remarks.push_back("go here last and take nothing in or out: a notifiable disease is suspected");
        int counts = 0;
        for (const Advice& a : advice_)
            if (a.act == Act::count_mites && a.yard == yard_.id) counts += a.hive == no_hive ? static_cast<int>(a.hives.size()) : 1;
        if (counts > 0) out_.remarks.push_back(fmt::format("gear to count mites in {}", counted(counts, "hive")));
    }

    const Context& c_;
    const YardView& yard_;
    const std::vector<Advice>& advice_;
    YardRound out_;
    bool standstill_ = false;
};

// ---- which yards, and the shed ------------------------------------------------------------

bool pressing(const YardView& yard, const std::vector<Advice>& advice, Day to) {
    return std::any_of(advice.begin(), advice.end(), [&](const Advice& a) {
        return a.yard == yard.id && a.hive != no_hive && needs_opening(a.act) && a.by && *a.by <= to;
    });
}

std::optional<Day> due_day(const Context& c, const YardView& yard, const std::vector<Advice>& advice, Day from, Day to) {
    if (yard.hives.empty()) return std::nullopt;
    const Day visit = yard.last_visit ? *yard.last_visit + date::days{c.settings().visit_interval_days} : from;
    if (visit <= to) return std::max(from, visit);
    if (!pressing(yard, advice, to)) return std::nullopt;
    return from;
}

void check_supers(Round& round, const History& history) {
    for (const YardRound& y : round.yards)
        for (const SuperLoad& load : y.supers) {
            const std::string what = box_words(load.box_kind, load.comb);
            auto at = std::find_if(round.shed.begin(), round.shed.end(), [&](const ShedCheck& s) { return s.what == what; });
            if (at == round.shed.end()) {
                ShedCheck fresh;
                fresh.what = what;
                if (history.shed_said) fresh.in_shed = supers_in_shed(history, load.box_kind, load.comb, fresh.because);
                at = round.shed.insert(round.shed.end(), std::move(fresh));
            }
            at->wanted += load.count;
            at->reserve += load.reserve;
            at->claims.insert(at->claims.end(), load.claims.begin(), load.claims.end());
            append(at->because, load.because);
        }
}

void check_boards(Round& round, const History& history) {
    ShedCheck boards;
    boards.what = "escape board";
    for (const YardRound& y : round.yards) boards.wanted += y.escape_boards, append(boards.because, y.boards_because);
    if (boards.wanted == 0) return;
    for (const ShedRow& row : history.shed)
        if (mentions(row.what, "escape") || mentions(row.what, "clearer")) {
            boards.in_shed = boards.in_shed.value_or(0) + row.count;
            append(boards.because, row.facts);
        }
    round.shed.push_back(std::move(boards));
}

}  // namespace

Round bring(const Journal& journal, const History& history, const Estimates& estimates, const std::vector<Advice>& advice, Day from, Day to) {
    const Ledger no_ledger;
    const Context context(journal, history, estimates, no_ledger);
    Round round;
    round.from = from;
    round.to = to;
    for (const YardView& yard : context.yards)
        if (const auto day = due_day(context, yard, advice, from, to)) round.yards.push_back(YardPlan(context, yard, advice, *day).plan());
    std::stable_sort(round.yards.begin(), round.yards.end(), [&](const YardRound& a, const YardRound& b) {
        const auto key = [&](const YardRound& y) { return std::pair{suspected_disease(context.yard(y.yard)).has_value(), y.day}; };
        return key(a) < key(b);
    });
    check_supers(round, history);
    check_boards(round, history);
    for (ShedCheck& s : round.shed)
        if (s.in_shed) {
            s.short_by = std::max(0, s.wanted - *s.in_shed);
            share_out(s.claims, *s.in_shed);
        }
    for (const Seen& s : open_todos(context))
        if (s.it->hive == no_hive && s.it->yard == no_yard) round.todos.push_back(s.fact);
    return round;
}

}  // namespace waxtab
