#include "history/transitions.hpp"

namespace waxtab::replaying {

void yard_fact(Replay& r, Step& s) {
    if (s.fact.yard != no_yard) r.out.yard_facts[static_cast<std::size_t>(s.fact.yard)].push_back(s.id);
}

void honey_fact(Replay& r, Step& s) { r.out.honey_facts.push_back(s.id); }

void todo(Replay& r, Step& s) { r.out.todos.push_back(s.id); }

void only_told(Replay&, Step&) {}

}  // namespace waxtab::replaying
