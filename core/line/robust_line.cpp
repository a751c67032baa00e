// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/robust_line.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

#include "core/line/points.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr std::size_t mostPoints = 10'000;

double median(std::vector<double>& values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  if (values.size() % 2 == 1) return *middle;
  return std::midpoint(*std::max_element(values.begin(), middle), *middle);
}

double repeatedMedianSlope(std::span<const double> x, std::span<const double> y) {
  std::vector<double> medians, slopes;
  for (std::size_t i = 0; i < x.size(); ++i) {
    slopes.clear();
    for (std::size_t j = 0; j < x.size(); ++j)
      if (x[j] != x[i]) slopes.push_back((y[j] - y[i]) / (x[j] - x[i]));
    medians.push_back(median(slopes));
  }
  return median(medians);
}

}  // namespace

Result<RobustLine> fitRobustLine(std::span<const double> x, std::span<const double> y) {
  if (auto fault = faultOfLinePoints(x, y, false)) return *fault;
  if (x.size() > mostPoints)
    return Error{"points", say("a robust line through more than 10000 points would take too long"),
                 say("Use a part of the points")};
  RobustLine line;
  line.slope = repeatedMedianSlope(x, y);
  std::vector<double> rest;
  for (std::size_t i = 0; i < x.size(); ++i) rest.push_back(y[i] - line.slope * x[i]);
  line.intercept = median(rest);
  for (std::size_t i = 0; i < x.size(); ++i) rest[i] = std::abs(y[i] - line.slope * x[i] - line.intercept);
  line.scale = 1.4826 * median(rest);
  if (!std::isfinite(line.slope + line.intercept + line.scale))
    return Error{"points", say("the numbers are too large or too small to fit a line to"),
                 say("Choose other units")};
  return line;
}

}  // namespace core
