// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <array>
#include <optional>
#include <vector>

#include "core/circuit/bridge.h"

namespace ui {

/// Where one of core::Node lies in the drawing, and how shunts get there.
///
/// Shunts lie on shelves above and below the drawing. Each node is reached from a shelf by a vertical
/// column that starts beside the node, so that no shunt runs over an arm or a label.
struct NodePlace {
  bool present = false;   ///< false: sense terminals of a four-wire connection
  bool terminal = false;  ///< a labelled circle on the instrument; otherwise a corner of the bridge
  QPointF at;
  QRectF nameBox;                     ///< terminals only
  QRectF voltageBox;                  ///< empty where another node of the same point shows the voltage
  double columnAbove = 0;             ///< x of the column to the upper shelf
  std::optional<double> columnBelow;  ///< x of the column to the lower shelf; none: never routed there
};

/// A resistor of the bridge, drawn in the middle of the line from `begin` to `end`.
struct ArmPlace {
  QPointF begin, end;
  QRectF valueBox, strainBox;
  bool labelRight = true;  ///< texts start at the left of their boxes
  QPointF outward;         ///< unit vector across the arm, towards its label
};

/// A wire with a resistance of its own.
struct LeadPlace {
  core::LeadRole role;
  QPolygonF route;
  QRectF valueBox;
};

/// A bridge drawn on a plane, in units of its own (about a pixel at 840 x 480). x right, y down.
struct BridgeLayout {
  std::array<NodePlace, core::nodeCount> nodes;
  std::array<ArmPlace, 4> arms;
  std::vector<LeadPlace> leads;
  std::vector<QPolygonF> wires;  ///< joins and the instrument's own wires
  QPointF source;                ///< centre of the excitation source's symbol
  QPointF input;                 ///< centre of the measuring input's symbol
  QRectF instrument, article;    ///< outlines
  QRectF instrumentHeading, excitationBox, inputBox, articleHeading;

  const NodePlace& operator[](core::Node node) const { return nodes[static_cast<std::size_t>(node)]; }
};

inline constexpr double layoutWidth = 840;
inline constexpr double symbolRadius = 15;  ///< of the source's and the input's circles
inline constexpr double armBodyLength = 60;
inline constexpr double armBodyWidth = 22;

/// The drawing of every template, four- and six-wire; depends on type and connection only.
BridgeLayout layoutOf(const core::Bridge& bridge);

/// The rectangle of an arm's resistor, turned into the arm's direction, `margin` wider on each side.
QPolygonF armBody(const ArmPlace& arm, double margin = 0);

}  // namespace ui
