// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/line/double_double.h"
#include "core/line/line.h"
#include "core/line/whitening.h"

// The part that all fits to stated uncertainties share: least squares of whitened readings on two whitened,
// orthogonal columns, 1 and x - centre (QR by Gram-Schmidt). In ISO/TS 28037:2010, clauses 6 to 10, they are
// f and g~, their squared lengths F^2 and G~^2.

namespace core {

/// Least squares with the covariance behind `whitening`, at the x it was made with.
struct LineBasis {
  DoubleDouble centre;            ///< weighted mean of x; 0 through zero
  std::vector<double> offsets;    ///< x less centre
  std::vector<double> one, ramp;  ///< whitened columns; `one` is empty through zero
  double oneSquare = 0;           ///< F^2: 1 / variance of the line at the centre
  double rampSquare = 0;          ///< G~^2: 1 / variance of the slope
};

/// Squares are zero, and nothing can be fitted, when all x are equal.
LineBasis lineBasis(const Whitening& whitening, std::span<const double> x, bool throughZero);

/// y = atCentre + slope (x - centre), with twice the digits of a double: residuals of points far from zero
/// do not suffer, and a fit to what is left over mends the rounding of the fit before it.
struct CentredLine {
  DoubleDouble centre, atCentre, slope;

  DoubleDouble intercept() const { return atCentre - slope * centre; }
  CentredLine about(DoubleDouble newCentre) const;
};

std::vector<double> residualsOf(const CentredLine& line, std::span<const double> x,
                                std::span<const double> y);

/// `line` moved by the least-squares line of `whitenedResiduals`.
CentredLine corrected(const LineBasis& basis, CentredLine line, std::span<const double> whitenedResiduals);

/// Everything that `Line` holds, the x and y being in `xUnit` and `yUnit`; not yet the adjusted x.
Line statedLine(LineFit fit, const Whitening& whitening, const LineBasis& basis, const CentredLine& line,
                std::vector<double> residuals, double xUnit, double yUnit);

}  // namespace core
