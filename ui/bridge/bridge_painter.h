// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>

#include "ui/bridge/bridge_picture.h"
#include "ui/theme.h"

namespace ui {

/// Draws `picture` in the layout's units, by the symbols of its standard. Gauges have a carrier and a grid or
/// zigzag on it, completion resistors have not; leaks are dashed; closed shunts and the way of their current
/// are emphasised.
void paintBridge(QPainter& painter, const BridgePicture& picture, const Colours& colours);

/// The ring around what has the keyboard.
void paintRing(QPainter& painter, const QPolygonF& ring, const QColor& colour);

}  // namespace ui
