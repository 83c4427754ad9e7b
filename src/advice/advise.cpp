#include <algorithm>

#include "advice/rule.hpp"
#include "advice/settle.hpp"

namespace waxtab {
namespace {

/// Leaves out what the rules left to the table.
void sign(Advice& a, const Rule& rule, HiveId hive, YardId yard) {
    a.rule = rule.entry.name;
    a.source = rule.entry.source;
    if (a.hive == no_hive) a.hive = hive;
    if (a.yard == no_yard) a.yard = yard;
    std::sort(a.because.begin(), a.because.end());
    a.because.erase(std::unique(a.because.begin(), a.because.end()), a.because.end());
}

void give(std::vector<Advice>& out, Advices advices, const Rule& rule, HiveId hive, YardId yard) {
    for (Advice& a : advices) {
        sign(a, rule, hive, yard);
        out.push_back(std::move(a));
    }
}

/// Applies one rule of any kind to everything it looks at.
struct Apply {
    const Context& context;
    const Rule& rule;
    std::vector<Advice>& out;

    void operator()(HiveRule f) const {
        for (const HiveView& h : context.hives) give(out, f(h), rule, h.id, h.yard);
    }
    void operator()(YardRule f) const {
        for (const YardView& y : context.yards)
            if (!y.hives.empty()) give(out, f(y), rule, no_hive, y.id);
    }
    void operator()(WholeRule f) const { give(out, f(context), rule, no_hive, no_yard); }
    void operator()(AmendRule) const {}
    void operator()(AllRule) const {}
};

void amend(const Context& context, Advice& a) {
    const auto hive = std::find_if(context.hives.begin(), context.hives.end(), [&](const HiveView& h) { return h.id == a.hive; });
    if (hive == context.hives.end()) return;
    for (const Rule& rule : rule_table()) {
        const AmendRule* f = std::get_if<AmendRule>(&rule.apply);
        if (f && (*f)(*hive, a)) a.also.emplace_back(rule.entry.name);
    }
    std::sort(a.because.begin(), a.because.end());
    a.because.erase(std::unique(a.because.begin(), a.because.end()), a.because.end());
}

/// Rules that weigh all advice against each other, once it stands.
void weigh(const Context& context, std::vector<Advice>& all) {
    for (const Rule& rule : rule_table()) {
        const AllRule* f = std::get_if<AllRule>(&rule.apply);
        if (f) give(all, (*f)(context, all), rule, no_hive, no_yard);
    }
}

}  // namespace

std::vector<Advice> advise(const Journal& journal, const History& history, const Estimates& estimates, const Ledger& ledger) {
    const Context context(journal, history, estimates, ledger);
    std::vector<Advice> all;
    for (const Rule& rule : rule_table()) std::visit(Apply{context, rule, all}, rule.apply);
    all = settle(std::move(all));
    for (Advice& a : all) amend(context, a);
    weigh(context, all);
    sort_by_urgency(all);
    return all;
}

}  // namespace waxtab
