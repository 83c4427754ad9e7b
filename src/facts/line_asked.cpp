#include "facts/line_reader.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "facts/chunk.hpp"
#include "facts/clause_words.hpp"
#include "facts/long_form.hpp"
#include "facts/slots.hpp"

// What is asked back: what was not understood, means two things, or cannot be.
namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

/// The row of a word that has two meanings in the trade, if it is one.
const grammar::TwoMeanings* meanings_of(const Item& i) {
    if (i.what != What::unknown && !i.is("cleared")) return nullptr;
    const std::string_view text = i.what == What::unknown ? std::string_view(i.text) : "cleared";
    const std::string_view single = text.size() > 2 && text.ends_with('s') ? text.substr(0, text.size() - 1) : text;
    const auto found = std::find_if(std::begin(grammar::two_meanings), std::end(grammar::two_meanings), [&](const grammar::TwoMeanings& t) { return t.word == text || t.word == single; });
    return found == std::end(grammar::two_meanings) ? nullptr : &*found;
}

bool smells_of_data(const Item& i, const Lexicon& lexicon) {
    if (i.what == What::value || i.what == What::slash || i.what == What::ratio || i.what == What::sign || i.what == What::jars || i.what == What::day || i.what == What::lot) return true;
    if (i.counted || i.is("same as") || i.is("calling it")) return true;
    if (i.what == What::unknown && i.text.find_first_of("0123456789") != std::string::npos) return true;
    if (const grammar::Word* w = i.word(Class::count); w && w->number > 1) return true;
    return i.what == What::unknown && !lexicon.nearest(i.text).empty();
}

/// Tells of the fill, a box, cells, mites, a medicine or honey in words that are used for nothing else.
bool speaks_of_data(const Item& i) {
    static constexpr std::array<std::string_view, 31> terms = {"full one", "nths", "super", "brood box", "excluder", "escape board", "capped", "uncapped", "none capped", "to shed", "queen not seen", "starting to cap", "drawn", "foundation", "frames of brood",
        "frames of bees", "frames of stores", "queen cell", "open cell", "sealed cell", "charged cell", "swarm cell", "supersedure cell", "emergency cell", "sealed brood", "egg", "mite", "strip",
        "extracted", "moisture", "jar"};
    if (i.what == What::box || (i.what == What::term && is_super_kind(i)) || i.has(Class::substance) || (i.has(Class::amount) && !i.is("started") && i.words.size() == 1)) return true;
    return i.what == What::term && std::any_of(terms.begin(), terms.end(), [&](std::string_view t) { return i.is(t); });
}

/// `mouseguard off`: a thing nobody knows was put somewhere.
bool strange_thing_done(const std::vector<Item>& items) {
    const auto small = [](const Item& i) { return i.is("in") || i.is("on") || i.is("off") || i.is("out"); };
    const auto strange = std::count_if(items.begin(), items.end(), [](const Item& i) { return i.what == What::unknown && !i.text.ends_with("ed"); });
    return items.size() == 2 && strange == 1 && std::any_of(items.begin(), items.end(), small);
}

/// Speaks of something done to boxes, frames or queens: worth a look when it was not understood.
bool tells_of_a_deed(const std::vector<Item>& items) {
    static constexpr std::array<std::string_view, 12> things = {"super", "brood box", "excluder", "frame", "frames of brood", "frames of stores", "queen", "queen cell", "escape board", "feeder", "upper entrance", "swarm"};
    const auto deed = [](const Item& i) { return i.what == What::sign || (i.has(Class::done) && !on_or_off(i) && !i.is("left")); };
    const auto thing = [](const Item& i) { return i.what == What::box || i.is("wet") || (i.has(Class::which) && !i.is("all")) || std::any_of(things.begin(), things.end(), [&](std::string_view t) { return i.is(t); }); };
    static constexpr std::array<std::string_view, 11> lives = {"treated", "split", "united", "swarmed", "requeened", "bought", "hived", "nuc made", "shook out", "renamed", "supered"};
    const auto life = [](const Item& i) { return std::any_of(lives.begin(), lives.end(), [&](std::string_view t) { return i.is(t); }); };
    if (std::any_of(items.begin(), items.end(), life)) return true;
    for (std::size_t i = 1; i < items.size(); ++i) {   // gave it to h3
        const bool put_on = items[i - 1].is("on") && std::any_of(items.begin(), items.end(), [](const Item& k) { return k.is("added"); });   // put it on h4
        const bool there = items[i].what == What::hives && (put_on || items[i - 1].is("to") || items[i - 1].is("into") || items[i - 1].is("from"));
        if (there && std::any_of(items.begin(), items.end(), deed)) return true;
    }
    if (std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("cells removed") && !i.is("taken off"); })) return true;   // knocked the lot
    const auto strange = [](const Item& i) { return i.what == What::unknown; };
    const auto plainly = [&](const Item& i) { return deed(i) && !i.is("gained") && !i.is("lost weight") && !i.is("weighed"); };
    const auto deed_alone = [&](const Item& i) { return i.idle() || i.what == What::hives || i.has(Class::link) || (i.is("off") && !i.is("taken off")) || (plainly(i) && (i.words.size() == 1 || i.is("harvested") || i.is("removed")) && !i.has(Class::order) && !i.is("inspected")); };
    if (std::any_of(items.begin(), items.end(), plainly) && std::all_of(items.begin(), items.end(), deed_alone)) return true;
    // pulled everything off h1-h5
    const auto everything = [](const Item& i) { return i.is("all") && i.end - i.begin == std::string_view{"everything"}.size(); };
    if (std::any_of(items.begin(), items.end(), everything) && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("off") || i.is("taken off"); })) return true;
    const auto small = [](const Item& i) { return i.is("on") || i.is("off"); };
    const auto counts = [](const Item& i) { return i.has(Class::count) || i.is("both"); };
    if (std::any_of(items.begin(), items.end(), small) && std::any_of(items.begin(), items.end(), counts)) return true;   // and one off h2
    const bool one = std::any_of(items.begin(), items.end(), plainly) && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::count); });
    return one || (std::any_of(items.begin(), items.end(), deed) && std::any_of(items.begin(), items.end(), thing)) ||
           (std::any_of(items.begin(), items.end(), plainly) && std::any_of(items.begin(), items.end(), strange));
}

}  // namespace

/// The hint for words that read as nothing: the nearest example of the notation, said of the hive it is about.
std::string LineReader::in_other_words(const std::vector<Item>& items) const {
    std::vector<Item> joined = items;
    chunk(joined, item_context());
    const auto strange_place = [](const Item& i) { return i.what == What::unknown || i.what == What::new_name; };
    const auto place = std::find_if(joined.begin(), joined.end(), strange_place);
    const bool to_a_place = place != joined.end() && place != joined.begin() && (place - 1)->is("to") && joined.front().is("moved") && place + 1 == joined.end();
    if (to_a_place) {
        const std::string name(journal_.sources.text({file_, place->begin, place->end}));
        return fmt::format("set up the yard, for example `yard {}`, or put it in quotes if it is only a remark", name);
    }
    const auto deep = [](const Item& i) { return i.what == What::term && i.box_kind == "deep"; };
    if (item_context().settings->super_kind == "deep" && std::any_of(joined.begin(), joined.end(), deep)) return "a deep may be a super here or a brood box: say which, for example `+super h3` or `+brood box h3`";
    std::string example(matcher_.nearest_example(joined));
    if (example.empty()) return "say it in the words of `waxtab words`, or put it in quotes if it is only a remark";
    const std::size_t name = example.find_first_of(" :");
    const bool of_hive = name != example.npos && name > 1 && example[0] == 'h' && example[1] >= '0' && example[1] <= '9';
    if (of_hive && subject_.hives.size() == 1) example.replace(0, name, hive_words(journal_, subject_.hives.front()));
    return fmt::format("say it as in `{}` (more in `waxtab words`), or put it in quotes if it is only a remark", example);
}

/// Tells nothing that is read, counted or done to the hive: `lifted the lid on h6`.
bool LineReader::plain_talk(const std::vector<Item>& items) const {
    const auto thing = [](const Item& i) { return (i.has(Class::thing) && !i.is("gear") && !i.is("fume board")) || i.has(Class::food) || i.has(Class::method) || i.has(Class::pest) || i.has(Class::disease) || i.has(Class::colour); };
    const auto data = [&](const Item& i) { return thing(i) || holds_number(i) || smells_of_data(i, lexicon_) || speaks_of_data(i) || i.has(Class::plan) || i.has(Class::condition) || i.has(Class::order) || i.has(Class::plant); };
    return std::none_of(items.begin(), items.end(), data) && !tells_of_a_deed(items);
}

/// `took the super off and put it back`, `super on, then changed my mind`: what was told last was done and undone, and is
/// taken back. So is the 4 of `h2 and h4 brood on 4 and 3`, which is not of both. True when it was undone.
bool LineReader::undoes_the_last(const std::vector<Item>& items) {
    static constexpr std::array<std::string_view, 10> undoing = {"put it back", "put them back", "put back", "it went back", "they went back", "took it off", "took them off", "changed my mind", "changed our minds", "thought better of it"};
    if (out_->size() <= first_of_sentence_) return false;
    const std::string words = lower(journal_.sources.text(span(items)));
    const bool undone = is_event(out_->back().fact.kind) && std::any_of(undoing.begin(), undoing.end(), [&](std::string_view u) { return words.find(u) != words.npos; });
    const auto alone = [&](const Item& i) { return i.idle() || i.is("and") || bare_number(i) || surface(i) == "respectively" || surface(i) == "resp"; };
    const bool number_alone = std::any_of(items.begin(), items.end(), [](const Item& i) { return bare_number(i); }) && std::all_of(items.begin(), items.end(), alone);
    const bool of_several = out_->back().hives.size() > 1 && (out_->back().fact.value.said() || out_->back().fact.count > 0);
    if (undone || (number_alone && of_several)) take_back(out_->size() - 1);
    return undone;
}

/// What is not read may name the hive or the box that the next clauses are about: `11 formic acid in, 3 skipped, 2 mites in
/// 300`, `lower - 90% capped`.
void LineReader::names_what_follows(const std::vector<Item>& items) {
    const HiveId numbered = numbered_ && items.size() > 1 ? called_by_number(items.front()) : no_hive;
    elsewhere_ = elsewhere_ || (numbered != no_hive && std::find(subject_.hives.begin(), subject_.hives.end(), numbered) == subject_.hives.end());
    std::string_view after = text().substr(span(items).end);
    after.remove_prefix(std::min(after.size(), after.find_first_not_of(' ')));
    boxes_unread_ = boxes_unread_ || after.starts_with(":") || after.starts_with("- ");
}

void LineReader::unread(const std::vector<Item>& items) {
    const Span where = span(items);
    const bool undone = undoes_the_last(items);
    names_what_follows(items);
    std::vector<Item> joined = items;
    chunk(joined, item_context());
    jars_unread_ = jars_unread_ || std::any_of(joined.begin(), joined.end(), [](const Item& i) { return i.what == What::jars; });
    lot_unread_ = lot_unread_ || std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::lot; });
    const auto of_boxes = [](const Item& i) { return i.text == "ordinal" || i.is("top") || i.is("bottom") || i.is("middle") || i.is("second") || i.is("third") || i.is("super") || i.is("box") || i.is("other") || i.is("still on") || i.is("sections") || i.is("cut comb") || i.what == What::box || is_super_kind(i); };
    const auto label_alike = [](const Item& i) {   // S4 stays, 71% full
        const std::size_t digits = i.text.find_first_of("0123456789");
        if (i.what == What::quoted) return i.text.size() <= 6 && i.text.find(' ') == std::string::npos;
        return i.what == What::unknown && digits != std::string::npos && digits > 0 && digits <= 3 && i.text.find_first_not_of("0123456789", digits) == std::string::npos;
    };
    boxes_unread_ = boxes_unread_ || std::any_of(items.begin(), items.end(), of_boxes) || std::any_of(items.begin(), items.end(), label_alike);
    const bool negated = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::negation); });
    const bool doubted = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::doubt) || stop(i, "?"); });
    const auto with_digits = [&](const Item& i) {
        return i.what != What::hives && i.what != What::quoted && journal_.sources.text({file_, i.begin, i.end}).find_first_of("0123456789") != std::string_view::npos;
    };
    elsewhere_ = elsewhere_ || std::any_of(items.begin(), items.end(), [](const Item& i) { return i.is("hived"); });   // hived as s1 at the lane end, 7 seams
    const bool number = !negated && std::any_of(items.begin(), items.end(), with_digits);   // none is passed over in silence
    const auto so_many = [](const Item& i) { return i.has(Class::count) && i.word(Class::count)->number > 1; };
    const auto one_left = [&](const Item& i) { return i.has(Class::count) && &i != items.data() && surface(*(&i - 1)) == "left"; };   // left one open one I liked
    const bool in_words = !negated && std::any_of(items.begin(), items.end(), [&](const Item& i) { return so_many(i) || one_left(i); });
    const bool placed = out_->size() > first_of_line_ && (out_->back().fact.kind == Kind::super_on || out_->back().fact.kind == Kind::drawn) && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::placing); });   // super on, under the odd one
    const bool how_full = boxes_unread_ && std::any_of(items.begin(), items.end(), [](const Item& i) { return i.has(Class::amount) && !i.is("started"); });   // maybe a third full
    const auto any = [&](auto says) { return std::any_of(items.begin(), items.end(), says); };
    const auto is = [](std::string_view term) { return [term](const Item& i) { return i.is(term); }; };
    const bool hive = any_hive(items), counted = any([](const Item& i) { return i.has(Class::count); });
    const bool one_there = hive && any([&](const Item& i) { return says_another(i); });   // and another on h5
    const bool left_on = counted && any(is("still on"));   // honey off, one left on
    // no eggs and super on: is that denied as well?
    const auto link = std::find_if(items.begin(), items.end(), is("and"));
    const auto denied = [](const Item& i) { return i.has(Class::negation); };
    const bool after_denial = link != items.end() && std::any_of(items.begin(), link, denied) && !eventful({items.begin(), link}) && std::none_of(link, items.end(), denied) && (tells_of_a_deed({link, items.end()}) || only_way({link + 1, items.end()}));
    // united with h5 and h4 no eggs: the denial is not of what stands before the hive
    const auto no = std::find_if(items.begin(), items.end(), denied);
    const auto hive_before = std::find_if(items.begin(), no, is_hives);
    const bool deed_before = no != items.end() && surface(*no) == "no" && hive_before != no && std::any_of(items.begin(), hive_before, [](const Item& i) { return i.has(Class::done) && !on_or_off(i); });
    const bool swarmed_before = std::any_of(items.begin(), no, is("swarmed"));   // swarmed no eggs in h4
    const bool each_there = (hive || (items.size() == 2 && counted)) && any([&](const Item& i) { return says_each(i); });   // Gate and Red one each
    const bool count_there = hive && any(is("into")) && (counted || any([](const Item& i) { return i.value.said(); }));   // one of stores into n1
    const bool but_there = hive && any(is("all but"));   // heavy except h5 light
    const bool left_out = !items.empty() && (items[0].is("all but") || (items.size() > 1 && items[0].is("but") && items[1].has(Class::negation))) && out_->size() == first_of_line_ && subject_.several();
    elsewhere_ = elsewhere_ || left_out;   // h1-h5 but not the weak one, fed 2 L
    const bool flagged = number || undone || in_words || left_out || after_denial || deed_before || (swarmed_before && no != items.end() && no != items.begin()) || each_there || count_there || but_there || placed || left_on || one_there || how_full || std::any_of(items.begin(), items.end(), [&](const Item& i) { return smells_of_data(i, lexicon_) || meanings_of(i); }) ||
                         (!negated && (tells_of_a_deed(items) || strange_thing_done(items) || (!doubted && std::any_of(items.begin(), items.end(), speaks_of_data))));
    const bool put_out = negated && eventful(items) && !flagged;
    keep_words(items, Kind::remark, put_out ? Reading::Outcome::put_out : Reading::Outcome::remark, put_out ? surface(*no) : std::string{});
    if (!flagged) return;
    out_->back().fact.detail = "flagged";
    if (unit_missing(items) || two_meanings(items)) return;
    Diagnostic d{"not-understood", Severity::warning, where, fmt::format("not understood: '{}'", journal_.sources.text(where)), "kept as a remark",
                 in_other_words(items), {}};
    for (const Item& i : items) {
        if (i.what != What::unknown) continue;
        const std::string near = lexicon_.nearest(i.text);
        if (near.empty()) continue;
        d.span = {file_, i.begin, i.end};
        d.code = "unknown-word";
        d.label = fmt::format("did you mean '{}'?", near);
        d.hint = fmt::format("write '{}', or put the remark in quotes", near);
        break;
    }
    journal_.diagnostics.push_back(std::move(d));
}

/// A bare number where a weight or a volume stands: kg or lb matters.
bool LineReader::unit_missing(const std::vector<Item>& items) {
    static constexpr std::array<std::string_view, 5> by_weight = {"weighed", "scale", "extracted", "drained", "wax"};
    static constexpr std::array<std::string_view, 4> by_either = {"fed", "syrup", "fondant", "sugar"};
    const auto says = [&](const auto& terms) {
        return std::any_of(items.begin(), items.end(), [&](const Item& i) { return std::any_of(terms.begin(), terms.end(), [&](auto t) { return i.is(t); }); });
    };
    // `top off 22`, and nothing else in it.
    static constexpr std::array<std::string_view, 5> box_off = {"top", "bottom", "super", "off", "taken off"};
    const auto of_box_off = [&](const Item& i) {
        return i.idle() || i.what == What::box || std::any_of(box_off.begin(), box_off.end(), [&](auto t) { return i.is(t); });
    };
    const bool box_came_off = says(std::array{box_off[3], box_off[4]}) && !items.empty() && items.back().what == What::value &&
                              std::all_of(items.begin(), items.end() - 1, of_box_off);
    const bool liquid = says(by_either);
    if (!liquid && !says(by_weight) && !box_came_off) return false;
    for (const Item& i : items) {
        if (i.what != What::value || i.value.unit != Unit::piece) continue;
        const Span where{file_, i.begin, i.end};
        const std::string said(journal_.sources.text(where));
        journal_.diagnostics.push_back({"no-unit", Severity::error, where, fmt::format("'{}' of what?", said), "a number without its unit",
                                        liquid ? fmt::format("write the unit, for example `{} kg`, `{} lb` or `{} L`", said, said, said)
                                               : fmt::format("write the unit, for example `{} kg` or `{} lb`", said, said), {}});
        return true;
    }
    return false;
}

/// A word or abbreviation that means one thing to some and another to others: both said.
bool LineReader::two_meanings(const std::vector<Item>& items) {
    for (const Item& i : items) {
        const grammar::TwoMeanings* row = meanings_of(i);
        if (!row) continue;
        const Span where{file_, i.begin, i.end};
        journal_.diagnostics.push_back({"two-meanings", Severity::warning, where, fmt::format("'{}' can mean {}", journal_.sources.text(where), row->meanings), "which one?",
                                        "write it in full, or put the remark in quotes", {}});
        return true;
    }
    return false;
}

/// More than the whole, more frames than there are: said plainly, whatever else the clause says.
bool LineReader::impossible_share(const std::vector<Item>& items) {
    std::vector<Item> joined = items;
    chunk(joined, item_context());
    for (const Item& i : joined) {
        const bool share = i.what == What::value && i.value.dimension == Dimension::share && i.value.amount > 1000;
        const bool frames = share && i.value.of > 0;
        if (!share) continue;
        const Span where{file_, i.begin, i.end};
        const std::string said(journal_.sources.text(where));
        journal_.diagnostics.push_back({frames ? "too-many-frames" : "share-over-100", Severity::error, where,
                                        frames ? fmt::format("'{}' is more frames than there are", said) : fmt::format("'{}' is more than the whole", said), {},
                                        frames ? "write how many of the frames in the box, for example `7 of 9 frames`" : "write a share from 0% to 100%", {}});
        return true;
    }
    return false;
}

/// `cleared h1-h4, 7 supers home`: seven from each, or seven together?
bool LineReader::each_or_together(const Solution& solution, const std::vector<Item>& items) {
    if (solution.candidates.empty()) return false;
    const Fact& f = solution.candidates.front().fact;
    const bool several = subject_.several();
    const bool counted = f.kind == Kind::super_off && f.count > 0;
    const bool weighed = f.kind == Kind::super_off && f.value.said();
    const bool swapped = f.kind == Kind::boxes_swapped && std::none_of(items.begin(), items.end(), [](const Item& i) { return i.is("top") || i.is("bottom"); });
    const bool stung = f.kind == Kind::stings && solution.candidates.size() == 1 && f.count > 0;
    // two supers on h2 and h3: one on each may be meant
    const bool put = (f.kind == Kind::super_on || f.kind == Kind::brood_box_on) && f.count > 1 && f.count == static_cast<int>(subject_.hives.size());
    if (!several || !(counted || weighed || swapped || stung || put)) return false;
    for (const Item& i : items) {
        if (i.what == What::sign || says_each(i)) return false;
    }
    keep_words(items, Kind::remark, Reading::Outcome::ambiguous, "");
    out_->back().fact.detail = "flagged";
    const std::string said(journal_.sources.text(span(items)));
    journal_.diagnostics.push_back({"each-or-together", Severity::error, span(items), fmt::format("'{}': {}", said, swapped ? "within each of the hives, or between them?" : stung ? "at each of the hives, or together?" : put ? "on each of the hives, or one on each?" : "from each of the hives, or together?"), "which one?",
                                    swapped ? "write `moved top super from h3 to h4`, or a line for each hive" : "add `each`, or write a line for each hive", {}});
    return true;
}

/// Both readings are said; neither is taken.
void LineReader::two_ways(const std::vector<Item>& items, const std::vector<Solution>& ways) {
    keep_words(items, Kind::remark, Reading::Outcome::ambiguous, "");
    out_->back().fact.detail = "flagged";
    Diagnostic d{"two-readings", Severity::error, span(items), fmt::format("'{}' can be read in two ways", journal_.sources.text(span(items))), "which one?", {}, {}};
    const auto say = [&](const Solution& s) {
        std::string said;
        for (const Candidate& c : s.candidates) {
            Fact f = c.fact;
            if (f.hive == no_hive && subject_.hives.size() == 1 && needs_hive(c)) f.hive = subject_.hives.front();
            f.happened = f.noted = context_->noted;
            said += (said.empty() ? "" : ", ") + short_form(journal_, f);
        }
        return said;
    };
    d.hint = fmt::format("write `{}` or `{}`", say(ways[0]), say(ways[1]));
    journal_.diagnostics.push_back(std::move(d));
}

}  // namespace waxtab
