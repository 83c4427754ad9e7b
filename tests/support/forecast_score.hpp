#pragma once
#include <algorithm>
#include <cmath>
#include <vector>

#include "estimate/judged.hpp"
#include "season_generator.hpp"

namespace waxtab {

/// How forecasts of rounded and cut readings held. Coverage by the randomised probability integral transform
/// (Czado, Gneiting & Held, Biometrics 65, 2009), since a rounded reading falls inside a range too easily.
struct ForecastScore {
    int n = 0, with_line = 0;
    double in_80 = 0, in_50 = 0, error = 0, bias = 0, no_change = 0, line = 0, error_with_line = 0, interval = 0;
    std::vector<double> off_no_change, off_line;

    void add(const Judged& j, season::Dice& dice, double rounded_to = 0.1) {
        const double half = rounded_to / 2;
        const double low = j.read <= 0.001 ? 0 : j.below((j.read_full ? 1.0 : j.read) - half);
        const double high = j.read_full ? 1 : j.below(j.read + half);
        const double u = low + (high - low) * dice.uniform();
        ++n;
        in_80 += u > 0.1 && u < 0.9 ? 1 : 0;
        in_50 += u > 0.25 && u < 0.75 ? 1 : 0;
        const double miss = j.expected() - j.read;
        error += std::abs(miss), bias += miss;
        no_change += std::abs(j.no_change - j.read);
        off_no_change.push_back(std::abs(j.no_change - j.read));
        const double from = j.low(z80), to = j.high(z80);
        interval += interval_score(from, to, j.read);
        if (!j.line) return;
        ++with_line;
        line += std::abs(*j.line - j.read), error_with_line += std::abs(miss);
        off_line.push_back(std::abs(*j.line - j.read));
    }

    double cover_80() const { return in_80 / n; }
    double cover_50() const { return in_50 / n; }
    double to_line() const { return error_with_line / line; }
    double to_no_change() const { return error / no_change; }
    double interval_mean() const { return interval / n; }

    /// Score of an 80 % range (Gneiting & Raftery, J. Am. Stat. Assoc. 102, 2007, eq. 43): smaller is better.
    static double interval_score(double low, double high, double x) {
        return high - low + 10 * std::max(0.0, low - x) + 10 * std::max(0.0, x - high);
    }

    /// The score of a rule of thumb with the constant half-width that suits it best after the fact.
    static double best_constant(const std::vector<double>& off) {
        double best = 1e9;
        for (double width = 0; width < 1; width += 0.01) {
            double sum = 0;
            for (double x : off) sum += interval_score(-width, width, x);
            best = std::min(best, sum / static_cast<double>(off.size()));
        }
        return best;
    }
};

}  // namespace waxtab
