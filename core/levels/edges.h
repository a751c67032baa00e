// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <stop_token>
#include <vector>

#include "core/levels/contrast.h"

namespace core {

/// A place where the recording changes by more than its noise does.
struct Edge {
  std::size_t cell = 0;   ///< the first one after it
  double jump = 0;        ///< contrast where it stands out most, drift taken off
  double prominence = 0;  ///< |jump| in standard deviations of its scale's noise
};

/// The edges of a recording, in order: where a contrast is the largest of its neighbourhood and beyond the
/// noise, on the shortest scale that shows it. Those are taken away again, the least prominent first, that
/// stand out no more when they are compared over the stretches between their neighbours. `leastStep`: smaller
/// ones are none. Once more with the noise that steps known by then hide no more.
std::vector<Edge> edgesOf(const Cells& cells, const std::vector<Scale>& scales, double leastStep,
                          const std::stop_token& stop = {});

}  // namespace core
