// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/remainders.h"

#include <algorithm>

namespace core {

std::vector<Remainder> remaindersOf(const CheckPoints& points, const std::vector<double>& changes) {
  std::vector<Remainder> remainders;
  for (std::size_t k = 0; k < std::min(points.size(), changes.size()); ++k)
    remainders.push_back(
        {points.steps[k], points.measured[k] - points.expected[k], points.measured[k] - changes[k]});
  return remainders;
}

}  // namespace core
