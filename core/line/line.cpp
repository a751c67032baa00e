// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/line.h"

#include <algorithm>
#include <cmath>

#include "core/line/double_double_column.h"
#include "core/line/finite_line.h"
#include "core/line/points.h"
#include "core/units/language.h"

namespace core {
namespace {

/// The points scaled by powers of two, so that squares neither overflow nor vanish.
struct PointsToFit {
  double xScale;
  double yScale;
  Column x;
  Column y;
};

PointsToFit pointsToFit(std::span<const double> x, std::span<const double> y) {
  const double xScale = scaleToOne(x);
  const double yScale = scaleToOne(y);
  return {xScale, yScale, scaled(x, xScale), scaled(y, yScale)};
}

/// Takes the mean out of `column` and returns it.
DoubleDouble centre(Column& column) {
  DoubleDouble sum;
  for (const DoubleDouble v : column) sum += v;
  const DoubleDouble mean = sum / static_cast<double>(column.size());
  for (DoubleDouble& v : column) v = v - mean;
  return mean;
}

/// Residuals of an ordinary fit over what its scatter and the pull of each point leave them.
std::vector<double> standardised(const Line& line) {
  std::vector<double> shares(line.residuals.size(), 0.0);
  for (std::size_t i = 0; i < shares.size(); ++i) {
    const double freedom = 1 - line.leverages[i];
    // Rounding may leave a share of 1e-15 of a point that the line must go through.
    if (freedom > 1e-12 && *line.residualDeviation > 0)
      shares[i] = line.residuals[i] / (*line.residualDeviation * std::sqrt(freedom));
  }
  return shares;
}

/// The line of the (centred) points, whose means are given; all in scaled units.
Line fitted(const PointsToFit& points, DoubleDouble xMean, DoubleDouble yMean, bool throughZero) {
  const double xUnit = 1 / points.xScale;
  const double yUnit = 1 / points.yScale;
  const DoubleDouble sxx = product(points.x, points.x);
  const DoubleDouble slope = product(points.x, points.y) / sxx;

  Line line;
  line.throughZero = throughZero;
  line.centre = xMean.value() * xUnit;
  line.slope = slope.value() * (yUnit * points.xScale);
  line.intercept = (yMean - slope * xMean).value() * yUnit;
  line.residuals.reserve(points.x.size());
  DoubleDouble rss;
  for (std::size_t i = 0; i < points.x.size(); ++i) {
    const DoubleDouble residual = points.y[i] - slope * points.x[i];
    rss += residual * residual;
    line.residuals.push_back(residual.value() * yUnit);
  }
  line.residualSumOfSquares = rss.value() * yUnit * yUnit;
  const DoubleDouble total = product(points.y, points.y);
  if (total.value() > 0) line.rSquared = (DoubleDouble(1) - rss / total).value();

  const auto n = static_cast<double>(points.x.size());
  line.degreesOfFreedom = static_cast<int>(points.x.size()) - (throughZero ? 1 : 2);
  for (const DoubleDouble x : points.x)
    line.leverages.push_back((x * x / sxx + (throughZero ? DoubleDouble() : DoubleDouble(1) / n)).value());
  if (line.degreesOfFreedom == 0) return line;
  const DoubleDouble variance = rss / static_cast<double>(line.degreesOfFreedom);
  const DoubleDouble slopeVariance = variance / sxx;
  const DoubleDouble interceptVariance =
      throughZero ? DoubleDouble() : variance / n + xMean * xMean * slopeVariance;
  line.residualDeviation = std::sqrt(variance.value()) * yUnit;
  line.centreError = throughZero ? 0 : std::sqrt((variance / n).value()) * yUnit;
  line.slopeError = std::sqrt(slopeVariance.value()) * (yUnit * points.xScale);
  line.interceptError = std::sqrt(interceptVariance.value()) * yUnit;
  line.covariance = throughZero ? 0 : (-(xMean * slopeVariance)).value() * (yUnit * points.xScale) * yUnit;
  line.standardised = standardised(line);
  return line;
}

}  // namespace

Result<Line> finiteLine(Line line) {
  const auto finite = [](double v) { return std::isfinite(v); };
  const auto allFinite = [&](const std::vector<double>& values) {
    return std::all_of(values.begin(), values.end(), finite);
  };
  const double absent = 0;
  if (finite(line.intercept) && finite(line.slope) && finite(line.centre) &&
      finite(line.residualSumOfSquares) && finite(line.slopeError.value_or(absent)) &&
      finite(line.interceptError.value_or(absent)) && finite(line.covariance.value_or(absent)) &&
      finite(line.chiSquare.value_or(absent)) && finite(line.rSquared.value_or(absent)) &&
      allFinite(line.residuals) && allFinite(line.standardised) && allFinite(line.leverages) &&
      allFinite(line.adjustedX))
    return line;
  return Error{"points", say("the numbers are too large or too small to fit a line to"),
               say("Choose other units")};
}

Result<Line> fitLine(std::span<const double> x, std::span<const double> y) {
  if (auto fault = faultOfLinePoints(x, y, false)) return *fault;
  PointsToFit points = pointsToFit(x, y);
  const DoubleDouble xMean = centre(points.x);
  const DoubleDouble yMean = centre(points.y);
  return finiteLine(fitted(points, xMean, yMean, false));
}

Result<Line> fitLineThroughZero(std::span<const double> x, std::span<const double> y) {
  if (auto fault = faultOfLinePoints(x, y, true)) return *fault;
  return finiteLine(fitted(pointsToFit(x, y), 0, 0, true));
}

double valueAt(const Line& line, double x) { return std::fma(line.slope, x, line.intercept); }

std::string_view lineFitName(LineFit fit) {
  switch (fit) {
    case LineFit::Ordinary:
      return sayName("ordinary least squares");
    case LineFit::Weighted:
      return sayName("weighted least squares");
    case LineFit::Distance:
      return sayName("generalised distance regression");
    case LineFit::Correlated:
      return sayName("least squares with correlated readings");
    case LineFit::Generalised:
      return sayName("least squares with correlated x and y");
  }
  return {};
}

}  // namespace core
