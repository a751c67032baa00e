// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>

#include "core/levels/steps.h"

namespace core {

/// Samples begin to end - 1 of a recording with the straight trend through them (per sample).
struct Stretch {
  std::size_t begin = 0;
  std::size_t end = 0;
  double mean = 0;
  double slope = 0;

  double size() const { return static_cast<double>(end - begin); }
  double rise() const { return slope * size(); }
  double trendAt(double sample) const;
};

Stretch stretchOf(std::span<const double> values, std::size_t begin, std::size_t end);

/// `stretch` without the samples at its ends that still lead from or to another level. What settled is judged
/// by the trend of its later half; from the end inwards the first short average that comes within three
/// standard deviations of the trend ends the settling, and a quarter of its time is taken on top, since where
/// a step lies is not known to the sample. At most three fifths go at the beginning and one fifth at the end.
Stretch withoutSettling(std::span<const double> values, const Stretch& stretch, const StepNoise& noise);

/// Standard uncertainty of the mean of the samples about their trend, correlation honoured.
double uncertaintyAboutTrend(std::span<const double> values, const Stretch& stretch);

/// Whether two neighbouring stretches are one level: their means differ by less than the least step, or by
/// less than three standard deviations (the larger of what the recording and what the two stretches about
/// their trends tell); or one straight drift through both, of which each has the slope, explains them about
/// as well as two means do.
bool isOneLevel(std::span<const double> values, const Stretch& left, const Stretch& right,
                const StepNoise& noise);

/// Whether `stretch` is on its way to `neighbour` instead of holding: its trend, carried on to where the
/// neighbour begins or ends, covers four fifths of the difference of their means, and more than noise can
/// explain.
bool leadsInto(const Stretch& stretch, const Stretch& neighbour, const StepNoise& noise);

}  // namespace core
