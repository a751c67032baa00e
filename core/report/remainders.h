// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/assess/check_points.h"

namespace core {

/// Deviation from expected at one point of a check, and what an explanation leaves of it; in the readings'
/// unit.
struct Remainder {
  std::size_t step = 0;  ///< index in the sequence
  double before = 0;
  double after = 0;
};

/// Of each point, in their order; `changes` are those that the explanation fits there.
std::vector<Remainder> remaindersOf(const CheckPoints& points, const std::vector<double>& changes);

}  // namespace core
