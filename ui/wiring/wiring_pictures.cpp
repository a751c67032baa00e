// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/wiring_pictures.h"

#include <QPainter>
#include <algorithm>

#include "ui/wiring/wiring_painter.h"

namespace ui {
namespace {

constexpr double width_px = 440;     ///< as laid out; wider only when the names need it
constexpr double scale_pt = 0.62;    ///< letters of about 8 points
constexpr QSizeF room_pt(480, 560);  ///< text width less a little; three quarters of the text's height

/// In pixels of the drawing: a font in points would follow the resolution of whatever is painted on.
QFont drawingFont() {
  QFont font("DejaVu Sans");
  font.setPixelSize(13);
  return font;
}

WiringPicture pictureOf(const core::Setup& setup, std::size_t shunt) {
  WiringPicture picture;
  picture.wiring = setup.wiring;
  picture.jumpers = setup.shunts[shunt].jumpers;
  picture.marks = marksOf(core::wiringFaults(setup), shunt);
  return picture;
}

}  // namespace

QSizeF wiringSize_pt(const core::Setup& setup, std::size_t shunt) {
  const QSizeF size = layOut(pictureOf(setup, shunt), QFontMetricsF(drawingFont()), width_px).size;
  return size * std::min({scale_pt, room_pt.width() / size.width(), room_pt.height() / size.height()});
}

void drawWiring(QPainter& painter, const QRectF& room, const core::Setup& setup, std::size_t shunt) {
  const WiringPicture picture = pictureOf(setup, shunt);
  const WiringLayout layout = layOut(picture, QFontMetricsF(drawingFont()), width_px);
  painter.save();
  painter.translate(room.topLeft());
  painter.scale(room.width() / layout.size.width(), room.height() / layout.size.height());
  painter.setFont(drawingFont());
  paintWiring(painter, picture, layout, coloursFor(lightPalette()));
  painter.restore();
}

}  // namespace ui
