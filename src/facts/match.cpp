#include "facts/match.hpp"

#include <algorithm>

#include "facts/chunk.hpp"
#include "facts/lexicon.hpp"
#include "facts/slots.hpp"

namespace waxtab {

using grammar::Class;
using What = Item::What;

namespace {

std::string shape_of(const std::vector<Item>& items) {
    std::string shape;
    for (const Item& i : items) {
        shape += static_cast<char>('a' + static_cast<int>(i.what));
        shape += static_cast<char>('0' + static_cast<int>(i.role));
        if (i.counted) shape += '#';
        if (i.loose) shape += '~';
        switch (i.what) {
            case What::term:
                for (const grammar::Word* w : i.words) shape += w->term, shape += '|';
                shape += i.box_kind;
                shape += i.text == "ordinal" ? "nth" : "";
                if (i.what == What::term && i.is("under box")) shape += static_cast<char>('A' + static_cast<int>(i.box.by));
                break;
            case What::value: shape += i.text == "nth" ? "nth" : ""; shape += static_cast<char>('A' + static_cast<int>(i.value.dimension)); shape += static_cast<char>('A' + static_cast<int>(i.value.unit)); break;
            case What::slash: case What::ratio: shape += whole_share(i) ? 'w' : i.m >= 50 ? 's' : i.m <= 2 && i.n <= 2 ? 'r' : 'o'; break;
            case What::box: shape += static_cast<char>('A' + static_cast<int>(i.box.role)); shape += i.box2.by == BoxChoice::By::unsaid ? '1' : '2'; shape += i.text == "ordinal" ? "n" : ""; break;
            case What::sign: case What::stop: case What::unknown: shape += i.text; break;
            case What::lot: shape += i.lots.size() == 1 ? '1' : 'n'; break;
            default: break;
        }
        shape += ' ';
    }
    return shape;
}

}  // namespace

bool same_content(const Fact& a, const Fact& b) {
    return a.kind == b.kind && a.hive == b.hive && a.other == b.other && a.yard == b.yard && a.box == b.box && a.box2 == b.box2 &&
           a.placing == b.placing && a.comb == b.comb && a.frames == b.frames && a.count == b.count && a.count_range == b.count_range && a.value == b.value &&
           a.second == b.second && a.detail == b.detail && a.manner == b.manner && a.box_kind == b.box_kind && a.text == b.text && a.at_place == b.at_place &&
           a.lot == b.lot && a.hives == b.hives && a.lots == b.lots;
}

Matcher::Element Matcher::compile_element(std::string_view text) {
    Element element;
    if (text.ends_with('?')) element.optional = true, text.remove_suffix(1);
    if (text.ends_with('+') && text.size() > 1) element.several = true, text.remove_suffix(1);
    for (std::string part : parts_of(text, '|')) {
        Alternative alternative;
        if (part.starts_with('@')) element.text = true, part.erase(0, 1);
        while (part.ends_with('#')) ++alternative.counted, part.pop_back();
        alternative.slot = slot_of(part);
        if (alternative.slot < 0) {
            std::replace(part.begin(), part.end(), '_', ' ');
            alternative.term = part;
        }
        element.any.push_back(alternative);
    }
    return element;
}

Matcher::Row Matcher::compile(const grammar::ReadingRow& row) {
    Row out;
    for (const std::string& part : parts_of(row.pattern, ' ')) out.elements.push_back(compile_element(part));
    for (const std::string& part : parts_of(row.fields, ' ')) {
        const std::size_t equals = part.find('=');
        std::string value = equals == part.npos ? std::string{} : part.substr(equals + 1);
        std::replace(value.begin(), value.end(), '_', ' ');
        out.fields.emplace_back(part.substr(0, equals), value);
    }
    return out;
}

const std::vector<Matcher::Row>& Matcher::compiled() {
    static const std::vector<Row> rows = [] {
        std::vector<Row> out;
        for (const grammar::ReadingRow& row : grammar::reading_rows) out.push_back(compile(row));
        return out;
    }();
    return rows;
}

bool Matcher::accepts(const Alternative& a, const Item& item) const {
    if (a.slot >= 0) {
        if (item.counted && a.slot != FRAMES && a.slot != COMB && a.counted == 0) return false;
        if (a.counted == 2 && !item.counted) return false;
        return slot_accepts(a.slot, item);
    }
    if (item.counted ? a.counted == 0 : a.counted == 2) return false;
    if (a.term == "+" || a.term == "-") return item.what == What::sign && item.text == a.term;
    if (a.term == "over state") return item.what == What::term && item.is("over");
    if (a.term == "super" && item.is("box")) return item.what == What::term;
    return item.what == What::term && item.is(a.term);
}

bool Matcher::accepts(const Element& element, const Item& item) const {
    return std::any_of(element.any.begin(), element.any.end(), [&](const Alternative& a) { return accepts(a, item); });
}

bool Matcher::plausible(const Row& row, const std::vector<Item>& items) const {
    for (const Element& e : row.elements)
        if (!e.optional && std::none_of(items.begin(), items.end(), [&](const Item& i) { return accepts(e, i); })) return false;
    bool text = std::any_of(row.elements.begin(), row.elements.end(), [](const Element& e) { return e.text; });
    for (const Item& i : items)
        if (!i.idle() && !text && std::none_of(row.elements.begin(), row.elements.end(), [&](const Element& e) { return accepts(e, i); }))
            return false;
    return true;
}

void Matcher::search(const Row& row, const std::vector<Item>& items, std::size_t at, unsigned used, Assignment& so_far,
                     std::vector<Assignment>& found) const {
    if (at == items.size()) {
        for (std::size_t e = 0; e < row.elements.size(); ++e)
            if (!row.elements[e].optional && !(used >> e & 1u)) return;
        found.push_back(so_far);
        return;
    }
    const Item& item = items[at];
    for (std::size_t e = 0; e < row.elements.size(); ++e) {
        const Element& element = row.elements[e];
        if (((used >> e & 1u) && !element.several) || !accepts(element, item)) continue;
        so_far[at] = static_cast<int>(e);
        if (!element.text) {
            search(row, items, at + 1, used | 1u << e, so_far, found);
            continue;
        }
        // The free words after the preposition: up to the next amount, hive or lot, at least one.
        std::size_t end = at + 1;
        const bool numbered = item.is("batch"), on_frames = item.is("on") || item.is("in") || item.is("across");
        while (end < items.size() && (!items[end].counted || (on_frames && (items[end].is("frame") || items[end].is("brood box") || items[end].is("box") || !items[end].box_kind.empty()))) && !items[end].loose && ((numbered && items[end].what == What::value) || (items[end].what == What::hives && item.is("renamed")) || (items[end].what == What::term && !items[end].is("business")) || items[end].what == What::unknown || items[end].what == What::quoted || (items[end].what == What::stop && items[end].text == "'") ||
                                      items[end].what == What::yard)) ++end;
        // The longest run that leaves the rest readable.
        const std::size_t before = found.size();
        for (; end > at + 1 && found.size() == before; --end) {
            if (items[end - 1].has(Class::link)) continue;   // what follows a link is said for itself
            std::fill(so_far.begin() + static_cast<std::ptrdiff_t>(at), so_far.begin() + static_cast<std::ptrdiff_t>(end), static_cast<int>(e));
            search(row, items, end, used | 1u << e, so_far, found);
        }
    }
    so_far[at] = -1;
    if (item.idle()) search(row, items, at + 1, used, so_far, found);
}

std::string_view Matcher::nearest_example(const std::vector<Item>& items) const {
    std::string_view nearest;
    int most = 0;
    for (std::size_t r = 0; r < compiled().size(); ++r) {
        if (grammar::reading_rows[r].example.empty()) continue;
        int score = 0;
        const auto& elements = compiled()[r].elements;
        for (const Item& i : items) {
            if (i.idle() || i.what == What::hives || i.what == What::unknown) continue;
            const bool fits = std::any_of(elements.begin(), elements.end(), [&](const Element& e) { return !e.text && accepts(e, i); });
            const bool small = i.is("on") || i.is("in") || i.is("off") || i.is("out") || i.has(Class::preposition) || i.has(Class::link);
            score += fits ? (small ? 1 : 3) : small ? 0 : i.what == What::value || i.what == What::slash ? -3 : -1;
        }
        for (const Element& e : elements)
            if (!e.optional && std::none_of(items.begin(), items.end(), [&](const Item& i) { return accepts(e, i); })) score -= 2;
        if (score > most) most = score, nearest = grammar::reading_rows[r].example;
    }
    return nearest;
}

std::vector<Matcher::Found> Matcher::match(const std::vector<Item>& items) const {
    std::vector<Found> found;
    for (std::size_t r = 0; r < compiled().size(); ++r) {
        if (!plausible(compiled()[r], items)) continue;
        std::vector<Assignment> ways;
        Assignment so_far(items.size(), -1);
        search(compiled()[r], items, 0, 0, so_far, ways);
        for (Assignment& way : ways) found.push_back({r, std::move(way)});
    }
    return found;
}

Candidate Matcher::build(const Found& found, const std::vector<Item>& items, std::string_view file_text, const ItemContext& context) const {
    const Row& row = compiled()[found.row];
    Candidate c;
    c.row = found.row;
    c.fact.kind = grammar::reading_rows[found.row].kind;
    std::string count_into = "count";
    for (const auto& [name, value] : row.fields)
        if (name == "n:value") count_into = "value";
    Filler filler{c, context};
    for (std::size_t e = 0; e < row.elements.size(); ++e) {
        const Element& element = row.elements[e];
        std::uint32_t text_begin = 0, text_end = 0;
        bool first = true;
        for (std::size_t i = 0; i < items.size(); ++i) {
            if (found.assignment[i] != static_cast<int>(e)) continue;
            if (element.text) {
                if (first) text_begin = items[i].end;
                else text_end = items[i].end;
                first = false;
                continue;
            }
            for (const Alternative& a : element.any) {
                if (!accepts(a, items[i])) continue;
                if (a.slot >= 0) filler.fill(a.slot, items[i], count_into);
                else if (a.counted > 0) filler.count_of(items[i], count_into);
                break;
            }
        }
        if (element.text && text_end > text_begin) {
            std::string_view text = file_text.substr(text_begin, text_end - text_begin);
            while (text.starts_with(' ')) text.remove_prefix(1);
            c.fact.text = std::string(text);
            if (c.fact.text.starts_with('"') && c.fact.text.ends_with('"') && c.fact.text.size() > 1) std::erase(c.fact.text, '"');
        }
    }
    for (const auto& [name, value] : row.fields) apply_field(c, name, value);
    finish(c, items);
    // moved super from h5 to h6: the giver named, the line's hive unsaid
    for (const auto& [name, value] : row.fields) {
        if (name != "give") continue;
        for (const Item& i : items) {
            if (i.what != What::hives || i.hives.empty()) continue;
            if (i.role == Item::Role::from) c.fact.hive = i.hives.front(), c.hive_named = true;
            if (i.role == Item::Role::to || i.role == Item::Role::into) c.fact.other = i.hives.front();
        }
    }
    return c;
}

std::vector<Candidate> Matcher::read(const std::vector<Item>& items, std::string_view file_text, const ItemContext& context) {
    std::vector<Candidate> out;
    if (items.empty() || items.size() > 16) return out;
    const std::string shape = shape_of(items);
    auto known = shapes_.find(shape);
    if (known == shapes_.end()) known = shapes_.emplace(shape, match(items)).first;
    for (const Found& found : known->second) {
        Candidate c = build(found, items, file_text, context);
        if (c.in_part) continue;
        // Only honey comes from several hives at once; else one of them would be lost.
        const bool several = std::any_of(items.begin(), items.end(), [](const Item& i) { return i.what == What::hives && i.role != Item::Role::none && i.hives.size() > 1; });
        if (several && c.fact.kind != Kind::extracted) continue;
        const auto seen = std::find_if(out.begin(), out.end(), [&](const Candidate& o) { return same_content(o.fact, c.fact) && o.after_cells == c.after_cells; });
        if (seen == out.end()) out.push_back(std::move(c));
        else if (seen->carries_box && !c.carries_box) *seen = std::move(c);   // what needs nothing said before holds more often
    }
    // After `treated with` stands any name; a known substance is that substance.
    const auto treated = [](const Candidate& c) { return c.fact.kind == Kind::treatment && !c.fact.detail.empty(); };
    if (std::any_of(out.begin(), out.end(), treated)) std::erase_if(out, [](const Candidate& c) { return c.fact.kind == Kind::treatment && c.fact.detail.empty(); });
    return out;
}

}  // namespace waxtab
