#pragma once
#include <string>
#include <vector>

#include "cli/io.hpp"

namespace waxtab {

/// Runs the program. `arguments` are those after its name. Returns the exit status: 0 answered (`check`: no
/// errors), 1 `check` found errors, 2 wrong use, an unreadable file, or output that could not be written.
int run(const std::vector<std::string>& arguments, Io& io);

}  // namespace waxtab
