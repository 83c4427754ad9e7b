#pragma once
#include <string>

#include "facts/journal.hpp"

namespace waxtab {

/// A hive as it is written in a line: its name, `hive 2` where that is a bare number.
std::string hive_words(const Journal& journal, HiveId hive);

}  // namespace waxtab
