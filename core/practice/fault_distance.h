// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/assess/check_points.h"
#include "core/diagnose/fault.h"

// How near a fault comes to readings. Internal to core/practice.

namespace core {

/// A sequence with what it should show; readings are changes from the first step, as an instrument shows them
/// that was zeroed there.
struct ReadGround {
  Setup setup;
  CheckPoints points;  ///< all steps, expected readings
  Check check;         ///< the same as readings: where clipping and drift look for zero and times

  double greatest() const;  ///< magnitude of an expected reading
};
/// None when a step cannot be predicted.
std::optional<ReadGround> readGround(const Setup& setup);

/// Readings with `fault`, less the first; none when the faulty bridge cannot be predicted.
std::optional<std::vector<double>> readingsUnder(const ReadGround& ground, const Fault& fault);

/// The size of a fault that comes nearest to readings, and how near.
struct Nearest {
  Fault fault;
  std::vector<double> readings;  ///< with it
  double distance = 0;           ///< greatest miss of a reading, over the greatest reading expected or shown
  bool atEnd = false;            ///< no size within the kind's sizes is best
};
/// Looks through all sizes that the kind can have: a mesh, then the best place of it ever finer.
std::optional<Nearest> nearest(const ReadGround& ground, Fault fault, const std::vector<double>& shown);

}  // namespace core
