#include <cmath>
#include <variant>

#include "estimate/field.hpp"

namespace waxtab {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;
using Slots = std::vector<int>;

/// What was done to the state, kept for the backward pass.
struct Mapped { Slots to, from; MatrixXd T; };      ///< rows `to` became T times rows `from`
struct Renewed { int slot; };                       ///< a slot got a quantity independent of the past
struct Read { Slots at; VectorXd z, gain; double error, var; };
struct Marked { VectorXd row; double mean, var; };   ///< covariance with everything, and own moments
using Deed = std::variant<Mapped, Renewed, Read, Marked>;

/// Runs the log backward: r and N of the Bryson-Frazier form of the fixed-interval smoother
/// (de Jong, Biometrika 75, 1988). Nothing is inverted.
class Backward {
public:
    explicit Backward(int n) : r_(VectorXd::Zero(n)), N_(MatrixXd::Zero(n, n)) {}

    void operator()(const Mapped& m) {
        const VectorXd hit = pick(r_, m.to);
        for (int s : m.to) r_(s) = 0;
        const VectorXd back = m.T.transpose() * hit;
        for (std::size_t i = 0; i < m.from.size(); ++i) r_(m.from[i]) += back(static_cast<int>(i));
        // A' N A, where only the rows and columns of the map differ from N's.
        MatrixXd part(static_cast<int>(m.to.size()), N_.cols());
        for (std::size_t i = 0; i < m.to.size(); ++i) part.row(static_cast<int>(i)) = N_.col(m.to[i]).transpose();
        for (int s : m.to) N_.col(s).setZero();
        const MatrixXd cols = part.transpose() * m.T;
        for (std::size_t i = 0; i < m.from.size(); ++i) N_.col(m.from[i]) += cols.col(static_cast<int>(i));
        for (std::size_t i = 0; i < m.to.size(); ++i) part.row(static_cast<int>(i)) = N_.row(m.to[i]);
        for (int s : m.to) N_.row(s).setZero();
        const MatrixXd rows = m.T.transpose() * part;
        for (std::size_t i = 0; i < m.from.size(); ++i) N_.row(m.from[i]) += rows.row(static_cast<int>(i));
    }
    void operator()(const Renewed& f) {
        r_(f.slot) = 0;
        N_.row(f.slot).setZero();
        N_.col(f.slot).setZero();
    }
    void operator()(const Read& o) {
        const int n = static_cast<int>(o.gain.size());
        const double rk = o.gain.dot(r_.head(n));
        const VectorXd Nk = N_.leftCols(n) * o.gain;
        const double kNk = o.gain.dot(Nk.head(n));
        for (std::size_t i = 0; i < o.at.size(); ++i) r_(o.at[i]) += o.z(static_cast<int>(i)) * (o.error / o.var - rk);
        for (std::size_t i = 0; i < o.at.size(); ++i) {
            const double zi = o.z(static_cast<int>(i));
            N_.row(o.at[i]) -= zi * Nk.transpose();
            N_.col(o.at[i]) -= zi * Nk;
        }
        for (std::size_t i = 0; i < o.at.size(); ++i)
            for (std::size_t j = 0; j < o.at.size(); ++j)
                N_(o.at[i], o.at[j]) += o.z(static_cast<int>(i)) * o.z(static_cast<int>(j)) * (kNk + 1 / o.var);
    }
    void operator()(const Marked& m) {
        const int n = static_cast<int>(m.row.size());
        const double var = m.var - m.row.dot(N_.topLeftCorner(n, n) * m.row);
        found.push_back({m.mean + m.row.dot(r_.head(n)), var});
    }

    std::vector<Moments> found;   ///< last mark first

private:
    static VectorXd pick(const VectorXd& x, const Slots& at) {
        VectorXd out(static_cast<int>(at.size()));
        for (std::size_t i = 0; i < at.size(); ++i) out(static_cast<int>(i)) = x(at[i]);
        return out;
    }
    VectorXd r_;
    MatrixXd N_;
};

/// All covariances of a yard in one matrix; a hive owns some of its rows.
class JointField final : public Field {
public:
    using Field::mark;
    explicit JointField(const Gaussian& shared) : mean_(shared.mean), cov_(shared.cov) {}

    int insert(const Gaussian& own) override {
        hives_.emplace_back();
        const int hive = static_cast<int>(hives_.size()) - 1;
        for (int i = 0; i < own.mean.size(); ++i) append(hive, {own.mean(i), own.cov(i, i)});
        const Slots& slots = hives_.back();
        for (int i = 0; i < own.mean.size(); ++i)
            for (int j = 0; j < own.mean.size(); ++j) cov_(slots[at(i)], slots[at(j)]) = own.cov(i, j);
        return hive;
    }

    void erase(int hive) override {
        Slots& slots = hives_[at(hive)];
        while (!slots.empty()) drop(hive, static_cast<int>(slots.size()) - 1);
    }

    void append(int hive, Moments x) override {
        const int slot = take_slot();
        mean_(slot) = x.mean;
        cov_(slot, slot) = x.var;
        hives_[at(hive)].push_back(slot);
        log_.push_back(Renewed{slot});
    }

    void drop(int hive, int k) override {
        Slots& slots = hives_[at(hive)];
        const int slot = slots[at(k)];
        mean_(slot) = 0;
        cov_.row(slot).setZero();
        cov_.col(slot).setZero();
        slots.erase(slots.begin() + k);
        free_.push_back(slot);
        log_.push_back(Renewed{slot});
    }

    void step_shared(const Step& step) override { map({0, 1, 2}, {0, 1, 2}, step); }

    void step_hive(int hive, const Step& step) override { map(hives_[at(hive)], local_slots(hive), step); }

    void observe(int hive, const VectorXd& z, double y, double var) override { read(local_slots(hive), z, y, var); }
    void observe_shared(const VectorXd& z, double y, double var) override { read({0, 1, 2}, z, y, var); }

    Gaussian local(int hive) const override { return part(local_slots(hive)); }
    Gaussian shared() const override { return part({0, 1, 2}); }

    int mark(int hive, const VectorXd& z) override {
        const Slots slots = local_slots(hive);
        Marked marked{VectorXd::Zero(mean_.size()), 0, 0};
        for (int i = 0; i < z.size(); ++i) {
            if (z(i) == 0) continue;
            marked.row += z(i) * cov_.col(slots[at(i)]);
            marked.mean += z(i) * mean_(slots[at(i)]);
        }
        for (int i = 0; i < z.size(); ++i) marked.var += z(i) * marked.row(slots[at(i)]);
        log_.push_back(std::move(marked));
        return marks_++;
    }

    std::vector<Moments> smoothed() const override {
        Backward backward(static_cast<int>(mean_.size()));
        if (marks_ > 0)
            for (auto deed = log_.rbegin(); deed != log_.rend(); ++deed) std::visit(backward, *deed);
        return {backward.found.rbegin(), backward.found.rend()};
    }

private:
    Slots local_slots(int hive) const {
        Slots slots{0, 1, 2};
        slots.insert(slots.end(), hives_[at(hive)].begin(), hives_[at(hive)].end());
        return slots;
    }

    int take_slot() {
        if (!free_.empty()) {
            const int slot = free_.back();
            free_.pop_back();
            return slot;
        }
        const int n = static_cast<int>(mean_.size());
        mean_.conservativeResize(n + 1);
        cov_.conservativeResize(n + 1, n + 1);
        mean_(n) = 0;
        cov_.row(n).setZero();
        cov_.col(n).setZero();
        return n;
    }

    Gaussian part(const Slots& slots) const {
        const int n = static_cast<int>(slots.size());
        Gaussian out{VectorXd(n), MatrixXd(n, n)};
        for (int i = 0; i < n; ++i) {
            out.mean(i) = mean_(slots[at(i)]);
            for (int j = 0; j < n; ++j) out.cov(i, j) = cov_(slots[at(i)], slots[at(j)]);
        }
        return out;
    }

    void map(const Slots& to, const Slots& from, const Step& step) {
        const int n = static_cast<int>(mean_.size());
        VectorXd x(static_cast<int>(from.size()));
        MatrixXd rows(static_cast<int>(from.size()), n);
        for (int i = 0; i < x.size(); ++i) {
            x(i) = mean_(from[at(i)]);
            rows.row(i) = cov_.row(from[at(i)]);
        }
        const VectorXd moved = step.T * x + step.c;
        const MatrixXd cross = step.T * rows;             // cov(new, old everything)
        MatrixXd inner(static_cast<int>(to.size()), static_cast<int>(from.size()));
        for (int j = 0; j < inner.cols(); ++j) inner.col(j) = cross.col(from[at(j)]);
        const MatrixXd own = inner * step.T.transpose() + step.Q;
        for (int i = 0; i < moved.size(); ++i) {
            mean_(to[at(i)]) = moved(i);
            cov_.row(to[at(i)]) = cross.row(i);
            cov_.col(to[at(i)]) = cross.row(i).transpose();
        }
        for (int i = 0; i < moved.size(); ++i)
            for (int j = 0; j < moved.size(); ++j) cov_(to[at(i)], to[at(j)]) = 0.5 * (own(i, j) + own(j, i));
        log_.push_back(Mapped{to, from, step.T});
    }

    void read(const Slots& slots, const VectorXd& z, double y, double var) {
        VectorXd pz = VectorXd::Zero(mean_.size());
        double expected = 0;
        for (int i = 0; i < z.size(); ++i) {
            if (z(i) == 0) continue;
            pz += z(i) * cov_.col(slots[at(i)]);
            expected += z(i) * mean_(slots[at(i)]);
        }
        double total = var;
        for (int i = 0; i < z.size(); ++i) total += z(i) * pz(slots[at(i)]);
        const double error = y - expected;
        const VectorXd gain = pz / total;
        mean_ += gain * error;
        cov_.noalias() -= gain * pz.transpose();
        score(error, total);
        log_.push_back(Read{slots, z, gain, error, total});
    }

    VectorXd mean_;
    MatrixXd cov_;
    std::vector<Slots> hives_;
    Slots free_;
    std::vector<Deed> log_;
    int marks_ = 0;
};

}  // namespace

std::unique_ptr<Field> joint_field(const Gaussian& shared) { return std::make_unique<JointField>(shared); }

}  // namespace waxtab
