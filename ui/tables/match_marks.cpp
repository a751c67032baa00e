// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/match_marks.h"

#include <QEvent>
#include <QPainter>
#include <QScrollBar>
#include <QTableView>

#include "ui/theme.h"

namespace ui {

MatchMarks& MatchMarks::of(QTableView& view) {
  if (auto* marks = view.findChild<MatchMarks*>(QString(), Qt::FindDirectChildrenOnly)) return *marks;
  return *new MatchMarks(view);
}

/// A child of the view and not of its viewport, whose children are moved when it scrolls.
MatchMarks::MatchMarks(QTableView& view) : QWidget(&view), m_view(view) {
  setObjectName("matchMarks");
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setFocusPolicy(Qt::NoFocus);
  setGeometry(view.viewport()->geometry());
  view.viewport()->installEventFilter(this);
  for (QScrollBar* bar : {view.horizontalScrollBar(), view.verticalScrollBar()})
    connect(bar, &QScrollBar::valueChanged, this, qOverload<>(&QWidget::update));
  hide();
}

void MatchMarks::mark(QList<QPersistentModelIndex> cells) {
  m_cells = std::move(cells);
  m_current = QPersistentModelIndex();
  setVisible(!m_cells.isEmpty());
  raise();
  update();
}

void MatchMarks::markCurrent(const QPersistentModelIndex& cell) {
  m_current = cell;
  update();
}

bool MatchMarks::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize || event->type() == QEvent::Move)
    setGeometry(m_view.viewport()->geometry());
  return QWidget::eventFilter(watched, event);
}

void MatchMarks::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setClipRect(rect());
  const Colours colours = coloursFor(palette());
  for (const QPersistentModelIndex& cell : m_cells) {
    if (!cell.isValid()) continue;
    const QRect room = m_view.visualRect(cell);
    if (!room.intersects(rect())) continue;
    const int width = cell == m_current ? 3 : 1;
    painter.setPen(QPen(colours.selected, width, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(QRectF(room).adjusted(width / 2.0, width / 2.0, -width / 2.0 - 1, -width / 2.0 - 1));
  }
}

}  // namespace ui
