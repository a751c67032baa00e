// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/bounce.h"

#include <algorithm>
#include <cmath>

namespace core {

SampleSpan withoutBounce(std::span<const double> values, const Cells& cells, const Piece& piece,
                         SampleSpan span, double most) {
  const auto length = static_cast<double>(cells.length);
  const auto isOff = [&](std::size_t i) {
    const double cell = (static_cast<double>(i) + 0.5) / length - 0.5;
    return std::abs(values[i] - cells.origin - piece.at(cell)) > most;  // never of a missing value
  };
  const std::size_t soon = span.size() / 32 + 1;
  const std::size_t limit = span.size() / 12;
  const SampleSpan least{span.begin + limit, span.end - limit};
  for (std::size_t i = span.begin; i < std::min(span.begin + soon, least.begin); ++i)
    if (isOff(i)) span.begin = i + 1;
  for (std::size_t i = span.end; i > std::max(span.end - std::min(span.end, soon), least.end); --i)
    if (isOff(i - 1)) span.end = i - 1;
  return span;
}

}  // namespace core
