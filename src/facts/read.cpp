// The driver: files to lines, lines to headings, set-up lines and visits. Pass one collects names,
// units and settings from all files; pass two reads.
#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "facts/headings.hpp"
#include "facts/journal.hpp"
#include "facts/line_reader.hpp"
#include "facts/order.hpp"
#include "facts/set_up.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

/// Where a comment starts in a line: `#` at its start or after a blank, but not `#3`, and not in quotes.
std::size_t comment_start(std::string_view line) {
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const std::string_view rest = line.substr(i);
        if (rest.starts_with('"')) quoted = !quoted;
        else if (rest.starts_with("\xE2\x80\x9C") || rest.starts_with("\xE2\x80\x9D") || rest.starts_with("\xE2\x80\x9E")) quoted = !quoted;
        if (quoted || line[i] != '#') continue;
        const bool at_word = i == 0 || line[i - 1] == ' ' || line[i - 1] == '\t';
        const char next = i + 1 < line.size() ? line[i + 1] : ' ';
        const char after = i + 2 < line.size() ? line[i + 2] : ' ';
        const bool hive = (next >= '0' && next <= '9') || (next == ' ' && after >= '0' && after <= '9' && i > 0 && line.substr(0, i).find_last_not_of(' ') != line.npos && lower(line.substr(0, i)).ends_with("hive "));
        if (at_word && !hive) return i;
    }
    return line.size();
}

bool blank(std::string_view text) { return text.find_first_not_of(" \t\r") == text.npos; }

/// One line of a file with its comment taken off.
struct Line {
    std::uint32_t file = 0;
    std::uint32_t number = 0;
    std::uint32_t begin = 0;
    std::string_view text;
    bool indented = false;
};

class Reader {
public:
    explicit Reader(Day today) : today_(today) {}

    Journal read(std::vector<JournalFile> files) {
        std::stable_sort(files.begin(), files.end(), [](const JournalFile& a, const JournalFile& b) { return a.name < b.name; });
        for (JournalFile& f : files) journal_.sources.add(std::move(f.name), std::move(f.bytes));
        journal_.box_kinds = handbook_box_kinds();
        for (const BoxKind& k : journal_.box_kinds) lexicon_.add_box_kind(k.name);
        for (std::uint32_t f = 0; f < journal_.sources.size(); ++f) check_encoding(f);
        collect();
        for (std::uint32_t f = 0; f < journal_.sources.size(); ++f) read_file(f);
        put_in_order(journal_, std::move(raw_));
        return std::move(journal_);
    }

private:
    void check_encoding(std::uint32_t file);
    std::vector<Line> lines(std::uint32_t file) const;
    void collect();
    void collect_names(const Line& line);
    void collect_new_name(const Line& line);
    std::string two_words_at(const std::vector<Token>& t, std::size_t i, std::uint32_t file) const;
    void declare_born(const std::string& name, Span where);
    void read_file(std::uint32_t file);
    void read_line(const Line& line);
    bool heading(const Line& line, std::vector<Token>& tokens);
    void set_up_reading(const Line& line, const std::vector<Token>& tokens);
    bool looks_like_facts(const std::vector<Token>& tokens) const;

    Day today_;
    Journal journal_;
    Lexicon lexicon_;
    Matcher matcher_;
    std::vector<RawFact> raw_;
    // Of the file being read:
    LineContext context_;
    bool headings_seen_ = false;
    bool hole_ = false;
    bool undated_said_ = false;
    int year_ = 0;
    std::vector<std::pair<Span, std::vector<Fact>>> shed_lines_;
};

void Reader::check_encoding(std::uint32_t file) {
    const Source& source = journal_.sources[file];
    if (source.text().find_first_not_of(" \t\r\n") == source.text().npos)
        journal_.diagnostics.push_back({"empty-file", Severity::warning, {file, 0, 0}, "nothing is written in this file", {},
                                        "write in it, for example `hive h3 at mill: deep, excluder, super drawn9`, or leave it out", {}});
    const std::size_t bad = first_invalid_utf8(source.text());
    if (bad != source.text().npos) {
        const auto at = static_cast<std::uint32_t>(bad);
        journal_.diagnostics.push_back({"not-utf8", Severity::error, {file, at, at + 1}, "this is not UTF-8 text", "a byte no UTF-8 text has",
                                        "save the file as UTF-8 in your editor; the rest was read all the same", {}});
    }
    const std::size_t nul = source.text().find('\0');
    if (nul != source.text().npos) {
        const auto at = static_cast<std::uint32_t>(nul);
        journal_.diagnostics.push_back({"not-text", Severity::error, {file, at, at + 1}, "there is a NUL byte in the text", "not a letter",
                                        "delete it, or check that this file is a journal; the rest was read all the same", {}});
    }
}

std::vector<Line> Reader::lines(std::uint32_t file) const {
    const Source& source = journal_.sources[file];
    std::vector<Line> out;
    for (std::uint32_t n = 1; n <= source.line_count(); ++n) {
        const std::string_view whole = source.line(n);
        const std::string_view text = whole.substr(0, comment_start(whole));
        if (blank(text)) continue;
        const std::size_t first = text.find_first_not_of(" \t");
        out.push_back({file, n, source.line_start(n) + static_cast<std::uint32_t>(first), text.substr(first), first > 0});
    }
    return out;
}

/// Pass one: set-up lines of all files, box kinds first and hives last, then the names facts bring in.
void Reader::collect() {
    struct SetUp {
        Line line;
        std::vector<Token> tokens;
        int order;
    };
    std::vector<SetUp> set_up;
    std::vector<Line> others;
    std::vector<std::string> quoted;   // may be labels; known only once the hives are
    for (std::uint32_t f = 0; f < journal_.sources.size(); ++f) {
        bool headings = false;
        for (const Line& line : lines(f)) {
            const char c = line.text.front();
            const bool digit = c >= '0' && c <= '9';
            std::vector<Token> tokens = tokenise(line.text, line.begin);
            if (!line.indented && is_set_up(tokens, !headings)) {
                const bool hive = tokens[0].text == "hive" || tokens[0].text == "nuc";
                set_up.push_back({line, std::move(tokens), hive ? 3 : line.text.starts_with("shed") ? 2 : lower(line.text.substr(0, 3)) == "box" ? 0 : 1});
                continue;
            }
            if (!line.indented && (digit || !headings) && read_date_start(tokens, lexicon_, journal_.settings, 2000, f).is_date) headings = true;
            for (const Token& t : tokens)
                if (t.type == Token::Type::quoted) quoted.push_back(t.text);
            others.push_back(line);
        }
    }
    std::stable_sort(set_up.begin(), set_up.end(), [](const SetUp& a, const SetUp& b) { return a.order < b.order; });
    for (const SetUp& s : set_up) {
        const Span where{s.line.file, s.line.begin, s.line.begin + static_cast<std::uint32_t>(s.line.text.size())};
        auto facts = read_set_up(s.tokens, journal_.sources[s.line.file].text(), where, journal_, lexicon_);
        if (!facts.empty()) shed_lines_.emplace_back(where, std::move(facts));
    }
    finish_set_up(journal_);
    for (const SetUp& s : set_up)
        for (const Token& t : s.tokens)
            if (t.type == Token::Type::quoted) lexicon_.add_label(t.text);
    for (const std::string& text : quoted) lexicon_.add_label(text);
    for (const Line& line : others) collect_names(line);
}

void Reader::declare_born(const std::string& name, Span where) {
    if (name.empty() || lexicon_.hive(lower(name)) != no_hive) return;
    HiveDecl hive;
    hive.name = name;
    hive.span = where;
    lexicon_.add_hive(name, static_cast<HiveId>(journal_.hives.size()));
    journal_.hives.push_back(std::move(hive));
}

/// `Low wall` at token `i`, a name of two words that ends the clause; empty where there is none.
std::string Reader::two_words_at(const std::vector<Token>& t, std::size_t i, std::uint32_t file) const {
    static constexpr std::array<std::string_view, 20> others = {"today", "yesterday", "mon", "tue", "tues", "wed", "weds", "thu", "thurs", "fri", "sat", "sun", "with", "and", "on", "from", "at", "in", "last", "using"};
    const std::string_view text = journal_.sources[file].text();
    const auto capital = [&](std::size_t k) { return text[t[k].begin] >= 'A' && text[t[k].begin] <= 'Z'; };
    const auto other = [&](std::size_t k) { return t[k].text.ends_with("day") || month_number(t[k].text) > 0 || std::find(others.begin(), others.end(), t[k].text) != others.end(); };
    if (i + 1 >= t.size() || !capital(i) || t[i].text.find_first_of("0123456789") != std::string::npos || t[i + 1].type != Token::Type::word || other(i) || other(i + 1)) return {};
    const bool ends = i + 2 >= t.size() || t[i + 2].type == Token::Type::symbol || other(i + 2);
    return ends ? std::string(text.substr(t[i].begin, t[i + 1].end - t[i].begin)) : std::string{};
}

/// Hives that facts bring into being: `hived as s1`, `split into h11`, `made nuc n2`, `bought h9`.
void Reader::collect_names(const Line& line) {
    const std::string low = lower(line.text);
    const auto has = [&](std::string_view w) { return low.find(w) != low.npos; };
    if (has("renamed") || has("now called")) collect_new_name(line);
    if (!has("hived") && !has("split") && !has("nuc") && !has("bought") && !has("swarm") && !has("new hive") && !has("cast") && !has("divided") && !has("calling it") && !has("call it")) return;
    const std::vector<Token> t = named_after_a_comma(tokenise(line.text, line.begin));
    const auto word = [&](std::size_t i, std::string_view w) { return i < t.size() && t[i].type == Token::Type::word && t[i].text == w; };
    const auto name_at = [&](std::size_t i) -> std::string {
        while (word(i, "new") || word(i, "hive") || word(i, "nuc") || word(i, "a") || word(i, "no") || (i < t.size() && (t[i].text == "#" || t[i].text == "."))) ++i;
        if (i >= t.size()) return {};
        const std::string_view raw = journal_.sources[line.file].text().substr(t[i].begin, t[i].end - t[i].begin);
        if (t[i].type == Token::Type::quoted) return t[i].text;
        if (t[i].type == Token::Type::number && t[i].value.unit == Unit::piece && t[i].value.amount % 1000 == 0) return std::string(raw);
        if (t[i].type != Token::Type::word) return {};
        if (const std::string two = two_words_at(t, i, line.file); !two.empty()) return two;
        const Meaning known = lexicon_.find({t[i].text}, 0);
        const bool plant = known.length == 1 && raw[0] >= 'A' && raw[0] <= 'Z' && std::all_of(known.words.begin(), known.words.end(), [](const grammar::Word* w) { return w->klass == grammar::Class::plant; });   // hived as Plum
        const bool numbered = raw.find_first_of("0123456789") != raw.npos;
        return numbered || (raw.size() > 2 && (known.length == 0 || plant)) || (raw.size() <= 2 && raw[0] >= 'A' && raw[0] <= 'Z') ? std::string(raw) : std::string{};
    };
    const auto declare = [&](std::size_t i) { declare_born(name_at(i), {line.file, line.begin, line.begin + static_cast<std::uint32_t>(line.text.size())}); };
    const bool born = has("hived") || has("split") || has("nuc") || has("swarm") || has("divided") || has("caught") || has("housed") || has("cast");
    for (std::size_t i = 0; i < t.size(); ++i) {
        if (born && (word(i, "as") || word(i, "into") || word(i, "called") || (word(i, "it") && i > 0 && (word(i - 1, "calling") || word(i - 1, "called") || word(i - 1, "named") || word(i - 1, "call"))) || (t[i].type == Token::Type::symbol && t[i].text == "->"))) declare(i + 1);
        else if (word(i, "new") && (word(i + 1, "hive") || word(i + 1, "nuc"))) declare(i + 2);
        else if (word(i, "bought") && (word(i + 1, "hive") || word(i + 1, "nuc"))) declare(i + 2);
        else if (word(i, "hived") && i > 0 && i + 1 < t.size() && t[i + 1].text.find_first_of("0123456789") != std::string::npos) declare(i + 1);
        else if (word(i, "nuc") && has("made") && i + 1 < t.size() && t[i + 1].type == Token::Type::word && t[i + 1].text.size() <= 3 && t[i + 1].text != "up" && t[i + 1].text != "in") declare(i + 1);
    }
}

/// `h6 renamed Rose`: from then on, and before, both names are the hive's.
void Reader::collect_new_name(const Line& line) {
    const std::vector<Token> t = tokenise(line.text, line.begin);
    const ItemContext context{&lexicon_, &journal_.settings, Day{}};
    HiveId hive = no_hive;
    for (const Item& i : itemise(t, context)) {
        if (i.what == Item::What::hives && i.hives.size() == 1) hive = i.hives.front();
        if (!i.is("renamed")) continue;
        std::uint32_t from = i.end, to = i.end;
        for (const Token& token : t) {
            if (token.begin < i.end) continue;
            if (token.type == Token::Type::symbol) break;
            to = token.end;
        }
        std::string name(journal_.sources[line.file].text().substr(from, to - from));
        std::erase(name, '"');
        name.erase(0, name.find_first_not_of(' ') == name.npos ? name.size() : name.find_first_not_of(' '));
        if (hive == no_hive || name.empty() || lexicon_.hive(lower(name)) != no_hive) return;
        journal_.hives[static_cast<std::size_t>(hive)].aliases.push_back(name);
        lexicon_.add_hive(name, hive);
        return;
    }
}

void Reader::set_up_reading(const Line& line, const std::vector<Token>& tokens) {
    const Span where{line.file, line.begin, line.begin + static_cast<std::uint32_t>(line.text.size())};
    Reading reading;
    reading.outcome = Reading::Outcome::set_up;
    reading.span = where;
    journal_.readings.push_back(std::move(reading));
    if (tokens[0].text == "year" && tokens.size() > 1) year_ = static_cast<int>(tokens[1].value.amount / 1000);
    for (auto& [span, facts] : shed_lines_) {
        if (span != where) continue;
        for (const Fact& f : facts) {
            RawFact raw;
            raw.fact = f;
            raw.reading = journal_.readings.size() - 1;
            raw_.push_back(std::move(raw));
        }
        facts.clear();
    }
}

void Reader::read_file(std::uint32_t file) {
    context_ = {};
    headings_seen_ = hole_ = undated_said_ = false;
    year_ = journal_.settings.year;
    for (const Line& line : lines(file)) read_line(line);
}

void Reader::read_line(const Line& line) {
    std::vector<Token> tokens = tokenise(line.text, line.begin);
    if (tokens.empty()) return;
    if (!line.indented) {
        context_.hives.clear();
        context_.all = false;
        context_.but.clear();
        if (is_set_up(tokens, !headings_seen_)) return set_up_reading(line, tokens);
        if (heading(line, tokens)) return;
    }
    const Span where{line.file, line.begin, line.begin + static_cast<std::uint32_t>(line.text.size())};
    if (!context_.dated && !hole_) {
        if (!undated_said_)
            journal_.diagnostics.push_back({"no-date", Severity::error, where, "which day was this? no date stands above it", {},
                                            "put a heading above, for example `2026-06-03 mill`", {}});
        undated_said_ = true;
    }
    std::vector<RawFact> facts;
    LineReader reader(journal_, lexicon_, matcher_);
    const std::size_t first_reading = journal_.readings.size();
    reader.read(tokens, line.file, context_, raw_, facts);
    if (!context_.dated) {
        // Nothing is lost: the line stays in the read-back, but without a day it is no fact.
        journal_.readings.resize(first_reading);
        Reading kept;
        kept.span = where;
        journal_.readings.push_back(std::move(kept));
        return;
    }
    for (RawFact& f : facts) raw_.push_back(std::move(f));
}

/// Does what follows a date speak of hives, amounts or anything the vocabulary knows?
bool Reader::looks_like_facts(const std::vector<Token>& tokens) const {
    const ItemContext context{&lexicon_, &journal_.settings, context_.noted};
    for (const Item& i : itemise(tokens, context))
        if (i.what != Item::What::unknown && i.what != Item::What::stop && !i.has(grammar::Class::filler)) return true;
    return false;
}

/// Takes a date at the start of the line. True when nothing else stands on it.
bool Reader::heading(const Line& line, std::vector<Token>& tokens) {
    DateStart start = read_date_start(tokens, lexicon_, journal_.settings, year_, line.file);
    if (!start.is_date) return false;
    headings_seen_ = true;
    journal_.diagnostics.insert(journal_.diagnostics.end(), start.diagnostics.begin(), start.diagnostics.end());
    const Span where{line.file, line.begin, tokens[start.used - 1].end};
    context_ = {};
    context_.dated = start.day.has_value();
    hole_ = !context_.dated;
    if (start.day) {
        context_.noted = *start.day;
        year_ = static_cast<int>(date::year_month_day{*start.day}.year());
        if (*start.day > today_)
            journal_.diagnostics.push_back({"after-today", Severity::warning, where, fmt::format("{} is after today", iso(*start.day)), {},
                                            "put the date right, or wait: until that day nothing below it counts", {}});
    }
    context_.minute = static_cast<std::int16_t>(start.minute);
    context_.year_assumed = start.year_assumed;
    context_.yard = start.yard;
    Reading reading;
    reading.outcome = Reading::Outcome::heading;
    reading.span = where;
    journal_.readings.push_back(std::move(reading));
    tokens.erase(tokens.begin(), tokens.begin() + static_cast<std::ptrdiff_t>(start.used));
    while (!tokens.empty() && tokens.front().type == Token::Type::symbol && (tokens.front().text == "." || tokens.front().text == ":" || tokens.front().text == "," || (tokens.front().text == "-" && tokens.front().space_after))) tokens.erase(tokens.begin());
    if (tokens.empty()) return true;
    if (looks_like_facts(tokens) || tokens.front().type == Token::Type::quoted) return false;
    const Span rest{line.file, tokens.front().begin, tokens.back().end};
    const std::string name(journal_.sources.text(rest));
    std::string near;
    for (const YardDecl& y : journal_.yards)
        if (edit_distance(lower(name), lower(y.name)) <= 2) near = y.name;
    journal_.diagnostics.push_back({"unknown-yard", Severity::error, rest, fmt::format("there is no yard '{}'", name), "not set up",
                                    near.empty() ? fmt::format("set it up with `yard {}`", name) : fmt::format("did you mean '{}'? else set it up with `yard {}`", near, name), {}});
    return true;
}

}  // namespace

HiveId Journal::hive(std::string_view name) const {
    const std::string key = hive_key(name);
    for (std::size_t h = 0; h < hives.size(); ++h) {
        if (hive_key(hives[h].name) == key) return static_cast<HiveId>(h);
        for (const std::string& alias : hives[h].aliases)
            if (hive_key(alias) == key) return static_cast<HiveId>(h);
    }
    return no_hive;
}

YardId Journal::yard(std::string_view name) const {
    const std::string key = lower(name);
    for (std::size_t y = 0; y < yards.size(); ++y) {
        if (lower(yards[y].name) == key) return static_cast<YardId>(y);
        for (const std::string& alias : yards[y].aliases)
            if (lower(alias) == key) return static_cast<YardId>(y);
    }
    return no_yard;
}

const BoxKind* Journal::box_kind(std::string_view name) const {
    const auto found = std::find_if(box_kinds.begin(), box_kinds.end(), [&](const BoxKind& k) { return k.name == name; });
    return found == box_kinds.end() ? nullptr : &*found;
}

Journal read_journal(std::vector<JournalFile> files, Day today) { return Reader(today).read(std::move(files)); }

}  // namespace waxtab
