#pragma once
#include <chrono>
#include <string_view>

#include "cli/io.hpp"

namespace waxtab {

/// Says on a terminal how far long work is: nothing in the first second, nothing when standard error is a file.
class Progress {
public:
    explicit Progress(Io& io) : io_(io), begun_(std::chrono::steady_clock::now()) {}
    ~Progress();
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    void step(std::string_view words, std::size_t done, std::size_t all);

private:
    Io& io_;
    std::chrono::steady_clock::time_point begun_;
    bool shown_ = false;
};

}  // namespace waxtab
