#include "estimate/learn.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace waxtab {
namespace {

/// Readings needed before they have a say, and the most that are looked at.
constexpr int enough_readings = 25;
constexpr std::size_t most_readings = 3000;
/// Hives of one yard, and of all, that are looked at.
constexpr int hives_of_yard = 6, hives_in_all = 48;
/// Days over which a reading's say fades to a third: what held in spring need not hold in a dearth.
constexpr double fading_days = 120;

/// Wider by so much because the numbers themselves are only estimated.
constexpr double unsure = 1.2;

/// One point of the grid and what is thought of it beforehand.
struct Candidate {
    Parameters p;
    double prior = 0;
};

/// The logarithm of a normal density `by` wide, less its top.
double far(double x, double from, double by) { return -0.5 * (x - from) * (x - from) / (by * by); }

double prior(const Parameters& p) {
    const Parameters usual;
    return far(std::log(p.flow_sd), std::log(usual.flow_sd), 0.6) + far(p.normal_peak, usual.normal_peak, 0.25) +
           far(std::log(p.hive_sd), std::log(usual.hive_sd), 0.7) + far(std::log(p.eye), std::log(usual.eye), 0.3);
}

std::vector<Candidate> grid() {
    std::vector<Candidate> out;
    Parameters p;
    for (double flow : {0.25, 0.6, 1.2})
        for (double peak : {-0.1, 0.2, 0.5})
            for (double hive : {0.06, 0.15, 0.35})
                for (double eye : {0.05, 0.08, 0.125}) {
                    p.flow_sd = flow, p.normal_peak = peak, p.hive_sd = hive, p.eye = eye;
                    out.push_back({p, prior(p)});
                }
    return out;
}

/// The hives looked at: some of each yard, in journal order.
std::vector<bool> chosen_hives(const History& history) {
    std::vector<bool> chosen(history.hives.size(), false);
    std::map<YardId, int> taken;
    int all = 0;
    for (const HiveHistory& hive : history.hives) {
        if (all == hives_in_all || hive.visits.empty()) continue;
        int& here = taken[hive.yard_on(hive.visits.front())];
        if (here == hives_of_yard) continue;
        ++here, ++all;
        chosen[static_cast<std::size_t>(hive.hive)] = true;
    }
    return chosen;
}

bool tells(const BoxSighting& s) { return s.what == BoxSighting::What::full || s.what == BoxSighting::What::gross_weight; }

/// The history of the chosen hives alone, and of it the readings of the latest time only.
History part_of(const History& history) {
    const std::vector<bool> chosen = chosen_hives(history);
    const auto on_chosen = [&](const Box& box) {
        return box.role == Role::super && std::any_of(box.stays.begin(), box.stays.end(), [&](const BoxStay& s) {
            return s.hive != no_hive && chosen[static_cast<std::size_t>(s.hive)];
        });
    };
    std::vector<Day> days;
    for (const Box& box : history.boxes)
        if (on_chosen(box))
            for (const BoxSighting& s : box.sightings)
                if (tells(s)) days.push_back(s.day);
    std::sort(days.begin(), days.end());
    const Day since = days.size() > most_readings ? days[days.size() - most_readings] : Day{};

    History part;
    part.on = history.on;
    for (const HiveHistory& hive : history.hives) {
        HiveHistory out;
        out.hive = hive.hive;
        if (chosen[static_cast<std::size_t>(hive.hive)]) out.yards = hive.yards, out.ended = hive.ended;
        part.hives.push_back(std::move(out));
    }
    for (const Box& box : history.boxes) {
        if (!on_chosen(box) || (box.stays.back().to && *box.stays.back().to < since)) {
            part.boxes.push_back({});
            part.boxes.back().role = Role::brood;
            continue;
        }
        part.boxes.push_back(box);
        Box& kept = part.boxes.back();
        std::erase_if(kept.stays, [&](const BoxStay& s) { return (s.to && *s.to < since) || !chosen[static_cast<std::size_t>(s.hive)]; });
        std::erase_if(kept.sightings, [&](const BoxSighting& s) { return s.day < since; });
    }
    part.yard_facts = history.yard_facts;
    return part;
}

/// Log weights of the grid points by day, from readings up to and with that day.
class Weights {
public:
    explicit Weights(const std::vector<Candidate>& grid) : grid_(grid), log_(grid.size(), 0.0) {}

    void take(const std::vector<double>& gained, double days) {
        for (std::size_t i = 0; i < log_.size(); ++i) log_[i] = log_[i] * std::exp(-days / fading_days) + gained[i];
    }

    /// The numbers weighted by how well they told the readings. Of the flow's s.d. the variance is averaged: that is the variance
    /// of a flow whose s.d. is one of these.
    Parameters mean() const {
        double top = -1e300, sum = 0;
        for (std::size_t i = 0; i < log_.size(); ++i) top = std::max(top, log_[i] + grid_[i].prior);
        Parameters p = grid_.front().p;
        double flow = 0, peak = 0, hive = 0, eye = 0;
        for (std::size_t i = 0; i < log_.size(); ++i) {
            const double w = std::exp(log_[i] + grid_[i].prior - top);
            sum += w, flow += w * grid_[i].p.flow_sd * grid_[i].p.flow_sd, peak += w * grid_[i].p.normal_peak, hive += w * grid_[i].p.hive_sd;
            eye += w * grid_[i].p.eye;
        }
        p.flow_sd = unsure * std::sqrt(flow / sum), p.normal_peak = peak / sum, p.hive_sd = hive / sum;
        p.eye = p.eye_at_ends = eye / sum;
        return p;
    }

private:
    const std::vector<Candidate>& grid_;
    std::vector<double> log_;
};

Schedule scheduled(const std::vector<Candidate>& grid, const std::vector<std::vector<std::pair<Day, double>>>& told) {
    Schedule out{{Day{}, Parameters{}}};
    Weights weights(grid);
    std::vector<double> gained(grid.size());
    for (std::size_t d = 0; d < told.front().size(); ++d) {
        for (std::size_t i = 0; i < grid.size(); ++i) gained[i] = told[i][d].second - (d > 0 ? told[i][d - 1].second : 0);
        const Day day = told.front()[d].first;
        weights.take(gained, d > 0 ? days_between(told.front()[d - 1].first, day) : 0);
        out.emplace_back(day, weights.mean());
    }
    return out;
}

}  // namespace

Learned learn(const Journal& journal, const History& history) {
    const History part = part_of(history);
    int readings = 0;
    for (const Box& box : part.boxes)
        for (const BoxSighting& s : box.sightings) readings += tells(s) ? 1 : 0;
    if (readings < enough_readings)
        return {{{Day{}, Parameters{}}}, fmt::format("the usual numbers: {} readings of supers are too few to learn from", readings)};
    const std::vector<Candidate> points = grid();
    std::vector<std::vector<std::pair<Day, double>>> told;
    for (const Candidate& c : points) {
        Pass::Options options;
        options.keep_likelihood = true;
        Pass pass(journal, part, {{Day{}, c.p}}, options);
        pass.run();
        told.push_back(pass.likelihood());
    }
    Learned out{scheduled(points, told), {}};
    const Parameters& p = out.schedule.back().second;
    out.words = fmt::format("learned from {} readings: flow changes by {:.2f} kg/day about a usual height of {:.2f}, "
                            "hives by {:.2f} about their yard, looks are off by {:.0f}% of a super", readings, p.flow_sd, p.normal_peak, p.hive_sd,
                            100 * p.eye);
    return out;
}

}  // namespace waxtab
