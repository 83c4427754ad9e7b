// Treatments against honey supers, strips that stay too long, heat. Substances only; label and law decide.
#include <algorithm>

#include <fmt/format.h>

#include "advice/harvest.hpp"
#include "handbook/varroa.hpp"

namespace waxtab {
namespace {

/// Days after which strips without a noted end are asked about: the most an authority's text seen allows.
constexpr int strips_ask_days = handbook::amitraz_most_days;

std::string substance(const Treating& t) { return t.substance.empty() ? std::string("a treatment") : t.substance; }

bool running(const HiveView& hive, const Treating& t) { return !t.to || *t.to >= hive.on(); }

bool given_at_once(const HiveView& hive, const Treating& t) {
    return t.fact != set_up_fact && hive.journal().facts[t.fact].kind == Kind::treatment;
}

Advices with_supers(const HiveView& hive) {
    if (hive.supers.empty()) return {};
    for (auto t = hive.history->treatings.rbegin(); t != hive.history->treatings.rend(); ++t) {
        if (!running(hive, *t)) continue;
        Advice a = advise_to(Act::supers_off, Rank::law_and_food,
                             fmt::format("read the label of {}: honey supers are on; supers off or treatment out unless it allows both",
                                         substance(*t)));
        a.by = hive.on();
        how_sure(a, Sureness::certain, "");
        a.reasons.push_back(fmt::format("{} in since {}, {} on", substance(*t), iso(t->from),
                                        counted(static_cast<int>(hive.supers.size()), "super")));
        a.reasons.push_back("labels differ by country, product and year; no honey from these supers until you have cleared it");
        for (const SuperView& s : hive.supers) a.boxes.push_back(s.box->id);
        because(a, t->fact);
        because(a, hive.supers.back().on_fact);
        return {a};
    }
    return {};
}

Advices supers_were_on(const HiveView& hive) {
    Advice a = advise_to(Act::leave_super, Rank::law_and_food, "");
    std::vector<std::string> names;
    const Treating* over = nullptr;
    for (const SuperView& s : hive.supers)
        for (const Treating& t : hive.history->treatings) {
            if (running(hive, t) || cleared_by_keeper(hive, t.from)) continue;
            if (!stood_within(*s.box, hive.id, t.from, *t.to)) continue;
            over = &t;
            if (a.boxes.empty() || a.boxes.back() != s.box->id) {
                names.push_back(super_name(hive, s));
                a.boxes.push_back(s.box->id);
            }
            because(a, t.fact);
        }
    if (!over) return {};
    a.what = fmt::format("keep the honey of {} apart until you have cleared it with label and law", listed(names));
    how_sure(a, Sureness::certain, "");
    a.reasons.push_back(fmt::format("on during {} ({} to {}); marked until emptied or noted as cleared", substance(*over),
                                    iso(over->from), iso(*over->to)));
    return {a};
}

Advice strips_out(const HiveView& hive, const Treating& t, Day due) {
    Advice a = advise_to(Act::end_treatment, Rank::law_and_food, fmt::format("take the {} strips out", substance(t)));
    a.by = due;
    how_sure(a, Sureness::certain, "");
    const int in = days_between(t.from, hive.on());
    a.reasons.push_back(fmt::format("in for {}, noted for {}", counted(in, "day"), counted(*t.meant_days, "day")));
    because(a, t.fact);
    return a;
}

Advices strips_due(const HiveView& hive) {
    Advices out;
    for (const Treating& t : hive.history->treatings) {
        if (t.to || given_at_once(hive, t)) continue;
        const int in = days_between(t.from, hive.on());
        if (t.meant_days) {
            const Day due = t.from + date::days{*t.meant_days};
            if (due <= hive.next_visit() + date::days{hive.settings().visit_interval_days}) out.push_back(strips_out(hive, t, due));
        } else if (in > strips_ask_days) {
            Advice a = advise_to(Act::end_treatment, Rank::law_and_food,
                                 fmt::format("look up how long {} may stay in, and take it out", substance(t)));
            a.by = hive.on();
            how_sure(a, Sureness::likely, "no time was noted");
            a.reasons.push_back(fmt::format("in for {}; {} was the most on one label seen", counted(in, "day"),
                                            counted(strips_ask_days, "day")));
            because(a, t.fact);
            out.push_back(std::move(a));
        }
    }
    return out;
}

// ---- heat -----------------------------------------------------------------------------------

struct HeatLimit { std::string_view substance; double celsius; std::string_view what; };
constexpr HeatLimit heat_limits[] = {
    {"formic", handbook::formic_acid_most_celsius, "labels seen for formic acid strips: 10-29.5 C (50-85 F) on the first day"},
    {"thymol", 30.0, "labels seen for thymol: 30 C (86 F) at most, little effect below 15 C (59 F)"},
};

const HeatLimit* heat_limit(std::string_view substance) {
    for (const HeatLimit& h : heat_limits)
        if (mentions(substance, h.substance)) return &h;
    return nullptr;
}

/// A hot day longer ago is no news; own judgement.
constexpr int hot_news_days = 14;

std::optional<Seen> hottest(const HiveView& hive, Day from, Day to, double above) {
    std::optional<Seen> best;
    for (const Seen& s : hive.all->yard(hive.yard).facts) {
        if (s.it->kind != Kind::temperature || s.day < from || s.day > to) continue;
        if (static_cast<double>(s.it->value.amount) / 1000.0 <= above) continue;
        if (!best || s.it->value.amount > best->it->value.amount) best = s;
    }
    return best;
}

Advices too_warm(const HiveView& hive) {
    for (const Treating& t : hive.history->treatings) {
        const HeatLimit* limit = heat_limit(t.substance);
        const Day end = t.to.value_or(hive.on());
        if (!limit || days_between(end, hive.on()) > 7) continue;
        const auto hot = hottest(hive, std::max(t.from, hive.on() - date::days{hot_news_days}), end, limit->celsius);
        if (!hot) continue;
        Advice a = advise_to(Act::note, Rank::rest, fmt::format("too warm for {}: look at the label and at the queen", t.substance));
        a.by = hive.on();
        how_sure(a, Sureness::likely, "");
        a.reasons.push_back(fmt::format("{} on {}; {}", text_of(hot->it->value), iso(hot->day), limit->what));
        because(a, t.fact);
        because(a, hot->fact);
        return {a};
    }
    return {};
}

}  // namespace

std::vector<Rule> treatment_rules() {
    return {
        {{"treatment-with-supers", "A treatment in the hive with honey supers on: the label decides; else one of the two comes out.",
          "labels and notices differ: VMD and NBU notice (amitraz), SPC AN 01017/2013 (thymol), SPC AN 01519/2014 (oxalic acid), 40 CFR "
          "180.1381", "Treatments"},
         &with_supers},
        {{"treated-super", "Supers that were on during a treatment stay marked until emptied or cleared by the keeper.",
          "as treatment-with-supers; food law's record of treatments, Reg. (EU) 2019/6 art. 108", "Treatments"},
         &supers_were_on},
        {{"strips-out", "Strips come out on the day noted for them; without a note the label is asked about after 56 days.",
          "the keeper's own note; 56 days: beekeepers' news of 24 Oct 2012 (amitraz strips, USA)", "Treatments"},
         &strips_due},
        {{"treatment-too-warm", "Formic acid above 29.5 C and thymol above 30 C are outside the labels seen.",
          "label Vm 40476/4000 (formic acid); SPC AN 01911/2010, AN 01017/2013 (thymol)", "Treatments"},
         &too_warm},
    };
}

}  // namespace waxtab
