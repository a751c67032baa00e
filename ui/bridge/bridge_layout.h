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
/// column that starts on a wire of the node or beside it, so that no shunt runs over an arm or a label.
struct NodePlace {
  bool present = false;   ///< false: sense terminals of a four-wire connection
  bool terminal = false;  ///< a labelled circle on the instrument; otherwise a corner of the bridge
  QPointF at;
  QRectF nameBox;                     ///< terminals only
  QRectF voltageBox;                  ///< empty where another node of the same point shows the voltage
  double columnAbove = 0;             ///< x of the column to the upper shelf
  std::optional<double> columnBelow;  ///< x of the column to the lower shelf; none: never routed there
  /// The column needs a wire from `at`; otherwise it starts on one, at the height of `at`.
  bool stubAbove = false, stubBelow = false;
};

/// A resistor of the bridge, drawn in the middle of the line from `begin` to `end`.
struct ArmPlace {
  QPointF begin, end;
  QRectF nameBox, valueBox, strainBox;
  bool labelRight = true;  ///< texts start at the left of their boxes
  QPointF outward;         ///< unit vector across the arm, towards its label
};

/// A wire with a resistance of its own. Begins at the terminal that it is really at.
///
/// Leads leave the plug evenly spaced, in the order of the terminals, and do not cross but where two are
/// exchanged. The body's length tells the order of magnitude: 24 up to 0.01 ohm, 8 more for each power of
/// ten, 64 from 1 kilohm on.
struct LeadPlace {
  core::LeadRole role;
  QPolygonF route;
  QRectF valueBox;
  QPolygonF body = {};              ///< its resistor; empty of 0 ohm
  QPointF handle = {};              ///< where its end at the instrument is taken hold of
  std::optional<QPointF> gap = {};  ///< middle of the break, on a level piece; none: it is whole
};

/// Two leads that touch at their gauge ends.
struct TouchPlace {
  core::LeadPair leads;
  QPolygonF route;  ///< from one lead to the other
};

/// A leak over an arm, or from an arm's grid to the structure.
struct LeakPlace {
  std::size_t arm = 0;
  bool toStructure = false;
  QPolygonF route;  ///< wire, from end to end through the body
  QPolygonF body;   ///< its resistor
  QRectF valueBox;
  QPointF handle;  ///< to take it to another arm
  QPointF way;     ///< unit vector of the last piece; to the structure: where its symbol points
};

/// The balance network, inside the instrument; between the gauges of a full bridge with a series balance.
struct BalancePlace {
  std::vector<QPolygonF> routes;  ///< wires
  QPolygonF track;                ///< body of the potentiometer
  QLineF travel;                  ///< of the wiper, from share 0 to share 1
  QPolygonF limiting;             ///< body of the resistor to S+; empty of a series balance
  QRectF valueBox;                ///< of the potentiometer
  QRectF limitingBox;             ///< value of the resistor to S+
  QLineF wiper;                   ///< its arrow, the tip last
  QPolygonF farPart;  ///< half bridge, diagonal, series: the potentiometer's part in arm 3, at the article
};

/// What flows through a wire of the instrument.
enum class WireCurrent {
  None,    ///< none, or none that has a name
  Source,  ///< core::Flow::source
  Lead,    ///< of the lead with the role `index`
  Arm,     ///< of arm `index`
  Input,   ///< core::Flow::input
};

/// A wire of the instrument. Its route runs as its current counts positive: out of the source's plus side,
/// towards the article, from the arm's begin to its end, from S+ to S-.
struct WirePlace {
  QPolygonF route;
  WireCurrent current = WireCurrent::None;
  std::size_t index = 0;  ///< arm from 0 or core::LeadRole
};

/// A bridge drawn on a plane, in units of its own. x right, y down.
struct BridgeLayout {
  std::array<NodePlace, core::nodeCount> nodes;
  std::array<ArmPlace, 4> arms;
  std::vector<LeadPlace> leads;
  std::vector<LeakPlace> leaks;
  std::vector<TouchPlace> touches;
  std::optional<BalancePlace> balance;
  std::vector<WirePlace> wires;  ///< joins and the instrument's own wires
  QPointF source;                ///< centre of the excitation source's symbol
  QPointF input;                 ///< centre of the measuring input's symbol
  QPointF inputAxis;             ///< unit vector through the input, from its plus side to its minus side
  QRectF sourcePlus, inputPlus;  ///< the marks of the plus sides
  QPolygonF inputResistance;     ///< body; empty where it takes no current
  std::optional<QPolygonF> grounding;  ///< from P+ or P- to the symbol of the structure
  QRectF instrument, article;          ///< outlines
  QRectF instrumentHeading, excitationBox, inputBox, articleHeading;

  const NodePlace& operator[](core::Node node) const { return nodes[static_cast<std::size_t>(node)]; }
};

inline constexpr double symbolRadius = 14;  ///< of the source's and the input's circles
inline constexpr double armBodyLength = 54;
inline constexpr double armBodyWidth = 20;

/// The drawing of every template, four- and six-wire, with what the bridge and the instrument have of leaks,
/// balance network and wires that are not as the template says. What is not there takes no room.
BridgeLayout layoutOf(const core::Bridge& bridge, const core::Instrument& instrument);

/// The rectangle of an arm's resistor, turned into the arm's direction, `margin` wider on each side.
QPolygonF armBody(const ArmPlace& arm, double margin = 0);

}  // namespace ui
