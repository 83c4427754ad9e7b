#include "ledger/medicine_note.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "ledger/lots.hpp"

namespace waxtab {

namespace {

std::string_view trimmed(std::string_view s) {
    constexpr std::string_view blank = " \t:";
    const auto from = s.find_first_not_of(blank);
    if (from == std::string_view::npos) return {};
    return s.substr(from, s.find_last_not_of(blank) - from + 1);
}

using Field = std::string MedicineNote::*;

// Longer names first, since `withdrawal` begins `withdrawal period`.
constexpr std::array<std::pair<std::string_view, Field>, 6> field_names{{
    {"withdrawal period", &MedicineNote::withdrawal},
    {"withdrawal", &MedicineNote::withdrawal},
    {"batch", &MedicineNote::batch},
    {"supplier", &MedicineNote::supplier},
    {"bought from", &MedicineNote::supplier},
    {"from", &MedicineNote::supplier},
}};

void read_part(std::string_view part, MedicineNote& note) {
    const std::string lower = folded(part);
    for (const auto& [name, field] : field_names) {
        const bool whole_word = lower.size() == name.size() || (lower.size() > name.size() && (lower[name.size()] == ' ' || lower[name.size()] == ':'));
        if (!lower.starts_with(name) || !whole_word) continue;
        note.*field = std::string{trimmed(part.substr(name.size()))};
        return;
    }
    if (!part.empty()) note.product += (note.product.empty() ? "" : ", ") + std::string{part};
}

/// Where the next part begins in a text: behind a comma or semicolon, or at a name that follows another part without one.
std::size_t end_of_part(std::string_view text) {
    std::size_t end = std::min(text.find_first_of(",;"), text.size());
    const std::string lower = folded(text.substr(0, end));
    for (const std::string_view name : {" bought from ", " from ", " supplier ", " withdrawal ", " batch "}) {
        const auto at = lower.find(name);
        if (at != std::string::npos && at > 0 && !lower.substr(0, at).ends_with("bought")) end = std::min(end, at);
    }
    return end;
}

}  // namespace

MedicineNote medicine_note(std::string_view text) {
    MedicineNote note;
    while (!text.empty()) {
        const std::size_t end = end_of_part(text);
        read_part(trimmed(text.substr(0, end)), note);
        text = end == text.size() ? std::string_view{} : text.substr(end + 1);
    }
    return note;
}

}  // namespace waxtab
