#include "estimate/learn.hpp"

namespace waxtab {

Learned learn(const Journal&, const History&) { return {{{Day{}, Parameters{}}}, "the usual numbers"}; }

}  // namespace waxtab
