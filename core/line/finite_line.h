// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/line/line.h"

namespace core {

/// `line`, or why there is none: a number of it is not finite, since the points were too large or too small.
Result<Line> finiteLine(Line line);

}  // namespace core
