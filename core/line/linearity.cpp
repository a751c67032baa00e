// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/linearity.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "core/line/double_double.h"
#include "core/line/line.h"
#include "core/line/points.h"
#include "core/units/language.h"

namespace core {
namespace {

/// One point per x, rising in x.
struct Characteristic {
  std::vector<double> x;
  std::vector<double> y;
};

Characteristic meanCharacteristic(std::span<const double> x, std::span<const double> y) {
  struct Sum {
    DoubleDouble total;
    double count = 0;
  };
  std::map<double, Sum> sums;
  for (std::size_t i = 0; i < x.size(); ++i) {
    Sum& sum = sums[x[i]];
    sum.total += y[i];
    sum.count += 1;
  }
  Characteristic mean;
  for (const auto& [at, sum] : sums) {
    mean.x.push_back(at);
    mean.y.push_back((sum.total / sum.count).value());
  }
  return mean;
}

/// A point, or its mirror image in (0, 0), with the index of the point it comes from.
struct Corner {
  double x = 0, y = 0;
  std::size_t index = 0;
  double sign = 1;
};

double slopeBetween(const Corner& a, const Corner& b) { return (b.y - a.y) / (b.x - a.x); }

/// The upper (`side` 1) or lower (-1) convex hull of corners whose x do not fall. At each end and between, of
/// corners at one x only the outermost is in.
std::vector<Corner> hullOf(std::span<const Corner> corners, double side) {
  std::vector<Corner> hull;
  for (const Corner& corner : corners) {
    if (!hull.empty() && hull.back().x == corner.x) {
      if (side * corner.y <= side * hull.back().y) continue;
      hull.pop_back();
    }
    while (hull.size() > 1 && side * slopeBetween(hull[hull.size() - 2], hull.back()) <=
                                  side * slopeBetween(hull.back(), corner))
      hull.pop_back();
    hull.push_back(corner);
  }
  return hull;
}

/// What holds the minimax line: an edge of one hull, and the corner of the other that is as far off.
struct Contacts {
  Corner edgeBegin, edgeEnd, opposite;
};

/// The range of y - slope x shrinks with a falling slope as long as the highest residual is left of the
/// lowest one. Slopes fall from edge to edge of both hulls until it is not.
Contacts minimaxContacts(std::span<const Corner> corners) {
  const std::vector<Corner> upper = hullOf(corners, 1), lower = hullOf(corners, -1);
  std::size_t high = 0, low = lower.size() - 1;
  for (;;) {
    const bool isUpperEdge =
        slopeBetween(upper[high], upper[high + 1]) >= slopeBetween(lower[low - 1], lower[low]);
    const Contacts contacts = isUpperEdge ? Contacts{upper[high], upper[high + 1], lower[low]}
                                          : Contacts{lower[low - 1], lower[low], upper[high]};
    isUpperEdge ? ++high : --low;
    if (upper[high].x >= lower[low].x) return contacts;
  }
}

ReferenceFit emptyFit(std::size_t points) {
  ReferenceFit fit;
  fit.interceptWeights.assign(points, 0);
  fit.slopeWeights.assign(points, 0);
  return fit;
}

/// Slope of the edge, as value and as weights of the points it comes from.
void takeSlope(const Contacts& contacts, ReferenceFit& fit) {
  const Corner &begin = contacts.edgeBegin, &end = contacts.edgeEnd;
  fit.slope = slopeBetween(begin, end);
  fit.slopeWeights[end.index] += end.sign / (end.x - begin.x);
  fit.slopeWeights[begin.index] -= begin.sign / (end.x - begin.x);
}

ReferenceFit minimaxLine(std::span<const double> x, std::span<const double> y) {
  std::vector<Corner> corners;
  for (std::size_t i = 0; i < x.size(); ++i) corners.push_back({x[i], y[i], i});
  const Contacts contacts = minimaxContacts(corners);
  ReferenceFit fit = emptyFit(x.size());
  takeSlope(contacts, fit);
  for (const Corner* corner : {&contacts.edgeBegin, &contacts.opposite}) {
    fit.intercept += (corner->y - fit.slope * corner->x) / 2;
    fit.interceptWeights[corner->index] += 0.5;
    for (std::size_t i = 0; i < x.size(); ++i) fit.interceptWeights[i] -= fit.slopeWeights[i] * corner->x / 2;
  }
  return fit;
}

ReferenceFit zeroBasedMinimaxLine(std::span<const double> x, std::span<const double> y) {
  std::vector<Corner> corners;
  for (std::size_t i = 0; i < x.size(); ++i)
    if (x[i] != 0)
      for (const double sign : {-1.0, 1.0}) corners.push_back({sign * x[i], sign * y[i], i, sign});
  std::sort(corners.begin(), corners.end(), [](const Corner& a, const Corner& b) { return a.x < b.x; });
  ReferenceFit fit = emptyFit(x.size());
  takeSlope(minimaxContacts(corners), fit);
  return fit;
}

/// Weights of ordinary least squares; through zero those of sum xy / sum x^2.
void addLeastSquaresWeights(std::span<const double> x, double centre, ReferenceFit& fit) {
  double squares = 0;
  for (const double at : x) squares += (at - centre) * (at - centre);
  for (std::size_t i = 0; i < x.size(); ++i) fit.slopeWeights[i] = (x[i] - centre) / squares;
}

Result<ReferenceFit> leastSquaresLine(std::span<const double> x, std::span<const double> y,
                                      bool throughZero) {
  const Result<Line> line = throughZero ? fitLineThroughZero(x, y) : fitLine(x, y);
  if (!line) return line.error();
  ReferenceFit fit = emptyFit(x.size());
  const double n = static_cast<double>(x.size());
  const double centre = throughZero ? 0 : std::accumulate(x.begin(), x.end(), 0.0) / n;
  addLeastSquaresWeights(x, centre, fit);
  fit.slope = line->slope;
  fit.intercept = line->intercept;
  if (!throughZero)
    for (std::size_t i = 0; i < x.size(); ++i) fit.interceptWeights[i] = 1 / n - centre * fit.slopeWeights[i];
  return fit;
}

Result<ReferenceFit> endPointLine(std::span<const double> x, std::span<const double> y) {
  const double ends[] = {x.front(), x.back()};
  const double outputs[] = {y.front(), y.back()};
  const Result<Line> line = fitLine(ends, outputs);
  if (!line) return line.error();
  ReferenceFit fit = emptyFit(x.size());
  const double range = x.back() - x.front();
  fit.slope = line->slope;
  fit.intercept = line->intercept;
  fit.slopeWeights.back() = 1 / range;
  fit.slopeWeights.front() = -1 / range;
  fit.interceptWeights.front() = x.back() / range;
  fit.interceptWeights.back() = -x.front() / range;
  return fit;
}

Result<ReferenceFit> lineThrough(std::span<const double> x, std::span<const double> y,
                                 ReferenceLine reference) {
  switch (reference) {
    case ReferenceLine::LeastSquares:
      return leastSquaresLine(x, y, false);
    case ReferenceLine::EndPoint:
      return endPointLine(x, y);
    case ReferenceLine::Minimax:
      return minimaxLine(x, y);
    case ReferenceLine::ZeroBasedLeastSquares:
      return leastSquaresLine(x, y, true);
    case ReferenceLine::ZeroBasedMinimax:
      return zeroBasedMinimaxLine(x, y);
  }
  return Error{"line", say("the reference line is not known"), ""};
}

}  // namespace

Result<ReferenceFit> referenceLineOf(std::span<const double> x, std::span<const double> y,
                                     ReferenceLine reference) {
  if (auto fault = faultOfPoints(x, y, 2)) return *fault;
  if (std::adjacent_find(x.begin(), x.end(), std::greater_equal<>()) != x.end())
    return Error{"points", say("x does not rise from point to point"),
                 say("Give one point per x, in rising order")};
  auto line = lineThrough(x, y, reference);
  if (line && !std::isfinite(line->intercept + line->slope))
    return Error{"points", say("the numbers are too large or too small to draw a line through"),
                 say("Choose other units")};
  return line;
}

std::size_t farthestOff(std::span<const double> deviations, double size) {
  // A deviation is the difference of two values of that size with a product between: a few units in the last
  // place of it are rounding.
  const double rounding = 1e-15 * size;
  std::size_t farthest = 0;
  for (std::size_t i = 1; i < deviations.size(); ++i)
    if (std::abs(deviations[i]) > std::abs(deviations[farthest]) + rounding) farthest = i;
  return farthest;
}

Result<Linearity> linearityOf(std::span<const double> x, std::span<const double> y, ReferenceLine reference) {
  if (auto fault = faultOfPoints(x, y, 2)) return *fault;
  const Characteristic mean = meanCharacteristic(x, y);
  if (mean.x.size() < 2) {
    return Error{"points", say("all x are equal, so there is no range"), say("Add a point at another x")};
  }
  const auto line = referenceLineOf(mean.x, mean.y, reference);
  if (!line) return line.error();

  Linearity linearity{reference, line->intercept, line->slope, mean.y.back() - mean.y.front()};
  if (linearity.fullScaleOutput == 0) {
    return Error{"points", say("the outputs at both ends of the range are equal, so there is no full scale"),
                 say("Add points over the whole range")};
  }
  double size = 0;
  std::vector<double> deviations;
  for (std::size_t i = 0; i < mean.x.size(); ++i) {
    deviations.push_back(mean.y[i] - (line->intercept + line->slope * mean.x[i]));
    size = std::max(size, std::abs(mean.y[i]));
  }
  const std::size_t at = farthestOff(deviations, size);
  linearity.greatestDeviation = deviations[at];
  linearity.atX = mean.x[at];
  linearity.share = std::abs(linearity.greatestDeviation / linearity.fullScaleOutput);
  return linearity;
}

}  // namespace core
