// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "core/plan/setup.h"

namespace core {

/// Between which places of the bridge a shunt lies; a lead that is not broken counts as part of the corner it
/// leads to.
struct ShuntPlacement {
  enum class Kind : std::uint8_t {
    Arm,      ///< between the two corners of `arm`
    Bridge,   ///< over the excitation, both halves together
    Output,   ///< between the signal corners
    Leads,    ///< within one corner: over leads only
    Nowhere,  ///< an end is on nothing that leads to the bridge
  };
  Kind kind = Kind::Nowhere;
  std::size_t arm = 0;
  bool reversed = false;  ///< end a is at the arm's end
  std::vector<LeadRole>
      leads;  ///< inside the shunt's loop, with the arm or alone; of a Bridge or an Output too
};
ShuntPlacement placementOf(const Bridge& bridge, const Shunt& shunt);

}  // namespace core
