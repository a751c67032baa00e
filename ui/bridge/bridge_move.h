// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <optional>
#include <variant>
#include <vector>

#include "core/document/document.h"
#include "ui/bridge/bridge_parts.h"
#include "ui/theme.h"

namespace ui {

/// Where a part is moved to: the node of a shunt's end, the terminal of a lead's end; the arm (from 0) of a
/// leak or of another arm's resistor; the share of a wiper.
using MoveTarget = std::variant<core::Node, std::size_t, double>;

/// A part on its way to another place, and what would come of it there.
///
/// Shunt ends go to nodes, leaks to other arms, a lead's end to the terminal of another lead, whose end comes
/// to its own, an arm's resistor to another arm, whose resistor comes here, a wiper along its track.
struct BridgeMove {
  BridgeSpot grip;
  std::optional<MoveTarget> target;  ///< none while far from every place
  bool legal = false;                ///< `target` may be kept
  QString title;                     ///< "Moving R1 to corner S+"
  QString outcome;                   ///< what the move would do, or why it is refused, in words
  BridgeState state;                 ///< after a legal move
};

bool isMovable(const BridgeSpot& spot);

/// The move to `target`, solved once: at step `selected`, of a shunt at a step that closes it.
BridgeMove moveOf(const core::Setup& setup, std::optional<std::size_t> selected, const BridgeSpot& grip,
                  std::optional<MoveTarget> target);
/// `channel` after a legal move.
core::Channel withMove(core::Channel channel, const BridgeMove& move);
/// What the moved part is called after a legal move.
BridgePart partAfter(const BridgeMove& move);
/// Of the step in the history.
QString undoLabel(const BridgeMove& move);

/// The nearest place within reach of a point of the drawing, legal or not.
std::optional<MoveTarget> targetNear(const BridgePicture& picture, const BridgeSpot& grip, QPointF point);
/// The next place that is legal, one way or the other, from `now` or else from where the part is.
std::optional<MoveTarget> nextTarget(const core::Setup& setup, const BridgeSpot& grip,
                                     const std::optional<MoveTarget>& now, int direction);
/// How the keys move what has the keyboard, in one sentence; empty for what cannot be moved.
QString keysText(const BridgeSpot& spot);

/// Where the part may go, and where it is going: to its target, else to the pointer. A refused target is
/// crossed out. `picture` is that after the move where it is legal: then the part is there already.
void paintMove(QPainter& painter, const BridgePicture& picture, const BridgeMove& move,
               std::optional<QPointF> pointer, const Colours& colours);

}  // namespace ui
