// What may not change the facts: how a journal is cut into files, what the files are called, which of
// several words for a thing is written, in what order lines stand that do not touch each other.
#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <random>

#include <fmt/format.h>

#include "said.hpp"

using namespace waxtab;

namespace {

const Day read_on = date::sys_days{date::year{2026} / 11 / 25};

struct Visit {
    std::string day, yard;
    std::vector<std::string> lines;
};

struct Notes {
    std::string set_up;
    std::vector<Visit> visits;
};

constexpr int hives_a_yard = 3;

/// One thing said of a hive, as (word, other word for the same).
std::pair<std::string, std::string> something(std::mt19937& random) {
    static const std::vector<std::pair<std::string, std::string>> said = {
        {"top 70% capped", "top 70% sealed"}, {"+super drawn9", "added super drawn9"}, {"top off 22 kg", "top pulled 22 kg"}, {"6 seams", "6 seams of bees"},
        {"BIAS on 5", "brood in all stages on 5"}, {"queen seen", "saw the queen"}, {"no queen cells", "no QCs"}, {"2 sealed queen cells", "2 capped queen cells"},
        {"excluder off", "QX off"}, {"fed 2 L syrup 1:1", "fed 2 litres syrup 1:1"}, {"temper calm", "gentle"}, {"eggs seen", "saw eggs"}, {"super half full", "super 1/2 full"},
        {"top 7 of 9 frames drawn", "top 7/9 frames drawn"}, {"escape board on", "clearer board on"}, {"alcohol wash 4/300", "AW 4/300"}, {"treated with oxalic acid", "OA"},
        {"todo \"bring 2 supers\"", "to do \"bring 2 supers\""}, {"\"bees at dusk\"", "\"bees at dusk\""}, {"weighs 42.5 kg", "hefted 42.5 kilos"}};
    return said[random() % said.size()];
}

Notes generate(unsigned seed, bool other_words) {
    std::mt19937 random(seed);
    Notes notes;
    notes.set_up = "units kg\nyear 2026\n";
    const std::vector<std::string> yards = {"mill", "orchard", "Long Field"};
    for (std::size_t y = 0; y < yards.size(); ++y)
        for (int h = 0; h < hives_a_yard; ++h) notes.set_up += fmt::format("hive h{} at {}: deep, excluder, super drawn9, super drawn9\n", y * hives_a_yard + static_cast<unsigned>(h) + 1, yards[y]);
    for (int week = 0; week < 6; ++week)
        for (std::size_t y = 0; y < yards.size(); ++y) {
            Visit visit{fmt::format("2026-{:02}-{:02}", 5 + week / 3, 1 + (week % 3) * 9 + static_cast<int>(y)), yards[y], {}};
            for (int h = 0; h < hives_a_yard; ++h) {
                const auto [one, other] = something(random);
                visit.lines.push_back(fmt::format("h{} {}", y * hives_a_yard + static_cast<unsigned>(h) + 1, other_words ? other : one));
            }
            notes.visits.push_back(std::move(visit));
        }
    return notes;
}

std::string text_of(const Visit& v) {
    std::string text = v.day + ' ' + v.yard + '\n';
    for (const std::string& line : v.lines) text += line + '\n';
    return text + '\n';
}

std::vector<std::string> facts(std::vector<JournalFile> files) {
    const Journal journal = read_journal(std::move(files), read_on);
    std::vector<std::string> out;
    for (const Fact& f : journal.facts) out.push_back(long_form(journal, f));
    std::sort(out.begin(), out.end());
    return out;
}

/// One file for each key of a visit.
template <typename Key>
std::vector<JournalFile> cut(const Notes& notes, Key key) {
    std::map<std::string, std::string> files;
    for (const Visit& v : notes.visits) files[key(v)] += text_of(v);
    std::vector<JournalFile> out{{"set-up.hive", notes.set_up}};
    for (const auto& [name, text] : files) out.push_back({name + ".hive", text});
    return out;
}

std::vector<JournalFile> whole(const Notes& notes) {
    return cut(notes, [](const Visit&) { return std::string("all"); });
}

void check_cuts(unsigned seed) {
    INFO("seed " << seed);
    const Notes notes = generate(seed, false);
    const std::vector<std::string> one = facts(whole(notes));
    CHECK(facts(cut(notes, [](const Visit& v) { return v.yard; })) == one);
    CHECK(facts(cut(notes, [](const Visit& v) { return v.day.substr(0, 7); })) == one);
    std::vector<JournalFile> days = cut(notes, [](const Visit& v) { return v.day; });
    CHECK(facts(days) == one);
    std::mt19937 random(seed);
    for (JournalFile& f : days) f.name = fmt::format("{}.hive", random());
    std::shuffle(days.begin(), days.end(), random);
    CHECK(facts(days) == one);
}

void check_words(unsigned seed) {
    INFO("seed " << seed);
    CHECK(facts(whole(generate(seed, true))) == facts(whole(generate(seed, false))));
}

void check_line_order(unsigned seed) {
    INFO("seed " << seed);
    Notes notes = generate(seed, false);
    const std::vector<std::string> one = facts(whole(notes));
    std::mt19937 random(seed);
    for (Visit& v : notes.visits) std::shuffle(v.lines.begin(), v.lines.end(), random);
    CHECK(facts(whole(notes)) == one);
}

void check_fixed_point(unsigned seed) {
    INFO("seed " << seed);
    const auto lines = [](const Journal& j) {
        std::string text;
        for (const std::string& line : set_up_lines(j)) text += line + '\n';
        for (const Fact& f : j.facts) text += long_form(j, f) + '\n';
        return text;
    };
    const std::string once = lines(read_journal(whole(generate(seed, false)), read_on));
    CHECK(lines(read_journal({{"lines.hive", once}}, read_on)) == once);
}

void check_all(unsigned from, unsigned to) {
    for (unsigned seed = from; seed < to; ++seed) {
        check_cuts(seed);
        check_words(seed);
        check_line_order(seed);
        check_fixed_point(seed);
    }
}

}  // namespace

TEST_CASE("files, names, words and the order of lines do not change the facts", "[facts][figures]") { check_all(0, 100); }

TEST_CASE("files, names, words and the order of lines, thousands of journals", "[facts][.slow]") { check_all(1000, 4000); }
