// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/plan/prediction.h"

// What one shunt would do at every place of a bridge.

namespace core {

/// A shunt between two points.
struct PolarityCell {
  Node a = Node::PPlus;
  Node b = Node::SMinus;
  Result<Prediction> prediction = Prediction{};
};

/// All pairs of a bridge's points.
struct PolarityMap {
  Resistance shunt{0};
  std::vector<Node> points;         ///< one node a point, terminals first, in the order of core::Node
  std::vector<PolarityCell> cells;  ///< of points i < j, row by row: (0,1), (0,2) ... (1,2) ...

  /// The place in `cells` of two different points by their places in `points`, in either order.
  std::size_t cellOf(std::size_t i, std::size_t j) const;
  const PolarityCell& at(std::size_t i, std::size_t j) const { return cells[cellOf(i, j)]; }
};

/// The electrical points of a bridge that a shunt can be fixed to, each by the first of its names.
std::vector<Node> pointsOf(const Bridge& bridge);

/// The map of a shunt of `shunt` (with its wires and switch) in `setup`, all its other shunts open. Every
/// cell has its own prediction or the reason why there is none; a bridge that cannot be solved fails as a
/// whole. Points that a broken lead has left without any connection are left out.
Result<PolarityMap> polarityMap(const Setup& setup, Resistance shunt);

}  // namespace core
