#include <algorithm>
#include <map>

#include "estimate/estimate.hpp"
#include "estimate/learn.hpp"
#include "estimate/pass.hpp"
#include "estimate/ranges.hpp"

namespace waxtab {
namespace {

/// Reads remembered days out of a pass, smoothed where its yards can be.
class LookBack {
public:
    LookBack(const Pass& pass, const std::vector<Day>& days) : pass_(pass), out_(days.size()) {
        for (std::size_t i = 0; i < days.size(); ++i) out_[i].on = days[i];
    }

    std::vector<Estimates> all() {
        auto day = out_.begin();
        for (const PastTrack& past : pass_.past()) {
            while (day->on < past.day) ++day;
            one_hive(past, *day);
        }
        return std::move(out_);
    }

private:
    Moments known(YardId yard, int mark, Moments held) {
        if (mark < 0) return held;
        const auto found = smoothed_.find(yard);
        const auto& marks = found != smoothed_.end() ? found->second : smoothed_.emplace(yard, pass_.yard(yard)->field->smoothed()).first->second;
        return marks[static_cast<std::size_t>(mark)];
    }

    void one_hive(const PastTrack& past, Estimates& on) {
        HiveEstimate hive;
        hive.hive = past.hive;
        double holds = 0;
        for (const PastTrack::Super& s : past.supers) holds += s.capacity, on.supers.push_back(one_super(past, s));
        const Moments held = known(past.yard, past.mark, past.held);
        if (holds > 0) hive.room_kg = rounded(scaled(cut_range({holds - held.mean, held.var}, 0, holds), pass_.keeper().full()));
        on.hives.push_back(std::move(hive));
    }

    SuperEstimate one_super(const PastTrack& past, const PastTrack::Super& s) {
        const Moments held = known(past.yard, s.mark, s.held);
        SuperEstimate e;
        e.box = s.box;
        e.hive = past.hive;
        e.full = rounded(scaled(cut_range(held, 0, s.capacity), 1 / s.capacity));
        e.kg = rounded(kilograms(held, s.capacity, pass_.keeper()));
        e.capacity_kg = rounded(full_kilograms(s.capacity, pass_.keeper()));
        return e;
    }

    const Pass& pass_;
    std::map<YardId, std::vector<Moments>> smoothed_;
    std::vector<Estimates> out_;
};

}  // namespace

std::vector<Estimates> smoothed_past(const Journal& journal, const History& history, const std::vector<Day>& days) {
    Pass::Options options;
    options.look_back = days;
    Pass pass(journal, history, learn(journal, history).schedule, options);
    pass.run();
    return LookBack(pass, days).all();
}

}  // namespace waxtab
