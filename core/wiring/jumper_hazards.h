// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string>
#include <vector>

#include "core/wiring/jumper_groups.h"
#include "core/wiring/wiring_rules.h"

namespace core {

/// Which places of the bridge only leads and jumpers lie between: its four corners, and what jumpers make of
/// them.
class Corners {
 public:
  Corners(const Bridge& bridge, const std::vector<std::vector<Node>>& joinedPoints);

  bool together(Node a, Node b) const { return m_corner[index(a)] == m_corner[index(b)]; }
  bool excitationShorted() const { return together(Node::PPlus, Node::PMinus); }
  bool signalShorted() const { return together(Node::SPlus, Node::SMinus); }
  bool armShorted(std::size_t arm) const { return together(armBegin(arm), armEnd(arm)); }

 private:
  static std::size_t index(Node node) { return static_cast<std::size_t>(node); }
  void join(Node a, Node b);

  std::array<Node, nodeCount> m_corner{};
};

/// What joining points does: "shorts the excitation", "shorts arm 2", "shorts arms 1 and 4", "shorts the
/// signal", "bridges a lead".
std::string effectOfJoining(const Bridge& bridge, const std::vector<std::vector<Node>>& joined);

/// What a bridge between two neighbouring pins would do, the worst for each two; see core::wiringFaults.
std::vector<WiringFault> neighbourHazards(const Setup& setup);

}  // namespace core
