#include "ledger/price.hpp"

#include <algorithm>
#include <array>
#include <cctype>

namespace waxtab {
namespace {

bool starts_a_price(std::string_view words) {
    constexpr std::array<std::string_view, 6> signs{"$", "\xc2\xa3", "\xe2\x82\xac", "GBP", "USD", "EUR"};
    if (std::any_of(signs.begin(), signs.end(), [&](std::string_view s) { return words.starts_with(s); })) return true;
    return !words.empty() && std::isdigit(static_cast<unsigned char>(words.front()));
}

/// Words from `from` to the next comma or stop that ends the clause.
std::string_view clause(std::string_view text, std::size_t from) {
    std::size_t end = from;
    while (end < text.size()) {
        const bool stop = text[end] == ',' || text[end] == ';' || (text[end] == '.' && (end + 1 == text.size() || text[end + 1] == ' '));
        if (stop) break;
        ++end;
    }
    while (end > from && text[end - 1] == ' ') --end;
    return text.substr(from, end - from);
}

}  // namespace

std::string price_of(const Journal& journal, const Fact& fact) {
    if (!fact.span.known()) return {};
    const std::string_view text = journal.sources.text(fact.span);
    for (const std::string_view word : {" at ", " for ", " @ "}) {
        const auto at = text.rfind(word);
        if (at != std::string_view::npos && starts_a_price(text.substr(at + word.size()))) return std::string(clause(text, at + word.size()));
    }
    return {};
}

}  // namespace waxtab
