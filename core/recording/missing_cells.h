// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <vector>

#include "core/recording/recording.h"

namespace core {

/// Of cells that were gone through column by column the first ones line by line, as Recording lists them.
inline void keepFirst(std::vector<MissingCell>& missing) {
  std::stable_sort(missing.begin(), missing.end(),
                   [](const MissingCell& a, const MissingCell& b) { return a.line < b.line; });
  if (missing.size() > greatestSkippedListed) missing.resize(greatestSkippedListed);
}

}  // namespace core
