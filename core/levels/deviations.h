// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/levels/held.h"

namespace core {

/// How far means of few cells lie from the lines of their pieces.
class Deviations {
 public:
  Deviations(const Cells& cells, const std::vector<Piece>& pieces);
  /// Standard deviation of means of `window` cells.
  double of(std::size_t window) const;

 private:
  std::vector<Scale> m_scales;  ///< windows of 1, 2, 4, 8... cells
};

}  // namespace core
