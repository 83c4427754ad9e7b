#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace waxtab {

/// Rows of cells under column heads, aligned by display width. The last column takes what is left of the
/// page and is wrapped; the others are as wide as their widest cell.
class Table {
public:
    enum class Align { left, right };
    /// A column; without any head the table prints none.
    void column(std::string_view head, Align align = Align::left);
    void row(std::vector<std::string> cells);
    bool empty() const { return rows_.empty(); }
    /// The table after `indent` blanks on each line, no line over the page. Columns empty in every row are left out.
    std::string text(std::size_t indent = 0) const;

private:
    struct Column { std::string head; Align align; };
    std::vector<std::size_t> widths() const;
    std::vector<Column> columns_;
    std::vector<std::vector<std::string>> rows_;
};

}  // namespace waxtab
