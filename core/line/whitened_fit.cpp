// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/whitened_fit.h"

#include <cmath>
#include <numeric>

#include "core/line/distributions.h"

namespace core {
namespace {

double product(std::span<const double> a, std::span<const double> b) {
  return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

DoubleDouble weightedMean(std::span<const double> weights, std::span<const double> x) {
  DoubleDouble sum, total;
  for (std::size_t i = 0; i < x.size(); ++i) {
    sum += DoubleDouble(weights[i]) * x[i];
    total += weights[i];
  }
  return sum / total;
}

/// Residuals over their uncertainty, and the pull of each point. The variance of a residual is that of its
/// reading less that of the line there; the pull on the fitted value is a row of the estimator.
void addShares(Line& line, const Whitening& whitening, const LineBasis& basis) {
  const std::size_t points = line.residuals.size();
  const bool throughZero = basis.one.empty();
  const std::vector<double> pullOfRamp = whitening.weighted(basis.ramp);
  const std::vector<double> pullOfOne = whitening.weighted(basis.one);
  line.leverages.resize(points);
  line.standardised.resize(points);
  for (std::size_t i = 0; i < points; ++i) {
    const double slopeShare = basis.offsets[i] / basis.rampSquare;
    const double fittedVariance = (throughZero ? 0 : 1 / basis.oneSquare) + basis.offsets[i] * slopeShare;
    line.leverages[i] = (throughZero ? 0 : pullOfOne[i] / basis.oneSquare) + slopeShare * pullOfRamp[i];
    const double standard = whitening.standard(i);
    const double freedom = 1 - fittedVariance / standard / standard;
    // Rounding may leave a share of 1e-15 of a point that the line must go through.
    line.standardised[i] = freedom > 1e-12 && line.degreesOfFreedom > 0
                               ? line.residuals[i] / (standard * std::sqrt(freedom))
                               : 0;
  }
}

void toUnits(Line& line, double xUnit, double yUnit) {
  const double slopeUnit = yUnit / xUnit;
  line.intercept *= yUnit;
  line.slope *= slopeUnit;
  *line.interceptError *= yUnit;
  *line.slopeError *= slopeUnit;
  *line.covariance *= slopeUnit * yUnit;
  line.centre *= xUnit;
  *line.centreError *= yUnit;
  if (line.residualDeviation) *line.residualDeviation *= yUnit;
  line.residualSumOfSquares *= yUnit * yUnit;
  for (double& residual : line.residuals) residual *= yUnit;
}

}  // namespace

LineBasis lineBasis(const Whitening& whitening, std::span<const double> x, bool throughZero) {
  LineBasis basis;
  if (!throughZero) {
    basis.one = whitening.whitened(std::vector<double>(x.size(), 1.0));
    basis.oneSquare = product(basis.one, basis.one);
    basis.centre = weightedMean(whitening.weighted(basis.one), x);
  }
  basis.offsets.reserve(x.size());
  for (const double value : x) basis.offsets.push_back((DoubleDouble(value) - basis.centre).value());
  basis.ramp = whitening.whitened(basis.offsets);
  if (!throughZero) {
    const double left = product(basis.one, basis.ramp) / basis.oneSquare;
    for (std::size_t i = 0; i < x.size(); ++i) basis.ramp[i] -= left * basis.one[i];
  }
  basis.rampSquare = product(basis.ramp, basis.ramp);
  return basis;
}

CentredLine CentredLine::about(DoubleDouble newCentre) const {
  return {newCentre, atCentre + slope * (newCentre - centre), slope};
}

std::vector<double> residualsOf(const CentredLine& line, std::span<const double> x,
                                std::span<const double> y) {
  std::vector<double> residuals;
  residuals.reserve(x.size());
  for (std::size_t i = 0; i < x.size(); ++i)
    residuals.push_back(
        (DoubleDouble(y[i]) - line.atCentre - line.slope * (DoubleDouble(x[i]) - line.centre)).value());
  return residuals;
}

CentredLine corrected(const LineBasis& basis, CentredLine line, std::span<const double> whitenedResiduals) {
  line = line.about(basis.centre);
  line.slope += product(basis.ramp, whitenedResiduals) / basis.rampSquare;
  if (!basis.one.empty()) line.atCentre += product(basis.one, whitenedResiduals) / basis.oneSquare;
  return line;
}

Line statedLine(LineFit fit, const Whitening& whitening, const LineBasis& basis, const CentredLine& fitted,
                std::vector<double> residuals, double xUnit, double yUnit) {
  Line line;
  line.fit = fit;
  line.throughZero = basis.one.empty();
  line.slope = fitted.slope.value();
  line.intercept = fitted.intercept().value();
  line.centre = basis.centre.value();
  line.centreError = line.throughZero ? 0 : 1 / std::sqrt(basis.oneSquare);
  line.slopeError = 1 / std::sqrt(basis.rampSquare);
  line.interceptError = std::hypot(*line.centreError, line.centre * *line.slopeError);
  line.covariance = line.throughZero ? 0 : -line.centre / basis.rampSquare;
  line.degreesOfFreedom = static_cast<int>(residuals.size()) - (line.throughZero ? 1 : 2);
  line.residualSumOfSquares = product(residuals, residuals);
  line.residuals = std::move(residuals);
  if (line.degreesOfFreedom > 0)
    line.residualDeviation = std::sqrt(line.residualSumOfSquares / line.degreesOfFreedom);
  const std::vector<double> whitened = whitening.whitened(line.residuals);
  line.chiSquare = product(whitened, whitened);
  if (line.degreesOfFreedom > 0)
    line.chiSquareProbability = chiSquareExceeded(*line.chiSquare, line.degreesOfFreedom);
  const double total = *line.chiSquare + line.slope * line.slope * basis.rampSquare;
  if (total > 0 && (fit == LineFit::Weighted || fit == LineFit::Correlated))
    line.rSquared = 1 - *line.chiSquare / total;
  addShares(line, whitening, basis);
  toUnits(line, xUnit, yUnit);
  return line;
}

}  // namespace core
