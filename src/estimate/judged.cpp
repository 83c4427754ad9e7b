#include "estimate/judged.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace waxtab {
namespace {

/// The readings of one super so far, for the two rules of thumb.
struct Points {
    std::optional<std::pair<Day, double>> last, before;
    void add(Day day, double share) {
        if (last && last->first != day) before = last;
        last = {day, share};
    }
};

std::optional<double> line_to(const Points& p, Day day) {
    if (!p.last || !p.before) return std::nullopt;
    const double slope = (p.last->second - p.before->second) / days_between(p.before->first, p.last->first);
    return std::clamp(p.last->second + slope * days_between(p.last->first, day), 0.0, 1.0);
}

class Judge {
public:
    Judge(const Pass& pass, const Journal& journal) : pass_(pass), journal_(journal) {}

    std::vector<Judged> all() {
        std::map<HiveId, const VisitTrack*> last;
        for (const VisitTrack& visit : pass_.visits()) {
            const auto earlier = last.find(visit.hive);
            if (earlier != last.end() && !visit.readings.empty()) compare(*earlier->second, visit);
            // A box put on that day starts from nothing seen: that is a reading of 0 for the rules of thumb.
            for (BoxId box : visit.after)
                if (!std::count(visit.before.begin(), visit.before.end(), box)) points_[box] = Points{}, points_[box].add(visit.day, 0);
            for (const VisitReading& r : visit.readings)
                if (r.reading.side == ShareReading::Side::about) points_[r.box].add(visit.day, r.reading.share);
            last[visit.hive] = &visit;
        }
        return std::move(out_);
    }

private:
    void compare(const VisitTrack& from, const VisitTrack& to) {
        const int days = days_between(from.day, to.day);
        if (days < 1 || from.yard != to.yard || from.after != to.before) return;
        const Gaussian then = ahead(from.parameters, journal_.settings, from.local, from.slots, from.weighed, from.day, days);
        for (const VisitReading& r : to.readings) {
            const auto at = std::find(from.after.begin(), from.after.end(), r.box);
            const auto points = points_.find(r.box);
            if (at == from.after.end() || points == points_.end() || !points->second.last) continue;
            const std::size_t k = static_cast<std::size_t>(at - from.after.begin());
            const int i = shared_size + first_super + static_cast<int>(k);
            const double cap = from.slots[k].capacity;
            Judged j;
            j.hive = to.hive, j.box = r.box, j.made = from.day, j.day = to.day, j.fact = r.fact;
            j.share = {then.mean(i) / cap, then.cov(i, i) / (cap * cap)};
            j.eye_sd = std::hypot(r.reading.eye, r.reading.rounding), j.eye_alone = r.reading.eye, j.read = r.reading.share, j.read_full = r.reading.says_full, j.side = r.reading.side;
            j.no_change = points->second.last->second;
            j.line = line_to(points->second, to.day);
            j.capacity_kg = cap * from.full_factor;
            out_.push_back(j);
        }
    }

    const Pass& pass_;
    const Journal& journal_;
    std::map<BoxId, Points> points_;
    std::vector<Judged> out_;
};

}  // namespace

double Judged::expected() const { return std::clamp(share.mean, 0.0, 1.0); }

double Judged::low(double z) const { return std::clamp(share.mean - z * std::sqrt(share.var + eye_sd * eye_sd), 0.0, 1.0); }
double Judged::high(double z) const { return std::clamp(share.mean + z * std::sqrt(share.var + eye_sd * eye_sd), 0.0, 1.0); }

double Judged::below(double x) const {
    const double sd = std::sqrt(std::max(share.var, 1e-12)), eye = std::max(eye_alone, 1e-6);
    const auto held_below = [&](double h) { return normal_cdf((h - share.mean) / sd); };
    double before = held_below(0);
    double sum = before * normal_cdf(x / eye) + (1 - held_below(1)) * normal_cdf((x - 1) / eye);
    // The share between by steps of a two hundredth, far finer than an eye.
    constexpr int steps = 200;
    for (int i = 0; i < steps; ++i) {
        const double upto = held_below((i + 1.0) / steps);
        if (upto > before) sum += (upto - before) * normal_cdf((x - (i + 0.5) / steps) / eye);
        before = upto;
    }
    return sum;
}

double Stretch::inside(double part) const {
    const double from = 0.5 * (1 - part), to = 0.5 * (1 + part);
    if (high - low < 1e-12) return low > from && low < to ? 1 : 0;
    return std::max(0.0, std::min(high, to) - std::max(low, from)) / (high - low);
}

Stretch Judged::stretch() const {
    // Numbers rounded to a step are spread evenly over it: its width is the root of twelve times their s.d.
    const double half_step = 0.5 * std::sqrt(std::max(12 * (eye_sd * eye_sd - eye_alone * eye_alone), 0.0));
    return {read <= 0.001 ? 0 : below((read_full ? 1.0 : read) - half_step), read_full ? 1 : below(read + half_step)};
}

std::vector<Judged> judged_forecasts(const Pass& pass, const Journal& journal) { return Judge(pass, journal).all(); }

}  // namespace waxtab
