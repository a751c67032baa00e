// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/flow_painter.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace ui {
namespace {

constexpr double leastWidth = 1.6, mostWidth = 7.5;
constexpr double dotGap = 18;
constexpr int speeds = 3;  ///< of dots: whole gaps in a turn of the phase, so that its end is its beginning

/// The rectangles of labels that wires of shunts may pass behind, and that are filled therefore.
std::vector<QRectF> coveringLabels(const BridgePicture& picture) {
  std::vector<QRectF> boxes;
  for (const BridgeLabel& label : picture.labels)
    if (label.role == LabelRole::Voltage || label.role == LabelRole::Shunt || label.role == LabelRole::Note)
      boxes.push_back(label.box);
  return boxes;
}

/// The parts of `line`, as shares of its length, that `box` covers; empty when the first is not below the
/// second. L. and B. Barsky's clipping (Liang and Barsky 1984, from memory).
std::pair<double, double> coveredPart(const QLineF& line, const QRectF& box) {
  double from = 0, to = 1;
  const auto clip = [&](double start, double way, double low, double high) {
    if (way == 0) {
      if (start <= low || start >= high) to = -1;
      return;
    }
    const double a = (low - start) / way, b = (high - start) / way;
    from = std::max(from, std::min(a, b));
    to = std::min(to, std::max(a, b));
  };
  clip(line.x1(), line.dx(), box.left(), box.right());
  clip(line.y1(), line.dy(), box.top(), box.bottom());
  return {from, to};
}

/// `route` without what lies under the boxes, in pieces that hang together.
std::vector<QPolygonF> uncovered(const QPolygonF& route, const std::vector<QRectF>& boxes) {
  std::vector<QPolygonF> pieces(1, QPolygonF{route.front()});
  for (qsizetype k = 1; k < route.size(); ++k) {
    const QLineF line(route[k - 1], route[k]);
    std::vector<std::pair<double, double>> covered;
    for (const QRectF& box : boxes)
      if (const auto part = coveredPart(line, box); part.first < part.second) covered.push_back(part);
    std::sort(covered.begin(), covered.end());
    for (const auto& [from, to] : covered) {
      pieces.back() << line.pointAt(from);
      pieces.push_back({line.pointAt(to)});
    }
    pieces.back() << route[k];
  }
  return pieces;
}

class FlowBrush {
 public:
  FlowBrush(QPainter& painter, const BridgePicture& picture, const Colours& colours)
      : m_painter(painter), m_colours(colours), m_boxes(coveringLabels(picture)) {
    painter.setRenderHint(QPainter::Antialiasing);
  }

  void bands(const std::vector<Stream>& streams) {
    for (const Stream& stream : streams) {
      band(stream, leastWidth + (mostWidth - leastWidth) * stream.strength, stream.emphasised ? 140 : 95);
      // A shunt's own wires have their arrows in the drawing.
      if (!stream.ofShunt) arrow(stream);
    }
  }

  void dots(const std::vector<Stream>& streams, double phase) {
    for (const Stream& stream : streams) {
      if (stream.emphasised) band(stream, 4.5, 70);
      dotsOf(stream, phase);
    }
  }

 private:
  QColor colourOf(const Stream& stream) const {
    return stream.emphasised ? m_colours.selected : m_colours.band;
  }

  void band(const Stream& stream, double width, int alpha) {
    QColor colour = colourOf(stream);
    colour.setAlpha(alpha);
    m_painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    m_painter.setBrush(Qt::NoBrush);
    if (!stream.ofShunt) return m_painter.drawPolyline(stream.route);
    for (const QPolygonF& piece : uncovered(stream.route, m_boxes)) m_painter.drawPolyline(piece);
  }

  /// Near the beginning of the longest piece: resistors lie in the middle.
  void arrow(const Stream& stream) {
    QLineF longest;
    for (qsizetype k = 1; k < stream.route.size(); ++k)
      if (const QLineF piece(stream.route[k - 1], stream.route[k]); piece.length() > longest.length())
        longest = piece;
    if (longest.length() < 24) return;
    const double size = 4 + 6 * stream.strength;
    const QPointF way = (longest.p2() - longest.p1()) / longest.length();
    const QPointF tip = longest.pointAt(0.16) + way * size / 2,
                  across(-way.y() * size / 2, way.x() * size / 2);
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(colourOf(stream));
    m_painter.drawPolygon(QPolygonF{tip, tip - way * size + across, tip - way * size - across});
  }

  void dotsOf(const Stream& stream, double phase) {
    const double turns = 1 + std::floor(stream.strength * (speeds - 0.001));
    double ahead = std::fmod(phase * turns, 1.0) * dotGap;  // way to the next dot
    QPolygonF dots;
    for (qsizetype k = 1; k < stream.route.size(); ++k) {
      const QLineF line(stream.route[k - 1], stream.route[k]);
      const double length = line.length();
      while (ahead < length) {
        dots << line.pointAt(ahead / length);
        ahead += dotGap;
      }
      ahead -= length;
    }
    if (stream.ofShunt)
      dots.removeIf([this](QPointF dot) {
        return std::any_of(m_boxes.begin(), m_boxes.end(),
                           [&](const QRectF& box) { return box.contains(dot); });
      });
    // A closed shunt is drawn in the colour of the emphasis: on it that would not be seen.
    const QColor colour = stream.ofShunt ? m_colours.text : colourOf(stream);
    m_painter.setPen(QPen(colour, 3.5 + 2.5 * stream.strength, Qt::SolidLine, Qt::RoundCap));
    m_painter.drawPoints(dots);
  }

  QPainter& m_painter;
  const Colours& m_colours;
  std::vector<QRectF> m_boxes;
};

}  // namespace

void paintFlow(QPainter& painter, const BridgePicture& picture, const core::Flow& flow, FlowStyle style,
               double phase, const Colours& colours) {
  if (style == FlowStyle::Off) return;
  const std::vector<Stream> streams = streamsOf(picture, flow);
  FlowBrush brush(painter, picture, colours);
  if (style == FlowStyle::Width) return brush.bands(streams);
  brush.dots(streams, phase);
}

}  // namespace ui
