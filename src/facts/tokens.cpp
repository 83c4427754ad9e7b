#include "facts/tokens.hpp"

#include <algorithm>
#include <array>
#include <charconv>

#include "rules.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

/// A line in plain characters, and for each of its bytes the byte of the file it came from.
struct Plain {
    std::string text;
    std::vector<std::uint32_t> origin;   ///< one longer than text
};

/// How a character that phones and keyboards write is written plainly; nullptr: as it is.
const char* plain_form(char32_t c) {
    switch (c) {
        case 0x00A0: case 0x2007: case 0x202F: case 0x2009: case 0x2002: case 0x2003: return " ";
        case 0x2018: case 0x2019: case 0x02BC: case 0x00B4: return "'";
        case 0x201C: case 0x201D: case 0x201E: case 0x00AB: case 0x00BB: return "\"";
        case 0x2010: case 0x2011: case 0x2012: case 0x2013: case 0x2014: case 0x2212: return "-";
        case 0x2192: return "->";
        case 0x00BD: return "1/2";
        case 0x00BC: return "1/4";
        case 0x00BE: return "3/4";
        case 0x2153: return "1/3";
        case 0x2154: return "2/3";
        case 0x00B0: case 0x00BA: return "deg";
        case 0x00D7: return "x";
        case 0x2248: return "~";
        case 0x2026: return "...";
        case 0x2022: return "*";
        default: return nullptr;
    }
}

Plain plain(std::string_view line, std::uint32_t offset) {
    Plain out;
    for (std::size_t at = 0; at < line.size();) {
        const auto start = static_cast<std::uint32_t>(at);
        const char32_t c = next_character(line, at);
        const char* form = plain_form(c);
        std::string piece = form ? form : std::string(line.substr(start, at - start));
        // 1½ is one and a half.
        if (form && piece[1] == '/' && !out.text.empty() && out.text.back() >= '0' && out.text.back() <= '9')
            piece.insert(0, " ");
        out.text += piece;
        out.origin.insert(out.origin.end(), piece.size(), offset + start);
    }
    out.origin.push_back(offset + static_cast<std::uint32_t>(line.size()));
    return out;
}

/// What the rules fill in while one line is read.
struct Builder {
    const Plain* plain = nullptr;
    std::string_view line;
    std::vector<Token> tokens;
    std::string number, high;
    bool at_least = false, comma = false;
    Unit unit = Unit::none;
    std::int64_t unit_times = 1, unit_per = 1;
    bool scale_unsaid = false, gallon_unsaid = false;
    std::string whole, numerator, denominator;

    void clear() {
        const Plain* keep = plain;
        const std::string_view keep_line = line;
        std::vector<Token> kept = std::move(tokens);
        *this = Builder{};
        plain = keep;
        line = keep_line;
        tokens = std::move(kept);
    }
    /// The words between quotes as they were written, doubled quote marks made single.
    std::string written_between(std::uint32_t begin, std::uint32_t end) const {
        std::string_view raw = line.substr(begin - plain->origin.front(), end - begin);
        std::string out;
        const auto mark = [](std::string_view s) -> std::size_t {
            if (s.starts_with('"')) return 1;
            if (s.starts_with("\xC2\xAB") || s.starts_with("\xC2\xBB")) return 2;
            return s.starts_with("\xE2\x80\x9C") || s.starts_with("\xE2\x80\x9D") || s.starts_with("\xE2\x80\x9E") ? 3 : 0;
        };
        raw.remove_prefix(mark(raw));
        while (!raw.empty()) {
            const std::size_t m = mark(raw);
            if (m && raw.size() == m) break;
            const std::size_t step = m ? m : 1;
            out.append(raw.substr(0, step));
            raw.remove_prefix(step);
            if (m && mark(raw)) raw.remove_prefix(mark(raw));
        }
        return out;
    }
    template <typename Input>
    Token& push(const Input& in, Token::Type type) {
        const std::size_t begin = static_cast<std::size_t>(in.begin() - plain->text.data());
        const std::size_t end = static_cast<std::size_t>(in.end() - plain->text.data());
        Token t;
        t.type = type;
        t.begin = plain->origin[begin];
        t.end = plain->origin[end];
        t.raw = plain->text.substr(begin, end - begin);
        t.text = lower(t.raw);
        if (t.raw == t.text) t.raw.clear();
        const auto blank = [&](std::size_t i) { return plain->text[i] == ' ' || plain->text[i] == '\t'; };
        t.space_before = begin == 0 || blank(begin - 1);
        t.space_after = end >= plain->text.size() || blank(end);
        return tokens.emplace_back(std::move(t));
    }
};

int to_int(std::string_view digits) {
    int value = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return value;
}

void scale(Measure& m, std::int64_t times, std::int64_t per) {
    m.amount = m.amount * times / per;
    m.low = m.low * times / per;
    m.high = m.high * times / per;
}

Measure value_of(const Builder& b) {
    const Unit unit = b.unit == Unit::none ? Unit::piece : b.unit;
    Measure m = measure(b.number, unit).value_or(Measure{});
    if (!b.high.empty()) {
        const Measure top = measure(b.high, unit).value_or(Measure{});
        m.high = std::max(m.amount, top.amount);
        m.low = std::min(m.amount, top.amount);
        m.amount = (m.low + m.high) / 2;
    }
    if (b.at_least) m.high = m.dimension == Dimension::share ? 1000 : INT64_MAX;
    if (b.unit_times != 1 || b.unit_per != 1) scale(m, b.unit_times, b.unit_per);
    return m;
}

namespace g = grammar;

template <typename Rule>
struct action : tao::pegtl::nothing<Rule> {};

template <Unit U>
struct sets_unit {
    static void apply0(Builder& b) { b.unit = U; }
};
template <> struct action<g::u_percent> : sets_unit<Unit::percent> {};
template <> struct action<g::u_kilogram> : sets_unit<Unit::kilogram> {};
template <> struct action<g::u_gram> : sets_unit<Unit::gram> {};
template <> struct action<g::u_pound> : sets_unit<Unit::pound> {};
template <> struct action<g::u_ounce> : sets_unit<Unit::ounce> {};
template <> struct action<g::u_tonne> : sets_unit<Unit::tonne> {};
template <> struct action<g::u_litre> : sets_unit<Unit::litre> {};
template <> struct action<g::u_millilitre> : sets_unit<Unit::millilitre> {};
template <> struct action<g::u_us_gallon> : sets_unit<Unit::us_gallon> {};
template <> struct action<g::u_imp_gallon> : sets_unit<Unit::imperial_gallon> {};
template <> struct action<g::u_us_quart> : sets_unit<Unit::us_quart> {};
template <> struct action<g::u_imp_quart> : sets_unit<Unit::imperial_quart> {};
template <> struct action<g::u_us_pint> : sets_unit<Unit::us_pint> {};
template <> struct action<g::u_imp_pint> : sets_unit<Unit::imperial_pint> {};
template <> struct action<g::u_celsius> : sets_unit<Unit::celsius> {};
template <> struct action<g::u_fahrenheit> : sets_unit<Unit::fahrenheit> {};
template <> struct action<g::u_day> : sets_unit<Unit::day> {};
template <> struct action<g::u_gallon> {
    static void apply0(Builder& b) { b.unit = Unit::us_gallon, b.gallon_unsaid = true; }
};
template <> struct action<g::u_quart> {
    static void apply0(Builder& b) { b.unit = Unit::us_quart, b.gallon_unsaid = true; }
};
template <> struct action<g::u_pint> {
    static void apply0(Builder& b) { b.unit = Unit::us_pint, b.gallon_unsaid = true; }
};
template <> struct action<g::u_degree> {
    static void apply0(Builder& b) { b.unit = Unit::celsius, b.scale_unsaid = true; }
};
template <> struct action<g::u_week> {
    static void apply0(Builder& b) { b.unit = Unit::day, b.unit_times = 7; }
};
template <> struct action<g::u_hour> {
    static void apply0(Builder& b) { b.unit = Unit::day, b.unit_per = 24; }
};
template <> struct action<g::comma> {
    static void apply0(Builder& b) { b.comma = true; }
};
template <> struct action<g::number> {
    template <typename Input> static void apply(const Input& in, Builder& b) { b.number = in.string(); }
};
template <> struct action<g::low_number> : action<g::number> {};
template <> struct action<g::high_number> {
    template <typename Input> static void apply(const Input& in, Builder& b) { b.high = in.string(); }
};
template <> struct action<g::at_least> {
    static void apply0(Builder& b) { b.at_least = true; }
};
template <> struct action<g::whole> {
    template <typename Input> static void apply(const Input& in, Builder& b) { b.whole = in.string(); }
};
template <> struct action<g::numerator> {
    template <typename Input> static void apply(const Input& in, Builder& b) { b.numerator = in.string(); }
};
template <> struct action<g::denominator> {
    template <typename Input> static void apply(const Input& in, Builder& b) { b.denominator = in.string(); }
};

template <> struct action<g::quantity> {
    template <typename Input> static void apply(const Input& in, Builder& b) {
        Token& t = b.push(in, Token::Type::number);
        if (b.high.empty() && b.number.empty()) b.number = "0";
        t.value = value_of(b);
        t.glued_comma = b.comma;
        if (!t.value.said()) t.type = Token::Type::symbol;   // too large to be an amount
        else if (b.scale_unsaid) t.type = Token::Type::degrees;
        else if (b.gallon_unsaid) t.type = Token::Type::gallons;
        else if (b.unit != Unit::none) t.type = Token::Type::quantity;
        b.clear();
    }
};
template <> struct action<g::slash> {
    template <typename Input> static void apply(const Input& in, Builder& b) {
        const int n = to_int(b.numerator), m = to_int(b.denominator), whole = to_int(b.whole);
        Token& t = b.push(in, Token::Type::slash);
        t.n = n, t.m = m;
        if (m > 0 && (!b.whole.empty() || b.unit != Unit::none)) {
            // 1 1/2 and 1/2 lb are numbers.
            const Unit unit = b.unit == Unit::none ? Unit::piece : b.unit;
            const std::int64_t size = unit_size(unit) * b.unit_times / b.unit_per;
            const std::int64_t amount = whole * size + n * size / m;
            t.value = {dimension_of(unit), unit, amount, amount, amount, 0, false};
            t.type = b.unit == Unit::none ? Token::Type::number : Token::Type::quantity;
            if (b.gallon_unsaid) t.type = Token::Type::gallons;
        }
        b.clear();
    }
};
template <> struct action<g::ratio> {
    template <typename Input> static void apply(const Input& in, Builder& b) {
        Token& t = b.push(in, Token::Type::ratio);
        t.n = t.text[0] - '0', t.m = t.text[2] - '0';
        b.clear();
    }
};
template <> struct action<g::hour_minute> {
    template <typename Input> static void apply(const Input& in, Builder& b) {
        Token& t = b.push(in, Token::Type::time);
        const auto colon = t.text.find(':');
        t.n = to_int(std::string_view(t.text).substr(0, colon)) + (t.text.ends_with("pm") ? 12 : 0);
        t.m = to_int(std::string_view(t.text).substr(colon + 1, 2));
        b.clear();
    }
};
template <> struct action<g::ordinal> {
    template <typename Input> static void apply(const Input& in, Builder& b) {
        Token& t = b.push(in, Token::Type::ordinal);
        t.n = to_int(t.text);
        b.clear();
    }
};
template <> struct action<g::iso_date> {
    template <typename Input> static void apply(const Input& in, Builder& b) { b.push(in, Token::Type::date), b.clear(); }
};
/// `didnt`, `couldnt`: with the apostrophe that a thumb leaves out.
void with_apostrophe(std::string& word) {
    static constexpr std::array<std::string_view, 14> words = {"didnt", "couldnt", "wasnt", "werent", "isnt", "arent", "dont", "doesnt", "havent", "hasnt", "hadnt", "wouldnt", "shouldnt", "cant"};
    if (std::find(words.begin(), words.end(), word) != words.end()) word.insert(word.size() - 1, "'");
}
template <> struct action<g::size_name> {
    template <typename Input> static void apply(const Input& in, Builder& b) { with_apostrophe(b.push(in, Token::Type::word).text), b.clear(); }
};
template <> struct action<g::word> : action<g::size_name> {};
template <> struct action<g::quoted> {
    template <typename Input> static void apply(const Input& in, Builder& b) {
        Token& t = b.push(in, Token::Type::quoted);
        t.text = b.written_between(t.begin, t.end);
        b.clear();
    }
};
template <> struct action<g::arrow> {
    template <typename Input> static void apply(const Input& in, Builder& b) { b.push(in, Token::Type::symbol), b.clear(); }
};
template <> struct action<g::symbol> : action<g::arrow> {};

char32_t lower_letter(char32_t c) {
    if (c < 0x80) return c >= 'A' && c <= 'Z' ? c + 32 : c;
    if ((c >= 0xC0 && c <= 0xDE && c != 0xD7) || (c >= 0x391 && c <= 0x3A9) || (c >= 0x410 && c <= 0x42F)) return c + 32;
    if (c >= 0x100 && c <= 0x17F && c % 2 == 0 && c != 0x130 && c != 0x138 && c != 0x178) return c + 1;
    return c;
}

}  // namespace

std::string lower(std::string_view text) {
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t start = at;
        const char32_t c = next_character(text, at);
        if (c == 0xFFFD) out.append(text.substr(start, at - start));
        else append_utf8(out, lower_letter(c));
    }
    return out;
}

std::vector<Token> tokenise(std::string_view line, std::uint32_t offset) {
    const Plain text = plain(line, offset);
    Builder builder;
    builder.plain = &text;
    builder.line = line;
    using Input = tao::pegtl::memory_input<tao::pegtl::tracking_mode::lazy, tao::pegtl::eol::lf_crlf, const char*>;
    Input in(text.text.data(), text.text.data() + text.text.size(), "");
    tao::pegtl::parse<g::line, action>(in, builder);
    return std::move(builder.tokens);
}

}  // namespace waxtab
