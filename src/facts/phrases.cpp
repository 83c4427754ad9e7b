#include "facts/phrases.hpp"

#include <array>

#include <fmt/format.h>

namespace waxtab {

std::string quoted(std::string_view text) {
    std::string out = "\"";
    for (std::size_t i = 0; i < text.size(); ++i) {
        const std::string_view rest = text.substr(i);
        const std::size_t smart = rest.starts_with("\xE2\x80\x9C") || rest.starts_with("\xE2\x80\x9D") || rest.starts_with("\xE2\x80\x9E") ? 3
                                  : rest.starts_with("\xC2\xAB") || rest.starts_with("\xC2\xBB") ? 2 : 0;
        if (smart) out.append(rest.substr(0, smart)).append(rest.substr(0, smart)), i += smart - 1;
        else if (text[i] == '"') out += "\"\"";
        else out += text[i];
    }
    return out + '"';
}

std::string plural(int n, std::string_view noun) { return n < 0 ? std::string(noun) : n == 1 ? fmt::format("1 {}", noun) : fmt::format("{} {}s", n, noun); }

std::string box_words(const BoxChoice& b) {
    switch (b.by) {
        case BoxChoice::By::unsaid: return {};
        case BoxChoice::By::sole: return b.role == Role::brood ? "brood box" : "super";
        case BoxChoice::By::top: return "top super";
        case BoxChoice::By::bottom: return "bottom super";
        case BoxChoice::By::middle: return "middle super";
        case BoxChoice::By::number: return fmt::format("super {}", static_cast<int>(b.number));
        case BoxChoice::By::label: return "super " + quoted(b.label);
        case BoxChoice::By::all: return "all supers";
        case BoxChoice::By::top_n: return fmt::format("top {} supers", static_cast<int>(b.number));
    }
    return {};
}

std::string_view telling_comb(Comb comb) {
    return comb == Comb::sections ? "section" : comb == Comb::cut_comb ? "cut comb" : comb == Comb::strips ? "starter strips" : "";
}

std::string short_box(const Fact& f) {
    const BoxChoice& b = f.box;
    if (b.by == BoxChoice::By::sole && !telling_comb(f.comb).empty()) return std::string(telling_comb(f.comb)) + " super";
    if (b.by == BoxChoice::By::top) return "top";
    if (b.by == BoxChoice::By::bottom) return "bottom";
    return box_words(b);
}

std::string comb_words(const Fact& f) {
    static constexpr std::array<std::string_view, 8> names = {"", "drawn", "foundation", "wet", "starter strips", "cut comb", "sections", "mixed"};
    const std::string_view name = names[static_cast<std::size_t>(f.comb)];
    if (f.frames <= 0) return std::string(name);
    if (name.empty()) return fmt::format("{} frames", f.frames);
    return name.find(' ') == name.npos ? fmt::format("{}{}", name, f.frames) : fmt::format("{} {} frames", name, f.frames);
}

std::string_view place_words(Placing p) {
    static constexpr std::array<std::string_view, 4> names = {"", "over", "under", "between"};
    return names[static_cast<std::size_t>(p)];
}

std::string count_text(const Measure& m) {
    if (m.high == INT64_MAX) return "at least " + number_text(m);
    if (m.about) return "about " + number_text(m);
    const auto whole = [](std::int64_t thousandths) { return std::to_string(thousandths / 1000); };
    const bool range = m.low < m.amount && m.amount < m.high && m.low % 1000 == 0 && m.high % 1000 == 0;
    return range ? whole(m.low) + '-' + whole(m.high) : number_text(m);
}

std::string share_words(const Measure& m) {
    if (m.dimension == Dimension::count) return count_text(m) + (m.unit == Unit::frame || m.unit == Unit::piece ? " frames" : "");
    const bool at_least = m.low == m.amount && m.high > m.amount && m.unit != Unit::fraction;
    if (m.unit == Unit::fraction) {
        static constexpr std::pair<int, std::string_view> words[] = {{0, "empty"}, {70, "nearly empty"}, {100, "started"}, {250, "a quarter"}, {333, "a third"}, {500, "half"},
            {667, "two thirds"}, {750, "mostly"}, {900, "nearly"}, {1000, "fully"}};
        for (const auto& [amount, word] : words)
            if (m.amount == amount && (amount != 750 || (m.low == 600 && m.high == 900))) return std::string(m.about ? "about " : "") + std::string(word);
        if (m.amount == 750) return m.about ? "about three quarters" : "three quarters";
    }
    std::string text = text_of(m);
    if (m.unit == Unit::of_frames && m.of > 0) text += " frames";
    if (m.low < m.amount && m.amount < m.high && m.about && m.amount - m.low == m.high - m.amount && m.high - m.amount == 100) text = "about " + number_text(m) + (m.unit == Unit::percent ? "%" : "");
    if (m.about && text.find("about") == text.npos) text = "about " + text;
    return at_least ? "at least " + text : text;
}

std::string jars_words(const Fact& f) {
    if (f.count < 0) return text_of(f.value);
    return f.value.said() ? fmt::format("{} x {}", f.count, text_of(f.value)) : plural(f.count, "jar");
}

std::string_view comb_noun(const Fact& f) { return f.comb == Comb::cut_comb ? "piece" : "section"; }

std::string lot_words(const Fact& f) { return f.lot.empty() ? std::string{} : "lot " + f.lot; }

std::string free_words(std::string_view preposition, const std::string& text) { return text.empty() ? std::string{} : fmt::format("{} {}", preposition, quoted(text)); }

std::string ordinal(int n) {
    const bool teen = n % 100 >= 11 && n % 100 <= 13;
    return fmt::format("{}{}", n, teen ? "th" : n % 10 == 1 ? "st" : n % 10 == 2 ? "nd" : n % 10 == 3 ? "rd" : "th");
}

}  // namespace waxtab
