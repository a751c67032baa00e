// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_painter.h"

#include <QFontMetricsF>
#include <QLineF>
#include <algorithm>

#include "ui/bridge/bridge_parts.h"

namespace ui {
namespace {

class Brush {
 public:
  Brush(QPainter& painter, const BridgePicture& picture, const Colours& colours)
      : m_painter(painter), m_picture(picture), m_layout(picture.layout), m_colours(colours) {}

  void paint() {
    outlines();
    for (const WirePlace& wire : m_layout.wires) line(wire.route, m_colours.quiet, 1.5);
    instrument();
    // Leads lie over open shunts that start along them; closed shunts lie over both.
    shunts(false);
    for (const LeadPlace& lead : m_layout.leads) line(lead.route, m_colours.text, 2);
    shunts(true);
    for (const std::size_t index : {0, 1, 2, 3}) arm(index);
    nodes();
    for (const BridgeLabel& entry : m_picture.labels) label(entry);
    for (std::size_t k = 0; k < m_picture.lanes.places.size(); ++k) handles(k);
  }

 private:
  void line(const QPolygonF& route, const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine) {
    m_painter.setPen(QPen(colour, width, style, Qt::FlatCap, Qt::RoundJoin));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawPolyline(route);
  }

  void outlines() {
    m_painter.setBrush(Qt::NoBrush);
    m_painter.setPen(QPen(m_colours.quiet, 1, Qt::DashLine));
    m_painter.drawRoundedRect(m_layout.instrument, 8, 8);
    m_painter.setPen(QPen(m_colours.quiet, 1, Qt::DotLine));
    m_painter.drawRoundedRect(m_layout.article, 8, 8);
  }

  void instrument() {
    m_painter.setPen(QPen(m_colours.text, 1.5));
    m_painter.setBrush(m_colours.background);
    m_painter.drawEllipse(m_layout.source, symbolRadius, symbolRadius);
    m_painter.drawEllipse(m_layout.input, symbolRadius, symbolRadius);
    m_painter.setFont(labelFont(LabelRole::Value));
    m_painter.drawText(QRectF(m_layout.input - QPointF(symbolRadius, symbolRadius),
                              QSizeF(2 * symbolRadius, 2 * symbolRadius)),
                       Qt::AlignCenter, QStringLiteral("V"));
    m_painter.drawText(QRectF(m_layout.source + QPointF(-24, -symbolRadius - 18), QSizeF(20, 18)),
                       Qt::AlignCenter, QStringLiteral("+"));
    source();
  }

  /// IEC 60617 (from memory): in a voltage source's circle the wire goes on, in a current source's a bar
  /// lies across it. The arrow on the wire is the way of the current.
  void source() {
    const bool current = m_picture.constantCurrent;
    const QPointF reach = current ? QPointF(symbolRadius, 0) : QPointF(0, symbolRadius);
    line({m_layout.source - reach, m_layout.source + reach}, m_colours.text, 1.5);
    if (current)
      arrowHead(m_layout.source - QPointF(0, symbolRadius + 26), QPointF(0, -1), m_colours.text, 10);
  }

  void arm(std::size_t index) {
    const ArmPlace& place = m_layout.arms[index];
    const bool gauge = core::templateOf(m_picture.bridge.type).atArticle[index];
    line({place.begin, place.end}, m_colours.text, 2);
    m_painter.setBrush(m_colours.background);
    m_painter.setPen(QPen(m_colours.text, gauge ? 2.5 : 1.5));
    m_painter.drawPolygon(armBody(place));
    const QString strain = strainText(m_picture.bridge, index);
    if (!strain.isEmpty()) strainArrow(place, strain.startsWith('+'));
  }

  /// Beside the arm: heads apart where the gauge is stretched, towards each other where compressed.
  void strainArrow(const ArmPlace& place, bool stretched) {
    const QLineF along(place.begin, place.end);
    const QPointF unit = (place.end - place.begin) / along.length();
    const QPointF middle = along.center() - place.outward * 21;
    const QColor colour =
        colourOf(m_colours, stretched ? core::Polarity::Positive : core::Polarity::Negative);
    for (const double way : {-1.0, 1.0}) {
      const QPointF inner = middle + unit * way * 5, outer = middle + unit * way * 24;
      line({inner, outer}, colour, 1.8);
      arrowHead(stretched ? outer : inner, unit * (stretched ? way : -way), colour, 7);
    }
  }

  /// A filled head with its tip at `tip`, pointing along the unit vector `way`.
  void arrowHead(QPointF tip, QPointF way, const QColor& colour, double size) {
    const QPointF across(-way.y() * size * 0.45, way.x() * size * 0.45);
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(colour);
    m_painter.drawPolygon(QPolygonF{tip, tip - way * size + across, tip - way * size - across});
  }

  void shunts(bool closed) {
    for (std::size_t k = 0; k < m_picture.lanes.places.size(); ++k)
      if (m_picture.state.closed[k] == closed) shunt(m_picture.lanes.places[k], closed);
  }

  void shunt(const ShuntPlace& place, bool closed) {
    const QColor colour = place.faulty ? m_colours.fail : closed ? m_colours.selected : m_colours.quiet;
    const double width = closed ? 3 : 1.2;
    line(place.toA, colour, width);
    line(place.toB, colour, width);
    const QLineF between(place.contact.p2(), {place.resistor.left(), place.contact.y2()});
    line({between.p1(), between.p2()}, colour, width);
    line({place.contact.p1(), closed ? place.contact.p2() : place.blade}, colour, std::max(width, 1.8));
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(colour);
    for (const QPointF& contact : {place.contact.p1(), place.contact.p2()})
      m_painter.drawEllipse(contact, 2.5, 2.5);
    m_painter.setBrush(m_colours.background);
    m_painter.setPen(QPen(colour, closed ? 2.2 : 1.4, Qt::DashLine));
    m_painter.drawRect(place.resistor);
    for (const QPolygonF* wire : {&place.toA, &place.toB}) {
      m_painter.setPen(Qt::NoPen);
      m_painter.setBrush(colour);
      m_painter.drawEllipse(wire->front(), 4, 4);
      const QPointF tap = (*wire)[1];
      if (tap.y() == wire->front().y()) m_painter.drawEllipse(tap, 3, 3);
    }
  }

  /// The way of the current through a closed shunt, from the higher potential to the lower.
  void currentArrows(std::size_t index) {
    const auto& potentials = m_picture.state.potentials;
    const auto& shunt = m_picture.shunts[index];
    if (!m_picture.state.closed[index] || potentials.empty()) return;
    const auto a = potentials[static_cast<std::size_t>(shunt.a)],
               b = potentials[static_cast<std::size_t>(shunt.b)];
    if (!a || !b || *a == *b) return;
    const ShuntPlace& place = m_picture.lanes.places[index];
    for (const QPolygonF* wire : {&place.toA, &place.toB}) {
      const bool away = (wire == &place.toA) == (*a > *b);
      arrowOnLongest(*wire, away);
    }
  }

  void arrowOnLongest(const QPolygonF& wire, bool forward) {
    QLineF longest;
    for (qsizetype k = 1; k < wire.size(); ++k)
      if (const QLineF piece(wire[k - 1], wire[k]); piece.length() > longest.length()) longest = piece;
    if (longest.length() < 16) return;
    if (!forward) longest = QLineF(longest.p2(), longest.p1());
    const QPointF unit = (longest.p2() - longest.p1()) / longest.length();
    arrowHead(longest.center() + unit * 6, unit, m_colours.selected, 13);
  }

  void handles(std::size_t index) {
    const ShuntPlace& place = m_picture.lanes.places[index];
    const bool closed = m_picture.state.closed[index];
    currentArrows(index);
    m_painter.setPen(QPen(place.faulty ? m_colours.fail
                          : closed     ? m_colours.selected
                                       : m_colours.quiet,
                          1.5));
    m_painter.setBrush(m_colours.background);
    for (const QPointF& handle : {place.handleA, place.handleB})
      m_painter.drawRoundedRect(QRectF(handle - QPointF(5, 5), QSizeF(10, 10)), 2, 2);
  }

  void nodes() {
    // A terminal's circle covers the corner it is joined to.
    for (const bool terminal : {false, true})
      for (const NodePlace& place : m_layout.nodes) {
        if (!place.present || place.terminal != terminal) continue;
        m_painter.setPen(QPen(m_colours.text, 1.8));
        m_painter.setBrush(terminal ? m_colours.background : m_colours.text);
        const double radius = terminal ? 5 : 3.2;
        m_painter.drawEllipse(place.at, radius, radius);
      }
  }

  void label(const BridgeLabel& entry) {
    m_painter.setFont(labelFont(entry.role));
    const QFontMetricsF metrics(m_painter.font());
    const QString text = metrics.elidedText(entry.text, Qt::ElideRight, entry.box.width());
    if (entry.role == LabelRole::Voltage || entry.role == LabelRole::Shunt || entry.role == LabelRole::Note) {
      // Shunts' columns may pass behind these.
      QRectF covered(0, 0, metrics.horizontalAdvance(text) + 2, entry.box.height() - 2);
      covered.moveCenter(entry.box.center());
      if (entry.alignment & Qt::AlignLeft) covered.moveLeft(entry.box.left() - 1);
      if (entry.alignment & Qt::AlignRight) covered.moveRight(entry.box.right() + 1);
      m_painter.fillRect(covered, m_colours.background);
    }
    m_painter.setPen(colourFor(entry));
    m_painter.drawText(entry.box, static_cast<int>(entry.alignment) | Qt::TextSingleLine | Qt::TextDontClip,
                       text);
  }

  QColor colourFor(const BridgeLabel& entry) const {
    switch (entry.role) {
      case LabelRole::Heading:
      case LabelRole::Note:
      case LabelRole::Voltage:
        return m_colours.quiet;
      case LabelRole::Strain:
        return colourOf(m_colours, entry.sign);
      case LabelRole::Shunt:
        if (m_picture.lanes.places[entry.shunt].faulty) return m_colours.fail;
        return m_picture.state.closed[entry.shunt] ? m_colours.selected : m_colours.quiet;
      default:
        return m_colours.text;
    }
  }

  QPainter& m_painter;
  const BridgePicture& m_picture;
  const BridgeLayout& m_layout;
  const Colours& m_colours;
};

}  // namespace

void paintBridge(QPainter& painter, const BridgePicture& picture, const Colours& colours) {
  painter.setRenderHint(QPainter::Antialiasing);
  Brush(painter, picture, colours).paint();
}

void paintRing(QPainter& painter, const QPolygonF& ring, const QColor& colour) {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(colour, 2.5, Qt::SolidLine, Qt::SquareCap, Qt::RoundJoin));
  painter.drawPolygon(ring);
}

void paintMove(QPainter& painter, const BridgePicture& picture, const ShuntMove& move,
               std::optional<QPointF> pointer, const Colours& colours) {
  const BridgeLayout& layout = picture.layout;
  const bool refused = move.target && !move.legal;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(colours.selected, 1.5, Qt::DotLine));
  for (const core::Node node : core::allNodes())
    if (isLegalTarget(picture.bridge, picture.shunts[move.shunt], move.end, node))
      painter.drawEllipse(layout[node].at, 9, 9);
  const QPointF from = handleOf(picture, move.shunt, move.end);
  const QPointF to = move.target ? layout[*move.target].at : pointer.value_or(from);
  const QColor colour = move.legal ? colours.selected : refused ? colours.fail : colours.quiet;
  painter.setPen(QPen(colour, 3, Qt::DashLine));
  painter.drawLine(from, to);
  painter.setPen(QPen(colour, 3));
  painter.drawEllipse(to, 10, 10);
  if (!refused) return;
  painter.drawLine(to - QPointF(7, 7), to + QPointF(7, 7));
  painter.drawLine(to - QPointF(7, -7), to + QPointF(7, -7));
}

}  // namespace ui
