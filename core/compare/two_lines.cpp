// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/two_lines.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/line/distributions.h"

namespace core {
namespace {

double count(const LineSample& sample) { return static_cast<double>(sample.points); }

/// Variance of a parameter over the variance of a reading.
double slopeFactor(const LineSample& sample) { return 1 / sample.squaresX; }
double interceptFactor(const LineSample& sample) {
  return 1 / count(sample) + sample.meanX * sample.meanX / sample.squaresX;
}

std::optional<ParameterDifference> differenceOf(double value, const LineSample& before,
                                                const LineSample& after, bool pooled,
                                                double (*factor)(const LineSample&)) {
  if (pooled) {
    const auto scatter = pooledScatter(before, after);
    if (!scatter) return std::nullopt;
    return ParameterDifference{value, std::sqrt(scatter->variance * (factor(before) + factor(after))),
                               scatter->dof};
  }
  if (!(before.dof() > 0) || !(after.dof() > 0)) return std::nullopt;
  const double first = before.residualSquares / before.dof() * factor(before);
  const double second = after.residualSquares / after.dof() * factor(after);
  const double variance = first + second;
  const double dof = variance * variance / (first * first / before.dof() + second * second / after.dof());
  return ParameterDifference{value, std::sqrt(variance), dof};
}

}  // namespace

std::optional<LineSample> lineSampleOf(std::span<const double> x, std::span<const double> y) {
  assert(x.size() == y.size());
  LineSample sample;
  sample.points = x.size();
  if (x.size() < 2) return std::nullopt;
  for (std::size_t k = 0; k < x.size(); ++k) sample.meanX += x[k], sample.meanY += y[k];
  sample.meanX /= count(sample);
  sample.meanY /= count(sample);
  for (std::size_t k = 0; k < x.size(); ++k) {
    sample.squaresX += (x[k] - sample.meanX) * (x[k] - sample.meanX);
    sample.productsXY += (x[k] - sample.meanX) * (y[k] - sample.meanY);
  }
  if (!(sample.squaresX > 0)) return std::nullopt;
  sample.slope = sample.productsXY / sample.squaresX;
  sample.intercept = sample.meanY - sample.slope * sample.meanX;
  for (std::size_t k = 0; k < x.size(); ++k) {
    const double off = (y[k] - sample.meanY) - sample.slope * (x[k] - sample.meanX);
    sample.residualSquares += off * off;
  }
  return sample;
}

std::optional<Scatter> pooledScatter(const LineSample& before, const LineSample& after) {
  const double dof = before.dof() + after.dof();
  if (!(dof > 0)) return std::nullopt;
  return Scatter{(before.residualSquares + after.residualSquares) / dof, dof};
}

std::optional<double> equalScatterProbability(const LineSample& before, const LineSample& after) {
  if (!(before.dof() > 0) || !(after.dof() > 0)) return std::nullopt;
  if (!(before.residualSquares > 0) || !(after.residualSquares > 0)) return std::nullopt;
  const double f = before.residualSquares / before.dof() / (after.residualSquares / after.dof());
  const double above = fisherExceeded(f, before.dof(), after.dof());
  return 2 * std::min(above, 1 - above);
}

std::optional<ParameterDifference> slopeDifference(const LineSample& before, const LineSample& after,
                                                   bool pooled) {
  return differenceOf(after.slope - before.slope, before, after, pooled, slopeFactor);
}

std::optional<ParameterDifference> interceptDifference(const LineSample& before, const LineSample& after,
                                                       bool pooled) {
  return differenceOf(after.intercept - before.intercept, before, after, pooled, interceptFactor);
}

std::optional<CommonLine> commonLine(const LineSample& before, const LineSample& after) {
  const auto scatter = pooledScatter(before, after);
  if (!scatter || !(scatter->variance > 0)) return std::nullopt;
  // Sums about the common means are those about the own means and what lies between the means.
  const double share = count(before) * count(after) / (count(before) + count(after));
  const double apartX = after.meanX - before.meanX, apartY = after.meanY - before.meanY;
  const double squaresX = before.squaresX + after.squaresX + share * apartX * apartX;
  const double productsXY = before.productsXY + after.productsXY + share * apartX * apartY;
  const double slope = productsXY / squaresX;
  // RSS about the common line: each line's own, and its distance from the common one.
  const double meanX =
      (count(before) * before.meanX + count(after) * after.meanX) / (count(before) + count(after));
  const double meanY =
      (count(before) * before.meanY + count(after) * after.meanY) / (count(before) + count(after));
  double apart = 0;
  for (const LineSample* sample : {&before, &after}) {
    const double off = sample->meanY - meanY - slope * (sample->meanX - meanX);
    const double turned = sample->slope - slope;
    apart += count(*sample) * off * off + turned * turned * sample->squaresX;
  }
  CommonLine common;
  common.residualSquares = before.residualSquares + after.residualSquares + apart;
  common.f = apart / 2 / scatter->variance;
  common.probability = fisherExceeded(common.f, 2, scatter->dof);
  return common;
}

std::optional<JointTest> jointTest(double interceptDifference, double slopeDifference,
                                   const LineCovariance& before, const LineCovariance& after) {
  const double a = before.intercept + after.intercept, c = before.both + after.both;
  const double b = before.slope + after.slope;
  const double determinant = a * b - c * c;
  if (!(a > 0) || !(b > 0) || !(determinant > 1e-14 * a * b)) return std::nullopt;
  JointTest test;
  test.chiSquare = (b * interceptDifference * interceptDifference -
                    2 * c * interceptDifference * slopeDifference + a * slopeDifference * slopeDifference) /
                   determinant;
  test.probability = std::exp(-test.chiSquare / 2);  // what chi-square with 2 degrees of freedom is
  return test;
}

}  // namespace core
