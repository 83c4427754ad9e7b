#include "history/history.hpp"

namespace waxtab {

YardId HiveHistory::yard_on(Day day) const {
    YardId yard = yards.empty() ? no_yard : yards.front().second;
    for (const auto& [from, where] : yards)
        if (from <= day) yard = where;
    return yard;
}

namespace {

std::vector<BoxId> boxes_with(const History& history, HiveId hive, Role role) {
    std::vector<BoxId> found;
    if (hive < 0) return found;
    for (const Standing& s : history.hives[static_cast<std::size_t>(hive)].stack)
        if (s.box != no_box && history.boxes[static_cast<std::size_t>(s.box)].role == role) found.push_back(s.box);
    return found;
}

}  // namespace

std::vector<BoxId> History::supers_on(HiveId hive) const { return boxes_with(*this, hive, Role::super); }
std::vector<BoxId> History::brood_boxes_on(HiveId hive) const { return boxes_with(*this, hive, Role::brood); }

int frames_of(const Journal& journal, const Box& box) {
    if (box.frames > 0) return box.frames;
    const BoxKind* kind = journal.box_kind(box.kind);
    return kind ? kind->frames : BoxKind{}.frames;
}

}  // namespace waxtab
