#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// Which readings of a part what was told before, and the other words of the clause, do not bear.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

bool speaks_of_cells(const Item& i) {
    static constexpr std::array<std::string_view, 7> cells = {"queen cell", "open cell", "sealed cell", "charged cell", "swarm cell", "supersedure cell", "emergency cell"};
    return i.what == What::term && std::any_of(cells.begin(), cells.end(), [&](std::string_view c) { return i.is(c); });
}

bool speaks_of_brood(const Item& i) { return i.is("egg") || i.is("larva") || i.is("brood") || i.is("frames of brood") || i.is("brood in all stages"); }

/// A ten-frame deep full of honey, the heaviest box lifted, weighs about 41 kg, 90 lb (common practice, no source).
const std::int64_t heaviest_super = 45 * unit_size(Unit::kilogram);

bool says_has(std::string_view surface) { return surface == "has" || surface == "have" || surface == "had" || surface.ends_with("'ve got") || surface.ends_with("has got") || surface.ends_with("'s got"); }

}  // namespace

/// `hot`: of a hive, its temper; of no hive, the weather.
void LineReader::one_of_yard_and_hive(std::vector<Candidate>& found) const {
    const auto of_yard = [](const Candidate& c) { return c.about_yard; };
    if (std::all_of(found.begin(), found.end(), of_yard) || std::none_of(found.begin(), found.end(), of_yard)) return;
    // hill hives inspected, calm: of hives nobody knows
    const auto of_hives = [&] { return told_in_line([](const RawFact& r) { return r.fact.kind == Kind::remark && lower(r.fact.text).find("hives") != std::string::npos; }); };
    if (subject_.said() || of_hives()) std::erase_if(found, of_yard);
    else std::erase_if(found, [](const Candidate& c) { return needs_hive(c); });
}

/// `supers on`, `wets back on`: more than one, and nobody says how many.
bool LineReader::number_unsaid(const std::vector<Item>& part) const {
    // third super on, wets: its frames
    const bool one = std::any_of(part.begin(), part.end(), [&](const Item& i) { return i.what == What::box || (is_super(i) && !surface(i).ends_with('s')); });
    return std::any_of(part.begin(), part.end(), [&](const Item& i) {
        const bool box = i.what == What::term && !i.counted && !i.loose && (i.is("super") || (i.is("wet") && !one) || i.is("brood box") || !i.box_kind.empty());
        return box && surface(i).ends_with('s');
    });
}

/// `the hive weighs 40 kg`: the whole of it.
bool LineReader::names_hive(const std::vector<Item>& items) const {
    return std::any_of(items.begin(), items.end(), [&](const Item& i) {
        const std::string said = surface(i);
        return i.has(Class::filler) && (said == "hive" || said == "colony");
    });
}

/// What the line and the sentence have told so far, as far as readings depend on it.
LineReader::Told LineReader::told_before(const std::vector<Item>& items) const {
    const auto any = [&](auto speaks) { return std::any_of(items.begin(), items.end(), speaks); };
    const auto of_line = [&](Kind kind) {
        return told_in_line([&](const RawFact& r) { return r.fact.kind == kind; });
    };
    Told told;
    told.box = box_.by != BoxChoice::By::unsaid;
    told.brood = !told.box && (brood_said_ || any(speaks_of_brood));
    told.wet_box = told_in_line([](const RawFact& r) { return r.fact.kind == Kind::super_off && r.fact.comb == Comb::wet; });
    told.food = any([](const Item& i) { return i.has(Class::food); }) || (food_said_ && any([](const Item& i) { return i.is("added"); }));
    told.box_last = out_->size() > first_of_line_ && out_->back().fact.box.by != BoxChoice::By::unsaid;
    told.box_in_sentence = told.box_last && last_.set && last_.out < out_->size();
    const Kind last = out_->size() > first_of_line_ ? out_->back().fact.kind : Kind::remark;
    told.harvest = last == Kind::super_off || last == Kind::frames_off || last == Kind::extracted || takes_box_from_before(last);
    told.cells_last = last == Kind::queen_cells || last == Kind::cups || last == Kind::cells_removed || last == Kind::cells_left;
    told.cups_last = last == Kind::cups;
    told.queen_last = last == Kind::queen || last == Kind::queen_marked || last == Kind::queen_clipped;
    told.of_the_cells = told.cells_last && any([&](const Item& k) { const std::string said = surface(k); return said == "none" || said == "them" || said == "in them" || said == "of them"; });
    told.mated = any([&](const Item& k) { return surface(k) == "mated" || surface(k) == "has mated" || surface(k) == "is mated"; });
    told.strips_moved = std::adjacent_find(items.begin(), items.end(), [](const Item& a, const Item& b) { return a.is("strip") && (b.is("in") || b.is("out") || b.is("off") || b.is("taken off")); }) != items.end();
    told.super_moved = std::adjacent_find(items.begin(), items.end(), [](const Item& a, const Item& b) { return is_super(a) && (b.is("on") || b.is("off")); }) != items.end();
    told.put_away = any([](const Item& k) { return k.is("shed") || k.is("to shed") || k.is("frozen"); });
    told.have = any([&](const Item& k) { const std::string said = surface(k); return k.has(Class::filler) && (says_has(said) || said == "still" || said == "got"); });
    told.colour = any([](const Item& k) { return k.has(Class::colour); });
    told.plant = any([](const Item& k) { return k.has(Class::plant); });
    told.laying = any([](const Item& k) { return k.is("laying"); });
    told.whole_hive = names_hive(items);
    told.boxes = boxes_unread_ || told_in_line([](const RawFact& r) { return r.fact.kind < Kind::hive_moved || r.fact.box.by != BoxChoice::By::unsaid; });
    told.extracted = of_line(Kind::extracted);
    told.jars = told_in_line([](const RawFact& r) { return tells_of_jars(r.fact); });
    const auto deed = [](const Item& k) { return k.what == What::sign || (k.has(Class::done) && !on_or_off(k)); };
    told.stands = any([&](const Item& k) { return k.has(Class::filler) && says_has(surface(k)); }) && any([](const Item& k) { return k.is("on") || k.is("in"); }) && !any(deed);
    told.cells = cells_said_ || any(speaks_of_cells);
    return told;
}

/// What the frames hold: drawn, foundation, so many of them.
void LineReader::fit_combs(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const {
    const auto no_reading = [&](auto rule) { std::erase_if(found, rule); };
    // super nearly all sealed bar 2 frames: all of what is said after it
    if (!part.empty() && part.back().has(Class::amount) && surface(part.back()).ends_with(" all")) no_reading([](const Candidate& c) { return c.fact.kind == Kind::full; });
    // +super, strips out: those of a treatment, no starter strips
    if (told.strips_moved) no_reading([](const Candidate& c) { return c.fact.comb == Comb::strips; });
    // two mediums, one drawn: one of them, not a frame
    if (std::none_of(part.begin(), part.end(), [](const Item& k) { return k.is("frame"); }))
        no_reading([](const Candidate& c) { return c.fact.kind == Kind::drawn && c.fact.value.unit == Unit::frame && c.fact.value.amount == 1000 && c.fact.box.by == BoxChoice::By::unsaid; });
    // a drawn super: a thing, and no word of how far it is drawn
    const auto of_what = [](const Item& k) { return k.is("drawn") || k.is("foundation"); };
    for (std::size_t k = 0; k + 2 < part.size(); ++k)   // a super of drawn
        if (is_super(part[k]) && part[k + 1].is("of") && of_what(part[k + 2])) no_reading([](const Candidate& c) { return c.fact.kind == Kind::drawn; });
    const auto thing = std::adjacent_find(part.begin(), part.end(), [](const Item& a, const Item& b) { return (a.is("drawn") || a.is("foundation")) && !a.counted && is_super(b) && !b.counted; });
    if (thing != part.end() && std::none_of(part.begin(), part.end(), [](const Item& k) { return k.has(Class::amount) || k.what == What::value || k.what == What::slash; }))
        no_reading([](const Candidate& c) { return c.fact.kind == Kind::drawn; });
    no_reading([&](const Candidate& c) { return c.fact.kind == Kind::comb_year && (c.fact.count < 1990 || c.fact.count > static_cast<int>(date::year_month_day{context_->noted}.year())); });
    // two full, one empty; top 2 capped: frames, or supers?
    const bool frames_said = std::any_of(part.begin(), part.end(), [](const Item& k) { return k.is("frame") || k.is("outside frames") || k.is("all but"); });
    no_reading([&](const Candidate& c) {
        const bool few = takes_box_from_before(c.fact.kind) && c.fact.value.dimension == Dimension::count && c.fact.value.amount <= 4000;
        return few && !frames_said && (!told.box || c.fact.box.by == BoxChoice::By::top || c.fact.box.by == BoxChoice::By::bottom);
    });
    // a super with foundation: what it holds
    const bool with_comb = std::any_of(part.begin(), part.end(), [](const Item& k) { return k.is("with") && k.loose; }) && std::any_of(part.begin(), part.end(), is_super);
    if (with_comb) no_reading([](const Candidate& c) { return c.fact.kind == Kind::drawn; });
}

/// What was done with brood boxes and treatments, and not by the same words.
void LineReader::fit_deeds(std::vector<Candidate>& found, const std::vector<Item>& part) const {
    const auto no_reading = [&](auto rule) { std::erase_if(found, rule); };
    // treated h3 with amitraz strips: they went in, no product of that name
    const auto strips_in = [](const Candidate& c) { return c.fact.kind == Kind::treatment_on && !c.fact.detail.empty(); };
    if (std::any_of(found.begin(), found.end(), strips_in)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::treatment && !c.fact.text.empty(); });
    // gave them 3 frames of foundation in the brood box: frames went in, no box
    const auto box = std::find_if(part.begin(), part.end(), [](const Item& k) { return k.is("brood box"); });
    auto before = box;
    while (before != part.begin() && (before - 1)->has(Class::filler)) --before;
    const bool in_box = box != part.end() && before != part.begin() && ((before - 1)->is("in") || (before - 1)->is("into"));
    if (in_box && std::any_of(part.begin(), box, holds_number)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::brood_box_on; });
    // treated h3 with oxalic acid gave h4 a super: more than the name of what it was treated with
    const auto substance = std::find_if(part.begin(), part.end(), [](const Item& k) { return k.has(Class::substance); });
    const auto tells_more = [](const Item& k) { return !k.idle() && !is_strip(k) && k.what != What::day && !k.has(Class::preposition); };
    if (substance != part.end() && std::any_of(substance + 1, part.end(), tells_more)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::treatment && c.fact.detail.empty() && !c.fact.text.empty(); });
    // brood box full of honey: not of bees
    const auto of_honey = [&](const Item& k) { const std::string said = surface(k); return k.is("full") && (said.find("honey") != said.npos || said.find("nectar") != said.npos); };
    if (std::any_of(part.begin(), part.end(), of_honey)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::crowding; });
}

/// Of the sky, and of no comb or honey.
void LineReader::fit_weather(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const {
    const auto of_weather = [](const Candidate& c) { return c.fact.kind == Kind::weather; };
    if (std::none_of(found.begin(), found.end(), of_weather)) return;
    // refractometer 18.1% lot A, fine
    const std::string said = lower(journal_.sources.text(span(part)));
    const Kind last = out_->size() > first_of_line_ ? out_->back().fact.kind : Kind::weather;
    static constexpr std::array<std::string_view, 12> of_other_things = {"fine", "dry", "very dry", "grey", "gray", "dull", "bright", "clear", "scorching", "sticky", "bitter", "still"};
    static constexpr std::array<std::string_view, 14> of_the_sky = {"and sunny", "and warm", "and hot", "and cold", "and cool", "and mild", "and wind", "and breez", "and calm", "and still", "and bright", "and clear", "and humid", "and cloud"};
    const std::string rest = rest_of_line(part);   // dry and sunny
    const bool weather_follows = std::any_of(of_the_sky.begin(), of_the_sky.end(), [&](std::string_view w) { return rest.starts_with(w); });
    const bool other = !weather_follows && std::find(of_other_things.begin(), of_other_things.end(), said) != of_other_things.end();
    if (other && last != Kind::weather && last != Kind::temperature && last != Kind::bloom && last != Kind::flow) std::erase_if(found, of_weather);   // in the old box, scorched and dry
    // took the wet super off, dry now; shook a frame, dry; they are dry
    const std::string before = line_before(span(part));
    const auto told_in = [](const std::string& text, std::string_view words) { return text.find(words) != text.npos; };
    const bool of_a_comb = told.wet_box || told_in(before + said, "capping") || told_in(before, "shook") || told_in(before, "shake") || told_in(before + said, "they are dry");
    if (of_a_comb) std::erase_if(found, [](const Candidate& c) { return c.fact.kind == Kind::weather && c.fact.text == "dry weather"; });
}

/// Of cells, cups, brood and the queen.
void LineReader::fit_cells(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const {
    const auto no_reading = [&](auto rule) { std::erase_if(found, rule); };
    // marked white, plenty of pollen: the colour is the queen's
    const auto colour = std::find_if(part.begin(), part.end(), [](const Item& k) { return k.has(Class::colour); });
    const bool of_pollen = colour == part.end() || colour + 1 == part.end() || (colour + 1)->is("pollen");
    if (!of_pollen) no_reading([](const Candidate& c) { return c.fact.kind == Kind::pollen; });
    const bool of_cells = told.cells && std::any_of(found.begin(), found.end(), [](const Candidate& c) { return c.after_cells; });
    no_reading([&](const Candidate& c) { return c.after_cells != of_cells; });
    no_reading([&](const Candidate& c) { return c.after_cups && !told.cups_last; });
    if (told.cups_last) no_reading([](const Candidate& c) { return c.after_cells && (c.fact.kind == Kind::queen_cells || c.fact.kind == Kind::cells_removed); });   // 3 charged cups, knocked them down: no cells
    // left one open cell, marked with a pin: the frame it is on
    const auto of_the_queen = [&](const Item& k) { return k.is("queen") || k.is("new queen") || k.is("virgin") || k.has(Class::colour) || surface(k).ends_with("her"); };
    const bool marked_with = std::any_of(part.begin(), part.end(), [](const Item& k) { return k.is("with"); });
    if ((told.cells_last || marked_with) && std::none_of(part.begin(), part.end(), of_the_queen)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::queen_marked; });
    // 3 virgin: no three of them, and not one passed over
    const bool virgins = std::any_of(part.begin(), part.end(), [&](const Item& k) { return k.is("virgin") && surface(k).ends_with('s'); });
    if (!virgins) no_reading([](const Candidate& c) { return c.fact.kind == Kind::queen && c.fact.detail == "virgin" && c.fact.count > 1; });
    if (!told.brood) no_reading([](const Candidate& c) { return c.after_brood; });
    // 5 queen cups but none of them had an egg, 5 cups, no eggs in them: of the cups
    if (told.of_the_cells) no_reading([](const Candidate& c) { return c.fact.kind == Kind::eggs || c.fact.kind == Kind::larvae || c.fact.kind == Kind::brood; });
    // the new queen in h5 is laying: she stands there
    if (told.laying && std::any_of(part.begin(), part.end(), [&](const Item& k) { return surface(k).ends_with("queen in"); })) no_reading([](const Candidate& c) { return c.fact.kind == Kind::queen_introduced; });
    if (told.mated) no_reading([](const Candidate& c) { return c.fact.kind == Kind::queen && c.fact.detail == "virgin"; });   // virgin mated: none any more
    // saw a virgin, small and quick: of her
    const auto size = [&](const Item& k) { const std::string said = surface(k); return said == "small" || said == "big" || said == "large"; };
    const bool of_her = told.queen_last || (!part.empty() && part.front().begin > queen_at_);   // queen looks fine, big and fat
    if (of_her && std::any_of(part.begin(), part.end(), size)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::strength; });
    // a virgin, small and runny: no temper of the colony
    const bool of_a_virgin = !part.empty() && part.front().begin > queen_at_ && queen_at_ != UINT32_MAX && lower(text().substr(queen_at_, 6)) == "virgin";
    if (of_a_virgin) no_reading([](const Candidate& c) { return c.fact.kind == Kind::temper && c.fact.detail == "lively"; });
    // 5 queen cells, none sealed: of the cells
    if (told.cells_last) no_reading([](const Candidate& c) { return c.fact.kind == Kind::capped && c.fact.box.by == BoxChoice::By::unsaid; });
}

/// Of boxes: their weight, which came and went, how many there are.
void LineReader::fit_boxes(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const {
    const auto no_reading = [&](auto rule) { std::erase_if(found, rule); };
    // the hive 40 kg: of no box
    if (told.whole_hive) no_reading([](const Candidate& c) { return c.fact.kind == Kind::box_weight; });
    // top super full, weighs 21 kg: of the super where one was spoken of last, unless no super weighs as much
    const bool too_heavy = told.box_in_sentence && std::any_of(found.begin(), found.end(), [](const Candidate& c) { return c.fact.value.dimension == Dimension::mass && c.fact.value.amount > heaviest_super; });
    if (found.size() > 1 && !too_heavy) no_reading([&](const Candidate& c) { return told.box_in_sentence ? c.fact.kind == Kind::hive_weight : c.carries_box && c.fact.kind == Kind::box_weight; });
    // super full, capped: but not after 3 queen cells
    if (!told.box_last) no_reading([](const Candidate& c) { return c.carries_box && c.fact.kind == Kind::capped; });
    if (!told.box) no_reading([](const Candidate& c) { return c.carries_box; });
    // gave 4 another super: to hive 4, no four of them
    const auto one_more = [&](const Item& k) { return k.counted && surface(k).find(" another ") != std::string::npos; };
    if (std::any_of(part.begin(), part.end(), one_more)) found.clear();
    // put the supers from h3 in the freezer: to no hive
    if (told.put_away) no_reading([](const Candidate& c) { return c.fact.kind == Kind::super_moved; });
    // extracted 20 kg from h3 and super on h4: nothing extracted from it
    if (told.super_moved && std::any_of(part.begin(), part.end(), is_super)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::extracted; });
    // didn't super: no word of how many are on
    const auto denial = std::find_if(part.begin(), part.end(), [](const Item& k) { return k.has(Class::negation); });
    static constexpr std::array<std::string_view, 5> none_there = {"no", "no more", "without", "without any", "no other"};
    if (denial != part.end() && std::find(none_there.begin(), none_there.end(), surface(*denial)) == none_there.end()) no_reading([](const Candidate& c) { return c.fact.kind == Kind::super_count && c.fact.count == 0; });
    // top super off 2 frames of stores
    const auto box_off = std::adjacent_find(part.begin(), part.end(), [](const Item& a, const Item& b) { return (a.what == What::box || is_super(a)) && (b.is("off") || b.is("taken off")); });
    if (box_off != part.end()) no_reading([](const Candidate& c) { return c.fact.kind == Kind::frames_off; });
    // super off, 11 kg honey: one super, where `honey off` is all of them
    const auto one_super = [&](const Item& k) { return k.is("super") && !k.counted && !surface(k).ends_with('s'); };
    const auto off = [](const Candidate& c) { return c.fact.kind == Kind::super_off && c.fact.box.by != BoxChoice::By::all; };
    if (std::any_of(part.begin(), part.end(), one_super) && std::any_of(found.begin(), found.end(), off)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::super_off && c.fact.box.by == BoxChoice::By::all; });
    // 3 supers on now: a count
    const auto tells_total = [&](const Item& i) { const std::string said = surface(i); return said == "now" || said == "total" || said == "in total" || said == "altogether" || said == "still"; };
    const bool counted = std::any_of(found.begin(), found.end(), [](const Candidate& c) { return c.fact.kind == Kind::super_count; });
    if (counted && std::any_of(part.begin(), part.end(), tells_total)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::super_on; });
    // top super on, heavy: of the super
    if (told.box || told.boxes) no_reading([](const Candidate& c) { return grammar::reading_rows[c.row].pattern == "heavy"; });
    if (told.stands) no_reading([](const Candidate& c) { return is_event(c.fact.kind); });
}

/// Of the yard, of honey, of what was fed and divided.
void LineReader::fit_the_rest(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const {
    const auto no_reading = [&](auto rule) { std::erase_if(found, rule); };
    if (!told.extracted) no_reading([&](const Candidate& c) { return c.after_lot && !(told.jars && c.fact.kind == Kind::jars); });
    if (!told.jars) no_reading([](const Candidate& c) { return c.after_jars; });
    if (!told.food) no_reading([](const Candidate& c) { return c.beside_food; });
    // pollen coming in, yellow and grey
    const auto grey = [&](const Item& k) { return surface(k) == "grey" || surface(k) == "gray"; };
    if (told.colour && std::any_of(part.begin(), part.end(), grey)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::weather; });
    if (told.have) no_reading([](const Candidate& c) { return grammar::reading_rows[c.row].pattern == "jar? JARS LOT?"; });   // we have 40 jars: none filled now
    // apple is close: to its bloom
    const auto close = [&](const Item& k) { return surface(k) == "close"; };
    if (told.plant && std::any_of(part.begin(), part.end(), close)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::weather; });
    // pollen patty on, fed 2 L 1:1: no patty is mixed so
    no_reading([](const Candidate& c) { return c.fact.kind == Kind::feed && !is_syrup(c.fact.detail) && !c.fact.manner.empty(); });
    // 7 frames of brood and split into h11: what was seen before
    const auto divided = std::find_if(part.begin(), part.end(), is_split);
    const bool frames_first = divided != part.end() && std::none_of(part.begin(), divided, [](const Item& k) { return k.has(Class::done); }) && std::any_of(part.begin(), divided, [](const Item& k) { return k.counted || counted_in_frames(k); });
    if (frames_first) no_reading([](const Candidate& c) { return divides(c.fact.kind) && (c.fact.value.said() || c.fact.second.said() || c.fact.count > 0); });
    // nothing blooming but a little sumac
    const auto a_little = [&](const Item& k) { return k.is("started") && surface(k).starts_with("a "); };
    if (std::any_of(part.begin(), part.end(), a_little)) no_reading([](const Candidate& c) { return c.fact.kind == Kind::bloom; });
    if (told.harvest || told.extracted) no_reading([](const Candidate& c) { return grammar::reading_rows[c.row].pattern == "PLANT"; });   // top off, 27 kg, manuka: the honey
}

/// `supers on`, `wets back on`: one at each of several hives; `supers off`: all of them.
void LineReader::fit_plurals(std::vector<Candidate>& found, const std::vector<Item>& part) const {
    const auto no_reading = [&](auto rule) { std::erase_if(found, rule); };
    if (!number_unsaid(part)) return;
    const bool one_each = subject_.several();   // put supers on h3 and h4
    if (!one_each) no_reading([](const Candidate& c) { return c.fact.kind == Kind::super_on || c.fact.kind == Kind::brood_box_on; });
    for (Candidate& c : found)   // wet supers back on h1 and h3
        if (one_each && (c.fact.kind == Kind::super_on || c.fact.kind == Kind::brood_box_on) && c.fact.count < 1) c.fact.assumed |= assumed_each;
    for (Candidate& c : found)   // supers off: all of them
        if (c.fact.kind == Kind::super_off && c.fact.count < 1 && (c.fact.box.by == BoxChoice::By::sole || c.fact.box.by == BoxChoice::By::unsaid)) c.fact.box_kind = {}, c.fact.box = {BoxChoice::By::all, Role::super, 0, {}};
}

/// Takes out the readings that what was told before does not bear.
void LineReader::only_fitting(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const {
    one_of_yard_and_hive(found);
    fit_combs(found, part, told);
    fit_cells(found, part, told);
    fit_deeds(found, part);
    fit_weather(found, part, told);
    fit_boxes(found, part, told);
    fit_the_rest(found, part, told);
    fit_plurals(found, part);
}

/// Takes out the readings of a part that what was told, or what stands before it in the clause, does not bear.
void LineReader::fitting_after(std::vector<Candidate>& found, const std::vector<Item>& part, const std::vector<Item>& before, bool linked, Told told) const {
    const auto any_before = [&](auto says) { return std::any_of(before.begin(), before.end(), says); };
    // super 6 of 10 frames drawn and half full: spoken of in the part before
    const bool box_before = any_before([](const Item& k) { return k.what == What::box || is_super(k); });
    told.box = told.box || box_before, told.box_in_sentence = told.box_in_sentence || box_before;
    only_fitting(found, part, told);
    // 6 frames of 10 drawn and filled: six filled, or the whole?
    const bool after_and = linked || (!before.empty() && before.back().is("and"));
    const bool full_alone = after_and && part.size() == 1 && part.front().is("full") && any_before([](const Item& k) { return k.what == What::value || k.what == What::slash || k.counted; });
    if (full_alone) std::erase_if(found, [](const Candidate& c) { return c.fact.kind == Kind::full; });
    // no eggs and larvae: seen, or none either?
    const bool denied_before = after_and && any_before([](const Item& k) { return k.has(Class::negation); });
    const bool bare_brood = part.size() == 1 && !part.front().counted && (part.front().is("egg") || part.front().is("larva") || part.front().is("brood") || part.front().is("sealed brood"));
    if (denied_before && bare_brood) found.clear();
    // top fully capped bottom 80%: a box begins what is said of it
    const bool share_before = !before.empty() && before.back().what == What::value && before.back().value.dimension == Dimension::share;
    if (share_before && surface(part.front()) == "capped brood") found.clear();   // top 40% capped brood on 6
    const bool backwards = !before.empty() && part.size() > 1 && (part.front().is("capped") || part.front().is("drawn")) && part[1].what == What::box;
    if (backwards) std::erase_if(found, [](const Candidate& c) { return c.fact.kind == Kind::capped || c.fact.kind == Kind::drawn; });
}

}  // namespace waxtab
