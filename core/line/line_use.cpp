// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/line_use.h"

#include <cmath>

#include "core/line/distributions.h"
#include "core/uncertainty/propagation.h"
#include "core/units/language.h"

namespace core {
namespace {

/// Standard uncertainty of the line at `x`. About the centre, where level and slope are independent, the
/// terms of u^2(a) + x^2 u^2(b) + 2 x cov(a, b) have one sign and nothing cancels.
std::optional<double> lineError(const Line& line, double x) {
  if (!line.centreError || !line.slopeError) return std::nullopt;
  return std::hypot(*line.centreError, (x - line.centre) * *line.slopeError);
}

bool fromScatter(const Line& line) { return line.fit == LineFit::Ordinary; }

std::optional<double> dofOf(const Line& line) {
  return fromScatter(line) ? std::optional<double>(line.degreesOfFreedom) : std::nullopt;
}

}  // namespace

LineEstimate forwardOf(const Line& line, double x, double ux) {
  LineEstimate estimate{valueAt(line, x), std::nullopt};
  if (const auto error = lineError(line, x)) estimate.standard = std::hypot(*error, line.slope * ux);
  return estimate;
}

Result<LineEstimate> inverseOf(const Line& line, double y, double uy) {
  const double x = (y - line.intercept) / line.slope;
  if (!std::isfinite(x))
    return Error{"line", say("its slope is zero, so no x belongs to a y"),
                 say("Fit the line to points that rise or fall")};
  LineEstimate estimate{x, std::nullopt};
  if (const auto error = lineError(line, x))
    estimate.standard = std::hypot(*error, uy) / std::abs(line.slope);
  return estimate;
}

Result<LineEstimate> inverseOfMean(const Line& line, double y, unsigned readings) {
  if (readings == 0)
    return Error{"readings", say("there are none to take the mean of"), say("Give at least one reading")};
  if (!fromScatter(line))
    return Error{"line", say("a fit to stated uncertainties does not tell how new readings scatter"),
                 say("State the uncertainty of the mean")};
  return inverseOf(line, y, line.residualDeviation.value_or(0) / std::sqrt(readings));
}

std::optional<double> confidenceHalfWidth(const Line& line, double x, double coverage) {
  const auto error = lineError(line, x);
  if (!error) return std::nullopt;
  return coverageFactorFor(coverage, dofOf(line)) * *error;
}

std::optional<double> predictionHalfWidth(const Line& line, double x, double coverage, double uNew) {
  const auto error = lineError(line, x);
  if (!error) return std::nullopt;
  const double ofReading = fromScatter(line) ? *line.residualDeviation : uNew;
  return coverageFactorFor(coverage, dofOf(line)) * std::hypot(*error, ofReading);
}

std::optional<double> simultaneousHalfWidth(const Line& line, double x, double coverage) {
  if (line.throughZero) return confidenceHalfWidth(line, x, coverage);
  const auto error = lineError(line, x);
  if (!error) return std::nullopt;
  const double square = fromScatter(line) ? 2 * fisherQuantile(coverage, 2, line.degreesOfFreedom)
                                          : chiSquareQuantile(coverage, 2);
  return std::sqrt(square) * *error;
}

}  // namespace core
