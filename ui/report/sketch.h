// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QBrush>
#include <QByteArray>
#include <QFont>
#include <QImage>
#include <QPainterPath>
#include <QPen>
#include <QSizeF>
#include <QString>
#include <QTransform>
#include <functional>
#include <memory>
#include <vector>

class QPainter;

namespace ui {

/// A drawing kept as shapes and letters. Charts are drawn by widgets, on the GUI thread alone; their sketches
/// can be drawn on any thread, as often as wanted, at any size.
class Sketch {
 public:
  static constexpr int finer =
      16;  ///< letters of so many times their pixels keep the shape they have on paper

  struct Stroke {
    enum class Kind : std::uint8_t { Path, Text, Image };
    Kind kind = Kind::Path;
    QPainterPath path = {};  ///< in its own coordinates
    QPen pen = QPen(Qt::NoPen);
    QBrush brush = {};
    QString text = {};
    QFont font = {};   ///< of a whole number of pixels, `finer` times as large as it is drawn
    QPointF at = {};   ///< of the baseline's begin
    double width = 0;  ///< of the text as it was laid out
    QImage image = {};
    QRectF target = {};  ///< of the image
    bool smooth = false;
    double opacity = 1;
    QTransform transform = {};
    std::shared_ptr<const QPainterPath> clip = {};  ///< in the sketch's coordinates; none: not clipped
  };

  /// What `draw` draws with the painter it gets, on a sheet of `size` in points of a 96 dpi screen.
  static std::shared_ptr<const Sketch> of(QSizeF size, const std::function<void(QPainter&)>& draw);

  QSizeF size() const { return m_size; }
  /// Draws it into `room`, stretched where the proportions differ.
  void draw(QPainter& painter, const QRectF& room) const;
  /// As a picture for browsers (SVG 1.1), some kilobytes: what QSvgGenerator makes of it has fifty times as
  /// many.
  QByteArray svg() const;

 private:
  QSizeF m_size;
  std::vector<Stroke> m_strokes;
};

}  // namespace ui
