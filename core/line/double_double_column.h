// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/line/double_double.h"

// Columns of points at twice the precision of double. Internal to core/line.

namespace core {

using Column = std::vector<DoubleDouble>;

inline Column scaled(std::span<const double> values, double scale) {
  Column column;
  column.reserve(values.size());
  for (const double v : values) column.emplace_back(v * scale);
  return column;
}

inline DoubleDouble product(const Column& a, const Column& b) {
  DoubleDouble sum;
  for (std::size_t i = 0; i < a.size(); ++i) sum += a[i] * b[i];
  return sum;
}

}  // namespace core
