#include "text/source.hpp"

#include <algorithm>

#include "text/utf8.hpp"

namespace waxtab {

namespace {

std::vector<std::uint32_t> line_starts(std::string_view text) {
    std::vector<std::uint32_t> starts;
    if (!text.empty()) starts.push_back(0);
    for (std::size_t at = 0; (at = text.find('\n', at)) != text.npos;) {
        if (++at < text.size()) starts.push_back(static_cast<std::uint32_t>(at));
    }
    return starts;
}

}  // namespace

Source::Source(std::string name, std::string bytes) : name_(std::move(name)), text_(std::move(bytes)) {
    if (text_.starts_with("\xEF\xBB\xBF")) text_.erase(0, 3);
    starts_ = line_starts(text_);
}

std::string_view Source::line(std::uint32_t line) const {
    const std::size_t begin = starts_[line - 1];
    const std::size_t end = line < starts_.size() ? starts_[line] : text_.size();
    std::string_view text = std::string_view(text_).substr(begin, end - begin);
    if (text.ends_with('\n')) text.remove_suffix(1);
    if (text.ends_with('\r')) text.remove_suffix(1);
    return text;
}

LineColumn Source::place(std::uint32_t offset) const {
    if (starts_.empty()) return {};
    const auto after = std::upper_bound(starts_.begin(), starts_.end(), offset);
    const auto line = static_cast<std::uint32_t>(after - starts_.begin());
    const std::uint32_t start = starts_[line - 1];
    const auto before = std::string_view(text_).substr(start, offset - start);
    return {line, static_cast<std::uint32_t>(count_characters(before)) + 1};
}

std::uint32_t Sources::add(std::string name, std::string bytes) {
    files_.emplace_back(std::move(name), std::move(bytes));
    return static_cast<std::uint32_t>(files_.size() - 1);
}

std::string_view Sources::text(Span span) const {
    if (!span.known()) return {};
    return files_[span.file].text().substr(span.begin, span.end - span.begin);
}

std::string Sources::at(Span span) const {
    if (!span.known()) return {};
    const Source& source = files_[span.file];
    return source.name() + ':' + std::to_string(source.place(span.begin).line);
}

}  // namespace waxtab
