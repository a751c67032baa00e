// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/assess/check.h"
#include "core/circuit/bridge.h"
#include "core/units/result.h"

namespace ui {

/// What was typed or pasted as the reading of a step.
struct TypedReading {
  core::Measured measured;
  std::size_t count = 1;  ///< readings that it is the mean of
};

/// A field takes no more text than that.
inline constexpr int longestReadingText = 200'000;

/// One number in the user's notation, with or without the channel's unit; or a column of numbers (on lines of
/// their own, or between tabs or semicolons): their mean, with the standard uncertainty of the mean by its
/// scatter. A space parts no numbers, since it may stand within one. Fails with the number at fault.
core::Result<TypedReading> readingFromText(const QString& text, const core::Instrument& instrument);

}  // namespace ui
