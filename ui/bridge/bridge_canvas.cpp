// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_canvas.h"

#include <QEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "ui/bridge/bridge_painter.h"
#include "ui/bridge/bridge_parts.h"
#include "ui/preferences/preferences.h"

namespace ui {
namespace {

constexpr double mostZoom = 8, zoomStep = 1.25;
constexpr int tick_ms = 40;
constexpr double phaseStep = 0.04;

}  // namespace

BridgeCanvas::BridgeCanvas(QWidget* parent) : QWidget(parent), m_colours(coloursFor(palette())) {
  setObjectName("bridgeCanvas");
  setAccessibleName(tr("Bridge"));
  setAttribute(Qt::WA_OpaquePaintEvent);  // all of it is painted here: nothing need be filled before
  m_tick.setInterval(tick_ms);
  connect(&m_tick, &QTimer::timeout, this, [this] {
    m_phase = std::fmod(m_phase + phaseStep, 1.0);
    if (isVisible()) update(room().toAlignedRect());
  });
  connect(&PreferencesSignal::instance(), &PreferencesSignal::preferencesChanged, this,
          &BridgeCanvas::moveDots);
}

void BridgeCanvas::showSetup(const core::Setup& setup, std::optional<std::size_t> step) {
  auto channel = std::make_shared<core::Channel>();
  channel->setup = setup;
  showChannel(std::move(channel), core::predict(setup), step);
  setAccessibleDescription(description());
}

void BridgeCanvas::showChannel(std::shared_ptr<const core::Channel> channel, core::SetupPrediction prediction,
                               std::optional<std::size_t> step) {
  m_channel = std::move(channel);
  m_prediction = std::move(prediction);
  m_step = step;
  redraw();
}

void BridgeCanvas::showNothing() {
  m_picture.reset();
  m_channel.reset();
  setAccessibleDescription({});
  update();
}

void BridgeCanvas::setSymbols(Symbols symbols) {
  m_symbols = symbols;
  if (m_picture) redraw();
}

void BridgeCanvas::setFlowStyle(FlowStyle style) {
  m_flowStyle = style;
  moveDots();
  update();
}

/// Where nothing is to move by itself they are shown where they are.
void BridgeCanvas::moveDots() {
  m_flowStyle == FlowStyle::Dots && !preferences().lessMotion ? m_tick.start() : m_tick.stop();
}

void BridgeCanvas::redraw() {
  m_picture = std::make_unique<BridgePicture>(pictureOf(*m_channel, m_prediction, m_step, m_symbols));
  update();
}

QString BridgeCanvas::description() const {
  return m_picture ? describe(*m_channel, m_picture->state) : QString();
}

// ---- where things are ------------------------------------------------------------------------

QRectF BridgeCanvas::room() const { return QRectF(rect()).adjusted(margin, margin, -margin, -margin); }

QTransform BridgeCanvas::transform(const BridgePicture& picture) const {
  const QRectF place = room(), scene = picture.lanes.scene;
  const double scale =
      std::max(0.05, std::min(place.width() / scene.width(), place.height() / scene.height())) * m_zoom;
  const QPointF centre = place.center() + m_pan;
  return QTransform::fromTranslate(centre.x(), centre.y())
      .scale(scale, scale)
      .translate(-scene.center().x(), -scene.center().y());
}

void BridgeCanvas::zoomAt(QPointF anchor, double factor) {
  const double zoom = std::clamp(m_zoom * factor, 1.0, mostZoom);
  // The point under the anchor stays there.
  const QPointF offset = anchor - room().center();
  m_pan = offset - (offset - m_pan) * (zoom / m_zoom);
  m_zoom = zoom;
  if (m_zoom == 1) m_pan = {};
  update();
}

/// No further than to the drawing's edges, so that it can never be lost.
void BridgeCanvas::panBy(QPointF pixels) {
  const QSizeF most = room().size() * (m_zoom - 1) / 2;
  const auto within = [](double pan, double limit) {
    return std::clamp(pan, -std::max(0.0, limit), std::max(0.0, limit));
  };
  m_pan += pixels;
  m_pan = {within(m_pan.x(), most.width()), within(m_pan.y(), most.height())};
  update();
}

void BridgeCanvas::fit() { zoomAt(room().center(), 0); }
void BridgeCanvas::zoomIn() { zoomAt(room().center(), zoomStep); }
void BridgeCanvas::zoomOut() { zoomAt(room().center(), 1 / zoomStep); }

// ---- events ----------------------------------------------------------------------------------

void BridgeCanvas::paintEvent(QPaintEvent* event) {
  // Words that come or go beside the drawing move all of it, though Qt asks for their own places alone.
  if (m_paintedRoom != room() && event->rect() != rect()) update();
  m_paintedRoom = room();
  QPainter painter(this);
  painter.fillRect(rect(), m_colours.background);
  if (!m_picture) return;
  painter.setClipRect(room().adjusted(-margin, -margin, margin, margin));
  const BridgePicture& shown = shownPicture();
  painter.setTransform(transform(shown));
  paintUnder(painter);
  paintBridge(painter, shown, m_colours);
  if (const auto& flow = shown.state.flow; flow && m_flowStyle != FlowStyle::Off)
    paintFlow(painter, shown, *flow, m_flowStyle, m_phase, m_colours);
  paintOver(painter);
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

void BridgeCanvas::mousePressEvent(QMouseEvent* event) {
  const bool grabs = event->button() == Qt::LeftButton || event->button() == Qt::MiddleButton;
  if (!m_picture || !grabs || !isZoomed()) return event->ignore();
  m_panFrom = event->position();
  setCursor(Qt::SizeAllCursor);
}

void BridgeCanvas::mouseMoveEvent(QMouseEvent* event) {
  if (!m_panFrom) return event->ignore();
  panBy(event->position() - *m_panFrom);
  m_panFrom = event->position();
}

void BridgeCanvas::mouseReleaseEvent(QMouseEvent* event) {
  if (!m_panFrom) return event->ignore();
  m_panFrom.reset();
  unsetCursor();
}

TwinTable BridgeCanvas::twin() const {
  if (!m_picture) return {};
  const BridgePicture& shown = *m_picture;
  TwinTable table{{tr("Part"), tr("What is shown")}, {}};
  for (const BridgePart& part : partsOf(shown))
    table.rows << QStringList{nameOf(shown, part), textOf(shown, {part, std::nullopt})};
  const BridgeState& state = shown.state;
  for (const core::Node node : core::allNodes()) {
    const auto at = static_cast<std::size_t>(node);
    if (at >= state.potentials.size() || !state.potentials[at] || shown.layout[node].voltageBox.isEmpty())
      continue;
    table.rows << QStringList{pointText(shown.bridge, node),
                              voltText(*state.potentials[at] * state.excitation_V)};
  }
  table.rows << QStringList{state.title, state.outcome};
  if (!state.sentence.isEmpty()) table.rows << QStringList{tr("Why"), state.sentence};
  table.rows << QStringList{tr("In words"), description()};  // currents too
  return table;
}

}  // namespace ui
