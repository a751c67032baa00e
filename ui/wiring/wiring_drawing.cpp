// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/wiring_drawing.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "ui/wiring/wiring_painter.h"
#include "ui/wiring/wiring_words.h"

namespace ui {
namespace {

constexpr double zoomStep = 1.25;
constexpr double leastZoom = 0.5, mostZoom = 4;
constexpr double mostFit = 1.4;  ///< larger letters than that would look out of place beside the tables

/// The pin and what hangs on it, in words.
QString sentence(const WiringPicture& picture, const PinPlace& place) {
  const QString name = toQString(core::pinText(place.name));
  if (!place.pin) return WiringDrawing::tr("%1 is not in the list of pins").arg(name);
  QString text = leadsToText(picture.wiring.pins[*place.pin]);
  QStringList others;
  for (const core::PinName& other : joinedTo(picture.jumpers, place.name))
    others << toQString(core::pinText(other));
  if (!others.isEmpty()) text = WiringDrawing::tr("%1, jumper to %2").arg(text, others.join(", "));
  const auto mark = picture.marks.find(place.name);
  if (mark == picture.marks.end()) return text;
  return (mark->second == core::WiringSeverity::Error ? WiringDrawing::tr("%1; error")
                                                      : WiringDrawing::tr("%1; warning"))
      .arg(text);
}

}  // namespace

WiringDrawing::WiringDrawing(QWidget* parent) : QWidget(parent) {
  setObjectName("wiringDrawing");
  setAccessibleName(tr("Drawing of the wiring"));
  setFocusPolicy(Qt::StrongFocus);
  m_colours = coloursFor(palette());
}

void WiringDrawing::setPicture(WiringPicture picture) {
  m_picture = std::move(picture);
  layOutAgain();
  QStringList sentences;
  for (const PinPlace& place : m_drawn.pins) {
    const QString told = sentence(m_picture, place);
    place.pin&& place.pin == m_picture.chosenPin ? sentences.prepend(tr("At %1").arg(told))
                                                 : sentences.append(told);
  }
  setAccessibleDescription(sentences.join(". "));
}

void WiringDrawing::layOutAgain() {
  // By the room there is: the widget's own size may still be that of another picture.
  const QSizeF room = parentWidget() ? parentWidget()->size() : size();
  const QFontMetricsF metrics(font());
  const QSizeF least = layOut(m_picture, metrics, 0).size;
  const double fit =
      std::min(room.width() / std::max(1.0, least.width()), room.height() / std::max(1.0, least.height()));
  m_scale = m_zoom * std::clamp(fit, 1.0, mostFit);
  m_drawn = layOut(m_picture, metrics, std::floor(room.width() / m_scale));
  setMinimumSize(int(least.width() * m_scale), int(m_drawn.size.height() * m_scale));
  update();
}

QRect WiringDrawing::placeOf(std::size_t pin) const {
  for (const PinPlace& place : m_drawn.pins)
    if (place.pin == pin)
      return QRectF(place.row.topLeft() * m_scale, place.row.size() * m_scale).toAlignedRect();
  return {};
}

void WiringDrawing::zoomBy(double factor) {
  m_zoom = factor == 0 ? 1 : std::clamp(m_zoom * factor, leastZoom, mostZoom);
  layOutAgain();
}

const PinPlace* WiringDrawing::placeAt(QPointF point) const {
  const auto found = std::find_if(m_drawn.pins.begin(), m_drawn.pins.end(),
                                  [&](const PinPlace& place) { return place.row.contains(point / m_scale); });
  return found == m_drawn.pins.end() ? nullptr : &*found;
}

/// The pin of the other column that lies nearest.
const PinPlace* WiringDrawing::across(const PinPlace& from) const {
  const PinPlace* nearest = nullptr;
  const auto away = [&](const PinPlace& place) { return std::abs(place.joint.y() - from.joint.y()); };
  for (const PinPlace& place : m_drawn.pins)
    if (place.pin && place.left != from.left && (!nearest || away(place) < away(*nearest))) nearest = &place;
  return nearest;
}

/// Up and down within the column, in the order of the drawing.
void WiringDrawing::walk(int by) {
  std::vector<const PinPlace*> column;
  const PinPlace* chosen = nullptr;
  for (const PinPlace& place : m_drawn.pins)
    if (place.pin && place.pin == m_picture.chosenPin) chosen = &place;
  for (const PinPlace& place : m_drawn.pins)
    if (place.pin && (!chosen || place.left == chosen->left)) column.push_back(&place);
  if (column.empty()) return;
  std::sort(column.begin(), column.end(),
            [](const PinPlace* a, const PinPlace* b) { return a->row.top() < b->row.top(); });
  const auto at = std::find(column.begin(), column.end(), chosen);
  const auto from = at == column.end() ? -1 : at - column.begin();
  const auto to = std::clamp<std::ptrdiff_t>(from + by, 0, std::ssize(column) - 1);
  emit pinChosen(*column[static_cast<std::size_t>(to)]->pin);
}

bool WiringDrawing::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  auto* help = static_cast<QHelpEvent*>(event);
  const PinPlace* place = placeAt(help->pos());
  // Escaped, for a tip shows text that looks like markup as markup.
  QToolTip::showText(help->globalPos(),
                     place ? "<qt>" + sentence(m_picture, *place).toHtmlEscaped() + "</qt>" : QString(),
                     this);
  return true;
}

void WiringDrawing::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), m_colours.background);
  painter.setFont(font());
  painter.save();
  painter.scale(m_scale, m_scale);
  paintWiring(painter, m_picture, m_drawn, m_colours);
  painter.restore();
  if (!hasFocus()) return;
  painter.setPen(QPen(palette().color(QPalette::Highlight), 1));
  const QRect room = visibleRegion().boundingRect();
  painter.drawRect(room.adjusted(0, 0, -1, -1));
}

void WiringDrawing::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layOutAgain();
}

void WiringDrawing::mousePressEvent(QMouseEvent* event) {
  const PinPlace* place = placeAt(event->position());
  if (event->button() == Qt::LeftButton && place && place->pin) emit pinChosen(*place->pin);
}

void WiringDrawing::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Down:
      return walk(1);
    case Qt::Key_Up:
      return walk(-1);
    case Qt::Key_Home:
      return walk(-static_cast<int>(m_drawn.pins.size()));
    case Qt::Key_End:
      return walk(static_cast<int>(m_drawn.pins.size()));
    case Qt::Key_Left:
    case Qt::Key_Right:
      for (const PinPlace& place : m_drawn.pins)
        if (place.pin && place.pin == m_picture.chosenPin && place.left == (event->key() == Qt::Key_Right))
          if (const PinPlace* other = across(place)) return emit pinChosen(*other->pin);
      return;
    case Qt::Key_Plus:
      return zoomBy(zoomStep);
    case Qt::Key_Minus:
      return zoomBy(1 / zoomStep);
    case Qt::Key_0:
      return zoomBy(0);
    default:
      QWidget::keyPressEvent(event);
  }
}

void WiringDrawing::wheelEvent(QWheelEvent* event) {
  const int delta = event->angleDelta().y();
  if (!(event->modifiers() & Qt::ControlModifier)) return event->ignore();
  if (delta != 0) zoomBy(std::pow(zoomStep, delta / 120.0));
  event->accept();
}

void WiringDrawing::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) m_colours = coloursFor(palette());
  if (event->type() == QEvent::FontChange) layOutAgain();
  update();
}

TwinTable WiringDrawing::twin() const {
  TwinTable table{{tr("Pin"), tr("What is shown")}, {}};
  for (const PinPlace& place : m_drawn.pins)
    table.rows << QStringList{toQString(core::pinText(place.name)), sentence(m_picture, place)};
  return table;
}

}  // namespace ui
