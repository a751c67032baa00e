// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "core/units/result.h"

namespace core {

/// Correlation coefficient of two inputs, i < j. Pairs that are not listed are independent.
struct CorrelatedPair {
  std::size_t i = 0, j = 0;
  double coefficient = 0;
};

/// Covariance of two results from the same inputs (JCGM 100:2008, 5.2; JCGM 102:2011, 6.2):
/// sum_i a_i b_i u_i^2 + sum over pairs r u_i u_j (a_i b_j + a_j b_i), with a and b their sensitivities.
/// Of a result with itself: its combined variance.
double covarianceOf(std::span<const double> a, std::span<const double> b, std::span<const double> u,
                    std::span<const CorrelatedPair> pairs);

/// Combined standard uncertainty, the root of the covariance of a result with itself; 0 where rounding leaves
/// a variance just below zero, as when two fully correlated inputs cancel.
double combinedUncertainty(std::span<const double> sensitivities, std::span<const double> u,
                           std::span<const CorrelatedPair> pairs);

/// Effective degrees of freedom by Welch and Satterthwaite (JCGM 100:2008, G.4.1), not rounded; none means
/// infinite, as when no input with finite degrees of freedom contributes. `contributions` are c_i u_i; `dof`
/// of infinite inputs are none, the others above zero. Valid for independent inputs
/// only: the caller must not use it with correlated ones that contribute.
std::optional<double> effectiveDegreesOfFreedom(std::span<const double> contributions,
                                                std::span<const std::optional<double>> dof);

/// k so that y +- k u covers the share `coverage` (above 0, below 1, say 0.9545): Student's t at `dof` cut
/// down to a whole number (JCGM 100:2008, G.4.1), or normal without `dof`. Never rounded up, but within a
/// share of 1e-12 below a whole number, which is rounding, it is that number. Below one degree of freedom: at
/// one. Right to ten digits for a coverage up to 0.9973. Any thread may call it; some ten nanoseconds once a
/// thread has met the coverage and the whole number, 1 us before.
double coverageFactorFor(double coverage, const std::optional<double>& dof);

/// Whether a matrix of correlation coefficients (row by row, `size` x `size`) can exist: it is symmetric with
/// ones on the diagonal, and its smallest eigenvalue is not below zero beyond rounding.
bool isPositiveSemidefinite(std::span<const double> matrix, std::size_t size);

/// A series of readings of one quantity (JCGM 100:2008, 4.2).
struct TypeA {
  double mean = 0;
  double standardUncertainty = 0;  ///< of the mean: s / sqrt(n)
  double degreesOfFreedom = 0;     ///< n - 1
};
/// Fails with fewer than two readings, or one that is no finite number.
Result<TypeA> evaluateTypeA(std::span<const double> readings);

/// Correlation coefficient of the means of two series read together (JCGM 100:2008, 5.2.3), -1 to 1. Fails
/// when their lengths differ, as `evaluateTypeA` does, and when one of them does not vary.
Result<double> correlationOfMeans(std::span<const double> first, std::span<const double> second);

/// E_n of a difference of two values (ISO 13528, ISO/IEC 17043): difference / sqrt(U1^2 + U2^2 - 2 k^2 cov),
/// both U with the same k. `sharedExpanded` is k times the standard uncertainty common to both; it cancels
/// in the difference. Signed as the difference; infinite where a difference stands against no uncertainty.
double enNumber(double difference, double expanded1, double expanded2, double sharedExpanded = 0);

}  // namespace core
