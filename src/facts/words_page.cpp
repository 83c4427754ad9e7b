#include "facts/words_page.hpp"

#include <algorithm>
#include <set>
#include <vector>

#include <fmt/format.h>

#include "facts/lexicon.hpp"
#include "facts/tokens.hpp"
#include "readings.hpp"
#include "text/layout.hpp"

namespace waxtab {

namespace {

using grammar::Class;

/// A heading of the page and the kinds under it.
struct Area {
    std::string_view name;
    Kind from, to;
};

constexpr Area areas[] = {
    {"Boxes", Kind::super_on, Kind::brood_box_count},
    {"Life of hives", Kind::hive_moved, Kind::swarmed},
    {"How full", Kind::full, Kind::box_weight},
    {"Colony", Kind::bees, Kind::super_brood},
    {"Queen", Kind::queen, Kind::cells_left},
    {"Care", Kind::feed, Kind::inspected},
    {"Yard", Kind::weather, Kind::bloom},
    {"Honey", Kind::opening_stock, Kind::fermenting},
    {"Shed", Kind::shed, Kind::comb_year},
};

constexpr std::string_view opening = R"(A journal is plain text in files named *.hive. Set-up lines come first, one
setting to a line:

  units kg                      # or: units lb F
  year 2026                     # of dates without one
  dates day-month               # or month-day: how 5/6 is read
  gallon us                     # or imperial
  hive h3 at mill: deep, excluder, super drawn9     # from the floor up
  hive h5, also Blue, at mill: 2 deeps, excluder, 2 supers drawn "B4"
  nuc n1 at mill: deep
  shed: 6 supers drawn
  default super shallow         # of boxes whose kind is not said
  box long super: super, 12 frames, 20 kg full, 7 kg empty
  new supers go under
  visit every 10 days
  season 1 April to 31 August

A date begins a visit (3 June 2026; June 3; Wed 3 June mill 17:30 will do too);
under it, lines about the yard, honey and hives, the hive first:

  2026-06-03 mill
  24C sunny, flow heavy, white clover
  h3 top 70% capped, 2 queen cups. +super drawn9
  h1 h2 h5: calm
  all but h2: fed 2 L
  hive 4: calm                  # a hive called by a number
  Queen cells: h1 4 open, h3 none

A comma, a semicolon or a full stop ends a clause; short clauses are read best.
+ or - before a thing, or a done-word (added, took off), makes an event; a bare
thing is a state: `2 supers` says how many are on. `will`, `needs`, `if` and
`add ...` make a to-do, `didn't` makes nothing. What is not understood is kept
as a remark. "In quotes" is always a remark; # begins a comment. `super added
on the 12th` dates an event back.
)";

/// The area's name, and its examples two or three to a line, none broken.
std::string examples_of(const Area& area) {
    constexpr std::size_t indent = 14;
    std::string text, line = fmt::format("{:<14}", area.name);
    const std::size_t bare = indent;
    for (const grammar::ReadingRow& row : grammar::reading_rows) {
        if (row.kind < area.from || row.kind > area.to || row.example.empty()) continue;
        const std::string separator = line.size() == bare ? "" : " | ";
        if (line.size() + separator.size() + row.example.size() > page_width) {
            text += line + '\n';
            line = std::string(indent, ' ');
        } else {
            line += separator;
        }
        line += row.example;
    }
    return text + line + '\n';
}

/// The ways of writing a term, the term itself first.
std::string surfaces_of(const grammar::Word& w) {
    std::string text(w.surfaces);
    for (std::size_t at = 0; (at = text.find('|', at)) != text.npos;) text.replace(at, 1, ", ");
    return text;
}

bool speaks_of(const grammar::ReadingRow& row, std::string_view term) {
    std::string literal(term);
    std::replace(literal.begin(), literal.end(), ' ', '_');
    const std::string pattern(row.pattern);
    for (std::size_t at = 0; (at = pattern.find(literal, at)) != pattern.npos; at += literal.size()) {
        const char before = at ? pattern[at - 1] : ' ';
        const char after = at + literal.size() < pattern.size() ? pattern[at + literal.size()] : ' ';
        if ((before == ' ' || before == '|' || before == '@') && (after == ' ' || after == '|' || after == '#' || after == '?' || after == '+')) return true;
    }
    return false;
}

std::string_view slot_for(Class klass) {
    switch (klass) {
        case Class::plant: return "PLANT";
        case Class::substance: return "SUBSTANCE";
        case Class::food: return "FOOD";
        case Class::pest: return "PEST";
        case Class::disease: return "DISEASE";
        case Class::weather: return "WEATHER";
        case Class::colour: return "COLOUR";
        case Class::combing: return "COMB";
        case Class::placing: return "PLACE";
        case Class::amount: return "AMOUNT";
        case Class::method: return "METHOD";
        case Class::box_kind: return "KIND";
        case Class::which: return "BOX";
        default: return {};
    }
}

std::vector<std::string> examples_with(const grammar::Word& w) {
    std::vector<std::string> out;
    const std::string_view slot = slot_for(w.klass);
    for (const grammar::ReadingRow& row : grammar::reading_rows) {
        if (row.example.empty()) continue;
        if (speaks_of(row, w.term) || (!slot.empty() && speaks_of(row, slot))) out.push_back(fmt::format("{:<42}{}", row.example, name_of(row.kind)));
    }
    if (out.size() > 14) out.resize(14);
    return out;
}

std::string_view meaning_of(Class klass) {
    switch (klass) {
        case Class::plan: return "a plan: it makes a to-do of its sentence from there on, never an event";
        case Class::condition: return "a condition: nothing after it in its sentence happened";
        case Class::negation: return "a negation: what it denies is no event";
        case Class::order: return "at the start of a clause it asks for something: a to-do";
        case Class::doubt: return "a doubt: a share is taken as about so much, an event is not taken";
        case Class::about: return "widens the range of the number beside it";
        case Class::filler: return "may be said and means nothing";
        case Class::done: return "a done-word: makes an event";
        default: return {};
    }
}

std::vector<const grammar::Word*> rows_for(std::string_view word) {
    std::vector<const grammar::Word*> rows;
    const Lexicon lexicon;
    const std::vector<std::string> words = words_of(lower(word));
    if (!words.empty()) {
        const Meaning meaning = lexicon.find(words, 0);
        if (meaning.length == words.size()) rows = meaning.words;
    }
    return rows;
}

}  // namespace

std::string words_page() {
    std::string page(opening);
    page += "\nWhat can be said, an example each (most can be said in several ways):\n\n";
    for (const Area& area : areas) page += examples_of(area);
    page += '\n' + paragraph("How full: 70%, 7 of 9 frames, 7/9, half, nearly full, full, started, empty; about 70%, at least 70%. Which super: "
                            "top, bottom, middle, super 2 (counted from the brood up), super \"B4\" (its label), both. Where: over, under, "
                            "between. Comb: drawn, foundation, wet, starter strips, cut comb, sections, mixed; drawn9 has nine frames.", "", "");
    page += "\nOne word and its other spellings: `waxtab words super`.\n";
    return page;
}

bool knows_word(std::string_view word) { return !rows_for(word).empty(); }

std::string explain_word(std::string_view word) {
    const auto rows = rows_for(word);
    if (rows.empty()) {
        const std::string near = Lexicon{}.nearest(lower(word));
        return near.empty() ? fmt::format("'{}' is no word of the notation; see `waxtab words`\n", word)
                            : fmt::format("'{}' is no word of the notation; did you mean '{}'?\n", word, near);
    }
    std::string text;
    for (const grammar::Word* w : rows) {
        if (!text.empty()) text += '\n';
        text += fmt::format("{}\n", w->term);
        if (!meaning_of(w->klass).empty()) text += paragraph(meaning_of(w->klass), "  ", "  ");
        text += paragraph(surfaces_of(*w), "  written  ", "           ");
        for (const std::string& e : examples_with(*w)) text += "  " + e + '\n';
    }
    return text;
}

}  // namespace waxtab
