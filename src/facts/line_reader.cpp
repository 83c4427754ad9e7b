#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include <fmt/format.h>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"
#include "facts/slots.hpp"
#include "facts/small_words.hpp"

// A line of a visit: its sentences, their clauses, and what each clause is read as.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

/// `first super (drawn) on h1`, `h1 (yesterday) super on`: brackets around a day, and around what a box holds where more
/// follows, are passed over.
void without_brackets(std::vector<Item>& items) {
    const auto says_box = [](const Item& i) { return i.has(Class::combing) || !i.box_kind.empty() || i.is("thin foundation"); };
    for (std::size_t i = 0; i + 3 < items.size(); ++i) {
        const bool held = i > 0 && says_box(items[i + 1]) && items[i + 3].what != What::stop;
        if (!stop(items[i], "(") || !stop(items[i + 2], ")") || !(held || items[i + 1].what == What::day)) continue;
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 2);
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
    }
    // section rack (32) on h2: so many in it
    for (std::size_t i = 1; i + 3 < items.size(); ++i) {
        const bool held = items[i - 1].is("sections") && stop(items[i], "(") && bare_number(items[i + 1]) && stop(items[i + 2], ")") && items[i + 3].what != What::stop;
        if (!held) continue;
        items[i + 2].what = What::term, items[i + 2].words = {table_word("frame", Class::thing)};
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
    }
}

/// `drop since Sunday 4 mites`: in so many days, unless the line says them.
void drop_since(std::vector<Item>& items, Day noted) {
    const auto since = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.what == What::day && i.since; });
    if (since == items.end() || std::none_of(items.begin(), items.end(), [](const Item& i) { return i.is("mite") || i.has(Class::method); })) return;
    if (std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::value && i.value.dimension == Dimension::duration; })) {
        items.erase(since);
        return;
    }
    since->what = What::value;
    since->value = days_to(since->day, noted);
    std::rotate(since, since + 1, items.end());   // after what was counted
}

/// `h1 top - 70% full`, `super - 4 of 10 frames drawn`: no break between a box and how it is.
void dash_after_a_box(std::vector<Item>& items) {
    const auto box = [](const Item& i) { return i.has(Class::which) || i.text == "ordinal" || is_super(i) || is_super_kind(i); };
    const auto how_it_is = [](const Item& i) { return i.has(Class::amount) || i.what == What::value || i.what == What::slash || i.is("capped") || i.has(Class::combing) || i.has(Class::about); };
    bool told = false, alone = true;
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        if (told && alone && stop(items[i], "-") && how_it_is(items[i + 1])) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
        if (items[i].what == What::stop) told = false, alone = true;
        else if (box(items[i])) told = true;
        else alone = alone && (items[i].idle() || items[i].what == What::hives);
    }
}

/// Told of the brood nest: frames of brood, bees or seams, cells, what the queen lays.
bool of_the_nest(const Item& i) {
    static constexpr std::array<std::string_view, 14> terms = {"frames of brood", "frames of bees", "seam", "brood in all stages", "brood", "egg", "larva", "sealed brood", "queen cell", "sealed cell", "open cell", "charged cell", "cup", "drone layer"};
    return std::any_of(terms.begin(), terms.end(), [&](std::string_view t) { return i.is(t); });
}

/// `brood box 5 frames of brood`, `brood box: BIAS on 4`, `5 seams in the brood box`: where the nest is anyway. Not of `top
/// brood box`, of which there are two.
void nest_without_its_box(std::vector<Item>& items) {
    for (std::size_t i = 0; i < items.size(); ++i) {
        const auto before = [&](std::size_t n) { return i >= n ? &items[i - n] : nullptr; };
        const Item* in = before(1) && before(1)->idle() ? before(2) : before(1);   // in the brood box
        const bool inside = in && in->is("in");
        if (!items[i].is("brood box") || items[i].counted || (in && !inside && in->what != What::stop && in->what != What::hives)) continue;
        const std::size_t from = inside ? static_cast<std::size_t>(in - items.data()) : i;
        std::size_t next = i + 1;
        if (next < items.size() && stop(items[next], ":")) ++next;
        const std::size_t end = next;
        while (next < items.size() && (items[next].idle() || bare_number(items[next]) || items[next].has(Class::count) || items[next].has(Class::about) || items[next].is("charged"))) ++next;
        const bool told = next < items.size() && of_the_nest(items[next]);
        const bool ends = i + 1 == items.size() || items[i + 1].what == What::stop;
        const bool told_before = inside && ends && from > 0 && of_the_nest(items[from - 1]);
        if (told || told_before) items.erase(items.begin() + static_cast<std::ptrdiff_t>(from), items.begin() + static_cast<std::ptrdiff_t>(told_before ? i + 1 : end));
    }
}

/// `Supers: 2 drawn in the freezer`: so many of them, and no number of frames.
void number_before_supers(std::vector<Item>& items) {
    const bool counted = items.size() > 3 && is_super(items[0]) && stop(items[1], ":") && bare_number(items[2]) && items[3].has(Class::combing);
    if (!counted) return;
    Item super = items[0];
    super.begin = super.end = items[3].end;
    items.insert(items.begin() + 4, super);
    items.erase(items.begin(), items.begin() + 2);
}

/// From `at` to the next stop nothing but the comb or the place of a box is told.
bool only_what_it_is(const std::vector<Item>& items, std::size_t at) {
    bool told = false;
    for (; at < items.size() && items[at].what != What::stop; ++at) {
        const bool what = items[at].has(Class::combing) || items[at].has(Class::placing);
        if (!what && !items[at].idle()) return false;
        told = told || what;
    }
    return told;
}

/// `h3 super on and h4`: there as well.
bool one_hive_more(const std::vector<Item>& items) {
    const auto last = std::find_if(items.rbegin(), items.rend(), [](const Item& i) { return !i.idle(); });
    if (last == items.rend() || last->what != What::hives || last->role != Item::Role::none) return false;
    const auto before = std::find_if(last + 1, items.rend(), [](const Item& i) { return !i.idle() || i.is("and"); });
    return before != items.rend() && before->is("and") && before + 1 != items.rend();
}

}  // namespace

void LineReader::read(const std::vector<Token>& tokens, std::uint32_t file, LineContext& context, const std::vector<RawFact>& visit, std::vector<RawFact>& out) {
    visit_ = &visit;
    file_ = file, context_ = &context, out_ = &out;
    subject_ = {};
    subject_.hives = context.hives, subject_.all = context.all, subject_.nuclei = context.nuclei, subject_.but = context.but;
    box_ = {};
    tail_.clear(), topic_.clear();
    taken_back_ = shed_headed_ = numbered_ = false;
    lot_of_line_.clear();
    line_yard_ = no_yard, off_apart_ = {};
    complained_ = cells_said_ = brood_said_ = food_said_ = jars_unread_ = false;
    first_of_line_ = before_clause_ = out.size();
    std::vector<Item> items = itemise(tokens, item_context());
    food_said_ = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::food); });
    but_not_these(items);
    but_not_numbers(items);
    numbers_of_hives(items);
    head(items, tokens);
    const auto after_numbers = std::find_if_not(tokens.begin(), tokens.end(), [](const Token& t) { return t.type == Token::Type::number || t.text == "and" || t.text == ","; });
    pointed_ = after_numbers != tokens.begin() && after_numbers != tokens.end() && after_numbers->text == ".";
    const std::vector<Item> after_exception = exception_at_the_end(items);
    headed_ = subject_.said();
    head_ = subject_;
    if (subject_.said()) context.hives = subject_.hives, context.all = subject_.all, context.nuclei = subject_.nuclei, context.but = subject_.but;
    const bool nothing_else = std::all_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::stop; });
    if (nothing_else) return;
    std::vector<std::vector<Item>> sentences(1);
    for (std::size_t i = 0; i < items.size(); ++i) {
        std::size_t next = i + 1;
        while (next < items.size() && items[next].what == What::stop) ++next;
        const bool corrected = next < items.size() && items[next].is("corrected");   // half drawn... I mean half full
        const bool comma = items[i].what == What::stop && corrected;
        if (comma) continue;
        const bool whole_quote = items[i].what == What::quoted && sentences.back().empty() && (items[i].text.ends_with('.') || items[i].text.ends_with('!') || items[i].text.ends_with('?'));   // "Smoker out." Check again
        if (sentence_end(items[i]) && only_what_it_is(items, i + 1) && std::any_of(sentences.back().begin(), sentences.back().end(), [](const Item& k) { return is_super(k); })) items[i].text = ",";   // Super on. Drawn. Under the first.
        if (sentence_end(items[i])) sentences.emplace_back();
        else sentences.back().push_back(std::move(items[i]));
        if (whole_quote) sentences.emplace_back();
    }
    deed_before_sentences(sentences);
    for (std::size_t s = 0; s < sentences.size(); ++s) {
        const bool more = std::any_of(sentences.begin() + static_cast<std::ptrdiff_t>(s) + 1, sentences.end(), [](const std::vector<Item>& k) { return !k.empty(); });
        if (more && goes_over_to(sentences[s])) continue;
        const bool hives_last = !more && out_->size() > first_of_line_ && !sentences[s].empty() && sentences[s].front().what == What::hives && only_hives(sentences[s]);
        if (hives_last) keep_asked(span(sentences[s]), "what at these hives?", "name the hives in the sentence that tells of them");
        else sentence(std::move(sentences[s]));
    }
    if (!after_exception.empty()) subject_ = {}, keep_asked(span(after_exception), "of which of these hives?", "write a line for each");
    keep_beside();
}

/// `h1. 5 frames of brood. h2. 4 frames`: a hive alone, and more to follow: what the line is about from here. True when it is.
bool LineReader::goes_over_to(const std::vector<Item>& items) {
    if (items.empty() || !headed_ || !std::all_of(items.begin() + 1, items.end(), [](const Item& i) { return i.what == What::stop; })) return false;
    const HiveId numbered = numbered_ ? called_by_number(items.front()) : no_hive;   // 1. Calm. 2. Queen seen.
    const bool named = items.front().what == What::hives && items.front().role == Item::Role::none;
    if (!named && numbered == no_hive) return false;
    subject_ = {};
    if (named) subject_.hives = items.front().hives, subject_.unknown = items.front().unknown_hives;
    else subject_.hives = {numbered};
    head_ = subject_;
    box_ = {}, last_ = {};
    if (!subject_.unknown.empty()) complain_about(subject_, {items.front()});
    return true;
}

/// `Honey off. h1 2 supers, 20 kg. h2 1 super`: what was done, said once before the sentences about each hive.
void LineReader::deed_before_sentences(std::vector<std::vector<Item>>& sentences) const {
    if (headed_ || sentences.size() < 2 || sentences[0].empty()) return;
    const auto deed = [](const Item& i) { return i.is("off") || i.is("taken off"); };
    const auto fits = [&](const Item& i) { return i.idle() || deed(i) || i.is("honey") || i.is("super"); };
    const auto said = std::find_if(sentences[0].begin(), sentences[0].end(), deed);
    if (said == sentences[0].end() || !std::all_of(sentences[0].begin(), sentences[0].end(), fits)) return;
    bool any = false;
    for (std::size_t s = 1; s < sentences.size(); ++s) {
        std::vector<Item>& items = sentences[s];
        const bool boxes = items.size() > 1 && items[0].what == What::hives && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("super") || is_super_kind(i); });
        if (!boxes || eventful(items)) continue;
        Item here = *said;
        here.begin = here.end = items[0].end;
        items.insert(items.begin() + 1, std::move(here));
        any = true;
    }
    if (any) sentences[0].clear();
}

/// `no`, `Sorry, that was h2`, `Correction: 5 cells`: a sentence that takes back the one before, or a line written earlier. True when it is one.
bool LineReader::corrects(const std::vector<Item>& items) {
    if (items.empty()) return false;
    const auto denies = [&](const Item& i) { return i.has(Class::negation) && (surface(i) == "no" || surface(i) == "nope"); };
    const bool no = std::all_of(items.begin(), items.end(), [&](const Item& i) { return denies(i) || i.idle(); }) && std::any_of(items.begin(), items.end(), denies);
    if (no) return withdraw(items, last_.set ? last_.out : out_->size()), true;
    const bool of_the_line_above = items.front().is("taken back") && out_->size() == first_of_line_;   // sorry, that was h2
    const bool rewritten = std::any_of(items.begin(), items.end(), [&](const Item& i) { return i.is("correction") && surface(i) != "correction"; });   // last time should read 4, not 2
    const bool heads = items.front().is("correction") && std::none_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::hives || i.what == What::value || i.what == What::slash; });
    taken_back_ = taken_back_ || heads;   // Correction to June 9. h4 had 8 of 10 drawn
    if (items.front().is("correction") || rewritten || of_the_line_above) return keep_asked(span(items), "a correction is not counted", "correct the line it is about"), true;
    if (items.front().is("taken back")) return take_back(first_of_sentence_), ask_which_holds(items), true;
    if (std::exchange(taken_back_, false)) return ask_which_holds(items), true;
    return false;
}

/// What was told from `from` on is taken back; what follows says something else.
void LineReader::withdraw(const std::vector<Item>& items, std::size_t from) {
    take_back(from);
    taken_back_ = true;
    keep_words(items, Kind::remark, Reading::Outcome::remark, "");
}

void LineReader::ask_which_holds(const std::vector<Item>& items) { keep_asked(span(items), "which of the two holds?", "leave out what does not"); }

/// `Shed.`, `Lot A.`: a first sentence that names what the line is about. True when it is one.
bool LineReader::heads_the_line(const std::vector<Item>& items) {
    if (items.size() != 1 || out_->size() != first_of_line_) return false;
    const Item& named = items.front();
    if (named.is("shed")) return shed_ = items, shed_headed_ = true;
    if (named.what != What::lot || named.lots.size() != 1) return false;
    lot_of_line_ = named.lots.front();
    keep_words(items, Kind::remark, Reading::Outcome::remark, "");
    return true;
}

/// `26 kg (no, 25)`: the number before it is taken back.
bool LineReader::denies_the_number(const std::vector<std::vector<Item>>& clauses, std::size_t at) const {
    static constexpr std::array<std::string_view, 5> denials = {"no", "nope", "correction", "sorry", "wrong"};
    static constexpr std::array<std::string_view, 8> hesitant = {"hmm", "er", "um", "oh", "ah", "actually", "wait", "erm"};
    const auto hesitates = [&](const Item& i) { return std::find(hesitant.begin(), hesitant.end(), surface(i)) != hesitant.end(); };
    const auto says_no = [&](const std::vector<Item>& c) {   // hmm no, that was the first one
        return !c.empty() && std::all_of(c.begin(), c.end() - 1, hesitates) && std::find(denials.begin(), denials.end(), surface(c.back())) != denials.end();
    };
    const auto number = [](const Item& i) { return i.what == What::value || i.what == What::slash || i.has(Class::count) || i.has(Class::colour) || i.what == What::hives; };
    const auto that_is = [&](const Item& i) { const std::string said = surface(i); return said == "that" || said == "is" || said == "was" || said == "that's" || said == "that is" || said == "that was"; };
    const auto numbers_alone = [&](const std::vector<Item>& c) { return std::any_of(c.begin(), c.end(), number) && std::all_of(c.begin(), c.end(), [&](const Item& i) { return number(i) || i.idle() || that_is(i); }); };
    const bool told = out_->size() > first_of_sentence_ && out_->back().fact.kind != Kind::remark && out_->back().fact.kind != Kind::todo;   // united with h5 - no, h5 onto h4
    return says_no(clauses[at]) && at + 1 < clauses.size() && out_->size() > first_of_line_ && (told || numbers_alone(clauses[at + 1]));
}

/// `looks queenless`: a guess.
void LineReader::guessed_by_looks(std::vector<Item>& items) const {
    static constexpr std::array<std::string_view, 5> looks = {"looks", "looked", "looking", "feels", "sounds"};
    for (std::size_t i = 0; i + 1 < items.size(); ++i)
        if ((items[i + 1].is("queenless") || items[i + 1].is("queenright")) && std::find(looks.begin(), looks.end(), surface(items[i])) != looks.end())
            items[i].what = What::term, items[i].words = {table_word("maybe", Class::doubt)};
}

/// `some of the 10 frames capped`, `left the best of 4 cells`, `not much brood`: words that say something here.
void LineReader::some_of_so_many(std::vector<Item>& items) const {
    static constexpr std::array<std::string_view, 12> some = {"some", "a few", "few", "several", "the best", "the better", "the bigger", "the biggest", "the nicest", "the odd", "only some", "only a few"};
    static constexpr std::array<std::string_view, 5> much = {"much", "lot of", "a lot of", "lot", "a lot"};
    const auto leave_unread = [](Item& i) { i.what = What::unknown, i.words.clear(); };
    for (std::size_t i = 1; i < items.size(); ++i)   // not much brood: some
        if (items[i].has(Class::filler) && surface(items[i - 1]) == "not" && std::find(much.begin(), much.end(), surface(items[i])) != much.end()) leave_unread(items[i]);
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {   // twice the brood of h2: no two
        static constexpr std::array<std::string_view, 6> of_another = {"the", "as", "what", "that", "her", "its"};
        if (surface(items[i]) == "twice" && std::find(of_another.begin(), of_another.end(), surface(items[i + 1])) != of_another.end()) leave_unread(items[i]);
    }
    for (std::size_t i = 0; i + 2 < items.size(); ++i)   // three quarters full and half of that capped
        if (items[i].has(Class::amount) && items[i + 1].is("of") && surface(items[i + 2]) == "that") leave_unread(items[i + 2]);
    for (std::size_t i = 0; i + 2 < items.size(); ++i) {
        if (!items[i].has(Class::filler) || !items[i + 1].is("of") || std::find(some.begin(), some.end(), surface(items[i])) == some.end()) continue;
        std::size_t next = i + 2;
        while (next + 1 < items.size() && items[next].idle()) ++next;
        if (bare_number(items[next]) || items[next].has(Class::count) || items[next].counted || items[next].what == What::value) leave_unread(items[i]);
    }
}

/// `fed 2 gal 2:1 to each hive`, `moisture at 17.4%`: without the small word.
void LineReader::to_each(std::vector<Item>& items) const {
    const bool water = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("moisture"); });
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        const bool each = items[i].is("to") && says_each(items[i + 1]);
        const bool at = water && items[i].is("at") && items[i + 1].what == What::value && items[i + 1].value.dimension == Dimension::share;
        if (each || at) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
    }
}

/// `I see the clover in bloom`, `I saw pollen coming in`: said of what is told anyway.
void LineReader::seen_by_me(std::vector<Item>& items) const {
    const auto of_the_yard = [](const Item& i) { return i.has(Class::plant) || i.is("pollen") || i.is("bearding") || i.is("flow"); };
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        const std::string said = surface(items[i]);
        if (!items[i].is("seen") || (said != "see" && said != "saw")) continue;
        std::size_t next = i + 1;
        while (next + 1 < items.size() && items[next].idle()) ++next;
        if (of_the_yard(items[next])) pass_over(items[i]);
    }
}

/// `fed h3 and h4 with 2 L`, `super came off with 9 kg in it`: no word between the deed and how much it was.
void LineReader::fed_with(std::vector<Item>& items) {
    const auto fed = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.is("fed") || i.is("off") || i.is("taken off"); });
    for (std::size_t i = static_cast<std::size_t>(fed - items.begin()) + 1; i + 1 < items.size(); ++i) {
        const Item& next = items[i + 1];
        const bool food = next.has(Class::food) || next.what == What::ratio || (next.what == What::value && (next.value.dimension == Dimension::volume || next.value.dimension == Dimension::mass));
        const bool at = items[i].is("at") && is_mass(next);   // came off at 41 lb
        if ((items[i].is("with") && food) || at) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
    }
}

/// `3 supers off, 13.5, 12 and 11 kg`: as many weights as boxes are one after the other, and of the same unit.
void LineReader::weight_of_each_box(std::vector<Item>& items) {
    const auto off = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.is("off") || i.is("taken off"); });
    if (off == items.end()) return;
    std::size_t boxes = 0;
    for (auto i = items.begin(); i != off; ++i) {
        if (i->is("both")) boxes = 2;
        else if (i->has(Class::count) && i->word(Class::count)->number > 1) boxes = i->word(Class::count)->number;
        else if (bare_number(*i) && is_whole(i->value)) boxes = static_cast<std::size_t>(i->value.amount / 1000);
    }
    const auto between = [](const Item& i) { return i.is("and") || (i.what == What::stop && i.text == ","); };
    for (auto first = off + 1; boxes > 1 && first != items.end(); ++first) {
        std::vector<std::vector<Item>::iterator> weights;
        for (auto at = first; at != items.end() && (is_mass(*at) || bare_number(*at)); ++at) {
            weights.push_back(at);
            while (at + 1 != items.end() && between(*(at + 1))) ++at;
            if (at == weights.back()) break;
        }
        if (weights.size() != boxes || !is_mass(*weights.back())) continue;
        if (weights.back() + 1 != items.end() && weights.back()[1].what != What::stop) continue;   // 11 kg, 12 kg extracted
        for (const auto w : weights) *w = of_the_unit(*w, *weights.back());
        for (std::size_t k = weights.size() - 1; k > 0; --k) {   // from the last: what goes out moves no weight before it
            weights[k - 1][1].what = What::term, weights[k - 1][1].words = {table_word("and", Class::link)};
            items.erase(weights[k - 1] + 2, weights[k]);   // 24, and 26
        }
        return;
    }
}

/// `the super was removed by Ann and Tom`: who did it is kept as a remark, so that the rest reads.
void LineReader::without_the_doer(std::vector<Item>& items) {
    static constexpr std::array<std::string_view, 19> days = {"january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"};
    const auto day = [&](const Item& i) { return std::find(days.begin(), days.end(), surface(i)) != days.end(); };
    const auto name = [&](const Item& i) { const char first = text()[i.begin]; return i.what == What::unknown && first >= 'A' && first <= 'Z' && !day(i); };
    for (std::size_t i = 1; i + 1 < items.size(); ++i) {
        if (surface(items[i]) != "by" || !name(items[i + 1])) continue;
        std::size_t end = i + 2;
        while (end + 1 < items.size() && items[end].is("and") && name(items[end + 1])) end += 2;
        const std::vector<Item> doer(items.begin() + static_cast<std::ptrdiff_t>(i), items.begin() + static_cast<std::ptrdiff_t>(end));
        const Subject now = std::exchange(subject_, {});
        keep_words(doer, Kind::remark, Reading::Outcome::remark, "");
        subject_ = now;
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i), items.begin() + static_cast<std::ptrdiff_t>(end));
    }
}

/// `h1 h2 drop 6 in 7 days and 14 in 7 days`: the days said once, after both numbers.
void LineReader::days_said_twice(std::vector<Item>& items) {
    const auto so_long = [&](std::size_t i) { return i + 1 < items.size() && (items[i].is("in") || items[i].is("over")) && items[i + 1].what == What::value && items[i + 1].value.dimension == Dimension::duration; };
    for (std::size_t i = 0; i + 6 < items.size(); ++i) {
        const bool twice = bare_number(items[i]) && so_long(i + 1) && items[i + 3].is("and") && bare_number(items[i + 4]) && so_long(i + 5) && items[i + 2].value == items[i + 6].value;
        if (twice) items.erase(items.begin() + static_cast<std::ptrdiff_t>(i) + 1, items.begin() + static_cast<std::ptrdiff_t>(i) + 3);
    }
}

void LineReader::sentence(std::vector<Item> items) {
    if (corrects(items)) return;
    days_said_twice(items);
    guessed_by_looks(items);
    some_of_so_many(items);
    fed_with(items);
    seen_by_me(items);
    to_each(items);
    weight_of_each_box(items);
    last_ = {};
    first_of_sentence_ = out_->size();
    divided_ = lot_unread_ = boxes_unread_ = elsewhere_ = false, nuc_frames_ = no_hive;
    if (!shed_headed_) shed_.clear();
    if (heads_the_line(items)) return;
    without_brackets(items);
    dash_after_a_box(items);
    if (!headed_) number_before_supers(items);
    nest_without_its_box(items);
    without_the_doer(items);
    if (topic_of_each(items)) return;
    const auto queen = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.is("queen") || i.is("new queen") || i.is("old queen") || i.is("virgin"); });
    queen_at_ = queen == items.end() ? UINT32_MAX : queen->begin;
    head_of_sentence(items);
    if (hive_or_so_many(items)) return keep_asked(span(items), "that hive, or so many of them?", "write `hive` before its number, or say of what it is so many");
    const std::vector<std::vector<Item>> apart = shares_of_the_harvest(items);
    if ((headed_ && one_value_each(items)) || one_value_for_each_listed(items)) return;
    std::vector<std::vector<Item>> clauses = cut(std::move(items));
    if (tail_.size() > 1) subject_ = {};   // which of the hives named before?
    numbers_among_clauses(clauses);
    which_of_the_hive(clauses);
    plus_goes_on(clauses);
    one_weight_each(clauses);
    another_hive_begins(clauses);
    run_on_hives(clauses);
    lists_that_are_none(clauses);
    one_there_too(clauses);
    plans_after_deeds(clauses);
    hives_at_the_end(clauses);
    method_for_all(clauses);
    deed_for_all(clauses);
    feeds_apart(clauses);
    feeds_go_on(clauses);
    plants_share(clauses);
    names_end(clauses);
    neither(clauses);
    denials_apart(clauses);
    not_needed(clauses);
    needs_after_facts(clauses);
    doubts_after_facts(clauses);
    doubts_join_what_they_doubt(clauses);
    for (std::size_t c = 0; c < clauses.size(); ++c) {
        if (const std::size_t parts = parts_of_a_whole(clauses, c)) {
            c += parts - 1;
            continue;
        }
        if (denies_the_number(clauses, c)) {
            withdraw(clauses[c], before_clause_);
            continue;
        }
        if (not_at_these(clauses[c])) continue;
        if (const std::size_t shares = shares_in_turn(clauses, c)) {
            c += shares - 1;
            continue;
        }
        std::string because;
        bool todo = false;
        if (!governed(clauses, c, because, todo)) {
            clause(std::move(clauses[c]));
            continue;
        }
        std::vector<Item> rest;
        const std::size_t end = governed_to(clauses, c, todo, because);
        for (std::size_t k = c; k < end; ++k) rest.insert(rest.end(), clauses[k].begin(), clauses[k].end());
        put_out(rest, because, todo);
        if (!todo && std::any_of(clauses.begin() + static_cast<std::ptrdiff_t>(c) + 1, clauses.begin() + static_cast<std::ptrdiff_t>(end), [](const std::vector<Item>& k) { return std::any_of(k.begin(), k.end(), holds_number); })) more_than_a_wish(span(rest), because);
        c = end - 1;
    }
    for (const std::vector<Item>& share : apart) unread(share);
}

/// `extracted 21 kg from h1 (11 kg) and h3 (10 kg)`: takes out what each gave, which is not kept, so that the hives stay together.
std::vector<std::vector<Item>> LineReader::shares_of_the_harvest(std::vector<Item>& items) const {
    std::vector<std::vector<Item>> apart;
    if (std::none_of(items.begin(), items.end(), [](const Item& i) { return i.is("extracted"); })) return apart;
    for (std::size_t i = 1; i + 2 < items.size(); ++i) {
        const bool share = items[i - 1].what == What::hives && stop(items[i], "(") && is_mass(items[i + 1]) && stop(items[i + 2], ")");
        if (!share) continue;
        apart.push_back({items[i + 1]});
        items.erase(items.begin() + static_cast<std::ptrdiff_t>(i), items.begin() + static_cast<std::ptrdiff_t>(i) + 3);
        // and h3: one list
        if (i + 1 < items.size() && items[i].is("and") && items[i + 1].what == What::hives) {
            items[i - 1].hives.insert(items[i - 1].hives.end(), items[i + 1].hives.begin(), items[i + 1].hives.end());
            items[i - 1].unknown_hives.insert(items[i - 1].unknown_hives.end(), items[i + 1].unknown_hives.begin(), items[i + 1].unknown_hives.end());
            items[i - 1].end = items[i + 1].end;
            items.erase(items.begin() + static_cast<std::ptrdiff_t>(i), items.begin() + static_cast<std::ptrdiff_t>(i) + 2);
        }
        --i;
    }
    return apart;
}

/// Keeps what a plan, a condition or an order governs; about the hive it names, where that is not only by the way.
void LineReader::put_out(const std::vector<Item>& items, const std::string& because, bool todo) {
    std::vector<Item> copy = items;
    chunk(copy, item_context());
    const Subject line = subject_;
    const auto at = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.what == What::hives; });
    const bool by_the_way = at != items.begin() && at != items.end() && ((at - 1)->what == What::unknown || (at - 1)->is("with") || (at - 1)->is("to") || (at - 1)->is("into") || (at - 1)->is("from"));
    const Subject named = take_subject(copy);   // check h3 on Sunday
    if (named.said() && !(by_the_way && line.said())) subject_ = named;
    keep_words(items, todo ? Kind::todo : Kind::remark, eventful(items) ? Reading::Outcome::put_out : todo ? Reading::Outcome::todo : Reading::Outcome::remark, because);
    if (todo && because == "tonight" && eventful(items))
        journal_.diagnostics.push_back({"in-doubt", Severity::warning, span(items), fmt::format("'{}': done, or still to do?", journal_.sources.text(span(items))), "kept as a to-do because of 'tonight'", "leave out 'tonight' if it was done", {}});
    if (line.said()) subject_ = line;
}

/// Clauses that are no sentence: a quotation, hives alone, what was seen another day.
bool LineReader::no_sentence(const std::vector<Item>& items) {
    const auto remark = [&](Reading::Outcome outcome, const char* because) { return keep_words(items, Kind::remark, outcome, because), true; };
    if (items.size() == 1 && items.front().what == What::quoted) {
        const bool detail = last_.set && last_.out < out_->size() && goes_on(out_->back().fact.kind);
        return (detail && join_last(items)) || remark(Reading::Outcome::remark, "");
    }
    if (only_hives(items)) {
        if (these_too(items) || honey_of_these(items)) return true;
        // "put clearer boards on, hives 2, 5 and 9": the hives of what was just said
        if (last_.set && items.front().has(Class::preposition) && join_last(items)) return true;
        if (subject_.said() && last_.set && join_last(items)) return true;
        const bool others = std::any_of(items.begin(), items.end(), [&](const Item& i) { return i.what == What::hives && i.hives != subject_.hives; });
        if (subject_.said() && others && out_->size() > first_of_sentence_) return keep_asked(span(items), "what at that hive?", "write a line for each hive"), true;
        if (subject_.said()) return remark(Reading::Outcome::remark, "");
        for (const Item& i : items)
            if (i.what == What::hives) subject_.hives.insert(subject_.hives.end(), i.hives.begin(), i.hives.end()), subject_.unknown = i.unknown_hives;
        const bool what_there = out_->size() > first_of_line_ && items.front().what != What::hives;   // 2 supers on h1 and another on h2
        if (what_there) keep_asked(span(items), "what at that hive?", "write a line for each hive");
        return true;
    }
    // supers off h2 (both) and h3
    const bool there_too = items.size() > 1 && items.front().is("and") && out_->size() > first_of_sentence_ && only_hives(part_of(items, 1, items.size()));
    if (there_too) return keep_asked(span(items), "what at that hive?", "write a line for each hive"), true;
    // last seen unmarked 14/5: of another day, and no more than that
    return std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("last seen"); }) && remark(Reading::Outcome::put_out, "last seen");
}

/// `today's wash`, `now queenless`: of the day of the visit, whatever day was said before.
bool LineReader::says_today(const Item& item) const {
    const std::string said = surface(item);
    return said == "today" || said == "today's" || said == "now";
}

/// Takes the words of doubt and the day it happened out of a clause.
void LineReader::take_doubt_and_day(Clause& c) const {
    const bool date_meant = std::any_of(c.items.begin(), c.items.end(), [](const Item& k) { return k.is("best before"); });
    drop_since(c.items, context_->noted);
    for (std::size_t i = 0; i < c.items.size();) {
        const Item& item = c.items[i];
        const bool question = stop(item, "?");
        if (question || (item.has(Class::doubt) && item.words.size() == 1)) {
            c.doubt = question ? "?" : surface(item);
        } else if (item.what == What::day && item.text != "due" && !date_meant) {
            c.two_days = c.two_days || (c.happened && *c.happened != item.day);
            c.happened = item.day;
            c.since = c.since || item.since;
        } else {
            ++i;
            continue;
        }
        c.items.erase(c.items.begin() + static_cast<std::ptrdiff_t>(i));
    }
    // pads out two weeks ago and today's wash 1 in 300
    c.two_days = c.two_days || (c.happened && *c.happened != context_->noted && std::any_of(c.items.begin(), c.items.end(), [&](const Item& i) { return says_today(i); }));
}

/// The ways a clause reads as it stands, about the line's hives or its own.
std::vector<LineReader::Solution> LineReader::plain_ways(Clause& c) {
    c.without = c.items;
    c.own = take_subject(c.without);
    c.before = subject_;
    if (c.own.said()) note_tail(c);
    if (c.own.said() && !subject_.said()) subject_ = c.own;
    const bool other_hives = c.own.said() && c.before.said() && c.own.hives != c.before.hives;
    std::vector<Solution> ways = solve(other_hives ? c.items : c.without);
    if (ways.empty() && c.own.said() && c.before.hives == c.own.hives) ways = solve(c.items);   // h6 renamed Rose
    if (!ways.empty() || !c.own.said() || !c.before.said() || c.before.hives == c.own.hives) return ways;
    // A line about one hive that goes on to speak of another, or of one more.
    subject_ = c.own;
    if (one_hive_more(c.items)) subject_.hives.insert(subject_.hives.begin(), c.before.hives.begin(), c.before.hives.end()), c.own = subject_;
    const BoxChoice box = std::exchange(box_, BoxChoice{});   // spoken of at the other hive
    ways = solve(c.without);
    const auto off = [](const Candidate& k) { return k.fact.kind == Kind::super_off; };
    if (ways.empty()) {   // took super off h2, both off h3
        box_ = box;
        ways = solve(c.without);
        if (ways.size() != 1 || !std::all_of(ways.front().candidates.begin(), ways.front().candidates.end(), off)) ways.clear();
    }
    if (ways.empty()) subject_ = c.before;
    return ways;
}

/// What else a clause may be that does not read as it stands: more of the shed, about a hive named with
/// a preposition or by its bare number.
std::vector<LineReader::Solution> LineReader::further_ways(Clause& c) {
    std::vector<Solution> ways;
    if (!shed_.empty()) {
        c.without.insert(c.without.begin(), shed_.front());
        ways = solve(c.without);
    }
    // super on 1 June, noted later: put on that day. On Friday may be the next.
    const auto on_a_date = [&](const Item& i) { return i.what == What::day && surface(i).starts_with("on ") && surface(i).find_first_of("0123456789") != std::string::npos; };
    if (ways.empty() && c.happened && *c.happened < context_->noted && !eventful(c.without) && std::any_of(c.written.begin(), c.written.end(), on_a_date)) {
        Item on;
        on.what = What::term, on.words = {table_word("on", Class::done)}, on.begin = on.end = c.written.back().end;
        c.without.push_back(on);
        ways = solve(c.without);
        if (ways.size() == 1) return ways;
        c.without.pop_back(), ways.clear();
    }
    const auto said = [&](auto says) { return std::any_of(c.without.begin(), c.without.end(), says); };
    const bool super_there = said(is_super) && said([](const Item& i) { return i.is("added"); }) && said([](const Item& i) { return i.what == What::hives && i.role == Item::Role::to && i.unknown_hives.empty(); });   // h1 h2 calm, super added to h4
    const bool led = !super_there && ((subject_.said() && (headed_ || !eventful(c.without))) || c.own.said());   // took supers off h2, took 4 frames from h3; super on h1 to h4
    if (ways.empty() && !led) ways = about_the_named(c.without);
    std::vector<Item> named = c.without;
    if (!ways.empty() || !bare_hives(named) || told_apart(named)) return ways;
    const Subject found = take_subject(named);
    const Subject before = subject_;
    if (c.own.said()) subject_ = c.own;   // 1 calm, 3 united with 2
    std::vector<Solution> read = solve(named);
    if (read.empty() && !subject_.said() && !found.said()) read = about_the_named(named);
    if (read.size() != 1 || (found.said() && subject_.said())) return subject_ = before, ways;
    if (found.said()) subject_ = found;
    return read;
}

/// `calm, - 2 supers`: a minus, or a dash? True when it is asked.
bool LineReader::minus_or_dash(const std::vector<Item>& items) {
    const std::string_view all = text();
    const auto back = [&](std::size_t at) {
        while (at > 0 && all[at - 1] == ' ') --at;
        return at;
    };
    const std::size_t dash = back(items.front().begin);
    if (dash == 0 || all[dash - 1] != '-' || dash == items.front().begin) return false;
    const std::size_t before = back(dash - 1);
    const bool listed = before > 0 && (all[before - 1] == ',' || all[before - 1] == ';');
    // at the head of a line it is the dash of a list, unless more such follow in the line or nothing is counted
    const std::string_view line = all.substr(dash, all.find('\n', dash) - dash);
    const bool counted = std::any_of(items.begin(), items.end(), [](const Item& i) { return bare_number(i) || i.has(Class::count); });
    const bool heads = (before == 0 || all[before - 1] == '\n') && (!counted || line.find(", - ") != line.npos || line.find("; - ") != line.npos);
    const auto box = [](const Item& i) { return is_super(i) || i.is("brood box") || is_super_kind(i) || (i.has(Class::which) && !i.is("all") && !i.is("both")); };
    const auto boxes_alone = [&](const Item& i) { return box(i) || bare_number(i) || i.has(Class::count) || i.what == What::hives || i.idle() || i.has(Class::link); };
    if (!(listed || heads) || !std::all_of(items.begin(), items.end(), boxes_alone) || std::none_of(items.begin(), items.end(), box)) return false;
    keep_asked(span(items), "minus, or the dash of a list?", "write `-super h3` without the space if it came off, `1 super on` if it is there");
    return true;
}

/// `all supers full but h3`.
bool LineReader::leaves_out(const std::vector<Item>& items) {
    if (items.size() < 3 || items.back().what != What::hives || items.back().role != Item::Role::none) return false;
    const Item& before = items[items.size() - 2];
    return before.is("all but") || before.is("but");
}

/// `no queen cells in any`: in any of the hives, where the line is about several; of one hive it may be its boxes. True when that is asked.
bool LineReader::in_any(std::vector<Item>& items) {
    const auto in = std::find_if(items.begin(), items.end(), [](const Item& i) { return i.is("in") && i.end - i.begin == 2; });
    if (in == items.begin() || in == items.end()) return false;
    const std::string said = lower(text().substr(in->begin, items.back().end - in->begin));
    static constexpr std::array<std::string_view, 7> any = {"in either one", "in any", "in any of them", "in either", "in either of them", "in any hive", "in either hive"};
    if (std::find(any.begin(), any.end(), said) == any.end()) return false;
    if (subject_.said() && !subject_.several() && !subject_.all) {
        keep_asked(span(items), "in any of what?", "name the hives, or the boxes");
        return true;
    }
    items.erase(in, items.end());
    return false;
}

/// `h1 calm super on h2`: another hive than the line is about, after something told.
bool LineReader::in_the_midst(const Clause& c) const {
    if (!headed_ || !c.own.said() || !c.before.said() || c.own.hives == c.before.hives) return false;
    const auto told = std::find_if(c.items.begin(), c.items.end(), [](const Item& i) { return !i.idle() && !i.has(Class::link) && !i.has(Class::preposition); });
    return told != c.items.end() && !is_hives(*told);
}

/// `h1 calm, the nuc weak`: another colony, where the line made no nuc.
bool LineReader::of_a_nuc(const std::vector<Item>& items) const {
    const auto line = out_->begin() + static_cast<std::ptrdiff_t>(first_of_line_);
    const bool made = divided_ || std::any_of(line, out_->end(), [](const RawFact& r) { return divides(r.fact.kind) || r.fact.kind == Kind::swarm_hived || r.fact.kind == Kind::hive_united; });
    if (made || std::any_of(items.begin(), items.end(), is_split)) return false;
    const std::string said = ' ' + lower(journal_.sources.text(span(items))) + ' ';
    if (said.find(" and the nuc ") != said.npos) return true;   // fed h1 2 L and the nuc 1 L
    if (line == out_->end() || any_hive(items)) return false;
    return said.starts_with(" nuc ") || said.find(" the nuc ") != said.npos;
}

/// `super full, another one on top`, after what was told of a box.
bool LineReader::one_more_on_top(const std::vector<Item>& items) const {
    static constexpr std::array<std::string_view, 6> more = {"another", "another one", "new one", "a new one", "second one", "next one"};
    const std::string said = lower(journal_.sources.text(span(items)));
    const bool begins = std::any_of(more.begin(), more.end(), [&](std::string_view m) { return said.starts_with(m) || said.starts_with("a " + std::string(m)) || said.starts_with("and " + std::string(m)); });
    return begins && box_.by != BoxChoice::By::unsaid && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::placing) || i.is("on"); });
}

/// The rest of the line begins with `one each`.
bool LineReader::one_each_follows(const std::vector<Item>& items) const {
    static constexpr std::array<std::string_view, 4> each = {"one each", "1 each", "one apiece", "one on each"};
    const std::string rest = rest_of_line(items);
    return std::any_of(each.begin(), each.end(), [&](std::string_view e) { return rest.starts_with(e); });
}

/// What stands in the line after the items and the punctuation that follows them, in small letters.
std::string LineReader::rest_of_line(const std::vector<Item>& items) const {
    std::string_view rest = text().substr(items.back().end);
    rest = rest.substr(0, rest.find('\n'));
    rest.remove_prefix(std::min(rest.size(), rest.find_first_not_of(" ,;.-")));
    return lower(rest);
}

/// `was 6 frames of brood, now 8`: told of an earlier day, with what holds now after it.
bool LineReader::was_before(const std::vector<Item>& items) const {
    const auto was = [&](const Item& i) { return surface(i) == "was" || surface(i) == "were" || surface(i) == "had been"; };
    if (std::none_of(items.begin(), items.end(), was)) return false;
    const std::string rest = rest_of_line(items);
    return rest.starts_with("now ") || rest.starts_with("but now ");
}

/// `h1 calm h2`, and no word between.
bool LineReader::ends_with_another(const Clause& c) const {
    if (out_->size() != first_of_sentence_ || c.items.size() < 2 || c.own.hives.size() != 1 || !is_hives(c.items.back()) || c.items.back().role != Item::Role::none) return false;
    const Item& before = c.items[c.items.size() - 2];
    const bool among = std::find(c.before.hives.begin(), c.before.hives.end(), c.own.hives.front()) != c.before.hives.end();
    return !among && !before.has(Class::link) && !before.has(Class::preposition) && before.what == What::term && !before.is("into") && !before.is("calling it");
}

/// What is asked of a clause rather than read: of which hive, of which day, of which colony it tells. True when it was.
bool LineReader::asked_instead(const Clause& c, const std::vector<Solution>& ways) {
    const auto any_way = [&](auto says) { return std::any_of(ways.begin(), ways.end(), says); };
    const auto ask = [&](const char* question, const char* hint) { return keep_asked(span(c.written), question, hint), true; };
    // clearer board on, supers off Friday: the coming one
    const auto off = [](const Solution& s) { return std::any_of(s.candidates.begin(), s.candidates.end(), [](const Candidate& k) { return k.fact.kind == Kind::super_off; }); };
    const auto later_board = [&](const RawFact& r) { return r.fact.kind == Kind::escape_on && (r.fact.happened == Day{} || r.fact.happened > *c.happened); };
    const bool board_on = c.happened && told_in_line(later_board);
    if (board_on && any_way(off)) return ask("did they come off then, or will they?", "write the date they came off, or `take the supers off on Friday`");
    if (!ways.empty() && of_a_nuc(c.written)) return ask("which nuc?", "name it, for example `n1 3 frames of brood`");
    if (!ways.empty() && was_before(c.written)) return ask("as it was, or as it is now?", "write only what is there now");
    const bool several = any_way([](const Solution& s) { return s.candidates.size() > 1; });
    const auto of_both = [](const Solution& s) { return std::any_of(s.candidates.begin(), s.candidates.end(), [](const Candidate& k) { return k.fact.other != no_hive; }); };   // h7 daughter of h2
    const bool midst = in_the_midst(c) && (several || (!ways.empty() && ends_with_another(c) && !of_both(ways.front())));
    const bool deeds = ways.empty() && std::any_of(c.written.begin(), c.written.end(), [](const Item& i) { return i.has(Class::negation); }) && eventful(c.written);   // no eggs in h3 moved h4 to orchard
    if (!midst && !((deeds || several) && run_together(c.items))) return false;
    subject_ = c.before;
    return ask("which of these hives is each told of?", "begin each with its hive, with a comma between");
}

void LineReader::clause(std::vector<Item> items) {
    if (!items.empty() && minus_or_dash(items)) return;
    while (!items.empty() && items.front().what == What::stop) items.erase(items.begin());
    // #3 & #8 same: super 3/4
    if (items.size() > 2 && items[0].is("same as") && stop(items[1], ":")) items.erase(items.begin(), items.begin() + 2);
    // supers: bottom 90% capped
    if (items.size() > 2 && items[0].is("super") && stop(items[1], ":") && items[2].has(Class::which)) items.erase(items.begin(), items.begin() + 2);
    if (items.empty()) return;
    if (items.front().is("taken back") && out_->size() > first_of_line_) return withdraw(items, before_clause_);   // wash 4/300, sorry, 5/300
    if (std::exchange(taken_back_, false)) return ask_which_holds(items);
    const bool of_the_weather = out_->size() > first_of_line_ && (out_->back().fact.kind == Kind::temperature || out_->back().fact.kind == Kind::weather);
    const auto weather_alone = [](const Item& i) { return i.has(Class::weather) || i.has(Class::link); };
    if (surface(items[0]) == "still" && of_the_weather && std::all_of(items.begin() + 1, items.end(), weather_alone)) items[0].words = {table_word("calm weather", Class::weather)};   // 18C, still
    if (each_of_two_numbers(items) || one_more_there(items) || no_sentence(items) || count_goes_on(items) || weight_of_the_super_off(items) || due_of_the_treatment(items) || treatment_out_again(items) || so_many_each(items) || worked_out_again(items) || honey_of_another(items) || went_with_the_split(items) || jars_of_another_lot(items) || each_of_two(items)) return;
    const bool each = items.size() > 1 && says_each(items.back());
    const bool on_each = each && items.size() > 2 && (items[items.size() - 2].is("on") || items[items.size() - 2].is("in") || items[items.size() - 2].is("at"));
    // as strong as h2, 8 frames of brood each
    const bool after_words = out_->size() > first_of_sentence_ && out_->back().fact.kind == Kind::remark;
    const bool each_of_what = each && after_words && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::thing); });
    if ((on_each || each_of_what) && !subject_.several() && !head_.several() && subject_.said()) return keep_asked(span(items), "each of which hives?", "name the hives");
    if (in_any(items)) return;
    if (items.size() > 1 && items.back().what == What::quoted && !reads(items) && reads(part_of(items, 0, items.size() - 1))) {   // queen seen "little dark girl"
        const std::vector<Item> aside{items.back()};
        items.pop_back();
        clause(std::move(items));
        return keep_words(aside, Kind::remark, Reading::Outcome::remark, "");
    }
    if (leaves_out(items)) return keep_asked(span(items), "which hives are left out of what?", "begin the line with them, for example `all but h3: calm`");
    if (on_each && subject_.several() && items[items.size() - 2].is("in")) items.resize(items.size() - 2);   // 3 frames of brood in each
    before_clause_ = out_->size();
    if (others_begin(items)) return;
    // h4 heavy, h2 light. All thymol out: of these, or of all there are?
    const bool later = out_->size() == first_of_sentence_ && first_of_sentence_ > first_of_line_;
    if (headed_ && later && eventful(items) && items.size() > 1 && surface(items[0]) == "all" && heads_with_hives(items) && !(subject_.several() && subject_.hives == head_.hives)) return keep_asked(span(items), "all of which hives?", "write a line that begins with `all:`");
    sale_goes_on(items);
    stock_goes_on(items);
    each_of_the_head(items);
    if (subject_.several() && items.size() > 1 && says_each(items.front())) items.erase(items.begin());
    Clause c;
    c.written = c.spoken = items;
    c.items = std::move(items);
    take_doubt_and_day(c);
    if (c.two_days) return unread(c.written);
    if (std::any_of(c.written.begin(), c.written.end(), [](const Item& i) { return i.is("corrected"); })) {
        // h3 2, no, make that 4: what was told last is not what holds
        const auto said = std::find_if(c.written.begin(), c.written.end(), [](const Item& i) { return !i.idle() && !i.has(Class::negation) && i.what != What::stop; });
        if (said != c.written.end() && said->is("corrected")) take_back(last_told());
        return ask_which_holds(c.written);
    }
    const bool others = c.items.size() > 2 && c.items[0].is("all but") && c.items[1].what == What::hives;   // n1 united with h2; all but h3 fed 2 L
    if ((!subject_.said() || others) && take_all(c.items, others)) c.spoken = c.items;
    if (c.items.size() > 1 && (subject_.said() || c.items.front().is("sold")) && says_each(c.items.back())) c.items.pop_back();
    chunk(c.items, item_context());
    numbers_beside(c.items);
    as_written_ = c.written;
    both_of_them(c.items);
    if (unknown_other(c.items)) {
        divided_ = divided_ || std::any_of(c.items.begin(), c.items.end(), is_split);
        return keep_words(c.written, Kind::remark, Reading::Outcome::remark, "");
    }
    std::vector<Solution> ways = plain_ways(c);
    hives_named_ = c.own.said();
    if (impossible_share(c.written)) return keep_words(c.written, Kind::remark, Reading::Outcome::remark, "");
    const auto shed = std::find_if(c.items.begin(), c.items.begin() + static_cast<std::ptrdiff_t>(std::min<std::size_t>(2, c.items.size())), [](const Item& i) { return i.is("shed"); });
    const bool begins_shed = shed != c.items.begin() + static_cast<std::ptrdiff_t>(std::min<std::size_t>(2, c.items.size()));
    if (begins_shed) shed_.clear();
    if (ways.empty()) ways = further_ways(c);
    if (begins_shed) shed_ = {*shed};
    if (asked_instead(c, ways)) return;
    if (!ways.empty() && told_apart(c.items)) ways.clear(), subject_ = c.before;
    if (ways.empty() && one_more_on_top(c.written)) return keep_asked(span(c.written), "put on, or there already?", "write `+super` if it went on");
    if (ways.empty() && same_again(c.written)) return;
    if (ways.empty() && c.own.said() && c.own.hives != c.before.hives) {   // h4 6 frames of bees. h8: same
        std::vector<Item> rest = c.without;
        std::erase_if(rest, [](const Item& i) { return i.what == What::stop; });
        const Subject now = std::exchange(subject_, c.own);
        if (same_again(rest)) return;
        subject_ = now;
    }
    conclude(c, std::move(ways));
}

/// Facts when a clause reads in one way, else a detail of the clause before it, a question or a remark.
void LineReader::conclude(const Clause& c, std::vector<Solution> ways) {
    const bool one = ways.size() == 1;
    if (one && ways.front().candidates.empty()) return unread(c.written);
    const auto any_event = [](const Solution& s) { return std::any_of(s.candidates.begin(), s.candidates.end(), [](const Candidate& k) { return is_event(k.fact.kind); }); };
    if (one && !c.doubt.empty()) {
        std::vector<Candidate>& said = ways.front().candidates;
        if (!std::all_of(said.begin(), said.end(), [](const Candidate& k) { return soft(k.fact.kind); })) {
            const bool goes_over = c.own.said() && !c.spoken.empty() && c.spoken.front().what == What::hives;   // h6 queenless I think, no eggs
            in_doubt(c.written, c.doubt);
            if (!goes_over) subject_ = c.before;
            return;
        }
        for (Candidate& k : said)
            if (k.fact.value.said()) widen(k.fact.value);
    }
    const bool so_much = std::any_of(c.written.begin(), c.written.end(), [](const Item& i) { return i.what == What::value || i.what == What::slash; });
    if (one && c.since && so_much && any_event(ways.front())) return keep_asked(span(c.written), "on which day?", "write the day it was done, for example `super off on 19 July, 12 kg`");
    if (one && c.since && any_event(ways.front())) return keep_words(c.written, Kind::remark, Reading::Outcome::put_out, "since");
    const auto drawn_then = [&](const Solution& s) { return s.candidates.size() == 1 && s.candidates.front().fact.kind == Kind::drawn && s.candidates.front().fact.value.amount == 1000; };
    const bool on_a_day = std::any_of(c.written.begin(), c.written.end(), [&](const Item& i) { return i.what == What::day && surface(i).starts_with("on "); });
    if (one && on_a_day && drawn_then(ways.front())) return keep_asked(span(c.written), "drawn by then, or put on then?", "write `super on, drawn` if it was put on");   // super drawn on Thursday
    if (ways.empty() && several_shares(c.without)) return;
    const bool of_another = c.own.said() && c.before.said() && c.own.hives != c.before.hives;   // h1 2 queen cells, h2 none
    const bool may_join = last_.set && !of_another && c.doubt.empty() && last_.out < out_->size() && (ways.empty() || goes_on(out_->back().fact.kind) || still_on(out_->back().fact));
    if (may_join && join_last(c.written, one)) return;
    if (one && found_as_said_before(c.written, ways)) return;
    if (one && one_each_follows(c.written))   // gave the two wet supers to h2 and h3, one each
        for (Candidate& k : ways.front().candidates)
            if (k.fact.kind == Kind::super_on && subject_.several() && k.fact.count == static_cast<int>(subject_.hives.size())) k.fact.count = -1;
    if (one && each_or_together(ways.front(), c.written)) return;
    if (ways.size() > 1) return two_ways(c.written, ways);
    if (!one && places_the_new_box(c.written)) return;
    const bool named = one && (c.own.said() || subject_.hives != c.before.hives);
    last_ = {named ? without_hives(c.spoken) : one ? c.spoken : c.written, out_->size(), journal_.readings.size(), journal_.diagnostics.size(), true};
    const auto measured_since = [](const Candidate& k) { return k.fact.kind == Kind::weight_change; };
    const bool dated = one && (!c.since || std::any_of(ways.front().candidates.begin(), ways.front().candidates.end(), measured_since));   // no eggs since Sunday: seen now
    if (one) return take(std::move(ways.front()), dated ? c.happened : std::nullopt);
    if (names_lot(c.written) || for_each_box(c)) return;
    last_.set = false;
    if (parts_at_links(c)) return;
    last_.set = true;
    spoke_of_others(c);
    const Subject before = subject_;
    for (const Item& i : c.written)
        if (!subject_.said() && i.what == What::hives) subject_.hives = i.hives;   // words are kept with the hive they name
    const auto hive_said = std::find_if(c.written.begin(), c.written.end(), [](const Item& i) { return i.what == What::hives; });
    const bool there = hive_said != c.written.begin() && hive_said != c.written.end() && ((hive_said - 1)->is("at") || (hive_said - 1)->is("on") || (hive_said - 1)->is("in"));   // fought robbers at n1
    if (there && c.own.said() && c.own.unknown.empty()) subject_ = c.own;
    unread(c.written);
    const bool its = hive_said != c.written.end() && surface(*hive_said).ends_with("'s");   // left h2's on, not capped
    // heavy except h5 light, fed 2 L: which of them?
    const bool amid = hive_said != c.written.begin() && hive_said != c.written.end() && (its || (hive_said + 1 != c.written.end() && hive_said->role == Item::Role::none)) && ((hive_said - 1)->is("all but") || !(hive_said - 1)->has(Class::preposition)) && !there;
    // h1 calm, roll on h5, 6 mites in 300: of the hive named last?
    const bool last_there = there && hive_said + 1 == c.written.end();
    elsewhere_ = elsewhere_ || ((amid || last_there) && c.before.said() && hive_said->hives != c.before.hives);
    const auto gone = [](const Item& i) { return i.is("taken off") || i.is("moved") || i.is("added"); };
    const auto any = [&](auto says) { return std::any_of(c.written.begin(), c.written.end(), says); };
    // took 4 frames of brood, 2 frames of honey
    divided_ = divided_ || (any(is_frames) && any(gone)) || any([](const Item& i) { return is_split(i) || i.text == "nuc'd"; });
    subject_ = c.doubt.empty() ? before : c.before;
}

}  // namespace waxtab
