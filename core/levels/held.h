// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/levels/edges.h"
#include "core/levels/sample_span.h"

namespace core {

/// What lies between two edges, in cells, with the straight line that its later half tells: there it has
/// settled, if it ever does.
struct Piece {
  std::size_t begin = 0;
  std::size_t end = 0;
  double value = 0;  ///< of the line at `reference`
  double slope = 0;  ///< of the line per cell
  double reference = 0;

  std::size_t size() const { return end - begin; }
  double at(double cell) const { return value + slope * (cell - reference); }
};

/// The pieces between `edges` that hold a level: as long as `shortest` cells, and not on their way from one
/// level to the next. Neighbours that do not differ are one.
std::vector<Piece> heldPieces(const Cells& cells, const std::vector<Scale>& scales,
                              const std::vector<Edge>& edges, std::size_t shortest, double leastStep);

}  // namespace core
