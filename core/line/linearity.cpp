// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/linearity.h"

#include <cmath>
#include <map>
#include <vector>

#include "core/line/double_double.h"
#include "core/line/line.h"
#include "core/line/points.h"

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

Result<Line> referenceLine(const Characteristic& mean, ReferenceLine reference) {
  if (reference == ReferenceLine::LeastSquares) return fitLine(mean.x, mean.y);
  const double ends[] = {mean.x.front(), mean.x.back()};
  const double outputs[] = {mean.y.front(), mean.y.back()};
  return fitLine(ends, outputs);
}

}  // namespace

Result<Linearity> linearityOf(std::span<const double> x, std::span<const double> y, ReferenceLine reference) {
  if (auto fault = faultOfPoints(x, y, 2)) return *fault;
  const Characteristic mean = meanCharacteristic(x, y);
  if (mean.x.size() < 2) {
    return Error{"points", "all x are equal, so there is no range", "Add a point at another x"};
  }
  const auto line = referenceLine(mean, reference);
  if (!line) return line.error();

  Linearity linearity{reference, line->intercept, line->slope, mean.y.back() - mean.y.front()};
  if (linearity.fullScaleOutput == 0) {
    return Error{"points", "the outputs at both ends of the range are equal, so there is no full scale",
                 "Add points over the whole range"};
  }
  for (std::size_t i = 0; i < mean.x.size(); ++i) {
    const double deviation = mean.y[i] - valueAt(*line, mean.x[i]);
    if (std::abs(deviation) <= std::abs(linearity.greatestDeviation)) continue;
    linearity.greatestDeviation = deviation;
    linearity.atX = mean.x[i];
  }
  linearity.share = std::abs(linearity.greatestDeviation / linearity.fullScaleOutput);
  return linearity;
}

}  // namespace core
