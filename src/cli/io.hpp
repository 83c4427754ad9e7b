#pragma once
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "quantity/quantity.hpp"

namespace waxtab {

/// The files a run may read: the disk, or something made up in a test. Paths are as the user writes them.
class Files {
public:
    enum class What { missing, file, folder };

    virtual ~Files() = default;
    virtual What what(const std::string& path) const = 0;
    /// Names of all `*.hive` below a folder, relative to it, with `/` between, bytewise sorted. Hidden files and
    /// folders are passed over: editors leave their locks and copies there. Nothing when it cannot be read.
    virtual std::optional<std::vector<std::string>> journals_below(const std::string& folder) const = 0;
    /// The bytes of a file; nothing when it cannot be read.
    virtual std::optional<std::string> read(const std::string& path) const = 0;
};

/// The files on disk.
class DiskFiles : public Files {
public:
    What what(const std::string& path) const override;
    std::optional<std::vector<std::string>> journals_below(const std::string& folder) const override;
    std::optional<std::string> read(const std::string& path) const override;
};

/// Everything outside that a run depends on.
struct Io {
    std::istream& in;
    std::ostream& out;
    std::ostream& err;
    const Files& files;
    Day today{};
    bool colour = false;        ///< standard output is a terminal that may be coloured
    bool progress = false;      ///< standard error is a terminal on which long work may say how far it is
};

}  // namespace waxtab
