// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSizeF>

#include "ui/bridge/bridge_picture.h"

class QPainter;

namespace ui {

/// How large `picture` is drawn on paper without its empty borders: with letters of a usual size, or smaller
/// where it would not go into `room_pt`.
QSizeF paperSize_pt(const BridgePicture& picture, QSizeF room_pt);

/// Draws it into `room`, which has the proportions of its paperSize_pt, in light colours.
void drawOnPaper(QPainter& painter, const QRectF& room, const BridgePicture& picture);

}  // namespace ui
