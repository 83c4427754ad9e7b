#pragma once
#include <algorithm>
#include <sstream>
#include <string>

#include "ledger/ledger.hpp"
#include "report/style.hpp"
#include "text/utf8.hpp"

/// A journal of one file `a.hive` with all that follows from it on a day.
struct Read {
    waxtab::Journal journal;
    waxtab::History history;
    waxtab::Estimates estimates;
    waxtab::Ledger ledger;

    Read(const std::string& text, waxtab::Day on)
        : journal(waxtab::read_journal({{"a.hive", text}}, on)),
          history(waxtab::replay(journal, on)),
          estimates(waxtab::estimate(journal, history)),
          ledger(waxtab::account(journal, history, estimates)) {}
};

inline const std::string small_journal =
    "units kg\n"
    "hive h3 at mill: deep, excluder, super drawn9\n"
    "\n"
    "2026-06-03 mill\n"
    "24C sunny, flow heavy, white clover\n"
    "h3 top 70% capped\n"
    "+super h3 drawn9\n";

inline waxtab::Day june(unsigned day) { return date::year{2026} / 6 / day; }

inline bool holds(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

inline std::size_t times_in(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != text.npos; at = text.find(part, at + part.size())) ++count;
    return count;
}

inline std::size_t widest_line(const std::string& text) {
    std::istringstream lines(text);
    std::size_t most = 0;
    for (std::string line; std::getline(lines, line);) most = std::max(most, waxtab::display_width(line));
    return most;
}
