// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_painter.h"

#include <QLineF>
#include <algorithm>

#include "ui/bridge/bridge_sketch.h"
#include "ui/bridge/symbol_painter.h"

namespace ui {
namespace {

constexpr double conductor = 1.8, symbol = 1.7, openShunt = 1.4, closedShunt = 2.8;

/// Of a gauge's carrier: a little off the background.
QColor tintOf(const Colours& colours) {
  const auto mix = [](int a, int b) { return a + (b - a) / 12; };
  const QColor &from = colours.background, &to = colours.text;
  return QColor(mix(from.red(), to.red()), mix(from.green(), to.green()), mix(from.blue(), to.blue()));
}

class Brush {
 public:
  Brush(QPainter& painter, const BridgePicture& picture, const Colours& colours)
      : m_painter(painter),
        m_draw(painter, picture.symbols, colours.background),
        m_picture(picture),
        m_layout(picture.layout),
        m_colours(colours) {}

  void paint() {
    outlines();
    for (const WirePlace& wire : m_layout.wires) m_draw.line(wire.route, m_colours.text, conductor);
    for (const LeakPlace& place : m_layout.leaks) leak(place);
    // Leads lie over open shunts; closed shunts lie over both.
    shunts(false);
    for (const LeadPlace& place : m_layout.leads) m_draw.line(place.route, m_colours.text, conductor);
    shunts(true);
    for (const LeadPlace& place : m_layout.leads) lead(place);
    for (const TouchPlace& place : m_layout.touches) touch(place);
    instrument();
    if (m_layout.balance) balance(*m_layout.balance);
    for (const std::size_t index : {0, 1, 2, 3}) arm(index);
    nodes();
    for (const bool closed : {false, true})
      for (std::size_t k = 0; k < m_picture.lanes.places.size(); ++k)
        if (m_picture.state.closed[k] == closed) handles(k);
    for (const BridgeLabel& entry : m_picture.labels) label(entry);
  }

 private:
  /// The instrument is a box, the article is not.
  void outlines() {
    m_painter.setBrush(Qt::NoBrush);
    m_painter.setPen(QPen(m_colours.quiet, 1));
    m_painter.drawRoundedRect(m_layout.instrument, 8, 8);
    m_draw.dashes(m_layout.article, m_colours.quiet, 1, 9, 8);
  }

  void instrument() {
    const bool down = m_picture.bridge.hookup.excitationReversed;
    const QPointF toPlus(0, down ? 1 : -1);
    if (m_picture.constantCurrent)
      m_draw.currentSource(m_layout.source, toPlus, m_colours.text);
    else
      m_draw.voltageSource(m_layout.source, toPlus, m_colours.text);
    m_draw.meter(m_layout.input, m_colours.text);
    for (const QRectF& box : {m_layout.sourcePlus, m_layout.inputPlus})
      for (const QPointF& half : {QPointF(4.5, 0), QPointF(0, 4.5)})
        m_draw.line({box.center() - half, box.center() + half}, m_colours.text, symbol);
    if (!m_layout.inputResistance.isEmpty())
      m_draw.resistor(m_layout.inputResistance, m_colours.text, symbol);
    if (!m_layout.grounding) return;
    m_draw.line(*m_layout.grounding, m_colours.text, conductor);
    m_draw.dot(m_layout.grounding->front(), m_colours.text);
    m_draw.structure(m_layout.grounding->back(), {0, 1}, m_colours.text);
  }

  void balance(const BalancePlace& place) {
    for (const QPolygonF& route : place.routes) m_draw.line(route, m_colours.text, conductor);
    m_draw.resistor(place.track, m_colours.text, symbol);
    if (!place.limiting.isEmpty()) m_draw.resistor(place.limiting, m_colours.text, symbol);
    if (!place.farPart.isEmpty()) m_draw.resistor(place.farPart, m_colours.text, symbol);
    const double way = place.wiper.dx() < 0 ? -1 : 1;
    m_draw.line({place.wiper.p1(), place.wiper.p2() - QPointF(way * 5, 0)}, m_colours.text, conductor);
    m_draw.arrowHead(place.wiper.p2(), {way, 0}, m_colours.text, 8);
    if (place.limiting.isEmpty()) return;
    for (const QPointF& end : {place.routes[0].front(), place.routes[0].back()})
      m_draw.dot(end, m_colours.text);
  }

  /// What nobody wants to be there is dashed.
  void leak(const LeakPlace& place) {
    m_draw.dashes(place.route, m_colours.text, 1.4, 5, 3);
    m_draw.resistor(place.body, m_colours.text, 1.4, true);
    if (place.toStructure)
      m_draw.structure(place.route.back(), place.way, m_colours.text);
    else
      for (const QPointF& end : {place.route.front(), place.route.back()})
        m_draw.dot(end, m_colours.text, 2.6);
  }

  void lead(const LeadPlace& place) {
    if (!place.body.isEmpty()) m_draw.resistor(place.body, m_colours.text, symbol);
    if (!place.gap) return;
    m_draw.line({*place.gap - QPointF(5, 0), *place.gap + QPointF(5, 0)}, m_colours.background, 5);
    for (const double side : {-5.0, 5.0})
      m_draw.line({*place.gap + QPointF(side - 3, 7), *place.gap + QPointF(side + 3, -7)}, m_colours.fail, 2);
  }

  void touch(const TouchPlace& place) {
    m_draw.line(place.route, m_colours.fail, 2.4);
    for (const QPointF& end : place.route) m_draw.dot(end, m_colours.fail, 4);
  }

  void arm(std::size_t index) {
    const ArmPlace& place = m_layout.arms[index];
    m_draw.line({place.begin, place.end}, m_colours.text, conductor);
    if (core::templateOf(m_picture.bridge.type).atArticle[index])
      m_draw.gauge(armBody(place), m_colours.text, m_tint);
    else
      m_draw.resistor(armBody(place), m_colours.text, symbol);
    if (const auto sign = m_picture.strains[index]; sign != core::Polarity::None)
      strainArrow(place, sign == core::Polarity::Positive);
  }

  /// Beside the arm: heads apart where the gauge is stretched, towards each other where compressed.
  void strainArrow(const ArmPlace& place, bool stretched) {
    const QLineF along(place.begin, place.end);
    const QPointF unit = (place.end - place.begin) / along.length();
    const QPointF middle = along.center() + place.outward * (armBodyWidth / 2 + 7);
    const QColor colour =
        colourOf(m_colours, stretched ? core::Polarity::Positive : core::Polarity::Negative);
    for (const double way : {-1.0, 1.0}) {
      const QPointF inner = middle + unit * way * 4, outer = middle + unit * way * 24;
      const QPointF back = unit * way * 5;
      m_draw.line(stretched ? QPolygonF{inner, outer - back} : QPolygonF{outer, inner + back}, colour, 2);
      m_draw.arrowHead(stretched ? outer : inner, unit * (stretched ? way : -way), colour, 9);
    }
  }

  void shunts(bool closed) {
    for (std::size_t k = 0; k < m_picture.lanes.places.size(); ++k)
      if (m_picture.state.closed[k] == closed) shunt(m_picture.lanes.places[k], closed);
  }

  QColor shuntColour(const ShuntPlace& place, bool closed) const {
    return place.faulty ? m_colours.fail : closed ? m_colours.selected : m_colours.quiet;
  }

  void shunt(const ShuntPlace& place, bool closed) {
    const QColor colour = shuntColour(place, closed);
    const double width = closed ? closedShunt : openShunt;
    m_draw.line(place.toA, colour, width);
    m_draw.line(place.toB, colour, width);
    m_draw.line({place.contact.p2(), {place.resistor.left(), place.contact.y2()}}, colour, width);
    m_draw.line({place.contact.p1(), closed ? place.contact.p2() : place.blade}, colour,
                std::max(width, 1.8));
    for (const QPointF& contact : {place.contact.p1(), place.contact.p2()}) m_draw.dot(contact, colour, 2.6);
    m_draw.resistor(
        turnedBody(place.resistor.center(), {1, 0}, place.resistor.width(), place.resistor.height()), colour,
        closed ? 2.4 : openShunt);
    for (const QPointF& joint : place.joints) m_draw.dot(joint, colour, 2.6);
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
    m_draw.arrowHead(longest.center() + unit * 6, unit, m_colours.selected, 13);
  }

  void handles(std::size_t index) {
    const ShuntPlace& place = m_picture.lanes.places[index];
    const bool closed = m_picture.state.closed[index];
    const QColor colour = shuntColour(place, closed);
    currentArrows(index);
    for (const QPolygonF* wire : {&place.toA, &place.toB})
      if (closed || !isNode(wire->front())) m_draw.dot(wire->front(), colour, closed ? 4.2 : 3.2);
    m_painter.setPen(QPen(colour, 1.5));
    m_painter.setBrush(m_colours.background);
    for (const QPointF& handle : {place.handleA, place.handleB})
      m_painter.drawRect(QRectF(handle - QPointF(5, 5), QSizeF(10, 10)));
  }

  bool isNode(QPointF point) const {
    return std::any_of(m_layout.nodes.begin(), m_layout.nodes.end(),
                       [&](const NodePlace& place) { return place.present && place.at == point; });
  }

  void nodes() {
    // A terminal's circle covers the corner it is joined to.
    for (const bool terminal : {false, true})
      for (const NodePlace& place : m_layout.nodes) {
        if (!place.present || place.terminal != terminal) continue;
        if (!terminal) {
          m_draw.dot(place.at, m_colours.text, 3.6);
          continue;
        }
        m_painter.setPen(QPen(m_colours.text, conductor));
        m_painter.setBrush(m_colours.background);
        m_painter.drawEllipse(place.at, 5, 5);
      }
  }

  void label(const BridgeLabel& entry) {
    if (m_role != entry.role) m_painter.setFont(labelFont(entry.role));
    m_role = entry.role;
    m_painter.setPen(colourFor(entry));
    m_painter.drawText(entry.box, static_cast<int>(entry.alignment) | Qt::TextSingleLine | Qt::TextDontClip,
                       entry.text);
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
        return shuntColour(m_picture.lanes.places[entry.shunt], m_picture.state.closed[entry.shunt]);
      default:
        return m_colours.text;
    }
  }

  QPainter& m_painter;
  SymbolPainter m_draw;
  const BridgePicture& m_picture;
  const BridgeLayout& m_layout;
  const Colours& m_colours;
  QColor m_tint = tintOf(m_colours);
  std::optional<LabelRole> m_role;  ///< whose font is set
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

}  // namespace ui
