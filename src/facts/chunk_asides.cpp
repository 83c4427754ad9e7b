#include "facts/chunk_asides.hpp"

#include <algorithm>
#include <array>

#include "facts/chunk_boxes.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

void set_aside(std::vector<Item>& items, std::size_t from, std::size_t n) {
    for (std::size_t k = from; k < from + n; ++k) pass_over(items[k]);
}

const grammar::Word plant_by_its_name{"", Class::plant, ""};

}  // namespace

void strange_plants(std::vector<Item>& items, const Lexicon& lexicon) {
    const auto bloom = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.is("bloom"); });
    auto end = bloom;
    while (end != items.begin() && (end - 1)->has(Class::filler)) --end;   // still in flower
    auto begin = end;
    while (begin != items.begin() && (begin - 1)->what == What::unknown && lexicon.nearest((begin - 1)->text).empty()) --begin;
    const bool alone = std::all_of(items.begin(), begin, [](const Item& i) { return i.idle() || i.has(Class::link); });
    if (bloom == items.end() || begin == end || end - begin > 3 || !alone) return;
    for (auto i = begin + 1; i != end; ++i) begin->text += ' ' + i->text, begin->end = i->end;
    begin->what = What::term;
    begin->words = {&plant_by_its_name};
    items.erase(begin + 1, end);
}

void counted_frames(std::vector<Item>& items) {
    const auto of_stock = [](const Item& i) { return i.what == What::jars || i.what == What::lot || is_mass(i) || i.is("jar") || i.is("section") || i.is("piece"); };
    if (std::any_of(items.begin(), items.end(), of_stock)) return;
    for (std::size_t i = 0; i + 1 < items.size(); ++i)
        if (items[i].is("stocktake") && items[i].end - items[i].begin == 7) pass_over(items[i]);   // counted
}

void by_the_clock(std::vector<Item>& items) {
    for (std::size_t i = 1; i < items.size(); ++i) {
        const bool hour = items[i].what == What::unknown && items[i].text == "o'clock" && (is_count(items[i - 1]) || items[i - 1].has(Class::count));
        if (!hour) continue;
        pass_over(items[i]), pass_over(items[i - 1]);
        if (i > 1 && (items[i - 2].is("at") || items[i - 2].is("about") || items[i - 2].is("when") || items[i - 2].text == "by")) pass_over(items[i - 2]);
    }
}

void weather_until(std::vector<Item>& items) {
    const auto degrees = [](const Item& i) { return i.what == What::value && i.value.dimension == Dimension::temperature; };
    const auto of_the_day = [&](const Item& i) { return i.has(Class::weather) || degrees(i); };
    if (std::none_of(items.begin(), items.end(), of_the_day)) return;
    // 22C and still: no wind. Not in `h4 calm still`
    const auto of_nothing_else = [&](const Item& i) { return degrees(i) || (i.has(Class::weather) && i.words.size() == 1); };
    const bool weather = std::all_of(items.begin(), items.end() - 1, [&](const Item& i) { return of_the_day(i) || i.has(Class::link) || i.idle(); });
    const bool linked = items.size() > 2 && items[items.size() - 2].is("and");   // fine and still
    if (items.back().is("still") && weather && (linked || std::any_of(items.begin(), items.end() - 1, of_nothing_else))) items.back().words = {table_word("calm weather", Class::weather)};
    for (std::size_t i = 0; i + 1 < items.size(); ++i)
        if (items[i].is("when") && is_count(items[i + 1]) && items[i + 1].value.unit == Unit::piece) pass_over(items[i]), pass_over(items[i + 1]);
}

void where_plants_stand(std::vector<Item>& items) {
    static constexpr std::array<std::string_view, 8> strange = {"along", "by", "near", "beside", "behind", "around", "towards", "beyond"};
    const auto place_word = [&](const Item& i) {
        return (i.what == What::unknown && std::find(strange.begin(), strange.end(), i.text) != strange.end()) || i.is("at") || i.is("in") || i.is("across") || i.is("on") || i.is("over");
    };
    const auto plant = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.has(Class::plant); });
    const bool told = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("bloom") || i.is("beginning") || i.is("peak") || i.is("bud") || i.is("not yet") || i.is("ending") || i.is("full flow") || i.is("out"); });
    const bool alone = plant != items.end() && std::all_of(items.begin(), items.end(), [&](const Item& i) { return i.has(Class::plant) || i.idle() || i.what == What::unknown || place_word(i) || i.is("gear"); });
    if (plant == items.end() || !(told || alone)) return;
    for (auto i = plant + 1; i != items.end(); ++i) {
        if (!place_word(*i) || i->is("bloom")) continue;
        auto end = i + 1;
        bool named = false;
        const auto names_it = [&](std::vector<Item>::iterator k) { return k->has(Class::state) && k + 1 != items.end() && (k + 1)->what == What::unknown; };   // on the low ground
        for (; end != items.end() && (end->what == What::unknown || names_it(end) || end->has(Class::filler) || place_word(*end) || end->is("gear") || end->is("shed") || end->what == What::yard); ++end) named = named || end->what == What::unknown || end->what == What::yard;
        if (!named) continue;
        std::for_each(i, end, pass_over);
        i = end - 1;
    }
}

void bare_temperature(std::vector<Item>& items, const Settings& settings) {
    const auto with_it = [](const Item& i) { return i.has(Class::weather) || i.has(Class::link) || i.idle(); };
    const bool weather = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::weather); });
    const auto number = std::find_if(items.begin(), items.end(), bare_number);
    if (!settings.temperature_said || !weather || number == items.end() || !std::all_of(items.begin(), number, [](const Item& i) { return i.idle(); }) || !std::all_of(number + 1, items.end(), with_it)) return;
    number->value = measure(number->text, settings.temperature).value_or(number->value);
    number->unit_assumed = true;
}

void temperature_of_that(std::vector<Item>& items) {
    const auto any = [&](auto says) { return std::any_of(items.begin(), items.end(), says); };
    const bool of_food_or_honey = any([](const Item& i) { return i.is("fed") || i.has(Class::food) || i.is("moisture"); });
    for (std::size_t i = 1; of_food_or_honey && i + 1 < items.size(); ++i)
        if (items[i].is("at") && items[i + 1].what == What::value && items[i + 1].value.dimension == Dimension::temperature) set_aside(items, i, 2);
}

void no_plant_yet(std::vector<Item>& items) {
    if (items.size() != 3 || !items[0].has(Class::negation) || !items[1].has(Class::plant) || items[2].end - items[2].begin != 3 || !items[2].has(Class::filler)) return;
    items[2].words = {table_word("not yet", Class::state)};
    items[1].begin = items[0].begin;
    items.erase(items.begin());
}

void why_moved(std::vector<Item>& items) {
    const auto yard = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.what == What::yard; });
    if (yard == items.end() || std::none_of(items.begin(), yard, [](const Item& i) { return i.is("moved") || i.is("moved up"); })) return;
    for (auto i = yard; i + 1 < items.end(); ++i) {
        auto plant = i + 1;
        while (plant != items.end() && plant->has(Class::filler)) ++plant;
        if ((i->is("to") || i->is("but")) && plant != items.end() && plant->has(Class::plant)) pass_over(*i), pass_over(*plant);
    }
}

void on_which_frame(std::vector<Item>& items) {
    for (std::size_t i = 0; i + 2 < items.size(); ++i) {
        const bool frame = items[i + 1].is("frame") && !items[i + 1].counted && is_count(items[i + 2]);
        const bool nth = items[i + 2].is("frame") && !items[i + 2].counted && items[i + 1].has(Class::which) && items[i + 1].word(Class::which)->number > 0;   // on the third frame
        const bool there = items[i].is("on") || items[i].is("in");
        if (there && nth) set_aside(items, i, 3);
        if (i + 3 < items.size() && there && items[i + 1].has(Class::filler) && items[i + 3].is("frame") && !items[i + 3].counted && ((items[i + 2].has(Class::which) && items[i + 2].word(Class::which)->number > 0) || items[i + 2].text == "ordinal")) set_aside(items, i, 4);
        if (frame && (items[i].is("on") || items[i].is("in") || items[i].is("across"))) set_aside(items, i, 3);
    }
    for (std::size_t i = 1; i < items.size(); ++i) {
        const std::size_t with = items[i - 1].has(Class::filler) && i > 1 ? i - 2 : i - 1;
        if (items[i].is("pin") && items[with].is("with")) items[i].loose = items[with].loose = true;
    }
}

void plants_of_boxes(std::vector<Item>& items) {
    if (std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("extracted"); })) return;   // it is said of the lot
    for (std::size_t i = 0; i + 1 < items.size(); ++i)
        if (items[i].has(Class::plant) && (is_super(items[i + 1]) || items[i + 1].is("honey") || items[i + 1].what == What::box)) items[i].loose = true;
}

void swarm_places(std::vector<Item>& items) {
    const auto hived = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.is("hived"); });
    for (auto i = items.begin(); i != hived && hived != items.end(); ++i) {
        if (!i->is("from") && !i->is("off")) continue;
        auto end = i + 1;
        while (end != hived && (end->what == What::unknown || end->has(Class::filler) || end->has(Class::plant))) ++end;
        if (end == i + 1 || end->what == What::hives) continue;
        std::for_each(i, end, pass_over);
    }
}

void found_so_many(std::vector<Item>& items) {
    const auto first = std::find_if(items.begin(), items.end(), [](const Item& i) { return !i.idle() && !i.has(Class::link); });
    if (first == items.end() || !first->is("seen")) return;
    const auto next = std::find_if(first + 1, items.end(), [](const Item& i) { return !i.idle(); });
    const bool hive = next != items.end() && next->what == What::hives && next + 1 != items.end() && first->end - first->begin == 5;   // found h5 queenless
    if (next == items.end() || !(hive || is_count(*next) || next->counted || next->what == What::slash)) return;
    pass_over(*first);
    for (auto i = next; i != items.end(); ++i)
        if (i->is("left")) pass_over(*i);   // found 2 queen cells left behind
}

void before_what_came(std::vector<Item>& items) {
    const auto before = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.is("before") && i.end - i.begin == 6; });
    if (before == items.end() || std::none_of(items.begin(), before, [](const Item& i) { return i.what == What::sign || i.has(Class::done); })) return;
    const auto came = [](const Item& i) { return i.has(Class::weather) || i.has(Class::plant); };
    const auto said_of_it = [&](const Item& i) { return came(i) || i.what == What::unknown || i.idle() || i.has(Class::state); };
    if (std::any_of(before + 1, items.end(), came) && std::all_of(before + 1, items.end(), said_of_it)) std::for_each(before, items.end(), pass_over);
}

void worked_out(std::vector<Item>& items) {
    const auto equals = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.what == What::stop && i.text == "="; });
    if (equals == items.end() || std::none_of(items.begin(), equals, [](const Item& i) { return i.is("mite") || i.has(Class::method); })) return;
    std::for_each(equals, items.end(), pass_over);
}

void what_it_was_for(std::vector<Item>& items) {
    const auto gone = [](const Item& i) { return i.is("sold") || i.is("given away") || i.is("added"); };
    if (std::none_of(items.begin(), items.end(), gone)) return;
    const auto to = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.is("to") && i.end - i.begin == 2; });
    for (auto i = to; i != items.end() && i + 1 < items.end(); ++i) {
        const bool for_the = i->is("but") && i->end - i->begin == 7;
        const bool reason = i != to && (for_the || (i->is("to") && i->end - i->begin == 3 && (i + 1)->has(Class::filler) && !(i + 1)->is("price")));
        if (!reason) continue;
        std::for_each(i, std::find_if(i, items.end(), [](const Item& k) { return k.what == What::stop || k.what == What::hives || k.has(Class::done); }), pass_over);
        return;
    }
}

void prices(std::vector<Item>& items) {
    if (std::none_of(items.begin(), items.end(), [](const Item& i) { return i.is("sold"); })) return;
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        const bool number = is_count(items[i + 1]) && items[i + 1].value.unit == Unit::piece && i + 2 >= items.size();
        if ((items[i].is("at") || items[i].is("to")) && (number || items[i + 1].is("price"))) set_aside(items, i, 2);
        else if (items[i + 1].is("price")) set_aside(items, i + 1, 1);
    }
}

}  // namespace waxtab
