#include "history/citing.hpp"

#include <algorithm>

namespace waxtab::replaying {
namespace {

constexpr std::size_t longest_quote = 48;

/// Never ends inside a UTF-8 sequence.
std::string shortened(std::string_view text) {
    if (text.size() <= longest_quote) return std::string(text);
    std::size_t end = longest_quote;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0u) == 0x80u) --end;
    return std::string(text.substr(0, end)) + "...";
}

}  // namespace

std::string quoted(const Replay& r, const Fact& fact) {
    const std::string_view text = r.journal.sources.text(fact.span);
    const std::size_t line_end = std::min(text.find('\n'), text.size());
    return line_end == 0 ? "this line" : "'" + shortened(text.substr(0, line_end)) + "'";
}

Related cite(const Replay& r, HiveId hive, FactId fact, std::string text, std::string set_up_text) {
    if (fact != set_up_fact) return {r.fact(fact).span, std::move(text)};
    const bool known = hive != no_hive;
    return {known ? r.journal.hives[static_cast<std::size_t>(hive)].span : Span{}, std::move(set_up_text)};
}

void report(Replay& r, const Step& s, Severity severity, std::string_view code, std::string title, std::string hint,
            std::vector<Related> related) {
    std::erase_if(related, [](const Related& line) { return !line.span.known(); });
    r.out.diagnostics.push_back({code, severity, s.fact.span, std::move(title), {}, std::move(hint), std::move(related)});
}

bool first_time(Replay& r, HiveId hive, std::string_view code, const BoxChoice& choice) {
    std::vector<Reported>& reported = r.state(hive).reported;
    const auto same = [&](const Reported& earlier) { return earlier.code == code && earlier.choice == choice; };
    if (std::any_of(reported.begin(), reported.end(), same)) return false;
    reported.push_back({code, choice});
    return true;
}

bool same_line(const Replay& r, const Fact& a, const Fact& b) {
    if (!a.span.known() || a.span.file != b.span.file || a.span.file >= r.journal.sources.size()) return false;
    const Source& source = r.journal.sources[a.span.file];
    return source.place(a.span.begin).line == source.place(b.span.begin).line;
}

}  // namespace waxtab::replaying
