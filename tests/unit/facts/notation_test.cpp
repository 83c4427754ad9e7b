// Every example block of the reference is read, and brings about the messages it says it does, no others.
#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "facts/journal.hpp"
#include "facts/kinds.hpp"
#include "facts/words_page.hpp"

using namespace waxtab;

namespace {

std::string reference() {
    std::ifstream in(WAXTAB_ROOT "/grammar/notation.md", std::ios::binary);
    std::ostringstream bytes;
    bytes << in.rdbuf();
    return bytes.str();
}

struct Block {
    std::string text, expect;
};

std::vector<Block> blocks(const std::string& page) {
    std::vector<Block> out;
    for (std::size_t at = page.find("```hive\n"); at != page.npos; at = page.find("```hive\n", at)) {
        const std::size_t begin = at + 8;
        at = page.find("\n```", begin);
        Block block{page.substr(begin, at - begin + 1), {}};
        constexpr std::string_view mark = "# expect: ";
        if (block.text.starts_with(mark)) block.expect = block.text.substr(mark.size(), block.text.find('\n') - mark.size());
        out.push_back(std::move(block));
    }
    return out;
}

}  // namespace

TEST_CASE("every example of the reference is read as it says", "[facts]") {
    const std::vector<Block> all = blocks(reference());
    CHECK(all.size() > 20);
    for (const Block& block : all) {
        INFO(block.text);
        const Journal journal = read_journal({{"notation.hive", block.text}}, date::sys_days{date::year{2026} / 11 / 25});
        for (const Diagnostic& d : journal.diagnostics) {
            INFO(journal.sources.text(d.span) << ": " << d.title);
            CHECK(d.code == block.expect);
        }
        if (!block.expect.empty()) CHECK_FALSE(journal.diagnostics.empty());
        for (const Fact& f : journal.facts) {
            INFO(f.text);
            if (block.expect.empty()) CHECK(f.detail != "flagged");
        }
    }
}

TEST_CASE("the reference lists every kind of fact", "[facts]") {
    const std::string page = reference();
    for (int k = 0; k < kind_count; ++k) {
        const std::string name = '`' + std::string(name_of(static_cast<Kind>(k))) + '`';
        INFO(name);
        CHECK(page.find(name) != page.npos);
    }
}

TEST_CASE("the page of words fits two printed pages, and the journal it opens with is read whole", "[facts]") {
    const std::string page = words_page();
    std::string journal, line;
    std::istringstream lines(page);
    int count = 0;
    bool opening = true;
    while (std::getline(lines, line)) {
        ++count;
        CHECK(line.size() <= 80);
        opening = opening && !line.starts_with("What can be said");
        if (opening && line.starts_with("  ")) journal += line.substr(2) + '\n';
        else if (opening) journal += '\n';
    }
    CHECK(count <= 120);
    CHECK(journal.find("2026-06-03 mill") != journal.npos);
    journal.insert(journal.find("hive h3"), "hive h1 at mill: deep\nhive h2 at mill: deep\nhive h4 at mill: deep\n");
    INFO(journal);
    for (const Diagnostic& d : read_journal({{"a.hive", journal}}, date::sys_days{date::year{2026} / 11 / 25}).diagnostics) FAIL_CHECK(d.code << ": " << d.title);
}
