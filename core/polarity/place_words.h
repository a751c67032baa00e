// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/circuit/bridge.h"

// What a person calls the place of a shunt.

namespace core {

/// What lies between two points of a bridge: the way through its arms and leads that takes the fewest arms,
/// then the fewest leads. Broken leads count as if they were whole, since a shunt may lie over one.
struct Span {
  std::vector<std::size_t> arms;  ///< from 0, rising
  std::vector<LeadRole> leads;    ///< in the order of LeadRole

  friend bool operator==(const Span&, const Span&) = default;
};

/// Empty for one point. Both nodes must exist in the connection (`hasNode`).
Span spanBetween(const Bridge& bridge, Node a, Node b);

/// "over arm 2", "over arm 1 from the terminals", "over arm 1 and lead S-", "over the output", "over the
/// excitation at the bridge", "over lead P+"; "from A to B" where no such words fit, and for a shunt with
/// both ends on one point that point. The order of the nodes plays no part.
std::string placeWords(const Bridge& bridge, Node a, Node b);

/// The nodes to fix a shunt to between the points of `a` and `b`: an arm's own ends, begin first, where they
/// lie right across it, else the points themselves.
std::pair<Node, Node> endsAt(const Bridge& bridge, Node a, Node b);

}  // namespace core
