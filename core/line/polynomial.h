// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/units/result.h"

namespace core {

/// A least-squares polynomial y = sum of coefficients[k] * x^k, to judge the curvature of a line.
/// Conventions as in core::Line; what needs a degree of freedom is absent without one.
struct Polynomial {
  std::vector<double> coefficients;                            ///< degree + 1, constant term first
  std::optional<std::vector<double>> errors;                   ///< standard errors of the coefficients
  std::optional<std::vector<std::vector<double>>> covariance;  ///< of the coefficients, full matrix
  std::optional<double> residualDeviation;
  std::optional<double> rSquared;  ///< about the mean; absent when the y do not vary
  double residualSumOfSquares = 0;
  int degreesOfFreedom = 0;
  std::vector<double> residuals;
};

/// Greatest degree fitPolynomial takes.
constexpr int greatestDegree = 12;

/// Fits by polynomials made orthogonal on the points one degree after the other, in double-double, and
/// transformed to powers of x with the full covariance. This is the QR factorisation of the powers
/// without ever forming their ill-conditioned matrix.
/// Source: Forsythe, "Generation and use of orthogonal polynomials for data-fitting", 1957.
/// Fails as fitLine does, on a degree outside 0 to greatestDegree, and when fewer than degree + 1
/// different x are given.
Result<Polynomial> fitPolynomial(std::span<const double> x, std::span<const double> y, int degree);

/// Horner's rule on the rounded coefficients: for a high degree far from zero, digits cancel.
double valueAt(const Polynomial& polynomial, double x);

}  // namespace core
