#include "said.hpp"

#include <catch2/catch.hpp>

namespace waxtab::test {

std::string_view usual_set_up() {
    return "units kg\ngallon us\ndates day-month\nyear 2026\nyard mill\nyard orchard\n"
           "hive h1 at mill: deep, excluder, super drawn9\n"
           "hive h2 at mill: deep, excluder, super drawn9\n"
           "hive h3 at mill: deep, excluder, super drawn9, super drawn9\n"
           "hive h4 at mill: deep, excluder, super drawn9, super drawn9\n"
           "hive h5, also Blue at mill: 2 deeps, excluder, super drawn9, super drawn9 \"B4\"\n"
           "hive h6 at mill: deep, excluder, super drawn9\n"
           "hive h7 at mill: deep, excluder, super drawn9\n"
           "hive h8 at mill: deep, excluder, super drawn9\n"
           "hive h9 at mill: deep, excluder, super drawn9\n"
           "hive Grey box at orchard: deep\n"
           "nuc n1 at mill: deep\n\n";
}

Journal journal_of(std::string_view lines, std::string_view set_up) {
    std::string text(set_up);
    if (set_up.find("yard mill") != set_up.npos) text += "2026-06-03 mill\n";
    text += lines;
    text += '\n';
    return read_journal({{"a.hive", text}}, date::sys_days{date::year{2026} / 11 / 25});
}

std::string said(const Journal& journal) {
    std::string out;
    const auto add = [&](const std::string& part) { out += (out.empty() ? "" : " | ") + part; };
    for (const Fact& f : journal.facts) {
        if (f.noted == Day{}) continue;
        std::string text = (f.detail == "flagged" ? "?" : "") + short_form(journal, f);
        if (f.happened != f.noted) text += " on " + iso(f.happened);
        add(text);
    }
    for (const Diagnostic& d : journal.diagnostics) add("!" + std::string(d.code));
    return out;
}

std::string said(std::string_view line, std::string_view set_up) { return said(journal_of(line, set_up)); }

void check_lines(const std::vector<Line>& lines, std::string_view set_up) {
    for (const Line& line : lines) {
        INFO(line.written);
        CHECK(said(line.written, set_up) == line.meant);
    }
}

}  // namespace waxtab::test
