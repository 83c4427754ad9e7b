#include "report/table.hpp"

#include <algorithm>

#include "text/layout.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

void trim_right(std::string& text) { text.erase(text.find_last_not_of(' ') + 1); }

}  // namespace

void Table::column(std::string_view head, Align align) { columns_.push_back({std::string(head), align}); }

void Table::row(std::vector<std::string> cells) {
    cells.resize(columns_.size());
    rows_.push_back(std::move(cells));
}

std::vector<std::size_t> Table::widths() const {
    std::vector<std::size_t> widths(columns_.size(), 0);
    for (std::size_t c = 0; c < columns_.size(); ++c) {
        for (const auto& cells : rows_) widths[c] = std::max(widths[c], display_width(cells[c]));
        if (widths[c] > 0) widths[c] = std::max(widths[c], display_width(columns_[c].head));
    }
    return widths;
}

std::string Table::text(std::size_t indent) const {
    constexpr std::size_t least = 12;
    std::vector<std::size_t> width = widths();
    std::size_t last = columns_.size(), used = indent;
    while (last > 0 && width[last - 1] == 0) --last;
    if (last == 0) return {};
    std::size_t gaps = 0;
    for (std::size_t c = 0; c + 1 < last; ++c) used += width[c], gaps += width[c] > 0;
    // Columns stand two blanks apart, one where the page is too narrow for that.
    const std::size_t gap = used + 2 * gaps + width[last - 1] <= page_width ? 2 : 1;
    used += gap * gaps;
    width[last - 1] = std::min(width[last - 1], std::max(page_width - std::min(used, page_width), least));

    std::string out;
    const auto print = [&](const std::vector<std::string>& cells) {
        std::string line(indent, ' ');
        for (std::size_t c = 0; c + 1 < last; ++c) {
            if (width[c] == 0) continue;
            line += columns_[c].align == Align::right ? pad_left(cells[c], width[c]) : pad_right(cells[c], width[c]);
            line.append(gap, ' ');
        }
        const std::string hang(display_width(line), ' ');
        for (const std::string& piece : wrap(cells[last - 1], width[last - 1])) {
            line += columns_[last - 1].align == Align::right ? pad_left(piece, width[last - 1]) : piece;
            trim_right(line);
            out += line + '\n';
            line = hang;
        }
    };
    std::vector<std::string> heads;
    for (const Column& column : columns_) heads.push_back(column.head);
    if (std::any_of(heads.begin(), heads.end(), [](const std::string& h) { return !h.empty(); })) print(heads);
    for (const auto& cells : rows_) print(cells);
    return out;
}

}  // namespace waxtab
