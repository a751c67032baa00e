// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <vector>

#include "ui/bridge/bridge_picture.h"
#include "ui/theme.h"

namespace ui {

/// How currents are shown; a reader who is disturbed by movement, or by all of it, chooses less.
enum class FlowStyle { Off, Width, Dots };

/// A current along a route of the drawing, in the way it flows.
struct Stream {
  QPolygonF route;
  double strength = 0;   ///< 0 to 1: the logarithm of its share of the source's current
  bool ofShunt = false;  ///< through a closed shunt itself
  bool emphasised =
      false;  ///< on the way through a closed shunt from the source's plus side to its minus side
};

/// The currents of `picture` that matter: from a millionth of the source's on.
std::vector<Stream> streamsOf(const BridgePicture& picture, const core::Flow& flow);

/// Currents over `picture`, which must have a flow: wider where more flows, or dots that run the faster. The
/// way of the current through closed shunts is emphasised. `phase` from 0 to 1 is the place of the dots
/// between one and the next. Labels stay free.
void paintFlow(QPainter& painter, const BridgePicture& picture, const core::Flow& flow, FlowStyle style,
               double phase, const Colours& colours);

}  // namespace ui
