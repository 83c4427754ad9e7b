#pragma once
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

/// Invented seasons of bees and nectar, for judging estimates. Nothing here comes from the estimator: flows have a
/// start, a peak and a stop, weather comes day by day, hives differ by a factor, and a keeper looks with an
/// inexact eye. All sizes are made up to lie where yields and scale records lie (20-60 kg a season, 0.5-3 kg a day
/// in a flow, 0.1-0.3 kg a day used in a dearth).
namespace season {

/// A small random generator with the same numbers everywhere (SplitMix64, Steele et al., OOPSLA 2014).
class Dice {
public:
    explicit Dice(std::uint64_t seed) : state_(seed) {}
    double uniform() { return static_cast<double>(next() >> 11) * 0x1.0p-53; }
    double between(double low, double high) { return low + (high - low) * uniform(); }
    int whole(int low, int high) { return low + static_cast<int>(uniform() * (high - low + 1)); }
    double normal() {
        const double u = std::max(uniform(), 1e-300), v = uniform();
        return std::sqrt(-2 * std::log(u)) * std::cos(6.283185307179586 * v);
    }

private:
    std::uint64_t next() {
        state_ += 0x9e3779b97f4a7c15ULL;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
        return z ^ (z >> 31);
    }
    std::uint64_t state_;
};

/// Nectar one middling hive could bring home on each day of a season, kg; below 0 where it lives on its stores.
inline std::vector<double> yard_days(Dice& dice, int days) {
    std::vector<double> bloom(static_cast<std::size_t>(days), 0.0);
    const int flows = dice.whole(2, 4);
    for (int f = 0; f < flows; ++f) {
        const double start = dice.between(0, days - 25), rise = dice.between(2, 9), length = dice.between(10, 34);
        const double peak = std::exp(dice.between(std::log(0.5), std::log(3.2)));
        const double fall = dice.uniform() < 0.5 ? dice.between(1, 3) : dice.between(4, 10);
        for (int d = 0; d < days; ++d) {
            const double t = d - start;
            const double shape = t < 0 ? 0 : t < rise ? t / rise : t < length ? 1 : t < length + fall ? 1 - (t - length) / fall : 0;
            bloom[static_cast<std::size_t>(d)] += peak * shape;
        }
    }
    bool wet = false;
    for (double& day : bloom) {
        wet = dice.uniform() < (wet ? 0.6 : 0.18);
        const double sun = wet ? dice.between(0, 0.35) : dice.between(0.6, 1.3);
        day = day * sun - dice.between(0.03, 0.22);
    }
    return bloom;
}

/// A dry country: one flow in spring, seldom a weak one later, and months in between in which hives live on what they have.
inline std::vector<double> dry_yard_days(Dice& dice, int days) {
    std::vector<double> bloom(static_cast<std::size_t>(days), 0.0);
    const auto flow = [&](double from, double length, double peak) {
        for (int d = 0; d < days; ++d) {
            const double part = (d - from) / length;
            if (part > 0 && part < 1) bloom[static_cast<std::size_t>(d)] += peak * std::sin(3.141592653589793 * part);
        }
    };
    flow(dice.between(-10, 15), dice.between(18, 35), dice.between(0.8, 2.5));
    if (dice.uniform() < 0.35) flow(dice.between(days - 60, days - 15), dice.between(10, 25), dice.between(0.2, 0.8));
    double used = dice.between(0.05, 0.15);
    for (double& day : bloom) {
        // What bees use goes up and down by weeks with brood and heat; a shower brings a little for a few days.
        used = std::clamp(used + 0.02 * dice.normal(), 0.02, 0.25);
        if (dice.uniform() < 0.03) flow(static_cast<double>(&day - bloom.data()), dice.between(3, 6), dice.between(0, 0.3));
        day = day * dice.between(0.5, 1.3) - used;
    }
    return bloom;
}

struct Super {
    double kg = 0;
    double pull = 1;        ///< how much the bees like it
    int on_day = 0;
    bool ever_filled = false;
    int tag = -1;           ///< the caller's own number for it
};

/// One hive through a season.
class Colony {
public:
    Colony(Dice& dice, double full_kg) : full_kg_(full_kg) {
        vigour_ = std::exp(0.32 * dice.normal());
        drift_ = 0;
    }

    /// A day's gain from what the yard gives; what finds no room is lost.
    void live(Dice& dice, double yard) {
        drift_ = 0.97 * drift_ + 0.035 * dice.normal();
        const double own = yard > 0 ? yard * vigour_ * std::exp(drift_) : yard;
        double gain = own + 0.12 * dice.normal();
        if (gain < 0) return use(-gain);
        double room = 0;
        for (const Super& s : supers) room += full_kg_ - s.kg;
        if (gain > room) lost += gain - std::max(room, 0.0), gain = std::max(room, 0.0);
        stored += gain;
        while (gain > 1e-9) gain = store(gain);
        for (Super& s : supers) s.ever_filled = s.ever_filled || s.kg > 0.1 * full_kg_;
    }

    double full_kg() const { return full_kg_; }
    double room() const {
        double sum = 0;
        for (const Super& s : supers) sum += full_kg_ - s.kg;
        return sum;
    }

    std::vector<Super> supers;
    double lost = 0, stored = 0;

private:
    double store(double gain) {
        double pulls = 0;
        for (const Super& s : supers) pulls += s.kg < full_kg_ - 1e-9 ? s.pull : 0;
        if (pulls <= 0) return 0;
        double left = 0;
        for (Super& s : supers) {
            if (s.kg >= full_kg_ - 1e-9) continue;
            const double part = gain * s.pull / pulls, fits = std::min(part, full_kg_ - s.kg);
            s.kg += fits;
            left += part - fits;
        }
        return left;
    }

    void use(double kg) {
        double held = 0;
        for (const Super& s : supers) held += s.kg;
        if (held <= 0) return;
        const double part = std::min(1.0, 0.6 * kg / held);
        for (Super& s : supers) s.kg -= part * s.kg;
    }

    double full_kg_, vigour_, drift_;
};

/// What the keeper writes of a super: percent, by eye, rounded to tens.
inline int eye(Dice& dice, double share, double error = 0.08, int step = 10) {
    const double seen = 100 * (share + error * dice.normal());
    return static_cast<int>(std::clamp(std::round(seen / step) * step, 0.0, 100.0));
}

}  // namespace season
