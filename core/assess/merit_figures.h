// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/assess/characteristic.h"
#include "core/assess/check_points.h"
#include "core/plan/limits.h"

// The numbers behind the figures of merit, before any limit is looked at. Definitions: core/assess/merits.h.

namespace core {

/// What one figure comes to, before it is judged.
struct MeritFigure {
  std::string missing;          ///< why there is none: "the plan has no steps that come back down"
  double value = 0;             ///< in the readings' unit, with its sign
  double denominator = 0;       ///< in the readings' unit
  std::vector<double> weights;  ///< value = sum of weights[i] * reading of point i
  std::optional<std::size_t> step;
  std::string definition;
  double slopes[2] = {0, 0};   ///< of the positive and the negative half
  double spans[2] = {0, 0};    ///< measured and expected
  std::string_view direction;  ///< of repeated readings
  std::size_t repeats = 0;
};

/// What all figures of one check are worked out from.
struct MeritGround {
  const Setup& setup;
  const SetupPrediction& prediction;
  const Budget& budget;
  const Check& check;
  const CheckPoints& points;
  std::vector<EqualSteps> levels = meanCharacteristic(points);
  std::vector<Approach> approaches = approachesOf(prediction);
  std::optional<std::size_t> zeroStep = zeroReference(setup, check);

  bool isZeroLevel(const EqualSteps& level) const {
    return std::abs(level.expected) <= equalWithin(points.expected);
  }
  std::vector<std::size_t> approached(const EqualSteps& level, Approach approach) const {
    std::vector<std::size_t> some;
    for (const std::size_t point : level.points)
      if (approaches[points.steps[point]] == approach) some.push_back(point);
    return some;
  }
  std::vector<double> noWeights() const { return std::vector<double>(points.size(), 0.0); }
  /// Adds `share` of the mean of `some` points.
  void addMean(const std::vector<std::size_t>& some, double share, std::vector<double>& weights) const {
    for (const std::size_t point : some) weights[point] += share / static_cast<double>(some.size());
  }
  double meanOf(const std::vector<std::size_t>& some) const {
    double sum = 0;
    for (const std::size_t point : some) sum += points.measured[point];
    return sum / static_cast<double>(some.size());
  }
  double measuredSpan() const { return levels.back().mean - levels.front().mean; }
  double expectedSpan() const { return levels.back().expected - levels.front().expected; }
};

/// Worked out from the readings that are there; `missing` says why when these do not suffice.
MeritFigure figureOf(const MeritGround& ground, MeritKind kind);

}  // namespace core
