// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

// The distributions that lines and differences are judged by. Degrees of freedom need not be whole (Welch and
// Satterthwaite) unless they are an int. Nothing is thrown; what has no answer is NaN.

namespace core {

/// Probability of a chi-square with `dof` (1 or more) to be at least `chiSquare`.
double chiSquareExceeded(double chiSquare, int dof);

/// Value that a chi-square with `dof` stays below with `probability` (between 0 and 1).
double chiSquareQuantile(double probability, double dof);

/// Value that F with `dof1` over `dof2` degrees of freedom stays below with `probability`.
double fisherQuantile(double probability, double dof1, double dof2);

/// Probability of F with `dof1` over `dof2` degrees of freedom to be at least `f`.
double fisherExceeded(double f, double dof1, double dof2);

/// Probability of Student's t with `dof` degrees of freedom (above 0) to be above `t`; without any, t is the
/// normal distribution.
double studentExceeded(double t, const std::optional<double>& dof);

/// Value that t stays below with `probability` (between 0 and 1).
double studentQuantile(double probability, const std::optional<double>& dof);

}  // namespace core
