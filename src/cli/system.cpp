#include "cli/system.hpp"

#include <cstdlib>
#include <ctime>
#include <string_view>

#include <unistd.h>

namespace waxtab {

Day local_today() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    localtime_r(&now, &local);
    return date::year{local.tm_year + 1900} / (local.tm_mon + 1) / local.tm_mday;
}

bool may_colour() {
    // no-color.org: present and not empty means no colour.
    const char* no_colour = std::getenv("NO_COLOR");
    const char* terminal = std::getenv("TERM");
    if (no_colour && *no_colour) return false;
    if (!terminal || std::string_view(terminal) == "dumb") return false;
    return isatty(STDOUT_FILENO) == 1;
}

bool may_show_progress() {
    const char* terminal = std::getenv("TERM");
    return terminal && std::string_view(terminal) != "dumb" && isatty(STDERR_FILENO) == 1;
}

}  // namespace waxtab
