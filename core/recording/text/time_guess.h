// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/recording/layout.h"
#include "core/recording/text/table_guess.h"

namespace core {

struct TimeGuess {
  TimeLayout time;
  bool isAbsolute = false;       ///< a number that counts from 1970
  std::int64_t base_ns = 0;      ///< of absolute times: of the first row looked at
  std::optional<int> ahead_min;  ///< what the clock that wrote them is ahead of UTC
  std::vector<std::string> doubts;
};

/// Where the times of `table` come from; `choices` are taken as given. `names` are for sentences.
///
/// In this order: the column whose name, unit or cells say time and whose values do not fall; the rate that a
/// line above the table tells; a first column that rises throughout and whose heading says nothing else. A
/// clock that stands still for most samples gives way to a rate.
TimeGuess guessTime(const TableGuess& table, const std::vector<ColumnHeading>& names,
                    const LayoutChoices& choices);

}  // namespace core
