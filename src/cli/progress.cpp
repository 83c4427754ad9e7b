#include "cli/progress.hpp"

#include <ostream>

#include <fmt/format.h>

namespace waxtab {

namespace {
/// Back to the first column, and the line erased (ECMA-48, EL).
constexpr std::string_view anew = "\r\x1b[K";
}  // namespace

void Progress::done() {
    if (shown_) io_.err << anew << std::flush;
    shown_ = false;
}

void Progress::step(std::string_view words, std::size_t done, std::size_t all) {
    if (!io_.progress) return;
    if (!long_work_ && std::chrono::steady_clock::now() - begun_ < std::chrono::seconds(1)) return;
    shown_ = true;
    io_.err << anew << "waxtab: " << words;
    if (all > 0) io_.err << fmt::format(", {} of {}", done, all);
    io_.err << std::flush;
}

}  // namespace waxtab
