// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QRectF>
#include <QTextObjectInterface>
#include <functional>
#include <vector>

#include "core/report/html.h"

class QPainter;
class QTextDocument;

namespace ui {

/// Draws the pictures of a text document straight onto its pages, so that they are made of lines and letters
/// and not of pixels, and none is kept.
///
/// Takes over all images of `text`, which has its paint device set and must not outlive this. GUI thread.
class PagePictures : public QObject, public QTextObjectInterface {
  Q_OBJECT
  Q_INTERFACES(QTextObjectInterface)

 public:
  /// Draws into `room`, which has the proportions that were asked for.
  using Draw = std::function<void(QPainter& painter, const QRectF& room)>;

  explicit PagePictures(QTextDocument& text);

  /// Makes room for a picture; the address is to stand in the document's text.
  core::PictureSource add(QSizeF size_pt, Draw draw);

  QSizeF intrinsicSize(QTextDocument* text, int position, const QTextFormat& format) override;
  void drawObject(QPainter* painter, const QRectF& room, QTextDocument* text, int position,
                  const QTextFormat& format) override;

 private:
  struct Place {
    QSizeF size_pt;
    Draw draw;
  };

  const Place* placeOf(const QTextFormat& format) const;

  std::vector<Place> m_places;  ///< the address is the index
};

}  // namespace ui
