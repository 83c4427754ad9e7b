#pragma once
#include "history/history.hpp"

namespace waxtab {

/// Days of a feed in a hive: surely fed from `from` to `sure`, and up to `possible` syrup may still be taken from
/// the feeder or be carried up from the brood box into a super put on by then.
struct FeedSpan { Day from{}, sure{}, possible{}; };

/// Days after a feed within which it may get into a super. Common practice, no source; a strong colony takes a US
/// gallon (3.8 L) from the feeder in 1-2 days (wildflowermeadows.com, Sept 2015), the rest is for moving stores.
inline constexpr int feed_carried_days = 14;

/// A feed whose end was noted is sure to that day; one without counts as sure on its own day only, and a feeder never
/// noted off or empty as possible until `on`.
FeedSpan span_of(const Journal& journal, const Feeding& feeding, Day on);

}  // namespace waxtab
