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

/// How far means of few cells lie from the lines of their pieces.
class Deviations {
 public:
  Deviations(const Cells& cells, const std::vector<Piece>& pieces);
  /// Standard deviation of means of `window` cells.
  double of(std::size_t window) const;

 private:
  std::vector<Scale> m_scales;  ///< windows of 1, 2, 4, 8... cells
};

/// What is left of a step some time after it, in cells, as all steps of the recording together show it: they
/// pass the same filter.
struct Settling {
  double last = 0;  ///< the latest time at which something is left for sure; 0: nothing ever
  double left = 0;  ///< share of the step left then
  double time = 0;  ///< time constant from there on

  /// When less than `share` of a step is left.
  double timeTo(double share) const;
};

Settling settlingOf(const Cells& cells, const std::vector<Piece>& pieces, const Deviations& deviations);

/// `pieces` without the settling and what is not sure to belong to the level at their ends, in cells: at
/// least some three fifths of each are kept.
std::vector<SampleSpan> trimmed(const Cells& cells, const std::vector<Piece>& pieces,
                                const Deviations& deviations, double leastStep);

}  // namespace core
