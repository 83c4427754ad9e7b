#include "ledger/books.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "handbook/density.hpp"

namespace waxtab {

Books::Books(const Journal& j, const History& h, const Estimates& e) : journal(j), history(h), estimates(e) {
    ledger.on = h.on;
    for (std::size_t i = 0; i < j.facts.size(); ++i)
        if (j.facts[i].noted > j.facts[i].happened) backdated.push_back(static_cast<FactId>(i));
}

void Books::go_to(Day day) {
    for (; to_come < history.takings.size() && taking(to_come).day <= day; ++to_come)
        if (taking(to_come).harvest) waiting.push_back(to_come);
}

Diagnostic& say(Books& books, Severity severity, std::string_view code, FactId about, std::string title) {
    Diagnostic d;
    d.code = code;
    d.severity = severity;
    if (about != set_up_fact) d.span = books.fact(about).span;
    d.title = std::move(title);
    books.ledger.diagnostics.push_back(std::move(d));
    return books.ledger.diagnostics.back();
}

void cite(const Books& books, Diagnostic& diagnostic, FactId fact, std::string text) {
    constexpr std::size_t most = 8;
    if (fact == set_up_fact || diagnostic.related.size() >= most) return;
    const Span span = books.fact(fact).span;
    const bool there = std::any_of(diagnostic.related.begin(), diagnostic.related.end(),
                                   [&](const Related& r) { return r.span == span; });
    if (there || span == diagnostic.span) return;
    diagnostic.related.push_back({span, std::move(text)});
}

void cite(const Books& books, Diagnostic& diagnostic, const std::vector<FactId>& facts, const std::string& text) {
    for (const FactId f : facts) cite(books, diagnostic, f, text);
}

void assume(Books& books, FactId fact, std::string text) {
    books.ledger.assumptions.push_back({fact, std::move(text)});
}

std::string words(const Books& books, Mass mass) { return text_of(mass, books.journal.settings.mass, 2); }

std::string jars_words(int count, Mass size, bool comb) {
    if (comb) return fmt::format("{} {} of comb", count, count == 1 ? "piece" : "pieces");
    return fmt::format("{} {} of {}", count, count == 1 ? "jar" : "jars", jar_text(size));
}

std::string jar_text(Mass size) {
    constexpr std::int64_t gram = 1'000'000'000, ounce = 28'349'523'125, pound = 16 * ounce;
    if (size.ng % pound == 0 && size.ng > 0) return fmt::format("{} lb", size.ng / pound);
    if (size.ng % ounce == 0 && size.ng > 0) return fmt::format("{} oz", size.ng / ounce);
    const std::int64_t g = size.whole_grams();
    if (g < 1000 || size.ng % gram != 0) return fmt::format("{} g", g);
    return fmt::format("{:g} kg", static_cast<double>(g) / 1000.0);
}

std::optional<MassRange> honey_of(const Measure& m) {
    if (m.amount <= 0) return {};
    if (m.dimension == Dimension::mass) return MassRange{{m.low}, {m.amount}, {m.high}, m.low == m.high};
    if (m.dimension != Dimension::volume) return {};
    constexpr double nanolitres = 1e9;
    const auto at = [&](std::int64_t v) { return handbook::honey_kg(static_cast<double>(v) / nanolitres); };
    return MassRange{Mass::from_kilograms(at(m.low).low), Mass::from_kilograms(at(m.amount).typical),
                     Mass::from_kilograms(at(m.high).high), false};
}

MassRange operator+(const MassRange& a, const MassRange& b) {
    return {a.low + b.low, a.value + b.value, a.high + b.high, a.weighed && b.weighed};
}

void add_once(std::vector<FactId>& facts, FactId fact) {
    if (fact == set_up_fact) return;
    if (std::find(facts.begin(), facts.end(), fact) == facts.end()) facts.push_back(fact);
}

void add_once(std::vector<FactId>& facts, const std::vector<FactId>& more) {
    for (const FactId f : more) add_once(facts, f);
}

}  // namespace waxtab
