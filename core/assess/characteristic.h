// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/assess/check_points.h"
#include "core/plan/prediction.h"

// A check as a characteristic: its readings by expected value, and from which side each was reached.

namespace core {

/// From which side a step is reached. Rising: its expected magnitude is greater than that of the step before
/// on the same side of zero, or the step before is on the other side; the first step comes from zero.
/// Falling: it is smaller. A step that expects the same as the one before keeps its direction: it is a
/// repetition. The greatest step of a side is where a rise ends and a fall begins; it is its own counterpart.
enum class Approach : std::uint8_t {
  Rising,
  Falling,
  Unknown,  ///< the step or the one before cannot be predicted
};

/// One a step of the sequence, whether it was read or not.
std::vector<Approach> approachesOf(const SetupPrediction& prediction);

/// All readings at one expected value. Two steps expect the same when they differ by no more than 1e-9 of the
/// greatest expected magnitude, which is rounding.
struct EqualSteps {
  double expected = 0;  ///< in the readings' unit
  double mean = 0;      ///< of the measured changes, rising and falling alike
  std::vector<std::size_t> points;
};

/// The mean characteristic, rising in the expected value.
std::vector<EqualSteps> meanCharacteristic(const CheckPoints& points);

/// Expected values as near to each other as this are equal.
double equalWithin(const std::vector<double>& expected);

}  // namespace core
