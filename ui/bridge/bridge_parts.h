// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "ui/bridge/bridge_picture.h"
#include "ui/bridge/shunt_move.h"

namespace ui {

/// A part of the drawing that the user can point at.
struct BridgePart {
  enum class Kind { Arm, Lead, Shunt, Instrument, Input, Balance, Leak, StructureLeak };
  Kind kind = Kind::Arm;
  std::size_t index = 0;  ///< arm from 0 (of a leak too), core::LeadRole, shunt; else 0

  friend bool operator==(const BridgePart&, const BridgePart&) = default;
};

/// A part under the pointer or with the keyboard; of a shunt, the end that would be moved.
struct BridgeSpot {
  BridgePart part;
  std::optional<ShuntEnd> end;  ///< shunts only; none on the resistor and the label

  friend bool operator==(const BridgeSpot&, const BridgeSpot&) = default;
};

inline bool isShunt(const std::optional<BridgeSpot>& spot) {
  return spot && spot->part.kind == BridgePart::Kind::Shunt;
}

/// Every part in keyboard order: instrument, leads, arms, then both ends of each shunt.
std::vector<BridgeSpot> spotsOf(const BridgePicture& picture);
/// The part at a point of the drawing; closed shunts lie over open ones.
std::optional<BridgeSpot> spotAt(const BridgePicture& picture, QPointF point);
/// The nearest node within reach of a point of the drawing, legal or not.
std::optional<core::Node> nodeNear(const BridgePicture& picture, QPointF point);
/// The ring around the part, for what has the keyboard.
QPolygonF ringOf(const BridgePicture& picture, const BridgeSpot& spot);
/// The part in words, for tips and assistive tools.
QString textOf(const BridgePicture& picture, const BridgeSpot& spot);
QPointF handleOf(const BridgePicture& picture, std::size_t shunt, ShuntEnd end);

}  // namespace ui
