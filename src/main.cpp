#include "cli/cli.hpp"

int main(int argc, char** argv) { return waxtab::cli::run(argc, argv); }
