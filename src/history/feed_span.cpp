#include "history/feed_span.hpp"

#include <algorithm>

namespace waxtab {
namespace {

/// A portion of syrup is gone in a week, whenever the feeder comes off; common practice, no source: a strong colony takes
/// a US gallon in 1-2 days. One whose amount was not said, and fondant, may last four.
constexpr int portion_days = 7, longest_portion_days = 28;

bool syrup_portion(const Fact& f) { return f.kind == Kind::feed && f.value.said() && f.detail != "fondant"; }

}  // namespace

FeedSpan span_of(const Journal& journal, const Feeding& feeding, Day on) {
    const bool feeder = feeding.fact == set_up_fact || journal.facts[feeding.fact].kind == Kind::feeder_on;
    const bool told = feeding.to && (feeder || days_between(feeding.from, *feeding.to) <= longest_portion_days);
    FeedSpan out{feeding.from, told ? *feeding.to : feeding.from, {}};
    if (!feeder && syrup_portion(journal.facts[feeding.fact])) out.sure = std::min(out.sure, feeding.from + date::days{portion_days});
    out.possible = out.sure + date::days{feed_carried_days};
    if (feeder && !feeding.to) out.possible = std::max(out.possible, on);
    return out;
}

}  // namespace waxtab
