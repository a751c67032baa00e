// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>

#include "ui/bridge/bridge_picture.h"
#include "ui/theme.h"

namespace ui {

/// How currents are shown; a reader who is disturbed by movement, or by all of it, chooses less.
enum class FlowStyle { Off, Width, Dots };

/// Currents over `picture`, which must have a flow: wider where more flows, or dots that run the faster. The
/// way of the current through closed shunts is emphasised. `phase` from 0 to 1 is the place of the dots
/// between one and the next.
void paintFlow(QPainter& painter, const BridgePicture& picture, const core::Flow& flow, FlowStyle style,
               double phase, const Colours& colours);

}  // namespace ui
