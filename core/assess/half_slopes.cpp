// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/half_slopes.h"

#include <cmath>

namespace core {
namespace {

/// The lower triangle of a Cholesky factor, row after row.
class Factor {
 public:
  /// Factors the covariance of `members`. False when it is singular, but for rounding.
  bool factor(const CheckPoints& points, std::span<const std::size_t> members) {
    m_size = members.size();
    m_lower.assign(m_size * m_size, 0.0);
    for (std::size_t i = 0; i < m_size; ++i) {
      for (std::size_t j = 0; j <= i; ++j) {
        const double variance = points.covariance[members[i] * points.size() + members[j]];
        double rest = variance;
        for (std::size_t k = 0; k < j; ++k) rest -= at(i, k) * at(j, k);
        if (i != j) {
          at(i, j) = rest / at(j, j);
        } else if (rest <= 1e-12 * variance) {  // what is left of the variance is rounding
          return false;
        } else {
          at(i, i) = std::sqrt(rest);
        }
      }
    }
    return true;
  }

  /// The inverse of the covariance times `right`.
  std::vector<double> solved(std::vector<double> right) const {
    for (std::size_t i = 0; i < m_size; ++i) {
      for (std::size_t k = 0; k < i; ++k) right[i] -= at(i, k) * right[k];
      right[i] /= at(i, i);
    }
    for (std::size_t i = m_size; i-- > 0;) {
      for (std::size_t k = i + 1; k < m_size; ++k) right[i] -= at(k, i) * right[k];
      right[i] /= at(i, i);
    }
    return right;
  }

 private:
  double& at(std::size_t row, std::size_t column) { return m_lower[row * m_size + column]; }
  double at(std::size_t row, std::size_t column) const { return m_lower[row * m_size + column]; }

  std::size_t m_size = 0;
  std::vector<double> m_lower;
};

double sumOf(const std::vector<double>& a) {
  double sum = 0;
  for (const double value : a) sum += value;
  return sum;
}

double productOf(const std::vector<double>& a, const std::vector<double>& b) {
  double sum = 0;
  for (std::size_t i = 0; i < a.size(); ++i) sum += a[i] * b[i];
  return sum;
}

}  // namespace

SlopeForm slopeOver(const CheckPoints& points, std::span<const std::size_t> members) {
  std::vector<double> x, ones(members.size(), 1.0);
  for (const std::size_t point : members) x.push_back(points.expected[point]);
  const double centre = sumOf(x) / static_cast<double>(x.size());
  for (double& value : x) value -= centre;
  SlopeForm form;
  Factor factor;
  form.hasUsedCovariance = !points.covariance.empty() && factor.factor(points, members);
  const std::vector<double> p = form.hasUsedCovariance ? factor.solved(ones) : ones;
  const std::vector<double> q = form.hasUsedCovariance ? factor.solved(x) : x;
  const double a = sumOf(p), b = sumOf(q), d = productOf(x, q);
  form.weights.assign(points.size(), 0.0);
  for (std::size_t i = 0; i < members.size(); ++i) {
    const double weight = (a * q[i] - b * p[i]) / (a * d - b * b);
    form.weights[members[i]] = weight;
    form.slope += weight * points.measured[members[i]];
  }
  return form;
}

}  // namespace core
