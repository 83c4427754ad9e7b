#include <filesystem>
#include <fstream>

#include <catch2/catch.hpp>

#include "cli/io.hpp"

using namespace waxtab;

namespace {

/// A folder of its own under the system's temporary one, gone with the test.
class Folder {
public:
    Folder() : path_(std::filesystem::temp_directory_path() / "waxtab-disk-files-test") {
        std::filesystem::remove_all(path_);
        std::filesystem::create_directories(path_);
    }
    ~Folder() { std::filesystem::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    void write(const std::string& name, const std::string& bytes) const {
        std::filesystem::create_directories((path_ / name).parent_path());
        std::ofstream(path_ / name, std::ios::binary) << bytes;
    }
    std::string name() const { return path_.string(); }

private:
    std::filesystem::path path_;
};

}  // namespace

TEST_CASE("journals below a folder: every .hive, hidden ones passed over, in bytewise order") {
    const Folder folder;
    for (const char* name : {"b.hive", "B.hive", "a/z.hive", "notes.txt", ".#b.hive", ".git/c.hive"}) folder.write(name, "x");
    std::filesystem::create_directories(folder.name() + "/folder.hive");
    std::filesystem::create_symlink("nowhere", folder.name() + "/gone.hive");
    const DiskFiles files;
    CHECK(files.journals_below(folder.name()) == std::vector<std::string>{"B.hive", "a/z.hive", "b.hive", "gone.hive"});
    CHECK_FALSE(files.read(folder.name() + "/gone.hive").has_value());
    CHECK_FALSE(files.journals_below(folder.name() + "/nowhere").has_value());
}

TEST_CASE("bytes are read as they are, and what is not there is said") {
    const Folder folder;
    const std::string bytes("a\0\r\n\xff", 5);
    folder.write("a.hive", bytes);
    const DiskFiles files;
    CHECK(files.read(folder.name() + "/a.hive") == bytes);
    CHECK_FALSE(files.read(folder.name() + "/b.hive").has_value());
    CHECK_FALSE(files.read(folder.name()).has_value());
    CHECK(files.what(folder.name()) == Files::What::folder);
    CHECK(files.what(folder.name() + "/a.hive") == Files::What::file);
    CHECK(files.what(folder.name() + "/b.hive") == Files::What::missing);
}
