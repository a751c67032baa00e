// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/wiring_pictures.h"

#include <QAbstractTextDocumentLayout>
#include <QPaintDevice>
#include <QPainter>
#include <QTextDocument>
#include <algorithm>

#include "ui/wiring/wiring_painter.h"

namespace ui {
namespace {

constexpr double pointsPerPixel = 72.0 / 96;
constexpr double width_px = 440;     ///< as laid out; wider only when the names need it
constexpr double scale_pt = 0.62;    ///< letters of about 8 points
constexpr QSizeF room_pt(480, 560);  ///< text width less a little; three quarters of the text's height

/// In pixels of the drawing: a font in points would follow the resolution of whatever is painted on.
QFont drawingFont() {
  QFont font("DejaVu Sans");
  font.setPixelSize(13);
  return font;
}

}  // namespace

WiringPictures::WiringPictures(QTextDocument& text) {
  text.documentLayout()->registerHandler(QTextFormat::ImageObject, this);
}

core::PictureSource WiringPictures::add(WiringPicture picture) {
  Place place{std::move(picture), {}, {}};
  place.layout = layOut(place.picture, QFontMetricsF(drawingFont()), width_px);
  const QSizeF size = place.layout.size;
  const double scale = std::min({scale_pt, room_pt.width() / size.width(), room_pt.height() / size.height()});
  place.size_pt = size * scale;
  m_places.push_back(std::move(place));
  return {std::to_string(m_places.size() - 1),
          static_cast<int>(m_places.back().size_pt.width() / pointsPerPixel)};
}

const WiringPictures::Place* WiringPictures::placeOf(const QTextFormat& format) const {
  bool isNumber = false;
  const std::size_t index = format.toImageFormat().name().toULongLong(&isNumber);
  return isNumber && index < m_places.size() ? &m_places[index] : nullptr;
}

QSizeF WiringPictures::intrinsicSize(QTextDocument* text, int, const QTextFormat& format) {
  const Place* place = placeOf(format);
  return place ? place->size_pt * text->documentLayout()->paintDevice()->logicalDpiX() / 72.0 : QSizeF();
}

void WiringPictures::drawObject(QPainter* painter, const QRectF& room, QTextDocument*, int,
                                const QTextFormat& format) {
  const Place* place = placeOf(format);
  if (!place) return;
  painter->save();
  painter->translate(room.topLeft());
  painter->scale(room.width() / place->layout.size.width(), room.height() / place->layout.size.height());
  painter->setFont(drawingFont());
  paintWiring(*painter, place->picture, place->layout, coloursFor(lightPalette()));
  painter->restore();
}

}  // namespace ui
