#include <sstream>

#include <catch2/catch.hpp>

#include "cli/progress.hpp"

using namespace waxtab;

namespace {

/// What work says on standard error.
std::string said(bool terminal, bool long_work) {
    std::istringstream in;
    std::ostringstream out, err;
    const DiskFiles files;
    Io io{in, out, err, files, date::year{2026} / 6 / 3, false, terminal};
    {
        Progress progress(io, long_work);
        progress.step("reading and estimating");
        progress.step("looking back", 3, 12);
    }
    CHECK(out.str().empty());
    return err.str();
}

}  // namespace

// Each step takes the place of the one before, and the last is taken away (ECMA-48: CR, EL).
TEST_CASE("long work says on a terminal how far it is, and leaves nothing behind") {
    CHECK(said(true, true) == "\r\x1b[Kwaxtab: reading and estimating\r\x1b[Kwaxtab: looking back, 3 of 12\r\x1b[K");
}

TEST_CASE("nothing is said where nobody watches, or of short work") {
    CHECK(said(false, true).empty());
    CHECK(said(true, false).empty());
}
