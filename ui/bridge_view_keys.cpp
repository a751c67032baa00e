// SPDX-License-Identifier: GPL-3.0-or-later
// The keyboard: walking the parts, and the twin of each drag.
#include <QAction>
#include <QKeyEvent>
#include <algorithm>

#include "ui/bridge_view.h"

namespace ui {
namespace {

constexpr double panStep_px = 40;

bool isArrow(int key) {
  return key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
}
bool isEnter(int key) { return key == Qt::Key_Return || key == Qt::Key_Enter; }

/// Of the drawing's own commands that one which the keys mean, where the window may have another for them:
/// two that act on one key would both do nothing.
QAction* ownCommand(const QWidget& drawing, const QKeyEvent& event) {
  if (!(event.modifiers() & Qt::ControlModifier)) return nullptr;
  const QKeySequence pressed(event.keyCombination());
  for (QAction* action : drawing.actions())
    if (action->shortcuts().contains(pressed)) return action;
  return nullptr;
}

}  // namespace

/// Before the window's shortcuts and our own: the keys that end a move, and the drawing's own arrows.
bool BridgeView::isOurs(const QKeyEvent& event) const {
  const int key = event.key();
  if (m_move && (key == Qt::Key_Escape || isEnter(key))) return true;
  if (key == Qt::Key_Escape) return m_band || !m_selected.empty();
  if (ownCommand(*this, event)) return true;
  return isZoomed() && isArrow(key) && event.modifiers() == Qt::ControlModifier;
}

void BridgeView::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  const bool control = event->modifiers() & Qt::ControlModifier;
  const bool menu = key == Qt::Key_Menu || (key == Qt::Key_F10 && event->modifiers() == Qt::ShiftModifier);
  if (menu) return popUp(m_menu, std::nullopt);
  const bool endsMove = m_move && (key == Qt::Key_Escape || isEnter(key));
  if (QAction* command = endsMove ? nullptr : ownCommand(*this, *event)) return command->trigger();
  if (!picture()) return BridgeCanvas::keyPressEvent(event);
  const bool forward = key == Qt::Key_Right || key == Qt::Key_Down;
  if (isArrow(key) && control) {
    if (!panByKey(key)) BridgeCanvas::keyPressEvent(event);
  } else if (isArrow(key)) {
    m_focus&& isMovable(*m_focus) && !m_isClosed ? stepMove(forward ? 1 : -1)
                                                 : void(walk(forward ? 1 : -1, true));
  } else if (m_move && (isEnter(key) || key == Qt::Key_Escape)) {
    endMove(isEnter(key));
  } else if (key == Qt::Key_Escape && (m_band || !m_selected.empty())) {
    m_band.reset();
    m_pressedAt.reset();
    m_selected.clear();
    update();
  } else if (key == Qt::Key_Space && control && m_focus) {
    toggle(m_focus->part);
  } else if (key == Qt::Key_Space && isShunt(m_focus)) {
    if (!firstStepClosing(setup(), m_focus->part.index))
      return refuse(tr("No step chosen"), tr("No step closes %1 yet: add it to a step of the sequence.")
                                              .arg(nameOf(*picture(), m_focus->part)));
    selectStepOf(m_focus->part.index);
  } else {
    BridgeCanvas::keyPressEvent(event);
  }
}

bool BridgeView::panByKey(int key) {
  if (!isZoomed()) return false;
  const double across = key == Qt::Key_Left ? 1 : key == Qt::Key_Right ? -1 : 0;
  const double down = key == Qt::Key_Up ? 1 : key == Qt::Key_Down ? -1 : 0;
  panBy(QPointF(across, down) * panStep_px);
  return true;
}

/// To the next part; `round` starts again after the last.
bool BridgeView::walk(int direction, bool round) {
  const std::vector<BridgeSpot> stops = spotsOf(*picture());
  const auto found = m_focus ? std::find(stops.begin(), stops.end(), *m_focus) : stops.end();
  auto at = found - stops.begin();
  const auto count = static_cast<std::ptrdiff_t>(stops.size());
  if (found == stops.end()) at = direction > 0 ? -1 : count;
  at += direction;
  if (round) at = (at + count) % count;
  if (at < 0 || at >= count) return false;
  setFocusSpot(stops[static_cast<std::size_t>(at)]);
  return true;
}

bool BridgeView::focusNextPrevChild(bool next) {
  if (picture() && hasFocus() && walk(next ? 1 : -1, false)) return true;
  return BridgeCanvas::focusNextPrevChild(next);
}

void BridgeView::focusInEvent(QFocusEvent* event) {
  if (event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason) {
    m_focus.reset();
    if (picture()) walk(event->reason() == Qt::TabFocusReason ? 1 : -1, false);
  }
  BridgeCanvas::focusInEvent(event);
  update();
}

void BridgeView::focusOutEvent(QFocusEvent* event) {
  if (m_move && event->reason() != Qt::PopupFocusReason) endMove(false);
  BridgeCanvas::focusOutEvent(event);
  update();
}

void BridgeView::setFocusSpot(std::optional<BridgeSpot> spot) {
  if (m_move) endMove(false);
  m_focus = spot;
  showTexts();
  update();
}

/// One part more among the selected, or one less.
void BridgeView::toggle(const BridgePart& part) {
  const auto found = std::find(m_selected.begin(), m_selected.end(), part);
  if (found == m_selected.end())
    m_selected.push_back(part);
  else
    m_selected.erase(found);
  update();
}

void BridgeView::stepMove(int direction) {
  const auto now = m_move && m_move->target ? m_move->target : std::nullopt;
  const auto target = nextTarget(setup(), *m_focus, now, direction);
  if (!target) return;
  m_byMouse = false;
  moveTo(*m_focus, target);
}

void BridgeView::selectStepOf(std::size_t shunt) {
  if (m_step && closesShunt(setup().sequence[*m_step], shunt)) return;
  if (const auto step = firstStepClosing(setup(), shunt)) m_session.selectStep(step);
}

}  // namespace ui
