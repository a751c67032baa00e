// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_canvas.h"

#include <QEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "ui/bridge/bridge_painter.h"

namespace ui {
namespace {

constexpr int margin = 6;
constexpr double mostZoom = 8, zoomStep = 1.25;
constexpr int tick_ms = 40;
constexpr double phaseStep = 0.04;

}  // namespace

BridgeCanvas::BridgeCanvas(QWidget* parent) : QWidget(parent), m_colours(coloursFor(palette())) {
  setObjectName("bridgeCanvas");
  setAccessibleName(tr("Bridge"));
  m_tick.setInterval(tick_ms);
  connect(&m_tick, &QTimer::timeout, this, [this] {
    m_phase = std::fmod(m_phase + phaseStep, 1.0);
    if (isVisible()) update();
  });
}

void BridgeCanvas::showSetup(const core::Setup& setup, std::optional<std::size_t> step) {
  m_channel.setup = setup;
  m_step = step;
  redraw();
}

void BridgeCanvas::showNothing() {
  m_picture.reset();
  setAccessibleDescription({});
  update();
}

void BridgeCanvas::setSymbols(Symbols symbols) {
  m_symbols = symbols;
  if (m_picture) redraw();
}

void BridgeCanvas::setFlowStyle(FlowStyle style) {
  m_flowStyle = style;
  style == FlowStyle::Dots ? m_tick.start() : m_tick.stop();
  update();
}

void BridgeCanvas::redraw() {
  m_picture = std::make_unique<BridgePicture>(
      pictureOf(m_channel, core::predict(m_channel.setup), m_step, m_symbols));
  setAccessibleDescription(description());
  update();
}

QString BridgeCanvas::description() const {
  return m_picture ? describe(m_channel, m_picture->state) : QString();
}

QTransform BridgeCanvas::transform() const {
  if (!m_picture) return {};
  const QRectF room = QRectF(rect()).adjusted(margin, margin, -margin, -margin);
  const QRectF scene = m_picture->lanes.scene;
  const double scale =
      std::max(0.05, std::min(room.width() / scene.width(), room.height() / scene.height())) * m_zoom;
  const QPointF centre = room.center() + m_pan;
  return QTransform::fromTranslate(centre.x(), centre.y())
      .scale(scale, scale)
      .translate(-scene.center().x(), -scene.center().y());
}

void BridgeCanvas::zoomAt(QPointF anchor, double factor) {
  const double zoom = std::clamp(m_zoom * factor, 1.0, mostZoom);
  // The point under the anchor stays there.
  const QPointF offset = anchor - QRectF(rect()).center();
  m_pan = offset - (offset - m_pan) * (zoom / m_zoom);
  m_zoom = zoom;
  if (m_zoom == 1) m_pan = {};
  update();
}

void BridgeCanvas::fit() { zoomAt(QRectF(rect()).center(), 0); }
void BridgeCanvas::zoomIn() { zoomAt(QRectF(rect()).center(), zoomStep); }
void BridgeCanvas::zoomOut() { zoomAt(QRectF(rect()).center(), 1 / zoomStep); }

void BridgeCanvas::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), m_colours.background);
  if (!m_picture) return;
  painter.setTransform(transform());
  paintBridge(painter, *m_picture, m_colours);
  if (m_picture->state.flow && m_flowStyle != FlowStyle::Off)
    paintFlow(painter, *m_picture, *m_picture->state.flow, m_flowStyle, m_phase, m_colours);
}

void BridgeCanvas::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) {
    m_colours = coloursFor(palette());
    update();
  }
  QWidget::changeEvent(event);
}

void BridgeCanvas::wheelEvent(QWheelEvent* event) {
  const int delta = event->angleDelta().y();
  if (!m_picture || !(event->modifiers() & Qt::ControlModifier)) return event->ignore();
  if (delta != 0) zoomAt(event->position(), std::pow(zoomStep, delta / 120.0));
  event->accept();
}

}  // namespace ui
