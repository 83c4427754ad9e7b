#include "facts/line_reader.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "facts/clause_words.hpp"

// What is kept: facts with where they were read, remarks word for word, copies of another hive.
namespace waxtab {

using What = Item::What;

namespace {

/// What `same as` does not copy: what was counted or marked there is not so here.
bool copied_by_same(const Fact& f) {
    switch (f.kind) {
        case Kind::stings: case Kind::queen_marked: case Kind::queen_mother: case Kind::remark: case Kind::todo: case Kind::box_labelled:
        case Kind::hive_moved: case Kind::hive_renamed: case Kind::hive_split: case Kind::nuc_made: case Kind::hive_united: case Kind::swarm_hived:
        case Kind::hive_bought: case Kind::super_moved: case Kind::frames_moved: case Kind::extracted: return false;
        default: return true;
    }
}

}  // namespace

Span LineReader::span(const std::vector<Item>& items) const {
    std::size_t first = 0, last = items.size();
    while (first + 1 < last && items[first].what == What::stop) ++first;
    while (last > first + 1 && items[last - 1].what == What::stop) --last;
    return items.empty() ? Span{} : Span{file_, items[first].begin, items[last - 1].end};
}

std::string LineReader::surface(const Item& item) const { return lower(journal_.sources.text({file_, item.begin, item.end})); }

bool LineReader::says_each(const Item& item) const {
    const std::string said = surface(item);
    return said == "each" || said == "ea" || said == "apiece" || said == "each of them";
}

void LineReader::put(RawFact raw, Reading reading) {
    reading.span = reading.span.known() ? reading.span : raw.fact.span;
    journal_.readings.push_back(std::move(reading));
    raw.reading = journal_.readings.size() - 1;
    raw.fact.noted = context_->noted;
    if (raw.fact.happened == Day{}) raw.fact.happened = context_->noted;
    raw.fact.minute = raw.fact.happened == context_->noted ? context_->minute : std::int16_t{-1};
    if (raw.fact.yard == no_yard) raw.fact.yard = line_yard_ != no_yard ? line_yard_ : context_->yard;
    if (context_->year_assumed) raw.fact.assumed |= assumed_year;
    if (raw.fact.kind == Kind::super_on || raw.fact.kind == Kind::brood_box_on) {
        const bool deep_said = raw.fact.kind == Kind::brood_box_on && lower(journal_.sources.text(raw.fact.span)).find(journal_.settings.brood_kind) != std::string::npos;   // second deep on
        if (raw.fact.box_kind.empty() && !deep_said) raw.fact.assumed |= assumed_box_kind;
        if (raw.fact.placing == Placing::unsaid && raw.fact.kind == Kind::super_on) raw.fact.assumed |= assumed_placing;
        if (raw.fact.comb == Comb::unsaid) raw.fact.assumed |= assumed_comb;
    }
    raw.effect = std::uint64_t{raw.fact.span.begin} * 2 + 1;
    if (takes_box_from_before(raw.fact.kind))
        for (std::size_t k = first_of_line_; k < out_->size(); ++k) {
            const Fact& off = (*out_)[k].fact;
            const bool apart = off_apart_.by != BoxChoice::By::unsaid && off.span.begin == off_apart_at_ && off_apart_ == raw.fact.box;
            if (off.kind == Kind::super_off && (off.box == raw.fact.box || apart)) raw.effect = std::uint64_t{off.span.begin} * 2;
        }
    out_->push_back(std::move(raw));
}

/// A fact told of other hives, told of these in the words at `where`.
void LineReader::put_at(RawFact raw, std::vector<HiveId> hives, Span where) {
    raw.hives = std::move(hives);
    raw.fact.span = where;
    Reading reading;
    reading.outcome = Reading::Outcome::facts;
    put(std::move(raw), std::move(reading));
}

/// The words of a remark or to-do: without the quotes, without the word todo itself.
std::string LineReader::words_kept(const std::vector<Item>& items, Span where) const {
    std::size_t first = 0;
    const bool todo = items.size() > 1 && (surface(items[0]) == "todo" || surface(items[0]) == "to do" || surface(items[0]) == "to-do");
    if (todo) first = 1;
    while (todo && first + 1 < items.size() && items[first].what == What::stop) ++first;
    if (items.size() == first + 1 && items[first].what == What::quoted) return items[first].text;
    return std::string(journal_.sources.text({file_, std::max(where.begin, items[first].begin), where.end}));
}

/// Facts told from `from` on are taken back in the same line: they stay as words, to be asked.
void LineReader::take_back(std::size_t from) {
    for (std::size_t k = std::max(from, first_of_line_); k < out_->size(); ++k) {
        RawFact& raw = (*out_)[k];
        if (raw.fact.kind == Kind::remark || raw.fact.kind == Kind::todo) continue;
        const Span where = raw.fact.span;
        Fact words;
        words.kind = Kind::remark, words.detail = "flagged", words.span = where;
        words.text = std::string(journal_.sources.text(where));
        words.noted = raw.fact.noted, words.happened = raw.fact.noted, words.yard = raw.fact.yard;
        raw.fact = words;
        raw.swap = false;
        journal_.readings[raw.reading].outcome = Reading::Outcome::ambiguous;
    }
}

/// The last fact of the sentence that is more than words, the number of facts told where there is none.
std::size_t LineReader::last_told() const {
    std::size_t told = out_->size();
    while (told > first_of_sentence_ && (*out_)[told - 1].fact.kind == Kind::remark) --told;
    return told > first_of_sentence_ ? told - 1 : out_->size();
}

/// The hives the line is about are those of the fact; how many `all` said they are is not asked here.
void LineReader::of_the_subject(RawFact& raw) const {
    raw.hives = subject_.hives, raw.but = subject_.but;
    raw.all = subject_.all, raw.nuclei = subject_.nuclei, raw.rest = subject_.rest, raw.both = subject_.both;
}

/// Keeps a stretch of the line word for word, as a remark or a to-do.
void LineReader::keep_words(const std::vector<Item>& items, Kind kind, Reading::Outcome outcome, std::string because) {
    const Span where = span(items);
    if (!where.known()) return;
    RawFact raw;
    raw.fact.kind = kind;
    raw.fact.span = where;
    raw.fact.text = words_kept(items, where);
    of_the_subject(raw);
    Reading reading;
    reading.outcome = outcome;
    reading.because = std::move(because);
    put(std::move(raw), std::move(reading));
}

/// Remembers words with a number that the reading passes over: `at £6.50 each`, `on frame 4`.
void LineReader::numbers_beside(const std::vector<Item>& chunked) {
    for (std::size_t i = 0; i < chunked.size();) {
        std::size_t end = i;
        while (end < chunked.size() && chunked[end].aside) ++end;
        const std::vector<Item> run(chunked.begin() + static_cast<std::ptrdiff_t>(i), chunked.begin() + static_cast<std::ptrdiff_t>(end));
        const Span where = span(run);
        const std::string_view said = run.empty() ? std::string_view{} : journal_.sources.text(where);
        const bool in_words = std::any_of(run.begin(), run.end(), [](const Item& k) { return k.value.said(); });   // on frame six
        if (in_words || said.find_first_of("0123456789") != said.npos) beside_.push_back({run, subject_});
        i = std::max(end, i + 1);
    }
}

/// Keeps what was remembered so, where no remark holds it already.
void LineReader::keep_beside() {
    for (auto& [words, said_of] : beside_) {
        const Span where = span(words);
        const auto holds = [&](const RawFact& r) { return (r.fact.kind == Kind::remark || r.fact.kind == Kind::todo) && r.fact.span.begin <= where.begin && r.fact.span.end >= where.end; };
        if (told_in_line(holds)) continue;
        subject_ = said_of;
        keep_words(words, Kind::remark, Reading::Outcome::remark, "");
        const bool time = std::all_of(words.begin(), words.end(), [&](const Item& i) { return i.words.empty() && (surface(i) == "at" || surface(i).find(':') != std::string::npos); });
        if (time || words.front().what == What::stop) continue;   // at 09:55; = 3.0/day, worked out from what is counted
        journal_.diagnostics.push_back({"only-kept", Severity::note, where, fmt::format("'{}' is kept as a remark", journal_.sources.text(where)), {}, "no report counts it", {}});
    }
    beside_.clear();
}

/// `h8 same as h3`: what this visit noted of the other hive so far. `ditto` names no hive, so it is asked.
bool LineReader::same_again(const std::vector<Item>& items) {
    if (items.empty() || !items.front().is("same as")) return false;
    const Span where = span(items);
    const bool named = items.size() == 2 && items[1].what == What::hives && items[1].hives.size() == 1;
    // ditto: the one hive of the line above
    const std::string surface = lower(journal_.sources.text(where));
    const bool above = items.size() == 1 && (surface == "ditto" || surface == "as above" || surface == "same again") && !visit_->empty() && visit_->back().hives.size() == 1 &&
                       visit_->back().fact.noted == context_->noted && visit_->back().fact.span.file == file_ && out_->size() == first_of_line_ && subject_.hives.size() == 1 && visit_->back().hives != subject_.hives;
    // h4 6 frames of bees. h8: same
    const bool in_line = !named && !above && items.size() == 1 && (surface == "same" || surface == "the same" || surface == "ditto" || surface == "likewise") && out_->size() > first_of_line_ && out_->back().hives.size() == 1 &&
                         subject_.hives.size() == 1 && out_->back().hives != subject_.hives;
    if ((!named && !above && !in_line) || subject_.hives.empty()) {
        keep_words(items, Kind::remark, Reading::Outcome::remark, "");
        out_->back().fact.detail = "flagged";
        journal_.diagnostics.push_back({"same-as-what", Severity::warning, where, fmt::format("'{}': the same as which hive?", journal_.sources.text(where)), "kept as a remark",
                                        "name the hive, for example `h4 same as h3`", {}});
        return true;
    }
    const HiveId from = in_line ? out_->back().hives.front() : above ? visit_->back().hives.front() : items[1].hives.front();
    std::vector<RawFact> copies;
    const auto gather = [&](const std::vector<RawFact>& noted, std::size_t first) {
        for (std::size_t k = first; k < noted.size(); ++k) {
            const RawFact& r = noted[k];
            const bool there = r.fact.noted == context_->noted && r.fact.span.file == file_ && std::find(r.hives.begin(), r.hives.end(), from) != r.hives.end();
            if (there && copied_by_same(r.fact)) copies.push_back(r);
        }
    };
    if (!in_line) gather(*visit_, 0);
    gather(*out_, in_line ? first_of_line_ : 0);
    if (copies.empty()) {
        keep_words(items, Kind::remark, Reading::Outcome::remark, "");
        out_->back().fact.detail = "flagged";
        journal_.diagnostics.push_back({"same-as-what", Severity::warning, where, fmt::format("nothing stands above about {} on this visit", journal_.hive_name(from)), "kept as a remark",
                                        "write what was seen", {}});
        return true;
    }
    if (above)
        journal_.diagnostics.push_back({"same-as-above", Severity::note, where, fmt::format("'{}' is read as the same as {}, the hive of the line above", surface, journal_.hive_name(from)), {},
                                        fmt::format("write `same as {}` if so", journal_.hive_name(from)), {}});
    for (RawFact& r : copies) {
        if (r.fact.kind == Kind::queen) r.fact.text.clear();
        put_at(std::move(r), subject_.hives, where);
    }
    return true;
}

}  // namespace waxtab
