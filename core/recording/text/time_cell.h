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

/// A number in the unit of `form` in seconds. Divided where the unit is the smaller one: 20 ms are 0.02 s to
/// the last digit.
inline double inSeconds(double value, TimeForm form) {
  switch (form) {
    case TimeForm::Milliseconds:
      return value / 1e3;
    case TimeForm::Microseconds:
      return value / 1e6;
    case TimeForm::Minutes:
      return value * 60;
    case TimeForm::Hours:
      return value * 3600;
    case TimeForm::Seconds:
    case TimeForm::Clock:
    case TimeForm::DateAndTime:
      break;
  }
  return value;
}

/// A cell of plan.form. Of a clock with a date column `ns` is the time of day.
TimeCell readTimeCell(std::string_view cell, const RowPlan& plan);

/// "1778507110.25" in seconds, or as many milli- or microseconds, since 1970-01-01 as whole nanoseconds: all
/// digits count, where a double would keep a quarter of a microsecond.
std::optional<std::int64_t> readEpoch(std::string_view cell, char decimal, TimeForm form);

}  // namespace core
