// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/recording/layout.h"

// Units of time, the same in every kind of file.

namespace core {

/// The unit of time that `unit` names: "s", "sec", "ms", "µs", "min", "h" and the like; none for any other.
std::optional<TimeForm> unitOfTime(std::string_view unit);

/// Whether times of that form are plain numbers in a unit, and no clock times or dates.
bool isUnit(TimeForm form);

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

}  // namespace core
