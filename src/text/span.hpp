#pragma once
#include <cstdint>

namespace waxtab {

/// A stretch of a journal file: bytes [begin, end) of source number `file`.
/// An empty span of file `none` belongs to nothing the keeper wrote.
struct Span {
    static constexpr std::uint32_t none = 0xffffffffu;
    std::uint32_t file = none;
    std::uint32_t begin = 0;
    std::uint32_t end = 0;

    bool known() const { return file != none; }
    friend auto operator<=>(const Span&, const Span&) = default;
};

/// A place as an editor shows it; both count from 1. Columns count characters
/// (Unicode code points), not bytes.
struct LineColumn {
    std::uint32_t line = 1;
    std::uint32_t column = 1;
};

}  // namespace waxtab
