// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/trend.h"

#include <algorithm>
#include <cmath>

#include "core/assess/judging.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// Expected range of two values from a normal distribution of unit deviation (d2 of control charts).
constexpr double d2OfTwo = 1.128;

TrendPoint pointOf(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t index) {
  const Check& check = channel.checks[index];
  const CheckAssessment& assessment = evaluation.checks[index].assessment;
  TrendPoint point;
  point.check = index;
  point.day = dateFromText(check.date);
  if (assessment.gain) {
    point.gain = assessment.gain->value;
    point.gainStandard = assessment.gain->standard;
  }
  const std::string unit = readingUnitText(setupOf(channel, check).instrument);
  if (!assessment.zeroStep || unit != readingUnitText(setupOf(channel, channel.checks.back()).instrument))
    return point;
  const Measured& zero = *readingAt(check, *assessment.zeroStep);
  point.zero = zero.mean.base();
  if (zero.uncertainty) point.zeroStandard = zero.uncertainty->base();
  return point;
}

/// By day; one without a day stays behind the one that was made before it.
void putInOrder(std::vector<TrendPoint>& points) {
  std::vector<std::pair<std::optional<Date>, std::size_t>> keys;
  std::optional<Date> latest;
  for (std::size_t k = 0; k < points.size(); ++k) {
    if (points[k].day) latest = points[k].day;
    keys.emplace_back(points[k].day ? points[k].day : latest, k);
  }
  std::stable_sort(keys.begin(), keys.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<TrendPoint> sorted;
  for (const auto& key : keys) sorted.push_back(points[key.second]);
  points = std::move(sorted);
}

/// Limits of one quantity, and the points outside of them.
std::optional<ControlLimits> limitsOf(const std::vector<TrendPoint>& points,
                                      std::optional<double> TrendPoint::*field,
                                      std::vector<std::size_t>& beyond) {
  std::vector<double> values;
  for (const TrendPoint& point : points)
    if (point.*field) values.push_back(*(point.*field));
  const auto limits = controlLimits(values);
  if (!limits) return std::nullopt;
  for (std::size_t k = 0; k < points.size(); ++k)
    if (const auto& value = points[k].*field; value && (*value < limits->lower || *value > limits->upper))
      beyond.push_back(k);
  return limits;
}

std::string namesOf(const Channel& channel, const Trend& trend, const std::vector<std::size_t>& beyond) {
  std::string names;
  for (const std::size_t k : beyond)
    names += (names.empty() ? "" : ", ") + channel.checks[trend.points[k].check].name;
  return names;
}

/// How far the limits themselves may be off: the relative standard uncertainty of a deviation from the mean
/// moving range, with 0.62 (n - 1) degrees of freedom (usual approximation for ranges of two, from memory).
double uncertaintyOfLimits(std::size_t points) {
  return 1 / std::sqrt(2 * 0.62 * (static_cast<double>(points) - 1));
}

std::string sentenceOf(const Channel& channel, const Trend& trend) {
  const std::string count = std::to_string(trend.points.size());
  if (trend.points.empty()) return say("No check has a line, so there is no trend.");
  if (trend.points.size() < 3)
    return say("Control limits take three checks with a line; there are {1}.", {count});
  if (!trend.gain && !trend.zero)
    return say("Control limits take three checks with a gain or a zero reading.");
  std::string text;
  if (trend.beyondGain.empty() && trend.beyondZero.empty())
    text = say("All {1} checks lie within the control limits.", {count});
  if (!trend.beyondGain.empty())
    text = say("The gain left its control limits: {1}.", {namesOf(channel, trend, trend.beyondGain)});
  if (!trend.beyondZero.empty())
    text += (text.empty() ? "" : " ") +
            say("The zero left its control limits: {1}.", {namesOf(channel, trend, trend.beyondZero)});
  if (trend.points.size() >= 20) return text;
  return text + " " +
         say("From {1} checks the limits are known to about {2} % only; 20 make them reliable.",
             {count, shown(formatNumber(100 * uncertaintyOfLimits(trend.points.size()), 2))});
}

}  // namespace

std::optional<ControlLimits> controlLimits(std::span<const double> values) {
  if (values.size() < 3) return std::nullopt;
  double sum = 0, ranges = 0;
  for (std::size_t k = 0; k < values.size(); ++k) {
    sum += values[k];
    if (k > 0) ranges += std::abs(values[k] - values[k - 1]);
  }
  if (!std::isfinite(sum) || !std::isfinite(ranges)) return std::nullopt;
  const auto count = static_cast<double>(values.size());
  const double centre = sum / count, reach = 3 / d2OfTwo * (ranges / (count - 1));
  return ControlLimits{centre, centre - reach, centre + reach};
}

Trend trendOf(const Channel& channel, const ChannelEvaluation& evaluation) {
  Trend trend;
  for (std::size_t check = 0; check < channel.checks.size(); ++check)
    if (evaluation.checks[check].assessment.agreement)
      trend.points.push_back(pointOf(channel, evaluation, check));
  putInOrder(trend.points);
  trend.gain = limitsOf(trend.points, &TrendPoint::gain, trend.beyondGain);
  trend.zero = limitsOf(trend.points, &TrendPoint::zero, trend.beyondZero);
  trend.sentence = sentenceOf(channel, trend);
  return trend;
}

}  // namespace core
