// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The distributions that lines are judged by. Nothing is thrown; what has no answer is NaN.

namespace core {

/// Probability of a chi-square with `dof` (1 or more) to be at least `chiSquare`.
double chiSquareExceeded(double chiSquare, int dof);

/// Value that a chi-square with `dof` stays below with `probability` (between 0 and 1).
double chiSquareQuantile(double probability, double dof);

/// Value that F with `dof1` over `dof2` degrees of freedom stays below with `probability`.
double fisherQuantile(double probability, double dof1, double dof2);

}  // namespace core
