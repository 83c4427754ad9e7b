#include "estimate/field.hpp"

namespace waxtab {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

/// A hive given the shared state g: own = offset + slope g + rest, rest independent of every other hive.
struct Given {
    VectorXd offset;
    MatrixXd slope;
    MatrixXd rest;
};

/// Hives independent of each other given the shared state. Because the shared state holds the flow added up
/// over the last step, what the hives' gains have in common is kept; only what older steps left is not.
class StarField final : public Field {
public:
    using Field::mark;
    explicit StarField(const Gaussian& shared) : shared_(shared) {}

    int insert(const Gaussian& own) override {
        hives_.push_back({own.mean, MatrixXd::Zero(own.mean.size(), shared_size), own.cov});
        return static_cast<int>(hives_.size()) - 1;
    }

    void erase(int hive) override { hives_[at(hive)] = Given{}; }

    void append(int hive, Moments x) override {
        Given& h = hives_[at(hive)];
        const int n = static_cast<int>(h.offset.size());
        h.offset.conservativeResize(n + 1);
        h.slope.conservativeResize(n + 1, shared_size);
        h.rest.conservativeResize(n + 1, n + 1);
        h.offset(n) = x.mean;
        h.slope.row(n).setZero();
        h.rest.row(n).setZero();
        h.rest.col(n).setZero();
        h.rest(n, n) = x.var;
    }

    void drop(int hive, int k) override {
        Given& h = hives_[at(hive)];
        const int n = static_cast<int>(h.offset.size());
        std::vector<int> keep;
        for (int i = 0; i < n; ++i)
            if (i != k) keep.push_back(i);
        Given out{VectorXd(n - 1), MatrixXd(n - 1, shared_size), MatrixXd(n - 1, n - 1)};
        for (int i = 0; i < n - 1; ++i) {
            out.offset(i) = h.offset(keep[at(i)]);
            out.slope.row(i) = h.slope.row(keep[at(i)]);
            for (int j = 0; j < n - 1; ++j) out.rest(i, j) = h.rest(keep[at(i)], keep[at(j)]);
        }
        h = out;
    }

    void step_shared(const Step& step) override {
        // Hives hang on the shared state before the step: turn them to hang on the one after it.
        const MatrixXd cross = shared_.cov * step.T.transpose();
        const MatrixXd after = step.T * cross + step.Q;
        const MatrixXd back = after.ldlt().solve(cross.transpose()).transpose();
        const MatrixXd left = shared_.cov - back * cross.transpose();
        const VectorXd mean = step.T * shared_.mean + step.c;
        const VectorXd origin = shared_.mean - back * mean;
        for (Given& h : hives_) {
            if (h.offset.size() == 0) continue;
            h.rest += h.slope * left * h.slope.transpose();
            h.offset += h.slope * origin;
            h.slope = (h.slope * back).eval();
        }
        shared_ = {mean, 0.5 * (after + after.transpose())};
    }

    void step_hive(int hive, const Step& step) override {
        Given& h = hives_[at(hive)];
        const MatrixXd own = step.T.rightCols(h.offset.size());
        h.offset = (own * h.offset + step.c).eval();
        h.slope = (own * h.slope + step.T.leftCols(shared_size)).eval();
        h.rest = (own * h.rest * own.transpose() + step.Q).eval();
    }

    void observe(int hive, const VectorXd& z, double y, double var) override {
        Given& h = hives_[at(hive)];
        const int n = static_cast<int>(h.offset.size());
        const VectorXd own = z.tail(n);
        // Seen from the shared state the reading carries the hive's own uncertainty as error.
        const VectorXd pz = h.rest * own;
        const double inner = own.dot(pz) + var;
        const VectorXd outer = z.head(shared_size) + h.slope.transpose() * own;
        observe_shared(outer, y - own.dot(h.offset), inner);
        const VectorXd gain = pz / inner;
        h.offset += gain * (y - own.dot(h.offset));
        h.slope -= gain * outer.transpose();
        h.rest -= gain * pz.transpose();
    }

    void observe_shared(const VectorXd& z, double y, double var) override {
        const VectorXd pz = shared_.cov * z;
        const double total = z.dot(pz) + var, error = y - z.dot(shared_.mean);
        shared_.mean += pz * (error / total);
        shared_.cov -= pz * pz.transpose() / total;
        score(error, total);
    }

    Gaussian local(int hive) const override {
        const Given& h = hives_[at(hive)];
        const int n = static_cast<int>(h.offset.size());
        Gaussian out{VectorXd(shared_size + n), MatrixXd(shared_size + n, shared_size + n)};
        const MatrixXd cross = h.slope * shared_.cov;
        out.mean << shared_.mean, h.offset + h.slope * shared_.mean;
        out.cov.topLeftCorner(shared_size, shared_size) = shared_.cov;
        out.cov.bottomLeftCorner(n, shared_size) = cross;
        out.cov.topRightCorner(shared_size, n) = cross.transpose();
        out.cov.bottomRightCorner(n, n) = h.rest + cross * h.slope.transpose();
        return out;
    }

    Gaussian shared() const override { return shared_; }
    int mark(int, const VectorXd&) override { return -1; }
    std::vector<Moments> smoothed() const override { return {}; }

private:
    Gaussian shared_;
    std::vector<Given> hives_;
};

}  // namespace

std::unique_ptr<Field> star_field(const Gaussian& shared) { return std::make_unique<StarField>(shared); }

}  // namespace waxtab
