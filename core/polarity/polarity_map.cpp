// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/polarity/polarity_map.h"

namespace core {

const PolarityCell& PolarityMap::at(std::size_t i, std::size_t j) const { return cells[i + j]; }
Result<PolarityMap> polarityMap(const Setup&, Resistance) { return PolarityMap{}; }

}  // namespace core
