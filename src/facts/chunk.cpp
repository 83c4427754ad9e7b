#include "facts/chunk.hpp"

#include <algorithm>
#include <array>

#include "facts/chunk_asides.hpp"
#include "facts/chunk_boxes.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

using Items = std::vector<Item>;

/// `half`, `two thirds`: a share in words, not all and not nothing.
bool part_in_words(const Item& i) {
    const grammar::Word* w = i.what == What::term ? i.word(Class::amount) : nullptr;
    return w && w->number > 0 && w->number < 1000 && !i.is("started") && !i.is("nearly") && !i.is("mostly");
}

/// The share with what was said of it: `just under`, `just over`, `less than`, `at least`.
Measure bounded(Measure m, std::string_view how) {
    const std::int64_t said = m.amount;
    m.about = false, m.of = 0, m.unit = Unit::percent;
    if (how == "just under") m.low = std::max<std::int64_t>(0, said - 100), m.high = said;
    else if (how == "just over") m.low = said, m.high = std::min<std::int64_t>(1000, said + 100);
    else if (how == "less than") m.low = 0, m.high = said;
    else return m.low = said, m.high = 1000, m;
    m.amount = (m.low + m.high) / 2;
    return m;
}

/// Binds the word about to the number after it, or before it. `more than h4` says nothing of what stands before it, and one
/// that is not bound leaves its clause unread, but for a plain `about`.
void bind_about(Items& items, std::size_t i) {
    const bool of_water = std::any_of(items.begin(), items.end(), [](const Item& k) { return k.is("moisture"); });
    const std::string how(items[i].word(Class::about)->term);
    const bool plain = how == "about", least = how == "at least" || how == "more than";
    bool filled = false;   // how full, where the share was in words and nothing else follows
    const auto apply = [&](Item& item) {
        const bool of_mites = item.what == What::value && item.value.dimension == Dimension::share && std::any_of(items.begin(), items.end(), [](const Item& k) { return k.is("mite") || k.has(Class::method); });
        if (of_mites && !plain) return false;   // mites over 2%
        const bool in_words = part_in_words(item);
        if (!plain && !of_water && (in_words || (item.what == What::value && item.value.dimension == Dimension::share))) {
            Measure share = item.value;
            if (in_words) share = {Dimension::share, Unit::percent, (item.word(Class::amount)->number + 5) / 10 * 10, 0, 0, 0, false};
            item.what = What::value, item.words.clear();
            item.value = bounded(share, how);
            filled = in_words;
            return true;
        }
        if (how == "less than" || (of_water && !plain && item.what == What::value && item.value.dimension == Dimension::share)) return false;
        item.about = !least;
        if (item.what != What::value) return true;
        if (of_mites) {   // about 2%: a tenth of it, and no tenth of the bees
            item.value.about = true, item.value.low = item.value.amount - item.value.amount / 10, item.value.high = item.value.amount + item.value.amount / 10;
            return true;
        }
        if (least) item.value.high = item.value.dimension == Dimension::share ? 1000 : INT64_MAX;
        else widen(item.value);
        return true;
    };
    const auto takes = [](const Item& item) {
        return item.what == What::value || item.what == What::slash || item.has(Class::amount) || item.has(Class::count);
    };
    bool bound = false;
    // a quarter or so full: of the number before it
    const bool before = plain && i > 0 && (part_in_words(items[i - 1]) || items[i - 1].what == What::value) && i + 1 < items.size() && items[i + 1].has(Class::amount);
    if (!before && i + 1 < items.size() && takes(items[i + 1])) bound = apply(items[i + 1]);
    else if (i > 0 && takes(items[i - 1]) && (plain || how == "at least")) bound = apply(items[i - 1]);
    else items[i].loose = plain || how == "at least";
    if (!bound) return;
    if (before && part_in_words(items[i - 1]) && items[i + 1].is("full")) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
    const auto says_of_what = [](const Item& k) { return k.what == What::term && (k.has(Class::state) || k.has(Class::combing) || k.has(Class::amount)); };
    if (!filled || (i + 1 < items.size() && says_of_what(items[i + 1]))) return;
    Item full = items[i];
    full.what = What::term, full.words = {table_word("full", Class::amount)}, full.begin = full.end;
    items.insert(items.begin() + static_cast<std::ptrdiff_t>(i) + 1, full);
}

/// `over 80% full`: at least; `under half capped`: less; `nearly half full`: just under. Not in `nearly full`, one word.
void over_so_much(Items& items) {
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        const std::size_t written = items[i].end - items[i].begin;
        const bool over = items[i].is("over") && written == 4, under = items[i].is("under") && written == 5;
        const Item& next = items[i + 1];
        const bool share = part_in_words(next) || (next.what == What::value && next.value.dimension == Dimension::share);
        const bool so_much = share || (next.what == What::value && next.value.dimension == Dimension::mass);
        if (over && so_much) items[i].words = {table_word("at least", Class::about)};
        if (under && share) items[i].words = {table_word("less than", Class::about)};
        const bool nearly = items[i].is("nearly") && items[i].words.size() == 1 && (written == 6 || written == 10);   // nearly, almost, just about
        if (nearly && (share || next.what == What::value || next.has(Class::count))) items[i].words = {table_word("just under", Class::about)};
        const bool drop = over && next.value.dimension == Dimension::duration && std::any_of(items.begin(), items.end(), [](const Item& k) { return k.is("mite") || k.has(Class::method); });
        if (drop) items[i].words = {table_word("in", Class::done)};   // drop 45 over 3 days
    }
}

/// `brood on 8 over both boxes`: of all that stand there, as if it was not said.
void spread_over_boxes(Items& items) {
    const auto on_frames = [](const Item& i) { return counted_in_frames(i) || i.is("frames of brood") || i.is("frames of bees") || i.is("frames of stores"); };
    const auto spread = [](const Item& i) { return i.is("across") || (i.is("over") && i.end - i.begin == 4); };
    for (std::size_t i = 2; i + 2 < items.size(); ++i) {
        if (!spread(items[i]) || !(items[i + 1].is("both") || items[i + 1].is("all")) || std::none_of(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(i), on_frames)) continue;
        std::size_t box = i + 2;
        while (box + 1 < items.size() && items[box].idle()) ++box;
        if (!items[box].is("box") && !items[box].is("brood box") && items[box].box_kind.empty()) continue;
        items[i - 1].end = items[box].end;
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i), items.begin() + static_cast<std::ptrdiff_t>(box) + 1);
    }
}

/// `2 big queen cells`, `a huge queen`: no word of how strong the colony is.
void big_things(Items& items) {
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        const std::size_t written = items[i].end - items[i].begin;
        std::size_t next = i + 1;
        while (next + 1 < items.size() && items[next].has(Class::colour)) ++next;
        const bool of_thing = (items[next].has(Class::thing) && !items[next].is("bees")) || items[next].is("queen seen");
        if (items[i].is("strong") && (written == std::string_view("big").size() || written == std::string_view("huge").size()) && of_thing) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
    }
}

/// `the queen in h6 is old`, `marked the queen in h6`: where she is; only `new queen in h6`, `caged queen in h6` is one brought.
void queen_in_a_hive(Items& items) {
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        if (!items[i].is("requeened") || items[i + 1].what != What::hives) continue;
        const std::size_t written = items[i].end - items[i].begin;
        const bool brought = i > 0 && (items[i - 1].is("caged") || items[i - 1].is("mated"));
        if (written == std::string_view("queen in").size() && !brought) items[i].words = {table_word("queen", Class::thing)};
        const bool alone = i == 0 && i + 2 == items.size();
        if (written == std::string_view("new queen in").size() && !alone) items[i].words = {table_word("new queen", Class::thing)};
    }
}

void about_words(Items& items) {
    for (std::size_t i = items.size(); i-- > 0;)
        if (items[i].has(Class::about) && items[i].words.size() == 1) bind_about(items, i);
}

/// `another drawn one`, `a drawn one`: one more, drawn.
void another_one(Items& items) {
    for (std::size_t i = 0; i + 2 < items.size(); ++i) {
        const bool article = items[i].has(Class::filler) && items[i].end - items[i].begin <= 2;
        if (article && items[i + 1].is("empty") && i + 3 < items.size()) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 1);   // an empty drawn one
        if (!article && (!items[i].is("another one") || items[i].end - items[i].begin != 7)) continue;
        const bool kind = items[i + 1].has(Class::combing) || !items[i + 1].box_kind.empty();
        if (!kind || !items[i + 2].has(Class::count) || items[i + 2].word(Class::count)->number != 1) continue;
        items[i].words = {table_word("another one", Class::thing)};
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 2);
    }
}

/// `h2 and h4 went to mill`, `taken up to the moor`: moved.
void gone_to_a_yard(Items& items) {
    const auto yard = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.what == What::yard; });
    auto to = yard;
    while (to != items.begin() && (to - 1)->has(Class::filler)) --to;
    if (yard == items.end() || to == items.begin() || !(to - 1)->is("to")) return;
    auto verb = --to;
    while (verb != items.begin() && ((verb - 1)->has(Class::filler) || (verb - 1)->is("gained") || (verb - 1)->is("off") || (verb - 1)->is("out"))) --verb;
    if (verb == items.begin()) return;
    --verb;
    const bool taken = verb->is("taken off") && verb->end - verb->begin <= 5;
    if (!(verb->what == What::unknown && (verb->text == "went" || verb->text == "gone")) && !taken) return;
    verb->what = What::term, verb->text.clear();
    verb->words = {table_word("moved", Class::done)};
    items.erase(verb + 1, to);
}

/// `super all drawn`: fully.
void all_drawn(Items& items) {
    for (std::size_t i = 1; i + 1 < items.size(); ++i)
        if (items[i].is("all") && items[i].end - items[i].begin == 3 && items[i + 1].is("drawn") && (is_super(items[i - 1]) || items[i - 1].what == What::box || items[i - 1].has(Class::which))) items[i].words = {table_word("fully", Class::amount)};
}

/// `0 eggs`: none.
void noughts(Items& items) {
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        const bool nought = is_count(items[i]) && items[i].text == "0" && items[i].value.unit == Unit::piece;
        static constexpr std::array<std::string_view, 6> seen = {"egg", "larva", "brood", "sealed brood", "queen cell", "cup"};
        const bool charged = items[i + 1].is("charged");   // 3 queen cups, 0 charged
        if (!nought || !(charged || std::any_of(seen.begin(), seen.end(), [&](std::string_view t) { return items[i + 1].is(t); }))) continue;
        items[i].what = What::term, items[i].text.clear(), items[i].value = {};
        items[i].words = {table_word(charged ? "none" : "not", Class::negation)};
    }
}

void number_words(Items& items) {
    for (Item& item : items) {
        const grammar::Word* w = item.word(Class::count);
        if (!w || item.what != What::term) continue;
        item.what = What::value;
        item.value = measure(std::to_string(w->number), Unit::piece).value();
        item.text = "word";
        if (item.about) widen(item.value);
        item.words.clear();
    }
}

/// Frames in words after a share: `7 of 10 frames`, `7/10 frames`.
void shares_of_frames(Items& items) {
    for (std::size_t i = 0; i + 2 < items.size(); ++i) {
        if (!is_count(items[i]) || !(items[i + 1].is("of") || items[i + 1].is("from"))) continue;
        std::size_t m = i + 2;
        if (m < items.size() && items[m].idle() && m + 1 < items.size()) ++m;
        if (!is_count(items[m]) || items[m].value.amount % 1000 != 0) continue;
        if (m + 1 < items.size() && is_super(items[m + 1])) continue;   // 2 of the 3 supers
        const auto of = static_cast<int>(items[m].value.amount / 1000);
        if (of <= 1 || of >= 50) continue;   // 12 of the one; 11 from 300 bees
        const Measure n = items[i].value;
        Item& item = items[i];
        item.value = share_of(n.amount, of, Unit::of_frames);
        item.value.low = (n.low + of / 2) / of;
        item.value.high = (n.high + of / 2) / of;
        item.value.about = n.about;
        absorb(items, i, i + 1, m - i);
    }
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        const bool share = (items[i].what == What::value && items[i].value.unit == Unit::of_frames) || items[i].what == What::slash;
        if (!share || !items[i + 1].is("frame")) continue;
        if (items[i].what == What::slash) {
            if (items[i].m <= 0) continue;
            items[i].what = What::value;
            items[i].value = share_of(static_cast<std::int64_t>(items[i].n) * 1000, items[i].m, Unit::of_frames);
        }
        absorb(items, i, i + 1, 1);
    }
}

/// `6 frames capped out of 10`: 6 of 10 frames.
void frames_out_of(Items& items) {
    // 6 frames of 10 capped
    for (std::size_t i = 0; i + 3 < items.size(); ++i) {
        const bool of = is_count(items[i]) && items[i + 1].is("frame") && (items[i + 2].is("of") || items[i + 2].is("from")) && is_count(items[i + 3]) && items[i + 3].value.unit == Unit::piece;
        const auto whole = of ? static_cast<int>(items[i + 3].value.amount / 1000) : 0;
        if (whole <= 1 || whole >= 50 || items[i].value.amount % 1000 != 0) continue;
        items[i].value = share_of(items[i].value.amount, whole, Unit::of_frames);
        absorb(items, i, i + 1, 3);
    }
    for (std::size_t i = 0; i + 3 < items.size(); ++i) {
        const bool frames = is_count(items[i]) && items[i + 1].is("frame") && (items[i + 2].is("capped") || items[i + 2].is("drawn") || items[i + 2].is("full"));
        const std::size_t of = i + 3;
        if (!frames || of + 1 >= items.size() || !(items[of].is("of") || items[of].is("from")) || !is_count(items[of + 1])) continue;
        const auto whole = static_cast<int>(items[of + 1].value.amount / 1000);
        if (whole <= 0 || items[i].value.amount % 1000 != 0) continue;
        items[i].value = share_of(items[i].value.amount, whole, Unit::of_frames);
        const std::uint32_t end = items[of + 1].end;
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(of), items.begin() + static_cast<std::ptrdiff_t>(of) + 2);
        items[i + 2].end = end;
        absorb(items, i, i + 1, 1);
    }
}

/// `both supers off, 41 lb + 36 lb`: what as many boxes weighed together.
void boxes_weighed(Items& items) {
    if (std::none_of(items.begin(), items.end(), [](const Item& i) { return i.is("off") || i.is("taken off") || (i.what == What::sign && i.text == "-"); })) return;
    if (std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::hives && i.hives.size() > 1; })) return;   // off h1 and h3: which of which?
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        if (!is_mass(items[i])) continue;
        std::size_t end = i + 1, masses = 1;
        while (end + 1 < items.size() && items[end].is("and") && is_mass(items[end + 1])) end += 2, ++masses;
        const auto as_many = [&](const Item& k) { return (k.counted && k.count == static_cast<int>(masses)) || (k.what == What::box && (k.box.by == BoxChoice::By::top_n ? k.box.number == masses : k.box.by == BoxChoice::By::all && masses == 2)) || k.is("both"); };
        if (masses < 2 || std::none_of(items.begin(), items.end(), as_many)) continue;
        for (std::size_t k = i + 2; k < end; k += 2) {
            Measure& sum = items[i].value;
            const Measure& more = items[k].value;
            sum.unit = sum.unit == more.unit ? sum.unit : Unit::kilogram;
            sum.amount += more.amount, sum.low += more.low, sum.high += more.high;
            sum.about = sum.about || more.about;
        }
        absorb(items, i, i + 1, end - i - 1);
    }
}

void make_jars(Items& items, std::size_t i, std::size_t mass, std::size_t length) {
    Item& item = items[i];
    item.what = What::jars;
    item.count = static_cast<int>(item.value.amount / 1000);
    item.value = mass ? items[mass].value : Measure{};
    absorb(items, i, i + 1, length - 1);
}

/// `40 x 454 g`, `40 454 g jars`, `24 jars of 1 lb`, `24 jars`.
void jars(Items& items) {
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        if (!is_whole(items[i].value)) continue;
        const auto at = [&](std::size_t k) -> const Item* { return i + k < items.size() ? &items[i + k] : nullptr; };
        const auto jar = [&](std::size_t k) { return at(k) && at(k)->is("jar"); };
        const auto mass = [&](std::size_t k) { return at(k) && is_mass(*at(k)); };
        const bool the = at(2) && at(2)->has(Class::filler);
        // 10 more lot A jars
        const bool more = at(1)->is("further"), lot = at(more ? 2 : 1) && at(more ? 2 : 1)->what == What::lot;
        if ((more || lot) && jar((more ? 1 : 0) + (lot ? 1 : 0) + 1)) {
            const Item named = items[i + (more ? 2 : 1)];
            make_jars(items, i, 0, (more ? 1u : 0u) + (lot ? 1u : 0u) + 2);
            if (lot) items.insert(items.begin() + static_cast<std::ptrdiff_t>(i) + 1, named);
            continue;
        }
        if (times_sign(*at(1)) && mass(2)) make_jars(items, i, i + 2, jar(3) ? 4 : 3);
        else if (times_sign(*at(1)) && jar(2)) make_jars(items, i, 0, 3);
        else if (mass(1) && jar(2)) make_jars(items, i, i + 1, 3);
        else if (at(1)->is("of") && mass(the ? 3 : 2) && jar(the ? 4 : 3)) make_jars(items, i, i + (the ? 3 : 2), the ? 5 : 4);   // 18 of the 1 lb jars
        else if (at(1)->is("of") && the && mass(3)) make_jars(items, i, i + 3, 4);   // 18 of the one-pounders
        else if (jar(1) && at(2) && at(2)->is("of") && mass(3)) make_jars(items, i, i + 3, 4);
        else if (jar(1) && mass(2)) make_jars(items, i, i + 2, 3);
        else if (at(1)->is("tub") && at(2) && (times_sign(*at(2)) || at(2)->is("of")) && mass(3)) make_jars(items, i, i + 3, 4);   // 8 pails x 30 lb
        else if (jar(1)) make_jars(items, i, 0, 2);
    }
}

/// `1st of 3`, `2nd of three`, after a medicine `2 of 3`: which of a course it was.
void courses(Items& items) {
    const bool given = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::substance) || i.is("treated"); });
    for (std::size_t i = 0; given && i + 2 < items.size(); ++i) {
        const bool of = is_count(items[i]) && items[i + 1].is("of") && is_count(items[i + 2]) && items[i + 2].value.unit == Unit::piece && items[i].value.unit == Unit::piece;
        if (!of || items[i].value.amount > items[i + 2].value.amount || items[i + 2].value.amount > 9'000) continue;
        items[i].text = "nth";
        items[i].count = static_cast<int>(items[i].value.amount / 1000);
        items[i].value = items[i + 2].value;
        absorb(items, i, i + 1, 2);
    }
    for (std::size_t i = 0; i + 2 < items.size(); ++i) {
        const grammar::Word* w = items[i].word(Class::which);
        const int nth = items[i].text == "ordinal" ? items[i].count : w ? w->number : 0;
        if (nth <= 0 || !items[i + 1].is("of") || !is_count(items[i + 2]) || items[i + 2].value.unit != Unit::piece) continue;
        if (items[i + 2].value.amount < nth * std::int64_t{1000}) continue;
        items[i].what = What::value;
        items[i].words.clear();
        items[i].text = "nth";
        items[i].count = nth;
        items[i].value = items[i + 2].value;
        absorb(items, i, i + 1, 2);
    }
}

bool out_of(const Item& i) { return i.is("on") || i.is("in") || i.is("per") || i.is("from") || i.is("of") || (i.what == What::stop && i.text == "/"); }

/// As many bees as are washed or rolled at once.
bool sample_size(const Item& i) { return is_count(i) && i.value.amount >= 50'000 && i.value.amount <= 5'000'000; }

/// `6 mites in 300`, `6 mites per 300 bees`: 6/300; after a wash or a roll, `6 in 300`.
void samples(Items& items) {
    const bool method = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("wash") || i.is("sugar roll") || (i.is("mite") && !i.counted); });
    for (std::size_t i = 0; method && i + 2 < items.size(); ++i) {
        if (!is_whole(items[i].value) || !out_of(items[i + 1]) || !sample_size(items[i + 2])) continue;
        items[i].what = What::slash;
        items[i].n = static_cast<int>(items[i].value.amount / 1000);
        items[i].m = static_cast<int>(items[i + 2].value.amount / 1000);
        const bool bees = i + 3 < items.size() && items[i + 3].is("bees");
        absorb(items, i, i + 1, bees ? 3 : 2);
    }
    // washed 300 bees, 9 mites
    for (std::size_t i = 0; method && i + 1 < items.size(); ++i) {
        const auto mites = std::find_if(items.begin(), items.end(), [](const Item& k) { return k.is("mite") && k.counted; });
        if (!sample_size(items[i]) || (i > 0 && out_of(items[i - 1])) || items[i].value.unit != Unit::piece || !items[i + 1].is("bees") || mites == items.end() || !is_whole(mites->count_value)) continue;
        mites->counted = false;
        if (i + 3 < items.size() && items[i + 2].is("from") && items[i + 3].what == What::hives) pass_over(items[i + 2]);
        items[i].what = What::slash, items[i].n = mites->count, items[i].m = static_cast<int>(items[i].value.amount / 1000);
        absorb(items, i, i + 1, 1);
    }
    for (std::size_t i = 0; i + 2 < items.size(); ++i) {
        if (!items[i].is("mite") || !items[i].counted) continue;
        if (!out_of(items[i + 1]) || !sample_size(items[i + 2]) || !is_whole(items[i].count_value)) continue;
        Item& sample = items[i + 2];
        sample.what = What::slash;
        sample.n = items[i].count;
        sample.m = static_cast<int>(sample.value.amount / 1000);
        items[i].counted = false;
        const bool bees = i + 3 < items.size() && items[i + 3].is("bees");
        absorb(items, i + 2, i + 1, 1);
        if (bees) absorb(items, i + 1, i + 2, 1);
    }
}

/// What goes with a box put on is said of the box: `a super with 9 drawn frames`, `with thin foundation`.
void with_what(Items& items) {
    for (std::size_t i = 1; i + 1 < items.size(); ++i) {
        std::size_t next = i + 1;
        while (next + 1 < items.size() && (items[next].has(Class::filler) || items[next].is("all"))) ++next;
        std::size_t back = i - 1;
        while (back > 1 && items[back].what == What::hives) back -= items[back - 1].is("on") ? 2 : 1;
        const bool box = is_super(items[back]) || is_super(items[i - 1]) || items[i - 1].is("brood box") || !items[i - 1].box_kind.empty() || (items[i - 1].is("on") && i > 1 && is_super(items[i - 2]));
        if (items[i].is("with") && box && (items[next].has(Class::combing) || items[next].is("frame"))) items[i].loose = true;
    }
}

/// `cut out 4 of the queen cells`: four of them.
void some_of_the_cells(Items& items) {
    for (std::size_t i = 0; i + 2 < items.size(); ++i) {
        const std::size_t noun = i + 2 + (items[i + 2].has(Class::filler) ? 1 : 0);
        const auto cells = [](const Item& k) { return k.is("queen cell") || k.is("cell") || k.is("swarm cell") || k.is("open cell") || k.is("sealed cell") || k.is("cup"); };
        const bool some = (is_count(items[i]) || items[i].has(Class::count)) && items[i + 1].is("of") && noun < items.size() && cells(items[noun]) && !items[noun].counted;
        if (some) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 1, items.begin() + static_cast<std::ptrdiff_t>(noun));
    }
}

/// `3 cups with eggs`: charged.
void cups_with_eggs(Items& items) {
    const auto cups = [](const Item& i) { return i.is("cup") || i.is("queen cell") || i.is("open cell"); };
    const bool one = items.size() == 3 && (is_count(items[0]) || items[0].has(Class::count));   // 3 cups, one with egg
    if (!one && std::none_of(items.begin(), items.end(), cups)) return;
    for (std::size_t i = 1; i + 1 < items.size(); ++i) {
        if (!items[i].is("with") || !items[i + 1].is("egg") || items[i + 1].counted) continue;
        items[i].words = {table_word("charged", Class::state)};
        absorb(items, i, i + 1, 1);
    }
}

/// `brood on 6 now`: says nothing, unless a name follows (`now Rose`).
void nows(Items& items) {
    const auto name = [](const Item& i) { return i.what == What::hives || i.what == What::yard || i.what == What::new_name || i.what == What::unknown || i.what == What::quoted; };
    for (std::size_t i = 1; i < items.size(); ++i)
        if (items[i].is("into") && items[i].end - items[i].begin == 3 && (i + 1 == items.size() || !name(items[i + 1]))) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i--));
}

/// `a frame of brood` is one.
void one_frame(Items& items) {
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        Item& noun = items[i + 1];
        static constexpr std::array<std::string_view, 10> cells = {"open cell", "sealed cell", "queen cell", "charged cell", "swarm cell", "supersedure cell", "emergency cell", "cup", "charged cup", "opened cell"};
        const bool cell = noun.what == What::term && std::any_of(cells.begin(), cells.end(), [&](std::string_view c) { return noun.is(c); });
        const bool frames = cell || (noun.what == What::term && (noun.is("frame") || noun.is("frames of brood") || noun.is("frames of stores") || noun.is("frames of bees")));
        const auto is_article = [](const Item& k) { return k.has(Class::filler) && k.end - k.begin == 1; };
        const bool article = is_article(items[i]) || (cell && i > 0 && is_article(items[i - 1]) && (items[i].is("good") || items[i].has(Class::filler)));   // a nice open cell
        if (!frames || !article || noun.counted) continue;
        noun.counted = true;
        noun.count = 1;
        noun.count_value = measure("1", Unit::piece).value();
    }
}

/// `4 L of 2:1 in the rapid feeder`: where the feed went, no feeder put on.
void fed_in_a_feeder(Items& items) {
    const auto feeder = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.is("feeder"); });
    const auto volume = std::find_if(items.begin(), feeder, [](const Item& i) { return i.what == What::value && (i.value.dimension == Dimension::volume || i.value.dimension == Dimension::mass); });
    const auto in = std::find_if(volume, feeder, [](const Item& i) { return i.is("in"); });
    const auto of_it = [](const Item& i) { return i.what == What::unknown || i.idle() || i.has(Class::state) || i.has(Class::filler); };
    if (feeder == items.end() || in == feeder || !std::all_of(in + 1, feeder, of_it)) return;
    std::for_each(in, feeder + 1, pass_over);
}

/// `h1 on 6 frames of brood`: it has them.
void stands_on(Items& items) {
    const auto has = [](const Item& i) { return i.counted && (i.is("frames of brood") || i.is("frames of bees") || i.is("frames of stores") || i.is("seam")); };
    const auto deed = [](const Item& i) { return i.what == What::sign || (i.has(Class::done) && !i.is("on")); };
    for (std::size_t i = 0; i + 1 < items.size(); ++i)
        if (items[i].is("on") && items[i].end - items[i].begin == 2 && has(items[i + 1]) && !(i > 0 && items[i - 1].is("bees")) && std::none_of(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(i), deed)) pass_over(items[i]);
}

/// `on 5 frames`: spread over them, nothing put on.
void spread_over_frames(Items& items) {
    for (std::size_t i = 1; i + 1 < items.size(); ++i) {
        const bool on = items[i].what == What::term && (items[i].is("on") || items[i].is("over")) && items[i].end - items[i].begin < 5;
        const bool all = on && items[i + 1].is("all") && i + 2 < items.size() && items[i + 2].counted && items[i + 2].is("frame");   // bees on all 16 frames
        if (all) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 1);
        while (on && i + 2 < items.size() && items[i + 1].idle() && items[i + 1].what == What::term && !items[i + 2].is("excluder")) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 1);   // brood on only 3 frames
        const Item& next = items[i + 1];
        const bool of_frames = next.what == What::value && next.value.unit == Unit::of_frames;   // brood on 9 of 11 frames
        const bool at_a_hive = i + 3 < items.size() && (items[i + 2].is("in") || items[i + 2].is("at")) && items[i + 3].what == What::hives;   // brood on 7 in h3
        const bool frames = of_frames || (next.counted && next.is("frame")) || (is_count(next) && (i + 2 == items.size() || at_a_hive) && next.value.unit == Unit::piece);
        if (on && frames) items[i].words = {table_word("across", Class::preposition)};
    }
}

bool adjective(const Item& i) {
    return i.what == What::term && (i.has(Class::state) || i.has(Class::colour) || i.has(Class::combing) || i.has(Class::box_kind) ||
                                    i.has(Class::filler) || i.has(Class::amount) || i.has(Class::substance));
}

/// What a number may count only when nothing better follows: `3 capped`, `8 drawn`, `9 medium`.
bool second_choice(const Item& i) {
    return i.what == What::term && (i.is("capped") || i.is("full") || i.has(Class::combing) || i.has(Class::box_kind) || i.is("uncapped") || i.is("none capped"));
}

void counts(Items& items) {
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        if (!is_count(items[i]) || items[i].value.unit != Unit::piece || items[i].text == "x" || items[i].text == "nth") continue;
        const bool of_what_is_before = i > 1 && items[i - 1].is("on") && counted_in_frames(items[i - 2]) && !items[i + 1].is("frame") && !items[i + 1].is("seam") && !items[i + 1].is("brood box") && !items[i + 1].is("box");   // BIAS on 7 wet super back on
        if (of_what_is_before) continue;
        std::size_t noun = i + 1;
        while (noun < items.size() && noun < i + 4 && !countable(items[noun]) && adjective(items[noun])) ++noun;
        if (noun >= items.size() || !countable(items[noun])) {
            noun = i + 1;
            while (noun + 1 < items.size() && items[noun].what == What::term && items[noun].has(Class::filler) && !items[noun].counted) ++noun;   // 4 of them are capped
            // 2 drawn mediums
            const bool kind_follows = noun + 1 < items.size() && items[noun].has(Class::combing) && !items[noun + 1].box_kind.empty() && items[noun].what == What::term;
            if (kind_follows) ++noun;
            if (!second_choice(items[noun])) continue;
            if (i > 0 && items[i].text == "word" && (items[i - 1].is("other") || items[i - 1].has(Class::placing))) continue;   // under the other two, foundation
            if (items[i].text == "word" && i > 0 && items[i - 1].has(Class::which)) continue;   // the lower one full
            if (items[i].text == "word" && items[i].value.amount == 1000 && items[noun].has(Class::combing)) continue;   // under the first one, stickies this time
        }
        // Half a super is no number of supers.
        const bool whole = is_super(items[noun]) || items[noun].is("brood box") || !items[noun].box_kind.empty();
        if (items[noun].counted || (whole && items[i].value.amount % 1000 != 0)) continue;
        items[noun].counted = true;
        items[noun].count_value = items[i].value;
        items[noun].count = static_cast<int>(std::min<std::int64_t>(items[i].value.amount / 1000, 1'000'000));
        items[noun].begin = std::min(items[noun].begin, items[i].begin);
        items[noun].about = items[i].about;
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
    }
    // queen cells 3, stung 4 x: a number after what only counts
    if (items.size() > 2 && times_sign(items.back()) && is_count(items[items.size() - 2])) absorb(items, items.size() - 2, items.size() - 1, 1);
    for (std::size_t i = 1; i < items.size(); ++i) {
        static constexpr std::array<std::string_view, 11> counted = {"cup", "charged cup", "queen cell", "open cell", "sealed cell", "swarm cell", "sting", "seam", "frames of bees", "frames of brood", "frames of stores"};
        Item& noun = items[i - 1];
        const bool number = is_count(items[i]) && items[i].value.unit == Unit::piece && items[i].text != "x" && items[i].text != "nth";
        const bool ends = i + 1 == items.size() || items[i + 1].what == What::stop || items[i + 1].has(Class::which);
        if (!number || !ends || noun.counted || noun.what != What::term || std::none_of(counted.begin(), counted.end(), [&](std::string_view c) { return noun.is(c); })) continue;
        noun.counted = true;
        noun.count_value = items[i].value;
        noun.count = static_cast<int>(items[i].value.amount / 1000);
        noun.about = items[i].about;
        absorb(items, i - 1, i, 1);
    }
    // QC x3, drawn 9
    for (std::size_t i = 1; i < items.size(); ++i) {
        if (!is_count(items[i]) || items[i - 1].counted) continue;
        const bool times = items[i].text == "x" && countable(items[i - 1]);
        const bool comb = items[i - 1].has(Class::combing) && items[i].value.unit == Unit::piece && items[i].text != "word";   // not of `another drawn one`
        if (!times && !comb) continue;
        Item& noun = items[i - 1];
        noun.counted = true;
        noun.count_value = items[i].value;
        noun.count = static_cast<int>(items[i].value.amount / 1000);
        absorb(items, i - 1, i, 1);
        --i;
    }
}

}  // namespace

void widen(Measure& m) {
    m.about = true;
    if (m.dimension == Dimension::share && m.low == m.high) {
        m.low = std::max<std::int64_t>(0, m.amount - 100);
        m.high = std::min<std::int64_t>(1000, m.amount + 100);
    } else if (m.low == m.high) {
        m.low = m.amount - m.amount / 10;
        m.high = m.amount + m.amount / 10;
    }
}

bool countable(const Item& item) {
    static constexpr std::array<std::string_view, 35> nouns = {
        "super", "box", "brood box", "frame", "frames of bees", "frames of brood", "frames of stores", "seam", "cup", "charged cup",
        "queen cell", "open cell", "sealed cell", "charged cell", "swarm cell", "supersedure cell", "emergency cell", "sting", "strip",
        "pad", "tray", "mite", "section", "piece", "excluder", "escape board", "brood in all stages", "feeder", "outside frames", "patty",
        "drone brood", "ripe cell", "tub", "opened cell", "cell"};
    if (item.what != What::term) return false;
    return std::any_of(nouns.begin(), nouns.end(), [&](std::string_view n) { return item.is(n); });
}

void chunk(std::vector<Item>& items, const ItemContext& context) {
    nows(items);
    some_of_the_cells(items);
    cups_with_eggs(items);
    counted_frames(items);
    by_the_clock(items);
    weather_until(items);
    strange_plants(items, *context.lexicon);
    where_plants_stand(items);
    no_plant_yet(items);
    temperature_of_that(items);
    why_moved(items);
    if (!items.empty()) bare_temperature(items, *context.settings);
    over_so_much(items);
    spread_over_boxes(items);
    about_words(items);
    another_one(items);
    noughts(items);
    all_drawn(items);
    gone_to_a_yard(items);
    big_things(items);
    number_words(items);
    courses(items);
    frames_out_of(items);
    shares_of_frames(items);
    jars(items);
    sign_and_ordinal(items);
    beside_a_box(items);
    comb_after_super(items);
    thirds(items);
    kinds_as_supers(items);
    the_last_one(items);
    deeps_as_brood(items, context.settings->super_kind);
    plants_of_boxes(items);
    boxes(items);
    if (!context.of_other_things) boxes_without_noun(items);
    counts(items);
    boxes_weighed(items);
    samples(items);
    prices(items);
    what_it_was_for(items);
    worked_out(items);
    found_so_many(items);
    before_what_came(items);
    swarm_places(items);
    one_frame(items);
    with_what(items);
    on_which_frame(items);
    stands_on(items);
    fed_in_a_feeder(items);
    spread_over_frames(items);
    queen_in_a_hive(items);
    roles(items);
    pairs(items);
    by_the_way(items);
}

}  // namespace waxtab
