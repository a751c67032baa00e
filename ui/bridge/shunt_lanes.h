// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineF>
#include <functional>
#include <span>

#include "core/plan/setup.h"
#include "ui/bridge/bridge_layout.h"

namespace ui {

/// Where one shunt is drawn: from node `a` up or down its column, along a lane, and back to node `b`. Wires
/// begin on a wire of their node, or at the node itself.
struct ShuntPlace {
  QPolygonF toA, toB;        ///< wires, from the node to the switch and to the resistor
  QPointF handleA, handleB;  ///< where the ends are taken hold of
  QLineF contact;            ///< of the switch, on the side of `a` or `b`, from hinge to contact
  QPointF blade;             ///< tip of the open switch's blade
  QRectF resistor;           ///< body
  QRectF labelBox;           ///< empty where there is no room at all
  Qt::Alignment labelAlignment = Qt::AlignCenter;
  std::vector<QPointF> joints;  ///< where other shunts' wires go on
  bool faulty = false;          ///< an end is on a terminal that this connection has not got
};

/// All shunts of a channel, and the part of the plane that bridge and shunts take up.
struct ShuntLanes {
  std::vector<ShuntPlace> places;  ///< in the order of the shunts
  QRectF scene;
};

/// How wide a shunt's label is, and how much of it must be left when its name is cut.
struct ShuntLabelWidth {
  double whole = 0, least = 0;
};

/// Lays every shunt on a lane of its own wherever two would touch; lanes are stacked outwards, short
/// shunts inside, so that a shunt's columns cross as few others as possible.
///
/// A label lies beside the end of its lane where it has room for the whole text, clear of other shunts; else
/// above the wire; else above the symbol, which takes more height, so that only the first `roomyLanes` lanes
/// of a shelf and those of closed shunts do it.
ShuntLanes shuntLanes(const BridgeLayout& layout, std::span<const core::Shunt> shunts,
                      const std::vector<bool>& closed,
                      const std::function<ShuntLabelWidth(std::size_t)>& labelWidth);

inline constexpr std::size_t roomyLanes = 5;

}  // namespace ui
