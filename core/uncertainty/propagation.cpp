// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/propagation.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <array>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cassert>
#include <cmath>
#include <limits>

#include "core/units/language.h"

namespace core {
namespace {

namespace policies = boost::math::policies;

/// Nothing is thrown, and nothing is worked out in long double: five times as fast, and still right to
/// 1e-13.
using Quiet = policies::policy<
    policies::domain_error<policies::ignore_error>, policies::pole_error<policies::ignore_error>,
    policies::overflow_error<policies::ignore_error>, policies::underflow_error<policies::ignore_error>,
    policies::denorm_error<policies::ignore_error>, policies::evaluation_error<policies::ignore_error>,
    policies::rounding_error<policies::ignore_error>,
    policies::indeterminate_result_error<policies::ignore_error>, policies::promote_double<false>>;

double normalFactor(double coverage) {
  return quantile(complement(boost::math::normal_distribution<double, Quiet>(), (1 - coverage) / 2));
}

double studentFactor(double coverage, std::size_t dof) {
  const boost::math::students_t_distribution<double, Quiet> student(static_cast<double>(dof));
  return quantile(complement(student, (1 - coverage) / 2));
}

/// Student's t from the normal quantile z in powers of 1/dof: Abramowitz and Stegun, 26.7.5 (from memory;
/// tested against exact values). Above 200 degrees of freedom within 1e-10 for a coverage up to 0.9973, and
/// 1e-7 for 1 - 1e-12.
double studentFactorOfMany(double z, double dof) {
  const double s = z * z;
  const double g1 = z * (s + 1) / 4;
  const double g2 = z * ((5 * s + 16) * s + 3) / 96;
  const double g3 = z * (((3 * s + 19) * s + 17) * s - 15) / 384;
  const double g4 = z * ((((79 * s + 776) * s + 1482) * s - 1920) * s - 945) / 92160;
  return z + (g1 + (g2 + (g3 + g4 / dof) / dof) / dof) / dof;
}

constexpr std::size_t keptFactors = 200;

/// Coverage factor at `dof` (1 to keptFactors) degrees of freedom; 0 stands for infinitely many. Boost takes
/// 1 us, too long for every step of every channel, so that each thread keeps what it worked out for the
/// coverage it used last.
double keptFactor(double coverage, std::size_t dof) {
  struct Kept {
    double coverage = 0;
    std::array<double, keptFactors + 1> factors{};  // 0: not worked out yet
  };
  thread_local Kept kept;
  if (kept.coverage != coverage) kept = {coverage, {}};
  double& factor = kept.factors[dof];
  if (factor == 0) factor = dof == 0 ? normalFactor(coverage) : studentFactor(coverage, dof);
  return factor;
}

/// Degrees of freedom cut down to a whole number. A single reading-based input with 17 may come out of Welch
/// and Satterthwaite as 16.999999999999996, and that is 17. Their sums have no negative terms, so that even
/// 1000 inputs leave less than 1000 x 2 x 2^-53 = 3e-13 of rounding; within 1e-12 below a whole number, k
/// differs from k there in its 13th digit.
double wholeDegreesOfFreedom(double dof) { return std::max(1.0, std::floor(dof * (1 + 1e-12))); }

bool allFinite(std::span<const double> values) {
  return std::all_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); });
}

double meanOf(std::span<const double> values) {
  const auto n = static_cast<double>(values.size());
  double sum = 0;
  for (double v : values) sum += v;
  // Once more about the first mean, which is rounded when the values are large beside their scatter.
  const double first = sum / n;
  double rest = 0;
  for (double v : values) rest += v - first;
  return first + rest / n;
}

/// sum (x - its mean)(y - its mean).
double productSum(std::span<const double> x, double xMean, std::span<const double> y, double yMean) {
  double sum = 0;
  for (std::size_t k = 0; k < x.size(); ++k) sum += (x[k] - xMean) * (y[k] - yMean);
  return sum;
}

Result<void> checkReadings(std::span<const double> readings) {
  if (readings.size() < 2) {
    return Error{"readings", say("a standard deviation needs two readings at least"),
                 say("Add readings, or state the uncertainty as a tolerance")};
  }
  if (!allFinite(readings)) {
    return Error{"readings", say("one of the readings is no finite number"),
                 say("Correct it or take it out")};
  }
  return {};
}

Error tooLarge() {
  return {"readings", say("the readings are too large to average"), say("Check their unit")};
}

/// Symmetric, with ones on the diagonal, and every number finite.
bool hasFormOfCorrelation(std::span<const double> matrix, std::size_t size) {
  if (!allFinite(matrix)) return false;
  for (std::size_t row = 0; row < size; ++row) {
    if (matrix[row * size + row] != 1) return false;
    for (std::size_t column = 0; column < row; ++column) {
      if (matrix[row * size + column] != matrix[column * size + row]) return false;
    }
  }
  return true;
}

}  // namespace

double covarianceOf(std::span<const double> a, std::span<const double> b, std::span<const double> u,
                    std::span<const CorrelatedPair> pairs) {
  assert(a.size() == u.size() && b.size() == u.size());
  double sum = 0;
  for (std::size_t k = 0; k < u.size(); ++k) sum += (a[k] * u[k]) * (b[k] * u[k]);
  for (const auto& [i, j, coefficient] : pairs) {
    assert(i < j && j < u.size());
    sum += coefficient * ((a[i] * u[i]) * (b[j] * u[j]) + (a[j] * u[j]) * (b[i] * u[i]));
  }
  return sum;
}

double combinedUncertainty(std::span<const double> sensitivities, std::span<const double> u,
                           std::span<const CorrelatedPair> pairs) {
  return std::sqrt(std::max(0.0, covarianceOf(sensitivities, sensitivities, u, pairs)));
}

std::optional<double> effectiveDegreesOfFreedom(std::span<const double> contributions,
                                                std::span<const std::optional<double>> dof) {
  assert(contributions.size() == dof.size() && allFinite(contributions));
  // In units of the largest, since fourth powers of small numbers vanish.
  double largest = 0;
  for (double c : contributions) largest = std::max(largest, std::abs(c));
  double variance = 0;
  for (double c : contributions) variance += (c / largest) * (c / largest);
  double inverse = 0;
  for (std::size_t k = 0; k < dof.size(); ++k) {
    if (!dof[k] || contributions[k] == 0) continue;
    const double share = (contributions[k] / largest) * (contributions[k] / largest) / variance;
    inverse += share * share / *dof[k];
  }
  if (inverse == 0) return std::nullopt;
  return std::max(1 / inverse,
                  std::numeric_limits<double>::min());  // of next to none the inverse is infinite
}

double coverageFactorFor(double coverage, const std::optional<double>& dof) {
  assert(coverage > 0 && coverage < 1);
  if (!dof) return keptFactor(coverage, 0);
  assert(*dof > 0);
  const double whole = wholeDegreesOfFreedom(*dof);
  if (whole > keptFactors) return studentFactorOfMany(keptFactor(coverage, 0), whole);
  return keptFactor(coverage, static_cast<std::size_t>(whole));
}

bool isPositiveSemidefinite(std::span<const double> matrix, std::size_t size) {
  assert(matrix.size() == size * size);
  if (!hasFormOfCorrelation(matrix, size)) return false;
  if (size == 0) return true;
  const auto n = static_cast<Eigen::Index>(size);
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver(
      Eigen::Map<const Eigen::MatrixXd>(matrix.data(), n, n), Eigen::EigenvaluesOnly);
  if (solver.info() != Eigen::Success) return false;
  // Eigenvalues come out right to a small multiple of n epsilon times the largest, and that is at most n
  // (the trace); the coefficients, themselves rounded, move them by n epsilon at most.
  const auto order = static_cast<double>(size);
  const double tolerance = 8 * order * order * std::numeric_limits<double>::epsilon();
  return solver.eigenvalues().minCoeff() >= -tolerance;
}

Result<TypeA> evaluateTypeA(std::span<const double> readings) {
  if (const auto checked = checkReadings(readings); !checked) return checked.error();
  const auto n = static_cast<double>(readings.size());
  TypeA result;
  result.mean = meanOf(readings);
  result.degreesOfFreedom = n - 1;
  const double squares = productSum(readings, result.mean, readings, result.mean);
  result.standardUncertainty = std::sqrt(squares / (n - 1) / n);
  if (!std::isfinite(result.standardUncertainty)) return tooLarge();
  return result;
}

Result<double> correlationOfMeans(std::span<const double> first, std::span<const double> second) {
  if (first.size() != second.size()) {
    return Error{"readings", say("the two series have different numbers of readings"),
                 say("Pair each reading of one with the reading of the other taken at the same time")};
  }
  for (const auto series : {first, second}) {
    if (const auto checked = checkReadings(series); !checked) return checked.error();
  }
  const double mean1 = meanOf(first), mean2 = meanOf(second);
  const double squares1 = productSum(first, mean1, first, mean1);
  const double squares2 = productSum(second, mean2, second, mean2);
  if (squares1 == 0 || squares2 == 0) {
    return Error{"readings", say("one of the two series does not vary, so that it has no correlation"),
                 say("Leave the two independent")};
  }
  if (!std::isfinite(squares1) || !std::isfinite(squares2)) return tooLarge();
  const double r = productSum(first, mean1, second, mean2) / (std::sqrt(squares1) * std::sqrt(squares2));
  return std::clamp(r, -1.0, 1.0);
}

double enNumber(double difference, double expanded1, double expanded2, double sharedExpanded) {
  // (U1 - S)(U1 + S) is U1^2 - S^2 without cancellation; rounding must not make a shared part larger than
  // the whole.
  const double own1 = std::max(0.0, (expanded1 - sharedExpanded) * (expanded1 + sharedExpanded));
  const double own2 = std::max(0.0, (expanded2 - sharedExpanded) * (expanded2 + sharedExpanded));
  if (difference == 0) return 0;
  return difference / std::sqrt(own1 + own2);
}

}  // namespace core
