// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/wiring_painter.h"

#include <QPainter>
#include <algorithm>

namespace ui {
namespace {

constexpr double jumperWidth = 2.4;
constexpr double corner = 5;

QColor mixed(const QColor& a, const QColor& b, double share) {
  const auto part = [share](int x, int y) { return int(x + (y - x) * share); };
  return QColor(part(a.red(), b.red()), part(a.green(), b.green()), part(a.blue(), b.blue()));
}

int oneLine(Qt::Alignment side) {
  return static_cast<int>((side | Qt::AlignVCenter).toInt()) | Qt::TextSingleLine;
}

class WiringPainter {
 public:
  WiringPainter(QPainter& painter, const WiringPicture& picture, const WiringLayout& layout,
                const Colours& colours)
      : m_painter(painter), m_picture(picture), m_layout(layout), m_colours(colours) {}

  void paint() {
    m_painter.setRenderHint(QPainter::Antialiasing);
    for (const ConnectorPlace& connector : m_layout.connectors) paint(connector);
    for (const PinPlace& pin : m_layout.pins) paint(pin);
    for (std::size_t k = 0; k < m_layout.jumpers.size(); ++k) paintLine(m_layout.jumpers[k]);
    for (std::size_t k = 0; k < m_layout.jumpers.size(); ++k) paintNumber(k);
    if (m_picture.faultBridges) paintBridges();
    for (const PinPlace& pin : m_layout.pins)
      if (isFaulty(pin)) ring(pin);
  }

 private:
  bool isFaulty(const PinPlace& pin) const {
    return std::find(m_picture.faultPins.begin(), m_picture.faultPins.end(), pin.name) !=
           m_picture.faultPins.end();
  }
  bool isChosen(const PinPlace& pin) const { return pin.pin && pin.pin == m_picture.chosenPin; }

  void paint(const ConnectorPlace& connector) {
    m_painter.setPen(QPen(m_colours.quiet, 1.2, connector.listed ? Qt::SolidLine : Qt::DashLine));
    m_painter.setBrush(mixed(m_colours.background, m_colours.quiet, 0.07));
    m_painter.drawRoundedRect(connector.box, corner, corner);
    QFont bold = m_painter.font();
    const QFont plain = bold;
    bold.setBold(true);
    m_painter.setFont(bold);
    m_painter.setPen(m_colours.text);
    m_painter.drawText(connector.head, oneLine(connector.left ? Qt::AlignRight : Qt::AlignLeft),
                       connector.title);
    m_painter.setFont(plain);
  }

  void paint(const PinPlace& pin) {
    if (isChosen(pin)) {
      m_painter.setPen(Qt::NoPen);
      m_painter.setBrush(mixed(m_colours.background, m_colours.selected, 0.35));
      m_painter.drawRect(pin.row.adjusted(1, 1, -1, 0));
    }
    m_painter.setPen(QPen(m_colours.grid, 1));
    m_painter.drawLine(pin.row.topLeft(), pin.row.topRight());
    m_painter.setPen(QPen(m_colours.quiet, 1, pin.pin ? Qt::SolidLine : Qt::DashLine));
    m_painter.setBrush(isChosen(pin) ? mixed(m_colours.background, m_colours.selected, 0.55)
                                     : m_colours.background);
    m_painter.drawRect(pin.cell.adjusted(1, 2, -1, -2));
    m_painter.setPen(m_colours.text);
    m_painter.drawText(pin.cell, Qt::AlignCenter | Qt::TextSingleLine, pin.cellText);
    const bool leadsNowhere =
        pin.pin && std::holds_alternative<std::monostate>(m_picture.wiring.pins[*pin.pin].use);
    m_painter.setPen(leadsNowhere ? m_colours.quiet : m_colours.text);
    m_painter.drawText(pin.use, oneLine(pin.left ? Qt::AlignRight : Qt::AlignLeft), pin.useText);
    if (const auto mark = m_picture.marks.find(pin.name); mark != m_picture.marks.end())
      paintSeverity(m_painter, pin.mark.adjusted(4, 4, -4, -4), mark->second, m_colours);
  }

  bool touchesFault(const JumperPlace& jumper) const {
    return !m_picture.faultBridges && isFaulty(m_layout.pins[jumper.from]) &&
           isFaulty(m_layout.pins[jumper.to]);
  }
  QColor colourOfJumper(const JumperPlace& jumper) const {
    if (touchesFault(jumper)) return m_colours.fail;
    const bool chosen = isChosen(m_layout.pins[jumper.from]) || isChosen(m_layout.pins[jumper.to]);
    return chosen ? m_colours.selected : m_colours.positive;
  }

  void paintLine(const JumperPlace& jumper) {
    m_painter.setBrush(Qt::NoBrush);
    // A rim in the background's colour parts jumpers that cross.
    m_painter.setPen(QPen(m_colours.background, jumperWidth + 3, Qt::SolidLine, Qt::FlatCap));
    m_painter.drawPath(jumper.path);
    const QColor colour = colourOfJumper(jumper);
    m_painter.setPen(QPen(colour, jumperWidth, Qt::SolidLine, Qt::RoundCap));
    m_painter.drawPath(jumper.path);
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(colour);
    for (const std::size_t end : {jumper.from, jumper.to})
      m_painter.drawEllipse(m_layout.pins[end].joint, 3.5, 3.5);
  }

  void paintNumber(std::size_t index) {
    const JumperPlace& jumper = m_layout.jumpers[index];
    const double radius = 0.62 * m_painter.fontMetrics().height();
    const QRectF disc(jumper.middle - QPointF(radius, radius), QSizeF(2 * radius, 2 * radius));
    m_painter.setPen(QPen(colourOfJumper(jumper), 1.4));
    m_painter.setBrush(m_colours.background);
    m_painter.drawEllipse(disc);
    m_painter.setPen(m_colours.text);
    m_painter.drawText(disc, Qt::AlignCenter | Qt::TextSingleLine, QString::number(index + 1));
  }

  /// A bar over the joint of each two neighbours that the fault bridges.
  void paintBridges() {
    const PinPlace* before = nullptr;
    m_painter.setPen(QPen(m_colours.fail, 5, Qt::SolidLine, Qt::RoundCap));
    for (const PinPlace& pin : m_layout.pins) {
      const bool neighbours = before && before->left == pin.left && isFaulty(*before) && isFaulty(pin) &&
                              before->row.bottom() == pin.row.top();
      if (neighbours) m_painter.drawLine(before->joint, pin.joint);
      before = &pin;
    }
  }

  void ring(const PinPlace& pin) {
    m_painter.setPen(QPen(m_colours.fail, 2));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawRoundedRect(pin.row.adjusted(1, 1, -1, -1), 3, 3);
  }

  QPainter& m_painter;
  const WiringPicture& m_picture;
  const WiringLayout& m_layout;
  const Colours& m_colours;
};

QPixmap severityPixmap(core::WiringSeverity severity, const Colours& colours) {
  QPixmap pixmap(64, 64);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  paintSeverity(painter, QRectF(pixmap.rect()).adjusted(4, 4, -4, -4), severity, colours);
  return pixmap;
}

}  // namespace

void paintWiring(QPainter& painter, const WiringPicture& picture, const WiringLayout& layout,
                 const Colours& colours) {
  painter.save();
  WiringPainter(painter, picture, layout, colours).paint();
  painter.restore();
}

void paintSeverity(QPainter& painter, const QRectF& room, core::WiringSeverity severity,
                   const Colours& colours) {
  const double side = std::min(room.width(), room.height());
  const QRectF box(room.center() - QPointF(side / 2, side / 2), QSizeF(side, side));
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (severity == core::WiringSeverity::Error) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.fail);
    painter.drawEllipse(box);
    const QRectF cross = box.adjusted(0.3 * side, 0.3 * side, -0.3 * side, -0.3 * side);
    painter.setPen(QPen(colours.background, 0.12 * side, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(cross.topLeft(), cross.bottomRight());
    painter.drawLine(cross.topRight(), cross.bottomLeft());
  } else {
    painter.setPen(QPen(colours.cannotTell, 0.1 * side, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(QPolygonF({{box.center().x(), box.top() + 0.08 * side},
                                   {box.right() - 0.04 * side, box.bottom() - 0.08 * side},
                                   {box.left() + 0.04 * side, box.bottom() - 0.08 * side}}));
    const double x = box.center().x();
    painter.drawLine(QPointF(x, box.top() + 0.4 * side), QPointF(x, box.top() + 0.62 * side));
    painter.drawPoint(QPointF(x, box.top() + 0.78 * side));
  }
  painter.restore();
}

/// On a chosen row the outline of a warning is in the colour of the text, or it would not be seen.
QIcon severityIcon(core::WiringSeverity severity, const QPalette& palette) {
  Colours colours = coloursFor(palette);
  QIcon icon(severityPixmap(severity, colours));
  colours.cannotTell = palette.color(QPalette::HighlightedText);
  icon.addPixmap(severityPixmap(severity, colours), QIcon::Selected);
  return icon;
}

}  // namespace ui
