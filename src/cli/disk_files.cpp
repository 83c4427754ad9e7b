#include <algorithm>
#include <array>
#include <cstdio>
#include <filesystem>
#include <memory>

#include "cli/io.hpp"

namespace waxtab {

namespace {

namespace fs = std::filesystem;

bool hidden(const fs::path& path) { return path.filename().native().starts_with('.'); }

/// A link that leads nowhere is taken for a journal, so that its absence is reported.
bool is_journal(const fs::directory_entry& entry) {
    std::error_code error;
    if (entry.path().extension() != ".hive") return false;
    return entry.is_regular_file(error) || (entry.is_symlink(error) && !entry.exists(error));
}

}  // namespace

Files::What DiskFiles::what(const std::string& path) const {
    std::error_code error;
    const fs::file_status status = fs::status(path, error);
    if (!fs::exists(status)) return What::missing;
    return fs::is_directory(status) ? What::folder : What::file;
}

std::optional<std::vector<std::string>> DiskFiles::journals_below(const std::string& folder) const {
    std::error_code error;
    std::vector<std::string> names;
    fs::recursive_directory_iterator it(folder, error);
    for (; !error && it != fs::recursive_directory_iterator(); it.increment(error)) {
        if (hidden(it->path())) {
            it.disable_recursion_pending();
        } else if (is_journal(*it)) {
            names.push_back(it->path().lexically_relative(folder).generic_string());
        }
    }
    if (error) return {};
    std::sort(names.begin(), names.end());
    return names;
}

std::optional<std::string> DiskFiles::read(const std::string& path) const {
    // Not a stream: reading a folder or a broken disk through one throws.
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "rb"), &std::fclose);
    if (!file) return {};
    std::string bytes;
    std::array<char, 65536> buffer;
    while (const std::size_t got = std::fread(buffer.data(), 1, buffer.size(), file.get())) bytes.append(buffer.data(), got);
    if (std::ferror(file.get()) != 0) return {};
    return bytes;
}

}  // namespace waxtab
