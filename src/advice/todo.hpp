#pragma once
#include <vector>

#include "advice/context.hpp"

namespace waxtab {

/// To-dos of the journal that no later note answers, oldest first.
std::vector<Seen> open_todos(const Context& context);

}  // namespace waxtab
