// SPDX-License-Identifier: GPL-3.0-or-later
// The pointer: what it points at, selects and drags.
#include <QApplication>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <algorithm>

#include "ui/bridge_view.h"

namespace ui {
namespace {

constexpr Qt::KeyboardModifiers more = Qt::ControlModifier | Qt::ShiftModifier;

}  // namespace

void BridgeView::mousePressEvent(QMouseEvent* event) {
  if (!picture()) return;
  if (m_move) endMove(false);
  if (event->button() != Qt::LeftButton) return BridgeCanvas::mousePressEvent(event);
  m_pressed = spotAt(*picture(), toDrawing(event->position()));
  m_pressedAt = event->position();
  if (m_pressed) return select(*m_pressed, event->modifiers());
  if (!(event->modifiers() & more)) m_selected.clear();
  update();
}

void BridgeView::mouseMoveEvent(QMouseEvent* event) {
  if (!picture()) return;
  if (event->buttons() & Qt::MiddleButton) return BridgeCanvas::mouseMoveEvent(event);
  if (!m_pressedAt) return hover(event->position());
  const bool far = (event->position() - *m_pressedAt).manhattanLength() >= QApplication::startDragDistance();
  if (!far && !m_move && !m_band) return;
  dragTo(event->position(), event->modifiers() & Qt::ShiftModifier);
}

void BridgeView::hover(QPointF at) {
  const auto spot = spotAt(*picture(), toDrawing(at));
  setCursor(spot && isMovable(*spot) && !m_isClosed ? Qt::OpenHandCursor
            : spot                                  ? Qt::PointingHandCursor
                                                    : Qt::ArrowCursor);
}

/// What is movable, the drawing when it is larger than its room, or a band around what is to be selected.
void BridgeView::dragTo(QPointF at, bool extend) {
  const QPointF point = toDrawing(at);
  if (m_pressed && isMovable(*m_pressed) && !m_band) {
    if (!m_move && !mayEdit(tr("Nothing was moved"))) return m_pressedAt.reset();
    m_byMouse = true;
    m_pointer = point;
    setCursor(Qt::ClosedHandCursor);
    moveTo(*m_pressed, targetNear(*picture(), *m_pressed, point));
  } else if (isZoomed() && !extend && !m_band) {
    panBy(at - *m_pressedAt);
    m_pressedAt = at;
    m_pressed.reset();
  } else {
    m_band = QRectF(toDrawing(*m_pressedAt), point).normalized();
    update();
  }
}

void BridgeView::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return BridgeCanvas::mouseReleaseEvent(event);
  const auto pressed = m_pressed;
  const bool isClick = m_pressedAt && !m_move && !m_band;
  m_pressed.reset();
  m_pressedAt.reset();
  unsetCursor();
  if (m_move) return endMove(true);
  if (m_band) return takeBand();
  if (!isClick || (event->modifiers() & more)) return;
  m_selected.clear();  // of several one alone is left by a click on it
  if (!pressed) setFocusSpot(std::nullopt);
  update();
  if (isShunt(pressed)) selectStepOf(pressed->part.index);
}

void BridgeView::mouseDoubleClickEvent(QMouseEvent* event) {
  if (!picture() || event->button() != Qt::LeftButton || event->modifiers()) return;
  m_pressed.reset();
  m_pressedAt.reset();
  if (spotAt(*picture(), toDrawing(event->position()))) editSelected();
}

/// Alone, or with Ctrl one more or less, or with Shift one more. A press on one of several keeps
/// them all, for the menu.
void BridgeView::select(const BridgeSpot& spot, Qt::KeyboardModifiers modifiers) {
  const BridgePart part = spot.part;
  const bool isIn = std::find(m_selected.begin(), m_selected.end(), part) != m_selected.end();
  if (modifiers & more) {
    if (m_selected.empty() && m_focus && m_focus->part != part) m_selected = {m_focus->part};
    if (!isIn || (modifiers & Qt::ControlModifier)) toggle(part);
  } else if (!isIn) {
    m_selected.clear();
  }
  BridgeSpot held = spot;
  if (part.kind == BridgePart::Kind::Shunt && !held.end) held.end = ShuntEnd::A;
  setFocusSpot(held);
}

void BridgeView::takeBand() {
  for (const BridgePart& part : partsIn(*picture(), *m_band))
    if (std::find(m_selected.begin(), m_selected.end(), part) == m_selected.end()) m_selected.push_back(part);
  m_band.reset();
  showTexts();
  update();
}

bool BridgeView::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip && picture()) {
    auto* help = static_cast<QHelpEvent*>(event);
    const auto spot = spotAt(*picture(), toDrawing(help->pos()));
    // Escaped, for a tip shows text that looks like markup as markup.
    QToolTip::showText(help->globalPos(),
                       spot ? "<qt>" + textOf(*picture(), *spot).toHtmlEscaped() + "</qt>" : QString(), this);
    return true;
  }
  if (event->type() == QEvent::ShortcutOverride && isOurs(*static_cast<QKeyEvent*>(event))) {
    event->accept();
    return true;
  }
  return BridgeCanvas::event(event);
}

}  // namespace ui
