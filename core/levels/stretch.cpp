// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/stretch.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/levels/statistics.h"

namespace core {
namespace {

/// `part` of the samples of `stretch`, rounded down.
std::size_t share(const Stretch& stretch, double part) {
  return static_cast<std::size_t>(part * stretch.size());
}

double meanOf(std::span<const double> values, std::size_t begin, std::size_t end) {
  double sum = 0;
  for (std::size_t i = begin; i < end; ++i) sum += values[i] - values[begin];
  return values[begin] + sum / static_cast<double>(end - begin);
}

/// A trend too weak to be told from noise is none: it would only be extrapolated noise.
Stretch withSureTrend(Stretch trend, const StepNoise& noise) {
  const double unsure = noise.longRun() * std::sqrt(12 / trend.size());
  if (std::abs(trend.rise()) < 3 * unsure) trend.slope = 0;
  return trend;
}

/// Sums over one or more stretches, for a straight line through all their samples.
struct LineSums {
  double n = 0, x = 0, y = 0, xx = 0, xy = 0, yy = 0;

  void add(std::span<const double> values, const Stretch& stretch, double xOrigin, double yOrigin) {
    for (std::size_t i = stretch.begin; i < stretch.end; ++i) {
      const double dx = static_cast<double>(i) - xOrigin;
      const double dy = values[i] - yOrigin;
      n += 1;
      x += dx;
      y += dy;
      xx += dx * dx;
      xy += dx * dy;
      yy += dy * dy;
    }
  }
  double squaresAboutMean() const { return std::max(0.0, yy - y * y / n); }
  double squaresAboutLine() const {
    const double covariance = xy - x * y / n;
    const double spread = xx - x * x / n;
    return std::max(0.0, squaresAboutMean() - covariance * covariance / spread);
  }
};

/// Standard deviation of the slope of a stretch of noise alone.
double slopeSpread(const Stretch& stretch, const StepNoise& noise) {
  return noise.longRun() * std::sqrt(12 / (stretch.size() * stretch.size() * stretch.size()));
}

/// Whether the slopes differ by no more than noise, or a gentle curve, makes them differ.
bool haveOneSlope(const Stretch& left, const Stretch& right, const StepNoise& noise) {
  const double spread = std::hypot(slopeSpread(left, noise), slopeSpread(right, noise));
  const double steeper = std::max(std::abs(left.slope), std::abs(right.slope));
  return std::abs(left.slope - right.slope) <= std::max(3 * spread, 0.5 * steeper);
}

double squaresAboutMeans(std::span<const double> values, const Stretch& left, const Stretch& right) {
  double squares = 0;
  for (const Stretch& stretch : {left, right}) {
    LineSums sums;
    sums.add(values, stretch, 0, stretch.mean);
    squares += sums.squaresAboutMean();
  }
  return squares;
}

double squaresAboutOneDrift(std::span<const double> values, const Stretch& left, const Stretch& right) {
  LineSums sums;
  const auto between = static_cast<double>(left.end);
  const double middle = (left.mean + right.mean) / 2;
  sums.add(values, left, between, middle);
  sums.add(values, right, between, middle);
  return sums.squaresAboutLine();
}

}  // namespace

double Stretch::trendAt(double sample) const {
  return mean + slope * (sample - (static_cast<double>(begin + end) - 1) / 2);
}

Stretch stretchOf(std::span<const double> values, std::size_t begin, std::size_t end) {
  Stretch stretch{begin, end, meanOf(values, begin, end), 0};
  const double middle = (static_cast<double>(begin + end) - 1) / 2;
  double squares = 0;
  double products = 0;
  for (std::size_t i = begin; i < end; ++i) {
    const double distance = static_cast<double>(i) - middle;
    squares += distance * distance;
    products += distance * (values[i] - stretch.mean);
  }
  if (squares > 0) stretch.slope = products / squares;
  return stretch;
}

Stretch withoutSettling(std::span<const double> values, const Stretch& stretch, const StepNoise& noise) {
  const std::size_t later = stretch.begin + share(stretch, 0.5);
  const std::size_t laterEnd = std::max(later + 1, stretch.begin + share(stretch, 0.95));
  const Stretch settled = withSureTrend(stretchOf(values, later, laterEnd), noise);
  const std::size_t few = std::max<std::size_t>(1, noise.window / 3);
  const double tolerance = 3 * noise.longRun() / std::sqrt(static_cast<double>(few));
  const auto isSettled = [&](std::size_t begin) {
    if (begin + few > stretch.end) return true;
    const double centre = static_cast<double>(begin) + static_cast<double>(few - 1) / 2;
    return std::abs(meanOf(values, begin, begin + few) - settled.trendAt(centre)) <= tolerance;
  };
  const std::size_t mostBefore = share(stretch, 0.6);
  std::size_t before = 0;
  while (before < mostBefore && !isSettled(stretch.begin + before)) ++before;
  const std::size_t mostBehind = share(stretch, 0.2);
  std::size_t behind = 0;
  while (behind < mostBehind && stretch.end - stretch.begin > behind + few &&
         !isSettled(stretch.end - behind - few)) {
    ++behind;
  }
  const std::size_t guard = stretch.begin > 0 ? 1 + noise.window / 8 : 0;
  const std::size_t guardBehind = stretch.end < values.size() ? 1 + noise.window / 8 : 0;
  before = std::min(before + before / 4 + guard, mostBefore);
  behind = std::min(behind + behind / 4 + guardBehind, mostBehind);
  return stretchOf(values, stretch.begin + before, stretch.end - behind);
}

double uncertaintyAboutTrend(std::span<const double> values, const Stretch& stretch) {
  std::vector<double> residuals;
  residuals.reserve(stretch.end - stretch.begin);
  for (std::size_t i = stretch.begin; i < stretch.end; ++i) {
    residuals.push_back(values[i] - stretch.trendAt(static_cast<double>(i)));
  }
  return uncertaintyOfMean(residuals);
}

bool isOneLevel(std::span<const double> values, const Stretch& left, const Stretch& right,
                const StepNoise& noise) {
  const double difference = std::abs(right.mean - left.mean);
  if (difference < noise.leastStep) return true;
  const double spread = noise.longRun() * std::sqrt(1 / left.size() + 1 / right.size());
  if (difference < 3 * spread) return true;
  const double own = std::hypot(uncertaintyAboutTrend(values, left), uncertaintyAboutTrend(values, right));
  if (difference < 3 * own) return true;
  if (!haveOneSlope(left, right, noise)) return false;
  return squaresAboutOneDrift(values, left, right) <=
         squaresAboutMeans(values, left, right) + 4 * noise.longRun() * noise.longRun();
}

bool leadsInto(const Stretch& stretch, const Stretch& neighbour, const StepNoise& noise) {
  const double centre = static_cast<double>(stretch.begin + stretch.end) / 2;
  const auto edge = static_cast<double>(neighbour.begin >= stretch.end ? neighbour.begin : neighbour.end);
  const double way = neighbour.mean - stretch.mean;
  const double sure = std::abs(stretch.slope) - 3 * slopeSpread(stretch, noise);
  const bool rightWay = stretch.slope * (edge - centre) * way > 0;
  return rightWay && sure * std::abs(edge - centre) > 0.8 * std::abs(way);
}

}  // namespace core
