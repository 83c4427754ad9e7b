#pragma once
#include <memory>
#include <vector>

#include "estimate/model.hpp"

namespace waxtab {

/// What is believed of one yard: its flow, and the own state of each hive in it.
///
/// A hive is reached through its local state: the shared state followed by its own. Hives are numbered by
/// the field (`insert` gives the number). Two kinds: `joint_field` keeps every covariance and is exact;
/// `star_field` takes hives as independent of each other given the shared state, so that its cost grows only
/// with the number of hives.
class Field {
public:
    virtual ~Field() = default;

    /// Adds a hive with this own state, independent of all else.
    virtual int insert(const Gaussian& own) = 0;
    virtual void erase(int hive) = 0;
    /// Adds one quantity at the end of a hive's own state, independent of all else.
    virtual void append(int hive, Moments x) = 0;
    /// Takes quantity `k` out of a hive's own state.
    virtual void drop(int hive, int k) = 0;

    virtual void step_shared(const Step& step) = 0;
    /// Own state of a hive from its local state.
    virtual void step_hive(int hive, const Step& step) = 0;
    /// Takes in a reading y = z . local + error of variance `var`. `z` spans the local state.
    virtual void observe(int hive, const Eigen::VectorXd& z, double y, double var) = 0;
    /// Takes in that z . local lies above (`side` +1) or below (-1) `bound`, itself read with error `soft` (s.d.).
    void observe_side(int hive, const Eigen::VectorXd& z, double bound, double soft, int side);
    /// Takes in a reading of the shared state alone.
    virtual void observe_shared(const Eigen::VectorXd& z, double y, double var) = 0;

    virtual Gaussian local(int hive) const = 0;
    virtual Gaussian shared() const = 0;

    /// Remembers z . local as it is now, for `smoothed`; -1 where nothing is remembered.
    virtual int mark(int hive, const Eigen::VectorXd& z) = 0;
    /// The same of quantity `k` of a hive's own state.
    int mark(int hive, int k);
    /// The marked quantities in the light of everything taken in since, by mark.
    virtual std::vector<Moments> smoothed() const = 0;

    /// Natural logarithm of the density of all readings so far.
    double log_likelihood() const { return log_likelihood_; }
    /// Readings taken in while false do not count in the likelihood.
    void count_readings(bool yes) { counting_ = yes; }

protected:
    /// Counts a reading that fell `error` from where it was expected with variance `var`.
    void score(double error, double var);

private:
    double log_likelihood_ = 0;
    bool counting_ = true;
};

std::unique_ptr<Field> joint_field(const Gaussian& shared);
std::unique_ptr<Field> star_field(const Gaussian& shared);

}  // namespace waxtab
