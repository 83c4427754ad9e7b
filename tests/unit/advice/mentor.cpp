#include "mentor.hpp"

#include <algorithm>
#include <set>

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace waxtab;

Advised advised(const std::string& text, const std::string& on) {
    return advised(read_journal({{"a.hive", text}}, *day_from_iso(on)), on);
}

Advised advised(Journal journal, const std::string& on) {
    Advised a;
    a.journal = std::move(journal);
    const Day day = *day_from_iso(on);
    a.history = replay(a.journal, day);
    a.estimates = estimate(a.journal, a.history);
    a.ledger = account(a.journal, a.history, a.estimates);
    a.advice = advise(a.journal, a.history, a.estimates, a.ledger);
    return a;
}

namespace {

std::string hive_of(const Advised& a, const Advice& x) {
    return x.hive == no_hive ? "-" : std::string(a.journal.hive_name(x.hive));
}

bool gives(const Advice& x, const std::string& rule) {
    return rule == "*" || x.rule == rule || std::find(x.also.begin(), x.also.end(), rule) != x.also.end();
}

std::string all_words(const Advice& x) {
    std::string out = x.what + " | " + x.sureness_words + " | " + fmt::format("{}", fmt::join(x.cautions, "; ")) + " | by " + (x.by ? iso(*x.by) : "-");
    for (const std::string& r : x.reasons) out += " | " + r;
    for (const std::string& o : x.over) out += " | over: " + o;
    return out;
}

struct Wanted { std::string hive, rule, words; };

Wanted parse(const std::string& line) {
    Wanted w;
    const auto space = line.find(' ');
    const auto colon = line.find(": ", space);
    w.hive = line.substr(0, space);
    w.rule = line.substr(space + 1, colon == std::string::npos ? std::string::npos : colon - space - 1);
    if (colon != std::string::npos) w.words = line.substr(colon + 2);
    return w;
}

bool given(const Advised& a, const std::string& line) {
    const Wanted w = parse(line);
    return std::any_of(a.advice.begin(), a.advice.end(), [&](const Advice& x) {
        return (w.hive == "*" || hive_of(a, x) == w.hive) && gives(x, w.rule) && all_words(x).find(w.words) != std::string::npos;
    });
}

}  // namespace

std::string listing(const Advised& a) {
    std::string out;
    for (const Advice& x : a.advice) {
        out += fmt::format("{} {}", hive_of(a, x), x.rule);
        for (const std::string& r : x.also) out += "+" + r;
        out += ": " + all_words(x) + "\n";
    }
    for (const Diagnostic& d : a.journal.diagnostics) out += "journal: " + d.title + "\n";
    for (const Diagnostic& d : a.history.diagnostics) out += "history: " + d.title + "\n";
    return out;
}

const Advice* find(const Advised& a, const std::string& hive, const std::string& rule) {
    for (const Advice& x : a.advice)
        if ((hive.empty() || hive_of(a, x) == (hive == "-" ? "-" : hive)) && gives(x, rule)) return &x;
    return nullptr;
}

void check_always(const Advised& a) {
    std::set<std::string> said, known;
    for (const RuleEntry& r : rules()) known.insert(std::string(r.name));
    for (const Advice& x : a.advice) {
        INFO(x.rule << ": " << all_words(x));
        CHECK(known.count(x.rule) == 1);
        CHECK_FALSE(x.source.empty());
        CHECK_FALSE(x.what.empty());
        CHECK(x.what.size() <= 160);
        CHECK_FALSE(x.sureness_words.empty());
        CHECK_FALSE(x.reasons.empty());
        CHECK(std::is_sorted(x.because.begin(), x.because.end()));
        for (FactId f : x.because) CHECK(f < a.journal.facts.size());
        // Nothing is said twice.
        CHECK(said.insert(hive_of(a, x) + std::to_string(x.yard) + x.what).second);
        const std::string words = all_words(x);
        // A treatment is never called safe or legal; swarming gets no cause and no probability.
        for (const char* never : {" is safe", " is legal", "safe to", "will swarm", "destroy", "chance of swarming"})
            CHECK(words.find(never) == std::string::npos);
    }
}

void check_case(const MentorCase& c) {
    const Advised a = advised(c.journal, c.on);
    INFO(c.name << "\nsource: " << c.source << "\nadvice given:\n" << listing(a));
    for (const std::string& line : c.must) {
        INFO("must be given: " << line);
        CHECK(given(a, line));
    }
    for (const std::string& line : c.must_not) {
        INFO("must not be given: " << line);
        CHECK_FALSE(given(a, line));
    }
    check_always(a);
}
