// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace core {

/// The places of a channel that a wire or a shunt can be fixed to.
///
/// Instrument terminals first, then the two ends of each arm in the direction of the arm's
/// definition (arm 1 runs P+ to S-, arm 2 S- to P-, arm 3 P- to S+, arm 4 S+ to P+). Ends that a
/// template joins without a lead are the same electrical node; either name may be used.
enum class Node : std::uint8_t {
  PPlus,
  PMinus,
  SPlus,
  SMinus,
  SensePlus,
  SenseMinus,
  Arm1Begin,
  Arm1End,
  Arm2Begin,
  Arm2End,
  Arm3Begin,
  Arm3End,
  Arm4Begin,
  Arm4End,
};

inline constexpr std::size_t nodeCount = 14;

/// All nodes in the order of the enumeration.
std::array<Node, nodeCount> allNodes();

/// The node's name in files and in what other programs read: "P+", "S-", "sense+", "arm 1 begin".
std::string_view nodeName(Node node);
std::optional<Node> nodeFromName(std::string_view name);

constexpr Node armBegin(std::size_t arm) { return static_cast<Node>(6 + 2 * arm); }  ///< arm counted from 0
constexpr Node armEnd(std::size_t arm) { return static_cast<Node>(7 + 2 * arm); }    ///< arm counted from 0

}  // namespace core
