#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "text/span.hpp"

namespace waxtab {

/// One journal file: its name as the keeper gave it (relative to the argument) and its bytes.
/// A byte order mark at the start is dropped; nothing else is changed.
class Source {
public:
    Source(std::string name, std::string bytes);

    const std::string& name() const { return name_; }
    std::string_view text() const { return text_; }
    /// Number of lines; a final newline does not open another line.
    std::uint32_t line_count() const { return static_cast<std::uint32_t>(starts_.size()); }
    /// Line `line` (from 1) without its line end (LF or CR LF).
    std::string_view line(std::uint32_t line) const;
    /// Byte offset at which line `line` (from 1) starts.
    std::uint32_t line_start(std::uint32_t line) const { return starts_[line - 1]; }
    /// Where byte `offset` is, for people.
    LineColumn place(std::uint32_t offset) const;

private:
    std::string name_;
    std::string text_;
    std::vector<std::uint32_t> starts_;
};

/// All files of one journal, in bytewise order of their names.
class Sources {
public:
    std::uint32_t add(std::string name, std::string bytes);
    std::size_t size() const { return files_.size(); }
    const Source& operator[](std::uint32_t file) const { return files_[file]; }
    /// The words a span covers; empty for an unknown span.
    std::string_view text(Span span) const;
    /// `file:line` of the span's start; empty for an unknown span.
    std::string at(Span span) const;

private:
    std::vector<Source> files_;
};

}  // namespace waxtab
