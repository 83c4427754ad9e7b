#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "cli/io.hpp"

namespace waxtab {

namespace {

namespace fs = std::filesystem;

bool hidden(const fs::path& path) { return path.filename().native().starts_with('.'); }

bool is_journal(const fs::directory_entry& entry) {
    std::error_code error;
    return entry.path().extension() == ".hive" && entry.is_regular_file(error);
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
    std::ifstream file(path, std::ios::binary);
    if (!file) return {};
    std::string bytes{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    if (file.bad()) return {};
    return bytes;
}

}  // namespace waxtab
