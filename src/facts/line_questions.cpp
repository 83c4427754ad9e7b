#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include "facts/clause_words.hpp"
#include "facts/slots.hpp"

// What has to be asked before a reading is a fact: of which box, of which hive, of which lot.
namespace waxtab {

/// The line told of jars of more than one lot.
bool LineReader::jars_of_two_lots() const {
    const std::string* lot = nullptr;
    for (std::size_t k = first_of_line_; k < out_->size(); ++k) {
        const Fact& fact = (*out_)[k].fact;
        if (!tells_of_jars(fact) || fact.lot.empty()) continue;
        if (lot && *lot != fact.lot) return true;
        lot = &fact.lot;
    }
    return false;
}

/// After a swarm was hived or a colony united: which of the two what is seen then is told of.
std::optional<LineReader::Question> LineReader::which_colony(const Fact& fact) const {
    const bool given = fact.kind == Kind::feed || fact.kind == Kind::feeder_on || fact.kind == Kind::brood_box_on;
    if (!(seen_of_colony(fact.kind) || given) || hives_named_ || subject_.hives.size() != 1) return {};
    const RawFact* sentence = out_->data() + first_of_sentence_;
    // united h1 with h2. Fed them 2 L: of a union earlier in the line, too
    const auto at = std::find_if(out_->rbegin(), out_->rend() - static_cast<std::ptrdiff_t>(first_of_line_), [&](const RawFact& r) { return r.fact.kind == Kind::hive_united || (r.fact.kind == Kind::swarm_hived && &r >= sentence); });
    if (at == out_->rend() - static_cast<std::ptrdiff_t>(first_of_line_)) return {};
    if (at->fact.kind == Kind::hive_united) return at->hives == subject_.hives ? std::optional<Question>({"of the colony as it was, or as it is now?", "write a line for the hive it is in now"}) : std::nullopt;
    if (at->hives == subject_.hives) return {};
    return Question{"of the swarm, or of the hive it left?", "write a line for each hive"};
}

/// Of honey: which jars, which lot.
std::optional<LineReader::Question> LineReader::which_honey(const Candidate& c) const {
    if (c.after_jars && (jars_unread_ || jars_of_two_lots())) return Question{"of which jars?", "name the jars, for example `gave away 2 x 454 g`"};
    const bool of_a_lot = measured_of_lot(c.fact.kind) || c.fact.kind == Kind::come_back;
    if (of_a_lot && lot_unread_ && c.fact.lot.empty()) return Question{"of which lot?", "name the lot, for example `moisture 17.8% lot A`"};
    return {};
}

/// Of a box: which one, and what was measured of it.
std::optional<LineReader::Question> LineReader::which_box(const Fact& fact, Span where) const {
    const Kind kind = fact.kind;
    const auto line = out_->begin() + static_cast<std::ptrdiff_t>(first_of_line_), sentence = out_->begin() + static_cast<std::ptrdiff_t>(first_of_sentence_);
    const RawFact* before = line == out_->end() ? nullptr : &out_->back();
    const std::string said = lower(journal_.sources.text(where));
    const bool labelled = fact.box.by == BoxChoice::By::label;
    if (labelled && subject_.several()) return Question{"at which of the hives?", "write a line for each hive"};
    const std::string label = lower(fact.box.label);
    const auto beside = [&](const char* place) { return said.find(place + label) != std::string::npos; };   // under S1, where `under "S1"` is how a label is written
    if (labelled && fact.kind == Kind::super_on && (beside("under ") || beside("over ") || beside("above ") || beside("below "))) return Question{"the label of the new box, or of the one beside it?", "say `under the top` or `over the bottom`"};
    // gave it a patty. It weighed half a pound: no hive is so light (a nuc in its box is 5 kg at the least; common practice, no source)
    if (kind == Kind::hive_weight && fact.value.amount < 4 * unit_size(Unit::kilogram)) return Question{"what weighed that much?", "say what it was, for example `hive weighs 42 kg`"};
    // h3 too hot, closed up: of the day, or of the bees?
    if (kind == Kind::weather && subject_.said() && out_->size() == first_of_line_ && said.find("too hot") != said.npos) return Question{"the day, or the bees?", "write `hot day`, or `temper defensive`"};
    // a few cups, no eggs in them
    if ((kind == Kind::eggs || kind == Kind::larvae) && said.find("in them") != said.npos && !subject_.several()) return Question{"in what?", "write `3 dry cups`, or `no eggs` of the hive"};
    // bottom box empty, took it off: of a super, or of the brood nest?
    const bool lowest_box = said.find("bottom box") != said.npos || said.find("lower box") != said.npos || said.find("lowest box") != said.npos;
    const bool emptied = kind == Kind::super_off || (kind == Kind::full && fact.value.said() && fact.value.amount == 0);
    if (lowest_box && emptied) return Question{"the bottom super, or the bottom brood box?", "say `bottom super` or `bottom brood box`"};
    const bool tenths = (fact.assumed & assumed_full) && fact.value.dimension == Dimension::share && fact.value.amount % 10 != 0;   // super 17.5%
    if (tenths) return Question{"full, capped, or water in the honey?", "write `top 70% full`, `top 70% capped` or `moisture 17.5%`"};
    if (of_brood_boxes(fact, where)) return Question{"of which box?", "say `super` or `brood box`, or put it in quotes if it is only a remark"};
    // second super on, under the first, which is 80% full
    const bool placed = before && before->fact.kind == Kind::super_on && before->fact.placing != Placing::unsaid;
    const bool of_either = placed && (kind == Kind::full || kind == Kind::capped) && fact.box.by == BoxChoice::By::unsaid;
    if (of_either || (boxes_unread_ && takes_box_from_before(kind) && !names_super(where))) return Question{"of which super?", "name the super: top, bottom, super 2 or its label"};
    const bool weighed_it = said.find("it weigh") != std::string::npos || said.find("they weigh") != std::string::npos;
    const bool of_what = boxes_unread_ && kind == Kind::hive_weight && !names_hive(last_.items) && (weighed_it || said.find("weigh") == std::string::npos);
    const bool just_on = kind == Kind::hive_weight && !names_hive(last_.items) && said.find("hive") == said.npos && told_in_line([](const RawFact& r) { return r.fact.kind == Kind::super_on; });   // super on, weighs 11 lb
    if (of_what || just_on) return Question{"the super, or the hive?", "say what weighed that much, for example `top weighs 15 kg`"};
    // top 40% capped, bottom 80%; both full, top 90% capped, bottom a third; not top full, 40% capped, bottom 80%
    const bool full_told = told_in_sentence([&](const RawFact& r) { return r.fact.kind == Kind::full && r.fact.box.by != BoxChoice::By::all && r.fact.box != fact.box; });
    const bool after_capping = sentence != out_->end() && before->fact.kind == Kind::capped && before->fact.box.by != fact.box.by;
    static constexpr std::array<std::string_view, 4> how_full = {"full", "fill", "start", "touch"};
    static constexpr std::array<std::string_view, 5> wholly = {"fully", "completely", "totally", "entirely", "wholly"};
    const bool all_of_it = fact.kind == Kind::full && std::any_of(wholly.begin(), wholly.end(), [&](std::string_view w) { return said.ends_with(w); });   // top 80% capped, bottom fully
    const bool a_share = fact.kind == Kind::full && fact.value.amount >= 250 && fact.value.amount <= 750 && std::none_of(how_full.begin(), how_full.end(), [&](std::string_view w) { return said.find(w) != said.npos; });   // bottom a third
    if ((a_share || all_of_it || (fact.assumed & assumed_full)) && fact.box.by != BoxChoice::By::unsaid && after_capping && !full_told) return Question{"full, or capped?", "write `bottom 80% capped` or `bottom 80% full`"};
    // put the second brood box above the excluder: one more, or one that stood below?
    if (kind == Kind::brood_box_on && said.find("excluder") != said.npos) return Question{"a brood box more, or one that stands there already?", "write `+brood box`, or put it in quotes if it was only moved"};
    // 4 frames of brood, 60% sealed: of the brood
    const bool of_the_brood = kind == Kind::capped && fact.box.by == BoxChoice::By::unsaid && before && last_.set && (before->fact.kind == Kind::brood || before->fact.kind == Kind::eggs || before->fact.kind == Kind::larvae);
    if (of_the_brood) return Question{"of the brood, or of a super?", "write `super 60% capped` of the honey; how much of the brood is sealed is not kept"};
    // second super on, under the first; first one half full
    const bool under = told_in_line([](const RawFact& r) { return r.fact.kind == Kind::super_on && r.fact.placing == Placing::under; });
    const bool counted_anew = under && fact.box.by == BoxChoice::By::number && takes_box_from_before(kind);
    if (counted_anew) return Question{"counted before the new one went under, or after?", "say top or bottom, for example `top half full`"};
    // 3 queen cups, no eggs
    const bool of_cups = kind == Kind::eggs && fact.detail == "none" && last_.set && before && before->fact.kind == Kind::cups && before->fact.count > 0 && before->fact.detail.empty() && said.find("larva") == std::string::npos;
    if (of_cups) return Question{"in the cups, or in the hive?", "write `3 dry cups` or `no eggs in the hive`"};
    // both supers off h1 and the top one off h2, all capped
    const bool two_off_last = out_->size() > first_of_line_ + 1 && before->fact.kind == Kind::super_off && (before - 1)->fact.kind == Kind::super_off && before->hives != (before - 1)->hives;
    if (takes_box_from_before(kind) && !hives_named_ && !headed_ && last_.set && two_off_last) return Question{"of which hive's boxes?", "write a line for each hive"};
    // took off 2 mediums, the lower one 90%
    const bool of_two = said.find("lower") != said.npos || said.find("upper") != said.npos || said.find(" one") != said.npos;
    const bool two_off = told_in_sentence([](const RawFact& r) { return r.fact.kind == Kind::super_off && r.fact.count > 1; });
    if (takes_box_from_before(kind) && of_two && two_off) return Question{"of those that came off, or still on?", "say `the bottom super still on is 40% capped`, or write it before they come off"};
    // 2 queen cups, both empty
    const bool both = before && fact.box.by == BoxChoice::By::all && takes_box_from_before(kind) && !names_super(where) && !before->fact.value.said() && before->fact.count > 1 &&
                      before->fact.box.by == BoxChoice::By::unsaid && before->fact.kind != Kind::super_on && before->fact.kind != Kind::super_count;
    if (both) return Question{"both of what?", "name the supers, for example `both supers full`"};
    return {};
}

/// So many supers, after some were taken off: off, still on, of which hive?
std::optional<LineReader::Question> LineReader::which_count(const Fact& fact, Span where) const {
    // 2 supers off h1 and h2, 1 off h3: 5 boxes off
    std::size_t together = 0, hives = 0;
    for (std::size_t k = first_of_line_; fact.kind == Kind::super_off && k < out_->size(); ++k)
        if ((*out_)[k].fact.kind == Kind::super_off && (*out_)[k].fact.count > 0) hives += (*out_)[k].hives.size(), together += static_cast<std::size_t>((*out_)[k].fact.count) * (*out_)[k].hives.size();
    if (hives > 1 && fact.count == static_cast<int>(together)) return Question{"as many more, or all of them together?", "leave out the sum, or write what else came off with its hive"};
    if (fact.kind != Kind::super_count) return {};
    // h1 1 box: a super, or the hive on one box?
    const std::string said = lower(journal_.sources.text(where));
    const bool boxes = said.find("box") != said.npos && said.find("super") == said.npos && said.find("medium") == said.npos && said.find("shallow") == said.npos;
    const bool of_supers = told_in_line([](const RawFact& r) { return r.fact.kind == Kind::super_off || r.fact.kind == Kind::super_on; });
    if (boxes && !of_supers) return Question{"supers, or boxes in all?", "write `2 supers` of the boxes above the brood"};
    // took h1 two supers, h3 three supers
    const auto off_elsewhere = [&](const RawFact& r) { return r.fact.kind == Kind::super_off && r.hives != subject_.hives; };
    // honey off h1 and h2; two supers from h2
    const auto all_off_here = [&](const RawFact& r) { return r.fact.kind == Kind::super_off && r.fact.box.by == BoxChoice::By::all && std::find(r.hives.begin(), r.hives.end(), subject_.hives.front()) != r.hives.end(); };
    if ((hives_named_ && told_in_sentence(off_elsewhere)) || (subject_.hives.size() == 1 && told_in_line(all_off_here))) return Question{"off, or still on?", "write `2 supers off` or `2 supers still on`"};
    // h1 h4: honey off, 5 boxes
    const bool just_off = out_->size() > first_of_sentence_ && out_->back().fact.kind == Kind::super_off;
    if (subject_.several() && just_off) return Question{"from each of the hives, or together?", "write a line for each hive"};
    return {};
}

/// After a split: of the old hive, or of the new?
std::optional<LineReader::Question> LineReader::which_half(const Fact& fact) const {
    const auto split = [](const RawFact& r) { return divides(r.fact.kind); };
    const bool split_before = told_in_sentence(split);
    if ((fact.kind == Kind::queen_marked || fact.kind == Kind::queen_clipped) && split_before) return Question{"the queen of which hive?", "write a line for the hive she is in"};
    // split into h10, 3 frames of brood, 2 open cells
    const auto clause = out_->begin() + static_cast<std::ptrdiff_t>(std::min(before_clause_, out_->size()));
    const bool split_now = std::any_of(clause, out_->end(), split);
    // made a nuc into n1. 3 frames of brood and a queen cell
    const bool earlier = !hives_named_ && std::any_of(out_->begin() + static_cast<std::ptrdiff_t>(first_of_line_), out_->begin() + static_cast<std::ptrdiff_t>(first_of_sentence_), split);
    const bool cells = fact.kind == Kind::queen_cells && fact.count != 0 && (earlier || split_now || ((divided_ || split_before) && !hives_named_));
    if (cells || ((divided_ || earlier) && of_frames(fact))) return Question{"at which hive?", "write a line for the hive they are in"};
    return {};
}

/// `no brood bar 2 frames`, `eggs but not her`: is it denied?
std::optional<LineReader::Question> LineReader::none_or_some(const Fact& fact, Span where) const {
    static constexpr std::array<std::string_view, 6> exceptions = {"bar ", "except ", "apart from ", "other than ", "but for ", "save for "};
    if (fact.detail != "none" && fact.count != 0) return {};
    const std::string here = lower(journal_.sources.text(where));
    std::string after = lower(text().substr(where.end, 24));
    after.erase(0, after.find_first_not_of(" ,"));
    const bool but_some = std::any_of(exceptions.begin(), exceptions.end(), [&](std::string_view e) { return after.starts_with(e) || here.find(' ' + std::string(e)) != here.npos; });
    const bool but_not = here.find(" but ") != here.npos && !here.starts_with("no");
    if (but_some || but_not) return Question{"none, or some?", "write what is there, in a clause of its own"};
    return {};
}

/// What has to be asked before a reading is a fact, if anything.
std::optional<LineReader::Question> LineReader::question_about(const Candidate& c, Span where) const {
    if (elsewhere_ && needs_hive(c) && !c.hive_named && !hives_named_) return Question{"at which of the hives?", "write a line for each hive"};
    // left her the top one, which is light: told of what was not read
    static constexpr std::array<std::string_view, 6> which = {"which is ", "which was ", "which has ", "which had ", "which are ", "which were "};
    const bool after_words = needs_hive(c) && out_->size() > first_of_sentence_ && (out_->back().fact.kind == Kind::remark || out_->back().fact.kind == Kind::todo);
    const std::string so_far = after_words ? line_before(where) : std::string{};
    if (std::any_of(which.begin(), which.end(), [&](std::string_view w) { return so_far.ends_with(w); })) return Question{"what is so?", "write what it is told of, in a sentence of its own"};
    if (c.about_yard && !subject_.but.empty() && out_->size() == first_of_line_) return Question{"of the yard, or of these hives?", "write what was seen at the hives, or a line of the yard"};   // all but h4 have fresh nectar
    // fed all hives 8 L, h4 got 12 L
    const auto fed_with_others = [&](const RawFact& r) { return r.fact.kind == Kind::feed && r.fact.value.dimension == c.fact.value.dimension && (r.all || r.both || (r.hives.size() > 1 && subject_.hives.size() == 1 && std::find(r.hives.begin(), r.hives.end(), subject_.hives.front()) != r.hives.end())); };
    const bool fed_again = c.fact.kind == Kind::feed && c.fact.value.said() && hives_named_ && told_in_line(fed_with_others);
    if (fed_again) return Question{"as well, or instead?", "write what each of the hives was given"};
    // h5 united with n1: which of the two lives on?
    const auto nucleus = [&](HiveId h) { return h != no_hive && journal_.hives[static_cast<std::size_t>(h)].nucleus; };
    if (c.fact.kind == Kind::hive_united && nucleus(c.fact.other) && subject_.hives.size() == 1 && !nucleus(subject_.hives.front())) return Question{"which of the two lives on?", "write `n1 united with h5` where the nucleus went into the hive"};
    if (grammar::reading_rows[c.row].pattern == "PLANT strong|heavy") return Question{"the flow from it, or the bloom?", "write `flow heavy, lime`, or `lime in full bloom`"};
    // h3 4 frames drawn in the super, not much nectar: of that super
    const bool of_a_box = out_->size() > first_of_sentence_ && takes_box_from_before(out_->back().fact.kind);
    if (c.fact.kind == Kind::flow && grammar::reading_rows[c.row].pattern.find("little_nectar") != std::string_view::npos && subject_.said() && of_a_box) return Question{"in the super, or coming in?", "write `flow light`, or how full the super is"};
    static constexpr std::array<std::string_view, 4> in_all = {"all told", "in all", "altogether", "in total"};
    const std::string words = c.fact.kind == Kind::stocktake && c.fact.lot.empty() ? line_before({where.file, where.end, where.end}) : std::string{};
    if (std::any_of(in_all.begin(), in_all.end(), [&](std::string_view w) { return words.find(w) != words.npos; })) return Question{"of which lot?", "count each lot, for example `stocktake 12 kg lot A`"};
    if (const auto asked = none_or_some(c.fact, where)) return asked;
    // nosema tested, negative
    if (c.fact.kind == Kind::disease && lower(journal_.sources.text(where)).find("test") != std::string::npos) return Question{"found, or only tested for?", "write `nosema found`, or `no nosema`"};
    // h3 swarmed, hived the swarm: as which hive?
    const auto swarmed_here = [&](const RawFact& r) { return r.fact.kind == Kind::swarmed && r.hives == subject_.hives; };
    if (c.fact.kind == Kind::swarm_hived && !c.hive_named && !hives_named_ && told_in_line(swarmed_here)) return Question{"hived as which hive?", "name it, for example `hived as s1`"};
    // amitraz, 2 strips per brood box: it is given in strips, which go in and come out
    const bool strips = c.fact.kind == Kind::treatment && c.fact.detail == "amitraz" && lower(journal_.sources.text(where)).find("treat") == std::string::npos;
    if (strips) return Question{"strips put in?", "write `amitraz strips in`, or `treated with amitraz`"};
    if (const auto asked = which_honey(c)) return asked;
    if (const auto asked = which_colony(c.fact)) return asked;
    if (const auto asked = which_box(c.fact, where)) return asked;
    if (const auto asked = which_count(c.fact, where)) return asked;
    return which_half(c.fact);
}

}  // namespace waxtab
