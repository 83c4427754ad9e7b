#include "cli/report_folder.hpp"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <set>
#include <system_error>

#include <fcntl.h>
#include <unistd.h>

#include <fmt/format.h>

namespace waxtab {

namespace {

namespace fs = std::filesystem;

/// The folder itself, its link followed, without a slash at the end.
fs::path real_folder(const std::string& folder) {
    std::error_code error;
    fs::path path = fs::weakly_canonical(folder, error);
    if (error) path = folder;
    return path.has_filename() ? path : path.parent_path();
}

fs::path beside(const fs::path& folder, std::string_view what) {
    return folder.parent_path() / fmt::format(".{}.{}", folder.filename().string(), what);
}

bool of_a_report(const fs::path& name) {
    const std::string text = name.generic_string();
    if (text == "report.html" || text == "report.txt" || text == "visits.ics" || text == "lots" || text == "seasons")
        return true;
    const std::string in = name.parent_path().generic_string();
    return (in == "lots" || in == "seasons") && name.extension() == ".html";
}

/// Names of everything below the folder; nothing when it cannot be read.
std::optional<std::set<std::string>> names_below(const fs::path& folder) {
    std::error_code error;
    std::set<std::string> names;
    for (fs::recursive_directory_iterator it(folder, error), end; !error && it != end; it.increment(error))
        names.insert(it->path().lexically_relative(folder).generic_string());
    if (error) return {};
    return names;
}

std::string why(std::string_view doing, const fs::path& path, int error) {
    return fmt::format("{} '{}': {}", doing, path.string(), std::strerror(error));
}

/// Brings what was written to `path` to the disk.
int sync(const fs::path& path) {
    const int fd = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (fd < 0) return errno;
    const int error = ::fsync(fd) == 0 ? 0 : errno;
    ::close(fd);
    return error == EINVAL ? 0 : error;  // some file systems cannot sync folders
}

std::string write_file(const fs::path& path, const std::string& bytes) {
    std::FILE* file = std::fopen(path.c_str(), "wb");
    if (!file) return why("cannot write", path, errno);
    const bool written = std::fwrite(bytes.data(), 1, bytes.size(), file) == bytes.size();
    const int error = errno;
    const bool closed = std::fclose(file) == 0;
    if (!written || !closed) return why("cannot write", path, written ? errno : error);
    const int unsynced = sync(path);
    return unsynced == 0 ? std::string{} : why("cannot write", path, unsynced);
}

std::string write_all(const fs::path& folder, const std::vector<ReportFile>& files) {
    std::error_code error;
    fs::remove_all(folder, error);
    fs::create_directories(folder / "lots", error);
    if (!error) fs::create_directories(folder / "seasons", error);
    if (error) return why("cannot make the folder", folder, error.value());
    for (const ReportFile& file : files) {
        std::string problem = write_file(folder / file.name, file.bytes);
        if (!problem.empty()) return problem;
    }
    sync(folder / "lots");
    sync(folder / "seasons");
    sync(folder);
    return {};
}

/// Both folders change names in one step; false where that cannot be done.
bool exchange(const fs::path& a, const fs::path& b) {
#ifdef RENAME_EXCHANGE
    return ::renameat2(AT_FDCWD, a.c_str(), AT_FDCWD, b.c_str(), RENAME_EXCHANGE) == 0;
#else
    return static_cast<void>(a), static_cast<void>(b), false;
#endif
}

std::string change_places(const fs::path& fresh, const fs::path& folder) {
    std::error_code error;
    const fs::path old = beside(folder, "old");
    if (!fs::exists(folder, error)) {
        fs::rename(fresh, folder, error);
        return error ? why("cannot rename to", folder, error.value()) : std::string{};
    }
    if (exchange(fresh, folder)) {
        fs::remove_all(fresh, error);
        return {};
    }
    fs::remove_all(old, error);
    fs::rename(folder, old, error);
    if (error) return why("cannot rename", folder, error.value());
    fs::rename(fresh, folder, error);
    if (error) {
        std::error_code back;
        fs::rename(old, folder, back);
        return why("cannot rename to", folder, error.value());
    }
    fs::remove_all(old, error);
    return {};
}

/// A run killed between two renames left the old report under its other name only.
void put_right(const fs::path& folder) {
    std::error_code error;
    if (!fs::exists(folder, error) && fs::exists(beside(folder, "old"), error)) fs::rename(beside(folder, "old"), folder, error);
}

std::string foreign(const fs::path& folder) {
    std::error_code error;
    if (!fs::exists(folder, error)) return {};
    if (!fs::is_directory(folder, error)) return fmt::format("'{}' is not a folder", folder.string());
    const auto names = names_below(folder);
    if (!names) return fmt::format("cannot read the folder '{}'", folder.string());
    for (const std::string& name : *names)
        if (!of_a_report(name))
            return fmt::format("'{}' holds '{}', which is not of a report; give the report a folder of its own", folder.string(), name);
    return {};
}

}  // namespace

std::string put_report(const std::string& name, const std::vector<ReportFile>& files) {
    const fs::path folder = real_folder(name);
    put_right(folder);
    std::string problem = foreign(folder);
    if (!problem.empty()) return problem;
    std::error_code error;
    if (folder.has_parent_path()) fs::create_directories(folder.parent_path(), error);
    const fs::path fresh = beside(folder, "new");
    problem = write_all(fresh, files);
    if (problem.empty()) problem = change_places(fresh, folder);
    if (!problem.empty()) fs::remove_all(fresh, error);
    else sync(folder.has_parent_path() ? folder.parent_path() : fs::path("."));
    return problem;
}

bool holds_report(const std::string& name, const std::vector<ReportFile>& files) {
    const fs::path folder = real_folder(name);
    auto names = names_below(folder);
    if (!names) return false;
    names->erase("lots");
    names->erase("seasons");
    if (names->size() != files.size()) return false;
    return std::all_of(files.begin(), files.end(), [&](const ReportFile& file) {
        std::ifstream in(folder / file.name, std::ios::binary);
        return in && std::string{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()} == file.bytes;
    });
}

}  // namespace waxtab
