#pragma once
#include <chrono>
#include <string_view>

#include "cli/io.hpp"

namespace waxtab {

/// Says on a terminal how far long work is; nothing when standard error is a file. Work not known to be long says
/// nothing in its first second.
class Progress {
public:
    Progress(Io& io, bool long_work) : io_(io), long_work_(long_work), begun_(std::chrono::steady_clock::now()) {}
    ~Progress() { done(); }
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    /// What is being done now, and how much of it is done where that is known (`all` above 0).
    void step(std::string_view words, std::size_t done = 0, std::size_t all = 0);
    /// Takes the words off the terminal, before something else is said there.
    void done();

private:
    Io& io_;
    bool long_work_;
    std::chrono::steady_clock::time_point begun_;
    bool shown_ = false;
};

}  // namespace waxtab
