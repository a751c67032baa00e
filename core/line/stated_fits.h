// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/line/line.h"

// Lines through points whose uncertainties are stated, by ISO/TS 28037:2010. Standard uncertainties of all
// points are in the units of x and y. Covariance matrices are full, row after row, symmetric and positive
// definite.
//
// All fail as fitLine does, and, naming the point, row or column counted from 1: on an uncertainty that is
// not a positive finite number (of x: not negative), on a covariance within a point that its uncertainties do
// not admit, on a matrix of another size, that is not symmetric, or that is singular or not positive
// definite; and when the iteration does not settle.

namespace core {

enum class Through : std::uint8_t { Anywhere, Zero };

/// Clause 6: x exact, y independent with standard uncertainties `uy`.
Result<Line> fitWeightedLine(std::span<const double> x, std::span<const double> y, std::span<const double> uy,
                             Through through = Through::Anywhere);

/// Clauses 7 and 8: points independent of each other, `ux` and `uy` their standard uncertainties,
/// `covariances` of x and y within each point (empty: none). Uncertainties of intercept and slope are those
/// at the adjusted points, as York (2004) states them; the law of propagation through the estimator gives
/// slightly others. Where the uncertainties are as wide as the points lie apart there may be several minima;
/// the one found is downhill of the better of the lines of y on x and of x on y.
Result<Line> fitDistanceLine(std::span<const double> x, std::span<const double> y, std::span<const double> ux,
                             std::span<const double> uy, std::span<const double> covariances = {},
                             Through through = Through::Anywhere);

/// Clause 9: x exact, `covariance` (m x m) of y.
Result<Line> fitCorrelatedLine(std::span<const double> x, std::span<const double> y,
                               std::span<const double> covariance, Through through = Through::Anywhere);

/// Clause 10: `covariance` (2m x 2m) of x_1..x_m, y_1..y_m. An x may be exact: its row and column are zero.
Result<Line> fitGeneralisedLine(std::span<const double> x, std::span<const double> y,
                                std::span<const double> covariance, Through through = Through::Anywhere);

}  // namespace core
