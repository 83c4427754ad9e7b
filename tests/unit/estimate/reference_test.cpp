// The joint filter and smoother against an independent implementation: values made by tests/reference/joint_filter.py
// with the Kalman smoother of statsmodels (Seabold & Perktold, SciPy 2010).
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>

#include "estimate/field.hpp"

using namespace waxtab;

namespace {

Parameters parameters() {
    Parameters p;
    p.flow_sd = 0.8, p.flow_days = 11, p.calm = 1;
    p.hive_sd = 0.3, p.hive_days = 25;
    p.level_sd = 0.35, p.level_days = 70;
    p.normal_peak = 0.4, p.normal_dearth = -0.1, p.wobble = 0.25;
    return p;
}

/// Relative to the larger of the two, or absolute below one.
double off(double a, double b) { return std::abs(a - b) / std::max({std::abs(a), std::abs(b), 1.0}); }

/// One case of the file, walked through by a field.
class Walk {
public:
    explicit Walk(int hives) {
        Gaussian shared{Eigen::Vector3d(0.3, 0, 0), Eigen::Matrix3d::Zero()};
        shared.cov(at_flow, at_flow) = 0.6;
        shared.cov(at_level, at_level) = 0.1225;
        shared.cov(at_flow, at_level) = shared.cov(at_level, at_flow) = 0.1;
        field = joint_field(shared);
        for (int i = 0; i < hives; ++i) {
            Gaussian own{Eigen::Vector3d(0, 0, 5), Eigen::Vector3d(0.09, 0, 1.5).asDiagonal()};
            field->insert(own);
        }
        count = hives;
    }

    void go_to(int day) {
        if (day == at) return;
        const Day from = date::sys_days{date::year{2026} / 5 / 4} + date::days{at};
        field->step_shared(shared_step(parameters(), Settings{}, from, day - at, 0.5));
        // One super of endless room: all of the gain goes there.
        for (int i = 0; i < count; ++i)
            field->step_hive(i, hive_step(parameters(), day - at, field->local(i), {{1e6, 1}}, false));
        at = day;
    }

    void read(int hive, double kg, double error) {
        Eigen::VectorXd z = Eigen::VectorXd::Zero(shared_size + 3);
        z(shared_size + first_super) = 1;
        field->observe(hive, z, kg, error * error);
    }

    std::unique_ptr<Field> field;
    int count = 0, at = 0;
};

/// The same quantities, filtered and smoothed, found and expected.
struct Worst { double filtered = 0, smoothed = 0, likelihood = 0; int compared = 0; };

Worst walk_file(const std::string& path) {
    std::ifstream in(path);
    Worst worst;
    std::unique_ptr<Walk> walk;
    std::vector<Moments> expected;
    std::string line, word;
    while (std::getline(in, line)) {
        std::istringstream s(line);
        s >> word;
        int hive = 0;
        double a = 0, b = 0, c = 0, d = 0;
        if (word == "case") s >> hive, walk = std::make_unique<Walk>(hive), expected.clear();
        if (word == "visit") s >> hive, walk->go_to(hive);
        if (word == "read") s >> hive >> a >> b, walk->read(hive, a, b);
        if (word == "flow") {
            s >> a >> b;
            const Gaussian g = walk->field->shared();
            worst.filtered = std::max({worst.filtered, off(g.mean(at_flow), a), off(g.cov(at_flow, at_flow), b)});
        }
        if (word == "honey") {
            s >> hive >> a >> b >> c >> d;
            const Gaussian l = walk->field->local(hive);
            const int at = shared_size + first_super;
            worst.filtered = std::max({worst.filtered, off(l.mean(at), a), off(l.cov(at, at), b)});
            walk->field->mark(hive, first_super);
            expected.push_back({c, d});
        }
        if (word != "loglik") continue;
        s >> a;
        worst.likelihood = std::max(worst.likelihood, off(walk->field->log_likelihood(), a));
        const std::vector<Moments> found = walk->field->smoothed();
        REQUIRE(found.size() == expected.size());
        for (std::size_t i = 0; i < found.size(); ++i)
            worst.smoothed = std::max({worst.smoothed, off(found[i].mean, expected[i].mean), off(found[i].var, expected[i].var)}), ++worst.compared;
    }
    return worst;
}

}  // namespace

TEST_CASE("filter and smoother agree with statsmodels to 1e-6", "[estimate][reference]") {
    const Worst worst = walk_file(WAXTAB_ROOT "/tests/reference/joint_filter.txt");
    INFO("largest relative difference: filter " << worst.filtered << ", smoother " << worst.smoothed << ", likelihood " << worst.likelihood);
    CHECK(worst.compared > 300);
    CHECK(worst.filtered < 1e-6);
    CHECK(worst.smoothed < 1e-6);
    CHECK(worst.likelihood < 1e-6);
}

TEST_CASE("the star field stays close to the joint one", "[estimate][reference]") {
    // The same readings through both: what taking hives as independent given the flow costs at 25 hives.
    const auto shared = [] {
        Gaussian g{Eigen::Vector3d(0.3, 0, 0), Eigen::Matrix3d::Zero()};
        g.cov.diagonal() << 0.6, 0.12, 1e-6;
        return g;
    }();
    const std::unique_ptr<Field> fields[] = {joint_field(shared), star_field(shared)};
    for (const auto& f : fields)
        for (int i = 0; i < 25; ++i) f->insert({Eigen::Vector3d(0, 0, 5), Eigen::Vector3d(0.09, 1e-6, 1.5).asDiagonal()});
    Eigen::VectorXd z = Eigen::VectorXd::Zero(shared_size + 3);
    z(shared_size + first_super) = 1;
    Day day = date::sys_days{date::year{2026} / 5 / 4};
    for (int visit = 1; visit < 8; ++visit) {
        for (const auto& f : fields) {
            f->step_shared(shared_step(parameters(), Settings{}, day, 8, 0.5));
            for (int i = 0; i < 25; ++i) {
                f->step_hive(i, hive_step(parameters(), 8, f->local(i), {{1e6, 1}}, false));
                if ((i + visit) % 3 != 0) f->observe(i, z, 5 + visit * (4 + i % 4), 1.8);
            }
        }
        day += date::days{8};
    }
    const Gaussian a = fields[0]->shared(), b = fields[1]->shared();
    CHECK(b.mean(at_flow) == Approx(a.mean(at_flow)).margin(0.05));
    CHECK(std::sqrt(b.cov(at_flow, at_flow)) == Approx(std::sqrt(a.cov(at_flow, at_flow))).epsilon(0.1));
    double sum = 0;
    for (int i = 0; i < 25; ++i) {
        const Gaussian x = fields[0]->local(i), y = fields[1]->local(i);
        const int at = shared_size + first_super;
        CHECK(y.mean(at) == Approx(x.mean(at)).margin(0.1));
        sum += std::sqrt(y.cov(at, at) / x.cov(at, at)) / 25;
    }
    CHECK(sum == Approx(1).margin(0.05));
}
