#include "facts/lexicon.hpp"

#include <algorithm>
#include <array>

#include "facts/tokens.hpp"

namespace waxtab {

namespace {

bool all_digits(std::string_view text) {
    return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

/// The singular forms under which a plural may be listed.
std::vector<std::string> singulars(const std::string& word) {
    std::vector<std::string> forms{word};
    if (word == "ones") return forms;   // the good ones: not one
    if (word.ends_with("'s")) forms.push_back(word.substr(0, word.size() - 2));
    if (word.size() > 2 && word.ends_with('s')) forms.push_back(word.substr(0, word.size() - 1));
    const auto hisses = [&] { const char c = word[word.size() - 3]; return c == 's' || c == 'x' || c == 'z' || c == 'h' || c == 'o'; };
    if (word.size() > 4 && word.ends_with("es") && hisses()) forms.push_back(word.substr(0, word.size() - 2));
    if (word.size() > 3 && word.ends_with("ies")) forms.push_back(word.substr(0, word.size() - 3) + "y");
    return forms;
}

bool same_word(const std::string& said, const std::string& listed) {
    if (said == listed) return true;
    const auto forms = singulars(said);
    return std::find(forms.begin(), forms.end(), listed) != forms.end();
}

}  // namespace

std::vector<std::string> parts_of(std::string_view text, char separator) {
    std::vector<std::string> parts;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find(separator, begin), text.size());
        if (end > begin) parts.emplace_back(text.substr(begin, end - begin));
        begin = end + 1;
    }
    return parts;
}

std::vector<std::string> words_of(std::string_view text) { return parts_of(text, ' '); }

std::string hive_key(std::string_view name) {
    std::string key = lower(name);
    if (key.starts_with('#')) key.insert(0, "hive ");
    const auto words = words_of(key);
    if (words.size() == 2 && !words[1].empty()) {
        const bool generic = words[0] == "hive" || words[0] == "no." || words[0] == "no" || words[0] == "colony" || words[0] == "h";
        const std::string rest = words[1][0] == '#' ? words[1].substr(1) : words[1];
        if (generic && !rest.empty() && rest.size() <= 4) return "h" + rest;
    }
    if (all_digits(key)) return "h" + key;
    if (key.size() > 1 && all_digits(key.substr(0, key.size() - 1)) && key.back() >= 'a' && key.back() <= 'z') return "h" + key;
    return key;
}

std::size_t edit_distance(std::string_view a, std::string_view b) {
    std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i) d[i][0] = i;
    for (std::size_t j = 0; j <= b.size(); ++j) d[0][j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i)
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t change = d[i - 1][j - 1] + (a[i - 1] != b[j - 1]);
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, change});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

namespace {

/// A hyphen inside a word counts as a blank.
std::string without_hyphens(std::string_view surface) {
    std::string plain(surface);
    for (std::size_t i = 1; i + 1 < plain.size(); ++i)
        if (plain[i] == '-') plain[i] = ' ';
    return plain;
}

}  // namespace

void Lexicon::add_to(std::vector<Entry>& entries, Entry entry) {
    const auto same = std::find_if(entries.begin(), entries.end(), [&](const Entry& e) { return e.words == entry.words; });
    if (same == entries.end()) {
        entries.push_back(std::move(entry));
        return;
    }
    Meaning& known = same->meaning;
    const Meaning& meaning = entry.meaning;
    for (const grammar::Word* w : meaning.words)
        if (std::find(known.words.begin(), known.words.end(), w) == known.words.end()) known.words.push_back(w);
    if (meaning.hive != no_hive) known.hive = meaning.hive;
    if (meaning.yard != no_yard) known.yard = meaning.yard;
    if (!meaning.box_kind.empty()) known.box_kind = meaning.box_kind;
}

const Lexicon::Entries& Lexicon::vocabulary() {
    static const Entries entries = [] {
        Entries out;
        for (const grammar::Word& row : grammar::words) {
            Meaning meaning;
            meaning.words = {&row};
            if (row.klass == grammar::Class::box_kind) meaning.box_kind = row.term;
            for (const std::string& surface : parts_of(row.surfaces, '|')) {
                std::vector<std::string> words = words_of(without_hyphens(surface));
                if (words.empty()) continue;
                meaning.length = words.size();
                std::vector<Entry>& bucket = out[words.front()];
                add_to(bucket, {std::move(words), meaning});
            }
        }
        return out;
    }();
    return entries;
}

const std::vector<Lexicon::Entry>* Lexicon::beginning_with(std::string_view first) const {
    if (const auto named = names_.find(first); named != names_.end()) return &named->second;
    const auto known = vocabulary().find(first);
    return known == vocabulary().end() ? nullptr : &known->second;
}

void Lexicon::add(std::string_view surface, const Meaning& meaning) {
    Entry entry{words_of(without_hyphens(surface)), meaning};
    if (entry.words.empty()) return;
    entry.meaning.length = entry.words.size();
    const std::string first = entry.words.front();
    if (!names_.contains(first)) {
        const std::vector<Entry>* known = beginning_with(first);
        names_[first] = known ? *known : std::vector<Entry>{};
    }
    add_to(names_[first], std::move(entry));
}

void Lexicon::add_hive(std::string_view name, HiveId id) {
    Meaning meaning;
    meaning.hive = id;
    const std::string key = hive_key(name);
    hives_.emplace(key, id);
    hives_.emplace(lower(name), id);
    add(key, meaning);
    if (lower(name) != key && !all_digits(name)) add(lower(name), meaning);
}

void Lexicon::add_yard(std::string_view name, YardId id) {
    Meaning meaning;
    meaning.yard = id;
    yards_.emplace(lower(name), id);
    add(lower(name), meaning);
}

void Lexicon::add_box_kind(std::string_view name) {
    Meaning meaning;
    meaning.box_kind = lower(name);
    add(meaning.box_kind, meaning);
}

/// Every entry of the greatest length that starts here: the word as written, and its singular.
std::vector<const Lexicon::Entry*> Lexicon::longest(const std::vector<std::string>& words, std::size_t at) const {
    std::vector<const Entry*> best;
    for (const std::string& first : singulars(words[at])) {
        const std::vector<Entry>* found = beginning_with(first);
        if (!found) continue;
        for (const Entry& entry : *found) {
            if (at + entry.words.size() > words.size()) continue;
            if (!best.empty() && entry.words.size() < best.front()->words.size()) continue;
            bool all = true;
            for (std::size_t i = 1; i < entry.words.size() && all; ++i) all = same_word(words[at + i], entry.words[i]);
            if (!all) continue;
            if (!best.empty() && entry.words.size() > best.front()->words.size()) best.clear();
            best.push_back(&entry);
        }
    }
    return best;
}

Meaning Lexicon::find(const std::vector<std::string>& words, std::size_t at) const {
    Meaning all;
    for (const Entry* entry : longest(words, at)) {
        all.length = entry->meaning.length;
        for (const grammar::Word* w : entry->meaning.words)
            if (std::find(all.words.begin(), all.words.end(), w) == all.words.end()) all.words.push_back(w);
        if (all.hive == no_hive) all.hive = entry->meaning.hive;
        if (all.yard == no_yard) all.yard = entry->meaning.yard;
        if (all.box_kind.empty()) all.box_kind = entry->meaning.box_kind;
    }
    return all;
}

void Lexicon::add_label(std::string_view name) {
    const std::string key = lower(name);
    const std::size_t digits = key.find_first_of("0123456789");
    const bool plain = digits != key.npos && digits > 0 && digits <= 3 && key.find_first_not_of("0123456789", digits) == key.npos &&
                       key.find_first_not_of("abcdefghijklmnopqrstuvwxyz") == digits;
    if (plain && key.size() <= 6 && hive(key) == no_hive) labels_.emplace(key, name);
}

std::string Lexicon::label(std::string_view lower_name) const {
    const auto found = labels_.find(lower_name);
    return found == labels_.end() ? std::string{} : found->second;
}

bool Lexicon::labels_begin_with(std::string_view stem) const {
    const auto at = labels_.lower_bound(stem);
    return at != labels_.end() && at->first.starts_with(stem) && at->first.find_first_not_of("0123456789", stem.size()) == std::string::npos;
}

HiveId Lexicon::hive(std::string_view lower_name) const {
    const auto found = hives_.find(hive_key(lower_name));
    return found == hives_.end() ? no_hive : found->second;
}

YardId Lexicon::yard(std::string_view lower_name) const {
    const auto found = yards_.find(lower_name);
    return found == yards_.end() ? no_yard : found->second;
}

bool Lexicon::unknown(std::string_view lower_word) const {
    for (const std::string& form : singulars(std::string(lower_word)))
        if (beginning_with(form)) return false;
    return true;
}

namespace {

/// Classes a slip of the finger is worth pointing out for.
bool worth_suggesting(const Meaning& meaning) {
    using grammar::Class;
    for (const grammar::Word* w : meaning.words)
        if (w->klass == Class::thing || w->klass == Class::done || w->klass == Class::state || w->klass == Class::combing || w->klass == Class::amount ||
            w->klass == Class::box_kind || w->klass == Class::substance || w->klass == Class::food || w->klass == Class::placing || w->klass == Class::plant)
            return true;
    return false;
}

/// Near enough to be a slip: for short words a letter lost, doubled or two changed round, never one put
/// for another (gate is not gave); from eight letters on two slips.
bool slip(std::string_view said, std::string_view known) {
    if (said.front() != known.front()) return false;
    const std::size_t distance = edit_distance(said, known);
    if (said.size() >= 8) return distance <= 2;
    if (distance != 1) return false;
    if (said.size() > 5 || said.size() != known.size()) return true;
    std::size_t differ = 0;
    for (std::size_t i = 0; i < said.size(); ++i) differ += said[i] != known[i];
    return differ == 2;
}

}  // namespace

std::string Lexicon::nearest(std::string_view lower_word) const {
    // words of every day that are near a word of the trade and no slip of it
    static constexpr std::array<std::string_view, 14> no_slips = {"having", "patch", "draw", "place", "room", "settling", "cleaned", "socks", "supplied", "followers", "house", "likely", "nicely", "running"};
    if (lower_word.size() < 4 || std::find(no_slips.begin(), no_slips.end(), lower_word) != no_slips.end()) return {};
    std::string best;   // the longest, for more letters are lost than put in (caped: capped, not capd); then the first of the alphabet
    const auto likelier = [&](const std::string& known) { return best.empty() || known.size() > best.size() || (known.size() == best.size() && known < best); };
    const auto look_at = [&](const std::string& first, const std::vector<Entry>& entries) {
        if (first.size() < 4 || !likelier(first)) return;
        for (const Entry& entry : entries)
            if (entry.words.size() == 1 && worth_suggesting(entry.meaning) && slip(lower_word, first)) best = first;
    };
    for (const auto& [first, entries] : vocabulary())
        if (!names_.contains(first)) look_at(first, entries);
    for (const auto& [first, entries] : names_) look_at(first, entries);
    if (best.empty() && lower_word.size() > 4 && lower_word.ends_with('s')) return nearest(lower_word.substr(0, lower_word.size() - 1));   // suprs
    return best;
}

std::string Lexicon::nearest_hive(std::string_view lower_name) const {
    const std::string key = hive_key(lower_name);
    std::string best;
    std::size_t least = key.size() < 5 ? 2 : 3;
    for (const auto& [name, id] : hives_) {
        const std::size_t distance = edit_distance(key, name);
        if (distance < least) least = distance, best = name;
    }
    return best;
}

}  // namespace waxtab
