// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

namespace core {

/// What a cell looks like. It matters only for telling rows of values from what stands above them: in a row
/// any cell without a number is a missing one.
enum class CellKind : std::uint8_t {
  Empty,
  Number,
  NoNumber,  ///< nan, OVER, N/A, -, ...
  Clock,
  Date,
  DateAndTime,
  Words,
};

CellKind kindOf(std::string_view cell, char decimal);

inline bool isStamp(CellKind kind) {
  return kind == CellKind::Clock || kind == CellKind::Date || kind == CellKind::DateAndTime;
}

void kindsOf(const std::vector<std::string_view>& cells, char decimal, std::vector<CellKind>& kinds);

}  // namespace core
