#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// Readings to facts of the line: which hives, which box, which lot they are of; details that follow after a comma.
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
    return brood && lower(journal_.sources.text(where)).find("super") == std::string::npos;
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
        const bool jars = before.kind == Kind::jars || (before.kind == Kind::gone_out && before.count > 0);
        if (!c.after_jars || !jars) continue;
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

/// The hives of a fact: those it names itself, else those the line is about.
void LineReader::settle_hives(RawFact& raw, const Candidate& c) const {
    const bool one = subject_.hives.size() == 1;
    if (c.hive_named && raw.fact.hive != no_hive) {
        raw.hives = {raw.fact.hive};
        const bool left_one = raw.fact.kind == Kind::swarm_hived && raw.fact.other == no_hive && one;
        if (left_one && subject_.hives.front() != raw.fact.hive) raw.fact.other = subject_.hives.front();
    } else if (c.hive_named) {
        raw.hives = {raw.fact.other};
        raw.fact.other = one && subject_.hives.front() != raw.hives.front() ? subject_.hives.front() : no_hive;
    } else if (needs_hive(c) || (c.about_honey && comes_of_hives(raw.fact.kind))) {
        raw.hives = subject_.hives, raw.all = subject_.all, raw.nuclei = subject_.nuclei, raw.but = subject_.but, raw.rest = subject_.rest, raw.both = subject_.both, raw.all_count = subject_.count;
    }
}

/// `made a nuc into n1, 3 frames of brood`: they are the nuc's.
void LineReader::frames_of_the_nuc(RawFact& raw) {
    if (out_->size() <= first_of_sentence_) return;
    std::size_t told = out_->size() - 1;
    while (told > first_of_sentence_ && (*out_)[told].fact.kind == Kind::remark) --told;
    const RawFact& split = (*out_)[told];
    const Fact& born = split.fact;
    const bool nuc = born.kind == Kind::nuc_made || born.kind == Kind::hive_split;
    const bool named_first = nuc && split.swap && split.hives.size() == 1;   // made up nuc n1 from h5
    const HiveId young = named_first ? split.hives.front() : nuc ? born.other : no_hive;
    const bool goes_on_so = born.kind == Kind::brood || born.kind == Kind::stores || born.kind == Kind::bees;
    nuc_frames_ = young != no_hive ? young : goes_on_so ? nuc_frames_ : no_hive;
    if (nuc_frames_ != no_hive) raw.hives = {nuc_frames_}, raw.all = raw.rest = raw.both = false;
}

/// Asks for the hive, once a line.
void LineReader::ask_hive(Span where) {
    if (!complained_)
        journal_.diagnostics.push_back({"no-hive", Severity::error, where, fmt::format("'{}': at which hive?", journal_.sources.text(where)), "no hive named",
                                        "begin the line with the hive, for example `h3 " + std::string(journal_.sources.text(where)) + "`", {}});
    complained_ = true;
}

void LineReader::take(Solution solution, std::optional<Day> happened) {
    // 60 x 454 g and 10 x 250 g from lot A: all of that lot
    const std::string lot = solution.candidates.empty() ? std::string{} : solution.candidates.back().fact.lot;
    for (Candidate& c : solution.candidates)
        if (c.fact.kind == Kind::jars && c.fact.lot.empty()) c.fact.lot = lot;
    const bool apart = solution.candidates.size() == 1 && told_box_by_box(solution.candidates.front().fact, weighed_) && !subject_.several();
    if (apart) return each_weighed(solution.candidates.front(), solution.spans.front(), happened);
    for (std::size_t k = 0; k < solution.candidates.size(); ++k) take_one(solution.candidates[k], solution.spans[k], happened);
}

/// `2 supers off, 13.5 kg and 12.2 kg`: one after the other, from the top.
void LineReader::each_weighed(Candidate c, Span where, std::optional<Day> happened) {
    const std::vector<Measure> weights = weighed_;
    c.fact.count = -1;
    c.fact.box = {BoxChoice::By::top, Role::super, 0, {}};
    c.fact.assumed |= assumed_order;
    for (const Measure& weight : weights) {
        c.fact.value = weight;
        take_one(c, where, happened);
    }
}

void LineReader::take_one(const Candidate& c, Span where, std::optional<Day> happened) {
    RawFact raw;
    raw.fact = c.fact;
    const Kind kind = c.fact.kind;
    if (kind == Kind::remark) raw.fact.text = std::string(journal_.sources.text(where));
    raw.swap = c.swap;
    raw.fact.span = where;
    if (happened && kind == Kind::weight_change) raw.fact.text = iso(*happened);
    else if (happened) raw.fact.happened = *happened;
    if (kind == Kind::treatment_on && happened && raw.fact.second.said()) {
        const auto due = std::find_if(last_.items.begin(), last_.items.end(), [](const Item& i) { return i.what == What::day && i.text == "due"; });
        if (due != last_.items.end()) raw.fact.second = stay_of(raw.fact, due->day);
    }
    brood_said_ = brood_said_ || kind == Kind::brood || kind == Kind::eggs || kind == Kind::larvae;
    cells_said_ = cells_said_ || kind == Kind::queen_cells || kind == Kind::cells_removed || kind == Kind::cells_left;
    food_said_ = food_said_ || kind == Kind::feed;
    if (of_brood_boxes(raw.fact, where)) return keep_asked(where, "of which box?", "say `super` or `brood box`, or put it in quotes if it is only a remark");
    if (c.after_jars && jars_unread_) return keep_asked(where, "of which jars?", "name the jars, for example `gave away 2 x 454 g`");
    if (measured_of_lot(kind) && lot_unread_ && raw.fact.lot.empty()) return keep_asked(where, "of which lot?", "name the lot, for example `moisture 17.8% lot A`");
    if (boxes_unread_ && takes_box_from_before(kind) && !names_super(where)) return keep_asked(where, "of which super?", "name the super: top, bottom, super 2 or its label");
    const bool of_what = boxes_unread_ && kind == Kind::hive_weight && !names_hive(last_.items) && lower(journal_.sources.text(where)).find("weigh") == std::string::npos;
    if (of_what) return keep_asked(where, "the super, or the hive?", "say what weighed that much, for example `top weighs 15 kg`");
    // 2 queen cups, both empty
    const bool of_others = out_->size() > first_of_line_ && raw.fact.box.by == BoxChoice::By::all && takes_box_from_before(kind) && !names_super(where) && !out_->back().fact.value.said() &&
                           out_->back().fact.count > 1 && out_->back().fact.box.by == BoxChoice::By::unsaid && out_->back().fact.kind != Kind::super_on && out_->back().fact.kind != Kind::super_count;
    if (of_others) return keep_asked(where, "both of what?", "name the supers, for example `both supers full`");
    // shook out, boxes home to the shed: what stood there goes with it
    const auto gone = [](const RawFact& r) { return r.fact.kind == Kind::hive_ended || r.fact.kind == Kind::hive_dead || r.fact.kind == Kind::hive_united; };
    const bool cleared = kind == Kind::super_off && std::any_of(out_->begin() + static_cast<std::ptrdiff_t>(first_of_line_), out_->end(), gone) && lower(journal_.sources.text(where)).find("super") == std::string::npos;
    if (cleared) return raw.hives = subject_.hives, keep_as_words(where, std::move(raw), false);
    // h1 h4: honey off, 5 boxes
    const bool boxes_taken = kind == Kind::super_count && subject_.several() && out_->size() > first_of_sentence_ && out_->back().fact.kind == Kind::super_off;
    if (boxes_taken) return keep_asked(where, "from each of the hives, or together?", "write a line for each hive");
    settle_box(raw.fact, c);
    const bool frames = (kind == Kind::brood || kind == Kind::stores || kind == Kind::bees) && raw.fact.value.said();
    const bool which_queen = (kind == Kind::queen_marked || kind == Kind::queen_clipped) && std::any_of(out_->begin() + static_cast<std::ptrdiff_t>(first_of_sentence_), out_->end(), [](const RawFact& r) { return r.fact.kind == Kind::hive_split || r.fact.kind == Kind::nuc_made; });
    if (which_queen) return keep_asked(where, "the queen of which hive?", "write a line for the hive she is in");
    const auto splits = [](const RawFact& r) { return r.fact.kind == Kind::hive_split || r.fact.kind == Kind::nuc_made; };
    const bool split_before = std::any_of(out_->begin() + static_cast<std::ptrdiff_t>(first_of_sentence_), out_->end(), splits);   // split into h10, 3 frames of brood, 2 open cells: in which?
    const bool cells = kind == Kind::queen_cells && raw.fact.count != 0 && (divided_ || split_before) && !hives_named_;
    if (cells || (frames && divided_)) return keep_asked(where, "at which hive?", "write a line for the hive they are in");
    honey_from_before(raw.fact, c);
    // filled 60 x 500 g, 24 x 1 kg, lot A
    if (kind == Kind::jars && !raw.fact.lot.empty())
        for (std::size_t k = out_->size(); k-- > first_of_sentence_ && (*out_)[k].fact.kind == Kind::jars && (*out_)[k].fact.lot.empty();) (*out_)[k].fact.lot = raw.fact.lot;
    settle_hives(raw, c);
    if (kind == Kind::swarm_hived && !headed_ && raw.hives.size() == 1) subject_ = {}, subject_.hives = raw.hives;   // what follows is of the swarm
    if ((kind == Kind::pollen || kind == Kind::pest) && !subject_.said()) return keep_as_words(where, std::move(raw), false);   // of the yard
    if (needs_hive(c) && !c.hive_named && !subject_.said()) ask_hive(where);
    if (needs_hive(c) && raw.hives.empty() && !raw.all && !raw.rest && !raw.both) return keep_as_words(where, std::move(raw), true);
    if (frames) frames_of_the_nuc(raw);
    Reading reading;
    reading.outcome = kind == Kind::remark ? Reading::Outcome::remark : Reading::Outcome::facts;
    put(std::move(raw), std::move(reading));
}

/// `strips in on 15/8, out by 29/8`: how long they stay is counted from the day they went in; a date without its year is
/// the first after that day.
Measure LineReader::stay_of(const Fact& treatment, Day due) const {
    const Day in = treatment.happened == Day{} ? context_->noted : treatment.happened;
    const date::year_month_day ymd{due};
    const date::year_month_day year_before{ymd.year() - date::years{1}, ymd.month(), ymd.day()};
    const bool earlier = year_before.ok() && date::sys_days{year_before} > in;
    return days_to(in, earlier ? Day{date::sys_days{year_before}} : due);
}

/// `amitraz strips in, 2 a box, out by 15 July`: how long they stay that went in before. True when it is.
bool LineReader::due_of_the_treatment(const std::vector<Item>& items) {
    const Item* day = nullptr;
    const Item* stay = nullptr;
    bool out = false;
    for (const Item& i : items) {
        if (i.what == What::day && i.text == "due" && !day) day = &i;
        else if (i.what == What::value && i.value.dimension == Dimension::duration && !stay) stay = &i;   // off in 14 days
        else if (i.is("out") || i.is("off") || i.is("due out")) out = true;
        else if (!i.idle() && !i.has(Class::link) && !(i.is("in") && !stay)) return false;
    }
    if (!out || !day == !stay) return false;
    bool told = false;
    for (std::size_t k = first_of_line_; k < out_->size(); ++k) {
        RawFact& raw = (*out_)[k];
        const bool of_others = subject_.said() && raw.hives != subject_.hives;
        if (raw.fact.kind != Kind::treatment_on || raw.fact.second.said() || of_others) continue;
        raw.fact.second = day ? stay_of(raw.fact, day->day) : stay->value;
        reach(raw, span(items).end);
        told = true;
    }
    return told;
}

/// `sold 36 x 1 lb to the shop, 6 x 500 g to Marge`: sold as well.
void LineReader::sale_goes_on(std::vector<Item>& items) const {
    if (eventful(items) || std::none_of(items.begin(), items.end(), [](const Item& i) { return i.is("to"); })) return;
    // 8 jars to her for nix: not sold
    static constexpr std::array<std::string_view, 6> free_of_charge = {"nix", "free", "nothing", "gratis", "gift", "nowt"};
    if (std::any_of(items.begin(), items.end(), [&](const Item& i) { return std::find(free_of_charge.begin(), free_of_charge.end(), surface(i)) != free_of_charge.end(); })) return;
    const bool goes_on = out_->size() > first_of_line_ && out_->back().fact.kind == Kind::gone_out;
    const bool paid = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("price"); });   // 12 jars to the shop at £7
    const std::string_view detail = paid ? "sold" : goes_on ? out_->back().fact.detail : "";
    if (detail != "sold" && detail != "given") return;
    std::vector<Item> joined = items;
    chunk(joined, item_context());
    const bool jars_told = std::any_of(out_->begin() + static_cast<std::ptrdiff_t>(first_of_line_), out_->end(), [](const RawFact& r) { return r.fact.kind == Kind::jars || (r.fact.kind == Kind::gone_out && r.fact.count > 0); });
    const bool so_many = jars_told && (bare_number(items.front()) || items.front().has(Class::count));   // filled 60 x 340 g, 12 to the shop at £6
    if (joined.front().what != What::jars && !so_many) return;
    Item verb = items.front();
    verb.what = What::term, verb.words = {table_word(detail == "sold" ? "sold" : "given away", Class::done)}, verb.end = verb.begin;
    if (goes_on && !out_->back().fact.lot.empty() && std::none_of(joined.begin(), joined.end(), [](const Item& i) { return i.what == What::lot; })) {
        Item lot = verb;
        lot.what = What::lot, lot.words.clear(), lot.lots = {out_->back().fact.lot};
        const auto to = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.is("to"); });
        lot.begin = lot.end = to->begin;
        items.insert(to, std::move(lot));
    }
    items.insert(items.begin(), std::move(verb));
}

/// `split into h10, 3 frames of brood, 1 of honey, old queen in h10`: what else went into it. True when it did.
bool LineReader::went_with_the_split(const std::vector<Item>& items) {
    if (out_->size() <= first_of_sentence_ || items.empty()) return false;
    RawFact& born = out_->back();
    if (born.fact.kind != Kind::hive_split && born.fact.kind != Kind::nuc_made) return false;
    const HiveId young = born.swap && born.hives.size() == 1 ? born.hives.front() : born.fact.other;
    const bool number = bare_number(items[0]) || items[0].has(Class::count);
    const bool of_honey = items.size() == 2 && items[1].is("net");
    if (number && (of_honey || (items.size() == 3 && items[1].is("of") && (items[2].is("honey") || items[2].is("stores") || items[2].is("brood"))))) {
        Measure& frames = !of_honey && items[2].is("brood") ? born.fact.value : born.fact.second;
        if (frames.said() || born.fact.count <= 0) return false;
        frames = bare_number(items[0]) ? items[0].value : measure(std::to_string(items[0].word(Class::count)->number), Unit::frame).value_or(Measure{});
        frames.unit = Unit::frame;
        born.fact.count += static_cast<int>(frames.amount / 1000);
        reach(born, span(items).end);
        return true;
    }
    bool queen = false, there = false;
    for (const Item& i : items) {
        const std::string said = surface(i);
        const bool goes = said == "went" || said == "gone" || said == "moved" || said == "goes";
        if (i.is("old queen") || i.is("queen")) queen = true, there = there || said.starts_with("with");
        else if (i.what == What::hives && i.unknown_hives.empty() && i.hives.size() == 1 && i.hives.front() == young) there = true;
        else if (goes || said == "nuc" || i.is("with")) there = true;
        else if (!i.idle() && !i.is("in") && !i.is("into") && !i.is("to") && !i.is("over")) return false;
    }
    if (!queen || !there || !born.fact.detail.empty()) return false;
    born.fact.detail = "old queen";
    reach(born, span(items).end);
    return true;
}

/// `flumethrin strips in, 4 each`: how many strips at each of the hives. True when it is.
bool LineReader::strips_each(const std::vector<Item>& items) {
    const bool so_many = items.size() == 2 && bare_number(items[0]) && says_each(items[1]) && items[0].value.amount % 1000 == 0;
    if (!so_many || out_->size() <= first_of_sentence_) return false;
    RawFact& strips = out_->back();
    if (strips.fact.kind != Kind::treatment_on || strips.fact.count >= 0) return false;
    strips.fact.count = static_cast<int>(items[0].value.amount / 1000);
    reach(strips, span(items).end);
    return true;
}

/// `super off, all capped, 22 kg`: what the box weighed that came off before it in the line. True when it is.
bool LineReader::weight_of_the_super_off(const std::vector<Item>& items) {
    const Item* mass = nullptr;
    bool net = false, plant = false;
    for (const Item& i : items) {
        plant = plant || i.has(Class::plant);
        if (is_mass(i) && !mass) mass = &i;
        else if (i.is("net") || i.is("honey")) net = true;
        else if (!i.idle() && !i.has(Class::plant) && !i.is("before") && !i.is("between") && !i.is("scale") && !i.has(Class::about) && !i.is("weighed")) return false;
    }
    if (!mass || names_hive(items)) return false;
    std::size_t off = out_->size();
    while (off > first_of_line_ && takes_box_from_before((*out_)[off - 1].fact.kind)) --off;
    const bool details_join = off == out_->size() && !plant && last_.set && out_->size() <= last_.out + 1;   // top off, 22 kg: read together
    if (details_join || off == first_of_line_ || (*out_)[off - 1].hives != out_->back().hives) return false;
    RawFact& box = (*out_)[off - 1];
    if (box.fact.kind != Kind::super_off || box.fact.value.said() || box.hives.size() != 1) return false;
    std::vector<Item> joined = items;
    chunk(joined, item_context());   // about 22 kg
    for (const Item& i : joined)
        if (is_mass(i)) box.fact.value = i.value;
    if (net) box.fact.manner = "honey";
    reach(box, span(items).end);
    return true;
}

/// Details after a comma: reads the last clause and this one as one; true when that is one fact. What is read by itself
/// (`alone`) is no part of a name or remark before it.
bool LineReader::join_last(const std::vector<Item>& items, bool alone) {
    if (!last_.set) return false;
    const bool of_the_hive = names_hive(items) && std::any_of(items.begin(), items.end(), is_mass);
    if (of_the_hive) return false;   // super off, hive 40 kg
    // put a super on h4, another on h5: no detail of the one on h4
    const Kind told_last = last_.out < out_->size() ? (*out_)[last_.out].fact.kind : Kind::remark;
    const bool of_lives = told_last >= Kind::hive_moved && told_last <= Kind::swarmed;   // split, h12: the new one
    const auto elsewhere = [&](const Item& i) {
        const auto told = [&](HiveId h) { return last_.out < out_->size() && std::find((*out_)[last_.out].hives.begin(), (*out_)[last_.out].hives.end(), h) != (*out_)[last_.out].hives.end(); };
        return i.what == What::hives && i.role == Item::Role::none && last_.out < out_->size() && !of_lives && told_last != Kind::remark && told_last != Kind::extracted && !(*out_)[last_.out].hives.empty() && !std::all_of(i.hives.begin(), i.hives.end(), told);
    };
    if (std::any_of(items.begin(), items.end(), elsewhere)) return false;
    // super on Friday, 4 frames drawn already: how far it is drawn, not what is in it
    const auto drawn_so_far = [](const Item& a, const Item& b) { return (a.is("frame") || bare_number(a)) && b.is("drawn") && !b.counted; };
    const bool already = std::any_of(items.begin(), items.end(), [&](const Item& i) { return surface(i) == "already" || surface(i) == "so far" || surface(i) == "by now"; });
    if (told_last == Kind::super_on && already && std::adjacent_find(items.begin(), items.end(), drawn_so_far) != items.end()) return false;
    std::vector<Item> both = last_.items;
    const bool at_a_number = both.size() > 1 && bare_number(both.back()) && both[both.size() - 2].is("on");
    if (!both.empty() && (both.back().is("on") || at_a_number)) {
        Item comma;   // `super on, 10 frames`: not spread over them; `super on 3, foundation`: not three of them
        comma.what = What::stop, comma.text = ",", comma.begin = both.back().end, comma.end = items.front().begin;
        both.push_back(std::move(comma));
    }
    // amitraz strips in, 4 strips
    const auto strips = [](const Item& i) { return i.is("strip") || i.is("pad") || i.is("tray"); };
    if (items.size() == 2 && strips(items[1])) std::erase_if(both, [&](const Item& i) { return strips(i) && i.is(items[1].words.front()->term); });
    const auto details = std::find_if(items.begin(), items.end(), [](const Item& i) { return !i.has(Class::link) || i.is("with"); });   // and they come out August 1
    both.insert(both.end(), details, items.end());
    if (subject_.several()) std::erase_if(both, [&](const Item& i) { return says_each(i); });   // super off, 14 kg each
    const bool each = std::any_of(items.begin(), items.end(), [&](const Item& i) { return says_each(i); });
    const bool off = told_last == Kind::super_off || told_last == Kind::frames_off;
    if (both.size() > 16 || (subject_.several() && off && !each && !masses_in(items).empty())) return false;   // supers off h1 and h2, 24 kg: from each, or together?
    const std::vector<Item> written = both;
    std::optional<Day> happened;
    for (std::size_t i = 0; i < both.size();) {
        if (both[i].what == What::day && both[i].text != "due") happened = both[i].day, both.erase(both.begin() + static_cast<std::ptrdiff_t>(i));
        else ++i;
    }
    chunk(both, item_context());
    std::vector<Item> without = both;
    if (!subject_.said() || last_.out < out_->size()) take_subject(without);
    std::vector<Solution> ways = solve(without);
    if (ways.size() != 1 || ways.front().candidates.size() != std::max<std::size_t>(1, out_->size() - last_.out)) return false;
    if (is_event(ways.front().candidates.front().fact.kind) && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::negation) && !i.is("no excluder"); })) return false;
    const Fact& joined = ways.front().candidates.front().fact;
    const bool put_on = joined.kind == Kind::super_on && last_.out < out_->size() && (*out_)[last_.out].fact.kind == Kind::drawn;   // second super, foundation, put under the first
    const auto told_again = [&](const RawFact& r) { return std::any_of(ways.front().candidates.begin(), ways.front().candidates.end(), [&](const Candidate& c) { return c.fact.kind == r.fact.kind; }); };
    const bool lost = out_->size() > last_.out + 1 && !std::all_of(out_->begin() + static_cast<std::ptrdiff_t>(last_.out), out_->end(), told_again);   // excluder and super on, drawn comb
    if (lost) return false;
    const bool another_kind = last_.out < out_->size() && !put_on && (*out_)[last_.out].fact.kind != Kind::remark && joined.kind != (*out_)[last_.out].fact.kind;
    if (another_kind) return false;   // strips out, 8 weeks in
    // clover over, lime next: still over, and nowhere over the lime
    const bool told_other = joined.kind == Kind::bloom && last_.out < out_->size() && joined.detail != (*out_)[last_.out].fact.detail;
    if (told_other) return false;
    if (alone && last_.out < out_->size() && joined.kind == (*out_)[last_.out].fact.kind && joined.text != (*out_)[last_.out].fact.text) return false;
    out_->resize(last_.out);
    journal_.readings.resize(last_.readings);
    journal_.diagnostics.resize(last_.diagnostics);
    weighed_ = masses_in(written);
    take(std::move(ways.front()), happened);
    last_.items = written;
    before_clause_ = last_.out;
    return true;
}

}  // namespace waxtab
