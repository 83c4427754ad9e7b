#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <utility>

#include <fmt/format.h>

#include "facts/clause_words.hpp"
#include "facts/long_form.hpp"
#include "facts/slots.hpp"

// Readings to facts of the line: which hives, which box, which lot they are of.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

/// As many boxes came off as weights are said, and the reading holds their sum.
bool told_box_by_box(const Fact& f, const std::vector<Measure>& weights) {
    const bool boxes = f.kind == Kind::super_off && f.box.label.empty() && weights.size() > 1;
    std::int64_t sum = 0;
    for (const Measure& w : weights) sum += w.amount;
    return boxes && f.value.dimension == Dimension::mass && f.value.amount == sum;
}

}  // namespace

/// `reversed the deeps, the bottom one was bare`: after brood boxes, a box that is not called a super is none.
bool LineReader::of_brood_boxes(const Fact& fact, Span where) const {
    if (out_->size() <= first_of_line_ || fact.box.by == BoxChoice::By::unsaid || fact.box.role != Role::super) return false;
    const Kind before = out_->back().fact.kind;
    const bool brood = before == Kind::brood_reversed || before == Kind::brood_box_on || before == Kind::brood_box_off;
    if (lower(journal_.sources.text(where)).find("super") != std::string::npos) return false;
    if (brood || !takes_box_from_before(fact.kind)) return brood;
    // both brood boxes busy, bottom one half empty
    const std::string said = line_before(where);
    const auto last = [&](std::initializer_list<std::string_view> words) {
        std::size_t at = 0;
        for (const std::string_view word : words)
            if (const std::size_t found = said.rfind(word); found != said.npos) at = std::max(at, found + 1);
        return at;
    };
    return last({"brood boxes", "brood chambers", "brood bodies", "hive bodies", "deeps", "double brood"}) > last({"super", "medium", "shallow"});
}

/// Keeps words of which it cannot be told what they are about, and asks.
void LineReader::keep_asked(Span where, const char* question, const char* hint) {
    RawFact raw;
    raw.hives = subject_.hives;
    keep_as_words(where, std::move(raw), true);
    journal_.diagnostics.push_back({"not-understood", Severity::warning, where, fmt::format("not understood: '{}'", journal_.sources.text(where)), question, hint, {}});
}

/// `extracted 36 kg lot B, 18.2%`: what follows is of that lot; `filled 60 x 454 g, gave away 4`: of those jars.
void LineReader::honey_from_before(Fact& fact, const Candidate& c) {
    const bool of_lot = measured_of_lot(fact.kind) || fact.kind == Kind::jars;
    const bool named_by_lot = measured_of_lot(fact.kind) || fact.kind == Kind::jars || fact.kind == Kind::gone_out || fact.kind == Kind::extracted || fact.kind == Kind::stocktake || fact.kind == Kind::best_before;
    if (named_by_lot && fact.lot.empty()) fact.lot = lot_of_line_;
    for (std::size_t k = first_of_line_; k < out_->size(); ++k) {
        const Fact& before = (*out_)[k].fact;
        // lot A: filled 36 x 1 lb and 12 x 8 oz
        if (fact.kind == Kind::jars && before.kind == Kind::jars && fact.lot.empty()) fact.lot = before.lot;
        // extracted 17.5 kg, 17.2%, lot 1: all of that lot
        const bool named_after = measured_of_lot(fact.kind) && before.kind == Kind::extracted && before.lot.empty() && k >= first_of_sentence_;
        if (named_after && !fact.lot.empty() && fact.lot != lot_of_line_) (*out_)[k].fact.lot = fact.lot;
        if (of_lot && before.kind == Kind::extracted && fact.lot.empty() && fact.box.by == BoxChoice::By::unsaid) fact.lot = before.lot;
        if (!c.after_jars || !tells_of_jars(before)) continue;
        fact.value = before.value;
        if (fact.lot.empty()) fact.lot = before.lot;
    }
}

/// The words of a fact go on to `end`.
void LineReader::reach(RawFact& raw, std::uint32_t end) {
    raw.fact.span.end = std::max(raw.fact.span.end, end);
    journal_.readings[raw.reading].span.end = raw.fact.span.end;
}

/// `extracted 39 kg lot B (h5 h6)`: the hives that honey is from. True when it is.
bool LineReader::honey_of_these(const std::vector<Item>& items) {
    if (out_->size() <= first_of_sentence_ || out_->back().fact.kind != Kind::extracted || !out_->back().fact.hives.empty() || !out_->back().hives.empty()) return false;
    RawFact& honey = out_->back();
    for (const Item& i : items) {
        if (!i.unknown_hives.empty()) return false;
        honey.fact.hives.insert(honey.fact.hives.end(), i.hives.begin(), i.hives.end());
    }
    reach(honey, span(items).end);
    return true;
}

/// `Calling it lot A`: the name of the honey extracted before it in the line.
bool LineReader::names_lot(const std::vector<Item>& items) {
    const Item* lot = nullptr;
    for (const Item& i : items) {
        if (i.what == What::lot && i.lots.size() == 1) lot = &i;
        else if (!i.is("calling it") && !i.idle()) return false;
    }
    if (!lot) return false;
    bool named = false;
    for (std::size_t k = first_of_line_; k < out_->size(); ++k) {
        Fact& f = (*out_)[k].fact;
        const bool honey = f.kind == Kind::extracted || measured_of_lot(f.kind);
        if (!honey || !f.lot.empty()) continue;
        f.lot = lot->lots.front();
        reach((*out_)[k], lot->end);
        named = true;
    }
    return named;
}

/// A super is named there, not only `both` or `one`.
bool LineReader::names_super(Span where) const {
    static constexpr std::array<std::string_view, 9> nouns = {"super", "medium", "shallow", "ideal", "box", "top", "bottom", "upper", "lower"};
    const std::string said = lower(journal_.sources.text(where));
    return said.find('"') != said.npos || std::any_of(nouns.begin(), nouns.end(), [&](std::string_view n) { return said.find(n) != said.npos; });
}

/// The words of a reading kept as they stand.
void LineReader::keep_as_words(Span where, RawFact raw, bool flagged) {
    raw.fact = Fact{};
    raw.fact.kind = Kind::remark;
    if (flagged) raw.fact.detail = "flagged";
    raw.fact.span = where;
    raw.fact.text = std::string(journal_.sources.text(where));
    put(std::move(raw), Reading{});
}

/// The box of a fact that names none, and the box that later clauses go on about.
void LineReader::settle_box(Fact& fact, const Candidate& c) {
    const bool says_super = fact.box.by != BoxChoice::By::unsaid && fact.box.role == Role::super;
    if (says_super && fact.kind != Kind::super_on) box_ = fact.box;
    else if (takes_box_from_before(fact.kind) || (c.carries_box && fact.kind != Kind::super_on)) fact.box = box_;
    if (fact.kind == Kind::super_count && fact.count == 1) box_ = {BoxChoice::By::sole, Role::super, 0, {}};
}

/// The line as far as `here`, in small letters.
std::string LineReader::line_before(Span here) const {
    const std::string_view all = text();
    const std::size_t begun = here.begin == 0 ? 0 : all.rfind('\n', here.begin - 1) + 1;
    return lower(all.substr(begun, here.begin - begun));
}

/// Something was doubted or denied in the line before `here`: `swarm in the hedge, probably theirs, hived as s1`.
bool LineReader::doubted_before(Span here) const {
    static constexpr std::array<std::string_view, 14> doubts = {"not", "no", "nobody", "probably", "maybe", "perhaps", "possibly", "likely", "think", "guess", "might", "could", "unsure", "somebody"};
    const std::string said = line_before(here);
    const auto letter = [&](std::size_t at) { return at < said.size() && std::isalpha(static_cast<unsigned char>(said[at])); };
    const auto whole = [&](std::string_view word) {
        for (std::size_t at = said.find(word); at != said.npos; at = said.find(word, at + 1))
            if (!(at > 0 && letter(at - 1)) && !letter(at + word.size())) return true;
        return false;
    };
    return said.find("n't") != said.npos || said.find('?') != said.npos || std::any_of(doubts.begin(), doubts.end(), whole);
}

/// The line tells of a swarm before `here`, or of nothing: `h3 swarmed, hived as s1`, `h3 swarm hived as s1`; not `h3 calm, swarm hived as s1`.
bool LineReader::swarm_told(Span here) const {
    const std::string said = line_before(here);
    return out_->size() == first_of_line_ || said.find("swarm") != said.npos || said.find("cast") != said.npos;
}

/// The hives of a fact: those it names itself, else those the line is about.
void LineReader::settle_hives(RawFact& raw, const Candidate& c) const {
    const bool one = subject_.hives.size() == 1;
    if (c.hive_named && raw.fact.hive != no_hive) {
        raw.hives = {raw.fact.hive};
        const bool left_one = raw.fact.kind == Kind::swarm_hived && raw.fact.other == no_hive && one && !doubted_before(raw.fact.span) && swarm_told(raw.fact.span);
        if (left_one && subject_.hives.front() != raw.fact.hive) raw.fact.other = subject_.hives.front();
    } else if (c.hive_named) {
        raw.hives = {raw.fact.other};
        raw.fact.other = one && subject_.hives.front() != raw.hives.front() ? subject_.hives.front() : no_hive;
    } else if (c.about_honey && (!raw.fact.hives.empty() || (measured_of_lot(raw.fact.kind) && !raw.fact.lot.empty()))) {
        return;   // h3 calm. Extracted 24 kg from h1, moisture 17.6% lot A: no word of h3
    } else if (c.about_honey && comes_of_hives(raw.fact.kind) && !headed_ && off_several()) {
        return;   // super off h1 and the bottom one off h6, extracted 61 lb: of both
    } else if (needs_hive(c) || (c.about_honey && comes_of_hives(raw.fact.kind))) {
        of_the_subject(raw);
        raw.all_count = subject_.count;
    }
}

/// `made a nuc into n1, 3 frames of brood`: they are the nuc's.
void LineReader::frames_of_the_nuc(RawFact& raw) {
    if (out_->size() <= first_of_sentence_) return;
    std::size_t told = out_->size() - 1;
    while (told > first_of_sentence_ && (*out_)[told].fact.kind == Kind::remark) --told;
    const RawFact& split = (*out_)[told];
    const Fact& born = split.fact;
    const bool nuc = divides(born.kind);
    const bool named_first = nuc && split.swap && split.hives.size() == 1;   // made up nuc n1 from h5
    const HiveId young = named_first ? split.hives.front() : nuc ? born.other : no_hive;
    const bool goes_on_so = born.kind == Kind::brood || born.kind == Kind::stores || born.kind == Kind::bees;
    nuc_frames_ = young != no_hive ? young : goes_on_so ? nuc_frames_ : no_hive;
    if (nuc_frames_ != no_hive) raw.hives = {nuc_frames_}, raw.all = raw.rest = raw.both = false;
}

/// Asks for the hive, once a line: what follows without one is asked with what was.
void LineReader::ask_hive(Span where) {
    const std::size_t line = where.end - line_before({where.file, where.end, where.end}).size();
    Diagnostics& said = journal_.diagnostics;
    const bool asked = !said.empty() && said.back().code == "no-hive" && said.back().span.file == where.file && said.back().span.begin >= line;
    if (asked && where.begin > said.back().span.begin) {
        where.begin = said.back().span.begin;
        said.pop_back();
    } else if (std::exchange(complained_, true)) {
        return;
    }
    const HiveId usual = lexicon_.hive("h3");
    const std::string hive = journal_.hives.empty() ? "h3" : hive_words(journal_, usual == no_hive ? 0 : usual);
    journal_.diagnostics.push_back({"no-hive", Severity::error, where, fmt::format("'{}': at which hive?", journal_.sources.text(where)), "no hive named",
                                    fmt::format("begin the line with the hive, for example `{} {}`", hive, journal_.sources.text(where)), {}});
}

void LineReader::take(Solution solution, std::optional<Day> happened) {
    // 60 x 454 g and 10 x 250 g from lot A: all of that lot
    const std::string lot = solution.candidates.empty() ? std::string{} : solution.candidates.back().fact.lot;
    // stocktake 58 x 500 g and 18 x 250 g: counted as well
    const bool counted = !solution.candidates.empty() && solution.candidates.front().fact.kind == Kind::stocktake;
    for (std::size_t k = 1; counted && k < solution.candidates.size(); ++k)
        if (solution.candidates[k].fact.kind == Kind::jars && lower(journal_.sources.text(solution.spans[k])).find("fill") == std::string::npos) solution.candidates[k].fact.kind = Kind::stocktake;
    for (Candidate& c : solution.candidates)
        if ((c.fact.kind == Kind::jars || (counted && c.fact.kind == Kind::stocktake)) && c.fact.lot.empty()) c.fact.lot = lot;
    for (std::size_t k = 0; k < solution.candidates.size(); ++k) {
        const Span where = solution.spans[k];
        std::vector<Measure> weights;
        for (const Item& i : as_written_)
            if (is_mass(i) && i.begin >= where.begin && i.end <= where.end) weights.push_back(i.value);
        const bool apart = told_box_by_box(solution.candidates[k].fact, weights) && !subject_.several();
        if (apart) each_weighed(solution.candidates[k], weights, where, happened);
        else take_one(solution.candidates[k], solution.spans[k], happened);
    }
}

/// `2 supers off, 13.5 kg and 12.2 kg`: one after the other, from the top.
void LineReader::each_weighed(Candidate c, const std::vector<Measure>& weights, Span where, std::optional<Day> happened) {
    const BoxChoice all = c.fact.count > 1 ? BoxChoice{BoxChoice::By::top_n, Role::super, static_cast<std::uint8_t>(std::min(c.fact.count, 250)), {}} : c.fact.box;
    c.fact.count = -1;
    c.fact.box = {BoxChoice::By::top, Role::super, 0, {}};
    c.fact.assumed |= assumed_order;
    for (const Measure& weight : weights) {
        c.fact.value = weight;
        take_one(c, where, happened);
    }
    box_ = off_apart_ = all;   // what follows is of them all
    off_apart_at_ = where.begin;
}

void LineReader::take_one(const Candidate& c, Span where, std::optional<Day> happened) {
    RawFact raw;
    raw.fact = c.fact;
    // flow good on clover and alfalfa: on either
    const bool flow_goes_on = grammar::reading_rows[c.row].pattern == "PLANT" && out_->size() > first_of_sentence_ && out_->back().fact.kind == Kind::flow && !out_->back().fact.text.empty() && line_before(where).ends_with("and ");
    if (flow_goes_on) raw.fact.kind = Kind::flow, raw.fact.detail = out_->back().fact.detail;
    const Kind kind = raw.fact.kind;
    if (kind == Kind::remark) raw.fact.text = std::string(journal_.sources.text(where));
    raw.swap = c.swap;
    raw.fact.span = where;
    if (kind == Kind::bees && lower(journal_.sources.text(where)).find("fob") != std::string::npos) raw.fact.assumed |= assumed_fob;
    if (happened && kind == Kind::weight_change) raw.fact.text = iso(*happened);
    else if (happened) raw.fact.happened = *happened;
    if (kind == Kind::treatment_on && happened && raw.fact.second.said()) {
        const auto due = std::find_if(last_.items.begin(), last_.items.end(), [](const Item& i) { return i.what == What::day && i.text == "due"; });
        if (due != last_.items.end()) raw.fact.second = stay_of(raw.fact, due->day);
    }
    brood_said_ = brood_said_ || kind == Kind::brood || kind == Kind::eggs || kind == Kind::larvae;
    cells_said_ = cells_said_ || kind == Kind::queen_cells || kind == Kind::cells_removed || kind == Kind::cells_left;
    food_said_ = food_said_ || kind == Kind::feed;
    // h1 h2 super half full, three quarters full: one for each, or both?
    const Fact* before = out_->size() > first_of_sentence_ ? &out_->back().fact : nullptr;
    const bool measured = takes_box_from_before(kind) || kind == Kind::bees || kind == Kind::brood || kind == Kind::stores || kind == Kind::hive_weight;   // 6 seams and 5 seams
    const bool told_twice = before && (subject_.several() || kind == Kind::capped || kind == Kind::full) && measured && before->kind == kind && (before->box == c.fact.box || c.fact.box.by == BoxChoice::By::unsaid) && before->value.said() && c.fact.value.said() && before->value != c.fact.value && out_->back().hives == subject_.hives;
    if (told_twice) return take_back(out_->size() - 1), keep_asked(where, "of which of the hives?", "write a line for each hive");
    if (const auto asked = question_about(c, where)) {
        boxes_unread_ = boxes_unread_ || c.fact.box.by != BoxChoice::By::unsaid || takes_box_from_before(kind) || kind == Kind::brood;
        return keep_asked(where, asked->question, asked->hint);
    }
    // shook out, boxes home to the shed: what stood there goes with it
    const auto gone = [](const RawFact& r) { return r.fact.kind == Kind::hive_ended || r.fact.kind == Kind::hive_dead || r.fact.kind == Kind::hive_united; };
    const bool cleared = kind == Kind::super_off && told_in_line(gone) && lower(journal_.sources.text(where)).find("super") == std::string::npos;
    const auto says = [&](const char* word) { return lower(journal_.sources.text(where)).find(word) != std::string::npos; };
    const auto died = [&](const RawFact& r) { return (r.fact.kind == Kind::hive_dead || r.fact.kind == Kind::hive_ended) && r.hives == subject_.hives; };
    const bool of_the_dead = seen_of_colony(kind) && kind != Kind::stores && !hives_named_ && told_in_line(died);
    if (of_the_dead && raw.fact.value.said()) return keep_asked(where, "alive, or found dead?", "put what was found of a dead colony in quotes");
    if (of_the_dead) return raw.hives = subject_.hives, keep_as_words(where, std::move(raw), false);
    if (cleared) return raw.hives = subject_.hives, keep_as_words(where, std::move(raw), false);
    settle_box(raw.fact, c);
    // took off 2 mediums, both capped: those two
    const bool both = c.fact.box.by == BoxChoice::By::all && takes_box_from_before(kind) && says("both");
    if (both && out_->size() > first_of_sentence_ && out_->back().fact.kind == Kind::super_off && out_->back().fact.count == 2 && out_->back().fact.box.by != BoxChoice::By::unsaid) raw.fact.box = box_ = out_->back().fact.box;
    const bool one_hive = subject_.hives.size() == 1 && !subject_.several() && !head_.several();
    if (one_hive && takes_box_from_before(kind) && c.fact.box.by == BoxChoice::By::sole && says("supers")) raw.fact.box = box_ = {BoxChoice::By::all, Role::super, 0, {}};   // supers half full
    honey_from_before(raw.fact, c);
    // filled 60 x 500 g, 24 x 1 kg, lot A
    if (kind == Kind::jars && !raw.fact.lot.empty())
        for (std::size_t k = out_->size(); k-- > first_of_sentence_ && (*out_)[k].fact.kind == Kind::jars && (*out_)[k].fact.lot.empty();) (*out_)[k].fact.lot = raw.fact.lot;
    settle_hives(raw, c);
    if (kind == Kind::swarm_hived && !headed_ && raw.hives.size() == 1) subject_ = {}, subject_.hives = raw.hives;   // what follows is of the swarm
    const auto of_another = [&](const RawFact& r) { return !r.hives.empty() && r.hives != subject_.hives; };
    const bool wasps = kind == Kind::pest && c.fact.detail == "wasps";
    const bool of_the_yard = !subject_.said() || ((wasps || !headed_) && !hives_named_ && told_in_line(of_another));
    if ((kind == Kind::pollen || kind == Kind::pest) && of_the_yard) return keep_as_words(where, std::move(raw), false);   // of the yard
    if (of_frames(c.fact) && !hives_named_) frames_of_the_nuc(raw);
    if (needs_hive(c) && !c.hive_named && !subject_.said() && raw.hives.empty()) ask_hive(where);
    if (needs_hive(c) && raw.hives.empty() && !raw.all && !raw.rest && !raw.both) return keep_as_words(where, std::move(raw), true);
    Reading reading;
    reading.outcome = kind == Kind::remark ? Reading::Outcome::remark : Reading::Outcome::facts;
    put(std::move(raw), std::move(reading));
}

}  // namespace waxtab
