// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "core/units/result.h"

namespace core {

/// Told the share done, 0 to 1, rising, on the thread that does the work. May be empty.
using Progress = std::function<void(double share)>;

/// What work returns that was asked to stop.
inline Error cancelled() { return {"", "cancelled", ""}; }

}  // namespace core
