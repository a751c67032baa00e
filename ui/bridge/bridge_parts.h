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

/// Every part in keyboard order: instrument, input, balance network, leads, arms, leaks, then both ends of
/// each shunt.
std::vector<BridgeSpot> spotsOf(const BridgePicture& picture);
/// Every part, each once, in the same order.
std::vector<BridgePart> partsOf(const BridgePicture& picture);
/// The part at a point of the drawing; closed shunts lie over open ones, what is taken hold of over all.
std::optional<BridgeSpot> spotAt(const BridgePicture& picture, QPointF point);
/// The parts whose middle is inside `area`.
std::vector<BridgePart> partsIn(const BridgePicture& picture, const QRectF& area);
/// The nearest node within reach of a point of the drawing, legal or not.
std::optional<core::Node> nodeNear(const BridgePicture& picture, QPointF point);
/// The ring around the part, for what is selected or has the keyboard; of a shunt without an end, its
/// resistor.
QPolygonF ringOf(const BridgePicture& picture, const BridgeSpot& spot);
/// Where the part's value stands; of a part without a label, where one would be.
QRectF labelBoxOf(const BridgePicture& picture, const BridgePart& part);
/// The part in words, for tips and assistive tools.
QString textOf(const BridgePicture& picture, const BridgeSpot& spot);
/// The same without its value: "arm 3", "lead P+", "R1".
QString nameOf(const BridgePicture& picture, const BridgePart& part);
QPointF handleOf(const BridgePicture& picture, std::size_t shunt, ShuntEnd end);
/// Where the part is taken hold of to move it.
QPointF gripOf(const BridgePicture& picture, const BridgeSpot& spot);
/// The arm that the part lies at: the arm itself, that of a leak, the one under a shunt.
std::optional<std::size_t> armOf(const BridgePicture& picture, const BridgePart& part);

}  // namespace ui
