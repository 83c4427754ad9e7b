#include "text/layout.hpp"

#include <algorithm>

#include "text/utf8.hpp"

namespace waxtab {

namespace {

/// Cuts the next blank-separated word off `text`; empty at the end.
std::string_view next_word(std::string_view& text) {
    text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
    const std::string_view word = text.substr(0, std::min(text.find(' '), text.size()));
    text.remove_prefix(word.size());
    return word;
}

}  // namespace

std::string pad_right(std::string_view text, std::size_t width) {
    const std::size_t taken = display_width(text);
    return std::string(text).append(taken < width ? width - taken : 0, ' ');
}

std::string pad_left(std::string_view text, std::size_t width) {
    const std::size_t taken = display_width(text);
    return std::string(taken < width ? width - taken : 0, ' ').append(text);
}

std::size_t bytes_within(std::string_view text, std::size_t width) {
    std::size_t at = 0, taken = 0;
    while (at < text.size()) {
        const std::size_t start = at;
        next_character(text, at);
        taken += display_width(text.substr(start, at - start));
        if (taken > width) return start;
    }
    return at;
}

std::vector<std::string> wrap(std::string_view text, std::size_t width) {
    std::vector<std::string> lines{{}};
    std::size_t taken = 0;
    for (std::string_view word = next_word(text); !word.empty(); word = next_word(text)) {
        std::size_t size = display_width(word);
        if (taken > 0 && taken + 1 + size > width) lines.emplace_back(), taken = 0;
        while (size > width && word.size() > 1) {
            const std::size_t cut = std::max<std::size_t>(bytes_within(word, width), 1);
            lines.back() = word.substr(0, cut);
            lines.emplace_back();
            word.remove_prefix(cut);
            size = display_width(word);
        }
        if (taken > 0) lines.back() += ' ', ++taken;
        lines.back().append(word);
        taken += size;
    }
    return lines;
}

std::string paragraph(std::string_view text, std::string_view first, std::string_view rest, std::size_t width) {
    const std::size_t indent = std::max(display_width(first), display_width(rest));
    std::string out;
    std::string_view before = first;
    for (const std::string& line : wrap(text, width > indent ? width - indent : 1)) {
        out.append(before).append(line).append("\n");
        before = rest;
    }
    return out;
}

std::string expand_tabs(std::string_view text, std::size_t from) {
    constexpr std::size_t stop = 4;
    std::string out;
    std::size_t column = from, piece = 0;
    for (std::size_t at = 0; at <= text.size(); ++at) {
        if (at < text.size() && text[at] != '\t') continue;
        const std::string_view part = text.substr(piece, at - piece);
        out.append(part);
        column += display_width(part);
        if (at == text.size()) break;
        const std::size_t blanks = stop - column % stop;
        out.append(blanks, ' ');
        column += blanks;
        piece = at + 1;
    }
    return out;
}

std::string listed(const std::vector<std::string>& items) {
    std::string out;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i > 0) out += i + 1 == items.size() ? " and " : ", ";
        out += items[i];
    }
    return out;
}

}  // namespace waxtab
