// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/circuit/lead.h"
#include "core/circuit/node.h"
#include "core/units/language.h"

namespace core {

/// The bridges we know. To add one, add an enumerator and a row in bridge_template.cpp.
enum class BridgeType : std::uint8_t {
  QuarterTwoWire,
  QuarterThreeWire,
  HalfBending,
  HalfPoisson,
  HalfDiagonal,
  FullBending,
  FullPoissonColumn,
  FullPoissonBendingSplit,
  FullPoissonBendingMixed,
  FullTorsion,
  Transducer,
};
inline constexpr std::size_t bridgeTypeCount = 11;

/// Strain of an arm for unit strain at gauge 1: plain + poisson x Poisson's ratio. Zero: not active.
struct StrainShare {
  double plain = 0;
  double poisson = 0;

  constexpr double at(double poissonRatio) const { return plain + poisson * poissonRatio; }
  constexpr bool active() const { return plain != 0 || poisson != 0; }
};

/// A wire of a template: its role, the instrument side, the gauge side.
struct Wire {
  LeadRole role;
  Node from;
  Node to;
};

/// Two nodes of a template that are one point.
struct Join {
  Node a;
  Node b;
};

/// What distinguishes one kind of bridge from another; never changes while the program runs.
struct BridgeTemplate {
  BridgeType type;
  std::string_view key;  ///< in files and on the command line: "quarter_three_wire"
  TableName name;        ///< for people: "Quarter bridge, three-wire"
  TableName about;       ///< one sentence: what it measures and which arms are gauges
  std::array<StrainShare, 4> shares;
  std::array<bool, 4> atArticle;  ///< arm is at the structure (a gauge or dummy there), not in the instrument
  std::vector<Wire> wires;        ///< without sense leads
  std::vector<Join> joins;
  bool senseLeads;  ///< whether a six-wire connection is offered

  /// Small-strain bridge factor N: output ~ N F strain / 4.
  double bridgeFactor(double poissonRatio) const;
};

const BridgeTemplate& templateOf(BridgeType type);
std::span<const BridgeTemplate> allTemplates();
std::optional<BridgeType> bridgeTypeFromKey(std::string_view key);

}  // namespace core
