// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string_view>

#include "core/recording/text/row_block.h"
#include "core/recording/text/stamps.h"

namespace core {

/// What a cell of the time column says.
struct TimeCell {
  double value_s = 0;           ///< of a time that is a number
  std::int64_t ns = 0;          ///< of a clock, a date with time, or a number since 1970-01-01
  const char* fault = nullptr;  ///< why there is none, as the end of a sentence about the cell
};

/// A cell of plan.form. Of a clock with a date column `ns` is the time of day.
TimeCell readTimeCell(std::string_view cell, const RowPlan& plan);

}  // namespace core
