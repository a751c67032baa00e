// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTextObjectInterface>
#include <vector>

#include "core/report/html.h"
#include "ui/wiring/wiring_layout.h"

class QTextDocument;

namespace ui {

/// Draws wiring straight onto the page of a text document, of lines and letters and always in light colours.
///
/// Takes over all images of `text`, which has its paint device set and must not outlive this.
class WiringPictures : public QObject, public QTextObjectInterface {
  Q_OBJECT
  Q_INTERFACES(QTextObjectInterface)

 public:
  explicit WiringPictures(QTextDocument& text);

  /// Makes room for `picture`; the address is to stand in the document's text.
  core::PictureSource add(WiringPicture picture);

  QSizeF intrinsicSize(QTextDocument* text, int position, const QTextFormat& format) override;
  void drawObject(QPainter* painter, const QRectF& room, QTextDocument* text, int position,
                  const QTextFormat& format) override;

 private:
  struct Place {
    WiringPicture picture;
    WiringLayout layout;
    QSizeF size_pt;
  };

  const Place* placeOf(const QTextFormat& format) const;

  std::vector<Place> m_places;  ///< the address is the index
};

}  // namespace ui
