#include <algorithm>

#include "history/replay.hpp"

namespace waxtab::replaying {
namespace {

std::string lower(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

}  // namespace

BoxId make_box(Replay& r, const NewBox& what) {
    Box box;
    box.id = static_cast<BoxId>(r.out.boxes.size());
    box.role = what.role;
    box.kind_assumed = what.kind.empty();
    const Settings& settings = r.journal.settings;
    box.kind = !what.kind.empty() ? what.kind : what.role == Role::brood ? settings.brood_kind : settings.super_kind;
    box.comb_assumed = what.comb == Comb::unsaid;
    box.comb = box.comb_assumed ? Comb::drawn : what.comb;
    box.frames = what.frames;
    box.frames = frames_of(r.journal, box);
    r.out.boxes.push_back(std::move(box));
    r.box_states.emplace_back();
    const BoxId id = r.out.boxes.back().id;
    if (!what.label.empty()) set_label(r, id, what.label);
    return id;
}

void set_label(Replay& r, BoxId box, const std::string& label) {
    r.box(box).label = label;
    r.labels[lower(label)].push_back(box);
}

BoxId labelled(const Replay& r, HiveId hive, const std::string& label) {
    const auto found = r.labels.find(lower(label));
    if (found == r.labels.end()) return no_box;
    BoxId last = no_box;
    for (BoxId id : found->second) {
        if (lower(r.box(id).label) != found->first) continue;   // painted over since
        if (hive != no_hive && stands_on(r, id) == hive) return id;
        last = id;
    }
    return last;
}

HiveId stands_on(const Replay& r, BoxId box) {
    const std::vector<BoxStay>& stays = r.box(box).stays;
    return stays.empty() || stays.back().to ? no_hive : stays.back().hive;
}

std::optional<std::int64_t> last_share(const Replay& r, BoxId box, BoxSighting::What what) {
    const Box& b = r.box(box);
    for (auto s = b.sightings.rbegin(); s != b.sightings.rend(); ++s) {
        if (!b.emptied.empty() && s->day < b.emptied.back()) return std::nullopt;
        if (s->what == what) return s->amount;
    }
    return std::nullopt;
}

}  // namespace waxtab::replaying
