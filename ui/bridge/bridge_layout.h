// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineF>
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

/// A wire with a resistance of its own. Begins at the terminal that it is really at.
struct LeadPlace {
  core::LeadRole role;
  QPolygonF route;
  QRectF valueBox;
  QPolygonF body = {};  ///< its resistor, the longer the greater the order of its resistance; empty of 0 ohm
  QPointF handle = {};  ///< where its end at the instrument is taken hold of
};

/// A leak over an arm, or from an arm's grid to the structure.
struct LeakPlace {
  std::size_t arm = 0;
  bool toStructure = false;
  QPolygonF route;  ///< wire, from end to end through the body
  QPolygonF body;   ///< its resistor
  QRectF valueBox;
  QPointF handle;  ///< to take it to another arm
};

/// The balance network, inside the instrument.
struct BalancePlace {
  std::vector<QPolygonF> routes;  ///< wires
  QPolygonF track;                ///< body of the potentiometer
  QLineF travel;                  ///< of the wiper, from share 0 to share 1
  QPolygonF limiting;             ///< body of the resistor to S+; empty of a series balance
  QRectF valueBox;
};

/// A bridge drawn on a plane, in units of its own (about a pixel at 840 x 480). x right, y down.
struct BridgeLayout {
  std::array<NodePlace, core::nodeCount> nodes;
  std::array<ArmPlace, 4> arms;
  std::vector<LeadPlace> leads;
  std::vector<LeakPlace> leaks;
  std::optional<BalancePlace> balance;
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

/// The drawing of every template, four- and six-wire, with what the bridge and the instrument have of leaks,
/// balance network and wires that are not as the template says.
BridgeLayout layoutOf(const core::Bridge& bridge, const core::Instrument& instrument);

/// The rectangle of an arm's resistor, turned into the arm's direction, `margin` wider on each side.
QPolygonF armBody(const ArmPlace& arm, double margin = 0);

}  // namespace ui
