// The rules of one form are free of endless loops; a unit of its own, as the analysis is costly to compile.
#include <catch2/catch.hpp>

#include <tao/pegtl/contrib/analyze.hpp>

#include "rules.hpp"

TEST_CASE("the rules cannot loop without reading on", "[facts]") {
    CHECK(tao::pegtl::analyze<waxtab::grammar::line>() == 0);
}
