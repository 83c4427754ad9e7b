#include <iostream>
#include <string>
#include <vector>

#include "cli/run.hpp"
#include "cli/system.hpp"

int main(int argc, char** argv) {
    std::ios::sync_with_stdio(false);
    const waxtab::DiskFiles files;
    waxtab::Io io{std::cin, std::cout, std::cerr, files, waxtab::local_today(), waxtab::may_colour(),
                   waxtab::may_show_progress()};
    return waxtab::run({argv + (argc > 0), argv + argc}, io);
}
