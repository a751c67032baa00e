// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/page_pictures.h"

#include <QAbstractTextDocumentLayout>
#include <QPaintDevice>
#include <QPainter>
#include <QTextDocument>

namespace ui {
namespace {

constexpr double pointsPerPixel = 72.0 / 96;

}  // namespace

PagePictures::PagePictures(QTextDocument& text) {
  text.documentLayout()->registerHandler(QTextFormat::ImageObject, this);
}

core::PictureSource PagePictures::add(QSizeF size_pt, Draw draw) {
  m_places.push_back({size_pt, std::move(draw)});
  return {std::to_string(m_places.size() - 1), static_cast<int>(size_pt.width() / pointsPerPixel)};
}

const PagePictures::Place* PagePictures::placeOf(const QTextFormat& format) const {
  bool isNumber = false;
  const std::size_t index = format.toImageFormat().name().toULongLong(&isNumber);
  return isNumber && index < m_places.size() ? &m_places[index] : nullptr;
}

QSizeF PagePictures::intrinsicSize(QTextDocument* text, int, const QTextFormat& format) {
  const Place* place = placeOf(format);
  return place ? place->size_pt * text->documentLayout()->paintDevice()->logicalDpiX() / 72.0 : QSizeF();
}

void PagePictures::drawObject(QPainter* painter, const QRectF& room, QTextDocument*, int,
                              const QTextFormat& format) {
  if (const Place* place = placeOf(format)) place->draw(*painter, room);
}

}  // namespace ui
