#pragma once
#include <string>
#include <vector>

#include "cli/io.hpp"
#include "facts/journal.hpp"

namespace waxtab {

/// The files of a journal, and what could not be read, in words.
struct Gathered {
    std::vector<JournalFile> files;
    std::vector<std::string> problems;
};

/// Collects the journal that the paths name, the current folder when there are none. Files of a folder are named
/// relative to it; with several paths the folder stands before. `-` is standard input. The same file named
/// twice counts once.
Gathered gather(const std::vector<std::string>& paths, Io& io);

}  // namespace waxtab
