// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "app/output.h"
#include "app/point_table.h"
#include "core/line/line.h"
#include "core/line/line_use.h"
#include "core/line/linearity.h"
#include "core/line/robust_line.h"

namespace app {

/// The line used at one x or y.
struct LineUse {
  double given = 0;             ///< x of a forward use, y of an inverse one
  double uncertainty = 0;       ///< standard uncertainty of it
  core::LineEstimate estimate;  ///< of the other one
};

/// Everything that the command line says of the line through `points`.
struct LineAnswer {
  PointTable points;
  core::Line line;
  std::vector<core::Result<core::Linearity>> linearities;  ///< in the order of core::ReferenceLine
  std::vector<LineUse> forward, inverse;
  std::optional<core::RobustLine> robust;
};

Json lineJson(const LineAnswer& answer);
std::string lineText(const LineAnswer& answer);

}  // namespace app
