#pragma once
#include <string>

#include "cli/answer.hpp"
#include "cli/progress.hpp"

namespace waxtab {

/// Writes the report of `whole` to the folder that was asked for. Returns why it could not; empty when it is there.
std::string write_report(const Options& options, const Whole& whole, Progress& progress);

}  // namespace waxtab
