// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/paper_bridge.h"

#include <QPainter>
#include <algorithm>

#include "ui/bridge/bridge_painter.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr double letter_pt = 7.0;  ///< the smallest, where there is room

/// What is drawn on: less than the scene, which is as wide for every bridge.
QRectF inked(const BridgePicture& picture) {
  QRectF box = picture.layout.instrument | picture.layout.article;
  box.setTop(std::min(box.top(), picture.lanes.scene.top()));
  box.setBottom(std::max(box.bottom(), picture.lanes.scene.bottom()));
  for (const ShuntPlace& place : picture.lanes.places)
    box |= place.toA.boundingRect() | place.toB.boundingRect() | place.labelBox;
  return box.adjusted(-2, -2, 2, 2);
}

}  // namespace

QSizeF paperSize_pt(const BridgePicture& picture, QSizeF room_pt) {
  const QSizeF drawn = inked(picture).size();
  const double scale = std::min({letter_pt / labelFont(LabelRole::Note).pixelSize(),
                                 room_pt.width() / drawn.width(), room_pt.height() / drawn.height()});
  return drawn * scale;
}

void drawOnPaper(QPainter& painter, const QRectF& room, const BridgePicture& picture) {
  const QRectF box = inked(picture);
  painter.save();
  painter.translate(room.topLeft());
  painter.scale(room.width() / box.width(), room.height() / box.height());
  painter.translate(-box.topLeft());
  paintBridge(painter, picture, coloursFor(lightPalette()));
  painter.restore();
}

}  // namespace ui
