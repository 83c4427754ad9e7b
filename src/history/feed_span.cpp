#include "history/feed_span.hpp"

#include <algorithm>

namespace waxtab {
namespace {

/// A portion gone longer than this was not in the feeder all the time till somebody noted it off; own judgement.
constexpr int longest_portion_days = 28;

}  // namespace

FeedSpan span_of(const Journal& journal, const Feeding& feeding, Day on) {
    const bool feeder = feeding.fact == set_up_fact || journal.facts[feeding.fact].kind == Kind::feeder_on;
    const bool told = feeding.to && (feeder || days_between(feeding.from, *feeding.to) <= longest_portion_days);
    FeedSpan out{feeding.from, told ? *feeding.to : feeding.from, {}};
    out.possible = out.sure + date::days{feed_carried_days};
    if (feeder && !feeding.to) out.possible = std::max(out.possible, on);
    return out;
}

}  // namespace waxtab
