#include "text/utf8.hpp"

#include <fmt/format.h>

namespace waxtab {

namespace {

constexpr char32_t replacement = 0xFFFD;

/// Length of the sequence a lead byte announces, 0 if it is no lead byte.
std::size_t sequence_length(unsigned char lead) {
    if (lead < 0x80) return 1;
    if (lead >= 0xC2 && lead <= 0xDF) return 2;
    if (lead >= 0xE0 && lead <= 0xEF) return 3;
    if (lead >= 0xF0 && lead <= 0xF4) return 4;
    return 0;
}

bool allowed(char32_t c, std::size_t length) {
    constexpr char32_t least[] = {0, 0, 0x80, 0x800, 0x10000};
    return c >= least[length] && c <= 0x10FFFF && !(c >= 0xD800 && c <= 0xDFFF);
}

bool is_bidi_control(char32_t c) {
    return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069) || c == 0x200E || c == 0x200F;
}

bool takes_no_column(char32_t c) {
    return (c >= 0x300 && c <= 0x36F) || (c >= 0x200B && c <= 0x200D) || (c >= 0xFE00 && c <= 0xFE0F) || c == 0x20E3;
}

bool takes_two_columns(char32_t c) {
    return (c >= 0x1100 && c <= 0x115F) || (c >= 0x2E80 && c <= 0xA4CF) || (c >= 0xAC00 && c <= 0xD7A3) ||
           (c >= 0xF900 && c <= 0xFAFF) || (c >= 0xFE30 && c <= 0xFE6F) || (c >= 0xFF00 && c <= 0xFF60) ||
           (c >= 0x1F300 && c <= 0x1FAFF) || (c >= 0x20000 && c <= 0x3FFFD);
}

}  // namespace

char32_t next_character(std::string_view text, std::size_t& at) {
    const auto lead = static_cast<unsigned char>(text[at]);
    const std::size_t length = sequence_length(lead);
    if (length == 0 || at + length > text.size()) return ++at, replacement;
    char32_t c = length == 1 ? lead : lead & (0x7Fu >> length);
    for (std::size_t i = 1; i < length; ++i) {
        const auto next = static_cast<unsigned char>(text[at + i]);
        if ((next & 0xC0) != 0x80) return ++at, replacement;
        c = (c << 6) | (next & 0x3Fu);
    }
    if (!allowed(c, length)) return ++at, replacement;
    at += length;
    return c;
}

void append_utf8(std::string& out, char32_t c) {
    const auto put = [&](char32_t byte) { out.push_back(static_cast<char>(static_cast<unsigned char>(byte))); };
    if (c < 0x80) return put(c);
    if (c < 0x800) return put(0xC0 | c >> 6), put(0x80 | (c & 0x3F));
    if (c < 0x10000) return put(0xE0 | c >> 12), put(0x80 | (c >> 6 & 0x3F)), put(0x80 | (c & 0x3F));
    put(0xF0 | c >> 18), put(0x80 | (c >> 12 & 0x3F)), put(0x80 | (c >> 6 & 0x3F)), put(0x80 | (c & 0x3F));
}

std::size_t first_invalid_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t start = at;
        // A replacement character written as such takes three bytes, a bad byte one.
        if (next_character(text, at) == replacement && at == start + 1) return start;
    }
    return std::string_view::npos;
}

std::size_t count_characters(std::string_view text) {
    std::size_t count = 0;
    for (std::size_t at = 0; at < text.size(); ++count) next_character(text, at);
    return count;
}

std::size_t display_width(std::string_view text) {
    std::size_t width = 0;
    for (std::size_t at = 0; at < text.size();) {
        const char32_t c = next_character(text, at);
        width += takes_no_column(c) ? 0 : takes_two_columns(c) ? 2 : 1;
    }
    return width;
}

std::string printable(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t start = at;
        const char32_t c = next_character(text, at);
        if (c == replacement && at == start + 1)
            out += fmt::format("\\x{:02X}", static_cast<unsigned char>(text[start]));
        else if (c < 0x20 || c == 0x7F || (c >= 0x80 && c < 0xA0) || is_bidi_control(c))
            out += c < 0x100 ? fmt::format("\\x{:02X}", static_cast<unsigned>(c))
                             : fmt::format("\\u{{{:04X}}}", static_cast<unsigned>(c));
        else
            out.append(text.substr(start, at - start));
    }
    return out;
}

}  // namespace waxtab
