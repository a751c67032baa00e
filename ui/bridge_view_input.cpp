// SPDX-License-Identifier: GPL-3.0-or-later
// Pointer, keyboard, and the edits they make.
#include <QApplication>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "core/document/edits.h"
#include "ui/bridge_view.h"

namespace ui {

// ---- pointer ---------------------------------------------------------------------------------

void BridgeView::mousePressEvent(QMouseEvent* event) {
  if (!m_picture || event->button() != Qt::LeftButton) return;
  if (m_move) endMove(false);
  m_pressed = spotAt(*m_picture, toDrawing(event->position()));
  m_pressedAt = event->pos();
  if (!m_pressed) return;
  BridgeSpot spot = *m_pressed;
  if (isShunt(m_pressed) && !spot.end) spot.end = ShuntEnd::A;
  setFocusSpot(spot);
}

void BridgeView::mouseMoveEvent(QMouseEvent* event) {
  if (!m_picture) return;
  const QPointF drawn = toDrawing(event->position());
  if (!m_pressedAt) {
    const auto spot = spotAt(*m_picture, drawn);
    setCursor(isShunt(spot) && spot->end ? Qt::OpenHandCursor
              : spot                     ? Qt::PointingHandCursor
                                         : Qt::ArrowCursor);
    return;
  }
  const QPoint moved = event->pos() - *m_pressedAt;
  if (isShunt(m_pressed) && m_pressed->end) {
    if (!m_move && moved.manhattanLength() < QApplication::startDragDistance()) return;
    m_byMouse = true;
    m_pointer = drawn;
    setCursor(Qt::ClosedHandCursor);
    beginOrContinueMove(m_pressed->part.index, *m_pressed->end, nodeNear(*m_picture, drawn));
  } else if (m_zoom > 1) {
    m_pan += moved;
    m_pressedAt = event->pos();
    m_pressed.reset();
    update();
  }
}

void BridgeView::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  const auto pressed = m_pressed;
  m_pressed.reset();
  m_pressedAt.reset();
  unsetCursor();
  if (m_move)
    endMove(true);
  else if (isShunt(pressed))
    selectStepOf(pressed->part.index);
}

void BridgeView::mouseDoubleClickEvent(QMouseEvent* event) {
  if (!m_picture || event->button() != Qt::LeftButton) return;
  if (const auto spot = spotAt(*m_picture, toDrawing(event->position()))) emit partActivated(spot->part);
}

void BridgeView::wheelEvent(QWheelEvent* event) {
  const int delta = event->angleDelta().y();
  if (!m_picture || !(event->modifiers() & Qt::ControlModifier)) return event->ignore();
  if (delta != 0) zoomAt(event->position(), std::pow(zoomStep, delta / 120.0));
  event->accept();
}

bool BridgeView::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip && m_picture) {
    auto* help = static_cast<QHelpEvent*>(event);
    const auto spot = spotAt(*m_picture, toDrawing(help->pos()));
    // Escaped, for a tip shows text that looks like markup as markup.
    QToolTip::showText(help->globalPos(),
                       spot ? "<qt>" + textOf(*m_picture, *spot).toHtmlEscaped() + "</qt>" : QString(), this);
    return true;
  }
  if (event->type() == QEvent::ShortcutOverride) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool ours = (key == Qt::Key_Escape && m_move) || (key == Qt::Key_Delete && isShunt(m_focus));
    if (ours) event->accept();
    return ours;
  }
  return QWidget::event(event);
}

// ---- keyboard --------------------------------------------------------------------------------

void BridgeView::keyPressEvent(QKeyEvent* event) {
  if (!m_picture) return QWidget::keyPressEvent(event);
  switch (event->key()) {
    case Qt::Key_Plus:
      return zoomIn();
    case Qt::Key_Minus:
      return zoomOut();
    case Qt::Key_0:
      return fit();
    case Qt::Key_Escape:
      if (!m_move) return QWidget::keyPressEvent(event);
      return endMove(false);
    default:
      handleKey(event);
  }
}

void BridgeView::handleKey(QKeyEvent* event) {
  const int key = event->key();
  const bool forward = key == Qt::Key_Right || key == Qt::Key_Down;
  const bool arrow = forward || key == Qt::Key_Left || key == Qt::Key_Up;
  if (!m_focus && !arrow) return QWidget::keyPressEvent(event);
  if (key == Qt::Key_Return || key == Qt::Key_Enter) {
    if (m_move) return endMove(true);
    emit partActivated(m_focus->part);
  } else if (arrow) {
    if (isShunt(m_focus))
      stepMove(forward ? 1 : -1);
    else
      walk(forward ? 1 : -1, true);
  } else if (isShunt(m_focus) && key == Qt::Key_Delete) {
    removeShunt(m_focus->part.index);
  } else if (isShunt(m_focus) && key == Qt::Key_Space) {
    selectStepOf(m_focus->part.index);
  } else {
    QWidget::keyPressEvent(event);
  }
}

/// To the next part; `all` stays within instrument, leads and arms, else only arms and shunt ends count.
bool BridgeView::walk(int direction, bool all) {
  std::vector<BridgeSpot> stops = spotsOf(*m_picture);
  std::erase_if(stops, [&](const BridgeSpot& spot) {
    if (all) return spot.part.kind == BridgePart::Kind::Shunt;
    return spot.part.kind == BridgePart::Kind::Instrument || spot.part.kind == BridgePart::Kind::Lead;
  });
  const auto found = m_focus ? std::find(stops.begin(), stops.end(), *m_focus) : stops.end();
  auto at = found - stops.begin();
  const auto count = static_cast<std::ptrdiff_t>(stops.size());
  if (found == stops.end()) at = direction > 0 ? -1 : count;
  at += direction;
  if (all) at = (at + count) % count;
  if (at < 0 || at >= count) return false;
  setFocusSpot(stops[static_cast<std::size_t>(at)]);
  return true;
}

bool BridgeView::focusNextPrevChild(bool next) {
  if (m_picture && hasFocus() && walk(next ? 1 : -1, false)) return true;
  return QWidget::focusNextPrevChild(next);
}

void BridgeView::focusInEvent(QFocusEvent* event) {
  if (event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason) {
    m_focus.reset();
    if (m_picture) walk(event->reason() == Qt::TabFocusReason ? 1 : -1, false);
  }
  QWidget::focusInEvent(event);
  update();
}

void BridgeView::focusOutEvent(QFocusEvent* event) {
  if (m_move && event->reason() != Qt::PopupFocusReason) endMove(false);
  QWidget::focusOutEvent(event);
  update();
}

void BridgeView::setFocusSpot(std::optional<BridgeSpot> spot) {
  if (m_move) endMove(false);
  m_focus = spot;
  showTexts();
  update();
}

// ---- editing ---------------------------------------------------------------------------------

void BridgeView::beginOrContinueMove(std::size_t shunt, ShuntEnd end, std::optional<core::Node> target) {
  // The network is solved only when another node comes near, not for every pixel.
  if (!m_move || m_move->target != target) {
    m_move = moveTo(setup(), m_step, shunt, end, target);
    showVoltagesNow();
    showTexts();
  }
  update();
}

void BridgeView::stepMove(int direction) {
  const std::size_t shunt = m_focus->part.index;
  const ShuntEnd end = m_focus->end.value_or(ShuntEnd::A);
  const auto targets = legalTargets(setup().bridge, setup().shunts[shunt], end);
  if (targets.empty()) return;
  const core::Node now = m_move && m_move->target ? *m_move->target : nodeOf(setup().shunts[shunt], end);
  const auto count = static_cast<std::ptrdiff_t>(targets.size());
  const auto found = std::find(targets.begin(), targets.end(), now);
  // From a place that is not legal itself, the first or the last one.
  auto at = found == targets.end() ? (direction > 0 ? -1 : count) : found - targets.begin();
  at = (at + direction + count) % count;
  m_byMouse = false;
  beginOrContinueMove(shunt, end, targets[static_cast<std::size_t>(at)]);
}

/// Those that a move would bring while its end is at a node, as the texts do.
void BridgeView::showVoltagesNow() {
  const bool moving = m_move && m_move->legal;
  showVoltages(*m_picture, moving ? m_move->potentials : m_picture->state.potentials,
               moving ? m_move->excitation_V : m_picture->state.excitation_V);
}

void BridgeView::endMove(bool keep) {
  const ShuntMove done = *m_move;
  m_move.reset();
  m_pressed.reset();
  m_pressedAt.reset();
  if (keep && done.legal) m_session.editChannel(tr("Move shunt"), withMove(*m_channel, done));
  showVoltagesNow();
  showTexts();
  // A refusal stays readable after the drop.
  if (keep && done.target && !done.legal) showTexts(tr("Nothing was moved"), done.outcome, m_colours.fail);
  update();
}

void BridgeView::selectStepOf(std::size_t shunt) {
  if (m_step && closesShunt(setup().sequence[*m_step], shunt)) return;
  if (const auto step = firstStepClosing(setup(), shunt)) m_session.selectStep(step);
}

void BridgeView::removeShunt(std::size_t shunt) {
  m_move.reset();
  m_session.editChannel(tr("Remove shunt"), core::withShuntRemoved(*m_channel, shunt));
}

}  // namespace ui
