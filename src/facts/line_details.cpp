#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// Details that follow after a comma: of what was just told, not for themselves.
namespace waxtab {

using grammar::Class;
using What = Item::What;

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
    bool out = false, worn = false;
    for (const Item& i : items) {
        if (i.what == What::day && i.text == "due" && !day) day = &i;
        else if (i.what == What::value && i.value.dimension == Dimension::duration && !stay) stay = &i;   // off in 14 days
        else if (i.is("out") || i.is("off") || i.is("due out")) out = true;
        else if (is_strip(i)) worn = true;
        else if (!i.idle() && !i.has(Class::link) && !(i.is("in") && !stay)) return false;
    }
    if (!out || !day == !stay) return false;
    // thymol in at all, 2 trays on h3, out by 13 September: of all of them?
    const auto elsewhere = [&](const RawFact& r) { return r.fact.kind == Kind::treatment_on && !r.fact.second.said() && r.hives != subject_.hives; };
    const auto here = [&](const RawFact& r) { return r.fact.kind == Kind::treatment_on && !r.fact.second.said() && r.hives == subject_.hives; };
    const auto line = out_->begin() + static_cast<std::ptrdiff_t>(first_of_line_);
    if (subject_.said() && std::any_of(line, out_->end(), here) && std::any_of(line, out_->end(), elsewhere)) return keep_asked(span(items), "at which of the hives?", "write a line for each treatment"), true;
    bool told = false;
    for (std::size_t k = first_of_line_; k < out_->size(); ++k) {
        RawFact& raw = (*out_)[k];
        const bool of_others = subject_.said() && raw.hives != subject_.hives;
        if (raw.fact.kind == Kind::treatment && worn && !of_others) raw.fact.kind = Kind::treatment_on;   // treated, and the pads come out on 1 August: they went in
        if (raw.fact.kind != Kind::treatment_on || raw.fact.second.said() || of_others) continue;
        raw.fact.second = day ? stay_of(raw.fact, day->day) : stay->value;
        reach(raw, span(items).end);
        told = true;
    }
    return told;
}

/// `formic in 16 May, out 30 May`: what went in came out on that day. True when it did.
bool LineReader::treatment_out_again(const std::vector<Item>& items) {
    const Item* day = nullptr;
    bool out = false;
    for (const Item& i : items) {
        if (i.what == What::day && i.text != "due" && !day) day = &i;
        else if (i.is("out") || i.is("off") || i.is("taken off")) out = true;
        else if (!i.idle() && !i.has(Class::link) && !is_strip(i) && surface(i) != "came") return false;
    }
    const auto in = std::find_if(out_->rbegin(), out_->rend() - static_cast<std::ptrdiff_t>(first_of_line_), [](const RawFact& r) { return r.fact.kind == Kind::treatment_on; });
    if (!day || !out || in == out_->rend() - static_cast<std::ptrdiff_t>(first_of_line_)) return false;
    const Day since = in->fact.happened == Day{} ? context_->noted : in->fact.happened;
    if (day->day <= since || day->day > context_->noted) return false;
    RawFact raw = *in;
    raw.fact.kind = Kind::treatment_off;
    raw.fact.second = {}, raw.fact.value = {}, raw.fact.count = -1;
    raw.fact.happened = day->day;
    const std::vector<HiveId> hives = raw.hives;
    put_at(std::move(raw), hives, span(items));
    last_.set = false;
    return true;
}

/// `filled 100 x 454 g from lot A, 50 from lot B`: jars of the same size. True when they are.
bool LineReader::jars_of_another_lot(const std::vector<Item>& items) {
    const Item* number = nullptr;
    const Item* lot = nullptr;
    for (const Item& i : items) {
        if (bare_number(i) && !number && i.value.amount % 1000 == 0) number = &i;
        else if (i.what == What::lot && i.lots.size() == 1 && !lot) lot = &i;
        else if (!i.idle() && !i.has(Class::link) && !i.is("from") && !i.is("of")) return false;
    }
    if (!number || !lot || out_->size() <= first_of_sentence_) return false;
    const Fact& before = out_->back().fact;
    if (before.kind != Kind::jars || !before.value.said() || before.lot.empty() || before.lot == lot->lots.front()) return false;
    RawFact raw = out_->back();
    raw.fact.count = static_cast<int>(number->value.amount / 1000);
    raw.fact.lot = lot->lots.front();
    put_at(std::move(raw), {}, span(items));
    last_.set = false;
    return true;
}

/// `stock count: 21 x 340 g lot A, 16 x 227 g lot B`: counted as well.
void LineReader::stock_goes_on(std::vector<Item>& items) const {
    if (out_->size() <= first_of_sentence_ || out_->back().fact.kind != Kind::stocktake || eventful(items)) return;
    std::vector<Item> joined = items;
    chunk(joined, item_context());
    if (joined.front().what != What::jars && !is_mass(joined.front())) return;
    Item counted = items.front();
    counted.what = What::term, counted.words = {table_word("stocktake", Class::thing)}, counted.end = counted.begin;
    items.insert(items.begin(), std::move(counted));
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
    const bool jars_told = told_in_line([](const RawFact& r) { return tells_of_jars(r.fact); });
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
    if (!divides(born.fact.kind)) return false;
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

/// `flumethrin strips in, 4 each`, `supers on, 2 each`: how many at each of the hives. True when it is.
bool LineReader::so_many_each(const std::vector<Item>& items) {
    const bool noun = items.size() == 3 && (is_strip(items[1]) || is_super(items[1]));
    const int said = items.empty() ? 0 : items[0].has(Class::count) ? static_cast<int>(items[0].word(Class::count)->number) : bare_number(items[0]) && items[0].value.amount % 1000 == 0 ? static_cast<int>(items[0].value.amount / 1000) : 0;
    const bool per_hive = items.size() == 3 && items[1].is("per") && (surface(items[2]) == "hive" || surface(items[2]) == "colony");
    const bool so_many = said > 0 && (per_hive || ((items.size() == 2 || noun) && says_each(items.back())));
    if (!so_many || out_->size() <= first_of_sentence_) return false;
    RawFact& told = out_->back();
    const bool of_boxes = told.fact.kind == Kind::super_on && subject_.several();
    if (!(of_boxes || told.fact.kind == Kind::treatment_on) || told.fact.count >= 0) return false;
    if (said > 1 || !of_boxes) told.fact.count = said;
    if (noun && !of_boxes) told.fact.manner = items[1].is("strip") ? std::string_view{} : items[1].is("pad") ? "pad" : "tray";
    reach(told, span(items).end);
    return true;
}

/// `9/300 (3%)`, `12 mites in 3 days, 4 a day`: worked out from what was just counted, so it says nothing more. True when it is, and right.
bool LineReader::worked_out_again(const std::vector<Item>& items) {
    if (items.empty() || out_->size() <= first_of_sentence_ || out_->back().fact.kind != Kind::mites || names_hive(items)) return false;
    RawFact& told = out_->back();
    const Item* number = nullptr;
    bool daily = false;
    for (const Item& i : items) {
        if (i.what == What::value && i.text != "nth" && !number) number = &i;
        else if (i.is("per day")) daily = true;
        else if (!i.idle() && !i.has(Class::link) && !i.has(Class::about) && !i.is("mite") && !stop(i, "=")) return false;
    }
    const bool share = number && number->value.dimension == Dimension::share && !daily && told.fact.value.unit == Unit::piece && told.fact.value.amount > 0;
    const bool rate = number && daily && number->value.dimension == Dimension::count && told.fact.second.said() && told.fact.second.amount > 0;
    if (!share && !rate) return false;
    // |counted - written|, to within half of the last digit written; both times ten and times what it is a share or a rate of
    const std::int64_t whole = share ? told.fact.value.amount : told.fact.second.amount;
    const std::int64_t off = std::abs(std::int64_t{told.fact.count} * (share ? 10'000'000 : 10'000) - 10 * number->value.amount * whole);
    const bool decimals = number->text.find_first_of(".,") != std::string::npos;
    const std::int64_t half_digit = share ? (decimals ? 6 : 51) : (decimals ? 510 : 5100);
    if (off > half_digit * whole) return keep_asked(span(items), "that is not what was counted", "leave out what is worked out, or mend the count"), true;
    reach(told, span(items).end);
    return true;
}

/// `extracted 20 kg from h2, 11 kg from h3`: extracted as well. True when it is.
bool LineReader::honey_of_another(const std::vector<Item>& items) {
    if (out_->size() <= first_of_sentence_ || out_->back().fact.kind != Kind::extracted || !out_->back().fact.value.said()) return false;
    const Item* mass = nullptr;
    const Item* hive = nullptr;
    for (const Item& i : items) {
        if (is_mass(i) && !mass) mass = &i;
        else if (i.what == What::hives && i.unknown_hives.empty() && !hive) hive = &i;
        else if (!i.idle() && !i.has(Class::link) && !i.is("from") && !i.is("net") && !i.is("honey")) return false;
    }
    const bool others = mass && hive && mass < hive && out_->back().fact.hives != hive->hives && !out_->back().fact.hives.empty();
    if (!others) return false;
    RawFact raw = out_->back();
    raw.fact.value = mass->value;
    raw.fact.hives = hive->hives;
    put_at(std::move(raw), {}, span(items));
    last_.set = false;
    return true;
}

/// Boxes came off more than one hive in this line, each told for itself.
bool LineReader::off_several() const {
    const RawFact* before = nullptr;
    for (std::size_t k = first_of_line_; k < out_->size(); ++k) {
        const RawFact& raw = (*out_)[k];
        if (raw.fact.kind != Kind::super_off) continue;
        if (before && before->hives != raw.hives) return true;
        before = &raw;
    }
    return false;
}

/// `2 supers off h4 and one off h3, 38 kg`: none of them weighed yet.
bool LineReader::off_several_unweighed() const {
    const auto weighed = [](const RawFact& r) { return r.fact.kind == Kind::super_off && r.fact.value.said(); };
    return off_several() && !told_in_line(weighed);
}

/// A weight after two boxes that came off at once.
bool LineReader::ask_each_or_both(const std::vector<Item>& items) {
    return keep_asked(span(items), "each of the two, or both together?", "write each with its weight, for example `top super off 12 kg`"), true;
}

/// `super off, all capped, 22 kg`: what the box weighed that came off before it in the line. True when it is.
bool LineReader::weight_of_the_super_off(const std::vector<Item>& items) {
    const Item* mass = nullptr;
    bool net = false, plant = false;
    for (const Item& i : items) {
        plant = plant || i.has(Class::plant);
        if (is_mass(i) && !mass) mass = &i;
        else if (i.is("net") || i.is("honey")) net = true;
        else if (!i.idle() && !i.has(Class::plant) && !i.is("before") && !i.is("between") && !i.is("in") && !i.is("scale") && !i.has(Class::about) && !i.is("weighed")) return false;
    }
    if (!mass || names_hive(items)) return false;
    if (off_several_unweighed()) return keep_asked(span(items), "from which of the hives?", "write each hive's weight with its boxes, for example `2 supers off h4, 26 kg`"), true;
    std::size_t off = out_->size();
    while (off > first_of_line_ && takes_box_from_before((*out_)[off - 1].fact.kind)) --off;
    const bool details_join = off == out_->size() && !plant && last_.set && out_->size() <= last_.out + 1;   // top off, 22 kg: read together
    if (details_join || off == first_of_line_ || (*out_)[off - 1].hives != out_->back().hives) return false;
    RawFact& box = (*out_)[off - 1];
    const RawFact* other = off > first_of_line_ + 1 ? &(*out_)[off - 2] : nullptr;   // top and bottom supers off, 24 kg
    const bool of_two = other && other->fact.kind == Kind::super_off && box.fact.kind == Kind::super_off && other->hives == box.hives && !other->fact.value.said() && !box.fact.value.said();
    if (of_two) return ask_each_or_both(items);
    if (box.fact.kind != Kind::super_off || box.fact.value.said() || box.hives.size() != 1) return false;
    std::vector<Item> joined = items;
    chunk(joined, item_context());   // about 22 kg
    for (const Item& i : joined)
        if (is_mass(i)) box.fact.value = i.value;
    if (net) box.fact.manner = "honey";
    reach(box, span(items).end);
    return true;
}

/// `super on, put it under the first`, `super on, under the 2nd of them`: where the box before went. Where that is not read,
/// both are asked, so that no place is assumed. True when it says a place.
bool LineReader::places_the_new_box(const std::vector<Item>& items) {
    static constexpr std::array<std::string_view, 15> leads = {"then", "put", "put it", "goes", "went", "it goes", "it went", "placed", "set", "slid", "it", "slipped", "them", "put them", "put on"};
    const auto leading = [&](const Item& i) { return i.idle() || std::find(leads.begin(), leads.end(), surface(i)) != leads.end(); };
    const auto place = std::find_if_not(items.begin(), items.end(), leading);
    if (place == items.end() || !place->has(Class::placing)) return false;
    const std::size_t at = last_told();
    if (at == out_->size() || (*out_)[at].fact.kind != Kind::super_on || (*out_)[at].fact.placing != Placing::unsaid) return false;
    if (place != items.begin() && join_last({place, items.end()}, false)) return true;   // put it under the first
    take_back(at);
    keep_asked(span(items), "where in the stack?", "say it with the super, for example `super on under the full one`");
    return true;
}

/// Details after a comma: reads the last clause and this one as one; true when that is one fact. What is read by itself
/// (`alone`) is no part of a name or remark before it.
bool LineReader::join_last(const std::vector<Item>& items, bool alone) {
    if (!last_.set) return false;
    const bool denial = std::all_of(last_.items.begin(), last_.items.end(), [](const Item& i) { return i.idle() || i.has(Class::negation); });
    if (denial) return false;   // no, too much brood
    // super on Sunday, today half full
    const auto dated = [](const Item& i) { return i.what == What::day; };
    if (std::any_of(items.begin(), items.end(), [&](const Item& i) { return says_today(i); }) && std::any_of(last_.items.begin(), last_.items.end(), dated)) return false;
    // a second super, top one ready: which, and no place
    const auto the_one = [&](const Item& i) { return i.has(Class::which) && surface(i).ends_with(" one"); };
    if (std::any_of(items.begin(), items.end(), the_one)) return false;
    const bool of_the_hive = names_hive(items) && std::any_of(items.begin(), items.end(), is_mass);
    if (of_the_hive) return false;   // super off, hive 40 kg
    // put a super on h4, another on h5: no detail of the one on h4
    const Kind told_last = last_.out < out_->size() ? (*out_)[last_.out].fact.kind : Kind::remark;
    // wet super back on, off Mon: when it came off, or will
    const auto off_or_out = [](const Item& i) { return i.is("off") || i.is("out"); };
    if (std::any_of(items.begin(), items.end(), off_or_out) && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::day; }) && std::all_of(items.begin(), items.end(), [&](const Item& i) { return off_or_out(i) || i.what == What::day || i.idle() || i.is("on"); }) &&
        told_last != Kind::treatment_on)
        return false;
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
    if (items.size() == 2 && is_strip(items[1])) std::erase_if(both, [&](const Item& i) { return is_strip(i) && i.is(items[1].words.front()->term); });
    const auto details = std::find_if(items.begin(), items.end(), [](const Item& i) { return !i.has(Class::link) || i.is("with"); });   // and they come out August 1
    both.insert(both.end(), details, items.end());
    if (subject_.several()) std::erase_if(both, [&](const Item& i) { return says_each(i); });   // super off, 14 kg each
    const bool each = std::any_of(items.begin(), items.end(), [&](const Item& i) { return says_each(i); });
    const bool off = told_last == Kind::super_off || told_last == Kind::frames_off;
    if (both.size() > 16 || (subject_.several() && off && !each && !masses_in(items).empty())) return false;   // supers off h1 and h2, 24 kg: from each, or together?
    // both supers off h1 and h2, 12 kg each
    const bool several_boxes = told_last == Kind::super_off && last_.out < out_->size() && ((*out_)[last_.out].fact.count > 1 || std::any_of(last_.items.begin(), last_.items.end(), [](const Item& i) { return i.is("both"); }));
    if (several_boxes && subject_.several() && each && !masses_in(items).empty()) return keep_asked(span(items), "each of the hives, or each of the supers?", "write a line for each hive"), true;
    const std::vector<Item> written = both;
    std::optional<Day> happened;
    for (std::size_t i = 0; i < both.size();) {
        if (both[i].what != What::day || both[i].text == "due") { ++i; continue; }
        if (happened && *happened != both[i].day) return false;   // formic in 16 May, out 30 May
        happened = both[i].day, both.erase(both.begin() + static_cast<std::ptrdiff_t>(i));
    }
    chunk(both, item_context());
    both_of_them(both);
    std::vector<Item> without = both;
    if (!subject_.said() || last_.out < out_->size()) take_subject(without);
    std::vector<Solution> ways = solve(without);
    if (ways.size() != 1 || ways.front().candidates.size() != std::max<std::size_t>(1, out_->size() - last_.out)) return false;
    if (is_event(ways.front().candidates.front().fact.kind) && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::negation) && !i.is("no excluder"); })) return false;
    const Fact& joined = ways.front().candidates.front().fact;
    // gave 3 jars to Bob for the hedge, two kept: nothing of it is told again
    const bool nothing_new = last_.out < out_->size() && ways.front().candidates.size() == 1 && same_content(joined, (*out_)[last_.out].fact) && !happened;
    if (nothing_new) return false;
    const bool put_on = joined.kind == Kind::super_on && last_.out < out_->size() && (*out_)[last_.out].fact.kind == Kind::drawn;   // second super, foundation, put under the first
    const auto told_again = [&](const RawFact& r) { return std::any_of(ways.front().candidates.begin(), ways.front().candidates.end(), [&](const Candidate& c) { return c.fact.kind == r.fact.kind; }); };
    // treated with formic acid, and the pads come out: no other substance
    const bool renamed = last_.out < out_->size() && !(*out_)[last_.out].fact.detail.empty() && joined.kind == (*out_)[last_.out].fact.kind && joined.detail.empty() && joined.kind == Kind::treatment;
    if (renamed) return false;
    // fed 4 L 2:1, pollen patty on each: the syrup is one feed, the patty another
    const bool another_food = joined.kind == Kind::feed && last_.out < out_->size() && !is_syrup(joined.detail) && is_syrup((*out_)[last_.out].fact.detail) && (!(*out_)[last_.out].fact.manner.empty() || (*out_)[last_.out].fact.detail.size() > std::string_view{"syrup"}.size());
    const bool feeder_put = alone && told_last == Kind::feed && !items.front().is("in") && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("feeder"); });   // fed 1 litre, feeder on
    if (another_food || feeder_put) return false;
    // a super each, drawn: what it is, no word of how far the one there is drawn
    const bool unread_before = last_.out >= out_->size() || (*out_)[last_.out].fact.kind == Kind::remark;
    const bool how_far = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::amount) || i.what == What::value || i.what == What::slash; });
    if (unread_before && joined.kind == Kind::drawn && joined.value.amount == 1000 && !how_far) return false;
    // 3 cells, left the open one: not three of them
    const auto numbered = [](const std::vector<Item>& k) { return std::any_of(k.begin(), k.end(), holds_number); };
    const bool not_so_many = joined.kind == Kind::cells_left || (joined.kind == Kind::cells_removed && numbered(items));
    if (not_so_many && numbered(last_.items)) return false;
    // requeened, Q from Ann, yellow: the name ends at the comma
    const auto swallows = [&](const Candidate& c, std::size_t k) {
        const Fact& now = c.fact;
        const std::string& name = last_.out + k < out_->size() ? (*out_)[last_.out + k].fact.text : now.text;
        return !name.empty() && now.kind != Kind::remark && now.kind != Kind::weather && now.kind != Kind::treatment && now.kind != Kind::treatment_on && now.text.size() > name.size() && now.text.starts_with(name);
    };
    bool swallowed = false;
    for (std::size_t k = 0; k < ways.front().candidates.size(); ++k) swallowed = swallowed || swallows(ways.front().candidates[k], k);
    if (swallowed) return false;
    const bool lost = out_->size() > last_.out + 1 && !std::all_of(out_->begin() + static_cast<std::ptrdiff_t>(last_.out), out_->end(), told_again);   // excluder and super on, drawn comb
    if (lost) return false;
    const bool another_kind = last_.out < out_->size() && !put_on && (*out_)[last_.out].fact.kind != Kind::remark && joined.kind != (*out_)[last_.out].fact.kind;
    if (another_kind) return false;   // strips out, 8 weeks in
    // clover over, lime next: still over, and nowhere over the lime
    const bool told_other = joined.kind == Kind::bloom && last_.out < out_->size() && joined.detail != (*out_)[last_.out].fact.detail;
    if (told_other) return false;
    if (alone && last_.out < out_->size() && joined.kind == (*out_)[last_.out].fact.kind && joined.text != (*out_)[last_.out].fact.text) return false;
    // made a nuc, 2 frames of brood, 1 of stores, the old queen: no amount told before may be lost
    const Fact* told = last_.out < out_->size() && joined.kind == (*out_)[last_.out].fact.kind && joined.kind != Kind::remark ? &(*out_)[last_.out].fact : nullptr;
    if (told && ((told->value.said() && !joined.value.said()) || (told->second.said() && !joined.second.said()))) return false;
    const int so_many = (joined.kind == Kind::super_on || joined.kind == Kind::treatment_on) && last_.out < out_->size() ? (*out_)[last_.out].fact.count : -1;
    if (so_many > 0 && joined.count < 0 && (so_many > 1 || joined.kind == Kind::treatment_on)) ways.front().candidates.front().fact.count = so_many;   // supers on, 2 each, wet
    out_->resize(last_.out);
    journal_.readings.resize(last_.readings);
    journal_.diagnostics.resize(last_.diagnostics);
    as_written_ = written;
    // calm, wash on h5, 6/300: of that hive, and not of all the line is about
    const auto named = std::find_if(written.begin(), written.end(), [](const Item& i) { return is_hives(i) && i.role == Item::Role::none; });
    const Subject now = subject_;
    if (told_last == Kind::remark && named != written.end() && named->unknown_hives.empty() && subject_.several()) subject_ = {}, subject_.hives = named->hives;
    const bool hives_named = std::exchange(hives_named_, hives_named_ || named != written.end());
    take(std::move(ways.front()), happened);
    hives_named_ = hives_named;
    subject_ = now;
    last_.items = written;
    before_clause_ = last_.out;
    return true;
}

}  // namespace waxtab
