// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

// Tails of the distributions that differences are tested with. Degrees of freedom need not be whole (Welch
// and Satterthwaite); without any, Student's t is the normal distribution. What has no answer is NaN.

namespace core {

/// Probability of a t with `dof` degrees of freedom (above 0) to be above `t`.
double studentExceeded(double t, const std::optional<double>& dof);

/// Value that t stays below with `probability` (between 0 and 1).
double studentQuantile(double probability, const std::optional<double>& dof);

/// Probability of F with `dof1` over `dof2` degrees of freedom to be at least `f`.
double fisherExceeded(double f, double dof1, double dof2);

}  // namespace core
