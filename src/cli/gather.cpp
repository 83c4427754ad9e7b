#include "cli/gather.hpp"

#include <algorithm>
#include <filesystem>
#include <istream>
#include <iterator>
#include <set>

#include <fmt/format.h>

#include "text/utf8.hpp"

namespace waxtab {

namespace {

std::string tidy(const std::string& path) {
    const std::string text = std::filesystem::path(path).lexically_normal().generic_string();
    return text.size() > 1 && text.ends_with('/') ? text.substr(0, text.size() - 1) : text;
}

/// Collects files once each, with their names and with what went wrong.
class Gatherer {
public:
    explicit Gatherer(Io& io) : io_(io) {}

    void file(const std::string& path, const std::string& name) {
        if (!seen_.insert(tidy(path)).second) return;
        if (auto bytes = io_.files.read(path))
            result_.files.push_back({name, std::move(*bytes)});
        else
            problem("cannot read '{}'", path);
    }

    void folder(const std::string& path, bool only_one) {
        const auto names = io_.files.journals_below(path);
        if (!names) return problem("cannot read all of the folder '{}'", path);
        if (names->empty())
            return problem("no journal in '{}': nothing there or below ends in .hive; write one "
                           "(waxtab --help shows how) or name files and folders", path);
        for (const std::string& name : *names) {
            const std::string inside = tidy(path + '/' + name);
            file(inside, only_one ? name : inside);
        }
    }

    void standard_input() {
        result_.files.push_back({"-", {std::istreambuf_iterator<char>(io_.in), std::istreambuf_iterator<char>()}});
    }

    void path(const std::string& path, bool only_one) {
        if (path == "-") return standard_input();
        switch (io_.files.what(path)) {
            case Files::What::folder: return folder(path, only_one);
            case Files::What::file: return file(path, tidy(path));
            case Files::What::missing: return problem("there is no file or folder '{}'", path);
        }
    }

    Gathered take() { return std::move(result_); }

private:
    void problem(std::string_view words, const std::string& path) {
        result_.problems.push_back(fmt::format(fmt::runtime(words), printable(path)));
    }

    Io& io_;
    Gathered result_;
    std::set<std::string> seen_;
};

}  // namespace

Gathered gather(const std::vector<std::string>& paths, Io& io) {
    Gatherer gatherer(io);
    if (paths.empty()) gatherer.path(".", true);
    for (const std::string& path : paths) gatherer.path(path == "-" ? path : tidy(path), paths.size() == 1);
    return gatherer.take();
}

}  // namespace waxtab
